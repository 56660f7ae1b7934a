/** Jobs that keep their order within a lane; so many lanes at a time, the others in turn. */
import { setTimeout as pause } from 'node:timers/promises';

export interface Lanes {
  readonly add: (lane: string, job: () => Promise<void>) => void;
  /** Begins nothing more; resolves when what was begun is done, or its time is over (ms). */
  readonly close: (patience: number) => Promise<void>;
}

/** `failed` hears what a job throws; the next of its lane is done all the same. */
export function createLanes(most: number, failed: (error: unknown) => void): Lanes {
  const waiting = new Map<string, (() => Promise<void>)[]>();
  /** Lanes with something to do, in their turn. */
  const ready: string[] = [];
  const running = new Set<Promise<void>>();
  let isOver = false;

  const run = (): void => {
    while (!isOver && running.size < most) {
      const lane = ready.shift();
      if (lane === undefined) return;
      const jobs = waiting.get(lane) ?? [];
      const job = jobs.shift();
      const done = (job?.() ?? Promise.resolve()).catch(failed).then(() => {
        running.delete(done);
        if (jobs.length > 0) ready.push(lane);
        else waiting.delete(lane);
        run();
      });
      running.add(done);
    }
  };
  return {
    add: (lane, job) => {
      const jobs = waiting.get(lane);
      if (jobs) jobs.push(job);
      else {
        waiting.set(lane, [job]);
        ready.push(lane);
        run();
      }
    },
    close: async (patience) => {
      isOver = true;
      await Promise.race([Promise.allSettled(running), pause(patience, undefined, { ref: false })]);
    },
  };
}
