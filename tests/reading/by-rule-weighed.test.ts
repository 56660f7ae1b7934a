/** A rule for the lye of a kilo, and what was weighed by it. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

describe('the weight by the rule is the lye', () => {
  const pot = { lard: 800, naoh: 110, water: 250 };
  test.each([
    'Aunt Hedda goes by 137 g of lye for every kilo of lard. I have 800 g of lard and nothing else, so took 110 g by her rule, water 250 g. Trust her?',
    "The rule is 137 g lye per kilo of lard. I've 800 g lard, so I took 110 g, water 250 g. ok?",
    "Lye: 137 g per kilo of lard, I've 800 g lard, so 110 g of lye, water 250 g. ok?",
    '137 g lye to a kilo of lard, says my gran. 800 g lard, so I took 110 g. Water 250 g.',
    'He says 137 g lye for every kilo of lard. I took 800 g of lard, 110 g lye, 250 g water.',
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

  test('of several fats', () =>
    expect(potOf('I go by 137 g lye per kilo of oil. 500 g lard and 300 g olive, so 110 g, water 250 g. ok?')).toEqual({
      grams: { lard: 500, 'olive-oil-virgin': 300, naoh: 110, water: 250 },
      doubts: [],
    }));

  test('also where it was reckoned wrong', () =>
    expect(
      potOf(
        'My gran takes 137 g lye to each kilo of lard. 800 g lard, so by her rule I weighed 120 g by her rule, water 250 g.',
      ).grams,
    ).toEqual({
      lard: 800,
      naoh: 120,
      water: 250,
    }));
});

test.each([
  '134 g lye for every kilo of lard, my gran says. I have 1.4 kg of lard, how much lye?',
  'The book says 137 g lye per kilo of lard. 1.4 kg lard, how much lye do I need?',
])('where it is asked for, the rule is no answer: %s', (text) =>
  expect(potOf(text).grams).not.toHaveProperty('naoh', 134),
);

test.each([
  ['Weighed out 141.7 g NaOH for 36 oz lard. good?\nOils at 40, lye at 35.', { lard: 1021, naoh: 142, water: 0 }],
  [
    'My mum says 250 g lye for a kilo of olive oil. Surely not??\nOils at 40, lye at 35.',
    { 'olive-oil-virgin': 1000, naoh: 250, water: 0 },
  ],
])('with no other fat it is what was weighed: %s', (text, grams) => expect(potOf(text).grams).toEqual(grams));

test('lye in so much water is no rule', () =>
  expect(
    potOf(
      'I melted 300 g coconut oil and 550 g olive oil, and poured in the lye, which was 118 g sodium hydroxide in 280 g of cold water. It traced in four minutes and I got 11 bars out of it.',
    ),
  ).toEqual({ grams: { 'coconut-oil': 300, 'olive-oil-virgin': 550, naoh: 118, water: 280 }, doubts: [] }));
