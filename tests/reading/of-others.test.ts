/** What a post tells of somebody else, or of another time, beside a recipe of its own. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive oil 700 g, coconut oil 300 g, lye 142 g, water 330 g. ';
const plain = potOf(list);

test.each([
  'My sister swears by 160 g of lye for her kilo of pure coconut. Is mine too low?',
  'My neighbour says one should never take less than 155 g. Is mine right?',
  'My first batch used 75 g lye for 550 g and came out fine.',
  'Granddad used a 12 oz can of lye to a 6 lb pail of lard and nobody died. Is mine ok?',
  'For comparison the bar I did for the spring market was 2000 g in total with 30 % coconut.',
  'My sister does 160. Should mine be up at 160 as well, or is 142 right?',
  'The last batch had 145 g lye with the very same fats and was harsh.',
  'I liked your 600/200 lard and palm one. Is mine ok?',
  'Your 600 lard / 200 palm one is fine. Is mine ok?',
])('is left out where the rest fits: %s', (talk) => {
  const { grams, doubts } = potOf(list + talk);
  expect([grams, doubts]).toEqual([plain.grams, []]);
});

test.each([
  // whose recipe is asked about nobody says
  'Hers is 500 g olive, 300 g coconut, 200 g palm with 143 g lye. His is 700 g lard, 200 g olive and 100 g castor with 131 g lye. Is the lye ok?',
  // somebody had a hand in the pot
  `${list}My husband says he put 40 g of castor in when I was out.`,
  // what was left out would be taken up again
  `${list}My aunt takes 160 g of lye. I did the same as she.`,
  // without it the alkali fits no soap
  'Olive oil 700 g, coconut oil 300 g, lye 200 g, water 330 g. Granddad used a 12 oz can of lye to a 6 lb pail of lard and nobody died. Is mine ok?',
  // without it there is no alkali
  'Olive oil 700 g, coconut oil 300 g, water 330 g. My aunt says 142 g of lye, her friend 150 g. Ok?',
])('is asked about: %s', (post) => expect(potOf(post).doubts).not.toEqual([]));

test('of fats whose lye is asked for, what another batch had is left out', () => {
  const { grams, doubts } = potOf(
    'I did a bar soap in autumn with 120 g caustic soda and 900 g of fats. Now I have 400 g sunflower oil, 250 g coconut oil and 50 g castor oil. How much KOH do I need?',
  );
  expect([grams, doubts]).toEqual([{ 'sunflower-oil': 400, 'coconut-oil': 250, 'castor-oil': 50, water: 0 }, []]);
});
