/** What is usual, and what it was this time. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '600 g olive, 250 g coconut, 124 g lye and 320 g water.';
const castor = (said: string): number | null | undefined => {
  const { grams, doubts } = potOf(`${list} ${said} Mild?`);
  return doubts.length === 0 ? (grams['castor-oil'] ?? null) : undefined;
};

describe('this time counts', () => {
  test.each([
    'I normally put in 60 g castor, this time there were only 40 g so 40 it was.',
    'The recipe has 60 g castor, I had just 40 g so 40 it was.',
    'I usually add 60 g of castor but today I just had 40 g, so 40 it had to be.',
    'The book has 60 g castor in it, the bottle gave 40 g and so 40 g it is.',
    'Usually 60 g castor goes in, today it got 40 g.',
  ])('%s', (said) => expect(castor(said)).toBe(40));

  test('of lye, too', () =>
    expect(
      potOf(
        '600 g olive, 250 g coconut, 320 g water. I usually take 120 g lye but the scale stuck at 124 g and so 124 it was. Mild?',
      ).grams,
    ).toMatchObject({ naoh: 124 }));
});

test('what was usual and left out stays out', () =>
  expect(castor('I normally add 60 g castor but left it out this time.')).toBeNull());

test('the weight of the list stays beside it', () =>
  expect(castor('40 g castor, too. I normally cure 60 days, this time it was 30 days.')).toBe(40));

test('more on top is asked about', () =>
  expect(castor('I normally put in 60 g of castor, today it got 40 g extra.')).toBeUndefined());
