// What `ask --json` prints is what the published schemas say; and the schemas refuse what they should.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { renderJson } from '../../src/render/json.ts';
import { answer, fault } from './answers.ts';
import { isAnswer, isFault } from './schemas.ts';

const lye = {
  recipe: {
    fats: [{ id: 'lard', grams: 500, share: 1 }],
    after: [{ id: 'castor-oil', grams: 20 }],
    alkali: [{ id: 'naoh', grams: 66, purity: 1 }],
    water: { grams: 150 },
    liquids: [{ id: 'cow-milk', grams: 50, waterGrams: 44, fatGrams: 1.8 }],
  },
  demand: { naohGrams: 70, kohGrams: 98.2 },
  superfat: { nominal: 0.057, low: 0.04, high: 0.075, chanceOfExcess: 0, withAfter: 0.09 },
  verdict: 'usual',
};
const results: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  check: lye,
  lye,
  scale: { recipe: lye.recipe },
  summary: { recipe: lye.recipe },
  convert: { value: 161, unit: 'g' },
  solution: { peakC: { nominal: 108, low: 104, high: 110 }, boilsAtC: 117, iceGrams: 0, iceLeftGrams: 0 },
  mix: { temperatureC: 43 },
  cool: { minutes: { nominal: 45, low: 35, high: 60 }, curve: [{ minute: 0, temperatureC: 88 }] },
  scent: { flashPointC: 65, addBelowC: 59, pourable: false, grams: 15, shareOfBar: 0.02 },
  fat: { saponification: { low: 192, high: 203 }, iodine: null, density: null, melting: null },
  explain: { steps: [{ formula: 'a·b', inputs: { a: 1, b: 2 }, value: 2, unit: 'g', source: 'ISO 3657' }] },
  remind: {
    reminders: [{ id: 'a', dueAt: '2026-11-26T11:00:00.000Z', text: 'turn the bars', late: false, lot: null }],
  },
  batch: {
    batch: {
      lot: '2026-11-26-1',
      state: 'cool',
      next: 'Heat off.',
      timers: [{ id: '7-a', dueAt: '2026-11-26T11:00:00.000Z' }],
      readings: [{ at: '2026-11-26T10:50:00.000Z', celsius: 88 }],
    },
  },
  help: {},
};
const printed = (command: string, result: object) => ({
  ok: true,
  command,
  title: '',
  text: 'x',
  assumptions: [],
  warnings: [],
  caution: [],
  result,
});

describe('answer', () => {
  test('every answer as it is printed', () => {
    fc.assert(
      fc.property(answer, fc.constantFrom(...Object.keys(results)), (said, command) => {
        isAnswer(JSON.parse(renderJson({ ...said, command, result: results[command] ?? {} })));
      }),
    );
  });

  test.each(Object.keys(results).filter((command) => command !== 'help'))('%s: no figure may be missing', (command) => {
    for (const key of Object.keys(results[command] ?? {})) {
      const { [key]: _gone, ...rest } = results[command] ?? {};
      const optional = ['curve', 'grams', 'shareOfBar', 'iodine', 'density', 'melting', 'saponification'].includes(key);
      if (optional) isAnswer(printed(command, rest));
      else expect(() => isAnswer(printed(command, rest)), key).toThrow(key);
    }
  });

  test.each([
    ['a number as text', { ...lye, demand: { naohGrams: '70', kohGrams: 98.2 } }],
    ['a share above one', { ...lye, recipe: { ...lye.recipe, fats: [{ id: 'lard', grams: 500, share: 100 }] } }],
    ['a verdict of no such name', { ...lye, verdict: 'fine' }],
    ['NaN, which JSON writes as null', { ...lye, superfat: { ...lye.superfat, low: null } }],
    ['another alkali', { ...lye, recipe: { ...lye.recipe, alkali: [{ id: 'lioh', grams: 1, purity: 1 }] } }],
  ])('refuses %s', (_what, result) => expect(() => isAnswer(printed('check', result))).toThrow('answer-1'));

  test('refuses what is not said in the contract', () => {
    expect(() => isAnswer({ ...printed('help', {}), extra: 1 })).toThrow('additional');
    expect(() => isAnswer({ ...printed('help', {}), ok: false })).toThrow('/ok');
  });
});

describe('fault', () => {
  test('every fault as it is printed', () => {
    fc.assert(fc.property(fault, (said) => void isFault(JSON.parse(renderJson(said)))));
  });

  test('refuses another code, and more than code, message and hint', () => {
    const good = { code: 'unclear', message: 'In which unit?', hint: '' };
    isFault({ ok: false, fault: good });
    expect(() => isFault({ ok: false, fault: { ...good, code: 'dunno' } })).toThrow('/fault/code');
    expect(() => isFault({ ok: false, fault: { ...good, candidates: [] } })).toThrow('additional');
  });
});
