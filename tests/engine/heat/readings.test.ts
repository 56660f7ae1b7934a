import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../../src/catalogue/heat.ts';
import { temperatureAt, trackOf } from '../../../src/engine/heat/cooling.ts';
import {
  coolFromReadings,
  type FittedCooling,
  type Reading,
  type ReadingsInput,
  student,
} from '../../../src/engine/heat/cooling-fit.ts';
import { potModel, soapContents } from '../../../src/engine/heat/pot.ts';

const data = loadHeat();
const readingsOf = (...pairs: readonly (readonly [number, number])[]): readonly Reading[] =>
  pairs.map(([minute, temperatureC]) => ({ minute, temperatureC }));
const fitted = (input: ReadingsInput): FittedCooling => {
  const outcome = coolFromReadings(data, input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};
const fault = (input: ReadingsInput) => {
  const outcome = coolFromReadings(data, input);
  return outcome.ok ? null : outcome.fault;
};
const steel = {
  pot: { kind: 'steel-pot', lid: 'on', insulation: 'none' } as const,
  contents: soapContents(data, 1500),
};

describe("Newton's law from readings", () => {
  test('two readings: the textbook formula, and a band around it', () => {
    const { minutes, minutesLeft, method, rate } = fitted({ readings: readingsOf([0, 92], [10, 86]), targetC: 59 });
    const k = Math.log(72 / 66) / 10;
    expect(method).toBe('newton');
    expect(rate.nominal).toBeCloseTo(k, 12);
    expect(minutes.nominal).toBeCloseTo(Math.log(72 / 39) / k, 9);
    expect(minutesLeft.nominal).toBeCloseTo(minutes.nominal - 10, 9);
    expect(minutes.low).toBeLessThan(minutes.nominal - 3);
    // The falling-coefficient law passes through the same readings and arrives later: θ^(−1/4) rises evenly.
    const step = (66 ** -0.25 - 72 ** -0.25) / 10;
    expect(minutes.high).toBeGreaterThan((39 ** -0.25 - 72 ** -0.25) / step);
  });

  test('noiseless readings give back the rate', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        between(0.001, 0.05),
        between(5, 35),
        between(30, 75),
        fc.uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 8 }),
        (k, roomC, excess, minutes) => {
          const readings = minutes.map((minute) => ({ minute, temperatureC: roomC + excess * Math.exp(-k * minute) }));
          const targetC = roomC + 0.3 * excess;
          const outcome = coolFromReadings(data, { readings, targetC, roomC, stepK: 0.01 });
          if (!outcome.ok) {
            // A fall that the thermometer cannot tell, or readings that lie on the room.
            expect(['too-little-fall', 'reading-not-above-room']).toContain(outcome.fault.kind);
            return;
          }
          expect(outcome.value.rate.nominal).toBeCloseTo(k, 9);
          expect(outcome.value.scatterK).toBeLessThan(1e-9);
          if (!outcome.value.notes.includes('already-there'))
            expect(outcome.value.minutes.nominal).toBeCloseTo(Math.log(1 / 0.3) / k, 4);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('the 95 % band covers: readings rounded to a whole degree, true cooling by a constant rate', () => {
    // A seeded generator, so that the coverage is a fixed figure.
    let state = 20240917;
    const random = (): number => {
      state = (state * 1664525 + 1013904223) % 4294967296;
      return state / 4294967296;
    };
    let covered = 0;
    const runs = 2000;
    for (let i = 0; i < runs; i += 1) {
      const k = 0.006 + 0.01 * random();
      const start = 84 + 10 * random();
      const count = 2 + Math.floor(4 * random());
      const readings = Array.from({ length: count }, (_, n) => ({
        minute: 10 * n,
        temperatureC: Math.round(20 + (start - 20) * Math.exp(-k * 10 * n)),
      }));
      const truth = Math.log((start - 20) / 25) / k;
      const outcome = coolFromReadings(data, { readings, targetC: 45 });
      if (!outcome.ok) continue;
      const { low, high } = outcome.value.minutes;
      if (low <= truth && truth <= high) covered += 1;
    }
    expect(covered / runs).toBeGreaterThan(0.93);
    expect(student(8)).toBeCloseTo(2.306, 2);
    expect(student(20)).toBeCloseTo(2.086, 2);
  });

  test('more readings narrow the band; a next look lies before the earliest arrival', () => {
    const two = fitted({ readings: readingsOf([0, 92], [10, 86]), targetC: 59 });
    const four = fitted({ readings: readingsOf([0, 92], [10, 86], [20, 80.5], [30, 75.4]), targetC: 59 });
    expect(four.minutes.high - four.minutes.low).toBeLessThan(0.6 * (two.minutes.high - two.minutes.low));
    for (const { lookAtMinute, minutes } of [two, four]) {
      expect(lookAtMinute ?? Number.NaN).toBeLessThanOrEqual(minutes.low);
      expect(lookAtMinute ?? Number.NaN).toBeGreaterThan(10);
    }
  });

  test('the curve runs through the target at each end of the band and falls all the way', () => {
    const { curve, minutes } = fitted({ readings: readingsOf([0, 92], [10, 86], [20, 81]), targetC: 59 });
    expect(curve.at(-1)?.minute).toBeCloseTo(minutes.high, 9);
    expect(curve.at(-1)?.highC).toBeCloseTo(59, 6);
    for (const [i, point] of curve.entries()) {
      expect(point.lowC).toBeLessThanOrEqual(point.temperatureC + 1e-9);
      expect(point.highC).toBeGreaterThanOrEqual(point.temperatureC - 1e-9);
      const before = curve[i - 1];
      if (before) expect(point.temperatureC).toBeLessThan(before.temperatureC);
    }
  });

  test('already there', () => {
    const { minutes, minutesLeft, notes, lookAtMinute } = fitted({
      readings: readingsOf([0, 60], [10, 55]),
      targetC: 57,
    });
    expect(minutesLeft).toEqual({ low: 0, nominal: 0, high: 0 });
    expect(minutes.nominal).toBeGreaterThan(0);
    expect(minutes.nominal).toBeLessThan(10);
    expect(notes).toContain('already-there');
    expect(lookAtMinute).toBe(null);
  });
});

describe('a described pot, scaled to the readings', () => {
  const model = potModel(data, steel.pot, steel.contents, 'nominal');
  if (!model.ok) throw new Error('model');
  const track = trackOf(data, model.value, 92, 50, 20);

  test('noiseless readings of a pot that cools 1.4 times as fast give back 1.4', () => {
    const readings = [0, 8, 15, 30].map((minute) => ({ minute, temperatureC: temperatureAt(track, 1.4 * minute) }));
    const { rate, method, minutes, notes } = fitted({ readings, targetC: 55, pot: steel });
    expect(method).toBe('scaled-pot');
    expect(rate.nominal).toBeCloseTo(1.4, 2);
    expect(temperatureAt(track, 1.4 * minutes.nominal)).toBeCloseTo(55, 1);
    expect(notes).toContain('stir-before-reading');
  });

  test('it arrives between or after the two plain laws within their band', () => {
    const readings = readingsOf([0, 92], [10, 86], [20, 80.5]);
    const scaled = fitted({ readings, targetC: 59, pot: steel });
    const plain = fitted({ readings, targetC: 59 });
    expect(scaled.minutes.nominal).toBeGreaterThan(plain.minutes.low);
    expect(scaled.minutes.nominal).toBeLessThan(plain.minutes.high);
  });
});

describe('refusals', () => {
  test('readings that rise, stand still, scatter, repeat a moment or lie at the room', () => {
    expect(fault({ readings: readingsOf([0, 60], [10, 66]), targetC: 50 })).toEqual({
      kind: 'readings-rise',
      fromC: 60,
      toC: 66,
      minute: 10,
    });
    expect(fault({ readings: readingsOf([0, 60], [10, 60]), targetC: 50 })?.kind).toBe('too-little-fall');
    expect(fault({ readings: readingsOf([0, 60], [10, 60.8]), targetC: 50 })?.kind).toBe('too-little-fall');
    expect(fault({ readings: readingsOf([0, 90], [10, 70], [20, 69], [30, 50]), targetC: 40 })?.kind).toBe(
      'readings-disagree',
    );
    expect(fault({ readings: readingsOf([5, 90], [5, 84]), targetC: 40 })).toEqual({
      kind: 'too-few-readings',
      count: 1,
    });
    expect(fault({ readings: readingsOf([0, 90]), targetC: 40 })).toEqual({ kind: 'too-few-readings', count: 1 });
    expect(fault({ readings: [], targetC: 40 })?.kind).toBe('too-few-readings');
    expect(fault({ readings: readingsOf([0, 60], [10, 20]), targetC: 40 })?.kind).toBe('reading-not-above-room');
    expect(fault({ readings: readingsOf([0, 90], [10, 80]), targetC: 20 })?.kind).toBe('target-not-above-room');
    expect(fault({ readings: readingsOf([0, Number.NaN], [10, 80]), targetC: 40 })?.kind).toBe('not-finite');
  });

  test('any readings: finite figures in order, or a refusal', () => {
    const reading = fc.record({
      minute: fc.integer({ min: 0, max: 200 }),
      temperatureC: fc.double({ min: 10, max: 105, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(reading, { maxLength: 6 }),
        fc.double({ min: 15, max: 95, noNaN: true }),
        fc.boolean(),
        (readings, targetC, described) => {
          const outcome = coolFromReadings(data, described ? { readings, targetC, pot: steel } : { readings, targetC });
          if (!outcome.ok) return;
          const { minutes, minutesLeft, curve } = outcome.value;
          for (const band of [minutes, minutesLeft]) {
            expect(Number.isFinite(band.low) && Number.isFinite(band.nominal) && Number.isFinite(band.high)).toBe(true);
            expect(band.low).toBeLessThanOrEqual(band.nominal + 1e-9);
            expect(band.high).toBeGreaterThanOrEqual(band.nominal - 1e-9);
          }
          for (const point of curve) expect(Number.isFinite(point.temperatureC + point.lowC + point.highC)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
