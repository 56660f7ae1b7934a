/**
 * Cooling judged from readings of the pot. Each law of cooling maps a temperature to a clock τ(T) of its own that runs
 * evenly; readings fix its rate and offset by weighted least squares, τᵢ = c + k tᵢ. Then the time to a target is
 * (τ* − c)/k, and its spread follows from the spread of c and k.
 *
 * - `newton`: one constant rate, τ = ln(1/θ), θ the excess over the room. The rule where no pot is described.
 * - `falling`: loss ∝ θ^(5/4), as by natural convection alone, τ = 4 θ^(−1/4). Slower late; widens the high side.
 * - a pot's own track, where one is described: τ its minutes; k says how much faster the real pot cools.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import {
  alreadyThere,
  type Cooling,
  type CoolNote,
  coolingFault,
  minuteAt,
  nextLook,
  temperatureAt,
  trackOf,
} from './cooling.ts';
import { type Band, done, fail, firstBad, type HeatFault, type Outcome } from './outcome.ts';
import { type Contents, type PotInput, potModel } from './pot.ts';

export interface Reading {
  readonly minute: number;
  readonly temperatureC: number;
}

export interface ReadingsInput {
  readonly readings: readonly Reading[];
  readonly targetC: number;
  /** Default 20. */
  readonly roomC?: number;
  /** The thermometer's step, K; default 1. */
  readonly stepK?: number;
  /** Where one is described its model is scaled to the readings. */
  readonly pot?: { readonly pot: PotInput; readonly contents: Contents };
}

export interface FittedCooling extends Cooling {
  readonly method: 'newton' | 'scaled-pot';
  /** `newton`: 1/min; `scaled-pot`: how many times faster than the model. With its 95 % band. */
  readonly rate: Band;
  /** Root mean square distance of the readings from the curve, K. */
  readonly scatterK: number;
}

/** A clock that runs evenly under one law of cooling. */
interface Law {
  readonly clock: (celsius: number) => number;
  readonly celsius: (clock: number) => number;
}

const newton = (roomC: number): Law => ({
  clock: (celsius) => -Math.log(celsius - roomC),
  celsius: (clock) => roomC + Math.exp(-clock),
});

const falling = (roomC: number): Law => ({
  clock: (celsius) => 4 * (celsius - roomC) ** -0.25,
  celsius: (clock) => roomC + (clock / 4) ** -4,
});

/** Readings that are worth as much as the stated step of the thermometer; how many more the scatter has to beat. */
const PRIOR_READINGS = 8;
/** Readings may wander this far upwards before they count as rising, K. */
const WANDER_K = 1.5;
/** A scatter beyond this is no cooling curve, K. */
const SCATTER_K = 3;

/** 97.5 % point of Student's t; within 0.2 % from 8 degrees of freedom on. */
export const student = (freedom: number): number => 1.96 + 2.4 / freedom + 3 / freedom ** 2;

interface Fit {
  readonly offset: number;
  readonly rate: number;
  /** Variances of offset and rate and their covariance. */
  readonly varOffset: number;
  readonly varRate: number;
  readonly covariance: number;
  readonly scatterK: number;
  /** Coverage factor for 95 %. */
  readonly coverage: number;
}

function regress(law: Law, readings: readonly Reading[], stepK: number): Fit {
  // Resolution as a rectangular error, u = step/√12 (JCGM 100:2008 F.2.2.1).
  const u = stepK / Math.sqrt(12);
  const rows = readings.map(({ minute, temperatureC }) => {
    const slope = (law.clock(temperatureC - 0.01) - law.clock(temperatureC + 0.01)) / 0.02;
    return { t: minute, tau: law.clock(temperatureC), weight: 1 / slope ** 2 };
  });
  let s = 0;
  let st = 0;
  let sy = 0;
  for (const { t, tau, weight } of rows) {
    s += weight;
    st += weight * t;
    sy += weight * tau;
  }
  const meanT = st / s;
  const meanTau = sy / s;
  let stt = 0;
  let sty = 0;
  for (const { t, tau, weight } of rows) {
    stt += weight * (t - meanT) ** 2;
    sty += weight * (t - meanT) * (tau - meanTau);
  }
  const rate = sty / stt;
  const offset = meanTau - rate * meanT;
  // The weights turn a residual of the clock into kelvin.
  const squares = rows.reduce((sum, { t, tau, weight }) => sum + weight * (tau - offset - rate * t) ** 2, 0);
  const freedom = PRIOR_READINGS + rows.length - 2;
  const variance = (PRIOR_READINGS * u ** 2 + squares) / freedom;
  return {
    offset,
    rate,
    varRate: variance / stt,
    varOffset: variance * (1 / s + meanT ** 2 / stt),
    covariance: (-variance * meanT) / stt,
    scatterK: Math.sqrt(squares / rows.length),
    coverage: student(freedom),
  };
}

/** Minute at which the fit passes a clock value, and its 95 % half-width. */
function when(
  { offset, rate, varOffset, varRate, covariance, coverage }: Fit,
  clock: number,
): readonly [number, number] {
  const minute = (clock - offset) / rate;
  const variance = (varOffset + 2 * minute * covariance + minute ** 2 * varRate) / rate ** 2;
  return [minute, coverage * Math.sqrt(Math.max(0, variance))];
}

function readingsFault(readings: readonly Reading[], roomC: number): HeatFault | null {
  for (const { minute, temperatureC } of readings) {
    const bad = firstBad([
      ['minute', minute, -1e5, 1e5],
      ['reading', temperatureC, -20, 150],
    ]);
    if (bad) return bad;
    if (temperatureC - roomC < 0.5) return { kind: 'reading-not-above-room', minute, temperatureC, roomC };
  }
  const moments = new Set(readings.map(({ minute }) => minute)).size;
  if (moments < 2) return { kind: 'too-few-readings', count: moments };
  let lowest = Number.POSITIVE_INFINITY;
  for (const { minute, temperatureC } of readings) {
    if (temperatureC > lowest + WANDER_K) return { kind: 'readings-rise', fromC: lowest, toC: temperatureC, minute };
    lowest = Math.min(lowest, temperatureC);
  }
  return null;
}

/** The law of a described pot: minutes of its nominal model from the hottest reading on. */
function potLaw(data: HeatData, input: ReadingsInput, startC: number, roomC: number): Outcome<Law | null> {
  if (!input.pot) return done(null);
  const model = potModel(data, input.pot.pot, input.pot.contents, 'nominal');
  if (!model.ok) return model;
  const track = trackOf(data, model.value, startC, input.targetC, roomC);
  return done({ clock: (celsius) => minuteAt(track, celsius), celsius: (clock) => temperatureAt(track, clock) });
}

const CURVE_POINTS = 24;

/**
 * Time to the target from two readings or more. Refuses readings that rise, lie at or below the room, fall too little
 * to tell, or fit no cooling curve.
 */
export function coolFromReadings(data: HeatData, input: ReadingsInput): Outcome<FittedCooling> {
  const { targetC, roomC = 20, stepK = 1 } = input;
  const readings = [...input.readings].sort((a, b) => a.minute - b.minute);
  const bad =
    coolingFault(targetC, roomC) ?? firstBad([['thermometer step', stepK, 0.01, 10]]) ?? readingsFault(readings, roomC);
  if (bad) return fail(bad);
  const first = readings[0] as Reading;
  const last = readings.at(-1) as Reading;
  const hottest = Math.max(...readings.map(({ temperatureC }) => temperatureC), targetC + 1);
  const pot = potLaw(data, input, hottest, roomC);
  if (!pot.ok) return pot;

  const constant = { law: newton(roomC), fit: regress(newton(roomC), readings, stepK) };
  const chosen = pot.value ? { law: pot.value, fit: regress(pot.value, readings, stepK) } : constant;
  const { rate, varRate, scatterK, coverage } = chosen.fit;
  if (scatterK > SCATTER_K) return fail({ kind: 'readings-disagree', scatterK });
  const half = coverage * Math.sqrt(varRate);
  if (rate <= half) {
    const fallK = first.temperatureC - last.temperatureC;
    return fail({ kind: 'too-little-fall', fallK, minutes: last.minute - first.minute });
  }

  const [nominal, spread] = when(chosen.fit, chosen.law.clock(targetC));
  const rateBand = { low: rate - half, nominal: rate, high: rate + half };
  const method = pot.value ? 'scaled-pot' : 'newton';
  const reached = last.temperatureC <= targetC;
  const passed = Math.min(last.minute, Math.max(first.minute, nominal));
  const left = reached ? 0 : Math.max(nominal - last.minute, 1e-6);
  // The other laws, fitted to the same readings, say how much the shape of the curve matters from here on.
  const fallingLaw = falling(roomC);
  const [bent] = when(regress(fallingLaw, readings, stepK), fallingLaw.clock(targetC));
  const [straight] = when(constant.fit, constant.law.clock(targetC));
  const slower = Math.max(0, bent - nominal, straight - nominal);
  const quicker = Math.max(0, nominal - straight);
  // In proportion to the time left while the spread is the smaller, so that neither end passes the last reading.
  const later = Math.max(spread, left * Math.expm1(Math.min(1, spread / left)));
  const sooner = -left * Math.expm1(-spread / left);
  const minutesLeft = reached
    ? { low: 0, nominal: 0, high: 0 }
    : {
        low: Math.max(0, left - Math.hypot(sooner, quicker)),
        nominal: left,
        high: left + Math.hypot(later, slower),
      };
  const start = last.minute;
  const minutes = reached
    ? { low: passed, nominal: passed, high: passed }
    : { low: start + minutesLeft.low, nominal: start + left, high: start + minutesLeft.high };
  const at = (minute: number): number => chosen.law.celsius(chosen.fit.offset + rate * minute);
  const paced = (minute: number, pace: number): number =>
    at(minute <= start ? minute : start + (minute - start) / pace);
  const end = Math.max(start, minutes.high);
  const curve = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => {
    const minute = first.minute + ((end - first.minute) * i) / CURVE_POINTS;
    return {
      minute,
      temperatureC: at(minute),
      lowC: reached ? at(minute) : paced(minute, Math.max(0.05, minutesLeft.low / left)),
      highC: reached ? at(minute) : paced(minute, minutesLeft.high / left),
    };
  });
  const notes: CoolNote[] = [];
  if (reached) notes.push(...alreadyThere(last.temperatureC).notes);
  if (input.pot?.contents.conductivity) notes.push('stir-before-reading');
  if (targetC - roomC < 3) notes.push('close-to-room');
  const lookAtMinute = reached ? null : nextLook(start, minutesLeft.low);
  return done({ minutes, minutesLeft, curve, lookAtMinute, notes, method, rate: rateBand, scatterK });
}
