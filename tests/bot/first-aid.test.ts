import { describe, expect, test } from 'vitest';
import { accidentIn, tellingStretch, weightOf } from '../../src/bot/first-aid.ts';
import { signsOf } from '../../src/bot/first-aid-signs.ts';
import { weights as lines } from '../../src/bot/first-aid-weights.ts';
import { learn } from './accidents/learn.ts';
import { accidentTexts, postTexts, type Told } from './accidents/texts.ts';

const tellsOfAccident = (text: string): boolean => accidentIn(text) !== null;

const accidents = accidentTexts.filter(({ accident }) => accident).map(({ text }) => text);
const harmless = accidentTexts.filter(({ accident }) => !accident).map(({ text }) => text);
const all = [...accidentTexts, ...postTexts];

test('each weight is found by its sign, and none by another', () => {
  const all = lines.split('\n').map((line) => line.split(':') as [string, string]);
  expect(all.filter(([sign, weight]) => weightOf(sign) !== Number(weight))).toEqual([]);
  const known = new Set(all.map(([sign]) => sign));
  const others = all.flatMap(([sign]) => [`${sign}x`, sign.slice(0, -1), sign.toUpperCase()]);
  expect(others.filter((sign) => !known.has(sign) && weightOf(sign) !== undefined)).toEqual([]);
});

test('of the accidents it has learned from at most one in a hundred is missed', () => {
  expect(accidents.filter((text) => !tellsOfAccident(text)).length).toBeLessThanOrEqual(accidents.length / 100);
});

test('of the harmless texts it has learned from at most one in a hundred is answered with first aid', () => {
  expect(harmless.filter(tellsOfAccident).length).toBeLessThanOrEqual(harmless.length / 100);
});

test('no post that it has learned from is taken for an accident, and no accident among them missed', () => {
  expect(postTexts.filter(({ text, accident }) => tellsOfAccident(text) !== accident)).toEqual([]);
});

/** What is missed, and what is taken for an accident, of texts that nothing was learned from. */
function unseen(isHeld: (told: Told) => boolean) {
  const weights = learn(all.filter((told) => !isHeld(told)));
  const tells = (text: string): boolean => {
    const signs = signsOf(text);
    return signs !== null && tellingStretch(signs, (sign) => weights.get(sign)) !== null;
  };
  const held = all.filter(isHeld);
  const share = (accident: boolean): number => {
    const some = held.filter((told) => told.accident === accident);
    return some.filter(({ text }) => tells(text) !== accident).length / some.length;
  };
  return { missed: share(true), needless: share(false) };
}

describe('of texts that it has not learned from', () => {
  test.each(['set-3', 'set-4', 'set-5', 'set-9', 'write-ups'])(
    '%s, at most one accident in eight is missed, and one other text in ten is taken for one',
    (set) => {
      const { missed, needless } = unseen((told) => told.set === set);
      expect(missed).toBeLessThanOrEqual(1 / 8);
      expect(needless).toBeLessThanOrEqual(1 / 10);
    },
  );

  test('hardly an ordinary post is taken for an accident', () => {
    expect(unseen(({ set }) => /^blind-[23]\d$/.test(set)).needless).toBeLessThanOrEqual(0.01);
  });
});

test('capitals, odd spaces, accents and invisible characters change nothing', () => {
  for (const text of accidents.filter(tellsOfAccident)) {
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
  ['i cant see properly, lye splashed up', 'eyes'],
  ['my dog licked lye', 'swallowed'],
  ['my son drank lye and it got in his eyes', 'swallowed'],
  ['breathing fumes from lye, chest hurts', 'inhaled'],
  ['burnt my hand with lye', 'skin'],
  ['first aid', 'any'],
])('%s: %s', (text, harm) => expect(accidentIn(text)).toBe(harm));
