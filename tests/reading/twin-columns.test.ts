/** Of two columns of weights the one that the words around the table mean. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rows = [
  '|---|---|---|',
  '| Olive oil | 600 g | 380 g |',
  '| Coconut oil | 300 g | 240 g |',
  '| Lard | – | 330 g |',
  '| Castor oil | 100 g | 50 g |',
  '| Lye | 140 g | 142 g |',
  '| Water | 350 g | 300 g |',
].join('\n');
const read = (said: string, heads = 'A | B') => potOf(`${said}\n\n| | ${heads} |\n${rows}\n\nMarch went sweaty.`);
const left = { 'olive-oil-virgin': 600, 'coconut-oil': 300, 'castor-oil': 100, naoh: 140, water: 350 };
const right = { 'olive-oil-virgin': 380, 'coconut-oil': 240, lard: 330, 'castor-oil': 50, naoh: 142, water: 300 };

test.each([
  "Only the right column is what I'm making tonight, the left one is there to show where I came from.",
  'The left column is what I made last time, the right column is what I am making now.',
  'The left column is from the book and the right one is what I weighed.',
  'Left numbers are the old ones, right numbers are mine.',
])('the right one: %s', (said) => expect(read(said)).toEqual({ grams: right, doubts: [] }));

test('the left one, and the other only for comparison', () =>
  expect(read('The right column is there for comparison, only the left column is in the pot.')).toEqual({
    grams: left,
    doubts: [],
  }));

test('the one that the question names by its head', () =>
  expect(read('Lye ok for tonight?', 'March | tonight')).toEqual({ grams: right, doubts: [] }));

test.each([
  'I like the left column but the right column is nice, too.',
  'I made the left column and then the right column.',
  'Left column is olive based, right column is lard based.',
])('is asked about: %s', (said) => expect(read(said).doubts).not.toEqual([]));
