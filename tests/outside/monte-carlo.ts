/**
 * JCGM 101:2008 propagation of distributions, as the judge of the engine's interval. It shares no code with the engine:
 * the model of the superfat is written out again, without any linearisation, and drawn with a seeded generator.
 */
import type { Fat } from '../../src/catalogue/types.ts';
import type { Recipe } from '../../src/engine/recipe.ts';
import { seeded } from '../engine/fixtures.ts';

const MOLAR_MASS = { naoh: 39.997, koh: 56.105 };

export interface Judged {
  /** Drawn superfats, rising. */
  readonly draws: Float64Array;
  readonly low: number;
  readonly high: number;
  readonly chanceOfExcess: number;
}

export function monteCarlo(recipe: Recipe, fats: ReadonlyMap<string, Fat>, trials: number, seed: number): Judged {
  const random = seeded(seed);
  const within = (low: number, high: number): number => low + (high - low) * random();
  const weigh = (grams: number): number => {
    const half = Math.min(recipe.scaleStepGrams / 2, grams);
    return within(grams - half, grams + half);
  };
  const draws = new Float64Array(trials);
  let excess = 0;
  for (let trial = 0; trial < trials; trial++) {
    const lots = new Map<string, number>();
    const saponification = (fat: Fat): number => {
      const known = lots.get(fat.id) ?? within(fat.saponification.low, fat.saponification.high);
      lots.set(fat.id, known);
      return known;
    };
    let demand = 0;
    for (const { fat, grams } of recipe.fats) demand += (weigh(grams) * saponification(fat)) / 56105;
    for (const { liquid, grams } of recipe.liquids) {
      const fat = liquid.fat === null ? undefined : fats.get(liquid.fat);
      if (fat) demand += (weigh(grams) * liquid.fatShare * saponification(fat)) / 56105;
    }
    const purities = new Map<string, number>();
    let alkali = 0;
    for (const { id, grams, purity } of recipe.alkali) {
      const key = `${id}${purity.low}${purity.high}`;
      const drawn = purities.get(key) ?? within(purity.low, purity.high);
      purities.set(key, drawn);
      alkali += (weigh(grams) * drawn) / MOLAR_MASS[id];
    }
    for (const { acid, grams } of recipe.acids)
      alkali -= (acid.protons * weigh(grams) * acid.strength) / acid.molarMass;
    const superfat = 1 - alkali / demand;
    draws[trial] = superfat;
    if (superfat < 0) excess++;
  }
  draws.sort();
  const at = (p: number): number => draws[Math.min(trials - 1, Math.floor(p * trials))] ?? Number.NaN;
  return { draws, low: at(0.025), high: at(0.975), chanceOfExcess: excess / trials };
}

/** Share of the drawn superfats that an interval holds: its real coverage. */
export function coverage({ draws }: Judged, low: number, high: number): number {
  let held = 0;
  for (const draw of draws) if (draw >= low && draw <= high) held++;
  return held / draws.length;
}
