import { wantsVerdict } from '../reading/heat/ask.ts';
import { heatLine } from '../reading/heat/line.ts';
import type { Context } from './define.ts';

/**
 * A whole recipe behind a word that is also a step of one ("Mix 500 g olive oil with …", "Scent: lavender 20 g"): it is
 * there to be checked, unless the text asks what the command answers.
 */
export const recipeInstead =
  (asksHeat: RegExp | null) =>
  (text: string, context: Context): 'check' | null => {
    const { fats, alkali } = context.read(text);
    if (fats.length === 0 || alkali.length === 0) return null;
    const line = heatLine(context.reader(), text);
    return wantsVerdict(line) || (asksHeat !== null && !asksHeat.test(line.text)) ? 'check' : null;
  };
