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
    `A) please check: ${lard}\nB) and please check: ${olive}`,
  ])('are asked about: %j', (text) => {
    expect(read(text).doubts).toContainEqual({ id: 'two-recipes', parts: 2 });
  });

  test.each([
    [`recipe 1: ${lard}. recipe 2: ${olive}. check the second`, 'olive-oil-virgin', 'number 2'],
    [`is the first one right? batch 1: ${lard}; batch 2: ${olive}`, 'lard', 'number 1'],
    [`First: ${lard}. Second: ${olive}. the second please`, 'olive-oil-virgin', 'the second'],
    [`recipe 1: ${lard}\nrecipe 2: ${olive}\nonly recipe 1`, 'lard', 'number 1'],
    [`(1) ${lard}. (2) ${olive}. Number 1 is long done, please check number 2`, 'olive-oil-virgin', 'number 2'],
    [`(1) ${lard}. (2) ${olive}. Only check number 1.`, 'lard', 'number 1'],
    [`Mild bar\nv1: ${lard}\nv2: ${olive}\n\nv1 was harsh. Check v2 please.`, 'olive-oil-virgin', 'number 2'],
    [
      `A) eaten up, nothing to ask about that: ${lard}.\n\nB) the one I'd like looked at: ${olive}.`,
      'olive-oil-virgin',
      'recipe B',
    ],
    [`1) please check: ${lard}.\n\n2) no question on this: ${olive}.`, 'lard', 'number 1'],
  ])('are told apart where the post says which: %j', (text, fat, called) => {
    const { fats, doubts, assumptions, fates } = read(text);
    expect(doubts).toEqual([]);
    expect(fats.map(({ id }) => id)).toEqual([fat]);
    expect(assumptions[0]?.text).toBe(`I took ${called}, of the 2 recipes in the post.`);
    expect(fates.filter(({ why }) => why === 'of another recipe').length).toBeGreaterThan(2);
  });

  const list = 'Olive oil 600 g\nCoconut oil 300 g\nNaOH 128 g\nWater 270 g';
  test.each([
    [`${list}\n\nMETHOD\n1. Stir 128 g NaOH into 270 g water.\n2. Melt coconut 300 g, add olive 650 g.`, 'two-amounts'],
    [`${list}\n\nStir the 128 g NaOH into the 270 g water.\nMelt the 350 g coconut oil.`, 'two-amounts'],
    [`${list}\n\n1. Stir 138 g NaOH into 270 g water.\n2. Melt coconut 300 g, add olive 600 g.`, 'two-recipes'],
  ])('steps of another figure than the list are asked about: %j', (text, id) => {
    for (const end of ['', '\n\nMy first soap that I make on my own, all right?'])
      expect(read(text + end).doubts.map((doubt) => doubt.id)).toContain(id);
  });

  const taken = (text: string) => {
    const { fats, doubts } = read(text);
    return [fats.map(({ id }) => id), doubts.map(({ id }) => id)];
  };
  const rows = (list: string) => list.replaceAll(', ', '\n');
  const shea = '500 g shea butter, 62 g NaOH, 140 g water';

  describe('of which one is called', () => {
    test.each([
      [`A: ${lard}\nB: ${olive}\nB is done and dusted, forget it. Just look at A please.`, 'lard'],
      [`Recipe A: ${lard}. Recipe B: ${olive}. Ignore A, only check B.`, 'olive-oil-virgin'],
      [`A) ${lard}\nB) ${olive}\nA is only for reference. Lye ok?`, 'olive-oil-virgin'],
      [`Check B please, A is fine.\n\nA: ${lard}\nB: ${olive}`, 'olive-oil-virgin'],
      [`A: ${lard}\nB: ${olive}\nMy wife wants A but I'm only asking about B.`, 'olive-oil-virgin'],
      [`A: 500 g lard, 200 g palm. B: 500 g olive oil. How much NaOH for A? B is already made.`, 'lard'],
      [`recipe 1: ${lard}\nrecipe 2: ${olive}\n\nnever mind no 2, is no 1 ok`, 'lard'],
      [`1) ${lard}\n2) ${olive}\nskip nr 1 that went in the bin. hows the lye in nr 2`, 'olive-oil-virgin'],
      [`No 1: ${lard}. No 2: ${olive}. I'm asking about no 2, no 1 is just there to compare.`, 'olive-oil-virgin'],
      [`Kitchen: ${lard}\nBath: ${olive}\nKitchen is settled. Would you check Bath?`, 'olive-oil-virgin'],
      [
        `Recipe A:\n${rows(lard)}\n\nRecipe B:\n${rows(olive)}\n\nI went with B in the end. Lye okay?`,
        'olive-oil-virgin',
      ],
      [`(a) ${lard}\n(b) ${olive}\nFor (b) only: is the lye right?`, 'olive-oil-virgin'],
    ])('by its mark or title: %j', (text, fat) => {
      const [fats, doubts] = taken(text);
      expect([fats?.[0], doubts]).toEqual([fat, []]);
    });

    test.each([
      [`Soap A (please check this one)\n${rows(lard)}\n\nSoap B (that one is fine)\n${rows(olive)}`, 'lard'],
      [
        `Batch 1 (sold out)\n${rows(lard)}\n\nBatch 2 (my question is about this one)\n${rows(olive)}`,
        'olive-oil-virgin',
      ],
      [
        `LIST ONE - made, don't care\n${rows(lard)}\n\nLIST TWO - tonight's, please check\n${rows(olive)}`,
        'olive-oil-virgin',
      ],
      [`${rows(lard)}\n\nNo, that's the wrong page! This one please:\n\n${rows(olive)}`, 'olive-oil-virgin'],
    ])('in its heading: %j', (text, fat) => expect(taken(text)).toEqual([[fat], []]));

    test.each([
      [
        `${lard}\n\n${olive}\n\nThe first is what my friend makes, mine is the second. Is my lye alright?`,
        'olive-oil-virgin',
      ],
      [`Mine:\n${rows(lard)}\n\nMy neighbour's:\n${rows(olive)}\n\nHers works. Please look at mine.`, 'lard'],
      [
        `What my teacher gave us:\n${rows(lard)}\n\nWhat I made of it:\n${rows(olive)}\n\nPlease check mine, not hers.`,
        'olive-oil-virgin',
      ],
      [`New one on top, old one below.\n\n${rows(lard)}\n\n${rows(olive)}\n\nIs the lye of the new one ok?`, 'lard'],
      [`${lard}\n${olive}\nOnly the second one please, the first I have made many times.`, 'olive-oil-virgin'],
      [`${lard}\n\n${olive}\n\nWhich one I mean? The lard one.`, 'lard'],
      [`${rows(lard)}\n\n${rows(olive)}\n\nPlease only check the one with lard.`, 'lard'],
      [
        `Two soaps. The lard soap is the one to check, the other one I only list so that you see.\n\n${olive}\n\n${lard}`,
        'lard',
      ],
    ])('by its place, owner, age or fat: %j', (text, fat) => expect(taken(text)).toEqual([[fat], []]));

    test.each([
      [`v1: ${lard}\nv2: ${olive}\nv3: ${shea}\nv1 and v2 are old. Check v3.`, 'shea-butter'],
      [`A: ${lard}\nB: ${olive}\nC: ${shea}\nForget A and C. B ok?`, 'olive-oil-virgin'],
      [`Please look only at the last of these three.\n1) ${lard}\n2) ${olive}\n3) ${shea}`, 'shea-butter'],
    ])('of three: %j', (text, fat) => expect(taken(text)).toEqual([[fat], []]));

    test('what is said ahead of all of them counts', () => {
      const { superfat, fats } = read(`Superfat should be 8 %.\nRecipe 1: ${lard}\nRecipe 2: ${olive}\nonly recipe 1`);
      expect([superfat, fats.map(({ id }) => id)]).toEqual([0.08, ['lard']]);
    });
  });

  test.each([
    `A: ${lard}\nB: ${olive}\nA or B?`,
    `A: ${lard}\nB: ${olive}\nPlease check A, B and tell me.`,
    `A: ${lard}\nB: ${olive}\nCheck A please. And then B if you have time.`,
    `A: ${lard}\nB: ${olive}\nNot only A but B please.`,
    `A: ${lard}\nB: ${olive}\nPlease check. A friend said B is better.`,
    `A: ${lard}\nB: ${olive}\nForget B. Sorry, I mean forget A.`,
    `A: ${lard}\nB: ${olive}\nIs A stronger than B?`,
    `A: ${lard}\nB: ${olive}\nI made B. Check A too.`,
    `A: ${lard}\nB: ${olive}\nAre 66 g in A and 64 g in B ok?`,
    `A: ${lard}\nB: ${olive}\nI'll make A for me, B for him. Ok?`,
    `A: ${lard}\nB: ${olive}\nDon't worry about the spelling. Lye ok?`,
    `1) ${lard}\n2) ${olive}\nIs the lye ok? The superfat I want is 2.`,
    `${lard}\n\n${olive}\n\nIs the lye ok if the superfat is 2?`,
    `Kitchen: ${lard}\nBath: ${olive}\nWhich one is good for the Kitchen sink?`,
    `${lard}\n\n${olive}\n\nDoes the lard one cure as fast as the olive oil one? And is the lye right?`,
    `${lard}\n\n${olive}\n\nIt's my second recipe ever. Is the lye right?`,
    `Old: ${lard}\nNew: 500 g olive oil, 20 g castor, 66 g NaOH, same water\nCheck the new one.`,
  ])('are asked about where more than one is called, or none: %j', (text) =>
    expect(taken(text)[1]).toContain('two-recipes'),
  );

  test.each([
    `A: 500 g olive oil, 200 g coconut oil\nB: 98 g NaOH, 210 g water\nAdd B to A at 40 °C. Is B ok?`,
    `1. Melt 500 g olive oil with 200 g coconut oil.\n2. Stir 98 g NaOH into 210 g water.\n3. Mix. Is step 2 right?`,
    `Phase A\n500 g olive oil\n200 g coconut oil\n\nPhase B\n98 g NaOH\n210 g water\n\nCheck B please.`,
  ])('are not two where one is the lye of the other: %j', (text) =>
    expect(taken(text)).toEqual([['olive-oil-virgin', 'coconut-oil'], []]),
  );

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

describe('a figure in a line of its own', () => {
  const rest = '> coconut 150 g\n> lye 60 g\n> water 130 g\nok?';
  test.each(['rather 250', 'make it 250', '250 rather', 'better 180'])('beneath a weight is asked about: %s', (said) =>
    expect(read(`> olive 200 g\n${said}\n${rest}`).doubts.map(({ id }) => id)).toContain('unplaced'),
  );
  test.each(['- 17 -', 'page 47', 'makes 12 bars'])('is left out where it stands for none: %s', (said) =>
    expect(read(`> olive 200 g\n${rest}\n${said}`).doubts).toEqual([]),
  );
});

describe('a superfat that is asked for in one line', () => {
  const fats = 'olive 500 g, coconut 200 g.';
  test.each([
    ['lye? superfat? make it 6', 0.06],
    ['how much lye? superfat? 7 please', 0.07],
    ['superfat? make it 4. lye?', 0.04],
    ['superfat? make it 4, lye?', 0.04],
    ['lye? superfat - make it 8', 0.08],
  ])('is the figure that answers: %s', (said, superfat) => {
    const got = read(`${fats} ${said}`);
    expect([got.superfat, got.doubts]).toEqual([superfat, []]);
  });
  test('is no number of bars', () => expect(read(`${fats} lye? superfat? make it 6 bars`).superfat).toBeNull());
});

test('a paragraph of water and lye alone is no recipe', () => {
  const { fats, waterGrams, doubts } = read(
    'I measured 330 g water in the jug. Dissolved the lye in only 250 g of that; the remaining 80 g went down the sink.\n\nPeanut oil 500 g, coconut oil 300 g, cocoa butter 200 g. Lye 142 g.\n\nIs the lye for the peanut one all right?',
  );
  expect([fats.length, waterGrams, doubts]).toEqual([3, 250, []]);
});
