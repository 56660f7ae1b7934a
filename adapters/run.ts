// Starts an adapter: `npm start` opens the console, `npm start -- NAME` another. The only file that knows them all.
import { setFlagsFromString } from 'node:v8';
import { type Config, readConfig, usage } from './config.ts';

interface Adapter {
  /** Runs until the adapter has ended. */
  readonly start: (config: Config) => Promise<void>;
}

const adapters: Readonly<Record<string, () => Promise<Adapter>>> = {
  console: () => {
    thrifty();
    return import('./console/start.ts');
  },
  discord: () => import('./discord/start.ts'),
  'discord-http': () => import('./discord/start-http.ts'),
  'discord register': () => import('./discord/register.ts'),
  matrix: () => import('./matrix/start.ts'),
  'matrix recovery-key FILE': () => import('./matrix/recovery-key.ts'),
  'matrix devices': () => import('./matrix/devices.ts'),
  'backup FILE': () => import('./data/backup.ts'),
  'restore FILE': () => import('./data/restore.ts'),
  'check-data': () => import('./data/check.ts'),
  'move-data': () => import('./data/move.ts'),
};

/**
 * A chat waits for one person nearly all the time: it gives memory back for time. V8's nursery stays as small as it
 * began, and no code is compiled in between or beside it. A server that answers many keeps V8 as it is.
 */
function thrifty(): void {
  for (const flag of ['--semi-space-growth-factor=1', '--no-sparkplug', '--no-concurrent-recompilation'])
    setFlagsFromString(flag);
}

const words = process.argv.slice(2);
const config = readConfig(words, Object.keys(adapters));
if (words.length === 1 && words[0] === '--help') process.stdout.write(usage);
else if (config.ok) {
  try {
    // Nobody shall chat for hours before the host's own values turn out to be wrong.
    const wrong = process.env['LYEWARD_VALUES'] ? (await import('../src/index.ts')).localProblems() : null;
    if (wrong) {
      process.stderr.write(`lyeward: LYEWARD_VALUES: ${wrong}\n`);
      process.exit(78);
    }
    const adapter = await adapters[config.value.adapter]?.();
    await adapter?.start(config.value);
  } catch (error) {
    // What the system or the store refuses, such as a log file that cannot be opened, is no bug and needs no stack.
    if (!(error instanceof Error && ('syscall' in error || 'hint' in error))) throw error;
    const hint = 'hint' in error ? ` ${error.hint}` : '';
    process.stderr.write(`lyeward: ${error.message}${hint}\n`);
    process.exitCode = 1;
  }
} else {
  process.stderr.write(`lyeward: ${config.message}\n\n${usage}`);
  process.exitCode = 64;
}
