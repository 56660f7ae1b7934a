/**
 * The way back to an earlier answer, for a sign on it or a reply to it. Usually its conversation still stands; where it
 * has gone on, or the bot was started again, the questions are read from the room and asked again, apart from it, until
 * the same figures come out. Nothing that somebody wrote is kept for that.
 */
import { hash } from 'node:crypto';
import { declarations, type Reply } from '../../src/index.ts';
import { requestIn } from './addressed.ts';
import { type House, isDirect, selfIn } from './house.ts';
import { said } from './message.ts';
import { withQuoted } from './quoted.ts';
import { offersOf, requestFor, signOf } from './reactions.ts';
import type { Answered } from './records.ts';

export interface Asker {
  readonly place: string;
  readonly person: string;
}

export interface Latest {
  readonly question: string;
  readonly offers: readonly string[];
}

export interface Conversations {
  /** The last question of a person in a place, as far as it is remembered. */
  readonly latest: (asker: Asker) => Latest | null;
  readonly note: (asker: Asker, question: string, reply: Reply) => void;
  /** The answer again, in a place of its own where one can go on; null where that does not come out. */
  readonly replay: (row: Answered, person: string) => Promise<{ readonly reply: Reply; readonly place: string } | null>;
}

/** Commands that keep something: asked once more, they would keep it once more. */
const keeping: ReadonlySet<string> = new Set(declarations.flatMap(({ id, keeps }) => (keeps ? [id] : [])));

/** In place of a fingerprint: what was asked has had its effect, and is never asked again. */
export const hadEffect = 'kept';

/** Tells whether the same words still lead to the same figures. */
export const fingerprintOf = (reply: Reply): string => (reply.kept ? hadEffect : figuresOf(reply));

const wouldKeep = (text: string): boolean => keeping.has(/^\s*[/!]?([a-z]+)/i.exec(text)?.[1]?.toLowerCase() ?? '');

const figuresOf = (reply: Reply): string =>
  hash(
    'sha1',
    reply.ok ? reply.answer.command + JSON.stringify(reply.answer.result) : reply.fault.code + reply.fault.message,
    'base64url',
  ).slice(0, 12);

/** Conversations that can be gone on with at once. */
const mostHeld = 500;
/** Questions before the one that is looked for. */
const mostBefore = 6;

export function createConversations({ bot, client, me, records, lookup, settings }: House): Conversations {
  const held = new Map<string, Latest>();
  const keyOf = ({ place, person }: Asker): string => `${place}\n${person}`;

  /** What was asked; null where it can't be read any more. */
  async function textOf({ question, room: id, quoted }: Answered, before: Reply | null): Promise<string | null> {
    const found = await lookup(id, question);
    if (!found) return null;
    const { sign } = found.relation;
    if (sign) {
      const meant = signOf(sign.key);
      return meant && before ? requestFor(meant, offersOf(said(before))) : '';
    }
    if (found.message.kind !== 'words') return null;
    const room = client.getRoom(id);
    const request = requestIn({ ...found.message, isToUs: isDirect(room) }, selfIn(room, me), settings.prefix);
    const own = request ?? found.message.text;
    if (quoted === null) return own;
    const other = await lookup(id, quoted);
    return other?.message.kind === 'words' ? withQuoted(own, other.message.text) : null;
  }

  return {
    latest: (asker) => held.get(keyOf(asker)) ?? null,
    note: (asker, question, reply) => {
      const key = keyOf(asker);
      held.delete(key);
      held.set(key, { question, offers: offersOf(said(reply)) });
      for (const eldest of held.keys()) {
        if (held.size <= mostHeld) break;
        held.delete(eldest);
      }
    },
    replay: async (row, person) => {
      const chain = [row];
      for (let depth = 0; depth <= mostBefore; depth++) {
        if (chain[0]?.fingerprint === hadEffect) return null;
        const place = `${row.room}#${row.question}#${depth}`;
        let reply: Reply | null = null;
        for (const one of chain) {
          const text: string | null = await textOf(one, reply);
          if (text === null || wouldKeep(text)) return null;
          reply = await bot.ask({ platform: 'matrix', place, room: row.room, person, text });
        }
        if (reply && fingerprintOf(reply) === row.fingerprint) return { reply, place };
        const before = chain[0]?.before;
        const earlier = before ? records.question(before) : null;
        if (!earlier) return null;
        chain.unshift(earlier);
      }
      return null;
    },
  };
}
