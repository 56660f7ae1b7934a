/**
 * Every event of every room, once, each person's in their order, however the connection fares: what a sync left out is
 * read backwards, and what was dealt with is remembered, so that a start goes on where the last end was.
 */
import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk';
import type { Note } from '../log.ts';
import { backFilter, type Sdk } from './client.ts';
import { createLanes } from './lanes.ts';
import { persist } from './persist.ts';
import { createProgress } from './progress.ts';
import type { Records } from './records.ts';
import { request } from './request.ts';

export interface IntakeOptions {
  readonly client: MatrixClient;
  readonly sdk: Sdk;
  readonly records: Records;
  /** Deals with one event; what it throws is written down, and the next is taken. */
  readonly handle: (event: MatrixEvent, room: Room) => Promise<void>;
  readonly log: (note: Note) => void;
  readonly stop: AbortSignal;
}

export interface Intake {
  readonly heard: (room: Room, events: readonly MatrixEvent[]) => void;
  /** From the first sync on: all rooms are known. */
  readonly open: () => void;
  /** An event that came apart from the others. */
  readonly later: (room: Room, event: MatrixEvent) => void;
  /** Resolves when what was begun is done; what was not is dealt with after the next start. */
  readonly close: (patience: number) => Promise<void>;
}

/** Older questions are not answered any more (ms): a day without the bot. */
export const oldest = 24 * 60 * 60_000;
/** Clocks of servers differ (ms). */
const slack = 2 * 60_000;
/** Events of one request, and requests, when reading backwards. */
const pageSize = 100;
const mostPages = 50;
/** People who are answered at a time, and rooms that are read backwards. */
const abreast = 8;

export function createIntake({ client, sdk, records, handle, log, stop }: IntakeOptions): Intake {
  const me = client.getSafeUserId();
  const since = firstStart(records);
  const progress = createProgress(records);
  const known = new Set<string>();
  const gaps = new Set<string>();
  const early: (() => void)[] = [];
  let isOpen = false;

  const failed = (error: unknown): void => {
    if (!stop.aborted) log({ level: 'error', event: 'event-failed', error });
  };
  const rooms = createLanes(abreast, failed);
  const people = createLanes(abreast, failed);

  client.on(sdk.RoomEvent.TimelineReset, (room) => {
    if (room) gaps.add(room.roomId);
  });

  /** Nothing from before the bot came into the room, or before it first started, or too old. */
  const floorOf = (room: Room): number =>
    Math.max(room.getMember(me)?.events.member?.getTs() ?? 0, since - slack, Date.now() - oldest);

  const isBehind = (event: MatrixEvent, last: string | null): boolean =>
    event.getId() === last || records.isAnswered(event.getId() ?? '');

  /** What the room holds before these events and after the last that was dealt with, the first first. */
  async function missed(room: Room, token: string, last: string | null): Promise<readonly MatrixEvent[]> {
    const floor = floorOf(room);
    const found: MatrixEvent[] = [];
    const path = `/rooms/${encodeURIComponent(room.roomId)}/messages`;
    let from = token;
    for (let page = 0; page < mostPages; page++) {
      const query = { dir: 'b', limit: String(pageSize), from, filter: backFilter(me) };
      const { chunk, end } = await persist(
        (patience) => request<{ chunk: object[]; end?: string }>(client, 'GET', path, { query, patience }),
        stop,
      );
      for (const raw of chunk) {
        const event = new sdk.MatrixEvent({ ...raw, room_id: room.roomId });
        if (isBehind(event, last) || event.getTs() < floor) return found.reverse();
        found.push(event);
      }
      if (!end || chunk.length === 0) break;
      from = end;
    }
    return found.reverse();
  }

  /** Hands on what is new in a room; `token` stands before the events where some may be missing. */
  async function read(room: Room, events: readonly MatrixEvent[], token: string | null): Promise<void> {
    let todo = events;
    if (token !== null) {
      const last = progress.last(room.roomId);
      const at = events.findLastIndex((event) => isBehind(event, last));
      const isWhole = at >= 0 || (events[0] ? events[0].getTs() < floorOf(room) : last === null);
      todo = [...(isWhole ? [] : await missed(room, token, last)), ...events.slice(at + 1)];
    }
    const floor = floorOf(room);
    for (const event of todo) {
      const id = event.getId();
      if (!id || event.getTs() < floor || records.isAnswered(id)) continue;
      const done = progress.begin(room.roomId, id);
      add(room, event, done);
    }
  }

  /** Each person has a lane in each room: who asks much makes nobody else wait. */
  const add = (room: Room, event: MatrixEvent, done: () => void): void =>
    people.add(`${room.roomId} ${event.getSender()}`, async () => {
      try {
        if (room.getMyMembership() === 'join') await handle(event, room);
      } finally {
        if (!stop.aborted) done();
      }
    });

  const whenOpen = (work: () => void): void => {
    if (isOpen) work();
    else early.push(work);
  };

  return {
    open: () => {
      isOpen = true;
      for (const work of early.splice(0)) work();
    },
    heard: (room, events) => {
      const { roomId } = room;
      const isGap = gaps.delete(roomId) || !known.has(roomId);
      known.add(roomId);
      const token = isGap ? room.getLiveTimeline().getPaginationToken(sdk.EventTimeline.BACKWARDS) : null;
      const told = events.filter((event) => !event.isState() && event.getSender() !== me);
      if (told.length > 0 || token !== null) whenOpen(() => rooms.add(roomId, () => read(room, told, token)));
    },
    later: (room, event) => add(room, event, () => {}),
    close: async (patience) => {
      await Promise.all([rooms.close(patience), people.close(patience)]);
      progress.close();
    },
  };
}

/** When this data folder was first used. */
function firstStart(records: Records): number {
  const known = records.fact('first start');
  if (known !== null) return Number(known);
  const now = Date.now();
  records.setFact('first start', String(now));
  return now;
}
