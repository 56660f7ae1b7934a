/** The embedded store: one file in the data folder, nothing to install or start. */
import { existsSync, mkdirSync } from 'node:fs';
import type { DatabaseSync } from 'node:sqlite';
import { sqliteBuilder } from '../dialect.ts';
import { newest } from '../migrations.ts';
import { type Store, StoreTrouble } from '../port.ts';
import { makeStatements } from '../statements.ts';
import { makeStore } from '../store.ts';
import { fileIn } from '../there.ts';
import { makeEngine } from './engine.ts';
import { keepErased } from './erased.ts';
import { lookAt, makePrivate, openReader, openWriter, versionOf } from './file.ts';
import { lock, type Unlock } from './lock.ts';
import { troubleOf } from './trouble.ts';

export interface SqliteOptions {
  readonly folder: string;
  /** What this process does, for whoever finds the folder in use: "the console". */
  readonly who: string;
  /** Looks things up beside the process that writes. */
  readonly readOnly: boolean;
  readonly now: () => number;
}

export async function openSqlite({ folder, who, readOnly, now }: SqliteOptions): Promise<Store> {
  const path = fileIn(folder);
  let unlock: Unlock = () => {};
  let database: DatabaseSync | null = null;
  try {
    lookAt(path);
    if (readOnly) database = openBeside(path);
    else {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      unlock = lock(folder, who);
      makePrivate(path);
      database = openWriter(path);
      keepErased(database, folder);
    }
    const engine = makeEngine({ database, path, folder, isReader: readOnly, unlock });
    return makeStore({ engine, statements: makeStatements(sqliteBuilder()), now });
  } catch (error) {
    database?.close();
    unlock();
    throw troubleOf(error, path);
  }
}

/** Beside the writer; what is not there yet is as good as empty. */
function openBeside(path: string): DatabaseSync {
  if (!existsSync(path)) return openWriter(':memory:');
  const database = openReader(path);
  if (versionOf(database, path) === newest) return database;
  database.close();
  throw new StoreTrouble(
    'held',
    `${path} still has the form of an earlier version.`,
    'Start lyeward once, or again where an earlier version of it runs: that brings the file up to date.',
  );
}
