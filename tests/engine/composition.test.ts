import { describe, expect, it } from 'vitest';
import { balanceOf } from '../../src/engine/alkali.ts';
import { checkRecipe } from '../../src/engine/check.ts';
import { fattyAcid } from '../../src/engine/chemistry.ts';
import { ACID_GROUPS, acidGroup, composeBlend, compositionOf } from '../../src/engine/composition.ts';
import { secondRoute } from '../../src/engine/second-route.ts';
import { soapFigures } from '../../src/engine/soap.ts';
import {
  beeswax,
  butterfat,
  castor,
  coconut,
  exactly,
  fat,
  fats,
  koh,
  naoh,
  olive,
  recipe,
  shea,
  stearic,
} from './fixtures.ts';

describe('fatty acids', () => {
  it.each([
    ['C18:1', 282.468, 'c18-1'],
    ['C18:1-OH', 298.467, 'ricinoleic'],
    ['C18:0-OH', 300.483, 'other'],
    ['C18:3-gamma', 278.436, 'c18-2-c18-3'],
    ['C6:0', 116.16, 'c4-c10'],
    ['C14:0', 228.376, 'c12-c14'],
    ['C22:0', 340.592, 'c20-up-saturated'],
    ['C20:1', 310.522, 'other'],
  ] as const)('%s', (name, mass, group) => {
    const acid = fattyAcid(name);
    expect(acid?.molarMass).toBeCloseTo(mass, 2);
    expect(acid && acidGroup(acid)).toBe(group);
  });

  it('without a plain formula are none', () => {
    expect(fattyAcid('cyclopropenoid C18/C19')).toBeNull();
  });
});

describe('a fat by its fatty acids', () => {
  it('takes off unsaponifiable matter: its middle, with the ends as band', () => {
    const { saponification } = compositionOf(shea) ?? { saponification: exactly(0) };
    expect(saponification.low).toBeCloseTo(saponification.high * 0.81, 9);
    expect(saponification.nominal).toBeCloseTo(saponification.high * 0.905, 9);
  });

  it('has none if it is a wax or nobody has given them', () => {
    expect(compositionOf(beeswax)).toBeNull();
    expect(compositionOf(fat('unknown', { sv: [190, 195] }))).toBeNull();
  });

  it('is reckoned as free acid where it is one', () => {
    // Half palmitic, half stearic by mass: mole mean 269.7 g/mol, 56 105 / 269.7 = 208.0.
    expect(compositionOf(stearic)?.saponification.nominal).toBeCloseTo(208.0, 1);
  });
});

describe('a blend', () => {
  const blend = composeBlend([
    { fat: olive, grams: 500 },
    { fat: coconut, grams: 300 },
    { fat: castor, grams: 100 },
    { fat: beeswax, grams: 100 },
  ]);

  it('is covered but for the wax', () => {
    expect(blend.covered).toBeCloseTo(0.9, 12);
  });

  it('has groups that make a whole', () => {
    expect(ACID_GROUPS.reduce((sum, group) => sum + blend.groups[group], 0)).toBeCloseTo(1, 12);
    expect(blend.acids.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(blend.groups.ricinoleic).toBeCloseTo(0.1, 2);
  });

  it('of waxes alone is empty, not a division by nothing', () => {
    expect(composeBlend([{ fat: beeswax, grams: 5 }])).toMatchObject({ acids: [], meanMolarMass: null, covered: 0 });
  });
});

describe('the second route', () => {
  it('disagrees where a table is wrong', () => {
    const slip = fat('slip', { sv: [160, 165], acids: { 'C18:1': 1 } });
    for (const [one, agrees] of [
      [olive, true],
      [slip, false],
    ] as const) {
      const checked = checkRecipe(recipe({ fats: [{ fat: one, grams: 750 }] }), fats);
      expect(checked.ok && checked.value.secondRoute?.agrees).toBe(agrees);
    }
  });

  it('says how much it covers, and is absent where it covers nothing', () => {
    const half = recipe({
      fats: [
        { fat: olive, grams: 100 },
        { fat: butterfat, grams: 100 },
      ],
    });
    const balance = balanceOf(half, fats);
    expect(secondRoute(half, fats, balance, { low: 0, high: 0 })?.covered).toBeCloseTo(190 / (190 + 226.5), 9);
    const wax = recipe({ fats: [{ fat: beeswax, grams: 100 }] });
    expect(secondRoute(wax, fats, balanceOf(wax, fats), { low: 0, high: 0 })).toBeNull();
  });
});

describe('soap', () => {
  // Pure triolein, SV 190.09: 885.45 g/mol. One mole with three of alkali.
  const triolein = fat('triolein', { sv: [190.0905, 190.0905], acids: { 'C18:1': 1 } });
  const whole = { fats: [{ fat: triolein, grams: 885.453 }], waterGrams: 200 };

  it('balances for triolein: three sodium oleates and one glycerol', () => {
    const figures = soapFigures(recipe({ ...whole, alkali: [naoh(3 * 39.997)] }), fats);
    // Sodium oleate 304.45 g/mol: oleic acid 282.468 − 1.008 + 22.990.
    expect(figures.soapGrams).toBeCloseTo(3 * 304.45, 1);
    expect(figures.glycerolGrams).toBeCloseTo(92.094, 2);
    expect(figures.unsaponifiedFatGrams).toBeCloseTo(0, 1);
    expect(figures.totalFattyMatter.grams).toBeCloseTo(3 * 282.468, 1);
  });

  it('balances with potassium too', () => {
    const figures = soapFigures(recipe({ ...whole, alkali: [koh((3 * 56.105) / 0.9)] }), fats);
    expect(figures.soapGrams).toBeCloseTo(3 * 320.56, 1);
  });

  it('leaves the superfat, and no more than all is saponified', () => {
    const half = soapFigures(recipe({ ...whole, alkali: [naoh(1.5 * 39.997)] }), fats);
    expect(half.unsaponifiedFatGrams).toBeCloseTo(885.453 / 2, 1);
    const over = soapFigures(recipe({ ...whole, alkali: [naoh(6 * 39.997)] }), fats);
    expect(over.glycerolGrams).toBeCloseTo(92.094, 2);
  });

  it('gives no glycerol from a free acid, but water', () => {
    const figures = soapFigures(recipe({ fats: [{ fat: stearic, grams: 500 }], alkali: [naoh(70)] }), fats);
    expect(figures.glycerolGrams).toBe(0);
    expect(figures.totalFattyMatter.grams).toBeCloseTo(500, 9);
  });

  it('dries to a cured bar within its water', () => {
    const figures = soapFigures(recipe({ ...whole, alkali: [naoh(114)] }), fats);
    const dry = 885.453 + 114;
    expect(figures.curedGrams.low).toBeCloseTo(dry / 0.92, 1);
    expect(figures.curedGrams.high).toBeCloseTo(dry / 0.85, 1);
    expect(figures.totalFattyMatter.ofBatch).toBeLessThan(figures.totalFattyMatter.ofCured.low);
  });
});
