/**
 * A figure that its writer put right in the same breath: "60 g, no wait, 66 g NaOH", "60 g NaOH, sorry, I mean 66 g".
 * The later one counts, and the answer says so.
 */
import type { Item } from './items.ts';
import type { Quantity } from './quantities.ts';
import type { Token } from './tokens.ts';

export interface PutRight {
  readonly gone: Quantity;
  readonly stays: Quantity;
}

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

/** Words that take a figure back, in a few languages. */
const takesBack =
  /\b(?:(?:no|oh) wait|wait no|sorry|i mean|i meant|i mean to say|make that|make it|scratch that|strike that|correction|oops|or rather|nein|quatsch|pardon|plutot|perdon|mejor dicho)\b/;
/** All that may stand between the two figures. */
const beside =
  /^(?:no|oh|wait|sorry|i|mean|meant|to|say|make|that|it|its|is|was|should|be|scratch|strike|correction|oops|or|rather|actually|ehm|um|er|hang|on|my|bad|nein|quatsch|pardon|plutot|perdon|mejor|dicho|,|\.|!|-|–|—|…|:|\()$/;

/** "No" is a name to the reader: it says that something is left out. */
const isNo = (token: Token): token is Extract<Token, { t: 'name' }> =>
  token.t === 'name' && /^(?:no|nein|non)$/i.test(token.text);

/** The words between two places, where nothing but taking back stands there. */
function takenBackBetween(tokens: readonly Token[], from: number, to: number): boolean {
  const words = tokens
    .slice(from, to)
    .map((token) => (token.t === 'word' || token.t === 'sign' || isNo(token) ? token.text.toLowerCase() : null));
  if (words.length === 0 || words.length > 10 || words.some((word) => word === null || !beside.test(word)))
    return false;
  return takesBack.test(words.filter((word) => /\w/.test(word ?? '')).join(' '));
}

const weighs = ({ dim }: Quantity): boolean =>
  dim === 'mass' || dim === 'volume' || dim === 'bare' || dim === 'percent';

function isPair(a: Amount, b: Amount): boolean {
  const [first, second] = [a.quantity.dim, b.quantity.dim];
  return weighs(a.quantity) && weighs(b.quantity) && (first === second || first === 'bare');
}

/** The "no" of "no wait, 66 g" or "no, 66 g". */
function isNoBetween(item: Thing, next: Item | undefined, tokens: readonly Token[]): boolean {
  const token = tokens[item.from];
  return (
    token !== undefined && isNo(token) && next?.kind === 'amount' && takenBackBetween(tokens, item.from, next.from)
  );
}

const sameThing = (a: Thing, b: Thing): boolean =>
  a.named.meaning.kind === b.named.meaning.kind && a.named.meaning.id === b.named.meaning.id;

/** The items without what was taken back, and what that was. */
export function putRight(items: readonly Item[], tokens: readonly Token[]): { items: Item[]; back: PutRight[] } {
  const kept: Item[] = [];
  const back: PutRight[] = [];
  const told = items.filter((item, k) => !(item.kind === 'thing' && isNoBetween(item, items[k + 1], tokens)));
  for (const [k, item] of told.entries()) {
    const [before, last] = [kept.at(-2), kept.at(-1)];
    if (item.kind === 'amount' && last?.kind === 'amount' && isPair(last, item)) {
      if (takenBackBetween(tokens, last.to, item.from)) {
        back.push({ gone: last.quantity, stays: item.quantity });
        kept.pop();
      }
    } else if (item.kind === 'amount' && last?.kind === 'thing' && before?.kind === 'amount' && isPair(before, item)) {
      if (takenBackBetween(tokens, last.to, item.from)) {
        const next = told[k + 1];
        const named = next?.kind === 'thing' && next.from - item.to <= 1 ? next : null;
        // another name behind the new figure is another matter
        if (named === null || sameThing(named, last)) {
          back.push({ gone: before.quantity, stays: item.quantity });
          kept.splice(-2, 2, ...(named ? [] : [{ ...before, quantity: item.quantity, same: item.same }, last]));
          if (!named) continue;
        }
      }
    }
    kept.push(item);
  }
  return { items: kept, back };
}
