/** Looks through what a server keeps, as it is at one moment. */
import { type Checked, checkSource } from '../check.ts';
import { postgresSchema } from '../dialect.ts';
import { newest } from '../migrations.ts';
import { inTransaction } from './transaction.ts';

export const checkPostgres = (url: string, now: number): Promise<Checked> =>
  inTransaction(url, 'begin isolation level repeatable read read only', async (client, place) => {
    async function* rows(text: string) {
      await client.query(`declare looked no scroll cursor for ${text.replace('$', `${postgresSchema}.`)}`);
      for (;;) {
        const { rows: some } = await client.query<Record<string, unknown>>('fetch 1000 from looked');
        yield* some;
        if (some.length === 0) break;
      }
      await client.query('close looked');
    }
    const { rows: settings } = await client.query<{ fsync: string }>('show fsync');
    const isSafe = settings[0]?.fsync === 'on';
    const faults = isSafe ? [] : ['Its server runs with fsync off: a power cut can take what was said to be kept.'];
    return checkSource({ name: `The database ${place}, form ${newest}`, faults, rows }, now);
  });
