import { parseArgs } from 'node:util';
import { dataFolder } from './data-folder.ts';

/** What is told to the program at its start, the same for every adapter. */
export interface Config {
  readonly adapter: string;
  /** What was said in the place of the adapter's capital words. */
  readonly words: readonly string[];
  /** The folder of what is kept; it may not be there yet. */
  readonly data: string;
  /** A file for the log; without one nothing is written. */
  readonly log: string | undefined;
  /** Shows what would be done, and does nothing. */
  readonly dryRun: boolean;
  /** One community instead of all. */
  readonly server: string | undefined;
}

export const usage = `Usage: npm start [-- [ADAPTER] [--data DIR] [--log FILE]]
       npm start -- discord register [--dry-run] [--server ID]
       npm start -- matrix recovery-key FILE | matrix devices
       npm start -- backup FILE | restore FILE | check-data | move-data  [--data DIR]

  ADAPTER      where people are: console (used where none is named), discord, discord-http, matrix
  --data DIR   where recipes, settings and batches are kept; else LYEWARD_DATA, else the platform's usual place
  --log FILE   write a log, without what people wrote

  backup FILE  write a copy of all that is kept, also while the program runs
  restore FILE bring a copy back, in the place of what is there
  check-data   look whether all that is kept is whole, and count it
  move-data    from the folder into the database that LYEWARD_DATABASE_URL names

  LYEWARD_DATABASE_URL=postgres://… (or LYEWARD_DATABASE_URL_FILE=FILE) keeps everything in PostgreSQL instead.
  LYEWARD_VALUES=FILE in the environment names a file with fats and values of your own (src/catalogue/local.ts).
  register     tell Discord which commands there are; shows what changes
  --dry-run    only show it
  --server ID  on one server, not everywhere
  recovery-key write what opens the Matrix bot's identity into a file; devices shows how to compare its keys
`;

type Read = { readonly ok: true; readonly value: Config } | { readonly ok: false; readonly message: string };

/** An adapter may take words of the host's own: its name says so in capitals, as in "recovery-key FILE". */
const isArgument = (part: string): boolean => /^[A-Z]+$/.test(part);

const fits = (name: string, said: readonly string[]): boolean => {
  const parts = name.split(' ');
  return parts.length === said.length && parts.every((part, i) => isArgument(part) || part === said[i]);
};

function unknown(said: readonly string[], adapters: readonly string[]): string {
  const [first = '', ...more] = said;
  const half = adapters.find(
    (name) => name.startsWith(`${said.join(' ')} `) && isArgument(name.split(' ').at(-1) ?? ''),
  );
  if (half) return `something is missing: ${half}`;
  return adapters.includes(first) && more.length > 0
    ? `one adapter at a time: what is "${more.join(' ')}"?`
    : `there is no adapter "${first}"; there is ${adapters.join(', ')}`;
}

/** `adapters` by their names, with the words that they take in capitals. */
export function readConfig(typed: readonly string[], adapters: readonly string[]): Read {
  try {
    const { values, positionals } = parseArgs({
      args: [...typed],
      options: {
        data: { type: 'string' },
        log: { type: 'string' },
        'dry-run': { type: 'boolean' },
        server: { type: 'string' },
      },
      allowPositionals: true,
    });
    const said = positionals.length === 0 ? ['console'] : positionals;
    const adapter = adapters.find((name) => fits(name, said));
    if (adapter === undefined) return { ok: false, message: unknown(said, adapters) };
    const words = said.filter((_, i) => isArgument(adapter.split(' ')[i] ?? ''));
    const { data, log, server } = values;
    return {
      ok: true,
      value: { adapter, words, data: dataFolder(data), log, dryRun: values['dry-run'] ?? false, server },
    };
  } catch (error) {
    // `parseArgs` throws what it does not know, in words that a person can read.
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
