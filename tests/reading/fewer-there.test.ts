/** Less was there than planned, and so much it is. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = 'Coconut 200 g, lye 88 g, water 200 g.';
const pot = { lard: 420, 'coconut-oil': 200, naoh: 88, water: 200 };

test.each([
  `I had 500 g of lard in plan but there are only 420 g at home, so 420 g. ${rest}`,
  `I wanted 500 g lard but have only 420 g here, so it is 420 g. ${rest}`,
  `In the plan stand 500 g lard, but I have at home just 420 g, so 420 g. ${rest}`,
  `The recipe wants lard 500 g, I got only 420 g in the shop, 420 g it is then. ${rest}`,
  `Meant to use 500 g of lard but only 420 g were there, therefore 420 g of lard. ${rest}`,
])('counts what is there: %s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test.each([
  `I had 500 g of lard in plan but there are only 420 g at home, so should I take 420 g? ${rest}`,
  `I had 500 g of lard in plan but there are only 420 g at home, so 420 g. The missing 80 g I take from palm. ${rest}`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
