/** What is usually made is no amount of this batch. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '3 kg tallow, 800 g coconut oil. How much lye at 4 %?';

test.each([
  'never done this big before, usually 1 kilo and i use my old recipe',
  "Usually it's 1 kg in one go.",
  'normally 500 g or so.',
  'I usually make 1 kg.',
  'Never made this much, mostly just a kilo.',
])('is set aside: %s', (said) =>
  expect(potOf(`${fats} ${said}`)).toMatchObject({ grams: { 'tallow-beef': 3000, 'coconut-oil': 800 }, doubts: [] }),
);

test.each([
  '60 % tallow and 40 % coconut, usually 1 kg of oils. How much lye at 5 %?',
  '60 % tallow and 40 % coconut. I usually make 1 kg. How much lye at 5 %?',
  'Tallow, usually 600 g, and coconut 400 g. How much lye at 5 %?',
  '600 g tallow, coconut usually 400 g. How much lye at 5 %?',
])('counts where it is of the fats: %s', (post) =>
  expect(potOf(post)).toMatchObject({ grams: { 'tallow-beef': 600, 'coconut-oil': 400 }, doubts: [] }),
);
