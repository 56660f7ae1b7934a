// What was bought or stands in the cupboard is no row of the recipe. Posts of our own; the grams are read off by hand.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, doubts } = readRecipe(reader, text);
  return { ...Object.fromEntries([...fats, ...alkali].map(({ id, grams }) => [id, grams])), doubts };
};

describe('weighed again in a row of what goes in', () => {
  const used = 'lard 450 g\ncoconut oil 150 g\nolive oil 300 g\nHow much lye?';
  const want = { lard: 450, 'coconut-oil': 150, 'olive-oil-virgin': 300, doubts: [] };
  test.each([
    `Bought 2/5: lard, 3 packs of 250 g, 1.79 each.\nBought 4/5: NaOH, 500 g tin, 5.20.\n\nRecipe:\n${used}`,
    `In stock: lard 2 kg, coconut oil 800 g, NaOH 1 kg\n\n${used}`,
    `On the shelf:\n- lard 2 kg\n- coconut oil 800 g\n- castor oil 200 g\n- NaOH 1 kg\n\nFor the pot:\n${used}`,
    `I bought 2 kg of lard and 1 kg of coconut oil in town. Today I weigh:\n${used}`,
    `Pantry: lard 900 g, coconut oil 700 g\nWhat I make:\n${used}`,
    `lard: 900 g in the freezer\n\n${used}`,
    `| item | bought | paid |\n| lard | 1 kg | 4.10 |\n| coconut oil | 500 g | 3.90 |\n\n${used}`,
  ])('%s', (text) => {
    expect(read(text)).toEqual(want);
  });
});

test('what is said of the source of a row leaves it a row', () => {
  const rows =
    'olive oil 400 g, store bought\ncoconut oil 200 g, from my pantry\nolive oil 100 g, infused\nHow much lye?';
  expect(read(rows)).toEqual({ 'olive-oil-virgin': 500, 'coconut-oil': 200, doubts: [] });
  expect(read('Bought lard 500 g and coconut oil 200 g. How much lye for it?')).toEqual({
    lard: 500,
    'coconut-oil': 200,
    doubts: [],
  });
});

test.each([
  'Five pounds of lard came off my half, one went to my daughter, so four pounds are for soap. One pound coconut oil on top.',
  'I had 5 lb of lard, 4 lb is for the soap. 1 lb coconut oil.',
])('what is for the soap counts: %s', (text) =>
  expect(read(`${text} Lye?`)).toEqual({ lard: 4 * 453.59237, 'coconut-oil': 453.59237, doubts: [] }),
);
test('and where all of it is, all of it does', () =>
  expect(read('1 kg of lard for the soap, 200 g coconut. Lye?')).toEqual({
    lard: 1000,
    'coconut-oil': 200,
    doubts: [],
  }));

test('of what an amount was taken', () => {
  const text = 'Lard 500 g (I have 800 g in the freezer), coconut oil 200 g of the 1 kg I bought. How much lye?';
  expect(read(text)).toEqual({ lard: 500, 'coconut-oil': 200, doubts: [] });
});

test.each([
  'olive (bottle of 500 ml, 340 g of it used)',
  'olive, a bottle of 500 ml, 340 g of it used',
  'olive, a 500 ml bottle, 340 g of it went in',
])('what a pack holds is not what was taken of it: %s', (olive) =>
  expect(read(`coconut 250 g, ${olive}, 92 g lye, 200 g water`)).toEqual({
    'coconut-oil': 250,
    'olive-oil-virgin': 340,
    naoh: 92,
    doubts: [],
  }),
);

describe('of what there is, a later sentence takes a part', () => {
  const rest = '200 g coconut oil. 130 g NaOH, 280 g water. Right?';
  test.each([
    `The rendering gave 1.6 kg of tallow. From that I took 700 g for this soap, and ${rest}`,
    `There was 1.2 kg of tallow in the end. I used 700 g of that for the batch, added ${rest}`,
    `My neighbour gave me 5 kg of tallow. I took 700 g from it and ${rest}`,
    `3.2 kg of beef fat gave me 2.1 kg tallow after a wash with salt water. From that I took 700 g for this soap, and ${rest}`,
    `We rendered 3 kg of tallow on Sunday. 700 g of it went into this batch, with ${rest}`,
    `1.6 kg tallow came out after two rounds. From this only 700 g went in the pot, with ${rest}`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ 'tallow-beef': 700, 'coconut-oil': 200, naoh: 130, doubts: [] });
  });
  test.each([
    `I had 900 g of tallow. I took 200 g of that out again. Then ${rest}`,
    `I had 700 g tallow and 300 g lard. From that I took 200 g away. Then ${rest}`,
  ])('%s', (text) => {
    expect(read(text).doubts).toEqual([{ id: 'unplaced', said: '200 g' }]);
  });
  test('or what it leaves may be meant', () => {
    const { doubts } = read(`I got 900 g of tallow. I took 200 g of it for the chickens. With ${rest}`);
    expect(doubts).toMatchObject([{ id: 'range', said: '900 g or 700 g' }]);
  });
});

test('what is left out is said', () => {
  const { assumptions } = readRecipe(reader, 'In stock: lard 2 kg\n\nlard 450 g\ncoconut oil 150 g\nHow much lye?');
  expect(assumptions.map(({ text }) => text)).toContain('I left out what was bought or is in store ("2 kg").');
});

test('the last fat before "soap" is weighed like the others', () => {
  expect(read('I want to make 450 g lard 150 g coconut oil soap. Lye?')).toEqual({
    lard: 450,
    'coconut-oil': 150,
    doubts: [],
  });
  expect(read('500 g lard, 66 g lye, 150 g water: makes 650 g lard soap')).toEqual({ lard: 500, naoh: 66, doubts: [] });
});

test('a recipe with its water is no store, and what was paid is no weight', () => {
  const text =
    'She writes as at home: lard 400 g, coconut oil 150,5 g, NaOH 80 g, water 170 g. I paid 7,40 for the lard.';
  expect(read(text)).toEqual({ lard: 400, 'coconut-oil': 150.5, naoh: 80, doubts: [] });
});

const lye = '166 g of NaOH in 380 g of water. ok?';
test.each([
  `The 3 litre tin of olive was 31 euro. I took 900 g from the tin and 300 g of coconut, ${lye}`,
  `My 5 l tin of olive was dear. 900 g out of the tin, 300 g of coconut, ${lye}`,
])('what was taken from a vessel is of the fat that it holds: %s', (text) =>
  expect(read(text)).toEqual({ 'olive-oil-virgin': 900, 'coconut-oil': 300, naoh: 166, doubts: [] }),
);

test.each([
  `A 5 l tin of olive and a 5 l tin of rapeseed. I took 900 g from the tin and 300 g of coconut, ${lye}`,
  `My 5 l can of rapeseed and a tin of olive. I took 900 g from the tin and 300 g of coconut, ${lye}`,
  `A 2 kg tub of coconut oil: 300 g from the tub went to my sister. Olive 900 g, ${lye}`,
])('of which of two is asked: %s', (text) => expect(read(text).doubts).not.toEqual([]));

test.each([
  'Coconut comes in 250 g bars, I have two. Lard 500 g. How much NaOH?',
  'The coconut is in 125 g blocks and I use four. The lard is one 500 g packet, using the whole of it. How much NaOH?',
  'Lard: one 500 g packet, the whole of it. Coconut 500 g. How much NaOH?',
])('so many bars of a size, and the whole of a pack: %s', (text) =>
  expect(read(text)).toEqual({ 'coconut-oil': 500, lard: 500, doubts: [] }),
);

test.each([
  'Coconut comes in 250 g bars. Lard 500 g. How much NaOH?',
  'Coconut comes in 250 g bars, I have two and use one. Lard 500 g. How much NaOH?',
  'The lard is one 500 g packet, all of it rancid. Coconut 500 g. How much NaOH?',
])('a size alone weighs nothing: %s', (text) => expect(read(text).doubts).not.toEqual([]));
