import { expect } from 'vitest';
import type { Answer, Fault, Reply } from '../../src/index.ts';
import { createBot } from '../../src/index.ts';

const bot = createBot();
let people = 0;

/** Asked by somebody new each time, so that nothing said before counts. */
export const ask = (text: string): Promise<Reply> => {
  people += 1;
  return bot.ask({ platform: 'test', place: 'shed', person: `person ${people}`, text });
};

export async function answer(text: string): Promise<Answer> {
  const reply = await ask(text);
  if (!reply.ok) throw new Error(`${text}: ${reply.fault.code}: ${reply.fault.message} ${reply.fault.hint}`);
  return reply.answer;
}

export async function fault(text: string): Promise<Fault> {
  const reply = await ask(text);
  if (reply.ok) throw new Error(`${text}: answered by ${reply.answer.command}: ${reply.answer.lead}`);
  return reply.fault;
}

/** The figures alone: to compare what was read of two ways to say one thing. */
const figures = ({ command, result }: Answer) => ({ command, ...result });

/** Both texts are understood alike. */
export const sameAs = async (said: string, plain: string): Promise<void> =>
  expect(figures(await answer(said))).toEqual(figures(await answer(plain)));

/** Lines before the assumptions: what has to fit a phone. */
export const shortLines = ({ lead, body }: Answer): readonly string[] => [
  lead,
  ...body.flatMap((block) =>
    block.kind === 'text'
      ? [block.text]
      : block.kind === 'steps'
        ? block.steps
        : block.kind === 'picture'
          ? [block.alt]
          : [],
  ),
];
