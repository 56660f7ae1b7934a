/** Of two rows by one name, one is told to be of something else. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'Olive oil 480 g, coconut oil 190 g, coconut oil 80 g, lye 104 g, water 240 g. ';
const with80 = (id: string) => ({ 'olive-oil-virgin': 480, 'coconut-oil': 190, [id]: 80, naoh: 104, water: 240 });

test.each([
  ["Oh, I've put coconut twice! The 80 g is cocoa butter. The 190 g one is coconut alright.", 'cocoa-butter'],
  ['The 80 g should be cocoa butter.', 'cocoa-butter'],
  ['Sorry, typed coconut twice. The second one is shea butter.', 'shea-butter'],
  ['The smaller coconut is really cocoa butter.', 'cocoa-butter'],
  ['The 190 g is coconut, the 80 g is cocoa butter.', 'cocoa-butter'],
  ['Oops, shea butter is the 80 g one.', 'shea-butter'],
])('%s', (note, id) => expect(potOf(list + note)).toEqual({ grams: with80(id), doubts: [] }));

test.each([
  'Maybe the 80 g is cocoa butter.',
  'Is the 80 g cocoa butter or what?',
  'The 85 g is cocoa butter.',
  'The 80 g is not cocoa butter.',
])('is asked about: %s', (note) => expect(potOf(list + note).doubts).not.toEqual([]));

test('corrections one after the other tell of no row by two names', () => {
  const plain = 'olive oil 450 g, coconut oil 230 g, sunflower oil 140 g, lye 130 g, water 265 g.';
  const right = { 'olive-oil-virgin': 540, 'coconut-oil': 230, 'sunflower-oil': 160, naoh: 130, water: 265 };
  for (const edits of [
    'EDIT: the olive oil is 540 g, not 450 g.\n\nEDIT 2: sunflower oil is 160 g, not 140 g. Everything else stands.',
    'Edit 1: olive is 540 g, not 450 g.\nEdit 2: sunflower was 160 g, not 140 g.',
    'Correction: the olive oil is 540 g, not 450 g.\n\nEDIT: sunflower oil is 160 g, not 140 g.',
  ])
    expect(potOf(`${plain}\n\n${edits}`)).toEqual({ grams: right, doubts: [] });
});

test('rows of their own names stay', () => {
  const plain = 'Olive oil 480 g, coconut oil 190 g, castor oil 80 g, lye 104 g, water 240 g.';
  expect(potOf(`${plain} The 80 g is castor oil from the chemist.`)).toEqual({
    grams: with80('castor-oil'),
    doubts: [],
  });
  expect(potOf(`${list}The 80 g is from the new tub.`).grams['coconut-oil']).toBe(270);
});
