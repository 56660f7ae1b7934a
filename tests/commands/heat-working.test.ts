import { expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';

interface Explained {
  readonly steps: readonly {
    readonly formula: string;
    readonly inputs: readonly { readonly value: number }[] | Readonly<Record<string, number>>;
    readonly value: number;
    readonly unit: string;
    readonly source: string;
  }[];
}

const bot = createBot();

/** The answer to a question, and the working of it. */
async function both(question: string) {
  const say = async (text: string) => {
    const reply = await bot.ask({ platform: 'test', place: 'shed', person: question, text });
    if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
    return reply.answer.result;
  };
  return { result: await say(question), steps: ((await say('explain')) as unknown as Explained).steps };
}

test.each([
  [
    'how hot will 150 g NaOH in 350 g water get',
    (result: Record<string, unknown>) => (result['peakC'] as { nominal: number }).nominal,
  ],
  [
    'mix 500 g olive oil at 60 °C with 60 g NaOH + 140 g water at 25 °C',
    (result: Record<string, unknown>) => result['temperatureC'],
  ],
  [
    'when can I add lavender, pot is at 88 °C',
    (result: Record<string, unknown>) => (result['minutes'] as { nominal: number }).nominal,
  ],
  [
    '92 °C at 0 min, 86 at 10 min, room 20, target 70',
    (result: Record<string, unknown>) => (result['minutes'] as { nominal: number }).nominal,
  ],
  ['flash point of lavender', (result: Record<string, unknown>) => result['addBelowC']],
])('%s: the first step finds the figure of the answer, with its source', async (question, main) => {
  const { result, steps } = await both(question);
  expect(steps[0]?.value).toBe(main(result as Record<string, unknown>));
  for (const { formula, value, unit, source } of steps) {
    expect(Number.isFinite(value)).toBe(true);
    for (const text of [formula, unit, source]) expect(text).not.toBe('');
  }
});
