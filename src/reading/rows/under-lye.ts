/** "Lye: 240 g of my 50 % NaOH solution": the lye is what the row is about, and the solution is what is weighed. */

import type { Token } from '../words/tokens.ts';
import type { Item } from './items.ts';

const isKind = (item: Item | undefined, kind: string): boolean =>
  item?.kind === 'thing' && item.named.meaning.kind === kind;
const isOf = (item: Item | undefined, dim: string): boolean => item?.kind === 'amount' && item.quantity.dim === dim;

/** Nothing but small words and signs within a line stand between. */
const isClose = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens
    .slice(from, to)
    .every(
      (token) => (token.t === 'word' && token.sort === 'filler') || (token.t === 'sign' && /^[:=-]$/.test(token.text)),
    );

function isHeading(items: readonly Item[], k: number, tokens: readonly Token[]): boolean {
  const [alkali, weight, next, last] = items.slice(k, k + 4);
  if (!isKind(alkali, 'alkali') || !isOf(weight, 'mass')) return false;
  const stock = isKind(next, 'stock') ? next : isOf(next, 'percent') && isKind(last, 'stock') ? last : null;
  if (!stock || !alkali || !weight || !next) return false;
  return (
    isClose(tokens, alkali.to, weight.from) &&
    isClose(tokens, weight.to, next.from) &&
    (stock === next || isClose(tokens, next.to, stock.from))
  );
}

export function underLye(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (!items.some((item) => isKind(item, 'stock'))) return items;
  const rest = items.filter((_, k) => !isHeading(items, k, tokens));
  return rest.length < items.length ? rest : items;
}
