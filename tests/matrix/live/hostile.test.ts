// Bad input: what a server, a bridge or a person may send, none of which may end it, call anybody, or cross a room.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Heard, Human, Json } from '../human.ts';
import { flawsOf } from '../judge.ts';
import { openWorld, type World } from '../world.ts';

const recipe = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';

/** So few that 500 messages are too many however slowly the server takes them. */
const perMinute = 4;

let world: World;
let ann: Human;
let room = '';
beforeAll(async () => {
  world = await openWorld({ proxied: true, env: { MATRIX_RATE: `${perMinute}` } });
  ann = await world.human('ann');
  room = await world.room(ann);
});
afterAll(() => world?.close());

const answers = async (human: Human, where: string): Promise<Heard> => {
  const answer = await human.answer(await human.say(where, '!lye convert 1 lb to g'));
  expect(answer.content.body).toContain('453.6 g');
  return answer;
};

let forged = 0;
/** An event that no server would pass on, put into the next sync of the room. */
async function slip(event: Json): Promise<string> {
  forged += 1;
  const id = `$forged${forged}-${Date.now()}`;
  const whole = {
    type: 'm.room.message',
    event_id: id,
    sender: ann.id,
    origin_server_ts: Date.now(),
    content: { msgtype: 'm.text', body: '!lye convert 1 lb to g' },
    ...event,
  };
  await new Promise<void>((resolve) => {
    world.line.forge((sync) => {
      sync.rooms ??= {};
      sync.rooms.join ??= {};
      sync.rooms.join[room] ??= {};
      const joined = sync.rooms.join[room];
      joined.timeline ??= { events: [], limited: false, prev_batch: 'x' };
      joined.timeline.events ??= [];
      joined.timeline.events.push(whole);
      world.line.forge(null);
      resolve();
      return sync;
    });
    // A sync comes back when there is something to tell.
    void ann.say(room, 'The pot is on.');
  });
  return id;
}

const text = (body: unknown, more: Json = {}): Json => ({ content: { msgtype: 'm.text', body, ...more } });
const relates = (relation: unknown): Json => text('!lye convert 1 lb to g', { 'm.relates_to': relation });

const odd: readonly (readonly [string, Json])[] = [
  ['without content', { content: undefined }],
  ['with null for content', { content: null }],
  ['with an empty content', { content: {} }],
  ['with a list for content', { content: [] }],
  ['without an id', { event_id: undefined }],
  ['without a sender', { sender: undefined }],
  ['with a sender that is none', { sender: 'ann' }],
  ['without a time', { origin_server_ts: undefined }],
  ['with a time that is none', { origin_server_ts: 'now' }],
  ['with a number for a body', text(7)],
  ['with an object for a body', text({ toString: 'x' })],
  ['without a body', text(undefined)],
  ['with an empty body', text('')],
  ['with a body of spaces and controls', text('!lye \u0000\u0007\u202e \u200b')],
  ['with half a character', text('!lye \ud800 check')],
  ['with an unknown type', { type: 'org.example.unknown' }],
  ['with a type that is none', { type: 7 }],
  ['with an unknown kind of message', text('!lye check', { msgtype: 'org.example.odd' })],
  ['with a number for its kind', text('!lye check', { msgtype: 7 })],
  ['with a relation that is a word', relates('m.thread')],
  ['with a relation that is null', relates(null)],
  ['with a thread without a root', relates({ rel_type: 'm.thread' })],
  ['with a thread whose root is a number', relates({ rel_type: 'm.thread', event_id: 7 })],
  ['with a reply to nothing', relates({ 'm.in_reply_to': null })],
  ['with a reply to itself', { event_id: '$itself', ...relates({ 'm.in_reply_to': { event_id: '$itself' } }) }],
  ['with an edit of nothing', text('* x', { 'm.relates_to': { rel_type: 'm.replace', event_id: '$none' } })],
  [
    'with an edit without a content',
    text('* x', { 'm.relates_to': { rel_type: 'm.replace', event_id: '$none' }, 'm.new_content': 7 }),
  ],
  ['with mentions that are none', text('!lye help', { 'm.mentions': 'all' })],
  ['with mentions of numbers', text('!lye help', { 'm.mentions': { user_ids: [1, null, {}] } })],
  ['with a reaction to nothing', { type: 'm.reaction', content: { 'm.relates_to': { rel_type: 'm.annotation' } } }],
  ['with a redaction of nothing', { type: 'm.room.redaction', content: {} }],
  ['with ciphertext that is none', { type: 'm.room.encrypted', content: { algorithm: 'm.megolm.v1.aes-sha2' } }],
  ['with an algorithm that is none', { type: 'm.room.encrypted', content: { algorithm: 7 } }],
  ['with a tombstone to nowhere', { type: 'm.room.tombstone', state_key: '', content: { replacement_room: 7 } }],
  ['with a membership that is none', { type: 'm.room.member', state_key: 'x', content: { membership: 7 } }],
  ['with a body of a megabyte', text(`!lye check ${'1 g lard, '.repeat(100_000)}`)],
  ['with a line of a megabyte', text(`!lye ${'9'.repeat(1_000_000)}`)],
  ['with a mention of each of 20,000', text('!lye help', { 'm.mentions': { user_ids: Array(20_000).fill('@a:b.c') } })],
];

describe('an event', () => {
  test.each(odd)('%s', async (_what, event) => {
    await slip(event);
    await answers(ann, room);
    expect(world.bot.child.exitCode).toBeNull();
  });

  test('none of which made it say anything that calls or breaks', () => {
    const said = ann.heard().filter(({ sender, type }) => sender === world.botId && type === 'm.room.message');
    expect(said.length).toBeGreaterThan(odd.length);
    for (const { content } of said) expect(flawsOf(content)).toEqual([]);
    expect(world.bot.out()).not.toMatch(/lard|olive|TypeError/);
  });
});

describe('a message', () => {
  test('as long as a server takes it', async () => {
    const asked = await ann.say(room, `!lye check ${'100 g lard, '.repeat(5000)}`);
    expect(flawsOf((await ann.answer(asked)).content)).toEqual([]);
  });

  test('whose HTML says something else: the plain body is read', async () => {
    const html = `<b>!lye check 900 g lard, 1 g NaOH</b>`;
    const answer = await ann.answer(await ann.say(room, `!lye check ${recipe}`, { html }));
    expect(answer.content.body).toMatch(/castor/i);
    expect(answer.content.body).not.toMatch(/lard/i);
  });

  test('of HTML nested deep', async () => {
    const html = '<blockquote>'.repeat(2500) + recipe + '</blockquote>'.repeat(2500);
    expect((await ann.answer(await ann.say(room, `!lye check ${recipe}`, { html }))).content.body).toMatch(/castor/i);
    const asked = await ann.say(room, `!lye check ${'<div>'.repeat(5000)}${recipe}`);
    expect(flawsOf((await ann.answer(asked)).content)).toEqual([]);
  });

  test('that replies to a message of another room learns nothing of it', async () => {
    const secret = await world.room(ann, { name: 'secret' });
    const kept = await ann.say(secret, '777 g rice bran oil, 99 g NaOH, 222 g water');
    await answers(ann, secret);
    const { content } = await ann.answer(await ann.say(room, '!lye check', { reply: kept }));
    expect(content.body).not.toMatch(/777|222|rice/i);
  });

  test('that replies to what does not exist is answered kindly', async () => {
    const { content } = await ann.answer(await ann.say(room, '!lye check', { reply: '$does-not-exist' }));
    expect(content.body.length).toBeGreaterThan(10);
  });

  test('that mentions five hundred', async () => {
    const mentions = [world.botId, ...Array.from({ length: 500 }, (_, i) => `@person-number-${i}:lyeward.test`)];
    const { content } = await ann.answer(await ann.say(room, `check ${recipe}`, { mentions }));
    expect(flawsOf(content)).toEqual([]);
  });

  test.each(['m.location', 'm.audio', 'm.video', 'm.image', 'm.file', 'org.example.poll'])(
    'of kind %s',
    async (kind) => {
      const content = { msgtype: kind, body: 'soap.jpg', url: 'mxc://lyeward.test/none', geo_uri: 'geo:0,0' };
      await ann.send(room, 'm.room.message', content);
      await ann.send(room, 'm.sticker', { body: 'x', url: 'mxc://lyeward.test/none', info: {} });
      await answers(ann, room);
    },
  );

  test('of a person whose name is of emoji, letters from right to left, and orders to clients', async () => {
    const name = '🧼\u202eصابون @room <b>שבון</b> [x](https://example.org)\u0000';
    await ann.http('PUT', `/profile/${encodeURIComponent(ann.id)}/displayname`, {
      displayname: name.replace('\0', ''),
    });
    const { content } = await ann.answer(await ann.say(room, `!lye check ${recipe}`));
    expect(flawsOf(content)).toEqual([]);
    expect(content.body).not.toMatch(/@room|صابون/);
  });
});

test('what it cannot decrypt it asks for again, once', async () => {
  const hidden = await world.room(ann, { encrypted: true });
  await answers(ann, hidden);
  const content = {
    algorithm: 'm.megolm.v1.aes-sha2',
    ciphertext:
      'AwgAEnACgAkLmt6qF84IK++J7UDH2Za1YVchHyprqTqsg2yyOwAtHaZTwyNg37afzg8f3r9IsN9rH4RNFg7MaZencUJe4qvELiDiopUjy5wYVDAtqdBzer5bWRD9ldxp1FLgbQvBcjkkywYjCsmsq6+hArILd9oAQZnGKn/qLsK+5uNX3PaWzDRC9wZPQvWYYPCTov3jCwXKTPsLKIiTrcCXDqMvnn8m+T3zF/I2zqxg158tnUwWWIw51UO',
    device_id: 'UNKNOWN',
    sender_key: 'IlRMeOPX2e0MurIyfWEucYBRVOEEUMrOHqn/8mLqMjA',
    session_id: 'X3lUlvLELLYxeTx4yOVu6UDpasGEVO0Jbu+QFnm0cKQ',
  };
  const put = (txn: string): Promise<Json> =>
    ann.http('PUT', `/rooms/${encodeURIComponent(hidden)}/send/m.room.encrypted/${txn}`, content);
  const { event_id: lost } = await put('lost1');
  const { content: kind } = await ann.answer(lost);
  expect(kind.body).toMatch(/could ?n[o']t read|again/i);
  await put('lost2');
  await put('lost3');
  await answers(ann, hidden);
  await world.again();
  await answers(ann, hidden);
  expect(ann.repliesTo(lost)).toHaveLength(1);
  const wire = (await ann.history(hidden)).filter(({ sender }) => sender === world.botId).map(({ type }) => type);
  expect(new Set(wire)).toEqual(new Set(['m.room.member', 'm.room.encrypted']));
});

test('500 commands of one person: told once, then quiet, and others are answered', { timeout: 300_000 }, async () => {
  const [loud, bob] = await Promise.all([world.human('loud'), world.human('bob')]);
  const place = await world.room(loud, { invite: [bob.id] });
  await bob.join(place);
  const elsewhere = await world.room(bob);
  const path = `/rooms/${encodeURIComponent(place)}/send/m.room.message/`;
  const content = { msgtype: 'm.text', body: '!lye convert 1 lb to g' };
  const ids: string[] = [];
  const since = performance.now();
  for (let batch = 0; batch < 25; batch += 1) {
    const sent = Array.from({ length: 20 }, (_, i) => loud.http('PUT', `${path}l${batch}.${i}`, content));
    ids.push(...(await Promise.all(sent)).map(({ event_id }) => event_id));
  }
  await answers(bob, elsewhere);
  const inLine = await bob.say(place, '!lye convert 1 lb to g');
  expect((await bob.answer(inLine, 110)).content.body).toContain('453.6 g');
  const all = (): readonly Heard[] => ids.flatMap((id) => loud.repliesTo(id));
  const notes = (): readonly Heard[] => all().filter((one) => !/453\.6 g/.test(one.content.body));
  await loud.until(() => notes()[0], 'a word about it', 200);
  await new Promise((resolve) => setTimeout(resolve, 2000));
  // who has rested for half of what a minute allows is told again
  const rests = (performance.now() - since) / 1000 / 30;
  expect(notes().length).toBeLessThanOrEqual(1 + rests);
  expect(flawsOf(notes()[0]?.content)).toEqual([]);
  expect(all().length).toBeLessThan(500);
});
