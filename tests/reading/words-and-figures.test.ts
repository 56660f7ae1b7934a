// What people write in place of the plain figure or name: ranges, two units, dates, corrections, names by ear.
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const catalogue = loadCatalogue();
const reader = makeReader(catalogue);
const read = (text: string) => readRecipe(reader, text);
const doubts = (text: string): readonly string[] => read(text).doubts.map(({ id }) => id);
const fats = (text: string) => read(text).fats.map(({ id, grams }) => `${id} ${Math.round(grams)}`);
const recipe = '500 g lard, 200 g coconut oil, 100 g olive oil, 113 g NaOH, 250 g water';

test.each(['between 150 and 200 g', 'somewhere between about 150 and 200 g'])('a range is asked about: %s', (range) =>
  expect(read(`lard 500 g, coconut oil ${range}, lye 90 g, water 200 g`).doubts.map(({ id }) => id)).toEqual(['range']),
);

test('of one weight in two units, the one that the other was rounded from', () => {
  expect(
    read('14.1 oz (400 g) olive oil, 7.1 oz (200 g) lard, 2.8 oz (81 g) lye').fats.map((one) => one.grams),
  ).toEqual([400, 200]);
  expect(read('16 oz (450 g) olive oil, 2.1 oz lye').fats[0]?.grams).toBeCloseTo(453.592, 2);
});

test.each([
  ['shay butter 100 g', 'shea-butter 100'],
  ['shee buter 100 g', 'shea-butter 100'],
  ['mengo buttr 100 g', 'mango-butter 100'],
  ['rice brand oil 100 g', 'rice-bran-oil 100'],
  ['baboossa oil 100 g', 'babassu-oil 100'],
  ['smalec 100 g', 'lard 100'],
  ['cocoa bttr 100 g', 'cocoa-butter 100'],
  ['mango btr 100 g', 'mango-butter 100'],
  ['palm krnl oil 100 g', 'palm-kernel-oil 100'],
  ['cas tor oil 100 g', 'castor-oil 100'],
  ['100 g cast or oil', 'castor-oil 100'],
  ['100 g rapeseed oil', 'canola-oil 100'],
  ['kakaosmör 100 g', 'cocoa-butter 100'],
  ['nariyal tel (coconut) 100 g', 'coconut-oil 100'],
  ['100 g of oil of coco', 'coconut-oil 100'],
])('a name by ear or of another tongue: %s', (text, fat) => expect(fats(text)).toEqual([fat]));

test.each([
  '500 g lard and 500 g of fat of pork. How much NaOH?',
  '500 g lard, olive or castor oil 100 g. How much NaOH?',
])('of which fat that is, is asked about: %s', (text) => expect(doubts(text)).not.toEqual([]));

test.each(['costic soda 140 g', 'cawstic soda 140 g', 'sod. hydroxide 140 g', 'sod. hyd. 140 g'])(
  'alkali by ear: %s',
  (text) => expect(read(`lard 1000 g, ${text}`).alkali).toMatchObject([{ id: 'naoh', grams: 140 }]),
);

test.each([
  'lard 500 g, coconut 200 g, lie 100 g, watter 220 g',
  'lard 500 g\ncoconut 200 g\nLay: 100 g\nwater: 220 g',
  '500 g lard, 200 g coconut, 100 g of laye and 220 g of water',
  '500 g lard 200 g coconut 220 g water 100 g ley???',
  '500 g lard, 200 g coconut, 100 g lyr, 220 g water',
  '500 g lard, 200 g coconut, lie 100 g, 220 g water. That was meant to be lye',
  '500 g lard, 200 g coconut, 220 g water, lie 100 g. Autocorrect! It means LYE',
])('lye by a slip: %s', (text) =>
  expect(read(text).alkali.map(({ id, grams }) => [id, grams])).toEqual([['naoh', 100]]),
);

test.each([
  'lard 500 g, coconut 200 g, lye 100 g, water 220 g, lie 10 g',
  'lard 500 g, coconut 200 g, water 220 g, lie 90 g for the lye 95 g',
  'lard 500 g, coconut 200 g, water 220 g. I lay 100 g towels under it.',
])('a slip of lye stands in a list without any: %s', (text) => expect(read(text).doubts).not.toEqual([]));

describe('parts of it in words', () => {
  const said = (text: string) => {
    const { fats: all, doubts } = read(text);
    return [all.map((fat) => `${fat.id} ${Math.round(fat.grams)}`), doubts.map(({ id }) => id)];
  };
  test.each([
    '900 g of fats in total, two thirds of it olive and one third coconut. Lye?',
    'Two thirds of it olive and one third coconut, 900 g of oils all told. Lye?',
    '900 g of oils: olive is two thirds of it, coconut one third. Lye?',
    '900 g fat. Two thirds of that is olive and a third of it is coconut. Lye?',
  ])('%s', (text) => expect(said(text)).toEqual([['olive-oil-virgin 600', 'coconut-oil 300'], []]));
  test.each(['half of it tallow, half of it olive', 'half of it tallow, the other half olive'])(
    'no half of it is passed over: %s',
    (halves) => expect(said(`800 g fat, ${halves}. Lye?`)).toEqual([['tallow-beef 400', 'olive-oil-virgin 400'], []]),
  );
  test('of what one is a half, is asked', () =>
    expect(said('500 g olive oil and half of that coconut. Lye?')[1]).toEqual(['no-amount']));
  test('but half of what is weighed is not', () =>
    expect(said('500 g lard, half of it from the butcher, and 500 g olive, half of it old. Lye?')[1]).toEqual([]));
});

describe('a figure that a name may begin with', () => {
  const list = '450 g olive, 250 g coconut';
  // "100 lye" is a name too, which says how pure it is
  const figures = [...new Set([...catalogue.numerals.map(Number).filter((one) => one > 50), 95, 101])];
  const names = ['lye', 'NaOH', 'caustic soda', 'sodium hydroxide'];
  const tails = ['', 'did it seize because of the lye?', 'was the water too cold or is the lye old'];
  test.each(names.flatMap((name) => figures.map((figure) => `${figure} ${name}`)))('weighs the alkali: %s', (row) => {
    for (const tail of tails) {
      const { alkali, doubts: open } = read(`${list.replaceAll(', ', '\n')}\n${row}\n230 ml water\n${tail}`);
      expect([alkali.map(({ grams }) => grams), open]).toEqual([[Number.parseInt(row, 10)], []]);
    }
  });
  test('weighs an acid and a milk', () => {
    const { acids, liquids } = read(`${list}, 80 lactic acid, 2 milk, 140 lye, in grams`);
    expect([...acids, ...liquids].map(({ grams }) => grams)).toEqual([80, 2]);
  });
  test('is the kind of a fat that has its weight, and asked about where it has none', () => {
    expect(fats('450 g olive, 92 coconut 250 g, 110 g lye')).toEqual([
      'olive-oil-virgin 450',
      'coconut-oil-hydrogenated 250',
    ]);
    expect(doubts('450 g olive, 92 coconut, 60 g lye')).toContain('no-amount');
  });
});

describe('so much on the fats that are listed', () => {
  test.each([
    ['my KOH bag says 90%\nused 180g on 400 rapeseed, 300 coconut, 80 castor (grams)', ['koh 180 0.9']],
    ['NaOH is 99% pure, took 105g on 500g olive, 200g coconut. superfat?', ['naoh 105 0.99']],
    ['my lye is old but dry. used 105g for 500g olive and 250g lard', ['naoh 105 1']],
  ])('is the lye that was spoken of: %s', (text, lye) => {
    const { alkali, doubts: open } = read(text);
    expect([alkali.map(({ id, grams, purity }) => `${id} ${grams} ${purity?.nominal ?? 1}`), open]).toEqual([lye, []]);
  });
  test.each([
    'my KOH bag says 90%. used 180g on the last one. now 400g rapeseed, 300g coconut. lye?',
    'my KOH is 90%, the shea is old. used 180g on 400g rapeseed and 300g coconut. ok?',
    'my lye is old. used 300g on 400g rapeseed and 300g coconut. ok?',
  ])('is asked about where it may be anything else: %s', (text) => expect(doubts(text)).toEqual(['unplaced']));
});

test.each([
  'lye 97 no sorry 79 my 7 and 9 got mixed up\nolive 450 coconut 120\nall grams',
  'all grams. lye 97 no wait 79, the 9 and 7 got swapped. 450 olive 120 coconut',
])('digits that changed places are said of the figure that is put right: %s', (text) => {
  const { alkali, doubts: open } = read(text);
  expect([alkali[0]?.grams, open]).toEqual([79, []]);
});

describe('so much to the fats', () => {
  const shares = 'lard 50 %, olive 30 %, coconut 20 %';
  const list = ['lard 750', 'olive-oil-virgin 450', 'coconut-oil 300'];
  test.each([
    `${shares}, 1500 g oils. Charcoal 1 tsp per 500 g oils. Lye?`,
    `${shares}, 1500 g oils, 1 tsp charcoal for every 500 g of oils. Lye?`,
    `${shares}, 30 g lavender per 1000 g of oils. 1500 g oils in all. Lye?`,
  ])('is of a batch of any size: %s', (text) => {
    const { fats: all, alkali, doubts } = read(text);
    expect([all.map(({ id, grams }) => `${id} ${Math.round(grams)}`), alkali, doubts]).toEqual([list, [], []]);
  });
  test('is of the batch whose weight is told, and asked for where none is', () => {
    const rate = `${shares}, 138 g lye per 1000 g oils.`;
    expect(read(`${rate} How much for 1500 g oils?`).alkali[0]?.grams).toBeCloseTo(207, 9);
    expect(doubts(rate)).not.toEqual([]);
  });
});

describe('the metal beside a lye', () => {
  const lard = 'Lard 1000 g, coconut 500 g';
  const lye = (text: string) => {
    const { alkali, doubts } = read(`${lard}, ${text}, water 450 g`);
    return [alkali.map(({ id, grams }) => `${id} ${grams}`), doubts.map(({ id }) => id)];
  };
  test.each([
    'lye (potassium) 290 g',
    'lye 290 g (potassium)',
    'lye, potassium, 290 g',
    '290 g lye (the potassium one)',
  ])('says which it is: %s', (text) => expect(lye(text)).toEqual([['koh 290'], []]));
  test.each(['lye, sodium 210 g', 'lye crystals (sodium), 210 g', 'lye - sodium - 210 g'])('%s', (text) =>
    expect(lye(text)).toEqual([['naoh 210'], []]),
  );
  test.each(['lye (potassium or sodium?) 210 g', 'lye 210 g (not potassium)', 'lye 210 g (I think sodium)'])(
    'is asked for where the writer does not know: %s',
    (text) => expect(lye(text)).toEqual([[], ['ambiguous-name']]),
  );
  test.each(['lye 210 g, sodium lactate 10 g', 'lye 210 g (with sodium lactate)'])('is no other salt: %s', (text) =>
    expect(lye(text)).toEqual([['naoh 210'], []]),
  );
});

describe('a weight that is told by the one before', () => {
  const other = (text: string): number | undefined =>
    read(`600 g lard, ${text}. How much lye?`).fats.find(({ id }) => id !== 'lard')?.grams;

  test.each([
    ['the same again of sunflower', 600],
    ['the same amount of sunflower', 600],
    ['just as much sunflower', 600],
    ['sunflower: the same', 600],
    ['half as much sunflower', 300],
    ['half that in sunflower (so 300 g)', 300],
    ['a third of that weight of sunflower', 200],
    ['twice as much sunflower', 1200],
    ['double that of sunflower', 1200],
    ['three times as much sunflower as lard', 1800],
    ['sunflower double that', 1200],
    ['and double that sunflower', 1200],
    ['sunflower triple that', 1800],
    ['sunflower 3x that', 1800],
    ['sunflower: double', 1200],
    ['sunflower half the lard', 300],
    ['sunflower the same as the lard', 600],
  ])('%s', (text, grams) => {
    expect(other(text)).toBeCloseTo(grams);
    expect(doubts(`600 g lard, ${text}. How much lye?`)).toEqual([]);
  });

  test.each([
    ['100 g castor, half that much sunflower', 'no-amount'],
    ['80 g NaOH, the same of sunflower', 'no-amount'],
    ['100 g castor, sunflower double that', 'no-amount'],
    ['sunflower the same as the palm', 'no-amount'],
    ['half that in sunflower, so 200 g', 'range'],
  ])('is asked about where it may be another: %s', (text, doubt) =>
    expect(doubts(`600 g lard, ${text}. How much lye?`)).toEqual([doubt]),
  );

  test.each([
    'Her recipe has twice as much sunflower as mine',
    'Next time half as much lard',
    'That is as much lard as I have',
  ])('is of no row in talk: %s', (text) =>
    expect(read(`600 g lard, 80 g NaOH, 170 g water. ${text}.`)).toMatchObject({ fats: [{ grams: 600 }], doubts: [] }),
  );
});

test.each(['how much naoh 4 500 g lard', '500 g lard, how much lye 4 that pls'])('for: %s', (text) =>
  expect(read(text)).toMatchObject({ fats: [{ grams: 500 }], alkali: [], doubts: [] }),
);

test('each weight is that of its own row', () => {
  const grams = (text: string) => read(text).fats.map((fat) => fat.grams);
  expect(grams('olive 500g, coconut 200g, castor half the coconut. lye?')).toEqual([500, 200, 100]);
  expect(grams('palm the same as coconut, coconut 250g, olive 500g. lye?')).toEqual([250, 250, 500]);
  expect(grams('half olive half coconut, 800 g altogether, lye?')).toEqual([400, 400]);
});

describe('hundreds as a telephone hears them', () => {
  test.each([
    'lye for to hundred grams of lard',
    'lard too hundred grams and olive five hundred grams, lye please',
    'i want lye for one hundred grams olive and for hundred and fifty grams lard',
    'free hundred grams lard, two hundred grams olive. lye?',
  ])('%s', (text) => expect(doubts(text)).toContain('range'));
  test.each([
    'how much lye for hundred grams lard',
    'lye for a hundred grams of lard please',
    'one hundred grams of lard, how much lye',
  ])('%s', (text) => expect(read(text)).toMatchObject({ fats: [{ grams: 100 }], doubts: [] }));

  const spoken = 'olive oil five hundred grams, cocoa nut oil one hundred grams, the lie eighty two grams';
  test('two of them, where one is called one', () =>
    expect(read(`${spoken}, and water to hundred and forty grams`)).toMatchObject({
      fats: [{ grams: 500 }, { id: 'coconut-oil', grams: 100 }],
      alkali: [{ grams: 82 }],
      waterGrams: 240,
      doubts: [],
    }));
  test.each([', add water to hundred and forty grams', ', lard reduced to hundred grams'])('but not "%s"', (text) =>
    expect(doubts(spoken + text)).toContain('range'),
  );
});

test.each(['Lie 82 g', 'then the lie eighty two grams', '82 g of lie'])('a slip of lye: %s', (lye) =>
  expect(read(`500 g olive, 100 g coconut, ${lye}, 180 g water. Is the lie ok?`)).toMatchObject({
    alkali: [{ grams: 82 }],
    doubts: [],
  }),
);

test.each([
  ['got a whole stone of lard, what lye', 6350],
  ['i have a full pound of lard. how much naoh?', 454],
  ['a whole pound of lard (1 lb), lye please', 454],
])('an article and a unit: %s', (text, grams) => {
  const { fats, doubts } = read(text);
  expect([fats.map((fat) => Math.round(fat.grams)), doubts]).toEqual([[grams], []]);
});

test.each([
  ['5 oz 1/4', 5.25],
  ['4 oz and ½', 4.5],
  ['5 oz 1/4 - I mean five and a quarter ounces', 5.25],
  ['5¼ oz (I mean five and a quarter ounces)', 5.25],
  ['5 oz 1/4, I mean five and a half ounces', 5.5],
])('a part of the unit behind it, and the same in other words: %s', (lye, ounces) => {
  const { alkali, doubts } = read(`tallow 26 oz\ncoconut 9 oz\nlye ${lye}\nwater 12 oz`);
  expect(doubts).toEqual([]);
  expect(alkali[0]?.grams).toBeCloseTo(ounces * 28.3495, 2);
});

test('no part of the unit, where it may be of something', () =>
  expect(doubts('1 lb 1/4 lard, 8 oz coconut, lye 3 oz, water 7 oz')).not.toEqual([]));

test.each([
  '300 g each of lard and tallow\n200 g coconut',
  'lard and tallow: 300 g each\n200 g coconut',
  '300 g each lard and tallow, 200 g coconut',
])('two fats of so much each are no blend: %s', (text) =>
  expect(fats(`${text}\nlye 110 g`)).toEqual(
    expect.arrayContaining(['lard 300', 'tallow-beef 300', 'coconut-oil 200']),
  ),
);

test('a blend that is weighed as one is asked about', () =>
  expect(doubts('300 g of lard and tallow\n200 g coconut\nlye 70 g')).not.toEqual([]));

test.each(['Scaled up x2 from the 250 g one', 'Doubled from my 250 g version'])(
  'the size that a recipe was made of: %s',
  (said) => expect(doubts(`${said}, done below already\nlard 300 g\ncoconut 200 g\nlye 72 g`)).toEqual([]),
);

test.each(['300 g olive (300 g), 300 g lard', 'olive 300 g, lard (300 g)'])(
  'a bracket says a weight again, or is that of its own row: %s',
  (text) => {
    const { fats, doubts } = read(`${text}, lye 78 g`);
    expect([fats.map((fat) => fat.grams), doubts]).toEqual([[300, 300], []]);
  },
);

test('a manner of speaking is the unit of nothing', () =>
  expect(read('500g olive 64g naoh 170 water. took me a whole pint of beer').waterGrams).toBe(170));

test('a parrot is no carrot, and a reader with digits in the name weighs nothing', () => {
  const { liquids, alkali, doubts } = read(`posted by potmaker72\n${recipe}\nMy parrot is 31.`);
  expect([liquids.length, alkali[0]?.grams, doubts.length]).toEqual([0, 113, 0]);
});

test.each([
  [`${recipe}. Sorry, 115 not 113`, 115],
  [`${recipe}. Wait, it's 115 not 113!`, 115],
  [`${recipe}. My sister says she would take 118 g of lye.`, 113],
])('which figure of the lye counts: %s', (text, grams) => {
  const { alkali, doubts } = read(text);
  expect([alkali[0]?.grams, doubts.length]).toEqual([grams, 0]);
});

test.each([`${recipe}. My calculator says 118 g of lye.`, `${recipe}. The recipe said 118 g lye, or was it 131.`])(
  'is asked about: %s',
  (text) => expect(read(text).doubts.length).toBeGreaterThan(0),
);

test.each([
  ['lard 500 g, figure the lye at zero please', 0],
  ['lard 500 g, do the lye for zero per cent', 0],
  ['what lye do these need at 7 %: lard 300 g, olive 200 g', 0.07],
  ['hi all\nlye for 500 g lard with nothing left over', 0],
])('superfat: %s', (text, superfat) => expect(read(text).superfat).toBe(superfat));

test('one sign of per cent serves for all where they make the whole', () =>
  expect(fats('lard 60 %, coconut 25, sunflower 15, batch of 900 g oils')).toEqual([
    'lard 540',
    'coconut-oil 225',
    'sunflower-oil 135',
  ]));

test('milk in cubes and no water at all', () => {
  const { waterGrams, liquids } = read('lard 500 g, 68 g NaOH, goat milk in cubes, 180 g, no water at all');
  expect([waterGrams, liquids[0]?.grams]).toEqual([null, 180]);
});

test('what a label says is the purity, beyond the whole too', () => {
  expect(
    read('lard 500 g, 68 g NaOH, the label says ninety nine percent. Water 180 g').alkali[0]?.purity?.nominal,
  ).toBe(0.99);
  expect(read('lard 500 g, 68 g NaOH, its purity is given as 190 %, water 180 g').doubts.map(({ id }) => id)).toContain(
    'purity-odd',
  );
});

test('a key in front of its figures, joined by underscores', () => {
  const { fats: pot, after } = read(
    'oils_g:\n  lard: 500\n  olive: 300\nnaoh_g: 108\nwater_g: 250\nafter_cook_g:\n  kokum butter: 40',
  );
  expect([pot.map(({ grams }) => grams), after.map(({ grams }) => grams)]).toEqual([[500, 300], [40]]);
});

test('a quoted advice is left out where the rest is a recipe that fits', () => {
  const { doubts, fats: pot } = read(`> I would put 10 % castor in, whatever they say.\n\n${recipe}`);
  expect([doubts.length, pot.length]).toEqual([0, 3]);
});

test.each(['of which 100 g is ice', 'of that I want to take 100 g as ice', '100 g of it ice', 'including 100 g ice'])(
  'ice that is a part of the water: %s',
  (ice) => expect(read(`lard 800 g, 110 g NaOH, 240 g water, ${ice}`).waterGrams).toBe(240),
);

test.each([
  ['coconut oil 250 ml (liquid)', 'coconut-oil'],
  ['coconut oil (melted, liquid): 250 ml', 'coconut-oil'],
  ['250 ml of coconut oil (measured liquid)', 'coconut-oil'],
  ['coconut oil 250 ml (fractionated)', 'mct-oil'],
  ['coconut oil 250 ml (the liquid kind)', 'mct-oil'],
])('a bracket at a volume: %s', (text, id) =>
  expect(read(`lard 500 g\n${text}\n100 g NaOH, 220 g water`).fats.map((fat) => fat.id)).toEqual(['lard', id]),
);

test('ice beside the water is added', () =>
  expect(read('lard 800 g, 110 g NaOH, 140 g water and 100 g ice').waterGrams).toBe(240));

test.each([
  [
    'an old list beside a new one',
    'Old: olive 500, palm 300, coconut 200 (g)\nNew: olive 500, lard 300, coconut 200 (g)\nHow much NaOH?',
    3,
  ],
  ['what never went in', `${recipe}. At trace I saw the olive oil still on the counter, so it never went in.`, 2],
  ['a melting point in a bracket', 'coconut oil (76) 9 oz, olive oil 12 oz, lye 3 oz', 2],
  ['leaders of dots', 'Olive oil . . . . . . . 450 g\nLard . . . . . . . 330 g\nLye . . . . . . 105 g', 2],
  [
    'one dot where the name is long',
    '60 % olive ..... 300 g\n25 % cocoa butter . 125 g\n15 % castor ....  75 g\nsuperfat 6',
    3,
  ],
  [
    'figures that end in one column',
    'Lard ..... 1,500 g\nCoconut ..   500 g\nNaOH .....   280 g\nWater ....   600 g\nFrag. ....    60 g\nTotal .... 2,940 g',
    2,
  ],
  ['somebody', `can sb check my lye? ${recipe}`, 3],
])('%s', (_, text, count) => {
  const { fats: pot, doubts } = read(text);
  expect([pot.length, doubts.length]).toEqual([count, 0]);
});

test.each(['Pick up on Thu 14/11.', 'Cut 13/11, cure to 24/12.'])('a day and a month are no ratio: %s', (text) => {
  const { ratio, waterGrams, doubts } = read(`lard 500 g, how much lye and water? ${text}`);
  expect([ratio, waterGrams, doubts.length]).toEqual([null, null, 0]);
});

test.each(['Date: 03.02.', 'Made on 3.2.', 'Poured 03.11., cut 05.11., ready about 15.12.'])(
  'a day and a month with points weigh nothing: %s',
  (head) => {
    const { fates, ...rest } = read(`${head}\nUnits: grams\nlard: 500\nolive: 300\nNaOH: 105`);
    expect([rest.fats.map(({ grams }) => grams), rest.doubts]).toEqual([[500, 300], []]);
    expect(fates.filter(({ text }) => text.includes('.')).map(({ why }) => why)).not.toContain(
      'no ingredient beside it',
    );
  },
);
test('and a weight with a point is one, whatever stands before it', () =>
  expect(fats('made on 3.2 kg of lard, 400 g of lye')).toEqual(['lard 3200']));

test.each([
  '100% lard laundry bar, 900 g, how many g of lye',
  '100 % lard soap 900 g, how much lye',
  'lard 100%, 900 g batch, lye?',
  'a soap of 100 % lard, 900 g. lye?',
])('of the one fat there is all that is weighed: %s', (text) => {
  expect([fats(text), doubts(text)]).toEqual([['lard 900'], []]);
});
test.each(['60 % lard, 40 % olive soap, 12 bars of 100 g, lye?', '100 % lard soap. 12 bars of 100 g each. Lye?'])(
  'and what a bar weighs is no such weight: %s',
  (text) => expect(fats(text)).toEqual([]),
);

test.each(['Price of coconut was about 6,20', 'The price for the coconut is now 6,20 here.'])(
  'what a fat costs is not how much goes in: %s',
  (text) => {
    const { fats: pot, doubts } = read(`lard 500 g, coconut oil 200 g, how much lye? ${text}`);
    expect([pot.map(({ grams }) => grams), doubts.length]).toEqual([[500, 200], 0]);
  },
);

test.each([
  ['six and three-quarter ounces', 191.36],
  ['six and three quarter ounces', 191.36],
  ['six and three-quarters ounces', 191.36],
  ['six and three quarters of an ounce', 191.36],
  ['six and a half ounces', 184.27],
])('quarters in words: %s', (lye, grams) =>
  expect(read(`2 lb lard, 1 lb coconut oil, ${lye} of lye`).alkali[0]?.grams).toBeCloseTo(grams, 1),
);

test.each([
  'Lard and coconut oil are 500 g and 200 g respectively, NaOH 100 g.',
  'The lard and the coconut oil weigh 500 g and 200 g, respectively. 100 g NaOH.',
])('weights in the order of their names: %s', (text) => {
  expect(doubts(text)).toEqual([]);
  expect(fats(text)).toEqual(['lard 500', 'coconut-oil 200']);
});
test('fewer weights than names are asked about', () =>
  expect(doubts('Lard, tallow and coconut oil are 300 g and 400 g respectively. 100 g NaOH.')).not.toEqual([]));

describe('a unit and a name without a space', () => {
  test.each([
    ['oliveoil450g coconutoil200gpalm200g naoh114g', ['olive-oil-virgin 450', 'coconut-oil 200', 'palm-oil 200']],
    ['500golive 300gcoconut 114glye 250gwater', ['olive-oil-virgin 500', 'coconut-oil 300']],
    ['1lboliveoil 2.1ozlye', ['olive-oil-virgin 454']],
    ['coconaut300g olive 500g lye 110g', ['coconut-oil 300', 'olive-oil-virgin 500']],
  ])('%s', (text, expected) => {
    expect(fats(text)).toEqual(expected);
    expect(doubts(text)).toEqual([]);
  });
});

test.each(['I keep 8% fat over', '8 % of the oils should stay loose', 'I leave 8 % of my fat untouched'])(
  'a superfat in words: %s',
  (said) => expect(read(`900 g tallow, 100 g lard, how much lye? ${said}`).superfat).toBe(0.08),
);

test.each([
  ['Carrot, 1, grated fine', 0],
  ['2 carrots, grated', 0],
  ['Carrots: 2', 0],
  ['Carrots 60', 60],
  ['carrot puree 2 oz', 56.69904625],
])('what grows in a garden is counted, or weighed: %s', (row, grams) => {
  const list = 'Lard 500 g\nCoconut oil 200 g\nNaOH 98 g\nWater 200 g';
  const { liquids, doubts } = readRecipe(reader, `${list}\n${row}`);
  expect(doubts).toEqual([]);
  expect(liquids.reduce((sum, one) => sum + one.grams, 0)).toBeCloseTo(grams, 6);
});

test.each([
  "Our women's co-op makes 25 kg at once: palm 15 kg, sunflower 10 kg. How much lye?",
  'My co-worker and I make 25 kg: palm 15 kg, sunflower 10 kg. How much lye?',
])('a word that begins with "co-" is no coconut: %s', (text) => {
  expect(doubts(text)).toEqual([]);
  expect(fats(text)).toEqual(['palm-oil 15000', 'sunflower-oil 10000']);
});

test('"one to one" is a ratio, and no range', () => {
  const text =
    'masterbatch is NaOH and water one to one by weight. Used 268 g of it, and 130 g more water. Olive 1 kg. ok?';
  expect(doubts(text)).toEqual([]);
  expect(read(text).alkali[0]?.grams).toBeCloseTo(134);
  expect(read(text).waterGrams).toBeCloseTo(264);
});

test.each(['the loaf tin takes 1.1 kg finished', 'my mould holds 1.1 kg'])(
  'what a mould takes is no amount: %s',
  (said) =>
    expect(fats(`700 g of oils (${said}): olive 55 %, coconut 45 %. Superfat 5. NaOH?`)).toEqual([
      'olive-oil-virgin 385',
      'coconut-oil 315',
    ]),
);
