/**
 * "Two bags of lye open, 85 g in one and a full 500 g in the other. Emptied the first into the jug and added 66 g from the
 * full one", "lye: the old bag had 85 g in it, all of that went in, and 66 g from a new bag": what was left of one pack,
 * and so much of another.
 */

import { once } from '../once.ts';
import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isIngredient, isPot, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { outOf } from './in-pours.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, type Name, rowsOf, weightAt } from './tale.ts';

/** Words of which one stands where the first is told to be empty. */
const cues: ReadonlySet<string> = new Set('emptied empty finished used all whole lot'.split(' '));
const makePatterns = () => ({
  emptied:
    /\b(?:emptied|used up|finished(?: off)?|all of (?:that|it|them)|all in|all went in|(?:is|was|are|now) empty|empty now|the (?:whole|lot) of (?:it|that)|used (?:it|that) (?:all|up))\b/,
  second: new RegExp(`(?<b>#) (?:more |extra |of it )?${outOf}`, 'd'),
  /** How much the second one holds. */
  full: /\b(?:full|new|unopened|fresh|sealed|big|untouched)(?: [a-z]+)?$/,
});
const patterns = once(makePatterns);
/** Not all of it is in, or nobody has done it. */
const open =
  /\?|\b(?:if|would|could|should|might|maybe|perhaps|about|roughly|next time|last time|usually|not|didnt|kept|keep|instead|she|he|they)\b/;

interface Told {
  readonly name: number;
  readonly a: number;
  readonly b: number;
  /** Counts and sizes of packs. */
  readonly besides: readonly number[];
}

function toldIn(tokens: readonly Token[], story: Story, sentence: Sentence): Told | null {
  const { emptied, second, full } = patterns();
  const place = second.exec(story.text)?.indices?.groups?.['b']?.[0];
  if (place === undefined) return null;
  const b = story.tokenAt(place);
  const end = story.endAt(place);
  const text = story.text.slice(0, end);
  if (!emptied.test(text) || open.test(text)) return null;
  const names: number[] = [];
  for (let k = sentence.from; k < b; k++) if (isIngredient(tokens[k])) names.push(k);
  const [name] = names;
  const one = tokens[name ?? -1];
  if (name === undefined || !isIngredient(one)) return null;
  // what is listed before it in the same breath
  const id = thingOf(one);
  if (names.some((k) => thingOf(tokens[k] as Name) !== id)) return null;
  const besides: number[] = [];
  let a = -1;
  for (const { index } of text.slice(0, place).matchAll(/#/g)) {
    const k = story.tokenAt(index);
    if (isPot(tokens[k + 1]) || full.test(text.slice(0, index).trimEnd())) besides.push(k);
    else if (a < 0 && isPlain(tokens[k])) a = k;
    else return null;
  }
  return a > 0 && isPlain(tokens[b]) ? { name, a, b, besides } : null;
}

/** The list in which both count together. */
export function packEmptied(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || sentence.figures === 0) continue;
    const found = [1, 2]
      .map((count) => toldIn(tokens, joinedAt(sentences, k, count), sentence))
      .find((one) => one !== null);
    if (!found) continue;
    const { name: at, a, b, besides } = found;
    const [name, first, more] = [tokens[at] as Name, tokens[a] as Figure, tokens[b] as Figure];
    const sum = weightAt(tokens, a, a) + weightAt(tokens, b, a);
    const others = rowsOf(tokens, name, tokens.length).filter(({ figure }) => ![a, b, ...besides].includes(figure));
    const stand = tokens[a - 1];
    if (!(sum > 0) || others.length > 0 || !stand || stand.t === 'quantity') continue;
    const out = [...tokens];
    for (const one of besides) out[one] = asAside(tokens[one] as Figure, 'the size of a vessel or a pack');
    const end = endsDotted(more) ? b : b + 1;
    for (let at = Math.min(found.name, a - 1); at < end; at++) {
      const token = out[at];
      if (token && (isIngredient(token) || isPot(token))) out[at] = asFiller(token);
    }
    out[a - 1] = { ...name, from: stand.from, to: stand.to };
    const now = withValue(alike(first.quantity, first.quantity), sum);
    out[a] = { ...first, quantity: { ...now, numbers: [...first.quantity.numbers, ...more.quantity.numbers] } };
    out[b] = asAside(more, 'a part of what was said');
    const note: PutRight = {
      text: `I took ${written(first.quantity)} and ${written(more.quantity)} of ${name.text} together, ${written(now)}.`,
      gone: [],
      from: Math.min(at, a),
      to: b + 1,
      settles: true,
    };
    return { tokens: out, told: [note] };
  }
  return none;
}
