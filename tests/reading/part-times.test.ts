/** Some of the list was made so many times as large, and the rest was not. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '400 g olive, 200 g coconut, 100 g palm, 99 g lye, 200 g water. ';
const potWith = (text: string) => {
  const { grams, doubts } = potOf(text);
  return [grams['olive-oil-virgin'], grams['palm-oil'], grams['naoh'], grams['water'], doubts];
};

test.each([
  ['I doubled the oils and the water but not the lye. How bad?', [800, 200, 99, 400, []]],
  ['I doubled the oils and the water, but I forgot to double the lye, it was only the 99 g.', [800, 200, 99, 400, []]],
  ['I doubled the oils but forgot to double the lye and the water.', [800, 200, 99, 200, []]],
  ['I tripled the fats and the water. Forgot to triple the lye!', [1200, 300, 99, 600, []]],
  ['We doubled all the oils and the water, the lye stayed at 99 g.', [800, 200, 99, 400, []]],
  ['We doubled the fats and the water and kept the lye as it was.', [800, 200, 99, 400, []]],
  ['I doubled the lye but not the oils and water. Panic!', [400, 100, 198, 200, []]],
  ['I doubled everything except the 99 g of lye.', [800, 200, 99, 400, []]],
  ['I halved everything but all 99 g lye went in.', [200, 50, 99, 100, []]],
])('is taken so: %s', (text, pot) => expect(potWith(list + text)).toEqual(pot));

const halved = '700 g olive, 300 g palm, 140 g lye, 300 g water. ';
test.each([
  "I halved the two oils because I've only a small mould. But I didn't halve the lye and water. All 140 g and all the 300 g water went in with the half oils.",
  'I halved the oils. All 140 g lye and all 300 g of the water went in.',
  'I only wanted half so I weighed half of the oils... and then tipped in the whole lot of lye and water.',
  'I took only half of the fats, and put in the full lye and the full water.',
  'I used half the oils but all the lye and water went in.',
])('all of the rest went in: %s', (text) => expect(potWith(halved + text)).toEqual([350, 150, 140, 300, []]));

test.each([
  'All the 300 g water went in.',
  'I put in all 140 g of the lye and all 300 g of the water.',
  'The whole 140 g and the full 300 g of water are in the pot.',
])('a figure said again with "all" is no second one: %s', (text) =>
  expect(potWith(halved + text)).toEqual([700, 300, 140, 300, []]),
);
test.each(['cocoa butter: the full 300 g', 'the whole 300 g jar of cocoa butter', 'cocoa butter, all 300 g of it'])(
  'but it is of what has no weight yet: %s',
  (text) =>
    expect(potOf(`300 g palm, 700 g olive, ${text}, 175 g lye, 300 g water. Ok?`)).toMatchObject({
      grams: { 'palm-oil': 300, 'cocoa-butter': 300 },
      doubts: [],
    }),
);
test('another figure is added, or asked about', () => {
  expect(potWith(`${halved}All of another 200 g water went in.`)).toEqual([700, 300, 140, 500, []]);
  expect(potOf(`${halved}I put in all 400 g of another water.`).doubts).not.toEqual([]);
});

test('is told as it went in where the lye shows that', () =>
  expect(
    potWith(
      '800 g olive, 400 g coconut, 200 g palm, 99 g lye, 400 g water. I doubled the oils and water, not the lye.',
    ),
  ).toEqual([800, 200, 99, 400, []]));

test.each([
  'I doubled the oils. How bad?',
  'I poured half of the oils in the pot and stirred the whole lot of lye and water in. Then the other half of the oils.',
  'I melted half of the oils in the microwave.',
  'We doubled all the oils.',
  'I doubled the oils and the water but not the lye, then added the missing lye.',
  'I doubled the oils and the water but only used half the lye.',
])('is asked about: %s', (text) => expect(potOf(list + text).doubts).not.toEqual([]));

test.each([
  'Last year I doubled the oils but forgot the lye. Is this one ok?',
  'If I doubled the oils and the water but not the lye, what then?',
  'I nearly doubled the oils and the water but not the lye.',
])('was not done to it: %s', (text) => expect(potWith(list + text)).toEqual([400, 100, 99, 200, []]));
