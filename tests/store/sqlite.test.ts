import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { openStore } from '../../src/index.ts';
import { storeContract } from './contract.ts';
import { killRounds } from './kill/rounds.ts';
import { likeModel } from './like-model.ts';
import { createModel } from './model.ts';

storeContract('model', async (now) => ({ store: createModel(now), end: async () => {} }));

storeContract('SQLite', async (now) => {
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
  const store = await openStore({ folder, who: 'a test', now });
  return {
    store,
    end: async () => {
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
});

const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let now = Date.now;
const open = () => openStore({ folder, who: 'a test', now: () => now() });
likeModel(
  'SQLite',
  (clock) => {
    now = clock;
    return open();
  },
  async (store) => {
    await store.close();
    return open();
  },
);

it('loses nothing that it said is kept when it is killed: SQLite', async () => {
  const killed = await killRounds(mkdtempSync(join(folder, 'killed-')), null, 4);
  expect([killed.lost, killed.neverSeen]).toEqual([[], []]);
  expect(killed.kept).toBeGreaterThan(0);
}, 120_000);
