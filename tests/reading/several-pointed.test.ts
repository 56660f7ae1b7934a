/** Which of several recipes a question is about, told by the sentence ahead of it, by a date, by who speaks. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const pot = (text: string): readonly (number | string)[] => {
  const { fats, alkali, doubts } = readRecipe(reader, text);
  return doubts[0] ? [doubts[0].id] : [...fats, ...alkali].map(({ grams }) => grams);
};
const loaves =
  'Loaf 1 was 700 g tallow + 300 g coconut + 146 g lye. Loaf 2 was 650 g canola + 250 g coconut, 123 g lye, 330 g water.';

test.each([
  [`${loaves} It's the second one that is still soft. Did I get the lye wrong there?`, [650, 250, 123]],
  [`${loaves} The first one has a crack. Was there too much lye in it?`, [700, 300, 146]],
  [`${loaves} The second one came out fine. Was the lye right?`, ['two-recipes']],
  [`${loaves} Never mind the second one. Was the lye right in it?`, [700, 300, 146]],
  [
    'Ilse: mine is 400 olive 400 coconut, 125 lye\nPavel: I go 500/300 with 120\nme: ok so I did 450 g olive, 350 g coconut, 117 g lye and 270 g water. Anyone see a problem with mine?',
    [450, 350, 117],
  ],
  [
    'Log\n02/11: 800 g olive, 103 g lye, 230 g water\n09/11: 500 g olive, 200 g coconut, 98 g lye, 230 g water\n\nThe one from the 9th has white powder on top. Was the lye too high in it?',
    [500, 200, 98],
  ],
])('%s', (text, grams) => expect(pot(text)).toEqual(grams));
