// A pot that cools, told of as it cools: each further reading goes on with the question before.
import { expect, test } from 'vitest';
import { type Answer, createBot } from '../../src/index.ts';

function talk() {
  let at = Date.UTC(2026, 2, 7, 10, 0);
  const bot = createBot({ now: () => at });
  return async (text: string, minutesLater = 0) => {
    at += 60_000 * minutesLater;
    const reply = await bot.ask({ platform: 'test', place: 'shed', person: 'one', text });
    if (!reply.ok) throw new Error(`${text}: ${reply.fault.message}`);
    return reply.answer;
  };
}

const newton = (first: number, second: number, minutes: number, target: number): number =>
  (minutes * Math.log((first - 20) / (target - 20))) / Math.log((first - 20) / (second - 20));
const nominal = (result: Readonly<Record<string, unknown>>): number =>
  (result['minutes'] as { nominal: number }).nominal;

test('a reading with its minute', async () => {
  const say = talk();
  await say('when is my pot at 60 °C? it is at 88 °C');
  const { result, assumptions } = await say('81 at 25 min');
  expect(nominal(result)).toBeCloseTo(newton(88, 81, 25, 60), 3);
  // What of the conversation was used is told.
  expect(assumptions.join(' ')).toContain('your question from');
});

test('a temperature alone is that of now: the minutes since the question count', async () => {
  const say = talk();
  await say('when can I add lavender, pot is at 88 °C');
  expect(nominal((await say("it's 80 now", 20)).result)).toBeCloseTo(newton(88, 80, 20, 59), 3);
  const third = (await say('75 °C', 15)).result;
  expect((third['curve'] as readonly unknown[]).length).toBeGreaterThan(2);
  // By Newton through the first and the last reading, with the middle one a little off.
  expect(Math.abs(nominal(third) - newton(88, 75, 35, 59))).toBeLessThan(3);
});

test('the range shrinks with readings', async () => {
  const say = talk();
  const width = ({ result }: Answer) => {
    const { low, high } = result['minutes'] as { low: number; high: number };
    return high - low;
  };
  const first = width(await say('when is 2 kg soap in a steel pot at 65 °C, it is at 90 °C'));
  expect(width(await say('84 at 15 min'))).toBeLessThan(first);
});

test('a figure that speaks of a recipe since then is no reading', async () => {
  const say = talk();
  await say('when is my pot at 60 °C? it is at 88 °C');
  expect((await say('500 g lard, 66 g NaOH, 150 g water')).command).toBe('check');
  expect(async () => {
    if ((await say('make it 80', 5)).command === 'cool') throw new Error('taken as a reading');
  }).not.toThrow(/reading/);
});
