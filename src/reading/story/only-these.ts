/**
 * "So what is in the mould is only the lard and the olive, with all the lye and all the water": the fats of the list that
 * went in are named one by one, and the others stayed out. Asked about where a part of something is told with it.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { onlyRow } from './story.ts';
import { type Name, rowsBefore } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(['only', 'just', 'nothing']);

const the = '(?:(?:the|my|that) )*';
const pot = '(?:mou?ld|pot|soap|batter|batch|loaf|crock ?pot|slow cooker)';
const only = '(?:really |actually |now |then )*(?:only|just|nothing but|nothing except|nothing else than)';
const list = `(?<list>${the}F(?:(?: ,)?(?: (?:and|plus|&))? ${the}F)*)`;
const into = `in(?:to)? (?:there|it|(?:the|my|that) ${pot})(?: (?:now|then|tonight|today|at the moment))*`;
const made = [
  `\\b(?:what|whats|all that|everything that)(?: (?:i|we|really|actually|is|was|s|went|has|have|gone|got|ended up|put|poured|sits|now))* ${into} (?:is|was|are) ${only} ${list}`,
  `(?<!not )\\b${only} ${list} (?:(?:really|actually|ever|have|has|is|are|was|were|went|gone|got|ended up|made it|sits?|all) )+${into}`,
  `\\b(?:the|my|that) ${pot} (?:now )?(?:has|holds|contains|got|has got|contained|held) ${only} ${list}(?: in (?:it|there))?`,
  `\\b${into} (?:there )?(?:is|are|was|were|theres|went|sits) ${only} ${list}`,
];
const patterns = made.map((one) => new RegExp(one, 'd'));
/** What may be told with it: the alkali and the water as listed. */
const asListed =
  /^(?: in (?:it|there))?(?: (?:[-,–—:]|and|with|plus|together with|but|along with|both|in (?:it|there)|on top of|all|of|the|my|full|whole|amount|as listed|as written|L|W|lye|water))*(?: [.!?;]+)*(?: …)? ?$/;
/** Nobody has done it, not in this batch, or not yet. */
const elsewhen =
  /\b(?:if|would|should|could|might|may|maybe|perhaps|think|next|last|previous|earlier|usually|normally|always|once|she|he|they|her|his|hers|theirs|supposed|meant|yet|so far|still|until|before|first|start|begin|melt|melted|melting|recipe|book|card|want|plan)\b/;
/** Something else than a fat that stayed out changes the pot. */
const partly =
  /\b(?:half|third|quarter|some|part|most|bit|little|rest|spilt|spilled|stuck|lost|left over|instead|another|more|less|extra|twice|double|doubled)\b/;

/** Of what stayed out, behind it: it went in later on, or it is only spoken of. */
const later =
  /\b(?:then|later|afterwards|after|trace|added|add|adding|(?:went|goes|go|put|poured|stirred|tipped) (?:it |that |them )?in|end)\b/;
const without = /\?|\b(?:without|forgot|forgotten|never|not|missing|still|stood|left|lacks?|lacking|no)\b/;
const ofAnother = /\b(?:last|previous|other|old|first|earlier) (?:batch|time|soap|loaf|one|pot|week|month|year)\b/;

/** Sentences before it that tell of what stayed out, at the most. */
const mostBefore = 4;

/** The list without the fats that such a sentence leaves out. */
export function onlyThese(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const text = lettered(tokens, sentence);
    const found = patterns.map((pattern) => pattern.exec(text)).find((match) => match !== null);
    const [begin, end] = found?.indices?.groups?.['list'] ?? [];
    if (!found || begin === undefined || end === undefined) continue;
    const kept = new Set<string>();
    for (let place = begin; place < end; place++) {
      const name = tokens[sentence.tokenAt(place)];
      if (text[place] === 'F' && isIngredient(name)) kept.add(thingOf(name));
    }
    const listed = rowsBefore(tokens, sentence.from).filter(({ at }) => isFat(tokens[at]));
    const out = listed.filter(({ id }) => !kept.has(id));
    if (out.length === 0) continue;
    const before = notesBefore(tokens, sentences, k, out);
    const around = `${sentences
      .slice(before, k)
      .map((one) => one.text)
      .join('')}${text.slice(0, found.index)}`;
    const again = sentences.slice(k + 1).filter((one) => namesAny(tokens, one, out));
    if (elsewhen.test(text) || again.some((one) => later.test(one.text))) continue;
    const behind = text.slice(found.index + found[0].length);
    const isOther = sentences.slice(Math.max(0, k - 2), k).some((one) => ofAnother.test(one.text));
    const isSure = asListed.test(behind) && !isOther && again.every((one) => without.test(one.text));
    if (sentence.figures > 0 || !isSure || partly.test(around)) {
      const [first, last] = [tokens[sentence.from], tokens[sentence.to - 1]];
      return { ...none, unheard: rawText(prims, first?.from ?? 0, last?.to ?? 0).trim() };
    }
    return leftOut(tokens, out, sentences[before] ?? sentence, sentence);
  }
  return none;
}

/** Its text; `F` a fat of one row before it, `L` the alkali, `W` water. */
function lettered(tokens: readonly Token[], sentence: Sentence): string {
  return sentence.text.replace(/@/g, (_, place: number) => {
    const name = tokens[sentence.tokenAt(place)];
    if (!isIngredient(name)) return 'X';
    const { kind } = name.meaning;
    if (kind === 'alkali' || kind === 'stock') return 'L';
    if (kind === 'water') return 'W';
    const row = isFat(name) ? onlyRow(tokens, name) : null;
    return row && Math.max(row.at, row.figure) < sentence.from ? 'F' : 'X';
  });
}

const namesAny = (tokens: readonly Token[], { from, to }: Sentence, rows: readonly Weighed[]): boolean =>
  isAny(tokens, from, to, (one) => isIngredient(one) && rows.some(({ id }) => id === thingOf(one)));

/** The first of the sentences right before the one at `k` that names, without a figure, what stayed out. */
function notesBefore(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  out: readonly Weighed[],
): number {
  let first = k;
  for (let n = k - 1; n >= 0 && k - n <= mostBefore; n--) {
    const one = sentences[n];
    if (!one || one.figures > 0) break;
    if (namesAny(tokens, one, out)) first = n;
  }
  return first;
}

function leftOut(
  tokens: readonly Token[],
  rows: readonly Weighed[],
  first: Sentence,
  last: Sentence,
): ReturnType<typeof onlyThese> {
  const out = [...tokens];
  const gone = rows.map(({ at, figure }) => {
    const [name, weight] = [tokens[at] as Name, tokens[figure] as Figure];
    out[figure] = asAside(weight, 'forgotten, as the post says');
    out[at] = asFiller(name);
    return { name: name.text, quantity: weight.quantity };
  });
  for (let at = first.from; at < last.to; at++) {
    const again = out[at];
    if (isIngredient(again)) out[at] = asFiller(again);
  }
  const names = gone.map(({ name }) => name).join(' and ');
  const text = `I left out the ${names}, which stayed out of the pot, as the post says.`;
  const told: PutRight = {
    text,
    gone: gone.map(({ quantity }) => quantity),
    from: first.from,
    to: last.to,
    settles: true,
  };
  return { tokens: out, told: [told], unheard: null };
}
