/**
 * From fats and a wanted superfat to what goes on the scale.
 *
 * Needed = demand · (1 − superfat) + what acids eat, over purity. Alkali is rounded down to the scale's step, so that
 * rounding never lowers the superfat; water to the nearest. The superfat that results is `checkRecipe`'s to tell.
 */
import type { Liquid } from '../catalogue/types.ts';
import { type AlkaliPart, demandOf, eatenBy, type Fats, milkFats, type SplitBy, splitAlkali } from './alkali.ts';
import { badDemand, badPurity, outside } from './checked.ts';
import { done, type EngineFault, type Result, refuse } from './fault.ts';
import type { AlkaliAmount, LiquidAmount, Recipe } from './recipe.ts';
import { roundDown, roundNearest } from './scale-step.ts';
import { waterBrought } from './soap.ts';
import { USUAL_WATER, WATER_RANGES, type WaterRule, waterFor } from './water.ts';

export const USUAL_SUPERFAT = 0.05;
/** Asked superfat: from none to (just short of) all. */
export const SUPERFAT_RANGE: readonly [number, number] = [0, 0.99];

export interface LyeRequest extends Omit<Recipe, 'alkali' | 'waterGrams'> {
  /** Share of the demand to leave, `SUPERFAT_RANGE`; 5 % when unsaid. */
  readonly superfat?: number | undefined;
  /** One or two, with shares that sum to 1. */
  readonly alkali: readonly AlkaliPart[];
  readonly splitBy?: SplitBy | undefined;
  readonly water?: WaterRule | undefined;
  /** A liquid that takes the place of all water, gram for gram; its fat joins the demand. */
  readonly insteadOfWater?: Liquid | undefined;
}

export interface ToWeigh {
  /** In amounts to weigh. */
  readonly recipe: Recipe;
  /** Alkali before rounding. */
  readonly exact: readonly AlkaliAmount[];
}

export function toWeigh(request: LyeRequest, fats: Fats): Result<ToWeigh> {
  const fault = badRequest(request, fats);
  if (fault) return { ok: false, fault };
  const { scaleStepGrams: step, water: rule = USUAL_WATER, splitBy = 'demand', superfat = USUAL_SUPERFAT } = request;
  const fatGrams = request.fats.reduce((sum, { grams }) => sum + grams, 0);
  const rounded = (alkali: readonly AlkaliAmount[]): readonly AlkaliAmount[] =>
    alkali.map((one) => ({ ...one, grams: roundDown(one.grams, step) }));
  const waterOf = (alkali: readonly AlkaliAmount[]): number =>
    waterFor(
      rule,
      alkali.reduce((sum, { grams }) => sum + grams, 0),
      fatGrams,
    );

  const needed = (liquids: readonly LiquidAmount[]): readonly AlkaliAmount[] => {
    const demand = demandOf(request.fats) + demandOf(milkFats(liquids, fats));
    return splitAlkali(demand * (1 - superfat) + eatenBy(request.acids), request.alkali, splitBy);
  };
  let liquids = request.liquids;
  if (request.insteadOfWater) {
    // The liquid's fat asks for alkali and the alkali for liquid: L = a + b·L.
    const liquid = request.insteadOfWater;
    const wanted = (grams: number): number => waterOf(needed([...request.liquids, { liquid, grams }]));
    const a = wanted(0);
    const b = (wanted(fatGrams) - a) / fatGrams;
    if (b > 0.9) return refuse('concentration-out-of-range', `liquid ${liquid.id}`, b, [0, 0.9]);
    liquids = [...request.liquids, { liquid, grams: roundNearest(a / (1 - b), step) }];
  }
  const exact = needed(liquids);
  const alkali = rounded(exact);
  for (const [index, { id, grams }] of alkali.entries()) {
    const asked = exact[index]?.grams ?? 0;
    if (grams === 0 && asked > 0) return refuse('too-little', `alkali ${id}`, asked, [step, Number.MAX_VALUE]);
  }
  const { after, acids, scaleStepGrams } = request;
  // water that was weighed is weighed; what a rule asks for, the liquids bring a part of
  const brought = rule.kind === 'grams' ? 0 : waterBrought({ liquids, acids });
  const left = request.insteadOfWater ? 0 : Math.max(0, waterOf(alkali) - brought);
  const waterGrams = roundNearest(left, step);
  return done({ recipe: { fats: request.fats, after, alkali, waterGrams, liquids, acids, scaleStepGrams }, exact });
}

function badRequest(request: LyeRequest, fats: Fats): EngineFault | null {
  const { superfat = USUAL_SUPERFAT, water = USUAL_WATER, alkali } = request;
  const { insteadOfWater: instead } = request;
  const liquids = instead ? [...request.liquids, { liquid: instead, grams: 0 }] : request.liquids;
  const fault =
    badDemand({ ...request, liquids }, fats) ??
    outside('superfat-out-of-range', 'superfat', superfat, SUPERFAT_RANGE) ??
    outside('concentration-out-of-range', `water ${water.kind}`, water.value, WATER_RANGES[water.kind]);
  if (fault) return fault;
  let shares = 0;
  for (const { id, purity, share } of alkali) {
    const bad = badPurity(id, purity) ?? outside('split-out-of-range', `share ${id}`, share, [0, 1]);
    if (bad) return bad;
    shares += share;
  }
  if (shares === 0) return refuse('no-alkali', 'alkali', 0).fault;
  return Math.abs(shares - 1) > 1e-6 ? refuse('split-out-of-range', 'shares', shares, [1, 1]).fault : null;
}
