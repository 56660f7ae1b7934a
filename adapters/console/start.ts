import { commandNames, createBot, mayHold } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { keptIn } from '../kept.ts';
import { chatByPipe, chatByTerminal } from './chat.ts';
import { write } from './files.ts';

/** The local chat: on a terminal a conversation, else all of standard input answered. */
export async function start({ log, data }: Config): Promise<void> {
  // The logger is read only where a log is wanted: it would double the memory of an idle chat.
  const bot = createBot({
    ...keptIn(data, 'the chat of the console'),
    quota: null,
    ...(log === undefined ? {} : { log: (await import('./log.ts')).logTo(log) }),
  });
  const { stdin: input, stdout: output } = process;
  if (input.isTTY && output.isTTY) {
    const terminal = { input, output, obeysControls: process.env['TERM'] !== 'dumb' };
    await chatByTerminal(bot, commandNames, terminal, mayHold(data));
  } else await chatByPipe(bot, commandNames, (text) => write(1, text));
  await bot.close();
}
