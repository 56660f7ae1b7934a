/** Less than was planned of what was named without a weight right before. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = '500 g lard, 300 g palm oil, 115 g lye and 270 g water.';
const base = { lard: 500, 'palm-oil': 300, naoh: 115, water: 270 };

test.each([
  `${rest} Then coconut. I'd planned 200 g but the tub only gave 180 g, so 180 g it was, nothing else in its place.`,
  `${rest} And coconut. I wanted 200 g but had only 180 g, so 180 g it was.`,
  `${rest} Last came coconut. We'd meant to use 200 g, but there was only 180 g.`,
])('%s', (text) => expect(potOf(text)).toEqual({ grams: { ...base, 'coconut-oil': 180 }, doubts: [] }));

test('after the cook, too', () =>
  expect(
    potOf(
      `${rest} After the cook, when it was below 80 degrees, in went lanolin. I'd planned 40 g but the jar only gave 25 g, so 25 g it was.`,
    ),
  ).toEqual({ grams: base, doubts: [] }));

test.each([
  `${rest} Then castor. I wanted 100 g but had only 50 g, so I left it out.`,
  `${rest} Then coconut. I'd planned 200 g but the tub only gave 180 g. The missing 20 g I made up with lard.`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
