/** There was less of something than its row says, and no more was to be had. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '500 g olive\n300 g coconut\n200 g castor\n141 g NaOH\n330 g water\n\n';

test.each([
  ["Made it as above, except I had just 280 g of water left so that's what went in instead of the 330.", 'water', 280],
  ['I only had 460 g of olive left. Lye ok?', 'olive-oil-virgin', 460],
  ["There were just 160 g of castor left in the bottle and that's what I put in.", 'castor-oil', 160],
  ['We had but 120 g lye left, so that is what we used. Is it ok?', 'naoh', 120],
  ["The tin has 460 g of olive left in it, so that is what I'll use.", 'olive-oil-virgin', 460],
  ['I followed it except I had just 250 g of coconut left, so that went in, not the 300.', 'coconut-oil', 250],
])('counts as it was there: %s', (text, id, grams) => {
  const { grams: pot, doubts } = potOf(list + text);
  expect([pot[id], doubts]).toEqual([grams, []]);
});

test.each([
  'I have only 280 g of olive left now.',
  'I had just 250 g of coconut left afterwards, enough for a small one.',
  'I had just 250 g of coconut left so I bought a new tub.',
  'I had 350 g of water left and took it to the kitchen.',
  'There is 150 g of castor left and I used it in a shampoo.',
  "In spring I had just 250 g of coconut left so that's what went in.",
  'After pouring I had just 250 g of olive left.',
])('is of the cupboard, or of another time: %s', (text) => expect(potOf(list + text)).toEqual(potOf(list)));

test.each(['the can only had 310 in it.', 'the can only gave 310 g.'])(
  'behind dots it is of what was said last: %s',
  (said) => {
    const { grams, doubts } = potOf(`Tallow 400 g, coconut 200 g, olive 400 g... ${said} NaOH 128 g, water 280 g. Ok?`);
    expect([grams['tallow-beef'], grams['olive-oil-virgin'], doubts]).toEqual([400, 310, []]);
  },
);
