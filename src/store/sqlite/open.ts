/** The embedded store: one file in the data folder, nothing to install or start. */
import { closeSync, existsSync, mkdirSync, openSync, statSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { pathToFileURL } from 'node:url';
import { sqliteBuilder } from '../dialect.ts';
import { migrationsFrom, newest } from '../migrations.ts';
import { type Store, StoreTrouble } from '../port.ts';
import { makeStatements } from '../statements.ts';
import { makeStore } from '../store.ts';
import { fileIn } from '../there.ts';
import { makeEngine } from './engine.ts';
import { lock } from './lock.ts';
import { corrupt, troubleOf } from './trouble.ts';

export interface SqliteOptions {
  readonly folder: string;
  /** What this process does, for whoever finds the folder in use: "the console". */
  readonly who: string;
  /** Looks things up beside the process that writes. */
  readonly readOnly: boolean;
  readonly now: () => number;
}

/** Tells our files from those of others: "lyew". */
const applicationId = 0x6c796577;

export async function openSqlite({ folder, who, readOnly, now }: SqliteOptions): Promise<Store> {
  const path = fileIn(folder);
  let unlock = (): void => {};
  try {
    lookAt(path);
    if (!readOnly) {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      unlock = lock(folder, who);
      // Only the host's own account reads what people keep.
      closeSync(openSync(path, 'a', 0o600));
    }
    const database = readOnly ? openReader(path) : openWriter(path);
    const statements = makeStatements(sqliteBuilder());
    return makeStore({ engine: makeEngine(database, path, readOnly, unlock), statements, now });
  } catch (error) {
    unlock();
    throw troubleOf(error, path);
  }
}

/** Refuses what is not ours or is of a later version, before anything is touched. */
function lookAt(path: string): void {
  if (!existsSync(path) || statSync(path).size === 0) return;
  // Immutable: neither a lock nor a file beside it.
  const database = new DatabaseSync(new URL(`${pathToFileURL(path)}?immutable=1`), { readOnly: true });
  try {
    check(database, path);
  } finally {
    database.close();
  }
}

/** The version of its schema; 0 for an empty file. */
function check(database: DatabaseSync, path: string): number {
  const version = pragma(database, 'user_version');
  const id = pragma(database, 'application_id');
  if (id !== applicationId && (id !== 0 || version !== 0)) throw corrupt(path);
  if (version <= newest) return version;
  throw new StoreTrouble(
    'newer',
    `${path} was written by a newer lyeward (form ${version}; this one knows ${newest}).`,
    'Start that newer version. Nothing in it was changed.',
  );
}

const pragma = (database: DatabaseSync, name: string): number =>
  Number(database.prepare(`pragma ${name}`).get()?.[name] ?? 0);

function openWriter(path: string): DatabaseSync {
  const database = new DatabaseSync(path, { timeout: 5000, enableForeignKeyConstraints: true });
  try {
    // FULL: what is committed survives a power cut. secure_delete: what is deleted is overwritten.
    database.exec('pragma journal_mode = wal; pragma synchronous = full; pragma secure_delete = on');
    migrate(database, path);
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

function migrate(database: DatabaseSync, path: string): void {
  const version = check(database, path);
  if (version === newest) return;
  database.exec('begin immediate');
  try {
    for (const one of migrationsFrom(version, sqliteBuilder())) database.exec(one);
    database.exec(`pragma application_id = ${applicationId}; pragma user_version = ${newest}; commit`);
  } catch (error) {
    if (database.isTransaction) database.exec('rollback');
    throw error;
  }
  // The version stands in the file itself, where an older program sees it before it touches anything.
  database.exec('pragma wal_checkpoint(truncate)');
}

/** Beside the writer; what is not there yet is as good as empty. */
function openReader(path: string): DatabaseSync {
  if (!existsSync(path)) return openWriter(':memory:');
  const database = new DatabaseSync(path, { timeout: 5000, readOnly: true });
  const version = check(database, path);
  if (version === newest) return database;
  database.close();
  throw new StoreTrouble(
    'held',
    `${path} still has the form of an earlier version.`,
    'Start lyeward once, or again where an earlier version of it runs: that brings the file up to date.',
  );
}
