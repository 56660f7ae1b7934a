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

const solution = '700 g olive, 300 g coconut. I weighed 276 g of my 50 % NaOH solution';
const dry = { 'olive-oil-virgin': 700, 'coconut-oil': 300, naoh: 138 };

test.each([
  [`${solution}, then another 120 g water to thin it.`, 258],
  [`${solution} and took 120 g of water to dilute it.`, 258],
  ['700 g olive, 300 g coconut. Lye 138 g in 200 g water, then another 120 g water to thin it down.', 320],
  // what thins the soap
  [`${solution}. The soap was thick, then another 300 g water to thin it.`, 138],
  [`${solution}. Cooked for three hours, then 900 g water to dilute the paste.`, 138],
])('thins the lye or the soap: %s', (said, water) =>
  expect(potOf(`${said} Ok?`)).toEqual({ grams: { ...dry, water }, doubts: [] }),
);

test.each([
  'No trace, so I dissolved 10 g more lye in 20 g water and added that too.',
  'My son, who can count, said it was short, so I dissolved 10 g more lye in 20 g water and added that too.',
])('with more lye: %s', (said) =>
  expect(potOf(`Olive 500 g, coconut 200 g, NaOH 88 g, 250 g water. ${said} Ok?`)).toEqual({
    grams: { ...base, water: 270 },
    doubts: [],
  }),
);

test.each([
  [', then I put still 100 g olive oil in the pot', 600],
  ['. There is still 100 g olive oil in the bottle', 500],
])('%s', (said, olive) =>
  expect(potOf(`Olive 500 g, coconut 200 g${said}. NaOH 98 g, 250 g water. Ok?`).grams['olive-oil-virgin']).toBe(olive),
);
