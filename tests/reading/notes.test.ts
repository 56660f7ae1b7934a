/** Notes below a list: what they change of it with its amounts, and what they tell that is of nothing in the pot. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  return {
    grams: Object.fromEntries(
      [...fats, ...alkali, { id: 'water', grams: waterGrams }].map((one) => [one.id, Math.round(one.grams ?? 0)]),
    ),
    doubts: doubts.map(({ id }) => id),
  };
};

const list = `500 g olive oil
250 g coconut oil
200 g palm oil
50 g castor oil
136 g sodium hydroxide
290 g water`;
const base = {
  'olive-oil-virgin': 500,
  'coconut-oil': 250,
  'palm-oil': 200,
  'castor-oil': 50,
  naoh: 136,
  water: 290,
};
const { 'castor-oil': _castor, ...noCastor } = base;
const noted = (note: string) => read(`Everyday bar\n\n${list}\n\n${note} Is it right?`);

describe('a note changes the list with its amounts', () => {
  test.each<[string, Readonly<Record<string, number>>]>([
    ['No castor left, so I put in 50 g more of the olive instead.', { ...noCastor, 'olive-oil-virgin': 550 }],
    ['The castor was all gone, so I added 50 g extra coconut for it.', { ...noCastor, 'coconut-oil': 300 }],
    ['I used 50 g more coconut instead of the castor.', { ...noCastor, 'coconut-oil': 300 }],
    [
      'There was only 180 g of coconut left, so I made up the missing 70 g with lard.',
      { ...base, 'coconut-oil': 180, lard: 70 },
    ],
    ['The coconut tub gave only 180 g. The other 70 g was lard.', { ...base, 'coconut-oil': 180, lard: 70 }],
    [
      'The palm bag held only 150 g, for the other 50 g I took olive, so 550 g olive altogether.',
      { ...base, 'palm-oil': 150, 'olive-oil-virgin': 550 },
    ],
    ['The NaOH ran out at 116 g, for the missing 20 g I took 31 g KOH.', { ...base, naoh: 116, koh: 31 }],
    [
      'It looked thin, so I mixed an extra 5 g NaOH in 20 g water and poured it in.',
      { ...base, naoh: 141, water: 310 },
    ],
    ['10 g of the lye stayed in the cup, so only 126 g went in.', { ...base, naoh: 126 }],
    [
      '20 g of the olive stuck to the jug, so 480 g is what went in instead of 500.',
      { ...base, 'olive-oil-virgin': 480 },
    ],
    ['Oops: the 200 listed for the palm ought to be 220.', { ...base, 'palm-oil': 220 }],
    ['The olive I had steeped gave 470 g, I topped it up with plain olive to 500 g.', base],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test.each([
    'Ran out of castor, so used 30 g more olive in its place.',
    'The palm bag held only 150 g, for the other 50 g I took olive, so 600 g olive altogether.',
    'The coconut tub gave only 180 g, for the missing 60 g I took olive.',
    'The NaOH tub ended at 110 g. Replaced the last 20 g with 31 g of KOH.',
    'I could have dissolved another 15 g of lye in 40 g of water.',
    '10 g of the lye stayed in the cup, so only 120 g went in.',
    'The 250 listed for the palm should be 300.',
    'The olive I had steeped gave 470 g, I topped it up with sunflower to 500 g.',
    'The olive I had steeped gave 470 g, I topped it up with plain olive to 520 g.',
  ])('%s is asked about, since its figures are not those of the list', (note) =>
    expect(noted(note).doubts).not.toEqual([]),
  );
});

describe('a note tells of nothing in the pot', () => {
  test.each([
    'Lye tub before: 1003 g, after: 867 g. Coconut jar 4 kg now.',
    'Jar of coconut before 900 g, afterwards 650 g.',
    'The loaf weighed 1.39 kg fresh, 1.31 kg after three weeks, 1.24 kg after six. I sold 900 g of it without a label.',
    'Cured weight on 1 June: 880 g.',
    'My silicone moulds are old, they take 110 g each and I filled 9.',
    'Three moulds, 400 g each, and I added nothing else.',
    'One reckoned 120 g NaOH would do, another said 165 g. I used 136 g as listed.',
    'What I plan for the next: some 10 g KOH replacing a bit of the NaOH, and 50 g less palm. But first this one on the rack.',
    'For washing floors take 50 g of it to 5 litres of warm water.',
    'She pours 1 litre more water in hers at the end, I never do.',
    'Warm 40 g of those 290 g water, melt the sugar in it and pour it back to the rest, so there are 290 g again.',
    'Tell me whether 136 g was all right, I changed nothing.',
    'My neighbour runs hers with 90 g shea, dear as it is.',
    'My brother prefers his with 60 g beeswax in it.',
    'My aunt always takes 40 g of shea and 150 g NaOH.',
    'Others take 320 g of water here.',
    'Some people add 30 g of shea. I have never seen why.',
    'Comparison: the club recipe takes 350 g coconut and no palm.',
    'The club’s recipe takes 150 g lye and no palm, for comparison.',
    'I said 30 % coconut in the last video, no, it is 25 %.',
    'In my last post I wrote 40% palm, sorry, no, it is 20%.',
    'Vinegar rinse for the hair: 2 tbsp to a litre.',
    'Rinse with cider vinegar, one tablespoon to a pint of water.',
    'Colour: 1 tbsp cocoa in one half.',
    'I rendered 2 kg of back fat, that gave 1200 g of palm. I used 200 g of it, the remaining 1000 g is in the freezer.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test('what somebody does with hers, and I did too', () =>
    expect(noted('My neighbour makes hers with 40 g shea. I did too.').grams).toEqual({ ...base, 'shea-butter': 40 }));

  test('half of it one liquid, half another, is of the pot where the writer did so', () => {
    const beer = list.replace('290 g water', '290 g beer');
    expect(read(`${beer}\n\nOthers use half beer half water. I don’t.`).doubts).toEqual([]);
    expect(read(`${beer}\n\nI used half beer half water.`).doubts).toEqual(['corrected']);
  });

  test('what everyone else takes is of nobody', () =>
    expect(noted("Everyone here seems to take a third coconut, my skin can't.")).toEqual({ grams: base, doubts: [] }));

  test('a bowl that was weighed with it', () =>
    expect(
      noted('The bowl is 35 g (weighed it empty) and the 250 included it, so there were only 215 g of coconut.'),
    ).toEqual({
      grams: { ...base, 'coconut-oil': 215 },
      doubts: [],
    }));

  test.each([
    'Lye tub before 1003 g, after 851 g.',
    'Jar of coconut before 900 g, afterwards 600 g.',
    'One reckoned 120 g NaOH would do, another said 165 g, so I took 150 g.',
    'One reckoned 120 g would do, another said 165 g. I used 150 g as above.',
    'I took 240 g of the 290 g water.',
    'In my last video I said 30% coconut, some of you asked - no, it’s 35% here.',
    'In comparison with the book I took 150 g lye.',
    'Some people leave the palm out, and so did I.',
    'Colour: cocoa 50 g.',
    'I forgot to tare: the cup weighs 12 g and the 136 included it.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));

  test('water that thins a part of the paste, a sentence after it was thinned', () => {
    const paste = 'sunflower 400 g\ncoconut 300 g\ncastor 100 g\nKOH 190 g\nwater 390 g\n\n';
    expect(
      read(`${paste}Diluted half of the paste with 700 g boiling water. Later another 100 g water to the same half.`),
    ).toEqual({
      grams: { 'sunflower-oil': 400, 'coconut-oil': 300, 'castor-oil': 100, koh: 190, water: 390 },
      doubts: [],
    });
    expect(read(`${paste}Another 100 g water to the same half.`).doubts).not.toEqual([]);
  });
});

const { 'palm-oil': _palm, ...noPalm } = base;

describe('a note says what a fat of the list was', () => {
  test.each<[string, Readonly<Record<string, number>>]>([
    ['Oops, the palm was really lard, same 200 g.', { ...noPalm, lard: 200 }],
    ['The palm turned out to be lard. Same 200 g though.', { ...noPalm, lard: 200 }],
    ['Just read the lid: the palm was actually lard. Same weight, 200 g.', { ...noPalm, lard: 200 }],
    ['What I called palm was lard, 200 g too.', { ...noPalm, lard: 200 }],
    ['Palm was rancid, binned it. Used 150 g lard in its place.', { ...noPalm, lard: 150 }],
    ['Palm went mouldy. Used 150 g of lard in its place.', { ...noPalm, lard: 150 }],
    ['The palm had gone mouldy so I chucked it. In its place 200 g lard.', { ...noPalm, lard: 200 }],
    ['- palm oil: gone off, discarded. 200 g lard instead.', { ...noPalm, lard: 200 }],
    ['The palm smelled off, not used. Replaced with 200 g lard.', { ...noPalm, lard: 200 }],
    ['Out of castor oil, so made it without. The rest as on the card.', noCastor],
    ['No castor left, so I did without this time.', noCastor],
    ['Castor was finished, so I made this batch without it.', noCastor],
    ['Could not get to the shop and had no castor. Made it without.', noCastor],
    ['I was out of lavender, so I made it without.', base],
  ])('%s', (note, grams) => expect(noted(note)).toEqual({ grams, doubts: [] }));

  test.each([
    'The palm was lard, same 250 g.',
    'The palm was rancid, binned half. Used 100 g lard in its place.',
    'Some of the palm was binned. Put 50 g lard in its place.',
    'Out of castor, so made it without the palm.',
    'My sister was out of castor oil, so she made hers without.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('a note says what really went in', () => {
  test.each([
    'I found a crust of dry lye in the cup. Scraped it off and weighed it: 6 g. It never reached the jug. So 130 g went in the soap.',
    'There was lye left in the beaker: 6 g. So only 130 g is in the soap.',
    '6 g of the lye was still stuck in the cup, so 130 g went in the soap.',
    'Lye stuck in the cup: 6 g when I scraped it. So 130 g really went in.',
    'Wrote 136 from memory. The slip says 130, so 130 is what I put in. Leaving the 136 there as a lesson.',
    'The 136 was from memory; the scale showed 130 and 130 is what went in.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: { ...base, naoh: 130 }, doubts: [] }));

  test.each([
    'I found a crust of lye in the cup, 6 g. So 120 g went in the soap.',
    'The slip says 130 and 124, so 130 is what I put in, or 124.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('a part that counts with what it was taken from', () => {
  test.each([
    'Annatto oil: made from 20 g taken out of the 500 olive, so it is counted already.',
    'Colour: annatto in 20 g of the 500 olive (already counted).',
    'For the yellow I took 20 g out of the 500 g of olive and steeped annatto in it; it is included above.',
    'Annatto steeped in 20 g of olive, which comes out of the 500, not on top.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each([
    'I took 20 g out of the 500 olive for my hands, so it never went in.',
    'Annatto oil: made from 20 g taken out of the 400 olive, so it is counted already.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));
});

describe('no wait', () => {
  test.each([
    'Six weeks on the bench when cold, no wait when hot.',
    'Hot process means no wait.',
    'No wait between pouring and cutting.',
    'Cure six weeks. No wait for the guest bars, they went the same day.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: base, doubts: [] }));

  test.each([
    "it's for my sister no wait it's for my mum",
    'I made it on monday no wait on tuesday',
    "It's for the guests, no wait, for us",
  ])('is said of for whom or when: %s', (said) =>
    expect(read(`${list}, ${said}. lye ok?`)).toEqual({ grams: base, doubts: [] }),
  );
  test.each([
    'bar soap no wait liquid soap',
    "it's for one batch no wait it's for two",
    'no wait that is for the other one',
    'it was the lard no wait it was the tallow',
  ])('is asked about: %s', (said) => expect(read(`${list}, ${said}. lye ok?`).doubts).toEqual(['corrected']));

  test('takes a figure back all the same', () =>
    expect(noted('The palm is 250 g. No wait, 150 g.')).toEqual({ grams: { ...base, 'palm-oil': 150 }, doubts: [] }));
});

describe('no, only', () => {
  const dry = list.replace('\n290 g water', '');
  test.each(['beer no, only water 290 g', 'curd water no, only plain water 290 g'])(
    'of what is not there: %s',
    (said) => expect(read(`${dry}, ${said}. Lye ok?`)).toEqual({ grams: base, doubts: [] }),
  );
  test.each(['290 g water, palm no, only lard 200 g', 'lye no, only 130 g, water 290 g'])(
    'of what is weighed is asked about: %s',
    (said) => expect(read(`${dry}, ${said}. Lye ok?`).doubts).toContain('corrected'),
  );
});

describe('superfats of earlier batches', () => {
  const superfat = (note: string) => {
    const told = readRecipe(reader, `olive 500 g\ncoconut 250 g\nlard 250 g\nlye: please tell me\n\n${note}`);
    return { superfat: told.superfat, doubts: told.doubts.map(({ id }) => id) };
  };
  test.each([
    'My first had 8 % superfat and was greasy. The second with 3 % dried me out. So this third shall be 5.5 %.',
    'I did one at 8 % superfat, one at 3 %. This time 5.5 %, please.',
    'The old one had 8 % superfat. Make this one 5.5 %.',
    '8 % superfat was too soft, 3 % too harsh. So 5.5 % for this one.',
  ])('%s', (note) => expect(superfat(note)).toEqual({ superfat: 0.055, doubts: [] }));

  test('of two for this one nobody says which', () =>
    expect(superfat('Superfat 5 %.\nAt the foot of the sheet: this recipe is made with superfat 10 %.').doubts).toEqual(
      ['two-amounts'],
    ));
});

describe('lye of a list that is weighed as a solution', () => {
  const solution = (note: string) =>
    read(`olive 500 g\ncoconut 250 g\nlard 250 g\nlye 282 g from my bottle\nwater 130 g\n\n${note}`);
  const fats = { 'olive-oil-virgin': 500, 'coconut-oil': 250, lard: 250 };

  test.each([
    [
      'I keep a can of ready mixed solution, one part NaOH to one part water. I weighed 282 g of that solution.',
      141,
      271,
    ],
    ['I keep a bottle of solution, 50 %. I weighed 282 g of that solution.', 141, 271],
  ])('%s', (note, naoh, water) => expect(solution(note)).toEqual({ grams: { ...fats, naoh, water }, doubts: [] }));

  test.each([
    'I keep a can of ready mixed solution. I weighed 282 g of that solution.',
    'I keep a can of ready mixed solution, one part NaOH to one part water, 40 %. I weighed 282 g of that solution.',
  ])('%s is asked for its strength', (note) => expect(solution(note).doubts).toContain('stock-strength'));

  test('lye mixed from two weights behind a fat is none of it', () =>
    expect(read('olive 500 g, coconut 250 g, lard 250 g. Lye solution: 141 g NaOH + 280 g water. Good?')).toEqual({
      grams: { ...fats, naoh: 141, water: 280 },
      doubts: [],
    }));
});

test('of how many oils a soap is made is a count', () =>
  expect(read(`Four-oil bar\n\n${list}`)).toEqual({ grams: base, doubts: [] }));
