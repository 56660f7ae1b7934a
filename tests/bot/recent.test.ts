// What came of a request is used again for whoever asks the same, and for nobody whose conversation it is not.
import { expect, test } from 'vitest';
import { makeRecent } from '../../src/bot/recent.ts';
import { createBot } from '../../src/index.ts';
import { createModel } from '../store/model.ts';

const recipe = 'check 500 g lard, 66 g NaOH, 150 g water';
const asked = (text: string, person: string) => ({ platform: 'test', place: 'shed', person, text });

test('two people who ask the same get the very same answer, each with a number of their own', async () => {
  const bot = createBot();
  const first = await bot.ask(asked(recipe, 'ada'));
  const second = await bot.ask(asked(recipe, 'bo'));
  expect(first.ok && second.ok && second.answer === first.answer).toBe(true);
  expect(second.id).not.toBe(first.id);
});

test('each goes on from their own conversation', async () => {
  const bot = createBot();
  await bot.ask(asked(recipe, 'ada'));
  const mine = await bot.ask(asked('scale to 1 kg of oils', 'ada'));
  expect(mine.ok && mine.answer.command).toBe('scale');
  // the same words of somebody who has no recipe, and once more of one who has another
  expect((await bot.ask(asked('scale to 1 kg of oils', 'bo'))).ok).toBe(false);
  await bot.ask(asked('check 500 g coconut oil, 85 g NaOH, 200 g water', 'cy'));
  const other = await bot.ask(asked('scale to 1 kg of oils', 'cy'));
  expect(other.ok && JSON.stringify(other.answer.result)).toContain('coconut-oil');
  expect(await bot.ask(asked('scale to 1 kg of oils', 'bo'))).toMatchObject({ ok: false });
});

test('an answer from before goes on as one of its own', async () => {
  const bot = createBot();
  await bot.ask(asked(recipe, 'ada'));
  await bot.ask(asked(recipe, 'bo'));
  for (const person of ['ada', 'bo']) {
    const reply = await bot.ask(asked('and at 8 %?', person));
    // 500 g of lard; what makes 8 % to the gram leaves a little more
    expect(reply.ok && reply.answer.command).toBe('lye');
    expect(reply.ok && reply.answer.result).toMatchObject({ recipe: { fats: [{ id: 'lard', grams: 500 }] } });
  }
});

test('what somebody has set counts for them alone', async () => {
  const kept = createModel();
  const bot = createBot({ store: async () => kept });
  const say = (text: string, person: string) => bot.ask({ ...asked(text, person), isPrivate: true });
  await say('settings superfat 20 %', 'ada');
  const others = await say('lye 500 g lard', 'bo');
  const own = await say('lye 500 g lard', 'ada');
  const again = await say('lye 500 g lard', 'cy');
  const text = (reply: typeof own) => (reply.ok ? JSON.stringify([reply.answer.lead, reply.answer.assumptions]) : '');
  expect(text(own)).toContain('20 %');
  expect(text(others)).not.toContain('20 %');
  expect(text(again)).toBe(text(others));
});

test('few requests are held, and no long ones; "restart" lets all go', () => {
  const recent = makeRecent<number>();
  const key = (text: string) => recent.key('check', { text, options: {} }) ?? '';
  for (let i = 0; i <= 60; i++) recent.keep(key(String(i)), i);
  expect(recent.get(key('60'))).toBe(60);
  expect(recent.get(key('0'))).toBeUndefined();
  expect(recent.key('check', { text: 'x'.repeat(2001), options: {} })).toBeNull();
  recent.clear();
  expect(recent.get(key('60'))).toBeUndefined();
});

test('options and commands are told apart', () => {
  const { key } = makeRecent<number>();
  const keys = [
    key('check', { text: '500 g lard', options: {} }),
    key('check', { text: '500 g lard', options: { superfat: 0.08 } }),
    key('lye', { text: '500 g lard', options: {} }),
  ];
  expect(new Set(keys).size).toBe(3);
});
