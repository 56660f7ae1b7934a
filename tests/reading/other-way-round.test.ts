/** Two rows of a list that are told to be the other way round. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Lard 300 g\nCoconut 500 g\nCastor 40 g\nNaOH 124 g\nWater 270 g\n\n';
const listed = { lard: 300, 'coconut-oil': 500, 'castor-oil': 40, naoh: 124, water: 270 };
const swapped = { ...listed, lard: 500, 'coconut-oil': 300 };

describe('each has the weight of the other', () => {
  test.each([
    "PS just seen I mixed up the first two, it's the other way round, 500 lard and 300 coconut. Is the lye too low?",
    'PS the first two are the other way round.',
    'Oops, lard and coconut are the other way round.',
    'edit: I swapped the first two figures, should be 500 lard, 300 coconut.',
    "sorry, lard and coconut the wrong way round above: it's 500 g lard and 300 g coconut",
    "Correction: I've got the lard and coconut swapped. Lye ok?",
    'PS the first two are the other way round: the lard is the 500 and the coconut is the 300.',
    'The first two I had the wrong way round. It took 20 minutes to trace.',
  ])('%s', (note) => expect(potOf(list + note)).toEqual({ grams: swapped, doubts: [] }));

  test('of the last two, lye and water', () =>
    expect(
      potOf(
        'Lard 300 g\nCoconut 500 g\nCastor 40 g\nNaOH 270 g\nWater 124 g\n\nedit: the last two are the wrong way round, sorry.',
      ),
    ).toEqual({ grams: listed, doubts: [] }));

  test('in figures without a unit', () =>
    expect(
      potOf(
        'Lard 300\nCoconut 500\nCastor 40\nNaOH 124\nWater 270\n(g)\n\nthe lard and coconut figures are the wrong way round',
      ),
    ).toEqual({ grams: swapped, doubts: [] }));
});

test.each([
  'I mixed the first two together and melted them, then the rest.',
  'My sister does lard and coconut the other way round.',
  'Could I do lard and coconut the other way round?',
  'I poured the water into the lye instead of the other way round. Is it ok?',
  'The lard and the coconut labels are the wrong way round.',
])('the list stands: %s', (note) => expect(potOf(list + note)).toEqual({ grams: listed, doubts: [] }));

test.each([
  "PS I mixed up the first two, it's 500 lard and 350 coconut.",
  'PS the first two are the other way round, the castor is 50 g.',
])('asked: %s', (note) => expect(potOf(list + note).doubts).not.toEqual([]));

test('asked where something else stands at the end of the list', () =>
  expect(potOf(`${list.trim()}\nSugar 10 g\n\nPS the last two are the other way round`).doubts).not.toEqual([]));
