// What stands beside a figure says what it is. Sentences of our own; the grams are multiplied by hand.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());

function weighed(text: string): Readonly<Record<string, number>> {
  const { fats, alkali, liquids, doubts } = readRecipe(reader, text);
  expect(doubts, text).toEqual([]);
  return Object.fromEntries([...fats, ...alkali, ...liquids].map(({ id, grams }) => [id, grams]));
}

test.each<[string, Readonly<Record<string, number>>]>([
  ['lard -500 g, coconut -200 g, lye -97 g, water -190 g', { lard: 500, 'coconut-oil': 200, naoh: 97 }],
  ['Got 3 tubs of coconut oil from the shop, 400 g each. How much lye?', { 'coconut-oil': 1200 }],
  [
    'Coconut was on offer, so I got some. I weighed out 400 g of it, and 100 g lard. How much lye?',
    { 'coconut-oil': 400, lard: 100 },
  ],
  [
    '300 g olive\noil, 180 g coco-\nnut oil, 60 g sun-\nflower oil. How much lye?',
    {
      'olive-oil-virgin': 300,
      'coconut-oil': 180,
      'sunflower-oil': 60,
    },
  ],
  ['lard 50 dag, soda 6.6 dag (NaOH), water 15 dag', { lard: 500, naoh: 66 }],
  ['500 g lard, 66 g lye, 150 g water. Oils were at 40 degrees, lye at about 30.', { lard: 500, naoh: 66 }],
  ['New mould (9 holes, 140 ml each): lard 500 g. What is the lye amount?', { lard: 500 }],
  [
    '- lard 500 g\n- coconut 200 g\n- a half bottle of jojoba that I keep for my hair\nHow much lye?',
    {
      lard: 500,
      'coconut-oil': 200,
    },
  ],
  ['500 g lard, 66 g lye, 150 g water. Strained through a tea towel, 12 pucks of about 60 g.', { lard: 500, naoh: 66 }],
])('%s', (text, grams) => {
  const got = weighed(text);
  expect(Object.keys(got).sort()).toEqual(Object.keys(grams).sort());
  for (const [id, want] of Object.entries(grams)) expect(got[id]).toBeCloseTo(want, 6);
});

// one of them is right, and nobody knows which
test.each([
  '500 g lard, 70 g lye, 150 g water. Lye is 68 g.',
  'lard -500 g, coconut 200 g, lye 97 g, water 190 g',
  '500 g lard, 150 g water, lye: the scale said somewhere between 190 and 240',
])('asks: %s', (text) => expect(readRecipe(reader, text).doubts).not.toEqual([]));
