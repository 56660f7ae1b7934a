/**
 * What comes out of the pot: soap, glycerol, fat left over, and total fatty matter.
 *
 * Mass balance, from demands in mol of alkali. Triglyceride: fat + 3 alkali = 3 soap + glycerol; free fatty acid:
 * acid + alkali = soap + water; waxes give soap and alcohols in unknown parts, and are left out of `soapGrams` (their
 * whole mass is fatty matter). What of the fats stays unsaponified is taken in proportion to their demand.
 */
import type { Acid, Liquid } from '../catalogue/types.ts';
import { type Balance, balanceOf, type Fats, milkFats, molesPerGram } from './alkali.ts';
import { ALKALI_MOLAR_MASS, GLYCEROL_MOLAR_MASS, WATER_MOLAR_MASS } from './chemistry.ts';
import type { Recipe } from './recipe.ts';

/** Water that a cured bar still holds, as a share (common practice). */
const CURED_WATER: readonly [number, number] = [0.08, 0.15];

export interface SoapFigures {
  /** Everything in the pot, g; additives are not in a recipe and not counted. */
  readonly batchGrams: number;
  /** After the cure, at the drier and the wetter end of `CURED_WATER`; never above the batch. */
  readonly curedGrams: { readonly low: number; readonly high: number };
  /** Dry soap, g, of triglycerides and free acids. */
  readonly soapGrams: number;
  /** Triglycerides only: 3 mol of alkali give 1 mol. */
  readonly glycerolGrams: number;
  /** Cooked and added after, g. */
  readonly unsaponifiedFatGrams: number;
  /**
   * Fatty acids of the soap, fat left over and unsaponifiable matter together (ISO 685), as grams, as a share of the
   * batch as poured, and of the cured bar (at its wetter and drier end).
   */
  readonly totalFattyMatter: {
    readonly grams: number;
    readonly ofBatch: number;
    readonly ofCured: { readonly low: number; readonly high: number };
  };
  /** Unsaponifiable matter, g, at the middle of its range, of the fats where it is known. */
  readonly unsaponifiableGrams: number;
}

/** Mean molar mass (g/mol) of the alkali that saponifies: acids are taken to eat each kind alike. */
function meanAlkaliMass(recipe: Recipe, brought: number): number {
  const pure = recipe.alkali.reduce((sum, { grams, purity }) => sum + grams * purity.nominal, 0);
  return brought > 0 ? pure / brought : ALKALI_MOLAR_MASS.naoh;
}

/** Share of the demand that is met, 0–1. */
const saponifiedShare = ({ demand, brought, eaten }: Balance): number =>
  Math.min(1, Math.max(0, (brought - eaten) / demand));

/** Everything in the pot, g. */
export function batchGramsOf(recipe: Recipe): number {
  const sum = (lines: readonly { readonly grams: number }[]): number =>
    lines.reduce((all, { grams }) => all + grams, 0);
  return (
    sum(recipe.fats) +
    sum(recipe.after) +
    sum(recipe.alkali) +
    recipe.waterGrams +
    sum(recipe.liquids) +
    sum(recipe.acids)
  );
}

/** Water (g) that milk and the like bring, and acids that are sold in water: of vinegar 95 %. */
export const waterBrought = ({ liquids, acids }: Pick<Recipe, 'liquids' | 'acids'>): number =>
  liquids.reduce((sum, { liquid, grams }) => sum + grams * liquid.waterShare, 0) +
  acids.reduce((sum, { acid, grams }) => sum + grams * (1 - acid.strength), 0);

/** Water in the pot before the cook, g: liquid water and what the rest brings. */
export const waterGramsOf = (recipe: Recipe): number => recipe.waterGrams + waterBrought(recipe);

/** Acids sold as much water with a little acid in it: vinegar, lemon juice. */
const wet = 0.5;

/** What stands in for water: milk and the like, vinegar, lemon juice. */
export const insteadOfWater = ({ liquids, acids }: Pick<Recipe, 'liquids' | 'acids'>): readonly (Liquid | Acid)[] => [
  ...liquids.map(({ liquid }) => liquid),
  ...acids.flatMap(({ acid }) => (acid.strength < wet ? [acid] : [])),
];

/** For an accepted recipe (`checked.ts`). */
export function soapFigures(recipe: Recipe, fats: Fats): SoapFigures {
  const balance = balanceOf(recipe, fats);
  const share = saponifiedShare(balance);
  const alkaliMass = meanAlkaliMass(recipe, balance.brought);
  let [soap, glycerol, reacted, unsaponifiable, formedWater, cooked] = [0, 0, 0, 0, 0, 0];
  for (const { fat, grams } of [...recipe.fats, ...milkFats(recipe.liquids, fats)]) {
    const moles = grams * molesPerGram(fat.saponification.nominal) * share;
    const reacting = grams * (1 - (fat.unsaponifiable?.nominal ?? 0)) * share;
    cooked += grams;
    reacted += reacting;
    unsaponifiable += grams * (fat.unsaponifiable?.nominal ?? 0);
    if (fat.kind !== 'triglyceride' && fat.kind !== 'fatty-acid') continue;
    const away = fat.kind === 'triglyceride' ? GLYCEROL_MOLAR_MASS / 3 : WATER_MOLAR_MASS;
    soap += reacting + moles * (alkaliMass - away);
    if (fat.kind === 'triglyceride') glycerol += moles * away;
    else formedWater += moles * away;
  }
  for (const { fat, grams } of recipe.after) {
    cooked += grams;
    unsaponifiable += grams * (fat.unsaponifiable?.nominal ?? 0);
  }
  const esterMoles = (glycerol / GLYCEROL_MOLAR_MASS) * 3;
  // A triglyceride gives its fatty acids: it takes up three waters and loses a glycerol.
  const fattyMatter = cooked - glycerol + esterMoles * WATER_MOLAR_MASS;
  const batchGrams = batchGramsOf(recipe);
  // What is not alkali in flake is mainly water (potassium hydroxide flake is sold as 90 %).
  const alkaliWater = recipe.alkali.reduce((sum, { grams, purity }) => sum + grams * (1 - purity.nominal), 0);
  const dry =
    batchGrams -
    waterGramsOf(recipe) -
    alkaliWater -
    formedWater -
    Math.min(balance.eaten, balance.brought) * WATER_MOLAR_MASS;
  const cured = (water: number): number => Math.min(batchGrams, dry / (1 - water));
  const curedGrams = { low: cured(CURED_WATER[0]), high: cured(CURED_WATER[1]) };
  return {
    batchGrams,
    curedGrams,
    soapGrams: soap,
    glycerolGrams: glycerol,
    unsaponifiedFatGrams: cooked - reacted - unsaponifiable,
    totalFattyMatter: {
      grams: fattyMatter,
      ofBatch: fattyMatter / batchGrams,
      ofCured: { low: fattyMatter / curedGrams.high, high: fattyMatter / curedGrams.low },
    },
    unsaponifiableGrams: unsaponifiable,
  };
}
