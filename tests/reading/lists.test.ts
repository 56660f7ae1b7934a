import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readRecipe(reader, text);
const gramsOf = (text: string) =>
  Object.fromEntries(read(text).fats.map(({ id, grams }) => [id, Math.round(grams * 10) / 10]));
const doubts = (text: string): string[] => read(text).doubts.map(({ id }) => id);

const ids: Readonly<Record<string, string>> = {
  olive: 'olive-oil-virgin',
  coconut: 'coconut-oil',
  lard: 'lard',
  palm: 'palm-oil',
  castor: 'castor-oil',
};
/** Three to five fats with whole shares of 5 and more that make a hundred, and a total in g. */
const shared = fc
  .tuple(
    fc.shuffledSubarray(Object.keys(ids), { minLength: 3 }),
    fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 5, maxLength: 5 }),
    fc.integer({ min: 20, max: 150 }),
  )
  .map(([names, weights, tens]) => {
    const shares = names.map((_, k) => 5 * (weights[k] ?? 1));
    const rest = 100 - shares.reduce((sum, share) => sum + share, 0);
    return { names, shares: shares.map((share, k) => (k === 0 ? share + rest : share)), total: tens * 10 };
  })
  .filter(({ shares }) => shares.every((share) => share > 0));

describe('a row of shares beside a row of names', () => {
  const layouts: Readonly<Record<string, (names: string, shares: string, total: string) => string>> = {
    'shares first, weight behind': (names, shares, total) => `${shares} ${names}, ${total}. How much lye?`,
    'names first': (names, shares, total) => `${names} ${shares}, ${total}, how much lye?`,
    'weight of them': (names, shares, total) => `how much lye for ${total} of ${shares} ${names}?`,
    'total said': (names, shares, total) => `${shares} ${names}. Total oils ${total}. Lye?`,
  };
  for (const [name, write] of Object.entries(layouts))
    test(name, () => {
      fc.assert(
        fc.property(shared, ({ names, shares, total }) => {
          const text = write(names.join('/'), shares.join('/'), `${total} g`);
          const want = names.map((fat, k) => [ids[fat], Math.round(((shares[k] ?? 0) * total) / 10) / 10]);
          expect(doubts(text)).toEqual([]);
          expect(gramsOf(text)).toEqual(Object.fromEntries(want));
        }),
      );
    });
  test('shares with their sign, weight behind', () => {
    fc.assert(
      fc.property(shared, ({ names, shares, total }) => {
        const text = `${names.map((fat, k) => `${shares[k]}% ${fat}`).join(' ')}, ${total} g. how much lye, 5% sf`;
        const want = names.map((fat, k) => [ids[fat], Math.round(((shares[k] ?? 0) * total) / 10) / 10]);
        expect(gramsOf(text)).toEqual(Object.fromEntries(want));
      }),
    );
  });
  test('a date stays a date', () => {
    expect(gramsOf('made 12/03/24: 500 g lard, 68 g lye, 150 g water')).toEqual({ lard: 500 });
  });
});

test('pounds and ounces in two columns are one amount, ounces said again are not', () => {
  const table = (rows: string) => `oil | lb | oz\n${rows}`;
  expect(gramsOf(table('olive | 1 | 4\ncoconut | 0 | 12\nlye | 0 | 4.6\nwater | 0 | 10'))).toEqual({
    'olive-oil-virgin': 567,
    'coconut-oil': 340.2,
  });
  expect(gramsOf(table('olive | 1 | 16\ncoconut | 2 | 32\nlye | 0.5 | 8\nwater | 1 | 16'))).toEqual({
    'olive-oil-virgin': 453.6,
    'coconut-oil': 907.2,
  });
});

test('a full stop behind a unit ends the sentence where other units have none', () => {
  const text = 'Lard 500 g. Coconut 200 g, water 250 ml. Lye 97 g, that is all';
  expect(gramsOf(text)).toEqual({ lard: 500, 'coconut-oil': 200 });
  expect(read(text).waterGrams).toBe(250);
});

test('what was bought is not what goes in', () => {
  expect(gramsOf('Bought 5 kg olive for €32. I take 700 g olive, 300 g coconut, 142 g NaOH, 300 g water')).toEqual({
    'olive-oil-virgin': 700,
    'coconut-oil': 300,
  });
  expect(gramsOf('olive 500 g for €5, coconut 200 g for €2, lye 98 g, water 220 g')).not.toEqual({
    'coconut-oil': 200,
  });
  expect(gramsOf('a 5 litre can of olive oil and used 1 kg of it, 128 g NaOH, 300 g water')).toEqual({
    'olive-oil-virgin': 1000,
  });
});

test('parts of lye and water are their ratio', () => {
  expect(read('1 part lye, 2 parts water. lye is 140 g, olive 700 g, coconut 300 g').waterGrams).toBe(280);
  expect(doubts('water 2 parts, olive 700 g, coconut 300 g, lye 140 g')).toContain('unplaced');
});

test('one of two weighed alkalis is asked about, both together are not', () => {
  expect(doubts('500 g olive, 65 g lye or 91 g koh, 150 g water')).toContain('two-readings');
  const dual = read('stearic acid 250 g, coconut 100 g, lye 15 g, KOH 50 g, water 150 g');
  expect(dual.doubts).toEqual([]);
  expect(dual.alkali.map(({ id, grams }) => [id, grams])).toEqual([
    ['naoh', 15],
    ['koh', 50],
  ]);
});

test('a carbonate weighed as the alkali is asked about', () => {
  for (const salt of ['sodium carbonate', 'washing soda', 'baking soda', 'potassium carbonate'])
    expect(doubts(`${salt} 140 g, olive 1 kg, water 300 g`)).toContain('which-alkali');
  expect(doubts('how much lye for 1 kg olive, with 140 g washing soda')).not.toContain('which-alkali');
  expect(doubts('lye 128 g, washing soda 100 g, olive 1 kg, water 300 g')).not.toContain('which-alkali');
});

test('no figure right behind a name is dropped', () => {
  expect(doubts('lard 500 g, lye 68 g, 150 g water 220')).toContain('unplaced');
  expect(read('lard 500 g, coconut 100 g, lye 86 g, water 220 + 30 g honey').waterGrams).toBe(220);
  expect(doubts('lard 500 g, lye 66 g or maybe 68 g, water 150 g')).toContain('range');
});

test('packs are counted by what they hold, and asked about where nobody says', () => {
  const rest = 'coconut 200 g, lye 140 g, water 300 g';
  for (const olive of [
    '2 bottles of 500 g olive oil',
    'olive oil 2 bottles (500 g each)',
    '2 x 500 g bottles of olive oil',
  ])
    expect(gramsOf(`${olive}, ${rest}`)).toEqual({ 'olive-oil-virgin': 1000, 'coconut-oil': 200 });
  expect(doubts(`olive oil 2 bottles, ${rest}`)).toContain('no-amount');
  expect(doubts(`olive oil 2 bottles (500 g), ${rest}`)).toContain('range');
  expect(doubts('2 cans beer, olive 500 g, coconut 200 g, lye 98 g')).toContain('no-amount');
  expect(gramsOf('1 lb block of lard, lye 2.2 oz, water 5 oz')).toEqual({ lard: 453.6 });
});

test('a sum with a plus is one amount, a bracket that tells the parts of an amount is its breakdown', () => {
  expect(gramsOf('olive 500 + 100 g, coconut 200 g, lye 110 g, water 250 g')['olive-oil-virgin']).toBe(600);
  expect(read('lye 4 oz + 1/2 oz, olive 20 oz, coconut 12 oz, water 10 oz').alkali[0]?.grams).toBeCloseTo(127.57, 1);
  const parts = (pomace: number) =>
    `olive 700 g (500 g olive + ${pomace} g pomace), coconut 300 g, lye 140 g, water 320 g`;
  expect(gramsOf(parts(200))).toEqual({ 'olive-oil-virgin': 500, 'olive-pomace-oil': 200, 'coconut-oil': 300 });
  expect(doubts(parts(300))).toContain('total-disagrees');
  expect(doubts('olive 700 g (500 g virgin, 200 g pomace), coconut 300 g, lye 140 g, water 320 g')).toContain(
    'unplaced',
  );
});

test.each([
  ['lard 2 lb less 1 oz', 878.8],
  ['250 g lard x2 (1.10 each)', 500],
  ['3x lard 250 g', 750],
  ['450 g lard x 10 bars', 450],
  ['450 g lard x 100', 450],
  ['lard 1 kg less the tub 50 g', 950],
  ['lard 1 kg, minus the tub (50 g)', 950],
  ['lard 1 kg (minus the tin: 50 g)', 950],
  ['lard: two pounds minus an ounce', 878.8],
  ['lard 500 g (less 20 g for the jar)', 480],
  ['lard 20 g short of 1 kg', 980],
  ['lard 2 g less than 900 g', 898],
])('what is taken off an amount: %s', (text, grams) => {
  expect(doubts(`${text}, lye 100 g, water 250 g`)).toEqual([]);
  expect(gramsOf(`${text}, lye 100 g, water 250 g`)['lard']).toBeCloseTo(grams, 1);
});

test('what is less of something else is taken off nothing', () => {
  expect(doubts('lard 1 kg, less 50 g of rind, lye 125 g, water 300 g')).not.toEqual([]);
  expect(gramsOf('lard 1 kg, less 50 g castor, lye 125 g, water 300 g')).toEqual({ lard: 1000, 'castor-oil': 50 });
});

test('pharmacy Latin', () => {
  const text = 'Grams: Olei olivarum 300, Olei cocois 150, Oleum ricini 50, Adipis suilli 200, Aquae destillatae 210,';
  expect(gramsOf(`${text} Natrii hydroxidi 94`)).toEqual({
    'olive-oil-virgin': 300,
    'coconut-oil': 150,
    'castor-oil': 50,
    lard: 200,
  });
  expect(read(`${text} Natrii hydroxidi 94`)).toMatchObject({ alkali: [{ id: 'naoh' }], waterGrams: 210, doubts: [] });
  expect(read(`${text} Kalii hydroxidum 130`).alkali).toMatchObject([{ id: 'koh', grams: 130 }]);
  expect(doubts(`${text} Natrii carbonas 94`)).toContain('which-alkali');
});

test('a unit before its figure, and initials with all their dots', () => {
  for (const text of [
    'e.v.o. oil gr 500 - lard kg 1 - NaOH gr 190 - water gr 400 - tea tree e.o. gr 20. So?',
    'e.v.o. gr. 500, lard kg. 1, NaOH gr. 190, water gr. 400, tea tree e.o. gr. 20.',
  ]) {
    expect(doubts(text)).toEqual([]);
    expect(gramsOf(text)).toEqual({ 'olive-oil-virgin': 500, lard: 1000 });
    expect(read(text).waterGrams).toBe(400);
  }
});

test.each([
  ['coconut oil 92 (hydrogenated) 300 g', { 'coconut-oil-hydrogenated': 300 }],
  ['coconut oil 92 (the hard one): 300 g', { 'coconut-oil-hydrogenated': 300 }],
  ['coconut oil 76 (refined) 300 g', { 'coconut-oil': 300 }],
])('a melting point before a bracket is no weight: %s', (text, expected) => {
  expect(gramsOf(`${text}, lye 50 g, water 100 g`)).toEqual(expected);
  expect(doubts(`${text}, lye 50 g, water 100 g`)).toEqual([]);
});

test('a ratio at a lye solution is its strength', () => {
  const { alkali, waterGrams } = read('1:1 lye solution 290 g, extra water 140 g, olive 700 g, coconut 300 g');
  expect(alkali[0]?.grams).toBeCloseTo(145);
  expect(waterGrams).toBeCloseTo(285);
});

test('a sum that the post states is no amount, a part of an amount is', () => {
  const text = '140 g NaOH + 280 g water = 420 g. Oils: 700 g olive, 300 g coconut = 1000 g.';
  expect(doubts(text)).toEqual([]);
  expect(gramsOf(text)).toEqual({ 'olive-oil-virgin': 700, 'coconut-oil': 300 });
  for (const half of ['1/2 of a 3 lb tub of coconut oil', 'half of the 3 lb coconut oil'])
    expect(gramsOf(`${half}, 16 oz olive, 6 oz lye, 13 oz water`)['coconut-oil']).toBeCloseTo(680.4, 1);
});

test('a strange word is what the bracket behind its amount says', () => {
  const text = 'wubbo 240 g (water), zork 500 g (olive oil), lye 65 g';
  expect(gramsOf(text)).toEqual({ 'olive-oil-virgin': 500 });
  expect(read(text).waterGrams).toBe(240);
});

test('oil by no name beside shares that make the whole is all of it', () => {
  expect(gramsOf('100% coconut 20% superfat 600g oil. lye?')).toEqual({ 'coconut-oil': 600 });
  expect(gramsOf('70% olive 30% coconut, 20% superfat, 600g oil. lye?')).toEqual({
    'olive-oil-virgin': 420,
    'coconut-oil': 180,
  });
  expect(doubts('70% olive 20% coconut, 600g oil. lye?')).not.toEqual([]);
  expect(doubts('50% olive 50% coconut, 500g oil of each. lye?')).not.toEqual([]);
});

describe('a table of one batch', () => {
  const grams = { 'olive-oil-virgin': 300, 'coconut-oil': 150, lard: 200 };
  test.each([
    'batch | olive g | coconut g | lard g | NaOH g | water g | mould\n17 | 300 | 150 | 200 | 89 | 195 | loaf B',
    'no | note | olive g | coconut g | lard g | NaOH g | water g\n17 | crumbly | 300 | 150 | 200 | 89 | 195',
    'Code\tMaterial\tAmount\tUnit\nF1\tOlive oil\t300\tg\nF2\tCoconut oil\t150\t"\nF3\tLard\t200\t"\nA1\tNaOH\t89\t"',
  ])('a column that tells no weight is none of it: %s', (text) => {
    expect([gramsOf(text), doubts(text)]).toEqual([grams, []]);
  });
  test('two batches below each other are two recipes', () =>
    expect(
      doubts('batch | olive g | coconut g | NaOH g | mould\n17 | 300 | 150 | 63 | loaf\n18 | 300 | 100 | 56 | loaf'),
    ).not.toEqual([]));
  test('the figures of the shares make a hundred below them', () =>
    expect(doubts('% of oils\n 38 lard\n 37 olive\n 25 coconut\n ---\n 100\nOils in total: 1500 g.\nLye = ?')).toEqual(
      [],
    ));
});

describe('a heading of the fats in one line with their figures', () => {
  const grams = { 'olive-oil-virgin': 480, 'coconut-oil': 240, 'avocado-oil': 120 };
  test.each([
    'water 250g, lye 118, oils 480 olive 240 coconut 120 avocado. grams obviously',
    'lye 118, water 250, fats 480 olive, 240 coconut and 120 avocado. all grams',
    'lye 118 g. oils 480 g olive 240 g coconut 120 g avocado. water 250 g',
    'oils 840: olive 480 coconut 240 avocado 120, lye 118, water 250, grams',
    'lye 118 g, oils 840 g, olive 480 g coconut 240 g avocado 120 g, water 250 g',
  ])('%s', (text) => expect([gramsOf(text), doubts(text)]).toEqual([grams, []]));
  test('their total is compared', () =>
    expect(doubts('oils 900 g. 480 g olive 240 g coconut 120 g avocado. lye 118 g')).not.toEqual([]));
});

describe('a row that is called by its number', () => {
  const whole = { 'olive-oil-virgin': 500, 'coconut-oil': 250, 'castor-oil': 50, 'cocoa-butter': 100 };
  const { 'castor-oil': _, ...castorless } = whole;
  const { 'cocoa-butter': __, ...bare } = castorless;
  const names = ['olive oil', 'coconut oil', 'castor oil', 'cocoa butter', 'NaOH', 'water'];
  const list = (before: string, after: string) =>
    names.map((name, k) => `${before}${k + 1}${after} ${name} ${[500, 250, 50, 100, 119, 260][k]} g`).join('\n');
  const [brackets, dots, hashes] = [list('(', ')'), list('', '.'), list('#', '')];
  test.each([
    [`${brackets}\n\nEDIT: I'm leaving no. 3 out.`, castorless],
    [`${dots}\n\nI left out #3 in the end.`, castorless],
    [`${hashes}\n\nUPDATE: skip item 3, the bottle was empty.`, castorless],
    [`${brackets}\n\nEdit: ingredient 3 has been removed.`, castorless],
    [`${brackets}\n\nForget about row 3.`, castorless],
    [`${brackets}\n\nI leave 3) out.`, castorless],
    [`${dots}\n\nThe third row is removed.`, castorless],
    [`${dots}\n\nThe third ingredient stays out.`, castorless],
    [`${dots}\n\nNos. 3 and 4 are left out.`, bare],
    [`${dots}\n\nI swapped no. 3 for 50 g of sunflower oil.`, { ...castorless, 'sunflower-oil': 50 }],
    [`${dots}\n\nEdit: no. 3 is 80 g, not 50.`, { ...whole, 'castor-oil': 80 }],
    [`${dots}\n\nThis is batch no. 3 of the year.`, whole],
    [`${dots}\n\nSoap number 3 was too soft, so I am careful.`, whole],
    [`${dots}\n\nNo. 3 is cold pressed, no. 4 deodorised.`, whole],
    [`Recipe no. 3\n${dots}\n\nIs the lye ok?`, whole],
    [`${dots}\n\n#4 batch of the year. Is the lye ok?`, whole],
  ])('%s', (text, fats) => expect([gramsOf(text), doubts(text)]).toEqual([fats, []]));
  test.each([
    `${dots}\n\nEDIT: no. 9 is left out.`,
    `${list('', '').replace(/^\d /gm, '')}\n\nEDIT: leaving the third one out.`,
    `${list('', '').replace(/^\d /gm, '')}\n\nDrop row 3 please.`,
    '1. Melt 500 g coconut oil\n2. Mix 90 g NaOH with 200 g water\n3. Stir in 50 g castor oil\n\nI skipped no. 3.',
  ])('is asked about: %s', (text) => expect(doubts(text)).toContain('corrected'));
  test('is told, and its number has its fate', () => {
    const { assumptions, fates } = read(`${dots}\n\nSkip no. 3.`);
    expect(assumptions).toContainEqual({ id: 'number', text: 'I took "no. 3" as castor oil.' });
    expect(fates).toContainEqual({ text: '3', fate: 'aside', why: 'the number of a row' });
  });
});

describe('a proportion', () => {
  const half = { 'olive-oil-virgin': 600, 'coconut-oil': 200, lard: 200 };
  test.each([
    ['1 kg of oils. Olive to coconut to lard is 3 : 1 : 1. Lye?', half],
    ['1000 g oils, olive:coconut:lard = 3:1:1, lye?', half],
    ['Ratio of olive, coconut and lard = 3:1:1 for 1000 g oils. Lye?', half],
    ['3:1:1 olive, coconut, lard, total fats 1000 g. How much lye?', half],
    [
      'Oils 1000 g\nlard:olive:coconut:castor -> 4:3:2:1\nNaOH?',
      { lard: 400, 'olive-oil-virgin': 300, 'coconut-oil': 200, 'castor-oil': 100 },
    ],
    ['800 g of oils, lard : coconut = 4 : 1.5 : 2.5 ... no, 3 : 1. Lye?', null],
    ['Olive : coconut : lard = 3 : 1, 1000 g oils. Lye?', null],
    ['Olive : coconut = 3 : 1 : 1, 1000 g oils. Lye?', null],
    ['Olive : coconut : lard = 3 : 1, castor 50 g, NaOH 7 g, water 15 g', null],
  ])('gives each fat its share, or is asked about: %s', (text, want) => {
    if (want) expect([gramsOf(text), doubts(text)]).toEqual([want, []]);
    else expect(doubts(text)).not.toEqual([]);
  });

  test.each([
    'Lard and coconut, 2:1 water to lye. lard 500 g, coconut 250 g, NaOH 107 g',
    'lard 500 g, coconut 250 g, lye:water 1:2, NaOH 107 g',
  ])('of water to alkali is none of the fats: %s', (text) => {
    expect([gramsOf(text), doubts(text)]).toEqual([{ lard: 500, 'coconut-oil': 250 }, []]);
    expect(read(text).waterGrams).toBeCloseTo(214);
  });
});

test.each([
  'Olive (the good one), coconut 250 g, lard 500 g',
  'A mix of olive + 250 g coconut + 500 g lard',
  'Fats = olive : coconut 250 g : lard 500 g',
  'lard 500 g / coconut 250 g / olive',
])('a fat joined to weighed ones is asked for: %s', (text) =>
  expect(doubts(`${text}\nNaOH 105 g\nwater 230 g`)).toContain('no-amount'),
);

test.each(['I like olive in my soap.', 'Olive and coconut classic, without the olive:', 'No olive; the rest as ever:'])(
  'one that is only spoken of is not: %s',
  (text) => expect(doubts(`${text}\nlard 500 g\ncoconut 250 g\nNaOH 105 g\nwater 230 g`)).toEqual([]),
);

test('a sign of shares stands behind all or the first, never beside another figure', () =>
  expect(doubts('lard 60 %, coconut 40 % 2, 1000 g oils. NaOH?')).not.toEqual([]));

describe('behind an arrow', () => {
  test.each([
    'Fats: lard 500 g / coconut 250 g -> 750\nlye: NaOH 107 g + water 230 g -> 337',
    'Fats: lard 500 g, coconut 250 g => 750 g\nNaOH 107 g, water 230 g => 337 g\nscent: lavender 16 g -> 16',
    'all in g. lard 500, coconut 250 -> 750\nNaOH 107, water 230 -> 337',
  ])('stands a sum: %j', (text) => {
    expect([gramsOf(text), doubts(text)]).toEqual([{ lard: 500, 'coconut-oil': 250 }, []]);
    expect([read(text).alkali[0]?.grams, read(text).waterGrams]).toEqual([107, 230]);
  });
  test.each(['=>', '->', '==>'])('%s begins the line of a sum', (arrow) =>
    expect(doubts(`lard 500 g\ncoconut 250 g\n\n${arrow} 750 g\n\nneeded: NaOH for SF 5%`)).toEqual([]),
  );
  test('a sum that is wrong is asked about', () =>
    expect(doubts('lard 500 g, coconut 250 g -> 850\nNaOH 107 g, water 230 g')).toContain('unplaced'));
  test('a figure put right counts', () =>
    expect(gramsOf('lard 500 g -> 480 g\ncoconut 250 g\nNaOH 104 g')).toEqual({ lard: 480, 'coconut-oil': 250 }));
  test.each(['water 110 g -> lye goes in here', '110 g water => lye into this', 'water 110 g -> for the lye'])(
    'no alkali comes in the place of water: %s',
    (water) => {
      const { waterGrams, alkali } = read(`500 g lard\n68 g NaOH\n${water}`);
      expect([waterGrams, alkali.map(({ grams }) => grams)]).toEqual([110, [68]]);
    },
  );
});

test.each([
  'Lye solution: NaOH 107 g + water 230 g',
  'lye soln: NaOH 107 g, 230 g water',
  'NaOH solution = caustic soda 107 g in 230 g water',
])('a solution that heads what it is made of weighs nothing: %s', (text) => {
  const { alkali, waterGrams, doubts: open } = read(`lard 500 g, coconut 250 g\n${text}`);
  expect([alkali[0]?.grams, waterGrams, open]).toEqual([107, 230, []]);
});

test.each(['Phase', 'stage', 'step', 'part'])('%s 1 is no range', (part) => {
  const text = `${part} 1 - 150 g water + 72 g NaOH\n${part} 2 – 300 g lard, 200 g coconut`;
  expect([gramsOf(text), read(text).waterGrams, doubts(text)]).toEqual([{ lard: 300, 'coconut-oil': 200 }, 150, []]);
});
test('a range is one', () => expect(doubts('lard 300 - 320 g\nNaOH 40 g, water 90 g')).not.toEqual([]));

test('two names and two weights in one cell', () => {
  const table = (row: string) => `Fat\tg\n${row}\ncoconut\t250 g\nNaOH\t105 g\nwater\t230 g`;
  expect(gramsOf(table('lard / tallow\t300 g / 200 g'))).toEqual({
    lard: 300,
    'tallow-beef': 200,
    'coconut-oil': 250,
  });
  expect(doubts(table('lard\t300 g / 200 g'))).not.toEqual([]);
  for (const scent of [
    'cedar / lime\t25 g / 10 g',
    'lavender, rosemary\t25 g, 10 g',
    'honey / oatmeal\t5 g / 10 g\t2 %',
  ])
    expect(doubts(`${table('lard\t500 g')}\n${scent}`)).toEqual([]);
});

test('a strange word is what the bracket right behind it says, or an equals sign; what stands in one says nothing', () => {
  const fats = { 'olive-oil-virgin': 500 };
  for (const text of [
    'mosti ba zork (olive oil) 500 g, sosk [lye] 65 g, wubbo = water 140 g, perfume (zambik) - 10 ml',
    'Stovel soap (zavon), 500 g fat:\n500 g zork (olive oil)\n65 g lye (sosk)\n140 g wubbo (water)',
    'Shampoo bar, Haarseife, 500 g fat:\nolive oil 500 g\nlye 65 g\nwater 140 g',
  ]) {
    expect(doubts(text)).toEqual([]);
    expect(gramsOf(text)).toEqual(fats);
    expect(read(text).waterGrams).toBe(140);
  }
  expect(doubts('zork 500 g (from the shop), lye 65 g, olive 100 g')).toContain('unknown-fat');
  expect(doubts('olive 100 g, zork (butter) 500 g, lye 65 g, water 140 g')).toEqual(['ambiguous-name']);
  expect(doubts('Soap, 600 g fat:\nolive oil 500 g\nlye 65 g\nwater 140 g')).toEqual(['total-disagrees']);
});

test('bars times their weight, "n" for and, who speaks in a chat: none of it goes in', () => {
  expect(gramsOf('10 bars x 100 g. olive oil 300 g, lard 300 g. lye?')).toEqual({ 'olive-oil-virgin': 300, lard: 300 });
  expect(gramsOf('oo n co 7:3, 1.5 kg of oils, lye?')).toEqual({ 'olive-oil-virgin': 1050, 'coconut-oil': 450 });
  const chat = '[21/01, 18:05] Jo: 520g olive, 260g coconut\n[21/01, 18:07] Jo: 112g lye and 230g water';
  expect(gramsOf(chat)).toEqual({ 'olive-oil-virgin': 520, 'coconut-oil': 260 });
  expect(gramsOf(chat.replace(' lye', ''))).toEqual({ 'olive-oil-virgin': 520, 'coconut-oil': 260 });
  expect(gramsOf('3 bars x 100 g coconut, 500 g lard. lye?')).toHaveProperty('coconut-oil');
});

test('numbers of rows in columns, also below a heading in between, are none of their amounts', () => {
  const table =
    'A. Oils\n   1) olive oil   550 g\n   2) coconut oil   250 g\nB. Lye\n   3) sodium hydroxide   110 g\n   4) water   180 g';
  expect(doubts(table)).toEqual([]);
  expect(read(table).alkali.map(({ grams }) => grams)).toEqual([110]);
});

test.each([
  'took 300 g from the 500 g tub of coconut, 500 g lard, lye?',
  '300 g out of a 500 g tub of coconut oil, 500 g lard, lye?',
])('of a tub goes in what was taken out of it: %s', (text) =>
  expect(gramsOf(text)).toEqual({ 'coconut-oil': 300, lard: 500 }),
);

test('a question of one word takes no weight of the sentence before it', () => {
  expect(doubts('500 g lard, from a 1 kg tub of coconut I took 300 g. lye?')).not.toEqual([]);
});

test.each([
  'olive oil infused with calendula petals 550 g\ncoconut oil 250 g\nlye 110 g',
  'olive oil infused with calendula petals\t550 g\ncoconut oil\t250 g\nlye\t110 g',
  'olive oil steeped in rosemary 550 g, coconut 250 g, lye 110 g',
  'olive oil (infused with calendula) 550 g, coconut 250 g, lye 110 g',
  '550 g of calendula-infused olive oil, coconut 250 g, lye 110 g',
  '550 g chamomile infused olive oil, coconut 250 g, lye 110 g',
  '550 g of vanilla-scented olive oil, coconut 250 g, lye 110 g',
  'olive oil with calendula petals in it 550 g, coconut 250 g, lye 110 g',
  'olive 550 g infused with calendula 20 g, coconut 250 g, lye 110 g',
  '550 g of this calendula olive oil, coconut 250 g, lye 110 g',
  '550 g nettle olive oil\n250 g coconut oil\n110 g lye',
  '550 g carrot-olive oil\n250 g coconut oil\n110 g lye',
  'Infused oil: 30 g marigold petals in 600 g olive oil, a month. Strained, I got 555 g of it back.\n\n550 g of this marigold olive oil\n250 g coconut oil\n110 g lye',
  'The infusion: 20 g nettle leaves in 580 g of olive oil, three weeks. After straining 560 g were left.\n\n550 g of the nettle olive oil\n250 g coconut oil\n110 g lye',
  'Macerate: 50 g carrots in 600 g olive oil. I got back 550 g.\n\n550 g of the carrot olive oil\n250 g coconut oil\n110 g lye',
])('what has drawn in an oil does not take its weight: %s', (text) =>
  expect(gramsOf(text)).toEqual({ 'olive-oil-virgin': 550, 'coconut-oil': 250 }),
);

test('an additive between two fats of a line is its own', () =>
  expect(gramsOf('500 g olive oil 20 g oatmeal coconut oil 300 g, lye 110 g')).toEqual({
    'olive-oil-virgin': 500,
    'coconut-oil': 300,
  }));

test('names and figures in two lines, parted by commas, are paired', () => {
  const { fats, alkali, waterGrams, doubts } = read(
    'olive oil,coconut oil,NaOH,water\n700,250,132,290\n(everything in grams)',
  );
  expect([fats.map(({ grams }) => grams), alkali[0]?.grams, waterGrams, doubts]).toEqual([[700, 250], 132, 290, []]);
});

test('a name alone, and "so much of it" behind a comma', () => {
  const { alkali, doubts } = read('2 lb tallow, 1 lb coconut, then the lye, 7 oz of it, in 1 lb of water. ok?');
  expect(alkali.map(({ grams }) => Math.round(grams))).toEqual([198]);
  expect(doubts).toEqual([]);
});

test.each(['4 Wochen Reife.', '12 Stk zu 110 g, Reifezeit 6 Wochen.', 'Reife: 6 Wochen'])(
  'a time to cure by its German name: %s',
  (cure) => {
    const list = 'Lard 500 g\nKokosöl 300 g\nRapsöl 200 g\nNaOH 145 g\nWasser 300 g';
    const text = `${list}\n\n${cure}\nIs the NaOH ok?`;
    expect(gramsOf(text)).toEqual({ lard: 500, 'coconut-oil': 300, 'canola-oil': 200 });
    expect(doubts(text)).toEqual([]);
  },
);
