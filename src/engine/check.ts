/** Everything an answer to "is my lye right?" needs, in one call. */
import type { AlkaliId, Fat } from '../catalogue/types.ts';
import {
  alkaliMoles,
  balanceOf,
  type Fats,
  gramsOf,
  milkFats,
  molesPerGram,
  rescaleAlkali,
  superfatOf,
  superfatWithAfter,
} from './alkali.ts';
import { badRecipe, outside } from './checked.ts';
import { ALKALI_MOLAR_MASS } from './chemistry.ts';
import { done, type Result } from './fault.ts';
import { type MixUp, suspectMixUp } from './mix-up.ts';
import type { AlkaliAmount, FatAmount, Recipe, Verdict } from './recipe.ts';
import { type ScaleFitness, scaleFitness } from './scale-step.ts';
import { type SecondRoute, secondRoute } from './second-route.ts';
import { batchGramsOf, waterGramsOf } from './soap.ts';
import { spreadOf, superfatInterval } from './uncertainty.ts';
import { verdictOf } from './verdict.ts';
import { type Dissolving, dissolvingOf } from './water.ts';
import { SUPERFAT_RANGE, USUAL_SUPERFAT } from './weigh.ts';

/** Free caustic alkali, as NaOH, that a toilet soap may hold: IS 2888:2004, 0.05 % (figure quoted from memory). */
const FREE_CAUSTIC_LIMIT = 0.0005;

export interface Superfat {
  readonly nominal: number;
  /** 95 % interval. */
  readonly low: number;
  readonly high: number;
  readonly chanceOfExcess: number;
  /** With the fat added after the cook counted too. */
  readonly withAfter: number;
}

export interface CheckedFat extends FatAmount {
  /** Of the fats cooked, by weight (0–1); milk fat is not among them. */
  readonly share: number;
  /** Of the demand, milk fat counted (0–1). */
  readonly demandShare: number;
}

export interface CheckFigures {
  /** What each alkali alone, pure, would need for all the fat cooked, milk fat counted, at zero superfat. */
  readonly demand: { readonly naohGrams: number; readonly kohGrams: number };
  /** The same with every fat at the low and at the high end of its range, as a share of the nominal demand. */
  readonly demandEnds: { readonly low: number; readonly high: number };
  /** The person's own alkali, as weighed and of its purity, that would leave nothing, or the asked superfat. */
  readonly needed: {
    readonly atZero: readonly AlkaliAmount[];
    readonly asked: number;
    readonly atAsked: readonly AlkaliAmount[];
  };
  readonly superfat: Superfat;
  readonly verdict: Verdict;
  /** Shares of the batch as poured (0–1), as NaOH; `worst` with every fat at the low end of its range. */
  readonly freeAlkali: { readonly nominal: number; readonly worst: number; readonly limit: number };
  readonly lye: {
    /** Water of milk and the like counted. */
    readonly waterGrams: number;
    /** Weighed alkali over alkali and water. */
    readonly concentration: number;
    /** Water over weighed alkali. */
    readonly ratio: number;
    /** Water over the weight of fat cooked. */
    readonly shareOfFat: number;
    readonly dissolving: Dissolving;
  };
  readonly fats: readonly CheckedFat[];
  readonly milkFats: readonly (FatAmount & { readonly demandShare: number })[];
  readonly secondRoute: SecondRoute | null;
  readonly mixUp: MixUp | null;
  /** Ids of fats whose saponification value rests on memory. */
  readonly fromMemory: readonly string[];
  readonly scale: ScaleFitness;
  readonly batchGrams: number;
}

/**
 * Checks a recipe of amounts as weighed. `asked`: superfat (0–0.99) that the needed alkali is also given for.
 * Refuses, as data, what `checked.ts` does not accept; every figure of an accepted recipe is finite.
 */
export function checkRecipe(recipe: Recipe, fats: Fats, asked: number = USUAL_SUPERFAT): Result<CheckFigures> {
  const fault = badRecipe(recipe, fats) ?? outside('superfat-out-of-range', 'superfat', asked, SUPERFAT_RANGE);
  if (fault) return { ok: false, fault };

  const balance = balanceOf(recipe, fats);
  const { demand, brought, eaten } = balance;
  const nominal = superfatOf(balance);
  const { low: least, high: most, chanceOfExcess } = superfatInterval(spreadOf(recipe, fats));
  const milk = milkFats(recipe.liquids, fats);
  const cooked = [...recipe.fats, ...milk];

  let [low, high] = [0, 0];
  for (const { fat, grams } of cooked) {
    low += grams * molesPerGram(fat.saponification.low);
    high += grams * molesPerGram(fat.saponification.high);
  }
  const fatGrams = recipe.fats.reduce((sum, { grams }) => sum + grams, 0);
  const alkaliGrams = recipe.alkali.reduce((sum, { grams }) => sum + grams, 0);
  const waterGrams = waterGramsOf(recipe);
  const batchGrams = batchGramsOf(recipe);
  const concentration = alkaliGrams / (alkaliGrams + waterGrams);
  const demandShare = (fat: Fat, grams: number): number => (grams * molesPerGram(fat.saponification.nominal)) / demand;
  const free = (left: number): number => (Math.max(0, left) * ALKALI_MOLAR_MASS.naoh) / batchGrams;

  return done({
    demand: { naohGrams: gramsOf('naoh', demand), kohGrams: gramsOf('koh', demand) },
    demandEnds: { low: low / demand, high: high / demand },
    needed: {
      atZero: rescaleAlkali(recipe.alkali, demand + eaten),
      asked,
      atAsked: rescaleAlkali(recipe.alkali, demand * (1 - asked) + eaten),
    },
    superfat: { nominal, low: least, high: most, chanceOfExcess, withAfter: superfatWithAfter(balance) },
    verdict: verdictOf(nominal, chanceOfExcess),
    freeAlkali: {
      nominal: free(brought - eaten - demand),
      worst: free(brought - eaten - low),
      limit: FREE_CAUSTIC_LIMIT,
    },
    lye: {
      waterGrams,
      concentration,
      ratio: waterGrams / alkaliGrams,
      shareOfFat: waterGrams / fatGrams,
      dissolving: dissolvingOf(concentration),
    },
    fats: recipe.fats.map(({ fat, grams }) => {
      return { fat, grams, share: grams / fatGrams, demandShare: demandShare(fat, grams) };
    }),
    milkFats: milk.map(({ fat, grams }) => ({ fat, grams, demandShare: demandShare(fat, grams) })),
    secondRoute: secondRoute(recipe, fats, balance, { low: least, high: most }),
    mixUp: suspectMixUp(recipe, balance, nominal),
    fromMemory: idsFromMemory([...cooked, ...recipe.after]),
    scale: scaleFitness(recipe.alkali, demand, recipe.scaleStepGrams),
    batchGrams,
  });
}

function idsFromMemory(fats: readonly FatAmount[]): readonly string[] {
  const ids: string[] = [];
  for (const { fat } of fats) if (fat.saponification.fromMemory && !ids.includes(fat.id)) ids.push(fat.id);
  return ids;
}

/** Superfat (nominal) if the potassium or sodium hydroxide weighed were of another purity (0–1). */
export function superfatAtPurity(recipe: Recipe, fats: Fats, id: AlkaliId, purity: number): number {
  const { demand, eaten } = balanceOf(recipe, fats);
  const brought = recipe.alkali.reduce(
    (sum, one) => sum + alkaliMoles(one.id, one.grams, one.id === id ? purity : one.purity.nominal),
    0,
  );
  return 1 - (brought - eaten) / demand;
}
