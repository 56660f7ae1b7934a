import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { cutOf } from '../../src/reading/cut.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';
import { readPost } from '../../src/reading/post.ts';
import { areRowsAlone } from '../../src/reading/rows-alone.ts';
import { posts } from '../posts/score.ts';

const reader = makeReader(loadCatalogue());
const isAlone = (text: string): boolean => areRowsAlone(cutOf(reader, text));

const names =
  'olive oil|olive|coconut|Kokosöl|castor oil|shea butter|shea|lard|tallow|palm oil|palm kernel|PKO|RBO|cocoa butter|sunflower|avocado oil|hemp|beeswax|stearic acid|butter|vegetable oil|emu oil|olvie oil|pomace|lye|NaOH|lye (NaOH)|caustic soda (KOH)|KOH|caustic soda|potash|water|Wasser|distilled water|goat milk|beer|aloe juice|salt|sugar|kaolin|lavender eo|tea tree|superfat|sf';
const row = fc.record({
  name: fc.constantFrom(...names.split('|')),
  value: fc.oneof(
    fc.integer({ min: 1, max: 2000 }).map(String),
    fc.integer({ min: 1, max: 999 }).map((n) => (n / 10).toFixed(1)),
    fc.constantFrom('4,5', '0.25', '1 1/2', '½', '1,000', '2.125', '12'),
  ),
  unit: fc.constantFrom(
    'g',
    ' g',
    ' g',
    ' g',
    ' g',
    ' grams',
    'oz',
    ' oz',
    ' lb',
    ' kg',
    ' ml',
    ' cups',
    ' tsp',
    '%',
    ' %',
    '',
  ),
});
const superfat = fc.constantFrom('', '', 'superfat 5 %', 'Superfat: 8%', '5 % superfat', '0 % superfat', 'sf 7%');
/** Words that stand in posts, and two beside each other in one. */
const said = posts('chat')
  .concat(posts('prose'), posts('market'))
  .flatMap(({ text }) => text.match(/\p{L}+(?: \p{L}+)?/gu) ?? []);
const title = fc.oneof(
  fc.constant(''),
  fc.array(fc.constantFrom(...said), { minLength: 1, maxLength: 3 }).map((words) => `${words.join(' ')}\n`),
);
const post = fc
  .record({
    rows: fc.array(row, { minLength: 1, maxLength: 8 }),
    fat: superfat,
    title,
    first: fc.boolean(),
    colon: fc.constantFrom(' ', ': ', ' - ', ':'),
    of: fc.constantFrom(' ', ' ', ' of '),
    mark: fc.constantFrom('', '', '- ', '* ', '• '),
    between: fc.constantFrom('\n', ', ', '; ', '\n\n', ' and ', '. '),
    question: fc.constantFrom(
      '',
      '',
      'is my lye ok?',
      'Please check',
      'right?',
      'Does it look good?',
      'check this please',
    ),
    ahead: fc.boolean(),
  })
  .map(({ rows, fat, title, first, colon, of, mark, between, question, ahead }) => {
    const list =
      title +
      rows
        .map(({ name, value, unit }) => mark + (first ? name + colon + value + unit : value + unit + of + name))
        .concat(fat || [])
        .join(between);
    return question === '' ? list : ahead ? `${question}\n${list}` : `${list}\n${question}`;
  });

describe('rows alone', () => {
  it('say what the whole reader hears in them', () => {
    let alone = 0;
    fc.assert(
      fc.property(post, (text) => {
        if (!isAlone(text)) return;
        alone++;
        expect(readRecipe(reader, text)).toEqual(readPost(reader, text));
      }),
      { numRuns: 3000 },
    );
    expect(alone).toBeGreaterThan(200);
  });

  it('between points are rows, and no totals', () =>
    expect(
      readPost(reader, '• 500 g of olive oil • 250 g of rice bran oil • 250 g of lard • 130 g NaOH').fats.map(
        ({ grams }) => grams,
      ),
    ).toEqual([500, 250, 250]));

  it.each([
    'olive 500 g, 200 g coconut, 97 g lye',
    'olive 500 g\nolive 200 g\nlye 90 g',
    '500 g olive, no coconut, 68 g lye',
    'not used:\n500 g olive, 68 g lye',
    '500 g olive, 1.250 g coconut, 68 g lye',
    '500 g olive for the pot, 68 g lye',
  ])('are not all of: %s', (text) => expect(isAlone(text)).toBe(false));
});
