/** Amounts that a post tells by words around them: as much as the one before, parts of a whole, what is so since. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());

describe('as much as what stands before', () => {
  const pot = { 'olive-oil-virgin': 500, 'shea-butter': 60, 'castor-oil': 60, naoh: 80, water: 200 };
  test.each([
    'The shea is 60 g, and so is the castor.',
    'The shea is 60 g, the castor too.',
    'The shea is 60 g, same goes for the castor.',
    'The shea is 60 g, likewise the castor.',
    'The shea is 60 g, as is the castor.',
    'The shea weighs 60 g, so does the castor.',
    '60 g shea, and castor likewise.',
  ])('%s', (said) =>
    expect(potOf(`500 g olive. ${said} Lye 80 g and water 200 g. ok?`)).toEqual({ grams: pot, doubts: [] }),
  );
  test.each(['So is the palm oil any good?', 'I love palm too.'])('is not in %s', (said) =>
    expect(potOf(`Olive 500 g, shea 60 g. ${said} Lye 72 g, water 200 g.`).grams['palm-oil']).toBeUndefined(),
  );
  test('a fat that weighs so much is no total', () =>
    expect(potOf('Coconut weighs 200 g. Olive 500 g. Lye 98 g, water 200 g. Right?')).toEqual({
      grams: { 'coconut-oil': 200, 'olive-oil-virgin': 500, naoh: 98, water: 200 },
      doubts: [],
    }));
});

describe('two parts of one liquid', () => {
  const read = (said: string) => {
    const { waterGrams, liquids, doubts } = readRecipe(reader, `Olive 500 g, coconut 300 g, lye 113 g. ${said} Ok?`);
    return [Math.round(waterGrams ?? 0), ...liquids.map(({ grams }) => Math.round(grams)), ...doubts];
  };
  test.each([
    ['Half beer, half water this time: 300 g.', [150, 150]],
    ['A third beer, two thirds water: 300 g.', [200, 100]],
    ['300 g liquid, 70 % water, 30 % goat milk.', [210, 90]],
    ['Liquid is three quarters water, one quarter beer: 300 g.', [225, 75]],
    ['Water 200 g, a third milk would be nice next time.', [200]],
  ])('%s', (said, want) => expect(read(said)).toEqual(want));
});

describe('a superfat of years and the one since', () => {
  const superfat = (said: string) => readRecipe(reader, `olive 500 g, coconut 200 g. ${said} How much lye?`).superfat;
  test.each([
    ["I did 8 % superfat for years … since January it's 3.", 0.03],
    ['I did 8 % superfat for years. Since January it is 3 %.', 0.03],
    ['My superfat used to be 8 % and since the summer it is 3.', 0.03],
    ['For ages I took 8 % superfat, lately 3 %.', 0.03],
    ['I did 8 % superfat for years and still do.', 0.08],
    ['I was going for 8 % superfat, final answer, I am doing 3 %.', 0.03],
    ['At first I had 8 % superfat, finally settled on 3 %.', 0.03],
  ])('%s', (said, want) => expect(superfat(said)).toBeCloseTo(want));
});

describe('so much of a premix', () => {
  const pot = { 'palm-oil': 300, 'coconut-oil': 200, 'olive-oil-virgin': 400, naoh: 122, water: 280 };
  test.each([
    'I keep a bucket of hard oils, 60 % palm and 40 % coconut. 500 g from the bucket, 400 g olive, 122 g lye, 280 g water.',
    'My premix is 60 % palm and 40 % coconut. I took 500 g of the mix, plus 400 g olive. Lye 122 g, water 280 g.',
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));
});

describe('what was taken of a store', () => {
  const pot = { lard: 700, 'coconut-oil': 300, naoh: 141, water: 300 };
  const rest = 'added 300 g coconut oil, 141 g lye and 300 g water. Ok?';
  test.each([
    `We've got a big canister of lard, 5 litres or so. I took 700 g of it, ${rest}`,
    `They gave us a box of lard, 6 kg more or less. On Sunday (at 7 am!!) I took 700 g of it, ${rest}`,
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));
});

describe('a purity that stands twice', () => {
  const read = (said: string) => {
    const { alkali, doubts } = readRecipe(reader, `${said} 117 g NaOH, olive 550 g, coconut 250 g, water 235 g.`);
    return [alkali[0]?.purity?.nominal, ...doubts.map(({ id }) => id)];
  };
  test('is one', () => expect(read('Label on my lye: 97 % NaOH, so 97 % pure.')).toEqual([0.97]));
  test('and two of them are asked about', () =>
    expect(
      potOf('My lye says 98 % NaOH. I count on 95 % pure. Lye 117 g, olive 550 g, coconut 250 g, water 235 g.').doubts,
    ).toEqual(['two-amounts']));
});

test.each([
  ['250 g liquid coconut oil (melted)', 'coconut-oil'],
  ['250 g melted, liquid coconut oil', 'coconut-oil'],
  ['250 g liquid coconut oil', 'mct-oil'],
])('%s is %s', (said, id) =>
  expect(potOf(`500 g olive oil, ${said}, 98 g caustic soda, 220 g water.`).grams[id]).toBe(250),
);

test('topped up with water is what is weighed', () =>
  expect(
    potOf(
      'My lye is a 50 % stock solution. 500 g olive, 300 g coconut, 230 g of the solution, topped up with 100 g water.',
    ),
  ).toEqual({ grams: { 'olive-oil-virgin': 500, 'coconut-oil': 300, naoh: 115, water: 215 }, doubts: [] }));

describe('a swap that the question is about', () => {
  const usual = 'My usual is olive 300 g, palm 300 g, coconut 200 g.';
  const ids = (said: string) => readRecipe(reader, `${usual} ${said}`).fats.map(({ id }) => id);
  test.each([
    'If I swap the palm for lard, gram for gram, what is the lye then?',
    'How much lye do I need if I replace the palm with lard?',
    'Say I use lard in place of the palm - how much lye then?',
  ])('%s', (said) => expect(ids(said)).toEqual(['olive-oil-virgin', 'lard', 'coconut-oil']));
  test('stays a thought where the lye of the list is asked', () =>
    expect(ids('What is the lye? Some day I may swap the palm for lard.')).toContain('palm-oil'));
  test('is asked about where two fats go', () =>
    expect(potOf(`${usual} If I swap the palm and the coconut for lard, what is the lye then?`).doubts).toEqual([
      'corrected',
    ]));
});
