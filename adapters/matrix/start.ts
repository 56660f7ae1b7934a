import { mkdirSync } from 'node:fs';
import { createBot, mayHold } from '../../src/index.ts';
import type { Config } from '../config.ts';
import { keptIn } from '../kept.ts';
import { openLog } from '../log.ts';
import { stopSignal } from '../stop.ts';
import { configurationStatus, Fatal } from './fatal.ts';
import { folderOf } from './folder.ts';
import { run } from './run.ts';
import { readSettings } from './settings.ts';

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
  const folder = folderOf(data);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const log = openLog(file);
  const bot = createBot({ ...keptIn(data, 'the Matrix bot'), zone: 'UTC', recalls: true, log: log.entry });
  const { signal, done } = stopSignal();
  // The SDK leaves some of its own requests to fail unheard; a logout, which matters, is heard of elsewhere.
  process.on('unhandledRejection', (error) => log.note({ level: 'warn', event: 'unheard', error }));
  try {
    await run({ bot, settings: settings.value, folder, log: log.note, keepsAlready: mayHold(data), stop: signal });
  } catch (error) {
    if (error instanceof Fatal) {
      log.note({ level: 'fatal', event: 'refused', reason: error.message });
      fail(error.message);
    } else if (!signal.aborted) throw error;
  } finally {
    done();
    await bot.close();
  }
  // The SDK leaves timers behind.
  process.exit();
}
