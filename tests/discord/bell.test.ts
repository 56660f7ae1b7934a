/** What is told later on Discord: where, to whom, and once, through the faults of the line. */
import { afterEach, describe, expect, test } from 'vitest';
import { createTeller } from '../../adapters/discord/bell.ts';
import { createDesk } from '../../adapters/discord/desk.ts';
import { laterOf } from '../../adapters/discord/later.ts';
import { downloader } from '../../adapters/discord/told.ts';
import { createBot, declarations } from '../../src/index.ts';
import { createModel } from '../store/model.ts';
import { type House, openHouse } from './house.ts';
import { beginner, press, slash, stranger, token } from './standin/interactions.ts';
import type { Json } from './standin/server.ts';

/** View Channel and Send Messages. */
const mayWrite = { app_permissions: `${1024 + 2048}` };
const minute = 60_000;

let house: House | null = null;
let time = 0;
const store = { now: createModel() };
const now = () => time;

async function opened() {
  time = Date.UTC(2026, 10, 26, 11);
  store.now = createModel(now);
  const bot = createBot({ store: async () => store.now, now, zone: 'UTC' });
  house = await openHouse({ bot });
  const { discord } = house;
  const desk = createDesk({ bot, declarations, download: downloader(discord.host), tells: true });
  const tell = createTeller({ token, api: discord.api, desk, pace: 0.1 });
  return {
    discord,
    say: async (words: string, more: Json = {}, person = beginner): Promise<string> => {
      const [name = '', ...rest] = words.split(' ');
      const interaction = { ...slash(name, { text: rest.join(' ') }, person), ...more };
      return (await discord.interact(interaction)).data.content;
    },
    /** Until nothing is due any more. */
    ring: async () => {
      const end = new AbortController();
      const rung = bot.ring({ platforms: ['discord'], tell, signal: end.signal, atOnce: true, pace: 0.01 });
      for (
        let i = 0;
        i < 400 && ((await store.now.bells.next(['discord'])) ?? Number.POSITIVE_INFINITY) <= now();
        i += 1
      )
        await new Promise((resolve) => setTimeout(resolve, 10));
      end.abort();
      await rung;
    },
    created: () => discord.recorded.filter(({ kind, status }) => kind === 'create' && status === 200),
  };
}

afterEach(async () => {
  expect(house?.discord.flaws() ?? []).toEqual([]);
  await house?.close();
  house = null;
});

test('in the channel where it was asked, with a call to who asked and to nobody else', async () => {
  const { say, ring, created, discord } = await opened();
  expect(await say('remind me to stir @everyone <@300000000000000002> in 15 min', mayWrite)).toContain(
    'others read it',
  );
  time += 15 * minute;
  await ring();
  const [told] = created();
  expect(told?.path).toBe('/channels/500/messages');
  expect(told?.body).toMatchObject({
    content: expect.stringMatching(new RegExp(`^<@${beginner.id}> \\*\\*Reminder: stir`)),
    allowed_mentions: { parse: [], users: [beginner.id] },
    enforce_nonce: true,
  });
  expect(String(told?.body.nonce)).toHaveLength(25);
  // its buttons are its person's own
  const message = { ...told?.body, id: '77', flags: 4 };
  const id = told?.body.components[0].components[0].custom_id;
  expect((await discord.interact(press(message, id, stranger))).data.content).toContain('belong to');
  const again = await discord.interact({ ...press(message, id, beginner), ...mayWrite });
  expect(again.data.content).toContain('11:25');
});

test('a channel that is closed to the bot: told when it is set, and by a direct message when it is due', async () => {
  const { say, ring, created } = await opened();
  expect(await say('remind me to stir in 15 min')).toContain('I’ll write you a direct message');
  expect(await say('remind me to cut in 15 min', { authorizing_integration_owners: { 1: beginner.id } })).toContain(
    'I am no member of this server',
  );
  time += 15 * minute;
  await ring();
  expect(created().map(({ path }) => path)).toEqual(['/channels/9001/messages', '/channels/9001/messages']);
  expect(created()[0]?.body.content).not.toContain('<@');
});

test('a channel that was closed in the meantime, too', async () => {
  const { say, ring, created, discord } = await opened();
  await say('remind me to stir in 15 min', mayWrite);
  discord.fault({
    on: /^POST \/channels\/500\/messages/,
    times: 9,
    does: { status: 403, body: { code: 50013, message: 'Missing Permissions' } },
  });
  time += 15 * minute;
  await ring();
  expect(created().map(({ path }) => path)).toEqual(['/channels/9001/messages']);
});

describe('seen once', () => {
  test('the answer to the first try is lost: the nonce keeps the second from being a message', async () => {
    const { say, ring, created, discord } = await opened();
    await say('remind me to stir in 15 min', mayWrite);
    discord.fault({ on: /^POST \/channels\/500\/messages/, times: 1, does: 'lose' });
    time += 15 * minute;
    await ring();
    expect(created().length).toBeGreaterThan(1);
    expect(new Set(created().map(({ body }) => body.nonce)).size).toBe(1);
  });

  test('a crash, and an hour later: what stands in the channel already is not told again', async () => {
    const { say, ring, created, discord } = await opened();
    await say('remind me to stir in 15 min', mayWrite);
    time += 15 * minute;
    // told, and never struck out
    const [claimed] = await store.now.bells.claim({
      platforms: ['discord'],
      now: now(),
      leaseUntil: now() + minute,
      limit: 1,
    });
    await ring();
    expect(created()).toHaveLength(0);
    if (!claimed) throw new Error('nothing was due');
    time += 2 * minute;
    await ring();
    expect(created()).toHaveLength(1);
    await say('remind me to stir in 15 min', mayWrite);
    time += 15 * minute;
    const told = store.now.bells.told;
    (store.now.bells as { told: typeof told }).told = async () => {
      throw new Error('the process is killed here');
    };
    await ring();
    expect(created()).toHaveLength(2);
    (store.now.bells as { told: typeof told }).told = told;
    discord.forgetNonces();
    time += 60 * minute;
    await ring();
    expect(created()).toHaveLength(2);
    expect(await store.now.bells.next(['discord'])).toBeNull();
  });
});

test('a batch rings with the buttons of its next step', async () => {
  const { say, ring, created } = await opened();
  await say('batch start 500 g lard, 66 g NaOH, 150 g water', mayWrite);
  for (const words of ['all weighed', 'next', 'lye is clear', 'trace']) await say(`batch ${words}`, mayWrite);
  // a step without the word, as people say it in a plain question
  expect(await say('ask not there yet, 5 more', mayWrite)).toContain('11:20');
  time += 20 * minute;
  await ring();
  const [told] = created();
  expect(told?.body.content).toContain('Look at the pot now');
  expect(told?.body.content).toContain('under about 93 °C');
  const labels = told?.body.components.flatMap((row: Json) => row.components.map(({ label }: Json) => label));
  expect(labels).toEqual(['it is there', '5 more minutes', 'Ask on']);
});

test('where it can be told', () => {
  const server = { ...slash('remind'), ...mayWrite };
  expect(laterOf(server)).toMatchObject({ can: 'here' });
  expect(laterOf({ ...server, app_permissions: '8' })).toMatchObject({ can: 'here' });
  expect(laterOf({ ...server, app_permissions: '1024' })).toMatchObject({ can: 'direct' });
  expect(laterOf({ ...server, channel: { type: 11 } })).toMatchObject({ can: 'direct' });
  expect(laterOf({ ...server, channel: { type: 11 }, app_permissions: `${1024n | (1n << 38n)}` })).toMatchObject({
    can: 'here',
  });
  expect(laterOf(slash('remind', {}, beginner, 'direct'))).toEqual({ can: 'here' });
  expect(laterOf({ ...slash('remind', {}, beginner, 'direct'), context: 2 })).toMatchObject({ can: 'direct' });
});
