/** A weight behind a colon of what its sentence began with: "Lye was weighed for the first lot and I didn't change it: 136 g". */
import { endsDotted, isIngredient, isMark, isRole, isStop, isUnspoken, isWeight } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { thingOf, weighedThings } from '../words/weighed.ts';

/** Tokens from the name to its weight: fewer are bound without this, and more tell of something else. */
const leastWay = 4;
const longestWay = 16;

/** Nothing behind it is what the weight at `k` is of. */
const isAlone = (tokens: readonly Token[], k: number): boolean =>
  endsDotted(tokens[k]) || isStop(tokens[k + 1]) || isMark(tokens[k + 1], ',');

/** The alkali that is named first in its sentence, with words alone up to the colon before token `k`; -1 where none is. */
function lyeBefore(tokens: readonly Token[], k: number): number {
  for (let at = k - 2; at >= 0 && k - at <= longestWay; at--) {
    const token = tokens[at];
    if (isIngredient(token)) return token.meaning.kind === 'alkali' && k - at >= leastWay ? at : -1;
    if (isUnspoken(token) || isRole(token, 'total') || isRole(token, 'total-fats')) return -1;
  }
  return -1;
}

/** The tokens with the name beside its weight. */
export function behindColon(tokens: readonly Token[]): readonly Token[] {
  for (let k = leastWay; k < tokens.length; k++) {
    if (!isWeight(tokens[k]) || !isMark(tokens[k - 1], ':') || !isAlone(tokens, k)) continue;
    const at = lyeBefore(tokens, k);
    const [name, colon] = [tokens[at], tokens[k - 1]];
    if (!isIngredient(name) || !colon || weighedThings(tokens).has(thingOf(name))) continue;
    return tokens.with(at, asFiller(name)).with(k - 1, { ...name, from: colon.from, to: colon.to });
  }
  return tokens;
}
