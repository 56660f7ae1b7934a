/** What people of a chat put right with a star, ask and answer, propose and turn down. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, superfat, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries(
      [...fats, ...alkali, ...(waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }])].map((one) => [
        one.id,
        one.grams,
      ]),
    ),
    superfat,
    doubts: doubts.map(({ id }) => id),
  };
};
const [olive, coconut, castor] = ['olive-oil-virgin', 'coconut-oil', 'castor-oil'] as const;

test.each([
  'gran 18:05: 300 g olive oil\ngran 18:05: and 300 g coconut\ngran 18:09: lye 94 g water 200 g',
  'me 18:02: what did you put in\ngran 18:05: 300 g olive oil\ngran 18:06: 300 g coconut\nme 18:07: lye?\ngran 18:09: lye 94 g water 200 g',
  '18:05: 300 g olive\n18:06: 300 g coconut\n18:06:30 94 g lye, 200 g water',
])('the time of a line is none of its figure: %s', (text) =>
  expect(read(text)).toMatchObject({ grams: { [olive]: 300, [coconut]: 300, naoh: 94, water: 200 }, doubts: [] }),
);

describe('a line with a star', () => {
  test.each([
    ['600 g olive\n300 g coconut\n136 g naoh\n*250 g coconut', { [olive]: 600, [coconut]: 250, naoh: 136 }],
    [
      'olive 600g, coconut 300g, lye 125g, water 300\n*lye 129',
      { [olive]: 600, [coconut]: 300, naoh: 129, water: 300 },
    ],
    ['lard 800g\nolive 200g\nlye 113g\n*131g\nwater 300g', { lard: 800, [olive]: 200, naoh: 131, water: 300 }],
    ['lard 800g olive 200g lye 101g water 300g\n*131', { lard: 800, [olive]: 200, naoh: 131, water: 300 }],
    ['olive 400g\n*450\nnaoh 60g\n*58', { [olive]: 450, naoh: 58 }],
    ['400g olive oil\n200g shea butter\nsorry *mango butter\nhow much lye', { [olive]: 400, 'mango-butter': 200 }],
    ['500g olive 200g palm, lye pls\npalm kernel*', { [olive]: 500, 'palm-kernel-oil': 200 }],
    ['Olive 540g\nlue 74g\n*lye\nwater 150g', { [olive]: 540, naoh: 74, water: 150 }],
    ['500g olive 100g lard\nlye 79g\n80g lard*', { [olive]: 500, lard: 80, naoh: 79 }],
    ['500g olive 200g castor 92g naoh\n*550 olive not 500 sry fat fingers', { [olive]: 550, [castor]: 200, naoh: 92 }],
    ['500g olive 200g castor 92g naoh\n*550 olive, dunno why i typed 500', { [olive]: 550, [castor]: 200, naoh: 92 }],
    ['500g olive 92g naoh\n*castor 200g too i forgot', { [olive]: 500, [castor]: 200, naoh: 92 }],
    ['500g olive 200g castor 92g naoh\n250 castor* not 200 lol', { [olive]: 500, [castor]: 250, naoh: 92 }],
    ['500g olive 200g castor 92g naoh\n*olive 550 my keyboard hates me', { [olive]: 550, [castor]: 200, naoh: 92 }],
  ])('%s', (text, grams) => {
    expect(read(text)).toEqual({ grams, superfat: null, doubts: [] });
  });
  test.each([
    ['500g lard 250g olive\nsuperfat 4%\n*6%\nhow much naoh?', 0.06],
    ['500g lard 250g olive\nsf 4\n*7\nhow much naoh?', 0.07],
    ['500g lard 250g olive, lye?\n*lye for 8% superfat', 0.08],
  ])('%s', (text, superfat) => {
    expect(read(text)).toEqual({ grams: { lard: 500, [olive]: 250 }, superfat, doubts: [] });
  });
  test.each([
    'lard 800g\nolive 200g\nlye 13g\n*131g\nwater 300g',
    'lard 650g coconut 200g olive 150g, how much lye\n*175',
    '400g olive 200g canola how much lye for that\n*castor',
    '500g olive 250g coconut\n*100g castor\nlye?',
    '16g olive 8g coconut how much lye\n*oz',
    '500g olive 200g coconut 92g naoh\n*250 coconut if you want it harder',
  ])('is asked about: %s', (text) => {
    expect(read(text).doubts).toContain('corrected');
  });
  test.each([
    '*olive 540g\n*coconut 200g\n*lye 104g',
    '* olive 540g\n* coconut 200g\nlye 104g',
    'olive 540g\ncoconut* 200g\nlye 104g\n\n*the 76 degree kind',
    'olive 2 * 270 g\ncoconut 200 g\nlye 104 g',
    'olive 540g\ncoconut 200g\nlye 104g\n*sorry for the typos',
    'olive 540g\ncoconut 200g\nlye 104g\n*coconut 200g',
  ])('puts nothing right: %s', (text) => {
    expect(read(text)).toEqual({ grams: { [olive]: 540, [coconut]: 200, naoh: 104 }, superfat: null, doubts: [] });
  });
});

describe('what one asks and another answers', () => {
  test.each([
    '[18:03] Mo: 500g lard and 300g coconut\n[18:05] Al: superfat?\n[18:05] Mo: 6\n[18:06] Al: ok how much lye',
    'Mo: 500 g lard 300 g coconut, lye?\nAl: superfat?\nMo: 6',
    'Al — superfat?\nMo — 6%\nAl — fats?\nMo — 500g lard, 300g coconut\nAl — so how much naoh',
    '500 g lard 300 g coconut, lye please\n- what superfat?\n- 6',
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { lard: 500, [coconut]: 300 }, superfat: 0.06, doubts: [] });
  });
  test.each([
    '3/5/24, 9:15 PM - Mo: 620g rapeseed 380g lard\n3/5/24, 9:16 PM - Mo: 128 lye\n3/5/24, 9:16 PM - Al: and water?\n3/5/24, 9:19 PM - Mo: 290 i think',
    '12/05, 21:15 - Mo: 620g rapeseed 380g lard, 128 lye\n12/05, 21:16 - Al: water?\n12/05, 21:19 - Mo: 290',
    'rapeseed 620g\nlard?\n380g\nlye 128g\nwater?\n290g',
  ])('%s', (text) => {
    expect(read(text)).toEqual({
      grams: { 'canola-oil': 620, lard: 380, naoh: 128, water: 290 },
      superfat: null,
      doubts: [],
    });
  });
  test.each([
    '> How much lard in the end?\n620 g, I finished the tub.\n> And did you keep the coconut?\nYes but only 380 g.\n> Lye?\n128 g\n> Water?\n290 g',
    'Any coconut?\nYes, but only 380 g.\nHow much lard did you use?\n620 g\nlye?\n128 g, weighed twice.\nwater?\n290 g',
  ])('in whole sentences: %s', (text) => {
    const grams = { lard: 620, [coconut]: 380, naoh: 128, water: 290 };
    expect(read(text)).toEqual({ grams, superfat: null, doubts: [] });
  });
  test.each([
    'coconut 380 g, lard 620 g\nlye?\n128 g in 290 g water',
    '> how much lye did u use?\n128 g with 290 g water. fats 380 g coconut, 620 g lard\n> ok',
    '> how much lard did you put in?\n620 g. rest is 380 g coconut, 128 lye 290 water\n> and did it crack\nno',
    '[10:02] Mia: fats?\n[10:03] Tom: lard 620 g, coconut 380 g\n[10:04] Mia: clay?\n[10:04] Tom: yes a teaspoon\n[10:04] Mia: lye?\n[10:05] Tom: 128 g in 290 g water\n\nIs it ok?',
  ])('with more behind it that has figures of its own: %s', (text) => {
    const { grams, doubts } = read(text);
    expect([grams, doubts]).toEqual([{ lard: 620, [coconut]: 380, naoh: 128, water: 290 }, []]);
  });
  test.each([
    '> how much lye did you put in the 620g lard 380g coconut one\n128g\nand 290 water\nright?',
    '> what lye was in the 620g lard, 380g coconut soap?\n128 g, with 290 g water',
    '> how much water with the 128g lye\n290g\nit was 620g lard 380g coconut',
    '> how much lard in the 128g lye bar?\n620g\nand 380g coconut, 290g water',
  ])('of a batch that the question weighs: %s', (text) => {
    const { grams, doubts } = read(text);
    expect([grams, doubts]).toEqual([{ lard: 620, [coconut]: 380, naoh: 128, water: 290 }, []]);
  });
  test.each([
    '> how much lye in the 620g lard one?\nnot sure yet, how much should it be',
    '> how much lye for 620g lard\nwith 5 superfat',
  ])('and asks for the lye where nobody answers: %s', (text) => {
    expect(read(text)).toMatchObject({ grams: { lard: 620 }, doubts: [] });
  });
  test.each(['112 g or so, maybe 121 g. 620 g lard', '112 g, or 121 g with 290 g water'])(
    'of two figures is asked about: %s',
    (answer) => expect(read(`380 g coconut, 620 g lard\nlye?\n${answer}`).doubts).not.toEqual([]),
  );
  test('and is asked about where more is said', () => {
    expect(read('How much lard?\n500 g, but I spilled some.\nCoconut?\n300 g\nlye?\n110 g').doubts).not.toEqual([]);
  });
  test.each([
    ['500 g olive 200 g coconut, lye 95 g, water?\n200 g castor too', { naoh: 95 }],
    ['olive 500 g, coconut 200 g, naoh 95 g, water? oh and 200 g castor as well', { naoh: 95 }],
    ['500 g olive 200 g coconut, water 200 g, lye?\n200 g castor too', { water: 200 }],
    ['500 g olive 200 g coconut, 200 g castor, 95 g lye, water? 200 g', { naoh: 95, water: 200 }],
  ])('what nobody answers takes no figure of a row: %s', (text, wet) => {
    expect(read(text)).toEqual({
      grams: { [olive]: 500, [coconut]: 200, [castor]: 200, ...wet },
      superfat: null,
      doubts: [],
    });
  });
  test.each(['idk 5 maybe 8', '5-8'])('is asked about: %s', (answer) => {
    expect(read(`500 g olive 200 g coconut, lye?\nsuperfat?\n${answer}`).doubts).not.toEqual([]);
  });
});

describe('who speaks is no ingredient', () => {
  const fats = { [olive]: 500, [coconut]: 200 };
  test.each([
    ['Bea: 500g olive and 200g coconut, lye for that?\nJo: what superfat\nBea: 6\nJo: ok', 0.06],
    ['Bea: 500g olive and 200g coconut, lye for that?\nJo: how much superfat?\nBea: make it 6', 0.06],
    ['Bea: 500g olive and 200g coconut, lye for that?\nJo: superfat?\nBea: none', 0],
    ['Bea: making a bar, lye?\nJo: fats?\nBea: 500g olive and 200g coconut\nJo: sf\nBea: 8', 0.08],
    ['Bea: 500g olive 200g coconut, how much lye\nJo: swap the coconut for babassu\nBea: no babassu here', null],
    ['Bea: 500g olive 200g coconut, how much lye\nJo: u should put 50g castor in\nBea: no castor here', null],
  ])('%s', (text, superfat) => {
    expect(read(text)).toEqual({ grams: fats, superfat, doubts: [] });
  });
  test.each([
    'Olive: 500 g\nCoconut: 200 g\nLye: 98 g\nOlive: extra virgin',
    '500 g\nolive\n200 g\ncoconut\n98 g\nlye',
  ])('a label that names something stays: %s', (text) => {
    expect(read(text)).toEqual({ grams: { ...fats, naoh: 98 }, superfat: null, doubts: [] });
  });
  test.each([
    '🫒 oil 500g 🥥 oil 200g, lye?',
    'Coconut 🥥 oil 200g and olive oil 🫒 500g how much lye',
    'thx 4 the help b4, gr8! 2day 500g olive n 200g coconut, lye? c u l8r m8',
  ])('nor are signs and sounds: %s', (text) => {
    expect(read(text)).toEqual({ grams: fats, superfat: null, doubts: [] });
  });
});

describe('a proposal', () => {
  const list = 'Mo: 600 g lard 200 g coconut, 112 g lye, ok?\n';
  test.each([
    "Al: I'd swap half the lard for tallow hun\nMo: nah keeping it as is",
    "Al: I'd replace the coconut with babassu\nMo: no thanks, I'll stick with mine",
    'you could use tallow instead of the lard\nnah happy with it as it is',
    'Al: add 50 g castor\nMo: nope, leaving it as is',
    'Al: id add 50g castor for lather\nMo: nah leaving it',
    'Al: maybe leave out the coconut\nMo: no i like it how it is',
  ])('that is turned down: %s', (talk) => {
    expect(read(list + talk)).toEqual({ grams: { lard: 600, [coconut]: 200, naoh: 112 }, superfat: null, doubts: [] });
  });
  test.each([
    'Al: swap the lard for tallow\nMo: ok will do',
    'Swapped the lard for tallow. No idea if it matters.',
    'Swap the lard for tallow. Keep the coconut as it is.',
    "I'd swapped the lard for tallow.",
  ])('that is not: %s', (talk) => {
    expect(read(list + talk).grams).toEqual({ 'tallow-beef': 600, [coconut]: 200, naoh: 112 });
  });
  test('that nobody answers is asked about', () => {
    expect(read(`${list}Al: id swap half the lard for tallow`).doubts).toEqual(['corrected']);
  });
  test.each([
    'Add 112 g lye to 250 g water. No stick blender needed.',
    'Use 112 g lye. Leaving it to cool now.',
    'Take 112 g lye. No good scale here.',
  ])('a step is none: %s', (step) => {
    expect(read(`600 g lard, 200 g coconut. ${step}`).grams).toMatchObject({ lard: 600, [coconut]: 200, naoh: 112 });
  });
  test('what somebody saw is none', () => {
    expect(read(`${list}Al: i was there, u put 150 g lye in\nMo: no\nAl: yes`).doubts).not.toEqual([]);
  });
});

describe('a name denied once more', () => {
  test.each([
    "five hundred grams olive and forty grams shea no not shea I mean castor, what's the lye",
    '500 g olive, 40 g shea, not shea, castor. How much lye?',
    '500 g olive and 40 g shea sorry not shea, castor, how much lye',
    "olive 500 g\nshea 40 g oh no not shea it's castor\nhow much lye",
  ])('%s', (text) => {
    expect(read(text)).toEqual({ grams: { [olive]: 500, [castor]: 40 }, superfat: null, doubts: [] });
  });
  test.each([
    '500 g olive, 200 g lard, not palm, 40 g castor, 93 g lye',
    '500 g olive, 200 g lard (not the lard oil), 40 g castor, 93 g lye',
  ])('another one stays: %s', (text) => {
    expect(read(text).grams).toEqual({ [olive]: 500, lard: 200, [castor]: 40, naoh: 93 });
  });
});

describe('a swap in a line above a question', () => {
  test.each([
    'haha no coconut left so babassu instead, same amount\nlye 105 still right?',
    'ran out of the coconut so babassu went in instead same weight\nnaoh 105g still right?',
  ])('%s', (talk) => {
    expect(read(`600g olive 150g coconut\n${talk}`).grams).toEqual({ [olive]: 600, 'babassu-oil': 150, naoh: 105 });
  });
});

describe('a share behind a question for lye', () => {
  test.each(['overvet 6%', 'överfett 6 %', 'overfedt 6%', 'przetłuszczenie 6%'])('%s', (wish) => {
    expect(read(`600 g olive 200 g lard, how much lye? ${wish}`)).toMatchObject({ superfat: 0.06, doubts: [] });
  });
  test('of a word that nobody knows is asked about', () => {
    expect(read('600 g olive 200 g lard how much lye? blarf 6%').doubts).toEqual(['unknown-fat']);
  });
  test.each(['sugar 3%', 'lavender eo 3%', 'clay 2%'])('of what is no fat is no superfat: %s', (additive) => {
    expect(read(`600 g olive\n200 g lard\n${additive}\nhow much lye?`)).toMatchObject({ superfat: null, doubts: [] });
  });
});
