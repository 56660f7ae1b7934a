/** Two columns, or an older recipe beside a newer one, and which of them a post means. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, doubts } = readRecipe(reader, text);
  return { olive: fats[0]?.grams, alkali: alkali[0]?.grams, doubts: doubts.map(({ id }) => id) };
};

const rows = `
olive | 340 | 680
coconut | 150 | 300
NaOH | 67 | 134
water | 170 | 340
`;
const [left, right] = [
  { olive: 340, alkali: 67, doubts: [] },
  { olive: 680, alkali: 134, doubts: [] },
];

describe('of two columns', () => {
  test.each([
    [`grams | single | double${rows}I poured the double on Sunday, check that column please`, right],
    [`oil (g) | recipe A | recipe B${rows}\nIs recipe B right? thanks`, right],
    [`g | old | new${rows}please check the new one`, right],
    [`grams | planned | weighed${rows}ok?`, right],
    [`grams | book | mine${rows}is my lye ok`, right],
    [`grams | small | big${rows}Not the small one, that's for testing.`, right],
    [`grams | small | big${rows}I used the first column.`, left],
    [`grams | small | big${rows}I weighed the LEFT column, so judge that.`, left],
  ])('the one that is meant counts: %s', (text, expected) => expect(read(text)).toEqual(expected));

  test.each([
    `g | his | hers${rows}Is the lye right?`,
    `grams | small | big${rows}I made the small one, check the big one too`,
  ])('it is asked which, where the post does not tell: %s', (text) =>
    expect(read(text).doubts.length).toBeGreaterThan(0),
  );
});

const older = '500 g olive oil, 60 g NaOH, 150 g water';
const newer = '600 g olive oil, 77 g NaOH, 140 g water';
const meant = { olive: 600, alkali: 77, doubts: [] };

describe('of an older recipe and a newer one', () => {
  test.each([
    `Old recipe: ${older}\n\nNew recipe: ${newer}\n\nIs the lye ok?`,
    `Last year I made ${older}.\n\nToday I made ${newer}.\n\nRight?`,
    `${older}\n\nThat one was perfect, no need to check it.\n\n${newer}`,
    `The old card said ${older}.\n\nToo much, so I doubled everything: ${newer}. Did I do it right?`,
    `> ${older}\n\nToo slimy for me, I take ${newer}. No difference in the rest. Right?`,
    `> ${older}\nI changed it. New: ${newer}\nis the new one ok?`,
    `> ${older}\nmine is: ${newer}\ncheck mine?`,
    `New: ${newer}\n\nOld: ${older}\n\nplease check the new one`,
  ])('the newer counts: %j', (text) => expect(read(text)).toEqual(meant));

  test.each([
    `New: ${newer}\n\nOld: ${older}\n\nplease check both`,
    `${older}\n\n${newer}\n\nWhich one is better?`,
    `> ${older}\n\n${newer}`,
  ])('it is asked which, where the post does not tell: %j', (text) =>
    expect(read(text).doubts).toContain('two-recipes'),
  );
});

describe('of two batches that are told by their day', () => {
  test.each([
    `Friday's soap (${older}) is lovely. It's today's I'm asking about: ${newer}. Too much lye?`,
    `On Saturday I made ${older}, that's not my question. On Sunday it was ${newer}. Please check Sunday's.`,
    `On Monday I made ${newer}. On Tuesday it was ${older}. Please check Monday's.`,
    `Friday: ${older}.\nSaturday: ${newer}.\nIs Saturday's lye right? Friday's I have checked.`,
    `Last Thursday's loaf (${older}) is not the one. Today's is ${newer}. Is today's lye heavy?`,
  ])('the one whose day is asked about counts: %j', (text) => expect(read(text)).toEqual(meant));

  test.each([
    `On Saturday I made ${older}. On Sunday it was ${newer}. Please check.`,
    `On Saturday I made ${older}. On Sunday it was ${newer}. Please check Saturday's and Sunday's.`,
    `On Saturday I made ${older}. On Sunday it was ${newer}. I cut Sunday's today. Which is lye heavy?`,
    `Could you check these for Sunday's stall please?\nSalt: ${older}.\nPlain: ${newer}.`,
    `It's for Sunday's market, please check. On Saturday I made ${older}. On Sunday it was ${newer}.`,
  ])('it is asked which where none is called: %j', (text) => expect(read(text).doubts.length).toBeGreaterThan(0));
});

test.each([
  "Only want this year's checked.",
  "Last year's came out fine, no need to look at that. I only need this year's looked at.",
  "Please check this year's only.",
])("last year's and this year's: %s", (said) =>
  expect(read(`Last year's:\n${older}\n\nThis year's:\n${newer}\n\n${said}`)).toEqual(meant),
);

describe('of two recipes', () => {
  const [small, large] = ['500 g olive oil, 20 g castor, 64 g NaOH, 150 g water', `${newer}, 30 g castor`];
  test.each([
    `In my notebook the single batch is ${small}. Doubled for the big mould that makes ${large}. Is the doubled one all right?`,
    `Small: ${small}.\nBig: ${large}.\nIs the lye of the big one right?`,
    `The kitchen bar has ${small}. The lavender bar has ${large}. How is the lye in the lavender bar?`,
    `The first was in spring. It had ${small}, and that one is settled.\n\nNow the second: ${large}. It's the second that I am asking about, please: is the lye right?`,
    `Hers, the kitchen bar:\n\n${small}\n\nMine, the lavender one:\n\n${large}\n\nWould the lavender one be too harsh?`,
    `Attempt one: ${small}, zapped. Attempt two: ${small.replace('64', '60')}, greasy. Attempt three: ${large}. Is attempt three right?`,
  ])('the one counts that the question calls by its name: %j', (text) => expect(read(text)).toEqual(meant));

  test.each([
    `The single batch is ${small}. The double batch is ${large}. Which one is right?`,
    `The single batch is ${small}. The double batch is ${large}. Is the lye right?`,
    `The kitchen bar has ${small}. The lavender bar has ${large}. Is the lavender bar better than the kitchen bar?`,
    `The kitchen bar has ${small}. The lavender bar has ${large}. Is the lavender bar ok, and the kitchen bar too?`,
  ])('it is asked which, where the question names none, or both: %j', (text) =>
    expect(read(text).doubts).toContain('two-recipes'),
  );
});

test.each([
  'Used to be: half olive, a quarter coconut, a quarter palm.',
  'It used to be half olive, a quarter coconut, a quarter palm.',
  'Old: half olive, a quarter coconut, a quarter palm.',
])('shares of what was once are none of what is now: %s', (once) =>
  expect(read(`${once}\nNow it is: 600 g olive oil, 77 g NaOH, 140 g water`)).toEqual(meant),
);

describe('of two columns with a sign between their figures', () => {
  const signed = 'olive 340 g > 680 g\ncoconut 150 g > 300 g\nNaOH 67 g > 134 g\nwater 170 g > 340 g\n';
  test.each([
    [`For a bigger tin, single > double:\n${signed}The doubled column is in the pot.`, right],
    [`single > double:\n${signed}I made the single one. ok?`, left],
    [`book > mine\n${signed}ok?`, right],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected));
  test.each([`single > double:\n${signed}Which would you pour?`, `${signed}ok?`])('is asked which: %s', (text) =>
    expect(read(text).doubts).not.toEqual([]),
  );
});

test('a bracket that tells why a row is larger names no fat of that row', () => {
  const swapped = (said: string): string =>
    ` | recipe | used\ntallow | 500 g | 420 g\nlard | - | 80 g ${said}\nNaOH | 67 g | 67 g\nwater | 220 g | 220 g\n\nIs mine ok?`;
  const ids = (text: string) => readRecipe(reader, text).fats.map(({ id, grams }) => [id, grams]);
  for (const said of ['(instead of tallow)', '(for the missing tallow)'])
    expect(ids(swapped(said))).toEqual([
      ['tallow-beef', 420],
      ['lard', 80],
    ]);
  expect(read(swapped('(or coconut)')).doubts).not.toEqual([]);
});
