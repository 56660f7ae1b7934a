/** What was taken of a pack of lye, and what thins a paste later on. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const oils = '600 g sunflower, 200 g coconut';
const base = { 'sunflower-oil': 600, 'coconut-oil': 200 };

describe('what was taken of the pack', () => {
  test.each([
    'NaOH (tub is 500 g, I took 95 g out of it).',
    'Lye is from a 1 kg tub (used 95 g of it).',
    'My caustic soda comes in a 1 kg tub and I used 95 g of it.',
    'NaOH. The tub was 1 kg and of that I used 95 g.',
    'NaOH - out of the 1 kg tub I weighed 95 g.',
    'NaOH from a 500 g bag, took 95 g.',
    'My NaOH is a 500 g tub, 95 g of it went in.',
    'Lye 95 g (the tub is 1 kg, I used 300 g of it for drains).',
  ])('%s', (said) =>
    expect(potOf(`${oils}, water 220 g. ${said} Is it ok?`)).toEqual({
      grams: { ...base, naoh: 95, water: 220 },
      doubts: [],
    }),
  );
});

describe('what a paste is thinned with is none of the water of the lye', () => {
  test.each([
    'The KOH is 90 % pure (bag is 2 kg, I used 203 g of it). 600 g water for the paste, later I will dilute with about 1.5 litres but that has not happened yet.',
    'KOH 203 g (90 %), water 600 g. Later I will dilute with 1.2 litre water, not done yet.',
    'KOH 90 %, from the 1 kg bag I took 203 g. Water 600 g for the paste, will dilute with 1 litre more later.',
    '203 g KOH 90 %, 600 g water, and when it is cooked I will thin it down with 1 kg of hot water.',
    '203 g KOH 90 %, 600 g water, for diluting later another 900 g water.',
    '203 g KOH 90 % which I will dilute with 600 g water.',
  ])('%s', (said) =>
    expect(potOf(`${oils}. ${said} How am I on lye?`)).toEqual({
      grams: { ...base, koh: 203, water: 600 },
      doubts: [],
    }),
  );
});
