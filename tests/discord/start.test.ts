// The program as a host starts it, on the stand-in: settings, exit codes, signals.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { startFile } from '../start.ts';
import { applicationId, slash, token } from './standin/interactions.ts';
import { createStandIn, rejectIdentify, type StandIn } from './standin/server.ts';

let discord: StandIn;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lyeward-'));
});
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => discord?.close());

interface Run {
  readonly child: ChildProcess;
  readonly out: () => string;
  /** Waits for words on standard output or standard error. */
  readonly says: (words: RegExp) => Promise<RegExpExecArray>;
  readonly ended: Promise<number | null>;
}

function run(words: readonly string[], env: Readonly<Record<string, string>>): Run {
  const inherited = Object.fromEntries(Object.entries(process.env).filter(([key]) => !key.startsWith('DISCORD_')));
  const child = spawn(process.execPath, [startFile('run'), ...words], { env: { ...inherited, ...env } });
  let text = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (data: string) => {
      text += data;
      child.emit('heard');
    });
  }
  const ended = once(child, 'close').then(([code]) => code as number | null);
  const says = async (wanted: RegExp): Promise<RegExpExecArray> => {
    for (;;) {
      const found = wanted.exec(text);
      if (found) return found;
      await Promise.race([
        once(child, 'heard'),
        ended.then((code) => {
          if (!wanted.test(text)) throw new Error(`ended with ${code} and said: ${text}`);
        }),
      ]);
    }
  };
  return { child, out: () => text, says, ended };
}

const slow = { timeout: 20_000 };

describe('discord', () => {
  test('says what is not set, and ends with 78', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    const { ended, out } = run(['discord'], {});
    expect(await ended).toBe(78);
    expect(out()).toMatch(/DISCORD_TOKEN is not set/);
  });

  test('takes the token from a file, answers, and ends with 0 when it is told to', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    const file = join(folder, 'token');
    writeFileSync(file, `${token}\n`);
    const { child, ended } = run(['discord', '--log', join(folder, 'log')], {
      DISCORD_TOKEN_FILE: file,
      DISCORD_API_URL: discord.api,
    });
    await discord.until(() => discord.connections().length > 0, 'the bot');
    expect((await discord.interact(slash('safety'))).data.content).toMatch(/rinse/i);
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
  });

  test('ends with 78 and a clear word where Discord refuses it', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    rejectIdentify(discord, 4014);
    const { ended, out } = run(['discord'], { DISCORD_TOKEN: token, DISCORD_API_URL: discord.api });
    expect(await ended).toBe(78);
    expect(out()).toMatch(/lyeward: Discord does not allow an intent \(4014\)/);
  });

  test('register shows what would change, then changes it', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    const env = { DISCORD_TOKEN: token, DISCORD_APPLICATION_ID: applicationId, DISCORD_API_URL: discord.api };
    const dry = run(['discord', 'register', '--dry-run', '--server', '400000000000000001'], env);
    expect(await dry.ended).toBe(0);
    expect(dry.out()).toMatch(/\+ check \(new\)[\s\S]*dry run/);
    const wet = run(['discord', 'register'], env);
    expect(await wet.ended).toBe(0);
    expect(discord.commands().map(({ name }) => name)).toContain('check');
    expect(discord.flaws()).toEqual([]);
  });
});

describe('discord-http', () => {
  test('says what is not set, and ends with 78', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    const { ended, out } = run(['discord-http'], { DISCORD_PUBLIC_KEY: 'short' });
    expect(await ended).toBe(78);
    expect(out()).toMatch(/DISCORD_PUBLIC_KEY must be 64 hexadecimal digits/);
  });

  test('listens, tells its health, refuses what is unsigned, and drains when it is told to', slow, async () => {
    discord = await createStandIn({ token, applicationId });
    const { child, says, out, ended } = run(['discord-http', '--data', folder], {
      DISCORD_PUBLIC_KEY: 'ab'.repeat(32),
      DISCORD_HTTP_PORT: '0',
    });
    const [, port] = await says(/port (\d+)/);
    expect((await fetch(`http://127.0.0.1:${port}/health`)).status).toBe(200);
    expect((await fetch(`http://127.0.0.1:${port}/interactions`, { method: 'POST', body: '{}' })).status).toBe(401);
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    // nothing went wrong on the way
    expect(out()).not.toContain('"level"');
  });
});
