/**
 * Alkali demand and balance, in moles, so that sodium hydroxide, potassium hydroxide and acids add up.
 *
 * Demand of a fat: mass (g) × saponification value (mg KOH/g) / 1000 / 56.105. Sources: ISO 3657, AOCS Cd 3 for the
 * saponification value; molar masses from CIAAW atomic weights.
 */
import type { Acid, AlkaliId, Fat } from '../catalogue/types.ts';
import { ALKALI_MOLAR_MASS } from './chemistry.ts';
import type { AcidAmount, AlkaliAmount, FatAmount, LiquidAmount, Recipe, Share } from './recipe.ts';

export type Fats = ReadonlyMap<string, Fat>;

/** Alkali (mol) that saponifies one gram of a fat of this saponification value (mg KOH/g). */
export const molesPerGram = (saponification: number): number => saponification / 1000 / ALKALI_MOLAR_MASS.koh;

/** Demand (mol) of the fats at zero superfat, each at its nominal saponification value. */
export function demandOf(fats: readonly FatAmount[]): number {
  let moles = 0;
  for (const { fat, grams } of fats) moles += grams * molesPerGram(fat.saponification.nominal);
  return moles;
}

/** The same demand as grams of one pure alkali. */
export const gramsOf = (id: AlkaliId, moles: number): number => moles * ALKALI_MOLAR_MASS[id];

/**
 * Fat (g) that milk and the like bring, as the fat it counts as. Liquids without fat, or whose fat the catalogue does
 * not hold, bring none; `checked.ts` refuses the latter.
 */
export function milkFats(liquids: readonly LiquidAmount[], fats: Fats): readonly FatAmount[] {
  return liquids.flatMap(({ liquid, grams }) => {
    const fat = liquid.fat === null ? undefined : fats.get(liquid.fat);
    return fat && liquid.fatShare > 0 ? [{ fat, grams: grams * liquid.fatShare }] : [];
  });
}

/** Alkali (mol) that an acid eats before any fat does: protons × grams × strength / molar mass. */
export const acidMoles = (acid: Acid, grams: number): number => (acid.protons * grams * acid.strength) / acid.molarMass;

export const eatenBy = (acids: readonly AcidAmount[]): number =>
  acids.reduce((moles, { acid, grams }) => moles + acidMoles(acid, grams), 0);

/** Pure alkali (mol) in weighed grams of a given purity (share by mass). */
export const alkaliMoles = (id: AlkaliId, grams: number, purity: number): number =>
  (grams * purity) / ALKALI_MOLAR_MASS[id];

export const broughtBy = (alkali: readonly AlkaliAmount[]): number =>
  alkali.reduce((moles, { id, grams, purity }) => moles + alkaliMoles(id, grams, purity.nominal), 0);

/** All in mol of alkali. */
export interface Balance {
  /** What the fat cooked with the alkali takes, milk fat counted. */
  readonly demand: number;
  /** What the fat added after the cook would take. */
  readonly afterDemand: number;
  readonly brought: number;
  /** What acids take first. */
  readonly eaten: number;
}

export const balanceOf = (recipe: Recipe, fats: Fats): Balance => ({
  demand: demandOf(recipe.fats) + demandOf(milkFats(recipe.liquids, fats)),
  afterDemand: demandOf(recipe.after),
  brought: broughtBy(recipe.alkali),
  eaten: eatenBy(recipe.acids),
});

/**
 * Superfat: the share of the fat's demand left without alkali, 1 − (alkali − what acids eat) / demand.
 * Negative means excess alkali; above 1, acids eat more than there is. Needs a demand above 0.
 */
export const superfatOf = ({ demand, brought, eaten }: Balance): number => 1 - (brought - eaten) / demand;

/** Superfat with the fat added after the cook in the demand too. */
export const superfatWithAfter = ({ demand, afterDemand, brought, eaten }: Balance): number =>
  1 - (brought - eaten) / (demand + afterDemand);

/** One alkali of a mix: `share` is of the moles (share of demand) or of the grams weighed, as `SplitBy` says. */
export interface AlkaliPart {
  readonly id: AlkaliId;
  readonly purity: Share;
  readonly share: number;
}

/** `demand`: shares of the fat's demand, hence moles (the default); `weight`: shares of the grams weighed. */
export type SplitBy = 'demand' | 'weight';

/** Grams to weigh of each alkali so that together they hold `moles` of pure alkali. Shares must sum to 1. */
export function splitAlkali(moles: number, parts: readonly AlkaliPart[], by: SplitBy): readonly AlkaliAmount[] {
  if (by === 'demand')
    return parts.map(({ id, purity, share }) => ({ id, purity, grams: gramsOf(id, moles * share) / purity.nominal }));
  const perGram = parts.reduce((sum, { id, purity, share }) => sum + alkaliMoles(id, share, purity.nominal), 0);
  return parts.map(({ id, purity, share }) => ({ id, purity, grams: (moles / perGram) * share }));
}

/**
 * The same kinds in the same proportions, holding `moles` together: what a recipe should have had.
 * Needs alkali above 0.
 */
export function rescaleAlkali(alkali: readonly AlkaliAmount[], moles: number): readonly AlkaliAmount[] {
  const factor = moles / broughtBy(alkali);
  return alkali.map(({ id, grams, purity }) => ({ id, grams: grams * factor, purity }));
}

/** What a stock solution of concentration w (share by mass) brings: pure alkali and water, in g. */
export const fromStock = (
  solutionGrams: number,
  w: number,
): { readonly alkaliGrams: number; readonly waterGrams: number } => ({
  alkaliGrams: solutionGrams * w,
  waterGrams: solutionGrams * (1 - w),
});
