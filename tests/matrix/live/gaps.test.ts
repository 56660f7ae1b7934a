// Nothing is skipped and nothing is said twice: gaps longer than a sync, events that come again or in another order,
// what waited while it was down.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Heard, Human, Json } from '../human.ts';
import { openWorld, type World } from '../world.ts';

let world: World;
let ann: Human;
let bob: Human;
beforeAll(async () => {
  world = await openWorld({ proxied: true });
  [ann, bob] = await Promise.all([world.human('ann'), world.human('bob')]);
});
afterAll(() => world?.close());

const grams = (count: number): string => `!lye convert ${count} kg to g`;
interface Asked {
  readonly id: string;
  readonly count: number;
}

/** Each was answered once, with its own figure. */
async function once(human: Human, all: readonly Asked[], seconds = 100): Promise<void> {
  const lacking = (): readonly Asked[] =>
    all.filter(({ id }) => !human.repliesTo(id).some(({ undecryptable }) => !undecryptable));
  await human.until(
    () => lacking().length === 0,
    () => `answers to ${lacking().map(({ count }) => count)}`,
    seconds,
  );
  // What came double would come about now.
  await new Promise((resolve) => setTimeout(resolve, 1000));
  for (const { id, count } of all) {
    const replies = human.repliesTo(id);
    expect(replies.map(({ content }) => content.body)).toHaveLength(1);
    expect(replies[0]?.content.body).toMatch(new RegExp(`\\b${count}[,.\\s]?000 g`));
  }
}

const answersIn = (human: Human, room: string): readonly Heard[] =>
  human.heard().filter((one) => one.room === room && one.sender === world.botId && one.content['m.relates_to']);

describe.each([
  { kind: 'clear', encrypted: false },
  { kind: 'encrypted', encrypted: true },
])('in a room that is $kind', ({ encrypted }) => {
  test('105 messages in one gap of a running sync, answered in order', { timeout: 300_000 }, async () => {
    const room = await world.room(ann, { encrypted, invite: [bob.id] });
    await bob.join(room);
    await ann.answer(await ann.say(room, grams(1)));
    world.bot.child.kill('SIGSTOP');
    const all: Asked[] = [];
    for (let count = 2; count <= 106; count += 1) {
      all.push({ id: await (count % 2 ? ann : bob).say(room, grams(count)), count });
    }
    world.bot.child.kill('SIGCONT');
    for (const human of [ann, bob]) {
      await once(human, all, 200);
      expect(human.heard().filter(({ undecryptable }) => undecryptable)).toEqual([]);
    }
    // People are answered in turn, each in the order in which they asked.
    const order = answersIn(ann, room).map(({ content }) => content['m.relates_to']['m.in_reply_to'].event_id);
    for (const odd of [0, 1]) {
      const own = all.filter(({ count }) => count % 2 === odd).map(({ id }) => id);
      expect(order.filter((id) => own.includes(id))).toEqual(own);
    }
  });

  test('what waited while it was down is answered, what was answered is not again', async () => {
    const room = await world.room(ann, { encrypted });
    const before = { id: await ann.say(room, grams(1)), count: 1 };
    await once(ann, [before]);
    await world.bot.kill();
    const waiting: Asked[] = [];
    for (let count = 2; count <= 9; count += 1) waiting.push({ id: await ann.say(room, grams(count)), count });
    await world.again();
    await once(ann, [before, ...waiting]);
  });
});

const timelines = (sync: Json, change: (events: Json[]) => Json[]): Json => {
  for (const joined of Object.values<Json>(sync.rooms?.join ?? {})) {
    if (joined.timeline?.events) joined.timeline.events = change(joined.timeline.events);
  }
  return sync;
};

test('events that come twice, and again in each later sync', async () => {
  const room = await world.room(ann);
  const earlier: Json[] = [];
  world.line.forge((sync) =>
    timelines(sync, (events) => {
      const messages = events.filter(({ type }) => type === 'm.room.message');
      const all = [...earlier, ...events, ...messages];
      earlier.push(...messages);
      return all;
    }),
  );
  const all: Asked[] = [];
  for (let count = 1; count <= 8; count += 1) all.push({ id: await ann.say(room, grams(count)), count });
  await once(ann, all);
  world.line.forge(null);
});

test('events in another order', async () => {
  const room = await world.room(ann);
  await ann.answer(await ann.say(room, grams(9)));
  world.line.forge((sync) => timelines(sync, (events) => events.toReversed()));
  world.bot.child.kill('SIGSTOP');
  const all: Asked[] = [];
  for (let count = 1; count <= 8; count += 1) all.push({ id: await ann.say(room, grams(count)), count });
  world.bot.child.kill('SIGCONT');
  await once(ann, all);
  world.line.forge(null);
});
