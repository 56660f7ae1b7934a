import type { Action, Block, Fault, NonEmpty, Result } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import type { Reader } from '../reading/index.ts';
import type { RecipeReading } from '../reading/reading.ts';
import type { Account, Linked, Own } from '../store/port.ts';
import type { Style } from '../units/print.ts';
import type { Kept, Last, Step } from './kept.ts';
import type { OptionTable, Values } from './options.ts';
import type { Settings } from './settings/values.ts';

/** `caustic`: touches lye, hot lye or raw soap; `heat`: hot pots and flammable vapour; `plain`: neither. */
export type Risk = 'caustic' | 'heat' | 'plain';

type Caution<R extends Risk> = R extends 'plain' ? readonly string[] : NonEmpty<string>;

/** What a command says; the core adds its id and makes the `Answer`. */
export interface Said<R extends Risk = Risk> {
  readonly title: string;
  readonly lead: string;
  readonly body: readonly Block[];
  /** A function where it costs something: most people never ask. */
  readonly details: readonly Block[] | (() => readonly Block[]);
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly caution: Caution<R>;
  readonly actions: readonly Action[];
  readonly result: Readonly<Record<string, unknown>>;
  /** The recipe of the answer, for the turns that follow. */
  readonly kept?: Kept;
  /** The core forgets the conversations of this person with it. */
  readonly forgets?: true;
  /** How its figures were found, the main one first; worked out only when `explain` asks. */
  readonly working?: () => readonly Step[];
}

/** Of an answer that is its lead and its result. */
export const nothingMore = {
  body: [],
  details: [],
  assumptions: [],
  warnings: [],
  caution: [],
  actions: [],
} as const;

/** What a command does not answer; about caustic things it, too, carries a caution. */
export interface Refusal<R extends Risk = Risk> extends Fault {
  readonly caution: Caution<R>;
  /** The request that a short answer to this question makes ("batch", "grams"); null where it answers nothing. */
  readonly complete?: (answer: string) => Taken | null;
}

export interface Context {
  /** Read from `data/` at first use: a command that leaves it alone answers even where it cannot be read. */
  readonly catalogue: Catalogue;
  /** What a post says; the last reading is kept, so that guessing a command costs no second one. */
  readonly read: (text: string) => RecipeReading;
  /** For commands that read more of a text than a recipe. */
  readonly reader: () => Reader;
  /** Read from `data/heat/` at first use: only the commands about heat and scent need it. */
  readonly heat: () => HeatData;
  readonly style: Style;
  /** What to take where nobody says; looking at one of them names it in the answer. */
  readonly settings: Settings;
  /** IANA name of the time zone of who asks; null for the clock of this machine. */
  readonly zone: string | null;
  readonly commands: readonly AnyCommand[];
  /** What the person who asks worked on before, in this place. Using it is told in the answer. */
  readonly last: Last;
}

export interface Request<O extends OptionTable = OptionTable> {
  /** Free text after the command word, without the options that were taken out of it. */
  readonly text: string;
  readonly options: Values<O>;
}

/** What a command that keeps something may touch: what belongs to the person who asks and to the room, and nobody else's. */
export interface Memory {
  readonly own: Own;
  /** Defaults of the place, kept by its host. */
  readonly room: Own;
  readonly who: Account;
  readonly place: string;
  /** How the adapter finds the way back here. */
  readonly address: string;
  /** The asker may set what holds for the whole place. */
  readonly isHost: boolean;
  /** Nobody but the asker sees the answer. */
  readonly isPrivate: boolean;
  /** Whether something can be told here later; else what a person can do about it. */
  readonly later: Later;
  /** Milliseconds since 1970. */
  readonly now: number;
  readonly newId: () => string;
  /** How much may be kept; null where nobody counts. */
  readonly quota: Quota | null;
  /** Joins the accounts of one person, by a code of the other one. */
  readonly link: (code: string) => Promise<Linked>;
  readonly unlink: () => Promise<void>;
}

/** The most that one person, or for `shared` one room, may keep. */
export interface Quota {
  readonly recipes: number;
  readonly shared: number;
  readonly batches: number;
  readonly reminders: number;
}

/** `here`: where it was asked. `direct`: only by a direct message, at `address`. `nowhere`: `why` says so to a person. */
export type Later =
  /** `how`: what a person should know of it, as a sentence. */
  | { readonly can: 'here'; readonly how?: string }
  | { readonly can: 'direct'; readonly address: string; readonly why: string }
  | { readonly can: 'nowhere'; readonly why: string };

/** Declared once: help, completion, the text grammar and the forms of chat platforms all come from this. */
interface Declaration<R extends Risk, O extends OptionTable> {
  readonly id: string;
  readonly summary: string;
  readonly risk: R;
  readonly options: O;
  /** Each runs as a test; the first is shown in `help`. */
  readonly examples: NonEmpty<{ readonly say: string; readonly about: string }>;
  /** The question that a text makes of the one before, so many minutes ago, where it goes on with it. */
  readonly continues?: (text: string, before: string, minutes: number, context: Context) => string | null;
  /** The command that is meant instead, seen from the text ("check" of fats without any alkali is `lye`). */
  readonly instead?: (text: string, context: Context) => string | null;
  /** True where the command's word is an ingredient of the post ("lye 102 g, olive 450 g"), and no request. */
  readonly isIngredient?: (text: string, rest: string, context: Context) => boolean;
  /** The core forgets the conversation once this is answered. */
  readonly forgets?: true;
}

/** Answers by reckoning alone, at once. */
export interface Command<R extends Risk = Risk, O extends OptionTable = OptionTable> extends Declaration<R, O> {
  readonly keeps?: never;
  readonly run: (request: Request<O>, context: Context) => Result<Said<R>, Refusal<R>>;
}

/** Keeps something or looks it up, and so waits for the store. Asking it twice is not the same as asking it once. */
export interface KeepingCommand<R extends Risk = Risk, O extends OptionTable = OptionTable> extends Declaration<R, O> {
  readonly keeps: true;
  /** How a text may go on by what is kept: whole texts after the command's word. Only the person sees them. */
  readonly suggest?: (text: string, memory: Memory) => Promise<readonly string[]>;
  readonly run: (request: Request<O>, context: Context, memory: Memory) => Promise<Result<Said<R>, Refusal<R>>>;
}

/** A command whose options only itself knows, as the core holds it. */
export type PlainCommand = {
  [R in Risk]: Omit<Command<R>, 'run'> & { readonly run: (request: Taken, context: Context) => Ran<R> };
}[Risk];

export type AnyKeepingCommand = {
  [R in Risk]: Omit<KeepingCommand<R>, 'run'> & {
    readonly run: (request: Taken, context: Context, memory: Memory) => Promise<Ran<R>>;
  };
}[Risk];

export type AnyCommand = PlainCommand | AnyKeepingCommand;

/** A request whose options were checked against the command's table. */
export interface Taken {
  readonly text: string;
  readonly options: Readonly<Record<string, unknown>>;
}

type Ran<R extends Risk> = Result<Said<R>, Refusal<R>>;

/** Checks a declaration against its risk and its options, then forgets which options they are. */
export function defineCommand<R extends Risk, const O extends OptionTable>(
  command: Command<R, O> & { readonly risk: R },
): PlainCommand {
  return command as unknown as PlainCommand;
}

/** The same for a command that keeps something. */
export function defineKeepingCommand<R extends Risk, const O extends OptionTable>(
  command: Omit<KeepingCommand<R, O>, 'keeps'> & { readonly risk: R },
): AnyKeepingCommand {
  return { ...command, keeps: true } as unknown as AnyKeepingCommand;
}
