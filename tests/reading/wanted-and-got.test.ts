/** What was wanted of a fat, and what is in the pot; what others take, and what the writer took. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const asked = (text: string) => {
  const { grams, doubts } = potOf(text);
  return doubts.length === 0 ? grams : null;
};

describe('more than was wanted', () => {
  const rest = '500 g olive, 160 g sunflower, lye 138 g, water 310 g.';
  const coconut = (said: string) => asked(`${rest} ${said} Ok?`)?.['coconut-oil'];
  test.each([
    ["Wanted 300 g coconut, my hand slipped and 340 g landed in the pot. I can't get it out.", 340],
    ['It should have been 300 g coconut but 340 g went in.', 340],
    ['Wanted 300 g of coconut oil, got to 340 on the display, spooned 40 back into the jar.', 300],
    ['Coconut should be 300 g, the scale said 340, so I scooped 40 g back.', 300],
    ['I was aiming at 300 g coconut, poured 340 g, put 30 g back in the jar.', 310],
    ['I wanted 300 g coconut and 350 g of castor went in.', 300],
  ])('%s', (said, grams) => expect(coconut(said)).toBe(grams));
  test.each([
    "I wanted 300 g coconut and if 340 g had gone in I'd worry.",
    'Wanted 300 g coconut, had 340 g, so I spooned some back.',
    'I wanted 300 g coconut and 60 g went in the freezer.',
  ])('%s is asked about', (said) => expect(coconut(said)).toBeUndefined());
});

describe('what a tutorial takes, and what went in', () => {
  const list = '450 g olive, 250 g coconut, 200 g palm, 132 g lye and 300 g water.';
  const castor = (said: string) => asked(`${list} ${said} Ok?`)?.['castor-oil'];
  test.each([
    ['The book has 80 g castor but I used 40 g.', 40],
    ['My sister adds 80 g castor, I only used 40 g.', 40],
    ['The tutorial stirs in 80 g castor, I only put in 40 g.', 40],
    ['The recipe has 80 g castor and I added 20 g of honey.', 80],
  ])('%s', (said, grams) => expect(castor(said)).toBe(grams));
  test('so much more of it', () => expect(castor('The recipe has 80 g castor and I used 20 g more.')).toBe(100));
});

test.each([
  'my empty bowl is 340 g. bowl with the melted tallow in it was 1190 g so i took the bowl off for the tallow.',
  'the empty bowl is 340 g, with the tallow in it 1190 g and I deducted the bowl.',
])('the vessel was taken off: %s', (said) =>
  expect(asked(`${said} 200 g coconut, 150 g sunflower. lye 167 g and water 380 g. ok?`)?.['tallow-beef']).toBe(850),
);
test('nobody knows whether it was', () =>
  expect(
    asked(
      '200 g coconut, 150 g sunflower, lye 167 g, water 380 g. the empty bowl is 340 g, with the tallow in it 1190 g with the bowl already taken off. ok?',
    ),
  ).toBeNull());
