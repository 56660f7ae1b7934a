import type { Result } from '../answer/types.ts';
import { check } from './check.ts';
import type { Context, Refusal, Said, Taken } from './define.ts';
import type { Kept } from './kept.ts';
import { lye } from './lye.ts';
import { whichRecipe } from './questions.ts';

/** What a text's own recipe comes to: judged where it has alkali, else reckoned. */
export const reckoned = (text: string, options: Taken['options'], context: Context): Result<Said, Refusal> =>
  (context.read(text).alkali.length > 0 ? check : lye).run({ text, options }, context);

/** The recipe of a text, or the last one where it holds none. */
export function recipeIn(
  text: string,
  options: Taken['options'],
  example: string,
  context: Context,
): Result<Kept, Refusal<'caustic'>> {
  const { fats, after, alkali, doubts } = context.read(text);
  if (fats.length + after.length + alkali.length + doubts.length === 0) {
    const last = context.last.recipe;
    return last ? { ok: true, value: last } : { ok: false, fault: whichRecipe(example) };
  }
  const ran = reckoned(text, options, context);
  // both commands are caustic, so that what they refuse carries its caution
  if (!ran.ok) return { ok: false, fault: ran.fault as Refusal<'caustic'> };
  if (!ran.value.kept) throw new Error('a reckoned recipe was not kept');
  return { ok: true, value: ran.value.kept };
}
