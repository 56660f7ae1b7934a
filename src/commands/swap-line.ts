/** What another fat in the place of one would need, where somebody asks. */
import type { Action } from '../answer/types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import { type CheckFigures, checkRecipe } from '../engine/check.ts';
import type { FatAmount, Recipe } from '../engine/recipe.ts';
import { roundDown } from '../engine/scale-step.ts';
import type { RecipeReading, SwapAsked } from '../reading/reading.ts';
import { massAtMost, percent, type Style } from '../units/print.ts';
import { alkaliAmounts, capital, nameOf } from './phrases.ts';

/** The fats with the other one instead, weight for weight; null where none would be left, or none goes. */
function swapped(
  fats: readonly FatAmount[],
  { goes, comes }: SwapAsked,
  catalogue: Catalogue,
): readonly FatAmount[] | null {
  const gone = fats.find(({ fat }) => fat.id === goes);
  const rest = fats.filter((one) => one !== gone);
  const fat = comes === null ? null : catalogue.fats.get(comes);
  if (!gone || fat === undefined || (fat === null && rest.length === 0)) return null;
  if (fat === null) return rest;
  return rest.some((one) => one.fat === fat)
    ? rest.map((one) => (one.fat === fat ? { fat, grams: one.grams + gone.grams } : one))
    : fats.map((one) => (one === gone ? { fat, grams: gone.grams } : one));
}

/**
 * The alkali that the recipe would need after the swap that the post asks about, at the superfat of `figures`, and what
 * the weighed alkali would leave; null where it asks of none.
 */
export function swapLine(
  recipe: Recipe,
  { needed: { asked } }: CheckFigures,
  { swapAsked, alkali }: RecipeReading,
  catalogue: Catalogue,
  style: Style,
): string | null {
  const fats = swapAsked && swapped(recipe.fats, swapAsked, catalogue);
  const changed = fats && checkRecipe({ ...recipe, fats }, catalogue.fats, asked);
  if (!swapAsked || !changed?.ok) return null;
  const { goes, comes } = swapAsked;
  const { needed, superfat, verdict } = changed.value;
  const step = recipe.scaleStepGrams;
  const weigh = alkaliAmounts(needed.atAsked, (grams) => massAtMost(roundDown(grams, step), style, step));
  const left = asked > 0 ? `to leave at least ${percent(asked, style)}` : 'for nothing left over';
  const what = comes
    ? `With ${nameOf(comes, catalogue)} in the place of ${nameOf(goes, catalogue)}, weight for weight`
    : `Without the ${nameOf(goes, catalogue)}`;
  const mine =
    alkali.length === 0
      ? ''
      : verdict === 'excess-alkali'
        ? ' What you have would be too much.'
        : ` What you have would leave about ${percent(superfat.nominal, style)}.`;
  return `${capital(what)}: weigh ${weigh}, ${left}.${mine}`;
}

/** To go on with the recipe as the post asks about it. */
export const swapStep = ({ swapAsked }: RecipeReading, catalogue: Catalogue): readonly Action[] => {
  if (!swapAsked) return [];
  const goes = nameOf(swapAsked.goes, catalogue);
  const comes = swapAsked.comes && nameOf(swapAsked.comes, catalogue);
  return [
    comes
      ? { label: `with ${comes}`, request: `swap ${goes} for ${comes}` }
      : { label: `without ${goes}`, request: `leave out the ${goes}` },
  ];
};
