// What is written around a whole list and is of nothing in the pot, and what looks like it and is.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { potOf } from './pot.ts';

const asListed = {
  'olive-oil-virgin': 480,
  'coconut-oil': 240,
  'palm-oil': 220,
  'castor-oil': 60,
  naoh: 138,
  water: 310,
};
const list = 'olive 480 g\ncoconut 240 g\npalm 220 g\ncastor 60 g\nNaOH 138 g\nwater 310 g';
const bare =
  'Stearic acid 210\nTallow 140\nCoconut 90\nCastor 40\nKOH 84\nNaOH 13\nWater 210\n\nAll in grams. It melts at 70 C in a double boiler.';
const noted = (note: string, title = 'Kitchen bar') => potOf(`${title}\n\n${list}\n\n${note}\n\nIs the lye right?`);

describe('what a label says is of another time', () => {
  test.each([
    'Variation: shea instead of the castor.',
    'Variation: add 100 g lard.',
    'Vegan version: swap the palm for 60 g of babassu.',
    'Palm-free version: leave out the palm.',
    'next idea: swap the palm for lard, not here',
    'Ideas: double the castor, 20 g honey.',
    'For v2: lard instead of palm.',
    'Tip: 20 g of castor more makes it lather.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each([
    ['My version: lard instead of the palm.', { lard: 220 }],
    ['Edit: swap the palm for lard.', { lard: 220 }],
  ])('%s is of the pot', (note, grams) => expect(noted(note).grams).toMatchObject(grams));

  test.each(['My variation: olive 500 g, lard 300 g, NaOH 105 g, water 200 g'])('%s is asked about', (note) =>
    expect(noted(note).doubts).not.toEqual([]),
  );

  test.each([
    'I would have loved 80 g of cocoa butter in this one but not at that price, so it stayed in the shop.',
    "I'd have liked 80 g of cocoa butter in it, but it was too dear.",
    'I wished for 80 g of cocoa butter too, but the shop had none.',
  ])('a wish is none of the pot: %s', (wish) =>
    expect(
      potOf(`${wish} Just olive 480 g, coconut 240 g, palm 220 g, castor 60 g then. NaOH 138 g, water 310 g. Ok?`),
    ).toEqual({ grams: asListed, doubts: [] }),
  );

  test('and the answer says so', () => {
    const post = `I wished for 80 g of cocoa butter too, but the shop had none. ${list}`;
    expect(readRecipe(makeReader(loadCatalogue()), post).assumptions.map(({ text }) => text)).toContain(
      'I left out what was only wished for.',
    );
  });

  test('but one that came true is', () =>
    expect(
      potOf(
        'I would have loved 80 g of cocoa butter, so I put it in. Olive 480 g, coconut 240 g, NaOH 108 g, water 310 g.',
      ).grams,
    ).toMatchObject({ 'cocoa-butter': 80 }));

  test('asked about, it is asked back', () => {
    const text = `${list}\nVariation: swap the palm for lard. Is the lye right for the variation?`;
    expect(potOf(text).doubts).not.toEqual([]);
  });
});

describe('a fat more that nobody put in', () => {
  test.each([
    'Some babassu would help, 50 g of it.',
    'It lathers thinly. Would 50 g babassu help?',
    'Should have put 50 g babassu in.',
    'I wish I had 50 g of babassu for it.',
    'My mum adds 50 g babassu.',
    'People say 50 g of babassu makes it better.',
    'The original has 50 g babassu too.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each(['I added 50 g babassu.', 'And 50 g of babassu.', 'My mum adds 50 g babassu and I did too.'])(
    '%s is not left out unasked',
    (note) => {
      const { grams, doubts } = noted(note);
      expect(grams['babassu-oil'] === 50 || doubts.length > 0).toBe(true);
    },
  );

  test.each([
    ['My mother-in-law swears by 100 g of babassu. Not in my kitchen! Mine is', undefined],
    ['My mum uses 100 g babassu. And', 100],
  ])('before the list, only where it is refused: %s', (note, grams) =>
    expect(potOf(`${note} 450 g lard + 300 g sunflower. NaOH?`).grams['babassu-oil']).toBe(grams),
  );

  test('what she whose recipe it is puts in is in it', () => {
    const { grams, doubts } = potOf(`My gran's recipe:\n${list}\nMy gran adds 50 g babassu. Lye ok?`);
    expect(grams['babassu-oil'] === 50 || doubts.length > 0).toBe(true);
  });
});

describe('vessels that are called after food', () => {
  test.each([
    'Moulds = margarine tubs (6).',
    'Mould: an old butter dish and three yoghurt pots.',
    'Poured it in old yoghurt cups, 9 of them, 150 ml.',
    'Went into the lard tin, lined with a bread bag.',
    'Leftovers: 70 g in an egg cup.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each([
    'The margarine tub went in too, all of it.',
    'Mould: the butter tub, with 60 g of butter melted in.',
    'An egg cup of avocado oil went in as well.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));

  test('a cup is no unit of a list without one', () => {
    const text = `Paste\n\nolive 480\ncoconut 240\nNaOH 104 g\nwater 210 g\n\nLeft over: 40 g in an egg cup.\n\nIs the lye right?`;
    expect(potOf(text).grams).toMatchObject({ 'olive-oil-virgin': 480, 'coconut-oil': 240 });
  });
});

describe('what was over, what a label says, what another page has, other pots', () => {
  test.each([
    'The leftover batter, about 90 g, went into a heart for the children.',
    'What was left of the batter (a cupful) filled two cupcake cases.',
    'INCI label: Sodium Olivate, Sodium Cocoate, Aqua.',
    'For the lip balm I used beeswax 25 g, almond 70 g and shea 25 g, that was a separate pan.',
    'On the same day I made a pot of lip balm, 40 g beeswax in it.',
    'The goat milk version is on the back, with 200 g milk for the water.',
    'Grate 120 g into 1 l hot water for laundry gel.',
    'Oils 45, lye 38, room 19.',
    'Left out in the shed overnight, 8 C.',
    'wed = Ada brings the scale (5kg x 1g), thu = labels.',
    'New scale, 0.1 g, 3 kg max.',
    'Phone for the key 555 0142.',
    'Scaled it on the postal scale.',
    'I weighed each one twice.',
    'I sort of guessed the lye, with a bit of cushion.',
    'Colour: one part titanium, two parts charcoal.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each([
    'Leftovers: none, except 60 g of the coconut that never went in.',
    'For the lip balm I took 50 g of the coconut out of this, so it is less.',
    'Scaled it by 1.5.',
    'Put each one in twice.',
    'Guessed the lye after the scale died.',
    'Lost 30 g of the coconut to the floor.',
    'The scale (5 kg x 5 g) jumped while I weighed the lye.',
    'The cup was on the scale with the lye.',
    'I doubled the lye only.',
    'Lye amount was a guess, the scale was broken.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));

  test('no superfat tricks is no superfat of none', () => {
    const text = `Bar\n\n${list.replace('138 g', '?')}\nsuperfat 6 %\n\nNo superfat tricks, no extras.\n\nHow much NaOH?`;
    expect(potOf(text).doubts).toEqual([]);
  });
});

describe('other batches and the recipes of others', () => {
  test.each([
    'My first version had no castor and was low on foam.',
    'The batch before this one had 40 g more water and took ages.',
    'The one before this was too soft and had more olive in it.',
    'My neighbour makes hers with 500 g tallow and 70 g lye, no idea how.',
    'Aunt Ada uses 20 % lard in hers, madness.',
    'Some people swap the palm for lard.',
    'The shop version is lard and coconut, mine is not.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each([
    ['Log, batch 4', 'Earlier in this log: batch 1 was a plain lard loaf (good), batch 2 had honey (too hot).'],
    ['Soap book, experiment B', 'Exp. A had sunflower and 210 g water; otherwise the same procedure.'],
    ['Soap book, experiment C', 'Exp. B took 150 g of lye.'],
  ])('%s: %s', (title, note) => expect(noted(note, title)).toEqual({ grams: asListed, doubts: [] }));

  test.each([
    'My last batch had 40 g less lye, and so has this one.',
    'My neighbour makes hers with lard in place of the palm and I did too.',
    'My friend puts 60 g of lard in hers and so did I.',
    'The previous batch was with 200 g coconut, and I did it the same way today.',
    'The batch before had the full coconut, this one has 50 g less.',
  ])('%s is asked about', (note) => expect(noted(note).doubts).not.toEqual([]));

  test('what stands before it in one breath is of the list', () => {
    const text =
      'final: 350 g coconut, 450 g olive, 200 g palm. lye 146 g, water 310 g. my old one had 155 g lye but with more coconut. is the 146 right?';
    expect(potOf(text)).toMatchObject({ grams: { 'coconut-oil': 350, naoh: 146, water: 310 }, doubts: [] });
  });
});

describe('figures of talk below a list that has no units', () => {
  test.each([
    'Tested on 4 beards and 1 pair of legs.',
    'Hand-wash score from five people 7, 8, 6, 8, 5.',
    'gardner next door wants 5',
    'Gloves 2 pairs, goggles 2, kids 0.',
  ])('%s', (note) => {
    const { grams, doubts } = potOf(`Shave soap\n\n${bare}\n\n${note}\n\nToo strong on the lyes?`);
    expect({ grams, doubts }).toMatchObject({ grams: { 'stearic-acid': 210, koh: 84, naoh: 13 }, doubts: [] });
  });

  test('a title calls the soap after what the list has by full names', () => {
    const text =
      'Three Butter Bar\ntotal oils 900 g, in parts:\n\ncocoa butter 1 part\nshea butter 1 part\nolive 4 parts\ncoconut 3 parts\n\nsuperfat 8 %\n\nHow much sodium hydroxide?';
    expect(potOf(text).doubts).toEqual([]);
    expect(potOf(text.replace('cocoa butter', 'butter')).doubts).not.toEqual([]);
  });

  test('the strength that a water makes', () => {
    const text = (water: number) =>
      `tallow 540 g, olive 300 g, coconut 200 g\nLye: NaOH 146 g\nWater: 31 % lye conc. = ${water} g\nScent: 3 %\n\nIs the lye right?`;
    expect(potOf(text(325))).toMatchObject({ grams: { naoh: 146, water: 325 }, doubts: [] });
    expect(potOf(text(250)).doubts).not.toEqual([]);
  });
});

describe('what others put in theirs, told before the list', () => {
  const own = '500 g beef tallow, 200 g coconut oil, 300 g olive oil, lye 138 g, water 300 g. Is it ok?';
  const grams = { 'tallow-beef': 500, 'coconut-oil': 200, 'olive-oil-virgin': 300, naoh: 138, water: 300 };
  test.each([
    'My sister in the north puts 700 g of lard in hers.',
    'Our neighbour always uses 50 g castor in hers.',
    'A friend at work adds 100 g cocoa butter to his.',
  ])('%s', (said) => expect(potOf(`${said} ${own}`)).toEqual({ grams, doubts: [] }));

  test.each(['My sister puts 700 g of lard in hers and so did I.'])('%s is asked about', (said) =>
    expect(potOf(`${said} ${own}`).doubts).not.toEqual([]),
  );

  test('what is added to it goes with it', () =>
    expect(
      potOf('My sister puts 700 g of lard in hers. I added 200 g coconut oil, 300 g olive oil, lye 138 g, water 300 g.')
        .grams,
    ).toMatchObject({ lard: 700 }));
});

describe('the lye of other batches and what others say of it', () => {
  test.each([
    'Previous run two weeks ago had 1000 g oils and 150 g NaOH and is curing.',
    "I've done coffee soap before (same fats minus the castor, 150 g lye).",
    'I did a pine tar soap before, 150 g lye.',
    'On the page before I have the same plan but really made with 150 g lye and that one had white powder on top.',
    'She used 190 g lye I believe, but for her lot, on a fire.',
    'My uncle tells me to take 160 g of lye but he is no soaper.',
    'Dad said 160 g lye.',
  ])('%s', (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }));

  test.each(['Dad said 160 g lye, so I took that.', 'Dad said 160 g lye. I did that in the end.'])(
    '%s is asked about',
    (note) => expect(noted(note).doubts).not.toEqual([]),
  );

  test('asked whether he is right, it is asked back', () =>
    expect(potOf(`${list}\n\nDad said 160 g lye. Is he right?`).doubts).not.toEqual([]));
});

test.each(['Three goats give us 4 litres a day at the moment.', 'We go through 20 litres per month.'])(
  '%s: what somebody has in such a time',
  (note) => expect(noted(note)).toEqual({ grams: asListed, doubts: [] }),
);

test('poured and tipped back against the own list is asked about', () =>
  expect(
    potOf(
      '420 g olive oil, 180 g coconut oil, 60 g castor oil. wait no. the castor is 40, i poured 60 and it looked so much that i tipped 20 g back in the bottle. lye 90 g, water 200 g. ok?',
    ).doubts,
  ).not.toEqual([]));
