/** Into rooms and out of them: invitations, a greeting, upgraded rooms, and rooms where nobody is left. */
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import type { House } from './house.ts';
import { isDirect } from './house.ts';
import { letterOf } from './message.ts';
import { persist } from './persist.ts';
import { isAllowed, serverOf } from './settings.ts';
import { objectIn, textIn } from './told.ts';
import { greeting } from './words.ts';

export interface Rooms {
  /** After each sync: the rooms are as the server has them. */
  readonly settle: () => void;
  /** After the first: from which rooms the bot was removed while it was down. */
  readonly review: () => void;
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

  const attempt = (what: string, work: Promise<unknown>): void => {
    work.catch((error: unknown) => {
      if (!stop.aborted) log({ level: 'warn', event: `${what}-failed`, error });
    });
  };

  /** A room that the bot is no longer in. */
  const forget = (room: string): void => {
    records.forget(room);
    attempt('room-data', house.bot.left({ platform: 'matrix', place: room }));
  };

  client.on(sdk.RoomEvent.MyMembership, (room, membership, before) => {
    const { roomId } = room;
    if (membership === 'invite') invited.add(roomId);
    if (membership === 'join') joined.add(roomId);
    if (before === 'join' && (membership === 'leave' || membership === 'ban')) forget(roomId);
    if (membership === 'join' && before === 'invite') {
      attempt('room-data', house.bot.joined({ platform: 'matrix', place: roomId }));
    }
  });
  client.on(sdk.RoomStateEvent.Events, (event) => {
    const room = event.getRoomId();
    if (!room) return;
    if (event.getType() === 'm.room.tombstone') moved.set(room, event);
    if (event.getType() === 'm.room.member' && event.getContent()['membership'] !== 'join') left.add(room);
  });

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

  /** Once a room, also where an end came between joining and greeting; an upgraded room knows the bot already. */
  async function arrive(room: Room): Promise<void> {
    const { roomId } = room;
    const old = predecessorOf(room);
    if (old !== null && client.getRoom(old)?.getMyMembership() === 'join') await persist(() => client.leave(old), stop);
    if (records.fact(invitedTo(roomId)) === null || records.fact(greetedIn(roomId)) !== null) return;
    if (!room.isSpaceRoom() && old === null) {
      const [line] = letterOf(greeting(settings.prefix, isDirect(room))).parts;
      if (line) await sender.send(roomId, line, `greeting ${roomId}`);
    }
    records.setFact(greetedIn(roomId), String(Date.now()));
  }

  /** Where the new room takes nobody without an invitation, that is waited for in the old one. */
  async function follow(room: Room, tombstone: MatrixEvent): Promise<void> {
    const to = textIn(tombstone.getContent(), 'replacement_room');
    if (to === null || to === '' || room.getMyMembership() !== 'join') return;
    records.setFact(movedTo(room.roomId), to);
    if (client.getRoom(to)?.getMyMembership() !== 'join') {
      const by = tombstone.getSender() ?? '';
      records.setFact(invitedTo(to), by);
      await persist(() => client.joinRoom(to, { viaServers: [serverOf(by)] }), stop);
    }
    await persist(() => client.leave(room.roomId), stop);
  }

  /** The room that this one is the upgrade of, where the bot was in it. */
  const predecessorOf = (room: Room): string | null => {
    const created = room.currentState.getStateEvents('m.room.create', '')?.getContent();
    const id = textIn(objectIn(created, 'predecessor'), 'room_id');
    return id !== null && records.fact(movedTo(id)) === room.roomId ? id : null;
  };

  async function leave(room: Room): Promise<void> {
    if (room.getMyMembership() !== 'join' || room.getInvitedAndJoinedMemberCount() > 1) return;
    log({ level: 'info', event: 'empty-room-left' });
    await persist(() => client.leave(room.roomId), stop);
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
      eachOf(joined, (room) => attempt('arrival', arrive(room)));
      eachOf(left, (room) => attempt('leave', leave(room)));
      const tombstones = [...moved];
      moved.clear();
      for (const [id, tombstone] of tombstones) {
        const room = client.getRoom(id);
        if (room) attempt('upgrade', follow(room, tombstone));
      }
    },
    review: () => {
      for (const room of records.rooms()) if (client.getRoom(room)?.getMyMembership() !== 'join') forget(room);
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
