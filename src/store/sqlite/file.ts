/** The one file of the embedded store: how it is opened, known for ours, and brought up to date. */
import { closeSync, existsSync, openSync, statSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';
import { pathToFileURL } from 'node:url';
import { sqliteBuilder } from '../dialect.ts';
import { migrationsFrom, newest } from '../migrations.ts';
import { StoreTrouble } from '../port.ts';
import { corrupt } from './trouble.ts';

/** Tells our files from those of others: "lyew". */
const applicationId = 0x6c796577;

/** How long another process's checkpoint is waited for, ms. */
const timeout = 5000;

/** Bytes of the file that may be read in place; SQLite itself stops at 2 GB. */
const mapped = 2 ** 31;

/** Refuses what is not ours or is of a later version, before anything is touched. */
export function lookAt(path: string): void {
  if (!existsSync(path) || statSync(path).size === 0) return;
  // Immutable: neither a lock nor a file beside it.
  const database = new DatabaseSync(new URL(`${pathToFileURL(path)}?immutable=1`), { readOnly: true });
  try {
    versionOf(database, path);
  } finally {
    database.close();
  }
}

/** The version of its schema; 0 for an empty file. */
export function versionOf(database: DatabaseSync, path: string): number {
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

/** An empty file, or none yet, that only the host's own account reads. */
export const makePrivate = (path: string): void => closeSync(openSync(path, 'a', 0o600));

export function openWriter(path: string): DatabaseSync {
  const database = new DatabaseSync(path, { timeout, enableForeignKeyConstraints: true });
  try {
    // FULL: what is committed survives a power cut. secure_delete: what is deleted is overwritten.
    database.exec('pragma journal_mode = wal; pragma synchronous = full; pragma secure_delete = on');
    // Pages of a large file are read where the system holds them; writing goes its usual, safe way.
    database.exec(`pragma mmap_size = ${mapped}`);
    migrate(database, path);
    return database;
  } catch (error) {
    database.close();
    throw error;
  }
}

function migrate(database: DatabaseSync, path: string): void {
  const version = versionOf(database, path);
  if (version === newest) return;
  const statements = migrationsFrom(version, sqliteBuilder());
  const marks = [`pragma application_id = ${applicationId}`, `pragma user_version = ${newest}`];
  database.exec('begin immediate');
  try {
    for (const one of [...statements, ...marks, 'commit']) database.exec(one);
  } catch (error) {
    if (database.isTransaction) database.exec('rollback');
    throw error;
  }
  // The version stands in the file itself, where an older program sees it before it touches anything.
  database.exec('pragma wal_checkpoint(truncate)');
}

/** Beside the writer, whatever the version. */
export const openReader = (path: string): DatabaseSync => new DatabaseSync(path, { timeout, readOnly: true });

/** What SQLite finds wrong in a file; empty where it is whole. */
export function faultsOf(database: DatabaseSync): readonly string[] {
  const said = database
    .prepare('pragma integrity_check')
    .all()
    .map((row) => String(row['integrity_check']));
  const broken = database
    .prepare('pragma foreign_key_check')
    .all()
    .map((row) => `${row['table']} names a ${row['parent']} that is not there`);
  return [...said.filter((line) => line !== 'ok'), ...broken];
}
