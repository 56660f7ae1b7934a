/** Rows with a planned figure and one of what was done. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const done = { 'olive-oil-virgin': 520, 'coconut-oil': 240, naoh: 104, water: 280 };
const rows = (sign: string, unit = '') =>
  [
    ['olive', 500, 520],
    ['coconut', 250, 240],
    ['lye', 105, 104],
    ['water', 270, 280],
  ]
    .map(([name, a, b]) => `${name} ${a}${unit} ${sign} ${b}${unit}`)
    .join('\n');

describe('what was done counts', () => {
  test.each([
    `plan / done\n${rows('/')}\nall g. Please look at what I did, not at the plan`,
    `first number = recipe, second = what I actually weighed, all grams\n\n${rows('/')}\n\nok with what I weighed?`,
    `recipe | weighed\n${rows('|')}\nall in grams, is the lye right?`,
    `${rows('->')}\n(book -> what really went in, grams)`,
    `Left the recipe, right what went into the pot:\n${rows('/', ' g')}`,
    `should be / was:\n${rows('/', ' g')}\nIs the lye right?`,
  ])('%s', (text) => expect(read(text)).toEqual({ grams: done, doubts: [] }));
  test('it may stand first', () => {
    const { grams } = read(
      'weighed / recipe, in grams\nolive 520 / 500\ncoconut 240 / 250\nlye 104 / 105\nwater 280 / 270',
    );
    expect(grams).toEqual(done);
  });
});

describe('nobody knows which', () => {
  test.each([
    `${rows('/')}\nall g`,
    `A / B\n${rows('/')}\nall g`,
    `plan / done\n${rows('/')}\nall g. Please check the plan.`,
    `plan / done\n${rows('/')}\nshea 100\ncastor 20 / 30\nall g`,
  ])('%s', (text) => expect(read(text).doubts).not.toEqual([]));
});
