/** Tables with one weight in three units or more: "Tallow | 1.10 lb | 17.64 oz | 500 g". */

import { sameWithin } from '../rows/items.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { hasTab, linesOf } from './columns.ts';

const weighs = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'mass' && token.quantity.unit !== null;

/** Weights that are kept of each row: what is said in two units is compared as everywhere. */
const kept = 2;

/** The tokens without the weights in larger units that say a row's weight once more. */
export function unitColumns(tokens: readonly Token[]): readonly Token[] {
  if (!hasTab(tokens)) return tokens;
  let out: Token[] | null = null;
  for (const { from, to } of linesOf(tokens)) {
    const places: number[] = [];
    for (let k = from; k < to; k++) if (weighs(tokens[k])) places.push(k);
    const figures = places.flatMap((k) => {
      const token = tokens[k];
      return weighs(token) ? [{ k, token, factor: token.quantity.unit?.factor ?? 1 }] : [];
    });
    const values = figures.map(({ token }) => token.quantity.value);
    const isOne = Math.max(...values) - Math.min(...values) <= sameWithin * Math.max(...values);
    if (figures.length <= kept || !isOne || new Set(figures.map(({ factor }) => factor)).size < figures.length)
      continue;
    out ??= [...tokens];
    figures.sort((a, b) => a.factor - b.factor);
    for (const { k, token } of figures.slice(kept)) out[k] = asAside(token, 'the same in another unit');
  }
  return out ?? tokens;
}
