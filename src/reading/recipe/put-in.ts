/** A bare figure that went into the pot by its words: "lye 80 g, but I used 90", "90 went in". Something of the list weighs as much. */
import { type Item, sameWithin } from '../rows/items.ts';
import { spoken, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Row } from './rows.ts';

const puts = /^(?:used|put|poured|weighed|added|tipped|measured|dissolved)$/;
const lightly = /^(?:in|out|up|only|about|just|like|roughly|around|maybe|of|it|really|actually)$/;
const went = /^(?:went|got|goes|ended|gone|landed)$/;
const mostBetween = 3;
/** How far a weight may be off that it was meant for, as a factor. */
const mostOff = 2;

export function isPutIn(
  tokens: readonly Token[],
  { from, to, quantity }: Extract<Item, { kind: 'amount' }>,
  rows: readonly Row[],
): boolean {
  if (quantity.dim !== 'bare' || quantity.value <= 0) return false;
  let at = from - 1;
  while (from - at <= mostBetween && lightly.test(wordAt(tokens, at))) at--;
  const isPut = puts.test(wordAt(tokens, at));
  const isGone = went.test(wordAt(tokens, to)) && /^(?:in|into|up)$/.test(spoken(tokens[to + 1]));
  if (!isPut && !isGone) return false;
  const said = rows.flatMap(({ amount }) => (amount ? [amount.value / (amount.unit?.factor ?? 1)] : []));
  const isNear = (one: number): boolean => one > quantity.value / mostOff && one < quantity.value * mostOff;
  return said.some(isNear) && !said.some((one) => Math.abs(one - quantity.value) <= sameWithin * one);
}
