/** Killed at random moments: nothing acknowledged is lost, and every reminder is told, each telling under one id. */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const rounds = 6;
const maker = join(import.meta.dirname, 'kill/maker.ts');

/** The process; killed so many milliseconds after its first reminder, or run to its end where none are given. */
async function run(folder: string, notes: string, round: number, life: number | null): Promise<void> {
  const words = [maker, folder, notes, `${round}`, ...(life === null ? ['last'] : [])];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'ignore', 'pipe'] });
  let trouble = '';
  child.stderr.on('data', (chunk: Buffer) => {
    trouble += chunk.toString();
  });
  const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
  const bound = setTimeout(() => child.kill('SIGKILL'), 60_000);
  if (life !== null) {
    // However slow the machine: not before it has begun to set reminders.
    const begun = () => read(notes).filter((line) => line.startsWith('set ')).length;
    const before = begun();
    while (begun() === before && child.exitCode === null && child.signalCode === null)
      await new Promise((resolve) => setTimeout(resolve, 5));
    await new Promise((resolve) => setTimeout(resolve, life));
    child.kill('SIGKILL');
    await ended;
  } else expect(await ended, trouble).toBe(0);
  clearTimeout(bound);
}

const read = (file: string): string[] => {
  try {
    return readFileSync(file, 'utf8').split('\n');
  } catch {
    return [];
  }
};

test(`killed ${rounds} times`, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
  const notes = join(folder, 'notes');
  const data = join(folder, 'data');
  for (let round = 0; round < rounds; round += 1) await run(data, notes, round, 100 + Math.random() * 1500);
  await run(data, notes, rounds, null);
  const lines = read(notes);
  const told = lines.flatMap((line) => /^told (\S+) Reminder: (r\S+)\.$/.exec(line)?.slice(1) ?? []);
  const byName = new Map<string, Set<string>>();
  for (let i = 0; i < told.length; i += 2) {
    const [id = '', name = ''] = told.slice(i, i + 2);
    byName.set(name, (byName.get(name) ?? new Set()).add(id));
  }
  const set = lines.flatMap((line) => /^set (\S+)$/.exec(line)?.[1] ?? []);
  expect(set.length).toBeGreaterThan(rounds);
  // told, and by a recipient that drops a second one of the same id, once
  expect(set.filter((name) => byName.get(name)?.size !== 1)).toEqual([]);
  const kept = lines.find((line) => line.startsWith('export ')) ?? '';
  const noted = lines.flatMap((line) => /^noted (\S+)$/.exec(line)?.[1] ?? []);
  expect(noted.length).toBeGreaterThan(rounds);
  expect(noted.filter((name) => !kept.includes(`"${name}"`))).toEqual([]);
  rmSync(folder, { recursive: true });
}, 180_000);
