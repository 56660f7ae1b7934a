/**
 * What each transaction of fake-indexeddb changed, told before its "complete" is heard. Relies on the insides of
 * fake-indexeddb 6.2.8, which is pinned for that.
 */
import * as fake from 'fake-indexeddb';
import { textOfKey } from './key-text.ts';

export interface RawRecord {
  readonly key: unknown;
  readonly value: unknown;
}

export interface RawStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly records: {
    readonly get: (key: unknown) => RawRecord | undefined;
    values: (range?: unknown) => Iterable<RawRecord>;
  };
  readonly rawIndexes: ReadonlyMap<
    string,
    {
      readonly name: string;
      readonly keyPath: string | string[];
      readonly unique: boolean;
      readonly multiEntry: boolean;
    }
  >;
}

export interface RawDatabase {
  readonly name: string;
  readonly version: number;
  readonly rawObjectStores: ReadonlyMap<string, RawStore>;
}

export interface Changed {
  readonly store: RawStore;
  readonly isCleared: boolean;
  /** Keys that were written or deleted, by their text. */
  readonly keys: ReadonlyMap<string, unknown>;
}

export interface Completed {
  readonly database: RawDatabase;
  /** Everything may have changed: stores and indexes were made or removed. */
  readonly isUpgrade: boolean;
  readonly changes: readonly Changed[];
}

interface Mutable extends Changed {
  isCleared: boolean;
  readonly keys: Map<string, unknown>;
}

/** A transaction's rollback log tells one from another; a write without one is a rollback's own. */
type Log = readonly unknown[] | undefined;
type Rows = Map<RawStore, Mutable>;

interface RawMethods {
  storeRecord: (this: RawStore, record: unknown, noOverwrite: boolean, log: Log) => unknown;
  deleteRecord: (this: RawStore, range: unknown, log: Log) => unknown;
  clear: (this: RawStore, log: Log) => unknown;
}

interface Transaction {
  readonly mode: string;
  readonly db: { readonly _rawDatabase: RawDatabase };
  readonly _rollbackLog: readonly unknown[];
  objectStore: (name: string) => { readonly _rawObjectStore: RawStore };
}

const dirty = new WeakMap<readonly unknown[], Rows>();
const listeners = new WeakMap<RawDatabase, (completed: Completed) => void>();

/** Hears every transaction that changes this database. */
export const listen = (database: RawDatabase, heard: (completed: Completed) => void): void => {
  listeners.set(database, heard);
};

function changed(log: Log, store: RawStore): Mutable | undefined {
  if (!log) return undefined;
  const rows: Rows = dirty.get(log) ?? new Map();
  dirty.set(log, rows);
  const found = rows.get(store) ?? { store, isCleared: false, keys: new Map<string, unknown>() };
  rows.set(store, found);
  return found;
}

function watchStores(raw: RawMethods): void {
  const { storeRecord, deleteRecord, clear } = raw;
  raw.storeRecord = function (record, noOverwrite, log) {
    const key = storeRecord.call(this, record, noOverwrite, log);
    changed(log, this)?.keys.set(textOfKey(key), key);
    return key;
  };
  raw.deleteRecord = function (range, log) {
    const rows = changed(log, this);
    if (rows) {
      const within = range instanceof fake.IDBKeyRange ? range : fake.IDBKeyRange.only(range);
      for (const { key } of this.records.values(within)) rows.keys.set(textOfKey(key), key);
    }
    return deleteRecord.call(this, range, log);
  };
  raw.clear = function (log) {
    const rows = changed(log, this);
    if (rows) {
      rows.isCleared = true;
      rows.keys.clear();
    }
    return clear.call(this, log);
  };
}

let isWatching = false;

/** From now on every change is noted; once for the process. */
export function watch(): void {
  if (isWatching) return;
  isWatching = true;
  const transaction = fake.IDBTransaction.prototype as unknown as Transaction;
  const { objectStore } = transaction;
  let knowsStores = false;
  transaction.objectStore = function (this: Transaction, name) {
    const store = objectStore.call(this, name);
    if (!knowsStores) {
      knowsStores = true;
      watchStores(Object.getPrototypeOf(store._rawObjectStore) as RawMethods);
    }
    return store;
  };
  const target = Object.getPrototypeOf(transaction) as { dispatchEvent: (event: { type: string }) => boolean };
  const { dispatchEvent } = target;
  Object.assign(transaction, {
    dispatchEvent(this: Transaction, event: { type: string }): boolean {
      if (event.type === 'complete' && this.mode !== 'readonly') {
        const database = this.db._rawDatabase;
        const isUpgrade = this.mode === 'versionchange';
        const changes = [...(dirty.get(this._rollbackLog)?.values() ?? [])];
        if (isUpgrade || changes.length > 0) listeners.get(database)?.({ database, isUpgrade, changes });
      }
      return dispatchEvent.call(this, event);
    },
  });
}
