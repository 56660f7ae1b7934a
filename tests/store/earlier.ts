/** What an earlier form of the store held, as it must be found after the steps to the newest. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { Store } from '../../src/store/port.ts';

const file = (name: string): string => readFileSync(join(import.meta.dirname, 'forms', name), 'utf8');

/** The forms of which a schema is kept. */
export const earlierForms = [
  ...new Set(readdirSync(join(import.meta.dirname, 'forms')).map((name) => Number.parseInt(name, 10))),
].sort();

export const schemaOf = (form: number, database: 'sqlite' | 'postgres'): string => file(`${form}-${database}.sql`);
export const dataOf = (form: number): string => file(`${form}-data.sql`);

/** `store` runs at 2026-11-25 or later. */
export async function expectEarlierData(store: Store): Promise<void> {
  const own = store.of({ platform: 'matrix', person: '@ash:example.org' });
  expect(await own.accounts()).toEqual([
    { platform: 'discord', person: '4711' },
    { platform: 'matrix', person: '@ash:example.org' },
  ]);
  expect(await own.get('recipe', 'kitchen soap')).toEqual({
    kind: 'recipe',
    key: 'kitchen soap',
    data: { name: 'Kitchen soap 🧼', text: '500 g lard\u0000' },
    version: 3,
    savedAt: 1_795_600_000_000,
  });
  expect(await own.count('batch')).toBe(1);
  const bell = {
    id: 'bell',
    dueAt: 1_795_600_000_100,
    setAt: 1_795_600_000_003,
    platform: 'discord',
    place: 'kitchen',
    person: '4711',
    address: 'thread',
    about: { kind: 'timer' },
    batch: 'lot-7',
  };
  expect(await own.reminders()).toEqual([bell]);
  expect((await store.room({ platform: 'discord', place: 'kitchen' }).get('settings', 'own'))?.data).toEqual({
    unit: 'oz',
  });
  expect(await store.values('matrix').get('since')).toBe('s42');
  expect(await store.bells.next(['discord'])).toBe(1_795_600_000_200);
  const now = 1_795_600_000_300;
  const [claimed] = await store.bells.claim({ platforms: ['discord'], now, leaseUntil: now + 1, limit: 9 });
  expect(claimed?.attempt).toBe(2);
  const other = { platform: 'console', person: 'me' };
  expect(await store.link(other, 'ABCD-1234', now)).toEqual({ ok: true });
  await own.erase();
  await store.sweep(1_795_700_000_000);
  expect(await store.room({ platform: 'discord', place: 'kitchen' }).count('settings')).toBe(0);
  expect(await store.of(other).count('recipe')).toBe(0);
}
