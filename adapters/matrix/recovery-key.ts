import type { Config } from '../config.ts';
import { writePrivate } from './account.ts';
import { configurationStatus } from './fatal.ts';
import { folderOf } from './folder.ts';
import { readRecoveryKey } from './identity.ts';

/** Writes the recovery key into a file that only its owner can read; the bot may be running meanwhile. */
export async function start({ data, words: [file = ''] }: Config): Promise<void> {
  const key = readRecoveryKey(folderOf(data));
  if (key === null) {
    process.stderr.write('lyeward: there is no recovery key yet: it is made when the Matrix bot first starts\n');
    process.exitCode = configurationStatus;
    return;
  }
  writePrivate(file, `${key}\n`);
  process.stdout.write(`The recovery key is in ${file}. Whoever has it can be this bot: keep it apart from the bot.\n`);
}
