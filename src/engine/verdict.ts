import type { Verdict } from './recipe.ts';

/**
 * Where one verdict ends and the next begins, as shares.
 *
 * - `chance`: excess alkali in one batch of forty is a real chance. It is the lower end of the 95 % interval, so the
 *   verdict and the interval shown beside it never disagree.
 * - `usual`: general texts give 3–8 % superfat (see the reference entry "superfat"); to 10 % is common for mild bars
 *   (common practice).
 * - `rich`: to about 20 % is made on purpose where much coconut fat would dry the skin; above it the bar is soft,
 *   greasy and soon rancid, and a slip in the alkali is likelier than an intention (common practice).
 */
export const THRESHOLDS = { chance: 0.025, usual: 0.1, rich: 0.2 } as const;

/** Keeps a superfat that is exactly on a threshold, but for the last bit of a division, on its lower side. */
const HAIR = 1e-9;

/** `superfat`: nominal share; `chanceOfExcess`: 0–1, from `uncertainty.ts`. Alkali left over outranks the rest. */
export function verdictOf(superfat: number, chanceOfExcess: number): Verdict {
  if (superfat < -HAIR) return 'excess-alkali';
  if (chanceOfExcess >= THRESHOLDS.chance) return 'thin-margin';
  if (superfat <= THRESHOLDS.usual + HAIR) return 'usual';
  if (superfat <= THRESHOLDS.rich + HAIR) return 'fat-rich';
  return 'alkali-short';
}
