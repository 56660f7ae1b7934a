import { describe, expect, it, test } from 'vitest';
import { choose } from '../../src/commands/explain.ts';
import type { Step } from '../../src/commands/kept.ts';
import { type Reply, renderJson, renderPlain } from '../../src/index.ts';
import { isAnswer } from '../contract/schemas.ts';
import { talk } from './talk.ts';

interface Told {
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly value: number; readonly unit: string }[];
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}
const stepsOf = (reply: Reply): readonly Told[] => {
  if (!reply.ok) throw new Error(reply.fault.message);
  return isAnswer(JSON.parse(renderJson(reply.answer))).result['steps'] as readonly Told[];
};
const textOf = (reply: Reply): string => renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
const input = ({ inputs }: Told, name: RegExp): number =>
  inputs.find((one) => name.test(one.name))?.value ?? Number.NaN;

const recipe = '500 g olive oil, 200 g coconut oil, 98 g naoh, 230 g water';
const soft = '700 g olive oil, 300 g coconut oil, 230 g KOH 85 % pure, 500 g water, 10 g citric acid, 100 g goat milk';

describe('the working of a recipe', () => {
  it('of the superfat is a chain in which each step follows from the one before', async () => {
    const steps = stepsOf(await talk(recipe, 'explain the superfat'));
    const [olive, coconut, demand, brought, superfat] = steps;
    if (!olive || !coconut || !demand || !brought || !superfat) throw new Error('a step is missing');
    // AOCS Cd 3: mg KOH per g; 39.997 ÷ 56.105 turns KOH into NaOH (CIAAW atomic weights)
    for (const fat of [olive, coconut])
      expect(fat.value).toBeCloseTo((input(fat, /^weight/) * input(fat, /saponification/) * 39.997) / 56.105 / 1000, 6);
    expect(demand.value).toBeCloseTo(olive.value + coconut.value, 6);
    expect(brought.value).toBe(98);
    expect(superfat.value).toBeCloseTo(100 * (1 - brought.value / demand.value), 6);
    expect(superfat.unit).toBe('%');
    // Codex CXS 33: 184–196; CXS 210: 248–265 mg KOH/g
    expect(input(olive, /saponification/)).toBe(190);
    expect(input(coconut, /saponification/)).toBe(256.5);
    expect(olive.source).toMatch(/CXS 33/);
    expect(coconut.source).toMatch(/CXS 210/);
  });

  it('of the lye for one fat needs no answer before it', async () => {
    // 500 g × 197.5 mg KOH/g (Codex CXS 211) × 39.997 ÷ 56.105 × 0.95
    const alone = stepsOf(await talk('explain the lye for 500 g lard')).at(-1);
    expect(alone?.value).toBeCloseTo(((500 * 197.5) / 1000) * (39.997 / 56.105) * 0.95, 0);
    const after = await talk(recipe, 'explain the lye for 300 g lard');
    expect(textOf(after)).toMatch(/^Alkali for 5 % superfat/);
    expect(textOf(await talk(recipe, 'explain the lye for the coconut oil'))).toMatch(/^Alkali for the coconut oil/);
  });

  it('counts purity, acids and the fat of milk', async () => {
    const acid = stepsOf(await talk(soft, 'explain the citric acid')).at(-1);
    // three protons, M 192.12: 0.8761 g KOH a gram
    expect(acid?.value).toBeCloseTo((10 * 3 * 56.105) / 192.12, 2);
    expect(stepsOf(await talk(soft, 'explain purity')).at(-1)?.value).toBeCloseTo(230 * 0.85, 6);
    expect(stepsOf(await talk(soft, 'explain the milk')).at(-1)?.value).toBeGreaterThan(0);
    const steps = stepsOf(await talk(soft, 'explain the superfat'));
    const superfat = steps.at(-1);
    const demand = steps.find(({ formula }) => formula.startsWith('sum over all fats'));
    if (!superfat || !demand || !acid) throw new Error('a step is missing');
    expect(superfat.value).toBeCloseTo(100 * (1 - (230 * 0.85 - acid.value) / demand.value), 6);
  });

  it('says what makes it unsure, and the parts sum to no more than all', async () => {
    const steps = stepsOf(await talk(recipe, 'how sure?'));
    const parts = steps.at(-1)?.inputs ?? [];
    expect(parts.length).toBeGreaterThan(0);
    expect(parts.reduce((sum, { value }) => sum + value, 0)).toBeLessThanOrEqual(100.0001);
    expect(textOf(await talk(recipe, 'how sure?'))).toMatch(/the lot of (olive|coconut) oil.* \d+ %/);
  });

  test.each([
    ['why 98?', 'alkali'],
    ['why 6 %?', 'superfat'],
    ['why 99', 'alkali for 5 % superfat'],
    ['explain the lye', 'alkali for 5 % superfat'],
    ['explain the coconut', 'alkali for the coconut oil'],
    ['explain the water', 'water to alkali'],
    ['what is the concentration?', 'strength of the lye solution'],
    ['how accurate is that?', 'range of the superfat'],
    ['where does that number come from?', 'superfat'],
    ['show me the working', 'superfat'],
    ['why?', 'superfat'],
    ['what’s the iodine value', 'iodine value'],
    ['explain glycerol', 'glycerol formed'],
    ['explain the second reckoning', 'second reckoning from fatty acids'],
    ['total weight?', 'weight of the batch'],
  ])('"%s" finds the %s', async (say, name) => {
    const reply = await talk(recipe, say);
    expect(reply.ok && reply.answer.command).toBe('explain');
    expect(textOf(reply).toLowerCase()).toMatch(new RegExp(`^${name}`));
  });

  it.each(['why 1234?', 'explain the banana', 'why 30.5 %?'])('"%s" is asked back, not guessed', async (say) => {
    const reply = await talk(recipe, say);
    expect(!reply.ok && reply.fault.code).toBe('unclear');
    expect(!reply.ok && reply.fault.candidates.length).toBeGreaterThan(0);
  });

  it('each offer of the question back is a figure that is there', async () => {
    const asked = await talk(recipe, 'why 1234?');
    if (asked.ok) throw new Error('answered');
    for (const candidate of asked.fault.candidates) expect((await talk(recipe, candidate)).ok, candidate).toBe(true);
  });
});

describe('the working of other answers', () => {
  test.each([
    ['what concentration is 150 g NaOH in 300 g water', 33.3333, '%'],
    ['how much extra naoh for 100 g citric acid', 62.4563, 'g'],
    ['how much water for 140 g NaOH to make a 30 % solution', 326.667, 'g'],
    ['180f in c', 82.2222, '°C'],
    ['16 oz in g', 453.592, 'g'],
  ])('"%s"', async (say, value, unit) => {
    const last = stepsOf(await talk(say, 'show the working')).at(-1);
    expect(last?.value).toBeCloseTo(value, 2);
    expect(last?.unit).toBe(unit);
    expect(last?.source).not.toBe('');
  });

  it('explains the newest answer, and an older recipe where its figure is asked for', async () => {
    expect(textOf(await talk(recipe, '16 oz in g', 'explain'))).toMatch(/^Conversion/);
    expect(textOf(await talk(recipe, '16 oz in g', 'explain the superfat'))).toMatch(/^Superfat/);
  });

  it('gives the caution of the answer that it explains, and none where that had none', async () => {
    const caustic = await talk(recipe, 'explain the superfat');
    expect(caustic.ok && caustic.answer.caution.length).toBeGreaterThan(0);
    const plain = await talk('16 oz in g', 'explain');
    expect(plain.ok && plain.answer.caution).toEqual([]);
  });

  it('of nothing is asked for', async () => {
    for (const say of ['why 97?', 'explain the superfat', 'how sure?']) {
      const reply = await talk(say);
      expect(!reply.ok && reply.fault.code, say).toBe('unclear');
    }
  });
});

describe('choosing a step', () => {
  const step = (name: string, value: number, shown: string): Step => ({
    name,
    asked: [],
    formula: '',
    inputs: [],
    value,
    unit: 'g',
    shown,
    source: '',
  });
  const steps = [step('first', 97.04, '1 + 96.04 = 97'), step('second', 12, '3 × 4 = 12')];

  it('goes by a figure to the digits that were typed', () => {
    expect(choose('why 97?', steps)?.name).toBe('first');
    expect(choose('why 12', steps)?.name).toBe('second');
    expect(choose('why 98?', steps)).toBeNull();
    expect(choose('why 12.3', steps)).toBeNull();
  });
});
