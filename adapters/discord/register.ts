/** `discord register`: tells Discord which commands there are; shows first what would change. */
import { isDeepStrictEqual } from 'node:util';
import { REST } from 'discord.js';
import { declarations } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { type Form, forms } from './forms.ts';
import { persist } from './rest.ts';
import { readSettings } from './settings.ts';
import { commandType } from './wire.ts';

/** A command as Discord keeps it; it fills in what was left out. */
export type Kept = Readonly<Record<string, unknown>> & { readonly name: string; readonly type: number };

export interface Change {
  readonly sign: '+' | '~' | '-' | '=';
  readonly name: string;
}

/** What of a command people see; ids, versions and what Discord fills in count for nothing. */
function seen(command: unknown): unknown {
  if (Array.isArray(command)) return command.map(seen);
  if (typeof command !== 'object' || command === null) return command;
  const filled: Readonly<Record<string, unknown>> = {
    required: false,
    autocomplete: false,
    description: '',
    nsfw: false,
  };
  const ours = new Set([
    'type',
    'name',
    'name_localizations',
    'description',
    'description_localizations',
    'options',
    'choices',
    'value',
    'autocomplete',
    'required',
    'max_length',
    'integration_types',
    'contexts',
  ]);
  return Object.fromEntries(
    Object.entries(command)
      .filter(([key, value]) => ours.has(key) && value !== null && value !== undefined && value !== filled[key])
      .filter(([, value]) => !Array.isArray(value) || value.length > 0)
      .map(([key, value]) => [key, seen(value)])
      .sort(([a = ''], [b = '']) => (String(a) < String(b) ? -1 : 1)),
  );
}

const keyOf = ({ type, name }: { readonly type: number; readonly name: string }): string => `${type} ${name}`;

/** What is to be added, changed, removed and left. */
export function changes(wanted: readonly Form[], kept: readonly Kept[]): readonly Change[] {
  const before = new Map(kept.map((one) => [keyOf(one), one]));
  const after = new Set(wanted.map(keyOf));
  return [
    ...wanted.map((form): Change => {
      const old = before.get(keyOf(form));
      return { sign: !old ? '+' : isDeepStrictEqual(seen(old), seen(form)) ? '=' : '~', name: form.name };
    }),
    ...kept.filter((one) => !after.has(keyOf(one))).map(({ name }): Change => ({ sign: '-', name })),
  ];
}

const wordOf: Readonly<Record<Change['sign'], string>> = {
  '+': 'new',
  '~': 'changed',
  '-': 'removed',
  '=': 'as it is',
};

export interface Registration {
  readonly rest: REST;
  readonly applicationId: string;
  /** One server only; null for everywhere. */
  readonly server: string | null;
  readonly dryRun: boolean;
  readonly print: (line: string) => void;
}

export async function register({ rest, applicationId, server, dryRun, print }: Registration): Promise<void> {
  const everywhere = `/applications/${applicationId}/commands` as const;
  const route = server === null ? everywhere : (`/applications/${applicationId}/guilds/${server}/commands` as const);
  const all = (await persist(() => rest.get(route), 500, 10_000)) as readonly Kept[];
  // The way into an activity is not ours to remove, and Discord refuses a list without it.
  const entry = all.filter(({ type }) => type === commandType.entryPoint);
  const kept = all.filter(({ type }) => type !== commandType.entryPoint);
  const wanted = forms(declarations).map((form) => (server === null ? form : inServer(form)));
  const found = changes(wanted, kept);
  for (const { sign, name } of found) print(`${sign} ${name} (${wordOf[sign]})`);
  if (server !== null) {
    const global = (await persist(() => rest.get(everywhere), 500, 10_000)) as readonly Kept[];
    const twice = global.filter((one) => wanted.some((form) => keyOf(form) === keyOf(one)));
    if (twice.length > 0) print(`! ${twice.length} of these are registered everywhere too: people will see them twice`);
  }
  if (found.every(({ sign }) => sign === '=')) print('Nothing to do.');
  else if (dryRun) print('Nothing was sent: this was a dry run.');
  else {
    await persist(() => rest.put(route, { body: [...wanted, ...entry.map(bare)] }), 500, 10_000);
    print(server === null ? 'Registered everywhere.' : `Registered on server ${server}.`);
  }
}

/** Where a command may be used is said of global commands only. */
const inServer = ({ integration_types: _, contexts: __, ...form }: Form): Form => form;

const bare = ({ name, type, handler }: Kept): object => ({ name, type, ...(handler === undefined ? {} : { handler }) });

export async function start({ dryRun, server }: Config): Promise<void> {
  const settings = readSettings(process.env, ['token', 'applicationId']);
  if (!settings.ok) {
    process.stderr.write(`lyeward: ${settings.message}\n`);
    process.exitCode = 78;
    return;
  }
  if (server !== undefined && !/^\d{15,20}$/.test(server)) {
    process.stderr.write('lyeward: --server wants the number of a server\n');
    process.exitCode = 64;
    return;
  }
  const { token, applicationId, api } = settings.value;
  const rest = new REST({ api, version: '10', retries: 1, timeout: 10_000 }).setToken(token);
  const print = (line: string): void => void process.stdout.write(`${line}\n`);
  try {
    await register({ rest, applicationId, server: server ?? null, dryRun, print });
  } catch (error) {
    process.stderr.write(
      `lyeward: Discord did not take the commands: ${error instanceof Error ? error.message : error}\n`,
    );
    process.exitCode = 1;
  }
}
