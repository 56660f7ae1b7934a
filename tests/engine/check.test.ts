import { describe, expect, it } from 'vitest';
import { checkRecipe, superfatAtPurity } from '../../src/engine/check.ts';
import type { Recipe } from '../../src/engine/recipe.ts';
import { verdictOf } from '../../src/engine/verdict.ts';
import { citric, coconut, exactly, fats, koh, lard, milk, naoh, olive, recipe, shea } from './fixtures.ts';

const check = (changes: Partial<Recipe> = {}, asked?: number) => {
  const answer = checkRecipe(recipe(changes), fats, asked);
  if (!answer.ok) throw new Error(answer.fault.kind);
  return answer.value;
};

describe('a usual recipe', () => {
  // 450 g olive, 225 g coconut, 75 g castor, 102 g sodium hydroxide, 230 g water: reckoned by hand to 8.8 %,
  // 112 g for nothing left over and 106 g for 5 %; 30.7 % lye, 2.25 g water to 1 g.
  const figures = check();

  it('has its superfat and what it needs', () => {
    expect(figures.superfat.nominal).toBeCloseTo(0.0877, 4);
    expect(figures.needed.atZero[0]?.grams).toBeCloseTo(111.8, 1);
    expect(figures.needed.atAsked[0]?.grams).toBeCloseTo(106.2, 1);
    expect(figures.demand.kohGrams).toBeCloseTo(156.825, 6);
    expect(figures.demand.naohGrams).toBeCloseTo(111.8, 3);
    expect(figures.verdict).toBe('usual');
  });

  it('has its lye', () => {
    expect(figures.lye.concentration).toBeCloseTo(102 / 332, 12);
    expect(figures.lye.ratio).toBeCloseTo(2.2549, 4);
    expect(figures.lye.dissolving).toBe('usual');
  });

  it('has its shares', () => {
    expect(figures.fats.map(({ share }) => share)).toEqual([0.6, 0.3, 0.1]);
    expect(figures.fats.reduce((sum, { demandShare }) => sum + demandShare, 0)).toBeCloseTo(1, 12);
    expect(figures.batchGrams).toBe(1082);
  });

  it('has no excess and no suspicion', () => {
    expect(figures.freeAlkali).toMatchObject({ nominal: 0, worst: 0 });
    expect(figures.mixUp).toBeNull();
    expect(figures.fromMemory).toEqual([]);
    expect(figures.scale.tooCoarse).toBe(false);
  });
});

describe('excess alkali', () => {
  const figures = check({ fats: [{ fat: lard, grams: 500 }], alkali: [naoh(100)], waterGrams: 150 });

  it('is told in grams of the batch', () => {
    expect(figures.verdict).toBe('excess-alkali');
    // 100 g less 70.4 g, in 750 g of batch.
    expect(figures.freeAlkali.nominal).toBeCloseTo(29.6 / 750, 4);
    expect(figures.freeAlkali.worst).toBeGreaterThan(figures.freeAlkali.nominal);
    expect(figures.superfat.chanceOfExcess).toBeCloseTo(1, 9);
  });

  it('is suspected to be potassium hydroxide where that would fit', () => {
    expect(figures.mixUp).toMatchObject({ meant: 'koh', purity: 0.9 });
    expect(figures.mixUp?.superfat).toBeCloseTo(0.0886, 3);
  });

  it('names fats whose value rests on memory', () => {
    expect(figures.fromMemory).toEqual(['lard']);
  });
});

it('suspects sodium hydroxide behind far too little potassium hydroxide', () => {
  expect(check({ alkali: [koh(106, exactly(0.9))] }).mixUp).toMatchObject({ meant: 'naoh', purity: 1 });
});

it('suspects nothing where two alkalis are mixed, or the other would not fit either', () => {
  expect(check({ alkali: [naoh(140), koh(20)] }).mixUp).toBeNull();
  expect(check({ alkali: [naoh(300)] }).mixUp).toBeNull();
});

it('counts water of milk in the lye', () => {
  const { lye, milkFats } = check({ waterGrams: 100, liquids: [{ liquid: milk, grams: 150 }] });
  expect(lye.waterGrams).toBeCloseTo(100 + 150 * 0.87, 9);
  expect(milkFats).toMatchObject([{ fat: { id: 'butterfat' }, grams: 6 }]);
});

it('says when water will not dissolve the alkali', () => {
  expect(check({ waterGrams: 0 }).lye).toMatchObject({ ratio: 0, concentration: 1, dissolving: 'will-not-dissolve' });
  expect(check({ waterGrams: 95 }).lye.dissolving).toBe('below-floor');
  expect(check({ waterGrams: 102 }).lye.dissolving).toBe('strong');
  expect(check({ waterGrams: 400 }).lye.dissolving).toBe('weak');
});

it('says when a scale is too coarse, and for how much it would do', () => {
  // 60 g batch on a kitchen scale: half a gram of some 5.5 g.
  const small = check({ fats: [{ fat: olive, grams: 40 }], alkali: [naoh(5)], waterGrams: 15 });
  expect(small.scale.tooCoarse).toBe(true);
  expect(small.scale.shift).toBeCloseTo(0.5 / 5.418, 3);
  expect(small.scale.leastFactor).toBeCloseTo(9.23, 1);
});

it('adds up acids', () => {
  const { needed, superfat } = check({ acids: [{ acid: citric, grams: 21 }] });
  expect(needed.atAsked[0]?.grams).toBeCloseTo(106.21 + 13.117, 2);
  expect(needed.atZero[0]?.grams).toBeCloseTo(111.8 + 13.117, 2);
  expect(superfat.nominal).toBeCloseTo(1 - (102 - 13.117) / 111.8, 4);
});

it('tells what another purity would do', () => {
  const made = recipe({ alkali: [koh(150)] });
  expect(superfatAtPurity(made, fats, 'koh', 0.9)).toBeCloseTo(1 - 135 / 156.825, 9);
  expect(superfatAtPurity(made, fats, 'koh', 1)).toBeCloseTo(1 - 150 / 156.825, 9);
});

describe('verdicts', () => {
  it.each([
    [-0.001, 0.5, 'excess-alkali'],
    [0, 0.5, 'thin-margin'],
    [0.04, 0.025, 'thin-margin'],
    [0.04, 0.0249, 'usual'],
    [0.1, 0, 'usual'],
    [0.101, 0, 'fat-rich'],
    [0.2, 0, 'fat-rich'],
    [0.201, 0, 'alkali-short'],
    [1.3, 0, 'alkali-short'],
  ] as const)('superfat %d with a chance of %d is %s', (superfat, chance, verdict) => {
    expect(verdictOf(superfat, chance)).toBe(verdict);
  });

  it('turn thin where the fat is known badly', () => {
    // Shea runs from 160 to 195 mg/g: at 4 % superfat nobody knows which side of the line it is.
    expect(check({ fats: [{ fat: shea, grams: 500 }], alkali: [naoh(60.5)] }).verdict).toBe('thin-margin');
    expect(check({ fats: [{ fat: coconut, grams: 500 }], alkali: [naoh(86)] }).verdict).toBe('usual');
  });
});

describe('refuses', () => {
  it.each([
    ['no fat', { fats: [] }, 'no-fat'],
    ['fats of nothing', { fats: [{ fat: olive, grams: 0 }] }, 'no-fat'],
    ['no alkali', { alkali: [] }, 'no-alkali'],
    ['negative water', { waterGrams: -1 }, 'negative'],
    ['infinite alkali', { alkali: [naoh(Number.POSITIVE_INFINITY)] }, 'not-finite'],
    ['a purity above 100 %', { alkali: [naoh(100, exactly(1.2))] }, 'purity-out-of-range'],
    [
      'a purity outside its own range',
      { alkali: [naoh(100, { nominal: 0.9, low: 0.95, high: 1 })] },
      'purity-out-of-range',
    ],
    ['a crumb of fat', { fats: [{ fat: olive, grams: 0.01 }] }, 'too-little'],
    ['a mountain of fat', { fats: [{ fat: olive, grams: 1e12 }] }, 'too-much'],
  ] as const)('%s', (_, changes, kind) => {
    expect(checkRecipe(recipe(changes as Partial<Recipe>), fats)).toMatchObject({ ok: false, fault: { kind } });
  });

  it('a superfat that cannot be asked', () => {
    expect(checkRecipe(recipe(), fats, 1.1)).toMatchObject({ ok: false, fault: { kind: 'superfat-out-of-range' } });
  });
});
