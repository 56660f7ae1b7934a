/** Which lye is asked for where one is listed; a house called after coffee. */
import { describe, expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';
import { potOf } from './pot.ts';

const bot = createBot();
const commandOf = async (text: string): Promise<string> => {
  const reply = await bot.ask({ platform: 't', place: text, person: 'x', text });
  return reply.ok ? reply.answer.command : 'asked';
};

describe('lye is asked for', () => {
  const card = 'The card I got is 900 g olive and 300 g coconut, 175 g lye, at 1% she says.';
  test.each([
    [
      `${card} I want to make only a third of it, at 6% superfat. How much sodium hydroxide do I weigh for my third?`,
      'lye',
    ],
    ['900 g olive, 300 g coconut, 175 g lye. How much lye do I need at 6% superfat?', 'lye'],
    ['900 g olive, 300 g coconut, 175 g lye at 5% superfat. Ok?', 'check'],
    ['900 g olive, 300 g coconut, 175 g lye. How much water do I need?', 'check'],
  ])('%s', async (text, command) => expect(await commandOf(text)).toBe(command));
});

test.each([
  ["Soap for my sister's cafe. 300 g coconut, 450 g olive, 105 g lye, 250 g water. Ok?", 250],
  ['300 g coconut, 450 g olive, 105 g lye, 250 g cafe. Ok?', 0],
])('where it goes is no coffee: %s', (text, water) => {
  const { grams, doubts } = potOf(text);
  expect(doubts).toEqual([]);
  expect(grams['water']).toBe(water);
});
