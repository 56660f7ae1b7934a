/** Years in words, and tries that are told by their order. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '1500 g beef tallow, 400 g of coconut oil, 266 g of lye, 620 g of water.';
const pot = potOf(list);

test.each([
  `She rendered lard from nineteen fifty something on. This weekend: ${list}`,
  `My gran kept a crock of beef fat from nineteen-fifty-something until '87. ${list}`,
  `The farm has had tallow since nineteen-sixty. ${list}`,
  `Her tallow recipe is from the nineteen-fifties. ${list}`,
])('weigh nothing: %s', (text) => expect(potOf(text)).toEqual(pot));

test('but a figure with its unit does', () =>
  expect(
    potOf('lard nineteen ounces, coconut eighteen ounces, lye five ounces, water twelve ounces').grams,
  ).toMatchObject({ lard: 539, 'coconut-oil': 510 }));

test.each([
  `The first try was 900 g of tallow and nothing else and it cracked. The second had olive oil in it, lovely but soft. This weekend we go for the third: ${list}`,
  `First go: 900 g lard, 120 g lye. The second is what I ask about: ${list} Lye ok?`,
])('the last try is the one that is told: %s', (text) => expect(potOf(text)).toEqual(pot));
