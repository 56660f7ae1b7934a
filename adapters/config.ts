import { parseArgs } from 'node:util';
import { dataFolder } from './data-folder.ts';

/** What is told to the program at its start, the same for every adapter. */
export interface Config {
  readonly adapter: string;
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

  ADAPTER      where people are: console (used where none is named), discord, discord-http, matrix
  --data DIR   where recipes, settings and batches are kept; else LYEWARD_DATA, else the platform's usual place
  --log FILE   write a log, without what people wrote

  LYEWARD_VALUES=FILE in the environment names a file with fats and values of your own (src/catalogue/local.ts).
  register     tell Discord which commands there are; shows what changes
  --dry-run    only show it
  --server ID  on one server, not everywhere
`;

type Read = { readonly ok: true; readonly value: Config } | { readonly ok: false; readonly message: string };

export function readConfig(words: readonly string[], adapters: readonly string[]): Read {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: {
        data: { type: 'string' },
        log: { type: 'string' },
        'dry-run': { type: 'boolean' },
        server: { type: 'string' },
      },
      allowPositionals: true,
    });
    const [first = 'console', ...more] = positionals;
    const isTwo = adapters.includes(positionals.join(' '));
    if (more.length > 0 && !isTwo) return { ok: false, message: `one adapter at a time: what is "${more.join(' ')}"?` };
    const adapter = isTwo ? positionals.join(' ') : first;
    if (!adapters.includes(adapter)) {
      return { ok: false, message: `there is no adapter "${adapter}"; there is ${adapters.join(', ')}` };
    }
    const { data, log, server } = values;
    return { ok: true, value: { adapter, data: dataFolder(data), log, dryRun: values['dry-run'] ?? false, server } };
  } catch (error) {
    // `parseArgs` throws what it does not know, in words that a person can read.
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
