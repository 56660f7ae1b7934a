/** Notations of laboratories, kitchens, cards and ledgers. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries([...fats, ...alkali].map(({ id, grams }) => [id, Math.round(grams)])),
    water: waterGrams === null ? null : Math.round(waterGrams),
    doubts: doubts.map(({ id }) => id),
  };
};
const listed = {
  grams: { 'olive-oil-virgin': 600, 'coconut-oil': 300, lard: 100, naoh: 140 },
  water: 300,
  doubts: [],
};
const list = 'olive oil 600 g\ncoconut oil 300 g\nlard 100 g\nNaOH 140 g\nwater 300 g';

describe('what leads the eye to an amount, or draws it', () => {
  test.each([
    'olive oil  ......... 600 g\ncoconut oil ....... 300 g\nlard .............. 100 g\nNaOH .............. 140 g\nwater ............. 300 g',
    'Maker ...... me\nOlive ████████ 600g\nCoconut ████ 300g\nLard ██ 100g\nNaOH ███ 140g\nWater ████ 300g',
    'Olive    ======== 600 g\nCoconut  === 300 g\nLard     == 100 g\nNaOH     == 140 g\nWater    === 300 g',
    'Olive    ■■■■■■ 600 g\nCoconut  ■■■ 300 g\nLard     ■ 100 g\nNaOH     ■ 140 g\nWater    ■■■ 300 g',
  ])('%s', (text) => expect(read(text)).toEqual(listed));

  test('a figure that is blotted out is asked about', () =>
    expect(read('olive oil 6██ g, coconut 300 g, lard 100 g, lye 140 g').doubts).toContain('unplaced'));
});

describe('a sheet kept for the books', () => {
  const rows = (batch: string, second: string) =>
    [
      'Batch\tOil\tg\tEUR/kg\tEUR\tINCI',
      `${batch}\tOlive\t600\t4.90\t2.70\tOlea Europaea`,
      `${second}\tCoconut\t300\t3.80\t0.95\tCocos Nucifera`,
      `${batch}\tLard\t100\t1.80\t0.18\tAdeps Suillus`,
      `${batch}\tNaOH\t140\t3.10\t0.42\t-`,
      `${batch}\tWater\t300\t0\t0\tAqua`,
      'TOTAL\t\t1440\t\t4.25\t',
    ].join('\n');
  test.each([rows('112', '112'), rows('A7', 'A7'), rows('112', '112').replaceAll('\t', ';')])('%s', (text) =>
    expect(read(`${text}\n\nIs the lye ok?`)).toEqual(listed),
  );

  test('of several batches says not which', () =>
    expect(read(`${rows('1', '2')}\n\nIs batch 1 ok?`).doubts).not.toEqual([]));
});

describe('packs and parts in a line', () => {
  const solution = (row: string) => `olive oil 600 g\ncoconut oil 300 g\nlard 100 g\n${row}\nextra water: 160 g`;
  test.each([
    list.replace('olive oil 600 g', 'olive oil, 1 l bottle -> I weighed 600 g of it, 3.75 €'),
    list.replace('olive oil 600 g', 'Olive oil: 1 l bottle, 600 g of it went in, £3.10'),
    list.replace('olive oil 600 g', 'olive oil, from a 750 ml bottle I took 600 g, 2.90 €'),
    list.replace('coconut oil 300 g', 'coconut oil, 2 packs of 150 g = 300 g, 1.98 €'),
    list.replace('coconut oil 300 g', 'coconut oil, two blocks of 150 g, so 300 g, £2'),
    list.replace('coconut oil 300 g', 'coconut oil, 300 g (2 packs of 150 g), 1.98 €'),
    solution('Lye stock, 50 % by weight (50 NaOH : 50 water): 280 g'),
    solution('Lye stock (50 NaOH : 50 water): 280 g'),
    solution('Lye stock 50:50 (NaOH:water), 280 g'),
    list.replace('olive oil', 'O.O.').replace('coconut oil', 'C.O.'),
    list.replace('olive oil 600 g', 'O.O: 600 g').replace('coconut oil 300 g', '300 g C.O.'),
    `${list}\nMix one cup flakes, one cup washing soda, one cup borax for the powder.`,
    `${list}\nconfetti: 250 g of cured offcuts, whatever colours`,
    `${list}\nLavender, our own distillate: 25 g`,
  ])('%s', (text) => expect(read(text)).toEqual(listed));

  test.each([
    list.replace('coconut oil 300 g', 'coconut oil, 2 packs of 250 g = 300 g, 1.98 €'),
    solution('Lye stock, 50 % by weight (40 NaOH : 60 water): 280 g'),
  ])('%s is asked about', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('signs of quantities', () => {
  const sheet = (alkali: string, water: string) =>
    `m(olive oil) = 600 g\nm(coconut oil) = 300 g\nm(lard) = 100 g\n${alkali}\n${water}\nIs the lye right?`;
  const soda = 'm(NaOH) = 140 g';
  test.each([
    sheet(soda, 'V(water) = 300 mL'),
    sheet(soda, 'V (water): 0.3 L'),
    sheet(soda, 'volume(water) = 300 mL'),
    sheet(soda, 'm(H2O) = 300 g'),
    sheet(soda, 'V(water) = 300 mL (ρ = 0.998 g/mL)'),
    sheet(`${soda}, n(NaOH) = 3.50 mol, M = 40.00 g/mol`, 'V(water) = 300 mL'),
    sheet(soda, 'V_water = 300 mL'),
    sheet('m(NaOH, w = 0.98) = 140 g', 'V(water, distilled) = 300 mL'),
    'M(olive oil) = 600 g, M(coconut oil) = 300 g, M(lard) = 100 g. M(NaOH) = 140 g in V(water) = 300 ml.',
    'mass(olive oil) = 600 g; mass(coconut oil) = 300 g; mass(lard) = 100 g; mass(NaOH) = 140 g; V₁ (water) = 300 ml',
    `${list.replace('water 300 g', '')}\nV (water) 300 mL`,
  ])('%s', (text) => expect(read(text)).toEqual(listed));

  test.each([
    sheet(`${soda}, n(NaOH) = 4.50 mol`, 'V(water) = 300 mL'),
    sheet('n(NaOH) = 3.5 mol', 'V(water) = 300 mL'),
    sheet(soda, 'V(NaOH solution) = 300 mL'),
  ])('%s is asked about', (text) => expect(read(text).doubts).not.toEqual([]));

  test('a bracket behind a number names an ingredient', () =>
    expect(readRecipe(reader, `${list}\nversion (shea butter): 20 g`).fats.map(({ id }) => id)).toContain(
      'shea-butter',
    ));

  test('a purity as a fraction', () =>
    expect(readRecipe(reader, sheet('m(NaOH, w = 0.98) = 140 g', '')).alkali).toMatchObject([
      { grams: 140, purity: { nominal: 0.98 } },
    ]));
});

describe('other notations', () => {
  test.each([
    'm(olive oil) = 600 g\nm(coconut oil) = 300 g\nm(lard) = 100 g\nm(NaOH, pellets) = 140 g\nm(water) = 300 g\nBalance ±0.1 g.',
    'olive oil   600 g\ncoconut oil   1 seer = 300 g\nlard   100 g\nNaOH   140 g\nwater   300 g',
    `${list}\n+7d no zap. +30d brown lather`,
    `${list}\nThe beer for the next one had OG 1.060, stuck at 1.028.`,
    `${list}\nWe go through 5 l a week.`,
    `${list}\nYield 1380 g, loss 60 g (spatula).`,
    `${list}\nDoes the 350 g old soap in cubes need any of it?`,
    'olive oil 600 g\ncoconut oil 300 g\nlard 100 g\nNaOH, micropearl  140 g\nwater 300 g',
    `${list}\nTimes: 11.10 on low, 11.25 lye in, 11.50 gel, 12.05 clear, 12.10 lard in, 12.20 poured.`,
    `${list}\nWeigh-in at pour 1.41 kg, trimmed to 120 g for the shop.`,
    '6 parts olive = 600 g, 3 parts coconut = 300 g, 1 part lard = 100 g. NaOH 140 g. Water 300 g. A friend says three parts coconut strip paint.',
  ])('%s', (text) => expect(read(text)).toEqual(listed));

  test('a card with several names a row', () =>
    expect(
      read('4×6 CARD\nOO 12.0   CO 6.0   Lard 2.0  (oz wt)\nLye 2.8 oz   Water 6.0 oz\nDoes it make sense?'),
    ).toEqual({
      grams: { 'olive-oil-virgin': 340, 'coconut-oil': 170, lard: 57, naoh: 79 },
      water: 170,
      doubts: [],
    }));

  test('parts that their weights contradict are asked about', () =>
    expect(read('6 parts olive = 600 g, 3 parts coconut = 200 g. NaOH 112 g.').doubts).not.toEqual([]));

  test.each([
    ['olive 600 g, coconut 400 g. How much lye? I like 6 percent over.', 0.06],
    ['olive 600 g, coconut 400 g, lye 140 g. My scale is 6 percent over.', null],
  ])('%s', (text, superfat) => expect(readRecipe(reader, text).superfat).toBe(superfat));

  test('a question about lye for what was weighed is no weight of the lye', () =>
    expect(read('Fat: coconut oil, 5 lb\nSuperfat: 0%\nWhat is the sodium hydroxide in grams for that 5 lb?')).toEqual({
      grams: { 'coconut-oil': 2268 },
      water: null,
      doubts: [],
    }));

  test('to thin a paste takes no part of the reckoning', () =>
    expect(
      read('sunflower 1.4 kg\ncoconut 600 g\nKOH TBD\ndilution: 1 part paste : 2 parts water\nsuperfat 3%').doubts,
    ).toEqual([]));
});

describe('words run together, or said as some people say them', () => {
  const pot = { grams: { lard: 500, 'coconut-oil': 200, naoh: 97 }, water: 200, doubts: [] };
  test.each([
    "Ma lye's 97g fur 500g lard, 200g coconut, water 200g. Is that ower much?",
    "500 g lard, 200 g coconut. Lye's 97 g, water's 200 g. Good?",
    'Lard’s 500 g, coconut’s 200 g, the lye’s 97 g and the water’s 200 g',
    '500 g lard, 200 g coconut, 97 g lye net, in 200 g water. I got fur on my jumper.',
  ])('%s', (text) => expect(read(text)).toEqual(pot));
});

test.each([
  'I keep my sodium hydroxide ready dissolved at 50% (half and half by weight). Used 208 g of that solution on 440 g olive, 190 g coconut, 110 g palm, and put in 45 g extra water.',
  'I keep my lye ready dissolved (half and half by weight). Used 208 g of that solution on 440 g olive, 190 g coconut, 110 g palm, and put in 45 g extra water.',
  'My lye is a 50% solution (equal parts by weight). Used 208 g of it on 440 g olive, 190 g coconut, 110 g palm, and added 45 g more water.',
])('how a solution was mixed is no cream: %s', (text) =>
  expect(read(text)).toEqual({
    grams: { 'olive-oil-virgin': 440, 'coconut-oil': 190, 'palm-oil': 110, naoh: 104 },
    water: 149,
    doubts: [],
  }),
);
