/** Fats of which each has the same weight. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = ' Lye 129 g, water 258 g. Is good?';
const grams = { 'tallow-beef': 300, 'coconut-oil': 300, 'sunflower-oil': 300, naoh: 129, water: 258 };

test.each([
  'I make soap with 0,9 kg fat, this is tallow, coconut and sunflower, from every one the same weight.',
  '900 g fats: tallow, coconut, sunflower, of each the same.',
  '900 g of fat in all, it is tallow, coconut and sunflower, the same amount from each.',
  'Tallow, coconut and sunflower, every one same weight, together 900 g.',
  'Tallow 300 g, coconut 300 g, sunflower 300 g, of each the same.',
])('%s', (said) => expect(potOf(said + rest)).toEqual({ grams, doubts: [] }));
