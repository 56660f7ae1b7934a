import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { Context } from '../../src/commands/define.ts';
import { mostPressing } from '../../src/commands/questions.ts';
import { type Doubt, makeReader, type RecipeReading, readRecipe } from '../../src/reading/index.ts';
import { plainStyle } from '../../src/units/print.ts';

const catalogue = loadCatalogue();
const reader = makeReader(catalogue);
const context = { catalogue, style: plainStyle } as Context;
const base = readRecipe(reader, '300 g olive oil, 40 g NaOH');

/** One of each kind; a kind that is forgotten does not compile. */
const doubts: { readonly [Id in Doubt['id']]: Doubt } = {
  disordered: { id: 'disordered' },
  'two-recipes': { id: 'two-recipes', parts: 0 },
  corrected: { id: 'corrected', said: '140 no 150' },
  negative: { id: 'negative', said: '-144 g', of: 'Sodium hydroxide' },
  zero: { id: 'zero', said: '0 g', of: 'Coconut oil' },
  'superfat-odd': { id: 'superfat-odd', said: '110 %', value: 1.1 },
  'purity-odd': { id: 'purity-odd', said: '140 %' },
  'strength-odd': { id: 'strength-odd', said: '120 %' },
  'unknown-fat': { id: 'unknown-fat', said: 'zolani butter', candidates: [] },
  'unheld-fat': { id: 'unheld-fat', said: 'pracaxi oil', candidates: ['peanut-oil'] },
  'ambiguous-name': {
    id: 'ambiguous-name',
    said: 'butter',
    candidates: ['shea-butter', 'cocoa-butter'],
    why: 'It may be shea or cocoa.',
  },
  'which-alkali': { id: 'which-alkali', said: 'hydroxide' },
  'no-unit': { id: 'no-unit', said: 'olive 700', units: [] },
  range: { id: 'range', said: '100-110 g', of: 'Sodium hydroxide' },
  'alkali-volume': { id: 'alkali-volume', said: '4 tbsp lye' },
  'alkali-percent': { id: 'alkali-percent', said: '60 %', of: 'Potassium hydroxide' },
  'stock-strength': { id: 'stock-strength', said: '420 g lye solution' },
  'shares-sum': { id: 'shares-sum', sum: 1.1 },
  'shares-total': { id: 'shares-total' },
  'no-amount': { id: 'no-amount', said: 'coconut', of: 'Coconut oil' },
  'two-amounts': { id: 'two-amounts', of: 'water', said: ['200 g', '300 g'] },
  decimal: { id: 'decimal', said: '1.000 g', readings: [1, 1000] },
  'units-disagree': { id: 'units-disagree', said: '141 g', also: '4.5 oz', of: 'Sodium hydroxide' },
  'shares-disagree': { id: 'shares-disagree', of: 'Coconut oil', said: 0.3, weighed: 0.333 },
  'total-disagrees': { id: 'total-disagrees', said: '900 g', sum: 800 },
  unplaced: { id: 'unplaced', said: '38 g' },
  'two-readings': { id: 'two-readings', said: '', first: 'NaOH', second: 'KOH' },
  implausible: { id: 'implausible', alkaliGrams: 50_000, fatGrams: 500 },
};

const question = (...ids: readonly Doubt['id'][]) => {
  const reading: RecipeReading = { ...base, doubts: ids.map((id) => doubts[id]) };
  const fault = mostPressing(reading, context);
  if (!fault) throw new Error('no question');
  return fault;
};

describe.each(Object.keys(doubts) as Doubt['id'][])('%s', (id) => {
  const { code, message, hint, candidates, caution } = question(id);
  const all = [message, hint, ...candidates].join('\n');

  test('names one thing in short, and how to go on', () => {
    expect(message.length).toBeGreaterThan(10);
    expect(message.length).toBeLessThan(220);
    expect(hint).not.toBe('');
    expect(all).not.toMatch(/undefined|NaN|null|\[object/);
    expect(caution.length).toBeGreaterThan(0);
  });

  test('keeps what was understood, unless that would mislead', () => {
    const keeps = code === 'unclear' && id !== 'two-recipes';
    expect(hint.includes('So far I have: olive oil (virgin) 300 g, 40 g sodium hydroxide (NaOH).')).toBe(keeps);
  });
});

test('the most important doubt is asked, once, whatever their order', () => {
  expect(question('no-amount', 'two-recipes').message).toContain('two recipes');
  expect(question('two-recipes', 'no-amount').message).toContain('two recipes');
  expect(question('unplaced', 'which-alkali').message).toContain('Which alkali');
});

test('candidates are names that the reader reads', () => {
  for (const id of ['ambiguous-name', 'which-alkali'] as const) {
    for (const candidate of question(id).candidates) {
      const { fats, alkali, doubts: left } = readRecipe(reader, `500 g ${candidate}`);
      expect([left, fats.length + alkali.length], candidate).toEqual([[], 1]);
    }
  }
});

test('a clear post is no question', () => expect(mostPressing(base, context)).toBeNull());

test('an amount that stands there twice is named once, without what stood behind it', () => {
  const twice: Doubt = { id: 'two-amounts', of: 'water', said: ['300 g', '150 g', '300 g.'] };
  const { message = '', hint = '' } = mostPressing({ ...base, doubts: [twice] }, context) ?? {};
  expect(message).toBe('Two amounts of water: 300 g and 150 g. Which one, or both together?');
  expect(hint).toContain('"300 g", "150 g" or "both"');
});
