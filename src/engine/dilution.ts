/** Lye solutions without a recipe: grams of alkali as weighed, shares by mass. */
import type { Acid, AlkaliId } from '../catalogue/types.ts';
import { acidMoles, gramsOf } from './alkali.ts';
import { badGrams, outside, PURITY_RANGE } from './checked.ts';
import { done, type Result, refuse } from './fault.ts';
import { ratioOf, WATER_LIMITS } from './water.ts';

/** What a solution can be asked to hold: from 1 % to what dissolves at 20 °C. */
const SOLUTION_RANGE: readonly [number, number] = [0.01, WATER_LIMITS.solubility];

const badSolution = (concentration: number) =>
  outside('concentration-out-of-range', 'concentration', concentration, SOLUTION_RANGE);

/** Water (g) that makes a solution of this concentration from this alkali. */
export function waterToDissolve(alkaliGrams: number, concentration: number): Result<number> {
  const fault = badGrams('alkali', alkaliGrams) ?? badSolution(concentration);
  return fault ? { ok: false, fault } : done(alkaliGrams * ratioOf(concentration));
}

/** Concentration (0–1) of alkali in water; above `WATER_LIMITS.solubility` not all of it dissolves. */
export function solutionConcentration(alkaliGrams: number, waterGrams: number): Result<number> {
  const fault = badGrams('alkali', alkaliGrams) ?? badGrams('water', waterGrams);
  if (fault) return { ok: false, fault };
  if (alkaliGrams + waterGrams === 0) return refuse('too-little', 'solution', 0);
  return done(alkaliGrams / (alkaliGrams + waterGrams));
}

/** Stock solution (g) that holds this much pure alkali, and the water that comes with it. */
export function stockFor(
  pureGrams: number,
  concentration: number,
): Result<{ readonly solutionGrams: number; readonly waterGrams: number }> {
  const fault = badGrams('alkali', pureGrams) ?? badSolution(concentration);
  if (fault) return { ok: false, fault };
  const solutionGrams = pureGrams / concentration;
  return done({ solutionGrams, waterGrams: solutionGrams - pureGrams });
}

/** Water (g) that thins a solution from one concentration to a lower one. */
export function waterToThin(solutionGrams: number, from: number, to: number): Result<number> {
  const fault =
    badGrams('solution', solutionGrams) ??
    badSolution(from) ??
    badSolution(to) ??
    outside('concentration-out-of-range', 'concentration', to, [SOLUTION_RANGE[0], from]);
  return fault ? { ok: false, fault } : done(solutionGrams * (from / to - 1));
}

/** Alkali (g, as weighed at this purity) that an acid eats, to add on top of what the fats need. */
export function alkaliForAcid(acid: Acid, grams: number, id: AlkaliId, purity: number): Result<number> {
  const fault =
    badGrams(`acid ${acid.id}`, grams) ?? outside('purity-out-of-range', `purity ${id}`, purity, PURITY_RANGE);
  return fault ? { ok: false, fault } : done(gramsOf(id, acidMoles(acid, grams)) / purity);
}
