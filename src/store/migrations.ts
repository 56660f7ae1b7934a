/**
 * The schema, one step a version, forwards only. A step that has been released is never changed again. Each is built
 * for both databases; a backend runs those that its file has not seen, all in one transaction.
 */
import type { Compilable, CreateTableBuilder } from 'kysely';
import type { Builder } from './dialect.ts';

type Step = (builder: Builder) => readonly Compilable[];

const steps: readonly Step[] = [
  ({ db: { schema }, types: { text, whole }, tableEnd }) => {
    const owned = <T extends string, C extends string>(table: CreateTableBuilder<T, C>) =>
      table.addColumn('owner', text, (column) => column.notNull().references('owner.id').onDelete('cascade'));
    return [
      schema
        .createTable('owner')
        .addColumn('id', text, (column) => column.notNull().primaryKey())
        .addColumn('erase_at', whole)
        .modifyEnd(tableEnd),
      schema.createIndex('owner_erase_at').on('owner').column('erase_at').where('erase_at', 'is not', null),
      owned(schema.createTable('account'))
        .addColumn('kind', text, (column) => column.notNull())
        .addColumn('platform', text, (column) => column.notNull())
        .addColumn('name', text, (column) => column.notNull())
        .addPrimaryKeyConstraint('account_key', ['kind', 'platform', 'name'])
        .modifyEnd(tableEnd),
      schema.createIndex('account_owner').on('account').column('owner'),
      owned(schema.createTable('joined'))
        .addColumn('old', text, (column) => column.notNull().primaryKey())
        .modifyEnd(tableEnd),
      schema.createIndex('joined_owner').on('joined').column('owner'),
      owned(schema.createTable('document'))
        .addColumn('kind', text, (column) => column.notNull())
        .addColumn('key', text, (column) => column.notNull())
        .addColumn('data', text, (column) => column.notNull())
        .addColumn('version', whole, (column) => column.notNull())
        .addColumn('saved_at', whole, (column) => column.notNull())
        .addColumn('until', whole)
        .addPrimaryKeyConstraint('document_key', ['owner', 'kind', 'key'])
        .modifyEnd(tableEnd),
      schema.createIndex('document_until').on('document').column('until').where('until', 'is not', null),
      owned(schema.createTable('reminder'))
        .addColumn('id', text, (column) => column.notNull())
        .addColumn('due_at', whole, (column) => column.notNull())
        .addColumn('ring_at', whole, (column) => column.notNull())
        .addColumn('set_at', whole, (column) => column.notNull())
        .addColumn('attempts', whole, (column) => column.notNull())
        .addColumn('platform', text, (column) => column.notNull())
        .addColumn('place', text, (column) => column.notNull())
        .addColumn('person', text, (column) => column.notNull())
        .addColumn('address', text, (column) => column.notNull())
        .addColumn('about', text, (column) => column.notNull())
        .addColumn('batch', text)
        .addPrimaryKeyConstraint('reminder_key', ['owner', 'id'])
        .modifyEnd(tableEnd),
      schema.createIndex('reminder_ring').on('reminder').columns(['platform', 'ring_at']),
      owned(schema.createTable('link_code'))
        .addColumn('code', text, (column) => column.notNull().primaryKey())
        .addColumn('until', whole, (column) => column.notNull())
        .modifyEnd(tableEnd),
      schema.createIndex('link_code_owner').on('link_code').column('owner'),
      schema
        .createTable('value')
        .addColumn('space', text, (column) => column.notNull())
        .addColumn('key', text, (column) => column.notNull())
        .addColumn('value', text, (column) => column.notNull())
        .addColumn('until', whole)
        .addPrimaryKeyConstraint('value_key', ['space', 'key'])
        .modifyEnd(tableEnd),
      schema.createIndex('value_until').on('value').column('until').where('until', 'is not', null),
    ];
  },
  ({ db: { schema }, types: { text, whole }, tableEnd }) => [
    schema
      .createTable('erased')
      .addColumn('owner', text, (column) => column.notNull().primaryKey())
      .addColumn('at', whole, (column) => column.notNull())
      .modifyEnd(tableEnd),
  ],
];

/** The version that this program reads and writes. */
export const newest = steps.length;

/** Statements that lead from a version (0: nothing there yet) to a later one. */
export const migrationsFrom = (version: number, builder: Builder, to = newest): readonly string[] =>
  steps.slice(version, to).flatMap((step) => step(builder).map((query) => query.compile().sql));
