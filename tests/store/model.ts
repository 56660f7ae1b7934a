/** The store as it is meant, in memory and as plainly as can be said: what the backends are judged by. */
import type {
  Account,
  Change,
  Claimed,
  Data,
  Document,
  Kind,
  NewReminder,
  Own,
  Reminder,
  Store,
  Values,
} from '../../src/store/port.ts';

interface Doc extends Document {
  readonly until: number | null;
}
interface Bell extends Reminder {
  readonly ringAt: number;
  readonly attempts: number;
}
interface Owner {
  readonly documents: Map<string, Doc>;
  readonly reminders: Map<string, Bell>;
  readonly accounts: Map<string, Account>;
  eraseAt: number | null;
  /** What this has become part of. */
  joined: Owner | null;
}

const id = (...parts: readonly string[]): string => JSON.stringify(parts);
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
/** By code points, as UTF-8 bytes stand. */
const byPoints = (a: string, b: string): number => Buffer.compare(Buffer.from(a), Buffer.from(b));

const canBeKept = (text: string): boolean => !text.includes('\0') && text.isWellFormed();
function checkText(text: string, longest = 2000): void {
  if (text === '' || text.length > longest || !canBeKept(text)) throw new RangeError(text);
}

export function createModel(now: () => number = Date.now): Store {
  const holders = new Map<string, Owner>();
  const owners = new Set<Owner>();
  const codes = new Map<string, { readonly owner: Owner; readonly until: number }>();
  const spaces = new Map<string, { readonly value: string; readonly until: number | null }>();
  let made = 0;

  const make = (): Owner => {
    const owner = { documents: new Map(), reminders: new Map(), accounts: new Map(), eraseAt: null, joined: null };
    owners.add(owner);
    return owner;
  };
  const drop = (owner: Owner): void => {
    owners.delete(owner);
    for (const [key, one] of holders) if (one === owner) holders.delete(key);
    for (const [key, one] of codes) if (one.owner === owner) codes.delete(key);
  };
  const lives = (until: number | null): boolean => until === null || until > now();

  const apply = (owner: Owner, changes: readonly Change[]): boolean => {
    const documents = new Map(owner.documents);
    const reminders = new Map(owner.reminders);
    for (const change of changes) {
      if (change.do === 'put') {
        const { kind, key, data, expects, until = null } = change;
        checkText(key, 200);
        const there = documents.get(id(kind, key));
        const version = there && lives(there.until) ? there.version : 0;
        if (expects !== null && expects !== version) return false;
        documents.set(id(kind, key), { kind, key, data: copy(data), version: version + 1, savedAt: now(), until });
      } else if (change.do === 'remove') {
        const { kind, key } = change;
        checkText(key, 200);
        documents.delete(id(kind, key));
        for (const [one, { batch }] of reminders) if (kind === 'batch' && batch === key) reminders.delete(one);
      } else if (change.do === 'remind') {
        const { reminder } = change;
        checkText(reminder.id, 64);
        for (const text of [reminder.platform, reminder.place, reminder.person]) checkText(text);
        if (reminders.has(reminder.id)) continue;
        const bell = { ...copy<NewReminder>(reminder), setAt: now(), ringAt: reminder.dueAt, attempts: 0 };
        reminders.set(reminder.id, bell);
      } else if (change.do === 'move') {
        const there = reminders.get(change.id);
        const { dueAt } = change;
        if (there && there.dueAt !== dueAt) reminders.set(change.id, { ...there, dueAt, ringAt: dueAt, attempts: 0 });
      } else reminders.delete(change.id);
    }
    for (const [mine, next] of [
      [owner.documents, documents],
      [owner.reminders, reminders],
    ] as [Map<string, unknown>, Map<string, unknown>][]) {
      mine.clear();
      for (const [key, value] of next) mine.set(key, value);
    }
    return true;
  };

  const shownReminder = ({ ringAt: _ringAt, attempts: _attempts, ...reminder }: Bell): Reminder => copy(reminder);
  const shownDocument = ({ until: _until, ...document }: Doc): Document => copy(document);

  const ownOf = (find: () => Owner | null, makeIt: (() => Owner) | null): Own => {
    const documents = (kind: Kind): readonly Doc[] =>
      [...(find()?.documents.values() ?? [])]
        .filter((one) => one.kind === kind && lives(one.until))
        .sort((a, b) => byPoints(a.key, b.key));
    return {
      get: async (kind, key) => {
        const found = documents(kind).find((one) => one.key === key);
        return found ? shownDocument(found) : null;
      },
      list: async (kind, { prefix = '', after = '', limit }) =>
        documents(kind)
          .filter(
            ({ key }) => canBeKept(prefix) && canBeKept(after) && key.startsWith(prefix) && byPoints(key, after) > 0,
          )
          .slice(0, limit)
          .map(shownDocument),
      count: async (kind) => documents(kind).length,
      reminders: async () =>
        [...(find()?.reminders.values() ?? [])]
          .sort((a, b) => a.dueAt - b.dueAt || byPoints(a.id, b.id))
          .map(shownReminder),
      commit: async (changes) => {
        const there = find();
        const owner = there ?? makeIt?.();
        let ok = false;
        try {
          ok = owner !== undefined && apply(owner, changes);
        } finally {
          if (owner && !there && !ok) drop(owner);
        }
        return ok ? { ok } : { ok, why: 'conflict' };
      },
      erase: async () => {
        const owner = find();
        if (owner) drop(owner);
      },
      eraseAt: async (at) => {
        const owner = find();
        if (owner) owner.eraseAt = at;
      },
      newLinkCode: async (at) => {
        const owner = find() ?? makeIt?.();
        if (!owner) throw new TypeError('a room');
        for (const [key, one] of codes) if (one.owner === owner) codes.delete(key);
        made += 1;
        const code = `CODE-${made}`;
        codes.set(code, { owner, until: at + 15 * 60_000 });
        return code;
      },
      accounts: async () =>
        [...(find()?.accounts.values() ?? [])].sort(
          (a, b) => byPoints(a.platform, b.platform) || byPoints(a.person, b.person),
        ),
    };
  };

  const findAccount = (account: Account) => holders.get(id('person', account.platform, account.person)) ?? null;
  const makeAccount = ({ platform, person }: Account): Owner => {
    const owner = make();
    owner.accounts.set(id(platform, person), { platform, person });
    holders.set(id('person', platform, person), owner);
    return owner;
  };

  /** The reminder that was claimed, where it has not been moved, cancelled or told since. */
  const claims = new WeakMap<Own, { readonly owner: Owner; readonly bell: Bell }>();
  const stillThere = (claimed: Claimed): { readonly owner: Owner; readonly bell: Bell } | null => {
    let owner = claims.get(claimed.own)?.owner ?? null;
    while (owner?.joined) owner = owner.joined;
    const bell = owner?.reminders.get(claimed.id);
    return owner && owners.has(owner) && bell?.dueAt === claimed.dueAt ? { owner, bell } : null;
  };

  const bellsOf = (platforms: readonly string[]) =>
    [...owners].flatMap((owner) =>
      [...owner.reminders.values()]
        .filter((bell) => platforms.includes(bell.platform))
        .map((bell) => ({ owner, bell })),
    );

  const distinct = (text: string, number: number, before: string): string => {
    const ending = `${before}${number}`;
    return text.slice(0, 200 - ending.length).replace(/[\uD800-\uDBFF]$/, '') + ending;
  };
  const join = (from: Owner, into: Owner): void => {
    const clashes = [...from.documents.values()].filter(({ kind, key }) => into.documents.has(id(kind, key)));
    for (const one of clashes.sort((a, b) => byPoints(a.kind, b.kind) || byPoints(a.key, b.key))) {
      const { kind, key, data } = one;
      from.documents.delete(id(kind, key));
      if (kind !== 'recipe' && kind !== 'batch') continue;
      const [field, before] = kind === 'recipe' ? (['name', ' '] as const) : (['lot', '-'] as const);
      let number = 2;
      const taken = () => {
        const next = id(kind, distinct(key, number, before));
        return from.documents.has(next) || into.documents.has(next);
      };
      while (taken()) number += 1;
      const to = distinct(key, number, before);
      const name = data[field];
      const renamed: Data = typeof name === 'string' ? { ...data, [field]: distinct(name, number, before) } : data;
      from.documents.set(id(kind, to), { ...one, key: to, data: renamed });
      for (const [bellId, bell] of from.reminders) {
        if (kind === 'batch' && bell.batch === key) from.reminders.set(bellId, { ...bell, batch: to });
      }
    }
    for (const [key, one] of from.documents) into.documents.set(key, one);
    for (const [key, one] of from.reminders) {
      const to = into.reminders.has(key) ? `${key} of ${made}` : key;
      into.reminders.set(to, { ...one, id: to });
    }
    for (const [key, { platform, person }] of from.accounts) {
      into.accounts.set(key, { platform, person });
      holders.set(id('person', platform, person), into);
    }
    drop(from);
    from.joined = into;
  };

  const values = (space: string): Values => ({
    get: async (key) => {
      const found = spaces.get(id(space, key));
      return found && lives(found.until) ? found.value : null;
    },
    set: async (key, value, until) => {
      if (!canBeKept(value)) throw new RangeError(value);
      checkText(key);
      spaces.set(id(space, key), { value, until: until ?? null });
    },
    delete: async (key) => {
      spaces.delete(id(space, key));
    },
  });

  return {
    of: (account) =>
      ownOf(
        () => findAccount(account),
        () => makeAccount(account),
      ),
    room: ({ platform, place }) => {
      const key = id('room', platform, place);
      return {
        ...ownOf(
          () => holders.get(key) ?? null,
          () => {
            const owner = make();
            holders.set(key, owner);
            return owner;
          },
        ),
        newLinkCode: async () => {
          throw new TypeError('a room');
        },
      };
    },
    both: async ({ platform, person, place }, kind, key) => {
      for (const text of [platform, person, place]) checkText(text);
      const data = (owner: Owner | null | undefined): Data | null => {
        const there = owner?.documents.get(id(kind, key));
        return there && lives(there.until) ? copy(there.data) : null;
      };
      return { own: data(findAccount({ platform, person })), room: data(holders.get(id('room', platform, place))) };
    },
    link: async (account, code, at) => {
      const found = codes.get(code);
      if (!found || found.until <= at) return { ok: false, why: 'unknown-code' };
      const owner = findAccount(account) ?? makeAccount(account);
      if (owner === found.owner) return { ok: false, why: 'same-owner' };
      codes.delete(code);
      join(owner, found.owner);
      return { ok: true };
    },
    unlink: async (account) => {
      const owner = findAccount(account);
      if (!owner || owner.accounts.size < 2) return;
      owner.accounts.delete(id(account.platform, account.person));
      holders.delete(id('person', account.platform, account.person));
    },
    bells: {
      claim: async ({ platforms, now: at, leaseUntil, limit }) =>
        bellsOf(platforms)
          .filter(({ bell }) => bell.ringAt <= at)
          .sort((a, b) => a.bell.ringAt - b.bell.ringAt)
          .slice(0, limit)
          .map(({ owner, bell }) => {
            const attempt = bell.attempts + 1;
            owner.reminders.set(bell.id, { ...bell, ringAt: leaseUntil, attempts: attempt });
            const through = (): Owner | null => {
              let last = owner;
              while (last.joined) last = last.joined;
              return owners.has(last) ? last : null;
            };
            const own = ownOf(through, null);
            claims.set(own, { owner, bell });
            return { ...shownReminder(bell), own, attempt };
          })
          .sort((a, b) => a.dueAt - b.dueAt),
      told: async (claimed, changes = []) => {
        const there = stillThere(claimed);
        if (!there) return;
        there.owner.reminders.delete(claimed.id);
        let ok = false;
        try {
          ok = apply(there.owner, changes);
        } finally {
          if (!ok) there.owner.reminders.set(claimed.id, there.bell);
        }
        if (!ok) throw new Error('conflict');
      },
      again: async (claimed, at) => {
        const there = stillThere(claimed);
        if (there?.bell.attempts !== claimed.attempt) return;
        there.owner.reminders.set(claimed.id, { ...there.bell, ringAt: at });
      },
      next: async (platforms) => {
        const times = bellsOf(platforms).map(({ bell }) => bell.ringAt);
        return times.length > 0 ? Math.min(...times) : null;
      },
    },
    values,
    sweep: async (at) => {
      const over = (until: number | null): boolean => until !== null && until <= at;
      for (const owner of owners) {
        if (over(owner.eraseAt)) drop(owner);
        for (const [key, { until }] of owner.documents) if (over(until)) owner.documents.delete(key);
      }
      for (const [key, { until }] of spaces) if (over(until)) spaces.delete(key);
      for (const [key, { until }] of codes) if (over(until)) codes.delete(key);
    },
    close: async () => {},
  };
}
