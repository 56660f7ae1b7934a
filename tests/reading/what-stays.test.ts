/** What a post tells of was planned, weighed or taken back, and what really went in. */
import { describe, expect, test } from 'vitest';
import { potOf as read } from './pot.ts';

const reads = (text: string, grams: Readonly<Record<string, number>>): void =>
  expect(read(text)).toEqual({ grams, doubts: [] });

const rest = '600 g olive, 200 g coconut, 120 g lye, 250 g water.';
const base = { 'olive-oil-virgin': 600, 'coconut-oil': 200, naoh: 120, water: 250 };
const fats = 'Lard 700 g, olive 200 g, water 300 g.';
const lye = (naoh: number) => ({ lard: 700, 'olive-oil-virgin': 200, naoh, water: 300 });

describe('of three figures that make a sum, what comes of it counts', () => {
  test.each([
    [`I had 140 g of lye in the cup and tipped 22 g back in the box, so 118 g went in. ${fats}`, lye(118)],
    [`The lye was 140 g at first. Then I took 22 g out again, which left 118 g. ${fats}`, lye(118)],
    [`First 110 g lye, then I added another 8 g, which makes 118 g. ${fats}`, lye(118)],
    [`I put in 8 g more lye, on top of the 110 g from before, so it has 118 g now. ${fats}`, lye(118)],
    [
      `I wanted 300 g of palm but there was only 260 g in the tub, so I made up the other 40 g with lard. ${rest}`,
      { 'palm-oil': 260, lard: 40, ...base },
    ],
    [
      `200 g of palm was the plan but the jar only yielded 170 g. The missing 30 g I made up with lard. ${rest}`,
      { 'palm-oil': 170, lard: 30, ...base },
    ],
    [
      `400 g of canola was planned; the bottle held 350 g; tallow made up the missing 50 g. ${rest}`,
      { 'canola-oil': 350, 'tallow-beef': 50, ...base },
    ],
    [
      `350 g of palm was the plan but there's only 290 g left, so the missing 60 g will be lard. ${rest}`,
      { 'palm-oil': 290, lard: 60, ...base },
    ],
    [
      `Plan: ${rest} And 100 g castor. There's only 60 g castor left, so the missing 40 g will be olive.`,
      { ...base, 'olive-oil-virgin': 640, 'castor-oil': 60 },
    ],
    [
      `120 g lye, 250 g water, 600 g olive, 200 g coconut, 100 g castor. My castor bottle has just 60 g in it, the other 40 g I replace with olive.`,
      { ...base, 'olive-oil-virgin': 640, 'castor-oil': 60 },
    ],
    [
      `I wanted 600 olive, 200 coconut and 100 castor (grams) but my castor bottle only has 60 left. The missing 40 I'll make up with olive. 120 g lye, 250 g water.`,
      { ...base, 'olive-oil-virgin': 640, 'castor-oil': 60 },
    ],
    [
      `I had 1.2 kg of tallow from the butcher and used 800 g of it; the other 400 g went back in the freezer. ${rest}`,
      { 'tallow-beef': 800, ...base },
    ],
    [
      `550 g palm and 250 g lard in the plan but 50 g of the palm ended up on the floor, so 500 g palm. ${rest}`,
      { 'palm-oil': 500, lard: 250, ...base },
    ],
    [
      `I have 1 kg of palm, 700 g of it for this batch, 300 g kept back for the next. ${rest}`,
      { 'palm-oil': 700, ...base },
    ],
  ])('%s', reads);

  test.each([
    [
      `1 kg of fats: 600 g lard, the other 400 g olive. Lye 135 g. Water 290 g.`,
      { lard: 600, 'olive-oil-virgin': 400, naoh: 135, water: 290 },
    ],
    [
      `Palm 500 g, then shea 300 g, then just 200 g lard went in. ${rest}`,
      { 'palm-oil': 500, 'shea-butter': 300, lard: 200, ...base },
    ],
  ])('and no others: %s', reads);
});

describe('what goes out of a weight, or comes to it, is reckoned where nobody tells the sum', () => {
  test.each([
    [`I'd already weighed 142 g of lye and then I scooped 10 g back into the tub. ${fats}`, lye(132)],
    [`I put 150 g of NaOH in the jug. It seemed a lot so I spooned 15 g back in the box. ${fats}`, lye(135)],
    [`${fats} Weighed 140 g of lye, took out 10 g, then thought better of it and put 5 g of that back.`, lye(135)],
    [`${fats} The sheet said 140 g lye and I took 6 g less to be careful.`, lye(134)],
    [`${fats} Of the 140 g NaOH 6 g stayed stuck in the cup, so those never got in.`, lye(134)],
    [`Palm 350 g, of which 50 g went back in the tub. ${rest}`, { 'palm-oil': 300, ...base }],
    [`I put in 300 g palm, took 60 g out, then 30 g went back in. ${rest}`, { 'palm-oil': 270, ...base }],
    [`First 200 g lard went in, then another 50 g, then I scooped 30 g out again. ${rest}`, { lard: 220, ...base }],
    [
      `There was 200 g of lard, and a bit of lard left in the pack went in too, another 30 g. ${rest}`,
      { lard: 230, ...base },
    ],
  ])('%s', reads);

  test.each([
    [`${rest} I poured the batter and took 50 g back out for a test.`, base],
    [`${rest} That is 6 g less than last time.`, base],
  ])('and nothing else: %s', reads);

  test.each([
    `${rest} Then I scooped 20 g back into the tub.`,
    `${rest} Should I take 8 g back out?`,
    `${rest} I used 6 g less.`,
    'Olive 700 g, palm 300 g. Lye 132 g (I put 8 g back in the tub).',
    'Lard 500 g, water 150 g. Then I weighed 70 g, took 8 g back out. Lye 68 g.',
    'I have 2 kg of lard, took out 500 g for this. Olive 300 g, lye 105 g, water 250 g.',
    'I weighed 140 g of lye. Took 7 g back out. Only 132 g went in. 700 g olive, 300 g palm.',
  ])('what nobody can tell is asked: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('of what is used in part, that part counts', () => {
  test.each([
    [
      `I have 600 g of lard, but half of it is for baking, the other half goes in the soap. ${rest}`,
      { lard: 300, ...base },
    ],
    [
      `Rendered 900 g tallow. A third of that I keep for candles, so two thirds goes in. ${rest}`,
      { 'tallow-beef': 600, ...base },
    ],
    [`My cocoa butter is 200 g, of which I only use half for the soap. ${rest}`, { 'cocoa-butter': 100, ...base }],
    [`I got 800 g of tallow, half of it I gave to my sister. ${rest}`, { 'tallow-beef': 400, ...base }],
    [`${rest} A quarter of the olive I keep for a salad.`, { ...base, 'olive-oil-virgin': 450 }],
    [
      'Made up 140 g NaOH in 280 g water for two loaves and used half of it. 500 g lard.',
      { lard: 500, naoh: 70, water: 140 },
    ],
    [
      'I dissolved 210 g NaOH in 420 g water. A third of that solution went in with 500 g lard, the rest I keep.',
      { lard: 500, naoh: 70, water: 140 },
    ],
    [
      'The lye water was 140 g lye and 300 g water, of which I poured in only half. Lard 500 g.',
      { lard: 500, naoh: 70, water: 150 },
    ],
  ])('%s', reads);

  test.each([
    [`500 g lard, half of it melted first and the other half at trace. ${rest}`, { lard: 500, ...base }],
    [`500 g lard, half of it for the first layer and half of it for the second. ${rest}`, { lard: 500, ...base }],
    [`${rest} Half of it is for my sister.`, base],
    [`${rest} 20 g of lavender, half of it spilled.`, base],
    [
      'I mixed 140 g lye into 300 g water, poured half of it into the lard, stirred, then the other half. 1000 g lard.',
      { lard: 1000, naoh: 140, water: 300 },
    ],
  ])('and all of it where both parts go in: %s', reads);

  test.each([
    'Lard 500 g, lye 70 g, water 150 g. Half of it spilled on the floor.',
    '400 g shea, 500 g olive, half of that is for a hand cream. 120 g lye.',
    'Lard 500 g. Of shea I melted 400 g, a quarter of it is for balm. 120 g lye.',
    'Bought 1 kg of palm and used half of it last week. Lard 500 g, lye 140 g.',
  ])('what nobody can tell is asked: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('what went in gives what was planned its weight', () => {
  test.each([
    [`The castor was to be 80 g, but a part of it clung to the spoon, so only 60 g had actually gone in. ${rest}`, 60],
    [`I wanted 80 g of castor, but the bowl still had a layer in it, so 65 g really went in. ${rest}`, 65],
    [`I weighed out 80 g of castor, spilled a little on the way, weighed again and 70 g went in. ${rest}`, 70],
  ])('%s', (text, castor) => reads(text, { 'castor-oil': castor, ...base }));

  test('a part that stayed behind, with no weight, is asked about', () => {
    for (const told of ['some of it stayed in the jar', 'some went over the side'])
      expect(read(`${rest} I had 100 g palm too but ${told}.`).doubts).toEqual(['corrected']);
  });

  test('what went in is no size of a vessel', () => {
    expect(
      read(`We had a hedgehog fat tin from the fair, 400 g of it went in with 400 g olive. 105 g lye.`).doubts,
    ).toEqual(['unplaced']);
  });
});

describe('two vessels of one thing of which both were used', () => {
  test.each([
    [`Two jars of shea, 80 g in the first and 50 g in the second, I used them both. ${rest}`, 130],
    [`There were two blocks of shea in the fridge, one of 100 g and one of 50 g, I melted both. ${rest}`, 150],
  ])('%s', (text, shea) => reads(text, { 'shea-butter': shea, ...base }));

  test('one of them is asked about', () => {
    expect(
      read(`Two jars of shea, 80 g in the one and 50 g in the other, and I opened one. ${rest}`).doubts,
    ).not.toEqual([]);
  });
});

describe('a fat that is taken back with a reason', () => {
  test.each([
    [`100 g of palm - no, there's none left in the shop, so 90 g of lard. ${rest}`, { lard: 90, ...base }],
    [
      `I'll take 100 g of palm, no, hold on, my wife used that up, so it's 100 g of lard. ${rest}`,
      { lard: 100, ...base },
    ],
    [`100 g palm (no, we were out of that, so 100 g lard). ${rest}`, { lard: 100, ...base }],
    [`100 g palm (no, not the red one, so the pale stuff). ${rest}`, { 'palm-oil': 100, ...base }],
  ])('%s', reads);

  test('without one it is asked about', () => {
    expect(read(`100 g avocado... no, I think that was wrong, and 100 g almond oil. ${rest}`).doubts).toEqual([
      'corrected',
    ]);
  });
});

describe('what counts of two figures', () => {
  test.each([
    [`100 g lard. I'd like more foam, so we'll say 150 g of that rather than 100 g. ${rest}`, { lard: 150, ...base }],
    [
      `Lard 100 g. ${rest} On second thoughts let's take 150 g of the lard rather than the 100.`,
      { lard: 150, ...base },
    ],
    [`They gave me 2 kg of lard, and the whole 2 kg is in the pot now. ${rest}`, { lard: 2000, ...base }],
    [`Lard 200 g, all 200 g of the palm. ${rest}`, { lard: 200, 'palm-oil': 200, ...base }],
    [`Half of my aunt's: she takes 1200 g of olive and 400 g of coconut, I'm taking ${rest}`, base],
    [
      'I meant to do 40% coconut, then thought of my dry hands. So 25% coconut, 75% olive, 800 g in all, 120 g lye, 250 g water.',
      base,
    ],
  ])('%s', reads);

  test.each([
    `${rest} Or hang on, my notebook says the olive was 400 g and I wrote 600 g on the box. One of them must be wrong.`,
    `Lard 500 g, wait, the notebook says the lard is 600 g. No idea which one is right. ${rest}`,
    `500 g lard. ${rest} Hang on, my notebook says the lard was 600 g.`,
  ])('nobody knows: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

describe('what is spoken of without its name', () => {
  test.each([
    [
      'How much lye is a good question, I put 120 g to the 800 g of oils: 600 g olive, 200 g coconut. Water 250 g.',
      base,
    ],
    [
      "He said 'one part lye to seven of fat', so I used 120 g on 800 g of fat: 600 g olive, 200 g coconut. Water 250 g.",
      base,
    ],
    [`I was out of shea, so replaced it with lard one for one, which is 200 g lard. ${rest}`, { lard: 200, ...base }],
    [`Castor for bubbliness, 50 g. ${rest}`, { 'castor-oil': 50, ...base }],
    ['did 200g coconut 600g olive, water 250g, lye weighed twice bc my hands shook, 120g', base],
  ])('%s', reads);

  test('a fat that no list holds is asked about', () => {
    expect(
      read(`Bear fat! A hunter in the family gave me 900 g of it. I'd mix it with 300 g coconut. How much lye?`).doubts,
    ).toEqual(['unheld-fat']);
  });
});
