/**
 * A conversation over a restart: the last turns, as they were said. Said again they lead to where it stood; what has an
 * effect is never among them. They are written some moments after the answer, which waits for nothing.
 */
import type { Own, Store } from '../store/port.ts';
import { type Line, keyOf as nameOf, restsFor } from './turns/store.ts';
import type { Asked } from './types.ts';

export interface Recall {
  /** The turns of this person in this place that were said before this process began. */
  readonly lines: (asked: Asked, now: number) => Promise<readonly Line[]>;
  readonly note: (asked: Asked, lines: readonly Line[]) => void;
  /** In every place of the person. */
  readonly drop: (asked: Asked) => void;
  /** Writes what is not written yet. */
  readonly flush: () => Promise<void>;
}

/** More turns than these, or longer ones, are not kept; the one that the others go on with is. */
const mostLines = 12;
const longest = 20_000;

/** Milliseconds between an answer and its writing. */
const patience = 1000;

/** The turns to keep after one more. */
export function recalled(before: readonly Line[], line: Line, isStart: boolean): readonly Line[] {
  if (line.text.length > longest) return [];
  if (isStart) return [line];
  const [first, ...rest] = before;
  const all = [...(first ? [first, ...rest.slice(2 - mostLines)] : []), line];
  return all.reduce((sum, { text }) => sum + text.length, 0) > longest ? [line] : all;
}

const keyOf = ({ platform, place }: Asked): string => `${platform} ${place}`.slice(0, 200);

export function makeRecall(store: () => Promise<Store>): Recall {
  /** What the store does not hold yet. */
  const waiting = new Map<string, { readonly asked: Asked; readonly lines: readonly Line[] }>();
  let timer: NodeJS.Timeout | null = null;
  const ownOf = async ({ platform, person }: Asked): Promise<Own> => (await store()).of({ platform, person });

  const write = async (asked: Asked, lines: readonly Line[]): Promise<void> => {
    const last = lines.at(-1);
    await (await ownOf(asked)).commit([
      last === undefined
        ? { do: 'remove', kind: 'context', key: keyOf(asked) }
        : {
            do: 'put',
            kind: 'context',
            key: keyOf(asked),
            data: { lines },
            expects: null,
            until: last.at + restsFor,
          },
    ]);
  };

  const flush = async (): Promise<void> => {
    if (timer) clearTimeout(timer);
    timer = null;
    // A conversation that cannot be kept is only shorter: no answer is lost by it.
    await Promise.allSettled(
      [...waiting].map(async ([key, noted]) => {
        await write(noted.asked, noted.lines).finally(() => waiting.get(key) === noted && waiting.delete(key));
      }),
    );
  };

  return {
    lines: async (asked, now) => {
      const noted = waiting.get(nameOf(asked));
      const document = noted ? null : await (await ownOf(asked)).get('context', keyOf(asked));
      const lines = noted?.lines ?? ((document?.data['lines'] ?? []) as readonly Line[]);
      return now - (lines.at(-1)?.at ?? 0) < restsFor ? lines : [];
    },
    note: (asked, lines) => {
      waiting.set(nameOf(asked), { asked, lines });
      timer ??= setTimeout(flush, patience).unref();
    },
    drop: ({ platform, person }) => {
      for (const [key, { asked }] of waiting)
        if (asked.platform === platform && asked.person === person) waiting.delete(key);
    },
    flush,
  };
}
