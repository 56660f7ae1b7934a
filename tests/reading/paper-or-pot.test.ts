/** What a card says of one weight, and what was put in of it. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = '500 g olive, 200 g tallow, 117 g lye, 265 g water.';
const pot = { 'olive-oil-virgin': 500, 'tallow-beef': 200, 'coconut-oil': 300, naoh: 117, water: 265 };

describe('the pot counts', () => {
  test.each([
    `Card says 150 g coconut, I've gone and put 300 g in the pot. The rest is right: ${rest} Do I bin it?`,
    `The recipe wanted 150 g of coconut, and I tipped 300 g in. Everything else as written: ${rest}`,
    `${rest} For the coconut the card says 150 g, I put 300 g in.`,
    `150 g coconut, ${rest} For the coconut my book says 150 g, but I used 300 g.`,
    `300 g coconut, ${rest} The sheet says 150 g coconut, I put 300 g in.`,
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

  test('of the water, too', () =>
    expect(
      potOf(`Recipe asks for 300 g water, I only used 265 g. 300 g coconut, 500 g olive, 200 g tallow, 117 g lye`),
    ).toEqual({
      grams: pot,
      doubts: [],
    }));
});

test.each([
  `Card says 150 g coconut, should I put 300 g in the pot? The rest is right: ${rest}`,
  `The card says 150 g coconut, my sister put 300 g in hers. ${rest}`,
  `Card says 150 g coconut, I put 300 g of it in the fridge. ${rest}`,
  `In spring the card said 150 g coconut and I put 300 g in. ${rest}`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

test('a weight of another fat is its own', () =>
  expect(
    potOf("Card says 150 g coconut, I've put 300 g of olive in the pot, 200 g tallow, 66 g lye, 160 g water.").grams,
  ).toMatchObject({
    'olive-oil-virgin': 300,
  }));
