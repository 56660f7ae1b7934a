/** Weights that follow from others: what is reckoned, what is a part of the water, what goes in by the spoon or is lost. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, liquids, doubts } = readRecipe(reader, text);
  const water = waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }];
  return {
    grams: Object.fromEntries(
      [...fats, ...alkali, ...liquids, ...water].map(({ id, grams }) => [id, Math.round(grams)]),
    ),
    doubts: doubts.map(({ id }) => id),
  };
};
const list = '500 g olive, 300 g coconut, 117 g lye';
const fats = { 'olive-oil-virgin': 500, 'coconut-oil': 300, naoh: 117 };

describe('what is reckoned from another weight never takes its name', () => {
  test.each([
    `${list}, and twice as much water as lye, so 234 g.`,
    `${list} and water double the lye, that's 234 g`,
    `${list}. Water is twice the lye's weight, which makes 234 g.`,
    `${list}, water twice as much as the lye, 234 g then.`,
    `${list}, with twice the weight of the lye in water, so 234 g. Ok?`,
    `${list}. Water at 2:1 to the lye, so 234 g.`,
    `${list} in double that of water, i.e. 234 g.`,
    '500 g olive, 300 g coconut, water 234 g and half as much lye as water, so 117 g.',
    `${list}, as much ice as lye, so 117 g, and 117 g water.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { ...fats, water: 234 }, doubts: [] });
  });
  test.each([
    '400 g olive, half as much coconut as olive, so 200 g, 85 g lye, 170 g water.',
    '400 g olive, half as much coconut as olive, so 200 g coconut, 85 g lye, 170 g water.',
    'Olive 400 g, coconut half of the olive, that makes 200 g; lye 85 g; water 170 g',
    'Coconut 200 g, lye 85 g, water 170 g, twice as much olive as coconut, so 400 g',
  ])('%s', (text) => {
    const grams = { 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 85, water: 170 };
    expect(read(text)).toEqual({ grams, doubts: [] });
  });
  test.each([
    '1/3 of oils, so 267 g',
    '1/3 of the oils = 267 g',
    'a third of the oils, so 267 g',
    '0.333 of oils, 267 g',
  ])('nor what is reckoned from all the fats: %s', (water) =>
    expect(read(`olive 500 g\ncoconut 300 g\nlye 117 g\nwater ${water}\nsuperfat 3 %`)).toEqual({
      grams: { ...fats, water: 267 },
      doubts: [],
    }),
  );
  test('and a third of them that is none is asked about', () =>
    expect(read('olive 500 g\ncoconut 300 g\nlye 117 g\nwater 1/3 of oils, so 300 g').doubts).toEqual(['range']));
  test('a weight that is said to come of another one, and does not, is asked about', () => {
    expect(read(`${list}, twice as much water as lye, so 334 g.`).doubts).toEqual(['range']);
  });
  test('water told by the lye is not left out as talk', () => {
    expect(read(`${list}. Water is the lye times two, so 234 g.`).doubts).toEqual(['unplaced']);
  });
  test('the same weight again, named and told', () => {
    const text = '350 g lard and the same weight of olive again, so another 350 g, and 150 g coconut. How much lye?';
    const grams = { lard: 350, 'olive-oil-virgin': 350, 'coconut-oil': 150 };
    expect(read(text)).toEqual({ grams, doubts: [] });
  });
});

describe('ice that is a part of the water said before', () => {
  test.each([
    `Total water 240 g, of which 140 g in the jug and 100 g ice. ${list}.`,
    `${list}. Water 240 g in all, of which 140 g from the tap and 100 g as ice.`,
    `${list}, 240 g water; half of the 240 went in as ice, so 120 g.`,
    `${list}, 240 g water; a third of the 240 I froze, so 80 g ice.`,
    `${list}, 240 g water, half of it as ice, so 120 g.`,
    `${list}. Of the 240 g water a third was ice, so 80 g.`,
    `${list}, 240 g water: 140 g cold and 100 g of ice.`,
    `${list}, 240 g water in total, 140 g liquid and 100 g ice.`,
    `${list}, 240 g water, of that 140 g tap water and 100 g ice cubes.`,
    `${list}, 240 g water altogether, and of those 240 g 100 g were ice.`,
    `${list}, 140 g water and 100 g ice.`,
    `${list}, 140 g water in which I melted 100 g of ice.`,
    `${list}, 240 g water, 500 g ice bath around it.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { ...fats, water: 240 }, doubts: [] });
  });
  test('a part that is not what it is said to be is asked about', () => {
    expect(read(`${list}, 240 g water; half of the 240 was ice, so 100 g.`).doubts).toEqual(['range']);
  });
});

describe('a part that is said as a fraction and as a weight', () => {
  test.each([
    `${list}. Half of the water, 120 g, I froze; in total the water is 240 g.`,
    `${list}. Half of the water (120 g) I froze. The water is 240 g altogether.`,
    `${list}. Half the water, 120 g, went in first. The total water was 240 g.`,
    `${list}. A third of the water, so 80 g, was ice, and the water was 240 g in all.`,
    `${list}, 240 g water in total. Half of the water, 120 g, was frozen.`,
    `${list}. Water 240 g, half of it (120 g) as ice.`,
    `${list}. Half of the olive, 250 g, I infused; water is 240 g.`,
  ])('is none of its own beside the whole: %s', (text) => {
    expect(read(text)).toEqual({ grams: { ...fats, water: 240 }, doubts: [] });
  });
  test.each([
    `${list}. Half of the water, 120 g, I froze.`,
    `${list}. I froze half of the water: 120 g.`,
    `${list}. A quarter of the water, 60 g, went in as aloe juice.`,
    `${list}. Half of the olive, 200 g, I infused, water 240 g.`,
  ])('is asked about where no whole is like it: %s', (text) => {
    expect(read(text).doubts).toContain('range');
  });
  test('what the water weighs is never left out as talk', () => {
    expect(read(`${list}. I froze 120 g of the water, the water is 240 g.`).doubts).toEqual(['two-amounts']);
  });
});

describe('a part of a fat that is kept for something else', () => {
  test.each([
    `${list}, water 240 g. I kept 50 g of the coconut for my hair.`,
    `${list}, water 240 g. I kept back 50 g of the coconut for my feet.`,
    `${list}, water 240 g. My daughter took 50 g of the coconut for her hair.`,
    `${list}, water 240 g. I set aside 50 g of the coconut for a balm.`,
    `${list}, water 240 g. 50 g of the coconut are kept for the next bars.`,
    `${list}, water 240 g. Of the coconut 50 g went into my hair.`,
    `${list}, water 240 g. Of the coconut I held 50 g back for frying.`,
    '500 g olive, 300 g coconut (50 g of it for my hair), 117 g lye, water 240 g.',
    '500 g olive, 300 g coconut, of which I kept 50 g for my hair, 117 g lye, water 240 g.',
  ])('may be in what is listed or not: %s', (text) => {
    expect(read(text).doubts).toEqual(['range']);
  });
  test('nor does anybody know how much it was', () => {
    expect(read(`${list}. I kept a bit of the coconut for my hair.`).doubts).toEqual(['corrected']);
  });
  test.each([
    `${list}, water 240 g. There's another 50 g of coconut in the jar for my hair.`,
    `${list}, water 240 g. I kept 50 g of the soap for my hair.`,
    `${list}, water 240 g. I kept 50 g of the coconut for the pot till the olive was warm.`,
  ])('but nothing else is: %s', (text) => {
    expect(read(text).doubts).not.toContain('range');
  });
});

describe('lye by the spoon', () => {
  test.each([
    'Four level tablespoons of lye in a cup of water, poured over 500 g of melted lard. Is that right?',
    'Tallow 450 g, coconut 150 g. My old card has three heaped tablespoons of lye and a cup of water. Safe?',
    '500 g olive oil with two heaping teaspoons caustic soda in 150 g water',
    '600 g lard, 200 g water and a few tablespoons of lye. Is it ok?',
    '600 g lard and 200 g water. Lye by the tablespoon, six of them, level. Is it ok?',
    'lard 600 g, water 200 g, lye: half a mug',
    '600 g lard. For lye I took 5 level tablespoons. Water 200 g. Enough?',
  ])('%s', (text) => {
    expect(read(text).doubts).toContain('alkali-volume');
  });
  test.each([
    [
      '600 g lard, 83 g lye, 200 g water and two heaped tablespoons of oatmeal. ok?',
      { lard: 600, naoh: 83, water: 200 },
    ],
    [
      '600 g lard, 83 g lye in a mug, 200 g water in a jug, stirred with a spoon. ok?',
      { lard: 600, naoh: 83, water: 200 },
    ],
    ['600 g lard. I stir with a wooden spoon. How much lye?', { lard: 600 }],
    ['600 g lard. How many tablespoons of lye?', { lard: 600 }],
  ])('%s', (text, grams) => {
    expect(read(text)).toEqual({ grams, doubts: [] });
  });
});

describe('a part of a fat that is lost, and nobody knows how much', () => {
  const told = 'I had 400 g olive in the jug and 200 g coconut in the pot. Lye was 80 g in 170 g water. ';
  test.each([
    'Then part of the olive ran onto the floor, no idea how much.',
    'Some of the olive ended up on the floor.',
    'I spilled a good part of the olive.',
    "There's olive all over the floor now.",
    'I just went on with what was left of the olive.',
    'Some of the oil went over the side of the pot, no idea how much.',
    'God knows how much of the olive is on the floor.',
  ])('%s', (lost) => {
    expect(read(told + lost).doubts).toEqual(['corrected']);
  });
  test.each([
    'Some of the batter landed on the floor.',
    'A bit of vinegar is on the floor, no idea how much.',
    'I melted some of the coconut in the sink in warm water.',
    'No idea how much it will cost me.',
    'I carried on with what was left of my day.',
  ])('%s', (talk) => {
    const grams = { 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 80, water: 170 };
    expect(read(told + talk)).toEqual({ grams, doubts: [] });
  });
});

describe('a vessel weighed empty and full', () => {
  const rest = '300 g coconut, 117 g lye';
  test.each([
    `The pot with the melted olive showed 1650 g, the empty pot weighs 1150 g, which makes 500 g of olive. ${rest}.`,
    `The bowl by itself is 210 g. With the olive in it, it was 710 g, so that's 500 g olive. ${rest}.`,
    `The jug alone weighs 300 g; full of olive it shows 800 g, which leaves 500 g of olive. ${rest}.`,
    `Bowl empty 212 g, bowl with olive 712 g, so 500 g olive. Bowl with coconut 512 g, so 300 g coconut. 117 g lye`,
  ])('weighs what that leaves: %s', (text) => expect(read(text)).toEqual({ grams: fats, doubts: [] }));
  test.each([
    `so the bowl is 312g and with olive in it 812 so 500g olive. ${rest}`,
    `bowl 300g, with the olive in it 800g so 500g olive. ${rest}`,
    `500g olive. The jug is 210 g and with coconut in it 510 g so 300 g coconut. 117 g lye`,
  ])('with no word that it is empty: %s', (text) => expect(read(text)).toEqual({ grams: fats, doubts: [] }));
  test('is asked about where it does not come out', () =>
    expect(read(`the bowl is 312g and with olive in it 830 so 500g olive. ${rest}`).doubts).toEqual(['range']));
  test.each([
    `the bowl is 312g and with olive in it 812. ${rest}`,
    `The empty bowl is 210 g. With the olive in it, it was 710 g. ${rest}.`,
  ])('leaves what is reckoned where nobody says it: %s', (text) =>
    expect(read(text)).toEqual({ grams: fats, doubts: [] }),
  );
  test('and no row below it is of the vessel', () =>
    expect(read(`The empty pot weighs 250 g. 500 g olive with ${rest}.`)).toEqual({ grams: fats, doubts: [] }));
});

describe('what was the last batch', () => {
  const asked = { grams: { lard: 500, 'coconut-oil': 300 }, doubts: [] };
  test.each([
    "Last month's soap was 600 g olive with 78 g lye. Now I want 500 g lard and 300 g coconut. How much lye?",
    'My last soap was 600 g olive with 78 g lye. Now it will be 500 g lard and 300 g coconut. Lye?',
    'The soap before was 600 g olive and 78 g lye. This new one is 500 g lard, 300 g coconut. How much lye?',
  ])('%s', (text) => {
    expect(read(text)).toEqual(asked);
  });
  test.each([
    'Lye was 112 g. Sorry, no, 112 is off the card of my last batch. Here the lye is 117 g, with 500 g olive and 300 g coconut.',
    'Lye was 112 g. No, 112 is from the last batch. For this one the lye is 117 g with 500 g olive and 300 g coconut.',
    '500 g olive, 300 g coconut. Lye 112 g. No, 112 is off the label of the previous batch. The lye is 117 g.',
    'Lye 112 g. Oh no, 112 was the last batch. The lye is 117 g, with 500 g olive and 300 g coconut.',
    `${list} now. The greasy one had 95 g lye, which was a typo on my side.`,
    `The crumbly batch had 150 g lye, a typo. Now it's ${list}.`,
    `${list} now. The one that crumbled had 150 g lye. Better?`,
    `500 g olive, 300 g coconut, 150 g lye. Sorry, the 150 g lye was a typo, it's 117 g.`,
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: fats, doubts: [] });
  });
  test('two batches by their days are two recipes', () => {
    const text =
      'On Monday I made 600 g olive with 200 g coconut. On Friday it was 500 g lard with 250 g palm. How much lye?';
    expect(read(text).doubts).toContain('two-recipes');
  });
});

test('what fell short, spoken of once more, is no amount', () => {
  const text =
    'I meant to use 90 g castor but there were only 50 g left in the bottle. Olive 460 g, coconut 220 g. Lye 104 g, water 235 g, and 40 g is not the world.';
  const grams = { 'castor-oil': 50, 'olive-oil-virgin': 460, 'coconut-oil': 220, naoh: 104, water: 235 };
  expect(read(text)).toEqual({ grams, doubts: [] });
});

test('letters that changed places are likelier than one that is missing; a lost note of the lye is no lost lye', () => {
  expect(read('olvie 500 g, coconut 300 g, I lost my lye note, so I only want to know the lye.')).toEqual({
    grams: { 'olive-oil-virgin': 500, 'coconut-oil': 300 },
    doubts: [],
  });
});

describe('water that an additive is dissolved in', () => {
  test.each([
    `${list}, water 200 g. Sugar 20 g in 34 g hot water.`,
    `${list}, 200 g water; salt 10 g dissolved in 34 g water`,
    `${list.replaceAll(', ', '\n')}\nwater = 200 g\nsugar = 90 g in 34 g hot water`,
  ])('is more of it: %s', (text) => expect(read(text)).toEqual({ grams: { ...fats, water: 234 }, doubts: [] }));
  test.each([`${list}, water 234 g. Sugar 20 g in 34 g of the water.`, `${list}, water 234 g, in 34 g water.`])(
    'or nobody knows: %s',
    (text) => expect(read(text).doubts).toEqual(['two-amounts']),
  );
});
