/** Where the lye goes, told in a bracket behind the weight of what it goes into; what a bar weighs from week to week. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const fats = 'Olive oil 550 g\nCoconut oil 250 g\n';

test.each([
  'Lye 114 g\nGoat milk, frozen in cubes, 300 g (no water at all, the lye goes straight on the milk)',
  'NaOH 114 g\nBeer, flat, 300 g (no water, NaOH straight in)',
  'Lye 114 g\nCoffee, cold, 300 g (instead of water, lye dissolved in it)',
  'Lye 114 g\nWater 300 g (the lye goes into it slowly)',
])('is no weight of the lye: %s', (text) => {
  const { grams, doubts } = potOf(fats + text);
  expect([grams['naoh'], doubts]).toEqual([114, []]);
});

test('is asked about where it weighs lye', () =>
  expect(potOf(`${fats}Lye 114 g\nWater 300 g (20 g of the lye spilled)`).doubts).not.toEqual([]));

const list = `${fats}Lye 114 g\nWater 240 g\n`;
test.each([
  'Cut after 18 h, 12 bars of about 117 g. Week 1: 114 g. Week 4: 104 g. pH strip says 9.',
  'week 1: 114 g, week 4: 104 g',
  'Day 1 118 g, day 14 109 g, day 28 104 g. Is the lye ok?',
  'day 1 - 118 g / day 14 - 109 g / day 28 - 104 g',
  'After 1 week 114 g, after 4 weeks 104 g. Is the lye ok?',
  'Month 1: 114 g. Month 3: 104 g.',
  "Week 1 the bars were 120 g each, now week 5 they're 104 g. Is the lye ok?",
  'I cut 10 bars. They were 118 g, now they are only 104 g. Is the lye ok?',
])('what a bar weighs as it cures is in no pot: %s', (text) => expect(potOf(list + text)).toEqual(potOf(list)));

test.each([
  ['After 2 hours 20 g of lard.', { lard: 20 }],
  ['Day 2: 20 g lard more.', { lard: 20 }],
])('what is named goes in: %s', (text, more) => expect(potOf(list + text).grams).toMatchObject(more));
