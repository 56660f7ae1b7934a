import type { Context } from '../commands/define.ts';
import { questionOf } from '../commands/everyday.ts';
import { heatQuestion, speaksOfHeat } from '../reading/heat-ask.ts';

/** Asked for before the work: what to wear, to mix in, to do with a spill. */
const precautions =
  /\b(?:gloves?|goggles|face ?shield|apron|mask|protective|precautions?|ventilat\w+|fumes?|spills?|store|storage|hazard\w*|danger\w*|what (?:to|do i|should i) wear|schutz\w*|handschuhe|lunettes|gants|guantes|gafas)\b/i;

/** What a text without a command word asks for; null where nothing is recognised. */
export function guess(text: string, context: Context): string | null {
  const { read, reader } = context;
  if (/^\W*(hi|hello|hey|help|\?+|what can you do|start)\W*$/i.test(text)) return 'help';
  // "When are my oils at 45 °C" is no question about the melting points of fats.
  const warm = speaksOfHeat(text) ? heatQuestion(reader(), text, read(text)) : null;
  if (warm) return warm;
  const question = questionOf(text, null, context);
  if (question && question.kind !== 'lye') return question.kind;
  const reading = read(text);
  const scent = speaksOfHeat(text) ? null : heatQuestion(reader(), text, reading);
  if (scent) return scent;
  const { fats, after, alkali, doubts } = reading;
  if (alkali.length > 0) return 'check';
  if (fats.length > 0 || after.length > 0 || doubts.length > 0) return 'lye';
  if (precautions.test(text)) return 'safety';
  return question === null ? null : 'lye';
}
