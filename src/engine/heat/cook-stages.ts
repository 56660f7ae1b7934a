/** Hot process as a guide: stages as ranges from common practice, room for rising, the ceiling. Look and stir. */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { done, fail, firstBad, type Outcome } from './outcome.ts';

export interface CookInput {
  /** Fat, alkali and water together, g. */
  readonly batchGrams: number;
  readonly potLitres?: number;
  /** The pot's temperature now. */
  readonly temperatureC?: number;
  /** From trace; says which stage to expect. */
  readonly minutesSoFar?: number;
}

export interface CookStageGuide {
  readonly id: string;
  readonly name: string;
  readonly see: string;
  /** How long the stage takes. */
  readonly minutes: { readonly low: number; readonly high: number };
  /** When it ends, from trace. */
  readonly ends: { readonly low: number; readonly high: number };
}

export interface CookGuide {
  readonly stages: readonly CookStageGuide[];
  /** Stages that the minutes so far allow, earliest and latest; null without minutes. */
  readonly expected: readonly string[] | null;
  readonly batchLitres: number;
  readonly potNeededLitres: number;
  /** Null where no pot is named. */
  readonly potEnough: boolean | null;
  readonly ceilingC: number;
  readonly aboveCeiling: boolean;
}

export function cookGuide(data: HeatData, input: CookInput): Outcome<CookGuide> {
  const { batchGrams, potLitres, temperatureC, minutesSoFar } = input;
  const bad = firstBad([
    ['batch', batchGrams, 1, 1e6],
    ['litres', potLitres ?? 1, 0.05, 1000],
    ['temperature', temperatureC ?? 20, -20, 150],
    ['minutes', minutesSoFar ?? 0, 0, 1e5],
  ]);
  if (bad) return fail(bad);
  const { stages: known, potToBatch, ceilingC } = data.cook;
  let low = 0;
  let high = 0;
  const stages = known.map(({ id, name, see, minutes }) => {
    low += minutes.low;
    high += minutes.high;
    return { id, name, see, minutes: { low: minutes.low, high: minutes.high }, ends: { low, high } };
  });
  const batchLitres = batchGrams / data.fat.soapPaste.density.nominal / 1000;
  const potNeededLitres = potToBatch.value * batchLitres;
  const begins = (i: number): number => (i === 0 ? 0 : (stages[i - 1]?.ends.low ?? 0));
  return done({
    stages,
    expected:
      minutesSoFar === undefined
        ? null
        : stages
            .filter(
              ({ ends }, i) => minutesSoFar >= begins(i) && (minutesSoFar <= ends.high || i === stages.length - 1),
            )
            .map(({ id }) => id),
    batchLitres,
    potNeededLitres,
    potEnough: potLitres === undefined ? null : potLitres >= potNeededLitres,
    ceilingC: ceilingC.value,
    aboveCeiling: temperatureC !== undefined && temperatureC > ceilingC.value,
  });
}
