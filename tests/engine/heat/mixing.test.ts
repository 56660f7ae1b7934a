import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadHeat } from '../../../src/catalogue/heat.ts';
import type { Fat } from '../../../src/catalogue/types.ts';
import { bringTo, type MixInput, mixOf } from '../../../src/engine/heat/mixing.ts';

const data = loadHeat();
const chosen = (low: number, high: number) => ({
  low,
  high,
  nominal: (low + high) / 2,
  taken: 0,
  why: '',
  entries: [],
  fromMemory: false,
});
const fat = (id: string, melting: readonly [number, number] | null): Fat => ({
  id,
  name: id,
  names: [id],
  latin: null,
  kind: 'triglyceride',
  inci: { name: id, sodiumSoap: null, potassiumSoap: null },
  saponification: chosen(190, 194),
  iodine: null,
  unsaponifiable: null,
  density: null,
  melting: melting ? chosen(...melting) : null,
  acids: null,
  note: null,
});
// Melting ranges: Belitz (coconut 23–28, palm kernel 23–30, cocoa butter 28–36), handbook range of beef tallow 40–48.
const coconut = fat('coconut-oil', [23, 28]);
const tallow = fat('tallow-beef', [40, 48]);
const unknown = fat('unknown-oil', null);
const one = { nominal: 1, low: 1, high: 1 };
const input = (fatsC: number, solutionC: number, fats = [coconut, tallow]): MixInput => ({
  fats: fats.map((entry) => ({ fat: entry, grams: 500, temperatureC: fatsC })),
  alkali: [{ id: 'naoh', grams: 140, purity: one }],
  waterGrams: 285,
  solutionC,
});
const mixed = (at: MixInput) => {
  const outcome = mixOf(data, at);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};

test('heat balance by hand: 1000 g fat of 2.04 J/(g K) at 50 °C, 425 g solution of 3.55 J/(g K) at 30 °C', () => {
  // Choi & Okos at 45 °C; Laliberté at 33 % and 35 °C: independent of the equation used for the solution.
  const expected = (1000 * 2.04 * 50 + 425 * 3.55 * 30) / (1000 * 2.04 + 425 * 3.55);
  const { temperatureC } = mixed(input(50, 30));
  expect(temperatureC.nominal).toBeCloseTo(expected, 0);
  expect(temperatureC.low).toBeLessThan(temperatureC.nominal);
  expect(temperatureC.high - temperatureC.low).toBeLessThan(1.5);
});

test('false trace: tallow is solid where coconut oil is still melted', () => {
  const cold = mixed(input(36, 30));
  expect(cold.melting.map(({ state }) => state)).toEqual(['melted', 'solid']);
  expect(cold.falseTrace).toBe(true);
  expect(cold.allMeltedFromC).toBe(48);
  expect(mixed(input(50, 42)).melting[1]?.state).toBe('partly');
  expect(mixed(input(60, 50)).falseTrace).toBe(false);
  expect(mixed(input(36, 30, [unknown])).melting[0]?.state).toBe('unknown');
  expect(mixed(input(36, 30, [unknown])).falseTrace).toBe(false);
});

test('between its parts, and bringing one part there gives the wanted blend', () => {
  const warmth = fc.double({ min: 20, max: 80, noNaN: true });
  fc.assert(
    fc.property(warmth, warmth, warmth, (fatsC, solutionC, wantedC) => {
      const at = input(fatsC, solutionC);
      const { nominal } = mixed(at).temperatureC;
      expect(nominal).toBeGreaterThanOrEqual(Math.min(fatsC, solutionC) - 1e-6);
      expect(nominal).toBeLessThanOrEqual(Math.max(fatsC, solutionC) + 1e-6);
      for (const part of ['fats', 'solution'] as const) {
        const brought = bringTo(data, at, part, wantedC);
        if (!brought.ok) {
          expect(brought.fault.kind).toBe('blend-out-of-reach');
          if (brought.fault.kind === 'blend-out-of-reach') expect(Number.isFinite(brought.fault.neededC)).toBe(true);
          continue;
        }
        const again =
          part === 'fats' ? input(brought.value.temperatureC, solutionC) : input(fatsC, brought.value.temperatureC);
        expect(mixed(again).temperatureC.nominal).toBeCloseTo(wantedC, 4);
      }
    }),
    { numRuns: 200 },
  );
});

test('a solution that would have to boil is refused', () => {
  const brought = bringTo(data, input(25, 40), 'solution', 75);
  expect(brought).toMatchObject({ ok: false, fault: { kind: 'blend-out-of-reach', part: 'solution' } });
  if (brought.ok || brought.fault.kind !== 'blend-out-of-reach') throw new Error('not refused');
  expect(brought.fault.neededC).toBeGreaterThan(brought.fault.range[1]);
});

test('figures that cannot be', () => {
  const fault = (at: MixInput) => {
    const outcome = mixOf(data, at);
    return outcome.ok ? null : outcome.fault.kind;
  };
  expect(fault({ ...input(50, 30), fats: [] })).toBe('no-fat');
  expect(fault({ ...input(50, 30), alkali: [] })).toBe('no-alkali');
  expect(fault({ ...input(50, 30), waterGrams: 0 })).toBe('no-water');
  expect(fault(input(500, 30))).toBe('out-of-range');
});
