// What is told around a recipe, in sentences of our own: left out where the rest is a recipe that fits, asked where an
// ingredient may be lost with it.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const recipe = '500 g lard, 200 g coconut oil, 100 g olive oil, 113 g NaOH, 250 g water';
const read = (text: string) => readRecipe(reader, text);

test.each([
  `My scale shows nothing below 2 g. ${recipe}`,
  `${recipe}\nMy dog weighed 31 kg when he ate the last one.`,
  `Hi! I drove 40 miles for this (the shop closes at 5, they said). ${recipe}. Is the lye right?`,
  `${recipe}. The box holds 1.4 kg, my sister says.`,
  `${recipe}. The tub was 5 kg when I bought it.`,
  `${recipe}. I want to know if 113 g was too much for it.`,
])('leaves out talk: %s', (text) => {
  const { doubts, fats, alkali, waterGrams } = read(text);
  expect(doubts).toEqual([]);
  expect(fats.map(({ grams }) => grams)).toEqual([500, 200, 100]);
  expect(alkali.map(({ grams }) => grams)).toEqual([113]);
  expect(waterGrams).toBe(250);
});

test.each([
  `${recipe}. And I had 100 g zimblo oil that I put in.`,
  `${recipe}. I put in 60 g of what my aunt sent.`,
  `${recipe}, or was it 131 g.`,
  `${recipe}. The scale said 96 and my log says 96.`,
  `500 g lard, 200 g coconut oil, 60 g NaOH, 250 g water. My aunt says 50 g is what she has left.`,
  '500 g lard, 200 g coconut oil, 100 g olive oil, NaOH, 250 g water. The old scale said 113 and the new one 121.',
  '700 g sunflower oil, 300 g coconut oil, 235 g KOH, 600 g water. My list assumes 90, but its small print has 88 % on it.',
])('asks: %s', (text) => expect(read(text).doubts).not.toEqual([]));

test('every figure that is left out has its fate, and the answer says so', () => {
  const { fates, assumptions } = read(`${recipe}\nMy dog weighed 31 kg when he ate the last one.`);
  expect(fates.map(({ text }) => text)).toEqual(['500', '200', '100', '113', '250', '31']);
  expect(assumptions.map(({ text }) => text).join('\n')).toMatch(/I left out .*31 kg/);
});
