// The server is away, slow, busy, broken, or a connection is dead: the bot is back within seconds, nothing is lost,
// nothing is said twice, and what it says can be read.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Human } from '../human.ts';
import type { Fault, Line } from '../line.ts';
import { openWorld, type World } from '../world.ts';

let world: World;
let ann: Human;
let clear = '';
let encrypted = '';
beforeAll(async () => {
  world = await openWorld({ proxied: true });
  ann = await world.human();
  [clear, encrypted] = await Promise.all([world.room(ann), world.room(ann, { encrypted: true, rotate: 2 })]);
});
afterAll(() => world?.close());

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

let count = 0;
/** A question in each room. */
async function ask(): Promise<readonly string[]> {
  count += 1;
  const all: string[] = [];
  for (const room of [clear, encrypted]) all.push(await ann.say(room, `!lye convert ${count} kg to g`));
  return all;
}

/** Questions before, during and after: each has one answer that can be read, soon after the end of the trouble. */
async function through(
  trouble: (line: Line) => Promise<void>,
  mend: (line: Line) => void | Promise<void>,
  soon = 45,
): Promise<void> {
  const asked = [...(await ask())];
  await trouble(world.line);
  asked.push(...(await ask()));
  await pause(2500);
  asked.push(...(await ask()));
  await mend(world.line);
  const since = performance.now();
  const isAnswered = (id: string): boolean => ann.repliesTo(id).some(({ undecryptable }) => !undecryptable);
  await ann.until(() => asked.every(isAnswered), 'answers to all', soon);
  const took = (performance.now() - since) / 1000;
  asked.push(...(await ask()));
  await ann.until(() => asked.every(isAnswered), 'answers to all', 45);
  // What came double would come about now.
  await pause(1000);
  for (const id of asked) expect(ann.repliesTo(id).map(({ content }) => content.body)).toHaveLength(1);
  expect(ann.heard().filter(({ undecryptable }) => undecryptable)).toEqual([]);
  console.log(`${expect.getState().currentTestName}: all answered ${took.toFixed(1)} s after its end`);
}

/** The same for a fault of single requests. */
const meets = (...faults: readonly Fault[]): Promise<void> =>
  through(
    async (line) => {
      for (const fault of faults) line.fault(fault);
    },
    (line) => line.mend(),
  );

const sends = /^PUT \S+\/send\/m\.room\./;
const syncs = /^GET \S+\/sync/;
const keys = /^(POST \S+\/keys\/|PUT \S+\/sendToDevice\/)/;
const any = /./;
const limited = (milliseconds: number): Fault['does'] => ({
  status: 429,
  body: { errcode: 'M_LIMIT_EXCEEDED', error: 'Too Many Requests', retry_after_ms: milliseconds },
});
const gateway = (status: number): Fault['does'] => ({
  status,
  body: '<html><h1>Bad gateway</h1></html>',
  headers: { 'content-type': 'text/html' },
});
const broken: Fault['does'] = { status: 500, body: { errcode: 'M_UNKNOWN', error: 'Internal server error' } };

describe('the server', () => {
  test('is down', () =>
    through(
      (line) => line.down(),
      (line) => line.up(),
    ));
  test('is slow', () => meets({ on: any, does: { late: 1200 } }));
  test('says 429 to everything', () => meets({ on: any, does: limited(500) }));
  test('says 502 to everything', () => meets({ on: any, does: gateway(502) }));
  test('says 500 to everything', () => meets({ on: any, does: broken }));
  test('breaks each connection', () => meets({ on: any, does: 'reset' }));
  test('goes silent, and what was open stays dead', () =>
    through(
      async (line) => line.freeze(),
      (line) => line.thaw(),
      // a sync and a request for keys may each wait out their half minute, one after the other
      75,
    ));
});

describe('what it sends', () => {
  test('meets 429 with a time to wait, and waits so long', async () => {
    const before = world.line.passed.length;
    await meets({ on: sends, times: 3, does: limited(700) });
    const tries = world.line.passed.slice(before).filter(({ method, path }) => sends.test(`${method} ${path}`));
    for (const [i, { status, at, path }] of tries.entries()) {
      const next = tries.slice(i + 1).find((one) => one.path === path);
      if (status === 429 && next) expect(next.at - at).toBeGreaterThan(690);
    }
    expect(tries.filter(({ status }) => status === 429)).toHaveLength(3);
  });
  test('meets 429 without a time', () => meets({ on: sends, times: 2, does: { status: 429, body: '' } }));
  test('meets 502 and 504', () =>
    meets({ on: sends, times: 2, does: gateway(502) }, { on: sends, times: 2, does: gateway(504) }));
  test('meets 500', () => meets({ on: sends, times: 3, does: broken }));
  test('is carried out, and the answer lost', () => meets({ on: sends, times: 3, does: 'lose' }));
  test('is never answered', () => meets({ on: sends, times: 2, does: 'hang' }));
  test('arrives late', () => meets({ on: sends, times: 4, does: { late: 1500 } }));
});

describe('keys', () => {
  test('meet 500', () => meets({ on: keys, times: 4, does: broken }));
  test('meet 429', () => meets({ on: keys, times: 4, does: limited(400) }));
  test('are carried out, and the answer lost', () => meets({ on: keys, times: 4, does: 'lose' }));
});

describe('a sync', () => {
  test('meets 502', () => meets({ on: syncs, times: 3, does: gateway(502) }));
  test('meets 429', () => meets({ on: syncs, times: 2, does: limited(600) }));
  test('is lost', () => meets({ on: syncs, times: 2, does: 'lose' }));
  test('is never answered', () => meets({ on: syncs, times: 1, does: 'hang' }));
  test('is no JSON', () => meets({ on: syncs, times: 2, does: { status: 200, body: '{"next_batch":' } }));
});

test('shows that it types where an answer takes its time', async () => {
  world.line.fault({ on: sends, times: 1, does: { late: 1500 } });
  const asked = await ann.say(clear, '!lye convert 1 lb to g');
  const typers = (): readonly string[] => ann.typing.filter(({ room }) => room === clear).at(-1)?.users ?? [];
  await ann.until(() => typers().includes(world.botId), 'the notice');
  await ann.answer(asked);
  await ann.until(() => !typers().includes(world.botId), 'its end');
});

test('a start while the server is down waits for it', async () => {
  await world.bot.kill();
  await world.line.down();
  const asked = await ask();
  const bot = await world.again(false);
  await pause(2500);
  expect(bot.child.exitCode).toBeNull();
  await world.line.up();
  await bot.ready();
  for (const id of asked) expect((await ann.answer(id)).content.body).toMatch(/000 g/);
});

test('a start through 429 and 502', async () => {
  await world.bot.kill();
  world.line.fault({ on: any, times: 3, does: limited(300) });
  world.line.fault({ on: any, times: 3, does: gateway(502) });
  const asked = await ask();
  await world.again();
  for (const id of asked) expect((await ann.answer(id)).content.body).toMatch(/000 g/);
  world.line.mend();
});
