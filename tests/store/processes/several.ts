/** Several processes tell the same reminders: how often each was told, and how long it took. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { openStore } from '../../../src/index.ts';

export interface Told {
  readonly reminders: number;
  /** By each process. */
  readonly shares: readonly number[];
  readonly twice: number;
  readonly lost: number;
  readonly seconds: number;
}

export async function tellBySeveral(database: string, processes: number, reminders: number): Promise<Told> {
  const store = await openStore({ folder: '', who: 'the test', database });
  const people = 20;
  for (let person = 0; person < people; person += 1) {
    const common = { platform: 'many', place: 'x', person: String(person), address: '', about: {}, batch: null };
    const changes = Array.from({ length: reminders / people }, (_, i) => ({
      do: 'remind' as const,
      reminder: { ...common, id: `${person}-${i}`, dueAt: 1_700_000_000_000 + (i % 100) },
    }));
    await store.of({ platform: 'many', person: String(person) }).commit(changes);
  }
  const since = performance.now();
  const told = await Promise.all(Array.from({ length: processes }, () => teller(database)));
  const seconds = (performance.now() - since) / 1000;
  const left = await store.bells.next(['many']);
  await store.close();
  const all = told.flat();
  const different = new Set(all).size;
  return {
    reminders,
    shares: told.map((some) => some.length),
    twice: all.length - different,
    lost: reminders - different + (left === null ? 0 : 1),
    seconds,
  };
}

const teller = (database: string): Promise<readonly string[]> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(import.meta.dirname, 'teller.ts')], {
      env: { ...process.env, LYEWARD_DATABASE_URL: database },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const bound = setTimeout(() => child.kill('SIGKILL'), 600_000);
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    child.on('close', (code) => {
      clearTimeout(bound);
      if (code === 0) resolve(said.split('\n').flatMap((line) => (line.startsWith('told ') ? [line.slice(5)] : [])));
      else reject(new Error(`a teller ended with ${code}`));
    });
  });
