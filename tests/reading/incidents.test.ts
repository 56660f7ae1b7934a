/** Small things that happen to a pot, and what they leave in it. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const pot = (text: string): string => {
  const { fats, after, alkali, doubts } = readRecipe(reader, text);
  return doubts.length > 0
    ? 'asked'
    : [...fats, ...after, ...alkali].map(({ id, grams }) => `${id} ${Number(grams.toPrecision(4))}`).join(', ');
};
const palm = 'olive 500 g, coconut 250 g, palm 250 g, lye 140 g, water 300 g.';
const lard = 'olive-oil-virgin 500, coconut-oil 250, lard 250, naoh 140';

test.each([
  [`${palm} Palm out and 250 g lard in. Lye still ok?`, lard],
  [`${palm} So out with the palm and in with 250 g lard. Lye still ok?`, lard],
  [`${palm} How about palm out and 250 g lard in?`, 'asked'],
  [
    'I weighed 500 g olive and 300 g coconut, but 40 g of that olive I held back and stirred in after the cook. NaOH 117 g, water 290 g.',
    'olive-oil-virgin 460, coconut-oil 300, olive-oil-virgin 40, naoh 117',
  ],
  [
    'I bought 2 blocks of coconut fat, 250 g each, used one and a half. Olive 680 g. Lye 152 g, water 340 g.',
    'coconut-oil 375, olive-oil-virgin 680, naoh 152',
  ],
  [
    'I have 3 blocks of coconut, 250 g each. Olive 250 g. Lye 155 g, water 340 g.',
    'coconut-oil 750, olive-oil-virgin 250, naoh 155',
  ],
  ['I wanted 90 g lye but the jar slipped and some more fell in the water. Oils 400 g olive, 250 g coconut.', 'asked'],
  [
    'Bowl plus coconut 612 g, bowl plus coconut plus olive 1162 g, bowl by itself 362 g. Lye 113 g. Water 240 g.',
    'coconut-oil 250, olive-oil-virgin 550, naoh 113',
  ],
  ['Bowl with coconut 612 g, bowl with olive 912 g, empty bowl 362 g. Lye 113 g. Water 240 g.', 'asked'],
  [
    'I make 1.5 times the recipe from my mother. Hers: 400 g olive, 160 g coconut, 40 g castor. I have weighed 126 g of NaOH and 300 g of water. Is it good for the bigger pot?',
    'olive-oil-virgin 600, coconut-oil 240, castor-oil 60, naoh 126',
  ],
])('%s', (text, said) => expect(pot(text)).toBe(said));

const weights = (said: string): string =>
  pot(`Palm 400 g, coconut 280 g, olive 320 g, lye 138 g, water 305 g. ${said} Ok?`);

test.each([
  ['The real figure for the olive was 275 g.', 'palm-oil 400, coconut-oil 280, olive-oil-virgin 275, naoh 138'],
  ['The olive really was 275 g.', 'palm-oil 400, coconut-oil 280, olive-oil-virgin 275, naoh 138'],
  ['The correct figure is 275 g for the olive.', 'palm-oil 400, coconut-oil 280, olive-oil-virgin 275, naoh 138'],
  ['The real figure for the olive may be 275 g.', 'asked'],
  ['The actual weight of the loaf was 1300 g.', 'palm-oil 400, coconut-oil 280, olive-oil-virgin 320, naoh 138'],
  ['25 g of the olive ended up on the worktop.', 'asked'],
])('what a row really weighs: %s', (said, expected) => expect(weights(said)).toBe(expected));

test.each([
  [
    'stearic acid 250 g, coconut 100 g, castor 50 g. 80 g KOH in 200 g water. The friend who taught me would use 50 g KOH + 22 g NaOH but I have no NaOH.',
    'stearic-acid 250, coconut-oil 100, castor-oil 50, koh 80',
  ],
  [
    'My friend would use 50 g KOH + 22 g NaOH. Stearic acid 250 g, coconut 100 g, castor 50 g. 200 g water.',
    'stearic-acid 250, coconut-oil 100, castor-oil 50, naoh 22, koh 50',
  ],
  [
    'Palm 400 g, coconut 280 g. I then weighed the olive as 320 g, weighed it again and the bowl had not been tared; the real figure was 275 g. NaOH 138 g, water 305 g.',
    'asked',
  ],
  ['For my two moulds: 500 g olive, 200 g coconut, and 98 g lye each. 210 g water each.', 'asked'],
])('%s', (text, expected) => expect(pot(text)).toBe(expected));

test.each([
  "EDIT: it's 160 coconut not 260, typo!!\nlard 540 g\ncoconut 260 g\nolive 100 g\nlye 111 g\nwater 270 g",
  'EDIT: 160 g coconut, not 260 g\nlard 540 g\ncoconut 260 g\nolive 100 g\nlye 111 g\nwater 260 g',
  'Correction: 160 g coconut, not 260 g.\n\nlard 540 g\ncoconut 260 g\nolive 100 g\nlye 111 g\nwater 270 g',
])('put right above the list: %s', (text) =>
  expect(pot(text)).toBe('lard 540, coconut-oil 160, olive-oil-virgin 100, naoh 111'),
);

test.each([
  [
    "350 g olive oil, 150 g coconut oil, 71 g NaOH, 165 g water. Would've loved 50 g of shea in there too. Lye good?",
    'asked',
  ],
  ['450 g tallow, 200 g coconut, 100 g olive, water 230 g. Lye was the same as last time. Too much or ok?', 'asked'],
  [
    '450 g tallow, 200 g coconut, 100 g olive. How much lye, the same as last time?',
    'tallow-beef 450, coconut-oil 200, olive-oil-virgin 100',
  ],
  [
    "700 g olive, 200 g coconut, 100 g castor, 150 g lye, 320 g water. I weighed the lye again and it's 138 g now. Ok?",
    'olive-oil-virgin 700, coconut-oil 200, castor-oil 100, naoh 138',
  ],
  [
    'Palm 300 g, olive 400 g, castor 50 g, NaOH 104 g, water 270 g. But castor was not at home so I made it without, and put nothing else for it. Ok?',
    'palm-oil 300, olive-oil-virgin 400, naoh 104',
  ],
  [
    'The recipe is 800 g lard, 300 g coconut. I scaled the oils down a bit so it fits my mould and used 120 g lye. Ok?',
    'asked',
  ],
  ['Weighed 500 g olive then took a bit back out. 250 g coconut. 105 g lye, 240 g water.', 'asked'],
  [
    '250 g stearic acid, 150 g coconut oil, 103 g of potassium hydroxide in 500 g water. Two days later I whipped in 30 g of shea butter when the whole thing was neutral and cool. Ok?',
    'stearic-acid 250, coconut-oil 150, shea-butter 30, koh 103',
  ],
])('%s', (text, expected) => expect(pot(text)).toBe(expected));
