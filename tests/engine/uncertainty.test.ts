import { describe, expect, it } from 'vitest';
import { spreadOf, superfatInterval, uncertaintyBudget } from '../../src/engine/uncertainty.ts';
import { uniformSumBelow } from '../../src/engine/uniform-sum.ts';
import { butterfat, exactly, fat, fats, milk, naoh, olive, recipe } from './fixtures.ts';

const fine = { scaleStepGrams: 0.001 };
const one = (low: number, high: number) => fat('one', { sv: [low, high] });

describe('a sum of rectangles', () => {
  it('is a rectangle when there is one', () => {
    expect(uniformSumBelow(0.25, [1])).toBeCloseTo(0.75, 6);
    expect(uniformSumBelow(-0.6, [1])).toBeCloseTo(0, 6);
  });

  it('is a triangle when there are two alike', () => {
    expect(uniformSumBelow(-0.3, [1, 1])).toBeCloseTo(0.7 ** 2 / 2, 6);
  });

  it('is a trapezium when they differ', () => {
    // Widths 2 and 1: density rises over 1, so P(≤ −1) = ½·½²/2.
    expect(uniformSumBelow(-1, [2, 1])).toBeCloseTo(0.0625, 6);
  });

  it('heeds neither order nor zeros', () => {
    expect(uniformSumBelow(0.4, [3, 0, 1, 2, 0.5, 0.2])).toBeCloseTo(uniformSumBelow(0.4, [0.2, 0.5, 1, 2, 3]), 9);
  });

  it('is certain beyond its reach, however far', () => {
    expect([uniformSumBelow(5, [1e-5, 1e-5, 1e-7]), uniformSumBelow(-5, [1e-5, 1e-5, 1e-7])]).toEqual([1, 0]);
  });

  it('is a step when nothing is in doubt', () => {
    expect([uniformSumBelow(-1, []), uniformSumBelow(1, [0])]).toEqual([0, 1]);
  });
});

describe('the interval', () => {
  it('of one fat and a fine scale is the middle 95 % of its rectangle', () => {
    // Superfat 1 − A/D with D uniform: 2.5 % in from either end of [190, 210].
    const spread = spreadOf(recipe({ fats: [{ fat: one(190, 210), grams: 500 }], alkali: [naoh(68)], ...fine }), fats);
    const at = (sv: number): number => 1 - 68 / ((500 * sv * 39.997) / 56105);
    const { low, high } = superfatInterval(spread);
    expect(low).toBeCloseTo(at(190.5), 4);
    expect(high).toBeCloseTo(at(209.5), 4);
  });

  it('is one point when all is certified and weighed finely', () => {
    const { low, high } = superfatInterval(
      spreadOf(recipe({ fats: [{ fat: one(190, 190), grams: 500 }], alkali: [naoh(64)], ...fine }), fats),
    );
    expect(high - low).toBeLessThan(1e-4);
  });

  it('is the same for one fat in two lines, and narrower for two fats alike', () => {
    const width = (recipeFats: Parameters<typeof recipe>[0]): number => {
      const { low, high } = superfatInterval(spreadOf(recipe({ ...recipeFats, ...fine }), fats));
      return high - low;
    };
    const whole = width({ fats: [{ fat: olive, grams: 800 }] });
    const halves = width({
      fats: [
        { fat: olive, grams: 400 },
        { fat: olive, grams: 400 },
      ],
    });
    const twins = width({
      fats: [
        { fat: olive, grams: 400 },
        { fat: { ...olive, id: 'twin' }, grams: 400 },
      ],
    });
    expect(halves).toBeCloseTo(whole, 5);
    expect(twins).toBeLessThan(0.9 * whole);
  });

  it('shares the spread between butterfat and the fat of milk', () => {
    const spread = spreadOf(
      recipe({ fats: [{ fat: butterfat, grams: 100 }], liquids: [{ liquid: milk, grams: 250 }] }),
      fats,
    );
    const lots = spread.errors.filter(({ source }) => source === 'fat');
    expect(lots).toHaveLength(1);
    // 110 g over 218–235 mg/g.
    expect(lots[0]?.width).toBeCloseTo((110 * 17) / 56105, 9);
  });

  it('lets no weight be off by more than itself', () => {
    const crumb = spreadOf(recipe({ fats: [{ fat: olive, grams: 0.3 }] }), fats);
    const weighing = crumb.errors.find(({ source, id }) => source === 'weighing' && id === 'olive');
    expect(weighing?.width).toBeCloseTo((0.6 * 190) / 56105, 12);
  });

  it('widens with the purity only when that is a range', () => {
    const width = (purity: Parameters<typeof naoh>[1]): number => {
      const { low, high } = superfatInterval(spreadOf(recipe({ alkali: [naoh(102, purity)] }), fats));
      return high - low;
    };
    expect(width({ nominal: 0.98, low: 0.96, high: 1 })).toBeGreaterThan(width(exactly(0.98)) + 0.005);
  });
});

it('names what drives it', () => {
  const budget = uncertaintyBudget(spreadOf(recipe(), fats));
  expect(budget[0]).toMatchObject({ source: 'fat', id: 'olive' });
  expect(budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
});
