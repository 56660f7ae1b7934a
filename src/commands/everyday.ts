/** What the commands for everyday questions share: the reading of the text, kept for the command that guessing named. */

import type { Result } from '../answer/types.ts';
import type { AlkaliId } from '../catalogue/types.ts';
import { type Asking, type ForQuestions, type Question, readQuestion } from '../reading/question/question.ts';
import { untilClear } from './cautions.ts';
import type { Context, Refusal, Risk, Said } from './define.ts';
import type { Step } from './kept.ts';
import { alkaliName } from './phrases.ts';

interface Seen {
  readonly text: string;
  readonly wanted: Asking | null;
  readonly question: Question | null;
}

const last = new WeakMap<ForQuestions, Seen>();

/** The question of a text; the last one is kept, so that guessing a command costs no second reading. */
export function questionOf(text: string, wanted: Asking | null, context: Context): Question | null {
  const reader = context.reader();
  const seen = last.get(reader);
  if (seen?.text === text && (seen.wanted === wanted || (wanted !== null && seen.question?.kind === wanted)))
    return seen.question;
  const question = readQuestion(reader, text, wanted);
  last.set(reader, { text, wanted, question });
  return question;
}

/** The question of one command. */
function asked<K extends Asking>(text: string, wanted: K, context: Context): Extract<Question, { kind: K }> | null {
  const question = questionOf(text, wanted, context);
  return question?.kind === wanted ? (question as Extract<Question, { kind: K }>) : null;
}

/** Runs an everyday command: its question is answered, or what is missing asked. */
export const answering =
  <R extends Risk, K extends Asking>(
    own: K,
    answered: (question: Extract<Question, { kind: K }>, context: Context, text: string) => Said<R> | Refusal<R>,
    missing: (context: Context) => Refusal<R>,
  ) =>
  ({ text }: { readonly text: string }, context: Context): Result<Said<R>, Refusal<R>> => {
    const question = asked(text, own, context);
    const outcome = question ? answered(question, context, text) : missing(context);
    return 'lead' in outcome ? { ok: true, value: outcome } : { ok: false, fault: outcome };
  };

/** "lye" alone is sodium hydroxide, said aloud. */
export const alkaliOf = (id: AlkaliId | 'unsaid'): AlkaliId => (id === 'unsaid' ? 'naoh' : id);

export const alkaliAssumption = (id: AlkaliId | 'unsaid'): readonly string[] =>
  id === 'unsaid' ? [`I took "lye" as ${alkaliName.naoh}.`] : [];

const namesAlkali = /\b(?:lye|naoh|koh|caustic|hydroxide|potash)\b/i;

/**
 * Behind the word of an everyday command may stand another question ("convert 140 g NaOH to KOH") or a whole recipe
 * ("fat 500 g lard, alkali 70 g NaOH"): the command that is meant.
 */
export const elsewhere =
  (own: Asking | 'lye') =>
  (text: string, context: Context): string | null => {
    // what guessing has just read need not be doubted
    const seen = last.get(context.reader());
    if (seen?.text === text && seen.question?.kind === own) return null;
    // "lye: how much caustic soda for 2 kg of soap": the word is no second alkali
    const isNamed = own === 'lye' && namesAlkali.test(text) && context.read(text).fats.length === 0;
    const question = isNamed
      ? questionOf(text, null, context)
      : (questionOf(`${own} ${text}`, null, context) ?? questionOf(`${own}:${text}`, null, context));
    if (question) return question.kind === own || question.kind === 'lye' ? null : question.kind;
    if (own === 'lye') return null;
    const { fats, alkali } = context.read(text);
    return fats.length > 0 && alkali.length > 0 ? 'check' : null;
  };

/** The working of an answer that is one figure. */
export const oneStep = (
  step: Pick<Step, 'name' | 'formula' | 'value' | 'unit' | 'shown' | 'source'> & Partial<Step>,
): Step => ({
  asked: [],
  inputs: [],
  ...step,
});

/** Answer or refusal of a question about an amount of alkali. */
export type CausticOutcome = Said<'caustic'> | Refusal<'caustic'>;

/** A question back, where a part is missing. */
export const needs = (message: string, hint: string): Refusal<'caustic'> => ({
  code: 'unclear',
  message,
  hint,
  candidates: [],
  caution: untilClear,
});

/** What no amount can be. */
export const cannot = (message: string, hint: string): Refusal<'caustic'> => ({
  ...needs(message, hint),
  code: 'impossible',
});
