import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);

test('fat by sight is asked about, lye that keeps its milk pale is not', () => {
  const rows = '300 g coconut, 200 g palm';
  const doubts = (text: string) => read(text).doubts.map(({ id }) => id);
  expect(doubts(`${rows}, then olive until the pot was full. 143 g lye, 300 g water`)).toEqual(['corrected']);
  expect(doubts(`${rows}. I strewed 82 g lye over 200 g frozen milk bit by bit so it stayed pale. No water.`)).toEqual(
    [],
  );
  // no weight of the fat named last
  const jug = `${rows}, 500 g olive, 143 g lye. I topped the jug up with water until the scale said 290 g.`;
  expect(read(jug)).toMatchObject({ waterGrams: 290, doubts: [] });
});

/** What nobody can reckon with unasked, and what says nothing of what is in the pot. */
const list = 'Olive 500 g, coconut 250 g, palm 200 g, castor 50 g, lye 139 g, water 300 g. ';

describe('a change that no rule can reckon with is asked about', () => {
  test.each([
    'The castor is still in its measuring cup by the sink.',
    'Found the castor behind the kettle an hour later.',
    'The coconut I only half used.',
    'Everything but the castor made it in.',
    'The palm turned out to be lard, I grabbed the wrong tub.',
    'My lard went in where the palm should be.',
    'Subbed a third of it with rice bran.',
    'I scraped in what was left of the almond oil.',
    'I overshot the coconut a little.',
    'Swapped the palm for the hard white stuff my neighbour had.',
    'Can I swap the palm for something cheaper?',
    'I used the thing from the red tub instead of palm.',
    'Can I swap the 139 g lye for the drain stuff?',
    'Swapping the 200 g palm for 200 g of the lard I rendered?',
    'The coconut went in twice.',
    'A bit less lye than last time.',
    'About a spoonful of lye beads stuck to the jug.',
    'Lost some lye water when the jug tipped.',
    'I tripped with the jug and lost maybe a quarter. Poured the remainder in.',
    'Knocked the jug, some of it ended up on the floor. Used what was left.',
    'The cat knocked the lye over and I saved about two thirds.',
    'My 139 g lye in 300 g water, and on the way I slopped some on the step.',
    'Not sure whether I tared the bowl before the lye.',
    'The scale jumped while I was weighing the lye.',
    "I can't recall if the castor went in.",
    "I'm making two of those in one pot but with one lot of lye.",
    'I made a double batch but only one lot of lye.',
    'Palm under by 12 g.',
    'Coconut came out 15 g over.',
    '20 g too little palm went in.',
    'Went over with the lye by 4 g.',
    'The castor never arrived. Lye and water stay as they are.',
    'The castor is not coming, sorry.',
    "My castor hasn't been delivered, so it will be made without.",
    'The castor has to stay out this time.',
    'The third oil I left out in the end.',
    'I skipped the fourth ingredient.',
    'Forget the last fat, I have none.',
    'I left one of the oils out.',
    'Cancel position 3.',
    'The palm was doubled.',
  ])('%s', (text) => {
    expect(read(list + text).doubts).not.toEqual([]);
  });
});

describe('what changes nothing is not asked about', () => {
  test.each([
    'The castor makes it sticky.',
    "I've lost the sheet with the lye on it.",
    'I lost the note of the lye.',
    'I never make it without a mask on.',
    'The lid stuck to the pot.',
    'I spilled coffee on my apron.',
    'It was thick as pudding twice as fast.',
    'The olive is from Crete and smells of grass.',
    'Would less coconut be kinder?',
    'Next time a bit less palm.',
    'The scent was left out this time.',
    'The lye dissolved fully.',
    'Nothing spilled, and all of the lye went in.',
    'I melted the palm in the microwave.',
    'Coconut has gone up by a third.',
    'We swapped seedlings for the lard.',
    'I swapped the palm for a change.',
    'Could I swap the palm for something else later on?',
    'I use a stick blender rather than a whisk.',
    'I replaced the battery of the scale.',
    'My timer went off twice.',
    'I weighed everything twice.',
    'Some of the batter stayed on the spatula.',
    'Some of the batter landed on the floor.',
    'I lost a lot of sleep over it.',
    'Also found a bottle of castor in the cupboard, 50 g used.',
    'It lost a third of its weight in the cure.',
    'Poured it in the mould, spilt a bit, but the soap is fine.',
    'My grandfather used lard back then.',
    'I rendered the tallow twice.',
    'Melted the palm 10 minutes over low heat.',
    'Is the lye over by 3 g?',
  ])('%s', (text) => {
    expect(read(list + text).doubts).toEqual([]);
  });
});

describe('columns that agree beside a difference', () => {
  const table = (got: number, told: string) =>
    `fat | plan | got\nolive | 700 g | 700 g\ncoconut | 300 g | ${got} g\nlye | 140 g | 140 g\nwater | 300 g | 300 g\n${told}`;
  test.each(['coconut under by 14 g', '(coconut 14 g under)', 'coconut was 14 g over'])('asked about: %s', (told) =>
    expect(read(table(300, told)).doubts).not.toEqual([]),
  );
  test('the difference of columns that do not', () =>
    expect(read(table(286, 'coconut under by 14 g'))).toMatchObject({ fats: [{}, { grams: 286 }], doubts: [] }));
});

describe('set aside', () => {
  const rows = '500 g olive, 250 g coconut and 50 g castor';
  const doubts = (text: string) => read(text).doubts.map(({ id }) => id);
  test.each([
    `I have ${rows} set aside and want 5 % superfat. How much lye?`,
    `I've got ${rows} set aside. How much lye at 5 %?`,
    `There's ${rows} set aside for this, what lye do I need?`,
    `${rows}, 110 g lye, 250 g water. I set the castor aside until trace. Ok?`,
    `${rows}, 110 g lye, 250 g water. Melt the coconut and put the olive aside. Then mix the lye. Ok?`,
  ])('is ready for the soap: %s', (text) => {
    expect(doubts(text)).toEqual([]);
    expect(read(text).fats.map(({ grams }) => grams)).toEqual([500, 250, 50]);
  });
  test.each([
    `${rows}, 110 g lye, 250 g water. I set 30 g of the castor aside, it stays out.`,
    `${rows}, 110 g lye, 250 g water. I set the castor aside because it smelled rancid. Ok?`,
    `${rows}, 110 g lye, 250 g water. The castor was set aside.`,
    `I have ${rows} set aside for another batch, and 110 g lye, 250 g water. OK?`,
    `I have ${rows} set aside, want to use the first two. How much lye?`,
    `I have ${rows} set aside in case. How much lye?`,
    'I have 500 g olive, 250 g coconut in the pot and 50 g castor set aside, 110 g lye, 250 g water. OK?',
  ])('may be out of it: %s', (text) => expect(doubts(text)).not.toEqual([]));
});

test('by eye is how others do it', () => {
  const asks = (note: string) => read(`${list}${note}`).doubts.length > 0;
  expect(asks('The lady who taught me always did it by eye.')).toBe(false);
  expect(asks('I did the last bit of lye by eye.')).toBe(true);
});
