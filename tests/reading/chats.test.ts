/** What people of a chat put right with a star, ask and answer, propose and turn down. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, superfat, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries(
      [...fats, ...alkali, ...(waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }])].map((one) => [
        one.id,
        one.grams,
      ]),
    ),
    superfat,
    doubts: doubts.map(({ id }) => id),
  };
};
const [olive, coconut, castor] = ['olive-oil-virgin', 'coconut-oil', 'castor-oil'] as const;

describe('a name denied once more', () => {
  test.each([
    "five hundred grams olive and forty grams shea no not shea I mean castor, what's the lye",
    '500 g olive, 40 g shea, not shea, castor. How much lye?',
    '500 g olive and 40 g shea sorry not shea, castor, how much lye',
    "olive 500 g\nshea 40 g oh no not shea it's castor\nhow much lye",
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { [olive]: 500, [castor]: 40 }, superfat: null, doubts: [] });
  });
  test.each([
    '500 g olive, 200 g lard, not palm, 40 g castor, 93 g lye',
    '500 g olive, 200 g lard (not the lard oil), 40 g castor, 93 g lye',
  ])('another one stays: %s', (text) => {
    expect(read(text).grams).toEqual({ [olive]: 500, lard: 200, [castor]: 40, naoh: 93 });
  });
});

describe('a swap in a line above a question', () => {
  test.each([
    'haha no coconut left so babassu instead, same amount\nlye 105 still right?',
    'ran out of the coconut so babassu went in instead same weight\nnaoh 105g still right?',
  ])('%s', (talk) => {
    expect(read(`600g olive 150g coconut\n${talk}`).grams).toEqual({ [olive]: 600, 'babassu-oil': 150, naoh: 105 });
  });
});

describe('a share behind a question for lye', () => {
  test.each(['overvet 6%', 'överfett 6 %', 'overfedt 6%', 'przetłuszczenie 6%'])('%s', (wish) => {
    expect(read(`600 g olive 200 g lard, how much lye? ${wish}`)).toMatchObject({ superfat: 0.06, doubts: [] });
  });
  test('of a word that nobody knows is asked about', () => {
    expect(read('600 g olive 200 g lard how much lye? blarf 6%').doubts).toEqual(['unknown-fat']);
  });
  test.each(['sugar 3%', 'lavender eo 3%', 'clay 2%'])('of what is no fat is no superfat: %s', (additive) => {
    expect(read(`600 g olive\n200 g lard\n${additive}\nhow much lye?`)).toMatchObject({ superfat: null, doubts: [] });
  });
});
