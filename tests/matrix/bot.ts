// The adapter as a host starts it, a process of its own.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { startFile } from '../start.ts';
import { password } from './synapse/server.ts';

export interface Bot {
  readonly child: ChildProcess;
  /** What it said on both streams. */
  readonly out: () => string;
  readonly says: (words: RegExp) => Promise<RegExpExecArray>;
  /** Its exit code, or the signal that ended it. */
  readonly ended: Promise<number | string>;
  /** Waits until it answers. */
  readonly ready: () => Promise<void>;
  readonly kill: (signal?: NodeJS.Signals) => Promise<number | string>;
}

export interface BotOptions {
  readonly url: string;
  readonly user: string;
  /** Where its keys lie. */
  readonly data: string;
  readonly words?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
}

/** As `npm start -- matrix` does, less npm. */
export function startBot({ url, user, data, words = ['matrix'], env = {} }: BotOptions): Bot {
  const inherited = Object.entries(process.env).filter(([key]) => !/^(MATRIX|LYEWARD)_/.test(key));
  const child = spawn(process.execPath, [startFile('run'), ...words, '--data', data], {
    env: {
      ...Object.fromEntries(inherited),
      MATRIX_HOMESERVER_URL: url,
      MATRIX_USER: user,
      MATRIX_PASSWORD: password,
      ...env,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  // Nothing outlives the tests, even where they break off.
  const end = (): boolean => child.kill('SIGKILL');
  process.once('exit', end);
  child.once('exit', () => process.off('exit', end));
  let text = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (more: string) => {
      text += more;
      child.emit('heard');
    });
  }
  const ended = once(child, 'close').then(([code, signal]) => (signal ?? code) as number | string);
  const says: Bot['says'] = async (words) => {
    for (;;) {
      const found = words.exec(text);
      if (found) return found;
      const end = await Promise.race([once(child, 'heard').then(() => undefined), ended]);
      if (end !== undefined && !words.test(text)) throw new Error(`the bot ended with ${end} and said: ${text}`);
    }
  };
  return {
    child,
    out: () => text,
    says,
    ended,
    ready: async () => {
      await says(/lyeward: ready as/);
    },
    kill: (signal = 'SIGKILL') => {
      child.kill(signal);
      return ended;
    },
  };
}
