/**
 * "In the next one the coconut has to be 300 g, not 240": what is put right of a row for a batch to come. The row stays as
 * it is.
 */

import type { Item } from '../rows/items.ts';
import { endsDotted, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { alike, type PutRight, written } from './put-right.ts';

type Amount = Extract<Item, { kind: 'amount' }>;

const toCome =
  /\b(?:(?:next|following|coming) (?:(?:[a-z]+ )?(?:batch|one|ones|time|round|go|soap|loaf|lot|try|attempt|month|week|year|spring|summer|autumn|winter)\b|, )|the one after\b|(?:when|if|once) (?:i|we) (?:ever )?(?:make|do|cook|repeat) (?:it|this|that|them|one) (?:again|next|anew|once more)\b|in future\b|in the future\b|from now on\b|another time\b)/;
const not = /^[,(;–—-]? ?(?:and |so |but )?(?:not|instead of|rather than|no longer|no more)(?: (?:the|only|just))?$/;
const most = 24;
const mostBetween = 5;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';

/** The words of its sentence before a token. */
function before(tokens: readonly Token[], k: number): string {
  let from = k;
  while (from > 0 && k - from < most && !isStop(tokens[from - 1]) && !endsDotted(tokens[from - 1])) from--;
  return wordsOf(tokens, from, k);
}

const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((token) => (token.t === 'sign' ? token.text : spoken(token)))
    .filter((word) => word !== '')
    .join(' ');

/** The items without such a correction, and what was left out. */
export function ofNext(
  items: readonly Item[],
  tokens: readonly Token[],
): { items: readonly Item[]; back: readonly PutRight[] } {
  const back: PutRight[] = [];
  const gone = new Set<Item>();
  const isEqual = (one: Amount, other: Amount): boolean => {
    const [a, b] = [alike(one.quantity, other.quantity), alike(other.quantity, one.quantity)];
    return a.dim === b.dim && Math.abs(a.value - b.value) <= 1e-6 * Math.abs(b.value);
  };
  items.forEach((item, k) => {
    if (!isAmount(item)) return;
    const next = items[items[k + 1]?.kind === 'thing' ? k + 2 : k + 1];
    if (!isAmount(next) || next.from <= item.to || next.from - item.to > mostBetween) return;
    const name = items[k + 1]?.kind === 'thing' ? items[k + 1] : undefined;
    if (!not.test(wordsOf(tokens, name?.to ?? item.to, next.from)) || !toCome.test(before(tokens, item.from))) return;
    // what it is now stands in the list
    if (!items.slice(0, k).some((one) => isAmount(one) && isEqual(next, one))) return;
    gone.add(item).add(next);
    back.push({
      text: `I left out "${written(item.quantity)}, not ${written(next.quantity)}", which the post tells of a batch to come.`,
      gone: [item.quantity, next.quantity],
      from: item.from,
      to: next.to,
    });
  });
  return gone.size === 0 ? { items, back } : { items: items.filter((item) => !gone.has(item)), back };
}
