/**
 * What a post sums up itself at the end: "122 g NaOH in 280 g water … another 6 g in 20 g water. Sum: 128 g NaOH, 300 g
 * water". Where each is the sum of what was weighed of it before, the sums count.
 */

import { written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isRole, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isSum, rowsBefore, rowsOf, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('sum sums total totals altogether overall'.split(' '));
const summing =
  /^(?:[-*•=] )?(?:so |in )?(?:the )?(?:sums?|totals?|altogether|overall)(?: (?:in|used|went in|then|is|now))*(?: [:=])? # (?:of )?@(?: (?:, |and |plus |[+/] )+# (?:of )?@)* (?:\. |in (?:all|total) )*$/;

interface Sum {
  readonly row: Weighed;
  readonly parts: readonly Weighed[];
}

/** The things of such a sentence with what was weighed of them before; null where one does not agree. */
function sumsIn(tokens: readonly Token[], { from, to }: Sentence): readonly Sum[] | null {
  const sums = rowsBefore(tokens, to)
    .filter(({ at }) => at >= from)
    .map((row) => ({ row, parts: rowsOf(tokens, tokens[row.at], from) }));
  const agrees = ({ row, parts }: Sum): boolean =>
    parts.length > 0 &&
    isSum(weightAt(tokens, row.figure, row.figure), ...parts.map(({ figure }) => weightAt(tokens, figure, row.figure)));
  return sums.every(agrees) && sums.some(({ parts }) => parts.length > 1) ? sums : null;
}

/** The tokens in which what was summed up counts once. */
export function summedUp(cut: Cut): Heard {
  const { tokens } = cut;
  const tells = (token: Token): boolean => isRole(token, 'total') || cues.has(spoken(token));
  if (!tokens.some(tells)) return { tokens, told: [] };
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures === 0 || sentence.names !== sentence.figures || !summing.test(sentence.text)) continue;
    const sums = sumsIn(tokens, sentence);
    if (sums?.length !== sentence.figures) continue;
    const out = [...tokens];
    const parts = sums.flatMap((sum) => sum.parts);
    for (const { at, figure } of parts) {
      out[figure] = asAside(tokens[figure] as Figure, 'a part of what was said');
      out[at] = asFiller(tokens[at] as Token);
    }
    for (let k = sentence.from; k < sentence.to; k++)
      if (tells(tokens[k] as Token)) out[k] = asFiller(tokens[k] as Token);
    const said = sums.map(({ row }) => written((tokens[row.figure] as Figure).quantity)).join(', ');
    const { from, to } = sentence;
    return { tokens: out, told: [{ text: `I took the sums of the post (${said}).`, gone: [], from, to }] };
  }
  return { tokens, told: [] };
}
