/** What a post tells of its own list against it, in words that leave open how much: asked about. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 550 g, coconut 250 g, castor 50 g, lye 117 g, water 270 g. ';

test.each([
  'I weighed the jug after pouring and 25 g of it had stayed behind.',
  'Oh, and I swapped 60 g for shea at the last minute.',
  'My husband says he put 40 g of shea in when I was out.',
  "I did a quarter of hers, every single ingredient. I don't have a pot like that.",
  'The tub now holds 200 g of coconut.',
  "There's 200 g of coconut in the tub now.",
  'I left the castor out and split it between the olive and the coconut.',
  'I left out the castor and added the same amount to the olive.',
  'My scale was showing 4 g with nothing on it, so take 4 off every figure.',
])('beside the list: %s', (told) => expect(potOf(list + told).doubts).not.toEqual([]));

test.each([
  "Olive 550 g, coconut 250 g, water 270 g. The lye got wet in my notebook, it's either 121 or 131 g.",
  'I have 600 g coconut and 100 g castor, so by his rule I weighed 98 g. 200 g water. Lye ok?',
  // a figure that carries its dot ends its sentence
  "olive 400 g, palm 300 g, castor 50 g, NaOH 104 g, water 320 g. There's 200 g of palm in the tub now.",
])('in the place of the list: %s', (post) => expect(potOf(post).doubts).not.toEqual([]));

const plain = potOf(list);
test.each([
  'My sister did everything times two. Is mine right?',
  'In the spring I made all of it times three. Is this one right?',
  'The water is right, and the oils I weighed twice.',
  'My aunt swears by a tub that holds 2 kg of palm.',
])('of no size of this pot: %s', (told) => expect(potOf(list + told)).toEqual(plain));

test('water that was left out gives way to what was used for it', () => {
  const { grams, doubts } = potOf(
    'Palm 300 g, olive 400 g, lye 96 g. It says 210 g water but I left that out completely and used 210 g of flat beer.',
  );
  expect([grams['water'], doubts]).toEqual([0, []]);
});

test('a question ends what is told of another time', () => {
  const { grams, doubts } = potOf(
    'Sunflower 500 g, coconut 300 g, castor 100 g. KOH 206 g. In autumn I took 230 g and it bit, hence less. Is 206 okay? Water 600 g',
  );
  expect([grams['koh'], grams['water'], doubts]).toEqual([206, 600, []]);
});

test('a superfat beyond all fat is none, whoever says it', () =>
  expect(
    potOf('Someone said go for 110 % superfat. 500 g olive, 100 g coconut. How much NaOH would it be?').doubts,
  ).toContain('superfat-odd'));
