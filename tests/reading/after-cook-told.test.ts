/** What a cooked soap gets last, told without "after the cook". */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const list = '700 g lard and 200 g coconut oil, lye 126 g in 300 g water.';
const shea = (said: string): unknown => {
  const { fats, after, doubts } = readRecipe(reader, `${list} ${said}`);
  const of = (rows: readonly { readonly id: string; readonly grams: number }[]) =>
    rows.find(({ id }) => id === 'shea-butter')?.grams;
  return doubts.length > 0 ? 'asked' : { cooked: of(fats), after: of(after) };
};

describe('late', () => {
  test.each([
    'Cooked for one and half hour until it looked like mashed potatoes. Midday: cooled a bit and I stirred in 40 g shea butter.',
    'Cooked for two hours. It cooled a bit and I stirred in 40 g shea butter.',
    'Hot process. When the soap was ready I mixed 40 g shea butter into it.',
    'Hot process. Shea butter 40 g to finish.',
    'Boiled 3 hours, was clear, and in the end 40 g shea butter for the skin.',
    'Melted shea 40 g went in at the very end of the hot process.',
    'Cooked it an hour, and after that I beat in 40 g shea.',
    'Slow cooker for hours. Last came 40 g shea.',
  ])('%s', (said) => expect(shea(said)).toEqual({ after: 40 }));
  test.each([
    'Cold process. At light trace I stirred in 40 g shea butter.',
    'Cooked the oils for an hour with herbs, strained. At trace 40 g shea butter.',
    'Hot process. Then at trace 40 g shea butter went in.',
  ])('cooked: %s', (said) => expect(shea(said)).toEqual({ cooked: 40 }));
});

test('so much of it is cooked', () =>
  expect(shea('Hot process. Then 400 g shea butter went in.')).toEqual({ cooked: 400 }));

test.each([
  '60 g shea in at the start with the oils; the other 40 g I stirred in when the cook was over.',
  'Shea butter: 60 g at the start, 40 g at the end of the cook.',
  'Shea butter: 60 g before and 40 g after the cook.',
  'I do own 100 g of shea butter, but I put only 60 g of it in at the start with the oils; the other 40 g I kept back and stirred in when the cook was over.',
])('in two parts: %s', (said) => expect(shea(said)).toEqual({ cooked: 60, after: 40 }));
