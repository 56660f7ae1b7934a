/** What a server keeps, in a file of the embedded store's form, and back; so one form serves for all copies. */
import { existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';
import type { PoolClient } from 'pg';
import { postgresSchema } from '../dialect.ts';
import { StoreTrouble } from '../port.ts';
import { copy, refuseExisting } from '../sqlite/backup.ts';
import { keepErased } from '../sqlite/erased.ts';
import { makePrivate, openWriter } from '../sqlite/file.ts';
import { lock } from '../sqlite/lock.ts';
import { troubleOf as fileTrouble, missing } from '../sqlite/trouble.ts';
import { fileIn } from '../there.ts';
import { fillFromSqlite, fillSqlite } from './copy.ts';
import { inTransaction } from './transaction.ts';

export async function backupPostgres(url: string, file: string): Promise<void> {
  refuseExisting(file);
  await inTransaction(url, 'begin isolation level repeatable read read only', async (client) => {
    const into = (work: () => void | Promise<void>) => inFile(file, work);
    await into(() => makePrivate(file));
    try {
      await into(async () => {
        const database = openWriter(file);
        try {
          await fillSqlite(database, client);
        } finally {
          database.close();
        }
      });
    } catch (error) {
      rmSync(file, { force: true });
      throw error;
    }
  });
}

/** Takes the place of all that the server keeps; who was erased there stays so. How many the copy had of them. */
export async function restorePostgres(url: string, file: string): Promise<number> {
  if (!existsSync(file)) throw missing(file);
  // A copy of an earlier form is brought up to date in a copy of its own.
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
  try {
    const upToDate = join(folder, 'copy.db');
    copy(file, upToDate);
    const database = await inFile(upToDate, () => openWriter(upToDate));
    try {
      return await inTransaction(url, 'begin', async (client) => {
        await client.query(`delete from ${postgresSchema}.owner`);
        await client.query(`delete from ${postgresSchema}.value`);
        return fill(client, database);
      });
    } finally {
      database.close();
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** From the file in the folder to a server that keeps nothing yet. Where the file, put aside, is now. */
export async function moveToPostgres(folder: string, url: string, who: string): Promise<string> {
  const path = fileIn(folder);
  if (!existsSync(path)) throw missing(path);
  const unlock = await inFile(folder, () => lock(folder, who));
  try {
    const database = await inFile(path, () => openWriter(path));
    try {
      await inFile(path, () => keepErased(database, folder));
      await inTransaction(url, 'begin', async (client) => {
        await refuseFull(client);
        await fill(client, database);
      });
    } finally {
      database.close();
    }
    // Nobody shall go on with the old one by mistake.
    const aside = `${path}.moved`;
    renameSync(path, aside);
    return aside;
  } finally {
    unlock();
  }
}

async function refuseFull(client: PoolClient): Promise<void> {
  const { rows } = await client.query(
    `select 1 from ${postgresSchema}.owner union all select 1 from ${postgresSchema}.value limit 1`,
  );
  if (rows.length === 0) return;
  throw new StoreTrouble(
    'read-only',
    'that database keeps something already.',
    'Move into an empty one, or bring a backup back over it: npm start -- restore FILE.',
  );
}

async function fill(client: PoolClient, database: DatabaseSync): Promise<number> {
  await fillFromSqlite(client, database);
  const { rowCount } = await client.query(
    `delete from ${postgresSchema}.owner where id in (select owner from ${postgresSchema}.erased)`,
  );
  return rowCount ?? 0;
}

async function inFile<T>(path: string, work: () => T | Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw fileTrouble(error, path);
  }
}
