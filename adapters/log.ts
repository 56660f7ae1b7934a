import { pino } from 'pino';
import type { LogEntry } from '../src/index.ts';

/** What the adapter has to say of its own line: never what a person wrote, never who they are. */
export interface Note {
  readonly level: 'info' | 'warn' | 'error' | 'fatal';
  readonly event: string;
  readonly error?: unknown;
  readonly [more: string]: unknown;
}

export interface Log {
  /** Requests, as the core tells of them; at warning level and above without a log file. */
  readonly entry: (entry: LogEntry) => void;
  readonly note: (note: Note) => void;
}

/** JSON lines to a file, or to standard error. */
export function openLog(file: string | undefined): Log {
  const logger = pino(pino.destination(file === undefined ? { dest: 2, sync: true } : { dest: file, sync: true }));
  return {
    entry: (entry) => {
      // most are told to nobody
      if (entry.error === null && file === undefined) return;
      const { error, ...told } = entry;
      if (error === null) logger.info(told);
      else logger.error({ ...told, err: error });
    },
    note: ({ level, error, ...note }) => logger[level](error === undefined ? note : { ...note, err: brief(error) }),
  };
}

/** Errors of the clients carry the body that was sent, and addresses with names of people and rooms: left out. */
const brief = (error: unknown): unknown =>
  error instanceof Error
    ? {
        name: error.name,
        message: error.message.replace(/https?:\/\/\S+|[@!#$][\w./=+-]+:[\w.:-]+/g, '…').slice(0, 300),
        ...('code' in error ? { code: error.code } : {}),
        ...('status' in error ? { status: error.status } : {}),
        stack: error.stack?.split('\n').slice(1, 6).join('\n'),
      }
    : String(error);
