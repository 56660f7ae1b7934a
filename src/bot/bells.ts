/**
 * The clock behind what is told later. One loop takes due reminders on lease, words each, hands it to the adapter, and
 * strikes it out together with what follows from it. It may be told twice, never not at all: a process that dies between
 * telling and striking out leaves it to the next one, so that each telling has an id by which a platform drops the second.
 *
 * It goes by the clock on the wall and looks at it at least every `longestWait`: one that is set forward rings early what
 * has become due, one that is set back rings nothing until its time comes again.
 */
import { setTimeout as pause } from 'node:timers/promises';
import type { Answer } from '../answer/types.ts';
import type { Claimed, Store } from '../store/port.ts';
import type { Teller } from './types.ts';

export interface BellsOptions {
  readonly store: () => Promise<Store>;
  /** Of this process: what another adapter tells is left alone. */
  readonly platforms: readonly string[];
  readonly tell: Teller;
  /** Null where it no longer holds. */
  readonly word: (claimed: Claimed, now: number) => Promise<Worded | null>;
  readonly now: () => number;
  readonly signal: AbortSignal;
  /** For the log: a failure, never what was to be told. */
  readonly failed: (event: 'bell-unworded' | 'bell-untold' | 'bells-stopped', error: unknown) => void;
  /** 1; less makes every wait as much shorter, for tests. */
  readonly pace?: number;
}

export interface Worded {
  readonly answer: Answer;
  readonly follows: Parameters<Store['bells']['told']>[1];
}

export interface Bells {
  /** Something was set: it may be due sooner than what is waited for. */
  readonly wake: () => void;
  /** Ends after the signal, when what is being told is told. */
  readonly done: Promise<void>;
}

/** Taken at a time: few enough that no lease ends while they are told. */
const atATime = 8;
/** Told at the same moment. */
const abreast = 4;
/** One that takes longer has failed, ms. */
const longestTelling = 12_000;
/** Longer than telling `atATime` takes; after a crash they wait for its end, ms. */
const lease = 30_000;
const longestWait = 15_000;
const shortestWait = 50;
/** After a failure: this, then twice as long each time, up to an hour; ms. */
const firstAgain = 5000;
const longestAgain = 3_600_000;
const sweepEvery = 3_600_000;

export function startBells(options: BellsOptions): Bells {
  const { signal, now, platforms, pace = 1, failed } = options;
  let wakeUp: () => void = () => {};
  let woken = false;
  const wake = (): void => {
    woken = true;
    wakeUp();
  };
  const sleep = async (ms: number): Promise<void> => {
    if (woken || signal.aborted) return;
    const awake = new AbortController();
    wakeUp = () => awake.abort();
    signal.addEventListener('abort', wakeUp, { once: true });
    await pause(ms * pace, undefined, { signal: awake.signal, ref: false }).catch(() => {});
    signal.removeEventListener('abort', wakeUp);
    wakeUp = () => {};
  };

  const ringOne = async (store: Store, claimed: Claimed): Promise<void> => {
    let worded: Worded | null;
    try {
      worded = await options.word(claimed, now());
    } catch (error) {
      failed('bell-unworded', error);
      await store.bells.again(claimed, now() + waitAfter(claimed.attempt));
      return;
    }
    if (worded) {
      const { platform, place, person, address, attempt, dueAt } = claimed;
      const ring = {
        platform,
        place,
        person,
        address,
        attempt,
        dueAt,
        id: await tellingId(claimed),
        answer: worded.answer,
      };
      try {
        await inTime(options.tell(ring), longestTelling);
      } catch (error) {
        failed('bell-untold', error);
        await store.bells.again(claimed, now() + waitAfter(attempt));
        return;
      }
    }
    try {
      await store.bells.told(claimed, worded?.follows ?? []);
    } catch (error) {
      // it comes again when its lease ends, and what was told already is dropped by its id
      failed('bell-untold', error);
    }
  };

  const loop = async (): Promise<void> => {
    let swept = Number.NEGATIVE_INFINITY;
    let trouble = 0;
    while (!signal.aborted) {
      woken = false;
      let wait = longestWait;
      try {
        const store = await options.store();
        if (Math.abs(now() - swept) > sweepEvery) {
          swept = now();
          await store.sweep(swept);
        }
        const at = now();
        const claimed = await store.bells.claim({
          platforms,
          now: at,
          leaseUntil: at + lease * Math.max(pace, 0.02),
          limit: atATime,
        });
        await inLanes(claimed, (one) => ringOne(store, one));
        trouble = 0;
        if (claimed.length === atATime) {
          // more may be due; others want to be answered, too
          wait = 0;
          await new Promise((resolve) => setImmediate(resolve));
        } else {
          const next = await store.bells.next(platforms);
          wait = next === null ? longestWait : Math.min(longestWait, Math.max(shortestWait, next - now()));
        }
      } catch (error) {
        failed('bells-stopped', error);
        trouble += 1;
        wait = Math.min(longestAgain / 60, firstAgain * 2 ** Math.min(trouble, 6));
      }
      if (wait > 0) await sleep(wait);
    }
  };
  return { wake, done: loop() };
}

async function inTime(work: Promise<void>, ms: number): Promise<void> {
  const late = new AbortController();
  const over = pause(ms, undefined, { signal: late.signal, ref: false }).then(() => {
    throw new Error('telling took too long');
  });
  over.catch(() => {});
  try {
    await Promise.race([work, over]);
  } finally {
    late.abort();
  }
}

const waitAfter = (attempt: number): number => Math.min(longestAgain, firstAgain * 2 ** Math.min(20, attempt - 1));

/** A telling is known by what and when: one that was put off is another. */
async function tellingId({ id, dueAt }: Claimed): Promise<string> {
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(`${id} ${dueAt}`));
  return Array.from(new Uint8Array(bytes), (byte) => (byte % 36).toString(36))
    .join('')
    .slice(0, 25);
}

async function inLanes<T>(all: readonly T[], work: (one: T) => Promise<void>): Promise<void> {
  const rest = all.values();
  const lane = async (): Promise<void> => {
    for (const one of rest) await work(one);
  };
  await Promise.all(Array.from({ length: abreast }, lane));
}
