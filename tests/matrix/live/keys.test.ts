// What lies in its folder and on the server: keys that outlive the process, a device that others can trust, a recovery
// key that opens what is kept on the server. Checked with Node's own cryptography.
import { createCipheriv, createHmac, createPublicKey, hkdfSync, verify } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBot } from '../bot.ts';
import type { Heard, Human, Json } from '../human.ts';
import { openWorld, type World } from '../world.ts';

let world: World;
let ann: Human;
beforeAll(async () => {
  world = await openWorld();
  ann = await world.human();
});
afterAll(() => world?.close());

const question = '!lye convert 1 lb to g';
const answers = async (room: string): Promise<void> => {
  expect((await ann.answer(await ann.say(room, question))).content.body).toContain('453.6 g');
};

const keysOf = (user: string): Promise<Json> => ann.http('POST', '/keys/query', { device_keys: { [user]: [] } });

/** Canonical JSON: keys in order, nothing between (Matrix specification, appendix "Canonical JSON"). */
const canonical = (value: Json): string => {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const pairs = Object.keys(value)
    .toSorted()
    .map((key) => `${JSON.stringify(key)}:${canonical(value[key])}`);
  return `{${pairs.join(',')}}`;
};

/** Whether `key`, unpadded base64 of Ed25519, signed an object (appendix "Checking for a Signature"). */
function isSigned(object: Json, user: string, key: string): boolean {
  const { signatures, unsigned: _, ...rest } = object;
  const signature = signatures?.[user]?.[`ed25519:${key}`];
  if (!signature) return false;
  const spki = Buffer.concat([Buffer.from('302a300506032b6570032100', 'hex'), Buffer.from(key, 'base64')]);
  const publicKey = createPublicKey({ key: spki, format: 'der', type: 'spki' });
  return verify(null, Buffer.from(canonical(rest)), publicKey, Buffer.from(signature, 'base64'));
}

const onlyKey = ({ keys }: Json): string => String(Object.values(keys)[0]);

test('its one device is signed by its own identity, from the first start', async () => {
  const { botId } = world;
  const { device_keys, master_keys, self_signing_keys } = await keysOf(botId);
  const master = master_keys[botId];
  const selfSigning = self_signing_keys[botId];
  expect(isSigned(selfSigning, botId, onlyKey(master))).toBe(true);
  const devices = Object.values<Json>(device_keys[botId]);
  expect(devices).toHaveLength(1);
  expect(isSigned(devices[0], botId, onlyKey(selfSigning))).toBe(true);
});

test('a restart keeps the device, the identity and the keys', async () => {
  const room = await world.room(ann, { encrypted: true });
  await answers(room);
  const before = await keysOf(world.botId);
  for (const signal of ['SIGKILL', 'SIGTERM'] as const) {
    await world.bot.kill(signal);
    await world.again();
    await answers(room);
  }
  // Of a session of keys that it got before the restart.
  await ann.rotate(room);
  await answers(room);
  const after = await keysOf(world.botId);
  expect(Object.keys(after.device_keys[world.botId])).toEqual(Object.keys(before.device_keys[world.botId]));
  expect(onlyKey(after.master_keys[world.botId])).toBe(onlyKey(before.master_keys[world.botId]));
  expect(ann.heard().filter(({ undecryptable }) => undecryptable)).toEqual([]);
});

test('says once that it could not read a message, whose key was kept from it, and reads the next', async () => {
  const { botId } = world;
  const room = await world.room(ann, { encrypted: true });
  await answers(room);
  await ann.trust(botId, false);
  const lost = [await ann.say(room, question), await ann.say(room, question)];
  const said = (): readonly Heard[] => lost.flatMap((id) => ann.repliesTo(id));
  await ann.until(() => said().length > 0, 'a kind word', 60);
  expect(said().map(({ content }) => content.body)).toEqual([expect.stringMatching(/couldn.t read.*send it again/s)]);
  await ann.trust(botId, true);
  await answers(room);
  // What was kept from it stays so; it does not say it again.
  expect(said()).toHaveLength(1);
  expect(said().every(({ decrypted }) => decrypted)).toBe(true);
});

test('ends with 0 when it is told to', async () => {
  expect(await world.bot.kill('SIGTERM')).toBe(0);
  await world.again();
});

test('a device that somebody adds while it is down gets its keys', async () => {
  const room = await world.room(ann, { encrypted: true });
  await answers(room);
  await world.bot.kill();
  const bob = await world.human('bob');
  await ann.http('POST', `/rooms/${encodeURIComponent(room)}/invite`, { user_id: bob.id });
  await bob.join(room);
  await world.again();
  const asked = await ann.say(room, question);
  await ann.answer(asked);
  expect((await bob.answer(asked)).decrypted).toBe(true);
});

test('what lies in its folder is for its own user only', () => {
  const folder = join(world.data, 'matrix');
  const files = readdirSync(folder, { recursive: true, withFileTypes: true });
  expect(files.length).toBeGreaterThan(0);
  for (const entry of files) {
    const mode = statSync(join(entry.parentPath, entry.name)).mode & 0o777;
    expect([entry.name, mode & 0o077]).toEqual([entry.name, 0]);
  }
});

test('a second one on the same folder is refused in words, and the first goes on', async () => {
  const second = startBot({ url: world.server.url, user: world.botId, data: world.data });
  const code = await second.ended;
  expect(code).not.toBe(0);
  expect(typeof code).toBe('number');
  expect(second.out()).toMatch(/^lyeward: .*(already|in use|runs|another)/m);
  expect(second.out()).not.toMatch(/\bat .*\.(js|ts):\d+/);
  await answers(await world.room(ann, { encrypted: true }));
});

/** The 32 bytes of a recovery key (appendix "Cryptographic key representation"): base58 of 8b 01, key, parity. */
function decodeRecoveryKey(text: string): Buffer {
  const alphabet = '123456789ABCDEFGHJKLMNPQRSTUVWXYZabcdefghijkmnopqrstuvwxyz';
  let number = 0n;
  for (const letter of text.replace(/\s/g, '')) {
    const digit = alphabet.indexOf(letter);
    expect(digit).toBeGreaterThanOrEqual(0);
    number = number * 58n + BigInt(digit);
  }
  const bytes = Buffer.from(number.toString(16).padStart(70, '0'), 'hex');
  expect(bytes.subarray(0, 2)).toEqual(Buffer.from([0x8b, 0x01]));
  expect(bytes.reduce((all, byte) => all ^ byte, 0)).toBe(0);
  return bytes.subarray(2, 34);
}

test('the recovery key goes into a file by command, and opens what is kept on the server', async () => {
  await world.bot.kill('SIGTERM');
  const file = join(world.data, '..', 'recovery-key');
  const bot = startBot({
    url: world.server.url,
    user: world.botId,
    data: world.data,
    words: ['matrix', 'recovery-key', file],
  });
  expect([await bot.ended, bot.out()]).toEqual([0, expect.anything()]);
  expect(statSync(file).mode & 0o777).toBe(0o600);
  const text = readFileSync(file, 'utf8');
  const line = text.split('\n').find((one) => /^\s*(\w{4} ){11}\w{4}\s*$/.test(one));
  expect(line, 'a line of twelve groups of four').toBeDefined();
  expect(bot.out()).not.toContain(line?.trim());
  const key = decodeRecoveryKey(line ?? '');

  // Its own account data, read with a login of its own.
  const login = {
    type: 'm.login.password',
    identifier: { type: 'm.id.user', user: world.botId },
    password: 'a password of the tests',
  };
  const post = async (path: string, body: Json, token = ''): Promise<Json> =>
    (
      await fetch(`${world.server.url}/_matrix/client/v3${path}`, {
        method: 'POST',
        body: JSON.stringify(body),
        headers: token ? { authorization: `Bearer ${token}` } : {},
      })
    ).json();
  const { access_token: token } = await post('/login', login);
  const data = async (type: string): Promise<Json> =>
    (
      await fetch(
        `${world.server.url}/_matrix/client/v3/user/${encodeURIComponent(world.botId)}/account_data/${type}`,
        {
          headers: { authorization: `Bearer ${token}` },
        },
      )
    ).json();
  const { key: id } = await data('m.secret_storage.default_key');
  const description = await data(`m.secret_storage.key.${id}`);
  // "m.secret_storage.v1.aes-hmac-sha2": the MAC over zeros encrypted with the key tells whether it is the key.
  const derived = Buffer.from(hkdfSync('sha256', key, Buffer.alloc(32), '', 64));
  const cipher = createCipheriv('aes-256-ctr', derived.subarray(0, 32), Buffer.from(description.iv, 'base64'));
  const zeros = cipher.update(Buffer.alloc(32));
  const mac = createHmac('sha256', derived.subarray(32)).update(zeros).digest('base64').replace(/=+$/, '');
  expect(mac).toBe(description.mac.replace(/=+$/, ''));
  for (const secret of ['m.cross_signing.master', 'm.cross_signing.self_signing', 'm.cross_signing.user_signing']) {
    expect((await data(secret)).encrypted[id]).toBeDefined();
  }
  await post('/logout', {}, token);

  // Never over something that is there.
  const again = startBot({
    url: world.server.url,
    user: world.botId,
    data: world.data,
    words: ['matrix', 'recovery-key', file],
  });
  await again.ended;
  expect(existsSync(file)).toBe(true);
  expect(decodeRecoveryKey(readFileSync(file, 'utf8').match(/(\w{4} ){11}\w{4}/)?.[0] ?? '')).toEqual(key);
  await world.again();
  await answers(await world.room(ann, { encrypted: true }));
});

test('devices are listed by command', async () => {
  const child = startBot({
    url: world.server.url,
    user: world.botId,
    data: world.data,
    words: ['matrix', 'devices'],
  });
  await child.ended;
  const { device_keys } = await keysOf(world.botId);
  for (const device of Object.keys(device_keys[world.botId])) expect(child.out()).toContain(device);
});
