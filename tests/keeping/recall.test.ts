// A conversation of a chat platform goes on where it stood, though the process is another.
import { describe, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';
import { createModel } from '../store/model.ts';
import { textOf } from './talk.ts';

const lard = '500 g lard, 66 g NaOH, 150 g water';

function processes() {
  let at = Date.UTC(2026, 0, 1, 9, 0);
  const store = createModel(() => at);
  const start = () => {
    const bot = createBot({
      store: async () => ({ ...store, close: async () => {} }),
      recalls: true,
      now: () => at,
      zone: 'UTC',
    });
    const ask = (text: string, person = 'ada', place = 'room') =>
      bot.ask({ platform: 'test', place, person, text, isPrivate: true });
    return { ask, end: () => bot.close() };
  };
  const kept = async () =>
    (await store.of({ platform: 'test', person: 'ada' }).list('context', { limit: 9 })).map(({ data }) => data);
  return { start, kept, wait: (minutes: number) => (at += minutes * 60_000) };
}

describe('after a restart', () => {
  test.each([
    [[lard], 'at 8 %', /I took your recipe from 09:00 UTC, at 8 % superfat/],
    [[lard, 'at 8 %', 'double it'], 'and 20 % more water?', /I took your recipe/],
    [['lard 500, lye 66, water 150'], 'grams', /fits/],
    [['convert 3/4 cup shea in grams'], 'and cocoa butter?', /cocoa butter/],
    [[lard], 'details', /Where the values come from/],
    [[lard, 'how hot does the lye get'], 'why 108?', /108|no figure|°C/],
    [[`recipe save A: ${lard}`], 'double it', /1000 g fat/],
  ])('%j goes on with "%s"', async (turns, next, shown) => {
    const { start, wait } = processes();
    const first = start();
    for (const text of turns) await first.ask(text);
    const alike = start();
    for (const text of turns.map((text) => text.replace('save A', 'save B'))) await alike.ask(text, 'bea');
    const unbroken = textOf(await alike.ask(next, 'bea'));
    await first.end();
    wait(5);
    const said = textOf(await start().ask(next));
    expect(said).toMatch(shown);
    expect(said).toBe(unbroken);
  });

  test('what is started over stays so, though the store does not hold it yet', async () => {
    const { start } = processes();
    const first = start();
    await first.ask(lard);
    await first.end();
    const second = start();
    await second.ask('start over');
    expect(textOf(await second.ask('double it'))).toMatch(/Which recipe\?/);
  });

  test('what kept something is not kept again', async () => {
    const { start, kept } = processes();
    const first = start();
    await first.ask(`recipe save A: ${lard}`);
    await first.ask('recipe delete A confirm=yes');
    await first.ask('remind me in 3 days to turn the bars');
    await first.end();
    expect(JSON.stringify(await kept())).not.toMatch(/recipe save|delete|remind/);
    const second = start();
    expect(textOf(await second.ask('double it'))).toContain('1000 g fat');
    expect(textOf(await second.ask('recipe list'))).toContain('no recipe of yours');
  });

  test.each([
    ['in another place', 'ada', 'elsewhere', 0],
    ['for another person', 'bea', 'room', 0],
    ['after half an hour', 'ada', 'room', 30],
  ])('nothing goes on %s', async (_what, person, place, minutes) => {
    const { start, wait } = processes();
    const first = start();
    await first.ask(lard);
    await first.end();
    wait(minutes);
    expect((await start().ask('at 8 %', person, place)).ok).toBe(false);
  });

  test('"restart" leaves nothing behind, nor does an accident, nor a very long post', async () => {
    const { start, kept } = processes();
    const one = start();
    await one.ask(lard);
    await one.ask('restart');
    await one.ask('lye splashed in my eye');
    await one.ask(`${lard}\n${'so it goes '.repeat(2500)}`);
    await one.end();
    expect(await kept()).toEqual([]);
  });
});
