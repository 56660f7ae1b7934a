import { parseArgs } from 'node:util';

/** What is told to the program at its start, the same for every adapter. */
export interface Config {
  readonly adapter: string;
  /** A file for the log; without one nothing is written. */
  readonly log: string | undefined;
}

export const usage = `Usage: npm start [-- [ADAPTER] [--log FILE]]

  ADAPTER      where people are: console (used where none is named)
  --log FILE   write a log, without what people wrote
`;

type Read = { readonly ok: true; readonly value: Config } | { readonly ok: false; readonly message: string };

export function readConfig(words: readonly string[], adapters: readonly string[]): Read {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      options: { log: { type: 'string' } },
      allowPositionals: true,
    });
    const [adapter = 'console', ...more] = positionals;
    if (more.length > 0) return { ok: false, message: `one adapter at a time: what is "${more.join(' ')}"?` };
    if (!adapters.includes(adapter)) {
      return { ok: false, message: `there is no adapter "${adapter}"; there is ${adapters.join(', ')}` };
    }
    return { ok: true, value: { adapter, log: values.log } };
  } catch (error) {
    // `parseArgs` throws what it does not know, in words that a person can read.
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
