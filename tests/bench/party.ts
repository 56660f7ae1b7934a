import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import type { Usage } from './usage.ts';

/** A process that tells its usage when it is asked, on one processor, so that whoever asks may have the other. */
export function party(args: readonly string[], env: Readonly<Record<string, string>>) {
  const own = join(import.meta.dirname, 'usage.ts');
  const child: ChildProcess = spawn('taskset', ['-c', '0', process.execPath, '--import', own, ...args], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
  });
  let out = '';
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  const ask = async <T>(what: string): Promise<T> => {
    child.send(what);
    const [told] = (await once(child, 'message')) as [T];
    return told;
  };
  return {
    said: async (words: RegExp): Promise<RegExpExecArray> => {
      for (;;) {
        const found = words.exec(out);
        if (found) return found;
        await once(child.stdout ?? child, 'data');
      }
    },
    usage: (): Promise<Usage> => ask('usage'),
    ask,
    end: async (): Promise<void> => {
      child.kill('SIGKILL');
      await once(child, 'exit');
    },
  };
}
