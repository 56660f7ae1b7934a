import { describe, expect, test } from 'vitest';
import { answer, ask, fault, sameAs, shortLines } from './heat-ask.ts';

const at = async (text: string): Promise<number> => (await answer(text)).result['temperatureC'] as number;

test.each([
  [
    '500g olive at 40C, lye solution (65g NaOH, 150g water) at 35C - what temp when combined?',
    'mix 500 g olive oil at 40 °C with 65 g NaOH 150 g water at 35 °C',
  ],
  [
    'My oils are 130F and the lye is 110F. 32 oz olive oil, 4.1 oz lye, 10 oz water. What will the batter be?',
    'mix 32 oz olive oil at 130 °F with 4.1 oz NaOH 10 oz water at 110 °F',
  ],
  [
    'Combining 16 oz olive oil (110 F) with lye (2.1 oz NaOH + 5 oz water, 90 F). Temp?',
    'mix 16 oz olive oil at 110 °F with 2.1 oz NaOH 5 oz water at 90 °F',
  ],
  [
    'If I pour 90 °C lye (70 g NaOH, 160 g water) into 500 g cold olive oil at 18 °C how warm is it?',
    'mix 500 g olive oil at 18 °C with 70 g NaOH 160 g water at 90 °C',
  ],
  [
    '1 kg olive oil at room temperature (22 °C) and lye 130 g NaOH 280 g water at 60 °C, blend temperature?',
    'mix 1 kg olive oil at 22 °C with 130 g NaOH 280 g water at 60 °C',
  ],
  [
    'oils 45 lye 30, 600 g lard, 80 g naoh, 180 g water. what temp do i end up at?',
    'mix 600 g lard at 45 °C with 80 g NaOH 180 g water at 30 °C',
  ],
  [
    'Will 50 g of beeswax in 950 g olive stay melted when I add lye (130 g naoh 300 g water at 40) to oils at 60?',
    'mix 50 g beeswax and 950 g olive oil at 60 °C with 130 g NaOH 300 g water at 40 °C',
  ],
  [
    'Oils at 38C, lye at 38C: 450 g olive, 60 g naoh, 140 g water; what will it be?',
    'mix 450 g olive oil at 38 °C with 60 g NaOH 140 g water at 38 °C',
  ],
  [
    'what temperature will the mixture be: 1000 g oils at 40 °C and 400 g lye solution at 30 °C',
    'mix 1000 g oils at 40 °C with 132 g NaOH 268 g water at 30 °C',
  ],
  [
    'blend temperature of 300 g cocoa butter and 500 g olive (both 45 C) with lye 105 g naoh 240 g water 30 C',
    'mix 300 g cocoa butter and 500 g olive oil at 45 °C with 105 g NaOH 240 g water at 30 °C',
  ],
  [
    'if oils (900 g rapeseed) are 25 C and lye (120 g naoh, 280 g water) 60 C what do i get',
    'mix 900 g rapeseed oil at 25 °C with 120 g NaOH 280 g water at 60 °C',
  ],
  [
    'lye 45c oils 55c, 750 g sunflower 250 g coconut 140 g naoh 310 g water result temp?',
    'mix 750 g sunflower oil and 250 g coconut oil at 55 °C with 140 g NaOH 310 g water at 45 °C',
  ],
])('%s', async (said, plain) => {
  const both = await Array.fromAsync([said, plain], (text) => answer(text));
  expect(both.map(({ command }) => command)).toEqual(['mix', 'mix']);
  const [a, b] = both.map(({ result }) => result['temperatureC'] as number);
  expect(a).toBeCloseTo(b ?? Number.NaN, 6);
});

test('each fat at its own temperature', async () => {
  const apart = await at(
    'mix 500 g coconut oil at 60 °C and 500 g olive oil at 20 °C with 140 g NaOH 300 g water at 40 °C',
  );
  const together = await at('mix 500 g coconut oil and 500 g olive oil at 40 °C with 140 g NaOH 300 g water at 40 °C');
  // Liquid fats hold about the same heat, so the mean is near 40 °C.
  expect(Math.abs(apart - together)).toBeLessThan(0.5);
});

describe('false trace', () => {
  test.each([
    ['mix 700 g palm stearin at 30 c with lye of 95 g naoh and 200 g water at 25 c, will it be ok?', 'palm stearin'],
    ['fats: 500 g shea butter at 35 °C; lye: 62 g NaOH + 150 g water at 20 °C. false trace?', 'shea butter'],
    [
      'will cocoa butter set? 300 g cocoa butter + 700 g olive at 30C with lye 130 g naoh 300 g water at 25C, all melted?',
      'cocoa butter',
    ],
  ])('%s', async (text, fat) => {
    const { lead, warnings, result } = await answer(text);
    expect(lead).toContain(fat);
    expect(warnings.join(' ')).toContain('false trace');
    expect(result['allMelted']).toBe(false);
  });

  test('none where all is warm', async () => {
    const { warnings, result } = await answer('mix 700 g palm stearin at 75 °C with 95 g NaOH 200 g water at 70 °C');
    expect([warnings, result['allMelted']]).toEqual([[], true]);
  });
});

test('what a part must be brought to gives, tried, what was wanted', async () => {
  const { lead } = await answer(
    'To get a mix of 43 °C, what must the lye be at? 700 g lard at 50 °C, 95 g NaOH, 210 g water',
  );
  const [, needed] = /lye solution to (\d+) °C/.exec(lead) ?? [];
  expect(await at(`mix 700 g lard at 50 °C with 95 g NaOH 210 g water at ${needed} °C`)).toBeCloseTo(43, 0);
  const fats = await answer(
    "I'd like my batter at 45 °C: 600 g lard, 300 g coconut oil, 125 g NaOH, 290 g water at 30 °C. How hot must the oils be?",
  );
  const [, warm] = /fats to (\d+) °C/.exec(fats.lead) ?? [];
  expect(
    await at(`mix 600 g lard and 300 g coconut oil at ${warm} °C with 125 g NaOH 290 g water at 30 °C`),
  ).toBeCloseTo(45, 0);
});

test('a recipe that begins with "mix" is still a recipe', async () => {
  expect((await answer('Mix 500 g olive oil with 64 g NaOH and 140 g water')).command).toBe('check');
});

test('one temperature alone: the other is taken and told; none: asked', async () => {
  expect((await answer('mix 500 g lard at 50 °C with 66 g NaOH 150 g water')).assumptions.join()).toContain(
    'lye solution at 25 °C',
  );
  const reply = await ask('what temperature do 500 g lard and 66 g NaOH in 150 g water mix at?');
  expect(reply.ok ? reply.answer.command : reply.fault.code).toMatch(/unclear|check/);
  expect((await fault('mix 500 g lard, 66 g NaOH, 150 g water, how warm is it?')).message).toContain('How warm');
});

test('°F in, °F out; the result stays in °C', async () => {
  const { lead, result } = await answer('mix: 1 kg lard at 120 F, 135 g naoh + 270 g water at 95 F');
  expect(lead).toMatch(/110 °F/);
  expect(result['temperatureC']).toBeGreaterThan(40);
  expect(result['temperatureC']).toBeLessThan(46);
});

test('eight short lines at most', async () => {
  const text =
    '850 g olive and 150 g beeswax at 50 c, lye 115 g naoh 250 g water at 40 c, is everything melted when they mix?';
  expect(shortLines(await answer(text)).length).toBeLessThanOrEqual(8);
  await sameAs(text, text);
});
