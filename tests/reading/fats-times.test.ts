/** The fats so many times, and the lye by its own weight. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const card = 'Card: rapeseed 150 g, coconut 100 g, tallow 50 g, lye 43 g, water 100 g.';
const grams = { 'canola-oil': 450, 'coconut-oil': 300, 'tallow-beef': 150, naoh: 86 };

test.each([
  [
    'I tripled the fats, but with the lye I was on the phone and only doubled it, so 86 g went in (in 300 g water).',
    300,
  ],
  ['I tripled the fats, with the lye I only doubled it (86 g in 300 g water).', 300],
  ['I tripled the fats, but 86 g lye in 300 g water.', 300],
  ['I tripled the fats, but only doubled the lye, so 86 g.', 200],
])('%s', (said, water) =>
  expect(potOf(`${card} ${said} How bad?`)).toEqual({ grams: { ...grams, water }, doubts: [] }),
);

test('the lye as it is written', () =>
  expect(
    potOf(`${card} I doubled the oils but forgot to double the lye, so only 43 g in 200 g water. How bad?`),
  ).toEqual({
    grams: { 'canola-oil': 300, 'coconut-oil': 200, 'tallow-beef': 100, naoh: 43, water: 200 },
    doubts: [],
  }));
test('a factor that does not make the weight is asked about', () =>
  expect(potOf(`${card} Tripled the oils, lye only doubled, 129 g. Ok?`).doubts).not.toEqual([]));
test('nobody has done it', () =>
  expect(potOf(`${card} If I doubled the fats, would 86 g lye be right?`).grams['canola-oil']).toBe(150));
