/**
 * Whether a text follows what was said before, and what it then asks: the answer to a question back, a correction of
 * the last recipe, the last question with something else in it, or another size. Null where it stands alone.
 */
import type { Fault } from '../../answer/types.ts';
import { untilClear } from '../../commands/cautions.ts';
import type { Context, Taken } from '../../commands/define.ts';
import { takeOptions } from '../../commands/options.ts';
import { capital, inSentence, nameOf } from '../../commands/phrases.ts';
import { inAskedOrder, mostPressing } from '../../commands/questions.ts';
import { readingOf } from '../../commands/recipe-reading.ts';
import { type Change, type Correction, corrects, readCorrection } from '../../reading/amend.ts';
import { amended } from '../../reading/apply.ts';
import { type RecipeReading, readRecipe } from '../../reading/index.ts';
import { mended } from '../../reading/mend.ts';
import type { Doubt } from '../../reading/reading.ts';
import { retext } from '../../reading/retext.ts';
import { readScaleWish } from '../../reading/scale-target.ts';
import { both, chosen, type Settled, settle } from '../../reading/settle.ts';
import { asksAgain, isSize, takesBack } from './next.ts';
import type { Pending, RecipeTurn, Session } from './store.ts';
import { againLine, askedAgainLine, completedLine, correctedLine, optionsLine } from './told.ts';

/** A request made of a text and of what went before. */
export interface Turn {
  readonly command: string;
  readonly text: string;
  readonly options: Taken['options'];
  /** Reads posts in the place of the reader; null where the text is read as it stands. */
  readonly read: ((text: string) => RecipeReading) | null;
  readonly settled: Settled | null;
  /** What of the conversation it rests on; null where the command says so itself. */
  readonly told: string | null;
  /** The command may give way to another, seen from the text. */
  readonly mayTurn: boolean;
  /** Scales what the last scaling started from. */
  readonly fromBase: boolean;
}

export type Follow =
  | { readonly kind: 'turn'; readonly turn: Turn }
  /** The last question, worded anew. */
  | { readonly kind: 'again'; readonly text: string; readonly told: string }
  | { readonly kind: 'ask'; readonly fault: Fault; readonly pending: Omit<Pending, 'at'> };

const noOptions: Taken['options'] = {};
const plain = { read: null, settled: null, told: null, mayTurn: false, fromBase: false } as const;

/** A post of its own waits, not a question about the recipe before it. */
const isPost = ({ command, corrects, doubts }: Pending): boolean =>
  !corrects && (doubts.length > 0 || command === 'check' || command === 'lye');

/** Longer texts stand alone. */
const longest = 400;

export function follow(text: string, session: Session, context: Context, at: number): Follow | null {
  if (text.length > longest || standsAlone(text, context)) return null;
  return followed(text.replace(/[’‘]/g, "'"), session, context, at);
}

/** A recipe of its own, seen from the reading that its answer needs anyway. */
function standsAlone(text: string, { read }: Context): boolean {
  if ((text.match(/\d+/g)?.length ?? 0) < 3) return false;
  const { fats, after, alkali, waterGrams } = read(text);
  const all = fats.length + after.length;
  if (all > 2 || (all > 0 && alkali.length > 0 && waterGrams !== null)) return true;
  return (all > 1 || (all > 0 && alkali.length > 0)) && !corrects(text);
}

function followed(text: string, session: Session, context: Context, at: number): Follow | null {
  const { pending } = session;
  const answered = pending ? toPending(text, pending, session, context) : null;
  if (answered) return answered;
  const onward = goesOn(text, session, context, at);
  if (onward) return onward;
  // While a post waits for an answer, nothing that is said of a recipe is said of an older one.
  if (pending && isPost(pending)) return toFigure(text, session, context);
  const { recipe, before } = session;
  const judged = recipe && toJudge(text, recipe);
  if (judged) return judged;
  if (recipe && asksAgain(text)) return once(recipe, againLine(recipe.at));
  if (before && takesBack(text)) return once(before, againLine(before.at));
  const figure = () => toFigure(text, session, context);
  const rest = [() => toSize(text, session, context), () => toRecipe(text, session, context)];
  for (const step of session.newest === 'figure' ? [figure, ...rest] : [...rest, figure]) {
    const found = step();
    if (found) return found;
  }
  return null;
}

/** "81 at 20 min" after a pot that cools: the last question with one reading more. */
function goesOn(text: string, { figure, newest }: Session, context: Context, at: number): Follow | null {
  if (newest !== 'figure') return null;
  const command = figure && context.commands.find(({ id }) => id === figure.command);
  const again = command?.continues?.(text, figure?.text ?? '', (at - (figure?.at ?? at)) / 60_000, context) ?? null;
  return again && figure ? { kind: 'again', text: again, told: askedAgainLine(figure.at, again) } : null;
}

/** A recipe judged or reckoned once more, as it stands. */
const once = (recipe: RecipeTurn, told: string): Extract<Follow, { kind: 'turn' }> => ({
  kind: 'turn',
  turn: {
    ...plain,
    command: commandFor(recipe, [], recipe.kept.reading),
    text: recipe.text,
    options: ownOptions(recipe),
    read: () => recipe.kept.reading,
    told,
  },
});

/** "check it": the amounts to weigh of the last recipe, judged. */
function toJudge(text: string, recipe: RecipeTurn): Follow | null {
  if (!/^\W*(?:check|lye)\b\W*(?:it|this|that|again|mine|(?:my|the) recipe)?\W*$/i.test(text)) return null;
  const { kept, at } = recipe;
  const reading = readingOf(kept.recipe, kept.reading, 1);
  const { turn } = once(recipe, againLine(at));
  return { kind: 'turn', turn: { ...turn, command: /check/i.test(text) ? 'check' : 'lye', read: () => reading } };
}

/** Parts of an answer that say one thing each: "KOH, 90 %". */
const partsOf = (text: string): string[] =>
  text
    .split(/[;\n]|,(?!\d)|\band\b|\+/)
    .map((part) => part.trim())
    .filter((part) => part !== '');

function toPending(text: string, pending: Pending, session: Session, context: Context): Follow | null {
  const reader = context.reader();
  const { command, options, at } = pending;
  if (pending.corrects) return toCorrection(text, pending, session, context);
  const told = completedLine(at, text);
  const taken = pending.complete?.(text) ?? null;
  const settledRead = (settled: Settled | null) =>
    settled ? (post: string) => readRecipe(reader, post, settled) : null;
  if (taken)
    return {
      kind: 'turn',
      turn: {
        ...plain,
        command,
        ...taken,
        read: settledRead(pending.settled),
        settled: pending.settled,
        told,
        fromBase: command === 'scale',
      },
    };
  const turn = { ...plain, command, text: pending.text, options, told, mayTurn: true, fromBase: command === 'scale' };
  const whole = settleOne(text, pending.doubts, context);
  if (whole) {
    const settled = both(pending.settled, whole);
    return { kind: 'turn', turn: { ...turn, read: settledRead(settled), settled } };
  }
  const put = pending.doubts.length > 0 ? mended(reader, pending.text, pending.settled, text) : null;
  if (put) return { kind: 'turn', turn: { ...turn, read: settledRead(put), settled: put } };
  const parts = partsOf(text);
  if (parts.length < 2 || parts.length > 4 || pending.doubts.length === 0) return null;
  let settled = pending.settled;
  const rest: string[] = [];
  for (const part of parts) {
    const one = settleOne(part, pending.doubts, context);
    if (one) settled = both(settled, one);
    else rest.push(part);
  }
  if (rest.length === parts.length || !settled) return null;
  if (rest.length === 0) return { kind: 'turn', turn: { ...turn, read: settledRead(settled), settled } };
  const reading = readRecipe(reader, pending.text, settled);
  const correction = reading.doubts.length === 0 ? readCorrection(reader, rest.join(', '), reading) : null;
  if (correction?.kind !== 'changes') return null;
  const better = amended(reading, correction.changes, correction.given, reader.lexicon);
  return {
    kind: 'turn',
    turn: { ...turn, options: without(options, correction.changes), read: () => better, settled },
  };
}

function settleOne(text: string, doubts: readonly Doubt[], context: Context): Settled | null {
  for (const doubt of inAskedOrder(doubts)) {
    const settled = settle(context.reader(), doubt, text);
    if (settled) return settled;
  }
  return null;
}

/** The answer to a question about a correction. */
function toCorrection(text: string, pending: Pending, session: Session, context: Context): Follow | null {
  const { recipe } = session;
  if (!recipe) return null;
  const reader = context.reader();
  const one = settleOne(text, pending.doubts, context);
  const settled = one ? both(pending.settled, one) : pending.settled;
  const taken = one ? null : (pending.complete?.(text) ?? null);
  if (!one && !taken) return null;
  const { target } = taken?.options ?? noOptions;
  const words = taken?.text ?? pending.text;
  const answered = { settled, target: typeof target === 'string' ? target : null };
  const correction = readCorrection(reader, words, recipe.kept.reading, answered);
  return correction && corrected(correction, words, settled, recipe, context);
}

function toRecipe(text: string, { recipe, newest }: Session, context: Context): Follow | null {
  if (!recipe) return null;
  const chosen = toOptions(text, recipe, context);
  if (chosen) return chosen;
  const correction = readCorrection(context.reader(), text, recipe.kept.reading);
  // a lone figure is about what was said last, and that was another question
  const apart = newest === 'figure' && !(correction?.kind === 'changes' && correction.named);
  return correction && !apart ? corrected(correction, text, null, recipe, context) : null;
}

/** "by=weight", "by weight", "step=0.1g": options of the last request, and nothing else. */
function toOptions(text: string, recipe: RecipeTurn, { commands }: Context): Follow | null {
  const command = commandFor(recipe, [], recipe.kept.reading);
  const table = commands.find(({ id }) => id === command)?.options ?? {};
  const taken = takeOptions(text.replace(/^\W*by (weight|demand)\W*$/i, 'by=$1'), table);
  if (!taken.ok || taken.value.text.trim() !== '' || Object.keys(taken.value.options).length === 0) return null;
  const { turn } = once(recipe, optionsLine(recipe.at, text));
  return { kind: 'turn', turn: { ...turn, options: { ...turn.options, ...taken.value.options } } };
}

/** Options that a change overrules. */
function without(options: Taken['options'], changes: readonly Change[]): Taken['options'] {
  const water = ['concentration', 'ratio', 'water'];
  const gone = changes.flatMap((change): readonly string[] => {
    switch (change.kind) {
      case 'superfat':
      case 'purity':
      case 'step':
      case 'unit':
        return [change.kind];
      case 'alkali':
        return ['alkali', 'koh', 'by', 'purity'];
      case 'concentration':
      case 'ratio':
      case 'water-share':
        return water;
      case 'set':
        return change.of.kind === 'water' ? water : [];
      default:
        return [];
    }
  });
  const unit = changes.find((change) => change.kind === 'unit');
  const kept = Object.fromEntries(Object.entries(options).filter(([key]) => !gone.includes(key)));
  return unit ? { ...kept, unit: unit.unit } : kept;
}

/** A changed superfat asks what to weigh for it; a changed amount of alkali asks whether that is right. */
function commandFor(recipe: RecipeTurn, changes: readonly Change[], reading: RecipeReading): string {
  if (changes.some(({ kind }) => kind === 'superfat')) return 'lye';
  if (changes.some((change) => change.kind === 'set' && change.of.kind === 'alkali')) return 'check';
  return recipe.command === 'check' && reading.alkali.length > 0 ? 'check' : 'lye';
}

/** Of a scaled recipe only what the scaling reckoned anew; its own options spoke of the size. */
const ownOptions = ({ command, options }: RecipeTurn): Taken['options'] => {
  if (command !== 'scale') return options;
  const { unit } = options;
  return unit === undefined ? noOptions : { unit };
};

/** Changes that a scaling can be asked again with. */
const resizes = new Set<Change['kind']>(['superfat', 'unit', 'step']);

const overruling = (changes: readonly Change[]): Taken['options'] =>
  Object.fromEntries(changes.flatMap((change) => ('value' in change ? [[change.kind, change.value]] : [])));

function corrected(
  correction: Correction,
  text: string,
  settled: Settled | null,
  recipe: RecipeTurn,
  context: Context,
): Follow {
  const pending = {
    command: recipe.command,
    text,
    options: noOptions,
    settled,
    doubts: [],
    complete: null,
    corrects: true,
  };
  if (correction.kind === 'doubt') {
    const { doubt, given } = correction;
    const fault = mostPressing({ ...given, doubts: [doubt] }, context);
    if (!fault) throw new Error(`a doubt without a question: ${doubt.id}`);
    return { kind: 'ask', fault, pending: { ...pending, doubts: [doubt] } };
  }
  if (correction.kind === 'which') return { kind: 'ask', ...which(correction, pending, context) };
  if (correction.kind === 'lost') return { kind: 'ask', fault: lost, pending };
  const { changes, given } = correction;
  if (recipe.command === 'scale' && changes.every(({ kind }) => resizes.has(kind))) {
    const options = { ...without(recipe.options, changes), ...overruling(changes) };
    const told = correctedLine(recipe, changes, context);
    return { kind: 'turn', turn: { ...plain, command: 'scale', text: recipe.text, options, told, fromBase: true } };
  }
  const reading = amended(recipe.kept.reading, changes, given, context.reader().lexicon);
  return {
    kind: 'turn',
    turn: {
      ...plain,
      command: commandFor(recipe, changes, reading),
      text: recipe.text,
      options: without(ownOptions(recipe), changes),
      read: () => reading,
      told: correctedLine(recipe, changes, context),
    },
  };
}

const lost: Fault = {
  code: 'unclear',
  message: 'What shall I change in your recipe?',
  hint: 'Say for example "the coconut was 250 g", "lard instead of olive", "8 % superfat"; or paste the recipe anew.',
  candidates: [],
  caution: untilClear,
};

/** What a correction means to change, asked. */
function which(
  { said, of }: Extract<Correction, { kind: 'which' }>,
  pending: Omit<Pending, 'at'>,
  context: Context,
): { readonly fault: Fault; readonly pending: Omit<Pending, 'at'> } {
  const { catalogue } = context;
  if (of.length === 0) {
    const fault: Fault = {
      code: 'unclear',
      message: `${said} of what: superfat, or alkali in the lye solution?`,
      hint: 'Answer with one of them.',
      candidates: [`${said} superfat`, `${said} lye solution`],
      caution: untilClear,
    };
    const complete = (answer: string): Taken | null => {
      const fat = /\b(super ?fat|fat|left over)\b/i.test(answer);
      const lye = /\b(lye|alkali|solution|strength|concentration)\b/i.test(answer);
      return fat === lye ? null : { text: `${said} ${fat ? 'superfat' : 'lye solution'}`, options: noOptions };
    };
    return { fault, pending: { ...pending, complete } };
  }
  const names = of.map((id) => nameOf(id, catalogue));
  const isFigure = /^\d/.test(said);
  const fault: Fault = {
    code: 'unclear',
    message: isFigure ? `${said} of which one?` : `${capital(inSentence(said))} instead of which one?`,
    hint: `Answer with one of: ${names.join(', ')}.`,
    candidates: names,
    caution: untilClear,
  };
  const complete = (answer: string): Taken | null => {
    const id = chosen(context.reader(), answer, of);
    return id === null ? null : { text: pending.text, options: { target: id } };
  };
  return { fault, pending: { ...pending, complete } };
}

/** Whether the last question can be asked again with these words in it is for its answer to show. */
function toFigure(text: string, { figure }: Session, context: Context): Follow | null {
  const again = figure && retext(context.reader(), figure.text, text, !figure.answered);
  return again && figure ? { kind: 'again', text: again, told: askedAgainLine(figure.at, again) } : null;
}

function toSize(text: string, { recipe, base, newest }: Session, context: Context): Follow | null {
  if (!recipe) return null;
  const wish = readScaleWish(context.reader(), text);
  if (wish && isSize(text, wish.kind))
    return { kind: 'turn', turn: { ...plain, command: 'scale', text, options: noOptions } };
  if (recipe.command !== 'scale' || !base || newest !== 'recipe') return null;
  // "make that 1.5 kg", "cured" after a scaling: the same again from what it started from
  const cured = /^\W*(?:(?:i mean|no|sorry|when|after)\W*)*cured?\b/i.test(text) && /\bbars?\b/i.test(recipe.text);
  const again = cured ? `${recipe.text} cured` : retext(context.reader(), recipe.text, text, false);
  if (
    again === null ||
    (!cured && !/\d/.test(text)) ||
    (!cured && readScaleWish(context.reader(), again) === null) ||
    /%/.test(text)
  )
    return null;
  return { kind: 'turn', turn: { ...plain, command: 'scale', text: again, options: recipe.options, fromBase: true } };
}
