import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../../src/catalogue/heat.ts';
import type { AlkaliId } from '../../../src/catalogue/types.ts';
import { iceForLimit, peakAgainstIce } from '../../../src/engine/heat/ice.ts';
import { solidHeat, solutionHeat } from '../../../src/engine/heat/mixture.ts';
import { partsOf, type SolutionInput } from '../../../src/engine/heat/peak.ts';
import { boundHeat, iceHeat, waterHeat } from '../../../src/engine/heat/properties.ts';
import { type SolutionHeat, solutionHeatOf } from '../../../src/engine/heat/solution-heat.ts';
import { vesselFor, vesselsFor } from '../../../src/engine/heat/vessels.ts';

const data = loadHeat();
const alkali = (id: AlkaliId, grams: number, purity = id === 'koh' ? 0.9 : 1, spread = 0) => ({
  id,
  grams,
  purity: { nominal: purity, low: purity - spread, high: Math.min(1, purity + spread) },
});
const input = (
  parts: SolutionInput['alkali'],
  waterGrams: number,
  iceGrams = 0,
  rest: Partial<SolutionInput> = {},
): SolutionInput => ({ alkali: parts, waterGrams, iceGrams, ...rest });

function solved(at: SolutionInput): SolutionHeat {
  const outcome = solutionHeatOf(data, at);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
}
const faultOf = (at: SolutionInput) => {
  const outcome = solutionHeatOf(data, at);
  return outcome.ok ? null : outcome.fault;
};

describe('peak', () => {
  test('30 % NaOH: band as wide as the heats of solution in the literature, 104 to 110 °C', () => {
    const { peakC, boilsAtC, marginK, notes } = solved(input([alkali('naoh', 30)], 70));
    // Three heats of solution: NBS Circular 500, NBS 1982, the textbook chart.
    expect(peakC.low).toBeCloseTo(104.4, 0);
    expect(peakC.high).toBeCloseTo(110.1, 0);
    expect(boilsAtC).toBeCloseTo(117, 0);
    expect(marginK).toBeCloseTo(boilsAtC - peakC.nominal, 9);
    expect(notes).toEqual([]);
  });

  test('reference table of adiabatic peaks, without and with half of the water as ice (same equation: transcription)', () => {
    const table: readonly (readonly [share: number, peak: number, boils: number, halfIce: number])[] = [
      [10, 53.9, 102.8, 2.9],
      [20, 84.1, 107.9, 36.6],
      [25, 97.2, 112.0, 52.2],
      [33, 112.5, 120.5, 71.6],
      [40, 119.1, 130.1, 81.2],
      [50, 118.0, 146.4, 83.7],
    ];
    for (const [share, peak, boils, halfIce] of table) {
      const water = 100 - share;
      const plain = solved(input([alkali('naoh', share)], water));
      expect(plain.peakC.nominal).toBeCloseTo(peak, 0);
      expect(plain.boilsAtC).toBeCloseTo(boils, 0);
      expect(
        Math.abs(solved(input([alkali('naoh', share)], water / 2, water / 2)).peakC.nominal - halfIce),
      ).toBeLessThan(0.5);
    }
  });

  test('KOH of 100 % as in the reference table (derived heats); flake of 90 % stays far cooler, as bound water says', () => {
    const table: readonly (readonly [number, number])[] = [
      [20, 84.7],
      [25, 102.2],
    ];
    for (const [share, peak] of table)
      expect(Math.abs(solved(input([alkali('koh', share, 1)], 100 - share)).peakC.nominal - peak)).toBeLessThan(0.5);
    // 25 g of KOH as flake, to the same solution.
    const flake = solved(input([alkali('koh', 25 / 0.9)], 75 - 25 / 9));
    expect(flake.concentration).toBeCloseTo(0.25, 9);
    // 13.7 kJ per mol KOH less heat, by the reference: 25/56.1 mol in 100 g of about 3.15 J/(g K).
    expect(102.2 - flake.peakC.nominal).toBeCloseTo((13.5 * 1000 * 25) / 56.1 / 315, 0);
    expect(flake.notes).toContain('weak-koh-data');
    // The heat of solution is known to about 7 %, so the rise is too, and a little less well with bound water.
    const rise = flake.peakC.nominal - 25;
    expect((flake.peakC.high - flake.peakC.low) / 2 / rise).toBeGreaterThan(0.07);
    expect((flake.peakC.high - flake.peakC.low) / 2 / rise).toBeLessThan(0.13);
  });

  test('half of the water as ice keeps a usual solution far below the boil (common practice)', () => {
    for (const share of [25, 28, 30, 33, 35, 40]) {
      const { marginK } = solved(input([alkali('naoh', share)], (100 - share) / 2, (100 - share) / 2));
      expect(marginK).toBeGreaterThan(30);
    }
  });

  test('a mountain lowers the boil', () => {
    const low = solved(input([alkali('naoh', 25)], 75));
    const high = solved(input([alkali('naoh', 25)], 75, 0, { pressureKpa: 80 }));
    // Water boils at 93.5 °C at 80 kPa (steam tables), 6.5 K lower.
    expect(low.boilsAtC - high.boilsAtC).toBeCloseTo(6.7, 0);
  });

  test('purity that is a range widens the band', () => {
    const sure = solved(input([alkali('naoh', 30, 0.985)], 70)).peakC;
    const unsure = solved(input([alkali('naoh', 30, 0.985, 0.015)], 70)).peakC;
    expect(unsure.nominal).toBe(sure.nominal);
    expect(unsure.high - unsure.low).toBeGreaterThan(sure.high - sure.low + 1);
  });
});

const usual = fc.record({
  naoh: fc.double({ min: 0, max: 200, noNaN: true }),
  koh: fc.double({ min: 0, max: 200, noNaN: true }),
  ratio: fc.double({ min: 1.8, max: 8, noNaN: true }),
  roomC: fc.double({ min: 5, max: 30, noNaN: true }),
  iceC: fc.double({ min: -20, max: 0, noNaN: true }),
  vessel: fc.double({ min: 0, max: 500, noNaN: true }),
});
const built = ({ naoh, koh, ratio, roomC, iceC, vessel }: typeof usual extends fc.Arbitrary<infer T> ? T : never) => {
  const total = (naoh + koh + 1) * ratio;
  return (iceShare: number): SolutionInput => ({
    alkali: [alkali('naoh', naoh + 1), alkali('koh', koh)],
    waterGrams: total * (1 - iceShare),
    iceGrams: total * iceShare,
    roomC,
    iceC,
    vessel: { material: 'stainless-steel', grams: vessel },
  });
};

describe('properties', () => {
  test('more ice is never hotter, and the band keeps its order', () => {
    fc.assert(
      fc.property(usual, (mix) => {
        const at = built(mix);
        let before = Number.POSITIVE_INFINITY;
        for (const { peakC } of peakAgainstIce(data, at(0), 8)) {
          expect(peakC.nominal).toBeLessThanOrEqual(before + 1e-6);
          expect(peakC.low).toBeLessThanOrEqual(peakC.nominal);
          expect(peakC.high).toBeGreaterThanOrEqual(peakC.nominal);
          before = peakC.nominal;
        }
      }),
      { numRuns: 150 },
    );
  });

  test('what goes in comes out: energy is conserved to 0.1 %', () => {
    fc.assert(
      fc.property(usual, fc.double({ min: 0, max: 1, noNaN: true }), (mix, iceShare) => {
        const at = built(mix)(iceShare);
        const heat = solutionHeatOf(data, at);
        if (!heat.ok) return;
        const { peakC, iceLeftGrams, parts } = heat.value;
        const t = peakC.nominal;
        // A freezing mixture near its eutectic is not followed further down.
        fc.pre(t > -20);
        const vessel = (at.vessel?.grams ?? 0) * (data.materials.get('stainless-steel')?.heatCapacity.value ?? 0);
        const flakeWater = parts.water - at.waterGrams - at.iceGrams;
        const given =
          solidHeat(data, parts, 25, 'nominal') +
          (flakeWater + at.waterGrams) * waterHeat(data.water, 25) -
          boundHeat(data.koh.boundWater.nominal, flakeWater) +
          at.iceGrams * iceHeat(data.water, at.iceC ?? 0) +
          vessel * (at.roomC ?? 20);
        const held =
          solutionHeat(data, { ...parts, water: parts.water - iceLeftGrams }, t, 'nominal') +
          iceLeftGrams * iceHeat(data.water, Math.min(0, t)) +
          vessel * t;
        // Against the heat that dissolving sets free, about 1 kJ per gram of alkali.
        expect(Math.abs(held - given)).toBeLessThan(1 * (parts.naoh + parts.koh));
      }),
      { numRuns: 300 },
    );
  });

  test('ice asked for keeps the limit, and a gram less would not', () => {
    fc.assert(
      fc.property(usual, fc.double({ min: 20, max: 90, noNaN: true }), (mix, limitC) => {
        const at = built(mix)(0);
        const ice = iceForLimit(data, at, limitC);
        if (!ice.ok) {
          expect(['limit-too-low', 'would-boil']).toContain(ice.fault.kind);
          if (ice.fault.kind === 'limit-too-low') expect(ice.fault.coldestC).toBeGreaterThan(limitC);
          return;
        }
        const { iceGrams, waterGrams, iceGramsForHighEnd, heat } = ice.value;
        expect(waterGrams + iceGrams).toBeCloseTo(at.waterGrams, 6);
        expect(heat.peakC.nominal).toBeLessThan(limitC + 0.01);
        if (iceGrams > 1) {
          const less = solutionHeatOf(data, { ...at, iceGrams: iceGrams - 1, waterGrams: waterGrams + 1 });
          const hotter = less.ok ? less.value.peakC.nominal : Number.POSITIVE_INFINITY;
          expect(hotter).toBeGreaterThan(limitC - 1e-3);
        }
        if (iceGramsForHighEnd !== null) expect(iceGramsForHighEnd).toBeGreaterThanOrEqual(iceGrams - 1e-3);
      }),
      { numRuns: 100 },
    );
  });

  test('no input crashes it, and every answer is finite', () => {
    const any = fc.double({ min: -1e3, max: 1e5 });
    fc.assert(
      fc.property(any, any, any, any, any, (naoh, koh, waterGrams, iceGrams, waterC) => {
        const at = input([alkali('naoh', naoh), alkali('koh', koh)], waterGrams, iceGrams, { waterC });
        const heat = solutionHeatOf(data, at);
        if (heat.ok) {
          const { peakC, boilsAtC, iceLeftGrams, crystallisesBelowC } = heat.value;
          for (const value of [...Object.values(peakC), boilsAtC, iceLeftGrams, crystallisesBelowC])
            expect(Number.isFinite(value)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('ice', () => {
  test('a dilute solution with much ice keeps some of it, at its freezing point', () => {
    const heat = solved(input([alkali('naoh', 8)], 20, 72));
    expect(heat.iceLeftGrams).toBeGreaterThan(10);
    expect(heat.notes).toContain('ice-left');
    // CRC freezing points of the liquid that is left.
    const liquid = heat.parts.naoh / (heat.parts.naoh + heat.parts.water - heat.iceLeftGrams);
    const crc: readonly (readonly [number, number])[] = [
      [0.08, -7.87],
      [0.1, -10.47],
      [0.12, -13.42],
      [0.14, -16.76],
    ];
    const near = crc.reduce((a, b) => (Math.abs(a[0] - liquid) < Math.abs(b[0] - liquid) ? a : b));
    expect(Math.abs(near[0] - liquid)).toBeLessThan(0.011);
    expect(Math.abs(heat.peakC.nominal - near[1])).toBeLessThan(3);
  });

  test('ice that is there already counts into the total', () => {
    const none = iceForLimit(data, input([alkali('naoh', 120)], 280), 60);
    const some = iceForLimit(data, input([alkali('naoh', 120)], 200, 80), 60);
    if (!none.ok || !some.ok) throw new Error('refused');
    expect(some.value.iceGrams).toBeCloseTo(none.value.iceGrams, 3);
    expect(some.value.waterGrams + some.value.iceGrams).toBeCloseTo(280, 9);
  });

  test('a limit that no ice can keep is refused with the coldest and an amount that would do', () => {
    const ice = iceForLimit(data, input([alkali('naoh', 120)], 280), 20);
    expect(ice.ok).toBe(false);
    if (ice.ok || ice.fault.kind !== 'limit-too-low') throw new Error('not refused');
    const { coldestC, waterGrams } = ice.fault;
    expect(coldestC).toBeGreaterThan(20);
    expect(
      solved(input([alkali('naoh', 120)], (waterGrams ?? 0) / 2, (waterGrams ?? 0) / 2)).peakC.nominal,
    ).toBeCloseTo(20, 1);
  });
});

describe('refusals', () => {
  test('what would boil names ice and water that do not', () => {
    const at = input([alkali('koh', 40, 1)], 60);
    const fault = faultOf(at);
    if (fault?.kind !== 'would-boil') throw new Error('not refused');
    const iced = solved({ ...at, waterGrams: 60 - (fault.iceGrams ?? 0), iceGrams: fault.iceGrams ?? 0 });
    expect(iced.notes).not.toContain('may-boil');
    expect(solved({ ...at, waterGrams: fault.waterGrams ?? 0 }).notes).not.toContain('may-boil');
  });

  test('what will not dissolve names the least water and the most alkali', () => {
    const fault = faultOf(input([alkali('naoh', 120)], 80));
    if (fault?.kind !== 'not-dissolved') throw new Error('not refused');
    expect(fault.leastWaterGrams).toBeCloseTo(120, 6);
    expect(fault.mostAlkaliGrams).toBeCloseTo(80, 6);
    expect(faultOf(input([alkali('naoh', 120)], fault.leastWaterGrams))).toBe(null);
    expect(faultOf(input([alkali('naoh', fault.mostAlkaliGrams)], 80))).toBe(null);
    // Solubility at 20 °C: 52.2 % (Great Soviet Encyclopedia), so 51 % passes with a note and 53 % does not.
    expect(solved(input([alkali('naoh', 51)], 49)).notes).toContain('below-working-floor');
    expect(faultOf(input([alkali('naoh', 53)], 47))?.kind).toBe('not-dissolved');
  });

  test('only the high end boils: a warning, no refusal', () => {
    const { notes, peakC, boilsAtC } = solved(input([alkali('koh', 50)], 50));
    expect(notes).toContain('may-boil');
    expect(peakC.nominal).toBeLessThan(boilsAtC);
    expect(peakC.high).toBeGreaterThan(boilsAtC);
  });

  test('figures that cannot be', () => {
    expect(faultOf(input([], 100))).toEqual({ kind: 'no-alkali' });
    expect(faultOf(input([alkali('naoh', 10)], 0))).toEqual({ kind: 'no-water' });
    expect(faultOf(input([alkali('naoh', -1)], 100))?.kind).toBe('out-of-range');
    expect(faultOf(input([alkali('naoh', Number.NaN)], 100))?.kind).toBe('not-finite');
    expect(faultOf(input([alkali('naoh', 10)], 100, 10, { iceC: 5 }))?.kind).toBe('out-of-range');
    expect(faultOf(input([alkali('naoh', 10)], 100, 0, { vessel: { material: 'cheese', grams: 1 } }))?.kind).toBe(
      'unknown',
    );
  });

  test('a concentrated solution that crystallises in a cool room says so', () => {
    // A hydrate forms at 15.7 °C near 39 % (Wang 2008).
    expect(solved(input([alkali('naoh', 39)], 61, 0, { roomC: 12 })).notes).toContain('crystallises');
    expect(solved(input([alkali('naoh', 39)], 61)).notes).not.toContain('crystallises');
    expect(partsOf([alkali('naoh', 39)], 61)).toEqual({ naoh: 39, koh: 0, water: 61 });
  });
});

test('vessels: fit, limited, unfit, attacked', () => {
  // Dow: aluminium, zinc, tin, copper are attacked; handbook §15: HDPE below about 60 °C, no thin glass.
  expect(vesselFor(data, 'polypropylene', 110)?.verdict).toBe('fit');
  expect(vesselFor(data, 'stainless-steel', 110)?.verdict).toBe('fit');
  expect(vesselFor(data, 'hdpe', 110)?.verdict).toBe('too-hot');
  expect(vesselFor(data, 'hdpe', 45)?.verdict).toBe('fit');
  expect(vesselFor(data, 'glass', 45)?.verdict).toBe('unfit');
  expect(vesselFor(data, 'pet', 45)?.verdict).toBe('unfit');
  for (const metal of ['aluminium', 'zinc', 'tin']) {
    expect(vesselFor(data, metal, 30)).toMatchObject({ verdict: 'attacked', hydrogen: true });
  }
  expect(vesselFor(data, 'copper', 30)?.verdict).toBe('attacked');
  expect(vesselFor(data, 'moonstone', 30)).toBe(null);
  expect(vesselsFor(data, 90)[0]?.verdict).toBe('fit');
  expect(vesselsFor(data, 90).at(-1)?.verdict).toBe('attacked');
});
