// Sentences that tell of something else and name an ingredient. Our own; what counts is that the rest stays as it is.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const recipe = '500 g lard, 250 g coconut oil, 112 g lye, 240 g water.';

test.each([
  'I still have 2 kg of palm in the cellar waiting for the frying season.',
  'The drum in the shed holds 25 kg of tallow from the winter.',
  'Someday I want to try it with KOH, but not this year.',
  'My sister got 3 litres of goat milk from her neighbour today.',
])('%s', (sentence) => {
  for (const text of [`${recipe} ${sentence}`, `${sentence}\n${recipe}`]) {
    const { fats, alkali, waterGrams, liquids, doubts } = readRecipe(reader, text);
    expect(doubts).toEqual([]);
    expect(fats.map(({ id, grams }) => [id, grams])).toEqual([
      ['lard', 500],
      ['coconut-oil', 250],
    ]);
    expect([alkali.map(({ id, grams }) => [id, grams]), waterGrams, liquids]).toEqual([[['naoh', 112]], 240, []]);
  }
});

test('what is left out is told', () => {
  const { assumptions } = readRecipe(reader, `${recipe} The drum in the shed holds 25 kg of tallow from the winter.`);
  expect(assumptions.map(({ text }) => text).join(' ')).toContain('The drum in the shed holds 25 kg of tallow');
});

test.each([
  // a fat that is put into the pot is no talk, however badly the lye fits it
  [`${recipe} Then I melted 2 kg of palm into it.`, 3],
  // nor is one that makes the recipe what it should be
  ['500 g lard, 112 g lye, 240 g water. There is 250 g of coconut oil in it as well.', 2],
] as const)('%s', (text, fats) => {
  expect(readRecipe(reader, text).fats).toHaveLength(fats);
});

test('a lye solution that is only spoken of takes no figure of the recipe', () => {
  const smell = 'Is it usual that the lye water smells a bit?';
  const asked = readRecipe(reader, `2 lb of lard. How much sodium hydroxide and water? 5% sf please. ${smell}`);
  expect(asked.superfat).toBe(0.05);
  const ratio = readRecipe(
    reader,
    `500 g lard, 250 g coconut oil. How much lye? superfat 5 %, water 2:1 to the lye. ${smell}`,
  );
  expect([ratio.superfat, ratio.ratio]).toEqual([0.05, 2]);
});

test('how the pot looked last time says nothing of what goes in now', () => {
  const { fats, after } = readRecipe(
    reader,
    'it looked like mashed potatoes at 50 minutes last time, is this correct\ncanola 500 g (1.20), coconut 300 g (2.40), cocoa butter 100 g',
  );
  expect([fats.length, after.length]).toEqual([3, 0]);
});
