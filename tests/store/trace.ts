// `npm run trace:store`: traces (with strace) what a writing process asks of the system until it is killed. A power cut
// may take every write that was not synced; so each line `kept` must come behind a sync of the log it was written to.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
const trace = join(folder, 'trace');
const calls = 'trace=pwrite64,fsync,fdatasync,write';
const writer = [process.execPath, join(import.meta.dirname, 'kill/writer.ts'), join(folder, 'data'), '0'];
const { error } = spawnSync('timeout', ['-s', 'KILL', '15', 'strace', '-f', '-y', '-e', calls, '-o', trace, ...writer]);
if (error) throw error;

let isSynced = true;
const counts = { kept: 0, syncs: 0, unsynced: 0 };
for (const line of readFileSync(trace, 'latin1').split('\n')) {
  if (/pwrite64\(\d+<[^>]*lyeward\.db-wal>/.test(line)) isSynced = false;
  else if (/f(?:data)?sync\(\d+<[^>]*lyeward\.db-wal>/.test(line)) {
    isSynced = true;
    counts.syncs += 1;
  } else if (/write\(1<.*"kept /.test(line)) {
    counts.kept += 1;
    if (!isSynced) counts.unsynced += 1;
  }
}
rmSync(folder, { recursive: true });
const ok = counts.kept > 0 && counts.unsynced === 0;
console.log(JSON.stringify({ ok, ...counts }));
if (!ok) process.exitCode = 1;
