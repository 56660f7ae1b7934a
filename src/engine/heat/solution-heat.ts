/**
 * How hot a lye solution gets: enthalpy balance of alkali, water and ice against the finished solution, without loss
 * to the room (adiabatic), with a vessel's share where one is given. Worked out for plain numbers; grams and °C.
 *
 * Spread of the peak: the heat of solution of NaOH (sources span 104–110 °C at 30 %), 7 % on that of KOH and its
 * bound water, the alkali's purity where it is a range, 3 % of the rise for both alkalis together, 3 K where an
 * equation leaves its range. What is not alkali in the alkali counts as water, which flake of KOH holds bound.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import type { AlkaliAmount } from '../recipe.ts';
import {
  boilsAt,
  crystallisesBelow,
  type Lean,
  outsideRange,
  type Settled,
  saturation,
  settle,
  solidHeat,
  YOUNG_SPREAD,
} from './mixture.ts';
import { root } from './numeric.ts';
import { type Band, done, fail, firstBad, type HeatFault, type Outcome, type Parts } from './outcome.ts';
import { boundHeat, iceHeat, waterHeat } from './properties.ts';

/** Sea level. */
const PRESSURE = 101.325;
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

export type SolutionNote =
  /** Only the high end of the peak reaches the boil. */
  | 'may-boil'
  /** Stronger than 50 %, though it dissolves. */
  | 'below-working-floor'
  | 'ice-left'
  /** Something crystallises out at the room's temperature. */
  | 'crystallises-in-room'
  | 'outside-range'
  /** Both alkalis: an approximation that nobody tested. */
  | 'two-alkalis'
  /** KOH: derived heats, about 7 %. */
  | 'weak-koh-data'
  /** Three quarters of the water or more is ice: hard to stir at first. */
  | 'mostly-ice';

export interface SolutionHeat {
  readonly peakC: Band;
  readonly boilsAtC: number;
  /** Boiling point less the nominal peak, K. */
  readonly marginK: number;
  readonly iceLeftGrams: number;
  /** Pure alkali to all of the solution, 0–1. */
  readonly concentration: number;
  readonly parts: Parts;
  readonly crystallisesBelowC: number;
  readonly notes: readonly SolutionNote[];
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
function peak(data: HeatData, input: SolutionInput, heat: Lean, purity: Lean): Settled {
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

function peakBand(data: HeatData, input: SolutionInput, nominal: number): Band {
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

function inputFault(data: HeatData, input: SolutionInput): HeatFault | null {
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
const withIce = (input: SolutionInput, iceGrams: number): SolutionInput => ({
  ...input,
  iceGrams,
  waterGrams: input.waterGrams + input.iceGrams - iceGrams,
});

const highEnd = (data: HeatData, input: SolutionInput): number =>
  peakBand(data, input, peak(data, input, 'nominal', 'nominal').celsius).high;

/** The least `x` in 0…`most` that brings a falling `over` to zero or below; null where even `most` does not. */
function least(over: (x: number) => number, most: number): number | null {
  if (over(0) <= 0) return 0;
  if (over(most) > 0) return null;
  return root(over, 0, most, 1e-4);
}

/** Ice in place of water, or more water, that keeps even the high end of the peak below the boil. */
function wayOut(data: HeatData, input: SolutionInput): { iceGrams: number | null; waterGrams: number | null } {
  const total = input.waterGrams + input.iceGrams;
  const boil = (at: SolutionInput): number =>
    boilsAt(data, partsOf(at.alkali, at.waterGrams + at.iceGrams), at.pressureKpa ?? PRESSURE);
  const limit = boil(input) - 1;
  const ice = least((grams) => highEnd(data, withIce(input, grams)) - limit, total);
  const more = (grams: number): SolutionInput => ({ ...input, iceGrams: 0, waterGrams: total + grams });
  const water = least((grams) => highEnd(data, more(grams)) - boil(more(grams)) + 1, 20 * total);
  return { iceGrams: ice, waterGrams: water === null ? null : total + water };
}

/**
 * Peak, boiling point and what is left of the ice. Refuses what will not dissolve or would boil at the nominal figure,
 * with the nearest amounts that work.
 */
export function solutionHeatOf(data: HeatData, input: SolutionInput): Outcome<SolutionHeat> {
  const bad = inputFault(data, input);
  if (bad) return fail(bad);
  const parts = partsOf(input.alkali, input.waterGrams + input.iceGrams);
  const pure = parts.naoh + parts.koh;
  const concentration = pure / (pure + parts.water);
  const { celsius: nominal, iceLeft } = peak(data, input, 'nominal', 'nominal');
  const used = saturation(data, parts, Math.min(20, nominal));
  if (used > 1) {
    const held = parts.water - input.waterGrams - input.iceGrams;
    const grams = input.alkali.reduce((sum, amount) => sum + amount.grams, 0);
    return fail({
      kind: 'not-dissolved',
      concentration,
      // One part of water to one of alkali is the working floor; it dissolves at 20 °C.
      mostAlkaliGrams: (grams * (input.waterGrams + input.iceGrams)) / (pure - held),
      leastWaterGrams: pure - held,
    });
  }
  const boilsAtC = boilsAt(data, parts, input.pressureKpa ?? PRESSURE);
  const peakC = peakBand(data, input, nominal);
  if (!(nominal < boilsAtC)) return fail({ kind: 'would-boil', peakC, boilsAtC, ...wayOut(data, input) });
  const crystallisesBelowC = crystallisesBelow(data, parts);
  const notes: SolutionNote[] = [];
  const note = (when: boolean, what: SolutionNote): void => {
    if (when) notes.push(what);
  };
  note(peakC.high >= boilsAtC, 'may-boil');
  note(concentration > 0.5 + 1e-9, 'below-working-floor');
  note(iceLeft > 0, 'ice-left');
  note(crystallisesBelowC > (input.roomC ?? 20), 'crystallises-in-room');
  note(outsideRange(data, parts, nominal), 'outside-range');
  note(parts.naoh > 0 && parts.koh > 0, 'two-alkalis');
  note(parts.koh > 0, 'weak-koh-data');
  note(input.iceGrams >= 0.75 * (input.waterGrams + input.iceGrams), 'mostly-ice');
  return done({
    peakC,
    boilsAtC,
    marginK: boilsAtC - nominal,
    iceLeftGrams: iceLeft,
    concentration,
    parts,
    crystallisesBelowC,
    notes,
  });
}

export interface IceAnswer {
  /** Of the water, to be given as ice, so that the nominal peak keeps the limit. */
  readonly iceGrams: number;
  readonly waterGrams: number;
  /** So that even the high end of the band keeps it; null where all of the water as ice is not enough. */
  readonly iceGramsForHighEnd: number | null;
  readonly heat: SolutionHeat;
}

/**
 * The ice in place of water (the total stays) that keeps the peak at or under `limitC`. The ice already in `input`
 * counts into the total only. Refuses a limit that even all of the water as ice would pass.
 */
export function iceForLimit(data: HeatData, input: SolutionInput, limitC: number): Outcome<IceAnswer> {
  const bad = inputFault(data, input) ?? firstBad([['limit', limitC, -20, 200]]);
  if (bad) return fail(bad);
  const total = input.waterGrams + input.iceGrams;
  const over = (grams: number): number => peak(data, withIce(input, grams), 'nominal', 'nominal').celsius - limitC;
  const iceGrams = least(over, total);
  if (iceGrams === null) {
    const halfIce = (water: number): SolutionInput => ({ ...input, waterGrams: water / 2, iceGrams: water / 2 });
    const more = least((x) => peak(data, halfIce(total + x), 'nominal', 'nominal').celsius - limitC, 40 * total);
    return fail({
      kind: 'limit-too-low',
      limitC,
      coldestC: over(total) + limitC,
      waterGrams: more === null ? null : total + more,
    });
  }
  const heat = solutionHeatOf(data, withIce(input, iceGrams));
  if (!heat.ok) return heat;
  return done({
    iceGrams,
    waterGrams: total - iceGrams,
    iceGramsForHighEnd: least((grams) => highEnd(data, withIce(input, grams)) - limitC, total),
    heat: heat.value,
  });
}

/** Peak against the share of the water that is ice, 0 to 1 in `steps`; for the picture. */
export function peakAgainstIce(
  data: HeatData,
  input: SolutionInput,
  steps = 10,
): readonly { readonly iceShare: number; readonly peakC: Band }[] {
  if (inputFault(data, input)) return [];
  const total = input.waterGrams + input.iceGrams;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const at = withIce(input, (total * i) / steps);
    return { iceShare: i / steps, peakC: peakBand(data, at, peak(data, at, 'nominal', 'nominal').celsius) };
  });
}
