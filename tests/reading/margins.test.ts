// Sums, steps of a scale, gaps, remarks and counts beside the rows. Posts of our own; the grams are read off by hand.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());

function read(text: string) {
  const { fats, alkali, liquids, waterGrams, superfat, doubts } = readRecipe(reader, text);
  expect(doubts, text).toEqual([]);
  const weighed = Object.fromEntries([...fats, ...alkali, ...liquids].map(({ id, grams }) => [id, grams]));
  return { ...weighed, water: waterGrams, superfat };
}
const row = { lard: 400, 'coconut-oil': 200 };

describe('a weight alone in its line is the sum of the rows above it', () => {
  test.each([
    'lard 400 g\ncoconut 200 g\n(600 g)\nneed lye at 6 % superfat',
    '1. 400 g lard\n2. 200 g coconut\n= 600 g\nlye for 6 % superfat?',
    '400 g lard\n200 g coconut\n600 g\nNaOH please, superfat 6',
  ])('%s', (text) => expect(read(text)).toEqual({ ...row, water: null, superfat: 0.06 }));
});

test('a unit by its key, whatever else has one', () => {
  const sheet = '{"unit":"g","fats":{"lard":400,"coconut":200},"naoh":85,"water":180,"cure_weeks":6}';
  expect(read(sheet)).toEqual({ ...row, naoh: 85, water: 180, superfat: null });
});

test.each(['My scale only does grams, in steps of 2 g.', 'It goes in increments of 5 g.', 'Scale is accurate to 1 g'])(
  'the step of a scale is no row: %s',
  (said) => {
    const text = `lard 400 g, coconut 200 g, lye 85 g, water 180 g. ${said}`;
    expect(read(text)).toEqual({ ...row, naoh: 85, water: 180, superfat: null });
  },
);

test('gaps are to be filled, and how many there are is no superfat', () => {
  const text =
    'lard 400 g\ncoconut 200 g\nlye [..] ring from a cup here\nwater [..]\nWhat fits the two gaps for a superfat of six per cent?';
  expect(read(text)).toEqual({ ...row, water: null, superfat: 0.06 });
});

test('eggs are counted', () => {
  const text = 'lard 400 g, coconut 200 g, lye 85 g, water 180 g. Half a dozen eggs sold, 2 eggs eaten.';
  expect(read(text)).toEqual({ ...row, naoh: 85, water: 180, superfat: null });
});

test('the colon behind a remark is its name’s', () => {
  const text =
    'lard 400 g\ncoconut 200 g\nlye solution (NaOH 1:1 with water): 160 g\ngoat milk (frozen, stirred in at trace): 50 g\n1 tsp clay';
  expect(read(text)).toEqual({ ...row, naoh: 80, 'goat-milk': 50, water: 80, superfat: null });
});

test('what is left in the fridge is none of it', () => {
  const text =
    'lard 400 g, coconut 200 g, lye 85 g, water 180 g, and 20 g yoghurt... no wait, I left the yoghurt in the fridge.';
  expect(read(text)).toEqual({ ...row, naoh: 85, water: 180, superfat: null });
});

test('an alkali spoken of by half its name, where each is weighed by its own', () => {
  const text =
    'lard 400 g\ncoconut 200 g\nKOH (90%) 70 g\nNaOH 40 g\nwater 200 g\nVersions 1 and 2 had only the potassium one.';
  expect(read(text)).toEqual({ ...row, koh: 70, naoh: 40, water: 200, superfat: null });
});

test('when it goes in stands between a name and its amount', () => {
  const { after, doubts } = readRecipe(reader, 'lard 500 g\nshea, after the cook  25 g\nNaOH 60 g\nwater 150 g');
  expect(doubts).toEqual([]);
  expect(after.map(({ id, grams }) => [id, grams])).toEqual([['shea-butter', 25]]);
});

test('how the solution was once mixed is no row beside what is taken of it', () => {
  const text =
    'lard 400 g\ncoconut 200 g\n50 % lye solution (NaOH) 160 g\nextra water 60 g\nThe lid says "2 May: 1.5 kg NaOH + 1.5 kg water".';
  expect(read(text)).toEqual({ ...row, naoh: 80, water: 140, superfat: null });
});
