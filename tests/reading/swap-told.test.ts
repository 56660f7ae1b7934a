/** A fat that is left out, and what comes for it: told in one breath, in two, or with what nobody weighed. */
import { expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'olive 400 g, palm 300 g, coconut 250 g, NaOH 134 g, water 320 g. ';
const swapped = { 'olive-oil-virgin': 400, lard: 300, 'coconut-oil': 250, naoh: 134, water: 320 };

test.each([
  'I left the palm out and used the same weight of lard in its place.',
  "I don't buy palm any more, so I left it out altogether and used the same weight of lard in its place.",
  'Left the palm out. Used lard instead.',
  'I left the palm out. Lard took its place.',
  'I left the palm out, lard took its place.',
  'I left the palm out. Instead I used lard.',
  'I left the palm out and used just as much lard.',
  'I left the palm out and made up the weight with lard.',
  'Skipped the palm and took lard for it.',
  "I can't get palm here, so my 300 g is lard.",
])('weight for weight: %s', (told) => {
  const { grams, doubts } = potOf(list + told);
  expect([grams, doubts]).toEqual([swapped, []]);
});

test('what it says of its own weight counts', () => {
  expect(potOf(`${list}I left the palm out and used 250 g lard instead.`).grams).toEqual({ ...swapped, lard: 250 });
  expect(potOf(`${list}I left out the palm and put in 150 g more olive, so 550 g olive in all.`).grams).toEqual({
    'olive-oil-virgin': 550,
    'coconut-oil': 250,
    naoh: 134,
    water: 320,
  });
});

test.each([
  "I left the palm out, there's lard in there now.",
  'I left the palm out. Lard went in.',
  'I left the palm out and used more olive instead.',
  'No palm, 150 g more olive instead.',
  'I left the palm out and used the same weight of coconut in its place.',
  'The palm ran out halfway so I finished that weight off with cocoa butter.',
  'Wrong way round, sorry: the olive and the palm.',
  "I've swapped the two fats: olive 300, palm 400.",
  'Ugh, one of those is wrong, should say 350.',
  'Please take 4 off every figure here.',
  'There was going to be 50 g of shea butter too.',
])('is asked about: %s', (told) => expect(potOf(list + told).doubts).not.toEqual([]));

test.each([
  'I left the palm out. I love lard soap.',
  'I left the palm out. Next time I want lard in it.',
  'I left the palm out. My sister uses lard instead.',
])('what is only spoken of comes for nothing: %s', (told) => {
  const { grams, doubts } = potOf(list + told);
  expect([grams, doubts]).toEqual([{ 'olive-oil-virgin': 400, 'coconut-oil': 250, naoh: 134, water: 320 }, []]);
});

test.each([
  ['30 g of the olive ended up on the floor and I did not replace it.', 370],
  ['40 g of the olive went in the bin. I did not replace it.', 360],
  ['All 400 g of the olive went in the bin.', undefined],
])('what is lost of a fat is no more than it says: %s', (told, olive) => {
  const { grams, doubts } = potOf(list + told);
  expect([grams['olive-oil-virgin'], doubts]).toEqual([olive, []]);
});

test.each([
  ['I had 25 g jojoba weighed out too but it is still standing on the counter.', undefined],
  ['I had 25 g jojoba weighed out too but forgot it.', undefined],
  ['I had 25 g jojoba too but nearly forgot it.', 25],
])('what was weighed and left standing is not in: %s', (told, jojoba) => {
  const { grams, doubts } = potOf(list + told);
  expect([grams['jojoba-oil'], doubts]).toEqual([jojoba, []]);
});
