/** "Lard (1)" and a line "(1) …" below: the mark of a note is no amount. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const pot = (lard: number) => ({ lard, 'coconut-oil': 200, naoh: 88, water: 200 });

test.each([
  'Lard (1): 400 g\nCoconut (2): 200 g\nNaOH: 88 g\nWater: 200 g\n1) from the butcher\n2) refined',
  'Lard (2) 400 g\nCoconut (1) 200 g\nNaOH 88 g\nWater 200 g\n\n(1) refined\n(2) from my uncle',
  'Lard 400 g (1)\nCoconut 200 g\nNaOH 88 g (2)\nWater 200 g\n(1) from the last tub\n(2) a new bag',
  '| Oil | g |\n|---|---|\n| Lard [1] | 400 |\n| Coconut | 200 |\n| NaOH | 88 |\n| Water | 200 |\n\n[1] old stock',
  'Lard (1): 400 g\nCoconut: 200 g\nNaOH: 88 g\nWater: 200 g\n(1) 1 kg pack from the butcher',
])('reads the rows: %s', (text) => expect(potOf(text)).toEqual({ grams: pot(400), doubts: [] }));

test('hears the note', () =>
  expect(
    potOf(
      '| Lard (1) | 437 g |\n| Coconut | 200 g |\n| NaOH | 88 g |\n| Water | 200 g |\n(1) On the day the lard jar gave only 400 g, so 400 g is what went in.',
    ),
  ).toEqual({ grams: pot(400), doubts: [] }));

test.each([
  'Lard 400 g\nCoconut 200 g\nNaOH 88 g\nWater 200 g\n1) melt the fats\n2) add the lye',
  'Lard (400 g)\nCoconut (200 g)\nNaOH 88 g\nWater 200 g\n(1) melt the fats',
])('leaves alone: %s', (text) => expect(potOf(text)).toEqual({ grams: pot(400), doubts: [] }));
