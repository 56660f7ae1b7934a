import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

export const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** Median time of one call, in µs, over 25 batches of about 8 ms after a warm-up of 150 ms. */
export function microseconds(work: () => unknown): number {
  // What the work returns is kept, so that the compiler cannot leave the work out.
  let kept: unknown;
  const batch = (calls: number): number => {
    const since = performance.now();
    for (let call = 0; call < calls; call += 1) kept = work();
    return (1000 * (performance.now() - since)) / calls;
  };
  const warm = performance.now() + 150;
  let once = batch(1);
  while (performance.now() < warm) once = batch(5);
  const calls = Math.max(1, Math.round(8000 / once));
  const times = Array.from({ length: 25 }, () => batch(calls));
  if (kept === undefined) throw new Error('the measured work returned nothing');
  return median(times);
}

/** Median wall time in ms of each command line, run in turns (A B A B …) so that a busy machine slows all alike. */
export function processTimes(commands: readonly (readonly string[])[], rounds: number): readonly number[] {
  const times = commands.map((): number[] => []);
  // The first two rounds only fill the system's file cache.
  for (let round = -2; round < rounds; round += 1) {
    for (const [index, args] of commands.entries()) {
      const since = performance.now();
      const { status, stdout, stderr } = spawnSync(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] });
      const took = performance.now() - since;
      if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}\n${stdout}${stderr}`);
      if (round >= 0) times[index]?.push(took);
    }
  }
  return times.map(median);
}

/** Resident memory in MB of a process left idle with its standard input open: median of five starts. */
export async function idleMegabytes(args: readonly string[]): Promise<number> {
  const seen: number[] = [];
  for (let start = 0; start < 5; start += 1) {
    const child = spawn(process.execPath, args, { stdio: ['pipe', 'ignore', 'ignore'] });
    await pause(1000);
    if (child.exitCode !== null) throw new Error(`${args.join(' ')} did not stay open`);
    seen.push(residentKilobytes(child.pid ?? 0) / 1024);
    child.kill('SIGKILL');
  }
  return median(seen);
}

function residentKilobytes(pid: number): number {
  if (process.platform === 'linux') {
    return Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]);
  }
  return Number(spawnSync('ps', ['-o', 'rss=', '-p', `${pid}`], { encoding: 'utf8' }).stdout);
}
