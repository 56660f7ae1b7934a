/** Less or more of a row, with what it weighs now. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '500 g tallow, 250 g coconut, 250 g olive, 142 g lye, 310 g water.';
const base = { 'tallow-beef': 500, 'coconut-oil': 250, 'olive-oil-virgin': 250, naoh: 142, water: 310 };

describe('less or more of something', () => {
  test.each<readonly [string, Readonly<Record<string, number>>]>([
    [`${list} Since I'd heard that coconut needs more lye than the others, I took less lye: 138 g.`, { naoh: 138 }],
    [`${list} Because coconut needs more lye I used more lye, 146 g.`, { naoh: 146 }],
    [`${list} Water I cut to 290 g.`, { water: 290 }],
    [`${list} I cut the water down to 290 g.`, { water: 290 }],
    [`${list} I've raised the lye to 146 g and otherwise changed nothing.`, { naoh: 146 }],
    [
      `The handout says: ${list}\n\nWhat I really have in the pot: 500 g tallow, 200 g coconut (jar empty), 300 g olive to make up for it. And since I'd heard that coconut needs more lye, I took less lye: 138 g. Water I cut to 290 g.`,
      { 'coconut-oil': 200, 'olive-oil-virgin': 300, naoh: 138, water: 290 },
    ],
  ])('%s', (text, changed) => expect(potOf(text)).toEqual({ grams: { ...base, ...changed }, doubts: [] }));

  test.each([
    `${list} I used more olive, 20 g.`,
    `${list} I used less lye, 4 g.`,
    `${list} Should I cut the water to 290 g?`,
  ])('a difference, or a question, is asked about: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));

  test.each([`${list} Last time I cut the water to 290 g.`, `${list} I raised the lye to 42 degrees.`])(
    'another time or another measure: %s',
    (text) => expect(potOf(text)).toEqual({ grams: base, doubts: [] }),
  );
});
