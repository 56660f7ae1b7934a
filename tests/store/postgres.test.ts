import { afterAll, beforeAll } from 'vitest';
import { openStore } from '../../src/index.ts';
import { storeContract } from './contract.ts';
import { type Server, startServer } from './server.ts';

let server: Server;
beforeAll(async () => {
  server = await startServer();
}, 60_000);
afterAll(() => server.stop());

storeContract('PostgreSQL', async (now) => {
  const store = await openStore({ folder: '', who: '', database: await server.database('contract'), now });
  return { store, end: store.close };
});
