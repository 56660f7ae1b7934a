/** What the engine accepts. Inside these limits every figure it gives is finite. */
import type { Fats } from './alkali.ts';
import { type EngineFault, refuse } from './fault.ts';
import type { Recipe, Share } from './recipe.ts';

/** Greatest single amount, g: a thousand tonnes. */
const MOST_GRAMS = 1e9;
/** Least fat and least alkali of a batch, g. */
const LEAST_FAT_GRAMS = 0.1;
const LEAST_ALKALI_GRAMS = 1e-3;
/** Scale step, g: from an analytical balance to a platform scale. */
const STEP_RANGE: readonly [number, number] = [1e-4, 1000];
export const PURITY_RANGE: readonly [number, number] = [0.01, 1];

/** Null when a figure is finite and within [low, high]. */
export function outside(
  kind: EngineFault['kind'],
  figure: string,
  value: number,
  [low, high]: readonly [number, number],
): EngineFault | null {
  if (!Number.isFinite(value)) return refuse('not-finite', figure, value).fault;
  return value < low || value > high ? refuse(kind, figure, value, [low, high]).fault : null;
}

/** Null for an amount (g) that can be: 0 or more, at most `MOST_GRAMS`. */
export function badGrams(figure: string, grams: number): EngineFault | null {
  if (!Number.isFinite(grams)) return refuse('not-finite', figure, grams).fault;
  if (grams < 0) return refuse('negative', figure, grams).fault;
  return grams > MOST_GRAMS ? refuse('too-much', figure, grams, [0, MOST_GRAMS]).fault : null;
}

/** Null for a purity whose range holds its nominal value and lies within `PURITY_RANGE`. */
export function badPurity(id: string, { nominal, low, high }: Share): EngineFault | null {
  for (const value of [nominal, low, high]) {
    const fault = outside('purity-out-of-range', `purity ${id}`, value, PURITY_RANGE);
    if (fault) return fault;
  }
  return low <= nominal && nominal <= high
    ? null
    : refuse('purity-out-of-range', `purity ${id}`, nominal, [low, high]).fault;
}

/** The parts of a recipe that a demand needs; the alkali is not looked at. Null when all are acceptable. */
export function badDemand(
  recipe: Pick<Recipe, 'fats' | 'after' | 'liquids' | 'acids' | 'scaleStepGrams'>,
  fats: Fats,
): EngineFault | null {
  let total = 0;
  for (const { fat, grams } of recipe.fats) {
    const fault = badGrams(`fat ${fat.id}`, grams);
    if (fault) return fault;
    total += grams;
  }
  if (total === 0) return refuse('no-fat', 'fat', 0).fault;
  if (total < LEAST_FAT_GRAMS) return refuse('too-little', 'fat', total, [LEAST_FAT_GRAMS, MOST_GRAMS]).fault;
  if (total > MOST_GRAMS) return refuse('too-much', 'fat', total, [LEAST_FAT_GRAMS, MOST_GRAMS]).fault;
  for (const { fat, grams } of recipe.after) {
    const fault = badGrams(`after ${fat.id}`, grams);
    if (fault) return fault;
  }
  for (const { liquid, grams } of recipe.liquids) {
    const fault = badGrams(`liquid ${liquid.id}`, grams);
    if (fault) return fault;
    if (liquid.fat !== null && liquid.fatShare > 0 && !fats.has(liquid.fat))
      return refuse('unknown-fat', `liquid ${liquid.id}`, liquid.fatShare).fault;
  }
  for (const { acid, grams } of recipe.acids) {
    const fault = badGrams(`acid ${acid.id}`, grams);
    if (fault) return fault;
  }
  return outside('step-out-of-range', 'scale step', recipe.scaleStepGrams, STEP_RANGE);
}

/** A whole recipe, alkali and water too. */
export function badRecipe(recipe: Recipe, fats: Fats): EngineFault | null {
  const fault = badDemand(recipe, fats) ?? badGrams('water', recipe.waterGrams);
  if (fault) return fault;
  let total = 0;
  for (const { id, grams, purity } of recipe.alkali) {
    const bad = badGrams(`alkali ${id}`, grams) ?? badPurity(id, purity);
    if (bad) return bad;
    total += grams;
  }
  if (total === 0) return refuse('no-alkali', 'alkali', 0).fault;
  return total < LEAST_ALKALI_GRAMS
    ? refuse('too-little', 'alkali', total, [LEAST_ALKALI_GRAMS, MOST_GRAMS]).fault
    : null;
}
