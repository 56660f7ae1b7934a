import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const scratch = mkdtempSync(join(tmpdir(), 'lyeward-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const recipe = '400 g lard, 100 g castor oil, 66 g NaOH, 150 g water';
const start = (cwd: string, args: readonly string[], input = '') =>
  spawnSync(process.execPath, args, { cwd, input, encoding: 'utf8' });

test('the code that V8 compiled at build time is taken as it is', () => {
  const told = `console.error(require('./deploy/ask.cjs').cachedDataRejected)`;
  const { stderr, stdout } = start(root, ['-e', told, 'ask', recipe]);
  expect(stderr).toBe('false\n');
  expect(stdout).toContain('sodium hydroxide (NaOH)');
});

test('what is not built yet is built at the first start, and answers the same', () => {
  for (const part of ['src', 'adapters', 'data', 'deploy', 'package.json']) {
    cpSync(join(root, part), join(scratch, part), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(scratch, 'node_modules'));
  const built = start(root, ['deploy/ask.cjs', recipe]).stdout;
  expect(built).toContain('sodium hydroxide (NaOH)');
  expect(start(scratch, ['deploy/ask.cjs', recipe])).toMatchObject({ status: 0, stdout: built, stderr: '' });

  rmSync(join(scratch, 'dist'), { recursive: true });
  expect(start(scratch, ['deploy/run.mjs'], recipe)).toMatchObject({ status: 0, stdout: `${built}\n`, stderr: '' });
});
