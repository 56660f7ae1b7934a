/**
 * "I did the olive oil in two goes, 500 g and then 285 g", "the lye got weighed in two cups, 72 g and 66 g", because the
 * scale takes no more: what weighs so much together. Beside the weight of the whole they are its parts.
 */

import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, isSum, type Name, rowsOf, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('in into'.split(' '));

const goes =
  '(?:goes|lots|rounds|batches|steps|loads|turns|runs|portions|instalments|stages|parts|halves|weighings|cups|jugs|bowls|beakers|mugs|glasses|lumps|pieces|blocks|slabs|chunks|jars|tubs|tins|bottles|bags|packets)';
/** How many there were, where that is said: "in three portions", "in portions", "bit by bit". */
const manyGoes = `(?:in(?:to)? (?:(?<n>#) (?:${goes} )?|(?:(?:several|some|small|a few|few|my|little|its) )*(?:goes|lots|rounds|batches|steps|portions|instalments|stages|parts|weighings|bits|bit) )|(?:bit|piece|portion|little|spoon) (?:by|for) (?:bit|piece|portion|little|spoon) )`;
const also = '(?:(?:as well|too|also|again|each|apiece) )*';
const why = '(?:(?:because|since|as|cos) (?:[a-z#]+ ){1,10})?';
const once = '(?:(?:at first|first|once|initially|one of|one) )?';
const next =
  '(?:(?: (?:first|at first|once|again|once more))? (?:, |and |then |plus |& |[+] )+(?:another |finally |lastly |one of |a further |once more )*#)';
const makeTold = () =>
  new RegExp(
    `(?<f>@) (?:(?<w>#) )?(?:, )?(?:[a-z]+ ){0,6}?${manyGoes}${also}${why}(?:[,:;(–—-] )+${once}(?<a>#)${next}{1,3}(?! (?:(?:of )?@|less\\b|fewer\\b))`,
    'd',
  );
/** "My scale stops at 500 g". */
const makeMost = () =>
  /\bscales? (?:(?:only|just|will|can|wont|cant) )*(?:stops?|goes?|ends?|takes?|manages?|does|do|reads?|weighs?|holds?|maxes out|gives up|is good|tops out|errs|fails|plays up) (?:(?:only|just|up|crazy|mad|wild|funny|haywire|wrong|above|no|more|than|further|to|at|for|about|over|a|beyond) )*(?<m>#)/d;
let made: { readonly told: RegExp; readonly most: RegExp } | null = null;

/** Not all of it is in, or nobody has done it. */
const open =
  /\b(?:if|would|could|should|might|maybe|perhaps|next|last time|usually|(?:i|we) (?:have|got|ve)|left|only used|used only|kept|store|instead|not|never|didnt|half|or|first one|second one|she|he|they)\b/;

interface Told {
  readonly name: number;
  readonly whole: number;
  readonly count: number;
  readonly figures: readonly number[];
}

function toldIn(sentence: Sentence, pattern: RegExp): Told | null {
  const found = pattern.exec(sentence.text);
  const at = found?.indices?.groups;
  const from = at?.['a']?.[0];
  if (!found || from === undefined) return null;
  const token = (group: string): number => {
    const place = at?.[group]?.[0];
    return place === undefined ? -1 : sentence.tokenAt(place);
  };
  const end = found.index + found[0].length;
  const since = sentence.text.lastIndexOf('scale', found.index);
  const before = sentence.text.slice(since < 0 ? 0 : found.index, found.index);
  if (open.test(before + found[0].replace(/\bhad to be\b/, '') + sentence.text.slice(end))) return null;
  const figures = [...sentence.text.slice(from, end).matchAll(/#/g)].map(({ index }) => sentence.tokenAt(from + index));
  return { name: token('f'), whole: token('w'), count: token('n'), figures };
}

/** The list in which they count together. */
export function inGoes(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures < 3 || sentence.names === 0) continue;
    made ??= { told: makeTold(), most: makeMost() };
    const found = toldIn(sentence, made.told);
    const back = found ? together(out, found) : null;
    if (!back) continue;
    const most = made.most.exec(sentence.text)?.indices?.groups?.['m']?.[0];
    const ofScale = most === undefined ? -1 : sentence.tokenAt(most);
    if (ofScale >= 0 && !found?.figures.includes(ofScale))
      hush(out, ofScale, ofScale + 1, 'what the scale takes at a time');
    told.push(back);
  }
  return told.length > 0 ? { tokens: out, told } : none;
}

/** "Two", also of "two cups". */
const countOf = ({ quantity: { dim, value, unit } }: Figure): number =>
  dim === 'volume' && unit ? Math.round(value / unit.factor) : value;

const isSoMany = (token: Token | undefined, count: number): boolean =>
  token?.t === 'quantity' && countOf(token) === count;

function together(out: Token[], { name: at, whole, count, figures }: Told): PutRight | null {
  const [name, many, first] = [out[at], out[count], out[figures[0] ?? -1]];
  if (!isIngredient(name) || (count >= 0 && !isSoMany(many, figures.length))) return null;
  if (!figures.every((k) => isPlain(out[k])) || !isPlain(first)) return null;
  const parts = figures.map((k) => (out[k] as Figure).quantity);
  // "50, 50 and 8 g"
  const base = parts.find(({ dim }) => dim === 'mass') ?? first.quantity;
  const same = parts.map((one) => alike(one, base));
  if (same.some(({ dim }) => dim !== base.dim)) return null;
  const listed = [
    ...(isPlain(out[whole]) ? [whole] : []),
    ...rowsOf(out, name, out.length).flatMap(({ figure }) => (figures.includes(figure) ? [] : [figure])),
  ];
  if (
    listed.some(
      (k) => !isSum(weightAt(out, k, figures[0] ?? -1), ...figures.map((n) => weightAt(out, n, figures[0] ?? -1))),
    )
  )
    return null;
  const [from, to] = [figures[0] ?? 0, (figures.at(-1) ?? 0) + 1];
  const sum = withValue(
    base,
    same.reduce((all, { value }) => all + value, 0),
  );
  const said = parts.map(written).join(' and ');
  const begin = count < 0 ? from - 1 : count;
  hush(out, begin, from, 'in so many goes');
  hush(out, from + (listed.length > 0 ? 0 : 1), to, 'a part of what was said');
  for (let k = begin - 1; k < to; k++) {
    const token = out[k];
    if (token?.t === 'word' || (token?.t === 'name' && token.meaning.kind === 'role')) out[k] = asFiller(token);
  }
  if (listed.length === 0) {
    const mark = out[from - 1] as Token;
    out[from - 1] = { ...(name as Name), from: mark.from, to: mark.to };
    out[at] = asFiller(name);
    out[from] = { ...first, quantity: { ...sum, numbers: parts.flatMap(({ numbers }) => numbers) } };
  }
  return { text: `I took ${said} of ${name.text} together, ${written(sum)}.`, gone: [], from, to };
}
