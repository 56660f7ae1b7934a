import { describe, expect, it, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { type Change, readCorrection } from '../../src/reading/amend/amend.ts';
import { retext } from '../../src/reading/amend/retext.ts';
import { settle } from '../../src/reading/amend/settle.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { readScaleRequest, readScaleWish } from '../../src/reading/question/scale-target.ts';
import { pick, placeOf, relatives } from '../../src/reading/words/pick.ts';

const catalogue = loadCatalogue();
const reader = makeReader(catalogue);
const recipe = '500 g olive oil, 200 g coconut oil, 50 g shea butter, 104 g naoh, 230 g water';

describe('a correction', () => {
  const told = (change: Change): string => {
    switch (change.kind) {
      case 'set':
      case 'add':
        return `${change.kind} ${change.of.id} ${Math.round(change.grams)}`;
      case 'swap':
        return `${change.to.id} for ${change.from.id}${change.grams === null ? '' : ` ${change.grams}`}`;
      case 'remove':
        return `no ${change.of.id}`;
      case 'alkali':
        return change.id;
      case 'unit':
        return change.unit;
      case 'purity':
        return `purity ${change.of ?? ''} ${change.purity.nominal}`;
      default:
        return `${change.kind} ${change.value}`;
    }
  };
  const read = (text: string, post = recipe): string => {
    const found = readCorrection(reader, text, readRecipe(reader, post));
    if (!found) return 'none';
    if (found.kind === 'changes') return found.changes.map(told).join('; ');
    if (found.kind === 'which') return `which of ${found.of.join(', ')}`;
    return found.kind === 'doubt' ? found.doubt.id : found.kind;
  };

  test.each([
    ['the coconut was 250', 'set coconut-oil 250'],
    ['sorry the naoh was 64 g', 'set naoh 64'],
    ['water 300', 'set water 300'],
    ['no, the water was 230 g', 'set water 230'],
    ['the coconut was 250 g not 200 g', 'set coconut-oil 250'],
    ['change the coconut from 200 to 250 g', 'set coconut-oil 250'],
    ['no, 600 g olive and 150 g coconut', 'set olive-oil-virgin 600; set coconut-oil 150'],
    ['add 50 g castor', 'add castor-oil 50'],
    ['and 50 g castor', 'add castor-oil 50'],
    ['100 g more coconut', 'add coconut-oil 100'],
    ['20 g less olive', 'add olive-oil-virgin -20'],
    ['2 oz more olive oil', 'add olive-oil-virgin 57'],
    ['without the shea', 'no shea-butter'],
    ['no shea', 'no shea-butter'],
    ['leave out the shea and the coconut', 'no shea-butter; no coconut-oil'],
    ['coconut 0', 'no coconut-oil'],
    ['no, pomace', 'olive-pomace-oil for olive-oil-virgin'],
    ['mango butter instead of shea', 'mango-butter for shea-butter'],
    ['swap the shea for mango butter', 'mango-butter for shea-butter'],
    ['not olive but lard', 'lard for olive-oil-virgin'],
    ['use lard instead of olive', 'lard for olive-oil-virgin'],
    ['replace the shea with 80 g cocoa butter', 'cocoa-butter for shea-butter 80'],
    ['sorry, cocoa butter', 'cocoa-butter for shea-butter'],
    ['no, 50 g castor', 'castor-oil for shea-butter 50'],
    ['make that 8 %', 'superfat 0.08'],
    ['and at 8 %?', 'superfat 0.08'],
    ['superfat 6', 'superfat 0.06'],
    ['make it a 33 % solution', 'concentration 0.33'],
    ['2:1 water', 'ratio 2'],
    ['water at 38 %', 'water-share 0.38'],
    ['it was KOH', 'koh'],
    ['KOH, 90 %', 'koh; purity koh 0.9'],
    ['what about koh?', 'koh'],
    ['85 % pure', 'purity  0.85'],
    ['in ounces', 'oz'],
    ['and in oz?', 'oz'],
    ['grams please', 'g'],
    ['my scale reads 0.1 g', 'step 0.1'],
  ])('"%s": %s', (text, change) => expect(read(text)).toBe(change));

  test.each([
    ['no, palm kernel', 'which of olive-oil-virgin, coconut-oil, shea-butter'],
    ['make that 550 g', 'which of olive-oil-virgin, coconut-oil, shea-butter'],
    ['and 33 %?', 'which of '],
    ['no, butter', 'ambiguous-name'],
    ['the coconut was 200 to 250 g', 'range'],
    ['add castor', 'no-amount'],
    ['without the lavender', 'lost'],
    ['replace the lard with tallow', 'lost'],
    ['make the coconut 30 %', 'no-amount'],
  ])('"%s" is asked: %s', (text, question) => expect(read(text)).toBe(question));

  test.each([
    '400 g lard, 100 g castor oil, 62 g naoh, 140 g water',
    'sorry, 400 g lard, 62 g naoh and 140 g water',
    '500 g lard',
    '500 g lard, 5 % superfat',
    '600 g olive, 300 g coconut',
    'how much lye for 250 g coconut?',
    '3/4 cup shea in grams',
    '16 oz olive oil in grams',
    'sv of shea',
    'olive vs pomace?',
    'difference between palm and coconut',
    'is palm kernel like coconut?',
    '180f in c',
    'the stock was 380 g',
    'the class had 8 people',
    'what water would I need for 25 %',
    'castor oil',
    'thanks!',
    '',
  ])('"%s" is none', (text) => expect(read(text)).toBe('none'));

  it('takes a bare figure in the unit that the person writes in, and asks where there are two', () => {
    expect(read('the olive was 18', '16 oz olive oil, 8 oz coconut oil, 3.4 oz lye, 8 oz water')).toBe(
      'set olive-oil-virgin 510',
    );
    expect(read('the naoh was 4', '1 lb olive oil, 8 oz coconut oil, 3.4 oz lye, 8 oz water')).toBe('no-unit');
    expect(read('the coconut was 9', '1 lb olive oil, 8 oz coconut oil, 3.4 oz lye, 8 oz water')).toBe(
      'set coconut-oil 255',
    );
  });
});

describe('a short answer', () => {
  const beef = ['tallow-beef', 'tallow-mutton'];
  test.each([
    ['virgin', ['olive-oil-virgin', 'olive-oil-refined'], 'olive-oil-virgin'],
    ['the second', beef, 'tallow-mutton'],
    ['2', beef, 'tallow-mutton'],
    ['last one', beef, 'tallow-mutton'],
    ['mutton', beef, 'tallow-mutton'],
    ['it’s the mutton one I think', beef, 'tallow-mutton'],
    ['beef tallow', beef, 'tallow-beef'],
    ['dairy', ['shea-butter', 'dairy-butter', 'butterfat-ghee'], 'dairy-butter'],
    ['shea', ['shea-butter', 'cocoa-butter'], 'shea-butter'],
    ['palm', ['palm-oil', 'palm-kernel-oil'], 'palm-oil'],
    ['neither', beef, null],
    ['not the first', beef, null],
    ['tallow', beef, 'tallow-beef'],
    ['the third', beef, null],
    ['oil', ['palm-oil', 'olive-oil-virgin'], null],
  ])('"%s" of %j is %s', (text, ids, id) => expect(pick(text, ids, catalogue)).toBe(id));

  test.each([
    ['first', 0],
    ['the 2nd', 1],
    ['option 2', 1],
    ['number three', 2],
    ['the last', 2],
    ['second thoughts', null],
    ['', null],
  ])('"%s" is place %j of three', (text, place) => expect(placeOf(text, 3)).toBe(place));

  it('knows relatives by the telling words of their names', () => {
    expect(relatives('palm-oil', catalogue)).toContain('palm-kernel-oil');
    expect(relatives('tallow-beef', catalogue)).toContain('tallow-mutton');
    expect(relatives('citric-acid', catalogue)).toEqual(['citric-acid-monohydrate']);
    expect(relatives('coconut-oil', catalogue)).not.toContain('palm-oil');
  });

  it.each(['dunno', 'how many grams in 3 oz?', 'convert 3 oz to g', '3 oz in g', 'what do you mean?', 'castor 500 g'])(
    '"%s" answers no question for one amount of olive oil',
    (text) => {
      const { doubts } = readRecipe(reader, 'lye for 500 to 600 g olive oil');
      const [range] = doubts;
      if (!range) throw new Error('no doubt');
      expect(settle(reader, range, text)).toBeNull();
    },
  );
});

describe('a question asked again', () => {
  test.each([
    ['3/4 cup in grams', 'shea', true, '3/4 cup shea in grams'],
    ['3/4 cup shea in grams', 'and in oz?', false, '3/4 cup shea in oz'],
    [
      'how much water for 140 g NaOH to make a 30 % solution',
      'and at 33 %?',
      false,
      'how much water for 140 g NaOH to make a 33 % solution',
    ],
    [
      'how much 50 % stock do I weigh for 128 g naoh',
      'and for 140 g?',
      false,
      'how much 50 % stock do I weigh for 140 g naoh',
    ],
    [
      'how much extra naoh for 100 g citric acid',
      'no, monohydrate',
      false,
      'how much extra naoh for 100 g citric acid monohydrate',
    ],
    ['1 cup olive oil in grams', 'no, castor', false, '1 cup castor in grams'],
    ['180f in c', 'and 200?', false, '200 °F in c'],
    [
      'what concentration is 150 g NaOH in 300 g water',
      'and in 350 g water?',
      false,
      'what concentration is 150 g NaOH in 350 g water',
    ],
    // which of two figures is meant, of what a name is, or whether it is meant at all, cannot be known
    ['what concentration is 150 g NaOH in 300 g water', 'and with 350 g?', false, null],
    ['3/4 cup shea in grams', 'for 2 kg', false, null],
    ['3/4 cup shea in grams', 'shea butter', false, null],
    ['180f in c', 'no, palm kernel', false, null],
    ['180f in c', 'make that 8 %', false, null],
    ['3/4 cup shea in grams', 'how much lye for 500 g lard', false, null],
  ])('"%s", "%s"', (question, follow, open, text) => expect(retext(reader, question, follow, open)).toBe(text));
});

describe('a wished size', () => {
  test.each([
    ['to 1.2 kg', { kind: 'weight', grams: 1200 }],
    ['for 800 g of oils', { kind: 'fat-weight', grams: 800 }],
    ['to 48 oz oils', { kind: 'fat-weight' }],
    ['a 1 kg batch', { kind: 'batch-weight', grams: 1000 }],
    ['my 1.2 kg mould', { kind: 'batch-weight', grams: 1200 }],
    ['my 10 x 3 x 3 inch mould', { kind: 'sides', mould: { shape: 'box', length: 25.4 } }],
    ['10"x3"x3"', { kind: 'sides', mould: { shape: 'box', length: 25.4, width: 7.62 } }],
    ['10 x 3 1/2 x 2.5 in', { kind: 'sides', mould: { width: 8.89 } }],
    ['240 x 80 x 60 mm', { kind: 'sides', mould: { length: 24 } }],
    ['24x8x6 mould', { kind: 'sides-of-what', sides: [24, 8, 6] }],
    ['tube 8 cm across and 20 cm long', { kind: 'sides', mould: { shape: 'cylinder', diameter: 8, length: 20 } }],
    ['1.2 l mould', { kind: 'mould', millilitres: 1200 }],
    ['12 bars of 100 g', { kind: 'bars', count: 12, grams: 100, state: 'poured' }],
    ['12 x 100 g bars', { kind: 'bars', count: 12, grams: 100 }],
    ['10 cured bars of 100 g', { kind: 'bars', state: 'cured' }],
    ['12 bars', { kind: 'bars-of-what', count: 12 }],
    ['I only have 300 g coconut', { kind: 'at-hand', amounts: [{ id: 'coconut-oil', grams: 300 }] }],
    ['double it', { kind: 'factor', value: 2 }],
    ['by 1.5', { kind: 'factor', value: 1.5 }],
    ['20 % smaller', { kind: 'factor', value: 0.8 }],
    ['to 1 to 1.5 kg', { kind: 'range' }],
  ])('"%s"', (text, wish) => expect(readScaleWish(reader, text)).toMatchObject(wish));

  it.each(['hello', 'how much lye', 'superfat 8 %'])('"%s" is none', (text) =>
    expect(readScaleWish(reader, text)).toBeNull(),
  );

  it('is parted from a recipe in the same text, with a superfat beside it', () => {
    const asked = readScaleRequest(
      reader,
      'this to 1,2 kg of oils at 8 %: 500 g olive oil, 200 g coconut oil, 98 g naoh',
    );
    expect(asked).toMatchObject({ wish: { kind: 'fat-weight', grams: 1200 }, superfat: 0.08 });
    expect(readRecipe(reader, asked.recipe).fats.map(({ grams }) => grams)).toEqual([500, 200]);
  });
});
