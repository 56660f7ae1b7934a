/** How much batter a mould takes. Lengths in cm, volumes in mL, weights in g. */
import type { AlkaliId } from '../catalogue/types.ts';
import { outside } from './checked.ts';
import { done, type Result } from './fault.ts';
import type { Recipe } from './recipe.ts';
import { waterGramsOf } from './soap.ts';

export type Mould =
  | { readonly shape: 'box'; readonly length: number; readonly width: number; readonly height: number }
  | { readonly shape: 'cylinder' | 'half-cylinder'; readonly diameter: number; readonly length: number };

/** A millimetre to ten metres. */
const SIDE_RANGE: readonly [number, number] = [0.1, 1000];

/** Volume (mL) of a mould filled to the brim. A half-cylinder lies on its round side. */
export function mouldVolume(mould: Mould): Result<number> {
  const sides =
    mould.shape === 'box'
      ? { length: mould.length, width: mould.width, height: mould.height }
      : { diameter: mould.diameter, length: mould.length };
  for (const [name, side] of Object.entries(sides)) {
    const fault = outside(side < SIDE_RANGE[0] ? 'too-little' : 'too-much', `mould ${name}`, side, SIDE_RANGE);
    if (fault) return { ok: false, fault };
  }
  if (mould.shape === 'box') return done(mould.length * mould.width * mould.height);
  const cylinder = Math.PI * (mould.diameter / 2) ** 2 * mould.length;
  return done(mould.shape === 'cylinder' ? cylinder : cylinder / 2);
}

/** Batter is poured at about 40 °C; densities at that temperature. */
const POUR_TEMPERATURE = 40;
/** g/mL at 40 °C. Choi & Okos 1986, 925.59 − 0.41757·t kg/m³ (from memory): for a fat whose density nobody has given. */
const FAT_DENSITY = 0.909;
/** g/mL at 40 °C. */
const WATER_DENSITY = 0.9922;

/**
 * Density (g/mL) of a sodium or potassium hydroxide solution of concentration w at 40 °C:
 * 1/ρ = (1 − w)/ρ_water + w/ρ_app, ρ_app = (c₀w + c₁)·exp(10⁻⁶(t + c₄)²)/(w + c₂ + c₃t).
 * Source: Laliberté 2009, J. Chem. Eng. Data 54:1725; fitted to w = 0.50, held there above it.
 */
export function lyeDensity(id: AlkaliId, w: number): number {
  const [c0, c1, c2, c3, c4] = LALIBERTE[id];
  const share = Math.min(0.5, Math.max(0, w));
  const exponent = Math.exp(1e-6 * (POUR_TEMPERATURE + c4) ** 2);
  const apparent = ((c0 * share + c1) * exponent) / (share + c2 + c3 * POUR_TEMPERATURE) / 1000;
  return 1 / ((1 - share) / WATER_DENSITY + share / apparent);
}

const LALIBERTE: Readonly<Record<AlkaliId, readonly [number, number, number, number, number]>> = {
  naoh: [319.020509469838, 528.592358475315, -0.102197896602724, 0.000350420706415566, 765.970470238438],
  koh: [821.119043254761, 1043.20173374381, 0.112873330222752, 0.00124023636407386, 539.630388368877],
};

/**
 * Volume (mL) of the batter from its parts: fats at their densities; alkali and all water, milk's too, as one solution;
 * acids and what milk holds beside water at 1 g/mL. Good to about ±3 %: what is stirred in or foamed up is not known.
 */
export function batterVolume(recipe: Recipe): number {
  let volume = 0;
  for (const { fat, grams } of [...recipe.fats, ...recipe.after])
    volume += grams / (fat.density?.nominal ?? FAT_DENSITY);
  for (const { liquid, grams } of recipe.liquids) volume += grams * (1 - liquid.waterShare);
  for (const { grams } of recipe.acids) volume += grams;
  const alkali = recipe.alkali.reduce((sum, { grams }) => sum + grams, 0);
  const solution = alkali + waterGramsOf(recipe);
  for (const { id, grams } of recipe.alkali) {
    volume += ((grams / alkali) * solution) / lyeDensity(id, alkali / solution);
  }
  return volume;
}
