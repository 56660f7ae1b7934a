/** A fat that is not in the pot, of the list or only planned. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const potIn = (list: string, said: string): unknown => {
  const { grams, doubts } = potOf(`${list} ${said}`);
  return doubts.length > 0 ? 'asked' : grams['castor-oil'];
};

describe('of the list', () => {
  const castor = (said: string): unknown =>
    potIn('500 g olive, 200 g coconut, 50 g castor, lye 105 g, water 240 g.', said);
  test.each([
    'Castor I did not put at the end.',
    'No castor in it, had none.',
    'Castor was not at home so I made it without, and put nothing else for it.',
    'I forgot to put castor. Is lye too much now?',
    'The castor I have left away.',
    'I made without castor.',
    'castor we skipped.',
    'Castor was finished so without it.',
    'But castor is not inside.',
    'Everything as written, only the castor not.',
    'All but the castor went in.',
    "My castor didn't arrive, so nothing in its place.",
    'I made it but the castor stayed in the bottle.',
    'The castor is missing in mine.',
  ])('%s', (said) => expect(castor(said)).toBeUndefined());
  test.each([
    'Forgot the castor at first, then added it.',
    'I forgot the castor until trace, stirred it in then.',
    'I left the castor out of the photo.',
    'it has no castor smell.',
    "Castor is not in the book's version.",
    'My sister makes it without castor.',
    'I did not use cheap castor.',
    "I don't like castor but took it.",
    'Next time I will leave the castor out.',
    'The castor is from the farm, and I made it without gloves.',
    'Some people leave the castor out.',
    'In a different batch I left out the castor.',
  ])('it is in: %s', (said) => expect(castor(said)).toBe(50));
  test.each(['only castor I did not have, rest is same.', 'We had no castor.'])('asked: %s', (said) =>
    expect(castor(said)).toBe('asked'),
  );
});

describe('only planned', () => {
  const castor = (said: string): unknown =>
    potIn('250 g stearic acid, 150 g tallow and 100 g coconut oil. KOH 108 g, 260 g water.', said);
  test.each([
    'No castor in the end, although I had 50 g standing there.',
    'I had 50 g castor ready but did not put it.',
    '50 g castor was planned but it is not in.',
    'The 50 g castor stayed in the bottle.',
    'Castor 50 g I wanted also but in the end without.',
    'Wanted to add 50 g castor, forgot.',
    "Would've loved 50 g of castor in there too but it hasn't come in the post yet.",
    'I thought of 50 g castor also but my wife said no.',
    'There were meant to be 50 g castor after the cook, but I found the cup on the counter.',
  ])('%s', (said) => expect(castor(said)).toBeUndefined());
  test.each([
    'Castor 50 g I have never used before.',
    'Castor 50 g, never used, straight from the shop.',
    'I had 50 g castor and did not use perfume.',
  ])('it is in: %s', (said) => expect(castor(said)).toBe(50));
});
