/** What a post tells of other versions than the one of its list. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, superfat, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries([...fats, ...alkali].map(({ id, grams }) => [id, Math.round(grams)])),
    superfat,
    doubts: doubts.map(({ id }) => id),
  };
};
const list = 'olive 600 g\nshea 200 g\ncoconut 200 g\nlye 140 g\nwater 300 g';
const listed = { 'olive-oil-virgin': 600, 'shea-butter': 200, 'coconut-oil': 200, naoh: 140 };

describe('the versions before the one of the list are left out', () => {
  test.each([
    `${list}\nv1 with lard instead of shea: went orange\nv2 = same but 7% sf\nv3 = above\nIs v3 ok?`,
    `${list}\nversion 1 had tallow instead of shea and was waxy\nversion 2 the one above`,
    `${list}\n\nfirst try: lard in place of shea\nsecond try: as listed`,
    `Soap rev C\n${list}\nrev A: 30% lard, too soft\nrev B: lard swapped for the coconut`,
    `Bar v2\n${list}\nv1 w/o shea`,
    `My son turns 7.\nSecond try of the face bar, Sunday.\n\nFirst try: 900 g coconut, no superfat to speak of.\n\nSecond try, what I have weighed:\n${list}`,
    `Ledger R-022, harbour soap\n${list}\nR-021 had lard 300 g instead of the olive; R-020 was all coconut.`,
    `LOG\nbatch: 0058\n${list}\n0055  shea was 300, cracked lengthwise\n0057  like this one but with lard 250 g`,
    `${list}\nEarlier ones: (1) 500 g of lard, fell apart. (2) Shea only ten g, left halos. (3) Today.`,
    `4th attempt.\n${list}\n#1 separated. #2 I swapped the shea for lard. #3 had lye 130 g and bit. Is #4 ok?`,
    `${list}\nOur green bar (2021) had no shea, no coconut: soft and dull.`,
    `${list}\nMy sister's recipe has 120 lye but for other oils, so please not that.`,
    `Trial 7\n${list}\nHardness 3/5 (trial 6 with 320 g shea: 5/5, but it split).`,
    `Test no. 4\n${list}\nTest 3 with 152 g lye: crumbly. Test 5 will get 60 g castor.`,
    `Experiment 2\n${list}\nVerdict: keep. In exp. 3 replace 80 g olive by castor.`,
    `${list}\nmould C / lot K12 / 9 bars\nK11 had 12 g more lye and was binned.`,
    `Bar B7\n${list}\nB8 had 320 g shea.`,
    `item;g\n${list.replaceAll(/ (?=\d)/g, ';').replaceAll(' g', '')}\nremark;cut after a day. Batch 06 had 150 lye and no shea`,
  ])('%s', (text) => expect(read(text)).toEqual({ grams: listed, superfat: null, doubts: [] }));

  test('and the answer says so', () => {
    const { assumptions, fates } = readRecipe(reader, `${list}\nv1: 300 g lard instead of shea\nv2: the one above`);
    expect(assumptions.map(({ text }) => text)).toContain(
      'I left out what is told of other versions: “v1: 300 g lard instead of shea”.',
    );
    expect(fates).toContainEqual({ text: '300', fate: 'aside', why: 'of another version' });
  });
});

describe('what is told of the list by its number, or of one to come, stays', () => {
  test.each([
    [`${list}\nv2 is with lard instead of shea. is v2 ok?`, { ...listed, lard: 200 }],
    [`Bar v2\nv2 is with lard instead of shea, v1 was as below\n${list}`, { ...listed, lard: 200 }],
  ])('%s', (text, grams) => {
    const { 'shea-butter': _, ...rest } = grams as Record<string, number>;
    expect(read(text).grams).toEqual(rest);
  });

  test.each([
    `Trial 7\n${list}\nTrial 7 took five minutes.`,
    'Recipe #9\n#1 olive 600 g\n#2 shea 200 g\n#3 coconut 200 g\n#4 lye 140 g\n#5 water 300 g\nis it ok?',
    'v1: olive 500 g, lard 500 g, lye 137 g\nv2: olive 600 g, shea 200 g, coconut 200 g, lye 140 g\nis v2 ok?',
  ])('%s', (text) => expect(read(text)).toEqual({ grams: listed, superfat: null, doubts: [] }));
});

test('what a version takes from the one before is of the list', () =>
  expect(read(`Trial 7\n${list}\nTrial 7 has 12 g more lye.`).doubts).not.toEqual([]));

describe('what a row used to be is not what it is', () => {
  const fats = 'tallow 900 g\ncoconut 300 g\nolive 300 g\n';
  const grams = { 'tallow-beef': 900, 'coconut-oil': 300, 'olive-oil-virgin': 300 };
  test.each([
    `${fats}lye  used to be 190 g when I put in 1200 g tallow and no olive; not worked out for the above`,
    `${fats}lye: used to be 190 g with the palm in it, not yet reckoned for this list`,
  ])('%s', (text) => expect(read(text)).toEqual({ grams, superfat: null, doubts: [] }));

  test('where it says what it is now, that counts', () =>
    expect(read(`${fats}lye used to be 190 g, now 205 g`).grams).toEqual({ ...grams, naoh: 205 }));

  test('lye of which nobody reckoned anything is what it is', () =>
    expect(read(`${fats}lye was 205 g, not worked out, by feel`).grams).toEqual({ ...grams, naoh: 205 }));

  test('a figure that got lost is no lye that got lost', () =>
    expect(read(`${fats}The lye figure got lost in the move. How much sodium hydroxide?`)).toEqual({
      grams,
      superfat: null,
      doubts: [],
    }));
});

describe('a range is asked about, whatever is said of it', () => {
  test.each([
    'olive 400 g\ncoconut 200 g\navocado 60 to 90 g, as it comes\nlye 92 g\nwater 190 g',
    'lard 500 g\ncoconut 250 g\ncastor 40-60 g, it varies with what I have left\nlye 112 g\nLather 4/5, hardness 3/5.',
    'olive 500 g\ncoconut 250 g\ncocoa butter 50–80 g, whatever the tin gives when it is scraped\nNaOH 112 g',
  ])('%s', (text) => expect(read(text).doubts).toEqual(['range']));
});
