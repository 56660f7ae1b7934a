/** How warm a pot is now and when it is cool enough, from the readings of its batch: reckoned anew at each look. */
import { type Batch, gramsOfLine, reachedAt, type TemperatureReading } from '../../engine/batch/batch.ts';
import { recipeAsTaken } from '../../engine/batch/weights.ts';
import { type Cooling, type CurvePoint, coolOf } from '../../engine/heat/cooling.ts';
import { coolFromReadings } from '../../engine/heat/cooling-fit.ts';
import type { ScentFlash } from '../../engine/heat/flash-point.ts';
import type { Band } from '../../engine/heat/outcome.ts';
import { partsOf } from '../../engine/heat/peak.ts';
import { type Contents, soapContents, solutionContents } from '../../engine/heat/pot.ts';
import { waterGramsOf } from '../../engine/soap.ts';
import { type Style, temperature } from '../../units/print.ts';
import type { Context } from '../define.ts';
import { scentIntoPot } from '../heat-cautions.ts';
import { potFor } from '../heat-pot.ts';
import { flashFor } from '../heat-scent.ts';
import { shelvesOf } from './plan.ts';

/** Where nobody says, °C. */
const usualRoomC = 20;

/** What a forecast rests on that nobody said, as it stands after "I took". */
export const forecastTaken = (
  batch: Batch,
  { rough, goal }: Forecast,
  { settings }: Context,
  style: Style,
): readonly string[] => [
  ...(rough ? [goal.what === 'mix' ? 'a jug without a lid' : 'a slow cooker of usual size, the lid off'] : []),
  ...(batch.roomC === null && settings.room === undefined ? [`a room of ${temperature(usualRoomC, style)}`] : []),
];

const minute = 60_000;

export interface Goal {
  readonly celsius: number;
  /** What may be done there. */
  readonly what: 'scent' | 'mix' | 'mould';
  readonly flash: ScentFlash | null;
}

export interface Forecast {
  readonly goal: Goal;
  /** At the moment that was asked for, °C. */
  readonly now: Band;
  /** From that moment, minutes; all 0 where it is cool enough. */
  readonly left: Band;
  readonly isThere: boolean;
  /** When to measure next; null where it is cool enough. */
  readonly look: number | null;
  /** Of one reading only: the pot is taken to be a usual one. */
  readonly rough: boolean;
}

const noPot = {
  kind: null,
  material: null,
  litres: null,
  lid: null,
  insulation: null,
  grams: null,
  described: false,
} as const;

/** A lye solution cools towards the mixing temperature, a cooked pot towards its scent or the mould. */
function goalOf(batch: Batch, context: Context, style: Style): Goal | null {
  const { cook } = context.heat();
  if (batch.stage === 'lye' || batch.stage === 'mix') return { celsius: cook.mixing.high, what: 'mix', flash: null };
  if (batch.process === 'cold' || !(batch.stage === 'cool' || batch.stage === 'scent')) return null;
  if (!batch.scent) return { celsius: cook.stiffensC.high, what: 'mould', flash: null };
  const reading = { parts: batch.scent.parts, equal: false, grams: null, load: null, fatGrams: null, ofBatch: false };
  const found = flashFor(reading, context.heat(), style, scentIntoPot);
  return found.ok
    ? { celsius: found.value.flash.addBelowC, what: 'scent', flash: found.value.flash }
    : { celsius: cook.stiffensC.high, what: 'mould', flash: null };
}

/** Readings of what cools now, from the last rise on: a pot that was warmed again begins anew. */
export function coolingReadings(batch: Batch): readonly TemperatureReading[] {
  const isLye = batch.stage === 'lye' || batch.stage === 'mix';
  const own = batch.readings.filter(({ stage, at }) =>
    isLye
      ? stage === 'lye' || stage === 'mix'
      : (stage === 'cool' || stage === 'scent') && at >= (reachedAt(batch, 'cool') ?? 0) - 30 * minute,
  );
  let from = 0;
  own.forEach(({ celsius }, i) => {
    if (i > 0 && celsius > (own[i - 1]?.celsius ?? celsius) + 2) from = i;
  });
  return own.slice(from);
}

function contentsOf(batch: Batch, celsius: number, context: Context): Contents {
  const data = context.heat();
  const isLye = batch.stage === 'lye' || batch.stage === 'mix';
  const recipe = isLye ? recipeAsTaken(batch, shelvesOf(context.catalogue)) : null;
  if (recipe && recipe.alkali.length > 0) {
    return solutionContents(data, partsOf(recipe.alkali, waterGramsOf(recipe)), celsius);
  }
  const grams = batch.lines.reduce((sum, line) => sum + gramsOfLine(batch, line), 0);
  return soapContents(data, Math.max(1, grams));
}

/** The curve at a minute; beyond its end, its end. */
function curveAt(curve: readonly CurvePoint[], at: number): Band {
  const next = curve.findIndex((point) => point.minute >= at);
  const to = curve[next < 0 ? curve.length - 1 : next];
  const from = curve[next < 0 ? curve.length - 1 : Math.max(0, next - 1)];
  if (!to || !from) return { low: 0, nominal: 0, high: 0 };
  const part = to.minute > from.minute ? Math.min(1, Math.max(0, (at - from.minute) / (to.minute - from.minute))) : 0;
  const between = (a: number, b: number): number => a + (b - a) * part;
  return {
    low: between(from.lowC, to.lowC),
    nominal: between(from.temperatureC, to.temperatureC),
    high: between(from.highC, to.highC),
  };
}

/** Null where nothing cools, nothing was measured yet, or nothing can be said. */
export function forecastOf(batch: Batch, now: number, context: Context, style: Style): Forecast | null {
  const goal = goalOf(batch, context, style);
  const readings = coolingReadings(batch);
  const first = readings[0];
  const last = readings.at(-1);
  if (!goal || !first || !last) return null;
  const data = context.heat();
  const roomC = batch.roomC ?? context.settings.room ?? usualRoomC;
  const since = (now - last.at) / minute;
  if (last.celsius <= goal.celsius) {
    const there = { low: last.celsius, nominal: last.celsius, high: last.celsius };
    return { goal, now: there, left: { low: 0, nominal: 0, high: 0 }, isThere: true, look: null, rough: false };
  }
  if (goal.celsius - roomC < 1) return null;
  const fitted =
    readings.length > 1
      ? coolFromReadings(data, {
          readings: readings.map(({ at, celsius }) => ({ minute: (at - first.at) / minute, temperatureC: celsius })),
          targetC: goal.celsius,
          roomC,
        })
      : null;
  let cooling: Cooling | null = fitted?.ok ? fitted.value : null;
  const rough = cooling === null;
  let start = first.at;
  if (!cooling) {
    const isLye = goal.what === 'mix';
    const contents = contentsOf(batch, (last.celsius + goal.celsius) / 2, context);
    const { pot } = potFor(noPot, isLye ? 'lye' : 'soap', contents.grams, data);
    // scent waits for the heat to go: the lid is off by then
    const input = {
      contents,
      pot: { ...pot, lid: 'off' as const },
      startC: last.celsius,
      targetC: goal.celsius,
      roomC,
    };
    const modelled = coolOf(data, input);
    if (!modelled.ok) return null;
    cooling = modelled.value;
    start = last.at;
  }
  const { minutesLeft, curve, lookAtMinute } = cooling;
  const from = (value: number): number => Math.max(0, value - since);
  const left = { low: from(minutesLeft.low), nominal: from(minutesLeft.nominal), high: from(minutesLeft.high) };
  const look = lookAtMinute === null ? null : start + lookAtMinute * minute;
  return {
    goal,
    now: curveAt(curve, (now - start) / minute),
    left,
    isThere: false,
    // not in the past, and not at once after a reading
    look: Math.round(Math.max(look ?? 0, now + 3 * minute)),
    rough,
  };
}
