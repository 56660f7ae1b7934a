/**
 * One process writes. The lock is one of the operating system's on a file beside the data, taken by SQLite: it ends
 * with its process, however that ends, so none can be left over, nor mistaken for that of a later process with the
 * same number. Who holds it stands in a second file, which only words the error.
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { StoreTrouble } from '../port.ts';
import { isBusy } from './trouble.ts';

/** How long a process that is about to end is waited for, ms. */
const patience = 1000;

/** Ends the lock. */
export type Unlock = () => void;

/** `who`: what this process does, as a person calls it ("the console"). */
export function lock(folder: string, who: string): Unlock {
  const holder = join(folder, 'lyeward.holder');
  const file = new DatabaseSync(join(folder, 'lyeward.lock'), { timeout: patience });
  try {
    file.exec('pragma locking_mode = exclusive; begin exclusive');
  } catch (error) {
    file.close();
    if (!isBusy(error)) throw error;
    throw new StoreTrouble(
      'held',
      `${folder} is in use by ${holderOf(holder)}.`,
      'Ask there, or stop that one first. Its backup and check-data work meanwhile.',
      error,
    );
  }
  const since = new Date().toISOString().slice(0, 16).replace('T', ' ');
  try {
    writeFileSync(holder, `${who}, process ${process.pid} on ${hostname()}, since ${since} UTC\n`, { mode: 0o600 });
  } catch (error) {
    file.close();
    throw error;
  }
  return () => {
    rmSync(holder, { force: true });
    file.close();
  };
}

function holderOf(file: string): string {
  try {
    return readFileSync(file, 'utf8').trim().slice(0, 200) || 'another process';
  } catch {
    return 'another process';
  }
}
