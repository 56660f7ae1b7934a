// Recipes written up: a list, and notes around it in words of our own. The list is taken where no note bears on it, and
// asked about where one may.
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);
const list = 'Lard 500 g\nCoconut oil 200 g (76°)\nOlive oil 100 g\n\nNaOH 113 g\nWater 250 g\n';

test.each([
  `Kitchen bar, my notes\n\n${list}\nPacked into 6 tins of 120 g. Dull on top, fine below.`,
  `${list}\nYield: 1.1 kg fresh, 1.02 kg after a month, 0.98 kg after two.`,
  `${list}\nThe block came to 1.05 kg. I sold 700 g of it and kept the rest.`,
  `2.1 Makings\n${list}2.2 Working\nLye into the water, then all of it into the fats.\n2.3 Findings\nGone hard. 7 bars of 0.14 kg.`,
  `Harbour bar v2\n\n${list}\nv1 had 120 g of NaOH and bit. Small moulds, 8 of 95 g.`,
  'Lard 500\nCoconut oil 200\nOlive oil 100\n\nNaOH 113\nWater 250\n(all grams)\n\nDilute later, about 1 part of it to 1.5 water.',
  'Lard 500\nCoconut oil 200\nOlive oil 100\n\nNaOH 113\nWater 250\n(all grams)\n\nDid that push me too close to zero?',
  `${list}\nLabel weight 110 g.\nDissolve the 113 g of NaOH in the 250 g of water.`,
  `${list}\nHard after an hour or two; 6 tins, 120 g or so. Two bits of wugly on the side, none the worse.`,
  'Lard 500\nCoconut oil 200\nOlive oil 100\n\nNaOH 113\nWater 250\n(all grams)\n\n1/ 113 into 250, never the other way\n2/ 45 and 45\n3/ pour',
  `${list}\nI made it for a cousin, so I wrote it all down. Packed into 6 tins of 120 g.`,
])('takes the list: %s', (text) => {
  const { doubts, fats, alkali, waterGrams } = read(text);
  expect(doubts).toEqual([]);
  expect(fats.map(({ grams }) => grams)).toEqual([500, 200, 100]);
  expect(alkali.map(({ grams }) => grams)).toEqual([113]);
  expect(waterGrams).toBe(250);
});

test.each([
  `${list}\nPacked into 6 tins of 120 g. Another 60 g went in later.`,
  `${list}\nLabel weight 110 g.\nStir in 300 g of olive oil.`,
  `${list}\nLabel weight 110 g.\nPour in the lye, 150 g.`,
  'Lard 500\nCoconut oil 200\nOlive oil 100\n\nNaOH 113\nWater 250\n(all grams)\n\n1/ 118 into 250, never the other way\n2/ 45 and 45',
  `${list}\nCastor: as ever.\nLabel weight 110 g.`,
  `${list}\nNaOH was 130 g, I now see. Label weight 110 g.`,
  `${list}\nLabel weight 110 g. The scale said 131 g, or was it 113 g?`,
  `${list}\nAnd 60 g of zimblo, which my aunt sent. 6 tins of 120 g.`,
  `Lard 1 lb\nCoconut oil 200 g\nOlive oil 8\nNaOH 90 g\nWater 250 g\nLabel weight 110 g.`,
])('asks: %s', (text) => expect(read(text).doubts).not.toEqual([]));

test('every figure has its fate, and the answer says what was left out', () => {
  const { fates, assumptions } = read(`${list}\nPacked into 6 tins of 120 g. Sold 4. Fell: 1.`);
  const figures = fates.map(({ text }) => text);
  for (const figure of ['500', '200', '76', '100', '113', '250', '6', '120', '4', '1'])
    expect(figures).toContain(figure);
  expect(assumptions.map(({ text }) => text).join('\n')).toMatch(/left out .*6 tins of 120 g/);
});
