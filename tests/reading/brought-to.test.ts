/** What something was brought to, told with what it is first. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 600 g, coconut 300 g, shea 100 g, lye 141 g, water 290 g.';
const plain = potOf(list).grams;

test.each([
  ['Lye I cut down to 129 g.', { naoh: 129 }],
  ['Lye was reduced to 129 g by my daughter.', { naoh: 129 }],
  ['So I cut the lye down to 129 g.', { naoh: 129 }],
  ['We dropped the lye to 129 g as it was too strong.', { naoh: 129 }],
  ['Water I raised to 310 g.', { water: 310 }],
  ['The shea was cut down to 40 g as the tub ran out.', { 'shea-butter': 40 }],
])('%s', (said, now) => expect(potOf(`${list} ${said} Ok?`)).toEqual({ grams: { ...plain, ...now }, doubts: [] }));

test('where the list has no weight of it', () =>
  expect(potOf('Olive 600 g, coconut 300 g. Lye I cut down to 129 g, water 290 g. Ok?')).toEqual({
    grams: { 'olive-oil-virgin': 600, 'coconut-oil': 300, naoh: 129, water: 290 },
    doubts: [],
  }));

describe('stays', () => {
  test.each([
    'The lye would be cut down to 129 g next time.',
    'Lye I cut down to 129 g last time.',
    'The oils I brought down to 40 degrees.',
    'I brought the lye up to 40 degrees.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`).grams).toEqual(plain));
});
