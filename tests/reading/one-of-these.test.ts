/** "I'm going to make one of these": of several recipes none is meant, and who only speaks chooses none. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const ann = '600 g olive, 250 g coconut, lye 125 g, water 260 g';
const tom = '500 g lard, 300 g palm, 200 g coconut, lye 141 g, water 290 g';
const chat = (said: string): string =>
  `Ann: so this is mine: ${ann}\nTom: and here is what I do: ${tom}\nAnn: lard, nice\nKim: ${said} Does the lye fit?`;

describe('which one', () => {
  test.each([
    "thanks, I'm going to make one of these tonight.",
    'thank you both, I made one of yours.',
    "I'll try one of the two.",
  ])('%s', (said) => expect(potOf(chat(said)).doubts[0]).toBe('two-recipes'));
  test('of a list', () =>
    expect(potOf(`Recipe 1: ${ann}.\nRecipe 2: ${tom}.\nI'm making one of these today. Lye ok?`).doubts[0]).toBe(
      'two-recipes',
    ));
});

describe('it is said', () => {
  test('of a chat', () => expect(potOf(chat("I'll make one of these, Tom's.")).grams).toMatchObject({ naoh: 141 }));
  test('of a list', () =>
    expect(
      potOf(`Recipe 1: ${ann}.\nRecipe 2: ${tom}.\nI'm making one of these today, recipe 2. Lye ok?`).grams,
    ).toMatchObject({ naoh: 141 }));
  test('one of other things', () =>
    expect(
      potOf(`Recipe 1: ${ann}.\nRecipe 2: ${tom}.\nI use one of these silicone moulds. Is the lye ok in recipe 1?`)
        .grams,
    ).toMatchObject({ naoh: 125 }));
});
