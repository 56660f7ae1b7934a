/** What each event is answered with. */
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import type { Fault, Reply } from '../../src/index.ts';
import { addressOf } from './address.ts';
import { requestIn } from './addressed.ts';
import { type Asker, createConversations, fingerprintOf, hadEffect } from './conversation.ts';
import { createFlood } from './flood.ts';
import { type House, isDirect, selfIn } from './house.ts';
import { instead, type Letter, letterOf, placed, said, type Where } from './message.ts';
import { wantsQuoted, withQuoted } from './quoted.ts';
import { offersOf, requestFor, signOf } from './reactions.ts';
import type { Answered } from './records.ts';
import { editOf, type Message, messageOf, type Relation, relationOf, textIn } from './told.ts';
import { createTyping } from './typing.ts';
import { edited, words } from './words.ts';

export interface Desk {
  /** A message that can be read; true where it was answered. */
  readonly message: (event: MatrixEvent, room: Room) => Promise<boolean>;
  readonly redaction: (event: MatrixEvent, room: Room) => Promise<void>;
  readonly reaction: (event: MatrixEvent, room: Room) => Promise<boolean>;
  /** A message whose key never came. */
  readonly unreadable: (event: MatrixEvent, room: Room) => Promise<void>;
}

/** A question whose words are known, on its way to its answer. */
interface Question {
  readonly event: string;
  /** What the answer is a reply to: the question, or the answer that a sign was set on. */
  readonly repliesTo: string;
  readonly room: Room;
  readonly person: string;
  readonly thread: string | null;
  readonly place: string;
  readonly quoted: string | null;
  readonly before: string | null;
}

/** Milliseconds for which a room is told only once that something could not be read. */
const unreadableRest = 24 * 60 * 60_000;
/** Milliseconds after which a question in a new wording is no longer one that was forgotten. */
const editable = 24 * 60 * 60_000;

/** Power of those who keep a room: what setting its name takes, where nothing else is said. */
const hostLevel = 50;

/** Of the media that people send; what is not here, such as a sticker of an unknown kind, is passed over. */
const media = /^m\.(?:image|file|audio|video|location)$/;

export function createDesk(house: House): Desk {
  const { bot, me, records, sender, lookup, settings } = house;
  const conversations = createConversations(house);
  const flood = createFlood(settings.rate);
  const typing = createTyping(house);

  const wordsIn = (message: Message & { kind: 'words' }, room: Room, isToUs: boolean): string | null =>
    requestIn({ ...message, isToUs }, selfIn(room, me), settings.prefix);

  /** Sends the parts, then what goes along. */
  async function send(room: Room, key: string, { parts, enclosed }: Letter, where: Where) {
    const texts: string[] = [];
    const files: string[] = [];
    for (const [i, part] of parts.entries())
      texts.push(await sender.send(room.roomId, placed(part, where), `${key}/${i}`));
    const isEncrypted = await sender.isEncrypted(room.roomId);
    for await (const content of house.media.contents(enclosed, isEncrypted)) {
      files.push(await sender.send(room.roomId, placed(content, where), `${key}/file ${files.length}`));
    }
    return { texts, files };
  }

  const rowOf = (question: Question, fingerprint: string, sent: Pick<Answered, 'texts' | 'files'>): Answered => {
    const { event, room, person, thread, place, quoted, before } = question;
    return {
      question: event,
      room: room.roomId,
      thread,
      person,
      place,
      quoted,
      before,
      fingerprint,
      ...sent,
      at: Date.now(),
    };
  };

  /** A line of the adapter's own. */
  async function say(question: Question, line: Fault): Promise<void> {
    const { event, room, thread, repliesTo } = question;
    records.keep(rowOf(question, '', await send(room, event, letterOf(line), { thread, repliesTo })));
  }

  const ask = ({ room, person, thread, place, repliesTo }: Question, text: string): Promise<Reply> =>
    bot.ask({
      platform: 'matrix',
      place,
      person,
      text: text === '' ? 'help' : text,
      address: addressOf({ room: room.roomId, thread, repliesTo }),
      isHost: (room.getMember(person)?.powerLevel ?? 0) >= hostLevel,
      isPrivate: isDirect(room),
    });

  const keep = (question: Question, reply: Reply, sent: Pick<Answered, 'texts' | 'files'>): void => {
    conversations.note(question, question.event, reply);
    records.keep(rowOf(question, fingerprintOf(reply), sent));
  };

  const answer = (question: Question, text: string): Promise<void> =>
    typing(question.room.roomId, async () => {
      const { event, room, thread, repliesTo } = question;
      const reply = await ask(question, text);
      keep(question, reply, await send(room, event, letterOf(said(reply)), { thread, repliesTo }));
    });

  /** The answer in place of the one that stands there. */
  async function answerAnew(row: Answered, room: Room, text: string, event: string): Promise<void> {
    const { question, person, thread, place, quoted, before } = row;
    const known: Question = { event: question, repliesTo: question, room, person, thread, place, quoted, before };
    const reply = await ask(known, text);
    const { parts, enclosed } = letterOf(said(reply), { first: edited });
    const texts: string[] = [];
    const where = { thread, repliesTo: question };
    for (const [i, part] of parts.entries()) {
      const old = row.texts[i];
      const content = old === undefined ? placed(part, where) : instead(part, old);
      const id = await sender.send(room.roomId, content, `${event}/${i}`);
      texts.push(old ?? id);
    }
    for (const old of [...row.texts.slice(parts.length), ...row.files]) await take(room, old, `${event} ${old}`);
    const { files } = await send(room, `${event}/`, { parts: [], enclosed }, where);
    keep(known, reply, { texts, files });
  }

  const take = (room: Room, event: string, key: string): Promise<void> => sender.redact(room.roomId, event, key);

  /** The conversation that a reply or a sign goes on with; null where it can't be had any more. */
  async function resumed(row: Answered, person: string): Promise<Asker | null> {
    const asker = { place: row.place, person };
    if (person === row.person && conversations.latest(asker)?.question === row.question) return asker;
    const again = await conversations.replay(row, person);
    return again && { place: again.place, person };
  }

  /** An answer of ours in this room. */
  const earlierOf = (event: string | null, room: Room): Answered | null => {
    const row = event === null ? null : records.ofAnswer(event);
    return row?.room === room.roomId ? row : null;
  };

  /** Asks what a message asks, unless it is for others; true where something was said. */
  async function hear(
    event: string,
    room: Room,
    person: string,
    message: Message & { kind: 'words' },
    { thread, repliesTo }: Relation,
  ): Promise<boolean> {
    const earlier = earlierOf(repliesTo, room);
    const request = wordsIn(message, room, isDirect(room) || earlier !== null);
    if (request === null) return false;
    const place = thread === null ? room.roomId : `${room.roomId}/${thread}`;
    const before = conversations.latest({ place, person })?.question ?? null;
    const here: Question = { event, repliesTo: event, room, person, thread, place, quoted: null, before };
    const verdict = flood(person);
    if (verdict !== 'answer') {
      if (verdict === 'tell') await say(here, words.tooMany);
      return verdict === 'tell';
    }
    if (repliesTo === null || !wantsQuoted(request)) {
      await answer(here, request);
      return true;
    }
    if (earlier) {
      const asker = earlier.fingerprint === '' ? null : await resumed(earlier, person);
      await answer({ ...here, place: asker?.place ?? place, before: earlier.question }, request);
      return true;
    }
    const found = await lookup(room.roomId, repliesTo);
    if (found?.sender === me) await answer(here, request);
    else if (found?.message.kind === 'words') {
      await answer({ ...here, quoted: repliesTo }, withQuoted(request, found.message.text));
    } else {
      const isMedia = found?.message.kind === 'other' && media.test(found.message.type);
      await say(here, isMedia ? words.textOnly : words.noQuoted);
    }
    return true;
  }

  async function changed(event: MatrixEvent, room: Room, person: string, target: string): Promise<boolean> {
    const message = editOf(event.getContent());
    if (message?.kind !== 'words') return false;
    const row = records.question(target);
    if (row) {
      if (row.person !== person || row.room !== room.roomId) return false;
      if (row.fingerprint === hadEffect) {
        const { thread, place } = row;
        const id = event.getId() ?? '';
        await say(
          { event: id, repliesTo: target, room, person, thread, place, quoted: null, before: null },
          words.isDone,
        );
        return true;
      }
      const request = wordsIn(message, room, true) ?? message.text;
      const quoted = row.quoted === null ? null : await lookup(room.roomId, row.quoted);
      const text = quoted?.message.kind === 'words' ? withQuoted(request, quoted.message.text) : request;
      await typing(room.roomId, () => answerAnew(row, room, text, event.getId() ?? target));
      return true;
    }
    if (wordsIn(message, room, false) === null) return false;
    // Only in its new wording it is for us: a reply to the message that it is a wording of.
    const found = await lookup(room.roomId, target);
    if (found?.sender !== person || Date.now() - found.at > editable) return false;
    return hear(target, room, person, message, found.relation);
  }

  return {
    message: async (event, room) => {
      const id = event.getId() ?? '';
      const person = event.getSender() ?? '';
      const relation = relationOf(event.getWireContent());
      if (relation.edits !== null) return changed(event, room, person, relation.edits);
      const message = messageOf(event.getContent(), relation.repliesTo !== null);
      if (message.kind === 'words') return hear(id, room, person, message, relation);
      if (message.kind === 'notice' || !isDirect(room)) return false;
      const line = media.test(message.type)
        ? words.textOnly
        : message.type === 'm.key.verification.request'
          ? words.noVerify
          : null;
      const { thread } = relation;
      const here = { event: id, repliesTo: id, room, person, thread, place: room.roomId, quoted: null, before: null };
      if (line && flood(person) === 'answer') await say(here, line);
      return line !== null;
    },

    redaction: async (event, room) => {
      const target = event.event.redacts ?? textIn(event.getContent(), 'redacts');
      const row = target ? records.question(target) : null;
      if (row?.room === room.roomId) {
        for (const old of [...row.texts, ...row.files]) await take(room, old, `${event.getId()} ${old}`);
        records.drop(row.question);
      } else {
        // Somebody who may do that took an answer back: it is not brought up again.
        const ours = earlierOf(target ?? null, room);
        if (ours) records.drop(ours.question);
      }
    },

    reaction: async (event, room) => {
      const { sign: set } = relationOf(event.getContent());
      const sign = set && signOf(set.key);
      const row = earlierOf(set?.on ?? null, room);
      const person = event.getSender() ?? '';
      if (!sign || !row || row.person !== person || row.fingerprint === '') return false;
      const here: Question = {
        event: event.getId() ?? '',
        repliesTo: set?.on ?? '',
        room,
        person,
        thread: row.thread,
        place: row.place,
        quoted: null,
        before: row.question,
      };
      if (flood(person) !== 'answer') return false;
      const isShared = sign.kind === 'share' && row.thread !== null;
      const latest = conversations.latest(here);
      const isLive = latest?.question === row.question && !isShared;
      const again = isLive ? null : await conversations.replay(row, person);
      if (!isLive && !again) await say(here, words.expired);
      else if (again && isShared) {
        const sent = await send(room, here.event, letterOf(said(again.reply)), { thread: null, repliesTo: null });
        keep({ ...here, thread: null, place: again.place }, again.reply, sent);
      } else {
        const request = requestFor(sign, again ? offersOf(said(again.reply)) : (latest?.offers ?? []));
        if (request === null) await say(here, words.noOffer);
        else await answer({ ...here, place: again?.place ?? row.place }, request);
      }
      return true;
    },

    unreadable: async (event, room) => {
      const direct = isDirect(room);
      const name = `unreadable ${room.roomId}`;
      const last = Number(records.fact(name) ?? 0);
      if (Date.now() - last < unreadableRest) return;
      records.setFact(name, String(Date.now()));
      const { thread } = relationOf(event.getWireContent());
      const where = { thread, repliesTo: event.getId() ?? null };
      const letter = letterOf(direct ? words.unreadable : words.unreadableHere);
      await send(room, `${event.getId()} unreadable`, letter, where);
    },
  };
}
