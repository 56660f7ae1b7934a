/** Events on their way out: encrypted where the room is, once, however often they must be tried. */
import { hash } from 'node:crypto';
import type { MatrixClient } from 'matrix-js-sdk';
import type { Sdk } from './client.ts';
import { persist } from './persist.ts';
import { request } from './request.ts';
import type { Content } from './told.ts';

export interface Sender {
  /** The event's id. The server drops a second event of the same key and gives the id of the first. */
  readonly send: (room: string, content: Content, key: string) => Promise<string>;
  readonly redact: (room: string, event: string, key: string) => Promise<void>;
  readonly isEncrypted: (room: string) => Promise<boolean>;
}

interface Crypto {
  readonly isEncryptionEnabledInRoom: (room: string) => Promise<boolean>;
  /** Private in the SDK's types. */
  readonly encryptEvent: (event: unknown, room: unknown) => Promise<void>;
}

/** A transaction's id: of what is answered, so that a second try after a crash is the same. */
const transactionOf = (key: string): string => `lye.${hash('sha256', key, 'base64url').slice(0, 32)}`;

const part = encodeURIComponent;

export function createSender(client: MatrixClient, { MatrixEvent }: Sdk, stop: AbortSignal): Sender {
  const crypto = client.getCrypto() as unknown as Crypto;

  const isEncrypted = async (id: string): Promise<boolean> =>
    client.getRoom(id)?.hasEncryptionStateEvent() === true || (await crypto.isEncryptionEnabledInRoom(id));

  /** As it goes over the wire. Without the SDK's local echo: nobody looks at it here, and it keeps every event. */
  async function sealed(id: string, content: Content): Promise<readonly [string, Content]> {
    const type = 'm.room.message';
    if (!(await isEncrypted(id))) return [type, content];
    const event = new MatrixEvent({ type, content, room_id: id, sender: client.getSafeUserId() });
    await crypto.encryptEvent(event, client.getRoom(id));
    return [event.getWireType(), event.getWireContent()];
  }

  async function send(room: string, content: Content, key: string): Promise<string> {
    // Encrypted once: the next try is the same text, not a second one under the next key.
    let ready: readonly [string, Content] | null = null;
    const { event_id } = await persist(async (patience) => {
      ready ??= await sealed(room, content);
      const [type, body] = ready;
      const path = `/rooms/${part(room)}/send/${part(type)}/${part(transactionOf(key))}`;
      return request<{ event_id: string }>(client, 'PUT', path, { body, patience });
    }, stop);
    return event_id;
  }

  const inLine = createLines();
  return {
    isEncrypted,
    // One after another in a room: a message must not overtake the one that brings its key.
    send: (room, content, key) => inLine(room, () => send(room, content, key)),
    redact: async (room, event, key) => {
      const path = `/rooms/${part(room)}/redact/${part(event)}/${part(transactionOf(key))}`;
      await persist((patience) => request(client, 'PUT', path, { body: {}, patience }), stop);
    },
  };
}

/** Jobs of one name one after another, whatever becomes of the one before. */
function createLines(): <T>(name: string, job: () => Promise<T>) => Promise<T> {
  const lines = new Map<string, Promise<unknown>>();
  return (name, job) => {
    const done = (lines.get(name) ?? Promise.resolve()).then(job, job);
    const last = done.then(
      () => {},
      () => {},
    );
    lines.set(name, last);
    void last.then(() => {
      if (lines.get(name) === last) lines.delete(name);
    });
    return done;
  };
}
