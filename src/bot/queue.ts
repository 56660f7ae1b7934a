/** One request after the other for each person in each place: what two messages leave behind must not mix. */
import { keyOf, type Who } from './turns/store.ts';

export function makeQueues(): <T>(who: Who, work: () => Promise<T>) => Promise<T> {
  const open = new Map<string, Promise<unknown>>();
  return (who, work) => {
    const key = keyOf(who);
    const before = open.get(key);
    const done = before ? before.then(work, work) : work();
    open.set(key, done);
    const leave = (): void => {
      if (open.get(key) === done) open.delete(key);
    };
    done.then(leave, leave);
    return done;
  };
}
