/**
 * Heat of a solution of NaOH, KOH or both, of what it is made from, and its boiling and freezing points.
 *
 * Both alkalis together: each is taken to dissolve in its share of the water by moles, at the same molality, and the
 * heats add (Young's rule). No measurement was at hand to test it, so the band is widened (`YOUNG_SPREAD`).
 * Scale: liquid water at 0 °C is zero; KOH(s) at 25 °C is zero; NaOH(s) as on the scale of Olsson's equation.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { interpolate, root, simpson } from './numeric.ts';
import type { Parts } from './outcome.ts';
import {
  boilingPoint,
  iceHeat,
  kohHeatCapacity,
  kohHeatOfSolution,
  naohHeat,
  naohLimit,
  solutionDensity,
  waterHeat,
} from './properties.ts';

/** Share of the rise above 25 °C by which the band of a mixed solution is widened. */
export const YOUNG_SPREAD = 0.03;

/** Which end of the data's own spread is taken. */
export type Lean = 'low' | 'nominal' | 'high';

interface Half {
  readonly id: 'naoh' | 'koh';
  readonly alkali: number;
  readonly water: number;
  readonly share: number;
}

/** Each alkali with its part of the water; one entry where there is one alkali. */
function halves(data: HeatData, { naoh, koh, water }: Parts): readonly Half[] {
  const moles = { naoh: naoh / data.naoh.molarMass.value, koh: koh / data.koh.molarMass.value };
  const all = moles.naoh + moles.koh;
  const half = (id: 'naoh' | 'koh', alkali: number): Half => {
    const part = (water * moles[id]) / all;
    return { id, alkali, water: part, share: alkali / (alkali + part) };
  };
  return [half('naoh', naoh), half('koh', koh)].filter((entry) => entry.alkali > 0);
}

/** Heat of a solution at this temperature, J. `lean`: of the heat of solution of KOH, whose spread lies here. */
export function solutionHeat(data: HeatData, parts: Parts, celsius: number, lean: Lean): number {
  if (parts.naoh + parts.koh <= 0) return parts.water * waterHeat(data.water, celsius);
  const spread = data.koh.heatOfSolution.relativeUncertainty;
  const factor = lean === 'low' ? 1 - spread : lean === 'high' ? 1 + spread : 1;
  const { atC } = data.koh.heatOfSolution;
  let sum = 0;
  for (const { id, alkali, water, share } of halves(data, parts)) {
    if (id === 'naoh') sum += (alkali + water) * naohHeat(data.naoh, share, celsius);
    else
      sum +=
        water * waterHeat(data.water, atC) -
        alkali * factor * kohHeatOfSolution(data.koh, share) +
        (alkali + water) * simpson((t) => kohHeatCapacity(data, share, t), atC, celsius, 2);
  }
  return sum;
}

/** Heat capacity of a solution, J/K, at this temperature. */
export const solutionHeatCapacity = (data: HeatData, parts: Parts, celsius: number): number =>
  (solutionHeat(data, parts, celsius + 1, 'nominal') - solutionHeat(data, parts, celsius - 1, 'nominal')) / 2;

/** Heat of pure dry alkali at this temperature, J. */
export function solidHeat(data: HeatData, parts: Pick<Parts, 'naoh' | 'koh'>, celsius: number, lean: Lean): number {
  const { solidEnthalpy, solidHeatCapacity } = data.naoh;
  return (
    parts.naoh * (solidEnthalpy[lean] + solidHeatCapacity.value * (celsius - solidEnthalpy.atC)) +
    parts.koh * data.koh.solidHeatCapacity.value * (celsius - data.koh.heatOfSolution.atC)
  );
}

const byMoles = (data: HeatData, parts: Parts, of: (half: Half) => number): number => {
  let sum = 0;
  let weight = 0;
  for (const half of halves(data, parts)) {
    const moles = half.alkali / data[half.id].molarMass.value;
    sum += moles * of(half);
    weight += moles;
  }
  return sum / weight;
};

/** Boiling point, °C, at `pressure` kPa; between two alkalis the mean by moles at one molality. */
export const boilsAt = (data: HeatData, parts: Parts, pressure: number): number =>
  byMoles(data, parts, ({ id, share }) => boilingPoint(data, id, share, pressure));

/** °C at which ice is in balance with the solution; stronger than the eutectic it stays at the eutectic. */
const iceMeltsAt = (data: HeatData, parts: Parts): number =>
  parts.naoh + parts.koh <= 0
    ? 0
    : byMoles(data, parts, ({ id, share }) => {
        const { points } = data[id].crystallises;
        let eutectic = 0;
        let coldest = 0;
        for (const [at, celsius] of points) if (celsius < coldest) [eutectic, coldest] = [at, celsius];
        return Math.min(0, interpolate(points, Math.min(share, eutectic)));
      });

/** °C below which something (ice or a hydrate) starts to crystallise. */
export const crystallisesBelow = (data: HeatData, parts: Parts): number =>
  byMoles(data, parts, ({ id, share }) => interpolate(data[id].crystallises.points, share));

/** How much of what the water can hold at this temperature is used: dissolves up to 1. */
export function saturation(data: HeatData, parts: Parts, celsius: number): number {
  let used = 0;
  for (const id of ['naoh', 'koh'] as const) {
    const share = interpolate(data[id].solubility.points, celsius);
    used += (parts[id] * (1 - share)) / share / parts.water;
  }
  return used;
}

/** Whether an equation is used where it was not fitted. */
export function outsideRange(data: HeatData, parts: Parts, celsius: number): boolean {
  return halves(data, parts).some(({ id, share }) => {
    if (id === 'naoh') return share > naohLimit(data.naoh, celsius);
    const { maxShare, lowC, highC } = data.koh.heatCapacity;
    return share > maxShare || celsius < lowC || celsius > highC;
  });
}

/** Density of a solution, g/mL; two alkalis: volumes of the halves add. */
export function mixtureDensity(data: HeatData, parts: Parts, celsius: number): number {
  let volume = 0;
  for (const { id, alkali, water, share } of halves(data, parts))
    volume += (alkali + water) / solutionDensity(data[id].density, data.water, share, celsius);
  return volume > 0
    ? (parts.naoh + parts.koh + parts.water) / volume
    : solutionDensity(data.naoh.density, data.water, 0, celsius);
}

/** Where `supply` (J) of heat takes a solution, its leftover ice and a vessel (J/K, J at 0 °C taken as zero). */
export interface Settled {
  readonly celsius: number;
  readonly iceLeft: number;
}

/**
 * The state that holds `supply` J: all ice melted, or ice left in balance with the solution.
 * `parts.water` counts the ice. NaN where nothing between −60 and 400 °C holds it.
 */
export function settle(
  data: HeatData,
  parts: Parts,
  ice: number,
  vesselHeatCapacity: number,
  supply: number,
  lean: Lean,
): Settled {
  const over = (celsius: number): number =>
    solutionHeat(data, parts, celsius, lean) + vesselHeatCapacity * celsius - supply;
  const melts = iceMeltsAt(data, parts);
  if (ice <= 0 || over(melts) <= 0) return { celsius: root(over, -60, 400), iceLeft: 0 };
  const left = (grams: number): Settled & { readonly excess: number } => {
    const rest = { ...parts, water: parts.water - grams };
    const at = iceMeltsAt(data, rest);
    const heat = solutionHeat(data, rest, at, lean) + grams * iceHeat(data.water, at) + vesselHeatCapacity * at;
    return { celsius: at, iceLeft: grams, excess: heat - supply };
  };
  // Ice stands beside no liquid stronger than the eutectic (19 % NaOH, 31 % KOH); colder than that is not followed.
  const most = Math.max(0, parts.water - ((parts.naoh + parts.koh) * 0.69) / 0.31);
  const grams = root((x) => left(x).excess, 0, most, 1e-6);
  return left(Number.isFinite(grams) ? grams : most);
}
