import { describe, expect, test } from 'vitest';
import { type OptionTable, takeOptions } from '../../src/commands/options.ts';
import { recipeOptions } from '../../src/commands/recipe-options.ts';

const table = {
  ...recipeOptions,
  water: { kind: 'mass-or-share', about: 'water', example: 'water=38%', inText: true },
  ratio: { kind: 'ratio', about: 'ratio', example: 'ratio=2', low: 1, high: 20 },
} as const satisfies OptionTable;

const taken = (text: string) => {
  const result = takeOptions(text, table);
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
};

describe('values', () => {
  test.each([
    ['superfat=8', { superfat: 0.08 }],
    ['superfat = 8 %', { superfat: 0.08 }],
    ['SUPERFAT=7,5%', { superfat: 0.075 }],
    ['step=0.1g', { step: 0.1 }],
    ['step: 0.1 g', { step: 0.1 }],
    ['step=2', { step: 2 }],
    ['step=0.02 oz', { step: 0.02 * 28.349523125 }],
    ['unit: oz', { unit: 'oz' }],
    ['unit=grams', { unit: 'g' }],
    ['ratio=2:1', { ratio: 2 }],
    ['ratio: 2.5', { ratio: 2.5 }],
    ['water=38%', { water: { share: 0.38 } }],
    ['water=300 g', { water: { grams: 300 } }],
  ])('%s', (text, options) => {
    expect(taken(text).options).toEqual(options);
    expect(taken(text).text.trim()).toBe('');
  });
});

describe('a recipe keeps its own lines', () => {
  test.each([
    'olive: 450 g\ncoconut = 225 g\nlye: 102 g',
    // read by the reader, beside all else that a post says
    'superfat: 5 %\nwater: 230 g\npurity: 90 %',
    'Step: 1 melt the fats',
    'superfat: 5-8 %',
    'water: 300 g + 50 g ice',
    'unit: four bars',
    'not-superfat=5',
  ])('%s', (text) => expect(taken(text)).toEqual({ text, options: {} }));

  test('the unit of rows that have none stays beside the option', () => {
    const text = 'olive: 480\nunit: g\nNaOH: 62';
    expect(taken(text)).toEqual({ text, options: { unit: 'g' } });
    expect(taken('olive=700;coconut=200;naoh=137;unit=g').text).toContain('unit=g');
    expect(taken('olive 700, coconut 200, lye 120, unit=oz').text).not.toContain('unit');
    expect(taken('olive: 480 g\nunit: oz\nNaOH: 62 g').text).not.toContain('unit');
  });

  test('and only the option goes', () => {
    expect(taken('superfat=8 450 g olive, step: 0.1 g, lye: 60 g').text.replace(/\s+/g, ' ')).toBe(
      ' 450 g olive, , lye: 60 g',
    );
  });
});

test.each([
  ['superfat=lots', 'unclear'],
  ['unit=stone', 'unclear'],
  ['purity=140%', 'impossible'],
  ['ratio=0.2', 'impossible'],
  ['ratio=2:0', 'unclear'],
  ['step=-1g', 'impossible'],
])('%s is told as %s', (text, code) => {
  expect(takeOptions(text, table)).toMatchObject({ ok: false, fault: { code } });
});

test('time grows with the length of the text', () => {
  const text = 'superfat : olive 450 g; step of 10, superfat: 5-8, '.repeat(20_000);
  const since = performance.now();
  taken(text);
  expect(performance.now() - since).toBeLessThan(2000);
});
