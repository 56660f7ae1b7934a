/**
 * "Forgot to tare. It read 870 g with the lard in it, the empty bowl is 320 g, so that's 550 g lard": that the scale was not
 * set to zero is settled, where what is told of the vessel leaves the weight of the row.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, isSum, rowsBefore } from './tale.ts';

const cues: ReadonlySet<string> = new Set('tare tared zero zeroed taring zeroing'.split(' '));
const forgot = /\b(?:forgot|forgotten|didnt|did not|hadnt|havent|never)\b[^.?#]{0,20}\b(?:tared?|zeroe?d?)\b/;
const vessel = /\b(?:bowl|jug|jar|pot|pan|vessel|container|beaker|cup|bucket|pail|dish|tub)\b/;
const open = /\b(?:if|maybe|perhaps|not sure|or not|about|roughly|around|next|last)\b/;
const many = 4;

const leaving = /^(?:so|makes|leaves|leaving|that|thats|its|is|net|hence|gives|giving|of)$/;

/** In whatever unit it is written. */
const valueAt = (token: Token | undefined): number =>
  isPlain(token) ? token.quantity.value / (token.quantity.unit?.factor ?? 1) : Number.NaN;

/** The row that two other figures leave, in a later sentence. */
function leftIn(tokens: readonly Token[], from: number, to: number, after: number): Weighed | null {
  const figures = Array.from({ length: to - from }, (_, k) => from + k).filter((k) => isPlain(tokens[k]));
  for (const row of rowsBefore(tokens, to)) {
    const place = figures.indexOf(row.figure);
    const first = Math.min(row.at, row.figure);
    if (place < 2 || row.at < after || !leaving.test(spoken(tokens[first - 1]))) continue;
    const [a, b] = [figures[place - 2], figures[place - 1]].map((k) => valueAt(tokens[k ?? -1])) as [number, number];
    if (isSum(Math.max(a, b), Math.min(a, b), valueAt(tokens[row.figure]))) return row;
  }
  return null;
}

/** The list as it is, with what settles it. */
export function tareReckoned({ tokens, prims, words }: Cut): Heard {
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token).toLowerCase()))) return none;
  const sentences = sentencesOf({ tokens, prims, words });
  for (const [k, sentence] of sentences.entries()) {
    if (!forgot.test(sentence.text) || open.test(sentence.text)) continue;
    const { text, from, to } = joinedAt(sentences, k, many);
    const row = vessel.test(text) ? leftIn(tokens, from, to, sentence.to) : null;
    const [name, weight] = [tokens[row?.at ?? -1], tokens[row?.figure ?? -1]];
    if (!row || name?.t !== 'name' || !isPlain(weight)) continue;
    const said = `I took ${written(weight.quantity)} of ${name.text}, what the scale showed without the vessel.`;
    const until = Math.max(row.at, row.figure) + 1;
    return { tokens, told: [{ text: said, gone: [], from: sentence.from, to: until, settles: true }] };
  }
  return none;
}
