/** Water that goes in besides a solution is water of the pot, besides what the solution brings. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const fats = { 'olive-oil-virgin': 600, 'coconut-oil': 300 };
const pot = { grams: { ...fats, naoh: 130, water: 230 }, doubts: [] };

describe('so much more plain water', () => {
  test.each([
    'I keep my lye ready mixed as a 50 % solution. I took 260 g of the solution and added another 100 g plain water.',
    '260 g of 50 % lye solution. I put in another 100 g of plain water since it’s stiff otherwise.',
    'I keep ready-made lye, half NaOH half water by weight. 260 g of that lye went in, and I put in another 100 g of cold water.',
    'My lye is premixed 1:1 with water. 260 g of it and 100 g more water went in.',
  ])('%s', (said) => expect(read(`600 g olive, 300 g coconut. ${said} Right?`)).toEqual(pot));
});

describe('it is none', () => {
  test('without more water', () => {
    const { grams } = read(
      'I keep ready-made lye, half NaOH half water. I used 260 g of it, 600 g olive, 300 g coconut.',
    );
    expect(grams).toEqual({ ...fats, naoh: 130, water: 130 });
  });
  test('mixed for the pot', () => {
    const { grams } = read(
      'I mix my lye half NaOH half water. 600 g olive, 300 g coconut, 130 g NaOH, 130 g water. Ok?',
    );
    expect(grams).toEqual({ ...fats, naoh: 130, water: 130 });
  });
  test('another fat is asked about', () => {
    const { doubts } = read('600 g olive, 300 g coconut, 260 g of 50 % lye solution. I added the missing 100 g. Ok?');
    expect(doubts).not.toEqual([]);
  });
});
