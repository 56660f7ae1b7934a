/** A name told with its last word first. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = 'NaOH 95 g, water 200 g';

test.each([
  ['Fat of goose 350 gr, oil of olive 300 gr', { 'goose-fat': 350, 'olive-oil-virgin': 300 }],
  ['fat of pork 400 g, oil of sunflower 300 g', { lard: 400, 'sunflower-oil': 300 }],
  ['butter of shea 100 g, tallow of beef 500 g', { 'shea-butter': 100, 'tallow-beef': 500 }],
  ['lard of pork 300 g, tallow of mutton 300 g', { lard: 300, 'tallow-mutton': 300 }],
  ['the fat of the duck 300 g, oil of rice bran 300 g', { 'duck-fat': 300, 'rice-bran-oil': 300 }],
  ['500 g of oil of olive, 200 g of oil of coconut', { 'olive-oil-virgin': 500, 'coconut-oil': 200 }],
  ['oil from olives 500 g, oil of palm kernel 100 g', { 'olive-oil-virgin': 500, 'palm-kernel-oil': 100 }],
])('%s', (fats, grams) =>
  expect(potOf(`${fats}, ${rest}`)).toEqual({ grams: { ...grams, naoh: 95, water: 200 }, doubts: [] }),
);

test.each([
  'My oil of choice is olive 500 g, with coconut 200 g',
  '700 g of fat from a friend: olive 500 g and coconut 200 g',
  'Oil of lavender 10 g, olive 500 g, coconut 200 g',
  'I rendered fat from pork shoulder for the table. Here: olive 500 g, coconut 200 g',
])('names no fat of the list: %s', (fats) =>
  expect(potOf(`${fats}, ${rest}`)).toEqual({
    grams: { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 95, water: 200 },
    doubts: [],
  }),
);
