/** Fats told of the whole recipe or of one pot, and the lye of the part that is made, or of all pots. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

describe('a part of the recipe is made', () => {
  const half = { 'olive-oil-virgin': 400, 'coconut-oil': 200, naoh: 88, water: 180 };
  test.each([
    'My full recipe is 800 g olive, 400 g coconut. Today I make only half of it. For the half I have weighed 88 g lye and 180 g water.',
    "The whole recipe is 800 g olive and 400 g coconut. The box is full, so today I'm making only half of that, and the oils are weighed as half. For the half I've weighed 88 g lye and 180 g water.",
    'The recipe is 800 g olive, 400 g coconut, 176 g lye and 360 g water. Today I make only half of it.',
  ])('%s', (told) => expect(potOf(`${told} Is the lye right?`)).toEqual({ grams: half, doubts: [] }));
  test('the lye fits the half and not the whole', () =>
    expect(
      potOf(
        'My usual recipe is 800 g olive and 400 g coconut. Today I only make half of it. Lye 88 g, water 180 g. Ok?',
      ),
    ).toEqual({ grams: half, doubts: [] }));
  test('the lye fits the whole: of which it is, nobody says', () =>
    expect(
      potOf(
        'My usual recipe is 800 g olive and 400 g coconut. Today I only make half of it. Lye 176 g, water 180 g. Ok?',
      ).doubts,
    ).toEqual(['corrected']));
  test.each([
    'My recipe is 800 g olive, 400 g coconut. Last time I made half of that, today the whole, with 176 g lye in 360 g water.',
    'My recipe is 800 g olive, 400 g coconut with 176 g lye in 360 g water. I make half of it white and the other half green.',
    'My recipe is 800 g olive, 400 g coconut. I take half of the water as milk. 176 g lye, 360 g water.',
  ])('but not: %s', (told) =>
    expect(potOf(`${told} Is the lye right?`).grams).toMatchObject({ 'olive-oil-virgin': 800, naoh: 176 }),
  );
});

describe('one jug of lye for several pots', () => {
  test.each([
    'In each pot there is 500 g olive and 200 g coconut. I mixed the lye for both in a single jug: 190 g lye in 400 g water. Half of the jug by weight goes to each pot.',
    'I make two batches with the same oils: 500 g lard, 200 g coconut each. The lye was mixed at once, 190 g lye in 400 g water, and I pour half of it into each.',
    'Per pot 500 g olive and 200 g coconut, two pots. Lye: 190 g in 400 g water, half of the solution for each.',
  ])('%s', (told) => expect(potOf(`${told} Is one pot right?`).grams).toMatchObject({ naoh: 95, water: 200 }));
  test('where the lye stands off from its name, it is asked about', () =>
    expect(
      potOf(
        'Two pots, each has 500 g olive and 200 g coconut. Lye for both in one jug: 190 g in 400 g water, each pot gets half of it. Right?',
      ).doubts,
    ).toEqual(['corrected']));
  test.each([
    '1000 g olive, 400 g coconut, split into two pots. 190 g lye in 400 g water, half of it goes into each pot.',
    '1000 g olive, 400 g coconut, 190 g lye, 400 g water. Half of the batter gets cocoa, in two pots.',
  ])('but not: %s', (told) => expect(potOf(`${told} Right?`).grams).toMatchObject({ naoh: 190, water: 400 }));
});

describe('all of it so many times', () => {
  const list = 'olive 250 g, coconut 125 g, lye 53 g, water 110 g.';
  test.each([
    'Today I use the long mould and therefore doubled each line of the card, oils, lye and water.',
    'I took the big pot and doubled everything.',
    'Yesterday I weighed it all out. Today I doubled everything.',
  ])('%s', (told) => expect(potOf(`${list} ${told} Lye ok?`).grams).toMatchObject({ naoh: 106, water: 220 }));
  test('at another time', () =>
    expect(
      potOf(`${list} Last week I used the big pot and doubled everything. Today as written. Lye ok?`).grams,
    ).toMatchObject({ naoh: 53 }));
  test('before it was written down', () =>
    expect(
      potOf(`${list} I took the small card and doubled every line, these are the doubled figures. Lye ok?`).doubts,
    ).toEqual(['corrected']));
});
