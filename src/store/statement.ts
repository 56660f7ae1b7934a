/**
 * Statements are built by Kysely once, with a slot where a value will stand, and then run on the driver itself: what
 * checks the names and types of columns costs nothing at a request.
 */
import { type Compilable, type RawBuilder, sql } from 'kysely';

class Slot {
  readonly name: string;
  constructor(name: string) {
    this.name = name;
  }
}

/** Where a value will stand. */
export const slot = <T>(name: string): RawBuilder<T> => sql<T>`${new Slot(name)}`;

export type Value = string | number | null;
export type Args = Readonly<Record<string, Value>>;

export interface Statement<Row = unknown> {
  readonly text: string;
  readonly values: (args: Args) => Value[];
  /** Never there; it holds the type of a row. */
  readonly row?: Row;
}

/** Built when it is first needed: a question on the command line needs a few of them. */
export function statement<Row>(build: () => Compilable<Row>): Statement<Row> {
  let built: { readonly text: string; readonly parameters: readonly unknown[] } | null = null;
  const query = () => {
    if (!built) {
      const { sql: text, parameters } = build().compile();
      built = { text, parameters };
    }
    return built;
  };
  return {
    get text() {
      return query().text;
    },
    values: (args) => {
      const { text, parameters } = query();
      return parameters.map((one) => checked(one instanceof Slot ? args[one.name] : one, one, text));
    },
  };
}

/** A driver would take a missing value as NULL and a date or an object as something else. */
function checked(value: unknown, from: unknown, text: string): Value {
  if (value === null || typeof value === 'string' || Number.isSafeInteger(value)) return value as Value;
  const where = from instanceof Slot ? `"${from.name}"` : 'a constant';
  throw new TypeError(`${where} is ${typeof value}, no text, whole number or null, in: ${text}`);
}

export interface Ask {
  readonly statement: Statement;
  readonly args: Args;
}

/** What is done in one transaction: statements handed out one after another, and what comes of them. */
export type Steps<Result> = Generator<Ask, Result, readonly unknown[]>;

export function* ask<Row>(one: Statement<Row>, args: Args): Steps<readonly Row[]> {
  return (yield { statement: one, args }) as readonly Row[];
}

/** What a backend gives to the store that is built on it. */
export interface Engine {
  /** No other process writes while this one has it open. */
  readonly isAlone: boolean;
  /** One statement that only reads; its rows at once where they need not be waited for. */
  readonly read: <Row>(one: Statement<Row>, args: Args) => readonly Row[] | Promise<readonly Row[]>;
  /** All of the steps or, where one throws, none. May run them anew from the start. */
  readonly write: <Result>(steps: () => Steps<Result>) => Promise<Result>;
  /** What was erased leaves what the backend keeps beside its tables. */
  readonly scrub: () => Promise<void>;
  readonly close: () => Promise<void>;
}
