import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { createBot, renderPlain } from '../../src/index.ts';
import { makeReader } from '../../src/reading/index.ts';
import { readQuestion } from '../../src/reading/question/question.ts';

const reader = makeReader(loadCatalogue());
const read = (text: string) => readQuestion(reader, text);

describe('a recipe is no question', () => {
  const sets = ['chat', 'hands', 'market', 'prose', 'tables', 'traps', 'heat-questions'] as const;
  /** Told of otherwise: an accident is seen before any question, gear is asked for. */
  const apart = new Set(['hands-141-swallow', 'market-137']);

  test.each(sets)('%s', (set) => {
    const posts = JSON.parse(readFileSync(new URL(`../posts/${set}.json`, import.meta.url), 'utf8')) as readonly {
      readonly id: string;
      readonly text: string;
      readonly expect: { readonly command?: string };
    }[];
    const own = /^(convert|fat|strength|acid|worth|share)$/;
    const taken = posts.filter(
      ({ id, text, expect: { command = '' } }) => !apart.has(id) && !own.test(command) && read(text) !== null,
    );
    expect(taken.map(({ id, text }) => `${id}: ${text}`)).toEqual([]);
  });
});

describe('what belongs to what', () => {
  test.each([
    ['how much water for 140 g NaOH to make a 30 % solution', { asks: 'water', alkali: 140, strengths: [0.3] }],
    ['140 g NaOH, 300 g water: what strength?', { asks: 'strength', alkali: 140, water: 300 }],
    ['NaOH 140 g water 300 g what concentration is that', { asks: 'strength', alkali: 140, water: 300 }],
    ['how much 50 % stock do I weigh for 128 g naoh', { asks: 'stock', alkali: 128, strengths: [0.5] }],
    ['how much naoh is in 200 g of 50% lye solution', { asks: 'alkali', solution: 200, strengths: [0.5] }],
    ['500 g of 50 % lye, how much water to get 33 %', { asks: 'water', solution: 500, strengths: [0.5, 0.33] }],
    [
      'how much water for 100 g naoh, 97 % pure, at 30 % concentration',
      { asks: 'water', alkali: 100, strengths: [0.3] },
    ],
    ['lye to water 1:2, 80 g lye, how much water', { asks: 'water', alkali: 80, ratio: 2 }],
    ['water lye ratio 1:2, 80 g lye, how much water', { asks: 'water', alkali: 80, ratio: 2 }],
    ['2.2 parts water to 1 part lye with 98 g naoh how much water', { asks: 'water', alkali: 98, ratio: 2.2 }],
  ])('%s', (text, want) => {
    const got = read(text);
    if (got?.kind !== 'strength') throw new Error(`read as ${got?.kind}`);
    expect({
      asks: got.asks,
      ...(got.alkali ? { alkali: got.alkali.value } : {}),
      ...(got.water ? { water: got.water.value } : {}),
      ...(got.solution ? { solution: got.solution.value } : {}),
      ...(got.strengths.length > 0 ? { strengths: got.strengths.map(({ value }) => value) } : {}),
      ...(got.ratio ? { ratio: got.ratio.value } : {}),
    }).toEqual(want);
  });
});

describe('slips of the fingers', () => {
  test.each([
    ['how mny gramms in 3 oz', 'g', 3],
    ['2 tablspoons of honey in gms', 'g', 2],
    ['5 ounes in grmas', 'g', 5],
    ['180 farenheight in celcius', '°C', 180],
    ['3 litters of water in kilogrms', 'kg', 3],
    ['4 inchs to centimters', 'cm', 4],
  ])('%s', (text, unit, value) => {
    const got = read(text);
    if (got?.kind !== 'convert') throw new Error(`read as ${got?.kind}`);
    expect([got.to?.id, got.measures[0]?.value]).toEqual([unit, value]);
  });
});

test('what a question takes to read is bounded', () => {
  const long = `how many grams in ${'1 cup of olive oil and '.repeat(5000)}`;
  const since = performance.now();
  expect(read(long)).toBeNull();
  for (const text of [
    '1 '.repeat(200),
    '1 g '.repeat(100),
    'lye water '.repeat(40),
    '% '.repeat(190),
    '5 % lye '.repeat(8),
  ])
    read(`how much ${text}`);
  expect(performance.now() - since).toBeLessThan(200);
});

const pieces = [
  'how much',
  'how many',
  'what is',
  'in',
  'to',
  'for',
  'of',
  'and',
  'with',
  'at',
  'per',
  'is',
  '?',
  ',',
  '=',
  ':',
  '-',
  '.',
  '0',
  '1',
  '2.5',
  '1/2',
  '3/4',
  '140',
  '1e9',
  '99999999999',
  '-5',
  '1,5',
  '1.000',
  'half',
  'two',
  '%',
  'percent',
  '50 %',
  '2:1',
  '0:0',
  'g',
  'grams',
  'oz',
  'lb',
  'kg',
  'ml',
  'cups',
  'cup',
  'tbsp',
  'fl oz',
  'litre',
  'c',
  'f',
  '°C',
  'inches',
  'metre',
  'days',
  'uk',
  'metric',
  'olive oil',
  'shea',
  'honey',
  'salt',
  'water',
  'NaOH',
  'KOH',
  'lye',
  'lye solution',
  'stock',
  'citric acid',
  'vinegar',
  'butter',
  'kukui',
  'extra',
  'solution',
  'concentration',
  'ratio',
  'pure',
  'superfat',
  'oils',
  'sv',
  'iodine',
  'melts',
  'under',
  'over',
  'fats',
  'memory',
  'weigh',
  'convert',
  'strength',
  'worth',
  'share',
  'fat',
  'acid',
  'instead of',
  'recipe',
  'absolute zero',
  '\n',
];

test('no question makes it fail, no figure of an answer is missing, everything caustic carries its caution', async () => {
  const bot = createBot();
  await fc.assert(
    fc.asyncProperty(fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 14 }), async (words) => {
      const text = words.join(' ');
      const reply = await bot.ask({ platform: 'test', place: 'question', person: text, text });
      if (!reply.ok) {
        expect(reply.fault.code).not.toBe('failed');
        return;
      }
      const { command, result, caution } = reply.answer;
      if (/^(convert|strength|acid|worth|share)$/.test(command))
        expect(result).toMatchObject({ value: expect.any(Number), unit: expect.any(String) });
      const numbers = JSON.stringify(result, (_key, value: unknown) => {
        if (typeof value === 'number') expect(Number.isFinite(value), text).toBe(true);
        return value;
      });
      expect(numbers).toBeDefined();
      expect(renderPlain(reply.answer, { details: true })).not.toMatch(/NaN|undefined|Infinity|\[object/);
      if (/^(strength|acid|worth)$/.test(command)) expect(caution.length).toBeGreaterThan(0);
    }),
    { numRuns: 3000 },
  );
}, 180_000);
