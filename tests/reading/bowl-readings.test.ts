/** What the scale shows as a bowl fills up, and names that stand apart from their weight by a vessel. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const lye = ' Lye 118 g, water 260 g. Ok?';
const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'castor-oil': 50, naoh: 118, water: 260 };

test.each([
  "Empty bowl: 400 g. With the olive oil in: 900 g. Then coconut on top of that: 1200 g. Then castor on top: 1250 g. That's all the fat.",
  'Bowl A, empty: 400 g.\nBowl A after olive oil: 900 g.\nBowl A after coconut on top of that: 1200 g.\nBowl A after castor on top of both: 1250 g.\n',
  'Empty bowl 400 g, with olive oil 900 g, plus coconut 1200 g, plus castor 1250 g.',
  'The bowl alone weighs 400 g. Olive in: 900 g. Coconut added: 1200 g. Castor added: 1250 g.',
])('each reading has the one before: %s', (text) => expect(potOf(text + lye)).toEqual({ grams: pot, doubts: [] }));

test('weights beside the empty bowl stay as they are', () =>
  expect(potOf(`Empty bowl: 400 g. Olive oil: 500 g. Coconut: 300 g. Castor: 50 g.${lye}`)).toEqual({
    grams: pot,
    doubts: [],
  }));

test('what is weighed behind the tare stands as it is', () =>
  expect(
    potOf(`Empty bowl: 400 g. With the olive oil in: 900 g. Then I tared. Coconut: 300 g. Castor 50 g.${lye}`),
  ).toEqual({ grams: pot, doubts: [] }));

test.each([
  'My bowl weighs 400 g. Olive oil 900 g, coconut 1200 g, castor 1250 g.',
  'Empty bowl: 400 g. With the olive oil in: 900 g. Then coconut on top of that: 300 g.',
])('is asked about: %s', (text) => expect(potOf(text + lye).doubts).not.toEqual([]));

test.each([
  'Lye weighed in a paper cup, cup tared out: 118 g. Water in a steel jug, jug tared out: 260 g.',
  'Lye (NaOH) weighed in a paper cup, cup tared out: 118 g. Water in a steel jug, jug tared out: 260 g.',
  'Lye, cup tared out: 118 g. Water, jug tared out: 260 g.',
])('a vessel that was tared: %s', (text) =>
  expect(potOf(`Olive 500 g, coconut 300 g, castor 50 g. ${text}`)).toEqual({ grams: pot, doubts: [] }),
);
