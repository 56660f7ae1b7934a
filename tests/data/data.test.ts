// What a host does with the data, as `npm start -- …` starts it.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { openStore } from '../../src/index.ts';
import { startFile } from '../start.ts';

const root = mkdtempSync(join(tmpdir(), 'lyeward-'));
afterAll(() => rmSync(root, { recursive: true }));
const folder = join(root, 'data');

const run = (...words: readonly string[]) => {
  const { LYEWARD_DATABASE_URL: _url, ...env } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [startFile('run'), ...words, '--data', folder], {
    encoding: 'utf8',
    env,
  });
  return { status, said: stdout.trim(), wrong: stderr.trim() };
};
const inStore = async (work: (own: ReturnType<Awaited<ReturnType<typeof openStore>>['of']>) => Promise<unknown>) => {
  const store = await openStore({ folder, who: 'a test', database: null });
  const done = await work(store.of({ platform: 'console', person: 'me' }));
  await store.close();
  return done;
};

it('backs up, checks, restores, and says what it did', { timeout: 60_000 }, async () => {
  expect(run('check-data')).toMatchObject({ status: 1, said: '', wrong: expect.stringContaining('there is no') });
  await inStore((own) => own.commit([{ do: 'put', kind: 'recipe', key: 'soap', data: {}, expects: null }]));
  const copy = join(root, 'copy');
  expect(run('backup', copy)).toMatchObject({ status: 0, wrong: '', said: expect.stringContaining(copy) });
  expect(run('backup', copy)).toMatchObject({ status: 1, wrong: expect.stringContaining('already') });
  expect(run('check-data').said).toMatch(/form \d+: whole\.\nKept for 1 account and 0 rooms: 1 recipe,/);
  await inStore((own) => own.erase());
  const restored = run('restore', copy);
  expect(restored).toMatchObject({ status: 0, wrong: '', said: expect.stringContaining('One account or room') });
  expect(existsSync(/What was there before is (.*);/.exec(restored.said)?.[1] ?? '')).toBe(true);
  expect(await inStore((own) => own.count('recipe'))).toBe(0);
});

it('says what it needs', { timeout: 60_000 }, () => {
  expect(run('backup')).toMatchObject({
    status: 64,
    wrong: expect.stringContaining('something is missing: backup FILE'),
  });
  expect(run('move-data')).toMatchObject({ status: 64, wrong: expect.stringContaining('LYEWARD_DATABASE_URL=') });
  const text = join(root, 'a text');
  writeFileSync(text, '500 g lard, 66 g NaOH, 150 g water\n'.repeat(100));
  expect(run('restore', text)).toMatchObject({ status: 1, wrong: expect.stringContaining('not written by lyeward') });
});
