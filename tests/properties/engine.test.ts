/** What must hold for every recipe the engine accepts. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { balanceOf, demandOf, superfatOf } from '../../src/engine/alkali.ts';
import { checkRecipe } from '../../src/engine/check.ts';
import { composeBlend } from '../../src/engine/composition.ts';
import type { AlkaliAmount, FatAmount, Recipe } from '../../src/engine/recipe.ts';
import { scaleRecipe } from '../../src/engine/scaling.ts';
import { soapFigures } from '../../src/engine/soap.ts';
import { toWeigh } from '../../src/engine/weigh.ts';
import { exactly } from '../engine/fixtures.ts';

const { fats, acids, liquids } = loadCatalogue();

const amount = fc.double({ min: 0.5, max: 5000, noNaN: true });
const fatAmount: fc.Arbitrary<FatAmount> = fc.record({ fat: fc.constantFrom(...fats.values()), grams: amount });
const fatList = fc.array(fatAmount, { minLength: 1, maxLength: 10 });
const purity = fc
  .tuple(fc.double({ min: 0.5, max: 1, noNaN: true }), fc.double({ min: 0, max: 0.3, noNaN: true }))
  .map(([nominal, width]) => ({
    nominal,
    low: Math.max(0.01, nominal - width / 2),
    high: Math.min(1, nominal + width / 2),
  }));
const alkaliAmount: fc.Arbitrary<AlkaliAmount> = fc.record({
  id: fc.constantFrom('naoh', 'koh'),
  grams: amount,
  purity,
});
const liquidAmount = fc.record({ liquid: fc.constantFrom(...liquids.values()), grams: amount });
const acidAmount = fc.record({
  acid: fc.constantFrom(...acids.values()),
  grams: fc.double({ min: 0, max: 50, noNaN: true }),
});
const step = fc.constantFrom(0.01, 0.1, 0.5, 1, 2.8349523125, 5);
const anyRecipe: fc.Arbitrary<Recipe> = fc.record({
  fats: fatList,
  after: fc.array(fatAmount, { maxLength: 2 }),
  alkali: fc.array(alkaliAmount, { minLength: 1, maxLength: 3 }),
  waterGrams: fc.double({ min: 0, max: 5000, noNaN: true }),
  liquids: fc.array(liquidAmount, { maxLength: 2 }),
  acids: fc.array(acidAmount, { maxLength: 2 }),
  scaleStepGrams: step,
});

/** Every number anywhere in a result; catalogue data is not looked into. */
function numbersIn(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'fat' ? [] : numbersIn(inner, `${path}/${key}`)));
}
const expectFinite = (value: unknown): void => {
  for (const [path, number] of numbersIn(value)) expect(number, path).toSatisfy(Number.isFinite);
};

describe('demand', () => {
  it('is linear in weight', () => {
    fc.assert(
      fc.property(fatList, fc.double({ min: 0.01, max: 100, noNaN: true }), (list, factor) => {
        const scaled = list.map(({ fat, grams }) => ({ fat, grams: grams * factor }));
        expect(demandOf(scaled) / demandOf(list)).toBeCloseTo(factor, 6);
      }),
    );
  });

  it('adds up, whatever the order', () => {
    fc.assert(
      fc.property(fatList, fatList, (one, other) => {
        const both = demandOf([...one, ...other]);
        expect(demandOf([...other, ...one].reverse())).toBeCloseTo(both, 9);
        expect(demandOf(one) + demandOf(other)).toBeCloseTo(both, 9);
      }),
    );
  });

  it('rises with each fat', () => {
    fc.assert(
      fc.property(fatList, fc.nat(), amount, (list, which, more) => {
        const at = which % list.length;
        const richer = list.map((one, index) => (index === at ? { ...one, grams: one.grams + more } : one));
        expect(demandOf(richer)).toBeGreaterThan(demandOf(list));
      }),
    );
  });
});

describe('a checked recipe', () => {
  it('has finite figures, an interval in order and a chance between 0 and 1', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const checked = checkRecipe(recipe, fats);
        expect(checked.ok).toBe(true);
        if (!checked.ok) return;
        expectFinite(checked.value);
        const { low, high, chanceOfExcess } = checked.value.superfat;
        expect(low).toBeLessThanOrEqual(high);
        expect(chanceOfExcess).toBeGreaterThanOrEqual(0);
        expect(chanceOfExcess).toBeLessThanOrEqual(1);
        expectFinite(soapFigures(recipe, fats));
        expectFinite(composeBlend(recipe.fats));
      }),
      { numRuns: 500 },
    );
  });

  it('is refused or finite for any numbers at all', () => {
    const wild = fc.oneof(fc.double(), fc.constantFrom(0, -0, 5e-324, 1e-9, 1e9, 1e308, Number.NaN));
    fc.assert(
      fc.property(anyRecipe, fc.array(wild, { minLength: 12, maxLength: 12 }), fc.nat(), (recipe, numbers, mask) => {
        const pick = (index: number, usual: number): number =>
          (mask >> index) & 1 ? (numbers[index] ?? usual) : usual;
        const share = pick(4, 0.9);
        const changed: Recipe = {
          fats: recipe.fats.map((one, index) => ({ ...one, grams: pick(index % 2, one.grams) })),
          after: recipe.after.map((one) => ({ ...one, grams: pick(2, one.grams) })),
          alkali: recipe.alkali.map((one, index) => ({
            ...one,
            grams: pick(3 + 5 * (index % 2), one.grams),
            purity: { nominal: share, low: pick(5, share), high: pick(6, share) },
          })),
          waterGrams: pick(7, recipe.waterGrams),
          liquids: recipe.liquids.map((one) => ({ ...one, grams: pick(9, one.grams) })),
          acids: recipe.acids.map((one) => ({ ...one, grams: pick(10, one.grams) })),
          scaleStepGrams: pick(11, recipe.scaleStepGrams),
        };
        const checked = checkRecipe(changed, fats);
        if (!checked.ok) return;
        expectFinite(checked.value);
        expectFinite(soapFigures(changed, fats));
        const scaled = scaleRecipe(changed, fats, { kind: 'factor', value: 2 });
        if (scaled.ok) expectFinite(scaled.value);
      }),
      { numRuns: 2000 },
    );
  });

  it('does not care for the order of its lines, nor whether a fat stands in one line or two', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const fine = { ...recipe, scaleStepGrams: 0.0001 };
        const halves = fine.fats.flatMap((one) => [one, one].map(({ fat, grams }) => ({ fat, grams: grams / 2 })));
        const [one, other] = [
          checkRecipe(fine, fats),
          checkRecipe({ ...fine, fats: halves.reverse(), alkali: [...fine.alkali].reverse() }, fats),
        ];
        if (!one.ok || !other.ok) throw new Error('refused');
        for (const figure of ['nominal', 'low', 'high', 'withAfter'] as const) {
          const [x, y] = [one.value.superfat[figure], other.value.superfat[figure]];
          expect(Math.abs(x - y)).toBeLessThan(1e-4 * (1 + Math.abs(x)));
        }
        // Two weighings of half are a little less sure than one of the whole.
        const chances = [one, other].map(({ value }) => value.superfat.chanceOfExcess);
        expect(Math.abs((chances[0] ?? 0) - (chances[1] ?? 1))).toBeLessThan(0.004);
        expect(other.value.demand.naohGrams).toBeCloseTo(one.value.demand.naohGrams, 6);
      }),
    );
  });

  it('has less superfat the more alkali, and more the more fat', () => {
    fc.assert(
      fc.property(anyRecipe, amount, (recipe, more) => {
        const superfat = (made: Recipe): number => superfatOf(balanceOf(made, fats));
        const [fat, alkali] = [recipe.fats[0], recipe.alkali[0]];
        if (!fat || !alkali) throw new Error('empty');
        expect(superfat({ ...recipe, alkali: [...recipe.alkali, { ...alkali, grams: more }] })).toBeLessThan(
          superfat(recipe),
        );
        if (recipe.acids.length === 0)
          expect(superfat({ ...recipe, fats: [...recipe.fats, { ...fat, grams: more }] })).toBeGreaterThan(
            superfat(recipe),
          );
      }),
    );
  });
});

describe('what to weigh', () => {
  const request = fc.record({
    fats: fatList,
    after: fc.constant([]),
    liquids: fc.array(liquidAmount, { maxLength: 1 }),
    acids: fc.array(acidAmount, { maxLength: 1 }),
    superfat: fc.double({ min: 0, max: 0.9, noNaN: true }),
    splitBy: fc.constantFrom('demand', 'weight'),
    alkali: fc.tuple(purity, purity, fc.double({ min: 0, max: 1, noNaN: true })).map(
      ([one, other, share]) =>
        [
          { id: 'naoh', purity: one, share },
          { id: 'koh', purity: other, share: 1 - share },
        ] as const,
    ),
    scaleStepGrams: step,
  });

  it('never leaves less superfat than asked, and lies on the step', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const weighed = toWeigh(asked, fats);
        if (!weighed.ok) {
          expect(weighed.fault.kind).toBe('too-little');
          return;
        }
        const { recipe } = weighed.value;
        expectFinite(weighed.value);
        expect(superfatOf(balanceOf(recipe, fats))).toBeGreaterThanOrEqual(asked.superfat - 1e-8);
        for (const { grams } of recipe.alkali) {
          const steps = grams / asked.scaleStepGrams;
          expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
        }
        const finest = toWeigh({ ...asked, scaleStepGrams: 0.0001 }, fats);
        if (!finest.ok) throw new Error(finest.fault.kind);
        // the finest step is still a share of a tiny batch's alkali (about a seventh of its fat)
        const total = asked.fats.reduce((sum, one) => sum + one.grams, 0);
        const off = Math.abs(superfatOf(balanceOf(finest.value.recipe, fats)) - asked.superfat);
        expect(off).toBeLessThan(0.0005 + 0.002 / total);
      }),
      { numRuns: 500 },
    );
  });

  it('scales in one step or in two', () => {
    const factor = fc.double({ min: 0.5, max: 3, noNaN: true });
    fc.assert(
      fc.property(fatList, factor, factor, (list, first, second) => {
        const pure = [{ id: 'naoh', purity: exactly(1), share: 1 }] as const;
        const made = toWeigh(
          { fats: list, after: [], liquids: [], acids: [], alkali: pure, scaleStepGrams: 0.001 },
          fats,
        );
        if (!made.ok) return;
        const by = (recipe: Recipe, value: number): Recipe => {
          const scaled = scaleRecipe(recipe, fats, { kind: 'factor', value });
          if (!scaled.ok) throw new Error(scaled.fault.kind);
          return scaled.value.recipe;
        };
        const [twice, once] = [by(by(made.value.recipe, first), second), by(made.value.recipe, first * second)];
        for (const [index, { grams }] of once.fats.entries()) expect(twice.fats[index]?.grams).toBeCloseTo(grams, 1);
        expect(twice.alkali[0]?.grams).toBeCloseTo(once.alkali[0]?.grams ?? 0, 1);
      }),
    );
  });
});
