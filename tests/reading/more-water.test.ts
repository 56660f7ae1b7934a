/** Water that came to the water of the list. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 500 g, coconut 200 g, NaOH 98 g, 250 g water. ';
const base = { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 98 };

test.each([
  ['Then another 250 g water went in.', 500],
  ['Then a second 250 g of water went in.', 500],
  ['It was too hot, so another 100 g water went in.', 350],
  ['Later I added another 50 g of water.', 300],
  ['Another 100 g water went in with the lye.', 350],
  ['I put the 250 g water in the freezer first.', 250],
  ['Then another 250 g water for washing up.', 250],
])('%s', (told, water) => expect(potOf(`${list}${told}`)).toEqual({ grams: { ...base, water }, doubts: [] }));

test.each(['Maybe another 250 g water goes in.', 'Another 250 g water should have gone in.'])(
  'is not added up: %s',
  (told) => expect(potOf(`${list}${told}`).grams['water']).not.toBe(500),
);
