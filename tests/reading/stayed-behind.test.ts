/** What stayed behind in a vessel and what is in the pot make together what the list has: the second counts. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 500 g, coconut 250 g, NaOH 108 g, water 240 g.';
const pot = (olive: number) => ({ 'olive-oil-virgin': olive, 'coconut-oil': 250, naoh: 108, water: 240 });

test.each([
  `${list} Only after I saw that in the jug of the oil remained 50 g, so in the pot there is 450 g of olive.`,
  `${list} In the bottle stayed 50 g of the olive, so in the pot are 450 g.`,
  `${list} After pouring I saw in the bowl remained 50 g olive, that means 450 g of olive is in the pot.`,
  `${list} Of the olive 50 g has in the bottle remained. In the soap are therefore 450 g olive.`,
  `I melted 500 g of olive but I only ladled 450 g of it into the soap pot the rest went back in the fridge for frying. Coconut 250 g, NaOH 108 g, water 240 g.`,
])('counts what is in the pot: %s', (text) => expect(potOf(text)).toEqual({ grams: pot(450), doubts: [] }));

test.each([
  `${list} In the bottle remain 50 g for the salad.`,
  `${list} In the jug stayed 50 g of an older oil, in the pot it looked like 400 g less.`,
])('stays as it is: %s', (text) => expect(potOf(text).grams).toMatchObject({ 'olive-oil-virgin': 500 }));

test('what is kept for hair is asked about', () =>
  expect(potOf(`${list} I kept 50 g of the coconut for my hair the rest is in the pot.`).doubts).not.toEqual([]));
