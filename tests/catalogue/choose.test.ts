import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  choose,
  DENSITY_RULE,
  GRADES,
  gradeOf,
  MELTING_RULE,
  UNSAPONIFIABLE_RULE,
  VALUE_RULE,
} from '../../src/catalogue/choose.ts';
import type { Datum } from '../../src/catalogue/types.ts';

const titleOf = (source: string): string => `The ${source}`;
const datum = (low: number | null, high: number | null, more: Partial<Datum> = {}): Datum => ({
  low,
  high,
  source: 'book',
  locator: 'page 1',
  grade: 'handbook',
  fromMemory: false,
  ...more,
});
const pick = (entries: readonly Datum[], rule = VALUE_RULE) => choose(entries, rule, titleOf);

describe('which figure is taken', () => {
  it('takes the best grade, whatever the order', () => {
    const paper = datum(180, 199, { grade: 'paper' });
    const standard = datum(184, 196, { grade: 'standard' });
    expect(pick([paper, standard])).toMatchObject({ low: 184, high: 196, nominal: 190, taken: 1 });
    expect(pick([standard, paper])).toMatchObject({ low: 184, high: 196, nominal: 190, taken: 0 });
  });

  it('prefers what was read, then the surer, then the earlier', () => {
    const remembered = datum(170, 180, { grade: 'standard', fromMemory: true });
    const unsure = datum(180, 190, { grade: 'standard', confidence: 'low' });
    const sure = datum(190, 200, { grade: 'standard' });
    expect(pick([remembered, unsure, sure])?.taken).toBe(2);
    expect(pick([remembered, unsure])?.taken).toBe(1);
    expect(pick([sure, { ...sure, source: 'other' }])?.taken).toBe(0);
  });

  it('counts an unread source as memory, but lets a standard known by heart keep its rank', () => {
    expect(gradeOf('standard', true, 'high')).toBe('standard');
    expect(gradeOf('standard', true, 'medium')).toBe('standard');
    expect(gradeOf('standard', true, 'low')).toBe('memory');
    expect(gradeOf('pharmacopoeia', true, 'high')).toBe('memory');
    expect(gradeOf('paper', false, 'low')).toBe('paper');
  });

  it('keeps a remembered standard marked, unless a page that was read says the same', () => {
    const codex = datum(188, 194, { grade: 'standard', source: 'codex', fromMemory: true });
    const other = datum(180, 195, { grade: 'regulation', source: 'law' });
    const same = datum(188, 194, { grade: 'regulation', source: 'law' });
    expect(pick([codex, other])).toMatchObject({ taken: 0, fromMemory: true });
    const chosen = pick([codex, same]);
    expect(chosen).toMatchObject({ taken: 1, fromMemory: false });
    expect(chosen?.why).toContain('which states the same as The codex');
  });

  it('holds nothing where no statement is a range', () => {
    expect(pick([])).toBeNull();
    expect(pick([datum(250, null)])).toBeNull();
    expect(pick([datum(null, 48)])).toBeNull();
    expect(pick([datum(null, 1.5)], UNSAPONIFIABLE_RULE)).toMatchObject({ low: 0, high: 1.5, nominal: 0.75 });
  });
});

describe('how wide it is', () => {
  it('leaves a real spread alone', () => {
    expect(pick([datum(192, 203)])).toMatchObject({ low: 192, high: 203, nominal: 197.5 });
    expect(pick([datum(192, 203)])?.why).not.toContain('widened');
  });

  it('widens a single figure, and a range narrower than 2 %, to 2.5 % either way', () => {
    expect(pick([datum(200, 200)])).toMatchObject({ low: 195, high: 205, nominal: 200 });
    expect(pick([datum(199, 201)])).toMatchObject({ low: 195, high: 205, nominal: 200 });
    expect(pick([datum(198, 202)])).toMatchObject({ low: 198, high: 202 });
    expect(pick([datum(200, 200)])?.why).toContain('2.5 %');
  });

  it('widens it further over every other statement, and keeps the middle of the one taken', () => {
    const others = [datum(88, 98, { grade: 'memory', fromMemory: true }), datum(80, 91, { grade: 'secondary' })];
    const chosen = pick([datum(92.2, 92.2), ...others]);
    expect(chosen).toMatchObject({ low: 80, high: 98, nominal: 92.2 });
    expect(chosen?.why).toContain('over all other figures');
  });

  it('spans a read figure that lies wholly outside, but no overlapping and no remembered one', () => {
    const taken = datum(171.7, 178.3, { grade: 'paper' });
    expect(pick([taken, datum(185.2, 185.2, { grade: 'secondary' })])).toMatchObject({ low: 171.7, high: 185.2 });
    expect(pick([taken, datum(170, 172, { grade: 'secondary' })])).toMatchObject({ low: 171.7, high: 178.3 });
    expect(pick([taken, datum(190, 191, { grade: 'memory', fromMemory: true })])).toMatchObject({ high: 178.3 });
    expect(pick([taken, datum(185.2, 185.2, { grade: 'secondary' })])?.why).toContain('Widened');
  });

  it('does not widen a melting range, nor mixes densities of other temperatures', () => {
    expect(pick([datum(24, 24)], MELTING_RULE)).toMatchObject({ low: 24, high: 24 });
    const density = pick([datum(0.9, 0.9), datum(0.86, 0.87, { celsius: 99 })], DENSITY_RULE);
    expect(density?.low).toBeCloseTo(0.8955, 9);
    expect(density?.high).toBeCloseTo(0.9045, 9);
  });
});

describe('whatever is held', () => {
  const entry = fc
    .record({
      low: fc.option(fc.double({ min: 1, max: 300, noNaN: true })),
      high: fc.option(fc.double({ min: 1, max: 300, noNaN: true })),
      grade: fc.constantFrom(...GRADES),
      fromMemory: fc.boolean(),
    })
    .filter(({ low, high }) => low === null || high === null || low <= high)
    .map((fields) => datum(fields.low, fields.high, fields));

  it('the range in use covers the statement taken and its middle, and none has a better grade', () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 6 }), (entries) => {
        const chosen = pick(entries);
        if (!chosen) return !entries.some(({ low, high }) => low !== null && high !== null);
        const taken = entries[chosen.taken] as Datum;
        expect(chosen.low).toBeLessThanOrEqual(taken.low as number);
        expect(chosen.high).toBeGreaterThanOrEqual(taken.high as number);
        expect(chosen.nominal).toBeCloseTo(((taken.low as number) + (taken.high as number)) / 2, 9);
        expect(chosen.high - chosen.low).toBeGreaterThanOrEqual(0.02 * chosen.nominal - 1e-6);
        const best = Math.min(
          ...entries.flatMap(({ low, high, grade }) => (low === null || high === null ? [] : [GRADES.indexOf(grade)])),
        );
        // A twin that was read may stand in for a remembered one of better grade.
        const same = entries.some(
          (one) => GRADES.indexOf(one.grade) === best && one.low === taken.low && one.high === taken.high,
        );
        expect(GRADES.indexOf(taken.grade) === best || same).toBe(true);
        return true;
      }),
    );
  });

  it('adding weaker evidence never changes the nominal value', () => {
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 5 }), (entries) => {
        const standard = datum(180, 200, { grade: 'standard' });
        expect(pick([standard, ...entries.filter(({ grade }) => grade !== 'standard')])?.nominal).toBe(190);
      }),
    );
  });
});
