import { afterAll, beforeAll, expect, it } from 'vitest';
import { openStore } from '../../src/index.ts';
import { storeContract } from './contract.ts';
import { killRounds } from './kill/rounds.ts';
import { likeModel } from './like-model.ts';
import { type Server, startServer } from './server.ts';

let server: Server;
beforeAll(async () => {
  server = await startServer(['-c', 'fsync=off']);
}, 60_000);
afterAll(() => server.stop());

storeContract('PostgreSQL', async (now) => {
  const store = await openStore({ folder: '', who: '', database: await server.database('contract'), now });
  return { store, end: store.close };
});

likeModel(
  'PostgreSQL',
  async (now) => openStore({ folder: '', who: '', database: await server.database('like_model'), now }),
  null,
);

it('loses nothing that it said is kept when it is killed: PostgreSQL', async () => {
  const killed = await killRounds('', await server.database('killed'), 4);
  expect([killed.lost, killed.neverSeen]).toEqual([[], []]);
  expect(killed.kept).toBeGreaterThan(0);
}, 120_000);
