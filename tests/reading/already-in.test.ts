/** What somebody else had already put in, on top of what is weighed. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = '600 g olive, 180 g lard, 155 g lye, 330 g water';
const grams = { 'coconut-oil': 300, 'olive-oil-virgin': 600, lard: 180, naoh: 155, water: 330 };

test.each([
  `I weighed 300 g coconut oil. My sister had already put in 120 g of coconut before I came. ${rest}.`,
  `I weighed 300 g coconut oil into the pot. My wife had already put in 120 g of coconut. So both are in there, together with ${rest}.`,
  `300 g coconut oil, ${rest}. My husband had already added 12 g of lye when I came.`,
])('asked: %s', (text) => expect(potOf(text).doubts).toEqual(['corrected']));

test.each([
  'My husband has already weighed 300 g coconut into the pot.',
  'My sister has already put 120 g of coconut in hers.',
  'My husband had already weighed the 155 g lye when I came.',
])('nothing of it: %s', (said) => expect(potOf(`300 g coconut oil, ${rest}. ${said}`)).toEqual({ grams, doubts: [] }));
