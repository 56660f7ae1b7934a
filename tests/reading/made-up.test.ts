/** What there was of a fat stands alone before what made up the rest; a solution that stands twice has its water once. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 500 g, lard 300 g, castor 80 g, lye 122 g, water 260 g.';

describe('made up from another fat', () => {
  test.each([
    [
      'The castor bottle held less than I thought. Scraped it out: 45 g. The missing 35 g I made up with cocoa butter.',
      { 'castor-oil': 45, 'cocoa-butter': 35 },
    ],
    [
      'The castor bottle was nearly empty: 50 g came out of it. The other 30 g I filled up with tallow.',
      { 'castor-oil': 50, 'tallow-beef': 30 },
    ],
    ['The castor gave out at 50 g. I made up the lacking 30 g with lard.', { 'castor-oil': 50, lard: 330 }],
    [
      "There wasn't enough lard, 180 g was the whole tub. For the missing 120 g I took tallow.",
      { lard: 180, 'tallow-beef': 120 },
    ],
  ])('%s', (told, want) => {
    const { grams, doubts } = potOf(`${list} ${told} Is the lye right?`);
    expect(grams).toMatchObject(want);
    expect(doubts).toEqual([]);
  });
  test.each([
    'The missing 30 g I made up with lard.',
    'Scraped the castor bottle: 40 g. The missing 35 g I made up with rapeseed.',
    'Last time I only got 50 g castor. The missing 30 g I made up with lard.',
  ])('asked about where it makes no sum, or another time is meant: %s', (told) =>
    expect(potOf(`${list} ${told} Is the lye right?`).doubts).not.toEqual([]),
  );
});

describe('a kept solution', () => {
  const oils = '600 g olive, 200 g coconut, 160 g lard';
  test.each([
    `I keep a stock of lye water, always one part lye to two parts water by weight. Of that I take 390 g, no extra water.\n\n${oils}.\n\nIs 390 g of my lye water right?`,
    `My lye water stands ready, one part lye to two parts water. I take 390 g of it. ${oils}. Are 390 g of lye water enough?`,
  ])('%s', (text) =>
    expect(potOf(text)).toEqual({
      grams: { 'olive-oil-virgin': 600, 'coconut-oil': 200, lard: 160, naoh: 130, water: 260 },
      doubts: [],
    }),
  );
});
