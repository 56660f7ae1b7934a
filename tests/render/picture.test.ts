import { describe, expect, test } from 'vitest';
import type { Picture } from '../../src/answer/types.ts';
import { drawPicture } from '../../src/render/picture/draw.ts';
import { colours, wrapped } from '../../src/render/picture/spec.ts';

const minutes = [0, 15, 30, 45, 60];
const curve: Picture = {
  title: 'Cooling to 59 °C',
  kind: 'curve',
  x: { label: 'time', unit: 'min' },
  y: { label: 'pot', unit: '°C' },
  series: [
    {
      name: 'pot',
      points: minutes.map((x) => ({
        x,
        y: 20 + 70 * Math.exp(-x / 90),
        low: 20 + 70 * Math.exp(-x / 80),
        high: 20 + 70 * Math.exp(-x / 100),
      })),
    },
  ],
  marks: [{ label: 'target 59 °C', y: 59 }],
};
const bars: Picture = {
  title: 'Fatty acids of the blend',
  kind: 'bars',
  x: { label: 'fatty acids', unit: '' },
  y: { label: 'share by mass', unit: '%' },
  series: [
    {
      name: 'blend',
      points: [
        { x: 'C12–C14 saturated', y: 20 },
        { x: 'C18:1', y: 45, low: 40, high: 50 },
      ],
    },
    {
      name: 'olive oil',
      points: [
        { x: 'C12–C14 saturated', y: 0 },
        { x: 'C18:1', y: 71 },
      ],
    },
  ],
  marks: [],
};

/** Width and height in a PNG's header (PNG specification, 11.2.2). */
function header(png: Uint8Array): readonly [number, number] {
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const view = new DataView(png.buffer, png.byteOffset);
  return [view.getUint32(16), view.getUint32(20)];
}

describe('a picture', () => {
  test.each([
    ['curve', curve],
    ['bars', bars],
  ])('%s: a PNG of the width of a phone, at two pixels a point, that says its own size', async (_, picture) => {
    const { png, width, height } = await drawPicture(picture);
    expect(header(png)).toEqual([width, height]);
    expect(width).toBe(840);
    expect(height).toBeGreaterThan(300);
    expect(height).toBeLessThan(1000);
  });

  test('holds its title, axes, names and marks as text', async () => {
    const { svg } = await drawPicture(curve);
    for (const text of ['Cooling to 59 °C', 'time (min)', 'pot (°C)', 'target 59 °C']) expect(svg).toContain(text);
    const both = await drawPicture(bars);
    for (const text of ['blend', 'olive oil', 'C12–C14 saturated', 'share by mass (%)'])
      expect(both.svg).toContain(text);
  });

  test('text reaches the pixels: another title, name or mark is another picture (so the font is found)', async () => {
    const base = Buffer.from((await drawPicture(curve)).png);
    for (const change of [
      { title: 'Cooling to 58 °C' },
      { x: { label: 'tine', unit: 'min' } },
      { marks: [{ label: 'target 69 °C', y: 59 }] },
    ])
      expect(base.equals((await drawPicture({ ...curve, ...change })).png)).toBe(false);
  });

  test('the band, its ends and the mark are drawn', async () => {
    const flat = { ...curve, series: [{ name: 'pot', points: minutes.map((x) => ({ x, y: 90 - x / 2 })) }] };
    const { svg } = await drawPicture(curve);
    expect(svg).not.toBe((await drawPicture(flat)).svg);
    expect(svg).toContain(colours.series[0]);
    expect(svg).toContain(colours.alarm);
    expect(svg).toContain('stroke-dasharray');
  });

  test('what a person typed is inert: markup, expressions and odd characters stay text', async () => {
    const hostile = `<script>alert(1)</script> & "quotes" datum.x ]]> ${'\u202e'}gnp`;
    const { svg, width } = await drawPicture({
      ...bars,
      title: hostile,
      series: [{ name: hostile, points: [{ x: hostile, y: 3 }] }],
      marks: [{ label: hostile, y: 2 }],
    });
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;script&gt;');
    expect(width).toBe(840);
  });

  test('many names, one point and none are drawn without a fault', async () => {
    const many = Array.from({ length: 14 }, (_, i) => ({ x: `fat number ${i} with a name that goes on and on`, y: i }));
    const { height } = await drawPicture({ ...bars, series: [{ name: 'blend', points: many }] });
    expect(height).toBeGreaterThan(2 * 14 * 25);
    // Words as long as these must not squeeze the plot away: some bar is still 100 points long.
    const marks = [{ label: 'a mark near the right end of it, in so many words that they would run out', y: 12 }];
    const { svg } = await drawPicture({ ...bars, series: [{ name: 'blend', points: many }], marks });
    const lengths = [...svg.matchAll(/aria-roledescription="bar" d="M[^"]*?h([\d.]+)/g)].map(([, length]) =>
      Number(length),
    );
    expect(Math.max(...lengths)).toBeGreaterThan(100);
    await drawPicture({ ...curve, series: [{ name: 'pot', points: [{ x: 0, y: 50 }] }] });
    await drawPicture({ ...curve, series: [{ name: 'pot', points: [] }], marks: [] });
  });
});

/** Contrast ratio of two colours (WCAG 2.2, relative luminance). */
function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const [r = 0, g = 0, blue = 0] = [1, 3, 5].map((i) => {
      const part = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue;
  };
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

test('words stand out by 4.5 : 1 and lines by 3 : 1 from their ground (WCAG 2.2, 1.4.3 and 1.4.11)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  for (const words of [colours.ink, colours.alarm]) expect(contrast(words, colours.ground)).toBeGreaterThan(4.5);
  for (const line of [...colours.series, colours.faint]) expect(contrast(line, colours.ground)).toBeGreaterThan(3);
});

test('words into lines', () => {
  expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
  expect(wrapped('', 7)).toEqual([]);
  expect(wrapped('immeasurable', 4)).toEqual(['immeasurable']);
});
