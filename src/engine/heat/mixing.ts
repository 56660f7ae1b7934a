/**
 * Temperature where fats and lye solution meet: heat balance of liquid fat (Choi & Okos 1986, about 5 %) and solution,
 * before the reaction warms it and without loss to the pot. No heat of melting: fats are taken as wholly melted, and
 * `meltingAt` says where that is in doubt.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import type { Fat } from '../../catalogue/types.ts';
import type { AlkaliAmount } from '../recipe.ts';
import { boilsAt, crystallisesBelow, solutionHeat } from './mixture.ts';
import { root } from './numeric.ts';
import { type Band, done, fail, firstBad, type HeatFault, type Outcome, type Parts } from './outcome.ts';
import { partsOf } from './peak.ts';
import { fatHeat } from './properties.ts';

export interface WarmFat {
  readonly fat: Fat;
  readonly grams: number;
  readonly temperatureC: number;
}

export interface MixInput {
  readonly fats: readonly WarmFat[];
  readonly alkali: readonly AlkaliAmount[];
  /** Water in the solution, melted ice with it. */
  readonly waterGrams: number;
  readonly solutionC: number;
}

/** `solid`: below its melting range; `partly`: inside it; `unknown`: no melting range on record. */
export interface Melting {
  readonly fat: string;
  readonly state: 'melted' | 'partly' | 'solid' | 'unknown';
  /** °C, end of the melting range. */
  readonly meltedFromC: number | null;
  /** °C, start of it. */
  readonly solidBelowC: number | null;
}

export interface Mix {
  readonly temperatureC: Band;
  /** Each fat at the blend's temperature. */
  readonly melting: readonly Melting[];
  /** Some fat may set and thicken the batter without any soap made. */
  readonly falseTrace: boolean;
  /** The temperature from which every fat is melted, °C; null where no fat has a range. */
  readonly allMeltedFromC: number | null;
}

/** Each fat at `celsius`. Melted into other fats it may stay liquid lower than alone. */
export function meltingAt(fats: readonly Fat[], celsius: number): readonly Melting[] {
  return fats.map(({ id, melting }) => {
    if (!melting) return { fat: id, state: 'unknown', meltedFromC: null, solidBelowC: null };
    const state = celsius >= melting.high ? 'melted' : celsius >= melting.low ? 'partly' : 'solid';
    return { fat: id, state, meltedFromC: melting.high, solidBelowC: melting.low };
  });
}

const heatOfFats = (data: HeatData, fats: readonly WarmFat[], at: (fat: WarmFat) => number): number =>
  fats.reduce((sum, fat) => sum + fat.grams * fatHeat(data.fat, at(fat)), 0);

/** Blend temperature, °C, with the heat of the fats times `factor`. */
function blend(data: HeatData, input: MixInput, parts: Parts, factor: number): number {
  const supply =
    factor * heatOfFats(data, input.fats, ({ temperatureC }) => temperatureC) +
    solutionHeat(data, parts, input.solutionC, 'nominal');
  const over = (celsius: number): number =>
    factor * heatOfFats(data, input.fats, () => celsius) + solutionHeat(data, parts, celsius, 'nominal') - supply;
  return root(over, -40, 200);
}

function inputFault(input: MixInput): HeatFault | null {
  const bad = firstBad([
    ['water', input.waterGrams, 0, 1e7],
    ['solution temperature', input.solutionC, -10, 130],
    ...input.fats.flatMap(({ fat, grams, temperatureC }): [string, number, number, number][] => [
      [fat.id, grams, 0, 1e7],
      [`${fat.id} temperature`, temperatureC, -20, 150],
    ]),
    ...input.alkali.map(({ id, grams }): [string, number, number, number] => [id, grams, 0, 1e7]),
  ]);
  if (bad) return bad;
  if (!input.fats.some(({ grams }) => grams > 0)) return { kind: 'no-fat' };
  if (!input.alkali.some(({ grams }) => grams > 0)) return { kind: 'no-alkali' };
  if (!(input.waterGrams > 0)) return { kind: 'no-water' };
  return null;
}

export function mixOf(data: HeatData, input: MixInput): Outcome<Mix> {
  const bad = inputFault(input);
  if (bad) return fail(bad);
  const parts = partsOf(input.alkali, input.waterGrams);
  const spread = data.fat.heatCapacity.relativeUncertainty;
  const nominal = blend(data, input, parts, 1);
  const ends = [blend(data, input, parts, 1 - spread), blend(data, input, parts, 1 + spread), nominal];
  const melting = meltingAt(
    input.fats.map(({ fat }) => fat),
    nominal,
  );
  const ranges = melting.flatMap(({ meltedFromC }) => meltedFromC ?? []);
  return done({
    temperatureC: { low: Math.min(...ends), nominal, high: Math.max(...ends) },
    melting,
    falseTrace: melting.some(({ state }) => state === 'partly' || state === 'solid'),
    allMeltedFromC: ranges.length > 0 ? Math.max(...ranges) : null,
  });
}

/**
 * What one part must be brought to so that the blend is at `wantedC`, the other part as it is. Refuses what would burn
 * the fats (above 100 °C), boil the solution or let it crystallise, or needs cooling below 0 °C.
 */
export function bringTo(
  data: HeatData,
  input: MixInput,
  part: 'fats' | 'solution',
  wantedC: number,
): Outcome<{ readonly temperatureC: number }> {
  const bad = inputFault(input) ?? firstBad([['wanted temperature', wantedC, 0, 100]]);
  if (bad) return fail(bad);
  const parts = partsOf(input.alkali, input.waterGrams);
  const solution = (celsius: number): number => solutionHeat(data, parts, celsius, 'nominal');
  const lacking =
    part === 'fats'
      ? solution(wantedC) - solution(input.solutionC)
      : heatOfFats(data, input.fats, () => wantedC) - heatOfFats(data, input.fats, ({ temperatureC }) => temperatureC);
  const over = (celsius: number): number =>
    part === 'fats'
      ? heatOfFats(data, input.fats, () => celsius) - heatOfFats(data, input.fats, () => wantedC) - lacking
      : solution(celsius) - solution(wantedC) - lacking;
  // Far outside, where the equations do not reach, the slope at the wanted temperature says how far.
  const slope = (over(wantedC + 1) - over(wantedC - 1)) / 2;
  const found = root(over, -60, 250);
  const neededC = Number.isFinite(found) ? found : wantedC + lacking / slope;
  const range: readonly [number, number] =
    part === 'fats' ? [0, 100] : [Math.max(0, crystallisesBelow(data, parts)), boilsAt(data, parts, 101.325) - 5];
  if (!(neededC >= range[0] && neededC <= range[1])) return fail({ kind: 'blend-out-of-reach', part, neededC, range });
  return done({ temperatureC: neededC });
}
