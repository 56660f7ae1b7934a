/**
 * The peak of a lye solution by enthalpy balance: alkali, water and ice against the finished solution, without loss to
 * the room (adiabatic), with a vessel's share where one is given. Plain numbers; grams and °C.
 *
 * Spread of the peak: the heat of solution of NaOH (sources span 104–110 °C at 30 %), 7 % on that of KOH and its
 * bound water, the alkali's purity where it is a range, 3 % of the rise for both alkalis together, 3 K where an
 * equation leaves its range. What is not alkali in the alkali counts as water, which flake of KOH holds bound.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import type { AlkaliAmount } from '../recipe.ts';
import { type Lean, outsideRange, type Settled, settle, solidHeat, YOUNG_SPREAD } from './mixture.ts';
import { root } from './numeric.ts';
import { type Band, firstBad, type HeatFault, type Parts } from './outcome.ts';
import { boundHeat, iceHeat, waterHeat } from './properties.ts';

/** Sea level. */
export const PRESSURE = 101.325;
/** Widening where an equation is used outside the range it was fitted in, K. */
const OUTSIDE_K = 3;

export interface SolutionInput {
  readonly alkali: readonly AlkaliAmount[];
  readonly waterGrams: number;
  readonly iceGrams: number;
  /** Default 25. */
  readonly alkaliC?: number;
  /** Default 25. */
  readonly waterC?: number;
  /** Default 0. */
  readonly iceC?: number;
  /** Default 20; also where a vessel starts. */
  readonly roomC?: number;
  /** Takes its share of the heat. */
  readonly vessel?: { readonly material: string; readonly grams: number };
  /** Air pressure, kPa; default 101.325, less on a mountain. */
  readonly pressureKpa?: number;
}

/** Pure alkali and all water, g, with the alkali at one end of its purity. */
export function partsOf(alkali: readonly AlkaliAmount[], waterGrams: number, lean: Lean = 'nominal'): Parts {
  const parts = { naoh: 0, koh: 0, water: waterGrams };
  for (const { id, grams, purity } of alkali) {
    parts[id] += grams * purity[lean];
    parts.water += grams * (1 - purity[lean]);
  }
  return parts;
}

/** Peak without asking whether it boils; `heat` leans the heats, `purity` the alkali. */
export function peak(data: HeatData, input: SolutionInput, heat: Lean, purity: Lean): Settled {
  const { alkaliC = 25, waterC = 25, iceC = 0, roomC = 20 } = input;
  const parts = partsOf(input.alkali, input.waterGrams + input.iceGrams, purity);
  const held = parts.water - input.waterGrams - input.iceGrams;
  let bound = 0;
  for (const amount of input.alkali) {
    // A tight grip on the water means less heat to come, so the high end of the grip is the low end of the peak.
    const grip = data.koh.boundWater[heat === 'low' ? 'high' : heat === 'high' ? 'low' : 'nominal'];
    if (amount.id === 'koh') bound += boundHeat(grip, amount.grams * (1 - amount.purity[purity]));
  }
  const material = input.vessel ? data.materials.get(input.vessel.material) : undefined;
  const vessel = material && input.vessel ? input.vessel.grams * material.heatCapacity.value : 0;
  const supply =
    solidHeat(data, parts, alkaliC, heat) +
    held * waterHeat(data.water, alkaliC) -
    bound +
    input.waterGrams * waterHeat(data.water, waterC) +
    input.iceGrams * iceHeat(data.water, iceC) +
    vessel * roomC;
  return settle(data, parts, input.iceGrams, vessel, supply, heat);
}

export function peakBand(data: HeatData, input: SolutionInput, nominal: number): Band {
  const purities: readonly Lean[] = input.alkali.some(({ purity }) => purity.low !== purity.high)
    ? ['low', 'high']
    : ['nominal'];
  const ends = purities.flatMap((purity) => (['low', 'high'] as const).map((lean) => peak(data, input, lean, purity)));
  const parts = partsOf(input.alkali, input.waterGrams + input.iceGrams);
  const extra =
    (parts.naoh > 0 && parts.koh > 0 ? YOUNG_SPREAD * Math.abs(nominal - 25) : 0) +
    (outsideRange(data, parts, nominal) ? OUTSIDE_K : 0);
  const reached = ends.map(({ celsius }) => celsius);
  return { low: Math.min(nominal, ...reached) - extra, nominal, high: Math.max(nominal, ...reached) + extra };
}

export function inputFault(data: HeatData, input: SolutionInput): HeatFault | null {
  const figures: [string, number, number, number][] = [
    ['water', input.waterGrams, 0, 1e7],
    ['ice', input.iceGrams, 0, 1e7],
    ['alkali temperature', input.alkaliC ?? 25, -40, 60],
    ['water temperature', input.waterC ?? 25, 0, 100],
    ['ice temperature', input.iceC ?? 0, -40, 0],
    ['room temperature', input.roomC ?? 20, -20, 50],
    ['air pressure', input.pressureKpa ?? PRESSURE, 50, 110],
    ['vessel', input.vessel?.grams ?? 0, 0, 1e7],
  ];
  for (const { id, grams, purity } of input.alkali)
    figures.push([id, grams, 0, 1e7], [`${id} purity`, purity.low, 0.5, 1], [`${id} purity`, purity.high, 0.5, 1]);
  const bad = firstBad(figures);
  if (bad) return bad;
  if (input.vessel && !data.materials.has(input.vessel.material))
    return { kind: 'unknown', figure: 'vessel', id: input.vessel.material };
  if (!input.alkali.some(({ grams }) => grams > 0)) return { kind: 'no-alkali' };
  if (input.waterGrams + input.iceGrams <= 0) return { kind: 'no-water' };
  return null;
}

/** With this much of the same total as ice. */
export const withIce = (input: SolutionInput, iceGrams: number): SolutionInput => ({
  ...input,
  iceGrams,
  waterGrams: input.waterGrams + input.iceGrams - iceGrams,
});

export const highEnd = (data: HeatData, input: SolutionInput): number =>
  peakBand(data, input, peak(data, input, 'nominal', 'nominal').celsius).high;

/** The least `x` in 0…`most` that brings a falling `over` to zero or below; null where even `most` does not. */
export function least(over: (x: number) => number, most: number): number | null {
  if (over(0) <= 0) return 0;
  if (over(most) > 0) return null;
  return root(over, 0, most, 1e-4);
}
