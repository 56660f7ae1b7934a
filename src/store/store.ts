/** The store on a database: what belongs to whom, in statements that can name no other owner. */
import { randomBytes } from 'node:crypto';
import { apply, Conflict } from './change.ts';
import { codeLife, newCode, shown, typed } from './code.ts';
import { join } from './join.ts';
import type {
  Account,
  Bells,
  Change,
  Claimed,
  Data,
  Document,
  Kind,
  Own,
  Reminder,
  Room,
  Store,
  Values,
} from './port.ts';
import { type Args, ask, type Engine, type Steps } from './statement.ts';
import type { Reads, Statements } from './statements.ts';
import { behindPrefix, canBeKept, checkText } from './texts.ts';

/** People in their rooms of whom it is known that nothing is set. */
const mostKnown = 10_000;

const setsSomething = (change: Change): boolean => change.do === 'put' && change.kind === 'settings';

/** No page is longer: a query must not hold up the others. */
const longestPage = 1000;

/** How an owner is found: by an account, a room, or its id. */
interface Whose {
  readonly reads: Reads;
  readonly args: Args;
  /** Makes the owner where nothing of it was kept before; null: it must be there. */
  readonly make: { readonly holder: string; readonly platform: string; readonly name: string } | null;
  readonly mayLink: boolean;
}

export interface StoreOptions {
  readonly engine: Engine;
  readonly statements: Statements;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

const newId = (): string => randomBytes(12).toString('base64url');

export function makeStore({ engine, statements: of, now }: StoreOptions): Store {
  /** To whom the `Own` of a claimed reminder belongs, to find it again. */
  const owners = new WeakMap<Own, Whose>();

  /** Every question asks for settings, and most people have none: so it is until somebody sets something or is joined. */
  const unset = new Set<string>();
  const writeSettings: Engine['write'] = (steps) => engine.write(steps).finally(() => unset.clear());

  /** The owner's id, its row locked against others that would write to it. */
  function* owned(whose: Whose): Steps<string | null> {
    for (;;) {
      const found = yield* whose.make ? ask(of.ownerOfAccount, whose.args) : ask(of.ownerOfOwner, whose.args);
      const owner = found[0]?.owner;
      if (owner !== undefined) {
        // Locked, or gone in the meantime: an account may be with another owner now.
        const locked = yield* ask(of.lockOwner, { owner });
        if (locked.length > 0) return owner;
        if (!whose.make) return null;
      } else return null;
    }
  }

  function* erased(owner: string, at: number): Steps<void> {
    yield* ask(of.addErased, { owner, now: at });
    yield* ask(of.removeOwner, { owner });
  }

  function* made(whose: Whose): Steps<string> {
    for (;;) {
      const owner = yield* owned(whose);
      if (owner !== null) return owner;
      if (!whose.make) throw new Conflict();
      const id = newId();
      yield* ask(of.addOwner, { owner: id });
      const added = yield* ask(of.addAccount, { ...whose.make, owner: id });
      if (added.length > 0) return id;
      yield* ask(of.removeOwner, { owner: id });
    }
  }

  /** How many of each platform are among the eldest that are due. */
  function* shares(
    platforms: readonly string[],
    at: number,
    limit: number,
  ): Steps<readonly (readonly [string, number])[]> {
    if (platforms.length === 1) return platforms.map((platform) => [platform, limit] as const);
    const due: { readonly platform: string; readonly at: number }[] = [];
    for (const platform of new Set(platforms)) {
      const rows = yield* ask(of.due, { platform, now: at, limit });
      due.push(...rows.map(({ ring_at }) => ({ platform, at: ring_at })));
    }
    const eldest = due.sort((a, b) => a.at - b.at).slice(0, limit);
    return [...Map.groupBy(eldest, ({ platform }) => platform)].map(
      ([platform, some]) => [platform, some.length] as const,
    );
  }

  const ownFor = (whose: Whose): Own => {
    const { reads, args } = whose;
    return {
      get: async (kind, key) => {
        if (!canBeKept(key)) return null;
        const [row] = await engine.read(reads.get, { ...args, kind, key, now: now() });
        return row ? document(row) : null;
      },
      list: async (kind, { prefix = '', after = '', limit }) => {
        if (!canBeKept(prefix) || !canBeKept(after)) return [];
        const page = { ...args, kind, prefix, after, limit: Math.min(limit, longestPage), now: now() };
        const end = behindPrefix(prefix);
        const rows = await (end === null
          ? engine.read(reads.list, page)
          : engine.read(reads.listBefore, { ...page, end }));
        return rows.map(document);
      },
      count: async (kind) => {
        const [row] = await engine.read(reads.count, { ...args, kind, now: now() });
        return row?.count ?? 0;
      },
      reminders: async () => (await engine.read(reads.reminders, args)).map(reminder),
      commit: async (changes) => {
        const write = changes.some(setsSomething) ? writeSettings : engine.write;
        try {
          await write(function* () {
            const owner = yield* made(whose);
            yield* apply(of, owner, changes, now());
          });
          return { ok: true };
        } catch (error) {
          if (error instanceof Conflict) return { ok: false, why: 'conflict' };
          throw error;
        }
      },
      erase: async () => {
        await engine.write(function* () {
          const owner = yield* owned(whose);
          if (owner !== null) yield* erased(owner, now());
        });
        // It is erased all the same; what is left beside the tables then goes at the next sweep.
        await engine.scrub().catch(() => {});
      },
      eraseAt: (at) =>
        engine.write(function* () {
          const owner = yield* owned(whose);
          if (owner !== null) yield* ask(of.eraseOwnerAt, { owner, at });
        }),
      newLinkCode: async (at) => {
        if (!whose.mayLink) throw new TypeError('a room is nobody: it has no accounts to link');
        const code = newCode();
        await engine.write(function* () {
          const owner = yield* made(whose);
          yield* ask(of.removeCodesOf, { owner });
          yield* ask(of.addCode, { code, owner, until: at + codeLife });
        });
        return shown(code);
      },
      accounts: async () =>
        (await engine.read(reads.accounts, args)).map(({ platform, person }) => ({ platform, person })),
    };
  };

  const whoseAccount = ({ platform, person }: Account): Whose => held('person', platform, person);
  const held = (holder: 'person' | 'room', platform: string, name: string): Whose => {
    const make = { holder, platform: checkText(platform, 'a platform'), name: checkText(name, `a ${holder}`) };
    return { reads: of.byAccount, args: make, make, mayLink: holder === 'person' };
  };

  const bells: Bells = {
    claim: ({ platforms, now: at, leaseUntil, limit }) =>
      engine
        .write(function* () {
          const all: Claimed[] = [];
          for (const [platform, most] of yield* shares(platforms, at, Math.min(limit, longestPage))) {
            const rows = yield* ask(of.claim, { platform, now: at, leaseUntil, limit: most });
            for (const row of rows) {
              const whose: Whose = { reads: of.byOwner, args: { owner: row.owner }, make: null, mayLink: false };
              const own = ownFor(whose);
              owners.set(own, whose);
              all.push({ ...reminder(row), own, attempt: row.attempts });
            }
          }
          return all;
        })
        .then((all) => all.sort((a, b) => a.dueAt - b.dueAt)),
    told: (claimed, changes = []) =>
      writeSettings(function* () {
        const owner = yield* owned(whoseOf(claimed, owners));
        if (owner === null) return;
        const gone = yield* ask(of.told, { owner, id: claimed.id, dueAt: claimed.dueAt });
        if (gone.length > 0) yield* apply(of, owner, changes, now());
      }),
    again: (claimed, at) =>
      engine.write(function* () {
        const owner = yield* owned(whoseOf(claimed, owners));
        const { id, dueAt, attempt } = claimed;
        if (owner !== null) yield* ask(of.again, { owner, id, dueAt, attempt, at });
      }),
    next: async (platforms) => {
      const found = await Promise.all(platforms.map((platform) => engine.read(of.next, { platform })));
      const times = found.flatMap(([row]) => (typeof row?.at === 'number' ? [row.at] : []));
      return times.length > 0 ? Math.min(...times) : null;
    },
  };

  const values = (space: string): Values => ({
    get: async (key) => {
      if (!canBeKept(key)) return null;
      return (await engine.read(of.getValue, { space, key, now: now() }))[0]?.value ?? null;
    },
    set: (key, value, until) =>
      engine.write(function* () {
        if (!canBeKept(value)) throw new RangeError('a value holds a character that cannot be kept');
        yield* ask(of.setValue, { space, key: checkText(key, 'a key'), value, until: until ?? null });
      }),
    delete: (key) =>
      engine.write(function* () {
        if (canBeKept(key)) yield* ask(of.deleteValue, { space, key });
      }),
  });

  return {
    of: (account) => ownFor(whoseAccount(account)),
    room: ({ platform, place }: Room) => ownFor(held('room', platform, place)),
    both: async ({ platform, person, place }, kind, key) => {
      const name = `${kind}\0${key}\0${platform}\0${place}\0${person}`;
      if (unset.has(name)) return { own: null, room: null };
      checkText(platform, 'a platform');
      checkText(person, 'a person');
      checkText(place, 'a room');
      if (!canBeKept(key)) return { own: null, room: null };
      const found = engine.read(of.both, { platform, person, place, kind, key, now: now() });
      if (engine.isAlone && kind === 'settings' && 'length' in found && found.length === 0) {
        if (unset.size >= mostKnown) unset.clear();
        unset.add(name);
      }
      const rows = await found;
      const data = (holder: string): Data | null => {
        const row = rows.find((one) => one.holder === holder);
        return row ? (JSON.parse(row.data) as Data) : null;
      };
      return { own: data('person'), room: data('room') };
    },
    link: async (account, code, at) => {
      const key = typed(code);
      const whose = whoseAccount(account);
      return writeSettings(function* () {
        const [found] = yield* ask(of.findCode, { code: key, now: at });
        const into =
          found && (yield* owned({ reads: of.byOwner, args: { owner: found.owner }, make: null, mayLink: false }));
        if (!into) return { ok: false, why: 'unknown-code' } as const;
        const owner = yield* made(whose);
        if (owner === into) return { ok: false, why: 'same-owner' } as const;
        const taken = yield* ask(of.takeCode, { code: key });
        if (taken.length === 0) return { ok: false, why: 'unknown-code' } as const;
        yield* join(of, owner, into, newId());
        return { ok: true } as const;
      });
    },
    unlink: (account) =>
      engine.write(function* () {
        const whose = whoseAccount(account);
        const owner = yield* owned(whose);
        if (owner === null || !whose.make) return;
        const accounts = yield* ask(of.byOwner.accounts, { owner });
        if (accounts.length > 1) yield* ask(of.removeAccount, whose.make);
      }),
    bells,
    values,
    sweep: async (at) => {
      await engine.write(function* () {
        for (const one of [of.sweepDocuments, of.sweepValues, of.sweepCodes]) yield* ask(one, { now: at });
        for (const { id } of yield* ask(of.overdueOwners, { now: at })) yield* erased(id, at);
      });
      await engine.scrub();
    },
    close: engine.close,
  };
}

function whoseOf({ own }: Claimed, owners: WeakMap<Own, Whose>): Whose {
  const whose = owners.get(own);
  if (!whose) throw new TypeError('this reminder was claimed from another store');
  return whose;
}

const document = (row: {
  readonly kind: string;
  readonly key: string;
  readonly data: string;
  readonly version: number;
  readonly saved_at: number;
}): Document => ({
  kind: row.kind as Kind,
  key: row.key,
  data: JSON.parse(row.data) as Data,
  version: row.version,
  savedAt: row.saved_at,
});

const reminder = (row: {
  readonly id: string;
  readonly due_at: number;
  readonly set_at: number;
  readonly platform: string;
  readonly place: string;
  readonly person: string;
  readonly address: string;
  readonly about: string;
  readonly batch: string | null;
}): Reminder => ({
  id: row.id,
  dueAt: row.due_at,
  setAt: row.set_at,
  platform: row.platform,
  place: row.place,
  person: row.person,
  address: row.address,
  about: JSON.parse(row.about) as Data,
  batch: row.batch,
});
