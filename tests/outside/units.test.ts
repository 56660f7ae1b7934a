import { create, toDependencies, unitDependencies } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';
import { convert, unit, units } from '../../src/units/units.ts';
import { gnu, off } from './checks/units.ts';

const math = create({ ...unitDependencies, ...toDependencies });
const bot = createBot();
const ask = async (text: string) => {
  const reply = await bot.ask({ platform: 'test', place: 'units', person: text, text });
  return reply.ok ? reply.answer.result : reply.fault.code;
};

describe(`${gnu.version} (${gnu.command})`, () => {
  test('holds every pair of units of one kind, both ways', () => {
    const pairs = new Set(gnu.pairs.map(([, from, to]) => `${from} ${to}`));
    // what it has no word for, or another: our own spoons of 15 and 5 mL, mean months and years, the pound of 500 g
    const lacking = new Set(['pfund', 'tbsp-metric', 'tsp-metric', 'month', 'yr', 'd']);
    for (const a of units)
      for (const b of units)
        if (a !== b && a.dimension === b.dimension && !lacking.has(a.id) && !lacking.has(b.id))
          expect(pairs, `${a.id} ${b.id}`).toContain(`${a.id} ${b.id}`);
    expect(gnu.pairs.length).toBeGreaterThan(400);
  });

  test('every pair agrees to its last digits', () => {
    for (const pair of gnu.pairs) expect(off(pair), pair.join(' ')).toBeLessThan(1e-12);
  });
});

describe('mathjs', () => {
  const same: readonly (readonly [ours: string, theirs: string])[] = [
    ['g', 'g'],
    ['kg', 'kg'],
    ['mg', 'mg'],
    ['dag', 'dag'],
    ['oz', 'oz'],
    ['lb', 'lbm'],
    ['stone', 'stone'],
    ['mL', 'ml'],
    ['L', 'l'],
    ['floz', 'fluidounce'],
    ['cup', 'cup'],
    ['pint', 'pint'],
    ['quart', 'quart'],
    ['gallon', 'gallon'],
    ['in3', 'in^3'],
    ['cm', 'cm'],
    ['mm', 'mm'],
    ['m', 'm'],
    ['in', 'inch'],
    ['ft', 'foot'],
    ['°C', 'degC'],
    ['°F', 'degF'],
    ['K', 'kelvin'],
  ];
  const pairs = same.flatMap((a) =>
    same.flatMap((b) => (a !== b && unit(a[0]).dimension === unit(b[0]).dimension ? [[...a, ...b] as const] : [])),
  );

  test.each(pairs)('1.7 %s (%s) in %s (%s)', (ours, theirs, to, into) => {
    const expected = math.unit(1.7, theirs).toNumber(into);
    const got = convert(1.7, unit(ours), unit(to));
    expect(Math.abs(got - expected)).toBeLessThan(1e-12 * Math.max(1, Math.abs(expected)) * 10);
  });

  test('traps: what it reads otherwise than a cook does', async () => {
    // femtolitres times ounces
    expect(() => math.unit('8 fl oz').toNumber('ml')).toThrow();
    expect(await ask('8 fl oz in ml')).toMatchObject({ unit: 'mL', value: expect.closeTo(236.588, 3) });
    // spoons of 15 and 5 mL beside a US cup
    expect(math.unit('1 tablespoon').toNumber('ml')).toBeCloseTo(15, 9);
    expect(math.unit('1 cup').toNumber('ml')).toBeCloseTo(236.588, 3);
    expect(await ask('how many tablespoons in a cup')).toEqual({ value: expect.closeTo(16, 9), unit: 'tbsp' });
    expect(() => math.unit('3/4 cup')).toThrow();
    expect(await ask('3/4 cup in ml')).toMatchObject({ value: expect.closeTo(177.441, 3) });
    expect(math.unit('1e400 g').toNumber('kg')).toBe(Number.POSITIVE_INFINITY);
    expect(await ask(`${'9'.repeat(350)} g in kg`)).toBe('impossible');
    expect(math.unit('-300 degC').toNumber('degF')).toBeCloseTo(-508, 6);
    expect(await ask('-300 degrees C in F')).toBe('impossible');
  });
});
