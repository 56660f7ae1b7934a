/**
 * The fats of somebody else's list with one's own alkali: "same fats and same weights here, but mine gets 139 g". What is
 * listed of the alkali gives way.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken, wordOrStop } from '../words/token-is.ts';
import { asFiller, type Figure } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

const own =
  /^(?:the )?same (?:fats|oils|recipe|weights|amounts)\b[^#@?]*\b(?:but|only|just|though) (?:for )?(?:mine|i|we|ours|my (?:batch|own))(?: (?:now|just|only|always))? (?:gets?|got|takes?|took|has|have|uses?|used|put|gave|give) (?:in )?(?<n>#)(?: (?:of )?(?:the |my )?(?<l>@))?/d;
const open = /\b(?:if|would|could|should|maybe|perhaps|or|next time|last time|usually|not)\b/;
/** How far one's own weight of the alkali may lie from the one that is listed, as a share of it. */
const likely = 0.2;

/** The list with the alkali that the writer takes. */
export function sameFats(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => spoken(token) === 'same')) return none;
  for (const sentence of sentencesOf(cut)) {
    const groups = sentence.figures === 0 || open.test(sentence.text) ? null : own.exec(sentence.text)?.indices?.groups;
    if (!groups?.['n']) continue;
    const figure = sentence.tokenAt(groups['n'][0]);
    const name = tokens[groups['l'] ? sentence.tokenAt(groups['l'][0]) : -1];
    const rows = rowsBefore(tokens, sentence.from);
    const near = rows.filter((row) => {
      const listed = weightAt(tokens, row.figure, row.figure);
      return Math.abs(weightAt(tokens, figure, row.figure) - listed) <= likely * listed;
    });
    const [row, ...more] = near;
    const [lye, ...lyes] = rows.filter(({ id }) => id === 'alkali');
    const isLye =
      name === undefined || (isIngredient(name) && (thingOf(name) === 'alkali' || name.meaning.id === 'soda'));
    const [was, now] = [tokens[lye?.figure ?? -1], tokens[figure]];
    if (!row || row !== lye || more.length + lyes.length > 0 || !isLye || !isPlain(was) || !isPlain(now)) continue;
    const out = [...tokens];
    out[row.figure] = { ...was, quantity: now.quantity };
    out[figure] = wordOrStop(now);
    if (name) out[tokens.indexOf(name)] = asFiller(name);
    const text = `I took ${written(now.quantity)} of the alkali, not ${written((was as Figure).quantity)}, as the post says.`;
    const { from, to } = sentence;
    return { tokens: out, told: [{ text, gone: [was.quantity], from, to, settles: true }] };
  }
  return none;
}
