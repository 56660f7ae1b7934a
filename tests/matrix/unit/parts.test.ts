// Signs, quotations, limits, settings and attachments.
import { createDecipheriv, hash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addressOf, readAddress } from '../../../adapters/matrix/address.ts';
import { seal } from '../../../adapters/matrix/attachment.ts';
import { createFlood } from '../../../adapters/matrix/flood.ts';
import { persist } from '../../../adapters/matrix/persist.ts';
import { wantsQuoted, withQuoted } from '../../../adapters/matrix/quoted.ts';
import { requestFor, signOf } from '../../../adapters/matrix/reactions.ts';
import { isAllowed, readSettings } from '../../../adapters/matrix/settings.ts';

describe('signs', () => {
  test('are known in every form that keyboards give them', () => {
    expect(signOf('➡️')).toEqual({ kind: 'next' });
    expect(signOf('➡')).toEqual({ kind: 'next' });
    expect(signOf('2️⃣')).toEqual({ kind: 'offer', number: 2 });
    expect(signOf('2⃣')).toEqual({ kind: 'offer', number: 2 });
    for (const key of ['❤️', '2', '0️⃣', '', 'details', 'toString']) expect(signOf(key)).toBeNull();
  });

  test('ask what the answer offers', () => {
    const offers = ['details', 'solution', 'cook'];
    const ask = (key: string) => requestFor(signOf(key) ?? { kind: 'offer', number: 0 }, offers);
    expect(['🔍', '➡️', '📣', '1️⃣', '3️⃣', '4️⃣'].map(ask)).toEqual([
      'details',
      'solution',
      'summary',
      'details',
      'cook',
      null,
    ]);
  });
});

describe('what is quoted', () => {
  const recipe = '500 g lard, 66 g NaOH, 150 g water';
  test.each([
    ['', `check: ${recipe}`],
    ['check', `check: ${recipe}`],
    ['check this!', `check: ${recipe}`],
    ['summary', `summary: ${recipe}`],
    ['scale to 1 kg', `scale to 1 kg\n${recipe}`],
    ['is this right?', `is this right?\n${recipe}`],
  ])('is read with %j', (request, text) => {
    expect(withQuoted(request, recipe)).toBe(text);
  });

  test('is left alone where it holds no figure, or the request is a recipe itself', () => {
    expect(withQuoted('help', 'what a nice day')).toBe('help');
    expect(wantsQuoted(recipe)).toBe(false);
    expect(wantsQuoted('500 g lard\n66 g lye')).toBe(false);
    expect(wantsQuoted('scale to 1 kg')).toBe(true);
  });
});

describe('many questions of one person', () => {
  test('300 at once and then so many a minute; told once, then quiet until rested', () => {
    let now = 0;
    const flood = createFlood(120, () => now);
    const verdicts = (count: number) => {
      const all: string[] = [];
      for (let i = 0; i < count; i++) {
        now += 120;
        all.push(flood('@ada:example.org'));
      }
      return all;
    };
    // 500 in a minute
    const all = verdicts(500);
    expect(all.filter((one) => one === 'tell')).toHaveLength(1);
    expect(all.slice(0, all.indexOf('tell')).every((one) => one === 'answer')).toBe(true);
    expect(all.indexOf('tell')).toBeGreaterThan(300);
    expect(all.slice(all.indexOf('tell') + 1).every((one) => one === 'quiet')).toBe(true);
    expect(flood('@bo:example.org')).toBe('answer');
    now += 60_000;
    expect(flood('@ada:example.org')).toBe('answer');
  });
});

describe('a request that the server does not take', () => {
  const failure = (httpStatus: number | undefined, name = 'MatrixError', data = {}) =>
    Object.assign(new Error('no'), { name, data, ...(httpStatus === undefined ? {} : { httpStatus }) });
  const never = new AbortController().signal;

  test('is tried again where the server or the way is at fault, and not where the request is', async () => {
    const faults = [
      failure(429, 'MatrixError', { retry_after_ms: 20 }),
      failure(502),
      failure(undefined, 'ConnectionError'),
    ];
    const patience: number[] = [];
    const taken = await persist(async (ms) => {
      patience.push(ms);
      const fault = faults[patience.length - 1];
      if (fault) throw fault;
      return 'taken';
    }, never);
    expect(taken).toBe('taken');
    expect(patience).toEqual([4000, 8000, 16_000, 32_000]);
    for (const fault of [failure(403), failure(400), failure(undefined, 'TypeError')]) {
      await expect(persist(() => Promise.reject(fault), never)).rejects.toBe(fault);
    }
  });

  test('is given up at the end', async () => {
    const stop = new AbortController();
    const tried = persist(() => {
      stop.abort();
      return Promise.reject(failure(503));
    }, stop.signal);
    await expect(tried).rejects.toThrow(/abort/i);
  });
});

describe('settings', () => {
  const env = { MATRIX_HOMESERVER_URL: 'https://matrix.example.org/', MATRIX_USER: 'lyeward', MATRIX_PASSWORD: 'x' };
  const read = (more: Record<string, string> = {}) => readSettings({ ...env, ...more });

  test('are as the host says', () => {
    expect(read()).toMatchObject({
      ok: true,
      value: { homeserver: 'https://matrix.example.org', prefix: '!lye', allowed: null, roomLimit: 200 },
    });
    expect(read({ MATRIX_ALLOWED: 'example.org, @ada:example.net', MATRIX_PREFIX: '!soap' })).toMatchObject({
      value: { allowed: ['example.org', '@ada:example.net'], prefix: '!soap' },
    });
  });

  test.each([
    [{ MATRIX_HOMESERVER_URL: '' }, 'MATRIX_HOMESERVER_URL is not set'],
    [{ MATRIX_HOMESERVER_URL: 'example.org' }, 'MATRIX_HOMESERVER_URL must be an address'],
    [{ MATRIX_USER: '' }, 'MATRIX_USER is not set'],
    [{ MATRIX_PASSWORD: '', MATRIX_PASSWORD_FILE: '/nowhere' }, 'MATRIX_PASSWORD_FILE cannot be read'],
    [{ MATRIX_USER: '@lyeward' }, 'MATRIX_USER must be'],
    [{ MATRIX_PREFIX: '! lye' }, 'MATRIX_PREFIX'],
    [{ MATRIX_ALLOWED: 'ada@example.org' }, 'MATRIX_ALLOWED: "ada@example.org"'],
    [{ MATRIX_ROOM_LIMIT: 'many' }, 'MATRIX_ROOM_LIMIT'],
    [{ MATRIX_RATE: '0' }, 'MATRIX_RATE'],
  ])('%j is refused, and says which', (more, message) => {
    expect(read(more)).toMatchObject({ ok: false, message: expect.stringContaining(message) });
  });

  test('say whose invitations are taken', () => {
    const allowed = ['example.org', '@ada:example.net'];
    expect(isAllowed({ allowed: null }, '@x:anywhere')).toBe(true);
    expect(isAllowed({ allowed }, '@bo:example.org')).toBe(true);
    expect(isAllowed({ allowed }, '@ada:example.net')).toBe(true);
    expect(isAllowed({ allowed }, '@bo:example.net')).toBe(false);
    expect(isAllowed({ allowed }, '@example.org:evil.test')).toBe(false);
  });
});

describe('an attachment of an encrypted room', () => {
  test('opens with what its message carries, as the specification says', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (plain) => {
        const { data, file } = seal(plain);
        const { key, iv, hashes, url, v } = file('mxc://example.org/a') as {
          key: { k: string };
          iv: string;
          hashes: { sha256: string };
          url: string;
          v: string;
        };
        expect([url, v]).toEqual(['mxc://example.org/a', 'v2']);
        expect(Buffer.from(hashes.sha256, 'base64')).toEqual(hash('sha256', data, 'buffer'));
        const counter = Buffer.from(iv, 'base64');
        expect(counter.subarray(8)).toEqual(Buffer.alloc(8));
        const open = createDecipheriv('aes-256-ctr', Buffer.from(key.k, 'base64url'), counter);
        expect(new Uint8Array(Buffer.concat([open.update(data), open.final()]))).toEqual(plain);
      }),
    );
  });
});

test('an address comes back as it went, and nothing else is one', () => {
  const address = { room: '!a:example.org', thread: '$t', repliesTo: null };
  expect(readAddress(addressOf(address))).toEqual(address);
  for (const other of ['', '{', '{}', '[]', 'null', '"!a"']) expect(readAddress(other)).toBeNull();
});
