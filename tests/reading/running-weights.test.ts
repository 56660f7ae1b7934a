/** Readings of a scale that was set to zero once, and weights with their vessel. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = ' Lye 109 g, water 225 g. All good?';
const grams = { lard: 400, 'coconut-oil': 200, 'corn-oil': 150, naoh: 109, water: 225 };

describe('each reading has the ones before', () => {
  test.each([
    'Scale zeroed with the bowl on it, then one after another without zeroing: 400 g after the lard, 600 g after adding coconut, 750 g after adding corn oil.',
    "I didn't zero between: bowl tared, lard in -> 400 g, with coconut 600 g, with corn oil 750 g.",
    'Tared the bowl and then the display showed 400 g with the lard, 600 g with the coconut too, 750 g with corn oil.',
    'Display was running on: 400 g after lard, 600 g after coconut, 750 g after corn oil.',
    'Zeroed the pot first and never again. 400 g with the lard in, 600 g with coconut on top, 750 g after corn oil.',
  ])('%s', (said) => expect(potOf(said + rest)).toEqual({ grams, doubts: [] }));

  test.each([
    '150 g corn oil, then 200 g coconut, then 400 g lard.',
    'In order: 150 g corn oil, with that 200 g coconut, plus 400 g lard.',
    'After melting 150 g corn oil I added 200 g coconut, then 400 g lard.',
    'Scale tared with bowl each time: 150 g corn oil, then 200 g coconut, then 400 g lard.',
  ])('as they stand: %s', (said) => expect(potOf(said + rest)).toEqual({ grams, doubts: [] }));
});

describe('a weight less its vessel', () => {
  test.each([
    'Forgot to tare!! Display said 152 g for the lye but that was with the cup, and the empty cup is 24 g. Oils were 550 g olive and 330 g coconut (tared properly). 280 g water.',
    'I forgot taring the lye cup. It showed 150 g with cup, cup empty weighs 22 g. 550 g olive, 330 g coconut, 280 g water.',
    '550 g olive, 330 g coconut, 280 g water. Lye read 160 g but the jug was on the scale, the jug alone is 32 g.',
    '550 g olive, 330 g coconut, 280 g water. The lye was 152 g including the beaker (24 g).',
    '550 g olive, 330 g coconut, 280 g water, lye 128 g weighed in a cup, the cup is 24 g and was tared.',
  ])('%s', (said) =>
    expect(potOf(`${said} Ok?`)).toEqual({
      grams: { 'olive-oil-virgin': 550, 'coconut-oil': 330, naoh: 128, water: 280 },
      doubts: [],
    }),
  );
});
