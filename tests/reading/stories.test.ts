/** Stories around a list: what they change of it for certain, what they tell of nothing in the pot, and what stays asked. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const base = {
  'olive-oil-virgin': 520,
  'coconut-oil': 220,
  'palm-oil': 180,
  'castor-oil': 80,
  naoh: 138,
  water: 300,
};
const { 'castor-oil': _castor, ...noCastor } = base;
const { 'palm-oil': _palm, ...noPalm } = base;
const noted = (note: string) =>
  read(`olive 520 g\ncoconut 220 g\npalm 180 g\ncastor 80 g\nNaOH 138 g\nwater 300 g\n${note} Is the lye right?`);

describe('another fat in the place of one, with its whole weight', () => {
  test.each<[string, Readonly<Record<string, number>>]>([
    ['Turned out there was no palm in the cupboard. Lard went in for it, same weight.', { ...noPalm, lard: 180 }],
    ['Hadn’t a drop of castor, so avocado oil took over its 80 g.', { ...noCastor, 'avocado-oil': 80 }],
    ['My palm had gone rancid; tallow took its place, weight for weight.', { ...noPalm, 'tallow-beef': 180 }],
    ['Castor was nowhere to be found, rice bran oil stood in, 80 g of it.', { ...noCastor, 'rice-bran-oil': 80 }],
    ['No palm to be had in the village. So lard it was, gram for gram.', { ...noPalm, lard: 180 }],
    ['Instead of the palm there’s lard in it, the same 180 g.', { ...noPalm, lard: 180 }],
    ['I won’t buy palm any more, so the same weight of lard went in.', { ...noPalm, lard: 180 }],
    ['EDIT: not palm!! it’s lard, same amount. I grabbed the wrong name.', { ...noPalm, lard: 180 }],
    ['Sorry, no castor! It was avocado oil, same weight.', { ...noCastor, 'avocado-oil': 80 }],
    ['Correction: that’s not palm, it’s tallow.', { ...noPalm, 'tallow-beef': 180 }],
    ['Oops, not palm. It’s lard, but only 150 g.', { ...noPalm, lard: 150 }],
    ['The smell is not palm!! It’s lard that smells like this.', base],
    ['I don’t use palm, so I put in the same amount of tallow.', { ...noPalm, 'tallow-beef': 180 }],
    [
      'There was no palm in the house so I put 170 g lard in its place, all else as it always is.',
      { ...noPalm, lard: 170 },
    ],
    ['On Sunday the palm was out of stock, so I used 180 g lard instead.', { ...noPalm, lard: 180 }],
    ['I won’t buy palm any more, so next time the same weight of lard goes in.', base],
    ['All the palm was used up, so lard got its 180 g.', { ...noPalm, lard: 180 }],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test.each([
    'Not a scrap of palm left. Lard took its place, gram for gram, but only for half of it.',
    'Not a scrap of palm left. Lard took its place, 150 g.',
    'Hadn’t a drop of castor, so avocado oil took over its 60 g.',
    'I won’t buy palm any more, so half the weight of lard went in.',
    'My sister won’t buy palm any more, so the same weight of lard goes in for her.',
    'No palm left. Lard and tallow took its place, gram for gram.',
    'Couldn’t find the castor. Avocado oil stood in for some of it.',
    'No castor left, lard took its place, same weight, plus 20 g for luck.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('a fat that was forgotten', () => {
  test.each([
    'Poured, washed up, and there sits the cup of castor next to the kettle, untouched. The soap was thick so I let it be.',
    'After pouring I found the castor still in its cup. Too late to stir it in, so I left it.',
    'Then I saw the castor standing on the windowsill. It was too late by then, so it stayed out.',
    'Found the castor in the microwave when all was poured. Nothing I could do any more.',
    'There on the counter stood the castor in its little cup. Never went in.',
    'All poured, and there I see the cup with the castor still standing there, full. So no castor in the soap.',
    'Poured it, turned round, and the castor is still standing in its cup. So there’s no castor in it.',
    'The castor is still sitting on the windowsill, untouched. The soap has none of it in it.',
    'The castor meant for the end is still standing on the worktop, forgot it completely and the soap is in the mould now.',
    'I forgot the castor and the soap is in the mould already.',
    "Poured, wrapped, tidied up... and there's the cup with all the castor, untouched behind the kettle. So no castor in it.",
    "I look round and there's the bowl of castor on the worktop. So there's no castor in it.",
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: noCastor, doubts: [] }));

  test.each([
    'Found the castor in its cup after I’d filled the mould. I scraped it all back into the pot, put the castor in and blended.',
    'Nearly forgot the castor, saw it on the counter just as I was about to pour, and stirred it in at the last moment.',
    'The bowl of palm was still in the microwave when I’d poured! I tipped everything back, added the palm and blended.',
    'The castor got forgotten at first. Then I saw the glass of castor still standing on the shelf, and in it went at trace.',
    'Overlooked the castor, it was still in the microwave, so in it went at thin trace, no harm done I think.',
    'The castor was forgotten, but I saw it at trace and added it.',
    'I nearly forgot the castor, it went in last.',
    'Last month I saw the castor still standing there after pouring, so no castor in the soap. Now it is all in.',
    'I thought I was out of castor and was writing a version without, when a new bottle arrived. So it’s made as planned.',
    'Panicked that I was out of palm, but my neighbour brought some, so the recipe is as written.',
  ])('%s is as listed', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each([
    'Found the castor on the counter after pouring.',
    'The castor is still standing on the counter, it goes in at trace.',
    'Poured, and saw the cup with the castor still standing there, half full.',
    'Saw the castor still standing there. So no palm in the soap, I thought.',
    'Hot process. Forgot the castor, found it after the cook and stirred it in.',
    'Found the castor in the microwave after pouring, and drizzled some of it on top.',
    'Found the palm on the counter. I poured in what I could, then left it.',
    'There sits the bowl of palm in the microwave. I scooped half of it in and left it at that.',
    'Thought I was out of palm, but found a bit behind the flour and used that, the rest as planned.',
    'Thought I was out of castor, then found some but it wasn’t the full amount.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

test('what was forgotten with its own weight beside it', () => {
  expect(
    read(
      'Just poured it and what do I see, the 80 g castor still standing on the counter :( so what’s in the mould is 560 g olive, 240 g coconut, 115 g lye, 260 g water. Ok?',
    ),
  ).toEqual({ grams: { 'olive-oil-virgin': 560, 'coconut-oil': 240, naoh: 115, water: 260 }, doubts: [] });
  expect(
    read(
      'Forgot the shea butter (75 g) at first, found it in the microwave when I was at light trace and stirred it in. So with 430 g olive, 215 g coconut, is 104 g of lye right? 220 g water',
    ),
  ).toEqual({
    grams: { 'olive-oil-virgin': 430, 'coconut-oil': 215, 'shea-butter': 75, naoh: 104, water: 220 },
    doubts: [],
  });
});

describe('too much of it at first', () => {
  const pot = { 'olive-oil-virgin': 610, 'coconut-oil': 250, 'castor-oil': 60, naoh: 125, water: 260 };
  test.each([
    'Overshot with the coconut, scale said 290 g, so I spooned 40 g back into the jar. Olive 610 g, castor 60 g, lye 125 g, water 260 g.',
    'Olive 610 g, castor 60 g, lye 125 g, water 260 g. I overshot the coconut, the scale read 290 g, so I took 40 g out again.',
    'Coconut: the scale showed 290 g, so 40 g went back in the tub. Olive 610 g, castor 60 g, lye 125 g, water 260 g.',
    'Olive 610 g, coconut 250 g, castor 60 g, lye 125 g, water 260 g. Overshot with the coconut first, the scale said 290 g, so I spooned 40 g back into the jar.',
    'Olive 610 g, coconut 250 g, castor 60 g, water 260 g. Overshot with the lye, scale said 135 g, so I spooned 10 g back into the tub.',
  ])('%s', (text) => expect(read(text)).toEqual({ grams: pot, doubts: [] }));

  test.each([
    'Overshot with the coconut, scale said 290 g, so I spooned some back into the jar. Olive 610 g, castor 60 g, lye 125 g, water 260 g.',
    'Olive 610 g, coconut 270 g, castor 60 g, lye 125 g, water 260 g. Overshot with the coconut first, the scale said 290 g, so I spooned 40 g back.',
  ])('is asked about: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('the missing so much of it', () => {
  test.each([
    'Then I got to the palm and the tub gave me 110 g scraped clean. The shop shut at 6. I did find lard in the fridge, so the missing 70 g of the palm is lard.',
    'The tub of palm only had 110 g in it, so the other 70 g of the palm is lard.',
    'The palm tub gives 110 g, so for the missing 70 g of palm I used lard.',
    'The palm ran out at 110 g. The missing 70 g was lard.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: { ...base, 'palm-oil': 110, lard: 70 }, doubts: [] }));

  test.each([
    'The palm tub gave me 110 g, so the missing 60 g is lard.',
    'The palm tub gave me 110 g, so should the missing 70 g be lard?',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

test.each(['Two lots of colour, 5 g each.', 'Mica, 5 g each.'])('colours weigh nothing that counts: %s', (note) =>
  expect(noted(`The palm tub gave me 110 g, so the missing 70 g is lard. ${note}`)).toEqual({
    grams: { ...base, 'palm-oil': 110, lard: 70 },
    doubts: [],
  }),
);

describe('made up to so much', () => {
  const pot = { 'olive-oil-virgin': 500, 'babassu-oil': 200, naoh: 97, water: 200 };
  test.each([
    'There were 180 g olive oil in the old bottle, I tipped that in the bowl and topped it up to 500 g from the new one. 200 g babassu on top. Lye 97 g, water 200 g.',
    'The old bottle still gave 180 g olive, so I filled it up to 500 g with the new one. 200 g babassu, lye 97 g, water 200 g.',
    '200 g babassu, lye 97 g, water 200 g. 180 g of olive left in the can, poured it in and topped up with a fresh bottle to 500 g.',
  ])('%s', (text) => expect(read(text)).toEqual({ grams: pot, doubts: [] }));

  test.each([
    '180 g olive oil, topped up to 500 g with sunflower. 200 g babassu, lye 97 g, water 200 g.',
    '180 g olive, 200 g babassu, topped it up to 500 g from the new bottle, lye 67 g, water 140 g.',
    '200 g babassu, 180 g olive, filled it up to 500 g with whatever was there, lye 97 g, water 200 g.',
  ])('is asked about: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

test.each([
  '1 kilo of oils in all, 300 g of it coconut, everything else olive. 142 g lye, 290 g water.',
  'A kilo of oils, 300 g coconut and everything else is olive, 142 g lye, 290 g water.',
  '1 kg of oils in all: 300 g coconut, all else olive, 142 g lye, 290 g water.',
  '300 g coconut, 700 g olive, 142 g lye, 290 g water. Everything else is from last year.',
])('everything else is the rest: %s', (text) =>
  expect(read(text)).toEqual({
    grams: { 'olive-oil-virgin': 700, 'coconut-oil': 300, naoh: 142, water: 290 },
    doubts: [],
  }),
);

test.each([
  ['I’ve 2 kg of lye in so no shortage.', []],
  ['We’ve a kilo of caustic soda in, so no worries about running out.', []],
  ['I have 2 kilos of NaOH here, so plenty.', []],
])('what is in store is of no batch where the lye is asked for: %s', (told, doubts) => {
  const { grams, doubts: asked } = read(`Olive 600 g, coconut 300 g. How much lye for 5 %? ${told}`);
  expect([grams['naoh'] ?? 0, asked]).toEqual([0, doubts]);
});

describe('a second lot of lye', () => {
  test.each<[string, number, number]>([
    ['It stayed oily, so I dissolved 9 g more NaOH in 30 g water, stirred that in and cooked on.', 147, 330],
    ['There was a puddle of oil, so 8 g extra lye in 25 g of water went in and I cooked it again.', 146, 325],
    ['It was greasy. I grated it, back in the pot with 100 g water in which I’d dissolved 6 g NaOH.', 144, 400],
    ['Still soft, so I remelted everything with another 6 g NaOH dissolved in 50 g water.', 144, 350],
    ['My daughter had stirred the lye in, I came back and put my own 138 g in too. So it is in there twice.', 276, 300],
    ['My husband had put the 138 g lye in the water. I put in another 138 g. Both are in there.', 276, 300],
    ['She had put the lye in. I put my own 138 g in too. So there’s two lots of it in the loaf.', 276, 300],
  ])('%s', (note, naoh, water) => expect(noted(note)).toEqual({ grams: { ...base, naoh, water }, doubts: [] }));

  test.each([
    'It stayed oily, so I dissolved 9 g more NaOH in 30 g water, and stirred in some of that.',
    'I dissolved 9 g more NaOH in 30 g water, stirred half of that in and cooked on.',
    'My husband says he put the lye in too, maybe. So there may be two lots in it.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('what made up for less, and what it weighed in truth', () => {
  test.each<[string, Readonly<Record<string, number>>]>([
    [
      'There were just 150 g in the coconut jar when I scraped it out. The gap of 70 I closed with babassu.',
      { ...base, 'coconut-oil': 150, 'babassu-oil': 70 },
    ],
    ['Palm came to just 100 g, the shortfall of 80 g I covered with lard.', { ...base, 'palm-oil': 100, lard: 80 }],
    [
      'I scraped 150 g out of the coconut jar. The 70 g short I made up in babassu.',
      { ...base, 'coconut-oil': 150, 'babassu-oil': 70 },
    ],
    ['Ha, 180 g of palm, I wish! 150 g it is, all I had.', { ...base, 'palm-oil': 150 }],
    ['The castor was meant to be 80, it turned out as 95 and I left it in.', { ...base, 'castor-oil': 95 }],
    ['The lye was weighed on two scales, 138 on the small one, 138 on the kitchen one.', base],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test.each([
    'There were just 150 g in the coconut jar. The gap of 50 I closed with babassu.',
    'There were just 150 g in the coconut jar. The gap of 70 I closed with babassu and lard.',
    'The castor was meant to be 80, it turned out as 95.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('what is of nothing in the pot', () => {
  test.each([
    'Weighed my bars after cure: eleven at 96 g, one at 71 g (end piece). When poured they were 118 g or so.',
    'Pucks at 60 g each in old tins.',
    'Cut twelve pieces, each about 100 g, the last one only 70 g.',
    'The new mould is said to hold 1.3 kg, the old one held 1 kg, and I had around 150 g over that went in yoghurt cups.',
    'There’s 80 g of the coconut left in the jar and some of the palm block, 70 g I think, so I might do a mini batch.',
    'What remains in the jars is 90 g coconut and 40 g palm, not enough for another soap.',
    'In another pot I melted 30 g beeswax with 120 g olive and 20 g shea for hand balm, that’s in tins already.',
    'A woman I know leaves the castor out and takes shea in its place. Mine stays as written.',
    'My sister does it with 200 g castor and 150 g lye. I didn’t.',
    'Last year I made it with 1000 g olive and nothing else and took 128 g NaOH, came out slimy.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each([
    'I had around 150 g over before the lye went in, that stayed in the jug.',
    'My sister puts 20 g more lye in my pot. I didn’t.',
    'I also melted 30 g beeswax with 120 g olive and stirred that in.',
    'In another pot I melted 30 g beeswax with 100 g olive for a balm, then tipped that into the soap.',
    'My sister puts 20 g more lye in hers. I did too.',
    'A woman I know leaves the castor out and takes shea in its place. So did I.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('lye from a can', () => {
  const fats = { 'olive-oil-virgin': 400, 'palm-oil': 200, 'coconut-oil': 100 };
  const list = 'olive 400 g, palm 200 g, coconut 100 g.';

  test('a stock told by its parts', () =>
    expect(
      read(
        `I keep a lye solution, one part NaOH to one part water, in a can. I took 190 g out of the can and another 90 g of water. Fats: ${list}`,
      ),
    ).toEqual({ grams: { ...fats, naoh: 95, water: 185 }, doubts: [] }));

  test('a share that is said to be a strength', () =>
    expect(
      read(
        `Forty per cent lye from the canister, 240 g of it. Fats: ${list} Forty per cent means 40 g of NaOH in each 100 g of the liquid.`,
      ),
    ).toEqual({ grams: { ...fats, naoh: 96, water: 144 }, doubts: [] }));

  test('a strength that its explanation contradicts is asked about', () =>
    expect(
      read(
        `Forty per cent lye from the canister, 240 g of it. Fats: ${list} Forty per cent means 40 g of NaOH to each 140 g of the liquid.`,
      ).doubts,
    ).not.toEqual([]));
});

describe('a slip of another batch', () => {
  test.each([
    'Once, in March, I forgot the castor and it hardly foamed. That was another batch, this one has it.',
    'In the summer I left out the palm and it stayed soft. But that was a different batch, this one has it in.',
    'I forgot the coconut one time and it would not lather. A different batch, though, not this one.',
    'I once spilled some of the lye and it went greasy. Not this batch, here all of it is in.',
    'I swapped the palm for lard and it was lovely. That was the batch before, this one is as listed.',
    'I put the lye in twice by mistake, what a mess. That was a different soap, not this one.',
    'I used 100 g castor and it got sticky. That was in an earlier batch, this one has 80 g.',
    'I forgot the castor. It never foamed. That was in another batch and not here.',
    'In a different batch I left out the coconut. Never again.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each([
    'I forgot the castor and it was brittle. The batch before had it.',
    'I left out the castor here. In another batch I forgot the coconut, too.',
    'I forgot the castor, sadly. That was a different kind of mistake for me.',
    'I left the castor out. It was another batch that had too much of it.',
    'I left the castor out. Another batch will get it.',
  ])('%s is of this one', (note) => expect(noted(note)).toEqual({ grams: noCastor, doubts: [] }));
});

test('the number of a soap, and what is stirred into what', () => {
  const post = 'Sun, soap no. 14, own lard\n\nlard 700 g\ncoconut 200 g\nlye 130 g\nwater 290 g\naloe juice 50 g\n\n';
  const grams = { lard: 700, 'coconut-oil': 200, naoh: 130, water: 290 };
  expect(read(`${post}lye -> water + half the aloe first`)).toEqual({ grams, doubts: [] });
});

describe('what was weighed or counted again', () => {
  const tallow = { 'tallow-beef': 514, 'coconut-oil': 100, water: 0 };
  const castile = { 'olive-oil-virgin': 1000, naoh: 128, water: 300 };
  const spilt = { 'olive-oil-virgin': 310, 'coconut-oil': 100, naoh: 55, water: 165 };
  const own = { lard: 450, 'olive-oil-virgin': 350, 'coconut-oil': 200, naoh: 139, water: 330 };
  const scaled = { 'olive-oil-virgin': 400, 'palm-oil': 100, naoh: 65, water: 140 };
  const first = 'olive 1000 g. 122 g NaOH in 280 g water. Later added another 6 g NaOH in 20 g water.';
  const theirs = '> 450 g lard, 350 g olive, 200 g coconut, 150 g of caustic soda\n\n';
  const cupped = 'Olive 400 g, palm 100 g.';
  test.each([
    ['I weighed the tallow twice: 510, 516. The third try says 514 g, so 514 g it is. 100 g coconut. NaOH?', tallow],
    ['I weighed out the tallow: 510 g, 516 g. Settled on 514 g. plus 100 g coconut. NaOH?', tallow],
    [`${first} Total: 128 g NaOH, 300 g water. ok?`, castile],
    [
      '10:05 1000 g olive, 122 g NaOH / 280 g water\n10:40 another 6 g NaOH in 20 g water\nSum: 128 g NaOH, 300 g water',
      castile,
    ],
    ['Spilt the olive. What was left: 310 g, not the 400. Coconut 100 g, 55 g NaOH, 165 g water. ok?', spilt],
    ['Knocked the jug of olive over. What was left weighed 310 g. Coconut 100 g, 55 g NaOH, 165 g water. ok?', spilt],
    [`${theirs}Same fats here, same weights, but I use 139 g of soda in 330 g water. ok?`, own],
    [`${theirs}Same recipe here, but mine gets 139 g, in 330 g water. ok?`, own],
    [`${cupped} NaOH a quarter cup by eye, weighed it: 65 g. Water 140 g. ok?`, scaled],
    [`${cupped} The NaOH was about a third of a cup, but on the scale it was 65 g. Water 140 g. ok?`, scaled],
  ])('%s', (text, grams) => expect(read(text)).toEqual({ grams, doubts: [] }));

  test.each([
    'I weighed the tallow: 510 g, then 900 g. So 900 g it is. 100 g coconut. NaOH?',
    `${first} Total: 130 g NaOH, 300 g water. ok?`,
    'Spilt the olive, 400 g of it. What was left weighed 310 g. Coconut 100 g, 55 g NaOH, 165 g water. ok?',
    'Spilled the olive. What was left was 310 g, and that went to the birds. Coconut 100 g, 15 g NaOH, 40 g water.',
    `${theirs}Same fats here, but I would use 139 g. 330 g water. ok?`,
    `${cupped} The NaOH was a quarter cup, and I weighed 140 g of water. ok?`,
    `${cupped} The NaOH was half a cup by eye. The scale reads 300 g with the jug. Water 140 g. ok?`,
  ])('is asked about: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('a can that gave less, told in the same breath', () => {
  const list = 'beef tallow 400 g, coconut oil 200 g, olive oil 400 g';
  const filled = { 'tallow-beef': 400, 'coconut-oil': 200, 'olive-oil-virgin': 310, 'sunflower-oil': 90 };
  test.each([
    `${list}... well it should have been 400 but the can only gave 310 g, so i filled up the missing 90 g with sunflower oil, lye 140 g`,
    `${list}... but the can only gave 310 g, so i filled up the missing 90 g with sunflower oil, lye 140 g`,
    `${list}. It should have been 400 but the can only gave 310 g, so I filled up the missing 90 g with sunflower oil. Lye 140 g.`,
  ])('%s', (said) => expect(read(said)).toMatchObject({ grams: filled, doubts: [] }));

  test('of what is named last, and not of another that would fit', () =>
    expect(
      read(
        'beef tallow 400 g, coconut oil 200 g, olive oil, should have been 400 g but the can only gave 310 g, so i filled up the missing 90 g with sunflower oil, lye 140 g',
      ).doubts,
    ).not.toEqual([]));
});

describe('a swap that always holds', () => {
  const list = '350 g palm oil, 350 g olive oil, 250 g coconut oil, 140 g lye, 330 g water.';
  test.each([
    'Wherever it says palm oil I now use lard, one for one.',
    'Wherever it says palm oil I always use lard.',
    'Everywhere the recipe has palm I put in lard.',
    'I use lard wherever it says palm oil, same weight.',
  ])('%s', (said) => {
    expect(read(`${said} ${list} Ok?`).grams).toMatchObject({ lard: 350 });
    expect(read(`${list} ${said} Ok?`).grams).toMatchObject({ lard: 350 });
  });

  test.each([
    'Wherever it says palm oil my sister uses lard.',
    'Next year, wherever it says palm oil I will use lard.',
  ])('but not: %s', (said) => expect(read(`${list} ${said} Ok?`).grams).toMatchObject({ 'palm-oil': 350 }));
});
