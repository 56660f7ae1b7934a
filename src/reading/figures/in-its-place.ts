/** Water, milk or beer that another liquid stands in the place of: `goat milk, frozen: 260 g, instead of water`. */
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import { isIngredient, isMark, isMeasured, isStop, wordAt } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const saying = /^(?:instead|rather|place|lieu|replac(?:es|ed|ing)|substitut(?:es|ing))$/;
const between = /^(?:of|than|the|all|any|my|usual|plain|for)$/;

/** Tokens before the saying that are looked at. */
const longestLook = 14;

const isLiquid = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  isIngredient(token) && (token.meaning.kind === 'water' || token.meaning.kind === 'liquid');

/** Another liquid stands before `k`, in the same sentence: with its amount, or, as `weighed` says, without. */
function isBefore(tokens: readonly Token[], k: number, gone: string, without: boolean): boolean {
  let weighed = false;
  for (let at = k - 1; at >= 0 && k - at <= longestLook && !isStop(tokens[at]); at--) {
    const token = tokens[at];
    if (isMeasured(token) && !token.quantity.text.endsWith('.')) weighed = true;
    else if (isLiquid(token) && token.meaning.id !== gone) return without !== (weighed || isMeasured(tokens[at - 1]));
    else if (isIngredient(token)) return false;
  }
  return false;
}

/** The tokens without the names of what another liquid took the place of, where no amount of their own stands there. */
export function inItsPlace(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    if (!givesAt(signals, k, signal.retelling) || !saying.test(wordAt(tokens, k))) continue;
    let at = k + 1;
    while (at - k <= 4 && between.test(wordAt(tokens, at))) at++;
    const gone = tokens[at];
    // "goat milk, frozen, instead of water: 260 g" weighs the milk
    const figure = isMark(tokens[at + 1], ':=,(-–') ? at + 2 : at + 1;
    if (!isLiquid(gone) || !isBefore(tokens, k, gone.meaning.id, isMeasured(tokens[figure]))) continue;
    out ??= [...tokens];
    out[at] = asFiller(gone);
  }
  return out ?? tokens;
}
