/** Scents, colours and powders that are called after a fat; numbers, columns and limits that are no amounts. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, liquids, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries([...fats, ...alkali, ...liquids].map(({ id, grams }) => [id, Math.round(grams)])),
    doubts: doubts.map(({ id }) => id),
  };
};
const recipe = '300 g sunflower, 700 g palm, 136 g NaOH in 310 g water';
const grams = { 'sunflower-oil': 300, 'palm-oil': 700, naoh: 136 };

test.each([
  `${recipe}. Scent was Coconut Beach 40 g.`,
  `${recipe}, fragrance oil Coconut Beach 40 g`,
  `${recipe}, scented with Almond Dream 30 g`,
  `${recipe}, perfume: Olive Grove 20 g`,
  `${recipe}. Scent: 40 g coconut milk & honey`,
  `${recipe}, coconut lime fragrance 30 g`,
  `${recipe}, 20 g almond blossom FO`,
  `${recipe}, fragrance "cotton" 30 g`,
  `${recipe}. FO: oatmeal stout type 30 g`,
  `${recipe}, 1 tsp avocado green oxide`,
  `${recipe}, 1 tsp olive green mica`,
  `${recipe}, avocado green 1 tsp`,
  `${recipe}, olive-leaf powder 5 g`,
])('is no fat: %s', (text) => expect(read(text)).toEqual({ grams, doubts: [] }));

test.each([
  'FO 30 g, coconut 300 g, olive 500 g, lye 110 g',
  'fragrance oil\ncoconut 300 g, olive 500 g, lye 110 g',
  'No scent: coconut 300 g, olive 500 g, lye 110 g',
  'No scent: coconut from the shop 300 g, olive 500 g, lye 110 g',
  'No scent: coconut Grove brand 300 g, olive 500 g, lye 110 g',
  'scent: lavender 20 g, coconut 300 g, olive 500 g, lye 110 g',
])('and a fat beside a scent stays one: %s', (text) =>
  expect(read(text).grams).toMatchObject({ 'coconut-oil': 300, 'olive-oil-virgin': 500 }),
);

const list = 'Olive 720 g\nPKO 180 g\nNaOH 122 g\nWater 245 g';
const listed = { 'olive-oil-virgin': 720, 'palm-kernel-oil': 180, naoh: 122 };

test.each([
  `Batch 350 Olive\n\n${list}`,
  `12.03. / 38 °C / poured 14:20\n\n${list}`,
  `${list}\nThat is way too much olive, I never go over 60 %`,
  `${list.replace('Olive', '100 % olive oil')}`,
])('a number that is no amount: %s', (text) => expect(read(text)).toEqual({ grams: listed, doubts: [] }));

test('three columns of one weight', () => {
  const rows = ['Tallow\t1.10\t17.64\t500', 'Coconut\t0.66\t10.58\t300', 'NaOH\t0.26\t4.16\t118'];
  expect(read(['Oil\tlb\toz\tg', ...rows].join('\n'))).toEqual({
    grams: { 'tallow-beef': 500, 'coconut-oil': 300, naoh: 118 },
    doubts: [],
  });
  expect(read(['Oil\tlb\toz\tg', ...rows].join('\n').replace('1.10', '1.50')).doubts).not.toEqual([]);
});

test.each([
  'I started with 900 g of raw beef fat, after rendering I was left with 640 g of clean tallow',
  'Rendered 900 g of suet, which gave 640 g tallow',
  'I rendered 900 g suet and got 640 g of tallow',
])('what was left of raw fat: %s', (said) =>
  expect(read(`${said}. 160 g coconut oil, lye 113 g, water 260 g`)).toEqual({
    grams: { 'tallow-beef': 640, 'coconut-oil': 160, naoh: 113 },
    doubts: [],
  }),
);

test.each([
  'Weighed into one pot without taring: olive 500 g, then coconut 750 g, then lard 1000 g. What NaOH?',
  'running total on the scale: olive 300 g, coconut 500 g, palm 800 g, NaOH?',
])('the readings of a scale that was not set to zero are asked about: %s', (text) =>
  expect(read(text).doubts).toEqual(['corrected']),
);

test('and weights that do not only grow are not its readings', () =>
  expect(read('without taring: olive 500 g, coconut 300 g, lard 200 g. NaOH?').doubts).toEqual([]));

test('and those of one that was are not', () =>
  expect(read('I tared the scale each time: olive 300 g, coconut 500 g, lard 900 g. lye?').doubts).toEqual([]));
