/** How much of what is there, or was bought, went into the pot. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

describe('so much of it was taken', () => {
  test.each([
    'My sister brought 3 kg olive oil, of which 700 g went in.',
    'We pressed our own olive oil and have 5 kg of it. I took 700 g of that.',
    'We rendered, no, pressed our own olive oil and got 1350 g of it, of which I used 700 g. The remaining olive is in the cupboard.',
    'Olive oil can 3 kg, extra virgin it says. Used 700 g of it.',
  ])('%s', (said) => {
    const { grams, doubts } = read(`${said} 200 g coconut, 120 g lye, 270 g water. Right?`);
    expect(grams).toEqual({ 'olive-oil-virgin': 700, 'coconut-oil': 200, naoh: 120, water: 270 });
    expect(doubts).toEqual([]);
  });
  test('of the lye', () => {
    const { grams } = read('KOH bag 1 kg, 90% pure. Used 190 g of it. Sunflower 600 g, coconut 240 g, water 640 g.');
    expect(grams['koh']).toBe(190);
  });
});

describe('it is of something else', () => {
  test.each([
    'Bought 1 kg of coconut. Used 200 g of it for candles. Soap: lard 700 g, coconut 200 g, lye 118 g, 270 g water.',
    'Lard 700 g, coconut 200 g, lye 118 g, 270 g water. Last month I had 2 kg lard, of which I used 900 g.',
  ])('%s', (text) => {
    const { lard, 'coconut-oil': coconut } = read(text).grams;
    expect([lard, coconut]).toEqual([700, 200]);
  });
  test('of the list', () => {
    const { doubts } = read(
      'Olive 700 g, coconut 200 g, lye 124 g, water 270 g. I used 300 g of it for the second layer.',
    );
    expect(doubts).not.toEqual([]);
  });
});

describe('a shopping list, and what of it went in', () => {
  test.each([
    'Coconut: 500 g tub, 3.90. Olive: 1 kg can, 8.50. Lye: 1 kg, 6.00.\nOut of those I took 200 g coconut, 700 g olive and 120 g lye, and 270 g water.',
    'Coconut 500 g 3.90, olive 1 kg 8.50, lye 1 kg 6.00.\nFrom these I used 200 g coconut, 700 g olive and 120 g lye, and 270 g water. Does the lye fit?',
  ])('%s', (text) => {
    const { grams, doubts } = read(text);
    expect(grams).toEqual({ 'olive-oil-virgin': 700, 'coconut-oil': 200, naoh: 120, water: 270 });
    expect(doubts).toEqual([]);
  });
});

test('water that thins the paste later', () => {
  const { grams } = read(
    'Sunflower 600 g, coconut 240 g, KOH 190 g, water 640 g. Later another 1500 g water goes in for thinning. Enough KOH?',
  );
  expect(grams['water']).toBe(640);
});
