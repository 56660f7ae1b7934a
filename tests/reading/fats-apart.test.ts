/** A list made in another size, of which a fat is told apart; and a part of somebody else's batch. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const card = 'The card: lard 1000 g, coconut 400 g, sunflower 200 g, lye 226 g, water 480 g. ';
const pot = (said: string, list = card): readonly (number | undefined)[] => {
  const { grams, doubts } = potOf(list + said);
  return doubts.length > 0 ? [] : ['lard', 'coconut-oil', 'sunflower-oil', 'naoh', 'water'].map((id) => grams[id]);
};

test.each([
  ['I doubled everything but not the coconut.', [2000, 400, 400, 452, 960]],
  ['I doubled everything except the coconut. Lye doubled too. Ok?', [2000, 400, 400, 452, 960]],
  ['I doubled all of it but the coconut. That stayed at 400 g. Ok?', [2000, 400, 400, 452, 960]],
  ['I tripled it all but the sunflower stayed at 200 g because I had no more. Ok?', [3000, 1200, 200, 678, 1440]],
  ['I doubled the lot, but the sunflower I left at 200 g.', [2000, 800, 200, 452, 960]],
  ['I halved everything, only of coconut I used 390 g.', [500, 390, 100, 113, 240]],
  [
    'I doubled everything, except that there was only enough sunflower for the 200, so that stayed as it was.',
    [2000, 800, 200, 452, 960],
  ],
  ['I doubled all of it, but as I only had 250 g of sunflower, that is what went in.', [2000, 800, 250, 452, 960]],
  ['I doubled all of it, but was short on sunflower, so just 250 g of that. Ok?', [2000, 800, 250, 452, 960]],
])('%s', (said, grams) => expect(pot(said)).toEqual(grams));

test.each([
  'I halved everything except the sunflower because I had none. Ok?',
  'I made half of everything except the sunflower. Ok?',
  'I doubled everything except the coconut. Of that I took 500 g.',
  'I halved everything except the coconut and the lye. Ok?',
  'I doubled everything, but only the lard and the coconut. Ok?',
  'I made half of it, without the sunflower. Ok?',
  "I made a quarter of my sister's batch. Ok?",
  'I doubled it all, except the coconut, which I left at 300 g. Ok?',
])('is asked about: %s', (said) => expect(pot(said)).toEqual([]));

test.each(['I halved everything except the clay. Ok?', 'I halved everything but the smell is strong. Ok?'])(
  'no fat is told apart: %s',
  (said) => expect(pot(said)).toEqual([500, 200, 100, 113, 240]),
);

const hers = "A friend's batch: 1000 g lard, 400 g coconut, 200 g sunflower, 226 g lye, 480 g water. ";
test.each([
  'I did half of hers, every single ingredient. Is the lye in my little pot right?',
  'I made half of her batch today. Good?',
  'Mine is exactly half of hers. Good?',
])('of theirs: %s', (said) => expect(pot(said, hers)).toEqual([500, 200, 100, 113, 240]));

test.each([
  'I made exactly half of it yesterday, only the water I cut to 240 g in total. It is soft. Was my soda enough?',
  'Yesterday I made half of it. Did I use enough soda?',
])('of what was made yesterday: %s', (said) => expect(pot(said)).toEqual([500, 200, 100, 113, 240]));

test.each([
  'I made half of it yesterday, today I want to make the whole. Is the lye ok?',
  'I made half of it yesterday. Is the card right?',
  'I did a quarter of hers, every single ingredient.',
])('nobody knows which is meant: %s', (said) => expect(pot(said)).toEqual([]));
