/** A correction of the last recipe, as a request of its own. */
import type { Fault } from '../../answer/types.ts';
import { untilClear } from '../../commands/cautions.ts';
import type { Context, Taken } from '../../commands/define.ts';
import { takeOptions } from '../../commands/options.ts';
import { capital, inSentence, nameOf } from '../../commands/phrases.ts';
import { inAskedOrder, mostPressing } from '../../commands/questions.ts';
import { readingOf } from '../../commands/recipe-reading.ts';
import { type Change, type Correction, readCorrection } from '../../reading/amend/amend.ts';
import { amended } from '../../reading/amend/apply.ts';
import { both, chosen, type Settled, settle } from '../../reading/amend/settle.ts';
import type { RecipeReading } from '../../reading/index.ts';
import type { Doubt } from '../../reading/reading.ts';
import type { Pending, RecipeTurn, Session } from './store.ts';
import { againLine, correctedLine, optionsLine } from './told.ts';
import { type Follow, noOptions, plain } from './turn.ts';

/** A recipe judged or reckoned once more, as it stands. */
export const once = (recipe: RecipeTurn, told: string): Extract<Follow, { kind: 'turn' }> => ({
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
export function toJudge(text: string, recipe: RecipeTurn, context: Context): Follow | null {
  if (!/^\W*(?:check|lye)\b\W*(?:it|this|that|again|mine|(?:my|the) recipe)?\W*$/i.test(text)) return null;
  const { kept, at } = recipe;
  const reading = readingOf(kept.recipe, kept.reading, 1);
  const { turn } = once(recipe, againLine(at, context));
  return { kind: 'turn', turn: { ...turn, command: /check/i.test(text) ? 'check' : 'lye', read: () => reading } };
}

/** The answer to a question about a correction. */
export function toCorrection(text: string, pending: Pending, session: Session, context: Context): Follow | null {
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

export function toRecipe(text: string, { recipe, newest }: Session, context: Context): Follow | null {
  if (!recipe) return null;
  const chosen = toOptions(text, recipe, context);
  if (chosen) return chosen;
  const correction = readCorrection(context.reader(), text, recipe.kept.reading);
  // a lone figure is about what was said last, and that was another question
  const apart = newest === 'figure' && !(correction?.kind === 'changes' && correction.named);
  return correction && !apart ? corrected(correction, text, null, recipe, context) : null;
}

/** "by=weight", "by weight", "step=0.1g": options of the last request, and nothing else. */
function toOptions(text: string, recipe: RecipeTurn, context: Context): Follow | null {
  const { commands } = context;
  const command = commandFor(recipe, [], recipe.kept.reading);
  const table = commands.find(({ id }) => id === command)?.options ?? {};
  const taken = takeOptions(text.replace(/^\W*by (weight|demand)\W*$/i, 'by=$1'), table);
  if (!taken.ok || taken.value.text.trim() !== '' || Object.keys(taken.value.options).length === 0) return null;
  const { turn } = once(recipe, optionsLine(recipe.at, text, context));
  return { kind: 'turn', turn: { ...turn, options: { ...turn.options, ...taken.value.options } } };
}

/** Options that a change overrules. */
export function without(options: Taken['options'], changes: readonly Change[]): Taken['options'] {
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
      case 'swap':
        return change.from.kind === 'water' ? water : [];
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
  // water that was reckoned and not written can be replaced, too
  const wet = changes.some((change) => change.kind === 'swap' && change.from.kind === 'water');
  const before = wet ? { ...recipe.kept.reading, waterGrams: recipe.kept.recipe.waterGrams } : recipe.kept.reading;
  const reading = amended(before, changes, given, context.reader().lexicon);
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

export function settleOne(text: string, doubts: readonly Doubt[], context: Context): Settled | null {
  for (const doubt of inAskedOrder(doubts)) {
    const settled = settle(context.reader(), doubt, text);
    if (settled) return settled;
  }
  return null;
}
