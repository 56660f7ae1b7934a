import { expect, it } from 'vitest';
import { createBot } from '../../src/index.ts';
import { dialogues, play, type Scored } from './dialogue.ts';

/**
 * Conversations written by people who had not seen the product, with figures reckoned apart from it. The bar: nothing
 * wrong without a word, and a needless question in at most one turn of twenty.
 */
const told = (scored: readonly Scored[], verdict: Scored['verdict']): string[] =>
  scored.filter((one) => one.verdict === verdict).map(({ id, turn, say, why }) => `${id} ${turn} "${say}": ${why}`);

it.each(['dialogues.json', 'dialogues-2.json', 'dialogues-own.json'])('conversations: %s', async (file) => {
  const bot = createBot();
  const all = dialogues(file);
  const scored = (await Array.fromAsync(all, (dialogue) => play(bot, dialogue))).flat();
  expect(all.length).toBeGreaterThanOrEqual(25);
  expect(told(scored, 'wrong')).toEqual([]);
  expect(told(scored, 'needless').length, told(scored, 'needless').join('\n')).toBeLessThanOrEqual(
    scored.length * 0.05,
  );
});
