/** "She had put the hydroxide in. I put my own 66 g in too, so there's two lots of it": the lye of the list twice. */

import { withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { storyAt } from './story.ts';
import { hush, isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set('twice lots both double doses'.split(' '));
const many =
  '(?:twice|(?:two|double|both|2|#|…) (?:lots|doses|portions)|both (?:are|went|is|of (?:them|those|it)) [^?.#]{0,16}in|both in|double(?= [^?.]{0,12}L))';
const verb = '(?:put|tipped|poured|stirred|added|threw|dissolved|mixed)';
/** Somebody put it in before. */
const first = new RegExp(
  `\\b(?:${verb}|weighed|had) (?:(?:in|the|her|his|their|my|our|#|of|all) )*(?:[LX]|hers|his|theirs|mine)\\b`,
);
const second = new RegExp(
  `\\b${verb} (?:in )?(?:my own|my|mine ,|another|the same|a second|our own|a further) (?<again>#) (?:of )?(?:L |it |that )?(?:in )?(?:too|as well|again|on top|also|[.,;!]|$)`,
  'd',
);
const inTwo = new RegExp(`(?<![a-z])${many}\\b`);
const open =
  /\b(?:may|might|maybe|perhaps|not sure|unsure|if|would|could|should|probably|says|said|claims|nearly|almost|next|last time|back out|took|scooped|spooned|poured (?:it |that )?away|threw (?:it |that )?(?:away|out)|binned|half|some of)\b/;
const doubted = new RegExp(`\\b(?:may|might|could|maybe|perhaps|probably)\\b[^?]{0,30} ${many}\\b`);

const isLye = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

/** Sentences before and behind in which it is told. */
const [before, behind] = [2, 4];

function lyeRow(tokens: readonly Token[], end: number): Weighed | null {
  const [row, ...more] = rowsBefore(tokens, end).filter(({ at }) => isLye(tokens[at]));
  return row ?? more[0] ?? null;
}

/** The list with its lye twice; `unheard` where nobody is sure that it is. */
export function inTwice(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => 'text' in token && cues.has(token.text.toLowerCase()))) return none;
  const sentences = sentencesOf(cut);
  const row = lyeRow(tokens, tokens.length);
  const weight = tokens[row?.figure ?? -1];
  if (!row || !isPlain(weight)) return none;
  for (const [k, sentence] of sentences.entries()) {
    if (doubted.test(sentence.text) && first.test(storyAt(tokens, sentences, Math.max(0, k - before), before + 1).text))
      return {
        ...none,
        unheard: rawText(cut.prims, tokens[sentence.from]?.from ?? 0, tokens[sentence.to - 1]?.to ?? 0),
      };
    const own = storyAt(tokens, sentences, k, 1);
    const place = second.exec(own.text)?.indices?.groups?.['again']?.[0];
    if (place === undefined || sentence.from <= row.figure) continue;
    const figure = own.tokenAt(place);
    if (!isSum(weightAt(tokens, row.figure, row.figure), weightAt(tokens, figure, row.figure))) continue;
    const from = Math.max(0, k - before);
    const told = storyAt(tokens, sentences, from, k - from + behind).text;
    const said = inTwo.exec(storyAt(tokens, sentences, k, behind).text);
    if (!said || !first.test(told) || open.test(told)) continue;
    const out = [...tokens];
    // what was put in first is said once more
    for (let at = row.figure + 1; at < sentence.to; at++) {
      const one = out[at];
      const isAgain = isPlain(one) && isSum(weight.quantity.value, weightAt(out, at, row.figure));
      if (isAgain) hush(out, at, Math.min(at + 3, sentence.to), 'said before', (n) => !(n === at || isLye(out[n])));
    }
    out[row.figure] = {
      ...weight,
      quantity: { ...withValue(weight.quantity, 2 * weight.quantity.value), numbers: weight.quantity.numbers },
    };
    const text = `I took the lye twice, ${written(withValue(weight.quantity, 2 * weight.quantity.value))}, as the post says.`;
    const back = {
      text,
      gone: [weight.quantity],
      from: sentence.from,
      to: (sentences[k + behind - 1] ?? sentence).to,
      settles: true,
    } as const;
    return { tokens: out, told: [back], unheard: null };
  }
  return none;
}
