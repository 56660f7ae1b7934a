import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../../src/catalogue/heat.ts';
import { cookGuide } from '../../../src/engine/heat/cook-stages.ts';
import {
  flashOf,
  ghsCategory,
  idealFlash,
  type ScentFlash,
  type ScentPart,
} from '../../../src/engine/heat/flash-point.ts';
import { type LoadInput, type ScentLoad, scentLoad } from '../../../src/engine/heat/scent-load.ts';

const data = loadHeat();
const flash = (parts: readonly ScentPart[], margin?: number): ScentFlash => {
  const outcome = flashOf(data, parts, margin);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};
const load = (input: LoadInput): ScentLoad => {
  const outcome = scentLoad(data, input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};

describe('flash point', () => {
  test('lavender: 65 to 75 °C or so (common practice), added at least 6 K below its low end', () => {
    const lavender = flash([{ oil: 'lavender', grams: 10 }]);
    expect(lavender.flashPointC).toBeGreaterThanOrEqual(65);
    expect(lavender.flashPointC).toBeLessThanOrEqual(75);
    expect(lavender.addBelowC).toBe(lavender.flashPointC - 6);
    expect(lavender.pourable).toBe(false);
    expect(lavender.lowest.fromMemory).toBe(true);
  });

  test('a smaller margin than 6 K is not taken, a larger one is', () => {
    expect(flash([{ oil: 'lavender', grams: 10 }], 2).marginK).toBe(6);
    expect(flash([{ oil: 'lavender', grams: 10 }], 10).addBelowC).toBe(55);
  });

  test('a published single figure below the range counts too; tea tree by ECHA 54 to 55 °C', () => {
    expect(flash([{ oil: 'tea-tree', grams: 1 }]).flashPointC).toBeLessThanOrEqual(54);
    for (const [id, oil] of data.oils) {
      const lows = [oil.flash.low, ...(oil.flashPoints ?? []).map(({ low }) => low)];
      expect(flash([{ oil: id, grams: 1 }]).flashPointC).toBe(Math.min(...lows));
    }
  });

  test('a figure from the data sheet replaces ours', () => {
    const given = flash([{ oil: 'lavender', grams: 10, flashC: 71 }]);
    expect(given).toMatchObject({ flashPointC: 71, addBelowC: 65, pourable: true, lowest: { given: true } });
    expect(flash([{ oil: null, grams: 10, flashC: 93 }]).flashPointC).toBe(93);
  });

  test('citrus in a blend rules it; the model lies between its parts', () => {
    const blend = flash([
      { oil: 'lavender', grams: 20 },
      { oil: 'sweet-orange', grams: 10 },
    ]);
    expect(blend.flashPointC).toBe(43);
    expect(blend.lowest.oil).toBe('sweet-orange');
    expect(blend.pourable).toBe(false);
    expect(blend.modelledC?.nominal).toBeGreaterThan(48.5);
    expect(blend.modelledC?.nominal).toBeLessThan(72);
  });

  test('between its components, whatever the mixture, and nearer to what there is more of', () => {
    const withVapour = [...data.oils].filter(([, { vapour }]) => vapour).map(([id]) => id);
    const grams = fc.double({ min: 0.1, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(fc.record({ oil: fc.constantFrom(...withVapour), grams }), { minLength: 2, maxLength: 5 }),
        (parts) => {
          const { modelledC, parts: flashes, flashPointC } = flash(parts);
          if (!modelledC) throw new Error('no model');
          for (const [end, pick] of [
            ['low', 'lowC'],
            ['high', 'highC'],
          ] as const) {
            const ends = flashes.map((part) => part[pick]);
            expect(modelledC[end]).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-4);
            expect(modelledC[end]).toBeLessThanOrEqual(Math.max(...ends) + 1e-4);
          }
          expect(flashPointC).toBeLessThanOrEqual(modelledC.low + 1e-4);
        },
      ),
      { numRuns: 300 },
    );
    const at = (share: number): number =>
      idealFlash(data, [
        { moles: share, component: 'limonene', flashC: 48 },
        { moles: 1 - share, component: 'linalyl acetate', flashC: 85 },
      ]);
    expect(at(0.2)).toBeGreaterThan(at(0.5));
    expect(at(0.5)).toBeGreaterThan(at(0.8));
  });

  test('without vapour data there is no model, only the conservative figure', () => {
    expect(
      flash([
        { oil: 'lavender', grams: 1 },
        { oil: 'patchouli', grams: 1 },
      ]).modelledC,
    ).toBe(null);
  });

  test('GHS 2.6 (GHS; CLP without category 4): 23, 60 and 93 °C', () => {
    expect([22.9, 23, 60, 60.1, 93, 93.1].map(ghsCategory)).toEqual([
      'category-2-or-1',
      'category-3',
      'category-3',
      'category-4',
      'category-4',
      'none',
    ]);
  });

  test('refusals', () => {
    const kind = (parts: readonly ScentPart[]) => {
      const outcome = flashOf(data, parts);
      return outcome.ok ? null : outcome.fault.kind;
    };
    expect(kind([])).toBe('no-scent');
    expect(kind([{ oil: 'lavender', grams: 0 }])).toBe('no-scent');
    expect(kind([{ oil: 'moon-dust', grams: 1 }])).toBe('unknown');
    expect(kind([{ oil: null, grams: 1 }])).toBe('unknown');
    expect(kind([{ oil: 'lavender', grams: Number.NaN }])).toBe('not-finite');
  });
});

describe('load', () => {
  test('6 % of the fat is about 4.4 % of a cured bar (trade handbook §9)', () => {
    const { shareOfBar, grams, aboveUsual, aboveCeiling } = load({
      fatGrams: 1000,
      load: 0.06,
      parts: [{ oil: 'lavender', grams: 1 }],
    });
    expect(grams).toBeCloseTo(60, 9);
    expect(shareOfBar.nominal).toBeCloseTo(0.044, 3);
    expect(aboveUsual).toBe(true);
    expect(aboveCeiling).toBe(false);
  });

  test('3 % of the fat unless said; parts keep their proportion', () => {
    const { grams, parts, aboveUsual } = load({
      fatGrams: 500,
      parts: [
        { oil: 'lavender', grams: 2 },
        { oil: 'sweet-orange', grams: 1 },
      ],
    });
    expect(grams).toBeCloseTo(15, 9);
    expect(parts.map((part) => part.grams)).toEqual([expect.closeTo(10, 9), expect.closeTo(5, 9)]);
    expect(aboveUsual).toBe(false);
    expect(load({ fatGrams: 500, scentGrams: 40, parts: [{ oil: null, grams: 1 }] }).aboveCeiling).toBe(true);
  });

  test('allergens by hand: orange is 93 to 96.5 % limonene (ISO 3140)', () => {
    const { declare, shareOfBar } = load({
      fatGrams: 1000,
      alkaliGrams: 130,
      load: 0.03,
      parts: [{ oil: 'sweet-orange', grams: 1 }],
    });
    const limonene = declare.find(({ inci }) => inci === 'Limonene');
    expect(limonene?.share.low).toBeCloseTo(0.93 * shareOfBar.low, 9);
    expect(limonene?.share.high).toBeCloseTo(0.965 * shareOfBar.high, 9);
    expect(limonene?.certain).toBe(true);
    // Linalool 0.2 to 0.7 %: of a bar with 2.3 % scent at most 0.016 %, at least 0.004 %.
    const linalool = declare.find(({ inci }) => inci === 'Linalool');
    expect(linalool?.certain).toBe(false);
    expect(declare.map(({ inci }) => inci)).toContain('Citrus Aurantium Amara/Dulcis, Citrus Sinensis Peel Oil');
  });

  test('below 0.01 % of the bar nothing is declared', () => {
    expect(load({ fatGrams: 1000, scentGrams: 0.05, parts: [{ oil: 'lavender', grams: 1 }] }).declare).toEqual([]);
  });

  test('a group counts as its sum: α- and β-pinene of bergamot and rosemary as Pinene', () => {
    const { declare } = load({
      fatGrams: 1000,
      parts: [
        { oil: 'lemon', grams: 1 },
        { oil: 'rosemary', grams: 1 },
      ],
    });
    expect(declare.find(({ inci }) => inci === 'Pinene')?.from).toEqual(
      expect.arrayContaining(['alpha-pinene', 'beta-pinene']),
    );
  });

  test('what has no composition on record is named, not passed over', () => {
    expect(
      load({
        fatGrams: 100,
        parts: [
          { oil: 'lime', grams: 1 },
          { oil: null, grams: 1 },
        ],
      }).unknownComposition,
    ).toEqual(['lime', null]);
    expect(scentLoad(data, { fatGrams: 0, parts: [{ oil: 'lime', grams: 1 }] }).ok).toBe(false);
    expect(scentLoad(data, { fatGrams: 100, parts: [] }).ok).toBe(false);
  });
});

describe('cook', () => {
  test('three stages of 15 to 20 minutes, a ceiling of 93 °C (200 °F), twice the batch (common practice)', () => {
    const outcome = cookGuide(data, { batchGrams: 1400, potLitres: 3, temperatureC: 94, minutesSoFar: 25 });
    if (!outcome.ok) throw new Error('cook');
    const guide = outcome.value;
    expect(guide.stages.map(({ minutes }) => [minutes.low, minutes.high])).toEqual([
      [15, 20],
      [15, 20],
      [15, 20],
    ]);
    expect(guide.stages.at(-1)?.ends).toEqual({ low: 45, high: 60 });
    expect(guide.expected).toEqual(['applesauce']);
    expect(Math.abs(guide.ceilingC - (200 - 32) / 1.8)).toBeLessThan(0.5);
    expect(guide.aboveCeiling).toBe(true);
    expect(guide.potNeededLitres).toBeCloseTo(2.8, 9);
    expect(guide.potEnough).toBe(true);
    const small = cookGuide(data, { batchGrams: 1400, potLitres: 2.5, temperatureC: 93 });
    expect(small).toMatchObject({ ok: true, value: { potEnough: false, aboveCeiling: false, expected: null } });
    expect(cookGuide(data, { batchGrams: Number.NaN }).ok).toBe(false);
  });
});
