/** A batch as the fold of what happened, and what is added against a wrong weight. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceOf, superfatOf } from '../../src/engine/alkali.ts';
import {
  type BatchEvent,
  fold,
  gramsOfLine,
  type Happening,
  type Line,
  openLines,
  stageAfter,
} from '../../src/engine/batch/batch.ts';
import { deviationsOf, mendOf, recipeAsTaken } from '../../src/engine/batch/weights.ts';
import type { Recipe } from '../../src/engine/recipe.ts';
import { citric, coconut, exactly, fats, lard, olive } from './fixtures.ts';

const line = (id: string, role: Line['role'], item: string | null, grams: number | null): Line => ({
  id,
  role,
  item,
  name: id,
  grams,
  ...(role === 'alkali' ? { purity: exactly(1) } : {}),
});
const lines = [
  line('lard', 'fat', 'lard', 500),
  line('water', 'water', null, 150),
  line('naoh', 'alkali', 'naoh', 66),
  line('rose', 'other', null, null),
];
const start: BatchEvent = {
  at: 0,
  did: 'start',
  uid: 'u',
  lot: '2026-11-26-1',
  name: '',
  process: 'hot',
  plan: { lines, superfat: 0.06, scaleStepGrams: 1 },
  scent: null,
};

const stage = fc.constantFrom(
  'weigh',
  'lye',
  'mix',
  'separation',
  'applesauce',
  'gel',
  'test',
  'cool',
  'mould',
  'cut',
  'cure',
  'done',
);
const lineId = fc.constantFrom(...lines.map(({ id }) => id));
const look = fc.option(fc.nat(1e9));
const happening: fc.Arbitrary<Happening> = fc.oneof(
  fc.record({
    did: fc.constant('take'),
    line: lineId,
    grams: fc.double({ min: 0, max: 1000, noNaN: true }),
    lot: fc.option(fc.string()),
  }),
  fc.record({ did: fc.constant('lot'), line: lineId, lot: fc.string() }),
  fc.record({ did: fc.constant('take-rest') }),
  fc.record({ did: fc.constant('reach'), stage, look }),
  fc.record({
    did: fc.constant('read'),
    celsius: fc.double({ min: 0, max: 110, noNaN: true }),
    when: fc.nat(1e9),
    unit: fc.constantFrom('°C', '°F', null),
    look,
  }),
  fc.record({ did: fc.constant('wait'), look, text: fc.option(fc.string()) }),
  fc.record({ did: fc.constant('test'), zap: fc.boolean() }),
  fc.record({ did: fc.constant('note'), text: fc.string() }),
  fc.record({ did: fc.constant('process'), process: fc.constantFrom('hot', 'cold') }),
  fc.record({ did: fc.constant('end'), how: fc.constantFrom('done', 'given-up') }),
) as fc.Arbitrary<Happening>;
const undo: Happening = { did: 'undo' };
const history = fc
  .array(fc.oneof({ weight: 5, arbitrary: happening }, { weight: 1, arbitrary: fc.constant(undo) }), { maxLength: 40 })
  .map((all): BatchEvent[] => [start, ...all.map((one, i) => ({ ...one, at: i + 1 }))]);

/** All but when it was last spoken of. */
const state = (events: readonly BatchEvent[]) => {
  const { touchedAt: _, ...rest } = fold(events) ?? { touchedAt: 0 };
  return rest;
};

describe('fold', () => {
  test('what was done and taken back leaves no trace', () => {
    fc.assert(
      fc.property(history, happening, (events, one) => {
        const at = events.length + 1;
        expect(state([...events, { ...one, at }, { ...undo, at }])).toEqual(state(events));
      }),
    );
  });
  test('a step of several things is taken back as one', () => {
    fc.assert(
      fc.property(history, happening, happening, (events, one, other) => {
        const at = events.length + 1;
        const both: BatchEvent[] = [
          { ...one, at },
          { ...other, at, also: true },
        ];
        expect(state([...events, ...both, { ...undo, at }])).toEqual(state(events));
      }),
    );
  });
  test('the beginning is never taken back', () => {
    expect(fold([start, { ...undo, at: 1 }, { ...undo, at: 2 }])).toMatchObject({
      lot: '2026-11-26-1',
      stage: 'weigh',
    });
    expect(fold([])).toBeNull();
  });
  test('readings stand in the order in which they were measured; the same events give the same batch', () => {
    fc.assert(
      fc.property(history, (events) => {
        const batch = fold(events);
        const times = batch?.readings.map(({ at }) => at) ?? [];
        expect(times).toEqual([...times].sort((a, b) => a - b));
        expect(fold(JSON.parse(JSON.stringify(events)) as BatchEvent[])).toEqual(batch);
      }),
    );
  });
  test('every line is either open or has a weight, and each stage leads to the end', () => {
    fc.assert(
      fc.property(history, (events) => {
        const batch = fold(events);
        if (!batch) throw new Error('no batch');
        const open = new Set(openLines(batch).map(({ id }) => id));
        for (const one of batch.lines) {
          expect(open.has(one.id)).toBe(!batch.taken.has(one.id));
          expect(gramsOfLine(batch, one)).toBe(batch.taken.get(one.id)?.grams ?? one.grams ?? 0);
        }
        let [now, steps] = [batch, 0];
        for (let next = stageAfter(now); next; next = stageAfter(now), steps += 1) now = { ...now, stage: next };
        expect(now.stage).toBe('done');
        expect(steps).toBeLessThan(15);
      }),
    );
  });
});

describe('weights', () => {
  const shelves = { fats, liquids: new Map(), acids: new Map() };
  const with_ = (...all: Happening[]) => {
    const batch = fold([start, ...all.map((one, i): BatchEvent => ({ ...one, at: i + 1 }))]);
    if (!batch) throw new Error('no batch');
    return batch;
  };
  test('what is not weighed yet counts as planned', () => {
    const recipe = recipeAsTaken(with_({ did: 'take', line: 'naoh', grams: 76, lot: null }), shelves);
    expect(recipe?.fats[0]?.grams).toBe(500);
    expect(recipe?.alkali[0]?.grams).toBe(76);
    expect(recipe?.waterGrams).toBe(150);
  });
  test('an item that the catalogue no longer holds is not guessed', () => {
    expect(recipeAsTaken(with_(), { ...shelves, fats: new Map() })).toBeNull();
  });
  test('a scale step is no deviation, ten grams are', () => {
    expect(deviationsOf(with_({ did: 'take', line: 'naoh', grams: 67, lot: null }))).toEqual([]);
    expect(deviationsOf(with_({ did: 'take', line: 'naoh', grams: 76, lot: null }))).toMatchObject([{ grams: 10 }]);
  });
  test('76 g sodium hydroxide on 500 g lard: the fat to add of the handbook’s rescue formula', () => {
    // m = (A/(1−s) − D)/(k·SV), k = 39.997/56.105/1000, SV of lard 192 to 203 (Codex CXS 211), D = m·k·SV
    const k = 39.997 / 56.105 / 1000;
    const m = (76 / (1 - 0.06) - 500 * k * 197.5) / (k * 197.5);
    const recipe = recipeAsTaken(with_({ did: 'take', line: 'naoh', grams: 76, lot: null }), shelves);
    if (!recipe) throw new Error('no recipe');
    const mend = mendOf(recipe, fats, 0.06);
    expect(mend.fats).toEqual([{ fat: lard, grams: Math.ceil(m) }]);
    // and what was taken too much: 76 − 500·k·197.5·0.94
    expect(mend.alkali).toEqual([{ id: 'naoh', grams: Math.ceil(76 - 500 * k * 197.5 * 0.94) }]);
  });

  const grams = fc.double({ min: 20, max: 3000, noNaN: true });
  const anyRecipe: fc.Arbitrary<Recipe> = fc.record({
    fats: fc.tuple(grams, grams).map(([a, b]) => [
      { fat: olive, grams: a },
      { fat: coconut, grams: b },
    ]),
    after: fc.constant([]),
    alkali: fc
      .tuple(fc.constantFrom('naoh' as const, 'koh' as const), grams)
      .map(([id, a]) => [{ id, grams: a, purity: exactly(0.97) }]),
    waterGrams: grams,
    liquids: fc.constant([]),
    acids: fc.double({ min: 0, max: 5, noNaN: true }).map((a) => [{ acid: citric, grams: a }]),
    scaleStepGrams: fc.constantFrom(0.1, 1, 5),
  });
  const wanted = fc.double({ min: 0, max: 0.2, noNaN: true });
  const superfat = (recipe: Recipe): number => superfatOf(balanceOf(recipe, fats));

  test('alkali taken out, or fat added, leaves at least the superfat that was planned', () => {
    fc.assert(
      fc.property(anyRecipe, wanted, (recipe, share) => {
        const mend = mendOf(recipe, fats, share);
        expect(mend.superfat).toBeCloseTo(superfat(recipe), 9);
        const out = recipe.alkali.map((one) => ({
          ...one,
          grams: one.grams - (mend.alkali.find(({ id }) => id === one.id)?.grams ?? 0),
        }));
        if (out.every((one) => one.grams > 0))
          expect(superfat({ ...recipe, alkali: out })).toBeGreaterThan(share - 1e-9);
        if (mend.superfat > share) return;
        const more = recipe.fats.map((one) => ({
          ...one,
          grams: one.grams + (mend.fats.find(({ fat }) => fat.id === one.fat.id)?.grams ?? 0),
        }));
        expect(superfat({ ...recipe, fats: more })).toBeGreaterThan(share - 1e-9);
      }),
    );
  });
});
