/** What the commands for everyday questions share: the reading of the text, kept for the command that guessing named. */
import type { AlkaliId } from '../catalogue/types.ts';
import { type Asking, type ForQuestions, type Question, readQuestion } from '../reading/question.ts';
import type { Context } from './define.ts';
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
export function asked<K extends Asking>(
  text: string,
  wanted: K,
  context: Context,
): Extract<Question, { kind: K }> | null {
  const question = questionOf(text, wanted, context);
  return question?.kind === wanted ? (question as Extract<Question, { kind: K }>) : null;
}

/** "lye" alone is sodium hydroxide, said aloud. */
export const alkaliOf = (id: AlkaliId | 'unsaid'): AlkaliId => (id === 'unsaid' ? 'naoh' : id);

export const alkaliAssumption = (id: AlkaliId | 'unsaid'): readonly string[] =>
  id === 'unsaid' ? [`I took "lye" as ${alkaliName.naoh}.`] : [];

/** A whole recipe behind the word of an everyday command is a recipe all the same. */
export function recipeInstead(text: string, { read }: Context): string | null {
  const { fats, alkali } = read(text);
  if (fats.length === 0) return null;
  return alkali.length > 0 ? 'check' : null;
}

/** The working of an answer that is one figure. */
export const oneStep = (
  step: Pick<Step, 'name' | 'formula' | 'value' | 'unit' | 'shown' | 'source'> & Partial<Step>,
): Step => ({
  asked: [],
  inputs: [],
  ...step,
});
