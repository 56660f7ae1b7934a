/**
 * The superfat again, by a route that shares no table with the first: each fat's saponification value from its fatty
 * acids (AOCS Cd 3a-94) instead of from published ranges. A slip in one table shows as a disagreement.
 */
import { type Balance, type Fats, milkFats, molesPerGram } from './alkali.ts';
import { COMPOSITION_TOLERANCE, compositionOf } from './composition.ts';
import type { Recipe } from './recipe.ts';

export interface SecondRoute {
  /** Share; the ends allow for the unsaponifiable matter and for ±2 % in the compositions. */
  readonly superfat: { readonly nominal: number; readonly low: number; readonly high: number };
  /** Share of the first route's demand whose fats have a composition; the rest is taken from the first route. */
  readonly covered: number;
  /** Whether the two routes' intervals meet. */
  readonly agrees: boolean;
}

/** `first`: the interval of the first route. Null when no fat has a composition. */
export function secondRoute(
  recipe: Recipe,
  fats: Fats,
  balance: Balance,
  first: { readonly low: number; readonly high: number },
): SecondRoute | null {
  let [nominal, low, high, covered] = [0, 0, 0, 0];
  for (const { fat, grams } of [...recipe.fats, ...milkFats(recipe.liquids, fats)]) {
    const composition = compositionOf(fat);
    const byRange = grams * molesPerGram(fat.saponification.nominal);
    if (!composition) {
      nominal += byRange;
      low += byRange;
      high += byRange;
      continue;
    }
    covered += byRange;
    const { saponification } = composition;
    nominal += grams * molesPerGram(saponification.nominal);
    low += grams * molesPerGram(saponification.low * (1 - COMPOSITION_TOLERANCE));
    high += grams * molesPerGram(saponification.high * (1 + COMPOSITION_TOLERANCE));
  }
  if (covered === 0) return null;
  const alkali = balance.brought - balance.eaten;
  const ends = [1 - alkali / low, 1 - alkali / high];
  const superfat = { nominal: 1 - alkali / nominal, low: Math.min(...ends), high: Math.max(...ends) };
  const agrees = superfat.low <= first.high && first.low <= superfat.high;
  return { superfat, covered: covered / balance.demand, agrees };
}
