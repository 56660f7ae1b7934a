/** "Olive to bring it up to 1000 g", "make up the remainder to 1 kg with olive": what all the fats weigh then. */

import { endsDotted, isFat, isIngredient, isMark, isStop, isWeight, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { type Item, type Named, thingItem } from './items.ts';

const fills =
  /^(?:top|topped|topping|fill|filled|filling|make|made|making|makes|bring|brings|brought|bringing|round|rounds)$/;
/** What may be filled up in one breath. */
const light = /^(?:up|it|that|this|the|rest|remainder|to|a|full|all|them|everything|with|by|using|of|in)$/;
const rest = /^(?:(?:the )?(?:rest|remainder)|balance)$/;
const longestLook = 7;

const spokenAt = (tokens: readonly Token[], k: number): string => {
  const token = tokens[k];
  return token?.t === 'name' && token.meaning.kind === 'role' ? token.text.toLowerCase() : wordAt(tokens, k);
};

/** Where the verb stands that fills up to the figure at `k`, or "the rest"; -1 where neither does. */
function fillsTo(tokens: readonly Token[], k: number): number {
  if (wordAt(tokens, k - 1) !== 'to') return -1;
  let at = k - 2;
  while (k - at <= longestLook && light.test(spokenAt(tokens, at)) && !fills.test(spokenAt(tokens, at))) at--;
  if (fills.test(spokenAt(tokens, at))) return at;
  const named = isFat(tokens[at]) || isFat(tokens[k + 1]);
  return named && [at + 1, at + 2].some((on) => on < k && rest.test(spokenAt(tokens, on))) ? at + 1 : -1;
}

/** A fat without a weight that fills up: right before the verb, or with "with" behind the figure. */
function filler(tokens: readonly Token[], verb: number, k: number): number {
  let behind = k + 1;
  if (/^(?:with|using|by)$/.test(wordAt(tokens, behind)) && !endsDotted(tokens[k])) {
    while (behind - k <= 3 && !isIngredient(tokens[behind]) && !isStop(tokens[behind])) behind++;
    return isFat(tokens[behind]) && !isWeight(tokens[behind + 1]) ? behind : -1;
  }
  // "the rest up to 500 g olive"
  if (!fills.test(spokenAt(tokens, verb)) && isFat(tokens[k + 1])) return isWeight(tokens[k + 2]) ? -1 : k + 1;
  let at = verb - 1;
  while (verb - at <= 3 && (/^(?:to|and|enough|then)$/.test(wordAt(tokens, at)) || isMark(tokens[at], ','))) at--;
  const before = tokens[/^(?:of|the|some)$/.test(wordAt(tokens, at - 1)) ? at - 2 : at - 1];
  return isFat(tokens[at]) && before?.t !== 'quantity' ? at : -1;
}

/** "Topped up with olive until the display said 1000 g", "and olive till I had 1000 g": the fat; -1 where there is none. */
function fillerUntil(tokens: readonly Token[], k: number): number {
  let at = k - 1;
  while (k - at <= longestLook && showing.test(spokenAt(tokens, at))) at--;
  if (!/^(?:until|till|til)$/.test(wordAt(tokens, at)) || !isFat(tokens[at - 1])) return -1;
  const before = tokens[/^(?:of|the|some)$/.test(wordAt(tokens, at - 2)) ? at - 3 : at - 2];
  return before?.t === 'quantity' ? -1 : at - 1;
}

const showing =
  /^(?:the|my|it|i|we|there|was|were|had|display|scales?|said|says|showed|shows|read|reads|stood|at|to|reached|all|came)$/;

/** The fat that fills all up to the figure at token `k`; -1 where none does. */
export function fillerAt(tokens: readonly Token[], k: number): number {
  if (!isWeight(tokens[k])) return -1;
  const verb = fillsTo(tokens, k);
  return verb < 0 ? fillerUntil(tokens, k) : filler(tokens, verb, k);
}

/** The items in which such a figure is the weight of all the fats. */
export function filledUp(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (!items.some((item) => item.kind === 'amount' && fillerAt(tokens, item.from) >= 0)) return items;
  return items.flatMap((item): readonly Item[] => {
    if (item.kind !== 'amount' || fillerAt(tokens, item.from) < 0) return [item];
    const total: Named = { meaning: { kind: 'role', id: 'total-fats' }, text: 'up to', how: 'name', meant: 'total' };
    return [thingItem(total, item.from, item.from), { ...item, total: true }];
  });
}
