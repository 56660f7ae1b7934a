/** Water in two pours, what is topped up, out of two packs or off a block, and a solution that is kept in a jug. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = { 'olive-oil-virgin': 500, 'coconut-oil': 250 };
const wet = (said: string) => potOf(`olive 500 g\ncoconut 250 g\nlye 107 g\n${said}\nOk?`);

describe('water in two pours', () => {
  test.each<[string, number]>([
    ['150 ml of water to start, then another 350 ml', 500],
    ['water 150 g, then another 150 g', 300],
    ['150 g water first and then 100 g more.', 250],
    ['150 g of cold water, and a further 100 g later.', 250],
    ['240 g water. I added 20 g more water.', 260],
    ['240 g water. I splashed in another 20 g of water because it looked stiff.', 260],
    ['240 g water. Poured in 20 g extra water.', 260],
    ['250 g water, another 50 g if it gets thick.', 250],
    ['250 g water. Diluted the paste with 150 g of water, then another 350 g.', 250],
    ['240 g water. I would add 20 g more water.', 240],
    ['240 g water. I used 20 g more water than last time.', 240],
  ])('%s', (said, water) => expect(wet(said)).toEqual({ grams: { ...fats, naoh: 107, water }, doubts: [] }));
  test.each([
    '250 g water, then 30 g more for me to drink.',
    '250 g water, that is 20 g more water than the card says.',
  ])('is asked about: %s', (said) => expect(wet(said).doubts).not.toEqual([]));
});

const topped = (said: string) => potOf(`olive 400 g, coconut 250 g, lye 105 g, water 240 g. ${said}`);

describe('topped up', () => {
  test.each([
    'Topped the olive up to 550 g before any lye went near it. Ok?',
    'I increased the olive to 550 g. Ok?',
    'I saw it would never fill the mould, and brought the olive up to 550 g. Ok?',
  ])('%s', (said) => expect(topped(said).grams['olive-oil-virgin']).toBe(550));
  test('in the sentence of its list', () =>
    expect(
      potOf(
        'Had 400 g olive and 250 g coconut melted, and topped the olive up to 550 g. Then 105 g lye and 240 g water.',
      ),
    ).toEqual({ grams: { 'olive-oil-virgin': 550, 'coconut-oil': 250, naoh: 105, water: 240 }, doubts: [] }));
  test.each([
    'If I topped the olive up to 550 g, would it still work?',
    'I topped the olive up to 550 g with lard. Ok?',
    'I nearly topped the olive up to 550 g. Ok?',
    'I brought the olive to 45 C. Ok?',
  ])('is not so: %s', (said) => expect(topped(said).grams['olive-oil-virgin']).not.toBe(550));
});

const grams = (text: string) => potOf(text).grams;

describe('out of two packs', () => {
  test.each<[string, string, number]>([
    ['Scraped the last 80 g lye out of the old tin and took 41 g from the new one.', 'naoh', 121],
    ['80 g lye came out of the old tin, then 41 g more from a new one.', 'naoh', 121],
    ['121 g lye. 300 g olive from the old bottle and 150 g out of the new one.', 'olive-oil-virgin', 450],
    ['121 g lye. 450 g olive, 300 g olive from the old bottle and 150 g from the new one.', 'olive-oil-virgin', 450],
  ])('%s', (said, id, want) =>
    expect(potOf(`500 g tallow, 180 g coconut, 250 g water. ${said}`)).toMatchObject({
      grams: { [id]: want },
      doubts: [],
    }),
  );
  test('one or the other', () =>
    expect(
      grams('500 g tallow, 180 g coconut, 250 g water. 80 g lye from the old tin or 41 g from the new one.')['naoh'],
    ).not.toBe(121));
});

describe('off a block', () => {
  test.each<[string, number]>([
    [
      "I've 340 g coconut oil left and a 2 kg block of lard. Want to use up all the coconut and 700 g of the lard.",
      700,
    ],
    ['I have a 1 kg tub of lard. I would like to make soap with 200 g of the lard and 300 g coconut.', 200],
    ['I have a 500 g block of lard, 300 g coconut.', 500],
  ])('%s', (said, want) => expect(grams(`${said} How much NaOH for 5 % superfat?`)).toMatchObject({ lard: want }));
  test.each([
    'I put in a 500 g block of lard. Then used 200 g of the lard from the freezer and 300 g coconut.',
    "I have a 500 g block of lard and 300 g coconut. I'd add 200 g of lard more.",
  ])('is asked about: %s', (said) => expect(potOf(`${said} How much NaOH for 5 %?`).doubts).not.toEqual([]));
});

describe('out of a jug of solution', () => {
  const oils = 'Oils in the pot: 560 g tallow, 210 g coconut, 140 g olive.';
  test.each<[string, number, number]>([
    [
      `I keep a jug of lye solution, made up from 400 g NaOH and 800 g water. I poured 390 g out of the jug. ${oils}`,
      130,
      260,
    ],
    [`${oils} I keep a solution made of 500 g lye and 1000 g water, and used 390 g of it.`, 130, 260],
    [`I keep a canister of lye solution: 500 g NaOH in 500 g water. Took 260 g of that solution. ${oils}`, 130, 130],
  ])('%s', (text, naoh, water) => expect(potOf(text)).toMatchObject({ grams: { naoh, water }, doubts: [] }));
});
