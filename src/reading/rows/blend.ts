/** Fats that were mixed beforehand in stated shares, and how much was taken of the mixture. */

import { withValue } from '../taken-back/put-right.ts';
import type { Token } from '../words/tokens.ts';
import { type Item, thingItem } from './items.ts';
import { sharedRun } from './parallel.ts';

type Thing = Extract<Item, { kind: 'thing' }>;

const wordAt = (token: Token | undefined): string =>
  token?.t === 'word' ? token.text : token?.t === 'name' ? token.text.toLowerCase() : '';

/** "of the blend", "out of the bucket", "from my mix", "of that". */
function isOfBlend(tokens: readonly Token[], to: number): boolean {
  const of = wordAt(tokens[to]) === 'out' ? to + 1 : to;
  const word = wordAt(tokens[of]);
  if (word !== 'of' && word !== 'from') return false;
  const named = /^(the|my|this|that|our)$/.test(wordAt(tokens[of + 1])) ? tokens[of + 2] : tokens[of + 1];
  const pot = named?.t === 'name' && named.meaning.kind === 'role' && named.meaning.id === 'pot';
  return pot || /^(blend|oil blend|mix|mixture|oil mix|masterbatch|premix|that|it|bucket|oils?)$/.test(wordAt(named));
}

const isBlend = ({ named: { meaning, text } }: Thing): boolean =>
  meaning.kind === 'ambiguous' && /\b(blend|blended|mix|mixed)\b/i.test(text);

const isNear = (a: Item, b: Item): boolean => Math.max(a.from, b.from) - Math.min(a.to, b.to) <= 3;

/** "500 g from the bucket, plus 400 g olive": beside fats with their own weights, each of the blend has its part of what was taken. */
function besideOthers(items: readonly Item[], taken: Item): readonly Item[] | null {
  const from = items.findIndex((_, k) => sharedRun(items, k) !== null);
  const to = sharedRun(items, from) ?? from;
  const isMass = (one: Item | undefined): boolean =>
    one?.kind === 'amount' && one.quantity.dim === 'mass' && one !== taken;
  const isOther = (one: Item, k: number): boolean =>
    one.kind === 'thing' && one.named.meaning.kind === 'fat' && (isMass(items[k - 1]) || isMass(items[k + 1]));
  if (taken.kind !== 'amount' || !items.some((one, k) => (k < from || k >= to) && isOther(one, k))) return null;
  const whole = taken.quantity;
  const isFirst = (k: number): boolean => k < from + 2;
  return items.flatMap((item, k): readonly Item[] => {
    if (item === taken || (item.kind === 'thing' && isBlend(item))) return [];
    if (item.kind === 'thing' || k < from || k >= to) return [item];
    const { quantity } = item;
    const numbers = isFirst(k) ? [...whole.numbers, ...quantity.numbers] : quantity.numbers;
    return [{ ...item, quantity: { ...withValue(whole, whole.value * quantity.value), numbers }, pure: false }];
  });
}

/** Where shares of fats make the whole: the blend is what these fats are called, and what is taken of it their weight. */
export function asBlend(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const taken: Item[] = [];
  let named = false;
  for (const item of items)
    if (item.kind === 'thing') named ||= isBlend(item);
    else if (item.quantity.dim === 'mass' && isOfBlend(tokens, item.to)) taken.push(item);
  if ((taken.length === 0 && !named) || !items.some((_, k) => sharedRun(items, k) !== null)) return items;
  const [only] = taken;
  const beside = only && taken.length === 1 ? besideOthers(items, only) : null;
  if (beside) return beside;
  const roleAt = (id: 'supply' | 'total-fats', at: number): Thing =>
    thingItem({ meaning: { kind: 'role', id }, text: 'fats', how: 'name', meant: 'total fats' }, at, at);
  const isBlendNear = (one: Item | undefined, item: Item): boolean =>
    one?.kind === 'thing' && isBlend(one) && isNear(one, item);
  const out: Item[] = [];
  for (let k = 0; k < items.length; k++) {
    const item = items[k];
    if (!item) break;
    if (item.kind === 'thing') {
      if (!isBlend(item)) out.push(item);
    } else if (taken.length === 1 && item === only) out.push({ ...item, total: true }, roleAt('total-fats', item.to));
    // "the blend, 10 kg of it": what there is, of which so much is taken, or all of it
    else if (item.quantity.dim === 'mass' && (isBlendNear(items[k - 1], item) || isBlendNear(items[k + 1], item)))
      out.push({ ...item, total: !only }, roleAt(only ? 'supply' : 'total-fats', item.to));
    else out.push(item);
  }
  return out;
}
