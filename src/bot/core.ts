/** Request → first aid, if somebody is hurt → command, said or guessed → answer or fault. */
import type { Answer, Fault } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import { untilClear } from '../commands/cautions.ts';
import type { AnyCommand, Context, Said } from '../commands/define.ts';
import { nearest } from '../commands/nearest.ts';
import { takeOptions } from '../commands/options.ts';
import { commands } from '../commands/registry.ts';
import { longestPost, makeReader, type Reader, type RecipeReading, readRecipe } from '../reading/index.ts';
import { number, plainStyle, type Style } from '../units/print.ts';
import { accidentIn } from './first-aid.ts';
import { guess } from './guess.ts';
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
  readonly style?: Style;
  readonly log?: (entry: LogEntry) => void;
  /** A short id that a person can quote. */
  readonly newId?: () => string;
  /** Milliseconds that only grow. */
  readonly clock?: () => number;
}

export function createBot(options: BotOptions): Bot {
  const {
    catalogue: load,
    heat,
    style = plainStyle,
    log = () => {},
    // no randomUUID: an id that is only quoted need not load the cryptography, a fifth of a start
    newId = () => Math.random().toString(16).slice(2, 10).padEnd(8, '0'),
    clock = () => Number(process.hrtime.bigint()) / 1e6,
  } = options;
  const context = makeContext(load, heat, style);
  const shown = new Map<string, Answer>();

  const answer = (asked: Asked, track: (command: string) => void): Answer | Fault => {
    const { text } = asked;
    const run = (command: AnyCommand, rest: string): Answer | Fault => {
      track(command.id);
      return perform(command, rest, context);
    };
    const key = JSON.stringify([asked.platform, asked.place, asked.person]);
    const accident = accidentIn(text);
    if (accident) return remember(key, run(find('safety'), accident === 'any' ? '' : accident));
    if (text.length > longestPost) return tooLong(text);
    const { word, rest } = commandWord(text);
    if (word === 'details') {
      if (rest.trim() === '') return detailsOf(shown.get(key));
      const whole = answer({ ...asked, text: rest }, track);
      return 'lead' in whole ? detailsOf(whole) : whole;
    }
    const named = word === null ? null : (commands.find(({ id }) => id === word) ?? null);
    const said = named?.isIngredient?.(text, rest, context) ? null : named;
    const command = said ?? wanted(text);
    if (!command) return unknown(text);
    const body = said ? rest : text;
    const instead = command.instead?.(takenOut(body, command), context) ?? null;
    return remember(key, run(instead === null ? command : find(instead), body));
  };

  const remember = (key: string, said: Answer | Fault): Answer | Fault => {
    if ('lead' in said) {
      shown.delete(key);
      shown.set(key, said);
      // A map keeps the order of entry: the eldest goes.
      for (const eldest of shown.keys()) {
        if (shown.size <= mostRemembered) break;
        shown.delete(eldest);
      }
    }
    return said;
  };

  const wanted = (text: string): AnyCommand | null => {
    const id = guess(text, context);
    return id === null ? null : find(id);
  };

  return {
    ask: (asked: Asked): Reply => {
      const id = newId();
      const since = clock();
      let command: string | null = null;
      let said: Answer | Fault;
      let bug: unknown = null;
      try {
        said = answer(asked, (found) => {
          command = found;
        });
      } catch (error) {
        bug = error;
        said = failed(id);
      }
      const { platform, text } = asked;
      const outcome = 'lead' in said ? 'answered' : said.code;
      log({ id, platform, command, outcome, characters: text.length, milliseconds: clock() - since, error: bug });
      return 'lead' in said ? { id, ok: true, answer: said } : { id, ok: false, fault: said };
    },
    complete: (typed) => completions(typed, context),
  };
}

/** Answers whose details can still be asked for, over all people. */
const mostRemembered = 500;

function makeContext(load: () => Catalogue, heat: () => HeatData, style: Style): Context {
  let loaded: Catalogue | null = null;
  let made: Reader | null = null;
  let last: { readonly text: string; readonly reading: RecipeReading } | null = null;
  const catalogue = (): Catalogue => {
    loaded ??= load();
    return loaded;
  };
  const reader = (): Reader => {
    made ??= makeReader(catalogue());
    return made;
  };
  return {
    get catalogue() {
      return catalogue();
    },
    read: (text) => {
      if (last?.text === text) return last.reading;
      last = { text, reading: readRecipe(reader(), text) };
      return last.reading;
    },
    reader,
    heat,
    style,
    commands,
    last: { recipe: null, working: [] },
  };
}

function find(id: string): AnyCommand {
  const found = commands.find((command) => command.id === id);
  if (!found) throw new Error(`no command "${id}"`);
  return found;
}

/** "check …", "check: …", "/check …": the first word where it names a command, or "details". */
function commandWord(text: string): { readonly word: string | null; readonly rest: string } {
  const parts = /^\s*[/!]?([a-z]+)(?:[:!.?]+(?=\s|$)|:|(?=\s|$))/i.exec(text);
  const word = parts?.[1]?.toLowerCase();
  const known = word === 'details' || commands.some(({ id }) => id === word);
  return parts && word && known ? { word, rest: text.slice(parts[0].length) } : { word: null, rest: text };
}

/** The text as the command will read it. */
function takenOut(text: string, command: AnyCommand): string {
  const taken = takeOptions(text, command.options);
  return taken.ok ? taken.value.text : text;
}

function perform(command: AnyCommand, text: string, context: Context): Answer | Fault {
  const taken = takeOptions(text, command.options);
  const done = taken.ok ? command.run(taken.value, context) : taken;
  if (done.ok) return toAnswer(command, done.value);
  const { fault } = done;
  return command.risk === 'caustic' && fault.caution.length === 0 ? { ...fault, caution: untilClear } : fault;
}

/** The one place where an answer is made. Its details are worked out when somebody first looks at them. */
function toAnswer(command: AnyCommand, { details, kept: _kept, working: _working, ...said }: Said): Answer {
  let known = typeof details === 'function' ? null : details;
  return {
    command: command.id,
    ...said,
    get details() {
      if (typeof details === 'function') known ??= details();
      return known ?? [];
    },
  };
}

function detailsOf(answer: Answer | undefined): Answer | Fault {
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
