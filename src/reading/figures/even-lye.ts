/** "Lye solution 50 % (half/half by weight)", "lye mixed half and half: 248 g": as much alkali as water, and no cream. */
import { plainQuantity } from '../words/quantities.ts';
import { isIngredient, isMark, isStop } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const even = /^half\s*(?:and|&|n|\/|-|\+)\s*half$/i;
const reach = 8;

/** Nothing but a lye is spoken of up to token `k`, and it is no name that has a weight of its own. */
function isOfLye(tokens: readonly Token[], k: number): boolean {
  if (tokens[k - 1]?.t === 'quantity' || tokens[k + 1]?.t === 'quantity') return false;
  const isApart =
    isMark(tokens[k + 1], ':),') || tokens.slice(Math.max(0, k - 3), k).some((token) => isMark(token, '('));
  if (!isApart) return false;
  for (let at = k - 1; at >= 0 && k - at <= reach && !isStop(tokens[at]); at--) {
    const token = tokens[at];
    if (isIngredient(token)) return /^(?:alkali|stock)$/.test(token.meaning.kind);
  }
  return false;
}

const percentNear = (tokens: readonly Token[], k: number): boolean =>
  tokens
    .slice(Math.max(0, k - reach), k + reach)
    .some((token) => token.t === 'quantity' && /^(?:percent|ratio)$/.test(token.quantity.dim));

export function evenLye(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (const [k, token] of tokens.entries()) {
    if (token.t !== 'name' || token.meaning.kind !== 'liquid' || !even.test(token.text) || !isOfLye(tokens, k))
      continue;
    out ??= [...tokens];
    const { from, to, text } = token;
    out[k] = percentNear(tokens, k)
      ? asFiller(token)
      : {
          t: 'quantity',
          from,
          to,
          quantity: { ...plainQuantity, dim: 'percent', value: 0.5, text, numbers: [], inWords: true },
        };
    // "(NaOH, half/half by weight)": what is in the solution that is named ahead
    const open = out.findLastIndex((one, at) => at < k && isMark(one, '('));
    if (open > 0 && k - open <= 3 && isStockAt(tokens, open)) {
      const name = out[open + 1];
      if (name?.t === 'name') out[open + 1] = asFiller(name);
    }
  }
  return out ?? tokens;
}

/** A solution is named ahead of a bracket, or its strength. */
const isStockAt = (tokens: readonly Token[], open: number): boolean =>
  [open - 1, open - 2].some((at) => {
    const token = tokens[at];
    return isIngredient(token) && token.meaning.kind === 'stock';
  });
