/** Rows of somebody's recipe that are less, more or something else in this pot. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
/** What is in the pot, in whole grams by ids; null where it is asked. */
const potOf = (post: string) => {
  const { fats, alkali, liquids, waterGrams, doubts } = readRecipe(reader, post);
  if (doubts.length > 0) return null;
  const water = waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }];
  return Object.fromEntries(
    [...fats, ...alkali, ...liquids, ...water].map(({ id, grams }) => [id, Math.round(grams ?? 0)]),
  );
};

describe('so much less or more', () => {
  const card = 'The card says 800 g olive, 200 g coconut, 138 g lye, 300 g water.';
  const pot = (olive: number, coconut: number, water = 300) => ({
    'olive-oil-virgin': olive,
    'coconut-oil': coconut,
    naoh: 138,
    water,
  });
  test.each([
    ['I cut the olive by 50 g.', pot(750, 200)],
    ['I took 50 g off the olive and put the coconut up to 250 g.', pot(750, 250)],
    ['I used 50 g less olive and 50 g more coconut.', pot(750, 250)],
    ['I knocked 50 g off the olive and added 50 g to the coconut.', pot(750, 250)],
    ['I took 50 g off the olive and put it on the coconut.', pot(750, 250)],
    ['I reduced the water by 50 g.', pot(800, 200, 250)],
  ])('%s', (said, grams) => expect(potOf(`${card} ${said} Ok?`)).toEqual(grams));

  test.each(['I took 50 g off the olive bottle for the kitchen.', 'If I cut the olive by 50 g?'])(
    'changes nothing unasked: %s',
    (said) =>
      expect([JSON.stringify(null), JSON.stringify(pot(800, 200))]).toContain(JSON.stringify(potOf(`${card} ${said}`))),
  );

  test('of a list that may have it already it is asked', () =>
    expect(potOf('800 g olive, 200 g coconut, 138 g lye, 300 g water. I reduced the olive by 50 g. Ok?')).toBeNull());
});

describe('another liquid in the place of the water', () => {
  const fats = '480 g olive oil, 220 g coconut, lye 100 g.';
  const pot = { 'olive-oil-virgin': 480, 'coconut-oil': 220, naoh: 100 };
  test.each([
    [`Card says 250 g water but I used frozen goat milk instead, same weight. ${fats}`, { ...pot, 'goat-milk': 250 }],
    [`${fats} Water 250 g, but I used frozen goat milk instead, same weight.`, { ...pot, 'goat-milk': 250 }],
    [`${fats} 250 g water, only I took beer for it.`, { ...pot, beer: 250 }],
    [`${fats} 250 g water, but I used 200 g goat milk instead.`, { ...pot, 'goat-milk': 200 }],
    [`${fats} 250 g water. I used goat milk last time.`, { ...pot, water: 250 }],
  ])('%s', (post, grams) => expect(potOf(`${post} Ok?`)).toEqual(grams));
});

describe('half of that', () => {
  const pot = { lard: 600, 'coconut-oil': 300, naoh: 128, water: 300 };
  test.each([
    '600 g lard and half of that in coconut.',
    '600 g lard, half that amount of coconut.',
    '600 g lard, 300 g coconut, half of that coconut is from last year.',
  ])('%s', (said) => expect(potOf(`${said} 128 g lye, 300 g water.`)).toEqual(pot));
});

test('half of that coconut, of which nobody has said a weight, is asked about', () =>
  expect(potOf('600 g lard and half of that coconut. 128 g lye, 300 g water.')).toBeNull());

describe('no weight of lye is lost', () => {
  test.each([
    'I typed 85 g of lye into my log, but when I put the tub back on the scale it had gone from 500 g to 397 g. 300 g palm, 250 g sunflower, 190 g coconut, water 230 g. How bad?',
  ])('%s', (post) => {
    const pot = potOf(post);
    expect(pot === null || pot['naoh'] === 103).toBe(true);
  });
  test.each(['I had 103 g of lye left in the old tub.', 'We keep lye in 103 g bags.'])('it is asked: %s', (said) =>
    expect(potOf(`${said} 300 g palm, 250 g sunflower, 190 g coconut, water 230 g. How bad?`)).toBeNull(),
  );
  test('not where the lye is asked for', () =>
    expect(
      potOf('We keep lye in 103 g bags. 300 g palm, 250 g sunflower, 190 g coconut, water 230 g. How much lye?'),
    ).toEqual({ 'palm-oil': 300, 'sunflower-oil': 250, 'coconut-oil': 190, water: 230 }));
});
