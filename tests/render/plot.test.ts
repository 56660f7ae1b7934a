import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Picture } from '../../src/index.ts';
import { plot } from '../../src/render/plot.ts';
import { coolingPot } from '../pictures.ts';

const pot: Picture = coolingPot(
  [
    { x: 0, y: 90 },
    { x: 20, y: 70, low: 65, high: 75 },
    { x: 40, y: 50, low: 40, high: 60 },
  ],
  [{ label: 'add the scent', y: 59 }],
);

describe('curve', () => {
  const lines = plot(pot, 60).split('\n');
  const drawn = lines.slice(2, 11).map((line) => line.slice(line.indexOf('|') + 1));

  test('falls from the upper left to the lower right, its band around it', () => {
    expect(drawn[0]?.startsWith('*')).toBe(true);
    const stars = drawn.map((line) => line.indexOf('*')).filter((at) => at >= 0);
    expect(stars).toEqual(stars.toSorted((a, b) => a - b));
    expect(drawn.at(-1)).toContain('·');
  });

  test('the scale names its ends and the mark, in its own row', () => {
    expect(lines[2]).toMatch(/^90 \|/);
    expect(lines[10]).toMatch(/^40 \|/);
    // (90 − 59)/(90 − 40) of eight steps is the fifth: the row below five others.
    expect(lines[7]).toMatch(/^59 \|-+/);
    expect(lines[11]).toMatch(/^ +0 +40$/);
    expect(lines.at(-1)).toBe('- add the scent');
  });

  test('a flat line has a scale too', () => {
    const flat = coolingPot([
      { x: 0, y: 20 },
      { x: 9, y: 20 },
    ]);
    expect(plot(flat, 40)).toMatch(/\*{20}/);
  });
});

describe('bars', () => {
  const shares: Picture = {
    ...pot,
    kind: 'bars',
    x: { label: 'group', unit: '' },
    y: { label: 'share', unit: '%' },
    series: [
      {
        name: 'fat',
        points: [
          { x: 'C18:1', y: 50 },
          { x: 'C12–C14', y: 25, low: 20, high: 30 },
        ],
      },
    ],
    marks: [],
  };

  test('as long as their values, which stand behind them', () => {
    const [, axis, first = '', second = ''] = plot(shares, 60).split('\n');
    expect(axis).toBe('share, %');
    expect(first).toMatch(/^C18:1 +=+ 50$/);
    expect(second).toMatch(/^C12–C14 =+ 25 \(20 to 30\)$/);
    const length = (line: string) => line.split('=').length - 1;
    expect(length(first)).toBe(2 * length(second));
  });
});

test('never wider than it may be where names are short', () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 90 }), (columns) => {
      for (const line of plot(pot, columns).split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
    }),
  );
});
