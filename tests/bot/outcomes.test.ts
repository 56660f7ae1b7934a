// What is remembered of an answer must be the answer that would be worked out again, and serve no other words.
import { expect, test } from 'vitest';
import { makeRecent } from '../../src/bot/recent.ts';
import { createBot, type Reply, renderJson } from '../../src/index.ts';

const recipe = (olive: number): string => `${olive} g olive oil, 200 g coconut oil, 98 g NaOH, 230 g water`;
const asked = (text: string, person = 'Ann') => ({ platform: 'test', place: 'shed', person, text });
const answerOf = (reply: Reply) => {
  if (!reply.ok) throw new Error(reply.fault.message);
  return reply.answer;
};
const shown = (reply: Reply): string => JSON.stringify(renderJson(answerOf(reply)));

test('the same words come to the same answer, whoever says them, and it is worked out once', async () => {
  const bot = createBot();
  const first = await bot.ask(asked(recipe(500)));
  expect(answerOf(await bot.ask(asked(recipe(500))))).toBe(answerOf(first));
  expect(answerOf(await bot.ask(asked(recipe(500), 'Bo')))).toBe(answerOf(first));
  expect(shown(await createBot().ask(asked(recipe(500))))).toBe(shown(first));
});

test('other words, options and commands are worked out', async () => {
  const bot = createBot();
  const all = [recipe(500), recipe(510), `check superfat=8% ${recipe(500)}`, `check unit=oz ${recipe(500)}`];
  for (const text of all) {
    await bot.ask(asked(text));
    expect(shown(await bot.ask(asked(text))), text).toBe(shown(await createBot().ask(asked(text))));
  }
});

test('what rests on the conversation is worked out for whom it is about', async () => {
  const bot = createBot();
  for (const [person, olive] of [
    ['Ann', 500],
    ['Bo', 400],
    ['Ann', 450],
  ] as const) {
    await bot.ask(asked(recipe(olive), person));
    const { result } = answerOf(await bot.ask(asked('and at 8 %?', person)));
    expect((result as { recipe: { fats: { grams: number }[] } }).recipe.fats[0]?.grams).toBe(olive);
  }
});

test('few things are kept, the newest', () => {
  const recent = makeRecent<number, string>(4);
  for (let i = 0; i < 10; i++) recent.set(i, `${i}`);
  expect([...Array(10).keys()].filter((key) => recent.get(key) !== undefined)).toEqual([6, 7, 8, 9]);
});
