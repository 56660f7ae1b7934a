import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { createBot } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { openLog } from '../log.ts';
import { stopSignal } from '../stop.ts';
import { configurationStatus, Fatal } from './fatal.ts';
import { run } from './run.ts';
import { readSettings } from './settings.ts';

/** The folder of the bot's keys and login, for its owner alone. */
export function matrixFolder(data: string): string {
  const folder = join(data, 'matrix');
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return folder;
}

/** The bot on Matrix, until SIGTERM, SIGINT or something that trying again cannot mend. */
export async function start({ log: file, data }: Config): Promise<void> {
  const settings = readSettings(process.env);
  const fail = (message: string): void => {
    process.stderr.write(`lyeward: ${message}\n`);
    process.exitCode = configurationStatus;
  };
  if (!settings.ok) {
    fail(settings.message);
    return;
  }
  const log = openLog(file);
  const bot = createBot({ log: log.entry });
  const { signal, done } = stopSignal();
  try {
    await run({ bot, settings: settings.value, folder: matrixFolder(data), log: log.note, stop: signal });
  } catch (error) {
    if (!(error instanceof Fatal)) throw error;
    log.note({ level: 'fatal', event: 'refused', reason: error.message });
    fail(error.message);
  } finally {
    done();
  }
  // The SDK leaves timers behind.
  process.exit();
}
