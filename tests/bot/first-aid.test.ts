import { expect, test } from 'vitest';
import { accidentIn } from '../../src/bot/first-aid.ts';
import { accidents, harmless, missed, needless } from './accidents.ts';

const tellsOfAccident = (text: string): boolean => accidentIn(text) !== null;

test.each(accidents)('first aid: %s', (text) => expect(tellsOfAccident(text)).toBe(true));

test.each(harmless)('no first aid: %s', (text) => expect(tellsOfAccident(text)).toBe(false));

test('at most one in thirty of all accidents written is missed', () => {
  expect(missed.filter((text) => !tellsOfAccident(text)).length).toBeLessThanOrEqual(
    (accidents.length + missed.length) / 30,
  );
});

test('at most one in eighty of all harmless texts written is answered with first aid', () => {
  expect(needless.filter(tellsOfAccident).length).toBeLessThanOrEqual((harmless.length + needless.length) / 80);
});

test('capitals, odd spaces, accents and invisible characters change nothing', () => {
  for (const text of accidents) {
    expect(tellsOfAccident(text.toUpperCase()), text).toBe(true);
    expect(tellsOfAccident(text.replaceAll(' ', '  \u00a0')), text).toBe(true);
    expect(tellsOfAccident(text.replace(/(?<=\w)(?=\w)/u, '\u200b')), text).toBe(true);
  }
});

test('an accident is found in a recipe of any length, in time that grows with its length', () => {
  const recipe = 'olive oil 450 g, a splash of castor 75 g, lye 60 g for my face bar. ';
  const time = (text: string): number => {
    const since = performance.now();
    tellsOfAccident(text);
    return performance.now() - since;
  };
  time(recipe.repeat(100));
  expect(tellsOfAccident(`${recipe.repeat(20_000)}. lye splashed in my eye`)).toBe(true);
  // 1 MB; a quadratic pattern would take minutes
  expect(time(recipe.repeat(15_000))).toBeLessThan(3000);
});

test.each([
  ['lye splashed in my eye', 'eyes'],
  ['my dog licked lye', 'swallowed'],
  ['my son drank lye and it got in his eyes', 'swallowed'],
  ['breathing fumes from lye, chest hurts', 'inhaled'],
  ['burnt my hand with lye', 'skin'],
  ['first aid', 'any'],
])('%s: %s', (text, harm) => expect(accidentIn(text)).toBe(harm));
