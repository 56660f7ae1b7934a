import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadHeat } from '../../../src/catalogue/heat.ts';
import {
  type CoolInput,
  type Cooling,
  coolOf,
  lossOf,
  minuteAt,
  temperatureAt,
  trackOf,
} from '../../../src/engine/heat/cooling.ts';
import {
  fatContents,
  type Lid,
  type PotModel,
  potModel,
  soapContents,
  solutionContents,
} from '../../../src/engine/heat/pot.ts';
import { coolSolution } from '../../../src/engine/heat/solution-cooling.ts';
import { solutionHeatOf } from '../../../src/engine/heat/solution-heat.ts';

const data = loadHeat();
const kinds = data.pots.pots.map(({ id }) => id);
const wraps = ['none', 'towel', 'blanket'];
const lids: readonly Lid[] = ['off', 'half', 'on'];

const cooled = (input: CoolInput): Cooling => {
  const outcome = coolOf(data, input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
  return outcome.value;
};
const pot = (kind: string, lid: Lid = 'on', insulation = 'none', litres?: number) =>
  litres === undefined ? { kind, lid, insulation } : { kind, lid, insulation, litres };

const scene = fc.record({
  kind: fc.constantFrom(...kinds),
  grams: fc.double({ min: 200, max: 8000, noNaN: true }),
  startC: fc.double({ min: 45, max: 100, noNaN: true }),
  part: fc.double({ min: 0.05, max: 0.98, noNaN: true }),
  roomC: fc.double({ min: 5, max: 35, noNaN: true }),
  soap: fc.boolean(),
});
type Scene = typeof scene extends fc.Arbitrary<infer T> ? T : never;
const inputOf = ({ kind, grams, startC, part, roomC, soap }: Scene, lid: Lid, insulation: string): CoolInput => ({
  contents: soap
    ? soapContents(data, grams)
    : solutionContents(data, { naoh: grams / 3, koh: 0, water: grams / 1.5 }, 60),
  pot: { kind, lid, insulation },
  startC,
  targetC: Math.max(roomC + 0.6, roomC + part * (startC - roomC)),
  roomC,
});

describe('lumped pot', () => {
  test('a loss through one resistance is the textbook exponential (Incropera 5.2: τ = C R)', () => {
    // 0.5 m² K/W against an outer face that gives heat away a thousand times more easily.
    const model: PotModel = {
      faces: [
        {
          direction: 'side',
          area: 0.1,
          length: 0.1,
          resistance: 0.5,
          emissivity: 0,
          evaporation: 0,
          share: 1,
          spread: [1000, 1000],
        },
      ],
      heatCapacity: 4000,
      depth: 0.05,
    };
    const track = trackOf(data, model, 90, 40, 20);
    const minutes = (4000 * (0.5 / 0.1) * Math.log(70 / 20)) / 60;
    expect(minuteAt(track, 40) / minutes).toBeCloseTo(1, 2);
  });

  test('the integral over temperature agrees with stepping the differential equation, and gives back the heat', () => {
    for (const kind of kinds) {
      const input = inputOf({ kind, grams: 1500, startC: 88, part: 0.5, roomC: 20, soap: true }, 'half', 'none');
      const model = potModel(data, input.pot, input.contents, 'nominal');
      if (!model.ok) throw new Error(kind);
      const { minutes } = cooled(input);
      const rate = (t: number): number => lossOf(data, model.value, t, 20).watts / model.value.heatCapacity;
      const steps = 400;
      const dt = (minutes.nominal * 60) / steps;
      let t = input.startC;
      let joules = 0;
      for (let i = 0; i < steps; i += 1) {
        const k1 = rate(t);
        const k2 = rate(t - (dt / 2) * k1);
        joules += k2 * dt * model.value.heatCapacity;
        t -= dt * k2;
      }
      expect(Math.abs(t - input.targetC)).toBeLessThan(0.001 * (input.startC - input.targetC));
      expect(joules / (model.value.heatCapacity * (input.startC - input.targetC))).toBeCloseTo(1, 3);
    }
  });

  test('monotone towards the room, never past it; band in order; target met on the curve', () => {
    fc.assert(
      fc.property(scene, fc.constantFrom(...lids), fc.constantFrom(...wraps), (at, lid, wrap) => {
        const input = inputOf(at, lid, wrap);
        const outcome = coolOf(data, input);
        if (!outcome.ok) throw new Error(JSON.stringify(outcome.fault));
        const { minutes, curve, lookAtMinute } = outcome.value;
        expect(minutes.low).toBeLessThanOrEqual(minutes.nominal);
        expect(minutes.nominal).toBeLessThanOrEqual(minutes.high);
        expect(Number.isFinite(minutes.high)).toBe(true);
        expect(lookAtMinute ?? 0).toBeLessThanOrEqual(minutes.low);
        for (const [i, point] of curve.entries()) {
          expect(point.temperatureC).toBeGreaterThan(at.roomC);
          expect(point.lowC).toBeLessThanOrEqual(point.temperatureC + 1e-9);
          expect(point.highC).toBeGreaterThanOrEqual(point.temperatureC - 1e-9);
          const before = curve[i - 1];
          if (before) expect(point.temperatureC).toBeLessThan(before.temperatureC);
        }
        expect(curve.at(-1)?.highC).toBeCloseTo(input.targetC, 6);
      }),
      { numRuns: 150 },
    );
  });

  test('more insulation and more lid are never faster, at either end of the band', () => {
    fc.assert(
      fc.property(scene, (at) => {
        for (const lid of lids) {
          let before = { low: 0, nominal: 0, high: 0 };
          for (const wrap of wraps) {
            const { minutes } = cooled(inputOf(at, lid, wrap));
            for (const end of ['low', 'nominal', 'high'] as const)
              expect(minutes[end]).toBeGreaterThanOrEqual(before[end] * (1 - 1e-6));
            before = minutes;
          }
        }
        for (const wrap of wraps) {
          let before = 0;
          for (const lid of lids) {
            const { nominal } = cooled(inputOf(at, lid, wrap)).minutes;
            expect(nominal).toBeGreaterThanOrEqual(before * (1 - 1e-6));
            before = nominal;
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a kilogram of paste does not mix itself: stir before reading; a solution does', () => {
    expect(
      cooled(inputOf({ kind: 'steel-pot', grams: 1500, startC: 88, part: 0.5, roomC: 20, soap: true }, 'off', 'none'))
        .notes,
    ).toContain('stir-before-reading');
    const lye = cooled(
      inputOf({ kind: 'jug', grams: 400, startC: 88, part: 0.5, roomC: 20, soap: false }, 'off', 'none'),
    );
    expect(lye.notes).not.toContain('stir-before-reading');
  });

  test('everyday times (common experience, no source): a mug of tea, a batch in a pot', () => {
    const tea = cooled({
      contents: solutionContents(data, { naoh: 0, koh: 0, water: 250 }, 70),
      pot: pot('bowl', 'off', 'none', 0.35),
      startC: 85,
      targetC: 60,
    });
    expect(tea.minutes.nominal).toBeGreaterThan(8);
    expect(tea.minutes.nominal).toBeLessThan(30);
    const batch = cooled({
      contents: soapContents(data, 1500),
      pot: pot('slow-cooker', 'on', 'none', 6),
      startC: 88,
      targetC: 59,
    });
    expect(batch.minutes.low).toBeGreaterThan(30);
    expect(batch.minutes.high).toBeLessThan(360);
    const fats = cooled({
      contents: fatContents(data, 1000, 60),
      pot: pot('steel-pot', 'off'),
      startC: 70,
      targetC: 40,
    });
    expect(fats.minutes.nominal).toBeGreaterThan(20);
    expect(fats.minutes.nominal).toBeLessThan(120);
  });
});

describe('refusals', () => {
  const usual: CoolInput = { contents: soapContents(data, 1500), pot: pot('steel-pot'), startC: 88, targetC: 59 };
  const fault = (input: CoolInput) => {
    const outcome = coolOf(data, input);
    return outcome.ok ? null : outcome.fault;
  };
  test('a target at or below the room', () => {
    expect(fault({ ...usual, targetC: 20 })).toEqual({ kind: 'target-not-above-room', targetC: 20, roomC: 20 });
    expect(fault({ ...usual, targetC: 15 })?.kind).toBe('target-not-above-room');
    expect(fault({ ...usual, targetC: 22, roomC: 30 })?.kind).toBe('target-not-above-room');
  });
  test('what cannot be', () => {
    expect(fault({ ...usual, pot: pot('cauldron') })).toEqual({ kind: 'unknown', figure: 'pot', id: 'cauldron' });
    expect(fault({ ...usual, pot: pot('steel-pot', 'on', 'feathers') })?.kind).toBe('unknown');
    expect(fault({ ...usual, pot: pot('steel-pot', 'on', 'none', 1) })?.kind).toBe('pot-too-small');
    expect(fault({ ...usual, startC: Number.NaN })?.kind).toBe('not-finite');
    expect(fault({ ...usual, startC: 400 })?.kind).toBe('out-of-range');
  });
  test('already there', () => {
    expect(cooled({ ...usual, startC: 50 })).toMatchObject({
      minutes: { nominal: 0 },
      notes: ['already-there'],
      lookAtMinute: null,
    });
  });
});

test('a lye solution from its peak to a mixing temperature: the spread of the peak is in the band', () => {
  const heat = solutionHeatOf(data, {
    alkali: [{ id: 'naoh', grams: 140, purity: { nominal: 1, low: 1, high: 1 } }],
    waterGrams: 285,
    iceGrams: 0,
  });
  if (!heat.ok) throw new Error('peak');
  const outcome = coolSolution(data, heat.value, pot('jug', 'off', 'none', 1.5), 40);
  if (!outcome.ok) throw new Error('cooling');
  const { minutes, curve } = outcome.value;
  const fromNominal = cooled({
    contents: solutionContents(data, heat.value.parts, (heat.value.peakC.nominal + 40) / 2),
    pot: pot('jug', 'off', 'none', 1.5),
    startC: heat.value.peakC.nominal,
    targetC: 40,
  });
  expect(minutes.nominal).toBe(fromNominal.minutes.nominal);
  expect(minutes.low).toBeLessThan(fromNominal.minutes.low);
  expect(minutes.high).toBeGreaterThan(fromNominal.minutes.high);
  expect(curve[0]?.temperatureC).toBeCloseTo(heat.value.peakC.nominal, 6);
});

test('a track read forwards and backwards', () => {
  const model = potModel(data, pot('steel-pot'), soapContents(data, 1000), 'nominal');
  if (!model.ok) throw new Error('model');
  const track = trackOf(data, model.value, 90, 50, 20);
  for (const t of [89, 75, 60, 50, 45, 30, 21]) expect(temperatureAt(track, minuteAt(track, t))).toBeCloseTo(t, 9);
});
