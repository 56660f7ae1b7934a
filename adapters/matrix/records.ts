/**
 * What the bot remembers of its rooms, beside its keys in the same file: how far each was read, which answer belongs to
 * which question, what could not be read yet. Never what somebody wrote.
 */
import type { StoreFile } from './store/file.ts';

/** A question that was answered, and how to come back to it. */
export interface Answered {
  readonly question: string;
  readonly room: string;
  /** Root of the thread that it was asked in. */
  readonly thread: string | null;
  readonly person: string;
  /** The conversation that it is a part of, as the core knows it. */
  readonly place: string;
  /** The message that the question replied to, where that was read with it. */
  readonly quoted: string | null;
  /** Event ids of the answer's parts; none where nothing was said. */
  readonly texts: readonly string[];
  /** Event ids of its pictures and files. */
  readonly files: readonly string[];
  /** Of the answer's figures; empty where there is none. */
  readonly fingerprint: string;
  /** The question before it in its conversation. */
  readonly before: string | null;
  /** Milliseconds since 1970. */
  readonly at: number;
}

export interface Unread {
  readonly event: string;
  readonly room: string;
  readonly at: number;
}

export interface Records {
  readonly isAnswered: (question: string) => boolean;
  readonly question: (question: string) => Answered | null;
  /** The question that one of these answers belongs to. */
  readonly ofAnswer: (answer: string) => Answered | null;
  /** Writes it down, and that its room was read so far. */
  readonly keep: (answered: Answered) => void;
  readonly drop: (question: string) => void;
  /** The last event that was dealt with. */
  readonly mark: (room: string) => string | null;
  /** Those with such an event. */
  readonly rooms: () => readonly string[];
  /** Several at a time: each write waits for the disk. */
  readonly setMarks: (marks: ReadonlyMap<string, string>) => void;
  readonly unread: () => readonly Unread[];
  readonly addUnread: (unread: Unread) => void;
  readonly dropUnread: (event: string) => void;
  /** A fact by its name; null where it was never written. */
  readonly fact: (name: string) => string | null;
  readonly setFact: (name: string, value: string) => void;
  /** Forgets a room that was left. */
  readonly forget: (room: string) => void;
  /** Forgets what is older. */
  readonly purge: (before: number) => void;
}

const tables = `
  CREATE TABLE IF NOT EXISTS answered (
    question TEXT PRIMARY KEY, room TEXT, thread TEXT, person TEXT, place TEXT, quoted TEXT, texts TEXT,
    files TEXT, fingerprint TEXT, before TEXT, at INTEGER) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS answer (id TEXT PRIMARY KEY, question TEXT) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS mark (room TEXT PRIMARY KEY, event TEXT) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS unread (event TEXT PRIMARY KEY, room TEXT, at INTEGER) WITHOUT ROWID;
  CREATE TABLE IF NOT EXISTS fact (name TEXT PRIMARY KEY, value TEXT) WITHOUT ROWID;`;

export function openRecords({ db, write }: StoreFile): Records {
  write(() => db.exec(tables));
  const has = db.prepare('SELECT 1 FROM answered WHERE question = ?');
  const get = db.prepare('SELECT * FROM answered WHERE question = ?');
  const owner = db.prepare('SELECT question FROM answer WHERE id = ?');
  const put = db.prepare('INSERT OR REPLACE INTO answered VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)');
  const putAnswer = db.prepare('INSERT OR REPLACE INTO answer VALUES (?, ?)');
  const removeAnswers = db.prepare('DELETE FROM answer WHERE question = ?');
  const remove = db.prepare('DELETE FROM answered WHERE question = ?');
  const getMark = db.prepare('SELECT event FROM mark WHERE room = ?');
  const putMark = db.prepare('INSERT OR REPLACE INTO mark VALUES (?, ?)');
  const getFact = db.prepare('SELECT value FROM fact WHERE name = ?');
  const text = (value: unknown): string | null => (typeof value === 'string' ? value : null);

  const question = (id: string): Answered | null => {
    const row = get.get(id);
    if (!row) return null;
    const list = (name: string) => JSON.parse(String(row[name])) as readonly string[];
    return { ...(row as unknown as Answered), texts: list('texts'), files: list('files') };
  };
  return {
    isAnswered: (id) => has.get(id) !== undefined,
    question,
    ofAnswer: (id) => {
      const row = owner.get(id);
      return row ? question(String(row['question'])) : null;
    },
    keep: (one) =>
      write(() => {
        const { room, thread, person, place, quoted, texts, files, fingerprint, before, at } = one;
        const lists = [JSON.stringify(texts), JSON.stringify(files)] as const;
        removeAnswers.run(one.question);
        put.run(one.question, room, thread, person, place, quoted, ...lists, fingerprint, before, at);
        for (const id of [...texts, ...files]) putAnswer.run(id, one.question);
      }),
    drop: (id) =>
      write(() => {
        removeAnswers.run(id);
        remove.run(id);
      }),
    mark: (room) => text(getMark.get(room)?.['event']),
    rooms: () =>
      db
        .prepare('SELECT room FROM mark')
        .all()
        .map(({ room }) => String(room)),
    setMarks: (marks) => {
      if (marks.size === 0) return;
      write(() => {
        for (const [room, event] of marks) putMark.run(room, event);
      });
    },
    unread: () => db.prepare('SELECT * FROM unread ORDER BY at').all() as unknown as readonly Unread[],
    addUnread: ({ event, room, at }) =>
      write(() => db.prepare('INSERT OR IGNORE INTO unread VALUES (?, ?, ?)').run(event, room, at)),
    dropUnread: (event) => write(() => db.prepare('DELETE FROM unread WHERE event = ?').run(event)),
    fact: (name) => text(getFact.get(name)?.['value']),
    setFact: (name, value) => write(() => db.prepare('INSERT OR REPLACE INTO fact VALUES (?, ?)').run(name, value)),
    forget: (room) =>
      write(() => {
        db.prepare('DELETE FROM answer WHERE question IN (SELECT question FROM answered WHERE room = ?)').run(room);
        for (const table of ['answered', 'unread', 'mark']) db.prepare(`DELETE FROM ${table} WHERE room = ?`).run(room);
      }),
    purge: (before) =>
      write(() => {
        db.prepare('DELETE FROM answer WHERE question IN (SELECT question FROM answered WHERE at < ?)').run(before);
        for (const table of ['answered', 'unread']) db.prepare(`DELETE FROM ${table} WHERE at < ?`).run(before);
      }),
  };
}
