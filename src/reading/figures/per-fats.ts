/** "Charcoal 1 tsp per 500 g oils": a rule for a batch of any size, whose weight of fats is not that of this one. */
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import { isIngredient, isRole, isWeight, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

const reach = 12;
const isFats = (token: Token | undefined): boolean =>
  isRole(token, 'total-fats') || /^(?:oils?|fats?|butters?)$/.test(spoken(token));
const isLye = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

/** The fats behind the weight at `k`: "500 g oils", "500 g of the oils"; -1 where none stand. */
function fatsAt(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  while (at - k <= 2 && /^(?:of|the|your|my)$/.test(wordAt(tokens, at))) at++;
  return isFats(tokens[at]) ? at : -1;
}

/** The tokens without such weights; of a rule for the alkali where the post says what all its fats weigh. */
export function perFats(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of signals.figures) {
    const whole = tokens[k];
    if (!isWeight(whole) || !givesAt(signals, k - 1, signal.every)) continue;
    const fats = fatsAt(tokens, k);
    const name = tokens[fats];
    if (!name) continue;
    const { from } = sentenceAt(tokens, k, reach);
    const ruled = tokens.slice(from, k).findLast(isIngredient);
    const isTotalSaid = signals.figures.some((at) => at !== k && isWeight(tokens[at]) && fatsAt(tokens, at) >= 0);
    if (!ruled || ruled.meaning.kind === 'fat' || (isLye(ruled) && !isTotalSaid)) continue;
    out ??= [...tokens];
    out[k] = asAside(whole, 'so much to the fats');
    out[fats] = asFiller(name);
    // "138 g lye per 1000 g oils. How much for 1500 g of oils?"
    for (let at = from; isLye(ruled) && at < k; at++) {
      const part = tokens[at];
      if (isWeight(part)) out[at] = asAside(part, 'so much to the fats');
    }
  }
  return out ?? tokens;
}
