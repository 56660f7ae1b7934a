/** What notes around a list make of it: fractions of packs, dropped plans, differences from others, names and figures put right. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
/** What is in the pot, in whole grams by ids; null where it is asked. */
const potOf = (post: string) => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, post);
  if (doubts.length > 0) return null;
  const water = waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }];
  return Object.fromEntries([...fats, ...alkali, ...water].map(({ id, grams }) => [id, Math.round(grams ?? 0)]));
};

describe('a part of a pack', () => {
  const pot = (grams: number) => ({
    'olive-oil-virgin': 450,
    'coconut-oil': 250,
    'cocoa-butter': grams,
    naoh: 114,
    water: 260,
  });
  const rest = '450 g olive and 250 g coconut. 114 g lye, 260 g water.';
  test.each([
    [`Cut a fifth off a 500 g block of cocoa butter and melted that with ${rest}`, 100],
    [`Sliced two fifths off a 500 g slab of cocoa butter, melted with ${rest}`, 200],
    [`An eighth of an 800 g block of cocoa butter, with ${rest}`, 100],
    [`${rest} Scooped a tenth out of a 1 kg jar of cocoa butter and melted that in.`, 100],
    [`${rest} The cocoa butter is a 500 g block, a fifth of it went in.`, 100],
    [`${rest} Got a third off the 300 g block of cocoa butter at the shop, all of it is in.`, 300],
    [`${rest} My fifth 500 g block of cocoa butter went in.`, 500],
  ])('%s', (post, grams) => expect(potOf(`${post} Ok?`)).toEqual(pot(grams)));
});

describe('a plan that was dropped', () => {
  const list = 'Olive 350 g, lard 350 g, lye 92 g, water 220 g.';
  const pot = { 'olive-oil-virgin': 350, lard: 350, naoh: 92, water: 220 };
  test.each([
    'Was going to put 50 g castor in, no longer am.',
    'I was gonna add 50 g castor, decided not to.',
    'Meant to add 50 g castor, not doing that any more.',
    'Was planning on 60 g castor as well. No longer am.',
    "I'd meant to put 50 g of cocoa butter in too but it smelled off so it went in the bin.",
    'I wanted 40 g shea in this but it had gone rancid.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual(pot));

  test.each([
    ['I wanted 50 g castor in it, changed my mind and put in 50 g shea.', { ...pot, 'shea-butter': 50 }],
    ['I was going to leave out the 50 g castor, but changed my mind.', { ...pot, 'castor-oil': 50 }],
    ['I was going to throw out the 50 g castor, not any more.', { ...pot, 'castor-oil': 50 }],
    ['Wanted 50 g castor in, it is in.', { ...pot, 'castor-oil': 50 }],
  ])('%s', (said, grams) => expect(potOf(`${list} ${said} Ok?`)).toEqual(grams));

  const soft = { 'sunflower-oil': 400, 'coconut-oil': 200, water: 420 };
  test.each([
    [
      'First plan was a hard bar with 88 g NaOH, but then I noticed the tub is caustic potash, so: 400 g sunflower, 200 g coconut, 138 g of the KOH, 420 g water.',
      { ...soft, koh: 138 },
    ],
    ['400 g sunflower, 200 g coconut, 138 g KOH, 420 g water. The plan was 88 g NaOH.', { ...soft, koh: 138 }],
    [
      'I planned 50 g NaOH and 60 g KOH for 400 g sunflower, 200 g coconut, 420 g water.',
      { ...soft, naoh: 50, koh: 60 },
    ],
  ])('%s', (post, grams) => expect(potOf(`${post} Ok?`)).toEqual(grams));

  test('the other alkali in the tub is asked about', () =>
    expect(
      potOf('400 g sunflower, 200 g coconut, 138 g NaOH, 420 g water. I noticed the tub is caustic potash.'),
    ).toBeNull());
});

describe('what others take', () => {
  const fats = '600 g olive, 200 g coconut.';
  const pot = (naoh: number) => ({ 'olive-oil-virgin': 600, 'coconut-oil': 200, naoh, water: 250 });
  test.each([
    ['My sister uses 120 g lye, I go 5 g under that. Water 250 g.', 115],
    ['The sheet says 120 g lye, mine is 5 g less. Water 250 g.', 115],
    ['Tom takes 110 g lye, I put in 5 g more than him. Water 250 g.', 115],
    ['115 g lye, that is 5 g less than my sister takes. Water 250 g.', 115],
    ['120 g lye. That is 5 g under what my sister uses. Water 250 g.', 120],
    ['250 g water. 108 g lye. I took 5 g less than that.', 103],
    ['108 g lye, 250 g water. My aunt uses 120 g lye, I never go 5 g over that.', 108],
    ["108 g lye, 250 g water. My aunt's 60 g is for 450 g, so I scaled it.", 108],
    ['108 g lye, 250 g water. My sister uses 110 g, but that is for 800 g of lard.', 108],
  ])('%s', (said, naoh) => expect(potOf(`${fats} ${said} Ok?`)).toEqual(pot(naoh)));

  test.each([
    'How much lye for 750 g beef tallow? My neighbour always takes 110 g but that is for her 800 g of lard.',
    'How much lye for 750 g beef tallow? My aunt takes 110 g for her 800 g of lard.',
  ])('%s', (post) => expect(potOf(post)).toEqual({ 'tallow-beef': 750 }));

  test('of which row it is told nobody knows', () =>
    expect(potOf(`${fats} 108 g lye, 250 g water. I took 5 g less than that. Ok?`)).toBeNull());

  test('it may have been taken, too', () =>
    expect(
      potOf('How much lye for 800 g lard? My aunt takes 110 g for her 800 g of lard, so I took that.'),
    ).toBeNull());

  test.each([
    'Notes say 240 g coconut. My son did the weighing and swears it was 420 g. Olive 500 g, lye 106 g, water 250 g.',
    '240 g coconut, 500 g olive, 106 g lye, 250 g water. The lye was weighed by my son who swears it was 116.',
    'My notebook has 240 g coconut, my daughter weighed it and is sure it was 420 g. Olive 500 g, lye 106 g, water 250 g.',
  ])('who weighed says another figure: %s', (post) => expect(potOf(`${post} Ok?`)).toBeNull());

  const own = { 'coconut-oil': 240, 'olive-oil-virgin': 500, naoh: 106, water: 250 };
  test.each([
    '240 g coconut, 500 g olive, 106 g lye, 250 g water. My sister weighed it and says the coconut was 260 g but she is wrong, I checked.',
    '240 g coconut, 500 g olive, 250 g water. My bf weighed the lye because I was scared, he says 106 g.',
    '240 g coconut, 500 g olive, 106 g lye, 250 g water. My sister swears it was 130 g last time in her pot.',
  ])('%s', (post) => expect(potOf(`${post} Ok?`)).toEqual(own));
});

describe('what nobody weighed', () => {
  const list = '800 g olive, 200 g coconut, 137 g lye, 320 g water.';
  test.each([
    'Olive ran low so part of it is sunflower.',
    "I ran low on olive and used sunflower for part of it, it's just 800 g of the two together. And another splash of castor at the end, maybe a ladle?",
    'Then a glug of castor, maybe a ladle?',
    'The olive is sunflower.',
  ])('%s', (said) => expect(potOf(`${list} ${said} Ok?`)).toBeNull());

  const pot = { 'olive-oil-virgin': 800, 'coconut-oil': 200, naoh: 137, water: 320 };
  test.each(["I'm low on olive now and will buy sunflower tomorrow.", 'Should I add a splash of castor?'])(
    '%s',
    (said) => expect(potOf(`${list} ${said} Ok?`)).toEqual(pot),
  );
});

describe('put right', () => {
  const list = 'Olive oil 500 g\nCoconut oil 250 g\nPalm oil 250 g\nLye 128 g\nWater 300 g\n\n';
  const pot = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'palm-oil': 250, naoh: 128, water: 300 };
  test.each([
    ["Sorry, can't read my own handwriting: the palm is 150, not 250.", { ...pot, 'palm-oil': 150 }],
    ["Couldn't read my own sevens, the palm is 170 g.", { ...pot, 'palm-oil': 170 }],
    ["I can't read my own handwriting, the palm may be 150.", null],
    ['Then the palm went up from 250 to 280.', { ...pot, 'palm-oil': 280 }],
    ['Palm oil went up from 5 to 8 euros.', pot],
  ])('%s', (said, grams) => expect(potOf(`${list}${said} Lye all right?`)).toEqual(grams));

  const kernel = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'palm-kernel-oil': 250, naoh: 128, water: 300 };
  test.each([
    "where I put palm I mean palm kernel, that's what's on the bag.",
    'By palm I mean palm kernel.',
    "Where it says palm, that's palm kernel oil.",
  ])('%s', (said) => expect(potOf(`${list}${said} Ok?`)).toEqual(kernel));

  test.each(['Do I mean palm or palm kernel?', 'When it says palm I never use lard.'])('%s', (said) =>
    expect(potOf(`${list}${said} Ok?`)).toEqual(pot),
  );
});

describe('so much only was there, or came on top', () => {
  test.each([
    ["Card says 500 g lard, I only had 350 g so it's 350. Plus 200 g coconut. Lye 76 g, water 180 g.", 350],
    ["Lard 500 g (only had 350, so it's that), 200 g coconut. Lye 76 g, water 180 g.", 350],
    ['Lard 350 g (only 2 packs left), 200 g coconut. Lye 76 g, water 180 g.', 350],
    ['200 g coconut, and the lard went up from 300 to 350. Lye 76 g, water 180 g.', 350],
    ['200 g coconut, lard was cut from 500 g down to 350 g. Lye 76 g, water 180 g.', 350],
  ])('%s', (post, lard) => expect(potOf(`${post} Ok?`)).toEqual({ lard, 'coconut-oil': 200, naoh: 76, water: 180 }));

  const pot = { 'hemp-seed-oil': 300, 'olive-oil-virgin': 300, 'coconut-oil': 300, naoh: 128, water: 250 };
  test.each([
    "This morning I posted 300 g hemp, 300 g olive, 200 g coconut, 110 g lye, 250 g water. I've since added another 100 g of coconut and another 18 g of lye.",
    "Update to my post (300 g hemp, 300 g olive, 200 g coconut, 110 g lye, 250 g water):\nit's not poured yet. I've since added another 100 g of coconut to the pot and another 18 g of lye to the lye water, no more water.",
  ])('%s', (post) => expect(potOf(`${post} Ok?`)).toEqual(pot));

  test.each([
    ['Swept up, binned that, put the cup back on the scales: 118 g.', 118],
    ['Swept up and put back what I could, cup back on the scales: 118 g.', null],
  ])('%s', (said, naoh) =>
    expect(
      potOf(`Weighed 130 g lye and then knocked the cup. ${said} Water 280 g. Oils 800 g olive, 110 g coconut. Ok?`),
    ).toEqual(naoh === null ? null : { 'olive-oil-virgin': 800, 'coconut-oil': 110, naoh, water: 280 }),
  );

  test('is the first ok?', () =>
    expect(
      potOf(
        '1st: 550 g lard, 150 g coconut, 100 g lye, 230 g water\n2nd: 550 g lard, 150 g sunflower, 93 g lye, 225 g water\n\nSecond is just an idea. Is the first ok?',
      ),
    ).toEqual({ lard: 550, 'coconut-oil': 150, naoh: 100, water: 230 }));
});
