/**
 * How much of what is there was taken, told behind it: "KOH bag 1 kg, 90 % pure it says. Used 190 g of it", "we pressed our own
 * olive oil and have 5 kg of it. I took 700 g of that", "my sister brought 3 kg olive oil, of which 700 g went in".
 */

import { endsDotted, isIngredient, isMark, isPot, sentenceAt, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { isPlain, isSum, type Name, rowsOf, weightAt } from './tale.ts';

/** What a fat or an alkali is there, how much of it, and how much was taken. */
export interface PartOfStock {
  readonly name: number;
  readonly more: number;
  readonly less: number;
}

const ofIt = /\b(?:(?:out )?of|from) (?:it|that|this|which|these|those|them|there)\b/;
const taking =
  /\b(?:took|take|taken|used?|using|weighed|melted|put in|put|went (?:in|into)|goes (?:in|into)|go (?:in|into)|needed)\b/;
const stock =
  /\b(?:bought|got|gets?|have|ive|had|has|brought|gave|given|gift|rendered|pressed|came out|yielded|made|theres|there (?:is|are|was|were)|stock|cellar|cupboard|pantry|own|big|whole|full|new|from)\b/;
const open =
  /\?|\b(?:if|last|next|yesterday|usually|normally|always|already|each|per|every|should|would|could|another|more|less|extra(?! virgin)|left|lost|away|again|off|back|behind|stayed|never|knocked|fished|floor|worktop|spilt|spilled|threw|gave away|half|solution|mix|mixture|blend|batter|stock solution)\b/;
/** "Used 200 g of it for candles", "to infuse". */
const away =
  /\bfor (?!(?:this|it|here|mine|soap|now|today|tonight|(?:the|my|this|a|our) (?:soap|batch|pot|recipe|loaf|one)))|\b(?:infus|candle|fry|cook|balm|lotion|sister|friend|mother|neighbour|swirl|top|infusion)/;
const reach = 40;

const wordsIn = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(
      (one) => spoken(one) || (one.t === 'sign' ? one.text : one.t === 'quantity' ? '#' : isIngredient(one) ? '@' : ''),
    )
    .filter((word) => word !== '')
    .join(' ');

/** What ends a clause. */
const isBreak = (token: Token | undefined): boolean =>
  token?.t === 'quantity' ||
  isIngredient(token) ||
  isMark(token, ',;:()–—') ||
  /^(?:and|but|so|then|before|because|since)$/.test(spoken(token));

const isStuff = (token: Token | undefined): token is Name =>
  isIngredient(token) && /^(?:fat|alkali)$/.test(token.meaning.kind);

/** The last weight before token `k`, with nothing else weighed and no other thing named between. */
function wholeBefore(tokens: readonly Token[], k: number): PartOfStock | null {
  for (let more = k - 1; more >= 0 && k - more <= reach; more--) {
    if (!isPlain(tokens[more])) continue;
    const { from } = sentenceAt(tokens, more, reach);
    const at = [more + 1, more + 2, more + 3].find((near) => near < k && isStuff(tokens[near]));
    let name = at !== undefined && !endsDotted(tokens[more]) ? at : more - 1;
    while (name >= from && !isStuff(tokens[name])) name--;
    if (name < from) return null;
    const thing = thingOf(tokens[name] as Name);
    const isOther = (one: Token | undefined): boolean => isIngredient(one) && thingOf(one) !== thing;
    for (let near = Math.min(name, more); near < k; near++)
      if (isOther(tokens[near]) || (near !== more && isPlain(tokens[near]))) return null;
    return { name, more, less: k };
  }
  return null;
}

/** So much of what is there, in the tokens from `from` to `to`. */
export function partOfStock(tokens: readonly Token[], from: number, to: number): PartOfStock | null {
  for (let k = from; k < to; k++) {
    if (!isPlain(tokens[k])) continue;
    const told = sentenceAt(tokens, k, reach);
    let begin = k;
    while (begin > told.from && !isBreak(tokens[begin - 1])) begin--;
    let end = k + 1;
    if (!endsDotted(tokens[k])) while (end < told.to && !isBreak(tokens[end])) end++;
    const said = wordsIn(tokens, begin, end);
    if (!ofIt.test(said) || !taking.test(said) || open.test(said) || away.test(said)) continue;
    const next = tokens[spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1];
    const found = wholeBefore(tokens, k);
    if (!found || (!endsDotted(tokens[k]) && isIngredient(next))) continue;
    const { name, more } = found;
    const whole = sentenceAt(tokens, more, reach);
    const words = wordsIn(tokens, whole.from, Math.min(whole.to, k));
    const isThere = stock.test(words) || tokens.slice(whole.from, Math.min(whole.to, k)).some(isPot);
    if (!isThere || open.test(words) || !(weightAt(tokens, more, k) > weightAt(tokens, k, k))) continue;
    // "the other 400 g went back in the freezer": others hear both
    const isRest = (at: number): boolean =>
      isSum(weightAt(tokens, more, k), weightAt(tokens, k, k), weightAt(tokens, at, k));
    if (tokens.some((_, at) => at > k && at - k <= reach && isRest(at))) continue;
    if (rowsOf(tokens, tokens[name], tokens.length).some(({ figure }) => figure !== more && figure !== k)) continue;
    return found;
  }
  return null;
}
