import { describe, expect, it } from 'vitest';
import { balanceOf, superfatOf } from '../../src/engine/alkali.ts';
import { roundDown } from '../../src/engine/scale-step.ts';
import { type LyeRequest, toWeigh } from '../../src/engine/weigh.ts';
import { citric, coconut, exactly, fats, lard, milk, naoh, olive } from './fixtures.ts';

const pureNaoh = [{ id: 'naoh', purity: exactly(1), share: 1 }] as const;
const request = (changes: Partial<LyeRequest> = {}): LyeRequest => ({
  fats: [
    { fat: olive, grams: 700 },
    { fat: coconut, grams: 300 },
  ],
  after: [],
  liquids: [],
  acids: [],
  alkali: pureNaoh,
  scaleStepGrams: 1,
  ...changes,
});
const weigh = (changes: Partial<LyeRequest> = {}) => {
  const answer = toWeigh(request(changes), fats);
  if (!answer.ok) throw new Error(answer.fault.kind);
  return answer.value;
};

describe('what to weigh', () => {
  it('leaves 5 % when nothing is said, in a 33 % solution', () => {
    // By hand: 700 × 190 + 300 × 256.5 = 209.95 g KOH = 149.67 g NaOH; × 0.95 = 142.19 g.
    const { recipe, exact } = weigh();
    expect(exact[0]?.grams).toBeCloseTo(142.19, 2);
    expect(recipe.alkali[0]?.grams).toBe(142);
    expect(recipe.waterGrams).toBe(Math.round((142 * 67) / 33));
  });

  it('rounds alkali down even when the next step is nearer', () => {
    const { recipe, exact } = weigh({ fats: [{ fat: lard, grams: 480 }] });
    expect((exact[0]?.grams ?? 0) % 1).toBeGreaterThan(0.2);
    expect(recipe.alkali[0]?.grams).toBe(Math.floor(exact[0]?.grams ?? 0));
    expect(superfatOf(balanceOf(recipe, fats))).toBeGreaterThanOrEqual(0.05);
  });

  it('does not lose a step to the last bit of a division', () => {
    // 0.3 / 0.1 is 2.999…96 in binary.
    expect(roundDown(0.3, 0.1)).toBe(0.3);
    expect(roundDown(0.2999, 0.1)).toBe(0.2);
  });

  it('allows for purity', () => {
    const impure = weigh({ alkali: [{ id: 'koh', purity: exactly(0.9), share: 1 }] });
    const pure = weigh({ alkali: [{ id: 'koh', purity: exactly(1), share: 1 }] });
    expect(impure.exact[0]?.grams).toBeCloseTo((pure.exact[0]?.grams ?? 0) / 0.9, 9);
  });

  it('feeds acids first', () => {
    const [plain, sour] = [weigh(), weigh({ acids: [{ acid: citric, grams: 21 }] })];
    expect((sour.exact[0]?.grams ?? 0) - (plain.exact[0]?.grams ?? 0)).toBeCloseTo(13.117, 2);
  });

  it.each([
    ['ratio', 2, 284],
    ['share-of-fat', 0.33, 330],
    ['grams', 400, 400],
    ['concentration', 0.5, 142],
  ] as const)('takes water by %s', (kind, value, water) => {
    expect(weigh({ water: { kind, value } }).recipe.waterGrams).toBe(water);
  });

  it('lets the water of milk stand for water', () => {
    const { recipe } = weigh({ liquids: [{ liquid: milk, grams: 200 }] });
    const total = (recipe.alkali[0]?.grams ?? 0) * (67 / 33);
    expect(recipe.waterGrams).toBe(Math.round(total - 200 * 0.87));
  });

  it('puts milk in the place of all water, its fat in the demand', () => {
    const { recipe } = weigh({ insteadOfWater: milk });
    expect(recipe.waterGrams).toBe(0);
    const alkali = recipe.alkali[0]?.grams ?? 0;
    expect(Math.abs((recipe.liquids[0]?.grams ?? 0) - (alkali * 67) / 33)).toBeLessThan(3);
    // Cream of 36 % fat asks for alkali, which asks for cream: 10 % more than plain water would be.
    const cream = weigh({ insteadOfWater: { ...milk, fatShare: 0.36 }, scaleStepGrams: 0.01 }).recipe;
    expect(cream.liquids[0]?.grams).toBeCloseTo(((cream.alkali[0]?.grams ?? 0) * 67) / 33, 1);
    expect(alkali).toBeGreaterThan(weigh().recipe.alkali[0]?.grams ?? 0);
    expect(superfatOf(balanceOf(recipe, fats))).toBeGreaterThanOrEqual(0.05);
  });
});

describe('refuses', () => {
  it.each([
    ['no fat', { fats: [] }, 'no-fat'],
    ['a negative weight', { fats: [{ fat: olive, grams: -1 }] }, 'negative'],
    ['what is no number', { fats: [{ fat: olive, grams: Number.NaN }] }, 'not-finite'],
    ['110 % superfat', { superfat: 1.1 }, 'superfat-out-of-range'],
    ['less than none', { superfat: -0.05 }, 'superfat-out-of-range'],
    ['a purity of 0', { alkali: [{ id: 'naoh', purity: exactly(0), share: 1 }] }, 'purity-out-of-range'],
    ['a 60 % solution', { water: { kind: 'concentration', value: 0.6 } }, 'concentration-out-of-range'],
    ['no alkali', { alkali: [] }, 'no-alkali'],
    ['shares that make 90 %', { alkali: [{ id: 'naoh', purity: exactly(1), share: 0.9 }] }, 'split-out-of-range'],
    ['alkali under one step', { fats: [{ fat: olive, grams: 5 }] }, 'too-little'],
    ['a step of nothing', { scaleStepGrams: 0 }, 'step-out-of-range'],
    ['milk of a fat nobody knows', { liquids: [{ liquid: { ...milk, fat: 'unknown' }, grams: 1 }] }, 'unknown-fat'],
  ] as const)('%s', (_, changes, kind) => {
    const answer = toWeigh(request(changes as Partial<LyeRequest>), fats);
    expect(answer).toMatchObject({ ok: false, fault: { kind } });
  });
});

it('weighs what it was given in alkali already', () => {
  expect(superfatOf(balanceOf({ ...weigh().recipe, alkali: [naoh(142)] }, fats))).toBeCloseTo(1 - 142 / 149.67, 4);
});
