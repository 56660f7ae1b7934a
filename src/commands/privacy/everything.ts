/** All that is kept of one person, as data. */
import type { Account, Data, Document, Kind, Own } from '../../store/port.ts';
import type { Memory } from '../define.ts';

export interface Everything {
  readonly form: 'lyeward-export';
  readonly version: 1;
  readonly accounts: readonly Account[];
  readonly settings: Data;
  readonly recipes: readonly Data[];
  readonly batches: readonly Data[];
  readonly reminders: readonly Data[];
  /** Of the last minutes, where a platform's conversation outlives a restart. */
  readonly conversations: readonly Data[];
}

async function* documentsOf(own: Own, kind: Kind): AsyncGenerator<Document> {
  for (let after: string | undefined; ; ) {
    const page = await own.list(kind, { ...(after === undefined ? {} : { after }), limit: 500 });
    yield* page;
    after = page.at(-1)?.key;
    if (page.length < 500) return;
  }
}

const iso = (at: number): string => new Date(at).toISOString();

export async function everythingOf({ own }: Memory): Promise<Everything> {
  const of = (kind: Kind) =>
    Array.fromAsync(documentsOf(own, kind), ({ key, data, savedAt }) => ({ key, savedAt: iso(savedAt), ...data }));
  const reminders = await own.reminders();
  return {
    form: 'lyeward-export',
    version: 1,
    accounts: await own.accounts(),
    settings: (await own.get('settings', 'own'))?.data ?? {},
    recipes: await of('recipe'),
    batches: await of('batch'),
    reminders: reminders.map(({ dueAt, setAt, ...one }) => ({ ...one, dueAt: iso(dueAt), setAt: iso(setAt) })),
    conversations: await of('context'),
  };
}

/** "12 recipes", "your settings"; nothing of what there is none. */
export function countedOf({ settings, recipes, batches, reminders, conversations }: Everything): readonly string[] {
  const count = (things: readonly unknown[], name: string, plural = `${name}s`): readonly string[] =>
    things.length === 0 ? [] : [`${things.length} ${things.length === 1 ? name : plural}`];
  // where a batch is open is no batch
  const made = batches.filter(({ key }) => !String(key).startsWith('open'));
  return [
    ...count(recipes, 'recipe'),
    ...(Object.keys(settings).length > 0 ? ['your settings'] : []),
    ...count(made, 'batch', 'batches'),
    ...count(reminders, 'reminder'),
    ...(conversations.length > 0 ? ['the last minutes of our conversation'] : []),
  ];
}
