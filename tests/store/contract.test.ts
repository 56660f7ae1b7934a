import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../src/index.ts';
import { storeContract } from './contract.ts';
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
