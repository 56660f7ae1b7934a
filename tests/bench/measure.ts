import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

/** A data folder that is not there: what this machine's own bots keep is no part of a figure. */
export const nothingKept = join(tmpdir(), `lyeward-bench-${process.pid}`);

export const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/**
 * Median time of one call, in µs, over 25 batches of about 8 ms. It is warmed up until the best batch has not got better
 * by more than 3 % for half a second, 5 s at the most: the compiler goes on making the code of long work faster for
 * seconds, and on a machine's second core it does so beside the measuring.
 */
export async function microseconds(work: () => unknown): Promise<number> {
  // What the work returns is kept, so that the compiler cannot leave the work out.
  let kept: unknown;
  const batch = async (calls: number): Promise<number> => {
    const since = performance.now();
    for (let call = 0; call < calls; call += 1) {
      const made = work();
      kept = made instanceof Promise ? await made : made;
    }
    return (1000 * (performance.now() - since)) / calls;
  };
  const begun = performance.now();
  let best = await batch(1);
  let steady = { since: begun, at: best };
  for (let now = begun; now < steady.since + 500 && now < begun + 5000; now = performance.now()) {
    best = Math.min(best, await batch(Math.max(1, Math.round(8000 / best))));
    if (best < 0.97 * steady.at) steady = { since: now, at: best };
  }
  const calls = Math.max(1, Math.round(8000 / best));
  const times: number[] = [];
  for (let round = 0; round < 25; round += 1) times.push(await batch(calls));
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

/**
 * Resident memory in MB, median of five starts, of a process on a terminal that was told `lines` and is then left
 * alone. The terminal is that of util-linux's `script`.
 */
export async function idleMegabytes(args: readonly string[], lines: readonly string[] = []): Promise<number> {
  const command = [process.execPath, ...args].map((word) => `'${word}'`).join(' ');
  const seen: number[] = [];
  for (let start = 0; start < 5; start += 1) {
    const terminal = spawn('script', ['-qec', `exec ${command}`, '/dev/null'], { stdio: ['pipe', 'ignore', 'ignore'] });
    for (const line of lines) {
      await pause(500);
      terminal.stdin.write(`${line}\n`);
    }
    await pause(1500);
    const pid = readFileSync(`/proc/${terminal.pid}/task/${terminal.pid}/children`, 'utf8').trim();
    seen.push(Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]) / 1024);
    terminal.kill('SIGKILL');
  }
  return median(seen);
}
