/** Time until a lye solution, from its peak, has cooled to a mixing temperature; the spread of the peak is in the band. */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { type Cooling, coolOf } from './cooling.ts';
import { done, type Outcome } from './outcome.ts';
import { type PotInput, solutionContents } from './pot.ts';
import type { SolutionHeat } from './solution-heat.ts';

export function coolSolution(
  data: HeatData,
  heat: SolutionHeat,
  pot: PotInput,
  targetC: number,
  roomC = 20,
): Outcome<Cooling> {
  const from = (startC: number): Outcome<Cooling> => {
    const contents = solutionContents(data, heat.parts, (startC + targetC) / 2);
    return coolOf(data, { contents, pot, startC, targetC, roomC });
  };
  const nominal = from(heat.peakC.nominal);
  if (!nominal.ok) return nominal;
  const early = from(heat.peakC.low);
  // What boils stays at the boil.
  const late = from(Math.min(heat.peakC.high, heat.boilsAtC));
  const minutes = {
    low: early.ok ? early.value.minutes.low : nominal.value.minutes.low,
    nominal: nominal.value.minutes.nominal,
    high: late.ok ? late.value.minutes.high : nominal.value.minutes.high,
  };
  return done({ ...nominal.value, minutes, minutesLeft: minutes });
}
