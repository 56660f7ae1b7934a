/** What is said of a batch: its lye, not its size; and lye of another size than the list. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = '500 g olive, 250 g coconut, 250 g lard';
const base = { 'olive-oil-virgin': 500, 'coconut-oil': 250, lard: 250, naoh: 143, water: 330 };

describe('what is named before the batch is what weighs so much', () => {
  test.each([
    `${fats}, 330 g water. The lye for this batch is 143 g.`,
    `${fats}, 330 g water. Lye for the batch: 143 g.`,
    `${fats}, 143 g lye. The water for this batch is 330 g.`,
    `${fats}, 330 g water. For this batch the lye is 143 g.`,
    `${fats}, 143 g lye, 330 g water. The oils for this batch are 1000 g.`,
    `${fats}, 143 g lye, 330 g water. I bought lye for the batch: 1000 g of it.`,
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: base, doubts: [] }));
});

describe('lye for another size than the list has is asked about', () => {
  test.each([
    `${fats}, 330 g water. The lye for the double batch is 350 g.`,
    `${fats}, 330 g water. For the double batch the lye is 286 g.`,
    `${fats}, 330 g water. Lye for both batches: 286 g.`,
    `${fats}, 330 g water. Lye 286 g, for the double batch.`,
    `${fats}, 330 g water. The lye for the half batch is 70 g.`,
  ])('%s', (text) => expect(potOf(text).doubts).toEqual(['corrected']));

  test('not where it fits', () => {
    const text =
      'Double batch: 1000 g olive, 500 g coconut, 500 g lard, 660 g water. The lye for the double batch is 286 g.';
    const grams = { 'olive-oil-virgin': 1000, 'coconut-oil': 500, lard: 500, naoh: 286, water: 660 };
    expect(potOf(text)).toEqual({ grams, doubts: [] });
  });

  test('nor where the list has its own', () =>
    expect(
      potOf(`Single batch: ${fats}, 143 g lye, 330 g water. For the double batch the lye is 286 g.`).grams,
    ).toEqual(base));
});
