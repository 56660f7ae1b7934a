/** A recipe made larger or smaller. Fats scale and are rounded; the alkali is then reckoned anew from them. */
import { alkaliMoles, balanceOf, broughtBy, type Fats, superfatOf } from './alkali.ts';
import { badGrams, badRecipe, outside } from './checked.ts';
import { done, type Result, refuse } from './fault.ts';
import { batterVolume } from './mould.ts';
import type { AlkaliAmount, Recipe } from './recipe.ts';
import { roundFat, roundNearest, type ScaleFitness, scaleFitness, WEIGHING_TOLERANCE } from './scale-step.ts';
import { batchGramsOf, soapFigures } from './soap.ts';
import { toWeigh } from './weigh.ts';

/** What the scaled batch is to be. Weights in g, volume in mL. */
export type ScaleTarget =
  | { readonly kind: 'factor'; readonly value: number }
  /** Fat cooked, without milk fat. */
  | { readonly kind: 'fat-weight'; readonly grams: number }
  /** Everything in the pot. */
  | { readonly kind: 'batch-weight'; readonly grams: number }
  | { readonly kind: 'mould'; readonly millilitres: number }
  /** `poured`: weight of batter in each bar; `cured`: of the bar after the cure, at the middle of its water. */
  | { readonly kind: 'bars'; readonly count: number; readonly grams: number; readonly state: 'poured' | 'cured' }
  /** What there is of some ingredients, by id (`water` too): the one that runs out first decides. */
  | { readonly kind: 'at-hand'; readonly amounts: readonly { readonly id: string; readonly grams: number }[] };

const FACTOR_RANGE: readonly [number, number] = [1e-4, 1e4];

export interface Scaled {
  readonly factor: number;
  /** In amounts to weigh. */
  readonly recipe: Recipe;
  /** The recipe's own alkali times the factor, unrounded: what a plain multiple would have said. */
  readonly multiple: readonly AlkaliAmount[];
  /** Nominal superfat that the recipe was made to keep. */
  readonly superfat: number;
  /** The ingredient that decided, for `at-hand`. */
  readonly scarcest: string | null;
}

/** By how much to multiply; `scarcest` only for `at-hand`. */
function scaleFactor(
  recipe: Recipe,
  fats: Fats,
  target: ScaleTarget,
): Result<{ readonly factor: number; readonly scarcest: string | null }> {
  const fault = badRecipe(recipe, fats);
  if (fault) return { ok: false, fault };
  let [factor, scarcest] = [Number.NaN, null as string | null];
  switch (target.kind) {
    case 'factor':
      factor = target.value;
      break;
    case 'fat-weight':
      factor = target.grams / recipe.fats.reduce((sum, { grams }) => sum + grams, 0);
      break;
    case 'batch-weight':
      factor = target.grams / batchGramsOf(recipe);
      break;
    case 'mould':
      factor = target.millilitres / batterVolume(recipe);
      break;
    case 'bars': {
      const { low, high } = soapFigures(recipe, fats).curedGrams;
      const one = target.state === 'poured' ? batchGramsOf(recipe) : (low + high) / 2;
      factor = (target.count * target.grams) / one;
      break;
    }
    case 'at-hand': {
      const used = amountsById(recipe);
      for (const { id, grams } of target.amounts) {
        const bad = badGrams(`at hand ${id}`, grams);
        if (bad) return { ok: false, fault: bad };
        const needed = used.get(id) ?? 0;
        if (needed > 0 && !(factor <= grams / needed)) [factor, scarcest] = [grams / needed, id];
      }
      if (scarcest === null) return refuse('nothing-to-scale', 'at hand', target.amounts.length);
    }
  }
  const kind = factor < FACTOR_RANGE[0] ? 'too-little' : 'too-much';
  const bad = outside(kind, target.kind, factor, FACTOR_RANGE);
  return bad ? { ok: false, fault: bad } : done({ factor, scarcest });
}

function amountsById(recipe: Recipe): ReadonlyMap<string, number> {
  const used = new Map([['water', recipe.waterGrams]]);
  const add = (id: string, grams: number): void => void used.set(id, (used.get(id) ?? 0) + grams);
  for (const { fat, grams } of [...recipe.fats, ...recipe.after]) add(fat.id, grams);
  for (const { id, grams } of recipe.alkali) add(id, grams);
  for (const { liquid, grams } of recipe.liquids) add(liquid.id, grams);
  for (const { acid, grams } of recipe.acids) add(acid.id, grams);
  return used;
}

/**
 * The recipe at another size. It keeps its own superfat, or takes `superfat` (0–0.99); a recipe with excess alkali is
 * refused unless one is given. Alkali keeps its kinds, their shares of the demand and its ratio of water.
 */
export function scaleRecipe(recipe: Recipe, fats: Fats, target: ScaleTarget, superfat?: number): Result<Scaled> {
  const found = scaleFactor(recipe, fats, target);
  if (!found.ok) return found;
  const { factor, scarcest } = found.value;
  const step = recipe.scaleStepGrams;
  const own = superfatOf(balanceOf(recipe, fats));
  // A recipe for exactly nothing left over may reckon to a hair below.
  const kept = superfat ?? (Math.abs(own) < 1e-9 ? 0 : own);
  const brought = broughtBy(recipe.alkali);
  const alkaliGrams = recipe.alkali.reduce((sum, { grams }) => sum + grams, 0);
  const round = <T extends { readonly grams: number }>(lines: readonly T[]): readonly T[] =>
    lines.map((line) => ({ ...line, grams: roundFat(line.grams * factor, step) }));
  const scaled = {
    fats: round(recipe.fats),
    after: round(recipe.after),
    liquids: round(recipe.liquids),
    acids: round(recipe.acids),
    scaleStepGrams: step,
  };
  const parts = recipe.alkali.map(({ id, grams, purity }) => {
    return { id, purity, share: alkaliMoles(id, grams, purity.nominal) / brought };
  });
  const weighed = toWeigh({ ...scaled, superfat: kept, alkali: parts }, fats);
  if (!weighed.ok) return weighed;
  const { alkali } = weighed.value.recipe;
  const ratio = recipe.waterGrams / alkaliGrams;
  const waterGrams = roundNearest(alkali.reduce((sum, { grams }) => sum + grams, 0) * ratio, step);
  const multiple = recipe.alkali.map((one) => ({ ...one, grams: one.grams * factor }));
  return done({ factor, recipe: { ...scaled, alkali, waterGrams }, multiple, superfat: kept, scarcest });
}

/** How well a scale of this step (g) weighs the recipe, and the least multiple of it that it weighs well. */
export function leastBatch(
  recipe: Recipe,
  fats: Fats,
  step: number = recipe.scaleStepGrams,
  tolerance: number = WEIGHING_TOLERANCE,
): Result<ScaleFitness & { readonly fatGrams: number; readonly batchGrams: number }> {
  const fault =
    badRecipe({ ...recipe, scaleStepGrams: step }, fats) ??
    outside('step-out-of-range', 'tolerance', tolerance, [1e-5, 1]);
  if (fault) return { ok: false, fault };
  const fitness = scaleFitness(recipe.alkali, balanceOf(recipe, fats).demand, step, tolerance);
  const fatGrams = recipe.fats.reduce((sum, { grams }) => sum + grams, 0) * fitness.leastFactor;
  return done({ ...fitness, fatGrams, batchGrams: batchGramsOf(recipe) * fitness.leastFactor });
}
