import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const scratch = mkdtempSync(join(tmpdir(), 'lyeward-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const recipe = '400 g lard, 100 g castor oil, 66 g NaOH, 150 g water';
const start = (cwd: string, args: readonly string[], input = '') =>
  spawnSync(process.execPath, args, { cwd, input, encoding: 'utf8' });

test('the code that V8 compiled at build time is taken as it is, and no more of it than a question needs', () => {
  const told = `
    const scripts = require('./deploy/ask.cjs');
    process.on('exit', () => {
      for (const [file, { cachedDataRejected }] of scripts)
        console.error(require('node:path').basename(file).replace(/-.*/, ''), cachedDataRejected);
    });`;
  const ask = (text: string) => start(root, ['-e', told, 'ask', text]);
  const list = ask(recipe);
  expect(list.stderr).toBe('ask.code false\n');
  expect(list.stdout).toContain('sodium hydroxide (NaOH)');
  const worded = ask(`My aunt says this will do: ${recipe}`);
  expect(worded.stderr).toBe('ask.code false\nworded false\n');
  expect(worded.stdout).toContain('sodium hydroxide (NaOH)');
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

/** As a pull does it: the new file is moved to the place of the old one. */
function bring(path: string, change: (source: string) => string): void {
  const file = join(scratch, path);
  writeFileSync(`${file}.pulled`, change(readFileSync(file, 'utf8')));
  renameSync(`${file}.pulled`, file);
}

test('what was built of other sources is built anew; where that fails, the version before answers', () => {
  const ask = () => start(scratch, ['deploy/ask.cjs', '--help']);
  expect(ask()).toMatchObject({ status: 0, stderr: '' });
  bring('adapters/console/arguments.ts', (source) => source.replace('Usage', 'Brought'));
  expect(ask().stdout).toContain('Brought');
  expect(start(scratch, ['deploy/run.mjs'], recipe).stdout).toContain('sodium hydroxide (NaOH)');

  bring('adapters/console/arguments.ts', (source) => `${source}\n}`);
  const old = ask();
  expect(old).toMatchObject({ status: 0 });
  expect(old.stdout).toContain('Brought');
  expect(old.stderr).toContain('npm ci');
});
