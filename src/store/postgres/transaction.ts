import type { PoolClient } from 'pg';
import { connect } from './open.ts';
import { troubleOf } from './trouble.ts';

type Work<T> = (client: PoolClient, place: string) => Promise<T>;

/** One transaction on a connection of its own, as long as it takes. */
export async function inTransaction<T>(url: string, begin: string, work: Work<T>): Promise<T> {
  const { pool, place } = await connect(url, 0);
  try {
    const client = await pool.connect();
    try {
      await client.query(begin);
      const result = await work(client, place);
      await client.query('commit');
      return result;
    } finally {
      // Closed, which takes back what was not committed.
      client.release(true);
    }
  } catch (error) {
    throw troubleOf(error, place);
  } finally {
    await pool.end();
  }
}
