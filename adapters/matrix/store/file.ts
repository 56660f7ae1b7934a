/** One SQLite file, of which several changes can be held together in one transaction. */
import { closeSync, openSync } from 'node:fs';
import { DatabaseSync } from 'node:sqlite';

export interface StoreFile {
  readonly db: DatabaseSync;
  /** Runs statements: committed at once, or with what is held. */
  readonly write: (work: () => void) => void;
  /** Until `release`, what is written is one transaction. Never around anything that waits for the network. */
  readonly hold: () => void;
  readonly release: () => void;
  /** Resolves when nothing is held. */
  readonly idle: () => Promise<void>;
  readonly close: () => void;
}

interface FileOptions {
  readonly onCommit?: () => void;
  /** A write failed, of a full disk for example: what is in memory is no longer what is in the file. */
  readonly onFailure?: (error: unknown) => void;
}

/** Throws where the file is not to be had, or where another process has it. */
export function openFile(path: string, { onCommit, onFailure }: FileOptions = {}): StoreFile {
  closeSync(openSync(path, 'a', 0o600));
  const db = new DatabaseSync(path);
  // FULL: a commit outlives a power cut. EXCLUSIVE: a second process is refused.
  db.exec('PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');

  let held = 0;
  let waiting: (() => void)[] = [];
  // After a write that failed the memory is ahead of the file, and all further work must fail too.
  let failure: unknown = null;

  const commit = (): void => {
    db.exec('COMMIT');
    onCommit?.();
  };
  return {
    db,
    write: (work) => {
      if (failure) throw failure;
      try {
        if (!db.isTransaction) db.exec('BEGIN IMMEDIATE');
        work();
        if (held === 0) commit();
      } catch (error) {
        failure = error;
        onFailure?.(error);
        if (db.isTransaction) db.exec('ROLLBACK');
        throw error;
      }
    },
    hold: () => {
      held += 1;
    },
    release: () => {
      held -= 1;
      if (held > 0) return;
      if (db.isTransaction) commit();
      const now = waiting;
      waiting = [];
      for (const go of now) go();
    },
    idle: () => (held === 0 ? Promise.resolve() : new Promise((resolve) => waiting.push(resolve))),
    close: () => {
      if (db.isTransaction) commit();
      db.close();
    },
  };
}
