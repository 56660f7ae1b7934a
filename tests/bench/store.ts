// What keeping costs: `node tests/bench/store.ts`, one JSON line a figure. The embedded store beside the bare driver
// with the same statements, in turns so that a busy machine slows both; and a million beside a thousand.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../src/index.ts';
import { sqliteBuilder } from '../../src/store/dialect.ts';
import type { Change, Store } from '../../src/store/port.ts';
import { makeEngine } from '../../src/store/sqlite/engine.ts';
import { openWriter } from '../../src/store/sqlite/file.ts';
import type { Args, Statement } from '../../src/store/statement.ts';
import { makeStatements } from '../../src/store/statements.ts';
import { makeStore } from '../../src/store/store.ts';
import type { Figure } from './discord.ts';
import { median } from './measure.ts';

const platform = 'bench';
/** As long as a saved recipe is, 1 kB. */
const data = { name: 'Kitchen soap', text: '450 g olive oil, 225 g coconut oil, 75 g castor oil, '.repeat(18) };
const put = (key: string): Change => ({ do: 'put', kind: 'recipe', key, data, expects: null });

/** A store whose statements are written down. */
function watched(folder: string): { readonly store: Store; readonly asked: { text: string; values: unknown[] }[] } {
  const path = join(folder, 'watched.db');
  const database = openWriter(path);
  const engine = makeEngine({ database, path, folder, isReader: false, unlock: () => {} });
  const asked: { text: string; values: unknown[] }[] = [];
  const note = (one: Statement, args: Args) => asked.push({ text: one.text, values: one.values(args) });
  const store = makeStore({
    statements: makeStatements(sqliteBuilder()),
    now: Date.now,
    engine: {
      ...engine,
      read: (one, args) => {
        note(one, args);
        return engine.read(one, args);
      },
      write: (steps) =>
        engine.write(function* () {
          const doing = steps();
          let step = doing.next();
          while (!step.done) {
            note(step.value.statement, step.value.args);
            step = doing.next(yield step.value);
          }
          return step.value;
        }),
    },
  });
  return { store, asked };
}

/** Median milliseconds of one of each, in turns of so many. */
async function inTurns(
  works: readonly ((turn: number) => unknown)[],
  each: number,
  rounds: number,
): Promise<readonly number[]> {
  const times = works.map((): number[] => []);
  let turn = 0;
  for (let round = -2; round < rounds; round += 1) {
    for (const [index, work] of works.entries()) {
      const since = performance.now();
      for (let i = 0; i < each; i += 1) {
        turn += 1;
        await work(turn);
      }
      if (round >= 0) times[index]?.push((performance.now() - since) / each);
    }
  }
  return times.map(median);
}

async function besideDriver(folder: string): Promise<readonly Figure[]> {
  const person = { platform, person: 'somebody' };
  const { store: watchedStore, asked } = watched(folder);
  const statementsOf = async (work: () => Promise<unknown>) => {
    asked.length = 0;
    await work();
    return [...asked];
  };
  const own = watchedStore.of(person);
  await own.commit([put('first')]);
  const saves = await statementsOf(() => own.commit([put('KEY')]));
  const looks = await statementsOf(() => own.get('recipe', 'KEY'));
  await watchedStore.close();

  const database = openWriter(join(folder, 'watched.db'));
  const ready = new Map(
    [...saves, ...looks].map(({ text }) => {
      const prepared = database.prepare(text);
      return [text, (values: readonly (string | number | null)[]) => prepared.all(...values)];
    }),
  );
  const bare = (statements: typeof asked, key: string): unknown => {
    let last: unknown;
    for (const { text, values } of statements) {
      last = ready.get(text)?.(values.map((value) => (value === 'KEY' ? key : (value as string | number | null))));
    }
    return last;
  };
  const bareSave = (turn: number): void => {
    database.exec('begin immediate');
    bare(saves, `recipe ${turn}`);
    database.exec('commit');
  };
  const store = await openStore({ folder: join(folder, 'own'), who: 'the bench', database: null });
  const mine = store.of(person);
  const [save = 0, floor = 0] = await inTurns([(turn) => mine.commit([put(`recipe ${turn}`)]), bareSave], 40, 15);
  await mine.commit([put('KEY')]);
  // A row of the driver holds the recipe as text: reading it is a part of the look-up for both.
  const read = (): unknown => JSON.parse((bare(looks, 'KEY') as { readonly data: string }[])[0]?.data ?? '');
  const [look = 0, lookFloor = 0, unread = 0] = await inTurns(
    [() => mine.get('recipe', 'KEY'), read, () => bare(looks, 'KEY')],
    1000,
    25,
  );
  await store.close();
  database.close();
  const unit = '× bare driver';
  return [
    { name: 'store: save a recipe', value: save / floor, unit, limit: 1.3, more: { milliseconds: save, floor } },
    {
      name: 'store: look a recipe up',
      value: look / lookFloor,
      unit,
      limit: 1.3,
      more: { milliseconds: look, floor: lookFloor, floorUnread: unread },
    },
  ];
}

const perPerson = 100;
const later = 4_000_000_000_000;

/** So many recipes of people with a hundred each, and as many reminders that are not due. */
async function filled(folder: string, count: number): Promise<Store> {
  const open = () => openStore({ folder, who: 'the bench', database: null });
  await (await open()).close();
  const database = openWriter(join(folder, 'lyeward.db'));
  const owner = database.prepare('insert into owner (id) values (?)');
  const account = database.prepare("insert into account (kind, platform, name, owner) values ('person', ?, ?, ?)");
  const document = database.prepare(
    "insert into document (owner, kind, key, data, version, saved_at) values (?, 'recipe', ?, ?, 1, 1)",
  );
  const reminder = database.prepare(
    `insert into reminder (owner, id, due_at, ring_at, set_at, attempts, platform, place, person, address, about)
     values (?, ?, ?, ?, 1, 0, '${platform}', 'x', 'y', '', '{}')`,
  );
  const text = JSON.stringify({ name: 'Kitchen soap', text: data.text.slice(0, 200) });
  database.exec('begin immediate');
  for (let person = 0; person < count / perPerson; person += 1) {
    const id = `owner ${person}`;
    owner.run(id);
    account.run(platform, `person ${person}`, id);
    for (let i = 0; i < perPerson; i += 1) {
      document.run(id, `recipe ${i}`, text);
      // Spread, as people set them.
      const at = later + (((person * perPerson + i) * 7919) % count);
      reminder.run(id, `bell ${i}`, at, at);
    }
  }
  database.exec('commit');
  database.close();
  return open();
}

async function millionBesideThousand(folder: string): Promise<readonly Figure[]> {
  const sizes = [1000, 1_000_000];
  const stores = await Array.fromAsync(sizes, (count) => filled(join(folder, String(count)), count));
  const p99 = sizes.map((): number[] => []);
  for (let round = -1; round < 15; round += 1) {
    for (const [index, store] of stores.entries()) {
      const people = (sizes[index] ?? 0) / perPerson;
      const times: number[] = [];
      for (let i = 0; i < 2000; i += 1) {
        const person = `person ${Math.floor(Math.random() * people)}`;
        const key = `recipe ${Math.floor(Math.random() * perPerson)}`;
        const since = performance.now();
        const found = await store.of({ platform, person }).get('recipe', key);
        times.push(performance.now() - since);
        if (!found) throw new Error(`no ${key} of ${person}`);
      }
      if (round >= 0) p99[index]?.push(times.sort((a, b) => a - b)[Math.floor(times.length * 0.99)] ?? Number.NaN);
    }
  }
  const claims = sizes.map((): number[] => []);
  for (let round = -2; round < 40; round += 1) {
    for (const [index, store] of stores.entries()) {
      const own = store.of({ platform, person: 'person 0' });
      const ids = Array.from({ length: 50 }, (_, i) => `due ${i}`);
      const common = { dueAt: 1000, platform, place: 'x', person: 'y', address: '', about: {}, batch: null };
      await own.commit(ids.map((id) => ({ do: 'remind', reminder: { ...common, id } })));
      const since = performance.now();
      const due = await store.bells.claim({ platforms: [platform], now: 2000, leaseUntil: 3000, limit: 50 });
      if (round >= 0) claims[index]?.push(performance.now() - since);
      if (due.length !== 50) throw new Error(`${due.length} claimed`);
      await own.commit(ids.map((id) => ({ do: 'cancel', id })));
    }
  }
  for (const store of stores) await store.close();
  const [lookFew = 0, lookMany = 0] = p99.map(median);
  const [few = 0, many = 0] = claims.map(median);
  const unit = '× among 1,000';
  return [
    {
      name: 'store: look-up among 1,000,000, 99 of 100',
      value: lookMany / lookFew,
      unit,
      limit: 2,
      more: { milliseconds: lookMany, amongThousand: lookFew },
    },
    {
      name: 'store: claim 50 due among 1,000,000',
      value: many / few,
      unit,
      limit: 2,
      more: { milliseconds: many, amongThousand: few },
    },
  ];
}

async function firstOpen(folder: string): Promise<Figure> {
  const times: number[] = [];
  for (let turn = 0; turn < 15; turn += 1) {
    const since = performance.now();
    const store = await openStore({ folder: join(folder, String(turn)), who: 'the bench', database: null });
    times.push(performance.now() - since);
    await store.close();
  }
  const [first = 0, ...next] = times;
  return { name: 'store: first open', value: median(next), unit: 'ms', limit: 50, more: { withLoading: first } };
}

export async function storeFigures(): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'lyeward-bench-'));
  try {
    return [await firstOpen(folder), ...(await besideDriver(folder)), ...(await millionBesideThousand(folder))];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

if (import.meta.main) {
  for (const { name, value, unit, limit, more } of await storeFigures()) {
    const short = (number: number): number => Number(number.toPrecision(3));
    const ok = value <= limit;
    if (!ok) process.exitCode = 1;
    const rest = Object.fromEntries(Object.entries(more).map(([key, number]) => [key, short(number)]));
    console.log(JSON.stringify({ name, value: short(value), unit, limit, ok, ...rest }));
  }
}
