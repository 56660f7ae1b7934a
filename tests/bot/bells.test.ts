/** What is due is told, at least once, each telling under one id; by the store's model, with a clock that is turned by hand. */
import { expect, test } from 'vitest';
import { createBot, type Ring, type Teller } from '../../src/index.ts';
import { createModel } from '../store/model.ts';

const minute = 60_000;
const noon = Date.UTC(2026, 10, 26, 12);

function house() {
  let time = noon;
  const now = () => time;
  const store = createModel(now);
  const outcomes: string[] = [];
  const bot = createBot({ store: async () => store, now, zone: 'UTC', log: ({ outcome }) => outcomes.push(outcome) });
  const say = async (text: string, person = 'ada') => {
    const reply = await bot.ask({
      platform: 'test',
      place: 'shed',
      person,
      text,
      address: 'thread 7',
      isPrivate: true,
    });
    if (!reply.ok) throw new Error(reply.fault.message);
    return reply.answer;
  };
  /** Rings with a loop of its own until nothing is due. */
  const ring = async (tell: Teller) => {
    const end = new AbortController();
    const ended = bot.ring({ platforms: ['test'], tell, signal: end.signal, atOnce: true, pace: 0.0001 });
    const isDue = async () => ((await store.bells.next(['test'])) ?? Number.POSITIVE_INFINITY) <= time;
    do await new Promise((resolve) => setTimeout(resolve, 20));
    while (await isDue());
    end.abort();
    await ended;
  };
  return {
    store,
    say,
    ring,
    bot,
    outcomes,
    turn: (minutes: number) => {
      time += minutes * minute;
    },
  };
}

const keeping =
  (into: Ring[]): Teller =>
  async (ring) => {
    into.push(ring);
  };

test('told when it is due, to who asked, at the address it was asked from, and then no more', async () => {
  const { say, ring, turn } = house();
  await say('remind me to stir in 15 min');
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(told).toEqual([]);
  turn(15);
  await ring(keeping(told));
  await ring(keeping(told));
  expect(told).toMatchObject([{ platform: 'test', place: 'shed', person: 'ada', address: 'thread 7', attempt: 1 }]);
  expect(told[0]?.answer.lead).toBe('Reminder: stir.');
  // a nonce of Discord has 25 characters
  expect(told[0]?.id).toMatch(/^[0-9a-z]{25}$/);
});

test('after hours without a process it is told at once, and says that it is late', async () => {
  const { say, ring, turn } = house();
  await say('remind me to stir in 15 min');
  turn(3 * 60 + 15);
  expect((await say('remind list')).result).toMatchObject({ reminders: [{ late: true, text: 'stir' }] });
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(JSON.stringify(told[0]?.answer.body)).toContain('3 hours late: it was for today at 12:15');
});

test('what could not be told is tried again, later and later, under the same id', async () => {
  const { say, ring, turn, outcomes } = house();
  await say('remind me to stir in 1 min');
  turn(1);
  const tries: Ring[] = [];
  const fails: Teller = async (one) => {
    tries.push(one);
    throw new Error('no line');
  };
  await ring(fails);
  expect(tries).toHaveLength(1);
  turn(0.1);
  await ring(fails);
  turn(0.1);
  await ring(fails);
  expect(tries.map(({ attempt }) => attempt)).toEqual([1, 2]);
  turn(1);
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(new Set([...tries, ...told].map(({ id }) => id)).size).toBe(1);
  expect(told).toHaveLength(1);
  expect(outcomes).toContain('bell-untold');
});

test('a process that dies between telling and striking out: the next one tells it again under the same id', async () => {
  const { say, store, ring, turn } = house();
  await say('remind me to stir in 1 min');
  turn(1);
  const at = noon + minute;
  // the claim of a process that is never heard of again
  const [lost] = await store.bells.claim({ platforms: ['test'], now: at, leaseUntil: at + 2 * minute, limit: 8 });
  expect(lost?.attempt).toBe(1);
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(told).toEqual([]);
  turn(3);
  await ring(keeping(told));
  expect(told).toMatchObject([{ attempt: 2 }]);
});

test('a clock set back rings nothing until its time comes again; set forward, what has become due', async () => {
  const { say, ring, turn } = house();
  await say('remind me to stir in 15 min');
  turn(-600);
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(told).toEqual([]);
  turn(700);
  await ring(keeping(told));
  expect(told).toHaveLength(1);
});

test('cancelled or moved, it does not ring at the old time', async () => {
  const { say, ring, turn } = house();
  await say('remind me to stir in 15 min');
  await say('remind me to cut in 20 min');
  await say('remind cancel stir');
  expect((await say('remind move 2 to in 2 hours')).lead).toContain('14:00');
  turn(60);
  const told: Ring[] = [];
  await ring(keeping(told));
  expect(told).toEqual([]);
  turn(60);
  await ring(keeping(told));
  expect(told.map(({ answer }) => answer.lead)).toEqual(['Reminder: cut.']);
});

test('ten thousand due at once: each told once', async () => {
  const { store, bot, turn } = house();
  for (let i = 0; i < 10_000; i += 100) {
    await store.of({ platform: 'test', person: `p${i}` }).commit(
      Array.from({ length: 100 }, (_, k) => ({
        do: 'remind' as const,
        reminder: {
          id: `${i + k}`,
          dueAt: noon + minute,
          platform: 'test',
          place: 'shed',
          person: `p${i}`,
          address: '',
          about: { kind: 'remind', text: 'stir', number: k + 1 },
          batch: null,
        },
      })),
    );
  }
  turn(5);
  const ids: string[] = [];
  const end = new AbortController();
  const ended = bot.ring({
    platforms: ['test'],
    tell: async ({ id }) => {
      ids.push(id);
      if (ids.length === 10_000) end.abort();
    },
    signal: end.signal,
    atOnce: true,
    pace: 0.001,
  });
  await ended;
  expect(new Set(ids).size).toBe(10_000);
  expect(ids).toHaveLength(10_000);
  expect(await store.bells.next(['test'])).toBeNull();
}, 60_000);

test('something set while it waits for a later one rings in its own time', async () => {
  const { say, bot, turn } = house();
  await say('remind me to cut in 5 hours');
  const told: Ring[] = [];
  const end = new AbortController();
  // without shortened waits: only being woken makes it look again
  const ended = bot.ring({ platforms: ['test'], tell: keeping(told), signal: end.signal, atOnce: true });
  await new Promise((resolve) => setTimeout(resolve, 30));
  turn(-1);
  await say('remind me to stir in 30 s');
  turn(0.5);
  await say('remind list');
  for (let i = 0; i < 100 && told.length === 0; i += 1) await new Promise((resolve) => setTimeout(resolve, 20));
  end.abort();
  await ended;
  expect(told.map(({ answer }) => answer.lead)).toEqual(['Reminder: stir.']);
});

test('where nothing is kept nothing rings, and nothing waits', async () => {
  const end = new AbortController();
  await createBot().ring({ platforms: ['test'], tell: async () => {}, signal: end.signal, atOnce: true });
});
