// A human in a Matrix client of another make: `synapse/human.py`, which shares no code with the adapter's library.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { password, script } from './synapse/server.ts';

// biome-ignore lint/suspicious/noExplicitAny: contents of another program, looked into by tests
export type Json = any;

/** An event as the human reads it. */
export interface Heard {
  readonly event_id: string;
  readonly room: string;
  readonly sender: string;
  readonly type: string;
  readonly content: Json;
  readonly state_key: string | null;
  readonly redacts: string | null;
  readonly decrypted: boolean;
  readonly undecryptable: boolean;
  readonly redacted: boolean;
  readonly ts: number;
  /** From before this human was there. */
  readonly history: boolean;
}

export interface Saying {
  readonly reply?: string;
  readonly thread?: string;
  readonly edit?: string;
  readonly mentions?: readonly string[];
  readonly html?: string;
  readonly msgtype?: string;
}

export interface Room {
  readonly encrypted?: boolean;
  readonly invite?: readonly string[];
  readonly name?: string;
  readonly direct?: boolean;
  /** Messages after which the others change their key. */
  readonly rotate?: number;
}

export interface Human {
  readonly id: string;
  /** All that was heard, each event once, as it was heard last. */
  readonly heard: () => readonly Heard[];
  readonly typing: readonly { readonly room: string; readonly users: readonly string[] }[];
  readonly receipts: readonly { readonly room: string; readonly user: string; readonly event_id: string }[];
  readonly invites: readonly { readonly room: string; readonly sender: string }[];
  readonly create: (room?: Room) => Promise<string>;
  readonly join: (room: string) => Promise<void>;
  readonly waitFor: (room: string, user: string) => Promise<void>;
  /** The event's id. */
  readonly say: (room: string, text: string, saying?: Saying) => Promise<string>;
  readonly send: (room: string, type: string, content: Json, transaction?: string) => Promise<string>;
  readonly react: (room: string, event: string, key: string) => Promise<string>;
  readonly redact: (room: string, event: string) => Promise<void>;
  readonly state: (room: string, type: string, content: Json, key?: string) => Promise<void>;
  /** The next message begins a new session of keys. */
  readonly rotate: (room: string) => Promise<void>;
  /** Whether the devices of another get the keys of what is said from now on. */
  readonly trust: (user: string, trusted: boolean) => Promise<void>;
  readonly download: (content: Json) => Promise<{ readonly data: Buffer; readonly type: string }>;
  readonly upload: (data: Buffer, type: string, isEncrypted: boolean) => Promise<Json>;
  /** The client-server API as this human, nothing decrypted. */
  readonly http: (method: string, path: string, body?: Json) => Promise<Json>;
  /** All events of a room as the server holds them, the oldest first. */
  readonly history: (room: string) => Promise<readonly Json[]>;
  /** Waits until `test` gives something. */
  readonly until: <T>(test: () => T | undefined | false, what: string | (() => string), seconds?: number) => Promise<T>;
  /** Messages of others that reply to an event, without those that replace one. */
  readonly repliesTo: (event: string) => readonly Heard[];
  /** The first reply, once it can be read. */
  readonly answer: (event: string, seconds?: number) => Promise<Heard>;
  readonly leave: () => Promise<void>;
}

/** A message's content, as a client makes it. */
function message(text: string, { reply, thread, edit, mentions = [], html, msgtype }: Saying = {}): Json {
  const content = {
    msgtype: msgtype ?? 'm.text',
    body: text,
    ...(html === undefined ? {} : { format: 'org.matrix.custom.html', formatted_body: html }),
    'm.mentions': mentions.length > 0 ? { user_ids: mentions } : {},
  };
  if (edit) {
    const relation = { rel_type: 'm.replace', event_id: edit };
    return { ...content, body: `* ${text}`, 'm.new_content': content, 'm.relates_to': relation };
  }
  if (thread) {
    const relation = { rel_type: 'm.thread', event_id: thread, is_falling_back: !reply };
    return { ...content, 'm.relates_to': { ...relation, 'm.in_reply_to': { event_id: reply ?? thread } } };
  }
  return reply ? { ...content, 'm.relates_to': { 'm.in_reply_to': { event_id: reply } } } : content;
}

const isReplacement = ({ content }: Heard): boolean => content['m.relates_to']?.rel_type === 'm.replace';

/** The person's device lives in `folder`; without one it is a new device that is gone afterwards. */
export async function openHuman(url: string, name: string, folder?: string): Promise<Human> {
  const store = folder ?? mkdtempSync(join(tmpdir(), 'lyeward-human-'));
  const words = ['python', '-', join(import.meta.dirname, 'synapse/human.py')];
  const child = spawn(script, [...words, '--url', url, '--user', name, '--password', password, '--store', store], {
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let complaints = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    complaints = (complaints + text).slice(-4000);
  });
  const heard = new Map<string, Heard>();
  const typing: { room: string; users: string[] }[] = [];
  const receipts: { room: string; user: string; event_id: string }[] = [];
  const invites: { room: string; sender: string }[] = [];
  const pending = new Map<number, { resolve: (result: Json) => void; reject: (error: Error) => void }>();
  const listeners = new Set<() => void>();
  let ended = false;
  let sequence = 0;

  const me = await new Promise<{ user: string; token: string }>((resolve, reject) => {
    child.once('exit', (code) => {
      ended = true;
      const error = new Error(`the human ended with ${code}: ${complaints}`);
      reject(error);
      for (const { reject: fail } of pending.values()) fail(error);
    });
    createInterface({ input: child.stdout }).on('line', (line) => {
      const told = JSON.parse(line) as Json;
      if (told.ev === 'ready') resolve(told);
      else if (told.ev === 'event') heard.set(told.event_id, told);
      else if (told.ev === 'typing') typing.push(told);
      else if (told.ev === 'receipt') receipts.push(told);
      else if (told.ev === 'invite') invites.push(told);
      else {
        if (told.ev === 'done') pending.get(told.n)?.resolve(told.result);
        else pending.get(told.n)?.reject(new Error(told.error));
        pending.delete(told.n);
      }
      for (const listener of listeners) listener();
    });
  });

  const op = (name: string, more: Json): Promise<Json> =>
    new Promise((resolve, reject) => {
      sequence += 1;
      pending.set(sequence, { resolve, reject });
      child.stdin.write(`${JSON.stringify({ op: name, n: sequence, ...more })}\n`);
    });

  const http: Human['http'] = async (method, path, body) => {
    const response = await fetch(`${url}${path.startsWith('/_') ? '' : '/_matrix/client/v3'}${path}`, {
      method,
      headers: { authorization: `Bearer ${me.token}`, 'content-type': 'application/json' },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const said = await response.json();
    if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${JSON.stringify(said)}`);
    return said;
  };

  const until: Human['until'] = (test, what, seconds = 30) =>
    new Promise((resolve, reject) => {
      const end = (): void => {
        listeners.delete(look);
        clearTimeout(timer);
      };
      const look = (): void => {
        const found = test();
        if (found !== undefined && found !== false) {
          end();
          resolve(found as Exclude<typeof found, false>);
        } else if (ended) {
          end();
          reject(new Error(`the human ended before ${what}: ${complaints}`));
        }
      };
      const timer = setTimeout(() => {
        end();
        reject(new Error(`not within ${seconds} s: ${typeof what === 'string' ? what : what()}`));
      }, 1000 * seconds);
      listeners.add(look);
      look();
    });

  const repliesTo: Human['repliesTo'] = (event) =>
    [...heard.values()].filter(
      (one) =>
        one.sender !== me.user &&
        one.content['m.relates_to']?.['m.in_reply_to']?.event_id === event &&
        !isReplacement(one),
    );

  const roomPath = (room: string): string => `/rooms/${encodeURIComponent(room)}`;
  const send: Human['send'] = (room, type, content, txn) =>
    op('send', { room, type, content, ...(txn === undefined ? {} : { txn }) });
  let transaction = 0;

  return {
    id: me.user,
    heard: () => [...heard.values()],
    typing,
    receipts,
    invites,
    create: (room = {}) => op('create', room),
    join: (room) => op('join', { room }),
    waitFor: (room, user) => op('wait_member', { room, user, timeout: 60 }),
    say: (room, text, saying) => send(room, 'm.room.message', message(text, saying)),
    send,
    react: (room, event, key) =>
      send(room, 'm.reaction', { 'm.relates_to': { rel_type: 'm.annotation', event_id: event, key } }),
    redact: async (room, event) => {
      transaction += 1;
      await http('PUT', `${roomPath(room)}/redact/${encodeURIComponent(event)}/r${Date.now()}.${transaction}`, {});
    },
    state: async (room, type, content, key = '') => {
      await http('PUT', `${roomPath(room)}/state/${type}/${encodeURIComponent(key)}`, content);
    },
    rotate: (room) => op('rotate', { room }),
    trust: (user, trusted) => op('trust', { user, trusted }),
    download: async (content) => {
      const { data, type } = await op(
        'download',
        content.file ? { mxc: '', file: content.file } : { mxc: content.url },
      );
      return { data: Buffer.from(data, 'base64'), type };
    },
    upload: (data, type, encrypted) => op('upload', { data: data.toString('base64'), type, encrypted }),
    http,
    history: async (room) => {
      const all: Json[] = [];
      for (let from = ''; ; ) {
        const page = await http('GET', `${roomPath(room)}/messages?dir=b&limit=500${from}`);
        all.push(...page.chunk);
        if (!page.end || page.chunk.length === 0) return all.reverse();
        from = `&from=${page.end}`;
      }
    },
    until,
    repliesTo,
    answer: (event, seconds) =>
      until(
        () => repliesTo(event).find((one) => !one.undecryptable),
        `an answer to ${event} that can be read`,
        seconds,
      ),
    leave: async () => {
      if (!ended) {
        const gone = new Promise((resolve) => child.once('exit', resolve));
        child.kill('SIGKILL');
        await gone;
      }
      if (!folder) rmSync(store, { recursive: true, force: true });
    },
  };
}
