import { loadCatalogue } from '../../../src/catalogue/load.ts';
import type { Recipe } from '../../../src/engine/recipe.ts';
import { spreadOf, superfatInterval } from '../../../src/engine/uncertainty.ts';
import { uniformSumBelow } from '../../../src/engine/uniform-sum.ts';
import { citric, exactly, koh, milk, naoh, recipe } from '../../engine/fixtures.ts';
import { coverage, monteCarlo } from '../monte-carlo.ts';
import type { Group, Row } from '../row.ts';

const TRIALS = 200_000;
const { fats } = loadCatalogue();

const of = (amounts: Readonly<Record<string, number>>): Recipe['fats'] =>
  Object.entries(amounts).map(([id, grams]) => {
    const fat = fats.get(id);
    if (!fat) throw new Error(id);
    return { fat, grams };
  });

const TEN = {
  'olive-oil-virgin': 300,
  'coconut-oil': 200,
  'palm-oil': 150,
  'shea-butter': 60,
  'castor-oil': 50,
  'cocoa-butter': 40,
  'sunflower-oil': 60,
  'rice-bran-oil': 60,
  'tallow-beef': 50,
  beeswax: 10,
};

/** One to ten fats, near enough to no superfat that the chance of excess is a figure. */
const RECIPES: Readonly<Record<string, Recipe>> = {
  '1 fat, kitchen scale': recipe({ fats: of({ lard: 500 }), alkali: [naoh(69)] }),
  '1 fat, fine scale': recipe({ fats: of({ lard: 500 }), alkali: [naoh(69)], scaleStepGrams: 0.01 }),
  '2 fats': recipe({ fats: of({ 'olive-oil-virgin': 700, 'coconut-oil': 300 }), alkali: [naoh(147)] }),
  '2 fats, purity 97–100 %': recipe({
    fats: of({ 'olive-oil-virgin': 700, 'coconut-oil': 300 }),
    alkali: [naoh(149, { nominal: 0.985, low: 0.97, high: 1 })],
  }),
  '3 fats': recipe({
    fats: of({ 'olive-oil-virgin': 450, 'coconut-oil': 225, 'castor-oil': 75 }),
    alkali: [naoh(110)],
  }),
  '2 fats, one known badly': recipe({ fats: of({ 'shea-butter': 400, 'coconut-oil': 100 }), alkali: [naoh(66)] }),
  '5 fats': recipe({
    fats: of({ 'olive-oil-virgin': 300, 'coconut-oil': 250, 'palm-oil': 250, 'castor-oil': 50, 'shea-butter': 150 }),
    alkali: [naoh(142)],
  }),
  '10 fats, milk and acid': recipe({
    fats: of(TEN),
    alkali: [naoh(146)],
    liquids: [{ liquid: { ...milk, fat: 'butterfat-ghee' }, grams: 200 }],
    acids: [{ acid: citric, grams: 10 }],
  }),
  'soft soap, potassium hydroxide 85–95 %': recipe({
    fats: of({ 'olive-oil-virgin': 700, 'coconut-oil': 300 }),
    alkali: [koh(226, { nominal: 0.9, low: 0.85, high: 0.95 })],
  }),
  'batch too small for the scale': recipe({
    fats: of({ 'olive-oil-virgin': 45, 'coconut-oil': 15 }),
    alkali: [naoh(9, exactly(1))],
  }),
};

/** Exact distribution of the sum of n rectangles of width 1 (Irwin–Hall). */
function irwinHall(n: number, z: number): number {
  let [sum, choose] = [0, 1];
  let factorial = 1;
  for (let i = 2; i <= n; i++) factorial *= i;
  for (let k = 0; k <= n; k++) {
    const x = z + n / 2 - k;
    if (x > 0) sum += (k % 2 ? -1 : 1) * choose * x ** n;
    choose = (choose * (n - k)) / (k + 1);
  }
  return sum / factorial;
}

export function uncertainty(): Group {
  const judged = Object.entries(RECIPES).flatMap(([name, made], index): Row[] => {
    const ours = superfatInterval(spreadOf(made, fats));
    const judge = monteCarlo(made, fats, TRIALS, 2026 + index);
    const source = `JCGM 101:2008 Monte Carlo, ${TRIALS} trials, model written out apart from the engine`;
    const share = (check: string, expected: number, figure: number, tolerance: number): Row => {
      return { check: `${name}: ${check}`, source, unit: '%', expected: 100 * expected, ours: 100 * figure, tolerance };
    };
    return [
      share('low end of the superfat', judge.low, ours.low, 0.05),
      share('high end of the superfat', judge.high, ours.high, 0.05),
      share('chance of excess alkali', judge.chanceOfExcess, ours.chanceOfExcess, 0.4),
      share('real coverage of the 95 % interval', 0.95, coverage(judge, ours.low, ours.high), 0.2),
    ];
  });
  const sums = [
    [1, -0.3],
    [2, -0.7],
    [3, -1.1],
    [4, -1.4],
    [5, -1.2],
    [8, -1.6],
    [12, -2],
  ].map(([n = 0, z = 0]): Row => {
    return {
      check: `Distribution of the sum of ${n} equal rectangles at ${z}`,
      source: 'Irwin–Hall distribution, exact',
      unit: '%',
      expected: 100 * irwinHall(n, z),
      ours: 100 * uniformSumBelow(z, new Array<number>(n).fill(1)),
      tolerance: 0.05,
    };
  });
  return {
    title: 'Uncertainty of the superfat',
    about:
      'The engine reckons the interval and the chance in microseconds; a Monte Carlo judges it. The sampling error of the judge is about 0.1 % in the chance and 0.05 % in the coverage.',
    rows: [...judged, ...sums],
  };
}
