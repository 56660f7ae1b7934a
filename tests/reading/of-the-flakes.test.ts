/** An alkali that is called by its grains where it is weighed. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const alkaliOf = (text: string) => {
  const { alkali, doubts } = readRecipe(reader, text);
  return [...alkali.map(({ id, grams, purity }) => [id, grams, purity?.nominal]), ...doubts.map(({ id }) => id)];
};
const soft = ' Oils are 520 g rapeseed oil, 300 g coconut oil and 80 g castor oil.';
const hard = ', 200 g water, 500 g olive, 200 g coconut.';

test.each([
  "What I've bought is potassium hydroxide flakes, and the tub states 90% purity. I've weighed 204 g of the flakes, and there's 610 g water to dissolve them.",
  'KOH comes as flakes here, 90 % pure. 204 g of the flakes in 610 g water.',
  'I have potassium hydroxide at 90 %. 204 g of those flakes in 610 g water.',
])('with the purity that was told before: %s', (text) => expect(alkaliOf(text + soft)).toEqual([['koh', 204, 0.9]]));

test.each(['NaOH pearls from the chemist. I took 96 g of the pearls', 'The lye is in beads. 96 g of those beads'])(
  '%s',
  (text) => expect(alkaliOf(text + hard).map((one) => one.slice(0, 2))).toEqual([['naoh', 96]]),
);

test.each([
  'Soap flakes, 20 g of the flakes for decoration, lye 96 g',
  'Salt flakes, 20 g of the flakes on top. Lye 96 g',
])('flakes of something else: %s', (text) =>
  expect(alkaliOf(text + hard).map((one) => one.slice(0, 2))).toEqual([['naoh', 96]]),
);
