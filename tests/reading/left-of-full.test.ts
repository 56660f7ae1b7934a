/** Rows that tell what of a pack was used: all of it, a part, or but for what is left. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rest = ' NaOH 122 g, water 285 g. Good?';
const pot = { 'olive-oil-virgin': 620, 'coconut-oil': 250, naoh: 122, water: 285 };

describe('less what is left', () => {
  test.each([
    'Olive: had a kilo, unopened before this, 380 g left over now. Coconut: 250 g.',
    'Olive: had a kilo, 380 g left over now. Coconut: 250 g.',
    'Olive: a new kilo, 380 g left now. Coconut: 250 g.',
    'Olive: had 1000 g, unopened before this, 380 g left. Coconut: 250 g.',
  ])('%s', (text) => expect(potOf(text + rest)).toEqual({ grams: pot, doubts: [] }));

  test.each([
    'Olive: a kilo, 380 g left. Coconut: 250 g.',
    'Olive: a 1 litre bottle, new, 200 g left over. Coconut: 250 g.',
  ])('asked: %s', (text) => expect(potOf(text + rest).doubts).not.toEqual([]));
});

test.each([
  'Olive 620 g. Coconut: the whole 250 g tub.',
  'Olive 620 g. Coconut: a whole 250 g jar.',
  'Olive 620 g. Coconut: all of a 250 g jar.',
])('a whole pack: %s', (text) => expect(potOf(text + rest)).toEqual({ grams: pot, doubts: [] }));

test.each([
  'Shea: a third of the new 300 g jar.',
  'Shea: a third of my big 300 g tub.',
  'Shea: a third of a 300 g jar.',
])('a part of a pack: %s', (text) =>
  expect(potOf(`Olive 620 g. Coconut 250 g. ${text}${rest}`)).toEqual({
    grams: { ...pot, 'shea-butter': 100 },
    doubts: [],
  }),
);
