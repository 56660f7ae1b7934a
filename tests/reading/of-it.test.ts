/** "So much of it": a part of an amount, or of an alkali whose purity alone was told. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());

test.each([
  'The bottle says 97 % NaOH. 500 g olive, 500 g lard, 138 g of it and 350 g water.',
  'NaOH is 98 %. 700 g lard, 300 g coconut, 145 g of that and 320 g water. Ok?',
])('may be the alkali: %s', (post) => expect(readRecipe(reader, post).doubts).toHaveLength(1));

test.each([
  ['I have NaOH 98 %. 500 g lard, 200 g of it from the freezer, 300 g coconut. How much lye?', 0],
  ['500 g lard, 200 g of it from the freezer, 300 g coconut, NaOH (98 %) 110 g, 250 g water', 110],
])('is a part: %s', (post, lye) => {
  const { fats, alkali, doubts } = readRecipe(reader, post);
  expect({ lard: fats.find(({ id }) => id === 'lard')?.grams, lye: alkali[0]?.grams ?? 0, doubts }).toEqual({
    lard: 500,
    lye,
    doubts: [],
  });
});
