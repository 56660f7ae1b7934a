/** "Salve from the leftovers, separate pot, no lye: 60 g almond oil, 20 g beeswax": fats that never meet the lye. */

import { isIngredient, isWeight, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';
import { otherUse } from './other-use.ts';

const made = /^(?:salve|balm|ointment|lotion|cream|candles?|body butter|lip balm|rub|pomade|polish)$/;
const apart = /^(?:separate|another|other|second|different|small|own)$/;
const vessel = /^(?:pot|pan|bowl|saucepan|jar|jug)$/;
const longest = 40;

const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

/** The alkali at `k` is one that is not there. */
function isDenied(tokens: readonly Token[], k: number): boolean {
  const at = /^(?:any|the)$/.test(spoken(tokens[k - 1])) ? k - 2 : k - 1;
  return /^(?:no|without)$/.test(spoken(tokens[at]));
}

/** It names what is made without lye, or another pot. */
const isElse = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .some(
      (_, n) =>
        made.test(spoken(tokens[from + n])) ||
        (vessel.test(spoken(tokens[from + n])) && apart.test(wordAt(tokens, from + n - 1))),
    );

/** The tokens with the weights of such a sentence set aside. */
export function lyeFree(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    // "a lye-free balm"
    const isFree = /^(?:lye|alkali|caustic).free$/.test(wordAt(tokens, k));
    if (!isFree && !(isAlkali(tokens[k]) && isDenied(tokens, k))) continue;
    const { from, to } = sentenceAt(tokens, k, longest);
    if (!isElse(tokens, from, to)) continue;
    out ??= [...tokens];
    for (let at = from; at < to; at++) {
      const token = tokens[at];
      if (isWeight(token)) out[at] = asAside(token, otherUse);
      else if (isIngredient(token))
        out[at] = { t: 'word', from: token.from, to: token.to, text: 'only', sort: 'everyday' };
    }
  }
  return out ?? tokens;
}
