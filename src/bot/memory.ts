/** What a command that keeps something is handed, and what is said where nothing can be kept. */
import type { Fault } from '../answer/types.ts';
import type { Memory, Quota } from '../commands/define.ts';
import { type Own, type Store, StoreTrouble } from '../store/port.ts';
import { type Defaults, noDefaults } from './personal.ts';
import { makeRooms, type Rooms } from './rooms.ts';
import type { Asked } from './types.ts';

export interface Keeper {
  /** Null where nothing can be kept. */
  readonly memory: (asked: Asked, now: number) => Promise<Memory | null>;
  /** What is set for the person and for the room; nothing where nothing was ever kept. */
  readonly defaults: (asked: Pick<Asked, 'platform' | 'place' | 'room' | 'person'>) => Promise<Defaults>;
  /** What belongs to who asks, to look at; null where nothing was ever kept. */
  readonly look: (asked: Asked) => Promise<Own | null>;
  readonly rooms: Rooms | null;
  /** The store itself, opened. */
  readonly store: () => Promise<Store>;
  readonly close: () => Promise<void>;
}

/** Far more than a maker needs, and little enough that a room full of people fits on one machine. */
export const usualQuota: Quota = { recipes: 500, shared: 200, batches: 1000, reminders: 200 };

/** `peek` opens the store for looking only; null where nothing was ever kept. */
export function makeKeeper(
  open: (() => Promise<Store>) | null,
  peek: (() => Promise<Store | null>) | null,
  quota: Quota | null,
): Keeper {
  if (!open) return none;
  let opened: Promise<Store> | null = null;
  let peeked: Store | null = null;
  const store = (): Promise<Store> => {
    // A store that could not be opened may be there at the next request.
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
  const look = async (glance: () => Promise<Store | null>): Promise<Store | null> => {
    peeked ??= await glance();
    return opened ?? peeked;
  };
  const seen = (): Promise<Store | null> => opened ?? (peek ? look(peek) : store());
  const close = async (): Promise<void> => {
    const all = [opened, peeked];
    [opened, peeked] = [null, null];
    for (const one of all) await (await one)?.close();
  };
  const rooms = makeRooms(store);
  return {
    rooms,
    memory: async (asked, now) => {
      const { platform, place, room = place, person, community } = asked;
      const kept = await store();
      if (community !== undefined) await rooms.note({ platform, place: room }, community);
      const who = { platform, person };
      return {
        own: kept.of(who),
        room: kept.room({ platform, place: room }),
        who,
        place,
        address: asked.address ?? place,
        isHost: asked.isHost ?? false,
        isPrivate: asked.isPrivate ?? false,
        later: asked.later ?? { can: 'here' },
        now,
        newId: () => crypto.randomUUID(),
        quota,
        link: (code) => kept.link(who, code, now),
        unlink: () => kept.unlink(who),
      };
    },
    defaults: async ({ platform, place, room: of = place, person }) => {
      const kept = await seen();
      if (!kept) return noDefaults;
      // only the command `settings` writes documents of this kind
      const { own, room } = await kept.both({ platform, person, place: of }, 'settings', 'own');
      return own || room ? { own: own ?? {}, room: room ?? {} } : noDefaults;
    },
    look: async ({ platform, person }) => (await seen())?.of({ platform, person }) ?? null,
    store,
    close,
  };
}

const none: Keeper = {
  rooms: null,
  memory: async () => null,
  defaults: async () => noDefaults,
  look: async () => null,
  store: () => Promise.reject(new Error('no store')),
  close: async () => {},
};

export const keepsNothing: Fault = {
  code: 'refused',
  message: 'This chat keeps nothing, so I can’t do that here.',
  hint: 'Everything that I can reckon works all the same: say "help".',
  candidates: ['help'],
  caution: [],
};

/** Trouble of the store in a person's words; null for any other error. */
export const notKept = (error: unknown): Fault | null =>
  error instanceof StoreTrouble
    ? { code: 'refused', message: `Nothing was kept: ${error.message}`, hint: error.hint, candidates: [], caution: [] }
    : null;
