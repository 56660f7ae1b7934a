/** What a question and an answer say of words beside the list. */
import { expect, test } from 'vitest';
import { createBot } from '../../src/index.ts';
import { renderPlain } from '../../src/render/plain.ts';

const bot = createBot();
const said = async (text: string): Promise<string> => {
  const reply = await bot.ask({ platform: 'test', place: 'here', person: text, text });
  return reply.ok ? renderPlain(reply.answer, { details: false }) : reply.fault.message;
};
const card = 'Card: 400 g olive, 200 g coconut, 84 g lye, 190 g water.';

test('the words are quoted without the sign at their end', async () =>
  expect(await said(`${card} Quite a lot of the coconut stuck to the bowl. Ok?`)).toBe(
    'You also write "Quite a lot of the coconut stuck to the bowl". What goes into the pot in the end?',
  ));

test.each([
  ['I doubled the oils. Lye and water I left as they were.', 'the fats times 2, the lye and the water as written'],
  [
    'Olive three times, coconut twice, lye and water three times.',
    'the olive oil (virgin), the lye and the water times 3, the coconut oil times 2',
  ],
  ['Everything on it went in twice.', 'all amounts times 2'],
  ['I doubled everything except the coconut.', 'all amounts but the coconut oil times 2'],
])('%s', async (told, sized) => expect(await said(`${card} ${told} Ok?`)).toContain(`${sized}, as the post says`));
