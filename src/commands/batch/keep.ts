/** Where batches are kept: one document a batch, holding what happened; one that says which are open, and where. */
import { type Batch, type BatchEvent, fold } from '../../engine/batch/batch.ts';
import type { Change, Data, Document, Own } from '../../store/port.ts';
import type { Memory } from '../define.ts';
import { changesOf } from './reminders.ts';

export interface Held {
  readonly batch: Batch;
  readonly events: readonly BatchEvent[];
  readonly key: string;
  readonly version: number;
  /** Where it was last spoken of. */
  readonly platform: string;
  readonly place: string;
}

/** Begins the key of the document that says what is open; a lot begins with a figure. */
const openKey = 'open';

interface Place {
  readonly key: string;
  readonly platform: string;
  readonly place: string;
}

/** Only this file writes these documents. */
const eventsIn = ({ data }: Document): readonly BatchEvent[] =>
  Array.isArray(data['events']) ? (data['events'] as unknown as readonly BatchEvent[]) : [];

/** Accounts that are linked may have had the same lot: one of them has a longer key since, and goes by that. */
export function batchIn(document: Document): Batch | null {
  const batch = fold(eventsIn(document));
  return batch && { ...batch, lot: document.key };
}

async function load(own: Own, { key, platform, place }: Place): Promise<Held | null> {
  const document = await own.get('batch', key);
  const batch = document && batchIn(document);
  return batch ? { batch, events: eventsIn(document), key, version: document.version, platform, place } : null;
}

interface Open {
  readonly places: readonly Place[];
  readonly version: number;
}

/** Of accounts that were linked there are two such documents: all are read, the first is written. */
async function openPlaces(own: Own): Promise<Open> {
  const documents = await own.list('batch', { prefix: openKey, limit: 10 });
  return {
    places: documents.flatMap(({ key, data }) => {
      const places = Array.isArray(data['places']) ? (data['places'] as Place[]) : [];
      // what was linked with a clash of keys got the same ending
      const ending = key.slice(openKey.length);
      return places.flatMap((one) => (ending === '' ? [one] : [{ ...one, key: one.key + ending }, one]));
    }),
    version: documents.find(({ key }) => key === openKey)?.version ?? 0,
  };
}

/** All that are not ended; the one last spoken of first. */
export async function openBatches(own: Own): Promise<readonly Held[]> {
  const { places: all } = await openPlaces(own);
  const places = all.filter(({ key }, i) => all.findIndex((one) => one.key === key) === i);
  const found = await Promise.all(places.map((place) => load(own, place)));
  return found
    .filter((one) => one !== null && one.batch.end === null)
    .sort((a, b) => (b?.batch.touchedAt ?? 0) - (a?.batch.touchedAt ?? 0)) as readonly Held[];
}

/** Those that were last spoken of in a place. */
export const openHere = async (
  own: Own,
  { platform, place }: Pick<Place, 'platform' | 'place'>,
): Promise<readonly Held[]> =>
  (await openBatches(own)).filter((held) => held.platform === platform && held.place === place);

export const isHere = (held: Held, { who, place }: Memory): boolean =>
  held.platform === who.platform && held.place === place;

/** A batch by its lot, or by the end of it: "3" for 2026-11-26-3. Ended ones too. */
export async function findLot(said: string, { own, who, place }: Memory): Promise<Held | null> {
  const wanted = said.trim();
  const here = { platform: who.platform, place };
  const exact = wanted === '' || wanted.startsWith(openKey) ? null : await load(own, { key: wanted, ...here });
  if (exact) return exact;
  const all = await lots(own);
  const found = all.filter((key) => key.endsWith(`-${wanted}`) || key.endsWith(wanted));
  const [key, ...more] = found;
  return key !== undefined && more.length === 0 && wanted !== '' ? load(own, { key, ...here }) : null;
}

export async function lots(own: Own): Promise<readonly string[]> {
  const keys: string[] = [];
  for (let after = ''; ; ) {
    const page = await own.list('batch', { ...(after === '' ? {} : { after }), limit: 500 });
    keys.push(...page.map(({ key }) => key).filter((key) => !key.startsWith(openKey)));
    const last = page.at(-1);
    if (!last || page.length < 500) return keys;
    after = last.key;
  }
}

const putBatch = (key: string, events: readonly BatchEvent[], expects: number): Change => ({
  do: 'put',
  kind: 'batch',
  key,
  data: { lot: key, events: events as unknown as Data },
  expects,
});

const putOpen = (places: readonly Place[], expects: number): Change => ({
  do: 'put',
  kind: 'batch',
  key: openKey,
  data: { places: places.map(({ key, platform, place }) => ({ key, platform, place })) },
  expects,
});

/** The lot number of a batch begun on this day: the day, and how many there were. */
export async function newLot(own: Own, day: string): Promise<string> {
  const before = await own.list('batch', { prefix: `${day}-`, limit: 1000 });
  const numbers = before.map(({ key }) => Number(key.slice(day.length + 1))).filter(Number.isInteger);
  return `${day}-${Math.max(0, ...numbers) + 1}`;
}

/** Writes what happened; null where somebody else changed the batch meanwhile. */
export async function append(held: Held | null, happened: readonly BatchEvent[], memory: Memory): Promise<Held | null> {
  const { own, who, place } = memory;
  const here = { platform: who.platform, place };
  const events = [...(held?.events ?? []), ...happened];
  const folded = fold(events);
  if (!folded) throw new Error('a batch without its start');
  const key = held?.key ?? folded.lot;
  const batch = { ...folded, lot: key };
  const isOver = batch.end !== null;
  const moved = !held || held.platform !== here.platform || held.place !== here.place;
  const open = moved || isOver || held.batch.end !== null ? await openPlaces(own) : null;
  const others = open?.places.filter((one) => one.key !== key) ?? [];
  const written = await own.commit([
    putBatch(key, events, held?.version ?? 0),
    ...(open ? [putOpen(isOver ? others : [...others, { key, ...here }], open.version)] : []),
    ...changesOf(held?.batch ?? null, batch, key, memory),
  ]);
  return written.ok ? { batch, events, key, version: (held?.version ?? 0) + 1, ...here } : null;
}
