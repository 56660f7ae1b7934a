// Coming and going: invites, greetings, kicks, bans, empty rooms, upgraded rooms, spaces, what the host allows.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Heard, Human, Json } from '../human.ts';
import { flawsOf } from '../judge.ts';
import { password, register } from '../synapse/server.ts';
import { openWorld, type World } from '../world.ts';

const question = '!lye convert 1 lb to g';

let world: World;
let ann: Human;
beforeAll(async () => {
  world = await openWorld();
  ann = await world.human('ann');
});
afterAll(() => world?.close());

const path = (room: string, what: string): string => `/rooms/${encodeURIComponent(room)}/${what}`;
const messagesOf = (human: Human, room: string, sender: string): readonly Heard[] =>
  human.heard().filter((one) => one.room === room && one.sender === sender && one.type === 'm.room.message');
const answers = async (human: Human, room: string): Promise<void> => {
  expect((await human.answer(await human.say(room, question))).content.body).toContain('453.6 g');
};
/** Where the bot is now, as the server's administrator sees it. */
async function joinedRooms({ server, botId }: World): Promise<readonly string[]> {
  const name = `admin-${Date.now().toString(36)}`;
  await register(server, name, true);
  const login = { type: 'm.login.password', identifier: { type: 'm.id.user', user: name }, password };
  const body = JSON.stringify(login);
  const { access_token: token } = (await (
    await fetch(`${server.url}/_matrix/client/v3/login`, { method: 'POST', body })
  ).json()) as Json;
  const response = await fetch(`${server.url}/_synapse/admin/v1/users/${encodeURIComponent(botId)}/joined_rooms`, {
    headers: { authorization: `Bearer ${token}` },
  });
  return ((await response.json()) as Json).joined_rooms;
}
async function waitForRooms(of: World, test: (rooms: readonly string[]) => boolean): Promise<void> {
  for (const end = Date.now() + 60_000; !test(await joinedRooms(of)); ) {
    if (Date.now() > end) throw new Error('the bot stayed where it was');
    await new Promise((resolve) => setTimeout(resolve, 300));
  }
}

test.each([false, true])('greets once, in a line, and calls nobody (encrypted: %s)', async (encrypted) => {
  const room = await world.room(ann, { encrypted });
  await ann.until(() => messagesOf(ann, room, world.botId)[0], 'the greeting');
  await answers(ann, room);
  await world.again();
  await answers(ann, room);
  const [greeting, ...rest] = messagesOf(ann, room, world.botId).filter(({ content }) => !content['m.relates_to']);
  expect(rest).toEqual([]);
  expect(greeting?.content.body).not.toContain('\n');
  expect(greeting?.content.body).toContain('!lye');
  expect(greeting?.decrypted).toBe(encrypted);
  expect(flawsOf(greeting?.content)).toEqual([]);
});

test('history from before it came is not answered', async () => {
  const room = await ann.create();
  const old = await ann.say(room, question);
  await ann.http('POST', path(room, 'invite'), { user_id: world.botId });
  await ann.waitFor(room, world.botId);
  await answers(ann, room);
  expect(ann.repliesTo(old)).toEqual([]);
});

test('kicked, it goes on elsewhere, and comes back when it is asked', async () => {
  const [room, elsewhere] = await Promise.all([world.room(ann), world.room(ann)]);
  await answers(ann, room);
  await ann.http('POST', path(room, 'kick'), { user_id: world.botId, reason: 'tidying' });
  await answers(ann, elsewhere);
  await ann.http('POST', path(room, 'invite'), { user_id: world.botId });
  await ann.waitFor(room, world.botId);
  await answers(ann, room);
});

test('banned, it stays away and goes on elsewhere', async () => {
  const [room, elsewhere] = await Promise.all([world.room(ann, { encrypted: true }), world.room(ann)]);
  await answers(ann, room);
  await ann.say(room, question);
  await ann.http('POST', path(room, 'ban'), { user_id: world.botId });
  await answers(ann, elsewhere);
  expect(await joinedRooms(world)).not.toContain(room);
});

test('muted, it goes on elsewhere', async () => {
  const [room, elsewhere] = await Promise.all([world.room(ann), world.room(ann)]);
  await answers(ann, room);
  const levels = await ann.http('GET', path(room, 'state/m.room.power_levels/'));
  await ann.state(room, 'm.room.power_levels', { ...levels, events_default: 50 });
  const unanswered = await ann.say(room, question);
  await answers(ann, elsewhere);
  expect(ann.repliesTo(unanswered)).toEqual([]);
  await ann.state(room, 'm.room.power_levels', levels);
  await answers(ann, room);
});

test('leaves a room that all others have left', async () => {
  const room = await world.room(ann, { direct: true });
  await answers(ann, room);
  await ann.http('POST', path(room, 'leave'), {});
  await waitForRooms(world, (rooms) => !rooms.includes(room));
});

test.each([false, true])('follows an upgrade of a room (encrypted: %s)', async (encrypted) => {
  const room = await world.room(ann, { encrypted });
  await ann.state(room, 'm.room.join_rules', { join_rule: 'public' });
  await answers(ann, room);
  const { replacement_room: next } = await ann.http('POST', path(room, 'upgrade'), { new_version: '11' });
  await ann.join(next);
  await ann.waitFor(next, world.botId);
  await answers(ann, next);
});

test('follows into a closed room when it is asked in', async () => {
  const room = await world.room(ann);
  const { replacement_room: next } = await ann.http('POST', path(room, 'upgrade'), { new_version: '11' });
  await ann.join(next);
  await ann.http('POST', path(next, 'invite'), { user_id: world.botId });
  await ann.waitFor(next, world.botId);
  await answers(ann, next);
});

test('encrypts from the moment the room does', async () => {
  const room = await world.room(ann);
  await answers(ann, room);
  await ann.state(room, 'm.room.encryption', { algorithm: 'm.megolm.v1.aes-sha2' });
  await ann.until(() => ann.heard().some((one) => one.room === room && one.type === 'm.room.encryption'), 'the change');
  const answer = await ann.answer(await ann.say(room, question));
  expect(answer.decrypted).toBe(true);
});

test('answers in a room of a space', async () => {
  const { room_id: space } = await ann.http('POST', '/createRoom', {
    name: 'Soap makers',
    creation_content: { type: 'm.space' },
    invite: [world.botId],
  });
  const room = await world.room(ann);
  await ann.state(space, 'm.space.child', { via: ['lyeward.test'] }, room);
  await ann.state(room, 'm.space.parent', { via: ['lyeward.test'], canonical: true }, space);
  await answers(ann, room);
});

describe('what the host sets', () => {
  test('takes invites only from whom it may', async () => {
    const bob = await world.human('bob');
    const strict = await openWorld({ env: { MATRIX_ALLOWED: ann.id } });
    try {
      const refused = await bob.create({ invite: [strict.botId] });
      const room = await strict.room(ann);
      await answers(ann, room);
      expect(await joinedRooms(strict)).not.toContain(refused);
    } finally {
      await strict.close();
    }
  });

  test('takes invites from a server that it may', async () => {
    const open = await openWorld({ env: { MATRIX_ALLOWED: 'elsewhere.example,lyeward.test' } });
    try {
      await answers(ann, await open.room(ann));
    } finally {
      await open.close();
    }
  });

  test('has a limit of rooms and a prefix of its own', async () => {
    const small = await openWorld({ env: { MATRIX_ROOM_LIMIT: '2', MATRIX_PREFIX: '?soap' } });
    try {
      const [room] = [await small.room(ann), await small.room(ann)];
      const third = await ann.create({ invite: [small.botId] });
      const other = await ann.say(room, question);
      expect((await ann.answer(await ann.say(room, '?soap convert 1 lb to g'))).content.body).toContain('453.6 g');
      expect(ann.repliesTo(other)).toEqual([]);
      expect(await joinedRooms(small)).not.toContain(third);
    } finally {
      await small.close();
    }
  });
});
