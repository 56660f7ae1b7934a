/** Every statement of the store, for both databases. */
import { type Expression, type SqlBool, sql } from 'kysely';
import type { Builder } from './dialect.ts';
import { slot, statement } from './statement.ts';

const text = (name: string) => slot<string>(name);
const whole = (name: string) => slot<number>(name);
const wholeOrNull = (name: string) => slot<number | null>(name);

/** What has outlived its time is not there, even where nobody has swept it away. Needs the slot `now`. */
const lives = () => sql<SqlBool>`(${sql.ref('until')} is null or ${sql.ref('until')} > ${whole('now')})`;

const documentColumns = ['kind', 'key', 'data', 'version', 'saved_at'] as const;

/** What one owner reads. `owner` is an expression, so that it is found in the same statement. */
function reads({ db }: Builder, owner: Expression<string>) {
  const documents = db.selectFrom('document').where('owner', '=', owner).where('kind', '=', text('kind')).where(lives);
  const listed = documents
    .select(documentColumns)
    .where('key', '>', text('after'))
    .where('key', '>=', text('prefix'))
    .orderBy('key')
    .limit(whole('limit'));
  return {
    get: statement(() => documents.select(documentColumns).where('key', '=', text('key'))),
    list: statement(() => listed),
    listBefore: statement(() => listed.where('key', '<', text('end'))),
    count: statement(() => documents.select(({ fn }) => fn.countAll<number>().as('count'))),
    reminders: statement(() =>
      db.selectFrom('reminder').selectAll().where('owner', '=', owner).orderBy('due_at').orderBy('id'),
    ),
    accounts: statement(() =>
      db
        .selectFrom('account')
        .select(['platform', 'name as person'])
        .where('owner', '=', owner)
        .where('kind', '=', 'person')
        .orderBy('platform')
        .orderBy('name'),
    ),
  };
}
export type Reads = ReturnType<typeof reads>;

export function makeStatements(builder: Builder) {
  const { db, shared } = builder;
  const ofAccount = db
    .selectFrom('account')
    .select('owner')
    .where('kind', '=', text('holder'))
    .where('platform', '=', text('platform'))
    .where('name', '=', text('name'));
  /** An owner by its id, or what it has become part of. */
  const ofOwner = sql<string>`coalesce(${db.selectFrom('joined').select('owner').where('old', '=', text('owner'))}, ${text('owner')})`;
  const lock = db.selectFrom('owner').select('id').where('id', '=', text('owner'));
  const due = db
    .selectFrom('reminder')
    .select(['owner', 'id'])
    .where('platform', '=', text('platform'))
    .where('ring_at', '<=', whole('now'))
    .orderBy('ring_at')
    .limit(whole('limit'));
  const insertDocument = db.insertInto('document').values({
    owner: text('owner'),
    kind: text('kind'),
    key: text('key'),
    data: text('data'),
    version: 1,
    saved_at: whole('now'),
    until: wholeOrNull('until'),
  });
  const expired = sql<SqlBool>`coalesce(document.until <= ${whole('now')}, false)`;
  const written = {
    data: sql<string>`excluded.data`,
    saved_at: sql<number>`excluded.saved_at`,
    until: sql<number | null>`excluded.until`,
    version: sql<number>`case when ${expired} then 1 else document.version + 1 end`,
  };
  const at = sql<number>`cast(${whole('now')} as bigint)`.as('at');
  const documentKey = ['owner', 'kind', 'key'] as const;
  const onlyDocument = db
    .deleteFrom('document')
    .where('owner', '=', text('owner'))
    .where('kind', '=', text('kind'))
    .where('key', '=', text('key'));

  return {
    byAccount: reads(builder, ofAccount as unknown as Expression<string>),
    byOwner: reads(builder, ofOwner),

    /** One document of a person, and the one under the same key of a room. */
    both: statement(() =>
      db
        .selectFrom('account')
        .innerJoin('document', 'document.owner', 'account.owner')
        .select(['account.kind as holder', 'document.data'])
        .where('account.platform', '=', text('platform'))
        .where(({ eb, or }) =>
          or([
            eb('account.kind', '=', 'person').and('account.name', '=', text('person')),
            eb('account.kind', '=', 'room').and('account.name', '=', text('place')),
          ]),
        )
        .where('document.kind', '=', text('kind'))
        .where('document.key', '=', text('key'))
        .where(lives),
    ),

    ownerOfAccount: statement(() => ofAccount),
    ownerOfOwner: statement(() => db.selectNoFrom(ofOwner.as('owner'))),
    lockOwner: statement(() => (shared ? lock.forUpdate() : lock)),
    addOwner: statement(() => db.insertInto('owner').values({ id: text('owner'), erase_at: null })),
    addAccount: statement(() =>
      db
        .insertInto('account')
        .values({ kind: text('holder'), platform: text('platform'), name: text('name'), owner: text('owner') })
        .onConflict((clash) => clash.doNothing())
        .returning('owner'),
    ),
    removeAccount: statement(() =>
      db
        .deleteFrom('account')
        .where('kind', '=', text('holder'))
        .where('platform', '=', text('platform'))
        .where('name', '=', text('name')),
    ),
    removeOwner: statement(() => db.deleteFrom('owner').where('id', '=', text('owner'))),
    /** The owner, and those that became part of it: all of them are gone. */
    addErased: statement(() =>
      db
        .insertInto('erased')
        .columns(['owner', 'at'])
        .expression(
          db
            .selectFrom('owner')
            .select(['id as owner', at])
            .where('id', '=', text('owner'))
            .union(db.selectFrom('joined').select(['old as owner', at]).where('owner', '=', text('owner'))),
        )
        .onConflict((clash) => clash.doNothing()),
    ),
    eraseOwnerAt: statement(() =>
      db
        .updateTable('owner')
        .set({ erase_at: wholeOrNull('at') })
        .where('id', '=', text('owner')),
    ),

    /** Whatever stands there. */
    put: statement(() =>
      insertDocument.onConflict((clash) => clash.columns(documentKey).doUpdateSet(written)).returning('version'),
    ),
    putNew: statement(() =>
      insertDocument
        .onConflict((clash) => clash.columns(documentKey).doUpdateSet(written).where(expired))
        .returning('version'),
    ),
    replace: statement(() =>
      db
        .updateTable('document')
        .set({
          data: text('data'),
          saved_at: whole('now'),
          until: wholeOrNull('until'),
          version: sql<number>`version + 1`,
        })
        .where('owner', '=', text('owner'))
        .where('kind', '=', text('kind'))
        .where('key', '=', text('key'))
        .where('version', '=', whole('expects'))
        .where(lives)
        .returning('version'),
    ),
    remove: statement(() => onlyDocument),
    removeOfBatch: statement(() =>
      db.deleteFrom('reminder').where('owner', '=', text('owner')).where('batch', '=', text('key')),
    ),
    remind: statement(() =>
      db
        .insertInto('reminder')
        .values({
          owner: text('owner'),
          id: text('id'),
          due_at: whole('dueAt'),
          ring_at: whole('dueAt'),
          set_at: whole('now'),
          attempts: 0,
          platform: text('platform'),
          place: text('place'),
          person: text('person'),
          address: text('address'),
          about: text('about'),
          batch: slot<string | null>('batch'),
        })
        .onConflict((clash) => clash.doNothing()),
    ),
    move: statement(() =>
      db
        .updateTable('reminder')
        .set({ due_at: whole('dueAt'), ring_at: whole('dueAt'), attempts: 0 })
        .where('owner', '=', text('owner'))
        .where('id', '=', text('id'))
        .where('due_at', '!=', whole('dueAt')),
    ),
    cancel: statement(() => db.deleteFrom('reminder').where('owner', '=', text('owner')).where('id', '=', text('id'))),

    due: statement(() => due.clearSelect().select('ring_at')),
    claim: statement(() =>
      db
        .with('due', () => (shared ? due.forUpdate().skipLocked() : due))
        .updateTable('reminder')
        .set({ ring_at: whole('leaseUntil'), attempts: sql<number>`attempts + 1` })
        .where(({ eb, refTuple, selectFrom }) =>
          eb(refTuple('owner', 'id'), 'in', selectFrom('due').select(['owner', 'id']).$asTuple('owner', 'id')),
        )
        .returningAll(),
    ),
    told: statement(() =>
      db
        .deleteFrom('reminder')
        .where('owner', '=', text('owner'))
        .where('id', '=', text('id'))
        .where('due_at', '=', whole('dueAt'))
        .returning('id'),
    ),
    again: statement(() =>
      db
        .updateTable('reminder')
        .set({ ring_at: whole('at') })
        .where('owner', '=', text('owner'))
        .where('id', '=', text('id'))
        .where('due_at', '=', whole('dueAt'))
        .where('attempts', '=', whole('attempt')),
    ),
    next: statement(() =>
      db
        .selectFrom('reminder')
        .select(({ fn }) => fn.min('ring_at').as('at'))
        .where('platform', '=', text('platform')),
    ),

    addCode: statement(() =>
      db.insertInto('link_code').values({ code: text('code'), owner: text('owner'), until: whole('until') }),
    ),
    removeCodesOf: statement(() => db.deleteFrom('link_code').where('owner', '=', text('owner'))),
    findCode: statement(() =>
      db.selectFrom('link_code').select('owner').where('code', '=', text('code')).where('until', '>', whole('now')),
    ),
    takeCode: statement(() => db.deleteFrom('link_code').where('code', '=', text('code')).returning('owner')),

    /** Documents whose key the other owner has too. */
    clashes: statement(() =>
      db
        .selectFrom('document')
        .innerJoin('document as other', (join) =>
          join
            .onRef('other.kind', '=', 'document.kind')
            .onRef('other.key', '=', 'document.key')
            .on('other.owner', '=', text('into')),
        )
        .select(['document.kind', 'document.key', 'document.data'])
        .where('document.owner', '=', text('owner')),
    ),
    hasKey: statement(() =>
      db
        .selectFrom('document')
        .select('owner')
        .where('owner', 'in', [text('owner'), text('into')])
        .where('kind', '=', text('kind'))
        .where('key', '=', text('key')),
    ),
    rename: statement(() =>
      db
        .updateTable('document')
        .set({ key: text('to'), data: text('data') })
        .where('owner', '=', text('owner'))
        .where('kind', '=', text('kind'))
        .where('key', '=', text('key')),
    ),
    renameBatch: statement(() =>
      db
        .updateTable('reminder')
        .set({ batch: text('to') })
        .where('owner', '=', text('owner'))
        .where('batch', '=', text('key')),
    ),
    /** Ids are chosen apart by two owners: one that both chose is changed. */
    renameReminders: statement(() =>
      db
        .updateTable('reminder')
        .set({ id: sql<string>`substr(id, 1, 40) || ${text('ending')}` })
        .where('owner', '=', text('owner'))
        .where('id', 'in', db.selectFrom('reminder').select('id').where('owner', '=', text('into'))),
    ),
    joinDocuments: statement(() =>
      db
        .updateTable('document')
        .set({ owner: text('into') })
        .where('owner', '=', text('owner')),
    ),
    joinReminders: statement(() =>
      db
        .updateTable('reminder')
        .set({ owner: text('into') })
        .where('owner', '=', text('owner')),
    ),
    joinAccounts: statement(() =>
      db
        .updateTable('account')
        .set({ owner: text('into') })
        .where('owner', '=', text('owner')),
    ),
    joinJoined: statement(() =>
      db
        .updateTable('joined')
        .set({ owner: text('into') })
        .where('owner', '=', text('owner')),
    ),
    addJoined: statement(() => db.insertInto('joined').values({ old: text('owner'), owner: text('into') })),

    getValue: statement(() =>
      db
        .selectFrom('value')
        .select('value')
        .where('space', '=', text('space'))
        .where('key', '=', text('key'))
        .where(lives),
    ),
    setValue: statement(() =>
      db
        .insertInto('value')
        .values({ space: text('space'), key: text('key'), value: text('value'), until: wholeOrNull('until') })
        .onConflict((clash) =>
          clash.columns(['space', 'key']).doUpdateSet({
            value: sql<string>`excluded.value`,
            until: sql<number | null>`excluded.until`,
          }),
        ),
    ),
    deleteValue: statement(() =>
      db.deleteFrom('value').where('space', '=', text('space')).where('key', '=', text('key')),
    ),

    sweepDocuments: statement(() => db.deleteFrom('document').where('until', '<=', whole('now'))),
    sweepValues: statement(() => db.deleteFrom('value').where('until', '<=', whole('now'))),
    sweepCodes: statement(() => db.deleteFrom('link_code').where('until', '<=', whole('now'))),
    overdueOwners: statement(() => db.selectFrom('owner').select('id').where('erase_at', '<=', whole('now'))),
  };
}
export type Statements = ReturnType<typeof makeStatements>;
