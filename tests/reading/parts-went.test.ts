/** Where the parts of a fat went that there was more of. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = ' 250 g coconut, 140 g lye, 300 g water. Ok?';
const lard = (text: string, lye = rest): readonly unknown[] => {
  const { grams, doubts } = potOf(text + lye);
  return [grams['lard'], doubts];
};

test.each([
  [
    'I rendered 2.3 kg of raw fat and it gave 1.4 kg lard. 1 kg of this lard I now use, the other 400 g are in freezer.',
    1000,
  ],
  [
    'Rendering 3 kg of scraps gave me 1.4 kg of lard. 400 g of this lard I use now, the other 1 kg is in the fridge.',
    400,
  ],
  ['I had 1.4 kg lard. Of that lard 1 kg is in the pot and the other 400 g are in the cupboard.', 1000],
  ['My uncle brought 2 kg lard. 1200 g of this I sold, the other 800 g I use now.', 800],
  [
    '3.2 kg of scraps became 1.9 kg of clean lard. From that I took 850 g for a first soap, the rest is in the freezer.',
    850,
  ],
  ['5 kg of trimmings rendered down to 1.9 kg of lard. 850 g of that is in the soap.', 850],
  ['I had 1.3 kg of lard. 250 g of it went to my sister and 150 g I kept for frying; the rest is in the pot.', 900],
  [
    'Got 1.3 kg of lard. 250 g went to the roast potatoes, 150 g I gave to mum, the rest all went into the soap pot.',
    900,
  ],
  ['I got 2 kg of lard. Half of it I used, the rest I froze.', 1000],
  ['Got 2 kg lard from the butcher, 500 g of it went bad, the rest is in the pot.', 1500],
])('what is in the pot counts: %s', (text, grams) => expect(lard(text)).toEqual([grams, []]));

test.each([
  '1 kg lard. 200 g of it is from the freezer, the other 800 g is fresh.',
  '1 kg lard, 800 g of it fresh, the other 200 g from the fridge.',
  '1 kg lard (200 g of it was a gift from my mum, the other 800 g I rendered).',
  'I put in 1 kg of lard: 400 g of it was from the freezer, the rest I rendered on Sunday.',
  'I bought 1 kg of lard, 400 g of it is in the pot already, the rest goes in when that is melted.',
  '1 kg lard. I have another 3 kg of lard in the freezer.',
])('all of it is in the pot: %s', (text) => expect(lard(text, rest.replace('140', '170'))).toEqual([1000, []]));

test.each([
  'I got 1.2 kg of lard from mum. 300 g of it is for cooking.',
  'I had 1.2 kg of lard. If I use 900 g of it, the rest goes in the freezer.',
])('what is left open is asked about: %s', (text) => expect(lard(text)[1]).not.toEqual([]));

test.each(['of water the double of the lye', 'water: double of the lye', 'water the double of my lye'])(
  'water by the lye: %s',
  (water) =>
    expect(potOf(`1 kg lard, 250 g coconut, lye 170 g, and ${water}. Ok?`)).toMatchObject({
      grams: { naoh: 170, water: 340 },
      doubts: [],
    }),
);
