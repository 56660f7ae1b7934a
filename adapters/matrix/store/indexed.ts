/**
 * An IndexedDB whose databases live in a SQLite file. The encryption of matrix-js-sdk keeps its keys in IndexedDB only,
 * and Node has none; in memory alone, a bot that is started again is a device without its keys.
 *
 * At the start everything is read from the file; then every transaction is in the file before its "complete" is heard.
 * All records stay in memory too (some MB); stores that number their keys themselves are not supported; values must
 * outlive `v8.serialize`, so no `CryptoKey`.
 */
import { deserialize, serialize } from 'node:v8';
import * as fake from 'fake-indexeddb';
import { type Completed, listen, type RawDatabase, type RawStore, watch } from './changes.ts';
import type { StoreFile } from './file.ts';
import { keyOfText, textOfKey } from './key-text.ts';

const tables = `
  CREATE TABLE IF NOT EXISTS idb_schema (db TEXT, store TEXT, spec TEXT, PRIMARY KEY (db, store)) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS idb_record (db TEXT, store TEXT, key TEXT, value BLOB, PRIMARY KEY (db, store, key)) WITHOUT ROWID;`;

interface Spec {
  readonly keyPath: RawStore['keyPath'];
  readonly indexes: readonly (readonly [string, string | string[], { unique: boolean; multiEntry: boolean }])[];
}

const specOf = ({ keyPath, rawIndexes }: RawStore): Spec => ({
  keyPath,
  indexes: [...rawIndexes.values()].map((one) => [
    one.name,
    one.keyPath,
    { unique: one.unique, multiEntry: one.multiEntry },
  ]),
});

type Globals = Readonly<Record<string, unknown>>;

/** What the encryption looks for in `globalThis`. */
export async function openIndexed({ db, write }: StoreFile): Promise<Globals> {
  watch();
  db.exec(tables);
  const put = db.prepare('INSERT OR REPLACE INTO idb_record VALUES (?, ?, ?, ?)');
  const remove = db.prepare('DELETE FROM idb_record WHERE db = ? AND store = ? AND key = ?');
  const wipe = db.prepare('DELETE FROM idb_record WHERE db = ? AND store = ?');
  // The store without a name holds the version.
  const describe = db.prepare('INSERT INTO idb_schema VALUES (?, ?, ?)');
  const forget = (name: string): void => {
    for (const table of ['idb_schema', 'idb_record']) db.prepare(`DELETE FROM ${table} WHERE db = ?`).run(name);
  };

  const writeAll = ({ name, version, rawObjectStores }: RawDatabase): void => {
    forget(name);
    describe.run(name, '', String(version));
    for (const store of rawObjectStores.values()) {
      if (store.autoIncrement) throw new Error(`object store ${store.name} numbers its keys: not supported`);
      describe.run(name, store.name, JSON.stringify(specOf(store)));
      for (const { key, value } of store.records.values()) put.run(name, store.name, textOfKey(key), serialize(value));
    }
  };
  const persist = ({ database, isUpgrade, changes }: Completed): void =>
    write(() => {
      if (isUpgrade) {
        writeAll(database);
        return;
      }
      for (const { store, isCleared, keys } of changes) {
        if (isCleared) wipe.run(database.name, store.name);
        for (const [text, key] of keys) {
          const record = store.records.get(key);
          if (record) put.run(database.name, store.name, text, serialize(record.value));
          else remove.run(database.name, store.name, text);
        }
      }
    });

  const factory = new fake.IDBFactory();
  const rows = db.prepare('SELECT key, value FROM idb_record WHERE db = ? AND store = ?');
  const stores = db.prepare("SELECT store, spec FROM idb_schema WHERE db = ? AND store <> ''");
  for (const { db: name, spec: version } of db.prepare("SELECT db, spec FROM idb_schema WHERE store = ''").all()) {
    const opened = factory.open(String(name), Number(version));
    opened.onupgradeneeded = () => {
      for (const { store, spec } of stores.all(String(name))) {
        const { keyPath, indexes } = JSON.parse(String(spec)) as Spec;
        const made = opened.result.createObjectStore(String(store), keyPath === null ? {} : { keyPath });
        for (const [index, path, options] of indexes) made.createIndex(index, path, options);
        for (const { key, value } of rows.iterate(String(name), String(store))) {
          const record: unknown = deserialize(value as Uint8Array);
          if (keyPath === null) made.put(record, keyOfText(String(key)));
          else made.put(record);
        }
      }
    };
    await done(opened);
    opened.result.close();
  }

  const { _databases: map } = factory as unknown as { readonly _databases: Map<string, RawDatabase> };
  for (const database of map.values()) listen(database, persist);
  map.set = (name, database) => {
    listen(database, persist);
    return Map.prototype.set.call(map, name, database) as typeof map;
  };
  map.delete = (name) => {
    write(() => forget(name));
    return Map.prototype.delete.call(map, name) as boolean;
  };
  return { ...Object.fromEntries(Object.entries(fake).filter(([name]) => name.startsWith('IDB'))), indexedDB: factory };
}

const done = (request: { readonly error: unknown; onsuccess: unknown; onerror: unknown }): Promise<void> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });
