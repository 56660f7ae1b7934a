/** What SQLite and the file system say, in words of what can be done. */
import { StoreTrouble } from '../port.ts';

/** Result codes of SQLite, sqlite3.h. */
const codes = { busy: 5, locked: 6, readOnly: 8, io: 10, corrupt: 11, full: 13, cannotOpen: 14, noDatabase: 26 };

const codeOf = (error: unknown): number | null =>
  error instanceof Error && 'errcode' in error && typeof error.errcode === 'number' ? error.errcode & 0xff : null;

export const isBusy = (error: unknown): boolean => {
  const code = codeOf(error);
  return code === codes.busy || code === codes.locked;
};

export const isCorrupt = (error: unknown): boolean => {
  const code = codeOf(error);
  return code === codes.corrupt || code === codes.noDatabase;
};

/** The trouble that an error means; an error that means none is handed back as it is. */
export function troubleOf(error: unknown, path: string): unknown {
  const code = codeOf(error);
  const system = error instanceof Error && 'code' in error ? error.code : null;
  if (code === codes.full || system === 'ENOSPC' || system === 'EDQUOT') {
    return new StoreTrouble('full', 'the disk is full.', 'Make room on it, then say it again.', error);
  }
  if (isCorrupt(error)) return corrupt(path, error);
  if (code === codes.readOnly || code === codes.cannotOpen || isRefusal(system)) {
    const hint = 'Give the program a folder that it may write to: --data DIR, or LYEWARD_DATA.';
    return new StoreTrouble('read-only', `${path} cannot be written.`, hint, error);
  }
  if (isBusy(error)) {
    return new StoreTrouble('held', `${path} is in use by another program.`, 'Close that, then say it again.', error);
  }
  if (code === codes.io) {
    const hint = 'Look after the disk: it may be full, failing, or gone. What was kept before is still there.';
    return new StoreTrouble('full', 'the disk did not take it.', hint, error);
  }
  return error;
}

const isRefusal = (system: unknown): boolean =>
  typeof system === 'string' && ['EACCES', 'EPERM', 'EROFS', 'ENOTDIR', 'EEXIST'].includes(system);

export const corrupt = (path: string, cause?: unknown): StoreTrouble =>
  new StoreTrouble(
    'corrupt',
    `${path} is damaged, or was not written by lyeward.`,
    'Nothing in it was changed. A backup can take its place: npm start -- restore FILE.',
    cause,
  );

export const missing = (path: string): StoreTrouble =>
  new StoreTrouble(
    'unreachable',
    `there is no ${path}.`,
    'Look at the name; --data DIR names the folder of what is kept.',
  );
