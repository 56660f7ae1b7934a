/** What a post leaves open: the unit of a weight, whose figure counts, which butter is meant; and where it does not. */
import { expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());
const doubts = (text: string) => readRecipe(reader, text).doubts.map(({ id }) => id);

test.each([
  'olive 2 lb or oz (smudged), coconut 10 oz, lye 4 oz',
  'olive 20 oz, coconut 10 (oz or lb?), lye 4 oz, water 9 oz',
  'olive 20 oz/lb, coconut 10, lye 4, water 9',
  'amounts in g or oz? olive 200, coconut 100, lye 42',
  'olive 200 g or ml, not sure, coconut 100 g, lye 42 g',
])('a unit that its writer does not know is asked for: %s', (text) => expect(doubts(text)).toContain('no-unit'));

test.each([
  'olive 20 oz, coconut 10 oz, lye 4 oz, water 9 oz. Do you prefer grams or ounces?',
  'olive 20 oz, coconut 10 oz, lye 4 oz, water 9 oz (or 255 g)',
  'olive 2 lb or 32 oz, coconut 1 lb, lye 7 oz, water 1 lb',
])('one weight in two units is no doubt: %s', (text) => expect(doubts(text)).toEqual([]));

test.each([
  'tallow 800 g, 112 g of NaOH and KOH mixed, water 300 g',
  'tallow 800 g, lye (NaOH + KOH) 112 g, water 300 g',
  'tallow 800 g, NaOH and KOH together 112 g, water 300 g',
])('of two alkalis in one weight it asks how much of each: %s', (text) => expect(doubts(text)).not.toEqual([]));
test.each(['NaOH + KOH 58 g each', '58 g NaOH and KOH 58 g'])('two weights are of one each: %s', (text) => {
  const { alkali } = readRecipe(reader, `tallow 800 g, ${text}, water 300 g`);
  expect(alkali.map(({ grams }) => grams)).toEqual([58, 58]);
});

test.each([
  'lye - 6 level tablespoons of the pearls',
  'lye: six heaped tablespoons of beads',
  'two scoops of the lye flakes',
])('lye by the spoon is asked for: %s', (lye) =>
  expect(doubts(`lard 500 g, sunflower 250 g, ${lye}, water 220 g`)).toContain('alkali-volume'),
);

test.each([
  'There were 1000 g of oils in the pot, double checked on the big scale: 500 g olive, 200 g coconut, 150 g palm.',
  'I had exactly 1000 g of oils, checked on two scales.\nThey were: 500 g olive, 200 g coconut, 150 g palm.',
])('a total is checked, on whatever scale it was: %s', (text) =>
  expect(doubts(`${text} How much lye?`)).toContain('total-disagrees'),
);

test.each(['lye 80 g, but I used 90 by accident', 'lye 80 g but put in 90', 'lye 80 g, but 90 went in'])(
  'what went in without a unit is asked about: %s',
  (lye) => expect(doubts(`coconut 500 g, ${lye}, water 150 g`)).toContain('unplaced'),
);

test.each([
  'olive 40 / coconut 30 / palm 30, batch of 1200 g, how much lye?',
  'olive 40, coconut 30, palm 30, water 300 g. How much lye?',
])('figures that make a hundred are no grams for that others are: %s', (text) =>
  expect(doubts(text)).toEqual(['shares-total']),
);
test('where the lye fits them, or their unit is said, they are', () =>
  expect(doubts('olive 40, coconut 30, palm 30, lye 14, water 30, all in grams')).toEqual([]));

test.each(['16 oz (by volume)', '16 oz by volume', '16 ounces (liquid)'])('ounces that measure: %s', (amount) => {
  // 16 US fluid ounces of 29.5735295625 ml (NIST SP 811), at 0.91 g/ml
  const { fats } = readRecipe(reader, `${amount} olive oil, 8 oz coconut, 3.4 oz lye`);
  expect(fats[0]?.grams).toBeCloseTo(16 * 29.5735295625 * 0.91, 0);
});

test.each(['155 g lye', 'lye 155 g'])('the same of a fat has no weight of its own: %s', (lye) => {
  const { fats, alkali } = readRecipe(reader, `olive 500 g, the same of coconut, ${lye}`);
  expect([...fats, ...alkali].map(({ grams }) => grams)).toEqual([500, 500, 155]);
});

const soap = 'Olive 600 g, coconut 300 g, lye 128 g';
test.each([
  ['280 g water, 80 g of it goat milk', 200, 80],
  ['280 g water (half of it goat milk)', 140, 140],
  ['water 280 g, of which 80 g is beer', 200, 80],
  ['280 g liquid, half water half goat milk', 140, 140],
  ['half water and half beer, 280 g together', 140, 140],
  ['50/50 water and milk 280 g', 140, 140],
  ['liquid 280 g, exactly half of it water and half flat beer', 140, 140],
  ['280 g water and 80 g goat milk', 280, 80],
])('a liquid that is a part of the water: %s', (wet, water, milk) => {
  const { waterGrams, liquids, doubts: open } = readRecipe(reader, `${soap}, ${wet}`);
  expect([waterGrams, liquids.map(({ grams }) => grams), open]).toEqual([water, [milk], []]);
});

test.each(['Superfat: 30 g shea.', 'Superfat is 30 g of shea.', '30 g shea (superfat).', 'superfat shea 30 g'])(
  'a fat by its weight as the superfat goes in after the cook: %s',
  (superfat) => {
    const { after, fats } = readRecipe(reader, `${soap}, water 280 g. ${superfat}`);
    expect([after.map(({ grams }) => grams), fats.length]).toEqual([[30], 2]);
  },
);
test.each(['What superfat is', 'Superfat for', 'With 5 % superfat,'])('and a list is none: %s', (asked) =>
  expect(readRecipe(reader, `${asked} 600 g olive, 300 g coconut, 128 g lye`).after).toEqual([]),
);

const twice = '200 g coconut melts.\n300 g olive goes in.\n111 g lye in 260 g water.\n';
test.each([
  ['The other 300 g olive, cold, cools it down.', 600],
  ['Then the second 300 g of olive goes in.', 600],
])('the other part is no repetition: %s', (more, grams) =>
  expect(readRecipe(reader, twice + more).fats.map((one) => one.grams)).toEqual([200, grams]),
);
test.each(['The other 300 g olive, cold.', 'the other 100 g olive is for the next batch'])(
  'nor is it, where nobody says that it went in: %s',
  (more) => expect(doubts(twice + more)).toContain('two-amounts'),
);

const oils = '700 g olive, 250 g coconut, 300 g water';
test.each([
  `${oils}. My aunt says 120 g lye, my sister says 141 g. What do you say?`,
  `My aunt says 120 g lye, my sister says 141 g. What do you say? ${oils}.`,
  `${oils}. The book says 125 g NaOH and my neighbour says 140 g NaOH. Who is right?`,
  `My sister says I need 133 g lye for 700 g olive, 250 g coconut in 300 g water, my brother says 120 g.`,
])('of two figures that others give none is taken unasked: %s', (text) => expect(doubts(text)).not.toEqual([]));

const rest = '500 g olive, 300 g coconut, 166 g NaOH, 400 g water';
test.each([
  `400 g of butter, I mean the cocoa butter from the pharmacist, ${rest}`,
  `400 g butter, ${rest}. By butter I mean cocoa butter.`,
  `400 g butter (cocoa), ${rest}.`,
  `400 g butter, ${rest}. The butter is cocoa.`,
  `${rest}, 400 g butter. Cocoa butter, I mean!`,
  `${rest}, butter 400 g, meaning cocoa butter`,
])('butter is the one that the post says: %s', (text) => {
  const { fats } = readRecipe(reader, text);
  expect([fats.find(({ id }) => id === 'cocoa-butter')?.grams, doubts(text)]).toEqual([400, []]);
});

test.each([
  `400 g butter (cocoa butter or shea), ${rest}`,
  `400 g butter, ${rest}. I mean to try cocoa butter some day.`,
])('and is asked for where it says none: %s', (text) => expect(doubts(text)).toContain('ambiguous-name'));

test.each([
  'I had decided on 5 % superfat, then on 10 because of my skin, and have come back down to 8.',
  'Superfat first 5 %, raised to 8.',
])('of several superfats thought of aloud nobody knows which counts: %s', (superfat) =>
  expect(doubts(`rapeseed 480 g, coconut 240 g. ${superfat} Lye for that?`)).toContain('two-amounts'),
);
test.each(['going up to 12 bars', 'and I warm it to 60'])('and another figure is none: %s', (more) =>
  expect(doubts(`480 g lard, 240 g coconut, 5 % superfat, ${more}. Lye?`)).toEqual([]),
);

test.each([
  "In my book I've written olive 500 g, but the photo says 750, and I can't tell which of them went in.",
  "My book has olive 500 g, the photo says 750 g, I don't know which I used.",
])('which of two figures went in is asked where the writer does not know: %s', (olive) =>
  expect(doubts(`${olive} Coconut was 150 g and lye 85 g.`)).not.toEqual([]),
);

test('a solution beside dry alkali that fits is said to be made of it', () => {
  const { assumptions } = readRecipe(reader, '700 g olive, 250 g coconut, 139 g NaOH as a 33 % solution');
  expect(assumptions.map(({ text }) => text)).toContain('I took the 139 g as dry alkali, before it is dissolved.');
});

test('but what stands beside its water is weighed dry', () => {
  const { alkali } = readRecipe(reader, 'Lye solution 50 %: NaOH 200 g, water 200 g\nolive 500 g\ncoconut 200 g');
  expect(alkali[0]?.grams).toBe(200);
});

test('so much of that solution is no part of the fat before it', () => {
  const { alkali, doubts } = readRecipe(
    reader,
    'I masterbatch my lye 50/50 by weight. For 700 g olive + 300 g coconut I weigh 280 g of that solution. Check?',
  );
  expect([alkali[0]?.grams, doubts]).toEqual([140, []]);
});

const castor = (row: string) => `olive 500 g, coconut 250 g, ${row}, lye 110 g, water 240 g`;
test.each(['castor 50 g (zero)', 'castor 50 g (0)', '50 g castor (zero)', 'castor 50 g - zero'])(
  'a row that says nought of its weight is asked about: %s',
  (row) => expect(doubts(castor(row))).toEqual(['two-amounts']),
);
test.each(['castor 50 g (zero waste)', 'castor 50 g (zeroed the scale first)', 'castor 50 g, superfat zero'])(
  'but not one beside which nought is of something else: %s',
  (row) => expect(doubts(castor(row))).toEqual([]),
);

test('a row of the solution weighs it with its water, where no water stands beside it and only that fits', () => {
  const { alkali, waterGrams } = readRecipe(reader, 'Lye solution: 32 % NaOH 300 g\nolive 500 g\ncoconut 200 g');
  expect(alkali[0]?.grams).toBeCloseTo(300 * 0.32);
  expect(waterGrams).toBeCloseTo(300 * 0.68);
});

test.each([
  'how much lye for a liquid soap of 300 g olive, 200 g coconut?',
  '300 g olive, 200 g coconut, which lye for liquid hand soap and how much?',
])('of which alkali a liquid soap is to be, is asked: %s', (text) => expect(doubts(text)).toEqual(['which-alkali']));

test.each([
  'how much KOH for a liquid soap of 300 g olive, 200 g coconut?',
  'not a liquid soap, a bar: 300 g olive, 200 g coconut, how much lye?',
])('unless the post says it: %s', (text) => expect(doubts(text)).toEqual([]));

test.each(['lye 75 g water 150 g shea 60 g coconut 150 g olive', 'naoh 70 g lard 500 g coconut'])(
  'of a row of names and figures that may be paired either way the first figure is asked about: %s',
  (text) => expect(doubts(text)).toContain('unplaced'),
);

test.each(['lye 500 g olive 200 g coconut', 'lye for 70 g castor 500 g olive', 'lye 70 g water 150 g olive 500 g'])(
  'but not where only one way is like a recipe: %s',
  (text) => expect(doubts(text)).toEqual([]),
);

test.each(['potash for 1 kg olive how much', '500 g lard, hydroxide amount please', 'potash needed for 1 kg olive?'])(
  'an alkali by half a name is never taken for lye: %s',
  (text) => expect(doubts(text)).toContain('which-alkali'),
);

test.each([
  '450g olive 150g coconut cost me 6€ total what lye weight',
  '450 g olive and 150 g coconut cost me 4 €, lye?',
])('what all of a list cost takes no row out of it: %s', (text) =>
  expect(readRecipe(reader, text).fats.map(({ grams }) => grams)).toEqual([450, 150]),
);

const bastille = (coconut: string) => `olive 850 g\n${coconut}\ncastor 50 g\nlye 130 g\nwater 240 g`;
test.each([
  'coconut 100 g (or palm kernel if you can get it, I never did)',
  'coconut 100 g (or babassu, never tried it)',
  'coconut 100 g, or babassu if you are posh',
])('what others could take instead is no second reading: %s', (coconut) => {
  expect(doubts(bastille(coconut))).toEqual([]);
});
test.each(['coconut 100 g (or babassu)', "coconut 100 g (or babassu, I can't remember)", 'coconut or babassu 100 g'])(
  'what may have been taken is one: %s',
  (coconut) => expect(doubts(bastille(coconut))).not.toEqual([]),
);

test.each([
  'sf 5% 700g lard 300g coconut (i want 8% superfat)',
  'sf 5% 700g lard 300g coconut, lye pls (i want 8% superfat)',
  '700 g lard, 5 % superfat, lye pls. 8 % superfat',
])('of two superfats none is taken unasked where lye is to be weighed: %s', (text) =>
  expect(doubts(text)).toContain('two-amounts'),
);

test('of the lye that stands ready, how much is what is asked', () => {
  expect(doubts('500 g lard and a jar of caustic soda, how much of it do I need?')).toEqual([]);
  expect(doubts('3 lb lard and a bag of lye, how much goes in?')).toEqual([]);
  expect(doubts('I put a jar of lye into 500 g lard, how much water do I need?')).not.toEqual([]);
});

const list = 'olive 500 g\ncoconut 300 g\nNaOH 116 g, water 250 g\nMethod';
test.each([
  `${list}\n1 Warm 300 g coconut oil gently.\n2 Stir in 450 g olive oil.`,
  `${list}: melt the 300 g coconut, add 550 g of the olive.`,
  `${list}. The olive oil weighs 450 g.`,
  `${list}\n- melted the coconut 350 g\n- added the olive`,
  `${list}\nPan 1: 300 g coconut\nPan 2: 400 g olive`,
])('a step that contradicts the list is asked about: %s', (text) => expect(doubts(text)).toContain('two-amounts'));

test.each([
  [`${list}\n1 Warm 300 g coconut oil gently.\n2 Stir in 500 g olive oil.`, [500, 300]],
  ['OILS\nolive 400 g\ncoconut 300 g\nSHEA PART\nshea butter 100 g\nolive 100 g\nNaOH 128 g', [500, 300, 100]],
])('one that agrees is no doubt, nor a second row of a list: %s', (text, grams) => {
  expect(doubts(text)).toEqual([]);
  expect(readRecipe(reader, text).fats.map((one) => one.grams)).toEqual(grams);
});

test.each([
  'the card says coconut 300g but on the back it is coconut 200g, and I dont know which one I poured. Olive 500g, lye 110g.',
  'recipe says palm 100g but I scribbled palm 150g and forgot which I used. olive 500g. lye 85g',
  "last year's card says palm 100g, and I don't remember if I did that or palm 150g. olive 500g. lye 85g",
])('of two figures the writer does not know which went in: %s', (text) => expect(doubts(text)).toContain('corrected'));

test.each([
  'The book says coconut 300 g but I wrote coconut 200 g. Olive 500 g, lye 110 g.',
  'olive 500 g\ncoconut 200\ncoconut 250 g\nlye 110 g',
])('neither of two figures is taken, nor both: %s', (text) => expect(doubts(text)).toEqual(['two-amounts']));

test('a fat that the paper names is not left out of a lye that is made for it', () =>
  expect(readRecipe(reader, 'the card says coconut 300g. olive 500g. lye 110g.').fats).toHaveLength(2));
