// `ask` as people start it: a process of its own, on the sources or on what was bundled.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { describe, expect, test } from 'vitest';
import { isAnswer, isFault } from '../contract/schemas.ts';
import { startFile } from '../start.ts';

const file = startFile('ask');
const recipe = '400 g lard, 100 g castor oil, 66 g NaOH, 150 g water';

const ask = (words: readonly string[], input: string | Uint8Array = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...words], { input, encoding: 'utf8' });
  return { status, stdout, stderr };
};

describe('one question', () => {
  test('text: the verdict, the alkali by its whole name, the caution', () => {
    const { status, stdout, stderr } = ask([recipe]);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).toContain('sodium hydroxide (NaOH)');
    // No colour where nobody sees it.
    expect(stdout).not.toContain('\x1b');
  });

  test('--json: one object after the schema; its text is the text; each caution stands in it word for word', () => {
    const { status, stdout, stderr } = ask(['--json', recipe]);
    expect([status, stderr]).toEqual([0, '']);
    const answer = isAnswer(JSON.parse(stdout));
    expect(answer.command).toBe('check');
    expect(`${answer.text}\n`).toBe(ask([recipe]).stdout);
    expect(answer.caution.length).toBeGreaterThan(0);
    for (const caution of answer.caution) expect(answer.text).toContain(caution);
  });

  test('words or standard input: the same answer', () => {
    const answer = ask(['--json', recipe]).stdout;
    expect(ask(['--json', ...recipe.split(' ')]).stdout).toBe(answer);
    expect(ask(['--json', '-'], `${recipe}\n`).stdout).toBe(answer);
    expect(ask(['-', '--json'], `\ufeff${recipe.replaceAll(', ', '\r\n')}`).status).toBe(0);
  });

  test.each([
    ['unclear', 'olive 700, coconut 300, lye 140, water 300'],
    ['too-long', `${recipe}\n`.repeat(40_000)],
  ])('%s: a fault, status 2', (code, text) => {
    const { status, stdout, stderr } = ask(['--json', '-'], text);
    expect([status, stderr]).toEqual([2, '']);
    const fault = isFault(JSON.parse(stdout));
    expect(fault.code).toBe(code);
    expect(ask(['-'], text).stdout).toContain(fault.message);
  });

  test('bytes that are no text are no bug', () => {
    const { status, stderr } = ask(
      ['--json', '-'],
      Uint8Array.from([0xff, 0xfe, 0, 0x80, 0xc3, 0x28, 0xed, 0xa0, 0x80]),
    );
    expect(stderr).toBe('');
    expect(status).toBe(2);
  });

  test('a wrong option: 64, and nothing on standard output', () => {
    const { status, stdout, stderr } = ask(['--jsno', recipe]);
    expect([status, stdout]).toEqual([64, '']);
    expect(stderr).toContain('no option --jsno');
  });
});

describe('--turns', () => {
  test('each turn is answered before the next is written', async () => {
    const child = spawn(process.execPath, [file, '--turns', '-'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    const turn = async (text: string): Promise<unknown> => {
      child.stdin.write(`${text}\n`);
      return JSON.parse((await lines.next()).value ?? '');
    };
    isAnswer(await turn(recipe.replaceAll(', ', '\\n')));
    expect(isFault(await turn('olive 700, coconut 300, lye 140, water 300')).code).toBe('unclear');
    isAnswer(await turn('help'));
    child.stdin.end();
    const status = await new Promise((resolve) => child.on('close', resolve));
    expect(status).toBe(0);
  });

  test('from a file, whose last line need not end', () => {
    const turns = join(mkdtempSync(join(tmpdir(), 'lyeward-')), 'turns.txt');
    writeFileSync(turns, `${recipe}\r\n\nhelp`);
    const { status, stdout } = ask(['--turns', turns]);
    expect(status).toBe(0);
    const printed = stdout
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { ok: boolean });
    expect(printed.map(({ ok }) => ok)).toEqual([true, false, true]);
  });

  test('a file that is not there: 66', () => {
    const { status, stdout, stderr } = ask(['--turns', 'no-such-file.txt']);
    expect([status, stdout]).toEqual([66, '']);
    expect(stderr).toContain('no-such-file.txt');
  });

  test('a reader that leaves early is no error', () => {
    const turns = join(mkdtempSync(join(tmpdir(), 'lyeward-')), 'turns.txt');
    writeFileSync(turns, 'help\n'.repeat(2000));
    const shell = `"${process.execPath}" "${file}" --turns "${turns}" | head -n 1`;
    const { stdout, stderr } = spawnSync('sh', ['-c', shell], { encoding: 'utf8' });
    isAnswer(JSON.parse(stdout));
    expect(stderr).toBe('');
  });
});
