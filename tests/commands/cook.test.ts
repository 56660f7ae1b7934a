import { expect, test } from 'vitest';
import { answer, shortLines } from './heat-ask.ts';

test.each([
  'how do I cook hot process soap?',
  'stages of hot process?',
  'how long do I cook soap in a crockpot',
  'walk me through a hot process cook of 500 g olive, 500 g lard, 135 g NaOH, 370 g water',
  'hot process in a 3 l slow cooker: 800 g olive, 200 g coconut, 140 g NaOH, 350 g water. how?',
  'how long until hp soap is done?',
  'what are the hot process stages and how long',
])('%s', async (text) => {
  const { command, result, body } = await answer(text);
  expect(command).toBe('cook');
  const stages = result['stages'] as readonly { minutes: { low: number; high: number } }[];
  // Common practice: three stages of 15 to 20 minutes.
  expect(stages.map(({ minutes }) => [minutes.low, minutes.high])).toEqual([
    [15, 20],
    [15, 20],
    [15, 20],
  ]);
  expect(JSON.stringify(body)).toContain('no zap');
});

test.each([
  ['hot process soap is at 99 c in the pot, too hot?', true],
  ['my hp soap is at 205F is that too hot', true],
  ['crockpot at 210 °F ok for hp?', true],
  ['soap in crock pot rising, at 96 C, ok?', true],
  ['is 190 F too hot for cooking soap?', false],
  ['Is 85 °C hot enough to cook soap?', false],
])('%s', async (text, above) => {
  const { command, lead, warnings, result } = await answer(text);
  expect(command).toBe('cook');
  expect(result['aboveCeiling']).toBe(above);
  expect(lead).toMatch(above ? /^Too hot/ : /^Not too hot/);
  expect(warnings.length > 0).toBe(above);
});

test('which stage to expect', async () => {
  expect((await answer("it's been cooking 35 minutes, what should I see?")).lead).toMatch(/applesauce or glossy gel/);
  expect((await answer('my soap looks like applesauce after 20 minutes of cooking, ok?')).result['expected']).toContain(
    'applesauce',
  );
});

test('the first sentence answers what was asked', async () => {
  expect((await answer('what temp should i cook hot process at')).lead).toContain('93 °C');
  expect((await answer('how do I know when hot process is done')).lead).toContain('zap');
  expect((await answer('what size of pot for a 2 kg hp batch?')).lead).toContain('4 L');
});

test('a pot too small is told, one that will do too', async () => {
  expect((await answer('cook: 1.5 kg batch in a 2 l pot')).warnings.join(' ')).toMatch(/too small.*3 L/);
  expect(JSON.stringify((await answer('cook: 1.5 kg batch in a 6 l slow cooker')).body)).toContain('Your 6 L will do');
});

test('nine short lines at most, its steps among them', async () => {
  expect(shortLines(await answer('how do I cook hot process soap?')).length).toBeLessThanOrEqual(9);
});

test.each([
  'Mix at 40 °C, cook until it boils: 500 g lard, 66 g NaOH, 150 g water. is my lye ok?',
  'Scent: lavender 20 g\nolive oil 500 g\nNaOH 64 g\nwater 140 g',
  'Solution first: 66 g NaOH in 150 g water. Then 500 g lard. Is the lye right?',
  'Mix 500 g lard with 66 g NaOH and 150 g water',
  'Cook: lard 500 g, NaOH 66 g, water 160 g\nOnce cooked stir in 20 g jojoba oil, lid off.',
])('a step of a recipe in front of it: %s', async (text) => {
  expect((await answer(text)).command).toBe('check');
});
