/** What is done about each event. */
import type { MatrixEvent, Room } from 'matrix-js-sdk';
import { requestIn } from './addressed.ts';
import { createAnswers, type Question } from './answers.ts';
import { createConversations, hadEffect } from './conversation.ts';
import { createFlood } from './flood.ts';
import { type House, isDirect, selfIn } from './house.ts';
import { said } from './message.ts';
import { wantsQuoted, withQuoted } from './quoted.ts';
import { offersOf, requestFor, signOf } from './reactions.ts';
import type { Answered } from './records.ts';
import { editOf, type Message, messageOf, type Relation, relationOf, textIn } from './told.ts';
import { words } from './words.ts';

/** Each resolves to whether something was said. */
export interface Desk {
  readonly message: (event: MatrixEvent, room: Room) => Promise<boolean>;
  readonly redaction: (event: MatrixEvent, room: Room) => Promise<boolean>;
  readonly reaction: (event: MatrixEvent, room: Room) => Promise<boolean>;
  /** A message whose key never came. */
  readonly unreadable: (event: MatrixEvent, room: Room) => Promise<boolean>;
}

/** Milliseconds for which a room is told only once that something could not be read. */
const unreadableRest = 24 * 60 * 60_000;
/** Milliseconds after which a new wording no longer makes an old message a question. */
const editable = 24 * 60 * 60_000;

/** Held at a time; most are of messages that nobody asked us. */
const mostGone = 1000;

/** What people send beside words; what is not here, such as a sticker, is passed over. */
const media = /^m\.(?:image|file|audio|video|location)$/;

type Words = Message & { readonly kind: 'words' };

export function createDesk(house: House): Desk {
  const { me, records, lookup, settings } = house;
  const conversations = createConversations(house);
  const { answer, anew, post, say, tell, take } = createAnswers(house, conversations);
  const flood = createFlood(settings.rate);
  /** Questions that were taken back before they were answered. */
  const gone = new Set<string>();

  const requestOf = (message: Words, room: Room, isToUs: boolean): string | null =>
    requestIn({ ...message, isToUs }, selfIn(room, me), settings.prefix);

  const questionIn = (event: string, room: Room, person: string, thread: string | null): Question => {
    const place = thread === null ? room.roomId : `${room.roomId}/${thread}`;
    const before = conversations.latest({ place, person })?.question ?? null;
    return { event, repliesTo: event, room, person, thread, place, quoted: null, before };
  };

  /** An answer of ours in this room. */
  const earlierOf = (event: string | null | undefined, room: Room): Answered | null => {
    const row = event ? records.ofAnswer(event) : null;
    return row?.room === room.roomId ? row : null;
  };

  /** Where the conversation of an answer can be gone on with; null where it can't be had any more. */
  async function placeOf(row: Answered, person: string): Promise<string | null> {
    if (row.fingerprint === '') return null;
    const isLive = person === row.person && conversations.latest(row)?.question === row.question;
    return isLive ? row.place : ((await conversations.replay(row, person))?.place ?? null);
  }

  /** Answers a message, unless it is for others. */
  async function hear(event: string, room: Room, person: string, message: Words, relation: Relation): Promise<boolean> {
    const { thread, repliesTo } = relation;
    const earlier = earlierOf(repliesTo, room);
    const request = requestOf(message, room, isDirect(room) || earlier !== null);
    if (request === null || gone.delete(event)) return false;
    const question = questionIn(event, room, person, thread);
    const verdict = flood(person);
    if (verdict === 'tell') await say(question, words.tooMany);
    else if (verdict === 'answer') await answerWith(question, request, repliesTo, earlier);
    return verdict !== 'quiet';
  }

  /** The request by itself, as going on with an answer of ours, or with the message of somebody that it replies to. */
  async function answerWith(question: Question, request: string, repliesTo: string | null, earlier: Answered | null) {
    const { room, person } = question;
    if (repliesTo === null || !wantsQuoted(request)) return answer(question, request);
    if (earlier) {
      const place = (await placeOf(earlier, person)) ?? question.place;
      return answer({ ...question, place, before: earlier.question }, request);
    }
    const found = await lookup(room.roomId, repliesTo);
    if (found?.sender === me) return answer(question, request);
    if (found?.message.kind === 'words') {
      return answer({ ...question, quoted: repliesTo }, withQuoted(request, found.message.text));
    }
    const isMedia = found?.message.kind === 'other' && media.test(found.message.type);
    return say(question, isMedia ? words.textOnly : words.noQuoted);
  }

  /** A new wording of a message: of a question, or one that makes it a question. */
  async function changed(event: string, room: Room, person: string, message: Words, target: string): Promise<boolean> {
    const row = records.question(target);
    if (!row) {
      if (requestOf(message, room, false) === null) return false;
      const found = await lookup(room.roomId, target);
      if (found?.sender !== person || Date.now() - found.at > editable) return false;
      return hear(target, room, person, message, found.relation);
    }
    if (row.person !== person || row.room !== room.roomId || flood(person) !== 'answer') return false;
    if (row.fingerprint === hadEffect) {
      await say({ ...questionIn(event, room, person, row.thread), repliesTo: target }, words.isDone);
      return true;
    }
    const request = requestOf(message, room, true) ?? message.text;
    const quoted = row.quoted === null ? null : await lookup(room.roomId, row.quoted);
    await anew(row, room, quoted?.message.kind === 'words' ? withQuoted(request, quoted.message.text) : request, event);
    return true;
  }

  return {
    message: async (event, room) => {
      const id = event.getId() ?? '';
      const person = event.getSender() ?? '';
      const relation = relationOf(event.getWireContent());
      if (relation.edits !== null) {
        const message = editOf(event.getContent());
        return message?.kind === 'words' && changed(id, room, person, message, relation.edits);
      }
      const message = messageOf(event.getContent(), relation.repliesTo !== null);
      if (message.kind === 'words') return hear(id, room, person, message, relation);
      if (message.kind === 'notice' || !isDirect(room)) return false;
      const isVerification = message.type === 'm.key.verification.request';
      if ((!isVerification && !media.test(message.type)) || flood(person) !== 'answer') return false;
      await say(questionIn(id, room, person, relation.thread), isVerification ? words.noVerify : words.textOnly);
      return true;
    },

    redaction: async (event, room) => {
      const target = event.event.redacts ?? textIn(event.getContent(), 'redacts');
      const row = target ? records.question(target) : null;
      if (row?.room === room.roomId) await take(row, room, event.getId() ?? '');
      else {
        // Somebody who may do that took an answer back: it is not brought up again.
        const ours = earlierOf(target, room);
        if (ours) records.drop(ours.question);
        else if (target) {
          gone.add(target);
          const [eldest] = gone;
          if (eldest !== undefined && gone.size > mostGone) gone.delete(eldest);
        }
      }
      return false;
    },

    reaction: async (event, room) => {
      const { sign: set } = relationOf(event.getContent());
      const sign = set && signOf(set.key);
      const row = earlierOf(set?.on, room);
      const person = event.getSender() ?? '';
      if (!set || !sign || !row || row.person !== person || row.fingerprint === '' || flood(person) !== 'answer') {
        return false;
      }
      const { place, thread } = row;
      const question = { ...questionIn(event.getId() ?? '', room, person, thread), repliesTo: set.on, place };
      const following = { ...question, before: row.question };
      const isShared = sign.kind === 'share' && thread !== null;
      const latest = isShared ? null : conversations.latest(row);
      const live = latest?.question === row.question ? latest : null;
      const again = live ? null : await conversations.replay(row, person);
      const offers = live?.offers ?? (again ? offersOf(said(again.reply)) : []);
      const request = requestFor(sign, offers);
      if (!live && !again) await say(following, words.expired);
      else if (again && isShared) await post({ ...following, thread: null, place: again.place }, again.reply);
      else if (request === null) await say(following, words.noOffer);
      else await answer({ ...following, place: again?.place ?? place }, request);
      return true;
    },

    unreadable: async (event, room) => {
      const name = `unreadable ${room.roomId}`;
      if (Date.now() - Number(records.fact(name) ?? 0) < unreadableRest) return false;
      // Written down first: better never than twice.
      records.setFact(name, String(Date.now()));
      const where = { thread: relationOf(event.getWireContent()).thread, repliesTo: event.getId() ?? null };
      const line = isDirect(room) ? words.unreadable : words.unreadableHere;
      await tell(room, line, where, `${event.getId()} unreadable`);
      return true;
    },
  };
}
