// The HTTP endpoint, over the wire: what Discord signs is answered, everything else is refused.
// Rules: https://docs.discord.com/developers/interactions/overview#setting-up-an-endpoint
import { generateKeyPairSync, sign } from 'node:crypto';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { connect } from 'node:net';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { createDesk } from '../../adapters/discord/desk.ts';
import { createEndpoint, type Endpoint, freshness, largestBody } from '../../adapters/discord/http.ts';
import { createHooks } from '../../adapters/discord/rest.ts';
import { downloader } from '../../adapters/discord/told.ts';
import type { Note } from '../../adapters/log.ts';
import { type Bot, createBot, declarations } from '../../src/index.ts';
import { applicationId, idOf, press, slash, token } from './standin/interactions.ts';
import { againstRules } from './standin/rules.ts';
import { againstSchema } from './standin/schema.ts';
import { createStandIn, type Json, type StandIn } from './standin/server.ts';

const { publicKey, privateKey } = generateKeyPairSync('ed25519');
const hex = Buffer.from(publicKey.export({ format: 'jwk' }).x ?? '', 'base64url').toString('hex');
const recipe = '450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water';

let discord: StandIn;
let endpoint: Endpoint;
let url = '';
let time = 1_800_000_000;
const notes: Note[] = [];
const real = createBot();
let bot: Bot = real;

beforeAll(async () => {
  discord = await createStandIn({ token, applicationId });
});
afterAll(() => discord.close());

beforeEach(async () => {
  notes.length = 0;
  bot = real;
  endpoint = createEndpoint({
    publicKey: hex,
    desk: createDesk({
      bot: {
        ask: (asked) => bot.ask(asked),
        prepare: () => {},
        complete: (typed) => bot.complete(typed),
        left: async () => {},
        joined: async () => {},
        ring: async () => {},
        present: async () => {},
        suggest: async () => [],
        close: async () => {},
      },
      declarations,
      download: downloader(discord.host),
      tells: true,
    }),
    hooks: async () => createHooks({ api: discord.api }),
    log: (note) => notes.push(note),
    now: () => time * 1000,
    patience: 100,
  });
  await new Promise<void>((resolve) => endpoint.server.listen(0, '127.0.0.1', resolve));
  const address = endpoint.server.address();
  url = `http://127.0.0.1:${typeof address === 'object' ? address?.port : ''}`;
});
afterEach(() => endpoint.drain());

interface Sent {
  readonly at?: number | string;
  readonly signature?: string;
  readonly body?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Posts an interaction signed as Discord signs it, with what shall be wrong of it. */
async function post(interaction: Json, wrong: Sent = {}): Promise<Response> {
  const body = JSON.stringify(interaction);
  const at = wrong.at ?? time;
  const signature = sign(null, Buffer.from(`${at}${body}`), privateKey).toString('hex');
  return fetch(`${url}/interactions`, {
    method: 'POST',
    body: wrong.body ?? body,
    headers: wrong.headers ?? {
      'content-type': 'application/json',
      'x-signature-ed25519': wrong.signature ?? signature,
      'x-signature-timestamp': String(at),
    },
  });
}

/** Sends two in one breath, as one write; whether the first answer had left when the second was being worked out. */
async function both(second: string): Promise<{ readonly hadLeft: boolean; readonly answers: number }> {
  const first = 'I get dry hands from 500 g lard, 60 g NaOH, 150 g water';
  const raw = [first, second]
    .map((text) => {
      const body = JSON.stringify(slash('check', { text }));
      const signature = sign(null, Buffer.from(`${time}${body}`), privateKey).toString('hex');
      const head = [
        'POST /interactions HTTP/1.1',
        'host: lyeward',
        `content-length: ${Buffer.byteLength(body)}`,
        `x-signature-ed25519: ${signature}`,
        `x-signature-timestamp: ${time}`,
      ];
      return `${head.join('\r\n')}\r\n\r\n${body}`;
    })
    .join('');
  const responses: ServerResponse[] = [];
  endpoint.server.prependListener('request', (_: IncomingMessage, response: ServerResponse) => {
    responses.push(response);
  });
  let hadLeft = false;
  bot = {
    ...real,
    ask: (asked) => {
      if (asked.text.endsWith(second)) hadLeft = responses[0]?.writableEnded === true;
      return real.ask(asked);
    },
  };
  const socket = connect(Number(new URL(url).port), '127.0.0.1');
  socket.end(raw);
  let said = '';
  for await (const chunk of socket) said += chunk;
  return { hadLeft, answers: said.split('HTTP/1.1 200 OK').length - 1 };
}

/** A core that answers later, as one with a store will. */
const slow = (until: Promise<void>, onAsk = (): void => {}): Bot['ask'] =>
  (async (asked: Parameters<Bot['ask']>[0]) => {
    onAsk();
    await until;
    return real.ask(asked);
  }) as unknown as Bot['ask'];

describe('genuine', () => {
  test('PING is answered with PONG', async () => {
    const response = await post({ id: '1', application_id: applicationId, type: 1, token: 't', version: 1 });
    expect(response.status).toBe(200);
    expect(await response.json()).toEqual({ type: 1 });
  });

  test('a command is answered in the response, within the schema and the rules', async () => {
    const response = await post(slash('check', { text: recipe }));
    expect(response.headers.get('content-type')).toBe('application/json');
    const callback: Json = await response.json();
    expect([...againstSchema('message', callback), ...againstRules('message', callback)]).toEqual([]);
    expect(callback.data.content).toMatch(/fits/);
  });

  test('answers to what came in together leave together', async () => {
    expect(await both('500 g olive, 64 g NaOH, 150 g water')).toEqual({ hadLeft: false, answers: 2 });
  });

  test('before what takes its time', async () => {
    const long = `500 g olive, 64 g NaOH, 150 g water.${' It rained all day and we sat by the stove.'.repeat(50)}`;
    expect(await both(long)).toEqual({ hadLeft: true, answers: 2 });
  });

  test('its buttons are answered by another replica', async () => {
    const first = slash('check', { text: recipe });
    const callback: Json = await (await post(first)).json();
    discord.open(first, callback);
    await endpoint.drain();
    endpoint = createEndpoint({
      publicKey: hex,
      desk: createDesk({ bot: createBot(), declarations, download: downloader(discord.host), tells: true }),
      hooks: async () => createHooks({ api: discord.api }),
      log: (note) => notes.push(note),
      now: () => time * 1000,
    });
    await new Promise<void>((resolve) => endpoint.server.listen(0, '127.0.0.1', resolve));
    const address = endpoint.server.address();
    url = `http://127.0.0.1:${typeof address === 'object' ? address?.port : ''}`;
    const message = discord.messageOf(first);
    const pressed = press(message, idOf(message, 'details'));
    discord.open(pressed, { type: 5, data: { flags: 64 } });
    const details: Json = await (await post(pressed)).json();
    expect(details.data.content).toContain('Castor oil');
  });

  test('what takes long is put off, then answered by an edit', async () => {
    let answer: (() => void) | undefined;
    const waiting = new Promise<void>((resolve) => {
      answer = resolve;
    });
    bot = { ...real, ask: slow(waiting) };
    const interaction = slash('check', { text: recipe });
    const callback: Json = await (await post(interaction)).json();
    expect(callback).toEqual({ type: 5, data: { flags: 64 } });
    discord.open(interaction, callback);
    answer?.();
    const { body } = await discord.until(
      () => discord.recorded.find((one) => one.kind === 'edit' && one.path.includes(interaction.token)),
      'the edit',
    );
    expect(body).toMatchObject({ content: expect.stringMatching(/fits/), allowed_mentions: { parse: [] } });
    expect(discord.flaws()).toEqual([]);
  });

  test('a bug of the core ends in an answer with a number to pass on, and in the log', async () => {
    bot = {
      ...real,
      ask: () => {
        throw new Error('broken');
      },
    };
    const callback: Json = await (await post(slash('check', { text: recipe }))).json();
    expect(callback.data.content).toMatch(/the number [0-9a-f]{8}/);
    expect(callback.data.content).toContain(String(notes[0]?.['id']));
    expect(JSON.stringify(notes)).not.toContain('olive');
  });

  test('up to the edges of freshness', async () => {
    for (const at of [time - freshness, time + freshness]) {
      expect((await post(slash('safety'), { at })).status).toBe(200);
    }
  });
});

describe('refused', () => {
  const good = () => slash('check', { text: recipe });
  const cases: readonly (readonly [string, number, () => Promise<Response>])[] = [
    [
      'a body that was changed by one letter',
      401,
      () => post(good(), { body: JSON.stringify(good()).replace('450 g', '45 g') }),
    ],
    [
      'a signature of another body',
      401,
      () => post(good(), { signature: sign(null, Buffer.from('other'), privateKey).toString('hex') }),
    ],
    ['a short signature', 401, () => post(good(), { signature: 'ab12' })],
    ['a signature that is no hexadecimal', 401, () => post(good(), { signature: 'z'.repeat(128) })],
    ['no signature', 401, () => post(good(), { headers: { 'x-signature-timestamp': String(time) } })],
    ['no headers at all', 401, () => post(good(), { headers: {} })],
    ['an empty body', 401, () => post(good(), { body: '' })],
    ['a time that is stale', 401, () => post(good(), { at: time - freshness - 1 })],
    ['a time that is to come', 401, () => post(good(), { at: time + freshness + 1 })],
    ['a time that is no number', 401, () => post(good(), { at: '1e9' })],
    ['a body beyond the limit', 413, () => post({ ...good(), padding: 'x'.repeat(largestBody) })],
    ['another path', 404, () => fetch(`${url}/`)],
    ['another method', 405, () => fetch(`${url}/interactions`)],
  ];
  test.each(cases)('%s', async (_name, status, send) => {
    expect((await send()).status).toBe(status);
    // and the endpoint lives
    expect((await post(slash('safety'))).status).toBe(200);
  });

  test('what is sent a second time', async () => {
    const interaction = good();
    expect((await post(interaction)).status).toBe(200);
    expect((await post(interaction)).status).toBe(401);
    const before = time;
    time += 2 * freshness - 1;
    expect((await post(interaction, { at: before + freshness })).status).toBe(200);
    time = before;
  });

  test('what is signed but no interaction', async () => {
    expect((await post([])).status).toBe(400);
    expect((await post({ type: 99, id: '1', token: 't', application_id: applicationId })).status).toBe(200);
  });

  test('a body in pieces that does not end: cut off at the limit', async () => {
    const { port } = new URL(url);
    const socket = connect(Number(port), '127.0.0.1');
    socket.write('POST /interactions HTTP/1.1\r\nhost: x\r\ntransfer-encoding: chunked\r\n\r\n');
    const heard = new Promise<string>((resolve) => {
      let text = '';
      socket.on('data', (data) => {
        text += data;
      });
      socket.on('close', () => resolve(text));
      socket.on('error', () => resolve(text));
    });
    const piece = `10000\r\n${'x'.repeat(65_536)}\r\n`;
    for (let i = 0; i < 5; i += 1) socket.write(piece);
    expect(await heard).toContain('413');
  });
});

test('draining finishes what is open, and takes nothing new', async () => {
  let answer: (() => void) | undefined;
  const waiting = new Promise<void>((resolve) => {
    answer = resolve;
  });
  let heard: (() => void) | undefined;
  const asked = new Promise<void>((resolve) => {
    heard = resolve;
  });
  bot = { ...real, ask: slow(waiting, () => heard?.()) };
  const interaction = slash('check', { text: recipe });
  const response = post(interaction);
  await asked;
  const drained = endpoint.drain();
  await expect(fetch(`${url}/health`)).rejects.toThrow();
  answer?.();
  expect(((await (await response).json()) as Json).data.content).toMatch(/fits/);
  await drained;
});
