/** What a host does with all that is kept: copies, looks through it, moves house. */
import type { Checked } from './check.ts';
import { databaseOf, type Place } from './open.ts';
import type { Restored } from './sqlite/backup.ts';

/** Writes a copy, while the program runs; the file must not be there yet. */
export async function backup(place: Place, file: string): Promise<void> {
  const database = databaseOf(place);
  if (database === null) (await import('./sqlite/backup.ts')).backupSqlite(place.folder, file);
  else await (await import('./postgres/backup.ts')).backupPostgres(database, file);
}

/** Brings a copy back in the place of all that is kept. */
export async function restore(place: Place, file: string): Promise<Restored> {
  const database = databaseOf(place);
  if (database === null) return (await import('./sqlite/backup.ts')).restoreSqlite(place.folder, file, place.who);
  return { erased: await (await import('./postgres/backup.ts')).restorePostgres(database, file), aside: null };
}

export async function checkData(place: Place, now = Date.now()): Promise<Checked> {
  const database = databaseOf(place);
  if (database === null) return (await import('./sqlite/check.ts')).checkSqlite(place.folder, now);
  return (await import('./postgres/check.ts')).checkPostgres(database, now);
}

/** From the file in the folder into the database; where the file, put aside, is now. Null: no database is named. */
export async function moveData(place: Place): Promise<string | null> {
  const database = databaseOf(place);
  if (database === null) return null;
  return (await import('./postgres/backup.ts')).moveToPostgres(place.folder, database, place.who);
}
