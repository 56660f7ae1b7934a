/** Statements on a PostgreSQL server that several processes may use at once. */
import type { Pool, PoolClient, QueryConfig } from 'pg';
import { StoreTrouble } from '../port.ts';
import type { Args, Engine, Statement, Steps } from '../statement.ts';
import { isRetried, troubleOf } from './trouble.ts';

/** Transactions that stand in each other's way are done again; more often than this they never do in practice. */
const mostTries = 10;

/** A statement that may take longer than a person waits, ms: it goes through whole tables. */
const patient = (text: string): QueryConfig & { readonly query_timeout: number } => ({ text, query_timeout: 600_000 });

export interface PostgresEngine {
  readonly pool: Pool;
  /** Host, port and database, for messages. */
  readonly place: string;
  /** Begins a transaction whose commit is durable. */
  readonly begin: string;
  /** Takes away the rows that erasing has left behind. */
  readonly scrub: string;
  readonly isReader: boolean;
}

export function makeEngine({ pool, place, begin, scrub, isReader }: PostgresEngine): Engine {
  /** The server keeps the plan of a named statement, one a connection. */
  const names = new Map<Statement, string>();
  const query = (one: Statement, args: Args) => {
    const name = names.get(one) ?? `lyeward_${names.size}`;
    names.set(one, name);
    return { name, text: one.text, values: one.values(args) };
  };
  const once = async <Result>(client: PoolClient, steps: () => Steps<Result>): Promise<Result> => {
    await client.query(begin);
    const doing = steps();
    let step = doing.next();
    while (!step.done) {
      const { rows } = await client.query(query(step.value.statement, step.value.args));
      step = doing.next(rows);
    }
    await client.query('commit');
    return step.value;
  };
  const inTransaction = async <Result>(steps: () => Steps<Result>): Promise<Result> => {
    const client = await pool.connect();
    let broken: Error | undefined;
    try {
      for (let tries = 1; ; tries += 1) {
        try {
          return await once(client, steps);
        } catch (error) {
          try {
            await client.query('rollback');
          } catch (lost) {
            broken = lost as Error;
            throw error;
          }
          if (!isRetried(error) || tries === mostTries) throw error;
        }
      }
    } finally {
      // A connection that failed to roll back is closed, which rolls back.
      client.release(broken);
    }
  };
  const inWords = async <Result>(work: () => Promise<Result>): Promise<Result> => {
    try {
      return await work();
    } catch (error) {
      throw troubleOf(error, place);
    }
  };
  return {
    isAlone: false,
    read: <Row>(one: Statement<Row>, args: Args) =>
      inWords(async () => (await pool.query(query(one, args))).rows as readonly Row[]),
    write: async (steps) => {
      if (isReader)
        throw new StoreTrouble('read-only', `${place} was opened to look things up only.`, 'Ask elsewhere.');
      return inWords(() => inTransaction(steps));
    },
    scrub: () => inWords(async () => void (await pool.query(patient(scrub)))),
    close: () => pool.end(),
  };
}
