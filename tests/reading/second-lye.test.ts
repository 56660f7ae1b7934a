/** A second lye, mixed and poured in after the first: both figures of it count besides. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const first = '600 g lard, 200 g coconut. 80 g NaOH in 190 g water. It stayed oily.';
const pot = { lard: 600, 'coconut-oil': 200, naoh: 115, water: 260 };

test.each([
  `${first} So I mixed a second lye, 35 g NaOH in 70 g water, and poured it in too.`,
  `${first} So I made a second solution with 35 g lye and 70 g water and added that also.`,
  `${first} Another solution of 35 g lye in 70 g water I made and into the pot stirred.`,
  `${first} Weighed a further 35 g NaOH, dissolved in 70 g water, added.`,
  `${first} I have then a second lye made from 35 g NaOH and 70 g water, and this too came in the pot.`,
])('counts besides: %s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test.each([
  `${first} Should I mix a second lye, 35 g NaOH in 70 g water, and pour it in too?`,
  `${first} I mixed a second lye, 35 g NaOH in 70 g water, for the next soap.`,
  `${first} The first lye I spilled in the sink, so I mixed a second lye, 35 g NaOH in 70 g water, and poured it in.`,
  `${first} A second lye, 35 g NaOH in 70 g water, stands ready for my other soap, poured into a jar.`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
