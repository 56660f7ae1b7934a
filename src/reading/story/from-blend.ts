/**
 * "Mixed up 3 kg of my oil blend: 1500 g olive, 900 g coconut, 600 g sunflower. Took one kilo of the blend for this batch,
 * with 138 g lye": the fats are told of a stock that was mixed beforehand, and so much of it went in.
 */

import { once } from '../once.ts';
import { type PutRight, reweighed, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, isRole, isWeight, setApart, spoken } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, rowsOfAlkali, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'blend mix mixture premix stock bucket drum canister blended mixed'.split(' '),
);
const stock = '(?:blend|mix|mixture|premix|stock|bucket|drum|canister|oils|fats|@)';
const makePatterns = () => ({
  mixed: /\b(?:blend|blended|mix|mixed|mixture|premix|premixed|stock|bucket|drum|canister|master)\b/,
  took: new RegExp(
    `\\b(?:took|take|taken|taking|used|use|using|weighed|scooped|poured|measured|melted|ladled|drew|with) (?:(?:out|off|up|just|only|exactly|about|now|in) )*(?<n>#) (?:of|from|out of|off) (?:(?:the|my|this|that|our|same|big|oil|fat|master) )*(?:it|that|them|${stock})\\b`,
    'd',
  ),
  open: /\?|\b(?:if|would|could|should|might|maybe|perhaps|next|usually|normally|always|last (?:time|batch|week|month)|yesterday|away|aside|mica|colou?rs?|clay|oats|scent|trace|disperse|superfat|after|later|balm|salve|candles?|lotion|friend|sister|neighbour|not|didnt|each|per)\b/,
});
const patterns = once(makePatterns);
/** Of the stock so much goes in, at the least. */
const leastOf = 0.05;

const isBlend = (token: Token | undefined): boolean =>
  isIngredient(token) &&
  token.meaning.kind === 'ambiguous' &&
  /\b(?:blend|blended|mix|mixed|mixture)\b/i.test(token.text);

/** The list with what went in of such a stock. */
export function fromBlend(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => isBlend(token) || cues.has(spoken(token).toLowerCase()) || isRole(token, 'pot')))
    return none;
  const sentences = sentencesOf(cut);
  const { mixed, took, open } = patterns();
  for (const [k, sentence] of sentences.entries()) {
    const place = open.test(sentence.text) ? undefined : took.exec(sentence.text)?.indices?.groups?.['n']?.[0];
    if (place === undefined || !isToldBefore(tokens, sentences, k, mixed)) continue;
    const figure = sentence.tokenAt(place);
    const part = tokens[figure];
    const rows = rowsBefore(tokens, tokens.length);
    const fats = rows.filter(({ at }) => isFat(tokens[at]));
    const lyes = [...rows, ...rowsOfAlkali(tokens, tokens.length)].filter(({ at }) => isAlkali(tokens[at]));
    const [first] = fats;
    if (!isWeight(part) || !isPlain(part) || !first || fats.length < 2 || lyes.length === 0) continue;
    if (fats.some((row) => Math.max(row.at, row.figure) > sentence.from)) continue;
    if (lyes.some((row) => Math.min(row.at, row.figure) < sentence.from)) continue;
    const sum = fats.reduce((all, row) => all + weightAt(tokens, row.figure, figure), 0);
    const share = part.quantity.value / sum;
    if (!(share >= leastOf && share < 0.999)) continue;
    const own = new Set([...rows, ...lyes].map((row) => row.figure));
    const rest: number[] = [];
    for (let at = 0; at < tokens.length; at++) {
      if (own.has(at) || at === figure || !isPlain(tokens[at]) || !isWeight(tokens[at])) continue;
      const weight = weightAt(tokens, at, figure);
      const isKnown = [sum, part.quantity.value, sum - part.quantity.value].some((one) => isSum(one, weight));
      // another weight of it: nobody knows which list is the stock's
      if (!isKnown)
        return { ...none, unheard: rawText(prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 0) };
      rest.push(at);
    }
    const out = tokens.map((token) => (isBlend(token) ? asFiller(token) : token));
    for (const { figure: at } of fats) {
      const weight = tokens[at] as Figure;
      out[at] = reweighed(weight, weight.quantity.value * share);
    }
    for (const at of [figure, ...rest]) out[at] = setApart(tokens[at] as Figure, 'of a stock of fats');
    for (let at = 0; at < tokens.length; at++)
      if (isRole(tokens[at], 'total') && rest.some((one) => Math.abs(one - at) === 1))
        out[at] = asFiller(tokens[at] as Token);
    const note: PutRight = {
      text: `I took ${written(part.quantity)} of the fats that were mixed beforehand, so much of each.`,
      gone: [],
      from: Math.min(first.at, first.figure),
      to: sentence.to,
      settles: true,
    };
    return { tokens: out, told: [note] };
  }
  return none;
}

/** That they were mixed is said before, with the fats. */
const isToldBefore = (tokens: readonly Token[], sentences: readonly Sentence[], k: number, mixed: RegExp): boolean =>
  sentences
    .slice(0, k)
    .some(({ text, from, to }) => mixed.test(text) || tokens.slice(from, to).some((token) => isBlend(token)));

const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';
