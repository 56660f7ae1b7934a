import { describe, expect, test } from 'vitest';
import { createBot, renderPlain } from '../../src/index.ts';

const bot = createBot();
const ask = (text: string) => bot.ask({ platform: 'test', place: 'everyday', person: text, text });
const answer = async (text: string) => {
  const reply = await ask(text);
  if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
  return reply.answer;
};
const said = async (text: string): Promise<string> => {
  const reply = await ask(text);
  return renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
};

describe('the answer is the first line', () => {
  test.each([
    [
      'how much water for 140 g NaOH to make a 30 % solution',
      'Use 327 g water: 140 g sodium hydroxide (NaOH) then makes 467 g of 30 % solution.',
    ],
    [
      'what concentration is 150 g NaOH in 300 g water',
      '33.3 %: 150 g sodium hydroxide (NaOH) in 300 g water (2 g water to 1 g alkali).',
    ],
    [
      'how much 50 % stock do I weigh for 128 g',
      'Weigh 256 g of the 50 % stock: it holds 128 g sodium hydroxide (NaOH) and 128 g water.',
    ],
    [
      'how much extra NaOH for 21 g citric acid',
      'Add 13.1 g sodium hydroxide (NaOH) for 21 g citric acid (anhydrous), on top of what the fats need.',
    ],
    [
      'how much NaOH is 100 g of 90 % KOH worth',
      '64.1 g sodium hydroxide (NaOH) does the work of 100 g potassium hydroxide (KOH) of 90 %.',
    ],
    ['water at 38% of oil weight, oils 800 g, how much water', 'Use 304 g water: 38 % of 800 g fats.'],
    ['3% of 800 g', '24 g: 3 % of 800 g.'],
  ])('%s', async (text, lead) => expect((await answer(text)).lead).toBe(lead));
});

describe('what nobody said is taken aloud', () => {
  test.each([
    ['how much water for 100 g lye', 'I took a 33 % solution; 25 to 40 % is usual (300 g to 150 g water).'],
    ['how much water for 100 g lye', 'I took "lye" as sodium hydroxide (NaOH).'],
    ['extra lye for 20 g citric acid', 'I took the citric acid as anhydrous; the monohydrate takes 9 % less.'],
    ['extra naoh for 30 g lactic acid', 'I took the lactic acid as pure; bottles are mostly 80 or 88 %.'],
    ['extra lye for 200 g vinegar', 'I took the vinegar as 5 %.'],
    [
      'how much KOH instead of 100 g NaOH',
      'I took the potassium hydroxide (KOH) as 90 % pure; at 85 % it would be 165 g, at 100 % 140.2 g: look at the label.',
    ],
    ['extra lye for 2 tbsp vinegar', 'weighing is surer'],
  ])('%s', async (text, line) => expect(await said(text)).toContain(line));

  test('a purity that was said is taken without a word', async () => {
    expect((await answer('how much 85 % KOH instead of 100 g pure NaOH')).assumptions).toEqual([]);
  });
});

test('alkali is never shown as more than it is', async () => {
  for (const grams of [1, 3.3, 7.7, 21, 33.3, 99.9, 161, 500]) {
    const { lead, result } = await answer(`how much extra NaOH for ${grams} g citric acid`);
    const shown = Number(/Add ([\d.]+) g/.exec(lead)?.[1]);
    const value = result['value'] as number;
    expect(shown).toBeLessThanOrEqual(value + 1e-9);
    expect(value - shown).toBeLessThan(0.1);
  }
});

describe('what cannot be has a reason, what is missing is asked, both with their caution', () => {
  test.each([
    ['how much water for 100g lye to make a 0 % solution', 'impossible', 'without alkali'],
    ['how much water for 100g lye to make a 60 % solution', 'impossible', 'no longer dissolves'],
    ['how much of a 150% stock solution for 100 g naoh', 'impossible', 'no water left'],
    ['how much water for -5 g naoh to make a 30 % solution', 'impossible', 'below nothing'],
    ['extra lye for 20 g of 300 % vinegar', 'impossible', 'of acid can’t be'],
    ['how much stock for 100 g naoh', 'unclear', 'How strong'],
    ['how much 50% stock', 'unclear', 'how much alkali'],
    ['how much water for 5 tbsp lye to make a 30 % solution', 'unclear', 'By volume'],
    ['how much water for 100 to 120 g lye to make a 30 % solution', 'unclear', 'which figure'],
    ['how much lye in 1 litre of 30 % lye solution', 'unclear', 'heavier than water'],
    ['how much extra lye for citric acid', 'unclear', 'How much citric acid'],
    ['strength', 'unclear', ''],
    ['acid', 'unclear', ''],
    ['worth', 'unclear', ''],
  ])('%s', async (text, code, words) => {
    const reply = await ask(text);
    if (reply.ok) throw new Error(`${text}: ${reply.answer.lead}`);
    expect(reply.fault.code).toBe(code);
    expect(reply.fault.message).toContain(words);
    expect(reply.fault.caution.length).toBeGreaterThan(0);
  });
});

test('a strength that is no usual one is told of', async () => {
  expect(await said('what concentration is 150 g NaOH in 150 g water')).toContain('Strong: it gets very hot');
  expect(await said('what concentration is 150 g NaOH in 140 g water')).toContain('Very strong');
  expect(await said('what concentration is 150 g NaOH in 100 g water')).toContain('not all of it dissolves');
  expect(await said('what concentration is 10 g NaOH in 190 g water')).toContain('Thin');
  expect(await said('what concentration is 150 g NaOH in 300 g water')).not.toMatch(/Strong|Thin/);
});

test.each([
  'how much water for 140 g NaOH to make a 30 % solution',
  'what concentration is 150 g NaOH in 300 g water',
  'how much 50 % stock do I weigh for 128 g',
  'how much extra NaOH for 21 g citric acid',
  'how much NaOH is 100 g of 90 % KOH worth',
  '3% of 800 g',
  '3/4 cup shea in grams',
  '1 lb in g',
])('%s: its working can be asked for', async (text) => {
  const { value, unit } = (await answer(text)).result;
  const reply = await bot.ask({ platform: 'test', place: 'everyday', person: text, text: 'show the working' });
  if (!reply.ok) throw new Error(reply.fault.message);
  const steps = reply.answer.result['steps'] as readonly {
    readonly value: number;
    readonly unit: string;
    readonly source: string;
  }[];
  expect(steps.some((step) => step.value === value && step.unit === unit)).toBe(true);
  for (const { source } of steps) expect(source).not.toBe('');
  expect(renderPlain(reply.answer, { details: true })).not.toMatch(/NaN|undefined/);
});

test('another question or a recipe behind a command’s word goes to its own command', async () => {
  expect((await answer('convert 140 g NaOH to KOH')).command).toBe('worth');
  expect((await answer('convert 5 % of 800 g')).command).toBe('share');
  expect((await answer('lye concentration of 140 g naoh and 300 g water')).command).toBe('strength');
  expect((await answer('fat 500 g lard, alkali 66 g NaOH, 150 g water')).command).toBe('check');
});
