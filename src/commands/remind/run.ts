import type { Action, Result } from '../../answer/types.ts';
import { readMoment } from '../../reading/moment.ts';
import type { Change, Reminder } from '../../store/port.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { clipped } from '../phrases.ts';
import { type Clock, clockOf, lengthWords, momentRefusal, momentTaken, whenWords } from '../when.ts';
import { aboutOf, asData, listLine, remindersResult } from './bell.ts';

type Ran = Result<Said<'plain'>, Refusal<'plain'>>;

/** A reminder is a line, not a letter. */
const longest = 300;

const plain = { body: [], details: [], assumptions: [], warnings: [], caution: [], actions: [] } as const;
const refusal = (message: string, hint: string, candidates: readonly string[] = []): Ran => ({
  ok: false,
  fault: { code: 'unclear', message, hint, candidates, caution: [] },
});

/** "set a timer for", "me to", "that": words that are no part of what is to be told. */
const opening =
  /^[\s:,]*(?:(?:please|pls|can you|could you)\s+)*(?:(?:set|start|add|make|new|create)\s+)?(?:(?:a|an|another|me an?)\s+)?(?:(?:timer|alarm|reminder)s?\b\s*)?(?:(?:me|us)\b\s*)?(?:(?:to|that|about|of|for)\b\s*)?[\s:,]*/i;

const listing = /^\W*(?:(?:list|show|see|what|which|all|my|mine|are|do i have|set|open|reminders?|timers?)\W*)*$/i;

export async function run({ text }: Taken, context: Context, memory: Memory): Promise<Ran> {
  const clock = clockOf(context);
  // that a batch is asked about is nothing that somebody has set
  const all = (await memory.own.reminders()).filter((one) => aboutOf(one).kind !== 'ask');
  const said = text.replace(/\s+/g, ' ').trim();
  if (listing.test(said)) return listed(all, memory, clock);
  const cancels =
    /^\W*(?:cancel|delete|remove|stop|drop|forget|clear|done(?: with)?|undo)\b\s*(?:the\s+|my\s+)?(?:(?:reminder|timer|alarm)s?\b\s*)?(?:number\s+|no\.?\s*|#)?(.*)$/i.exec(
      said,
    );
  if (cancels) {
    const done = await cancelled(cancels[1] ?? '', all, memory, clock);
    if (done) return done;
  }
  const moves =
    /^\W*(?:move|change|shift|snooze|postpone|delay|reschedule)\b\s*(?:the\s+|my\s+)?(?:(?:reminder|timer|alarm)\b\s*)?(?:number\s+|no\.?\s*|#)?(.*)$/i.exec(
      said,
    );
  if (moves) {
    const done = await moved(moves[1] ?? '', said, all, memory, clock);
    if (done) return done;
  }
  return set(said, all, memory, clock);
}

function listed(all: readonly Reminder[], memory: Memory, clock: Clock): Ran {
  const next = all[0];
  return {
    ok: true,
    value: {
      ...plain,
      title: 'Reminders',
      lead: next
        ? `${all.length === 1 ? 'One reminder' : `${all.length} reminders`}, the next ${whenWords(next.dueAt, memory.now, clock.zone)}.`
        : 'No reminder is set.',
      body:
        all.length > 0
          ? [{ kind: 'list', title: '', items: all.slice(0, 30).map((one) => listLine(one, memory.now, clock)) }]
          : [{ kind: 'text', text: 'For example: remind me to turn the bars in 3 days.' }],
      assumptions: all.length > 0 ? clock.taken : [],
      actions: all
        .flatMap((one): Action[] => {
          const about = aboutOf(one);
          return about.kind === 'remind'
            ? [{ label: `cancel ${about.number}`, request: `remind cancel ${about.number}` }]
            : [];
        })
        .slice(0, 4),
      result: { reminders: remindersResult(all, memory.now) },
    },
  };
}

async function set(said: string, all: readonly Reminder[], memory: Memory, clock: Clock): Promise<Ran> {
  const { now, later } = memory;
  const moment = readMoment(said, now, clock.zone);
  if (moment.kind !== 'at') return { ok: false, fault: momentRefusal(moment, said, now, clock.zone) };
  if (later.can === 'nowhere')
    return {
      ok: false,
      fault: {
        code: 'refused',
        message: `I set nothing: I could not tell you here later. ${later.why}`,
        hint: 'Ask me in a direct message, or where I may write.',
        candidates: [],
        caution: [],
      },
    };
  const text = moment.rest.replace(opening, '').replace(/[\s,;:.–-]+$/, '') || 'time is up';
  if (text.length > longest)
    return refusal(`A reminder holds up to ${longest} characters; this has ${text.length}.`, 'Say it shorter.');
  if (memory.quota && all.length >= memory.quota.reminders)
    return refusal(
      `You have ${all.length} reminders, as many as I keep for one person.`,
      'Cancel one first: say "remind list".',
    );
  const taken = new Set(all.map((one) => aboutOf(one)).flatMap((one) => (one.kind === 'remind' ? [one.number] : [])));
  let number = 1;
  while (taken.has(number)) number += 1;
  const reminder = {
    id: memory.newId(),
    dueAt: moment.at,
    platform: memory.who.platform,
    place: memory.place,
    person: memory.who.person,
    address: later.can === 'direct' ? later.address : memory.address,
    about: asData({ kind: 'remind', text, number }),
    batch: null,
  };
  await memory.own.commit([{ do: 'remind', reminder }]);
  const reminders = [...all, { ...reminder, setAt: now }].sort((a, b) => a.dueAt - b.dueAt);
  return {
    ok: true,
    value: {
      ...plain,
      title: 'Reminder',
      lead: `I’ll tell you ${whenWords(moment.at, now, clock.zone)}: ${text}.`,
      body: [{ kind: 'text', text: `That is in ${lengthWords(moment.at - now)}. Its number is ${number}.` }],
      assumptions: [...momentTaken(moment, clock.zone), ...clock.taken],
      warnings:
        later.can === 'direct'
          ? [`${later.why} I’ll write you a direct message: let me write to you.`]
          : later.how === undefined
            ? []
            : [later.how],
      actions: [
        { label: 'cancel it', request: `remind cancel ${number}` },
        { label: 'all reminders', request: 'remind list' },
      ],
      result: { reminders: remindersResult(reminders, now) },
    },
  };
}

/** Those that a number, an id or words name. */
function named(said: string, all: readonly Reminder[]): readonly Reminder[] {
  const wanted = said
    .replace(/^["'“]|["'”.!]+$/g, '')
    .trim()
    .toLowerCase();
  if (wanted === '') return all.length === 1 ? all : [];
  if (/^\d+$/.test(wanted))
    return all.filter((one) => {
      const about = aboutOf(one);
      return about.kind === 'remind' && about.number === Number(wanted);
    });
  const exact = all.filter((one) => one.id === wanted || aboutOf(one).text.toLowerCase() === wanted);
  return exact.length > 0 || wanted.length < 3
    ? exact
    : all.filter((one) => aboutOf(one).text.toLowerCase().includes(wanted));
}

const which = (all: readonly Reminder[], verb: string, memory: Memory, clock: Clock): Ran => ({
  ok: false,
  fault: {
    code: 'unclear',
    message: all.length === 0 ? 'No reminder is set.' : `Which one shall I ${verb}?`,
    hint:
      all.length === 0
        ? 'For example: remind me to turn the bars in 3 days.'
        : all
            .slice(0, 10)
            .map((one) => listLine(one, memory.now, clock))
            .join('\n'),
    candidates: all
      .map(aboutOf)
      .flatMap((about) => (about.kind === 'remind' ? [`remind ${verb} ${about.number}`] : []))
      .slice(0, 5),
    caution: [],
  },
});

/** Null where the words are no wish to cancel: "remind me to stop the cooker in 20 min". */
async function cancelled(said: string, all: readonly Reminder[], memory: Memory, clock: Clock): Promise<Ran | null> {
  const found = /^(?:all|everything|them all)\W*$/i.test(said) ? all : named(said, all);
  if (found.length !== 1 && !(found.length > 1 && found === all && /all|every/i.test(said))) {
    return readMoment(said, memory.now, clock.zone).kind === 'none' || /^\d+$/.test(said)
      ? which(found.length > 0 ? found : all, 'cancel', memory, clock)
      : null;
  }
  await memory.own.commit(found.map((one): Change => ({ do: 'cancel', id: one.id })));
  const left = all.filter((one) => !found.includes(one));
  const [one] = found;
  return {
    ok: true,
    value: {
      ...plain,
      title: 'Reminders',
      lead:
        found.length > 1 || !one
          ? `Cancelled all ${found.length}.`
          : `Cancelled: ${clipped(aboutOf(one).text)} (${whenWords(one.dueAt, memory.now, clock.zone)}).`,
      body: one?.batch ? [{ kind: 'text', text: `Batch ${one.batch} goes on.` }] : [],
      actions: left.length > 0 ? [{ label: 'what is left', request: 'remind list' }] : [],
      result: { reminders: remindersResult(left, memory.now) },
    },
  };
}

/** Null where the words are no wish to move one: "remind me to move the mould in 2 hours". */
async function moved(
  said: string,
  whole: string,
  all: readonly Reminder[],
  memory: Memory,
  clock: Clock,
): Promise<Ran | null> {
  const { now } = memory;
  // "2 10 min later" counts from when it was due
  const onward = /\blater\W*$/i.test(said);
  const words = said.replace(/\blater\W*$/i, '').trim();
  const first = /^(\d+)\s+(.*)$/.exec(words);
  const when = readMoment(first?.[2] ?? words, now, clock.zone);
  const name = first?.[1] ?? ('rest' in when ? when.rest : words).replace(/\s*\b(?:to|by|for|until|on)$/i, '');
  const [one, ...more] = named(name, all);
  if (!one || more.length > 0) return first || when.kind === 'none' ? which(all, 'move', memory, clock) : null;
  const moment =
    onward && when.kind === 'at' ? readMoment(first?.[2] ?? words, Math.max(one.dueAt, now), clock.zone) : when;
  if (moment.kind !== 'at') return { ok: false, fault: momentRefusal(moment, whole, now, clock.zone) };
  await memory.own.commit([{ do: 'move', id: one.id, dueAt: moment.at }]);
  const reminders = all
    .map((other) => (other === one ? { ...one, dueAt: moment.at } : other))
    .sort((a, b) => a.dueAt - b.dueAt);
  return {
    ok: true,
    value: {
      ...plain,
      title: 'Reminder',
      lead: `Moved: ${clipped(aboutOf(one).text)}, now ${whenWords(moment.at, now, clock.zone)}.`,
      body: [{ kind: 'text', text: `It was set for ${whenWords(one.dueAt, now, clock.zone)}.` }],
      assumptions: [...momentTaken(moment, clock.zone), ...clock.taken],
      actions: [{ label: 'all reminders', request: 'remind list' }],
      result: { reminders: remindersResult(reminders, now) },
    },
  };
}
