/** A list told once, and a pot that holds so many times of it. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const lard = (said: string): number | undefined => {
  const { fats, doubts } = readRecipe(reader, `The card: lard 400 g, coconut 150 g, lye 78 g, water 180 g. ${said}`);
  return doubts.length === 0 ? fats.find(({ id }) => id === 'lard')?.grams : undefined;
};

describe('what is in the pot', () => {
  test.each([
    ['In my pot right now is exactly double of every line on that card, lye and water too. Ok?', 800],
    ["What's in the pot is half of each line.", 200],
    ['Last night I did two loaves in one pot: every single number times two, lye and water as well.', 800],
    ['The fair is in August, so last night I did two in one pot: every single number in One Loaf times two.', 800],
    ['I made three quarters of the card, everything times 0.75. Ok?', 300],
    ['Mine was three times each number.', 1200],
  ])('%s', (said, grams) => expect(lard(said)).toBe(grams));
});

describe('is as it was told', () => {
  test.each([
    'Every number twice checked. Ok?',
    'I weighed everything twice.',
    'My sister made double of every line. Is mine fine?',
    'In the pot there was twice as much water as usual last year.',
    'Mine is double the size of hers. Ok?',
    'The mould would hold twice as much.',
  ])('%s', (said) => expect(lard(said)).toBe(400));
});

test.each([
  'What is in the pot is One Loaf twice over. Please check it.',
  'In the mould is One Loaf times two.',
  'I put in every number of One Loaf doubled.',
  'The fair is in August, so last night I did every number in One Loaf times two. She wanted them 80 g each, they are nearer 110 g.',
])('is asked about: %s', (said) => expect(lard(said)).toBeUndefined());

test('other figures stand behind, of nothing that goes in: asked', () =>
  expect(
    lard('Last night I did every single number times two, lye and water as well. She wants them 80 g each, not 110 g.'),
  ).toBeUndefined());

const pot = (text: string): readonly unknown[] => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  return doubts.length > 0
    ? ['asked']
    : [fats.find(({ id }) => id === 'lard')?.grams, alkali[0]?.grams, Math.round(waterGrams ?? 0)];
};
const card = 'lard 400 g, coconut 150 g, lye 78 g, water 180 g';

test.each([
  [`${card}. I doubled everything, but for water I only took 300 g. Ok?`, [800, 156, 300]],
  [`${card}. I multiplied all of it by one and a half, except the water, which I left at 200 g. Ok?`, [600, 117, 200]],
  [`${card}. I doubled it all but used only 300 g of water. Ok?`, [800, 156, 300]],
  [`${card}. I doubled everything except the lye, which I left at 140 g. Ok?`, [800, 140, 360]],
  [
    `I doubled this one: ${card}. Doubled the oils and doubled the lye, but for water I took only 300 g. Ok?`,
    [800, 156, 300],
  ],
  [`We tripled this recipe: ${card}. Ok?`, [1200, 234, 540]],
  [`${card}. I made it double yesterday, nothing else changed. Is the double batch alright?`, [800, 156, 360]],
  [`My mould only takes 275 g of oils. The full recipe is ${card}. I made half of it. Ok?`, [200, 39, 90]],
])('with its own water or lye: %s', (text, expected) => expect(pot(text)).toEqual(expected));

test.each([
  `${card}. I made it double strength. Ok?`,
  `${card}. I made it double yesterday, today it is as it stands. Ok?`,
  `I doubled this one last year: ${card}. Ok?`,
])('is as it is listed: %s', (text) => expect(pot(text)).toEqual([400, 78, 180]));

test.each([
  `I doubled this: ${card}. Ok?`,
  `I doubled this one: ${card}. These are the doubled amounts. Ok?`,
  `${card}. I doubled it all, except the coconut, which I left at 200 g. Ok?`,
])('of which size it is, is asked: %s', (text) => expect(pot(text)).toEqual(['asked']));

test.each([
  ['I needed 20 bars so I multiplied the lot by 2.5 and that is what I poured. Ok?', 1000],
  ['I scaled everything up by 2 and this is in the pot. Ok?', 800],
  ['I filled three moulds and mixed it in one big pot, three times everything. Ok?', 1200],
  ["It's a huge tray: two and a half times everything. Ok?", 1000],
  ['My mould is small, half of everything. Ok?', 200],
  ['My aunt makes big pots, three times everything. Is mine ok?', 400],
  ["Next week I'll fill three moulds, three times everything. Ok?", 400],
])('how often it was made stands beside what was done: %s', (said, grams) => expect(lard(said)).toBe(grams));

test.each([
  'I multiplied the lot by 2.5 and a bit. Ok?',
  "I doubled it all and that's what's on the list. Ok?",
  'I weigh slowly, twice everything. Ok?',
])('and this is asked about: %s', (said) => expect(lard(said)).toBeUndefined());
