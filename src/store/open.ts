/** Opens the store that the host has chosen: a PostgreSQL server where one is named, else a file in the data folder. */
import { readFileSync } from 'node:fs';
import { type Store, StoreTrouble } from './port.ts';

/** Where everything is kept. */
export interface Place {
  /** The folder of what is kept; made where it is not there yet. */
  readonly folder: string;
  /** What this process does, for whoever finds the folder in use: "the console". */
  readonly who: string;
  /** Address of a PostgreSQL database; null: the file in the folder. Else what the environment names. */
  readonly database?: string | null;
}

export interface OpenOptions extends Place {
  /** Only looks things up, beside another process that writes; writing is refused with a `StoreTrouble`. */
  readonly readOnly?: boolean;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

export async function openStore(options: OpenOptions): Promise<Store> {
  const { folder, who, readOnly = false, now = Date.now } = options;
  const database = databaseOf(options);
  if (database === null) return (await import('./sqlite/open.ts')).openSqlite({ folder, who, readOnly, now });
  return (await import('./postgres/open.ts')).openPostgres({ url: database, readOnly, now });
}

/** null: the file in the folder. */
export const databaseOf = ({ database }: Place): string | null =>
  database === undefined ? databaseIn(process.env) : database;

type Env = Readonly<Record<string, string | undefined>>;

/** The database that the host names in LYEWARD_DATABASE_URL, or in the file that LYEWARD_DATABASE_URL_FILE names. */
function databaseIn(env: Env): string | null {
  const file = env['LYEWARD_DATABASE_URL_FILE'];
  const url = env['LYEWARD_DATABASE_URL'];
  if (url !== undefined || !file) return url?.trim() || null;
  try {
    return readFileSync(file, 'utf8').trim() || null;
  } catch (error) {
    const hint = 'Check LYEWARD_DATABASE_URL_FILE, or leave it out to keep everything in a file.';
    throw new StoreTrouble('unreachable', `${file} cannot be read.`, hint, error);
  }
}
