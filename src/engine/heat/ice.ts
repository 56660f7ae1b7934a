/** How much ice, in place of water, keeps a lye solution under a wanted temperature. */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { type Band, done, fail, firstBad, type Outcome } from './outcome.ts';
import { highEnd, inputFault, least, peak, peakBand, type SolutionInput, withIce } from './peak.ts';
import { type SolutionHeat, solutionHeatOf } from './solution-heat.ts';

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
