import { createBot, type Reply } from '../../src/index.ts';

const bot = createBot();
let person = 0;
/** The last reply to turns of a person nobody has met before. */
export const talk = async (...turns: readonly string[]): Promise<Reply> => {
  person += 1;
  const asker = `${person}`;
  const replies = await Array.fromAsync(turns, (text) =>
    bot.ask({ platform: 'test', place: 'here', person: asker, text }),
  );
  const last = replies.at(-1);
  if (!last) throw new Error('nothing said');
  return last;
};
