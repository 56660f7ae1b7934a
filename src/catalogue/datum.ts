import type { Check, Fields } from './check.ts';
import { CONFIDENCES, gradeOf } from './choose.ts';
import type { Confidence, Datum } from './types.ts';

/** Density of water, g/mL, at the temperatures that relative densities refer to (CRC Handbook, IAPWS-95 values). */
const WATER: ReadonlyMap<number, number> = new Map([
  [15, 0.9991],
  [15.5, 0.99902],
  [20, 0.99821],
  [25, 0.99705],
  [30, 0.99565],
]);

const NO_DATUM: Datum = { low: 0, high: 0, source: '', locator: '', grade: 'memory', fromMemory: true };

interface RawDatum {
  readonly range?: readonly [number | null, number | null];
  readonly at?: unknown;
  readonly celsius?: number;
  readonly water?: number;
  readonly note?: string;
}

/**
 * One published statement, in the catalogue's units: `scale` for percentages, and the density of water where the source
 * gives a density relative to it. One test for all, since there are hundreds.
 */
export function readDatum(raw: Fields, least: number, most: number, scale: number, where: string, check: Check): Datum {
  const { range, at, celsius, water, note } = raw as RawDatum;
  const source = check.sources.get(raw['source'] as string);
  const confidence = (raw['sure'] ?? 'high') as Confidence;
  const unit = water === undefined ? scale : WATER.get(water);
  const [low, high] = range ?? [];
  const isSound =
    source !== undefined &&
    typeof at === 'string' &&
    isEnd(low, least, most) &&
    isEnd(high, least, most) &&
    (low ?? least) <= (high ?? most) &&
    !(low === null && high === null) &&
    unit !== undefined &&
    (celsius === undefined || (celsius >= 0 && celsius <= 120)) &&
    CONFIDENCES.includes(confidence);
  if (!isSound) {
    check.fail(where, `${JSON.stringify(raw)} is no datum from ${least} to ${most} with a listed source and a locator`);
    return NO_DATUM;
  }
  const fromMemory = source.standing === 'memory';
  const datum = {
    low: low === null ? null : low * unit,
    high: high === null ? null : high * unit,
    source: source.id,
    locator: at,
    grade: gradeOf(source.grade, fromMemory, confidence),
    fromMemory,
    confidence,
  };
  if (celsius === undefined && note === undefined) return datum;
  const relative =
    water === undefined ? '' : `published as ${low ?? '–'} to ${high ?? '–'} against water at ${water} °C`;
  const notes = [relative, note ?? ''].filter((part) => part !== '').join('; ');
  return {
    ...datum,
    ...(celsius === undefined ? {} : { celsius }),
    ...(notes === '' ? {} : { note: notes }),
  };
}

function isEnd(end: unknown, least: number, most: number): end is number | null {
  return end === null || (typeof end === 'number' && end >= least && end <= most);
}
