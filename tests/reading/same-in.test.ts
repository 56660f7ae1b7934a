/** Another fat in the place of the one row that weighs as much; what was spilt and binned. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '1 kg of lard, 200 g of coconut oil, 170 g of lye, 450 g of water.';
const { grams } = potOf(list);
const { lard: _, ...rest } = grams;

test.each([
  ['Today I took the same kilo in palm oil instead.', { 'palm-oil': 1000 }],
  ['Lard is out of the question now, so I took the same kilo in palm oil, the rest as before.', { 'palm-oil': 1000 }],
  ['This time we used the same 1000 g but tallow.', { 'tallow-beef': 1000 }],
  ['The same kilo was palm oil today.', { 'palm-oil': 1000 }],
])('%s', (said, now) => expect(potOf(`${list} ${said} Ok?`)).toEqual({ grams: { ...rest, ...now }, doubts: [] }));

test.each([
  ['I used the same 200 g of coconut oil as last time.', {}],
  ['I also used the same 200 g of palm kernel oil too.', { 'palm-kernel-oil': 200 }],
])('and nothing goes: %s', (said, now) =>
  expect(potOf(`${list} ${said} Ok?`)).toEqual({ grams: { ...grams, ...now }, doubts: [] }),
);

const oils = 'Oils: 550 g canola oil, 280 g coconut oil. Water 310 g.';
test.each([
  "I'd weighed 150 g NaOH. Swept the spill up and binned it, put the rest back on the scale, 139 g, and used just that.",
  'I weighed 150 g NaOH and dropped some on the floor. Swept it up and threw it away, the rest weighed 139 g.',
])('%s', (said) => expect(potOf(`${said} ${oils} Ok?`)).toMatchObject({ grams: { naoh: 139 }, doubts: [] }));

test('what was put back is asked about', () =>
  expect(
    potOf(`I weighed 150 g NaOH and spilt some. Swept it up and put it back, 139 g. ${oils} Ok?`).doubts,
  ).not.toEqual([]));
