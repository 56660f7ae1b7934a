/** Headings that weigh, and recipes that a program wrote out. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries([...fats, ...alkali].map(({ id, grams }) => [id, Math.round(grams)])),
    doubts: doubts.map(({ id }) => id),
  };
};
const listed = { 'olive-oil-virgin': 600, 'coconut-oil': 300, lard: 100, naoh: 140 };
const rows = 'olive oil 600 g\ncoconut oil 300 g\nlard 100 g\nlye 140 g';
const sentence = 'olive 600 g, coconut 300 g, lard 100 g, lye 140 g';

describe('a heading that weighs what is listed is no row of it', () => {
  test.each([
    `1 kg Coconut Dream\n\n${rows}`,
    `Title: 1 kg Coconut Dream\n${rows}`,
    `Coconut Dream (1 kg)\n\n${rows}`,
    `Coconut Dream, 1000 g\n\n${rows}`,
    `1kg batch coconut\n\n${rows}`,
    `1 kg Tallow Dream\n\n${rows}`,
    `1 kg coconut dream: ${sentence}`,
    `Lard & coconut, 1 kg\n\n${rows}`,
    `Lard & coconut, 1 kg\n\n${rows}\n\nWeighed the coconut again: 300 g.`,
  ])('%s', (text) => expect(read(text)).toEqual({ grams: listed, doubts: [] }));

  test('and one that weighs something else is asked about', () =>
    expect(read(`Coconut Dream 500 g\n\n${rows}`).doubts).toEqual(['two-amounts']));

  test.each([
    ['coconut oil 500 g\n\nolive 300 g\nlard 200 g\nlye 150 g', 500],
    ['coconut oil (76 degree) 500 g\n\nolive 300 g\nlard 200 g\nlye 150 g', 500],
    ['First melt: coconut 500 g\n\nthen: olive 300 g\nlard 200 g\nlye 150 g', 500],
    ['liquid soap: coconut 400g, olive 300g, castor 100g, citric acid 12 g. KOH (90%) how much?', 400],
  ])('a first fat that weighs as much as the others together stays: %s', (text, coconut) =>
    expect(read(text).grams['coconut-oil']).toBe(coconut),
  );
});

describe('JSON', () => {
  test.each([
    '{"title":"1 kg Coconut Dream","oils":[{"name":"olive oil","g":600},{"name":"coconut oil","g":300},{"name":"lard","g":100}],"lye":{"type":"NaOH","g":140},"cure_weeks":6} ok?',
    'is it right? {"oils":{"olive_oil":600,"coconut_oil":300,"lard":100},"naoh_g":140,"unit":"g"}',
    '[{"ingredient":"olive oil","amount":600,"unit":"g"},{"ingredient":"coconut oil","amount":300,"unit":"g"},{"ingredient":"lard","amount":100,"unit":"g"},{"ingredient":"NaOH","amount":"140","unit":"g"}]',
    '{"olive":"600 g","coconut":"300 g","lard":"100 g","lye":"140 g"}',
    '{"olive":"600 g","coconut":"300 g","lard":"100 g","lye":"140 g"',
  ])('%s', (text) => expect(read(text)).toEqual({ grams: listed, doubts: [] }));

  test('with a weight below nothing', () =>
    expect(
      read('{"unit":"g","fats":[{"name":"olive","amount":500},{"name":"lard","amount":-200}],"lye":110}').doubts,
    ).toContain('negative'));
});

test('the sums below a table whose last row begins with an empty cell are no lye', () =>
  expect(
    read(
      'Rice bran oil | 35 % | 420 g\nOlive oil     | 60 % | 720 g\nCastor oil    |  5 % |  60 g\n              | 100% | 1200 g\n\nNaOH wanted, sf 5.',
    ),
  ).toEqual({ grams: { 'rice-bran-oil': 420, 'olive-oil-virgin': 720, 'castor-oil': 60 }, doubts: [] }));
