/** What is not in, by its empty tub or by its name. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '600 g olive, 300 g coconut, 100 g shea, 129 g lye, 290 g water.';
const { 'shea-butter': _, ...without } = potOf(list).grams;

describe('an empty tub', () => {
  test.each([
    'Shea tub was empty so I left it out altogether, nothing in its place.',
    'The shea jar was empty, so I left it out.',
    'Shea bottle ran out and I skipped it.',
    'The shea had gone hard, in the end I left it out.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual({ grams: without, doubts: [] }));

  test.each([
    'The shea tub was empty after that, so I bought more.',
    'The shea was all gone so I left the honey out too.',
  ])('and it went in: %s', (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual(potOf(list)));
});

test.each([
  '400 g mustard-free blend: 250 g coconut oil plus 150 g sesame oil. NaOH 63 g, water 140 g.',
  'Palm-free soap: 250 g coconut oil, 150 g olive-free sesame oil, NaOH 63 g, water 140 g.',
])('free of something: %s', (said) =>
  expect(potOf(said)).toEqual({ grams: { 'coconut-oil': 250, 'sesame-oil': 150, naoh: 63, water: 140 }, doubts: [] }),
);

const fats = '500 g coconut oil, 500 g lard,';
test.each([
  [`${fats} water 300 g. Lye: two tubs, 80 g from one and 62 g from the other.`, 142],
  [`${fats} water 300 g. The lye came from two tubs, 80 g out of the old one and 62 g out of the new.`, 142],
])('out of two tubs: %s', (said, naoh) => expect(potOf(said)).toMatchObject({ grams: { naoh }, doubts: [] }));

test('one tub or the other is asked about', () =>
  expect(potOf(`${fats} water 300 g. Lye: 142 g from my tub or 112 g from the other.`).doubts).not.toEqual([]));
