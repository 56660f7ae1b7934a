/** Clauses that tell how many times of what is written went in. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const pot = (text: string): readonly (number | null | string)[] => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  return doubts.length > 0
    ? ['asked']
    : [...fats.map(({ grams }) => grams), ...alkali.map(({ grams }) => grams), waterGrams];
};
const card = '400 g olive, 200 g coconut, 84 g lye, 190 g water';

describe('of all that is written', () => {
  test.each([
    ['I made three times the card yesterday.', [1200, 600, 252, 570]],
    ['Everything on the card went in twice.', [800, 400, 168, 380]],
    ['Halved all of that, water included.', [200, 100, 42, 95]],
    ['Two and a half times that for the big mould, lye and water as well.', [1000, 500, 210, 475]],
    ['On Saturday I made it two and a half times, everything multiplied, lye and water too.', [1000, 500, 210, 475]],
    ['I used half of this card because the mould is small.', [200, 100, 42, 95]],
  ])('%s', (said, grams) => expect(pot(`Card: ${card}. ${said} Lye ok?`)).toEqual(grams));

  test('told over the list', () => {
    expect(
      pot('I weighed out exactly half of this, of everything:\n\npalm 500 g, coconut 300 g, NaOH 119 g, water 260 g'),
    ).toEqual([250, 150, 59.5, 130]);
    const list = '- 400 g olive\n- 300 g palm\n- 300 g coconut\n- 144 g lye\n- 320 g water';
    expect(
      pot(`I make one and a half times this:\n\n${list}\n\n(all of it times 1.5, lye and water as well).`),
    ).toEqual([600, 450, 450, 216, 480]);
    expect(pot('How much lye for a third of this, 6 % superfat? Sunflower 900 g, coconut 600 g.')).toEqual([
      300,
      200,
      null,
    ]);
  });
});

describe('of each its own', () => {
  test.each([
    ['I doubled the oils. Lye and water I left as they were.', [800, 400, 84, 190]],
    ['Oils twice, lye twice, water once.', [800, 400, 168, 190]],
    [
      'I always make three times the card. Yesterday the coconut ran out so that one only went in twice the card. Olive, lye and water three times as usual.',
      [1200, 400, 252, 570],
    ],
    ['So fats twice that, lye and water just the once.', [800, 400, 84, 190]],
    ['Everything halved, except the lye, which I forgot to halve.', [200, 100, 84, 95]],
    [
      'I halved both oils and then without thinking dumped in the lye and the water at the full amount.',
      [200, 100, 84, 190],
    ],
    ['Twice the water because it was thick.', [400, 200, 84, 380]],
  ])('%s', (said, grams) => expect(pot(`The card: ${card}. ${said} Lye ok?`)).toEqual(grams));
});

describe('how often, of another pot, or not done', () => {
  test.each([
    'I made it twice last year.',
    'I weighed everything twice.',
    'I banged it on the floor three times.',
    'I thought of doubling it.',
    'I got this wrong twice.',
    'It is for the 9 x 3.5 in mould.',
    'I rendered the lard twice for the other batch.',
    'In June I did everything times two. Is this one right?',
  ])('%s', (said) => expect(pot(`Card: ${card}. ${said} Lye ok?`)).toEqual([400, 200, 84, 190]));
});

describe('what is told behind was weighed for what was made', () => {
  const oils = 'The card has olive 700 g, coconut 300 g, palm 200 g';
  test.each([
    [`${oils} and I made half of those oils. The 84 g lye and 190 g water are what went in.`, [350, 150, 100, 84, 190]],
    [`${oils}. I took half of each. Lye 84 g, water 190 g.`, [350, 150, 100, 84, 190]],
    // 100 g fits 600 g of fats as well as 900 g
    ['The card has olive 400 g, coconut 200 g. I took one and a half times each. Lye 100 g, water 220 g.', ['asked']],
    [`${oils}, lye 168 g. I took half of each oil. Lye 84 g, water 190 g.`, ['asked']],
  ])('%s', (text, grams) => expect(pot(`${text} Ok?`)).toEqual(grams));
});

describe('asked', () => {
  test.each([
    'My friend always makes three times this. Is hers right?',
    "I've doubled all of it already above.",
    'Everything halved, the lye I poured in completely.',
    'Two and a half times that, the lye by the book.',
    'I tripled the olive.',
    'I stirred everything twice.',
    'I put in every number of One Loaf doubled.',
  ])('%s', (said) => expect(pot(`Card: ${card}. ${said} Lye ok?`)).toEqual(['asked']));

  test('times that stand behind the last amount', () =>
    expect(pot(`${card} - times 3 for the fair. Is that lye right?`)).toEqual(['asked']));
});

describe('of one bar or mould', () => {
  test.each([
    [
      'One bar of mine = 60 g olive, 25 g coconut. I melted enough for twelve bars. For the lot I dissolved 147 g lye in 300 g water.',
      [720, 300, 147, 300],
    ],
    [
      'Each mould takes 300 g olive and 100 g coconut. I filled three moulds. For all three I had 165 g lye and 380 g water.',
      [900, 300, 165, 380],
    ],
    ['One bar = 60 g olive, 25 g coconut. I want to make twelve bars. How much lye?', [720, 300, null]],
  ])('%s', (text, grams) => expect(pot(text)).toEqual(grams));
});
