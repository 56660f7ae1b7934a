import { pino } from 'pino';
import type { LogEntry } from '../../src/index.ts';

/** Appends one JSON line a request to a file. Throws what the file system says. */
export function logTo(file: string): (entry: LogEntry) => void {
  const logger = pino(pino.destination({ dest: file, sync: true }));
  return ({ error, ...entry }) => {
    if (error === null) logger.info(entry);
    else logger.error({ ...entry, err: error });
  };
}
