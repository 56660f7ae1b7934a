/** The size of what a price was paid for, and prices that only a word tells: `1 lb of lye costs me $5.49`, "sold at 4.50". */
import { signal } from '../words/signal-words.ts';
import { gives } from '../words/signals.ts';
import { isAny, isMark, isPot, isRole, isStop, light, massOf, wordAt } from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

export const priced = (token: Token | undefined): boolean => token?.t === 'aside' && token.reason === 'a price';

/** "11 euros the half kilo": what the price (token `price`) is for. */
const isBase = (tokens: readonly Token[], k: number, price: number): boolean => {
  const [named, of] = [tokens[k + 1], tokens[k + 2]];
  return (
    k === price + 2 &&
    /^(?:the|a|per)$/.test(wordAt(tokens, k - 1)) &&
    named?.t !== 'name' &&
    !(wordAt(tokens, k + 1) === 'of' && of?.t === 'name')
  );
};

export function reach(tokens: readonly Token[], from: number, step: -1 | 1): number | null {
  let said = false;
  for (let k = from + step; k >= 0 && k < tokens.length && Math.abs(k - from) <= 4; k += step) {
    const token = tokens[k];
    if (massOf(token)) return said || (step === 1 && isBase(tokens, k, from)) ? k : null;
    if (!light(token)) return null;
    if (token?.t === 'word' && /^(for|cost|costs|at|per|paid)$/.test(token.text)) said = true;
  }
  return null;
}

/** `1 lb of lye costs me $5.49`: back over the verb and the name to the figure. */
export function costOf(tokens: readonly Token[], price: number): number | null {
  let k = price - 1;
  let verb = false;
  while (k >= 0 && price - k <= 4 && light(tokens[k])) {
    const token = tokens[k];
    if (token?.t === 'word' && /^costs?$/.test(token.text)) verb = true;
    k--;
  }
  const priceWord = tokens[k];
  if (isPriceWord(priceWord)) {
    verb = true;
    k--;
  }
  if (!verb) return null;
  const name = tokens[k];
  if (name?.t === 'name') k--;
  while (k >= 0 && tokens[k]?.t === 'word' && /^(of|the|my)$/.test((tokens[k] as { text: string }).text)) k--;
  return massOf(tokens[k]) && !(name?.t === 'name' && isInList(tokens, k)) ? k : null;
}

/** "450 g olive 150 g coconut cost me 6 €": a row of a list, and what all of it cost. */
function isInList(tokens: readonly Token[], k: number): boolean {
  const at = isMark(tokens[k - 1], ',+&') || /^(?:and|plus)$/.test(wordAt(tokens, k - 1)) ? k - 2 : k - 1;
  const before = tokens[at];
  return before?.t === 'name' && before.meaning.kind !== 'role' && massOf(tokens[at - 1]);
}

/** `bought 5 kg olive for €32`: the figure before the name, where that thing is weighed again elsewhere. */
export function boughtOf(tokens: readonly Token[], price: number): number | null {
  let k = price - 1;
  while (price - k <= 3 && light(tokens[k])) k--;
  const nameAt = k;
  const name = tokens[k];
  if (name?.t !== 'name' || name.meaning.kind === 'role') return null;
  k--;
  while (light(tokens[k]) || isPot(tokens[k])) k--;
  // nobody puts all of the lye that was bought into one pot
  return massOf(tokens[k]) && (name.meaning.kind === 'alkali' || weighedElsewhere(tokens, nameAt)) ? k : null;
}

/** `olive oil 500 g for 3.95 €` as a row of a list, and weighed nowhere else: what goes in, with what it costs. */
export function isOwnWeight(tokens: readonly Token[], k: number): boolean {
  const nameAt = [k - 1, k + 1].find((at) => {
    const one = tokens[at];
    return one?.t === 'name' && one.meaning.kind !== 'role';
  });
  if (nameAt === undefined || weighedElsewhere(tokens, nameAt)) return false;
  let head = Math.min(k, nameAt) - 1;
  while (tokens[head]?.t === 'sign' && /^[-*•\t]$/.test((tokens[head] as { text: string }).text)) head--;
  return head < 0 || tokens[head]?.t === 'line';
}

const isPriceWord = (token: Token | undefined): boolean => isRole(token, 'price');

/** "to be sold at 4.50": behind a word of selling, with its cents. */
export function isPaid(tokens: readonly Token[], k: number, { quantity: { dim, text } }: Figure): boolean {
  const before = tokens[k - 1];
  if (dim !== 'bare' || before?.t !== 'word') return false;
  const hasCents = /^\d+[.,]\d\d$/.test(text);
  // "the price for soda is now 6,20", "price was 4 for the fat and 6 for the coconut"
  const pays = hasCents ? 8 : wordAt(tokens, k + 1) === 'for' ? 12 : 0;
  for (let at = k - 1; at >= 0 && k - at <= pays && !isStop(tokens[at]); at--) if (isPriceWord(tokens[at])) return true;
  if (!hasCents) return false;
  // "lye was 5.99 at the hardware store", "olive was 8.99 a litre"
  const shop = wordAt(tokens, k + 1);
  const sold = /^(at|in)$/.test(shop) && wordAt(tokens, k + 2) === 'the' && tokens[k + 3]?.t === 'word';
  if (/^(was|is|were|are)$/.test(before.text) && (sold || shop === 'a' || shop === 'per')) return true;
  if (!/^(at|for|about)$/.test(before.text)) return false;
  // "was on offer at 1.49"
  if (/^(offer|sale|special|reduced|down|discount)$/.test(wordAt(tokens, k - 2))) return true;
  return isAny(tokens, k - 5, k - 1, (one) => gives(one, signal.selling));
}

/** "Shea at 12 pounds a bag": money, and no weight. */
export const isPoundsPaid = (tokens: readonly Token[], k: number, { quantity: { text } }: Figure): boolean =>
  /pounds?$/i.test(text) &&
  /^(?:at|for|cost|costs|was|is|now|only)$/.test(wordAt(tokens, k - 1)) &&
  /^(?:a|per|each)$/.test(wordAt(tokens, k + 1)) &&
  isPot(tokens[k + 2]);
