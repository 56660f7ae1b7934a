/** What a lye solution does: how hot, how far from the boil, whether it dissolves. See `peak.ts` for the balance. */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { boilsAt, crystallisesBelow, outsideRange, saturation } from './mixture.ts';
import { type Band, done, fail, type Outcome, type Parts } from './outcome.ts';
import { highEnd, inputFault, least, PRESSURE, partsOf, peak, peakBand, type SolutionInput, withIce } from './peak.ts';

export type SolutionNote =
  /** Only the high end of the peak reaches the boil. */
  | 'may-boil'
  /** Stronger than 50 %, though it dissolves. */
  | 'below-working-floor'
  | 'ice-left'
  /** A hydrate crystallises out at the room's temperature, or at the peak where ice made that colder still. */
  | 'crystallises'
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
  const used = saturation(data, parts, 20);
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
  note(crystallisesBelowC > Math.min(input.roomC ?? 20, nominal), 'crystallises');
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
