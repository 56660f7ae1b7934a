/** `result` of `check` and `lye`, after the published schema: figures unrounded, grams as weighed. */
import type { CheckFigures } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';

function recipeResult(recipe: Recipe): Readonly<Record<string, unknown>> {
  const fatGrams = recipe.fats.reduce((sum, { grams }) => sum + grams, 0);
  return {
    fats: recipe.fats.map(({ fat, grams }) => ({ id: fat.id, grams, share: grams / fatGrams })),
    after: recipe.after.map(({ fat, grams }) => ({ id: fat.id, grams })),
    alkali: recipe.alkali.map(({ id, grams, purity }) => ({ id, grams, purity: purity.nominal })),
    water: { grams: recipe.waterGrams },
    liquids: recipe.liquids.map(({ liquid, grams }) => ({
      id: liquid.id,
      grams,
      waterGrams: grams * liquid.waterShare,
      fatGrams: grams * liquid.fatShare,
    })),
  };
}

export function lyeResult(recipe: Recipe, figures: CheckFigures): Readonly<Record<string, unknown>> {
  const { demand, superfat, verdict } = figures;
  return { recipe: recipeResult(recipe), demand, superfat, verdict };
}
