// Sentences that tell of something else and name an ingredient. Our own; what counts is that the rest stays as it is.
import { describe, expect, test } from 'vitest';
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

interface Read {
  readonly fats: Readonly<Record<string, number>>;
  readonly lye: number | undefined;
  readonly water: number | null;
}

function whole(text: string): Read {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  expect(doubts, text).toEqual([]);
  const grams = Object.fromEntries(fats.map((one) => [one.id, one.grams]));
  return { fats: grams, lye: alkali[0]?.grams, water: waterGrams };
}

const two = { lard: 500, 'coconut-oil': 250 };
const weighed = '500 g lard, 250 g coconut oil, 112 g lye, 240 g water.';

test.each([
  `${weighed} Last time's bars, 10 of them, were 96 to 104 g when cut and 88 to 93 g after five weeks.`,
  `${weighed} I checked the scale with a litre of water afterwards and it said 998 g.`,
  `${weighed} It is pressed by hand into 5 tins of 110 ml, and left there.`,
  `${weighed} Shea is dear here (11 euros the half kilo) and I don't want to feed it to the lye.`,
  `${weighed} I rendered the lard with salt water, three goes.`,
  `${weighed} At minute 30 it came up like milk at minute 30.`,
  `${weighed} This morning I cut it: 10 pieces, 680 g together.`,
  'Changed one thing since the last batch: water is 240 g now, it used to be 300. Lard 500 g, coconut oil 250 g, lye 112 g.',
  '19.00 - 500 g lard\n19.10 - 250 g coconut oil\n19.20 - 112 g lye in 240 g water',
  'Is it too much lye? 112 g in 240 g water, fats are lard 500 g, coconut oil 250 g.',
  'Planned: 500 g lard, 250 g coconut oil, 50 g castor with 112 g lye and 240 g water. The castor is still standing on the counter, the rest is in the pot.',
])('%s', (text) => {
  expect(whole(text)).toEqual({ fats: two, lye: 112, water: 240 });
});

test('a solution that is told of with its strength, and taken from later', () => {
  // 280 g of 50 % are 140 g of lye and 140 g of water
  const text =
    'I mix my lye ahead as a 50% solution by weight. For this batch I weighed 280 g of that solution plus 130 g extra water into 600 g olive oil, 250 g coconut oil and 150 g shea butter.';
  expect(whole(text)).toMatchObject({ lye: 140, water: 270 });
  const loaf =
    'I keep a 50% NaOH stock. For this loaf: 280 g of the stock and 90 g extra water. 500 g olive oil, 250 g coconut oil, 200 g palm oil.';
  expect(whole(loaf)).toMatchObject({ lye: 140, water: 230 });
});

describe('what a solution is made of, told before what is taken of it', () => {
  const fats = '500 g olive oil, 250 g coconut oil.';
  test.each([
    `I keep a stock of lye solution made half and half by weight, so 50 %. I took 200 g of it and 60 g of water. ${fats}`,
    `My masterbatch lye is half and half. I poured 200 g of it into 60 g of water. ${fats}`,
    `I keep ready made lye solution, equal parts by weight, 50 %. I took 200 g of it and another 60 g of water. ${fats}`,
    `${fats} lye solution 200 g (half NaOH, half water), and 60 g water`,
    `${fats} My 50 % lye solution, 200 g (half NaOH half water), 60 g more water`,
    `${fats} lye solution 50 % 200 g (half and half NaOH and water) + 60 g water`,
    `${fats} Lye solution (half NaOH half water) 200 g, water 60 g`,
    `I masterbatch my lye 1:1 by weight (NaOH in water). ${fats} I weigh 200 g of that solution and add 60 g water.`,
    `${fats} 200 g of my lye solution, 50 % (50 g NaOH in every 100 g), water 60 g`,
    `${fats} Lye solution (50 g NaOH per 100 g), 200 g of it, and 60 g water`,
    `My NaOH is already dissolved at 50 %. ${fats} 200 g of it, and 60 g water.`,
    `${fats} NaOH comes ready mixed, 50 % strength. 200 g of it went in, 60 g water`,
    `${fats} The NaOH is already dissolved, 100 g in 160 g water.`,
    `${fats}\nNatronlauge: NaOH 100 g\n             water 160 g`,
    `${fats}\nLye solution: NaOH 100 g\n  + water 160 g`,
    `${fats} The lye I can weigh on my kitchen scale: 100 g, dissolved in 160 g water`,
    `Lye water done, 100 g in 160 g, left to cool. ${fats}`,
    `First the lye solution: 100 g into 160 g. Then ${fats}`,
  ])('%s', (text) => {
    expect(whole(text)).toMatchObject({ lye: 100, water: 160 });
  });
  test.each([
    `I keep a stock of lye solution made half and half by weight, so 40 %. I took 200 g of it. ${fats}`,
    `Lye water done, 160 g in 100 g. ${fats}`,
    `${fats} The NaOH comes dissolved, 50 g in every 100 g. I used 400 g of it.`,
    `${fats} Lye solution NaOH 260 g, on its own line`,
  ])('it is asked: %s', (text) => {
    expect(readRecipe(reader, text).doubts.length).toBeGreaterThan(0);
  });
});

test('half and half that is weighed is cream', () => {
  const { liquids, doubts } = readRecipe(reader, '700 g olive, 300 g coconut, 140 g NaOH, half and half 300 g');
  expect([liquids.map(({ id }) => id), doubts]).toEqual([['single-cream'], []]);
});

test('pounds a bag are money', () => {
  const { fats } = readRecipe(
    reader,
    '500 g lard, 250 g coconut oil. How much lye? Shea is at 12 pounds a bag these days.',
  );
  expect(fats.map(({ id }) => id)).toEqual(['lard', 'coconut-oil']);
});

test('a share that makes the whole, with the weight of the whole', () => {
  expect(whole('Laundry soap, zero scent: 100 % coconut, 900 g of it, lye 160 g, water 340 g').fats).toEqual({
    'coconut-oil': 900,
  });
  const { fats, superfat } = readRecipe(
    reader,
    'I have 3 x 250 g of coconut oil. How much lye? Superfat 8 %. It dries the hands, hence the 8, they say.',
  );
  expect([fats[0]?.grams, superfat]).toEqual([750, 0.08]);
});

test('what is cooked until it looks like mash was in the pot before', () => {
  const { fats, after } = readRecipe(
    reader,
    'I cooked 700 g olive oil and 300 g coconut oil with 147 g NaOH and 380 g water until it looked like mashed potatoes, no zap. After the cook I stirred in 50 g of shea butter.',
  );
  expect([fats.map(({ id }) => id), after.map(({ id }) => id)]).toEqual([
    ['olive-oil-virgin', 'coconut-oil'],
    ['shea-butter'],
  ]);
});

test.each([
  'I put vinegar 10 % along the window for the ants.',
  'I have drunk one beer of 0.5 l while typing, please forgive spelling.',
  'My cousin used superfat 20 for a salt bar in her contest and came third.',
  "Her last year's cucumber bars had 6 % superfat and a bow.",
  'In spring I had 150 g lye in it.',
])('beside a question for lye: %s', (sentence) => {
  const asked = '500 g lard, 250 g coconut oil. How much lye?';
  for (const text of [`${asked} ${sentence}`, `${sentence}\n${asked}`]) {
    const { fats, liquids, acids, superfat, doubts } = readRecipe(reader, text);
    expect([fats.map(({ grams }) => grams), liquids, acids, superfat, doubts]).toEqual([[500, 250], [], [], null, []]);
  }
});

test.each([
  'My wife insisted on 30 g castor oil.',
  'It has 30 g of castor oil.',
  'The castor oil, 30 g, is from my aunt.',
])('an ingredient that is only told of is one all the same: %s', (sentence) => {
  const { fats, doubts } = readRecipe(reader, `${weighed} ${sentence}`);
  expect([fats.map(({ id }) => id), doubts]).toEqual([['lard', 'coconut-oil', 'castor-oil'], []]);
});

test('fats that are named behind their alkali are cooked, too, until the pot looks like mash', () => {
  const { fats, after } = readRecipe(
    reader,
    '147 g NaOH in 380 g water into 700 g olive oil and 300 g coconut oil, cooked until it looked like mashed potatoes.',
  );
  expect([fats.length, after.length]).toEqual([2, 0]);
});

test('a liquid stays what it is where water is only spoken of', () => {
  const { liquids, waterGrams } = readRecipe(
    reader,
    'Stout boiled flat and frozen, 310 g, no water at all. Lye 141 g NaOH. Sunflower 300 g, tallow 450 g, coconut 250 g. Is the lye dose ok? Does it look balanced to you for a hard-water area?',
  );
  expect([liquids.map(({ id, grams }) => [id, grams]), waterGrams]).toEqual([[['beer', 310]], null]);
});

test.each([
  'bars: 38 @ ~135 g\nBoss wants to know the superfat',
  'bars: 38 @ 135 g',
  '1/2 cup per load, approx 0.09 per wash',
  '30 g a wash',
  'half a cup per machine load',
  'in: 1102 g, out (after 6 weeks): 1011 g, loss 12 %',
])('says nothing of what goes in: %s', (line) => {
  const { fats, lye, water } = whole(`500 g lard\n250 g coconut oil\n112 g lye\n240 g water\n${line}`);
  expect([fats, lye, water]).toEqual([two, 112, 240]);
});

test.each(['superfat shd be 5 ??', 'sf shld be 5', 'superfat sposed to be 5'])(
  'short for what should be: %s',
  (line) => {
    const text = `all in g: lard 500, coconut 250, naoh 107, water 240\n${line}`;
    expect([whole(text).fats, readRecipe(reader, text).superfat]).toEqual([two, 0.05]);
  },
);
