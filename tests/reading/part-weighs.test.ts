/** Parts, packs by halves, shares of each, and lye that was weighed twice. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

test.each([
  'Parts by weight, one part = 75 g:\n\n6 parts olive oil\n2 parts coconut oil\n\n102 g NaOH in 225 g water',
  '6 parts olive, 2 parts coconut, each part 75 g. NaOH 102 g, water 225 g',
  'I go by parts: 6 parts olive, 2 parts coconut. A part was 75 g today. NaOH 102 g, water 225 g',
  '6 parts olive oil\n2 parts coconut oil\n(one part = 75 g)\n102 g NaOH\n225 g water',
])('a part weighs so much: %s', (post) => {
  const { grams, doubts } = potOf(post);
  expect([grams, doubts]).toEqual([{ 'olive-oil-virgin': 450, 'coconut-oil': 150, naoh: 102, water: 225 }, []]);
});

test('one part beside its own weight is no size of all of them', () => {
  const { doubts } = potOf('6 parts olive, 2 parts coconut, 1 part 75 g lard. NaOH 102 g, water 225 g');
  expect(doubts).not.toEqual([]);
});

test.each([
  'a third each of coconut, palm and olive, 900 g fat in all, 130 g sodium hydroxide, 280 g water',
  'coconut, palm and olive a third each, 900 g fat in all, 130 g sodium hydroxide, 280 g water',
  'one third each coconut, palm and olive, 900 g of fat altogether, 130 g NaOH, water 280 g',
])('as many fats as make the whole: %s', (post) => {
  const { grams, doubts } = potOf(post);
  expect([grams, doubts]).toEqual([
    { 'coconut-oil': 300, 'palm-oil': 300, 'olive-oil-virgin': 300, naoh: 130, water: 280 },
    [],
  ]);
});

test('a third each of two makes no whole', () =>
  expect(potOf('a third each of coconut and palm, 900 g fat in all, 130 g NaOH, 280 g water').doubts).not.toEqual([]));

test.each([
  ['I used two and a half 250 g blocks of lard.', 625],
  ['I used 2.5 blocks of lard, 250 g each.', 625],
  ['Lard comes in 250 g blocks here. I used two and a half blocks, the other half is back in the fridge.', 625],
  ['Lard 2 1/2 blocks of 250 g.', 625],
  ['I used two 250 g blocks of lard.', 500],
])('packs by halves: %s', (said, lard) => {
  const { grams, doubts } = potOf(`${said} 175 g coconut oil, 140 g sunflower oil. 129 g lye, 300 g water`);
  expect([grams['lard'], doubts]).toEqual([lard, []]);
});

const fats = '500 g olive, 200 g coconut, 150 g rice bran. 105 g NaOH in 260 g of water. ';
test('lye that was added to lye is one amount', () => {
  expect(potOf(`${fats}Then I added another 13 g of NaOH.`)).toMatchObject({ grams: { naoh: 118 }, doubts: [] });
  expect(potOf(`${fats}My aunt would add another 13 g of NaOH.`)).toMatchObject({ grams: { naoh: 105 }, doubts: [] });
  expect(potOf(`${fats}Then I added another 100 g of NaOH.`).doubts).not.toEqual([]);
});

test('both alkalis under one word', () => {
  const { grams, doubts } = potOf(
    'Stearic acid 260 g, tallow 200 g, coconut 90 g, castor 50 g.\nAlkali: 70 g KOH and 43 g NaOH. Water 260 g.',
  );
  expect([grams['koh'], grams['naoh'], doubts]).toEqual([70, 43, []]);
});

test('two pots that share a figure are two recipes', () => {
  const post = (a: string, b: string, asked: string): string =>
    `${a}: 700 g olive, 300 g coconut, 141 g lye, 320 g water.\n${b}: 500 g canola, 300 g coconut, 200 g cocoa butter, 142 g lye, 320 g water.\n${asked}`;
  expect(potOf(post('Sat', 'Sun', '')).doubts).not.toEqual([]);
  expect(potOf(post('One', 'Other', '')).doubts).not.toEqual([]);
  expect(potOf(post('Sat', 'Sun', "Can someone check Sunday's?"))).toMatchObject({
    grams: { 'canola-oil': 500, 'cocoa-butter': 200, naoh: 142 },
    doubts: [],
  });
});

test('a total that contradicts its lines is told, in whatever sentence it stands', () => {
  const list = 'olive 500 g\ncoconut 250 g\nlard 200 g\nlye 139 g, water 320 g';
  expect(potOf(`1000 g of oils in total, that I know for certain:\n${list}`).doubts).not.toEqual([]);
  expect(potOf(`950 g of oils in total, that I know for certain:\n${list}`).doubts).toEqual([]);
});
