/** Who the bot is to its server: kept in a file that only its owner can read, written whole or not at all. */
import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from 'node:fs';
import { join } from 'node:path';

export interface Account {
  readonly homeserver: string;
  /** Chosen before the first login, so that a crash in it makes no second device. */
  readonly device: string;
  /** null before the first login. */
  readonly user: string | null;
  readonly token: string | null;
  readonly refresh: string | null;
}

/** Mode 0600; on the disk before the old one is gone. */
export function writePrivate(path: string, text: string): void {
  const part = `${path}.part`;
  const file = openSync(part, 'w', 0o600);
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(part, path);
}

const pathIn = (folder: string): string => join(folder, 'account.json');

/** null where there is none yet; throws where it cannot be read. */
export function readAccount(folder: string): Account | null {
  try {
    return JSON.parse(readFileSync(pathIn(folder), 'utf8')) as Account;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  }
}

export const writeAccount = (folder: string, account: Account): void =>
  writePrivate(pathIn(folder), `${JSON.stringify(account, null, 2)}\n`);
