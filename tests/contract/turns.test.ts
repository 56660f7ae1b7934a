import { PassThrough, Writable } from 'node:stream';
import type { ReadStream, WriteStream } from 'node:tty';
import { parseArguments } from '../../adapters/console/arguments.ts';
import { chatByTerminal } from '../../adapters/console/chat.ts';
import { type Io, oneShot } from '../../adapters/console/oneshot.ts';
import { createBot, renderPlain } from '../../src/index.ts';
import { holdsConversations } from './turns.ts';

async function ask(words: readonly string[], lines: readonly string[]): Promise<readonly string[]> {
  const written: string[] = [];
  const io: Io = {
    readText: () => lines.join('\n'),
    readLines: () => lines,
    write: (descriptor, text) => {
      if (descriptor === 1) written.push(text);
      return true;
    },
    savePicture: () => Promise.resolve(),
  };
  if (!parseArguments(words).ok) throw new Error(`no such call: ${words.join(' ')}`);
  await oneShot(words, () => createBot(), io);
  return written.map((text) => {
    const said = JSON.parse(text) as { text?: string; fault?: { message: string } };
    return said.text ?? said.fault?.message ?? '';
  });
}

holdsConversations('ask --turns', {
  together: (turns) => ask(['--turns', '-'], turns),
  // each call is a process of its own, and so has a core of its own
  apart: async (turns) => (await Promise.all(turns.map((turn) => ask(['--json', turn], [])))).flat(),
});

const bot = createBot();
let room = 0;
const say = async (place: string, text: string): Promise<string> => {
  const reply = await bot.ask({ platform: 'contract', place, person: 'Ann', text });
  return renderPlain(reply.ok ? reply.answer : reply.fault, { details: false });
};

holdsConversations('the core', {
  together: (turns) => {
    room += 1;
    return Array.fromAsync(turns, (text) => say(`room ${room}`, text));
  },
  apart: (turns) =>
    Array.fromAsync(turns, (text) => {
      room += 1;
      return say(`room ${room}`, text);
    }),
});

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 60));

/** What the chat prints after each line that is typed. */
async function chat(turns: readonly string[]): Promise<readonly string[]> {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input, unref: () => input });
  let screen = '';
  const output = Object.assign(
    new Writable({
      write: (chunk, _encoding, done) => {
        screen += chunk;
        done();
      },
    }),
    { isTTY: true, columns: 80, rows: 24, hasColors: () => false },
  );
  const ended = chatByTerminal(createBot(), [], {
    input: input as unknown as ReadStream,
    output: output as unknown as WriteStream,
    obeysControls: false,
  });
  const heard: string[] = [];
  for (const turn of turns) {
    screen = '';
    input.write(`${turn}\n`);
    await pause();
    await pause();
    heard.push(screen.replace(/\s+/g, ' '));
  }
  input.end();
  await ended;
  return heard;
}

holdsConversations('the chat', {
  together: chat,
  apart: async (turns) => {
    const heard: string[] = [];
    for (const turn of turns) heard.push(...(await chat([turn])));
    return heard;
  },
});
