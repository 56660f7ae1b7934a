/** So much of a row of the list went in, and no more. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'olive 400 g, coconut 150 g, shea 200 g, palm 300 g, lye 133 g, water 280 g. ';
const listed = {
  'olive-oil-virgin': 400,
  'coconut-oil': 150,
  'shea-butter': 200,
  'palm-oil': 300,
  naoh: 133,
  water: 280,
};

test.each([
  'All of mine went in, all of her palm, but only 120 g of the shea, she wanted the rest for her hands.',
  'Everything went in but only 120 g of the shea.',
  'All went in except the shea, of that only 120 g.',
  'Just 120 g of my shea ended up in the pot.',
])('%s', (note) => expect(potOf(list + note)).toEqual({ grams: { ...listed, 'shea-butter': 120 }, doubts: [] }));

test('next time is another batch', () =>
  expect(potOf(`${list}Next time only 120 g of the shea goes in.`)).toEqual({ grams: listed, doubts: [] }));

test.each([
  'Should only 120 g of the shea go in?',
  'Only 120 g of the shea is unrefined.',
  'Only 20 g of the shea melted in the pan, the rest is still hard.',
])('asked: %s', (note) => expect(potOf(list + note).doubts).not.toEqual([]));
