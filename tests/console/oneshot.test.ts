// The contract of `ask`, with a core that repeats what it hears.
import { describe, expect, test } from 'vitest';
import { type Io, oneShot } from '../../adapters/console/oneshot.ts';
import { isAnswer, isFault } from '../contract/schemas.ts';
import { fakeBot } from './fake.ts';

interface Run {
  readonly status: number;
  readonly out: string;
  readonly err: string;
  readonly heard: readonly string[];
}

async function run(words: readonly string[], io: Partial<Io> = {}): Promise<Run> {
  const written: Record<1 | 2, string> = { 1: '', 2: '' };
  const { bot, heard } = fakeBot();
  const status = await oneShot(words, () => bot, {
    readText: () => 'from standard input\nsecond line',
    readLines: () => [],
    write: (descriptor, text) => {
      written[descriptor] += text;
      return true;
    },
    savePicture: () => Promise.resolve(),
    ...io,
  });
  return { status, out: written[1], err: written[2], heard };
}

describe('words', () => {
  test('several are joined, text is plain', async () => {
    const { status, out, err, heard } = await run(['3/4', 'cup', 'shea', 'in', 'grams']);
    expect(heard).toEqual(['3/4 cup shea in grams']);
    expect(out).toMatch(/^You said "3\/4 cup shea in grams"\n/);
    expect(err).toBe('');
    expect(status).toBe(0);
  });

  test.each([
    [['-5 g olive oil'], '-5 g olive oil'],
    [['-5', 'g'], '-5 g'],
    [['- 450 g olive oil\n- 102 g NaOH'], '- 450 g olive oil\n- 102 g NaOH'],
    [['--', '--json'], '--json'],
    [['-', 'more'], '- more'],
    [[''], ''],
  ])('%j is text', async (words, text) => expect((await run(words)).heard).toEqual([text]));

  test('--help tells how, on standard output', async () => {
    const { status, out, err } = await run(['--help']);
    expect([status, err]).toEqual([0, '']);
    for (const option of ['--json', '--turns FILE', '--picture FILE']) expect(out).toContain(option);
  });

  test('a lone dash is standard input', async () => {
    expect((await run(['-'])).heard).toEqual(['from standard input\nsecond line']);
    expect((await run(['--json', '-'])).heard).toEqual(['from standard input\nsecond line']);
  });

  test.each([
    [[], 'there is no question'],
    [['--jsn', 'x'], 'no option --jsn'],
    [['-h'], 'no option -h'],
    [['--turns'], '--turns needs the name of a file'],
    [['--turns', 'a', '--turns', 'b'], '--turns is given twice'],
    [['--turns', 'a', 'text'], 'leave out the other words'],
    [['--turns', 'a', '--picture', 'b'], 'not with --turns'],
  ])('%j is a wrong call: 64, nothing on standard output', async (words, says) => {
    const { status, out, err, heard } = await run(words);
    expect(status).toBe(64);
    expect(out).toBe('');
    expect(err).toContain(says);
    expect(err).toContain('Usage:');
    expect(heard).toEqual([]);
  });
});

describe('--json', () => {
  test.each([[['--json', 'hello']], [['hello', '--json']]])(
    '%j prints one object after the schema, whose text is the plain rendering',
    async (words) => {
      const { status, out } = await run(words);
      expect(status).toBe(0);
      expect(out.endsWith('}\n')).toBe(true);
      const answer = isAnswer(JSON.parse(out));
      expect(`${answer.text}\n`).toBe((await run(['hello'])).out);
      for (const caution of answer.caution) expect(answer.text).toContain(caution);
    },
  );

  test('a question back is a fault with status 2, in text too', async () => {
    const json = await run(['--json', 'how much?']);
    expect(json.status).toBe(2);
    expect(isFault(JSON.parse(json.out))).toEqual({
      code: 'unclear',
      message: 'In which unit?',
      hint: 'Answer "grams" or "ounces".',
    });
    const text = await run(['how much?']);
    expect(text.status).toBe(2);
    expect(text.out).toBe('In which unit?\nAnswer "grams" or "ounces".\n→ grams · ounces\n');
  });

  test('a bug is a fault with status 1, even one that was thrown', async () => {
    expect((await run(['--json', 'bug'])).status).toBe(1);
    const thrown = await run(['--json', 'throw']);
    expect(thrown.status).toBe(1);
    const { code, hint } = isFault(JSON.parse(thrown.out));
    expect(code).toBe('failed');
    expect(hint).toMatch(/[0-9a-f]{8}/);
  });
});

describe('--turns', () => {
  test('one object a line, as soon as it is read, faults too, status 0', async () => {
    const events: string[] = [];
    const { status, heard } = await run(['--turns', 'f'], {
      *readLines(file) {
        for (const line of [`of ${file}`, 'how much?', '', 'a\\nb', 'bug']) {
          events.push(`read ${line}`);
          yield line;
        }
      },
      write: (descriptor, text) => {
        const { ok } = JSON.parse(text) as { ok: boolean };
        events.push(`${descriptor} ${ok}`);
        return true;
      },
    });
    expect(status).toBe(0);
    expect(heard).toEqual(['of f', 'how much?', '', 'a\nb', 'bug']);
    expect(events).toEqual([
      'read of f',
      '1 true',
      'read how much?',
      '1 false',
      'read ',
      '1 true',
      'read a\\nb',
      '1 true',
      'read bug',
      '1 false',
    ]);
  });

  test('stops where nobody reads any more', async () => {
    const { heard, status } = await run(['--turns', '-'], { readLines: () => ['a', 'b', 'c'], write: () => false });
    expect(heard).toEqual(['a']);
    expect(status).toBe(0);
  });

  test('a file that is not there: 66', async () => {
    const missing = Object.assign(new Error("ENOENT: no such file, open 'gone.txt'"), { syscall: 'open' });
    const { status, out, err } = await run(['--turns', 'gone.txt'], {
      readLines: () => {
        throw missing;
      },
    });
    expect(status).toBe(66);
    expect(out).toBe('');
    expect(err).toContain('gone.txt');
  });
});

describe('--picture', () => {
  test('saves the picture of the answer, after the answer', async () => {
    const saved: string[] = [];
    const { status, out } = await run(['--picture', 'curve.png', 'draw'], {
      savePicture: async ({ title }, file) => void saved.push(`${title} in ${file}`),
    });
    expect([status, saved]).toEqual([0, ['Cooling in curve.png']]);
    expect(out).toContain('You said "draw"');
  });

  test.each([
    ['an answer without one', 'hello', 'no picture'],
    ['a file that cannot be written', 'draw', 'EACCES'],
  ])('%s: 73, the answer all the same', async (_what, text, says) => {
    const { status, out, err } = await run(['--json', '--picture=a.png', text], {
      savePicture: () => Promise.reject(new Error('EACCES: permission denied')),
    });
    expect(status).toBe(73);
    isAnswer(JSON.parse(out));
    expect(err).toContain(says);
  });

  test('a question back keeps its status', async () => {
    expect((await run(['--picture', 'a.png', 'how much?'])).status).toBe(2);
  });
});
