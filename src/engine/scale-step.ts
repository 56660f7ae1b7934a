/** What a scale's readability allows. Grams throughout. */
import { alkaliMoles } from './alkali.ts';
import type { AlkaliAmount } from './recipe.ts';

/** Takes up the last bits of a division, so that 97 g reckoned as 96.999 999 999 stays 97 g; in steps. */
const HAIR = 1e-9;

const clean = (grams: number): number =>
  Number.isInteger(grams) && grams > 0 && grams < 1e12 ? grams : Number(grams.toPrecision(12));

/** Down to a whole number of steps: for alkali, so that rounding never lowers the superfat. */
export const roundDown = (grams: number, step: number): number => clean(Math.floor(grams / step + HAIR) * step);

/** To the nearest step. */
export const roundNearest = (grams: number, step: number): number => clean(Math.round(grams / step) * step);

/** To the nearest step, but never to nothing: for fats. */
export const roundFat = (grams: number, step: number): number =>
  grams === 0 ? 0 : Math.max(clean(step), roundNearest(grams, step));

/**
 * How far half a step of each alkali weighing may move the superfat, as a share. One point is a third of what the
 * spread of a usual fat (about ±3 %) does: weighing should not be what decides.
 */
export const WEIGHING_TOLERANCE = 0.01;

export interface ScaleFitness {
  /** Superfat moved by half a step of the alkali weighings together, as a share. */
  readonly shift: number;
  readonly tooCoarse: boolean;
  /** Times this recipe: the least batch that the scale weighs well. Above 1 when too coarse. */
  readonly leastFactor: number;
}

/** `demand`: mol of alkali for all fat cooked, above 0. */
export function scaleFitness(
  alkali: readonly AlkaliAmount[],
  demand: number,
  step: number,
  tolerance: number = WEIGHING_TOLERANCE,
): ScaleFitness {
  const half = alkali.reduce((moles, { id, grams, purity }) => {
    return moles + (grams > 0 ? alkaliMoles(id, step / 2, purity.nominal) : 0);
  }, 0);
  const shift = half / demand;
  return { shift, tooCoarse: shift > tolerance, leastFactor: shift / tolerance };
}
