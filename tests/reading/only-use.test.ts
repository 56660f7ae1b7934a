/** What is there and how much of it goes in; what is missing and put in then; all the water together. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

describe('of what is there, so much', () => {
  test.each([
    "The coconut bucket has 700 g in it but I'll only use 500 g, and 500 g sunflower of the 1 kg bottle. How much KOH?",
    'The coconut jar has 700 g left but I only want to use 500 g. 500 g sunflower. How much KOH?',
    'I have 700 g of coconut in the tub and will take just 500 g, plus 500 g sunflower out of the 1 kg bottle. How much KOH?',
    'I have 700 g coconut but I only use 500 g, plus 500 g sunflower. How much KOH?',
    "There's 700 g coconut in the bucket, I'll use 500 g of it. 500 g sunflower. How much KOH?",
  ])('%s', (text) =>
    expect(potOf(text)).toEqual({ doubts: [], grams: { 'coconut-oil': 500, 'sunflower-oil': 500, water: 0 } }),
  );
  test.each([
    'I have 700 g of coconut and used 500 g sunflower. How much KOH?',
    'I have 700 g coconut and will use 500 g sunflower. How much KOH?',
  ])('of something else: %s', (text) =>
    expect(potOf(text).grams).toEqual({ 'coconut-oil': 700, 'sunflower-oil': 500, water: 0 }),
  );
});

describe('lye that was missing', () => {
  const rest = 'Olive 500 g, coconut 300 g. All the water together was 260 g. Ok?';
  const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 300, naoh: 115, water: 260 };
  test.each([
    'I put in only 98 g of lye, noticed at the end because there was 17 g still missing, so I dissolved another 17 g and stirred that in as well.',
    'I put in 98 g of lye first, 17 g were missing so I added another 17 g.',
  ])('is put in: %s', (said) => expect(potOf(`${said} ${rest}`)).toEqual({ doubts: [], grams: pot }));
  test('or not', () => expect(potOf(`98 g of lye. 17 g missing? ${rest}`).doubts).not.toEqual([]));
});

test.each([
  'All the water together was 260 g.',
  'The water altogether was 260 g.',
  'Water in total: 260 g.',
  'Water: total 260 g.',
])('the water is not with the lye: %s', (said) =>
  expect(potOf(`Olive 500 g, coconut 300 g, 115 g lye. ${said} Ok?`).grams['water']).toBe(260),
);

test('what went elsewhere is none of it', () =>
  expect(potOf('had 500g coconut oil but used 40g for hair so thats 460g. plus 700g lard. lye wanted').grams).toEqual({
    'coconut-oil': 460,
    lard: 700,
    water: 0,
  }));
