/** What others say or take of lye, where the lye is asked for. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = { 'canola-oil': 500, 'coconut-oil': 200, 'palm-oil': 150 };
const list = '500 g rapeseed, 200 g coconut, 150 g palm';

test.each([
  `my husband says 118 g lye, my mum says 125 g, I say somebody reckon it properly please. soap will be ${list}. 6% superfat, NaOH`,
  `How much lye (NaOH) for ${list} at 5 %? My neighbour guesses 130 g, my sister 118 g.`,
  `${list}. My friend thinks 130 g lye, the man in the shop told 150 g. Who is right, how much lye do I need?`,
  `How much NaOH for ${list}? A friend's 2-1-1 needs 140 g per kilo.`,
  `How much lye for ${list}? My aunt boils up 3 kg at once and puts 420 g lye.`,
])('left out: %s', (text) => expect(potOf(text)).toEqual({ grams: { ...fats, water: 0 }, doubts: [] }));

test('what the writer weighed stays', () =>
  expect(potOf(`${list}, 118 g lye. My husband says 110 g, is he right or is mine ok?`).grams['naoh']).toBe(118));
