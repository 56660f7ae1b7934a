/** A part or a multiple of what was listed: read where it is plain, asked where no rule hears it, and nothing beside it. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = 'The card: 400 g olive oil, 200 g coconut oil, 92 g lye, 190 g water. ';
const oliveAfter = (said: string): number | undefined => {
  const { grams, doubts } = potOf(`${list}${said} Is the lye ok?`);
  return doubts.length === 0 ? grams['olive-oil-virgin'] : undefined;
};

describe('all of it so many times', () => {
  test.each([
    ['I made exactly a quarter of the card, every line of it.', 100],
    ['I multiplied every single line by one and a half for the big mould.', 600],
    ['I only need 3 bars, so a third of that.', 133],
    ['I scaled it all down to 60 % for my small tin.', 240],
    ['I took two thirds of every line.', 267],
    ['We cut every amount to a third.', 133],
    ['I upped the whole list by a half.', 600],
    ["I'm making one and a half times the recipe.", 600],
    ['I quartered everything.', 100],
    ['I made three quarters of the card, everything times 0.75.', 300],
  ])('%s', (said, grams) => expect(oliveAfter(said)).toBe(grams));

  test.each([
    'I made half a recipe.',
    'I made a recipe and a half.',
    'I need only half, my mould is small.',
    'Everything was tripled.',
    'I poured two batches of this at once.',
    'I took three times the coconut.',
    'I used twice the lye.',
    'I made it at half size.',
    'My batch is one third of hers.',
  ])('is asked about: %s', (said) => expect(oliveAfter(said)).toBeUndefined());

  test.each([
    'I poured a third of the batter into the small mould.',
    'I cut each bar in half.',
    'I stirred twice and it took half an hour.',
    'The price is double of last year.',
    'I diluted half of the paste.',
    'My sister makes double of it.',
    'Last time I made half of the card, this time all of it.',
    'I doubled the scent.',
    "That's twice as much coconut as castor.",
    'My third batch ever!',
    'The mould is double the size of the batch.',
    'I soap twice a month.',
  ])('but not: %s', (said) => expect(oliveAfter(said)).toBe(400));
});

describe('what was left whole', () => {
  const half = { 'olive-oil-virgin': 200, naoh: 92, water: 95 };
  test.each([
    'I made half the card but put in the full lye.',
    'I halved everything except the lye.',
    'I made half of the card. The lye I forgot to halve!',
    'I was making half. I halved the oils, I halved the water, and then I tipped in all 92 g of the lye.',
  ])('%s', (said) => expect(potOf(`${list}${said} Bad?`)).toMatchObject({ grams: half, doubts: [] }));
  test.each([
    'I made half of the card, the lye as well.',
    'I made half of it, all the lye dissolved well.',
    'I halved everything, oils, water and lye.',
  ])('but not: %s', (said) => expect(potOf(`${list}${said} Ok?`)).toMatchObject({ grams: { naoh: 46 }, doubts: [] }));
  test('told of everything and of the lye', () =>
    expect(potOf(`${list}Everything halved, only the lye I took whole. Bad?`)).toMatchObject({
      grams: half,
      doubts: [],
    }));
});

describe('one fat so many times', () => {
  test.each([
    [
      'Last time: 400 g olive oil, 200 g coconut oil, 86 g lye, 200 g water. This time I left the olive as it was and doubled the coconut. Used 121 g lye and 270 g water. Enough?',
      400,
      121,
    ],
    [
      'Last time: 400 g olive oil, 200 g coconut oil, 86 g lye, 200 g water. Today I took one and a half times the coconut, and 101 g lye in 230 g water. Ok?',
      300,
      101,
    ],
    [`${list}I doubled the coconut, everything else as on the card. Ok?`, 400, 92],
    [`${list}The two oils I doubled. The lye I weighed once, and that single lot is all that went in. Ok?`, 400, 92],
  ])('%s', (text, coconut, naoh) =>
    expect(potOf(text)).toMatchObject({ grams: { 'coconut-oil': coconut, naoh }, doubts: [] }),
  );
  test.each([
    'I made ten percent more. Ok?',
    'I made a fifth more. Ok?',
    'The oils I doubled. Ok?',
    'I doubled the coconut. Ok?',
    'I took three times the coconut. Ok?',
  ])('is asked about: %s', (said) => expect(potOf(list + said).doubts).toEqual(['corrected']));
  test.each([
    "Last year I doubled the coconut, today it's as on the card. Ok?",
    'The coconut is half of the olive. Ok?',
  ])('but not: %s', (said) => expect(potOf(list + said)).toMatchObject({ grams: { 'coconut-oil': 200 }, doubts: [] }));
});

describe('told of one mould, and of all', () => {
  test.each([
    [
      "Three identical moulds to fill. Each one takes 420 g olive oil and 180 g coconut oil. I'll make it in one pot. How much NaOH for all three together at 6 % superfat?",
      { 'olive-oil-virgin': 1260, 'coconut-oil': 540 },
    ],
    [
      'One bar = 60 g tallow, 30 g coconut oil. Making ten bars. For the whole ten I weighed 132 g lye and 300 g water. Will that do for ten?',
      { 'tallow-beef': 600, 'coconut-oil': 300, naoh: 132, water: 300 },
    ],
    [
      'Six-hole silicone mould. Per hole I reckon 80 g olive, 30 g coconut, 10 g castor. Made enough for all six in one go. The lye is for the whole lot, not per hole: 100 g NaOH in 210 g water. Right?',
      { 'olive-oil-virgin': 480, 'coconut-oil': 180, 'castor-oil': 60, naoh: 100, water: 210 },
    ],
    [
      'Mould with 8 holes, per hole 60 g lard and 20 g coconut. Lye for all eight: 92 g in 190 g water. ok?',
      { lard: 480, 'coconut-oil': 160, naoh: 92, water: 190 },
    ],
    [
      'Two moulds, each gets 300 g lard and 150 g coconut oil. Lye for both together: 126 g, in 280 g water. Ok?',
      { lard: 600, 'coconut-oil': 300, naoh: 126, water: 280 },
    ],
    [
      'I have four tins. Per tin 250 g olive oil and 100 g coconut oil. What lye do I need for all four, 5 % superfat?',
      { 'olive-oil-virgin': 1000, 'coconut-oil': 400 },
    ],
    [
      'One bar is 60 g tallow, 30 g coconut oil. I poured 10 of them. The lye, for all ten together, was 132 g and the water for all ten 300 g. Ok?',
      { 'tallow-beef': 600, 'coconut-oil': 300, naoh: 132, water: 300 },
    ],
    [
      'Per mould:\n- 300 g lard\n- 150 g coconut oil\nI filled two moulds from one pot. Lye for the whole pot: 126 g. Water for the whole pot: 280 g.\nOk?',
      { lard: 600, 'coconut-oil': 300, naoh: 126, water: 280 },
    ],
    [
      'Each loaf: 300 g lard, 100 g coconut. I made four loaves. For all four I used 230 g lye and 480 g water. Ok?',
      { lard: 1200, 'coconut-oil': 400, naoh: 230, water: 480 },
    ],
    [
      'There will be three tables, and every table makes the same soap: 200 g olive, 150 g lard, 100 g coconut. How much NaOH in total for all three tables together?',
      { 'olive-oil-virgin': 600, lard: 450, 'coconut-oil': 300 },
    ],
    [
      'Six groups. Each group weighed 100 g olive, 40 g coconut, 20 g NaOH and 45 g water. I had all six lots poured together into one big pot. Ok?',
      { 'olive-oil-virgin': 600, 'coconut-oil': 240, naoh: 120, water: 270 },
    ],
    [
      'Three pots, each has 300 g olive, 100 g coconut, 55 g lye and 120 g water. I poured all three together into one bowl. Ok?',
      { 'olive-oil-virgin': 900, 'coconut-oil': 300, naoh: 165, water: 360 },
    ],
    [
      'Each group gets 200 g olive and 100 g coconut. How much lye for all 5 groups?',
      { 'olive-oil-virgin': 1000, 'coconut-oil': 500 },
    ],
    [
      'Each table makes 200 g olive and 100 g coconut. There are four tables. How much lye per table?',
      { 'olive-oil-virgin': 200, 'coconut-oil': 100 },
    ],
    [
      'Each group of three pupils gets 200 g olive and 100 g coconut. How much lye does a group need?',
      { 'olive-oil-virgin': 200, 'coconut-oil': 100 },
    ],
  ])('%s', (text, grams) => expect(potOf(text)).toMatchObject({ grams, doubts: [] }));
  test.each([
    "Two moulds, 400 g olive oil and 200 g coconut oil in each. Under it lye 130 g, water 270 g. I don't know if I noted the lye for one mould or for the two of them. Ok?",
    'Two moulds, 400 g olive oil and 200 g coconut oil in each. Lye 172 g, water 400 g. Ok?',
  ])('is asked about: %s', (text) => expect(potOf(text).doubts).toEqual(['corrected']));
  test.each([
    'Each mould takes 400 g olive oil and 200 g coconut oil with 86 g lye and 170 g water. I fill three. Ok?',
    'Two moulds, 400 g olive oil and 200 g coconut oil in each. Lye 86 g, water 200 g. Ok?',
    '400 g olive oil, 200 g coconut oil. Lye for all of it: 86 g. Water for all of it: 200 g. I filled two moulds. Ok?',
    '400 g olive oil, 200 g coconut oil, 86 g lye, 200 g water. I fill two moulds, each takes 440 g of it. Ok?',
    'One batch = 20 bars, hence 10 batches.\nOne batch:\n400 g olive oil\n200 g coconut oil\nFor one batch, what sodium hydroxide do we need?',
    'Each of my 4 groups has one pot: 400 g olive oil, 200 g coconut oil. How much lye for one pot?',
  ])('but not: %s', (text) => expect(potOf(text)).toMatchObject({ grams: { 'olive-oil-virgin': 400 }, doubts: [] }));
});

describe('lye by the weight of the fats', () => {
  test.each([
    'Rule on the card: per 1 kg of oils take 137 g lye and 300 g water. I have 1.6 kg oils (1 kg lard, 400 g olive oil, 200 g coconut oil) so I took 1.6 times of both. Ok?',
    'Lard 1 kg, olive oil 400 g, coconut oil 200 g. For each kilo of fat 137 g lye and 300 g water. Ok?',
    'Lye: 137 g per kg of oils. Lard 1 kg, olive oil 400 g, coconut oil 200 g, water 480 g. Ok?',
  ])('%s', (text) => expect(potOf(text)).toMatchObject({ grams: { naoh: 219, water: 480 }, doubts: [] }));
  test.each([
    'Lard 1 kg, olive oil 400 g, coconut oil 200 g, 219 g lye, 480 g water. The rule was 137 g per kilo. Ok?',
    'Lard 1 kg, olive oil 400 g, coconut oil 200 g, 219 g lye, 480 g water. Scent 20 g per kilo of oils. Ok?',
  ])('but not: %s', (text) => expect(potOf(text)).toMatchObject({ grams: { naoh: 219, water: 480 }, doubts: [] }));
});

describe('two pots that became one', () => {
  test.each([
    [
      'Two pots on, one with 500 g palm oil and 200 g coconut oil, the other with 400 g olive oil and 200 g coconut oil. In the end I tipped both pots into one, one lot of lye for everything: 188 g in 410 g water. Enough?',
      { 'coconut-oil': 400, naoh: 188 },
    ],
    [
      'One bowl has 300 g lard and 100 g coconut oil, the other 200 g lard and 150 g olive oil. Both went into one pot. Lye 104 g, water 230 g. Ok?',
      { lard: 500, 'coconut-oil': 100 },
    ],
  ])('%s', (text, grams) => expect(potOf(text)).toMatchObject({ grams, doubts: [] }));
});

describe('a size told behind the rows of its own sentence', () => {
  test('is asked about', () =>
    expect(
      potOf('The card is 600 g lard and 240 g coconut, and I made ten percent more. Lye 128 g, water 300 g. Ok?')
        .doubts,
    ).toEqual(['corrected']));
  test('a part of a jar is none', () =>
    expect(
      potOf('Olive 700 g, lye 174 g, water 400 g. I bought a 1 kg jar of coconut and put in half of it. Ok?'),
    ).toMatchObject({ grams: { 'coconut-oil': 500 }, doubts: [] }));
});
