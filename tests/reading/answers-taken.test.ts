/** Answers that are quoted by name, and what was taken of each. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const rosi = '> Rosi: 700 g olive and 300 g coconut, you want 143 g NaOH\n';
const pot = { 'olive-oil-virgin': 700, 'coconut-oil': 300, naoh: 139, water: 320 };

describe('the fats of one and the lye of another', () => {
  test.each([
    `${rosi}>> Ute: too much for my skin, I do 139 g with that\n\nThanks both! I took Rosi's oils exactly as she wrote and Ute's 139 g, with 320 g water. Does that work out?`,
    `${rosi}> Ute: too much for my skin, I do 139 g with that\n\nI took Rosi's oils and Ute's lye, with 320 g water. Does that work out?`,
    `${rosi}\nThanks! I took Rosi's oils and 139 g of lye, with 320 g water. Does that work out?`,
    "> Anna: 700 g olive and 300 g coconut, NaOH 143 g\n> Bert: I'd take 139 g\n\nI went with Anna's oils but Bert's 139 g of lye, 320 g water. ok?",
  ])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));
});

test('an answer that is asked about stands as it is', () =>
  expect(
    potOf(`> Rosi: 700 g olive and 300 g coconut, 143 g NaOH, 320 g water\n\nThanks Rosi! Is that right?`),
  ).toEqual({
    grams: { ...pot, naoh: 143 },
    doubts: [],
  }));

test.each([
  `${rosi}> Ute: I do 139 g or 137 g with that\n\nI took Rosi's oils and Ute's lye, with 320 g water. Does that work out?`,
  `${rosi}> Ute: I do 139 g with that\n\nShould I take Rosi's oils and Ute's 139 g, with 320 g water?`,
])('asked: %s', (text) => expect(potOf(text).doubts).not.toEqual([]));
