/** A list that was planned, and the whole one that was made. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = ' Lye as planned, 129 g, in 290 g water. Ok?';
const done = { 'olive-oil-virgin': 600, 'coconut-oil': 300, naoh: 129, water: 290 };

test.each([
  'Plan was 500 olive, 300 coconut, 100 avocado. What I really did, because the avocado smelled off: 600 g olive, 300 g coconut, no avocado at all.',
  'The plan: 500 g olive, 300 g coconut, 100 g shea. What went in really: 600 g olive, 300 g coconut and zero shea.',
  'I planned 500 g olive, 250 g coconut, 50 g castor. In reality: 600 g olive, 300 g coconut, castor none.',
  'Plan: olive 500 g, coconut 300 g, avocado 100 g. Done: olive 600 g, coconut 300 g, avocado 0 g.',
  'Plan was 500 g olive, 300 g coconut, 100 g avocado. What I really did: 600 g olive, 300 g coconut.',
])('what was done: %s', (said) => expect(potOf(said + rest)).toEqual({ grams: done, doubts: [] }));

test('another fat came', () =>
  expect(
    potOf(
      `Card said 400 g lard, 200 g coconut, 100 g shea. Really went in 400 g lard, 200 g coconut, 100 g cocoa butter.${rest}`,
    ),
  ).toEqual({ grams: { lard: 400, 'coconut-oil': 200, 'cocoa-butter': 100, naoh: 129, water: 290 }, doubts: [] }));

test('done as planned', () =>
  expect(
    potOf(`Plan was 500 g olive, 300 g coconut, 100 g avocado. In the end did exactly that.${rest}`).grams,
  ).toEqual({
    'olive-oil-virgin': 500,
    'coconut-oil': 300,
    'avocado-oil': 100,
    naoh: 129,
    water: 290,
  }));

test('what became of a fat is asked', () =>
  expect(
    potOf(`My recipe: 500 g olive, 300 g coconut, 100 g avocado. I used 600 g olive, 200 g coconut.${rest}`).doubts,
  ).not.toEqual([]));
