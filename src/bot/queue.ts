/** One request after the other for each person in each place: what two messages leave behind must not mix. */
import type { Asked } from './types.ts';

export function makeQueues(): <T>(
  who: Pick<Asked, 'platform' | 'place' | 'person'>,
  work: () => Promise<T>,
) => Promise<T> {
  const open = new Map<string, Promise<unknown>>();
  return async ({ platform, place, person }, work) => {
    const key = JSON.stringify([platform, place, person]);
    const before = open.get(key);
    const done = before ? before.then(work, work) : work();
    open.set(key, done);
    try {
      return await done;
    } finally {
      if (open.get(key) === done) open.delete(key);
    }
  };
}
