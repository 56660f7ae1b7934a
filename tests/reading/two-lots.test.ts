/** Two lots of one fat, each with its weight, that went in together. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = 'Coconut 200 g, lye 104 g, water 220 g.';
const pot = { lard: 550, 'coconut-oil': 200, naoh: 104, water: 220 };

test.each([
  `First render gave 300 g of lard, second render gave 250 g, and both went into the kettle. ${rest}`,
  `One jar had 300 g of lard, the other jar had 250 g, both went in. ${rest}`,
  `The first block was 300 g lard and the second block 250 g. I melted both. ${rest}`,
  `The first block was 300 g lard and the second block 250 g lard, and all of it went in. ${rest}`,
  `Lard 550 g. ${rest} The first tub gave 300 g of lard, the second 250 g, both went in.`,
])('counts as their sum: %s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test('two fats are no lots of one', () =>
  expect(
    potOf('One jar had 300 g of lard, the other jar had 250 g of coconut, both went in. Lye 80 g, water 220 g'),
  ).toEqual({
    grams: { lard: 300, 'coconut-oil': 250, naoh: 80, water: 220 },
    doubts: [],
  }));

test.each([
  `One jar had 300 g of lard, the other had 250 g, and half of both went in. ${rest}`,
  `One jar had 300 g of lard, the other had 250 g. Should both go in? ${rest}`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
