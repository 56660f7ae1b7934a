/** "NaOH row is old. Weighed anew: 132 g": the row is said to be of before, and a weight follows; and what was spilt on. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Lard 500 g\nCoconut 200 g\nNaOH 102 g\nWater 230 g\n';
const pot = { lard: 500, 'coconut-oil': 200, naoh: 102, water: 230 };

test.each([
  [`${list}note: NaOH row is old. Weighed anew on the good scale before dissolving: 98 g.`, { naoh: 98 }],
  [`${list}The NaOH in the list is not current. Weighed again with the fine scale: 98 g.`, { naoh: 98 }],
  [`${list}Note: coconut row is outdated, weighed new before melting: 215 g.`, { 'coconut-oil': 215 }],
  [`${list}Note: the lard figure is from yesterday, re-weighed today: 490 g.`, { lard: 490 }],
])('counts the new weight: %s', (text, now) => expect(potOf(text)).toEqual({ grams: { ...pot, ...now }, doubts: [] }));

test.each([
  `${list}The lard is old but good. Weighed again after the cure the bars: 820 g.`,
  `${list}NaOH is old, from 2019. The soap weighed after cutting: 820 g.`,
])('leaves alone: %s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

test('asks where nobody is sure', () =>
  expect(potOf(`${list}The lard is old. Weighed again: about 480 g maybe.`).doubts).not.toEqual([]));

test.each(['cat', 'hamster cage', 'floor', 'poor tortoise'])('spilt on the %s', (what) =>
  expect(
    potOf(
      `spilled half of my water on the ${what} so weighed new: 230 g. rest is 500 g lard, 200 g coconut, 102 g naoh.`,
    ),
  ).toEqual({ grams: pot, doubts: [] }),
);
