/** From what a post says to what the engine reckons with, and what was taken on the way. */
import type { Acid, AlkaliId, Catalogue } from '../catalogue/types.ts';
import type { AcidAmount, AlkaliAmount, FatAmount, LiquidAmount, Recipe, Share } from '../engine/recipe.ts';
import { insteadOfWater } from '../engine/soap.ts';
import { concentrationOf, ratioOf, USUAL_WATER } from '../engine/water.ts';
import type { ReadAmount, RecipeReading } from '../reading/reading.ts';
import { number, percent, type Style } from '../units/print.ts';
import { alkaliName } from './phrases.ts';
import type { Settings } from './settings/values.ts';

/** Readability of a kitchen scale, g. */
export const USUAL_STEP = 1;

const exactly = (nominal: number): Share => ({ nominal, low: nominal, high: nominal });

const fatsOf = (read: readonly ReadAmount[], catalogue: Catalogue): readonly FatAmount[] =>
  read.reduce<FatAmount[]>((all, { id, grams }) => {
    const fat = catalogue.fats.get(id);
    if (fat) all.push({ fat, grams });
    return all;
  }, []);

/** What a recipe brings beside its alkali and its water. */
export type Parts = Pick<Recipe, 'fats' | 'after' | 'liquids' | 'acids' | 'scaleStepGrams'>;

export function partsOf(reading: RecipeReading, catalogue: Catalogue, step: number): Parts {
  const liquids = reading.liquids.flatMap(({ id, grams }): readonly LiquidAmount[] => {
    const liquid = catalogue.liquids.get(id);
    return liquid ? [{ liquid, grams }] : [];
  });
  const acids = reading.acids.flatMap(({ id, grams, strength }): readonly AcidAmount[] => {
    const acid = catalogue.acids.get(id);
    if (!acid) return [];
    return [{ acid: strength === null || strength === acid.strength ? acid : dilutedTo(acid, strength), grams }];
  });
  const fats = fatsOf(reading.fats, catalogue);
  return { fats, after: fatsOf(reading.after, catalogue), liquids, acids, scaleStepGrams: step };
}

/** An acid of another strength (0–1) than its usual one, which its name tells. */
const dilutedTo = (acid: Acid, strength: number): Acid => ({
  ...acid,
  strength,
  name: `${acid.name.replace(/ \(pure\)$|, \d+ %.*$/, '')}, ${Number((strength * 100).toFixed(1))} %`,
});

/** Purity of one alkali: said at the amount, said apart, or the usual one. `assumed` is false where somebody said it. */
export function purityOf(
  id: AlkaliId,
  said: Share | null,
  apart: Share | null,
  mixed: boolean,
  catalogue: Catalogue,
): { readonly purity: Share; readonly assumed: boolean } {
  // A purity said once in a mix is that of the potassium hydroxide: sodium hydroxide is sold nearly pure.
  const own = said ?? (mixed && id === 'naoh' ? null : apart);
  if (own) return { purity: own, assumed: false };
  return { purity: exactly(catalogue.alkalis.get(id)?.purity.usual ?? 1), assumed: true };
}

export interface Weighed {
  readonly recipe: Recipe;
  /** Kinds whose purity nobody said. */
  readonly purityAssumed: readonly AlkaliId[];
  /** True where no water and nothing that holds water was named. */
  readonly dry: boolean;
  readonly waterAssumed: string | null;
}

/** A recipe with alkali as somebody means to make it. */
export function recipeOf(
  reading: RecipeReading,
  catalogue: Catalogue,
  given: { readonly step: number; readonly purity: number | null },
  style: Style,
): Weighed {
  const parts = partsOf(reading, catalogue, given.step);
  const apart = given.purity === null ? reading.purity : exactly(given.purity);
  const mixed = reading.alkali.some(({ id }) => id !== reading.alkali[0]?.id);
  const purityAssumed: AlkaliId[] = [];
  const alkali = reading.alkali.map(({ id, grams, purity: said, stock }): AlkaliAmount => {
    if (stock) return { id, grams, purity: exactly(1) };
    const { purity, assumed } = purityOf(id, said, apart, mixed, catalogue);
    if (assumed) purityAssumed.push(id);
    return { id, grams, purity };
  });
  const total = alkali.reduce((sum, { grams }) => sum + grams, 0);
  const rule = reading.ratio ?? (reading.concentration === null ? null : ratioOf(reading.concentration));
  const implied =
    reading.waterGrams === null && insteadOfWater(parts).length === 0 && rule !== null ? rule * total : null;
  return {
    recipe: {
      fats: parts.fats,
      after: parts.after,
      liquids: parts.liquids,
      acids: parts.acids,
      scaleStepGrams: parts.scaleStepGrams,
      alkali,
      waterGrams: reading.waterGrams ?? implied ?? 0,
    },
    purityAssumed,
    dry: reading.waterGrams === null && insteadOfWater(parts).length === 0 && implied === null,
    waterAssumed:
      implied === null
        ? null
        : `I took ${number(implied, 0, style)} g water, from the ${reading.ratio === null ? `${percent(reading.concentration ?? 0, style)} solution` : 'ratio'} you gave.`,
  };
}

/** Share of alkali in a lye solution of which nobody says how strong it is. */
export function usualStrength({ water }: Settings): number {
  if (water?.kind === 'concentration') return water.value;
  return water?.kind === 'ratio' ? concentrationOf(water.value) : USUAL_WATER.value;
}

/** Water (g) for a usual solution of this much alkali. */
export const usualWater = (alkaliGrams: number): number => alkaliGrams * ratioOf(USUAL_WATER.value);

/** "I took the sodium hydroxide (NaOH) as pure." */
export const pureLine = (id: AlkaliId, purity: Share, style: Style): string =>
  `I took the ${alkaliName[id]} as ${purity.nominal === 1 ? 'pure' : `${percent(purity.nominal, style)} pure`}`;
