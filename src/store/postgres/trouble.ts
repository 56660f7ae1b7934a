/** What PostgreSQL and the network say, in words of what can be done. */
import { StoreTrouble } from '../port.ts';

/** SQLSTATE of PostgreSQL, or the code of a system's error. */
const codeOf = (error: unknown): string | null =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : null;

/** Two transactions stood in each other's way: done again, one of them finds its way free. */
export const isRetried = (error: unknown): boolean => ['40001', '40P01'].includes(codeOf(error) ?? '');

/** `place`: host, port and database, without the password. */
export function troubleOf(error: unknown, place: string): unknown {
  if (error instanceof StoreTrouble) return error;
  const code = codeOf(error);
  if (code === '28P01' || code === '28000') {
    return unreachable(`the database ${place} refuses this name and password.`, 'Check LYEWARD_DATABASE_URL.', error);
  }
  if (code === '3D000') {
    return unreachable(`${place} is no database of its server.`, 'Make it (createdb), or check the address.', error);
  }
  if (code === '42501' || code === '25006') {
    const hint = 'Give the account in LYEWARD_DATABASE_URL the right to write to this database.';
    return new StoreTrouble('read-only', `the database ${place} cannot be written.`, hint, error);
  }
  if (code === '53100') {
    return new StoreTrouble('full', 'the disk of the database is full.', 'Make room on it, then say it again.', error);
  }
  if (code?.startsWith('XX')) {
    const hint = 'Its own log says more; bring back a backup where it cannot be mended.';
    return new StoreTrouble('corrupt', `the database ${place} is damaged.`, hint, error);
  }
  if (isCutOff(error)) {
    return unreachable(`the database ${place} does not answer.`, 'Look whether it runs, then say it again.', error);
  }
  return error;
}

/** The connection or the server is gone, is not there yet, or has no room for another one (SQLSTATE classes 08, 53, 57). */
const isCutOff = (error: unknown): boolean => {
  const code = codeOf(error);
  if (code !== null && /^(?:08|57P|53)|^E[A-Z]+$|^57014$/.test(code)) return true;
  // What the driver says without a code.
  return error instanceof Error && /timeout|terminated|closed|not queryable|ended/i.test(error.message);
};

const unreachable = (message: string, hint: string, cause: unknown): StoreTrouble =>
  new StoreTrouble('unreachable', message, hint, cause);
