/** What was really weighed, drawn, filled up or added, told behind a list. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());

const list = '400 g olive, 250 g coconut, 150 g lard, NaOH 112 g, water 250 g.';
const base = { 'olive-oil-virgin': 400, 'coconut-oil': 250, lard: 150, naoh: 112, water: 250 };
const pot = (said: string) => potOf(`${list} ${said}`);

describe('a row told once more', () => {
  test.each<[string, Readonly<Record<string, number>>]>([
    ['I took more olive, 450 g.', { 'olive-oil-virgin': 450 }],
    ['Lye became 118 g because scale jumped.', { naoh: 118 }],
    ['In place of 112 g I weighed 118 g NaOH.', { naoh: 118 }],
    ['By mistake I put 122 g of NaOH.', { naoh: 122 }],
    ['Water I took 300 g because it was hot.', { water: 300 }],
    ['Water I gave less, 200 g.', { water: 200 }],
    ['The scale showed 270 for coconut and I let it.', { 'coconut-oil': 270 }],
    ['coconut slipped, 270 g went in.', { 'coconut-oil': 270 }],
    ['I was generous with coconut, 270 g.', { 'coconut-oil': 270 }],
    ['The coconut became 290 g, so I kept it.', { 'coconut-oil': 290 }],
    ['When I emptied the coconut jar it only gave me 180 g, so I carried on with that.', { 'coconut-oil': 180 }],
    ['Coconut was only 180 g in the jar, no more.', { 'coconut-oil': 180 }],
    ['Part of coconut fell on floor, 235 g left on scale.', { 'coconut-oil': 235 }],
  ])('%s', (said, now) => expect(pot(said)).toEqual({ grams: { ...base, ...now }, doubts: [] }));
  test.each(['Last time I used 450 g olive.', 'My aunt puts 122 g of NaOH.', 'Should I have put 122 g of NaOH?'])(
    'the list stays: %s',
    (said) => expect(pot(said).grams).toMatchObject(base),
  );
  test.each(['I put more NaOH, 100 g.', 'Coconut was only 20 g in the jar, no more.'])('asked: %s', (said) =>
    expect(pot(said).doubts).not.toEqual([]),
  );
  test('what was topped up is no loss', () =>
    expect(pot('Part of coconut fell on the floor, 235 g left, topped up again.').grams['coconut-oil']).not.toBe(235));
  test('the rest that is only thought of', () =>
    expect(
      pot('Only 310 g olive at home, should I fill the rest with sunflower?').grams['sunflower-oil'],
    ).toBeUndefined());
  test.each(['Olive was 310 g, rest sunflower.', 'Only 310 g of the olive came out, the rest is sunflower.'])(
    'the rest of a row without a weight of its own: %s',
    (said) =>
      expect(pot(said)).toEqual({ grams: { ...base, 'olive-oil-virgin': 310, 'sunflower-oil': 90 }, doubts: [] }),
  );
  test('50 g from the lard I did not use', () =>
    expect(pot('50 g from the lard I did not use.').doubts).not.toEqual([]));
});

test.each([
  'In the olive bottle only 310 g was left, so the missing 90 g I completed by sunflower oil.',
  'I had only 310 g olive, so 90 g sunflower came additionally.',
  'Olive there was 310 g only, other 90 is sunflower.',
  'There was only 310 g of olive. Sunflower 90 g made the difference.',
])('two weights that make up a row: %s', (said) =>
  expect(pot(said)).toEqual({ grams: { ...base, 'olive-oil-virgin': 310, 'sunflower-oil': 90 }, doubts: [] }),
);

test.each([
  'Olive was only 310 g, so 90 g more lard.',
  'I found just 310 g of olive. I made up the missing 90 g with extra lard, so 240 g lard altogether.',
])('more of another row: %s', (said) =>
  expect(pot(said)).toEqual({ grams: { ...base, 'olive-oil-virgin': 310, lard: 240 }, doubts: [] }),
);

describe('another so many grams', () => {
  const fats = '560 g rice bran oil, 240 g coconut oil';
  test.each([
    `${fats}, water 280 g. I weighed 90 g of NaOH, saw it is not enough and put another 22 g in.`,
    `First I weighed 90 g of NaOH into 280 g of water. Then I saw that I need more, so I weighed another 22 g and dissolved it also. ${fats}.`,
    `${fats}. There were only 90 g of lye left in the old tub, so I opened the new tub for another 22 g. The water was 280 g.`,
    `${fats}. Weighed 90 g lye into the water (280 g), saw I was short, weighed another 22 g and stirred that in as well. So 112 g all told.`,
  ])('%s', (post) => expect(potOf(post).grams).toMatchObject({ naoh: 112, water: 280 }));
  test('of two things nobody knows', () =>
    expect(potOf(`${fats}, 112 g NaOH in 280 g of water. It was too thick so I added 30 g more.`).doubts).not.toEqual(
      [],
    ));
  test.each(['Should I add another 10 g?', 'Then cooked for another 20 minutes.'])('none: %s', (said) =>
    expect(potOf(`${fats}, 112 g NaOH in 280 g of water. ${said}`).grams).toMatchObject({ naoh: 112, water: 280 }),
  );
  test('what was found in the fridge and thrown in', () =>
    expect(
      potOf(
        "600 g tallow, 200 g coconut, 112 g NaOH in 260 g water. My husband came in with another 100 g of tallow he'd found in the fridge and plopped it in.",
      ).grams,
    ).toMatchObject({ 'tallow-beef': 700 }));
});

describe('of what there was', () => {
  const fats = 'palm oil 350 g, olive oil 350 g, coconut oil 200 g. NaOH 127 g.';
  test.each<[string, string, number]>([
    ['I boiled the stout flat and from this 180 g came in the soap, and 100 g normal water.', 'beer', 180],
    ['There was half a litre of goat milk, I froze it, 250 g of this took the lye.', 'goat-milk', 250],
    ['I had a litre of goat milk, 250 g of it went in.', 'goat-milk', 250],
  ])('%s', (said, id, grams) => {
    const { liquids, doubts } = readRecipe(reader, `${fats} ${said}`);
    expect({ liquids: liquids.map((one) => [one.id, Math.round(one.grams)]), doubts }).toEqual({
      liquids: [[id, grams]],
      doubts: [],
    });
  });
  test('half of a solution', () =>
    expect(
      potOf(
        'i dissolved 200g naoh in 400g water but for this soap i took just the half of it, 300g of the solution. oils were 520g lard 180g coconut.',
      ).grams,
    ).toMatchObject({ naoh: 100, water: 200 }));
  test.each([
    'Stirred well, then poured exactly half of the mix back into the bucket for next week.',
    'Half of it went back into the bucket.',
  ])('asked: %s', (said) =>
    expect(potOf(`1000 g lard, 400 g coconut oil melted. ${said} 111 g NaOH and 250 g water.`).doubts).not.toEqual([]),
  );
});

test.each([
  ['560g sunflower', 'only now reading the bottle it is HIGH OLEIC sunflower', 'sunflower-oil-high-oleic'],
  ['560g palm', 'On the tub stands palm kernel, not palm.', 'palm-kernel-oil'],
  ['560g tallow', 'It is mutton tallow, from our sheep.', 'tallow-mutton'],
])('another kind: %s, %s', (row, said, id) =>
  expect(potOf(`${row}, 240g coconut, 114g naoh, 260g water. ${said}`).grams).toMatchObject({ [id]: 560 }),
);

test.each([
  'It is not high oleic sunflower.',
  'Is high oleic sunflower better?',
  'My sunflower bottle says good for frying.',
  'The bottle says high oleic sunflower is better for frying.',
])('the kind of the list: %s', (said) =>
  expect(potOf(`560g sunflower 240g coconut 114g naoh 260g water. ${said}`).grams).toMatchObject({
    'sunflower-oil': 560,
  }),
);

describe('an alkali that was not taken', () => {
  const fats = 'stearic acid 300 g and coconut 150 g and tallow 150 g.';
  test.each([
    'i was going to use sodium hydroxide but changed the plan, it is only KOH now, 133 g.',
    'First I wanted NaOH, but took KOH, 133 g.',
  ])('%s', (said) => expect(potOf(`${fats} ${said} water 320 g.`)).toMatchObject({ doubts: [], grams: { koh: 133 } }));
  test('whichever was shipped is asked about', () =>
    expect(potOf(`${fats} NaOH 90 g. They wrote that they had shipped KOH in place of NaOH.`).doubts).not.toEqual([]));
});

test('what was swept away does not come back', () =>
  expect(
    potOf(
      'I weighed 140 g lye beads, the cat jumped, and some went on the floor. I swept those away (gloves on!) and put the cup on the scale again: 133 g left, and I did not top up. These 133 g went in 300 g water and then in 550 g olive oil, 250 g palm oil, 200 g coconut oil.',
    ),
  ).toMatchObject({ doubts: [], grams: { naoh: 133, water: 300 } }));

test('one fat in lumps', () =>
  expect(
    potOf(
      'home rendered lard in two lumps, 380 g and 245 g, and both went in the pan. To that I added 175 g of coconut oil. Lye is 113 g and water is 250 g.',
    ),
  ).toMatchObject({ doubts: [], grams: { lard: 625, 'coconut-oil': 175 } }));
