/** What one turn hands to the next: the context a command is given, and what is kept of its answer. */
import type { Answer, Fault } from '../../answer/types.ts';
import { styleFor } from '../../commands/check.ts';
import type { Context, Refusal, Said } from '../../commands/define.ts';
import type { Kept, Last, Working } from '../../commands/kept.ts';
import type { RecipeTurn, Remembered, Session } from './store.ts';
import { againLine, recipeLine } from './told.ts';
import type { Turn } from './turn.ts';

export interface Outcome {
  readonly said: Answer | Fault;
  readonly kept: Said['kept'];
  readonly working: Said['working'];
  readonly complete: Refusal['complete'];
  readonly forgets: boolean;
}

export interface Request extends Remembered {
  readonly id: string;
  /** It kept something or looked it up: it is never asked again with other words in it. */
  readonly keeps: boolean;
}

type Used = 'recipe' | null;

export interface OwnContext {
  readonly context: Context;
  /** What of the conversation the command has made use of. */
  readonly used: () => Used;
}

/** What was said before; a look at the recipe is noted. */
class Before implements Last {
  readonly said: Last['said'];
  isUsed = false;
  private readonly session: Session;
  private readonly own: RecipeTurn | null;

  constructor(session: Session, recipe: RecipeTurn | null) {
    this.said = session.said;
    this.session = session;
    this.own = recipe;
  }

  get recipe(): Kept | null {
    if (this.own) this.isUsed = true;
    return this.own?.kept ?? null;
  }

  get workings(): readonly Working[] {
    const all = [this.session.worked, this.session.recipe?.worked ?? null].filter((one) => one !== null);
    return [...new Set(all)].map(({ at, steps, caution }) => ({ at, steps: steps(), caution }));
  }
}

class TurnContext implements Context {
  readonly last: Last;
  readonly read: Context['read'];
  readonly reader: Context['reader'];
  readonly heat: Context['heat'];
  readonly style: Context['style'];
  readonly settings: Context['settings'];
  readonly zone: Context['zone'];
  readonly commands: Context['commands'];
  private readonly usual: Context;

  constructor(usual: Context, last: Last, read: Context['read']) {
    this.last = last;
    this.read = read;
    this.reader = usual.reader;
    this.heat = usual.heat;
    this.style = usual.style;
    this.settings = usual.settings;
    this.zone = usual.zone;
    this.commands = usual.commands;
    this.usual = usual;
  }

  /** Read only when a command asks for it. */
  get catalogue(): Context['catalogue'] {
    return this.usual.catalogue;
  }
}

/** The context of one turn. */
export function contextFor(usual: Context, session: Session, turn: Turn | null): OwnContext {
  const recipe = turn?.fromBase ? (session.base ?? session.recipe) : session.recipe;
  const last = new Before(session, recipe);
  const context = new TurnContext(usual, last, turn?.read ?? usual.read);
  return { context, used: () => (last.isUsed ? 'recipe' : null) };
}

/** What of the conversation the answer rests on, said in it. */
export function naming(
  used: Used,
  command: string,
  session: Session,
  turn: Turn | null,
  context: Context,
): string | null {
  if (turn?.told) return turn.told;
  const recipe = turn?.fromBase ? (session.base ?? session.recipe) : session.recipe;
  if (used === 'recipe' && recipe) {
    const style = styleFor(recipe.kept.reading, undefined, context);
    return command === 'scale'
      ? recipeLine(recipe.at, recipe.kept.recipe, context, style)
      : againLine(recipe.at, context);
  }
  return null;
}

/** Commands whose answers are neither a recipe nor a figure to ask again for. */
const aside: ReadonlySet<string> = new Set(['safety', 'help', 'report', 'restart', 'explain', 'summary']);
const recipes: ReadonlySet<string> = new Set(['check', 'lye', 'scale', 'summary', 'explain', 'recipe']);

/** A post longer than this is not kept for an answer to a question about it, and of its figures only what they came to. */
const longestKept = 20_000;
const keptWords = (text: string): string => (text.length > longestKept ? text.slice(0, 200) : text);

const keptRecipe = (text: string, kept: Kept): Kept =>
  text.length > longestKept ? { ...kept, reading: { ...kept.reading, fates: [] } } : kept;

/** The conversation after an answer or a fault. */
export function after(
  session: Session,
  request: Request,
  outcome: Outcome,
  turn: Turn | null,
  used: Used,
  doubts: (text: string) => ReturnType<Context['read']>['doubts'],
): Session {
  const { said, kept, working, complete } = outcome;
  const { id, command, text, options, at, keeps } = request;
  const own: Remembered = { command, text: keptWords(text), options, at };
  const isAside = aside.has(command);
  const about = recipes.has(command);
  if (!('lead' in said)) {
    const asks = said.code === 'unclear' || said.code === 'impossible' || said.code === 'refused';
    if (!asks || text.length > longestKept) return session;
    const open = about ? doubts(text) : [];
    const waits = open.length > 0 || complete !== undefined || (about && !isAside && /\d/.test(text));
    return {
      ...session,
      pending: waits
        ? { ...own, settled: turn?.settled ?? null, doubts: open, complete: complete ?? null, corrects: false }
        : session.pending,
      ...(about || isAside || keeps ? {} : { figure: { ...own, answered: false }, newest: 'figure' as const }),
    };
  }
  const worked = working ? { at, steps: working, caution: said.caution } : null;
  const shown = { ...session, shown: said, worked: worked ?? session.worked };
  if (isAside) return { ...shown, pending: used === null ? session.pending : null };
  const heard = { ...shown, said: { ...own, id, kept: kept ?? null } };
  if (kept) {
    const base = command === 'scale' ? (turn?.fromBase ? session.base : session.recipe) : null;
    return {
      ...heard,
      // a kept recipe was checked before it was kept
      recipe: { ...own, ...(keeps ? { command: 'check' } : {}), kept: keptRecipe(text, kept), worked },
      before: session.recipe,
      base,
      newest: 'recipe',
      pending: null,
    };
  }
  if (keeps) return { ...shown, pending: null };
  const figure = { ...own, answered: true };
  return { ...heard, figure, newest: 'figure', pending: turn ? null : session.pending };
}

/** A question about a correction: the recipe stays, the correction waits. */
export const asking = (
  session: Session,
  pending: Omit<NonNullable<Session['pending']>, 'at'>,
  at: number,
): Session => ({
  ...session,
  pending: { ...pending, at },
});
