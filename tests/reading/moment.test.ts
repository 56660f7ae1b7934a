import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readMoment } from '../../src/reading/moment.ts';
import { daysLater, instantOf, localOf } from '../../src/units/zone.ts';

const berlin = 'Europe/Berlin';
/** A Thursday, 12:05 in Berlin. */
const now = Date.UTC(2026, 10, 26, 11, 5);

const at = (text: string, from = now, zone = berlin): string => {
  const moment = readMoment(text, from, zone);
  return moment.kind === 'at' ? new Date(moment.at).toISOString().slice(0, 16) : moment.kind;
};

describe('a time in words', () => {
  test.each([
    ['in 15 min', '2026-11-26T11:20'],
    ['15 minutes', '2026-11-26T11:20'],
    ['in half an hour', '2026-11-26T11:35'],
    ['in an hour and a half', '2026-11-26T12:35'],
    ['in 1 h 30 min', '2026-11-26T12:35'],
    ['in 3 days', '2026-11-29T11:05'],
    ['in 2 weeks and 3 days', '2026-12-13T11:05'],
    ['in a month', '2026-12-26T11:05'],
    ['in 3 days at 9:00', '2026-11-29T08:00'],
    ['tomorrow at 9:00', '2026-11-27T08:00'],
    ['tomorrow', '2026-11-27T08:00'],
    ['at 12:40', '2026-11-26T11:40'],
    ['at 9 pm', '2026-11-26T20:00'],
    ['tonight', '2026-11-26T18:00'],
    ['on Friday at 10', '2026-11-27T09:00'],
    ['on 2026-12-24', '2026-12-24T08:00'],
    ['24 December', '2026-12-24T08:00'],
    ['Dec 24 at 8pm', '2026-12-24T19:00'],
    ['on 13/4/2027', '2027-04-13T07:00'],
    ['13.4.2027', '2027-04-13T07:00'],
  ])('"%s"', (text, iso) => {
    expect(at(text)).toBe(iso);
    // and the same inside a sentence, which keeps its other words
    expect(readMoment(`turn the bars ${text}`, now, berlin)).toMatchObject({ kind: 'at', rest: 'turn the bars' });
  });

  test.each([
    ['in 5 parsecs', 'unit'],
    ['in 15', 'unit'],
    ['at 9', 'past'],
    ['at 12:00', 'past'],
    ['yesterday', 'past'],
    ['20 minutes ago', 'past'],
    ['in 0 min', 'past'],
    ['on 2020-01-01', 'past'],
    ['on 3/4', 'which-order'],
    ['on 2026-02-30', 'no-date'],
    ['at 12:40 in 15 min', 'two'],
    ['every day at 9', 'again'],
    ['in 100 years', 'far'],
    ['turn the bars', 'none'],
    ['soap at 90 °C', 'none'],
    ['put it in 3 moulds', 'unit'],
  ])('"%s" is no time to ring at: %s', (text, kind) => {
    expect(readMoment(text, now, berlin).kind).toBe(kind);
  });
});

describe('summer time', () => {
  // Directive 2000/84/EC: begins and ends at 01:00 UTC on the last Sunday of March and of October
  const spring = Date.UTC(2027, 2, 27, 12);
  const autumn = Date.UTC(2027, 9, 30, 12);

  test('a time that the clocks skip is as long after the skip, and says so', () => {
    expect(readMoment('tomorrow at 2:30', spring, berlin)).toMatchObject({
      at: Date.UTC(2027, 2, 28, 1, 30),
      taken: ['skipped'],
    });
  });
  test('of a time that they show twice the first is taken, and said', () => {
    expect(readMoment('tomorrow at 2:30', autumn, berlin)).toMatchObject({
      at: Date.UTC(2027, 9, 31, 0, 30),
      taken: ['twice'],
    });
  });
  test('a day keeps the time of day, 24 hours pass by the clock', () => {
    expect(at('in 1 day', spring)).toBe('2027-03-28T11:00');
    expect(at('in 24 h', spring)).toBe('2027-03-28T12:00');
  });
});

const zones = fc.constantFrom(
  'UTC',
  berlin,
  'America/New_York',
  'Asia/Kolkata',
  'Australia/Lord_Howe',
  'Pacific/Apia',
  'America/St_Johns',
);
const instants = fc.integer({ min: Date.UTC(1980, 0), max: Date.UTC(2060, 0) }).map((ms) => ms - (ms % 60_000));

describe('local time', () => {
  test('leads back to its instant, or to the other one that shows the same', () => {
    fc.assert(
      fc.property(instants, zones, (ms, zone) => {
        const local = localOf(ms, zone);
        const placed = instantOf(local, zone);
        expect(localOf(placed.at, zone)).toEqual(local);
        expect(placed.skipped).toBe(false);
        if (placed.at !== ms) expect(placed.twice).toBe(true);
      }),
    );
  });
  test('days later is that many midnights on', () => {
    fc.assert(
      fc.property(instants, fc.integer({ min: -400, max: 4000 }), (ms, days) => {
        const local = localOf(ms, 'UTC');
        expect(instantOf(daysLater(local, days), 'UTC').at).toBe(ms + days * 86_400_000);
      }),
    );
  });
});

test('what is set lies ahead, and no text breaks the reader', () => {
  const word = fc.oneof(
    fc.constantFrom(
      'in',
      'at',
      'on',
      'tomorrow',
      'friday',
      'pm',
      'h',
      'min',
      'days',
      ':',
      '2026-13-40',
      'and',
      'half an',
    ),
    fc.integer({ min: -3, max: 3000 }).map(String),
    fc.string({ maxLength: 6, unit: 'grapheme' }),
  );
  fc.assert(
    fc.property(fc.array(word, { maxLength: 9 }), instants, zones, (words, ms, zone) => {
      const moment = readMoment(words.join(' '), ms, zone);
      if (moment.kind !== 'at') return;
      expect(moment.at).toBeGreaterThan(ms);
      expect(Number.isFinite(moment.at)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});
