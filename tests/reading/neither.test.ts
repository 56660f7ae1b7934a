/** What was planned and never went in. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '250 g rice bran, 350 g olive, 200 g coconut, 110 g lye, 230 g water.';
const plain = potOf(list);

describe('is out', () => {
  test.each([
    'I was going to put 60 g castor and 20 g beeswax in, but did neither in the end.',
    'I had planned 60 g castor and 20 g shea, neither went in.',
    "I'd planned 60 g castor and 20 g shea. Neither went in.",
    'Meant to put in 60 g castor, never did.',
    'I thought about 60 g castor and 20 g shea but decided against both.',
    'I wanted to use 60 g castor too but left it out in the end.',
    'I planned on 60 g castor also and then dropped it.',
    'She wanted 60 g castor in it too, but I left it out.',
    'I meant to use 60 g castor but left it in the cupboard.',
    '60 g castor and 20 g beeswax stand on the card, too. Neither the castor nor the beeswax went in.',
  ])('%s', (said) => {
    expect(potOf(`${list} ${said} Ok?`)).toEqual(plain);
    expect(potOf(`${said} ${list} Ok?`)).toEqual(plain);
  });
});

test('of two, one went in', () =>
  expect(potOf(`${list} First I wanted 60 g castor and 40 g shea, but used just the castor. Ok?`)).toEqual({
    ...plain,
    grams: { ...plain.grams, 'castor-oil': 60 },
  }));

test('a row of the list that was only planned', () =>
  expect(potOf(`60 g castor, ${list} I wanted to use the castor too but left it out. Ok?`)).toEqual(plain));

test.each([
  ['60 g castor, too. I used neither colour nor scent.', 60],
  ['60 g castor, too. I was going to take 60 g palm, but did not.', 60],
  ['60 g castor, too. I wanted to melt it first but left it out of the jar.', 60],
  ['I wanted to use 60 g castor too, but the honey I left out.', 60],
])('and the rest stays: %s', (said, grams) => {
  const pot = potOf(`${list} ${said} Ok?`);
  expect(pot).toEqual({ doubts: [], grams: { ...plain.grams, 'castor-oil': grams } });
});

test('lye that did not go in is asked about', () =>
  expect(
    potOf('I was going to use 110 g lye and 230 g water, but did neither. 350 g olive, 200 g coconut. Ok?').doubts,
  ).not.toEqual([]));

test.each(['I had planned to drop the castor but left it in.', "I meant to swap the castor for shea but didn't."])(
  'what was to go and stayed is not out unasked: %s',
  (said) => expect(potOf(`60 g castor, ${list} ${said} Ok?`).doubts).not.toEqual([]),
);
