/** Posts of several recipes, and figures that their writer put right in the same breath. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);

const lard = '500 g lard, 66 g NaOH, 150 g water';
const olive = '500 g olive oil, 64 g NaOH, 140 g water';

describe('several recipes', () => {
  test.each([
    `recipe 1: ${lard}. recipe 2: ${olive}`,
    `Recipe 1\n${lard.replaceAll(', ', '\n')}\n\nRecipe 2\n${olive.replaceAll(', ', '\n')}`,
    `which is right?\nbatch #1) ${lard}\nbatch #2) ${olive}`,
    `First: ${lard}. Second: ${olive}.`,
    `A) ${lard}\nB) ${olive}`,
    `${lard}\n\n${olive}`,
    `${lard}\n---\n${olive}`,
    `On the left page is hers:\n\n${lard}\n\nOn the right page is mine:\n\n${olive}\n\nCould you check the lye for us?`,
    `The top one is hers.\n\n${lard}\n\nThe bottom one is mine.\n\n${olive}\n\nAre we alright?`,
    `Mild bar\nv1: ${lard}\nv2: ${olive}`,
  ])('are asked about: %j', (text) => {
    expect(read(text).doubts).toContainEqual({ id: 'two-recipes', parts: 2 });
  });

  test.each([
    [`recipe 1: ${lard}. recipe 2: ${olive}. check the second`, 'olive-oil-virgin', 'the second'],
    [`is the first one right? batch 1: ${lard}; batch 2: ${olive}`, 'lard', 'the first one'],
    [`First: ${lard}. Second: ${olive}. the second please`, 'olive-oil-virgin', 'the second'],
    [`recipe 1: ${lard}\nrecipe 2: ${olive}\nonly recipe 1`, 'lard', 'recipe 1'],
    [`(1) ${lard}. (2) ${olive}. Number 1 is long done, please check number 2`, 'olive-oil-virgin', 'number 2'],
    [`(1) ${lard}. (2) ${olive}. Only check number 1.`, 'lard', 'number 1'],
    [`Mild bar\nv1: ${lard}\nv2: ${olive}\n\nv1 was harsh. Check v2 please.`, 'olive-oil-virgin', 'number 2'],
  ])('are told apart where the post says which: %j', (text, fat, called) => {
    const { fats, doubts, assumptions, fates } = read(text);
    expect(doubts).toEqual([]);
    expect(fats.map(({ id }) => id)).toEqual([fat]);
    expect(assumptions[0]?.text).toBe(`I took ${called}, of the 2 recipes in the post.`);
    expect(fates.filter(({ why }) => why === 'of another recipe').length).toBeGreaterThan(2);
  });

  test.each([
    `${lard}\n\nDissolve 66 g NaOH in 150 g water, melt the 500 g lard.`,
    'batch 1: 500 g lard, 66 g NaOH, 150 g water. batch 2 next week',
    'Option 1: 5 % superfat; option 2: 8 %. 500 g lard, 66 g NaOH, 150 g water',
    '500 g lard\n66 g NaOH\n150 g water\nfirst melt the fat\nsecond: add the lye',
  ])('are not seen in one: %j', (text) => {
    expect(read(text).doubts.map(({ id }) => id)).not.toContain('two-recipes');
  });
});

describe('a figure put right', () => {
  test.each([
    ['500 g lard, 60 g, no wait, 66 g NaOH, 150 g water', 66],
    ['500 g lard, 60 g NaOH, sorry, I mean 66 g, 150 g water', 66],
    ['lard 500 g, NaOH 60 g, no wait 66 g, water 150 g', 66],
    ['500 g lard; NaOH 60 g (sorry, 66 g); water 150 g', 66],
    ['500 g lard, 60 g NaOH, make that 66 g NaOH, 150 g water', 66],
  ])('counts, and is told: %s', (text, grams) => {
    const { alkali, doubts, assumptions, fates } = read(text);
    expect(doubts).toEqual([]);
    expect(alkali.map((one) => one.grams)).toEqual([grams]);
    expect(assumptions.map((one) => one.text)).toContain('I took 66 g, not 60 g, as the post corrects itself.');
    expect(fates).toContainEqual({ text: '60', fate: 'aside', why: 'taken back' });
  });

  test.each([
    ['PS. a slip: the coconut is 200 g, not 250, the rest is right.', 200],
    ['PS. slip of the pen: 220 g of coconut, not 250.', 220],
    ['PS. wrong line, the coconut oil weighs 240 g, not 250!', 240],
  ])('in a PS is that of the one row that it says was wrong: %s', (ps, grams) => {
    const { doubts, fats } = read(`500 g lard\n250 g coconut\n104 g NaOH\n220 g water\nBye\n\n${ps}`);
    expect(doubts).toEqual([]);
    expect(fats.map((one) => one.grams)).toEqual([500, grams]);
  });

  test.each([
    'cocoa butter 150 g? no - I used shea butter in the end, 150 g of it',
    '150 g of cocoa butter? No, I took plain shea butter, 150 g of it',
    '150 g cocoa butter... no, it was shea butter, 150 g of it',
    '130 g cocoa butter? Nope, we used 150 g of shea butter',
  ])('or a name, by an answer to oneself: %s', (row) => {
    const { doubts, fats } = read(`olive oil 500 g\n${row}\ncoconut oil 200 g\nNaOH 118 g\nwater 260 g`);
    expect(doubts).toEqual([]);
    expect(fats.map(({ id, grams }) => [id, grams])).toEqual([
      ['olive-oil-virgin', 500],
      ['shea-butter', 150],
      ['coconut-oil', 200],
    ]);
  });

  test.each([
    '500 g lard, 100 g castor? no, that was the last batch, 100 g sunflower oil. 80 g NaOH, 200 g water',
    '500 g lard, 200 g coconut. 104 g NaOH, 220 g water.\n\nPS. the tallow is 510 g, not 500.',
    '500 g lard, 66 g NaOH, no wait 70 g KOH, 150 g water',
    '500 g lard, 66 g NaOH, 150 g water, no wait I only have 400 g lard',
    '500 g lard, 66 g NaOH, no wait I left the water out',
  ])('is asked about where it is not plain: %s', (text) => {
    expect(read(text).doubts.map(({ id }) => id)).toContain('corrected');
  });

  test.each(['500 g lard, 60 g NaOH, 66 g water', '60 g and 66 g NaOH, 500 g lard', '500 g lard, sorry, 66 g NaOH'])(
    'takes no other figure back: %s',
    (text) => expect(read(text).assumptions.filter(({ id }) => id === 'corrected')).toEqual([]),
  );
});
