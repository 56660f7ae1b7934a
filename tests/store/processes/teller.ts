// Tells what is due, one process among several: `node teller.ts`, the database in the environment. Says `told ID` for
// each reminder, and ends when none is left.
import { writeSync } from 'node:fs';
import { openStore } from '../../../src/index.ts';

const store = await openStore({ folder: '', who: 'a teller' });
while ((await store.bells.next(['many'])) !== null) {
  const now = Date.now();
  const due = await store.bells.claim({ platforms: ['many'], now, leaseUntil: now + 60_000, limit: 50 });
  writeSync(1, due.map(({ id }) => `told ${id}\n`).join(''));
  await Promise.all(due.map((one) => store.bells.told(one)));
}
await store.close();
