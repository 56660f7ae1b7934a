/** Questions on their way to their answers, and answers on their way into a room. */
import type { Room } from 'matrix-js-sdk';
import type { Fault, Reply } from '../../src/index.ts';
import { addressOf } from './address.ts';
import { type Conversations, fingerprintOf } from './conversation.ts';
import { type House, isDirect } from './house.ts';
import { instead, type Letter, letterOf, placed, said, type Where } from './message.ts';
import type { Answered } from './records.ts';
import { createTyping } from './typing.ts';
import { edited } from './words.ts';

/** Whose words are known. */
export interface Question {
  readonly event: string;
  /** What the answer is a reply to: the question, or the answer that a sign was set on. */
  readonly repliesTo: string;
  readonly room: Room;
  readonly person: string;
  readonly thread: string | null;
  /** The conversation that it is a part of. */
  readonly place: string;
  /** The message that it replies to, where that was read with it. */
  readonly quoted: string | null;
  /** The question before it in its conversation. */
  readonly before: string | null;
}

export interface Answers {
  readonly answer: (question: Question, text: string) => Promise<void>;
  /** The answer to a question in a new wording, in place of the one that stands there. `key` is the edit's. */
  readonly anew: (row: Answered, room: Room, text: string, key: string) => Promise<void>;
  /** An answer that was given before, to nobody in particular. */
  readonly post: (question: Question, reply: Reply) => Promise<void>;
  /** A line of the adapter's own. */
  readonly say: (question: Question, line: Fault) => Promise<void>;
  /** The same without a question that it belongs to. */
  readonly tell: (room: Room, line: Fault, where: Where, key: string) => Promise<void>;
  readonly take: (row: Answered, room: Room, key: string) => Promise<void>;
}

/** Power of those who keep a room: what setting its name takes, where nothing else is said. */
const hostLevel = 50;

type Sent = Pick<Answered, 'texts' | 'files'>;

export function createAnswers(house: House, conversations: Conversations): Answers {
  const { bot, records, sender, media } = house;
  const typing = createTyping(house);

  /** The parts, then what goes along. */
  async function send({ roomId }: Room, key: string, { parts, enclosed }: Letter, where: Where): Promise<Sent> {
    const texts: string[] = [];
    const files: string[] = [];
    for (const [i, part] of parts.entries()) texts.push(await sender.send(roomId, placed(part, where), `${key}/${i}`));
    if (enclosed.pictures.length + enclosed.files.length === 0) return { texts, files };
    for await (const content of media.contents(enclosed, await sender.isEncrypted(roomId))) {
      files.push(await sender.send(roomId, placed(content, where), `${key}/file ${files.length}`));
    }
    return { texts, files };
  }

  const ask = ({ room, person, thread, place, repliesTo }: Question, text: string): Promise<Reply> =>
    bot.ask({
      platform: 'matrix',
      place,
      room: room.roomId,
      person,
      text: text === '' ? 'help' : text,
      address: addressOf({ room: room.roomId, thread, repliesTo }),
      // Where two are alone, each keeps the room.
      isHost: isDirect(room) || (room.getMember(person)?.powerLevel ?? 0) >= hostLevel,
      isPrivate: isDirect(room),
    });

  const keep = (question: Question, fingerprint: string, sent: Sent): void => {
    const { event, room, person, thread, place, quoted, before } = question;
    const where = { room: room.roomId, thread, place };
    records.keep({ question: event, ...where, person, quoted, before, fingerprint, ...sent, at: Date.now() });
  };
  const keepReply = (question: Question, reply: Reply, sent: Sent): void => {
    conversations.note(question, question.event, reply);
    keep(question, fingerprintOf(reply), sent);
  };

  return {
    answer: (question, text) =>
      typing(question.room.roomId, async () => {
        const reply = await ask(question, text);
        keepReply(question, reply, await send(question.room, question.event, letterOf(said(reply)), question));
      }),

    anew: (row, room, text, key) =>
      typing(room.roomId, async () => {
        const question: Question = { ...row, event: row.question, repliesTo: row.question, room };
        const reply = await ask(question, text);
        const { parts, enclosed } = letterOf(said(reply), { first: edited });
        const texts: string[] = [];
        for (const [i, part] of parts.entries()) {
          const old = row.texts[i];
          const content = old === undefined ? placed(part, question) : instead(part, old);
          const id = await sender.send(room.roomId, content, `${key}/${i}`);
          texts.push(old ?? id);
        }
        for (const old of [...row.texts.slice(parts.length), ...row.files]) {
          await sender.redact(room.roomId, old, `${key} ${old}`);
        }
        const { files } = await send(room, `${key}/`, { parts: [], enclosed }, question);
        keepReply(question, reply, { texts, files });
      }),

    post: async (question, reply) => {
      const nowhere = { thread: null, repliesTo: null };
      keepReply(question, reply, await send(question.room, question.event, letterOf(said(reply)), nowhere));
    },

    say: async (question, line) =>
      keep(question, '', await send(question.room, question.event, letterOf(line), question)),

    tell: async (room, line, where, key) => {
      await send(room, key, letterOf(line), where);
    },

    take: async (row, room, key) => {
      for (const old of [...row.texts, ...row.files]) await sender.redact(room.roomId, old, `${key} ${old}`);
      records.drop(row.question);
    },
  };
}
