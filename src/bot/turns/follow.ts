/**
 * Whether a text follows what was said before, and what it then asks: the answer to a question back, a correction of
 * the last recipe, the last question with something else in it, or another size. Null where it stands alone.
 */
import type { Context } from '../../commands/define.ts';
import { corrects } from '../../reading/amend/amend.ts';
import { retext } from '../../reading/amend/retext.ts';
import { readScaleWish } from '../../reading/question/scale-target.ts';
import { once, toJudge, toRecipe } from './correct.ts';
import { asksAgain, isSize, takesBack } from './next.ts';
import { toPending } from './pending.ts';
import type { Pending, Session } from './store.ts';
import { againLine, askedAgainLine } from './told.ts';
import { type Follow, noOptions, plain } from './turn.ts';

/** A post of its own waits, not a question about the recipe before it. */
const isPost = ({ command, corrects, doubts }: Pending): boolean =>
  !corrects && (doubts.length > 0 || command === 'check' || command === 'lye');

/** Longer texts stand alone. */
const longest = 400;

/** What a text may follow: a question back alone, where its first word is that of a command, or anything. */
export type Follows = 'question' | 'anything';

/** A longer text than this that begins with the word of a command is no answer. */
const longestAnswer = 40;

export function follow(
  text: string,
  session: Session,
  context: Context,
  at: number,
  follows: Follows = 'anything',
): Follow | null {
  if (follows === 'question')
    return session.pending && text.length <= longestAnswer ? toPending(text, session.pending, session, context) : null;
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
  const judged = recipe && toJudge(text, recipe, context);
  if (judged) return judged;
  if (recipe && asksAgain(text)) return once(recipe, againLine(recipe.at, context));
  if (before && takesBack(text)) return once(before, againLine(before.at, context));
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
  return again && figure ? { kind: 'again', text: again, told: askedAgainLine(figure.at, again, context) } : null;
}

/** The last question with these words in it; whether that can be asked is for its answer to show. */
function toFigure(text: string, { figure }: Session, context: Context): Follow | null {
  const again = figure && retext(context.reader(), figure.text, text, !figure.answered);
  return again && figure ? { kind: 'again', text: again, told: askedAgainLine(figure.at, again, context) } : null;
}

function toSize(text: string, { recipe, base, newest }: Session, context: Context): Follow | null {
  if (!recipe) return null;
  const wish = readScaleWish(context.reader(), text);
  // "20 bars" after "12 bars of 100 g" keeps their weight
  const again =
    recipe.command === 'scale' && base && newest === 'recipe'
      ? retext(context.reader(), recipe.text, text, false)
      : null;
  const partly = wish?.kind === 'bars-of-what' && again !== null;
  if (wish && !partly && isSize(text, wish.kind))
    return { kind: 'turn', turn: { ...plain, command: 'scale', text, options: noOptions } };
  if (recipe.command !== 'scale' || !base || newest !== 'recipe') return null;
  // "make that 1.5 kg", "cured" after a scaling: the same again from what it started from
  const cured = /^\W*(?:(?:i mean|no|sorry|when|after)\W*)*cured?\b/i.test(text) && /\bbars?\b/i.test(recipe.text);
  const anew = cured ? `${recipe.text} cured` : /\d/.test(text) && !/%/.test(text) ? again : null;
  if (anew === null || readScaleWish(context.reader(), anew) === null) return null;
  return { kind: 'turn', turn: { ...plain, command: 'scale', text: anew, options: recipe.options, fromBase: true } };
}
