// `npm run kill:store [-- ROUNDS]`: kills a writing process at random moments, on each backend; a JSON line for each.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { killRounds, type Outcome } from './kill/rounds.ts';
import { startServer } from './server.ts';

const rounds = Number(process.argv[2] ?? 200);

const tell = (backend: string, { lost, neverSeen, ...counts }: Outcome): void => {
  const ok = lost.length === 0 && neverSeen.length === 0;
  if (!ok) process.exitCode = 1;
  console.log(JSON.stringify({ backend, ok, ...counts, lost: lost.length, neverSeen: neverSeen.length }));
  for (const one of [...lost, ...neverSeen].slice(0, 20)) console.log(one);
};

const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
tell('SQLite', await killRounds(folder, null, rounds));
rmSync(folder, { recursive: true });

const server = await startServer();
try {
  tell('PostgreSQL', await killRounds('', await server.database('kill'), rounds));
} finally {
  await server.end();
}
