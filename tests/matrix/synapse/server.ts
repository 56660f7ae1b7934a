// A real Synapse on loopback, its users, and how a test harms it. `synapse.sh` says where it comes from.
import { spawn } from 'node:child_process';
import { createHmac } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const password = 'a password of the tests';
export const script = join(import.meta.dirname, 'synapse.sh');

/** What a test needs to know of a server that somebody else started. */
export interface Address {
  readonly url: string;
  /** Lets its holder make users. */
  readonly secret: string;
}

export interface Synapse extends Address {
  /** Ends it at once, as a power cut does. */
  readonly kill: () => Promise<void>;
  /** Starts it again where it was. */
  readonly restart: () => Promise<void>;
  /** Ends it and forgets what it held. */
  readonly stop: () => Promise<void>;
}

function run(words: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(script, words, { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
    child.on('error', reject);
    // Not 'close': the server that was started keeps the streams.
    child.on('exit', (code) => {
      if (code === 0) resolve(out);
      else reject(new Error(`The tests of Matrix need a real homeserver, and synapse.sh ${words[0]} failed:\n${said}`));
    });
  });
}

/** `extra` is YAML for its configuration. */
export async function startSynapse(extra = ''): Promise<Synapse> {
  await run(['install']);
  const data = mkdtempSync(join(tmpdir(), 'lyeward-synapse-'));
  const start = async (port: string): Promise<string> =>
    /base_url=(\S+)/.exec(await run(['start', '-', data, port], { SYNAPSE_EXTRA: extra }))?.[1] ?? '';
  const url = await start('0');
  const { port } = new URL(url);
  const pid = (): number => Number(readFileSync(join(data, 'synapse.pid'), 'utf8'));
  // Nothing outlives the tests, even where they break off.
  const end = (): void => {
    const file = join(data, 'synapse.pid');
    const last = existsSync(file) ? pid() : 0;
    if (last > 0) process.kill(last, 'SIGKILL');
  };
  process.once('exit', end);
  return {
    url,
    secret: readFileSync(join(data, 'registration.secret'), 'utf8').trim(),
    kill: async () => {
      const old = pid();
      process.kill(old, 'SIGKILL');
      for (;;) {
        try {
          process.kill(old, 0);
        } catch {
          return;
        }
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    },
    restart: async () => {
      await start(port);
    },
    stop: async () => {
      process.off('exit', end);
      await run(['stop', data]);
      rmSync(data, { recursive: true });
    },
  };
}

/** Makes a user; the id. */
export async function register({ url, secret }: Address, name: string, isAdmin = false): Promise<string> {
  const path = `${url}/_synapse/admin/v1/register`;
  const { nonce } = (await (await fetch(path)).json()) as { nonce: string };
  const mac = createHmac('sha1', secret)
    .update([nonce, name, password, isAdmin ? 'admin' : 'notadmin'].join('\0'))
    .digest('hex');
  const body = JSON.stringify({ nonce, username: name, password, admin: isAdmin, mac, inhibit_login: true });
  const response = await fetch(path, { method: 'POST', body, headers: { 'content-type': 'application/json' } });
  const made = (await response.json()) as { user_id?: string };
  if (!made.user_id) throw new Error(`cannot make the user ${name}: ${JSON.stringify(made)}`);
  return made.user_id;
}
