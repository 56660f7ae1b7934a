import { expect, it } from 'vitest';
import { concentrationOf, dissolvingOf, ratioOf, WATER_LIMITS, waterFor } from '../../src/engine/water.ts';

it.each([
  // Handbook: w = alkali/(alkali + water), r = water/alkali.
  [0.5, 1],
  [1 / 3, 2],
  [0.25, 3],
])('a concentration of %d is a ratio of %d, and back', (concentration, ratio) => {
  expect(ratioOf(concentration)).toBeCloseTo(ratio, 12);
  expect(concentrationOf(ratio)).toBeCloseTo(concentration, 12);
});

it('takes 67/33 of the alkali for a 33 % solution', () => {
  expect(waterFor({ kind: 'concentration', value: 0.33 }, 100, 700)).toBeCloseTo((100 * 67) / 33, 9);
  expect(waterFor({ kind: 'ratio', value: 2 }, 100, 700)).toBe(200);
  expect(waterFor({ kind: 'share-of-fat', value: 0.38 }, 100, 700)).toBe(266);
  expect(waterFor({ kind: 'grams', value: 250 }, 100, 700)).toBe(250);
});

it('has its floor below what dissolves at 20 °C', () => {
  expect(WATER_LIMITS.floor).toBeLessThan(WATER_LIMITS.solubility);
  expect(dissolvingOf(0.53)).toBe('will-not-dissolve');
  expect(dissolvingOf(0.51)).toBe('below-floor');
  expect(dissolvingOf(concentrationOf(1))).toBe('strong');
  expect([0.25, 0.33, 0.4].map(dissolvingOf)).toEqual(['usual', 'usual', 'usual']);
  expect(dissolvingOf(0.2)).toBe('weak');
});
