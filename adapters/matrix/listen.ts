/** From an event to what is done about it: decrypted first, and once only. */
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import type { Desk } from './desk.ts';
import type { House } from './house.ts';
import { oldest } from './intake.ts';

export interface Ears {
  readonly handle: (event: MatrixEvent, room: Room) => Promise<void>;
  /** Looks again for what could not be read before the last end. */
  readonly resume: () => Promise<void>;
  readonly close: () => void;
}

interface EarsOptions {
  readonly house: House;
  readonly desk: Desk;
  /** Deals with an event again, behind what is waiting in its room. */
  readonly later: (room: Room, event: MatrixEvent) => void;
  /** Something was answered: the room was read so far. */
  readonly read: (room: string, event: string) => void;
}

/** Milliseconds in which a key may still come before anybody is told that it has not. */
const grace = 20_000;
/** Messages that wait for their keys at a time. */
const mostWaiting = 500;

export function createEars({ house, desk, later, read }: EarsOptions): Ears {
  const { client, sdk, me, records, log } = house;
  const waiting = new Map<string, NodeJS.Timeout>();
  const resumed = new Set<string>();

  /** Waits for the key: it may come a moment after the message. */
  function wait(event: MatrixEvent, room: Room): void {
    const id = event.getId() ?? '';
    if (waiting.has(id) || waiting.size >= mostWaiting) return;
    records.addUnread({ event: id, room: room.roomId, at: event.getTs() });
    const timer = setTimeout(() => {
      if (event.isDecryptionFailure()) {
        desk.unreadable(event, room).catch((error: unknown) => log({ level: 'warn', event: 'untold', error }));
      }
    }, grace);
    timer.unref();
    waiting.set(id, timer);
    log({ level: 'warn', event: 'unreadable', reason: event.decryptionFailureReason });
    const onDecrypted = (): void => {
      if (event.isDecryptionFailure()) return;
      event.off(sdk.MatrixEventEvent.Decrypted, onDecrypted);
      later(room, event);
    };
    event.on(sdk.MatrixEventEvent.Decrypted, onDecrypted);
  }

  async function handle(event: MatrixEvent, room: Room): Promise<void> {
    const id = event.getId() ?? '';
    if (event.getSender() === me || event.isRedacted() || records.isAnswered(id)) return;
    await client.decryptEventIfNeeded(event);
    if (event.isDecryptionFailure()) {
      wait(event, room);
      return;
    }
    const type = event.getType();
    const isAnswered =
      type === 'm.room.message'
        ? await desk.message(event, room)
        : type === 'm.reaction'
          ? await desk.reaction(event, room)
          : type === 'm.room.redaction' && (await desk.redaction(event, room));
    if (isAnswered) read(room.roomId, id);
    clearTimeout(waiting.get(id));
    if (waiting.delete(id) || resumed.delete(id)) records.dropUnread(id);
  }

  return {
    handle,
    resume: async () => {
      for (const { event: id, room: roomId, at } of records.unread()) {
        const room = client.getRoom(roomId);
        const raw = room && at > Date.now() - oldest ? await client.fetchRoomEvent(roomId, id).catch(() => null) : null;
        if (room && raw) {
          resumed.add(id);
          later(room, new sdk.MatrixEvent({ ...raw, room_id: roomId }));
        } else if (at <= Date.now() - oldest) records.dropUnread(id);
      }
    },
    close: () => {
      for (const timer of waiting.values()) clearTimeout(timer);
    },
  };
}
