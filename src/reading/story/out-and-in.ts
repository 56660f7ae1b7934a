/**
 * "Palm out and 250 g lard in", "out with the palm and in with 8 oz of lard": a fat of the list that is not there, and
 * another one with its weight.
 */
import { once } from '../once.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { onlyRow, storyAt } from './story.ts';

const fat = '(?:the |my |all |of )*';
const joint = '(?: ?(?:,|;|and|&|then|so|[+]))+';
const patterns = once(() =>
  [
    `(?<out>F) (?:(?:is|was|came|comes|went|goes) )?out${joint} (?:in )?(?<n>#)? ?(?:of )?${fat}(?<in>[FN])(?: (?<m>#))? (?:(?:is|was|came|comes|went|goes|instead) )*in\\b`,
    `\\bout with ${fat}(?<out>F)${joint} in with ${fat}(?<n>#)? ?(?:of )?${fat}(?<in>[FN])`,
    `(?<n>#) ?(?:of )?${fat}(?<in>[FN]) in${joint} (?:and )?${fat}(?<out>F) out\\b`,
  ].map((pattern) => new RegExp(pattern, 'd')),
);
/** Nobody has done it. */
const open = /\?|\b(?:if|could|would|should|might|next|maybe|perhaps|last (?:time|batch)|how about)\b/;

/** The list with the one for the other. */
export function outAndIn(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => spoken(token) === 'out')) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names < 2 || !/\bout\b.*\bin\b|\bin\b.*\bout\b/.test(sentence.text)) continue;
    const story = storyAt(tokens, sentences, k, 1);
    const at = patterns()
      .map((pattern) => pattern.exec(story.text))
      .find((match) => match !== null)?.indices?.groups;
    const place = (group: string): number => (at?.[group] ? story.tokenAt(at[group][0]) : -1);
    const [out, weight] = [place('out'), Math.max(place('n'), place('m'))];
    const row = out < 0 ? null : onlyRow(tokens, tokens[out]);
    const [name, of] = [tokens[row?.at ?? -1], tokens[place('in')]];
    if (!row || weight < 0 || row.at === out || !isIngredient(name) || !isIngredient(of)) continue;
    if (open.test(sentence.text)) {
      const unheard = rawText(cut.prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 1).trim();
      return { ...none, unheard };
    }
    const now = [...tokens];
    const was = tokens[row.figure] as Figure;
    now[row.figure] = asAside(was, 'taken out');
    now[row.at] = asFiller(name);
    now[out] = asFiller(tokens[out] as typeof name);
    const text = `I left out ${name.text}: the post says that ${of.text} came in its place.`;
    return {
      tokens: now,
      told: [{ text, gone: [was.quantity], from: sentence.from, to: sentence.to, settles: true }],
    };
  }
  return none;
}
