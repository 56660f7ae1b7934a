// The chat on a terminal made of two streams: what is typed and pasted goes in as a terminal sends it.
import { PassThrough, Writable } from 'node:stream';
import type { ReadStream, WriteStream } from 'node:tty';
import { describe, expect, test } from 'vitest';
import { chatByTerminal } from '../../adapters/console/chat.ts';
import { fakeBot } from './fake.ts';

function open({ colours = true, obeysControls = true, columns = 80 } = {}) {
  const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => input, unref: () => input });
  let screen = '';
  const output = Object.assign(
    new Writable({
      write: (chunk, _encoding, done) => {
        screen += chunk;
        done();
      },
    }),
    { isTTY: true, columns, rows: 24, hasColors: () => colours },
  );
  const { bot, heard } = fakeBot();
  const ended = chatByTerminal(bot, ['check', 'convert', 'help'], {
    input: input as unknown as ReadStream,
    output: output as unknown as WriteStream,
    obeysControls,
  });
  return {
    heard,
    screen: () => screen,
    /** Sends each text as one chunk, with time for the chat to take it. */
    type: async (...texts: readonly (string | Uint8Array)[]) => {
      for (const text of texts) {
        input.write(text);
        await new Promise((resolve) => setTimeout(resolve, 60));
      }
    },
    end: async () => {
      input.write('\x04');
      await ended;
    },
    finish: async () => {
      input.end();
      await ended;
    },
    ended,
  };
}

const pasted = (text: string): string => `\x1b[200~${text}\x1b[201~`;

describe('typed', () => {
  test('a line is a message; an empty one is none', async () => {
    const { heard, type, end } = open();
    await type('hello\r', '\r', 'more\r');
    await end();
    expect(heard).toEqual(['hello', 'more']);
  });

  test('a backslash at the end goes on', async () => {
    const { heard, screen, type, end } = open();
    await type('450 g olive\\\r', '102 g NaOH\\\r', '230 g water\r');
    await end();
    expect(heard).toEqual(['450 g olive\n102 g NaOH\n230 g water']);
    expect(screen()).toContain('… ');
  });

  test('arrow up brings back what was said', async () => {
    const { heard, type, end } = open();
    await type('one\r', 'two\r', '\x1b[A', '\x1b[A', '\r');
    await end();
    expect(heard).toEqual(['one', 'two', 'one']);
  });

  test('tab completes', async () => {
    const { heard, type, end } = open();
    await type('check 450 g palm k', '\t', ' x\r');
    await end();
    expect(heard).toEqual(['check 450 g palm kernel oil x']);
  });

  test.each(['quit', 'exit', ' QUIT '])('%j ends it', async (word) => {
    const { heard, type, ended } = open();
    await type(`${word}\r`);
    await ended;
    expect(heard).toEqual([]);
  });

  test('Ctrl-C throws away the line, and ends the chat on an empty one', async () => {
    const { heard, type, ended } = open();
    await type('forget this', '\x03', 'kept\r', '\x03');
    await ended;
    expect(heard).toEqual(['kept']);
  });
});

describe('pasted', () => {
  const recipe = 'Shed soap\nolive oil\t450 g\n\nlye 102 g';

  test('many lines are one message, tabs and empty lines kept, sent with Enter', async () => {
    const { heard, type, end } = open();
    await type(`check: ${pasted(`${recipe}\n`)}`);
    expect(heard).toEqual([]);
    await type('\r');
    await end();
    expect(heard).toEqual([`check: ${recipe}`]);
  });

  test('marks that are cut between two chunks', async () => {
    const { heard, type, end } = open();
    await type('\x1b[20', `0~${recipe}\x1b[2`, '01~\r');
    await end();
    expect(heard).toEqual([recipe]);
  });

  test('a letter of several bytes that is cut between two chunks', async () => {
    const { heard, type, end } = open();
    const bytes = Buffer.from(pasted('½ cup'));
    const inside = bytes.indexOf(0xc2) + 1;
    await type(bytes.subarray(0, inside), bytes.subarray(inside), '\r');
    await end();
    expect(heard).toEqual(['½ cup']);
  });

  test('control characters of the paste are dropped, not obeyed', async () => {
    const { heard, type, end } = open();
    await type(pasted('a\x03b\x15c\x1b[31md\x04\r\ne'), '\r');
    await end();
    expect(heard).toEqual(['abc[31md\ne']);
  });

  test('it comes back from the history whole', async () => {
    const { heard, type, end } = open();
    await type('first\r', pasted(recipe), '\r', 'x\r', '\x1b[A', '\x1b[A', '\r');
    await end();
    expect(heard).toEqual(['first', recipe, 'x', recipe]);
  });

  test('a terminal that does not mark it: lines of one burst are one message', async () => {
    const { heard, type, end } = open();
    await type('Shed soap\rolive oil 450 g\r\rlye 102 g\r');
    await end();
    expect(heard).toEqual(['Shed soap\nolive oil 450 g\n\nlye 102 g']);
  });

  test('commands of one burst are messages', async () => {
    const { heard, type, ended } = open();
    await type('help\rconvert 1 lb in g\rquit\r');
    await ended;
    expect(heard).toEqual(['help', 'convert 1 lb in g']);
  });
});

describe('shown', () => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the sequences under test
  const colour = /\x1b\[\d+m/;

  test('colour where the terminal has it, none where it has not (NO_COLOR, TERM=dumb)', async () => {
    for (const colours of [true, false]) {
      const { screen, type, end } = open({ colours });
      await type('hello\r');
      await end();
      expect(colour.test(screen())).toBe(colours);
    }
  });

  test('a greeting of one line with two examples; the caution; paste marks on, and off at the end', async () => {
    const { screen, type, end } = open();
    await type('hello\r');
    await end();
    const [greeting = ''] = screen().split('\n');
    expect(greeting.replace('\x1b[?2004h', '').length).toBeLessThanOrEqual(80);
    expect(greeting).toMatch(/150 g water.*shea/);
    expect(screen().replace(/\n/g, ' ')).toContain('goggles, gloves, long sleeves');
    expect(screen().startsWith('\x1b[?2004h')).toBe(true);
    expect(screen()).toContain('\x1b[?2004l');
  });

  test('a terminal that only prints lines gets lines, and ends at the end of its input', async () => {
    const { heard, screen, type, finish } = open({ colours: false, obeysControls: false });
    await type('hello\n', 'Shed soap\nlye 102 g\n');
    await finish();
    expect(heard).toEqual(['hello', 'Shed soap\nlye 102 g']);
    expect(screen()).not.toContain('\x1b');
  });

  test('a terminal that says it has no columns is taken for one of the usual width', async () => {
    const { screen, type, end } = open({ columns: 0 });
    await type('hello\r');
    await end();
    expect(screen()).toContain('I took "lye" as sodium hydroxide.');
  });
});
