/** "The lye for this batch is 143 g": what is named before it, and not the size of the batch. */
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isRole,
  isWeight,
  isWord,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

/** Tokens from "for" to the batch, and from there to the weight, at the most. */
const mostWords = 3;
const which = /^(?:the|this|my|our|that|a|one|whole|full|entire|single|new|todays|small|big)$/;
const reach = 24;
const elsewhen = /^(?:last|next|usually|normally|previous|before|now|would|if)$/;
const being = /^(?:is|was|are|were|will|be|comes|came|to|at|weighs|weighed|i|we|took|used|have|has|about)$/;

/** The weight that is said of the batch at `k`; -1 where none is, or it is of something that is named behind it. */
function figureBehind(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  while (at - k <= mostWords && (isMark(tokens[at], ':=') || being.test(wordAt(tokens, at)))) at++;
  const next = isWord(tokens[at + 1], 'of') ? tokens[at + 2] : tokens[at + 1];
  if (at === k + 1 || !isWeight(tokens[at]) || (isIngredient(next) && !endsDotted(tokens[at]))) return -1;
  const { from, to } = sentenceAt(tokens, k, reach);
  return isAny(tokens, from, to, (one) => elsewhen.test(spoken(one))) ? -1 : at;
}

/** The tokens in which such words say nothing of the size of the batch. */
export function forBatch(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 2; k < tokens.length; k++) {
    if (!isRole(tokens[k], 'batch-word') || figureBehind(tokens, k) < 0) continue;
    let at = k - 1;
    while (k - at <= mostWords && which.test(spoken(tokens[at]))) at--;
    if (!isWord(tokens[at], 'for') || !isIngredient(tokens[at - 1])) continue;
    out ??= [...tokens];
    // "the double batch" is still heard
    for (let of = at; of < k; of++) out[of] = asFiller(tokens[of] as Token);
    out[k] = asFiller(tokens[k] as Token, spoken(tokens[k]));
  }
  return out ?? tokens;
}
