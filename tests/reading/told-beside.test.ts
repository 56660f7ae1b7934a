/** What a post tells beside the weights that count: their parts, what stands by for another day, the pack of before. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const reader = makeReader(loadCatalogue());

const pot = { 'olive-oil-virgin': 600, 'coconut-oil': 250, 'castor-oil': 50, naoh: 126, water: 300 };

test.each([
  [
    'Olive 500 g in all (450 out of the can, 50 from the bottle). Coconut 180 g. NaOH 92 g. Water 200 g.',
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    "Olive: 500 g altogether. (450 from the canister, the last 50 out of the bottle on the table, so don't add them again!) Coconut: 180 g. NaOH: 92 g. Water: 200 g.",
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    '500 g olive altogether (300 g from one bottle and the last 200 from another), 180 g coconut, 92 g NaOH, 200 g water',
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    'Coconut 180 g\nOlive 500 g: 250 g from the old bottle and 250 g from the new one\nNaOH 92 g\nWater 200 g',
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    "Olive 500 g, that's 400 from the can plus 100 from the bottle. Coconut 180 g. NaOH 92 g. Water 200 g.",
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    'Olive 500 g. Coconut 180 g. NaOH 92 g (first 60, then 32). Water 200 g.',
    { 'olive-oil-virgin': 500, 'coconut-oil': 180, naoh: 92, water: 200 },
  ],
  [
    '500g lard 250g coconut. Weighed 90 g lye into the water (250 g), saw I was short, weighed another 18 g and stirred that in as well. So 108 g all told.',
    { lard: 500, 'coconut-oil': 250, naoh: 108, water: 250 },
  ],
  [
    '500 g lard, 250 g coconut, water 250 g. Lye 60 g, then another 48 g, so 108 g in all.',
    { lard: 500, 'coconut-oil': 250, naoh: 108, water: 250 },
  ],
  [
    '500 g lard, 250 g coconut, water 250 g. Weighed the lye in two goes: 60 g lye, then another 48 g, 108 g altogether.',
    { lard: 500, 'coconut-oil': 250, naoh: 108, water: 250 },
  ],
  [
    '500 g lard, 250 g coconut, 250 g water. First 60 g NaOH went in, then 48 g more, together 108 g.',
    { lard: 500, 'coconut-oil': 250, naoh: 108, water: 250 },
  ],
  [
    'olive 500 g, coconut 300 g, palm 200 g, naoh 140 g',
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200, naoh: 140 },
  ],
])('the parts of a weight count once: %s', (text, grams) => expect(potOf(text)).toMatchObject({ grams, doubts: [] }));

test('parts that do not make it are asked about', () =>
  expect(
    potOf('500 g lard, 250 g coconut, water 250 g. Lye 60 g, then another 48 g, so 118 g in all.').doubts,
  ).not.toEqual([]));

test.each([
  [
    'I meant to put 30 g of shea in but decided against it. So: 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water.',
    pot,
  ],
  [
    'Was going to put 30 g of shea in, decided against it, smells too much of chocolate. 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water.',
    pot,
  ],
  [
    "Was thinking of 40 g lard as well. Then didn't bother. 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water.",
    pot,
  ],
  [
    "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I had been tempted to add 40 g babassu, but in the end I didn't.",
    pot,
  ],
  [
    '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I considered 20 g of cocoa butter too and dropped that idea.',
    pot,
  ],
  [
    "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. On the photo you see 60 g of lard as well, that is for Sunday's batch.",
    pot,
  ],
  ['600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. 60 g lard is waiting for the next loaf.', pot],
  [
    "600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. There's 60 g of shea on the bench. It belongs to another batch.",
    pot,
  ],
  ['600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. And 60 g lard.', { lard: 60, ...pot }],
  [
    '600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. Next to it 60 g lard went in.',
    { lard: 60, ...pot },
  ],
  [
    'Meant to make it without lard, then added 60 g lard. 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water.',
    { lard: 60, ...pot },
  ],
  [
    '600 g olive, 250 g coconut, 60 g lard (the next one in the row is castor) 50 g castor, 126 g NaOH, 300 g water.',
    { lard: 60, ...pot },
  ],
  [
    "Also 60 g lard. 600 g olive, 250 g coconut, 50 g castor, 126 g NaOH, 300 g water. I'll make another batch tomorrow.",
    { lard: 60, ...pot },
  ],
  [
    'Log\nYesterday: loaf of lard 800 g, done.\nToday 09:00 olive 500 g, coconut 200 g weighed\n09:20 NaOH 97 g into 220 g water',
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    "Yesterday's loaf: lard 600 g, palm 200 g, 110 g lye.\nToday: olive 500 g, coconut 200 g, NaOH 97 g, water 220 g. Ok?",
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    'Fri 18:00 other loaf (lard 600 g, palm 200 g) unmoulded\nSat 10:00 olive 500 g, coconut 200 g melted\n10:10 NaOH 97 g in 220 g water\n10:40 poured. Lye ok?',
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    "08:00 cut yesterday's loaf, the one of 600 g lard and 200 g palm\n09:00 olive 500 g, coconut 200 g weighed\n09:15 NaOH 97 g in 220 g water\nLye ok?",
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    "8:00 yesterday's lard loaf out of the mould (700 g lard)\n9:00 weighed olive 500 g, coconut 200 g\n9:15 lye 97 g, water 220 g\nlye ok?",
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    '* yesterday: 700 g lard, 90 g lye, done\n* today: 500 g olive, 200 g coconut\n* 97 g lye, 220 g water',
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, naoh: 97, water: 220 },
  ],
  [
    "olive 500 g, coconut 200 g, NaOH 110 g, water 220 g, and 100 g lard left over from yesterday's batch",
    { 'olive-oil-virgin': 500, 'coconut-oil': 200, lard: 100, naoh: 110, water: 220 },
  ],
])('what was thought of, or is of another batch, is not in it: %s', (text, grams) =>
  expect(potOf(text)).toEqual({ grams, doubts: [] }),
);

test.each([
  [
    '500 g sunflower and 200 g coconut. KOH 160 g (85 %, no, that was the old bag; this one is 90 %). Water 480 g. ok?',
    0.9,
  ],
  [
    '500 g sunflower and 200 g coconut. KOH 160 g of 85 %. Sorry, 85 is what the last tub had. Mine says 90 %. Water 480 g. ok?',
    0.9,
  ],
  [
    'Liquid soap, 500 g sunflower and 200 g coconut. KOH 160 g, 85 % – sorry, 85 was the old bag, that one is finished. The bag I used says 90 %. Water 480 g. Can you check',
    0.9,
  ],
  ['500 g sunflower, 200 g coconut, KOH 160 g, 85 %, water 480 g. The old bag was 90 %.', 0.85],
  [
    '500 g sunflower, 200 g coconut, KOH 160 g, water 480 g. The tub I had last year was 85 % pure, this one says 90 %.',
    0.9,
  ],
  ['500 g sunflower, 200 g coconut, KOH 160 g, water 480 g. My last tub was 85 %, this one says 90 %.', 0.9],
  ['500 g sunflower, 200 g coconut, KOH 160 g 90 %, water 480 g.', 0.9],
] as const)('the pack that was used says how pure it is: %s', (text, purity) => {
  const { alkali, doubts } = readRecipe(reader, text);
  expect([alkali[0]?.purity?.nominal, doubts]).toEqual([purity, []]);
});

test.each([
  [
    "The single batch in my binder is 250 g olive, 150 g coconut, 100 g palm. I'm doing it twice the size for the fair, so the pot on the stove holds 500 g olive, 300 g coconut and 200 g palm. Need the NaOH for the pot on the stove.",
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  [
    "The small size in the notebook: 250 g olive, 150 g coconut, 100 g palm. I'm doubling for the market, so in the pot are 500 g olive, 300 g coconut and 200 g palm. Lye for the pot please.",
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  [
    "My binder has 250 g olive, 150 g coconut, 100 g palm. Twice that is on the stove: 500 g olive, 300 g coconut and 200 g palm. How much NaOH for what's on the stove?",
    { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'palm-oil': 200 },
  ],
  [
    'My binder has 250 g olive, 150 g coconut, 100 g palm. I halved it: 125 g olive, 75 g coconut and 50 g palm. How much NaOH?',
    { 'olive-oil-virgin': 125, 'coconut-oil': 75, 'palm-oil': 50 },
  ],
])('what was made of a single size counts: %s', (text, grams) =>
  expect(potOf(text)).toEqual({ grams: { water: 0, ...grams }, doubts: [] }),
);

test.each([
  ['Usually I go for 5 % superfat but this is laundry soap, so 0 today. 1000 g coconut only. NaOH?', 0],
  ["My normal superfat is 5%, for this one I'd like 0 please. 1000 g coconut. How much NaOH?", 0],
  ['I always keep 5% superfat, this is for floors so only 2 this time. 1000 g coconut. How much lye?', 0.02],
  ['1000 g coconut, 5% superfat, 0 water discount. How much lye?', 0.05],
] as const)('the superfat of today, with its sign or without: %s', (text, superfat) =>
  expect(readRecipe(reader, text).superfat).toBe(superfat),
);

test.each([
  'Olive 20, coconut 8, palm 8, lye 5, water 11.\n\nBefore anyone faints: those are ounces, not grams.',
  'Olive 20, coconut 8, palm 8, lye 5, water 11. Ounces, not grams!',
  'Olive 20, coconut 8, palm 8, lye 5, water 11. All in ounces, not in grams.',
])('a unit that the figures are not of is none: %s', (text) =>
  // 20 and 5 ounces of 28.349523125 g (NIST SP 811)
  expect(potOf(text)).toMatchObject({ grams: { 'olive-oil-virgin': 567, naoh: 142 }, doubts: [] }),
);

test.each([
  "I've no coconut left after all, so I put 200 g babassu in its place.",
  "There's no more coconut, so I'll use 200 g of babassu instead.",
])('another fat in the place of one that there is none of: %s', (note) =>
  expect(potOf(`500 g olive, 200 g coconut, 97 g lye, 210 g water\n\n${note}`)).toMatchObject({
    grams: { 'olive-oil-virgin': 500, 'babassu-oil': 200, naoh: 97, water: 210 },
    doubts: [],
  }),
);

test('a weight of the list that is judged once more is no other one', () =>
  expect(potOf("500 g olive, 200 g coconut, 94 g lye, 220 g water. I'm not sure 94 g is right, is it?").doubts).toEqual(
    [],
  ));
