/** All rows from a database of one kind to one of the other, table by table, a thousand rows at a time. */
import type { DatabaseSync } from 'node:sqlite';
import type { PoolClient } from 'pg';
import { postgresSchema } from '../dialect.ts';
import { tables } from '../schema.ts';

const rowsAtOnce = 1000;
const types = { text: 'text', whole: 'bigint' };

type Row = Readonly<Record<string, unknown>>;

/** `client` is in a transaction. What stands there already stays where `isThere` tables clash. */
export async function fillFromSqlite(client: PoolClient, from: DatabaseSync): Promise<void> {
  for (const [table, columns] of Object.entries(tables)) {
    const names = Object.keys(columns);
    const arrays = Object.values(columns).map((type: 'text' | 'whole', i) => `$${i + 1}::${types[type]}[]`);
    const insert = `insert into ${postgresSchema}.${quoted([table])} (${quoted(names)})
      select * from unnest(${arrays.join(', ')}) on conflict do nothing`;
    let rows: Row[] = [];
    const flush = async (): Promise<void> => {
      if (rows.length > 0)
        await client.query(
          insert,
          names.map((name) => rows.map((row) => row[name])),
        );
      rows = [];
    };
    for (const row of from.prepare(`select ${quoted(names)} from ${quoted([table])}`).iterate()) {
      rows.push(row);
      if (rows.length === rowsAtOnce) await flush();
    }
    await flush();
  }
}

/** `client` is in a transaction that sees one state throughout. */
export async function fillSqlite(to: DatabaseSync, client: PoolClient): Promise<void> {
  to.exec('begin immediate');
  for (const [table, columns] of Object.entries(tables)) {
    const names = Object.keys(columns);
    const insert = to.prepare(
      `insert into ${quoted([table])} (${quoted(names)}) values (${names.map(() => '?').join(', ')})`,
    );
    await client.query(
      `declare rows no scroll cursor for select ${quoted(names)} from ${postgresSchema}.${quoted([table])}`,
    );
    for (;;) {
      const { rows } = await client.query<Row>(`fetch ${rowsAtOnce} from rows`);
      for (const row of rows) insert.run(...names.map((name) => row[name] as string | number | null));
      if (rows.length === 0) break;
    }
    await client.query('close rows');
  }
  to.exec('commit');
}

const quoted = (names: readonly string[]): string => names.map((name) => `"${name}"`).join(', ');
