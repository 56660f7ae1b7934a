/** What differs between the two databases where statements are built. Neither runs them through Kysely. */
import {
  DummyDriver,
  Kysely,
  PostgresAdapter,
  PostgresIntrospector,
  PostgresQueryCompiler,
  type RawBuilder,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
  sql,
} from 'kysely';
import type { Schema } from './schema.ts';

export interface Builder {
  readonly db: Kysely<Schema>;
  /** Several processes write at once: rows that others hold are waited for, or skipped. */
  readonly shared: boolean;
  readonly types: { readonly text: RawBuilder<unknown>; readonly whole: RawBuilder<unknown> };
  /** Behind the columns of a table. */
  readonly tableEnd: RawBuilder<unknown>;
}

export const sqliteBuilder = (): Builder => ({
  db: new Kysely({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  }),
  shared: false,
  types: { text: sql`text`, whole: sql`integer` },
  tableEnd: sql`strict`,
});

/** A schema of its own, so that the tables get on with others of the same database. */
export const postgresSchema = 'lyeward';

export const postgresBuilder = (): Builder => ({
  db: new Kysely<Schema>({
    dialect: {
      createAdapter: () => new PostgresAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: (db) => new PostgresIntrospector(db),
      createQueryCompiler: () => new PostgresQueryCompiler(),
    },
  }).withSchema(postgresSchema),
  shared: true,
  // Compared by code points, so that the order is the same everywhere and a prefix is a range of the index.
  types: { text: sql`text collate "C"`, whole: sql`bigint` },
  tableEnd: sql``,
});
