import { describe, expect, it } from 'vitest';
import { balanceOf, superfatOf } from '../../src/engine/alkali.ts';
import {
  alkaliForAcid,
  solutionConcentration,
  stockFor,
  waterToDissolve,
  waterToThin,
} from '../../src/engine/dilution.ts';
import { batterVolume, lyeDensity, mouldVolume } from '../../src/engine/mould.ts';
import { leastBatch, type ScaleTarget, scaleRecipe } from '../../src/engine/scaling.ts';
import { batchGramsOf } from '../../src/engine/soap.ts';
import { citric, fats, lard, milk, naoh, olive, recipe } from './fixtures.ts';

const scale = (target: ScaleTarget, changes = {}, superfat?: number) => {
  const answer = scaleRecipe(recipe(changes), fats, target, superfat);
  if (!answer.ok) throw new Error(answer.fault.kind);
  return answer.value;
};

describe('scaling', () => {
  it('reckons the alkali anew and keeps the superfat', () => {
    const scaled = scale({ kind: 'factor', value: 2 });
    expect(scaled.recipe.fats.map(({ grams }) => grams)).toEqual([900, 450, 150]);
    expect(scaled.recipe.alkali[0]?.grams).toBe(204);
    expect(scaled.multiple[0]?.grams).toBe(204);
    expect(scaled.recipe.waterGrams).toBe(460);
    expect(superfatOf(balanceOf(scaled.recipe, fats))).toBeGreaterThanOrEqual(scaled.superfat - 1e-9);
  });

  it.each([
    ['fat weight', { kind: 'fat-weight', grams: 1500 }, 2],
    ['batch weight', { kind: 'batch-weight', grams: 541 }, 0.5],
    ['bars as poured', { kind: 'bars', count: 10, grams: 108.2, state: 'poured' }, 1],
    [
      'what runs out first',
      {
        kind: 'at-hand',
        amounts: [
          { id: 'olive', grams: 900 },
          { id: 'castor', grams: 25 },
        ],
      },
      1 / 3,
    ],
  ] as const)('by %s', (_, target, factor) => {
    expect(scale(target).factor).toBeCloseTo(factor, 9);
  });

  it('names what runs out first', () => {
    const amounts = [
      { id: 'naoh', grams: 51 },
      { id: 'olive', grams: 400 },
    ];
    expect(scale({ kind: 'at-hand', amounts })).toMatchObject({ factor: 0.5, scarcest: 'naoh' });
  });

  it('makes cured bars of a heavier batch than poured ones', () => {
    const of = (state: 'poured' | 'cured') => scale({ kind: 'bars', count: 10, grams: 100, state }).factor;
    expect(of('cured')).toBeGreaterThan(of('poured'));
  });

  it('fills a mould', () => {
    const { recipe: made } = scale({ kind: 'mould', millilitres: 1200 }, { scaleStepGrams: 0.01 });
    expect(batterVolume(made)).toBeCloseTo(1200, 0);
    expect(batchGramsOf(made) / 1200).toBeGreaterThan(0.98);
    expect(batchGramsOf(made) / 1200).toBeLessThan(1.06);
  });

  it('counts milk as its water and the rest', () => {
    const [milky, watery] = [recipe({ liquids: [{ liquid: milk, grams: 100 }] }), recipe({ waterGrams: 230 + 87 })];
    expect(batterVolume(milky) - batterVolume(watery)).toBeCloseTo(13, 9);
  });

  it('never drops a fat to nothing', () => {
    const drop = recipe().fats.concat({ fat: lard, grams: 10 });
    expect(scale({ kind: 'factor', value: 0.02 }, { fats: drop }).recipe.fats.at(-1)?.grams).toBe(1);
  });

  it('will not multiply excess alkali unless told a superfat', () => {
    const excess = recipe({ alkali: [naoh(130)] });
    const doubled = { kind: 'factor', value: 2 } as const;
    expect(scaleRecipe(excess, fats, doubled)).toMatchObject({ ok: false, fault: { kind: 'superfat-out-of-range' } });
    expect(scaleRecipe(excess, fats, doubled, 0.05)).toMatchObject({ ok: true });
  });

  it('refuses what it cannot scale by', () => {
    for (const target of [
      { kind: 'factor', value: 0 },
      { kind: 'fat-weight', grams: Number.NaN },
      { kind: 'at-hand', amounts: [{ id: 'unicorn', grams: 1 }] },
    ] as const)
      expect(scaleRecipe(recipe(), fats, target).ok).toBe(false);
  });

  it('says the least batch that a scale weighs well', () => {
    const least = leastBatch(recipe(), fats, 1);
    // Half a gram is one point of 50 g of sodium hydroxide: 750 g of fat that takes 111.8 g, times 50/111.8.
    expect(least).toMatchObject({ ok: true });
    expect(least.ok && least.value.fatGrams).toBeCloseTo((750 * 50) / 111.8, 1);
    expect(least.ok && least.value.tooCoarse).toBe(false);
  });
});

describe('moulds', () => {
  it('have a volume', () => {
    expect(mouldVolume({ shape: 'box', length: 20, width: 8, height: 7 })).toEqual({ ok: true, value: 1120 });
    const pipe = mouldVolume({ shape: 'cylinder', diameter: 7.5, length: 30 });
    const gutter = mouldVolume({ shape: 'half-cylinder', diameter: 7.5, length: 30 });
    expect(pipe.ok && pipe.value).toBeCloseTo(1325.4, 1);
    expect(gutter.ok && gutter.value).toBeCloseTo(662.7, 1);
  });

  it('of no size are refused', () => {
    expect(mouldVolume({ shape: 'box', length: 0, width: 8, height: 7 }).ok).toBe(false);
    expect(mouldVolume({ shape: 'cylinder', diameter: 1e9, length: 7 }).ok).toBe(false);
  });

  it('take more lye the stronger it is', () => {
    expect(lyeDensity('naoh', 0.3)).toBeGreaterThan(lyeDensity('naoh', 0.2));
  });
});

describe('solutions', () => {
  it('take water', () => {
    // 140 g for a 30 % solution: 326.7 g.
    expect(waterToDissolve(140, 0.3)).toMatchObject({ ok: true, value: expect.closeTo(326.667, 3) });
    expect(solutionConcentration(150, 300)).toMatchObject({ ok: true, value: expect.closeTo(1 / 3, 9) });
    expect(stockFor(128, 0.5)).toEqual({ ok: true, value: { solutionGrams: 256, waterGrams: 128 } });
    expect(waterToThin(200, 0.5, 0.25)).toEqual({ ok: true, value: 200 });
    // 21 g citric acid, anhydrous: 13.1 g.
    expect(alkaliForAcid(citric, 21, 'naoh', 1)).toMatchObject({ ok: true, value: expect.closeTo(13.116, 2) });
  });

  it('that cannot be are refused', () => {
    expect(waterToDissolve(140, 0)).toMatchObject({ ok: false, fault: { kind: 'concentration-out-of-range' } });
    expect(waterToDissolve(140, 0.7)).toMatchObject({ ok: false, fault: { kind: 'concentration-out-of-range' } });
    expect(waterToDissolve(-1, 0.3)).toMatchObject({ ok: false, fault: { kind: 'negative' } });
    expect(solutionConcentration(0, 0)).toMatchObject({ ok: false, fault: { kind: 'too-little' } });
    expect(waterToThin(200, 0.25, 0.5)).toMatchObject({ ok: false });
    expect(alkaliForAcid(citric, 21, 'koh', 0)).toMatchObject({ ok: false });
  });
});

it('scales a single fat without a word about the others', () => {
  expect(
    scale({ kind: 'factor', value: 0.5 }, { fats: [{ fat: olive, grams: 500 }], alkali: [naoh(64)] }).recipe.fats,
  ).toHaveLength(1);
});
