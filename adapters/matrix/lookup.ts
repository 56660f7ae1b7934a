/** One message of a room, from the server: as it reads now, and from that room or not at all. */
import type { MatrixClient } from 'matrix-js-sdk';
import type { Sdk } from './client.ts';
import { persist } from './persist.ts';
import { editOf, type Message, messageOf, objectIn, type Relation, relationOf, textIn } from './told.ts';

export interface Found {
  readonly sender: string;
  /** Milliseconds since 1970, as its server says. */
  readonly at: number;
  readonly relation: Relation;
  readonly message: Message;
}

/** null where it is not there, not readable, or taken back. */
export type Lookup = (room: string, event: string) => Promise<Found | null>;

export function createLookup(client: MatrixClient, { MatrixEvent }: Sdk, stop: AbortSignal): Lookup {
  const opened = async (raw: Record<string, unknown>, room: string) => {
    const event = new MatrixEvent({ ...raw, room_id: room });
    await client.decryptEventIfNeeded(event);
    return event.isDecryptionFailure() ? null : event;
  };

  return async (room, id) => {
    let raw: Record<string, unknown>;
    try {
      raw = (await persist(() => client.fetchRoomEvent(room, id), stop)) as Record<string, unknown>;
    } catch {
      stop.throwIfAborted();
      return null;
    }
    // A server answers for the room that it was asked about; one that does not is not believed.
    if (raw['event_id'] !== id || (raw['room_id'] ?? room) !== room) return null;
    const event = await opened(raw, room);
    const sender = event?.getSender();
    if (!event || !sender) return null;
    const relation = relationOf(event.getWireContent());
    const own = messageOf(event.getContent(), relation.repliesTo !== null);
    const latest = objectIn(objectIn(objectIn(raw, 'unsigned'), 'm.relations'), 'm.replace');
    const edit = latest && textIn(latest, 'sender') === sender ? await opened(latest, room) : null;
    const edited = edit ? editOf(edit.getContent()) : null;
    return { sender, at: event.getTs(), relation, message: edited ?? own };
  };
}
