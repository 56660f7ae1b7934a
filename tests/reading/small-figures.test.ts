/** Signs, shares and measures beside figures. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { heatQuestion } from '../../src/reading/heat/ask.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());

describe('shares of a weight', () => {
  const shared = { lard: 425, 'sunflower-oil': 170, 'coconut-oil': 255 };
  test.each([
    'Fat              %     (of 850 g)\nLard            50\nSunflower       20\nCoconut         30\n--\nNaOH   120 g\nWater  255 g',
    '| Fat | % of 850 g |\n|---|---|\n| Lard | 50 |\n| Sunflower | 20 |\n| Coconut | 30 |\n\nNaOH 120 g\nWater 255 g',
    'shares of 850 g: lard 50, sunflower 20, coconut 30. NaOH 120 g, water 255 g',
    'fat phase, m = 850 g\n lard 50 %\n sunflower 20 %\n coconut 30 %\nNaOH 120 g\nH2O 255 g',
    'm(fats) = 850 g\n lard 50 %\n sunflower 20 %\n coconut 30 %\nm(NaOH) = 120 g\nm(H2O) = 255 g',
  ])('%s', (post) => expect(potOf(post).grams).toMatchObject({ ...shared, naoh: 120, water: 255 }));
});

// US customary cup: 236.588 ml
test.each([
  'water was 1 US cup plus another half US cup',
  'water 1 cup + 1/2 cup',
  'water: one cup and then half a cup',
  '1 cup plus 8 tbsp water',
])('two measures: %s', (said) =>
  expect(Math.round(potOf(`12 oz coconut, 20 oz olive, 4.65 oz lye, ${said}`).grams['water'] ?? 0)).toBe(355),
);

test.each(['Water 350g altogether.', 'Water 350 g in all. ok?', 'water 350 in total'])('%s', (said) =>
  expect(potOf(`300g coconut 300g palm 400g olive. 145 g lye. ${said}`).grams).toMatchObject({ naoh: 145, water: 350 }),
);

test.each(['I had the lye already mixed, 112 g in 210 g of water.', 'Had the lye premixed, 112 g with 210 g water.'])(
  'dry lye in its water: %s',
  (said) =>
    expect(potOf(`500 g sunflower, 300 g coconut. ${said}`)).toMatchObject({
      doubts: [],
      grams: { naoh: 112, water: 210 },
    }),
);

test.each([
  'lye solution 50 % (half/half by weight): 248 g\nExtra water: 90 g',
  'lye solution half/half: 248 g\nExtra water: 90 g',
])('half and half of a lye is no cream: %s', (said) =>
  expect(potOf(`Olive 480 g\nCoconut 220 g\nPalm 200 g\n${said}`).grams).toMatchObject({ naoh: 124, water: 214 }),
);

test.each(["and it's the 90 % sort", 'and it is the 90 % stuff', '90 % quality'])('how pure: %s', (said) =>
  expect(potOf(`KOH, 155 g, ${said}. linseed oil 600 g, sunflower oil 150 g. Water 450 g.`)).toMatchObject({
    doubts: [],
  }),
);

test.each([
  'potassium hydroxide how many grams for 600 g olive oil and 150 g coconut oil, zero superfat',
  'lye how many grams for 600 g olive and 150 g coconut?',
])('asked of fats, and no conversion: %s', (post) =>
  expect(potOf(post).grams).toMatchObject({ 'olive-oil-virgin': 600, 'coconut-oil': 150 }),
);

test('a weight behind an alkali that its sentence names', () =>
  expect(
    potOf(
      '500 g of tallow, 200 g of coconut oil and 110 g palm oil. Palm oil is not cheap. Caustic soda I have weighed 112 g, and 260 g water.',
    ).grams,
  ).toMatchObject({ 'palm-oil': 110, naoh: 112 }));

test('a greeting is no oil', () =>
  expect(potOf('Selam, olive oil 2 kilo, coconut oil half kilo, caustic soda 340 gr, water 750 gr.').doubts).toEqual(
    [],
  ));

test.each([
  'Pot one, hers, was 500 g coconut and 87 g lye and it is fine. Pot two is mine and I am worried only for this one: 450 g tallow, 200 g coconut oil, 95 g lye, 240 g water.',
  'My first pot: 500 g coconut, 87 g lye. My second pot: 450 g tallow, 200 g coconut oil, 95 g lye, 240 g water. The first is ok. Is the second one ok too?',
])('the pot that is worried about: %s', (post) =>
  expect(potOf(post)).toMatchObject({ doubts: [], grams: { 'tallow-beef': 450, 'coconut-oil': 200, naoh: 95 } }),
);

test('a measure of something else is no water', () =>
  expect(
    Math.round(
      potOf('12 oz coconut, 20 oz olive, 4.65 oz lye, 1 cup water and 2 tablespoons honey').grams['water'] ?? 0,
    ),
  ).toBe(237));

test.each<[string, string | null]>([
  ['What does my lye look like?', null],
  ['What stage is it at?', 'cook'],
])('the cook is asked about or not: %s', (asks, question) => {
  const text = `Into the pot: 550 g tallow, 250 g olive oil, 200 g coconut oil. Lye was 140 g NaOH in 340 g water. Cooked it for an hour and a half, no zap on the tongue. ${asks}`;
  expect(heatQuestion(reader, text, readRecipe(reader, text))).toBe(question);
});

test('a superfat that has its figure is no fat after the cook', () =>
  expect(
    potOf('Was going for 8% superfat with 600 g lard + 400 g coconut oil and 145 g NaOH (water 330 g). Did I hit it?'),
  ).toEqual({ doubts: [], grams: { lard: 600, 'coconut-oil': 400, naoh: 145, water: 330 } }));

test('litres by another sign', () =>
  expect(potOf('2 kg olive oil and 0,5 kg cottonseed oil, caustic soda 319 gr, water 0,75 lt.').grams).toMatchObject({
    water: 750,
  }));
