/**
 * Heat that a face of a pot gives to a room: natural convection, radiation, evaporation. SI, °C, W/m².
 * Correlations hold to 20–25 %; `inRange` says whether their Rayleigh range holds, else the band is widened.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { interpolate } from './numeric.ts';
import { KELVIN, waterPressure } from './properties.ts';

const GRAVITY = 9.81;
/** Stefan–Boltzmann constant, CODATA 2018, W/(m² K⁴). */
const STEFAN_BOLTZMANN = 5.670374e-8;

export interface Nusselt {
  readonly number: number;
  readonly inRange: boolean;
}

/** Vertical plate, all Ra (Churchill & Chu 1975); also a cylinder with D/H ≥ 35/Gr^¼, a few per cent low below that. */
export function verticalPlate(rayleigh: number, prandtl: number): Nusselt {
  const spread = (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27);
  return { number: (0.825 + (0.387 * rayleigh ** (1 / 6)) / spread) ** 2, inRange: rayleigh <= 1e12 };
}

/** Hot face up, length area/perimeter: Ra 1e4–1e7 and 1e7–1e11 (McAdams). */
function faceUp(rayleigh: number): Nusselt {
  const number = rayleigh <= 1e7 ? 0.54 * rayleigh ** 0.25 : 0.15 * rayleigh ** (1 / 3);
  return { number, inRange: rayleigh >= 1e4 && rayleigh <= 1e11 };
}

/** Hot face down, length area/perimeter: Ra 1e5–1e10 (McAdams). */
function faceDown(rayleigh: number): Nusselt {
  return { number: 0.27 * rayleigh ** 0.25, inRange: rayleigh >= 1e5 && rayleigh <= 1e10 };
}

/** Rayleigh number, Prandtl number and conductivity of air between a face and the room; film −23 to 177 °C. */
export function airFilm(
  data: HeatData,
  faceC: number,
  roomC: number,
  length: number,
): { readonly rayleigh: number; readonly prandtl: number; readonly conductivity: number } {
  const film = (faceC + roomC) / 2 + KELVIN;
  const { points } = data.air.table;
  const viscosity = interpolate(points, film, 1);
  const diffusivity = interpolate(points, film, 3);
  return {
    rayleigh: (GRAVITY * Math.max(0, faceC - roomC) * length ** 3) / (film * viscosity * diffusivity),
    prandtl: interpolate(points, film, 4),
    conductivity: interpolate(points, film, 2),
  };
}

export interface Face {
  readonly direction: 'side' | 'up' | 'down';
  /** m². */
  readonly area: number;
  /** Height of a side; area/perimeter of a top or bottom, m. */
  readonly length: number;
  /** Between the middle of the contents and the outer face, m² K/W. */
  readonly resistance: number;
  readonly emissivity: number;
  /** Evaporation, W/m² per kPa of difference in vapour pressure; 0 where dry or covered. */
  readonly evaporation: number;
  /** Part of the loss that counts, 0–1: a bottom on a table, a half-open lid. */
  readonly share: number;
  /** Spread of the correlation, in and outside its range. */
  readonly spread: readonly [inside: number, outside: number];
}

/** W/m² from an outer face at `faceC`, and whether the correlation was in its range. */
export function outwards(data: HeatData, face: Face, faceC: number, roomC: number): readonly [number, boolean] {
  const { rayleigh, prandtl, conductivity } = airFilm(data, faceC, roomC, face.length);
  const nusselt =
    face.direction === 'side'
      ? verticalPlate(rayleigh, prandtl)
      : face.direction === 'up'
        ? faceUp(rayleigh)
        : faceDown(rayleigh);
  const convection =
    ((nusselt.number * conductivity) / face.length) * (nusselt.inRange ? face.spread[0] : face.spread[1]);
  const hot = faceC + KELVIN;
  const cold = roomC + KELVIN;
  const radiation = face.emissivity * STEFAN_BOLTZMANN * (hot ** 4 - cold ** 4);
  const vapour =
    face.evaporation > 0
      ? face.evaporation * Math.max(0, waterPressure(data.water, faceC) - waterPressure(data.water, roomC))
      : 0;
  return [convection * (faceC - roomC) + radiation + vapour, nusselt.inRange];
}
