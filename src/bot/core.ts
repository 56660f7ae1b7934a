/** Request → first aid, if somebody is hurt → command, said or guessed → answer or fault. */
import type { Answer, Fault } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import { untilClear, withoutOurs } from '../commands/cautions.ts';
import type { AnyCommand, Context, Memory, PlainCommand, Quota, Taken } from '../commands/define.ts';
import { nearest } from '../commands/nearest.ts';
import { takeOptions } from '../commands/options.ts';
import { toText } from '../commands/recipes/forms.ts';
import { amountsOf } from '../commands/recipes/saved.ts';
import { commands } from '../commands/registry.ts';
import { longestPost } from '../reading/index.ts';
import type { Store } from '../store/port.ts';
import { number, plainStyle, type Style } from '../units/print.ts';
import { toAnswer } from './answer.ts';
import { accidentIn } from './first-aid.ts';
import { guess, opensTalk } from './guess.ts';
import { keepsNothing, makeKeeper, notKept, usualQuota } from './memory.ts';
import { makePersonal, noDefaults, type Personal } from './personal.ts';
import { makeQueues } from './queue.ts';
import { makeRecall, type Recall, recalled } from './recall.ts';
import { makeRecent } from './recent.ts';
import { makeSignal } from './signal.ts';
import { sized } from './sized.ts';
import { after, asking, contextFor, naming, type Outcome, type OwnContext } from './turns/conversation.ts';
import { type Follows, follow } from './turns/follow.ts';
import { isThanks, loneFigure, nextStep, ofNothing, welcome } from './turns/next.ts';
import { makeSessions, type Session } from './turns/store.ts';
import type { Turn } from './turns/turn.ts';
import type { Asked, Bot, Reply } from './types.ts';

/** What is told to the log: never what a person wrote, never who they are. */
export interface LogEntry {
  readonly id: string;
  readonly platform: string;
  readonly command: string | null;
  /** `answered`, or the code of the fault. */
  readonly outcome: string;
  readonly characters: number;
  readonly milliseconds: number;
  /** A bug, for its mender; null where there is none. */
  readonly error: unknown;
}

export interface BotOptions {
  /** Called at the first question that needs it. */
  readonly catalogue: () => Catalogue;
  /** Called at the first question about heat or scent. */
  readonly heat: () => HeatData;
  /** Opened at the first request that keeps something; without one nothing is kept. */
  readonly store?: () => Promise<Store>;
  /** Opens it for looking only, where settings are wanted before anything is kept; null where nothing ever was. */
  readonly peek?: () => Promise<Store | null>;
  /** A conversation outlives the process, for as long as it would within it: the store holds its last turns. */
  readonly recalls?: boolean;
  /** How much one person, or one room, may keep; null for as much as they like. */
  readonly quota?: Quota | null;
  readonly style?: Style;
  /** Time zone (IANA) of people who have set none; null for the clock of this machine. */
  readonly zone?: string | null;
  readonly log?: (entry: LogEntry) => void;
  /** A short id that a person can quote. */
  readonly newId?: () => string;
  /** Milliseconds that only grow. */
  readonly clock?: () => number;
  /** Milliseconds since 1970: a conversation ends after a while, and an answer says from when its recipe is. */
  readonly now?: () => number;
}

export function createBot(options: BotOptions): Bot {
  const {
    catalogue: load,
    heat,
    store,
    peek,
    recalls = false,
    style = plainStyle,
    zone = null,
    quota = usualQuota,
    log = () => {},
    // no randomUUID: an id that is only quoted need not load the cryptography, a fifth of a start
    newId = () =>
      Math.floor(Math.random() * 2 ** 32)
        .toString(16)
        .padStart(8, '0'),
    // no `performance`: ten modules of Node stand behind the word
    clock = () => Number(process.hrtime.bigint()) / 1e6,
    now = Date.now,
  } = options;
  const personally = makePersonal(load, heat, style, zone);
  const nobody = personally(noDefaults);
  const sessions = makeSessions();
  const keeper = makeKeeper(store ?? null, peek ?? null, quota);
  const recall = recalls && store ? makeRecall(keeper.store) : null;
  const inTurn = makeQueues();
  const kept = makeSignal();
  const accidentOf = makeAccidentOf();

  /** Runs a request and keeps what the next turn may need. `told`: what of the conversation the request was made of. */
  const perform = async (heard: Heard, command: AnyCommand, body: Body, turn: Turn | null, told: string | null) => {
    const { asked, id, me, at } = heard;
    const session = sessions.of(asked, at);
    const own = contextFor(me.context, session, turn);
    const name = () => told ?? naming(own.used(), command.id, session, turn, me.context);
    const memory = async () => (heard.again ? null : keeper.memory(asked, at));
    const known = turn === null && told === null ? me.outcomes.get(command.id, body) : null;
    const outcome = known ?? (await run(command, body, own, heard, memory, name));
    if (command.keeps) kept.tell();
    const line = lineOf(heard, command, outcome);
    if (command.keeps) heard.kept(line);
    if (outcome.forgets) {
      sessions.forgetAll(asked);
      recall?.drop(asked);
    } else if (command.forgets) {
      sessions.forget(asked);
      if (!heard.again) recall?.note(asked, []);
    } else {
      const request = { id, command: command.id, keeps: command.keeps === true, ...body, at };
      const doubts = (text: string) => own.context.read(text).doubts;
      const next = after(session, request, outcome, turn, own.used(), doubts);
      // what looked at nothing of before can be said again alone
      const isStart = outcome.kept !== undefined && turn === null && (command.keeps === true || own.used() === null);
      if (isStart && !known && !command.keeps && told === null) me.outcomes.keep(command.id, body, outcome);
      if (next !== session) keep(heard, next, line, isStart);
    }
    return outcome.said;
  };

  /** Keeps where the conversation stands, and what was said, so that it outlives the process. */
  const keep = (heard: Heard, session: Session, line: string | null, isStart: boolean): void => {
    const { asked, at, again } = heard;
    const lines = line === null ? session.lines : recalled(session.lines, { text: line, at }, isStart);
    sessions.keep(asked, { ...session, lines }, at);
    if (!again && line !== null) recall?.note(asked, lines);
  };

  /** Says again what was said before this process began. */
  const resume = async ({ lines }: Recall, heard: Heard): Promise<void> => {
    const { asked, at } = heard;
    for (const { text, at: then } of await lines(asked, at))
      await answer({ ...heard, asked: { ...asked, text }, at: then, again: true, track: () => {}, kept: () => {} });
  };

  /** A text that stands alone: a command by its word, or guessed. */
  const alone = async (heard: Heard, text: string, told: string | null = null): Promise<Answer | Fault> => {
    const { context } = heard.me;
    const { word, rest } = commandWord(text);
    const named = word === null ? null : (commands.find((one) => one.id === word) ?? null);
    const isTalk = named !== null && opensTalk(text, rest, named.id, context);
    const said = isTalk || named?.isIngredient?.(text, rest, context) ? null : named;
    // where the word is no request and nothing else is either, it is one after all
    const unsaid = () =>
      isTalk ? guess(text, context) : (nextStep(text) ?? guess(text, context) ?? named?.id ?? null);
    const guessed = said ? said.id : unsaid();
    if (guessed === null) return isThanks(text) ? welcome : unknown(text);
    const command = find(guessed);
    const post = said ? rest : text;
    const first = takeOptions(post, command.options);
    const instead = command.instead?.(first.ok ? first.value.text : post, context);
    const meant = instead ? find(instead) : command;
    heard.track(meant.id);
    const taken = instead ? takeOptions(post, meant.options) : first;
    return taken.ok ? perform(heard, meant, taken.value, null, told) : cautioned(meant, taken.fault);
  };

  /** A text that follows what was said before; null where it stands alone. */
  const following = async (heard: Heard, follows: Follows): Promise<Answer | Fault | null> => {
    const { asked, me, track, at } = heard;
    const session = sessions.of(asked, at);
    const found = follow(asked.text, session, me.context, at, follows);
    if (!found) return null;
    if (found.kind === 'ask') {
      track(found.pending.command);
      keep(heard, asking(session, found.pending, at), asked.text, false);
      return found.fault;
    }
    if (found.kind === 'again') {
      const said = await alone(heard, found.text, found.told);
      return 'code' in said && said.code === 'unknown' ? null : said;
    }
    const { turn } = found;
    const own = contextFor(me.context, session, turn).context;
    const instead = turn.mayTurn ? find(turn.command).instead?.(turn.text, own) : null;
    const meant = find(instead ?? turn.command);
    track(meant.id);
    return perform(heard, meant, { text: turn.text, options: turn.options }, turn, null);
  };

  const answer = async (heard: Heard, accident = accidentOf(heard)): Promise<Answer | Fault> => {
    const { asked } = heard;
    const { text } = asked;
    if (accident) {
      heard.track('safety');
      return perform(heard, find('safety'), { text: accident === 'any' ? '' : accident, options: {} }, null, null);
    }
    if (text.length > longestPost) return tooLong(text);
    const { word, rest } = commandWord(text);
    if (word === 'details') {
      if (rest.trim() === '') return detailsOf(sessions.of(asked, heard.at).shown);
      const whole = await answer({ ...heard, asked: { ...asked, text: rest } });
      return 'lead' in whole ? detailsOf(whole) : whole;
    }
    const me = await personal(asked);
    const mine = { ...heard, me };
    const follows = mayFollow(text, word, rest);
    const pot = word !== 'batch' && mayBeStep(heard, word !== null) ? await atPot(mine, word !== null) : null;
    // what was asked last is answered first
    const asksBack = sessions.of(asked, heard.at).pending !== null;
    let said = pot && !asksBack ? await pot() : null;
    if (!said && follows && (asksBack || follows === 'anything')) said = await following(mine, follows);
    if (!said && pot) said = await pot();
    if (!said && word === null) said = ofNothing(text, sessions.of(asked, heard.at), me.context);
    said ??= await alone(mine, text);
    const unheard = 'code' in said && said.code === 'unknown';
    return (unheard ? loneFigure(text, sessions.of(asked, heard.at)) : null) ?? said;
  };

  /** First aid waits for nothing that is kept. */
  const answered = async (heard: Heard): Promise<Answer | Fault> => {
    const accident = accidentOf(heard);
    if (!accident && recall && !sessions.has(heard.asked, heard.at)) await resume(recall, heard).catch(unlessTrouble);
    return answer(heard, accident);
  };

  /** A step of a batch that is open here; null where the text is nothing of the kind. */
  const atPot = async (heard: Heard, commanded: boolean): Promise<(() => Promise<Answer | Fault>) | null> => {
    const { asked, at } = heard;
    // where nothing was ever kept, no text is read for it, and nothing loaded that reads it
    const pot = () => import('./turns/pot.ts');
    const own = await keeper.look(asked).catch(async (error: unknown) => {
      if ((await pot()).saidAtPot(asked.text, commanded)) throw error;
      unlessTrouble(error);
      return null;
    });
    if (!own) return null;
    const { meansBatch, saidAtPot } = await pot();
    const step = saidAtPot(asked.text, commanded);
    if (!step) return null;
    const { openHere } = await import('../commands/batch/keep.ts');
    const open = await openHere(own, asked);
    const means = meansBatch(step, open, sessions.of(asked, at), asked.text, at);
    if (means === null) return null;
    heard.track('batch');
    if (means !== 'batch') return async () => means;
    return () => perform(heard, find('batch'), { text: asked.text, options: {} }, null, null);
  };

  /** What was set by who asks; an answer under usual settings is better than none, and says so. */
  const personal = async (asked: Asked): Promise<Personal> => {
    try {
      return personally(await keeper.defaults(asked));
    } catch (error) {
      const trouble = notKept(error);
      if (!trouble) throw error;
      return { ...nobody, told: () => [`I took the usual settings: yours can’t be read now.`] };
    }
  };

  return {
    ask: (asked) =>
      inTurn(asked, async (): Promise<Reply> => {
        const id = newId();
        const since = clock();
        let command: string | null = null;
        const track = (found: string): void => {
          command = found;
        };
        let own: Pick<Reply, 'kept'> = {};
        const kept = (again: string | null): void => {
          own = { kept: { again } };
        };
        let said: Answer | Fault;
        let bug: unknown = null;
        try {
          said = await answered({ asked, id, track, kept, me: nobody, at: now(), again: false });
        } catch (error) {
          const trouble = notKept(error);
          if (!trouble) bug = error;
          said = trouble ?? failed(id);
        }
        const { platform, text } = asked;
        const outcome = 'lead' in said ? 'answered' : said.code;
        log({ id, platform, command, outcome, characters: text.length, milliseconds: clock() - since, error: bug });
        return 'lead' in said ? { id, ...own, ok: true, answer: said } : { id, ...own, ok: false, fault: said };
      }),
    prepare: () => {
      try {
        nobody.context.read('500 g lard, 66 g NaOH, 150 g water');
      } catch {
        // whoever asks is told
      }
    },
    complete: (typed) => completions(typed, nobody.context),
    ring: async ({ platforms, tell, signal, atOnce, pace }) => {
      if (!store) return;
      if (!atOnce) await kept.first(signal);
      if (signal.aborted) return;
      const { startBells } = await import('./bells.ts');
      const { ringing } = await import('../commands/remind/ring.ts');
      const bells = startBells({
        store: keeper.store,
        platforms,
        tell,
        signal,
        now,
        word: async (claimed, at) => {
          const { context, settings } = personally(await keeper.defaults(claimed));
          const rung = await ringing(claimed, at, context);
          if (!rung) return null;
          const answer = toAnswer(rung.command, rung.said, rung.said.assumptions);
          return { answer: sized(answer, find(rung.command), settings), follows: rung.follows };
        },
        failed: (outcome, error) =>
          log({
            id: newId(),
            platform: platforms.join(' '),
            command: null,
            outcome,
            characters: 0,
            milliseconds: 0,
            error,
          }),
        ...(pace === undefined ? {} : { pace }),
      });
      kept.listen(bells.wake);
      await bells.done;
    },
    left: async (where) => keeper.rooms?.left(where, now()),
    joined: async (where) => keeper.rooms?.joined(where),
    present: async (platform, communities) => keeper.rooms?.present(platform, communities, now()),
    suggest: async (asked) => {
      const { word, rest } = commandWord(asked.text);
      const command = commands.find(({ id }) => id === word);
      if (!command?.keeps || !command.suggest) return [];
      const memory = await keeper.memory({ ...asked, isPrivate: true }, now()).catch(unlessTrouble);
      return memory ? command.suggest(rest.trimStart(), memory) : [];
    },
    close: async () => {
      await recall?.flush();
      await keeper.close();
    },
  };
}

/** A store that cannot be read now costs the conversation of before, and no answer. */
const unlessTrouble = (error: unknown): null => {
  if (!notKept(error)) throw error;
  return null;
};

/**
 * What leads here when it is said again; null where nothing does. A recipe out of the store is said by its amounts:
 * what keeps something is never asked twice.
 */
function lineOf({ asked, me }: Heard, command: AnyCommand, { kept }: Outcome): string | null {
  if (command.id === 'safety') return null;
  if (!command.keeps) return asked.text;
  return kept ? `check ${toText(amountsOf(kept), me.context.catalogue, me.context.reader())}` : null;
}

/** One request on its way to its answer. */
interface Heard {
  readonly asked: Asked;
  readonly id: string;
  readonly me: Personal;
  /** When it was asked, ms since 1970. */
  readonly at: number;
  /** It was said before this process began, and is said again to take up the conversation. */
  readonly again: boolean;
  /** Told which command it is. */
  readonly track: (command: string) => void;
  /** Told where a command kept something or looked it up, and what leads to its recipe. */
  readonly kept: (again: string | null) => void;
}

/** A button says again what led to it: of the last few texts it is known whether they tell of an accident. */
function makeAccidentOf(): (heard: Heard) => Accident {
  const recent = makeRecent<string, Accident>(mostKnown);
  return ({ asked: { text } }) => {
    const known = recent.get(text);
    if (known !== undefined) return known;
    const accident = accidentIn(withoutOurs(text));
    if (text.length <= longestKnown) recent.set(text, accident);
    return accident;
  };
}

type Accident = ReturnType<typeof accidentIn>;
/** Texts, and characters of one; like what is kept of outcomes. */
const mostKnown = 4;
const longestKnown = 4000;

/** Behind the word of a command only a stage is said of a batch, and never with a figure. */
const mayBeStep = ({ asked: { text }, again }: Heard, commanded: boolean): boolean =>
  !again && !(commanded && /\d/.test(text));

/** What a text may follow: a few words may answer a question even where the first is that of a command ("fat weight"). */
function mayFollow(text: string, word: string | null, rest: string): Follows | null {
  if (/^\s*[/!]/.test(text)) return null;
  if (word === null) return nextStep(text) === null ? 'anything' : null;
  return isShort(rest) ? 'anything' : 'question';
}

/** Nothing behind a command's word, or only what points back: "check it". */
const isShort = (rest: string): boolean => /^\W*(?:it|this|that|again|mine|(?:my|the) recipe)?\W*$/i.test(rest);

type Body = Pick<Taken, 'text' | 'options'>;

function find(id: string): AnyCommand {
  const found = commands.find((command) => command.id === id);
  if (!found) throw new Error(`no command "${id}"`);
  return found;
}

const commandWords: readonly string[] = [...commands.map(({ id }) => id), 'details'];

/** "check …", "check: …", "/check …": the first word where it names a command, or "details". */
function commandWord(text: string): { readonly word: string | null; readonly rest: string } {
  const none = { word: null, rest: text };
  const begin = text.trimStart().slice(0, 20).toLowerCase();
  if (!commandWords.some((one) => begin.startsWith(one, /^[/!]/.test(begin) ? 1 : 0))) return none;
  // "Mix 1: NaOH 142 g", "batch A: 500 g lard" are headings
  const parts = /^\s*[/!]?([a-z]+)(?:[:!.?]+(?=\s|$)|:|(?=\s|$))(?!\s*(?:\d+|[a-z])\s*[:)])/i.exec(text);
  const word = parts?.[1]?.toLowerCase();
  if (!parts || !word || !commandWords.includes(word)) return none;
  const rest = text.slice(parts[0].length);
  const isRow = (word === 'batch' && numbered.test(rest)) || (word === 'fat' && fatOf.test(rest));
  return isRow ? none : { word, rest };
}

/** "Batch 104, how much lye?": the number of one, and nothing to begin. */
const numbered = /^\s*(?:no\.? ?|number |#)?\d+\s*[,.;!?](?!\d)/i;

/** "Fat of goose 350 g, …": the first row of a list. */
const fatOf = /^ (?:of|from) [a-z ]+[ :=,-]+\d/i;

async function run(
  command: AnyCommand,
  body: Body,
  { context }: OwnContext,
  { me, asked }: Heard,
  memoryOf: () => Promise<Memory | null>,
  told: () => string | null,
): Promise<Outcome> {
  let done: ReturnType<PlainCommand['run']>;
  if (command.keeps) {
    const memory = await memoryOf();
    if (!memory)
      return { said: keepsNothing, kept: undefined, working: undefined, complete: undefined, forgets: false };
    done = await command.run(body, context, memory);
  } else done = command.run(body, context);
  if (done.ok) {
    const { kept, working, assumptions, forgets = false } = done.value;
    const taken = [
      told(),
      ...assumptions,
      ...(command.id === 'settings' ? [] : me.told(done.value, asked.text)),
    ].filter((line) => line !== null);
    const answer = toAnswer(command.id, done.value, taken);
    return { said: sized(answer, command, me.settings), kept, working, complete: undefined, forgets };
  }
  const { complete, ...fault } = done.fault;
  return { said: cautioned(command, fault), kept: undefined, working: undefined, complete, forgets: false };
}

/** No word about something caustic without its caution. */
const cautioned = (command: AnyCommand, fault: Fault): Fault =>
  command.risk === 'caustic' && fault.caution.length === 0 ? { ...fault, caution: untilClear } : fault;

function detailsOf(answer: Answer | null): Answer | Fault {
  if (!answer || answer.details.length === 0) {
    return {
      code: 'unclear',
      message: 'Details of what?',
      hint: 'Paste the recipe again, or write "details" before it.',
      candidates: [],
      caution: [],
    };
  }
  return {
    ...answer,
    body: answer.details,
    details: [],
    actions: answer.actions.filter(({ request }) => request !== 'details'),
  };
}

const tooLong = (text: string): Fault => ({
  code: 'too-long',
  message: `This post has ${number(text.length, 0)} characters; I read up to ${number(longestPost, 0)}.`,
  hint: 'Paste the recipe alone.',
  candidates: [],
  caution: [],
});

function unknown(text: string): Fault {
  const first = /^\s*[/!]?([a-z-]+)/i.exec(text)?.[1]?.toLowerCase() ?? '';
  const near = nearest(
    first,
    commands.map(({ id }) => id),
  );
  const isAboutSoap = /\b(?:lye|naoh|koh|soaps?|recipe|superfat|batch|lauge|seife|savon|jab[oó]n)\b/i.test(text);
  return {
    code: !near && isAboutSoap ? 'unclear' : 'unknown',
    message: near
      ? `I don’t know "${first}". Did you mean "${near}"?`
      : 'I see no recipe in this, and no question that I know.',
    hint: 'Paste a recipe with its weights, for example: 500 g lard, 66 g NaOH, 150 g water. Or say "help".',
    candidates: near ? [near] : ['help'],
    caution: isAboutSoap ? untilClear : [],
  };
}

const failed = (id: string): Fault => ({
  code: 'failed',
  message: 'Something went wrong on our side; it is not your recipe.',
  hint: `Please try again, or pass on the number ${id}. First aid works all the same: say "safety".`,
  candidates: [],
  caution: [],
});

/** Commands and fats whose name goes on where the last words end. */
function completions(typed: string, context: Context): readonly string[] {
  const end = typed.toLowerCase();
  const names = [
    ...commands.map(({ id }) => id),
    ...[...context.catalogue.fats.values()].flatMap(({ names: all }) => all),
  ];
  const words = end.split(/(?<=[\s,;:(=])/);
  for (let from = 0; from < words.length; from++) {
    const part = words.slice(from).join('');
    if (part.trim() === '') continue;
    const hits = names.filter((name) => name.startsWith(part));
    if (hits.length > 0) return hits.slice(0, 40);
  }
  return [];
}
