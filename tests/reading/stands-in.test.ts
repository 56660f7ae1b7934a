/** The weight of what stands ready in a vessel is said behind the vessel, and is not that of the vessel. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const fats = { 'olive-oil-virgin': 650, 'coconut-oil': 250 };

describe('it is weighed behind its vessel', () => {
  test.each([
    'lye 128 g. Water is waiting in another bowl, 280 g. Right?',
    'lye 128 g. Right amount? The water stands in the blue jug: 280 g.',
    'lye 128 g. Water (ready in a second jug, 280 g).',
    'water 280 g. The lye sits in a small beaker, 128 g. Ok?',
  ])('%s', (said) => {
    expect(read(`olive oil 650 g, coconut oil 250 g, ${said}`)).toEqual({
      grams: { ...fats, naoh: 128, water: 280 },
      doubts: [],
    });
  });
  test('a fat, too', () => {
    const { grams } = read('650 g olive oil, 128 g lye, 280 g water. The coconut waits in another pot, 250 g.');
    expect(grams).toEqual({ ...fats, naoh: 128, water: 280 });
  });
});

describe('it may be the weight of the vessel, or is said again', () => {
  test.each([
    'lye 128 g, water 280 g. The water is in the steel jug, 1.2 kg heavy.',
    'lye 128 g, water 280 g. The olive is in the big pot, 900 g empty.',
    'lye 128 g, water 280 g. Olive and coconut are in the bowl, 900 g.',
  ])('%s', (said) => {
    const { grams } = read(`olive oil 650 g, coconut oil 250 g, ${said}`);
    expect(grams).toEqual({ ...fats, naoh: 128, water: 280 });
  });
});
