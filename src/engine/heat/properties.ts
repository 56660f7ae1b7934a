/**
 * Properties of the pure parts: water, ice, fat, and aqueous NaOH and KOH. Temperatures °C, heat J/g (= kJ/kg),
 * pressures kPa, densities g/mL, shares by mass. Each names the range in which its equation was fitted; who calls
 * outside it must widen or refuse (`naohLimit`, `maxShare`).
 */
import type {
  DensityFit,
  FatProperties,
  HeatData,
  IceWater,
  KohSolution,
  NaohSolution,
} from '../../catalogue/heat-types.ts';
import { integrated, interpolate, polynomial, root, simpson } from './numeric.ts';

export const KELVIN = 273.15;
const WATER_MOLAR_MASS = 18.0153;

/** Heat of liquid water against 0 °C, J/g; 0–100 °C (IAPWS table; below 0 °C its end value goes on). */
export function waterHeat(water: IceWater, celsius: number): number {
  return simpson((t) => interpolate(water.heatCapacity.points, t), 0, celsius, 2);
}

/** Heat of ice at or below 0 °C against liquid water at 0 °C, J/g; −40 to 0 °C (Choi & Okos 1986). */
export function iceHeat(water: IceWater, celsius: number): number {
  const { at0, perK } = water.iceHeatCapacity;
  return -water.heatOfFusion.value + at0 * celsius + (perK * celsius * celsius) / 2;
}

/** Air pressure, kPa, at this height above the sea, m; −500 to 11 000 m (standard atmosphere, ISO 2533:1975, layer 1). */
export const airPressure = (metres: number): number => 101.325 * (1 - 2.25577e-5 * metres) ** 5.25588;

/** Vapour pressure of pure water, kPa; 0–100 °C (IAPWS table, interpolated in its logarithm over 1/T). */
export function waterPressure(water: IceWater, celsius: number): number {
  const { points } = water.vapourPressure;
  let i = 1;
  while (i < points.length - 1 && (points[i]?.[0] ?? 0) < celsius) i += 1;
  const [t1, p1] = points[i - 1] ?? [0, 0.6113];
  const [t2, p2] = points[i] ?? [100, 101.42];
  const x = (t: number): number => 1 / (t + KELVIN);
  const share = (x(celsius) - x(t1)) / (x(t2) - x(t1));
  return p1 * (p2 / p1) ** share;
}

/** Heat of liquid fat against 0 °C, J/g; −40 to 150 °C, no melting (Choi & Okos 1986, about 5 %). */
export function fatHeat(fat: FatProperties, celsius: number): number {
  return polynomial(integrated(fat.heatCapacity.coefficients), celsius);
}

/**
 * Enthalpy of NaOH(aq) against liquid water at 0 °C, J per g of solution (Olsson, Jernqvist & Aly 1997).
 * Range: 0–204 °C and shares to `naohLimit`. About 3 K in a solution's peak.
 */
export function naohHeat(naoh: NaohSolution, share: number, celsius: number): number {
  const s = 1 - share;
  const { k, c2, c3, c4 } = naoh.enthalpy;
  const [k0 = 0, k1 = 0, k2 = 0, k3 = 0, k4 = 0, k5 = 0, k6 = 0, k7 = 0] = k;
  const c1 = (k0 + s * (k2 + s * (k4 + s * k6))) / (1 + s * (k1 + s * (k3 + s * (k5 + s * k7))));
  return c1 + celsius * (polynomial(c2, s) + celsius * (polynomial(c3, s) + celsius * polynomial(c4, s)));
}

/** The largest share of NaOH for which `naohHeat` was fitted at this temperature; 0 outside 0–204 °C. */
export function naohLimit(naoh: NaohSolution, celsius: number): number {
  if (celsius < 0) return 0;
  return naoh.enthalpy.limits.find(([upTo]) => celsius <= upTo)?.[1] ?? 0;
}

/** Heat capacity of KOH(aq), J/(g K); 4–120 °C, share ≤ 0.465 (Laliberté 2009); outside the value at the end. */
export function kohHeatCapacity(data: HeatData, share: number, temperature: number): number {
  const { lowC, highC } = data.koh.heatCapacity;
  const celsius = Math.min(Math.max(temperature, lowC), highC);
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0, a6 = 0] = data.koh.heatCapacity.a;
  const pure = interpolate(data.water.heatCapacity.points, celsius);
  if (share <= 0) return pure;
  const alpha = a2 * celsius + a3 * Math.exp(0.01 * celsius) + a4 * share;
  return (1 - share) * pure + share * (a1 * Math.exp(alpha) + a5 * share ** a6);
}

/** Heat set free by dissolving 1 g of anhydrous KOH to this share at 25 °C, J/g; share ≤ 0.509, about 7 %. */
export function kohHeatOfSolution(koh: KohSolution, share: number): number {
  return (interpolate(koh.heatOfSolution.points, share) * 1000) / koh.molarMass.value;
}

/** Heat that `grams` of water bound in KOH flake no longer give, J (`boundWater` in kJ/mol). */
export const boundHeat = (boundWater: number, grams: number): number => (boundWater * 1000 * grams) / WATER_MOLAR_MASS;

/** Vapour pressure over NaOH(aq), kPa (Olsson, Jernqvist & Aly 1997). Range as `naohHeat`. */
export function naohPressure(naoh: NaohSolution, share: number, celsius: number): number {
  const x = Math.log(1 - share);
  const { a1, a2, a3 } = naoh.vapourPressure;
  return Math.exp((polynomial(a1, x) + polynomial(a2, x) * celsius) / (celsius - polynomial(a3, x)));
}

/** Vapour pressure over KOH(aq), kPa; 0–200 °C, to 18 mol/kg or a share of 0.502 (Balej 1985). */
export function kohPressure(koh: KohSolution, share: number, celsius: number): number {
  const m = (1000 * share) / (1 - share) / koh.molarMass.value;
  const kelvin = celsius + KELVIN;
  const { p, q, w } = koh.vapourPressure;
  const [w0 = 0, w1 = 0, w2 = 0, w3 = 0] = w;
  const water = w0 + w1 / kelvin + w2 * Math.log10(kelvin) + w3 * kelvin;
  return 100 * 10 ** (m * polynomial(p, m) + polynomial(q, m) * water);
}

/** Boiling point of one alkali's solution at `pressure` kPa, °C. */
export function boilingPoint(data: HeatData, id: 'naoh' | 'koh', share: number, pressure: number): number {
  const over = (t: number): number =>
    id === 'naoh' ? naohPressure(data.naoh, share, t) : kohPressure(data.koh, share, t);
  return root((t) => Math.log(over(t) / pressure), 40, 260, 1e-6);
}

/** Density of one alkali's solution, g/mL (Laliberté & Cooper 2004); NaOH 4–120 °C to 0.503, KOH 4–95 °C to 0.519. */
export function solutionDensity(fit: DensityFit, water: IceWater, share: number, celsius: number): number {
  const [c0 = 0, c1 = 0, c2 = 0, c3 = 0, c4 = 0] = fit.c;
  const apparent = ((c0 * share + c1) * Math.exp(1e-6 * (celsius + c4) ** 2)) / (share + c2 + c3 * celsius);
  const pure = interpolate(water.density.points, celsius);
  return share <= 0 ? pure / 1000 : 1 / ((1000 * (1 - share)) / pure + (1000 * share) / apparent);
}
