// What Discord or the way to it does wrong, one case each; Discord's seconds are scaled down. What discord.js does of
// itself at each of these was found by experiment; the cases hold what people get.
import { afterEach, describe, expect, test } from 'vitest';
import { type Bot, createBot } from '../../src/index.ts';
import { type House, openHouse } from './house.ts';
import { applicationId, menu, slash, token } from './standin/interactions.ts';
import { createStandIn, type Json, rejectIdentify } from './standin/server.ts';

const real = createBot();
let house: House | undefined;
afterEach(async () => {
  await house?.close();
  house = undefined;
});

const safety = () => slash('safety');
const callback = /POST \/interactions\/.*\/callback/;
const original = /PATCH \/webhooks\/.*original/;
const text = (answer: Json): string => answer.data.content;

describe('a first response', () => {
  test.each([
    ['that meets 500 three times', { status: 500 }, 3],
    ['that meets 503', { status: 503 }, 2],
    ['whose connection is reset', 'reset', 2],
    ['that hangs', 'hang', 1],
    [
      'that meets a limit of its route',
      {
        status: 429,
        body: { message: 'slow', retry_after: 0.02, global: false },
        headers: { 'retry-after': '0.02', 'x-ratelimit-scope': 'user' },
      },
      1,
    ],
  ] as const)('%s is sent again within the deadline', async (_name, does, times) => {
    house = await openHouse({ pace: does === 'hang' ? 0.5 : 1 });
    house.discord.fault({ on: callback, times, does });
    const since = performance.now();
    expect(text(await house.discord.interact(safety()))).toMatch(/rinse/i);
    expect(performance.now() - since).toBeLessThan(3000);
  });

  test('of another person waits as well where the limit is that of the whole bot', async () => {
    house = await openHouse();
    const { discord } = house;
    const does = { status: 429, body: { message: 'slow', retry_after: 0.3, global: true } };
    discord.fault({ on: callback, times: 1, does });
    const first = discord.interact(safety());
    await discord.until(() => discord.recorded.some(({ status }) => status === 429), 'the limit');
    const since = performance.now();
    await Promise.all([first, discord.interact(safety())]);
    expect(performance.now() - since).toBeGreaterThan(250);
    expect(discord.recorded.filter(({ path }) => callback.test(`POST ${path}`))).toHaveLength(3);
  });

  test('whose answer is lost counts: the second try is told so and is no failure', async () => {
    house = await openHouse();
    house.discord.fault({ on: callback, times: 1, does: 'lose' });
    await house.discord.interact(safety());
    await house.discord.until(
      () => house?.discord.recorded.filter(({ kind }) => kind === 'message').length === 2,
      'a second try',
    );
    await house.stop();
    expect(house.notes.filter(({ level }) => level === 'error')).toEqual([]);
  });

  test('that is refused for its body is followed by an apology with a number', async () => {
    house = await openHouse();
    house.discord.fault({
      on: callback,
      times: 1,
      does: { status: 400, body: { code: 50035, message: 'Invalid Form Body' } },
    });
    const answer = text(await house.discord.interact(safety()));
    expect(answer).toMatch(/the number [0-9a-f]{8}/);
    expect(answer).toContain(String(house.notes.find(({ event }) => event === 'unanswered')?.['id']));
  });

  test('that comes too late fails quietly', async () => {
    house = await openHouse();
    house.discord.fault({
      on: callback,
      times: 9,
      does: { status: 404, body: { code: 10062, message: 'Unknown interaction' } },
    });
    house.discord.dispatch('INTERACTION_CREATE', safety());
    await house.discord.until(() => house?.notes.some(({ event }) => event === 'unanswered'), 'a line of the log');
    expect(await house.stop()).toBe(0);
  });
});

describe('work that takes long', () => {
  const slow = (until: Promise<void>): Bot => ({
    ...real,
    ask: (async (asked: Parameters<Bot['ask']>[0]) => {
      await until;
      return real.ask(asked);
    }) as unknown as Bot['ask'],
  });

  test('is put off in time, then answered, through faults of the edit', async () => {
    let answer: (() => void) | undefined;
    const bot = slow(
      new Promise<void>((resolve) => {
        answer = resolve;
      }),
    );
    house = await openHouse({ bot, patience: 20, pace: 0.5 });
    house.discord.fault({ on: original, times: 1, does: 'reset' });
    house.discord.fault({ on: original, times: 2, does: { status: 502 } });
    const interaction = safety();
    expect(await house.discord.interact(interaction)).toEqual({ type: 5, data: { flags: 64 } });
    answer?.();
    await house.discord.until(() => house?.discord.messageOf(interaction).content !== '', 'the answer');
    expect(house.discord.messageOf(interaction).content).toMatch(/rinse/i);
    expect(house.discord.messageOf(interaction).flags & 64).toBe(64);
  });

  test('that fails ends in an answer with a number', async () => {
    const bot: Bot = {
      ...real,
      ask: () => {
        throw new Error('broken');
      },
    };
    house = await openHouse({ bot });
    expect(text(await house.discord.interact(safety()))).toMatch(/the number [0-9a-f]{8}/);
    expect(text(await house.discord.interact(menu('Check this recipe', { content: '500 g lard' })))).toMatch(
      /the number/,
    );
  });
});

describe('the token', () => {
  test('outlives a 401 on a route of the bot', async () => {
    house = await openHouse({ directMessages: true });
    const { discord } = house;
    discord.fault({
      on: /POST \/channels/,
      times: 1,
      does: { status: 401, body: { code: 0, message: '401: Unauthorized' } },
    });
    const say = (id: string) =>
      discord.dispatch('MESSAGE_CREATE', {
        id,
        type: 0,
        channel_id: '600',
        author: { id: '300000000000000001', username: 'm' },
        content: 'safety',
      });
    say('7001');
    await discord.until(() => house?.notes.some(({ event }) => event === 'direct-message-unanswered'), 'the refusal');
    say('7002');
    const { body } = await discord.until(
      () => discord.recorded.find(({ kind, status }) => kind === 'create' && status === 200),
      'an answer',
    );
    expect(body.content).toMatch(/rinse/i);
  });

  test('outlives a 401 on the way in', async () => {
    const discord = await createStandIn({ token, applicationId });
    discord.fault({
      on: /GET \/gateway\/bot/,
      times: 2,
      does: { status: 401, body: { code: 0, message: '401: Unauthorized' } },
    });
    house = await openHouse({ discord, pace: 0.2 });
    expect(text(await discord.interact(safety()))).toMatch(/rinse/i);
    await house.stop();
    await discord.close();
  });

  test('that Discord refuses for good ends the bot with a clear word', async () => {
    house = await openHouse({ has: 'wrong', pace: 0.01 }, false);
    expect(await house.ended).toBe(78);
    expect(house.notes.at(-1)).toMatchObject({ level: 'fatal', reason: expect.stringContaining('DISCORD_TOKEN') });
  });
});

describe('the gateway', () => {
  test.each([
    ['drops the line', (house: House) => house.discord.connections()[0]?.drop()],
    ['closes with 4000', (house: House) => house.discord.connections()[0]?.close(4000)],
    ['asks to reconnect (op 7)', (house: House) => house.discord.connections()[0]?.send({ op: 7 })],
    [
      'calls the session invalid but resumable (op 9)',
      (house: House) => house.discord.connections()[0]?.send({ op: 9, d: true }),
    ],
  ])('%s: the session is resumed, and what came meanwhile is answered', async (_name, happens) => {
    house = await openHouse();
    happens(house);
    await house.discord.until(
      () => house?.discord.connections().filter(({ resumed }) => !resumed).length === 0,
      'the end of the line',
    );
    expect(text(await house.discord.interact(safety()))).toMatch(/rinse/i);
    expect(house.discord.connections().at(-1)?.resumed).toBe(true);
  });

  test('acknowledges no heartbeat: the session is resumed', async () => {
    house = await openHouse({ heartbeat: 60 });
    house.discord.connections()[0]?.deafen();
    await house.discord.until(() => house?.discord.connections()[0]?.resumed, 'a resumption');
    expect(text(await house.discord.interact(safety()))).toMatch(/rinse/i);
  });

  // Discord allows one IDENTIFY in 5 s, and so discord.js waits for that.
  test('calls the session lost (op 9, false): a new one is begun', { timeout: 15_000 }, async () => {
    house = await openHouse();
    const [first] = house.discord.connections();
    first?.send({ op: 9, d: false });
    await house.discord.until(
      () => house?.discord.connections().some((one) => one !== first && !one.resumed),
      'a new session',
    );
    expect(text(await house.discord.interact(safety()))).toMatch(/rinse/i);
  });

  test('is away at the start (503): tried again with longer and longer pauses', async () => {
    const discord = await createStandIn({ token, applicationId });
    discord.fault({ on: /GET \/gateway\/bot/, times: 6, does: { status: 503 } });
    house = await openHouse({ discord, pace: 0.2 });
    const pauses = house.notes.filter(({ event }) => event === 'gateway-lost').map(({ again }) => again);
    expect(pauses).toEqual([200, 400, 800]);
    expect(text(await discord.interact(safety()))).toMatch(/rinse/i);
    await house.stop();
    await discord.close();
  });

  test.each([
    [4004, /refuses the token/],
    [4014, /does not allow an intent/],
    [4013, /does not know an intent/],
  ])('closes with %i: the bot ends with a clear word', async (code, word) => {
    const discord = await createStandIn({ token, applicationId });
    rejectIdentify(discord, code);
    house = await openHouse({ discord }, false);
    expect(await house.ended).toBe(78);
    expect(house.notes.at(-1)).toMatchObject({ level: 'fatal', reason: expect.stringMatching(word) });
    await discord.close();
  });

  test('closes with 4004 in the middle: the bot ends', async () => {
    house = await openHouse();
    house.discord.connections()[0]?.close(4004);
    expect(await house.ended).toBe(78);
  });

  test('delivers twice: answered once', async () => {
    house = await openHouse();
    const interaction = safety();
    await house.discord.interact(interaction);
    house.discord.dispatch('INTERACTION_CREATE', interaction);
    await house.discord.interact(safety());
    expect(house.discord.recorded.filter(({ path }) => path.includes(interaction.id))).toHaveLength(1);
  });

  test('asks for no intent, or for direct messages only', async () => {
    house = await openHouse();
    expect(house.discord.connections()[0]?.intents).toBe(0);
    await house.close();
    house = await openHouse({ directMessages: true });
    expect(house.discord.connections()[0]?.intents).toBe(4096);
  });
});

describe('under load', () => {
  test('nothing stays unanswered, while one answer in ten meets a fault', async () => {
    house = await openHouse();
    const { discord } = house;
    const all = Array.from({ length: 100 }, (_, i) =>
      slash('check', { text: `${400 + i} g olive oil, 225 g coconut oil, 100 g NaOH, 230 g water` }),
    );
    for (let i = 0; i < 10; i += 1) {
      discord.fault({ on: callback, times: 1, does: i % 2 === 0 ? 'reset' : { status: 502 } });
    }
    const answers = await Promise.all(all.map((one) => discord.interact(one)));
    expect(answers.filter(({ data }) => /fits|left over|alkali/.test(data.content))).toHaveLength(100);
    expect(discord.flaws()).toEqual([]);
  });
});

test('stopping answers what is open', async () => {
  let answer: (() => void) | undefined;
  let heard: (() => void) | undefined;
  const asked = new Promise<void>((resolve) => {
    heard = resolve;
  });
  const waiting = new Promise<void>((resolve) => {
    answer = resolve;
  });
  const bot: Bot = {
    ...real,
    ask: (async (said: Parameters<Bot['ask']>[0]) => {
      heard?.();
      await waiting;
      return real.ask(said);
    }) as unknown as Bot['ask'],
  };
  house = await openHouse({ bot });
  const interaction = safety();
  const answered = house.discord.interact(interaction);
  await asked;
  const stopped = house.stop();
  answer?.();
  expect(text(await answered)).toMatch(/rinse/i);
  expect(await stopped).toBe(0);
});
