/** What others say of the lye, and what the writer took. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const fats = { lard: 700, 'sunflower-oil': 200 };
const pot = { grams: { ...fats, naoh: 118, water: 270 }, doubts: [] };

describe('the writer’s own figure counts', () => {
  test.each([
    'Hubby says 130 g lye, internet friend says 106 g, I took the middle, 118 g, and it’s done now. Who was closest?',
    'One friend said 130 g of lye, another one 110 g. I did 118 g. Who’s right?',
    'I took 118 g lye. My sister reckons 130 g. Who was closer?',
    'My aunt told me 130 g lye. I went with 118 g. Right?',
  ])('%s', (said) => expect(read(`700 g lard, 200 g sunflower, 270 g water. ${said}`)).toEqual(pot));
});

describe('more or less of it, turned down', () => {
  test.each([
    'My neighbour says it needs 20 g more lye because lard is so heavy. I didn’t add any. Who is right?',
    'A friend thinks 10 g less lye would do. I left it as it is.',
    'My sister says I should have used 20 g less lye, but I did not listen.',
  ])('%s', (said) => expect(read(`700 g lard, 200 g sunflower, 118 g lye, 270 g water. ${said}`)).toEqual(pot));
  test.each(['so I added it. Who is right?', 'and I followed him.'])('it was done: %s', (said) => {
    const { doubts } = read(
      `700 g lard, 200 g sunflower, 118 g lye, 270 g water. My neighbour says it needs 20 g more lye, ${said}`,
    );
    expect(doubts).not.toEqual([]);
  });
});

describe('what was replied in a thread', () => {
  test.each([
    'Ann: 700 g lard, 200 g sunflower, how much lye?\nBea: 130 g\nAnn: took 118 g, 270 g water. ok?',
    'Ann: 700 g lard, 200 g sunflower, how much lye?\nBea: I would say 118 g\nAnn: ok did that, with 270 g water. safe?',
    '> 700 g lard, 200 g sunflower, 118 g lye, 270 g water. Ok?\n> \n> Too much, take 110 g.\n\nHm, I already mixed it with the 118 g. What now?',
    '> 700 g lard, 200 g sunflower, 150 g lye, 270 g water. Ok?\n> \n> No, I’d take 118 g.\n\nThanks. I weighed the lye again and it’s 118 g now. Can I mix it?',
  ])('%s', (text) => expect(read(text)).toEqual(pot));
  test.each([
    '> 700 g lard, 200 g sunflower, 150 g lye, 270 g water. Ok?\n> \n> Too much, take 118 g.\n\nThanks, did that! 30 g of scent, too.',
    'Ann: 700 g lard, 200 g sunflower, 270 g water, how much lye?\nBea: 130 g\nCem: rather 118 g\nAnn: ok did that. safe?',
  ])('nobody knows: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

test('nobody says which one was taken', () => {
  const { doubts } = read('700 g lard, 200 g sunflower. One friend said 130 g of lye, another one 110 g. Who’s right?');
  expect(doubts).not.toEqual([]);
});
