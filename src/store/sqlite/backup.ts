/** Copies of the data file, made beside the process that writes, and brought back. */
import { closeSync, existsSync, fsyncSync, linkSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { StoreTrouble } from '../port.ts';
import { fileIn } from '../there.ts';
import { keepErased } from './erased.ts';
import { faultsOf, lookAt, makePrivate, openReader, openWriter, versionOf } from './file.ts';
import { lock } from './lock.ts';
import { corrupt, isCorrupt, missing, troubleOf } from './trouble.ts';

/** Writes a copy of what was checked to be whole, as it is at this moment. The file must not be there yet. */
export function backupSqlite(folder: string, file: string): void {
  const path = fileIn(folder);
  if (!existsSync(path)) throw missing(path);
  refuseExisting(file);
  copy(path, file);
}

/** A copy must not take the place of an older one before it is known to be good. */
export function refuseExisting(file: string): void {
  if (!existsSync(dirname(file))) throw missing(dirname(file));
  if (!existsSync(file)) return;
  throw new StoreTrouble('read-only', `${file} is there already.`, 'Name a new file, such as one with the date.');
}

/** From a file that may be in use to one that is not there yet; gone again where that fails. */
export function copy(from: string, to: string): void {
  try {
    lookAt(from);
    makePrivate(to);
    const source = openReader(from);
    try {
      versionOf(source, from);
      if (faultsOf(source).length > 0) throw corrupt(from);
      // One snapshot, whatever is written meanwhile, without the free pages of the original.
      source.prepare('vacuum into ?').run(to);
    } finally {
      source.close();
    }
    syncFile(to);
    syncFolder(dirname(to));
  } catch (error) {
    rmSync(to, { force: true });
    throw isCorrupt(error) ? corrupt(from, error) : troubleOf(error, to);
  }
}

export interface Restored {
  /** Owners that the copy had and that were erased since: they stay so. */
  readonly erased: number;
  /** Where what was there before is now; null where nothing was put aside. */
  readonly aside: string | null;
}

/** Brings a copy back. What was there is put aside, and those who were erased stay so. */
export function restoreSqlite(folder: string, file: string, who: string): Restored {
  const path = fileIn(folder);
  const next = `${path}.next`;
  if (!existsSync(file)) throw missing(file);
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    const unlock = lock(folder, who);
    try {
      if (existsSync(path)) settle(path, folder);
      rmSync(next, { force: true });
      copy(file, next);
      const database = openWriter(next);
      let erased: number;
      try {
        erased = keepErased(database, folder);
      } finally {
        database.close();
      }
      syncFile(next);
      return { erased, aside: exchange(path, next) };
    } finally {
      unlock();
    }
  } catch (error) {
    throw troubleOf(error, folder);
  }
}

/** All of what is there goes into the file itself, and who was erased into the list, where it is still whole enough. */
function settle(path: string, folder: string): void {
  try {
    lookAt(path);
    const database = openWriter(path);
    try {
      keepErased(database, folder);
    } finally {
      database.close();
    }
  } catch (error) {
    const trouble = troubleOf(error, path);
    if (!(trouble instanceof StoreTrouble) || trouble.code !== 'corrupt') throw trouble;
  }
}

/** At each moment there is a file of that name: the old one or the new one. */
function exchange(path: string, next: string): string | null {
  let aside: string | null = null;
  if (existsSync(path)) {
    aside = `${path}.${new Date().toISOString().replace(/[:.]/g, '-')}`;
    linkSync(path, aside);
    // A log that was left over belongs to the old file alone.
    if (existsSync(`${path}-wal`)) renameSync(`${path}-wal`, `${aside}-wal`);
    rmSync(`${path}-shm`, { force: true });
  }
  renameSync(next, path);
  syncFolder(dirname(path));
  return aside;
}

function syncFile(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The names in a folder, where the system can write them down. */
function syncFolder(path: string): void {
  if (process.platform === 'win32') return;
  const folder = openSync(path, 'r');
  try {
    fsyncSync(folder);
  } finally {
    closeSync(folder);
  }
}
