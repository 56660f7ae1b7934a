/** Which things of a post stand beside a weight, and how often. */
import { keptLast } from './kept.ts';
import { light, massOf } from './token-is.ts';
import type { Token } from './tokens.ts';

/** What stands beside weights, and how often. */
export const weighedThings = keptLast((tokens: readonly Token[]): ReadonlyMap<string, number> => {
  const count = new Map<string, number>();
  tokens.forEach((token, at) => {
    if (token.t !== 'name' || !weighedAt(tokens, at)) return;
    const id = thingOf(token);
    count.set(id, (count.get(id) ?? 0) + 1);
  });
  return count;
});

/** The thing named at token `at` stands beside a weight in another place, too. */
export function weighedElsewhere(tokens: readonly Token[], at: number): boolean {
  const name = tokens[at];
  if (name?.t !== 'name') return false;
  return (weighedThings(tokens).get(thingOf(name)) ?? 0) > (weighedAt(tokens, at) ? 1 : 0);
}

/** `lye 4.3 oz`, `4.3 oz of lye`, `4.3 oz tub of lye`. */
export function weighedAt(tokens: readonly Token[], at: number): boolean {
  if ([1, 2].some((step) => massOf(tokens[at + step]))) return true;
  let k = at - 1;
  const skipped = (token: Token | undefined): boolean =>
    light(token) || (token?.t === 'name' && token.meaning.kind === 'role');
  while (at - k <= 3 && skipped(tokens[k])) k--;
  return massOf(tokens[k]);
}

/** What is named; any alkali is the alkali. */
export const thingOf = ({ meaning }: Extract<Token, { t: 'name' }>): string =>
  meaning.kind === 'alkali' ? 'alkali' : meaning.id;

/** Fats that stand beside a figure. */
export const weighedFats = (tokens: readonly Token[]): number =>
  tokens.filter((one, k) => {
    if (one.t !== 'name' || one.meaning.kind !== 'fat') return false;
    return [k - 1, k + 1, k - 2].some((at) => {
      const near = tokens[at];
      return near?.t === 'quantity' && near.quantity.dim !== 'time';
    });
  }).length;
