/** A part of a fat that is kept for after the cook. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const rest = '300 g coconut, 109 g NaOH, 260 g water';
const olive = (text: string) => {
  const { fats, after, doubts } = readRecipe(reader, text);
  const of = (list: typeof fats) => list.find(({ id }) => id === 'olive-oil-virgin')?.grams ?? 0;
  return [of(fats), of(after), doubts];
};

test.each([
  `500 g olive, ${rest}. I held 30 g of the olive back for after the cook.`,
  `Olive 500 g in all, but I hold 30 g of it back till after the cook. ${rest}.`,
  `500 g olive (30 g of it held back for after the cook), ${rest}.`,
  `500 g olive of which 30 g go in after the cook, ${rest}.`,
  `500 g olive, ${rest}. Of the olive, 30 g only go in after the cook.`,
  `500 g olive, ${rest}. Kept back 30 g of the olive oil and stirred it in after the cook.`,
  `500 g olive, ${rest}. 30 g of the olive is reserved for after the cook`,
  `500 g olive, ${rest}. I save 30 g of the olive to add after cook as superfat`,
  `${rest}, 500 g olive, 30 g of which after the cook.`,
])('comes out of what is cooked: %s', (text) => expect(olive(text)).toEqual([470, 30, []]));

test('half of it is half of its weight', () =>
  expect(olive(`60 g olive (half of it after the cook), ${rest}`)).toEqual([30, 30, []]));

test.each([
  `500 g olive, ${rest}. Plus another 30 g of olive after the cook.`,
  `500 g olive, ${rest}, and 30 g olive, which goes in after the cook.`,
  `olive 500 g\n${rest.replaceAll(', ', '\n')}\nAfter the cook:\nolive 30 g`,
])('comes on top where nothing says that it is kept: %s', (text) => expect(olive(text)).toEqual([500, 30, []]));

describe('the part that is cooked, and the other one that comes later', () => {
  const late = (said: string) => {
    const { fats, after, doubts } = readRecipe(
      reader,
      `Hot process. Lard 430 g, coconut oil 250 g, ${said} Lye 110 g, water 300 g.`,
    );
    const of = (list: typeof fats) => list.find(({ id }) => id === 'shea-butter')?.grams ?? 0;
    return { cooked: of(fats), after: of(after), doubts: doubts.map(({ id }) => id) };
  };
  test.each([
    'shea butter 120 g all told, but only 70 g of the shea cooks with the rest; the other 50 g I fold in when the cook is over.',
    'shea butter 120 g; 70 g of the shea cooks with the rest, the other 50 g I fold in when the cook is over.',
    'shea butter 120 g in all: 70 g of it cooks, the remaining 50 g I stir in after the cook.',
    'shea butter 120 g: 70 g was in the pot from the start; after the cook I added the other 50 g.',
  ])('%s', (said) => expect(late(said)).toEqual({ cooked: 70, after: 50, doubts: [] }));

  test.each(['shea butter 120 g: 70 g out of the old tub, the other 50 g from the new one.'])('%s: all of it', (said) =>
    expect(late(said)).toEqual({ cooked: 120, after: 0, doubts: [] }),
  );
});
