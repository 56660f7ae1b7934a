/**
 * Kills a process that writes, with SIGKILL at random moments, and looks after each time: all that it was told is kept
 * must be there, whole. Reminders arrive at a recipient that drops what it has seen before, as the platforms do, and
 * in the end must have come there once each.
 */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { openStore } from '../../../src/index.ts';

const parts = ['a', 'b', 'c'];

export interface Outcome {
  readonly rounds: number;
  readonly kept: number;
  /** What was acknowledged and is not there, or there by half. */
  readonly lost: readonly string[];
  readonly reminders: number;
  /** Sent again after a kill, and dropped by the recipient. */
  readonly repeated: number;
  readonly neverSeen: readonly string[];
}

export async function killRounds(folder: string, database: string | null, rounds: number): Promise<Outcome> {
  const seen = new Map<string, number>();
  const expected = new Set<string>();
  const lost: string[] = [];
  let kept = 0;

  const write = (round: string, killAfter: number | null): Promise<number> =>
    new Promise((resolve, reject) => {
      const child = spawn(process.execPath, [join(import.meta.dirname, 'writer.ts'), folder, round], {
        env: { ...process.env, ...(database === null ? {} : { LYEWARD_DATABASE_URL: database }) },
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      let last = -1;
      let rest = '';
      let complaints = '';
      const bound = setTimeout(() => child.kill('SIGKILL'), 120_000);
      // The first is killed when something has been kept; of the others one in five while it starts.
      const isFirst = round === '0';
      const isEarly = killAfter !== null && !isFirst && Math.random() < 0.2;
      const killSoon = () => killAfter !== null && setTimeout(() => child.kill('SIGKILL'), killAfter);
      if (isEarly) killSoon();
      child.stderr.setEncoding('utf8').on('data', (text: string) => {
        complaints += text;
      });
      child.stdout.setEncoding('utf8').on('data', (text: string) => {
        const lines = (rest + text).split('\n');
        // A line that the kill cut off was not said.
        rest = lines.pop() ?? '';
        for (const line of lines) {
          const [word, what = ''] = line.split(' ');
          if (word === 'opened' && !isEarly && !isFirst) killSoon();
          if (word === 'kept' && isFirst && last < 0) killSoon();
          if (word === 'kept') last = Number(what);
          if (word === 'ring') seen.set(what, (seen.get(what) ?? 0) + 1);
        }
      });
      child.on('close', (code, signal) => {
        clearTimeout(bound);
        const asMeant = killAfter === null ? code === 0 : signal === 'SIGKILL';
        if (asMeant) resolve(last);
        else reject(new Error(`the writer ended with ${code ?? signal}: ${complaints}`));
      });
    });

  const look = async (round: number, last: number): Promise<void> => {
    const store = await openStore({ folder, who: 'the test', database });
    const own = store.of({ platform: 'kill', person: `round ${round}` });
    const found = new Map<string, unknown>();
    for (let after = ''; ; ) {
      const page = await own.list('recipe', { after, limit: 300 });
      for (const { key, data } of page) found.set(key, data['id']);
      const end = page.at(-1);
      if (!end) break;
      after = end.key;
    }
    const waiting = new Set((await own.reminders()).map(({ id }) => id));
    // One more may have been kept without anybody having been told.
    const numbers = Math.max(last + 1, Math.ceil(found.size / parts.length));
    for (let number = 0; number < numbers; number += 1) {
      const id = `${round}-${number}`;
      expected.add(id);
      const whole = parts.every((part) => found.get(`${String(number).padStart(6, '0')} ${part}`) === id);
      const told = (await own.get('context', id)) !== null;
      if (!whole || (waiting.has(id) ? told : !told || !seen.has(id))) lost.push(id);
    }
    if (found.size !== numbers * parts.length) lost.push(`${round}: ${found.size} documents`);
    kept += last + 1;
    await store.close();
  };

  for (let round = 0; round < rounds; round += 1) {
    const last = await write(String(round), Math.random() * 600);
    await look(round, last);
  }
  await write('last', null);
  return {
    rounds,
    kept,
    lost,
    reminders: expected.size,
    repeated: [...seen.values()].filter((times) => times > 1).length,
    neverSeen: [...expected].filter((id) => !seen.has(id)),
  };
}
