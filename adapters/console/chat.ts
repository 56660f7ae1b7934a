import { createInterface } from 'node:readline';
import type { ReadStream, WriteStream } from 'node:tty';
import { type Answer, type Bot, type Fault, renderPlain, renderTerminal, wrap } from '../../src/index.ts';
import { completions } from './complete.ts';
import { filesOf, keep } from './exports.ts';
import { readText } from './files.ts';
import { isFarewell, messagesIn } from './messages.ts';
import { keysOf, marksOff, marksOn } from './paste.ts';

const asking = { platform: 'console', place: 'chat', person: 'local', isPrivate: true, isHost: true } as const;

const greeting = 'lyeward: try 500 g lard, 66 g NaOH, 150 g water · 1 cup shea in g · help · quit';

/** Lines that follow each other faster than this (ms) were not typed one by one. */
const burst = 25;

/** More columns than this make lines that the eye loses. */
const widest = 96;
/** Some pseudo-terminals say that they have none. */
const usual = 80;

/** A line break inside the line that is being edited: readline has one line only, and so has its history. */
const lineBreak = '⏎';
const aroundBreak = / ?⏎ ?/g;

/** All of standard input, answered message by message. */
export async function chatByPipe(
  bot: Bot,
  commands: readonly string[],
  write: (text: string) => boolean,
): Promise<void> {
  for (const message of messagesIn(readText('-'), commands)) {
    if (isFarewell(message)) return;
    const reply = await bot.ask({ ...asking, text: message });
    if (!write(`${renderPlain(reply.ok ? reply.answer : reply.fault, { details: false })}\n\n`)) return;
    for (const file of reply.ok ? filesOf(reply.answer) : []) write(`${keep(file)}\n\n`);
  }
}

export interface Terminal {
  readonly input: ReadStream;
  readonly output: WriteStream;
  /** False where the terminal can only print lines, so that nothing but lines is printed (TERM=dumb). */
  readonly obeysControls: boolean;
}

/**
 * The chat on a terminal, until `quit`, Ctrl-D, or Ctrl-C on an empty line. `keepsAlready`: something may be due.
 */
export function chatByTerminal(
  bot: Bot,
  commands: readonly string[],
  terminal: Terminal,
  keepsAlready = false,
): Promise<void> {
  const { input, output, obeysControls } = terminal;
  const colour = output.hasColors();
  const columns = () => Math.min(output.columns || usual, widest);
  const answer = async (text: string) => {
    const reply = await bot.ask({ ...asking, text });
    print(reply.ok ? reply.answer : reply.fault);
    for (const file of reply.ok ? filesOf(reply.answer) : []) output.write(`${keep(file)}\n\n`);
  };
  const print = (said: Answer | Fault) =>
    output.write(`\n${renderTerminal(said, { details: false, columns: columns(), colour })}\n\n`);

  const chat = createInterface({
    input: obeysControls ? keysOf(input, (pasted) => chat.write(pasted.replaceAll('\n', ` ${lineBreak} `))) : input,
    output,
    terminal: obeysControls,
    prompt: '> ',
    completer: (line: string) => completions(line, bot.complete(line)),
    removeHistoryDuplicates: true,
  });

  /** The lines so far: of one message, each but the last ended by a backslash, or of one burst. */
  let lines: string[] = [];
  let timer: NodeJS.Timeout | undefined;
  /** Answers come in the order of the messages. */
  let answered = Promise.resolve();
  const restart = () => {
    lines = [];
    chat.setPrompt('> ');
    chat.prompt();
  };
  const answerAll = async (messages: readonly string[]) => {
    for (const message of messages) {
      if (isFarewell(message)) {
        chat.close();
        return;
      }
      if (message.trim() !== '') await answer(message);
    }
    chat.prompt();
  };
  const finish = () => {
    if (lines.at(-1)?.endsWith('\\')) {
      chat.setPrompt('… ');
      chat.prompt();
      return;
    }
    const text = lines.map((line) => line.replace(/\\$/, '').replaceAll(aroundBreak, '\n')).join('\n');
    const isTyped = lines.length === 1 || lines.slice(0, -1).every((line) => line.endsWith('\\'));
    lines = [];
    chat.setPrompt('> ');
    answered = answered.then(() => answerAll(isTyped ? [text] : messagesIn(text, commands)));
  };

  chat.on('line', (line) => {
    lines.push(line);
    clearTimeout(timer);
    timer = setTimeout(finish, burst);
  });
  chat.on('SIGINT', () => {
    if (chat.line === '' && lines.length === 0) {
      chat.close();
      return;
    }
    // Ctrl-E and Ctrl-U: to the end of the line, and all of it away.
    chat.write(null, { ctrl: true, name: 'e' });
    chat.write(null, { ctrl: true, name: 'u' });
    restart();
  });

  output.write(`${obeysControls ? marksOn : ''}${wrap(greeting, columns())}\n\n`);
  chat.prompt();
  const over = new AbortController();
  const rung = bot.ring({
    platforms: [asking.platform],
    // above the line that is being typed, which comes again below
    tell: async ({ answer: said }) => {
      if (obeysControls) output.write('\r\x1b[K\x07');
      print(said);
      chat.prompt(true);
    },
    signal: over.signal,
    atOnce: keepsAlready,
  });
  return new Promise((resolve) => {
    chat.on('close', async () => {
      clearTimeout(timer);
      await answered;
      over.abort();
      await rung;
      output.write(`${obeysControls ? marksOff : ''}\n`);
      input.unref();
      resolve();
    });
  });
}
