/** "Olive oil infused with calendula petals 550 g", "100 g calendula-infused olive oil": the weight is the oil's. */

import { isAny, isMark, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Item } from './items.ts';

const drawn = /^(?:infused|steeped|macerated|infusion)$/;

type Thing = Extract<Item, { kind: 'thing' }>;

/** "With calendula petals in it". */
const isInIt = (tokens: readonly Token[], { to }: Item): boolean =>
  spoken(tokens[to]) === 'in' && spoken(tokens[to + 1]) === 'it';

/** A fat without a weight before it, and what is in it. */
function isDrawnIn(items: readonly Item[], tokens: readonly Token[], k: number): boolean {
  const [before, fat, herb] = [items[k - 1], items[k], items[k + 1]];
  if (fat?.kind !== 'thing' || fat.named.meaning.kind !== 'fat' || herb?.kind !== 'thing') return false;
  if (/^(?:fat|alkali|water|role|stock)$/.test(herb.named.meaning.kind)) return false;
  if (before?.kind === 'amount' && before.to >= fat.from - 1) return false;
  if (isAny(tokens, fat.to, herb.from, isStop)) return false;
  return (
    isAny(tokens, fat.to, herb.from, (one) => drawn.test(spoken(one))) ||
    (spoken(tokens[herb.from - 1]) === 'with' && isInIt(tokens, herb))
  );
}

/** "500 g of this calendula olive oil": one weight stands before both, and none behind. */
function isOnlyWeighed(items: readonly Item[], tokens: readonly Token[], k: number): boolean {
  const [weight, herb, fat, next] = items.slice(k - 2, k + 2);
  if (weight?.kind !== 'amount' || weight.quantity.dim !== 'mass' || !herb || !fat) return false;
  const isBehind = next?.kind === 'amount' && !isAny(tokens, fat.to, next.from, isStop);
  return !isBehind && tokens.slice(weight.to, herb.from).every((one) => one.t === 'word' && one.sort === 'filler');
}

/** "Calendula-infused olive oil": nothing else stands between the herb and its fat. */
function drewIn(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let out: Item[] | null = null;
  items.forEach((fat, k) => {
    const herb = items[k - 1];
    if (fat.kind !== 'thing' || fat.named.meaning.kind !== 'fat' || herb?.kind !== 'thing') return;
    if (/^(?:fat|alkali|water|role|stock)$/.test(herb.named.meaning.kind)) return;
    const between = tokens.slice(herb.to, fat.from).filter((token) => !isMark(token, '-'));
    const isCalled = between.length === 0 && isOnlyWeighed(items, tokens, k);
    if (!isCalled && (between.length !== 1 || !/^(?:infused|steeped|macerated|scented)$/.test(spoken(between[0]))))
      return;
    out ??= [...items];
    out[out.indexOf(fat)] = { ...fat, from: herb.from };
    out.splice(out.indexOf(herb), 1);
  });
  return out ?? items;
}

/** The items with each such fat and what is in it as one. */
export const drawnIn = (items: readonly Item[], tokens: readonly Token[]): readonly Item[] =>
  drewWith(drewIn(items, tokens), tokens);

function drewWith(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((_, k) => isDrawnIn(items, tokens, k));
  const [fat, herb] = [items[at], items[at + 1]];
  if (fat?.kind !== 'thing' || !herb) return items;
  const whole: Thing = { ...fat, to: isInIt(tokens, herb) ? herb.to + 2 : herb.to };
  return drewWith([...items.slice(0, at), whole, ...items.slice(at + 2)], tokens);
}
