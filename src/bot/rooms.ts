/** What becomes of a room's data when its community takes the assistant in, or removes it. */
import type { Own, Store } from '../store/port.ts';

/** A place, or all places of a community (a server of Discord, a space). */
export interface Where {
  readonly platform: string;
  readonly place?: string;
  readonly community?: string;
}

/** Days for which a room's data waits for the assistant to be taken in again; `privacy` and deploy/privacy-notice.md say them. */
const graceDays = 30;
const grace = graceDays * 24 * 60 * 60_000;

const placeKey = (place: string): string => `place ${place}`;

export interface Rooms {
  /** Notes which community a place belongs to, so that it can be found by it. */
  readonly note: (where: Where) => Promise<void>;
  readonly left: (where: Where, now: number) => Promise<void>;
  readonly joined: (where: Where) => Promise<void>;
}

export function makeRooms(store: () => Promise<Store>): Rooms {
  const noted = new Set<string>();

  /** The room's own, or those of every place that was noted for the community, and the list of them. */
  const owned = async ({ platform, place, community }: Where): Promise<readonly Own[]> => {
    const kept = await store();
    const own: Own[] = place === undefined ? [] : [kept.room({ platform, place })];
    if (community === undefined) return own;
    const list = kept.room({ platform, place: community });
    for (let after: string | undefined; ; ) {
      const prefix = placeKey('');
      const page = await list.list('settings', { prefix, ...(after === undefined ? {} : { after }), limit: 500 });
      own.push(...page.map(({ key }) => kept.room({ platform, place: key.slice(prefix.length) })));
      after = page.at(-1)?.key;
      if (page.length < 500) return [...own, list];
    }
  };
  const eraseAt = async (where: Where, at: number | null): Promise<void> => {
    for (const own of await owned(where)) await own.eraseAt(at);
  };

  return {
    note: async ({ platform, place, community }) => {
      if (place === undefined || community === undefined) return;
      const known = JSON.stringify([platform, community, place]);
      if (noted.has(known)) return;
      const list = (await store()).room({ platform, place: community });
      if (!(await list.get('settings', placeKey(place))))
        await list.commit([{ do: 'put', kind: 'settings', key: placeKey(place), data: {}, expects: null }]);
      noted.add(known);
    },
    left: (where, now) => eraseAt(where, now + grace),
    joined: (where) => eraseAt(where, null),
  };
}
