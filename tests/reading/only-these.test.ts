/** What is in the pot is told fat by fat: the others of the list stayed out. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive 500 g, coconut 300 g, castor 50 g, lye 120 g, water 280 g.';
const listed = { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'castor-oil': 50, naoh: 120, water: 280 };
const { 'castor-oil': _, ...two } = listed;

describe('without what is not named', () => {
  test.each([
    "I found the castor on the bench. So what's in the pot is just the olive and coconut with all of the lye and water.",
    'Only the olive and the coconut are in the mould, with all the lye. The castor is still on the shelf.',
    'The pot has only the olive and the coconut oil in it, and all the lye and water.',
    'So in the mould is nothing but olive and coconut, plus all the lye and all the water.',
    'I forgot the castor! So all that went into the pot is just the olive and the coconut. How bad is it without the castor?',
  ])('%s', (note) => expect(potOf(`${list} ${note} Is it safe?`)).toEqual({ grams: two, doubts: [] }));
  test('two that stayed out', () =>
    expect(
      potOf(
        'Lard 400 g, olive 300 g, coconut 300 g, shea 50 g, lye 148 g, water 330 g. What is in the mould is only the lard and the olive with all the lye and all the water.',
      ),
    ).toEqual({ grams: { lard: 400, 'olive-oil-virgin': 300, naoh: 148, water: 330 }, doubts: [] }));
});

describe('it is asked about where something else is told with it', () => {
  test.each([
    "What's in the mould is only the olive and the coconut, with half the lye.",
    "What's in the mould is only the olive and the sunflower.",
    'What is in the pot so far is only the olive and the coconut.',
    "Some lye spilled and the castor is on the shelf. What's in the mould is only the olive and the coconut.",
    'In the pot there is only the olive and the coconut, with all the lye and 200 g of the water.',
    "What's in the mould is only the olive and the coconut. The castor is in my hand.",
  ])('%s', (note) => expect(potOf(`${list} ${note} Is it ok?`).doubts).toContain('corrected'));
});

describe('all of the list counts', () => {
  test.each([
    'Last time what was in the mould was only the olive and the coconut.',
    "If what's in the mould is only the olive and the coconut, is it ok?",
    'Not only the olive and the coconut are in the pot, the castor is too.',
    'At first only the coconut went into the pot, to melt.',
    'Only the olive and the coconut are in the pot. The castor was then added at trace.',
    'My soap has only olive, coconut and castor in it.',
  ])('%s', (note) => expect(potOf(`${list} ${note} Is the lye ok?`)).toEqual({ grams: listed, doubts: [] }));
});
