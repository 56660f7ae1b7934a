/** "The lye, weighed on the kitchen scale: 88 g, dissolved in 200 ml water": what is dissolved is the alkali. */

import { isMark, isStop, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Item } from './items.ts';

/** Items between the alkali and its weight, and tokens between the two weights, at the most. */
const mostBetween = 2;
const mostWords = 5;

const isOf = (item: Item | undefined, kind: string): boolean =>
  item?.kind === 'thing' && item.named.meaning.kind === kind;
const isTool = (item: Item | undefined): boolean =>
  item?.kind === 'thing' && item.named.meaning.kind === 'role' && /^(?:scale|pot)$/.test(item.named.meaning.id);
const isMeasure = (item: Item | undefined): boolean =>
  item?.kind === 'amount' && (item.quantity.dim === 'mass' || item.quantity.dim === 'volume');

/** ", dissolved in", "stirred into". */
function isInto(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from > mostWords || !/^(?:in|into)$/.test(wordAt(tokens, to - 1))) return false;
  return tokens.slice(from, to).every((token) => token.t === 'word' || isMark(token, ','));
}

/** The items in which such a weight stands right behind the alkali. */
export function dissolvedInWater(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let k = 2; k + 2 < items.length; k++) {
    const [weight, volume, water] = [items[k], items[k + 1], items[k + 2]];
    if (!isMeasure(weight) || !isMeasure(volume) || !isOf(water, 'water') || !isTool(items[k - 1])) continue;
    if (!weight || !volume || !water || water.from - volume.to > 1 || !isInto(tokens, weight.to, volume.from)) continue;
    let at = k - 1;
    while (isTool(items[at]) && k - at <= mostBetween) at--;
    const [alkali, before] = [items[at], items[at - 1]];
    if (!alkali || !isOf(alkali, 'alkali') || tokens.slice(alkali.to, weight.from).some(isStop)) continue;
    if (isMeasure(before) && before && alkali.from - before.to <= 1) continue;
    return [...items.slice(0, at), { ...alkali, to: weight.from }, ...items.slice(k)];
  }
  return items;
}
