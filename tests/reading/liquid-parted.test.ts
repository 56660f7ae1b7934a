/** A liquid of which so much is milk, and the rest water. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (said: string) => {
  const { waterGrams, liquids, doubts } = readRecipe(reader, `700 g olive, 300 g coconut, 138 g lye. ${said}`);
  return { water: waterGrams, liquids: liquids.map(({ id, grams }) => `${id} ${Math.round(grams)}`), doubts };
};

test.each([
  "Liquid is 330 g in total, and 110 g of that is goat milk, which I stick-blend in. The remaining part is plain water and that's what the lye is dissolved in.",
  'The liquid is 330 g altogether, of which 110 g is goat milk, the rest water.',
  '330 g liquid in all: 110 g of it goat milk, the remainder water.',
  'Liquids come to 330 g, a third of this is goat milk. The rest is water.',
  'Liquid 330 g in total, 110 g of that is goat milk.',
  'Liquid is 330 g in total, and 110 g of that is goat milk. The remaining 220 g is water.',
])('%s', (said) => expect(read(said)).toEqual({ water: 220, liquids: ['goat-milk 110'], doubts: [] }));

test.each([
  ['220 g water, 110 g goat milk, 330 g liquid in total.', 220],
  ['Liquid is 330 g water, and on top of that 110 g goat milk.', 330],
])('is said by its rows: %s', (said, water) =>
  expect(read(said)).toEqual({ water, liquids: ['goat-milk 110'], doubts: [] }),
);

test('two of them leave less water', () =>
  expect(read('Liquid is 330 g in total, 110 g of that is goat milk and 100 g of that is beer.').water).not.toBe(220));
