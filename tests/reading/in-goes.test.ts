/** What was weighed in several goes, because the scale or the cup takes no more; and a second jug of lye. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 250, naoh: 108, water: 220 };

test.each([
  'Olive 500 g, coconut 250 g, the lye in two goes, 60 g and then 48 g, water 220 g.',
  'Weighed the lye in two goes as my spoon scale stops at 80 g, first 60 g then 48 g more. Oils 500 g olive + 250 g coconut, water 220 g.',
  'Olive 500 g, coconut 250 g, water 220 g. Lye in two goes because the little scale ends at 100 g: 60 g first, then another 48 g',
  'My scale stops at 300 g so I did the olive oil in two goes, 300 g and then 200 g. Coconut 250 g, lye 108 g, water 220 g.',
  'Coconut 250 g, lye 108 g, water in two goes as well, 150 and 70. The olive had to be weighed in two batches because the scale is small, 300 and 200 g.',
  'My little scale only goes to 100 g at a time so the lye got weighed in two cups, 60 g and then 48 g, both went into the 220 g water. 500 g olive, 250 g coconut.',
  'My scale goes crazy above 60 g so I did the lye in portions: 50 g, 50 g again and then 8 g, all into 220 g water. Fats are olive 500 g, coconut 250 g.',
  'Olive 500 g, coconut 250 g, lye 108 g in portions: 50 g, 50 g again and then 8 g, water 220 g.',
  'Olive 500 g, coconut 250 g, lye 108 g in two cups, 60 g and 48 g, water 220 g.',
  'Olive 500 g, coconut 250 g, lye 108 g, water 220 g. I weighed the lye in two goes, 60 g and then 48 g.',
  'The lye in three goes because my scale only does 50 g: 50, 50 and 8 g. Olive 500 g, coconut 250 g, water 220 g.',
  'I have olive in two bottles, 500 g and 300 g. The recipe: coconut 250 g, olive 500 g, lye 108 g, water 220 g.',
  '500 g olive, 250 g coconut. Mixed 54 g NaOH in 110 g water, in it went. That was only for half, so a second jug, again 54 g NaOH in 110 g water, went in too.',
])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test.each([
  'Olive 500 g, coconut 250 g, lye 108 g, water 220 g. The water went in in two goes, 120 g and 120 g.',
  'Olive 500 g, coconut 250 g, water 220 g. Weighed the lye in two goes, 108 g, then it showed 66 g.',
  'Olive 500 g, coconut 250 g, water 220 g. I weighed the lye in two goes, first 108 g then 8 g less.',
  'Olive 500 g, coconut 250 g, water 220 g. I weighed the lye on two scales, 108 g and then 109 g.',
  'Olive 500 g, coconut 250 g, lye 54 g in 110 g water. A second jug, again 54 g lye in 110 g water, would have been too much.',
])('is asked about: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
