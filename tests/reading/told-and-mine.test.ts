/** What others say and what the writer took; a part of a list that is told above it; plan and pot; arrows. */
import { describe, expect, test } from 'vitest';
import { potOf } from './pot.ts';

const list = '500 g olive, 300 g coconut, 270 g water.';
const lye = (said: string) => {
  const { grams, doubts } = potOf(`${list} ${said} Ok?`);
  return doubts.length > 0 ? 'asked' : grams['naoh'];
};

test.each<[string, number | string]>([
  ['The card said 116 g lye and I misread it and weighed 121 g and it is all in there already.', 121],
  ['My sister swears by 150 g of lye for this and the lady downstairs says 120. I put in 138.', 138],
  ['My book says 116 g lye, my aunt says 121 g, and I took 118 g.', 118],
  ['The recipe has 116 g lye. We went with 110 g to be safe.', 110],
  ['The card said 116 g lye and I used 100 g clay.', 116],
  ['The card said 116 g lye and last time I used 121 g.', 116],
  ['Lye 112 g. The card said 116 g lye and I weighed 112 g.', 112],
  ['The card said 116 g lye and I nearly put in 121 g.', 'asked'],
  ['The card said 116 g lye and I weighed 10 g more.', 'asked'],
])('%s', (said, want) => expect(lye(said)).toBe(want));

const below = '\n- 900 g lard\n- 300 g coconut oil\n- 171 g sodium hydroxide\n- 390 g water\nOk?';
const lard = (said: string) => {
  const { grams, doubts } = potOf(said + below);
  return doubts.length > 0 ? 'asked' : grams['lard'];
};

describe('told above its list', () => {
  test.each<[string, number | string]>([
    ['I only made two thirds of this, lye and water too:', 600],
    ['I made half of this, everything halved:', 450],
    ['I made three quarters of the following recipe, lye included:', 675],
    ['Made one and a half times this, lye and water as well:', 1350],
    ['We made half of the recipe below, lye and water as well', 450],
    ['I made half of this', 450],
    ['I only made two thirds of this, lye halved:', 'asked'],
    ['I only made two thirds of this, but all the lye:', 600],
    ['Would it matter if I made half of this:', 'asked'],
    ['I made half of this already, everything is halved:', 'asked'],
  ])('%s', (said, want) => expect(lard(said)).toBe(want));
  test.each([
    'Yesterday I weighed out exactly double of every single thing. Was the double batch balanced?',
    'I measured out double of everything and it all went into the canning pot. Was it balanced?',
  ])('and below it: %s', (said) =>
    expect(potOf(`tallow 500 g, coconut 150 g, lye 97 g, water 200 g. ${said}`)).toEqual({
      grams: { 'tallow-beef': 1000, 'coconut-oil': 300, naoh: 194, water: 400 },
      doubts: [],
    }),
  );
});

const pot = { 'olive-oil-virgin': 480, 'coconut-oil': 262, naoh: 105, water: 295 };
const rows =
  '\nolive        500        480\ncoconut      250        262\nlye          107        105\nwater        300        295\n';

test.each(['planned   in the pot', 'card   pot', 'planned   weighed'])('the columns %s', (heads) =>
  expect(potOf(`all in grams\n\n           ${heads}${rows}\nok?`)).toEqual({ grams: pot, doubts: [] }),
);
test('columns of two pots are asked about', () =>
  expect(potOf(`all in grams\n\nfat        pot 1   pot 2${rows}\nok?`).doubts).not.toEqual([]));

test.each([
  'olive 400 → 480 g\ncoconut 200 → 262 g (ran out, hence more olive)\nlye 82 → 105 g\nwater 295 g',
  'olive 400 g ➜ 480 g\ncoconut 262 g\nlye 105 g\nwater 295 g → does that work?',
  'olive → 480 g\ncoconut → 262 g\nlye → 105 g\nwater → 295 g',
])('%s', (text) => expect(potOf(text)).toEqual({ grams: pot, doubts: [] }));

const swapped = (said: string) => potOf(`lard 400g, coconut oil 200g, sunflower 300g, lye 126g in 290g water. ${said}`);

test.each([
  "Only the sunflower bottle turned out to be empty so it's rapeseed in there, same weight.",
  'The sunflower bottle proved empty, so the soap has rapeseed in it, the same weight.',
  'The sunflower turned out to be rancid so I took rapeseed, same weight.',
])('%s', (said) =>
  expect(swapped(said)).toEqual({
    grams: { lard: 400, 'coconut-oil': 200, 'canola-oil': 300, naoh: 126, water: 290 },
    doubts: [],
  }),
);
test.each([
  "The sunflower bottle is empty now, so next time it's rapeseed, same weight.",
  'The sunflower bottle was empty so my sister has rapeseed in hers, same weight.',
  'The sunflower bottle is empty so I need rapeseed, the same as always.',
])('nothing is swapped: %s', (said) => expect(swapped(said).grams['canola-oil']).toBeUndefined());

const share = (said: string) =>
  potOf(`${said} 60 % olive, 40 % coconut. How much NaOH for 4 % superfat?`).grams['olive-oil-virgin'];

test.each<[string, number | undefined]>([
  ["My mould takes 1000 g of oils but I'll only do 800 g this time.", 480],
  ["My mould takes 1000 g of oils but I'm only doing 800 g today.", 480],
  ['My mould takes 1000 g of oils.', 600],
])('%s', (said, want) => expect(share(said)).toBe(want));

describe('in a chat another figure is taken', () => {
  const chat = 'Ana: 600 g olive, 250 g coconut, lye 135 g, 300 g water\nJoep: ';
  test.each<[string, number, number]>([
    ["135 is high for that I think, I'd take 121\nAna: oh good catch, have weighed 121 g now. ok?", 121, 300],
    ["135 g lye is too much, I'd use 121 g\nAna: thanks, I took 121 g. ok?", 121, 300],
    ["300 is a lot, I'd take 250\nAna: right, took 250 g of water. ok?", 135, 250],
    ['135 looks a bit high, better take 121\nAna: no, I weighed 135. ok?', 135, 300],
    ['135 looks a bit high, better take 121\nAna: nearly weighed 121 g then. ok?', 135, 300],
  ])('%s', (said, naoh, water) => expect(potOf(chat + said).grams).toMatchObject({ naoh, water }));
});

const rest = '180 g coconut, 120 g sunflower, lye 116 g, water 265 g. Ok?';

test.each([
  "Put the bowl on the scale, forgot to tare. It read 870 with the lard in it. The empty bowl is 320 so that's 550 g lard.",
  "I forgot to zero the scale. It showed 870 g with the lard, the empty bowl is 320 g, so that's 550 g of lard.",
])('a tare that is reckoned: %s', (said) =>
  expect(potOf(`${said} ${rest}`)).toMatchObject({ grams: { lard: 550 }, doubts: [] }),
);
test.each([
  'Forgot to tare the bowl, it read 870 g with the lard in it.',
  'Forgot to tare, lard 550 g.',
  'Forgot to tare the bowl for the coconut. Lard 550 g.',
])('and one that is not: %s', (said) => expect(potOf(`${said} ${rest}`).doubts).not.toEqual([]));

const kilo = (said: string) => {
  const { grams, doubts } = potOf(`1 kg of lard, 200 g of coconut oil, 170 g of lye, 450 g of water. ${said} Ok?`);
  return doubts.length > 0 ? 'asked' : grams['palm-oil'];
};

test.each<[string, number | string | undefined]>([
  ['Lard is out of the question now, so today I took the same kilo in palm oil instead.', 1000],
  ['My daughter says lard is off the menu, so I took the same weight of palm oil.', 1000],
  ['My daughter says no more lard, so today I took the same in palm oil, with the lye and water as before.', 1000],
  ['Lard is out of the question, so I would take the same weight of palm.', undefined],
  ['Lard is out of the question for my sister, so she took the same weight of palm.', 'asked'],
  ['No more lard in the shop, and the same with palm.', undefined],
])('%s', (said, want) => expect(kilo(said)).toBe(want));

test('moulds that were filled out of one pot', () =>
  expect(
    potOf(
      'Each of my moulds takes the soap from 260 g tallow, 90 g coconut and 50 g castor oil. I filled three of them out of one pot. Lye for that pot: 168 g in 400 g of water. Ok?',
    ),
  ).toEqual({
    grams: { 'tallow-beef': 780, 'coconut-oil': 270, 'castor-oil': 150, naoh: 168, water: 400 },
    doubts: [],
  }));
