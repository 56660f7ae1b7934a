/** What a post tells of its own list in a way that leaves nothing to ask: sums, parts, what stayed behind, what was swapped. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 500 g, coconut 250 g, castor 50 g, lye 110 g, water 250 g. ';
const base = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'castor-oil': 50, naoh: 110, water: 250 };

test.each<readonly [string, Partial<Record<string, number>>]>([
  ['25 g of the coconut stayed behind in the jug.', { 'coconut-oil': 225 }],
  ['5 g of the lye remained in the cup.', { naoh: 105 }],
  ['6 g of the lye stuck in the cup.', { naoh: 104 }],
  [
    'I poured in three quarters of the lye water. The other quarter is still sitting in the jug.',
    { naoh: 83, water: 188 },
  ],
  ['I used exactly half of the solution and threw the rest away.', { naoh: 55, water: 125 }],
  ["The castor glugged, so there's now 70 g of it in the pot. Ok?", { 'castor-oil': 70 }],
  ['I overpoured the olive, it was 540 g by the time I stopped.', { 'olive-oil-virgin': 540 }],
  ['Oily next day, so I mixed another 10 g lye in 30 g water and cooked that in as well.', { naoh: 120, water: 280 }],
])('%s', (told, now) => {
  const { grams, doubts } = potOf(list + told);
  expect([doubts, grams]).toEqual([[], { ...base, ...now }]);
});

test.each<readonly [string, string, number]>([
  ['The coconut was babassu, I mixed up the jars. Same weight though.', 'babassu-oil', 250],
  ['The castor turned out to be hemp oil. The weight is right.', 'hemp-seed-oil', 50],
  ['Of the coconut I used only half, the other half I swapped for lard.', 'lard', 125],
])('another fat: %s', (told, id, weight) => {
  const { grams, doubts } = potOf(list + told);
  expect([doubts, grams[id]]).toEqual([[], weight]);
});

test.each([
  'I weighed the jug after pouring and 25 g of it had stayed behind.',
  '25 g of the coconut had stayed behind in the jug, so I scraped it out and in it went.',
  'I poured in about three quarters of the lye water.',
  'The coconut slid out and there was 340 g of it in the pot, so I spooned it back.',
  'By the time I looked there was 340 g in the pot.',
  'The coconut was babassu. Same weight as last time.',
  'I thought the coconut was babassu, same weight, but it was coconut after all.',
  'Of the coconut I used only half, the other half I swapped for more olive.',
])('is asked about: %s', (told) => expect(potOf(list + told).doubts).not.toEqual([]));

test.each<readonly [string, Readonly<Record<string, number>>]>([
  [
    'Zeroed the jug, poured 250 g water, then lye. Whole thing read 360 g with both in. Olive 500 g, coconut 300 g.',
    { naoh: 110, water: 250 },
  ],
  ['Tared the jug. 250 g water, then NaOH until the display showed 360 g. Olive 500 g, coconut 300 g.', { naoh: 110 }],
  [
    'He goes by "14 g lye per 100 g fat". I have 600 g coconut and 100 g castor, so by his rule I weighed 98 g. 200 g water.',
    { naoh: 98, water: 200 },
  ],
  [
    "Gran's rule is 140 g lye for each kilo of fat. I have 500 g lard and 300 g coconut, so following her rule I took 112 g. 240 g water.",
    { naoh: 112, lard: 500 },
  ],
  [
    'I keep a bottle of 50% lye solution (sodium hydroxide, by weight). Before soaping the bottle weighed 1,120 g, afterwards 872 g. 500 g olive, 250 g coconut, 130 g lard, 130 g water.',
    { naoh: 124, water: 254 },
  ],
  [
    '350 g olive, 150 g coconut, 100 g lard, 84 g lye. The recipe wants 210 g water. I dissolved the lye in 110 g water and the other 100 g were goat milk.',
    { naoh: 84, water: 110 },
  ],
  [
    'Hot process. 90 g shea butter in total. I cooked 60 g of it with 480 g olive and 260 g coconut, and kept the other 30 g back, that went in at the very end. Lye 112 g, water 300 g.',
    { 'shea-butter': 60, naoh: 112 },
  ],
  [
    'Plan was 450 g olive, 250 g coconut, 100 g shea with 111 g lye. Really weighed: 462 g olive, 250 g coconut, 95 g shea, 114 g lye. Water 240 g.',
    { 'olive-oil-virgin': 462, 'shea-butter': 95, naoh: 114, water: 240 },
  ],
  [
    '1200 g of oils: 45% olive, 25% coconut, 20% palm, 10% castor. (It was 40 olive and 15 castor in what I posted last week, scrap that.) 168 g lye, 396 g water.',
    { 'olive-oil-virgin': 540, 'castor-oil': 120, naoh: 168 },
  ],
  [
    'Olive 420 g\nCoconut 180 g\nAvocado 80 g <- crossed out, it had gone rancid. Took sweet almond instead, same weight\nNaOH 95 g\nWater 200 g',
    { 'sweet-almond-oil': 80, naoh: 95 },
  ],
  ['Olive 420 g\nCoconut 180 g\nAvocado 80 g <- crossed out by mistake, it is in\nNaOH 95 g', { 'avocado-oil': 80 }],
])('%s', (post, now) => {
  const { grams, doubts } = potOf(post);
  expect([doubts, grams]).toEqual([[], expect.objectContaining(now)]);
});

test.each([
  'Olive 500 g, coconut 300 g. 250 g water, then lye, in a jug. It read 360 g with both in, jug and all.',
  'Olive 500 g, coconut 300 g. 250 g water, lye 100 g, it read 360 g with both in.',
  'Olive 350 g, coconut 150 g, lard 100 g, lye 84 g, water 210 g. Lye went into 110 g water, the other 90 g was beer.',
  'He goes by 14 g lye per 100 g fat. I have 600 g coconut and 100 g castor, so by his rule I weighed 120 g. 200 g water.',
])('its figures do not add up, or nobody knows of what: %s', (post) => expect(potOf(post).doubts).not.toEqual([]));
