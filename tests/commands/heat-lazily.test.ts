// No question pays for what it does not need: figures of heat and charts are read when asked for, not before.
import { expect, test, vi } from 'vitest';
import { createBot, drawPicture } from '../../src/index.ts';

vi.mock('../../src/render/picture/draw.ts', () => {
  throw new Error('the charts were read');
});

const asked = (text: string) => ({ platform: 'test', place: 'shed', person: text, text });

test('without data/heat everything but heat is answered', async () => {
  const errors: unknown[] = [];
  const bot = createBot({
    heat: () => {
      throw new Error('the figures of heat were read');
    },
    log: ({ error }) => {
      errors.push(error);
    },
  });
  for (const text of [
    'is my lye ok? 450 g olive, 225 g coconut, 75 g castor oil, 102 g lye, 230 g water',
    'lye 500 g olive oil, 200 g coconut oil',
    '3/4 cup shea in grams',
    'fat castor oil',
    'Mix at 40 °C, cook until it boils: 500 g lard, 66 g NaOH, 150 g water. is my lye ok?',
    'safety',
    'help',
  ]) {
    const reply = await bot.ask(asked(text));
    expect(reply.ok, text).toBe(true);
    if (reply.ok) expect(reply.answer.details).toBeDefined();
  }
  expect(errors.every((error) => error === null)).toBe(true);
  expect(await bot.ask(asked('flash point of lavender'))).toMatchObject({ ok: false, fault: { code: 'failed' } });
  expect(String(errors.at(-1))).toContain('the figures of heat were read');
});

test('an answer with a picture is text until somebody draws it', async () => {
  const reply = await createBot().ask(asked('when can I add lavender, pot is at 88 °C'));
  const picture = reply.ok ? reply.answer.body.find(({ kind }) => kind === 'picture') : undefined;
  expect(picture).toBeDefined();
  if (picture?.kind === 'picture') await expect(drawPicture(picture.picture)).rejects.toThrow(/charts were read|mock/);
});
