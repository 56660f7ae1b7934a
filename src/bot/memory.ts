/** What a command that keeps something is handed, and what is said where nothing can be kept. */
import type { Fault } from '../answer/types.ts';
import type { Memory } from '../commands/define.ts';
import { type Store, StoreTrouble } from '../store/port.ts';
import type { Asked } from './types.ts';

export function makeMemories(
  open: (() => Promise<Store>) | null,
): (asked: Asked, now: number) => Promise<Memory | null> {
  if (!open) return async () => null;
  let opened: Promise<Store> | null = null;
  const store = (): Promise<Store> => {
    // A store that could not be opened may be there at the next request.
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
  return async (asked, now) => {
    const { platform, place, person } = asked;
    const kept = await store();
    const who = { platform, person };
    return {
      own: kept.of(who),
      room: kept.room({ platform, place }),
      who,
      place,
      address: asked.address ?? place,
      isHost: asked.isHost ?? false,
      isPrivate: asked.isPrivate ?? false,
      later: asked.later ?? { can: 'here' },
      now,
      newId: () => crypto.randomUUID(),
      link: (code) => kept.link(who, code, now),
      unlink: () => kept.unlink(who),
    };
  };
}

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
