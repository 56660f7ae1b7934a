/**
 * A figure that was read off another batch, and the one that is of this: "lye 137 g. No wait. That was the last one.
 * 134 g today", "137, no, that's yesterday's, 134".
 */
import type { Item } from '../rows/items.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';
import { ofNext } from './of-next.ts';
import { alike, type PutRight, written } from './put-right.ts';

type Amount = Extract<Item, { kind: 'amount' }>;

const thing = '(?:one|batch|time|card|page|recipe|list|sheet|loaf|lot|version|bar|pot|soap|line|row|book)s?';
const when =
  '(?:spring|summer|autumn|fall|winter|january|february|march|april|may|june|july|august|september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday)';
const ofAnother = new RegExp(
  `(?:(?:\\b(?:that|this|it|those)|#)(?: ?'?s| is| was| were| are)?(?: only| all| still)? (?:(?:off|from|on) the (?:label|page|sheet|card|note|lid) )?(?:(?:for|from|in|of|on|with|off) )?(?:(?:the|my|our|a|an|her|his) )?(?:(?:last|previous|old|other|wrong|earlier|former|first|next) (?:week'?s |month'?s |year'?s |${when}'?s )?${thing}(?:'?s)?|last (?:week|month|year|${when})'?s?|yesterday'?s?|another ${thing}(?:'?s)?|(?:in )?${when})|\\bwrong ${thing})(?= (?:though|however|,|\\.|;|!|-|–|—|…|and|so|but|i |we |here|its|it |this|today|now))`,
);
/** All that may stand between that and the figure of this batch. */
const ofThis =
  /^(?:[-,.;:!–—… ]|though|however|oh|ah|no|sorry|wait|and|so|but|here|its|it|is|was|this|one|time|today|now|the|i|we|took|take|have|had|used|use|weighed|put|in|made|did|new|right|should|be|real|actual|for|at|with|mine|says)*$/;
const mostTokens = 26;
/** One of two batches has so many times what the other has, at the most. */
const mostTimes = 2;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isStuff = (item: Item | undefined): boolean => item?.kind === 'thing' && item.named.meaning.kind !== 'role';
/** "68 g … 68": the number of a weight by itself. */
const isNumberOf = ({ dim, value }: Quantity, said: Quantity): boolean =>
  dim === 'bare' && Math.abs(value * (said.unit?.factor ?? 1) - said.value) <= 1e-6 * said.value;
const isSaidAgain = (item: Item | undefined, said: Quantity): boolean =>
  isAmount(item) && isNumberOf(item.quantity, said);
const isRoleAt = (items: readonly Item[], at: number): boolean => items[at]?.kind === 'thing' && !isStuff(items[at]);
const isSameThing = (a: Item | undefined, b: Item | undefined): boolean =>
  a?.kind === 'thing' && b?.kind === 'thing' && isStuff(a) && a.named.meaning.id === b.named.meaning.id;
const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'bare';

/** The words between two tokens, `#` for the figure itself; null where another one or an ingredient stands there. */
function wordsIn(tokens: readonly Token[], from: number, to: number, said: Quantity): string | null {
  if (to <= from || to - from > mostTokens) return null;
  let text = ' ';
  for (const token of tokens.slice(from, to)) {
    const isSaid = token.t === 'quantity' && isNumberOf(token.quantity, said);
    if ((token.t === 'quantity' && !isSaid) || (token.t === 'name' && token.meaning.kind !== 'role')) return null;
    text +=
      token.t === 'line' ? '. ' : token.t === 'aside' || token.t === 'quantity' ? '# ' : `${token.text.toLowerCase()} `;
  }
  return text;
}

/** Looked for first: the long pattern is slow to get ready. */
const pointing = /#|\b(?:that|this|it|those|wrong)/;
const isTold = (text: string): boolean => {
  if (!pointing.test(text)) return false;
  const found = ofAnother.exec(text);
  return found !== null && ofThis.test(text.slice(found.index + found[0].length));
};

/** The figure at `k` is not that of a name of its own. */
function isUnnamed(tokens: readonly Token[], { quantity, to }: Amount): boolean {
  if (quantity.text.endsWith('.')) return true;
  const next = tokens[to];
  const name = next?.t === 'word' && next.sort === 'filler' ? tokens[to + 1] : next;
  return !(name?.t === 'name' && name.meaning.kind !== 'role');
}

/** The items with the figures of this batch in the place of another one's, and what was put right. */
export function wasLast(
  listed: readonly Item[],
  tokens: readonly Token[],
): { items: readonly Item[]; back: PutRight[] } {
  const { items, back: toCome } = ofNext(listed, tokens);
  const back: PutRight[] = [...toCome];
  let out: (Item | null)[] | null = null;
  for (let k = 1; k + 1 < items.length; k++) {
    const item = items[k];
    if (!isAmount(item) || !weighs(item.quantity)) continue;
    let at = k + 1;
    const behind = items[at];
    if (behind?.kind === 'thing' && isStuff(behind) && behind.from - item.to <= 1) at++;
    const from = items[at - 1]?.to ?? item.to;
    // "68 is off the label of the last batch"
    while (isRoleAt(items, at) || isSaidAgain(items[at], item.quantity)) at++;
    // "the lye is 86 g"
    const again = isSameThing(items[at], items[k - 1]) && isAmount(items[at + 1]) ? items[at] : null;
    if (again) at++;
    const next = items[at];
    if (!isAmount(next) || !weighs(next.quantity) || !(isStuff(items[k - 1]) || isStuff(behind))) continue;
    const now = alike(next.quantity, item.quantity);
    const times = now.value / item.quantity.value;
    if (now.dim !== item.quantity.dim || times > mostTimes || times < 1 / mostTimes) continue;
    const text = wordsIn(tokens, from, again?.from ?? next.from, item.quantity);
    const beside = again ? wordsIn(tokens, again.to, next.from, item.quantity) : ' ';
    if (text === null || beside === null || !ofThis.test(beside) || !isTold(text) || !isUnnamed(tokens, next)) continue;
    out ??= [...items];
    out[k] = { ...item, quantity: now, same: null };
    for (let n = k + 1; n <= at; n++) if (!isStuff(items[n]) || items[n] === again) out[n] = null;
    back.push({
      text: `I took ${written(next.quantity)}, not ${written(item.quantity)}, which is of another batch, as the post says.`,
      gone: [item.quantity],
      from: item.from,
      to: next.to,
    });
    k = at;
  }
  return { items: out?.filter((item) => item !== null) ?? items, back };
}
