/** What the parts of the adapter share. */
import type { MatrixClient, Room } from 'matrix-js-sdk';
import { type Bot, commandNames } from '../../src/index.ts';
import type { Note } from '../log.ts';
import type { Self } from './addressed.ts';
import type { Sdk } from './client.ts';
import type { Lookup } from './lookup.ts';
import type { Media } from './media.ts';
import type { Records } from './records.ts';
import type { Sender } from './send.ts';
import type { Settings } from './settings.ts';

export interface House {
  readonly bot: Bot;
  readonly client: MatrixClient;
  readonly sdk: Sdk;
  readonly me: string;
  readonly settings: Settings;
  readonly records: Records;
  readonly sender: Sender;
  readonly lookup: Lookup;
  readonly media: Media;
  readonly log: (note: Note) => void;
  readonly stop: AbortSignal;
}

/** What the bot is called in a room. A name that is a word of the trade would make every recipe a call. */
export function selfIn(room: Room | null, me: string): Self {
  const names = [me.slice(1, me.indexOf(':')), room?.getMember(me)?.rawDisplayName ?? ''];
  return { id: me, names: names.filter((name) => name !== '' && !commandNames.includes(name.toLowerCase())) };
}

/** One person and the bot, not counting bridges and other helpers that say nothing (MSC4171). */
export function isDirect(room: Room | null): boolean {
  if (!room) return false;
  const { service_members: named } = (room.currentState
    .getStateEvents('io.element.functional_members', '')
    ?.getContent() ?? {}) as { service_members?: unknown };
  const helpers = Array.isArray(named) ? named : [];
  const present = helpers.filter((id) => id !== room.myUserId && room.getMember(String(id))?.membership === 'join');
  return room.getInvitedAndJoinedMemberCount() - new Set(present).size <= 2;
}
