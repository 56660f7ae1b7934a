/** What somebody would have otherwise, and the writer turns down. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '250 g olive oil, 100 g coconut oil, 50 g castor oil, 56 g NaOH, 130 g water.';
const plain = potOf(list);

describe('the list stays', () => {
  test.each([
    'Colleague wants it with 60 g coconut and 90 g castor instead, but no, I keep it as it is.',
    'My sister says to take 60 g coconut and 90 g castor instead, but I am leaving it as it is.',
    "My sister would rather have shea in place of the castor. I'm sticking with mine.",
    "He suggested swapping the castor for shea but I've kept the recipe as written.",
    'My neighbour said 60 g of NaOH, but I left it at 56 g.',
    'I thought about 90 g castor instead but kept it as it was.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual(plain));
});

describe('and is asked about, or changes', () => {
  test.each([
    'My sister said to use 90 g castor, so I used that and kept the rest.',
    'I made it with 60 g coconut and 90 g castor instead, the rest I keep as it is.',
    'I take 90 g castor instead and keep the handout as it is.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).not.toEqual(plain));
});
