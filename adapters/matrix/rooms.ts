/** Into rooms and out of them: invitations, a greeting, upgraded rooms, and rooms where nobody is left. */
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import type { House } from './house.ts';
import { isDirect } from './house.ts';
import { letterOf } from './message.ts';
import { persist } from './persist.ts';
import { isAllowed, serverOf } from './settings.ts';
import { textIn } from './told.ts';
import { greeting } from './words.ts';

export interface Rooms {
  /** After each sync: the rooms are as the server has them. */
  readonly settle: () => void;
  /** Where a room went when it was upgraded; the room itself where it was not. */
  readonly current: (room: string) => string;
}

const movedTo = (room: string): string => `moved ${room}`;
const invitedTo = (room: string): string => `invited ${room}`;
const greetedIn = (room: string): string => `greeted ${room}`;

export function createRooms(house: House): Rooms {
  const { client, sdk, me, records, sender, settings, log, stop } = house;
  const invited = new Set<string>();
  const joined = new Set<string>();
  const left = new Set<string>();
  const moved = new Map<string, MatrixEvent>();

  client.on(sdk.RoomEvent.MyMembership, (room, membership, before) => {
    const { roomId } = room;
    if (membership === 'invite') invited.add(roomId);
    if (membership === 'join') joined.add(roomId);
    if (before === 'join' && (membership === 'leave' || membership === 'ban')) records.forget(roomId);
  });
  client.on(sdk.RoomStateEvent.Events, (event) => {
    const room = event.getRoomId();
    if (!room) return;
    if (event.getType() === 'm.room.tombstone') moved.set(room, event);
    if (event.getType() === 'm.room.member' && event.getContent()['membership'] !== 'join') left.add(room);
  });

  const attempt = (what: string, work: Promise<unknown>): void => {
    work.catch((error: unknown) => {
      if (!stop.aborted) log({ level: 'warn', event: `${what}-failed`, error });
    });
  };

  const count = (): number => client.getRooms().filter((room) => room.getMyMembership() === 'join').length;

  async function consider(room: Room): Promise<void> {
    const { roomId } = room;
    const by = room.getMember(me)?.events.member?.getSender() ?? '';
    const isWelcome = isAllowed(settings, by);
    if (!isWelcome || count() >= settings.roomLimit) {
      log({ level: 'info', event: 'invitation-declined', reason: isWelcome ? 'room limit' : 'not allowed' });
      await persist(() => client.leave(roomId), stop);
      return;
    }
    records.setFact(invitedTo(roomId), by);
    await persist(() => client.joinRoom(roomId, { viaServers: [serverOf(by)] }), stop);
  }

  /** Once a room, also where an end came between joining and greeting. */
  async function greet(room: Room): Promise<void> {
    const { roomId } = room;
    if (records.fact(invitedTo(roomId)) === null || records.fact(greetedIn(roomId)) !== null) return;
    const isUpgrade =
      textIn(predecessorOf(room), 'room_id') !== null &&
      records.fact(movedTo(textIn(predecessorOf(room), 'room_id') ?? '')) !== null;
    if (!room.isSpaceRoom() && !isUpgrade) {
      const [line] = letterOf(greeting(settings.prefix, isDirect(room))).parts;
      if (line) await sender.send(roomId, line, `greeting ${roomId}`);
    }
    records.setFact(greetedIn(roomId), String(Date.now()));
  }

  async function follow(room: Room, tombstone: MatrixEvent): Promise<void> {
    const to = textIn(tombstone.getContent(), 'replacement_room');
    if (to === null || to === '' || room.getMyMembership() !== 'join' || records.fact(movedTo(room.roomId)) === to)
      return;
    records.setFact(movedTo(room.roomId), to);
    if (client.getRoom(to)?.getMyMembership() !== 'join') {
      records.setFact(invitedTo(to), tombstone.getSender() ?? '');
      // Where the new room takes nobody without an invitation, that is waited for.
      await persist(() => client.joinRoom(to, { viaServers: [serverOf(tombstone.getSender() ?? to)] }), stop);
    }
    await persist(() => client.leave(room.roomId), stop);
  }

  async function leave(room: Room): Promise<void> {
    if (room.getMyMembership() !== 'join' || room.getInvitedAndJoinedMemberCount() > 1) return;
    log({ level: 'info', event: 'empty-room-left' });
    await persist(() => client.leave(room.roomId), stop);
    records.forget(room.roomId);
  }

  const eachOf = (ids: Set<string>, work: (room: Room) => void): void => {
    const now = [...ids];
    ids.clear();
    for (const id of now) {
      const room = client.getRoom(id);
      if (room) work(room);
    }
  };

  return {
    settle: () => {
      eachOf(invited, (room) => attempt('join', consider(room)));
      eachOf(joined, (room) => attempt('greeting', greet(room)));
      eachOf(left, (room) => attempt('leave', leave(room)));
      const tombstones = [...moved];
      moved.clear();
      for (const [id, tombstone] of tombstones) {
        const room = client.getRoom(id);
        if (room) attempt('upgrade', follow(room, tombstone));
      }
    },
    current: (room) => {
      let at = room;
      // Upgraded rooms may be upgraded again; a ring of them ends.
      for (let step = 0; step < 20; step++) {
        const next = records.fact(movedTo(at));
        if (next === null || client.getRoom(next)?.getMyMembership() !== 'join') break;
        at = next;
      }
      return at;
    },
  };
}

const predecessorOf = (room: Room) => {
  const found: unknown = room.currentState.getStateEvents('m.room.create', '')?.getContent()['predecessor'];
  return typeof found === 'object' && found !== null ? (found as Record<string, unknown>) : undefined;
};
