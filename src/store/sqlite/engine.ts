/** Statements on one SQLite file. A transaction runs to its end without a pause, so nobody in the process sees half. */
import type { DatabaseSync, StatementSync } from 'node:sqlite';
import { StoreTrouble } from '../port.ts';
import type { Args, Engine, Statement, Steps } from '../statement.ts';
import { keepErased } from './erased.ts';
import type { Unlock } from './lock.ts';
import { troubleOf } from './trouble.ts';

export interface SqliteEngine {
  readonly database: DatabaseSync;
  readonly path: string;
  readonly folder: string;
  readonly isReader: boolean;
  readonly unlock: Unlock;
}

export function makeEngine({ database, path, folder, isReader, unlock }: SqliteEngine): Engine {
  const prepared = new Map<Statement, StatementSync>();
  const run = <Row>(one: Statement<Row>, args: Args): readonly Row[] => {
    let ready = prepared.get(one);
    if (!ready) {
      ready = database.prepare(one.text);
      prepared.set(one, ready);
    }
    return ready.all(...one.values(args)) as Row[];
  };
  const inTransaction = <Result>(steps: () => Steps<Result>): Result => {
    database.exec('begin immediate');
    try {
      const doing = steps();
      let step = doing.next();
      while (!step.done) step = doing.next(run(step.value.statement, step.value.args));
      database.exec('commit');
      return step.value;
    } catch (error) {
      // A full disk has rolled back already.
      if (database.isTransaction) database.exec('rollback');
      throw error;
    }
  };
  const inWords = <Result>(work: () => Result): Result => {
    try {
      return work();
    } catch (error) {
      throw troubleOf(error, path);
    }
  };
  return {
    isAlone: !isReader,
    read: (one, args) => inWords(() => run(one, args)),
    write: async (steps) => {
      if (isReader) throw onlyReads(path);
      return inWords(() => inTransaction(steps));
    },
    scrub: async () =>
      inWords(() => {
        keepErased(database, folder);
        // Freed pages are overwritten (secure_delete), but older copies of them stand in the log until it is cut off.
        database.exec('pragma wal_checkpoint(truncate)');
      }),
    close: async () => {
      if (database.isOpen) database.close();
      unlock();
    },
  };
}

const onlyReads = (path: string): StoreTrouble =>
  new StoreTrouble('read-only', `${path} was opened to look things up only.`, 'Say it again when it is free.');
