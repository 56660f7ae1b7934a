import type { Recipe } from '../engine/recipe.ts';
import type { ReadAmount, RecipeReading } from '../reading/reading.ts';

/**
 * A reckoned recipe as if somebody had written it, so that corrections can change it; `from` is the post that it came
 * from, `factor` how many times that.
 */
export function readingOf(recipe: Recipe, from: RecipeReading, factor: number): RecipeReading {
  const line = (id: string, grams: number): ReadAmount => ({ id, grams, said: '' });
  return {
    ...from,
    fats: recipe.fats.map(({ fat, grams }) => line(fat.id, grams)),
    after: recipe.after.map(({ fat, grams }) => line(fat.id, grams)),
    alkali: recipe.alkali.map((one) => ({ ...one, stock: false })),
    alkaliNamed: recipe.alkali.map(({ id }) => id),
    waterGrams: recipe.waterGrams,
    liquids: recipe.liquids.map(({ liquid, grams }) => line(liquid.id, grams)),
    acids: recipe.acids.map(({ acid, grams }) => ({ ...line(acid.id, grams), strength: acid.strength })),
    others: from.others.map((one) => ({ ...one, grams: one.grams === null ? null : one.grams * factor })),
    concentration: null,
    ratio: null,
    waterShare: null,
    totalFats: null,
    scaleStep: recipe.scaleStepGrams,
    doubts: [],
    fates: [],
  };
}
