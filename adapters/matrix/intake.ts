/**
 * Every event of every room, once, in its order, however the connection fares: what a sync left out is read backwards,
 * and what was dealt with is remembered, so that a start goes on where the last end was.
 */
import { setTimeout as pause } from 'node:timers/promises';
import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk';
import type { Note } from '../log.ts';
import { backFilter, type Sdk } from './client.ts';
import { persist } from './persist.ts';
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
  /** An event that came apart from the others, behind what is waiting in its room. */
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
/** Rooms that are worked in at a time. */
const mostRooms = 8;
/** Milliseconds after which it is written how far the rooms were read. */
const marking = 3000;

export function createIntake({ client, sdk, records, handle, log, stop }: IntakeOptions): Intake {
  const lines = new Map<string, Promise<void>>();
  const known = new Set<string>();
  const gaps = new Set<string>();
  const marks = new Map<string, string>();
  const { opened, open } = gate();
  const turn = limited(mostRooms);
  const me = client.getSafeUserId();
  const since = firstStart(records);
  let timer: NodeJS.Timeout | undefined;
  let isOver = false;

  client.on(sdk.RoomEvent.TimelineReset, (room) => {
    if (room) gaps.add(room.roomId);
  });

  const flush = (): void => {
    clearTimeout(timer);
    timer = undefined;
    records.setMarks(marks);
    marks.clear();
  };
  const mark = (room: string, event: string): void => {
    marks.set(room, event);
    timer ??= setTimeout(flush, marking);
  };

  /** Nothing from before the bot came into the room, or before it first started, or too old. */
  const floorOf = (room: Room): number =>
    Math.max(room.getMember(me)?.events.member?.getTs() ?? 0, since - slack, Date.now() - oldest);

  const isBehind = (event: MatrixEvent, last: string | null): boolean =>
    event.getId() === last || records.isAnswered(event.getId() ?? '');

  /** What the room holds before these events and after the last that was dealt with, the first first. */
  async function missed(room: Room, token: string, last: string | null): Promise<readonly MatrixEvent[]> {
    const floor = floorOf(room);
    const found: MatrixEvent[] = [];
    let from = token;
    for (let page = 0; page < mostPages; page++) {
      const path = `/rooms/${encodeURIComponent(room.roomId)}/messages`;
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

  async function work(room: Room, events: readonly MatrixEvent[], token: string | null): Promise<void> {
    let todo = events;
    if (token !== null) {
      const last = marks.get(room.roomId) ?? records.mark(room.roomId);
      const at = events.findLastIndex((event) => isBehind(event, last));
      const isWhole = at >= 0 || (events[0] ? events[0].getTs() < floorOf(room) : last === null);
      todo = [...(isWhole ? [] : await missed(room, token, last)), ...events.slice(at + 1)];
    }
    for (const event of todo) {
      if (isOver || room.getMyMembership() !== 'join') return;
      const id = event.getId();
      if (!id || event.getTs() < floorOf(room) || records.isAnswered(id)) continue;
      try {
        await turn(() => handle(event, room));
      } catch (error) {
        if (stop.aborted) return;
        log({ level: 'error', event: 'event-failed', error });
      }
      mark(room.roomId, id);
    }
  }

  const queue = (room: Room, job: () => Promise<void>): void => {
    const before = lines.get(room.roomId) ?? opened;
    const next = before.then(job).catch((error: unknown) => {
      if (!stop.aborted) log({ level: 'error', event: 'room-failed', error });
    });
    lines.set(room.roomId, next);
    void next.then(() => {
      if (lines.get(room.roomId) === next) lines.delete(room.roomId);
    });
  };

  return {
    open,
    heard: (room, events) => {
      const { roomId } = room;
      const isGap = gaps.delete(roomId) || !known.has(roomId);
      known.add(roomId);
      const token = isGap ? room.getLiveTimeline().getPaginationToken(sdk.EventTimeline.BACKWARDS) : null;
      const told = events.filter((event) => !event.isState() && event.getSender() !== me);
      if (told.length > 0 || token !== null) queue(room, () => work(room, told, token));
    },
    later: (room, event) => queue(room, () => (isOver ? Promise.resolve() : turn(() => handle(event, room)))),
    close: async (patience) => {
      isOver = true;
      await Promise.race([Promise.allSettled([...lines.values()]), pause(patience, undefined, { ref: false })]);
      flush();
    },
  };
}

function gate(): { readonly opened: Promise<void>; readonly open: () => void } {
  const { promise, resolve } = Promise.withResolvers<void>();
  return { opened: promise, open: resolve };
}

/** Runs so many at a time; the others wait in their order. */
function limited(most: number): <T>(job: () => Promise<T>) => Promise<T> {
  let running = 0;
  const waiting: (() => void)[] = [];
  return async (job) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve));
    running += 1;
    try {
      return await job();
    } finally {
      running -= 1;
      waiting.shift()?.();
    }
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
