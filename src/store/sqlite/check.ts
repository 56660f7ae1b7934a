/** Looks through the data file, beside the process that writes. */
import { existsSync } from 'node:fs';
import { type Checked, checkSource } from '../check.ts';
import { newest } from '../migrations.ts';
import { fileIn } from '../there.ts';
import { faultsOf, lookAt, openReader, versionOf } from './file.ts';
import { missing, troubleOf } from './trouble.ts';

export async function checkSqlite(folder: string, now: number): Promise<Checked> {
  const path = fileIn(folder);
  if (!existsSync(path)) throw missing(path);
  try {
    lookAt(path);
    const database = openReader(path);
    try {
      const version = versionOf(database, path);
      const form = `${path}, form ${version}${version < newest ? ` (${newest} after the next start)` : ''}`;
      const rows = (text: string) => database.prepare(text.replace('$', '')).iterate();
      return await checkSource({ name: form, faults: faultsOf(database), rows }, now);
    } finally {
      database.close();
    }
  } catch (error) {
    throw troubleOf(error, path);
  }
}
