/**
 * A weight beside a vessel that is not the vessel's size: "226 g from the new tub", "only 40 g left in the jar", "the other
 * jar 290 g". What it is of, nobody has said.
 */
import type { Item } from '../rows/items.ts';
import { isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

type Span = Pick<Item, 'from' | 'to'>;

const outOf =
  /^(?:(?:more|left|over|still|remaining|there|of it|fresh) )*(?:from|out of|left in|in|into|of) (?:the|my|this|that|our|its)(?: (?:new|old|other|opened|same|first|second|fresh|big|small|little))* $/;
const another =
  /\b(?:another|(?:the|a|my) (?:second|other|third|next|smaller|bigger|new|old))(?: (?:small|little|big|glass|plastic))* $/;
const held = /^(?:(?:holds?|held|had|has|was|is|with|at|gave|of|only|just|about|another) )*$/;

/** The figure is of what came out of the vessel, or of what another one holds; a figure that is said twice is known. */
export function isTakenOut(tokens: readonly Token[], amount: Span, vessel: Span, items: readonly Item[]): boolean {
  const words = (from: number, to: number): string =>
    tokens
      .slice(from, to)
      .map((one) => `${spoken(one)} `)
      .join('');
  const [from, to] = amount.from < vessel.from ? [amount.to, vessel.from] : [vessel.to, amount.from];
  if (tokens.slice(from, to).some(isStop) || isSaidAgain(amount, items)) return false;
  if (amount.from < vessel.from) return outOf.test(words(from, to));
  return held.test(words(from, to)) && another.test(words(Math.max(0, vessel.from - 4), vessel.from));
}

const isSaidAgain = (amount: Span, items: readonly Item[]): boolean => {
  const own = items.find(({ from }) => from === amount.from);
  return items.some(
    (one) =>
      one.kind === 'amount' && own?.kind === 'amount' && one !== own && one.quantity.value === own.quantity.value,
  );
};
