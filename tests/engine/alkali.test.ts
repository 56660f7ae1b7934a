import { describe, expect, it } from 'vitest';
import {
  acidMoles,
  balanceOf,
  broughtBy,
  demandOf,
  fromStock,
  gramsOf,
  rescaleAlkali,
  splitAlkali,
  superfatOf,
  superfatWithAfter,
} from '../../src/engine/alkali.ts';
import { beeswax, citric, coconut, exactly, fats, koh, lard, milk, naoh, olive, recipe } from './fixtures.ts';

describe('demand', () => {
  it('is the saponification value in potassium hydroxide, and 39.997/56.105 of it in sodium hydroxide', () => {
    // By hand: 500 g lard at 197.5 mg/g = 98.75 g KOH; × 0.712896 = 70.40 g NaOH.
    const demand = demandOf([{ fat: lard, grams: 500 }]);
    expect(gramsOf('koh', demand)).toBeCloseTo(98.75, 9);
    expect(gramsOf('naoh', demand)).toBeCloseTo(70.398, 2);
  });

  it('counts the fat of milk as the fat it is', () => {
    // 200 g milk of 4 % fat = 8 g butterfat at 226.5 mg/g = 1.812 g KOH.
    const [with_, without] = [recipe({ liquids: [{ liquid: milk, grams: 200 }] }), recipe()];
    const more = balanceOf(with_, fats).demand - balanceOf(without, fats).demand;
    expect(gramsOf('koh', more)).toBeCloseTo(1.812, 6);
  });
});

describe('superfat', () => {
  it('is what is left of the demand', () => {
    const balance = balanceOf(recipe({ fats: [{ fat: lard, grams: 500 }], alkali: [naoh(66)] }), fats);
    expect(superfatOf(balance)).toBeCloseTo(1 - 66 / 70.398, 4);
  });

  it('counts purity, acids and fat added after the cook', () => {
    const changed = recipe({
      alkali: [naoh(102, exactly(0.97))],
      acids: [{ acid: citric, grams: 21 }],
      after: [{ fat: olive, grams: 40 }],
    });
    const balance = balanceOf(changed, fats);
    // 102 × 0.97 = 98.94; 21 g citric acid eats 21 × 0.62455 = 13.12 g; demand 111.80 g; 40 g olive another 5.418 g.
    expect(superfatOf(balance)).toBeCloseTo(1 - (98.94 - 13.117) / 111.8, 4);
    expect(superfatWithAfter(balance)).toBeCloseTo(1 - (98.94 - 13.117) / (111.8 + 5.418), 4);
  });

  it('is the same for equal moles of either alkali', () => {
    const sodium = balanceOf(recipe({ alkali: [naoh(100)] }), fats);
    const potassium = balanceOf(recipe({ alkali: [koh((100 * 56.105) / 39.997 / 0.9)] }), fats);
    expect(superfatOf(potassium)).toBeCloseTo(superfatOf(sodium), 12);
  });
});

describe('acids', () => {
  it.each([
    // Handbook figures, g NaOH for each g of acid.
    ['citric, anhydrous', 3, 192.12, 1, 0.6246],
    ['citric, monohydrate', 3, 210.14, 1, 0.571],
    ['lactic', 1, 90.08, 1, 0.444],
    ['acetic', 1, 60.05, 1, 0.6661],
    ['vinegar of 5 %', 1, 60.05, 0.05, 0.0333],
  ])('%s', (_, protons, molarMass, strength, naohPerGram) => {
    expect(gramsOf('naoh', acidMoles({ ...citric, protons, molarMass, strength }, 1))).toBeCloseTo(naohPerGram, 4);
  });
});

describe('two alkalis', () => {
  const parts = [
    { id: 'naoh', purity: exactly(1), share: 0.6 },
    { id: 'koh', purity: exactly(0.9), share: 0.4 },
  ] as const;

  it('share the demand by moles', () => {
    const [sodium, potassium] = splitAlkali(2, parts, 'demand');
    expect(sodium?.grams).toBeCloseTo(1.2 * 39.997, 9);
    expect(potassium?.grams).toBeCloseTo((0.8 * 56.105) / 0.9, 9);
  });

  it('or the weight', () => {
    const split = splitAlkali(2, parts, 'weight');
    expect((split[0]?.grams ?? 0) / (split[1]?.grams ?? 1)).toBeCloseTo(1.5, 12);
    expect(broughtBy(split)).toBeCloseTo(2, 12);
  });

  it('keep their proportions when rescaled', () => {
    const rescaled = rescaleAlkali([naoh(60), koh(40)], 3);
    expect(broughtBy(rescaled)).toBeCloseTo(3, 12);
    expect((rescaled[0]?.grams ?? 0) / (rescaled[1]?.grams ?? 1)).toBeCloseTo(1.5, 12);
  });
});

it('takes a stock solution apart', () => {
  expect(fromStock(200, 0.5)).toEqual({ alkaliGrams: 100, waterGrams: 100 });
});

it('knows that wax asks for less than coconut', () => {
  expect(demandOf([{ fat: beeswax, grams: 1 }])).toBeLessThan(demandOf([{ fat: coconut, grams: 1 }]));
});
