/** What becomes of a room's data when its community takes the assistant in, or removes it. */
import type { Own, Store } from '../store/port.ts';

export interface Where {
  readonly platform: string;
  readonly place: string;
}

/** Days for which a room's data waits for the assistant to be taken in again; `privacy` and deploy/privacy-notice.md say them. */
const graceDays = 30;
const grace = graceDays * 24 * 60 * 60_000;

export interface Rooms {
  /** Notes the community of a place, so that the place is found by it. */
  readonly note: (where: Where, community: string) => Promise<void>;
  readonly left: (where: Where, now: number) => Promise<void>;
  readonly joined: (where: Where) => Promise<void>;
  /** The communities that the assistant is in; every other one has removed it. */
  readonly present: (platform: string, communities: readonly string[], now: number) => Promise<void>;
}

/** The names of a list: documents of kind `settings` with this before their key. */
async function* namesIn(own: Own, prefix: string): AsyncGenerator<string> {
  for (let after: string | undefined; ; ) {
    const page = await own.list('settings', { prefix, ...(after === undefined ? {} : { after }), limit: 500 });
    for (const { key } of page) yield key.slice(prefix.length);
    after = page.at(-1)?.key;
    if (page.length < 500) return;
  }
}

const place = 'place ';
const community = 'community ';

export function makeRooms(store: () => Promise<Store>): Rooms {
  const noted = new Set<string>();
  /** The communities of a platform that were ever noted: kept as a room that no platform has. */
  const allOf = async (platform: string): Promise<Own> => (await store()).room({ platform, place: ' communities' });
  const put = async (own: Own, key: string, data: Readonly<Record<string, unknown>>): Promise<void> => {
    await own.commit([{ do: 'put', kind: 'settings', key, data, expects: null }]);
  };
  const eraseAt = async (where: Where, at: number | null): Promise<void> => (await store()).room(where).eraseAt(at);

  return {
    note: async (where, of) => {
      const known = JSON.stringify([where, of]);
      if (noted.has(known)) return;
      const list = (await store()).room({ platform: where.platform, place: of });
      if (!(await list.get('settings', place + where.place))) {
        await put(list, place + where.place, {});
        await put(await allOf(where.platform), community + of, {});
      }
      noted.add(known);
    },
    left: (where, now) => eraseAt(where, now + grace),
    joined: (where) => eraseAt(where, null),
    present: async (platform, communities, now) => {
      const all = await allOf(platform);
      const here = new Set(communities);
      for await (const of of namesIn(all, community)) {
        const wasAway = (await all.get('settings', community + of))?.data['away'] === true;
        if (here.has(of) !== wasAway) continue;
        const list = (await store()).room({ platform, place: of });
        const at = wasAway ? null : now + grace;
        for await (const one of namesIn(list, place)) await eraseAt({ platform, place: one }, at);
        await put(all, community + of, wasAway ? {} : { away: true });
      }
    },
  };
}
