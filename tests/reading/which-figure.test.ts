/** Which of two figures for one thing counts, and which figure is of nothing: units, columns, sums and noted ones. */
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  const water = waterGrams === null ? [] : [{ id: 'water', grams: waterGrams }];
  return {
    grams: Object.fromEntries([...fats, ...alkali, ...water].map(({ id, grams }) => [id, Math.round(grams)])),
    doubts: doubts.map(({ id }) => id),
  };
};

describe('a unit that is turned down', () => {
  const old = '6 lb of lard, 13 oz caustic soda, 2½ pints of rain water.';
  test.each([
    "Never mind the pints, I'd use 900 g of water. Would 13 oz be OK for the 6 lb?",
    "Forget the pints, I'm using 900 g of water. Is 13 oz OK?",
    "Ignore the pints, I'll take 900 g water. Lye ok?",
  ])('gives way to the figure behind it: %s', (text) =>
    expect(read(`${old}\n\n${text}`)).toEqual({ grams: { lard: 2722, naoh: 369, water: 900 }, doubts: [] }),
  );
  test('whatever it measures', () =>
    expect(read(`${old} Never mind the ounces, I'd use 380 g of caustic soda. OK?`).grams['naoh']).toBe(380));
  test.each([
    "I'd use 900 g of water.",
    "Ignore the smell, I'd use 900 g of water.",
    "I'd use 5 lb of lard.",
    'Would I use 900 g of water?',
  ])('and without it both are asked about: %s', (text) =>
    expect(read(`${old} ${text}`).doubts).toEqual(['two-amounts']),
  );
  test.each([
    'Forget the last batch, I used 300 g of caustic soda there.',
    'Ignore the old batch: I used 300 g of caustic soda in it.',
  ])('another batch stays another one: %s', (text) =>
    expect(read(`${old} ${text} Lye ok?`)).toEqual({ grams: { lard: 2722, naoh: 369, water: 1183 }, doubts: [] }),
  );
  test.each(["I'd take 400 g of olive.", "I'm using 400 g of olive.", 'Can I use 400 g of olive?'])(
    'what somebody would use is no second row: %s',
    (text) =>
      expect(read(`olive 500 g, coconut 300 g, water 300 g, lye 112 g. ${text}`).doubts).toEqual(['two-amounts']),
  );
});

describe('another figure on the same page', () => {
  const list = '500 g olive\n300 g coconut\n200 g palm\nlye 144 g\nwater 300 g\n\n';
  test.each([
    'Further down in the same page I wrote: "lye, weighed: 124 g, leave it!"',
    'In the margin I wrote "lye 124 g!".',
    'On the lid of the jar I noted "lye 124 g".',
    'The label of the jar says "NaOH weighed 124 g".',
    'In the margin we wrote: water 380 g.',
  ])('is asked about: %s', (text) => expect(read(`${list}${text} Ok?`).doubts).toEqual(['two-amounts']));
  test.each([
    'In the notebook I first wrote "lye 124 g". Is 144 ok?',
    'My aunt wrote "lye 124 g" in the margin. Is mine ok?',
    'Sorry, above I wrote "lye 124 g", it is 144.',
  ])('is none where the post says which counts: %s', (text) =>
    expect(read(`${list}${text}`)).toMatchObject({ grams: { naoh: 144 }, doubts: [] }),
  );
});

describe('a weight alone in its line', () => {
  const below = 'Castor 50 g\nNaOH 148 g\nWater 330 g';
  test.each([
    `Olive 500 g\nCoconut 300 g\n              200 g\n${below}`,
    `Olive\t500 g\nCoconut\t300 g\n\t200 g\nCastor\t50 g\nNaOH\t148 g\nWater\t330 g`,
    `- Olive 500 g\n- Coconut 300 g\n- 200 g\n- Castor 50 g\n- NaOH 148 g\n- Water 330 g`,
    `Olive 500 g\nCoconut 300 g\n??? 200 g\n${below}`,
    `Olive\n500 g\nCoconut\n300 g\n200 g\nCastor\n50 g\nNaOH\n148 g\nWater\n330 g`,
  ])('is no sum of what stands beneath it: %s', (text) => expect(read(text).doubts).toEqual(['unplaced']));
  test.each([
    'Olive 500 g\nCoconut 300 g\nCastor 50 g\n                850 g\nNaOH 118 g\nWater 330 g',
    'Olive 500 g\nCoconut 300 g\nCastor 50 g\n-----\n     850 g\n\nNaOH 118 g\nWater 330 g',
    '      Batch A\nOlive   500 g\nCoconut   300 g\nCastor   50 g\n      ------\n        850 g\nNaOH   118 g\nWater   330 g',
  ])('is the sum of what stands above it: %s', (text) =>
    expect(read(text)).toEqual({
      grams: { 'olive-oil-virgin': 500, 'coconut-oil': 300, 'castor-oil': 50, naoh: 118, water: 330 },
      doubts: [],
    }),
  );
  test.each(['lye   33% solution\nneeded: grams NaOH', 'KOH 90 %      ? g\nsuperfat 2 %', 'lye how much?'])(
    'and no alkali behind a rule: %s',
    (text) =>
      expect(read(`stearic acid   260 g\ncoconut   140 g\n-------\n            400 g\n${text}`).doubts).toEqual([]),
  );
});

describe('thousands parted by a space', () => {
  test.each([
    ['Olive oil 1 250 g\nCoconut oil 500 g\nPalm 250 g\ntotal 2 000 g\n\nlye how much?', 1250],
    ['Olive oil 1 250 g\nCoconut oil 500 g\n              1 750 g\n\nlye how much?', 1250],
    ['Olive oil 1 000 g\nCoconut oil 350 g\nPalm 150 g\n\nlye how much?', 1000],
    ['Olive oil\t1 250\nCoconut oil\t500\nNaOH\t250\n\ngrams. Lye ok?', 1250],
    [
      'Item   Lot   Wt (g)\nOlive oil   L22   1 250\nCoconut oil   L11   500\nNaOH   H45   250\nOat extract   X009   20',
      1250,
    ],
  ])('%s', (text, olive) => {
    const { grams, doubts } = read(text);
    expect(doubts).toEqual([]);
    expect(grams['olive-oil-virgin']).toBe(olive);
  });
  test.each([
    ['oil\tpct\nolive oil\t60\nlard\t40\n\n1 200 g of oils in a tin. lye?', 720],
    ['olive oil 60 %\nlard 40 %\n1 250 g of fats altogether, how much lye', 750],
    ['oil\tpct\nolive oil\t60\nlard\t40\n\n1 200 g of oils\n2 tsp clay\nlye?', 720],
    ['oil\tpct\nolive oil\t60\nlard\t40\n\n1 tin\n2 spoons\n1 200 g of oils. lye?', 720],
    ['1 150 g lard\n2 250 g olive oil\nlye?', 250],
    ['1 lard 200 g\n2 150 g olive oil\nlye?', 150],
  ])('at the beginning of a line, but no number of its row: %s', (text, olive) => {
    const { grams, doubts } = read(text);
    expect([grams['olive-oil-virgin'], doubts]).toEqual([olive, []]);
  });
  test.each([
    '1 250 g lard\n300 g olive oil\nlye?',
    'Olive oil 1 250 g\nCoconut oil 500 g\n\nlye how much?',
    'Olive oil 1 250 g\nCoconut oil 500 g\n     750 g\n\nlye how much?',
    'Olive oil\t10 500\nCoconut oil\t8 250\nNaOH\t111\n\ngrams. Lye ok?',
    '1 250 g\nolive oil\n2 500 g\ncoconut oil\nlye how much?',
  ])('is asked about where the rest does not tell: %s', (text) => expect(read(text).doubts).toEqual(['decimal']));
});

describe('grams beside ounces', () => {
  const rows = 'Soya oil 350 g / 12 oz\nCoconut oil 300 g / 11 oz\nCaustic soda 98 g / 3.5 oz\nWater 330 g / 12 oz\n\n';
  const grams = { 'soybean-oil': 350, 'coconut-oil': 300, naoh: 98, water: 330 };
  test.each([
    'metric / imperial, imperial is rounded so go by metric',
    'The grams count.',
    'I weigh in grams.',
    'The ounces are only rounded.',
    'The gram column is the one I weigh by.',
  ])('the post says which counts: %s', (text) =>
    expect(read(`${rows}${text}\nlye ok?`)).toEqual({ grams, doubts: [] }),
  );
  test.each([
    '',
    'Should I go by grams or ounces?',
    'My sister weighs in grams.',
    'Do I go by grams?',
    'Trust the grams. Trust the ounces.',
  ])('or is asked: %s', (text) => expect(read(`${rows}${text}\nlye ok?`).doubts).toEqual(['units-disagree']));
  test('what no rounding explains is asked about all the same', () =>
    expect(read(`${rows.replace('3.5 oz', '5 oz')}Metric counts.`).doubts).toEqual(['units-disagree']));
});

describe('what a sentence says of columns', () => {
  const rows = 'Coconut oil\t9.0\t255\nPalm oil\t9.0\t255\nNaOH\t2.85\t81\nWater\t5.6\t160\n';
  const grams = { 'coconut-oil': 255, 'palm-oil': 255, naoh: 81, water: 160 };
  test.each([
    `columns are ingredient / oz / grams\n\n${rows}`,
    `ingredient / oz / grams\n${rows}`,
    `${rows}\nColumns: name, oz, g.`,
    `${rows}\nfirst column oz, second grams`,
    `The columns: name, price, grams\n\n${rows}`,
  ])('%s', (text) => expect(read(text)).toEqual({ grams, doubts: [] }));
  test.each([
    `${rows}\nthe columns are a mess`,
    `columns are oz / grams\n\n${rows}`,
    `Columns: name, g of A, g of B\n${rows}`,
  ])('and where it does not tell, it is asked: %s', (text) => expect(read(text).doubts).not.toEqual([]));
});

test.each(['castor 1/10 of the oils', 'castor 1/10'])('a part of a gram is no weight of a fat: %s', (castor) =>
  expect(read(`olive 500 g, coconut 300 g, ${castor}. Lye?`).doubts).toEqual(['no-unit']),
);

test.each(['10 Stk zu 110 g', '10 Stk à 110 g', '10 Stück zu 110 g'])('pieces and what each weighs: %s', (pieces) =>
  expect(read(`olive 500 g\ncoconut 300 g\nlye 112 g\nwater 250 g\n\n${pieces}.`).doubts).toEqual([]),
);

test('butters by their first letter, but no powder', () => {
  const rest = 'olive 500 g\nNaOH 80 g\nwater 200 g\n';
  expect(read(`${rest}cocoa b. 40 g\nmango b 30 g\nshea b 20 g\npropolis tincture 5 ml`)).toMatchObject({
    grams: { 'cocoa-butter': 40, 'mango-butter': 30, 'shea-butter': 20 },
    doubts: [],
  });
  expect(read(`${rest}cocoa p 40 g`).doubts).toEqual(['ambiguous-name']);
});
