/** A soap that is called after its one fat. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

test.each([
  ['pure lard soap, 1000 g, lye 134, water 330. ok?', { lard: 1000, naoh: 134, water: 330 }],
  ['Pure coconut oil soap, 800 g, lye 140, water 300. ok?', { 'coconut-oil': 800, naoh: 140, water: 300 }],
  ['plain tallow soap: 900 g, NaOH 125 g, water 300 g. Fine?', { 'tallow-beef': 900, naoh: 125, water: 300 }],
  ['1000 g of lard soap, lye 134, water 330. ok?', { lard: 1000, naoh: 134, water: 330 }],
  ['olive oil soft soap, 1000 g, KOH 190 g, water 500 g. ok?', { 'olive-oil-virgin': 1000, koh: 190, water: 500 }],
  ['lard soap, 1000 g lard, lye 134, water 330. ok?', { lard: 1000, naoh: 134, water: 330 }],
])('%s', (said, grams) => expect(potOf(said)).toEqual({ grams, doubts: [] }));

// it may be what the soap weighs, or there is no weight of it
test.each([
  'coconut oil soap, 1000 g, lye 120, water 220. ok?',
  'lard soap, 1450 g, lye 134, water 330. ok?',
  'goat milk soap, 1000 g, lye 134, water 330. ok?',
  'castile soap, 1000 g, lye 128, water 330. ok?',
])('no fat: %s', (said) => expect(Object.keys(potOf(said).grams)).toEqual(['naoh', 'water']));
