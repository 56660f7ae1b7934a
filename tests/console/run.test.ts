// The program as `npm start` starts it, with no terminal.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { startFile } from '../start.ts';

const run = (words: readonly string[], input = '') => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [startFile('run'), ...words], {
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

const recipe = 'Shed soap\n\n400 g lard\n100 g castor oil\n66 g NaOH\n150 g water\n';

test('a piped recipe is one message, answered without colour, greeting or prompt', () => {
  const { status, stdout, stderr } = run([], recipe);
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain('sodium hydroxide (NaOH)');
  expect(stdout).not.toContain('\x1b');
  expect(stdout).not.toMatch(/lyeward:|^>/m);
  expect(run(['console'], recipe).stdout).toBe(stdout);
});

test('what follows quit is not asked', () => {
  const { status, stdout } = run([], 'help\nquit\nsafety\n');
  expect(status).toBe(0);
  expect(stdout).toBe(run([], 'help\n').stdout);
});

test.each([
  [['telegraph'], 'no adapter "telegraph"'],
  [['console', 'console'], 'one adapter at a time'],
  [['--lgo', 'x'], '--lgo'],
])('%j: told what is wrong, status 64', (words, says) => {
  const { status, stdout, stderr } = run(words);
  expect([status, stdout]).toEqual([64, '']);
  expect(stderr).toContain(says);
});

test('--help tells how', () => {
  const { status, stdout, stderr } = run(['--help']);
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain('--log FILE');
});

test('--log writes what happened, without what was said', () => {
  const log = join(mkdtempSync(join(tmpdir(), 'lyeward-')), 'log.jsonl');
  expect(run(['--log', log], recipe).status).toBe(0);
  const written = readFileSync(log, 'utf8');
  const lines = written
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as object);
  expect(lines.length).toBeGreaterThan(0);
  expect(written).not.toMatch(/lard|castor|Shed/);
});

test('a log that cannot be written: told in one line', () => {
  const { status, stderr } = run(['--log', join('no', 'such', 'folder.jsonl')], 'help\n');
  expect(status).toBe(1);
  expect(stderr).toMatch(/^lyeward: .*folder\.jsonl.*\n$/);
});
