/**
 * "All the water together was 260 g", "water in total: 260 g", "water 350 g altogether": the water that has no other weight,
 * and no sum of the pot.
 */
import { isIngredient, isMark, isRole, isStop, isWeight, massOf, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const joined = /^(?:and|with|plus|in|of|without|lye)$/;
const being = /^(?:was|is|were|are|came|comes|to|about|only|just|all|then|now|i|used|had|took)$/;
const farthest = 5;

const isWater = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'water';

/** The water's total at `k`, and where its weight stands; null where it may be of more. */
function totalAt(tokens: readonly Token[], k: number): number | null {
  const total = isMark(tokens[k + 1], ':=') ? k + 2 : k + 1;
  if (!isRole(tokens[total], 'total') || isMark(tokens[k - 1], '+&') || joined.test(before(tokens, k))) return null;
  let at = total + 1;
  while (at - k <= farthest && (being.test(spoken(tokens[at])) || isMark(tokens[at], ':='))) at++;
  return isWeight(tokens[at]) ? at : null;
}

/** The word before it, and before "the" or "my". */
function before(tokens: readonly Token[], k: number): string {
  let at = k - 1;
  while (/^(?:the|my|all|our)$/.test(spoken(tokens[at]))) at--;
  return isMark(tokens[at], '+&') ? 'and' : spoken(tokens[at]);
}

/** "Water 350 g altogether." */
const isBehind = (tokens: readonly Token[], k: number): boolean =>
  massOf(tokens[k + 1]) && isRole(tokens[k + 2], 'total') && (tokens[k + 3] === undefined || isStop(tokens[k + 3]));

export function waterInAll(tokens: readonly Token[]): readonly Token[] {
  const waters = tokens.flatMap((token, k) => (isWater(token) ? [k] : []));
  const [k, ...more] = waters;
  if (k === undefined || more.length > 0 || (isWeight(tokens[k - 1]) && !isBehind(tokens, k))) return tokens;
  if (totalAt(tokens, k) === null && !isBehind(tokens, k)) return tokens;
  return tokens.map((token, at) => (at > k && at <= k + 2 && isRole(token, 'total') ? asFiller(token) : token));
}
