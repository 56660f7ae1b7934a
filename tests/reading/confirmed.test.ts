/** A figure that somebody doubts is settled by the answer. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const chat = (doubt: string, answer: string): string =>
  `Ann: olive 500 g, coconut 200 g, lye 96 g, water 200 g\nTom: ${doubt}\nAnn: ${answer}\nTom: good\nAnn: is the lye ok?`;
const listed = { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 96, water: 200 };

describe('another figure is remembered', () => {
  test.each([
    ['200 coconut? You said 250 yesterday', "yes, 250 g, you're right. I mistyped."],
    ["isn't that little coconut? Wasn't it 250?", 'true, it was 250 g.'],
    ['200 coconut? Yesterday on the phone you had 250', "oh you're right, 250 g it is, the 200 was before"],
    ["200 coconut was too drying, didn't we say 250 g?", '250 g, my fault'],
  ])('and agreed to: %s %s', (doubt, answer) =>
    expect(potOf(chat(doubt, answer))).toEqual({ grams: { ...listed, 'coconut-oil': 250 }, doubts: [] }),
  );
  test('of the lye', () =>
    expect(potOf(chat('did you say 96 lye? I remember 100.', "100 g, sorry, you're right"))).toEqual({
      grams: { ...listed, naoh: 100 },
      doubts: [],
    }));
  test('and turned down', () =>
    expect(potOf(chat('200 coconut? You said 250 yesterday', 'no, 200 g it is. 250 was last week.'))).toEqual({
      grams: listed,
      doubts: [],
    }));
  test.each([
    ['200 coconut? I thought it was 250', 'hm, maybe 250, not sure'],
    ['200 coconut? I thought it was 250', 'no, 230 g'],
  ])('and left open: %s %s', (doubt, answer) => expect(potOf(chat(doubt, answer)).doubts).not.toEqual([]));
});

test.each([
  ['at 30 degrees? I had 40', 'yes, 40'],
  ['the olive is much. I had 400', 'yes, but mine is 500 g'],
  ['my coconut soap had 250 coconut', 'ok, 250 is a lot'],
  ['how much did the coconut cost, was it 250?', 'yes, 250'],
])('no doubt of the list: %s', (doubt, answer) =>
  expect(potOf(chat(doubt, answer))).toEqual({ grams: listed, doubts: [] }),
);
