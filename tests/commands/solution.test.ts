// How hot a lye solution gets. What the figures are is judged elsewhere (tests/engine/heat, tests/posts); here, that
// people's ways to ask are understood: each is answered as its plain form is.
import { describe, expect, test } from 'vitest';
import { answer, ask, fault, sameAs, shortLines } from './heat-ask.ts';

const peak = async (text: string): Promise<number> =>
  ((await answer(text)).result['peakC'] as { nominal: number }).nominal;

test.each([
  ['How hot is my lye going to be if I mix 120g sodium hydroxide with 240ml water?', 'solution 120 g NaOH 240 g water'],
  ['Hi all, quick q: 98g NaOH, 196g water. how hot?', 'solution 98 g NaOH 196 g water'],
  ['lye: 4.2 oz, water 9 oz. temperature?', 'solution 4.2 oz NaOH 9 oz water'],
  ['how hot will my lye get? 13.5 oz water 6.2 oz sodium hydroxide', 'solution 6.2 oz NaOH 13.5 oz water'],
  [
    "if i use 100g of ice and 140g of water for 110g naoh, what's the peak",
    'solution 110 g NaOH 140 g water 100 g ice',
  ],
  ['110 g NaOH in 240 g water of which 100 g is ice, how warm?', 'solution 110 g NaOH 140 g water 100 g ice'],
  ['use 1/3 of the water as ice: 240 g water, 100 g naoh, how hot', 'solution 100 g NaOH 160 g water 80 g ice'],
  ['what if two thirds of my 300 g water is ice, 140 g NaOH', 'solution 140 g NaOH 100 g water 200 g ice'],
  ['60% of the water as ice, 100 g naoh 250 g water, peak?', 'solution 100 g NaOH 100 g water 150 g ice'],
  ['my 2:1 water to lye mix, 130 g lye, what temp will it hit', 'solution 130 g NaOH 260 g water'],
  [
    'whats the hottest 130g lye and 325g water can get if everything is 30C',
    'solution 130 g NaOH 325 g water both at 30 °C',
  ],
  ['is an HDPE bucket ok for 300 g NaOH in 600 g water?', 'solution 300 g NaOH 600 g water'],
  ['I soap at 100F. 4.5 oz NaOH in 9 oz water, how long do I need to wait?', 'solution 4.5 oz NaOH 9 oz water'],
  [
    'how many grams of ice to keep 90g lye in 180g water under 60C',
    'solution 90 g NaOH 180 g water stay under 140 °F how much ice',
  ],
  [
    "ice for 150 g lye 300 g water so it doesn't pass 50C",
    'solution 150 g NaOH 300 g water keep it below 50 °C with ice',
  ],
])('%s', sameAs);

test('only the strength matters', async () => {
  expect(await peak('what temperature does a 33% lye solution reach')).toBeCloseTo(
    await peak('solution 33 g NaOH 67 g water'),
    6,
  );
});

// the advice is asked again as plain amounts: all of the band must then keep the limit (1 °C: the ice is in whole grams)
test.each([
  [150, 300, 60],
  [60, 300, 60],
  [100, 233, 50],
  [130, 330, 70],
])('ice for %d g NaOH in %d g water under %d °C keeps the high end under it', async (naoh, water, limit) => {
  const { lead } = await answer(
    `how much ice for ${naoh} g NaOH in ${water} g water so that it stays under ${limit} °C?`,
  );
  const ice = Number(/^Take (\d+) g of the .* then it stays at/.exec(lead)?.[1]);
  const { high } = (await answer(`solution ${naoh} g NaOH ${water - ice} g water ${ice} g ice`)).result['peakC'] as {
    high: number;
  };
  expect(high).toBeLessThanOrEqual(limit + 1);
});

test('a limit that only the middle of the figures can keep is not promised', async () => {
  const said = await answer('how much ice for 150 g NaOH in 300 g water so that it stays under 32 °C?');
  expect(said.lead).toMatch(/it should stay at 32 °C or below/);
  expect(said.warnings.join(' ')).toMatch(/can pass your 32 °C: use more water/);
});

describe('what goes in and how warm it is', () => {
  test('colder water, a colder room at the start, ice from a freezer: each is used', async () => {
    expect(await peak('100 g NaOH in 200 g water at 4 °C, how hot')).toBeLessThan(
      (await peak('100 g NaOH in 200 g water, how hot')) - 15,
    );
    expect(await peak('200 g NaOH, 150 g ice, 250 g water, ice is at -10C. peak?')).toBeLessThan(
      (await peak('200 g NaOH, 150 g ice, 250 g water. peak?')) - 1,
    );
    expect(await peak('80 g lye and 200 g ice from the freezer, how hot')).toBeLessThan(
      (await peak('80 g lye and 200 g ice, how hot')) - 3,
    );
  });

  test('defaults are told, and only where they were used', async () => {
    const told = (await answer('how hot does 100 g KOH in 250 g water get')).assumptions.join(' ');
    expect(told).toContain('potassium hydroxide (KOH) as 90 % pure');
    expect(told).toContain('alkali and water at 25 °C');
    expect((await answer('100 g NaOH 99 % pure in 250 g water both at 20 °C, how hot')).assumptions).toEqual([]);
    expect((await answer('how hot does 100 g NaOH in 125 g water and 125 g ice get')).assumptions.join()).toContain(
      'ice at 0 °C',
    );
  });

  test('a heavy vessel takes heat, a named one is judged', async () => {
    expect(await peak('300 g NaOH into 700 g water in a stoneware jug of 500 g, peak temp?')).toBeLessThan(
      (await peak('300 g NaOH into 700 g water, peak temp?')) - 2,
    );
    expect((await answer('100g NaOH in 200g water in a glass jar ok?')).lead).toMatch(/^Not in glass/);
    expect((await answer('is an HDPE bucket ok for 300 g NaOH in 600 g water?')).lead).toContain('60 °C');
    expect((await answer('what container should i use for 150 g NaOH and 350 g water')).lead).toMatch(
      /polypropylene.*stainless/,
    );
  });

  test('on a mountain it boils sooner (ISO 2533: 81.5 kPa at 1800 m)', async () => {
    const boils = async (text: string) => (await answer(text)).result['boilsAtC'] as number;
    const sea = await boils('how hot does 100 g NaOH in 200 g water get');
    const up = await boils('how hot does 100 g NaOH in 200 g water get at 1800 m altitude');
    // Pure water: 94.0 °C at 81.5 kPa; over lye the same step of pressure shifts a little more.
    expect(sea - up).toBeGreaterThan(5.5);
    expect(sea - up).toBeLessThan(7);
    expect(await boils('how hot does 100 g NaOH in 200 g water get at 5900 ft elevation')).toBeCloseTo(up, 1);
  });
});

describe('what is refused', () => {
  test.each([
    ['can i put 150 g NaOH into 350 g water at 95 °C, how hot will it get', /boil/],
    ['can I dissolve 120 g lye in 200 g boiling water, how hot', /boil/],
    ['250 g pure 100% KOH into 250 g water how hot', /boil/],
    ['What happens if I put 100g NaOH in 60 g water, does it get too hot?', /dissolve/],
  ])('%s', async (text, why) => {
    const { code, message, hint, caution } = await fault(text);
    expect(code).toBe('refused');
    expect(message).toMatch(why);
    // The nearest amounts that work stand in the hint.
    expect(hint).toMatch(/\d+ g/);
    expect(caution).not.toEqual([]);
  });

  test.each(['aluminium', 'galvanised', 'tin'])('%s: hydrogen', async (metal) => {
    const { code, message, caution } = await fault(`can I mix 100 g NaOH in 250 g water in a ${metal} bucket?`);
    expect(code).toBe('refused');
    expect(message).toContain('hydrogen');
    expect(caution.join(' ')).toContain('hydrogen');
  });

  test('copper is attacked, without hydrogen', async () => {
    const { code, message } = await fault('can I mix 100 g NaOH in 250 g water in a copper pot?');
    expect(code).toBe('refused');
    expect(message).not.toContain('hydrogen');
  });

  test('a limit that no ice can keep names what can', async () => {
    const { code, hint } = await fault('how much ice keeps 200 g NaOH in 260 g water under 10 °C');
    expect(code).toBe('impossible');
    expect(hint).toMatch(/\d+ g water and ice/);
  });

  test('the amounts that a refusal names are then answered', async () => {
    const [, water] =
      /at least (\d+) g cold water/.exec((await fault('250 g pure 100% KOH into 250 g water how hot')).hint) ?? [];
    expect((await ask(`solution 250 g 100 % pure KOH in ${water} g water`)).ok).toBe(true);
  });
});

test('only the high end boils: a warning, no refusal', async () => {
  const { warnings } = await answer('can potash lye boil? 200 g KOH 90% in 200 g water');
  expect(warnings[0]).toMatch(/high end .* boil/);
});

test('yes or no first, where a limit stands beside ice', async () => {
  expect((await answer('Will 100 g of ice be enough to keep 110 g NaOH + 250 g water below 75 C?')).lead).toMatch(
    /^Yes/,
  );
  expect((await answer('Will 20 g of ice be enough to keep 110 g NaOH + 220 g water below 75 C?')).lead).toMatch(/^No/);
});

test('°F in, °F out; the result stays in °C', async () => {
  const { lead, result } = await answer('how hot does 4 oz lye in 9 oz water at 70 F get');
  expect(lead).toMatch(/°F/);
  expect(lead).not.toMatch(/°C/);
  const { nominal } = result['peakC'] as { nominal: number };
  expect(Math.round(nominal * 1.8 + 32)).toBe(Number(/about (\d+) °F/.exec(lead)?.[1]));
});

test('eight short lines at most', async () => {
  for (const text of [
    'how hot will 150 g NaOH in 350 g water get',
    'how much ice keeps 100 g NaOH in 233 g water below 60 °C?',
  ])
    expect(shortLines(await answer(text)).length).toBeLessThanOrEqual(8);
});
