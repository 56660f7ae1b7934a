// The program as a host starts it: settings, secrets, what ends it and with which word and code.
import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { type Bot, startBot } from '../bot.ts';
import { type Human, type Json, openHuman } from '../human.ts';
import { openLine } from '../line.ts';
import { password, register, startSynapse } from '../synapse/server.ts';

const server = inject('synapse');
const question = '!lye convert 1 lb to g';
let folder = '';
let ann: Human;
let made = 0;
const bots: Bot[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
  await register(server, `starter-${process.pid}`);
  ann = await openHuman(server.url, `starter-${process.pid}`);
});
afterAll(async () => {
  for (const bot of bots) await bot.kill();
  await ann?.leave();
  rmSync(folder, { recursive: true });
});

const newUser = async (): Promise<string> => {
  made += 1;
  return register(server, `started-${process.pid}-${made}`);
};
const run = (user: string, env: Readonly<Record<string, string>> = {}, data = user): Bot => {
  const bot = startBot({ url: server.url, user, data: join(folder, data.replace(/\W/g, '')), env });
  bots.push(bot);
  return bot;
};
const answers = async (bot: Bot, user: string, human = ann): Promise<void> => {
  await bot.ready();
  const room = await human.create({ encrypted: true, invite: [user] });
  await human.waitFor(room, user);
  expect((await human.answer(await human.say(room, question))).content.body).toContain('453.6 g');
};
/** Ends with this code and one plain line, without a stack and without a secret. */
const endsWith = async (bot: Bot, code: number, words: RegExp): Promise<void> => {
  expect([await bot.ended, bot.out()]).toEqual([code, expect.stringMatching(words)]);
  expect(bot.out()).toMatch(/^lyeward: /m);
  expect(bot.out()).not.toMatch(/\bat .*\.(js|ts|mjs):\d+/);
  expect(bot.out()).not.toContain(password);
};
const login = async (user: string, more: Json = {}): Promise<Json> => {
  const identifier = { type: 'm.id.user', user };
  const body = JSON.stringify({ type: 'm.login.password', identifier, password, ...more });
  return (await fetch(`${server.url}/_matrix/client/v3/login`, { method: 'POST', body })).json();
};

const softLogout = { errcode: 'M_UNKNOWN_TOKEN', error: 'soft', soft_logout: true };

describe('settings', () => {
  test.each([
    ['MATRIX_HOMESERVER_URL', /MATRIX_HOMESERVER_URL/],
    ['MATRIX_USER', /MATRIX_USER/],
    ['MATRIX_PASSWORD', /MATRIX_PASSWORD/],
  ])('without %s it says so', async (name, words) => {
    await endsWith(run('@nobody:lyeward.test', { [name]: '' }, `without-${name}`), 78, words);
  });

  test('an address that is none', async () => {
    await endsWith(
      run('@nobody:lyeward.test', { MATRIX_HOMESERVER_URL: 'my server' }, 'address'),
      78,
      /my server|MATRIX_HOMESERVER_URL/,
    );
  });

  test('a wrong password', async () => {
    await endsWith(run(await newUser(), { MATRIX_PASSWORD: 'wrong' }), 78, /password|MATRIX_PASSWORD/i);
  });

  test('a password file that is not there', async () => {
    const env = { MATRIX_PASSWORD: '', MATRIX_PASSWORD_FILE: join(folder, 'nowhere') };
    await endsWith(run(await newUser(), env), 78, /MATRIX_PASSWORD_FILE|nowhere/);
  });

  test('a folder that cannot be written', async () => {
    const user = await newUser();
    writeFileSync(join(folder, 'file'), '');
    const bot = startBot({ url: server.url, user, data: join(folder, 'file') });
    expect(await bot.ended).not.toBe(0);
    expect(bot.out()).toMatch(/^lyeward: /m);
  });

  test('the name alone and the whole id are the same user', async () => {
    const user = await newUser();
    await answers(run(user.slice(1).split(':')[0] ?? '', {}, 'bare'), user);
  });

  test('the password comes from a file, is used once, and is not kept', async () => {
    const user = await newUser();
    const file = join(folder, 'password');
    writeFileSync(file, `${password}\n`);
    const first = run(user, { MATRIX_PASSWORD: '', MATRIX_PASSWORD_FILE: file });
    await answers(first, user);
    expect(await first.kill('SIGTERM')).toBe(0);
    const data = join(folder, user.replace(/\W/g, ''), 'matrix');
    for (const entry of readdirSync(data, { recursive: true, withFileTypes: true })) {
      if (entry.isFile()) expect(readFileSync(join(entry.parentPath, entry.name), 'latin1')).not.toContain(password);
    }
    await answers(run(user, { MATRIX_PASSWORD: '' }), user);
    const { devices } = await device(user);
    // The bot's own, and that of this look.
    expect(devices).toHaveLength(2);
  });

  test('an access token instead, by itself and from a file', async () => {
    const user = await newUser();
    const { access_token: token } = await login(user);
    const first = run(user, { MATRIX_PASSWORD: '', MATRIX_ACCESS_TOKEN: token });
    await answers(first, user);
    await first.kill();
    const file = join(folder, 'token');
    writeFileSync(file, `${token}\n`);
    chmodSync(file, 0o600);
    const second = run(user, { MATRIX_PASSWORD: '', MATRIX_ACCESS_TOKEN_FILE: file });
    await answers(second, user);
    expect(second.out()).not.toContain(token);
  });

  test('an access token that the server does not know', async () => {
    const env = { MATRIX_PASSWORD: '', MATRIX_ACCESS_TOKEN: 'syt_nonsense' };
    await endsWith(run(await newUser(), env), 78, /token/i);
  });
});

async function device(user: string): Promise<Json> {
  const { access_token: token } = await login(user);
  const headers = { authorization: `Bearer ${token}` };
  return (await fetch(`${server.url}/_matrix/client/v3/devices`, { headers })).json();
}

describe('what trying again cannot mend', () => {
  test('its device is deleted while it runs', async () => {
    const user = await newUser();
    const bot = run(user);
    await answers(bot, user);
    const { access_token: token } = await login(user);
    const headers = { authorization: `Bearer ${token}` };
    await fetch(`${server.url}/_matrix/client/v3/logout/all`, { method: 'POST', headers, body: '{}' });
    await endsWith(bot, 78, /log(ged)? ?(in|out)|device|token/i);
    // And at the next start, where no password is at hand.
    await endsWith(run(user, { MATRIX_PASSWORD: '' }), 78, /log(ged)? ?(in|out)|device|token/i);
  });

  test('a soft logout, where no password is at hand', async () => {
    const user = await newUser();
    const line = await openLine(server.url);
    const first = run(user, { MATRIX_HOMESERVER_URL: line.url });
    await answers(first, user);
    await first.kill('SIGTERM');
    const bot = run(user, { MATRIX_HOMESERVER_URL: line.url, MATRIX_PASSWORD: '' });
    await bot.ready();
    line.fault({ on: /./, does: { status: 401, body: softLogout } });
    await endsWith(bot, 78, /log(ged)? ?(in|out)|token/i);
    await line.close();
  });
});

test('after a soft logout it logs in again as the same device, where it has the password', async () => {
  const user = await newUser();
  const line = await openLine(server.url);
  const bot = run(user, { MATRIX_HOMESERVER_URL: line.url });
  await answers(bot, user);
  line.fault({ on: /sync/, times: 1, does: { status: 401, body: softLogout } });
  await answers(bot, user);
  // Its own, and that of this look.
  expect((await device(user)).devices).toHaveLength(2);
  await bot.kill();
  await line.close();
});

test('tokens that are short-lived are renewed, over a restart too', async () => {
  // Synapse's documentation, "refreshable_access_token_lifetime".
  const strict = await startSynapse('refreshable_access_token_lifetime: 4s');
  try {
    const user = await register(strict, 'bot');
    await register(strict, 'ann');
    const human = await openHuman(strict.url, 'ann');
    const env = { MATRIX_HOMESERVER_URL: strict.url };
    const bot = run(user, env, 'refreshed');
    await answers(bot, user, human);
    await new Promise((resolve) => setTimeout(resolve, 9000));
    await answers(bot, user, human);
    await bot.kill();
    await new Promise((resolve) => setTimeout(resolve, 5000));
    const again = run(user, { ...env, MATRIX_PASSWORD: '' }, 'refreshed');
    await answers(again, user, human);
    await again.kill();
    await human.leave();
  } finally {
    await strict.stop();
  }
});
