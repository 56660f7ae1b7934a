/** Random requests, asked of a store and of the model in turn: both must say the same, always. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Account, Change, Claimed, Kind, NewReminder, Own, Reminder, Store } from '../../src/store/port.ts';
import { createModel } from './model.ts';

/** Both stores, and what they have handed out, pair by pair. */
interface Pair {
  readonly run: number;
  readonly model: Store;
  real: Store;
  readonly codes: (readonly [string, string])[];
  claims: (readonly [Claimed, Claimed])[];
}

type Ask = (store: Store, side: 0 | 1, pair: Pair) => Promise<unknown>;

class Request implements fc.AsyncCommand<Pair, Pair> {
  readonly #what: string;
  readonly #ask: Ask;
  constructor(what: string, ask: Ask) {
    this.#what = what;
    this.#ask = ask;
  }
  check(): boolean {
    return true;
  }
  async run(pair: Pair): Promise<void> {
    const meant = await said(this.#ask(pair.model, 0, pair));
    const got = await said(this.#ask(pair.real, 1, pair));
    expect(got).toEqual(meant);
  }
  toString(): string {
    return this.#what;
  }
}

/** What was answered, or that it was refused. An id that had to change in a link, and what was handed out, aside. */
async function said(answer: Promise<unknown>): Promise<unknown> {
  try {
    return comparable(await answer);
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return error.name === 'Error' || error.name === 'Conflict' ? 'conflict' : error.name;
  }
}

function comparable(answer: unknown): unknown {
  if (!Array.isArray(answer)) return answer;
  const parts = answer.map((one: unknown) => (isReminder(one) ? mark(one) : one));
  return answer.some(isReminder) ? parts.sort() : parts;
}

const isReminder = (one: unknown): one is Reminder => typeof one === 'object' && one !== null && 'dueAt' in one;

/** All that a reminder says, but how its id had to change when two owners became one. */
const mark = (one: Reminder & { readonly own?: Own }): string => {
  const { own: _own, ...rest } = one;
  return JSON.stringify(Object.entries({ ...rest, id: rest.id.slice(0, 2) }).sort());
};

const minute = 60_000;
const start = Date.UTC(2026, 9, 25);

const accounts = [
  { platform: 'a', person: '1' },
  { platform: 'a', person: '2' },
  { platform: 'b', person: '1' },
];
/** Names are told apart by the run, so that runs share a store without seeing each other. */
const accountOf = ({ run }: Pair, index: number): Account => {
  const { platform, person } = accounts[index] ?? { platform: '', person: '' };
  return { platform: `${platform}${run}`, person };
};
const ownOf = (store: Store, pair: Pair, index: number): Own =>
  index < accounts.length
    ? store.of(accountOf(pair, index))
    : store.room({ platform: `a${pair.run}`, place: String(index - accounts.length + 1) });

const who = fc.nat(accounts.length + 1);
const kind = fc.constantFrom<Kind>('recipe', 'settings', 'batch', 'context');
const key = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom('own', 'soap', 'soap 2', 'lot', 'Ａ', '🧼') },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }) },
  { weight: 1, arbitrary: fc.constantFrom('', 'x'.repeat(200), 'x'.repeat(201), 'a\0b', '\ud83e', "'; --") },
);
const time = fc.nat(60).map((minutes) => start + minutes * minute);
const data = fc.oneof(
  fc.record({ name: fc.string({ maxLength: 9 }), lot: fc.string({ maxLength: 9 }) }),
  fc.dictionary(fc.string({ maxLength: 5 }), fc.jsonValue({ maxDepth: 1 }), { maxKeys: 3 }),
) as fc.Arbitrary<Record<string, unknown>>;
const bellId = fc.constantFrom('r1', 'r2', 'r3');

type MakeChange = (pair: Pair) => Change;
const change: fc.Arbitrary<MakeChange> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .record({
        kind,
        key,
        data,
        expects: fc.constantFrom(null, null, 0, 1, 2),
        until: fc.option(time, { nil: undefined, freq: 3 }),
      })
      .map(
        ({ until, ...put }): MakeChange =>
          () => ({ do: 'put', ...put, ...(until === undefined ? {} : { until }) }),
      ),
  },
  fc.record({ kind, key }).map(
    (remove): MakeChange =>
      () => ({ do: 'remove', ...remove }),
  ),
  {
    weight: 3,
    arbitrary: fc
      .record({
        id: bellId,
        dueAt: time,
        place: fc.constantFrom('x', 'y'),
        batch: fc.constantFrom(null, 'lot', 'lot-2'),
      })
      .chain((bell) => fc.constantFrom('a', 'b').map((platform) => ({ ...bell, platform })))
      .map(
        (bell): MakeChange =>
          ({ run }) => {
            const about = { kind: 'remind' };
            const reminder: NewReminder = {
              ...bell,
              platform: `${bell.platform}${run}`,
              person: '1',
              address: '',
              about,
            };
            return { do: 'remind', reminder };
          },
      ),
  },
  fc.record({ id: bellId, dueAt: time }).map(
    (move): MakeChange =>
      () => ({ do: 'move', ...move }),
  ),
  bellId.map(
    (id): MakeChange =>
      () => ({ do: 'cancel', id }),
  ),
);
const changes = fc.array(change, { maxLength: 4 });

/** `clock` is turned by the requests, forwards and back. */
function requests(clock: { now: number }, reopen: ((store: Store) => Promise<Store>) | null) {
  const request = <T>(name: string, what: fc.Arbitrary<T>, ask: (what: T) => Ask, weight = 1) => ({
    weight,
    arbitrary: what.map((some) => new Request(`${name}(${JSON.stringify(some)})`, ask(some))),
  });
  const own = <T>(
    name: string,
    what: fc.Arbitrary<T>,
    ask: (own: Own, what: T, pair: Pair) => Promise<unknown>,
    weight = 1,
  ) =>
    request(
      name,
      fc.tuple(who, what),
      ([index, some]) =>
        (store, _side, pair) =>
          ask(ownOf(store, pair, index), some, pair),
      weight,
    );
  const nothing = fc.constant(null);
  return [
    own('get', fc.tuple(kind, key), (of, [one, at]) => of.get(one, at)),
    request(
      'both',
      fc.tuple(fc.nat(accounts.length - 1), fc.constantFrom('', '1', '2', 'a\0b'), kind, key),
      ([index, place, one, at]) =>
        (store, _side, pair) =>
          store.both({ ...accountOf(pair, index), place }, one, at),
      2,
    ),
    own(
      'list',
      fc.tuple(kind, fc.constantFrom('', 's', 'soap', '🧼'), key, fc.integer({ min: 1, max: 5 })),
      (of, [one, prefix, after, limit]) => of.list(one, { prefix, after, limit }),
    ),
    own('count', kind, (of, one) => of.count(one)),
    own('reminders', nothing, (of) => of.reminders()),
    own('accounts', nothing, async (of, _, { run }) =>
      (await of.accounts()).map(({ platform, person }) => [platform.replace(String(run), ''), person]),
    ),
    own('commit', changes, (of, some, pair) => of.commit(some.map((make) => make(pair))), 8),
    own('erase', nothing, (of) => of.erase()),
    own('eraseAt', fc.option(time), (of, at) => of.eraseAt(at)),
    request('newLinkCode', who, (index) => {
      let model = '';
      return async (store, side, pair) => {
        const code = await ownOf(store, pair, index).newLinkCode(clock.now);
        if (side === 0) model = code;
        else pair.codes.push([model, code]);
      };
    }),
    request(
      'link',
      fc.tuple(fc.nat(accounts.length - 1), fc.nat(3)),
      ([index, back]) =>
        (store, side, pair) =>
          store.link(accountOf(pair, index), pair.codes.at(-1 - back)?.[side] ?? 'ZZZZ-ZZZZ', clock.now),
      2,
    ),
    request(
      'unlink',
      fc.nat(accounts.length - 1),
      (index) => (store, _side, pair) => store.unlink(accountOf(pair, index)),
    ),
    request(
      'claim',
      fc.tuple(fc.subarray(['a', 'b'], { minLength: 1 }), time, fc.nat(20)),
      ([platforms, now, lease]) => {
        let model: readonly Claimed[] = [];
        const sorted = (all: readonly Claimed[]) => all.toSorted((a, b) => (mark(a) < mark(b) ? -1 : 1));
        return async (store, side, pair) => {
          const ask = {
            now,
            leaseUntil: now + lease * minute,
            limit: 1000,
            platforms: platforms.map((one) => one + pair.run),
          };
          const got = await store.bells.claim(ask);
          if (side === 0) model = sorted(got);
          else for (const [i, real] of sorted(got).entries()) if (model[i]) pair.claims.push([model[i], real]);
          return got;
        };
      },
      2,
    ),
    request(
      'told',
      fc.tuple(fc.nat(3), changes),
      ([back, some]) =>
        async (store, side, pair) => {
          const claimed = pair.claims.at(-1 - back)?.[side];
          if (claimed)
            await store.bells.told(
              claimed,
              some.map((make) => make(pair)),
            );
        },
      2,
    ),
    request('again', fc.tuple(fc.nat(3), time), ([back, at]) => async (store, side, pair) => {
      const claimed = pair.claims.at(-1 - back)?.[side];
      if (claimed) await store.bells.again(claimed, at);
    }),
    request(
      'next',
      nothing,
      () =>
        (store, _side, { run }) =>
          store.bells.next([`a${run}`, `b${run}`]),
    ),
    request(
      'value',
      fc.tuple(key, fc.option(time), fc.oneof(fc.string(), fc.constantFrom('a\0b', '\ud83e'))),
      ([name, until, text]) =>
        async (store, _side, { run }) => {
          const values = store.values(`space ${run}`);
          const before = await values.get(name);
          await (text === '' ? values.delete(name) : values.set(name, text, until ?? undefined));
          return [before, await values.get(name)];
        },
    ),
    request('sweep', time, (now) => (store) => store.sweep(now)),
    request(
      'clock',
      time,
      (now) => async () => {
        clock.now = now;
      },
      2,
    ),
    ...(reopen
      ? [
          request('reopen', nothing, () => async (store, side, pair) => {
            if (side === 0) return;
            pair.real = await reopen(store);
            // What was claimed before is nobody's now.
            pair.claims = [];
          }),
        ]
      : []),
  ];
}

/** `reopen`: closes the store and opens it anew, where the same is found. */
export function likeModel(
  name: string,
  open: (now: () => number) => Promise<Store>,
  reopen: ((store: Store) => Promise<Store>) | null,
  runs = Number(process.env['LYEWARD_RUNS'] ?? 25),
): void {
  describe(`a store like its model: ${name}`, () => {
    it('answers as the model does, whatever is asked in whatever order', async () => {
      const clock = { now: start };
      let real = await open(() => clock.now);
      let run = 0;
      const all = requests(clock, reopen);
      await fc.assert(
        fc.asyncProperty(
          fc.commands(
            all.flatMap(({ weight, arbitrary }) => Array(weight).fill(arbitrary)),
            { size: '+1' },
          ),
          async (some) => {
            run += 1;
            clock.now = start;
            const pair: Pair = { run, model: createModel(() => clock.now), real, codes: [], claims: [] };
            try {
              await fc.asyncModelRun(() => ({ model: pair, real: pair }), some);
            } finally {
              real = pair.real;
            }
            for (let index = 0; index < accounts.length + 2; index += 1) {
              const whole = async (store: Store) => {
                const own = ownOf(store, pair, index);
                const kinds: readonly Kind[] = ['recipe', 'settings', 'batch', 'context'];
                const documents = await Promise.all(kinds.map((one) => own.list(one, { limit: 1000 })));
                return [...documents.flat(), comparable(await own.reminders())];
              };
              expect(await whole(pair.real)).toEqual(await whole(pair.model));
            }
          },
        ),
        { numRuns: runs },
      );
      await real.close();
    }, 600_000);
  });
}
