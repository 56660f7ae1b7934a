// Cards, price lists and machine-read sheets of our own invention: one recipe, written down as different people do.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);

/** 500 g olive, 200 g coconut, 98 g NaOH, 210 g water. */
const expectRecipe = (text: string): void => {
  const { doubts, fats, alkali, waterGrams } = read(text);
  expect(doubts).toEqual([]);
  expect(fats.map(({ id, grams }) => [id, Math.round(grams)])).toEqual([
    ['olive-oil-virgin', 500],
    ['coconut-oil', 200],
  ]);
  expect(alkali.map(({ id, grams }) => [id, Math.round(grams)])).toEqual([['naoh', 98]]);
  expect(Math.round(waterGrams ?? 0)).toBe(210);
};

describe('prices beside weights', () => {
  test.each([
    'olive 500 g at 8.40 = 4.20\ncoconut 200 g at 5.00 = 1.00\nNaOH 98 g at 3.90 = 0.38\nwater 210 g\nsum 5.58',
    'olive 500 g @ 7.90/kg = 3.95\ncoconut 200 g @ 4.20/kg = 0.84\nNaOH 98 g @ 3.50/kg = 0.34\nwater 210 g\nSum 5.13',
    'olive 0,5 kg x 8,40 = 4,20\ncoconut 0,2 kg x 5 = 1,00\nNaOH 98 g x 0,004 = 0,39\nwater 210 g\ntotal 5,59',
    'olive 500 g for 3.95 €\ncoconut 200 g for 1.20 €\nNaOH 98 g for 0.50 €\nwater 210 g',
    'olive 500 g at 4.50 €/kg\ncoconut 200 g at 5 €/kg\nNaOH 98 g at $3 per kg\nwater 210 g',
    'olive 500 g, 3.95; coconut 200 g, 1.20; NaOH 98 g, .50; water 210 g; all in 5.65',
    'cost me 11.40 all in: olive 500 g, coconut 200 g, NaOH 98 g, water 210 g',
    '- olive: bought 1 l for 7,99 €, used 500 g\n- coconut (jar of 450 g), used 200 g\n- NaOH, 1 kg 9,80 €, I took 98 g\n- water, free, used 210 g',
    'Bought 1 lb of lye for $5.49 and a 48 oz jug of olive oil for $20. Recipe: olive 500 g, coconut 200 g, lye 98 g, water 210 g',
  ])('%s', expectRecipe);

  test('what is not used of a pack is no amount without a pack or a price', () => {
    expect(read('olive 500 g, used 20 g, coconut 200 g, NaOH 98 g, water 210 g').doubts).not.toEqual([]);
  });
});

describe('totals', () => {
  const rows = 'olive 500 g, coconut 200 g, NaOH 98 g, water 210 g';
  test('one that the lines do not make is asked about', () => {
    for (const text of [`total oils 750 g: ${rows}`, `total oils 750 g: ${rows}, lavender oil 42 g`])
      expect(
        read(text).doubts.map(({ id }) => id),
        text,
      ).toEqual(['total-disagrees']);
  });
  test.each([
    `total oils 750 g: ${rows}. I get 700?? That is what I weighed.`,
    `${rows}\ntotal fats 750 g (somebody pencilled "700?" beside it)`,
    'olive 500, coconut 200, total oils 750 g. NaOH 98, water 210. (yes, it is 700, the print is wrong)',
  ])('one that the post itself doubts is told: %s', (text) => {
    expectRecipe(text);
    expect(read(text).assumptions.map((one) => one.text)).toContain(
      'The total says 750 g, the lines make 700 g; I went by the lines.',
    );
  });
});

describe('cards and sheets', () => {
  test.each([
    'Recipe card, 4 x 6\n\nOlive oil ... 17.64 oz .. 500 g ... 71 %\nCoconut oil . 7.05 oz .. 200 g ... 29 %\nNaOH ........ 3.46 oz ... 98 g\nWater ....... 7.4 oz .... 210 g',
    'INGREDIENTS (weights in grams)        COST\nOlive oil            500             6.25\nCoconut oil          200             3.10\nNaOH                 98              1.10\nWater                210             0',
    'oils_g: {olive: 500, coconut: 200}\nnaoh_g: 98\nwater_g: 210\nsuperfat_pct: 5\ntemp_f: 110\nbar_size_mm: [80, 55, 25]',
    '{"oils":[{"name":"olive oil","grams":500},{"name":"coconut oil","weight_g":200}],"naoh":{"grams":98},"water_g":210}',
    'page 2 of 9\nOlive oil 500 g\nCoconut oil 200 g\nNaOH 98 g\nWater 210 g\nMakes 9 bars, average 108 g fresh, 95 g cured (figure 4)',
    'Olive oil 500 g\nCoconut oil 200 g\nNaOH 98 g\nWater 210 g\nReorder: coconut (last 2 lb). Is the 98 g still right now that I use no tallow?',
    '| Raw material | lot | price per kg | weighed (g) | cost |\n| Olive oil | R-22 | 7.90 | 500 | 3.95 |\n| Coconut oil, refined | K-119 | 5.80 | 200 | 1.16 |\n| NaOH | C88 | 4.10 | 98 | 0.40 |\n| Water, demin. | - | 0.30 | 210 | 0.06 |',
    'Oil\tg\tpack\tcost\nOlive\t500\t5 l\t4.14\nCoconut\t200\t2.5 kg\t2.44\nNaOH\t98\t1 kg\t0.90\nWater\t210\t-\t0\n\nBars: 2 x 5 at approx. 95 g, to be sold at 4.50',
    'Olive oil 500 g\nCoconut oil 200 g\nNaOH 98 g\nWater 210 g\n1. Goggles on. 2. Pearls into the water. 3. Wait. 4. Lye into the fats.\nI took the NaOH down from 101 g to 98 g.',
    '             g       %\nSOFT\n olive      500    71.4\nHARD\n coconut    200    28.6\nFATS        700     100\nNaOH         98      14\nWATER       210      30',
    'grams  share of fats\nolive\t500\t71\ncoconut\t200\t29\nNaOH\t98\t14\nwater\t210\t30',
    'item,amount,unit,cost\nolive oil,500,g,4.10\ncoconut oil,200,g,1.90\nsodium hydroxide,98,g,0.90\nwater,210,g,0\norange eo,20,ml,5.50',
    'olive oil,coconut oil,naoh,water,fragrance oil\n500,200,98,210,25\n\nall in grams, the row of last Sunday.',
    'Tea soap      lot A1      8 x 95 g\n\n| ingredient   | g   |\n|---|---|\n| olive oil    | 500 |\n| coconut oil  | 200 |\n| NaOH | 98 |\n| water | 210 |',
    'A: which oils?\nB: 500g olive 200g coconut\nA: and the lye?\nB: 98 g. naoh. in 210 of water\nA: hold on',
    '1. Weigh 500 g olive oil, 200 g coconut oil.\n2. Weigh 98 g NaOH, 210 g water.\n3. Mould B, 990 g. Cover.',
    'line | planned | on the scale\nolive | 490 g | 500 g\ncoconut | 210 g | 200 g\nNaOH | 97 g | 98 g\nwater | 210 g | 210 g\nMy hand shakes. Check what was ON THE SCALE, it is in the pot.',
    'any tips? mine: olive 500 g / coconut 200 g / naoh 98 g / water 210 g',
  ])('%s', expectRecipe);

  test.each([
    'week   weight of a bar\n0      120 g\n1      114 g\n6      107 g',
    'day | bar g\n1 | 131\n28 | 118',
    'week 0 - 131 g\nweek 2 - 125 g\nweek 6 - 118 g',
  ])('what stands beneath of the soap is none of its rows: %s', (below) =>
    expectRecipe(`olive 500 g\ncoconut 200 g\nNaOH 98 g\nwater 210 g\n\n${below}`),
  );

  test('nor is what a bar is rated, beneath figures without a unit of their own', () =>
    expectRecipe(
      'Fat (g)      target\nolive        500\ncoconut      200\nNaOH          98\nwater        210\n\nhardness 41, cleansing: 10, bubbly 15, iodine 57, INS 142',
    ));

  test('a share that does not fit its weight stays in question', () =>
    expect(read('\tg\t%\nolive\t500\t61\ncoconut\t200\t29\nNaOH\t98\t14\nwater\t210\t30').doubts).not.toEqual([]));

  test.each(['Total of fats in the mould: 900 g\n Olive 50 %\n Lard 30 %\n Coconut 20 %\nNaOH ____'])(
    'shares of a total that stands in its mould: %s',
    (text) => expect(read(text)).toMatchObject({ doubts: [], fats: [{ grams: 450 }, { grams: 270 }, { grams: 180 }] }),
  );

  test('what thins the paste later is no amount', () =>
    expect(read('olive 500 g\ncoconut 200 g\nKOH 90 % ?\nDilute later 1 + 2.5 with hot water.').doubts).toEqual([]));

  test('a blank at the alkali asks for it', () => {
    const { doubts, alkaliNamed } = read(
      'SF 8 %\nOlive oil 500 g\nCoconut oil 200 g\nNaOH -> ____ g (1 kg tub)\nPlease fill it in',
    );
    expect(doubts).toEqual([]);
    expect(alkaliNamed).toEqual(['naoh']);
  });

  test('noughts and ones that stand for letters', () => {
    expectRecipe('0live 0il 500 g, C0c0nut oi1 200 g, Na0H 98 g, H20 210 g');
    expect(read('0live 0il 500 g').assumptions.map(({ text }) => text)).toEqual([
      'I took "0live 0il" as Olive oil, virgin.',
    ]);
  });

  test('names cut short are taken where they are short for one thing', () => {
    expectRecipe('grams: olv 500 / ccnt 200 / naoh 98 / wtr 210');
    expect(read('grams: olv 500 / coc 200 / naoh 98 / wtr 210').doubts.map(({ id }) => id)).toEqual(['unknown-fat']);
  });
});

test.each([
  '(ink ran here, can’t read it) oz',
  '___ oz',
  '1? oz',
  '1█ oz',
  '_5 oz',
  '1x oz',
  'xx oz',
  '[unreadable] oz',
])('a figure that cannot be read is asked about: coconut %s', (blot) => {
  const { doubts } = read(`Lard 18 oz\nCoconut oil ${blot}\nOlive oil 6 oz\nLye 4.6 oz\nWater 10 oz`);
  expect(doubts).not.toEqual([]);
});

describe('the column that counts', () => {
  const years = (question: string): string =>
    `2021    2022    2023\nolive   600 g   550 g   500 g\ncoconut   200 g   250 g   200 g\nNaOH   99 g   95 g   98 g\nwater   240 g   230 g   210 g\n${question}`;
  test.each([
    'PLAN   AS MADE\nolive   520 g   500 g\ncoconut   200 g   200 g\nNaOH   98 g   98 g\nwater   205 g   210 g\nIs it right as made?',
    'PLAN   AS MADE\nolive   500 g   500 g\npalm   200 g   none left -> 200 g coconut\nNaOH   97 g   98 g\nwater   205 g   210 g\nRight as made?',
    'item   target   actual   diff\nolive   498 g   500 g   +2\ncoconut   203 g   200 g   -3\nNaOH   98 g   98 g   0\nwater   200 g   210 g   +10\nIs the lye fine with the actual figures?',
    '1 FATS   wanted   got   diff\n   olive   510 g   500 g   -10\n   coconut   200 g   200 g   0\n   all fats   710 g   700 g   -10\n\n2 LYE\n   NaOH   98 g   98 g   0\n   water   200 g   210 g   +10\n\nWhat superfat is it by the "got" column?',
    'x1   x2   x4\nolive   125 g   250 g   500 g\ncoconut   50 g   100 g   200 g\nlye   24.5 g   49 g   98 g\nwater   52.5 g   105 g   210 g\nI made the x4. Check the x4 please',
    'small   big\nolive   250 g   500 g\ncoconut   100 g   200 g\nNaOH   49 g   98 g\nwater   105 g   210 g\nclay   1 tsp   2 tsp\nlavender oil   4 ml   8 ml\nWe made the big one.',
    years('Is the 2023 lye right?'),
    years('The rightmost is in the pot now. Right?'),
    'summer 2022 -> summer 2023 -> summer 2024\nolive oil   600 g -> 550 g -> 500 g\ncoconut oil   150 g -> 200 g -> 200 g\nNaOH   105 g -> 101 g -> 98 g\nwater   200 g -> 200 g -> 210 g\nIs the 2024 lye right?',
    'material   planned   weighed\nolive   500 g   500 g\ncoconut   196 g   200 g\nNaOH   98 g   98 g\nwater   210 g   210 g\nnote: coconut over by 4 g, left so\nIs the lye ok with what I weighed?',
  ])('%s', expectRecipe);

  test.each([
    years('Right?'),
    'item   target   actual   diff\nolive   498 g   500 g   +2\ncoconut   203 g   200 g   +9\nNaOH   98 g   98 g   0\nIs the lye fine with the actual figures?',
  ])('asked about where it is not told, or its differences are others: %s', (text) => {
    expect(read(text).doubts).not.toEqual([]);
  });
});

describe('what weighs no ingredient', () => {
  const sheet = 'item;g;cost\nolive;500;3,10\ncoconut;200;1,20\nNaOH;98;0,70\nwater;210;0,00\n';
  test.each(['Temp lye;42;\nTemp oils;40;', 'Lye temperature;38;', 'Bars;9;0,55\nTemp. NaOH;35;'])(
    'how warm it was, under a head of weights: %s',
    (rows) => expectRecipe(`${sheet}${rows}`),
  );

  const rows = 'olive 500 g\ncoconut 200 g\nNaOH 98 g\nwater 210 g\n';
  test.each([
    'weight after cure: 812 g',
    'weight after six weeks: 812 g',
    'cured weight: 870 g',
    'weight before cure 1010 g, after cure 905 g',
    '- next day: 1001 g\n- week 1: 980 g\n- week 2: 955 g',
    '10 bars, lightest 95 g, heaviest 104 g',
    'frames, 2 pcs: 0.5 kg each',
    '4 tins of 250 ml',
    'shop scale off by 1 g at most',
    'fat + 3 NaOH -> glycerol + 3 soap  [1 P]',
  ])('%s', (line) => expectRecipe(`${rows}${line}`));

  test.each([
    'lot 4471  olive  500 g\nlot 2210  oil, coconut  200 g\nlot 77120  sodium hydroxide  98 g\ntap  water  210 g',
    'Given: 500 g olive, 200 g coconut [2 P]\nNaOH = 98 g [4 P]\nm(water) = 2 x 105 = 210 g [1 P]',
  ])('%s', expectRecipe);

  test('a fat in a vessel, and a product that is another, stay', () => {
    expect(read(`${rows}2 tins of 250 ml palm oil`).fats.map(({ id }) => id)).toContain('palm-oil');
    expect(read('olive 500 g\ncoconut 200 g\nNaOH 98 g\nwater = 2 x 98 = 210 g').doubts).not.toEqual([]);
  });
});

describe('the rest up to a whole', () => {
  const rows = '| tallow | 50 |\n| coconut | 30 |\n';
  const want = [
    ['tallow-beef', 400],
    ['coconut-oil', 240],
    ['castor-oil', 160],
  ];
  const all = (text: string) => read(text).fats.map(({ id, grams }) => [id, Math.round(grams)]);
  test.each([
    `| share of the 800 g oils | % |\n|---|---|\n${rows}| castor | the rest up to 100 |\n\nNaOH?`,
    `| oils, 800 g | % |\n${rows}| castor | the remainder |\n\nNaOH?`,
    '800 g oils: tallow 50 %, coconut 30 %, castor the rest to 100 %. NaOH?',
    'tallow 400 g, coconut 240 g, castor the rest up to 800 g. NaOH?',
    'tallow 400 g, coconut 240 g, the rest up to 800 g castor. NaOH?',
  ])('%s', (text) => {
    expect(read(text).doubts).toEqual([]);
    expect(all(text)).toEqual(want);
  });
  test('of a hundred or of the weight, where no unit tells, is asked', () =>
    expect(read('800 g oils: tallow 50, coconut 30, castor the rest. NaOH?').doubts).not.toEqual([]));
});
