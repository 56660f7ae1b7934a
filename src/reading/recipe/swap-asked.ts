/**
 * A swap that a post asks about and that is not made: "Can I use lard instead of the palm?", "I've no palm, would lard
 * work?", "Can I leave out the castor?". The recipe stays as it is written; the answer tells what the other one needs.
 */

import type { ReadAmount, SwapAsked } from '../reading.ts';
import type { Item } from '../rows/items.ts';
import { isAny, isFat } from '../words/token-is.ts';
import { endsSentence } from './missing.ts';
import { type Assembly, label, type Source } from './rows.ts';

const wordsOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));
const asks = wordsOf(
  'can could may might would will should shall if want wanted like wonder wondering thinking possible ok okay allowed ? does is matter matters',
);
/** The first of two fats is the one that comes, or the one that goes. */
const comesFirst = wordsOf('instead place lieu rather replaces replacing');
const goesFirst = wordsOf('with by');
const exchanging = wordsOf(
  'swap swapped swapping switch switched switching exchange exchanged exchanging trade trading',
);
const changing = wordsOf('sub subbed substitute substituted substituting replace replaced use using take taking');
const done = wordsOf('took used put poured weighed went');
const perhaps = wordsOf('? can could may might would should shall if whether');
const lacking = wordsOf('no none out ran run dont havent cant couldnt without lack missing only');
const leaving = wordsOf('leave skip omit without drop remove');
const parting = wordsOf('half part some third quarter partly more less most bit little');

interface Around {
  readonly from: number;
  readonly to: number;
}

interface Span extends Around {
  readonly words: ReadonlySet<string>;
  readonly names: readonly { readonly id: string; readonly at: number }[];
}

/** The sentence around token `k`, at most so many tokens either way. */
const reach = 18;

function aroundOf({ tokens }: Source, k: number): Around {
  let [from, to] = [k, k + 1];
  while (from > 0 && k - from < reach && !endsSentence(tokens[from - 1])) from--;
  while (to < tokens.length && to - k < reach && !endsSentence(tokens[to - 1])) to++;
  return { from, to };
}

/** The part of its sentence without a figure: "can I swap palm for lard in my 500 g palm, 300 g olive". */
function apartOf({ tokens }: Source, { from, to }: Around, k: number): Around {
  let [begin, end] = [k, k + 1];
  while (begin > from && tokens[begin - 1]?.t !== 'quantity') begin--;
  while (end < to && tokens[end]?.t !== 'quantity') end++;
  return { from: begin, to: end };
}

const spanAt = (source: Source, k: number): Span => spanOf(source, aroundOf(source, k));

function spanOf(source: Source, { from, to }: Around): Span {
  const { tokens, prims } = source;
  const words = new Set<string>();
  for (let n = tokens[from]?.from ?? 0; n < (tokens[to - 1]?.to ?? 0); n++) words.add(prims[n]?.text ?? '');
  const names = tokens
    .slice(from, to)
    .flatMap((token, n) => (isFat(token) ? [{ id: token.meaning.id, at: from + n }] : []));
  return { from, to, words, names };
}

const hasAny = ({ words }: Span, of: ReadonlySet<string>): boolean => {
  for (const word of of) if (words.has(word)) return true;
  return false;
};

/** The swap that the post asks about; null where it asks of none, or nobody can tell which fat goes. */
export function swapAsked(source: Source, fats: readonly ReadAmount[]): SwapAsked | null {
  const { items, bound } = source;
  for (const k of bound.best.mentions) {
    const item = items[k];
    if (item?.kind !== 'thing' || item.named.meaning.kind !== 'fat') continue;
    const around = aroundOf(source, item.from);
    const whole = spanOf(source, around);
    const isApart = isFigured(source, around);
    const span = isApart ? spanOf(source, apartOf(source, around, item.from)) : whole;
    // what only its sentence asks has both names, and a word that one comes for the other
    if (isApart && (span.names.length !== 2 || !/^(?:in|on|for|of)$/.test(lastWord(source, span)))) continue;
    // "she says lard is out now, so I took palm instead"
    const isDone = hasAny(whole, done) && !hasAny(whole, perhaps);
    if (!hasAny(whole, asks) || isDone || hasAny(span, parting)) continue;
    const found = swapIn(source, span, item, new Set(fats.map(({ id }) => id)));
    if (found) return found;
  }
  return null;
}

/** "In my", before the figures. */
function lastWord({ tokens }: Source, { to }: Around): string {
  const [one, last] = [tokens[to - 2], tokens[to - 1]];
  const isMine = last?.t === 'word' && /^(?:my|this|our|the)$/.test(last.text);
  const word = isMine ? one : last;
  return word?.t === 'word' ? word.text : '';
}

const supposing = wordsOf('if suppose supposing say imagine assuming were');
const lyes = wordsOf('lye naoh koh caustic hydroxide soda alkali');
const measuring = wordsOf('much what how many');

/**
 * "If I swap the palm for lard, what is the lye then?": the fats with the other one, where the lye of no others is asked
 * for; null elsewhere.
 */
export function asSwapped(
  assembly: Assembly,
  fats: readonly ReadAmount[],
  { goes, comes }: SwapAsked,
): readonly ReadAmount[] | null {
  const { source } = assembly;
  const { tokens } = source;
  const gone = fats.find(({ id }) => id === goes);
  if (!gone || comes === null || fats.some(({ id }) => id === comes)) return null;
  let isAsked = false;
  for (let k = 0; k < tokens.length; k++) {
    if (endsSentence(tokens[k])) continue;
    const span = spanAt(source, k);
    const asksLye = hasAny(span, lyes) && hasAny(span, measuring);
    const isSwap = [goes, comes].every((id) => span.names.some((one) => one.id === id));
    if (asksLye && !isSwap) return null;
    isAsked ||= asksLye && hasAny(span, supposing) && !isFigured(source, span);
    while (k + 1 < span.to) k++;
  }
  if (!isAsked) return null;
  const [now, before] = [comes, goes].map((id) => label(assembly, { kind: 'fat', id }));
  assembly.assume('corrected', `I took ${now} in the place of ${before}, weight for weight, as the post asks.`);
  return fats.map((one) => (one === gone ? { ...one, id: comes } : one));
}

function swapIn(
  source: Source,
  span: Span,
  { named }: Extract<Item, { kind: 'thing' }>,
  weighed: ReadonlySet<string>,
): SwapAsked | null {
  const ids = [...new Set(span.names.map(({ id }) => id))];
  const [first, second] = ids;
  const isNew = !weighed.has(named.meaning.id);
  if (ids.length === 2 && first !== undefined && second !== undefined) {
    const fresh = ids.filter((id) => !weighed.has(id));
    if (
      fresh.length > 1 ||
      !(hasAny(span, comesFirst) || hasAny(span, exchanging) || hasAny(span, changing) || hasAny(span, lacking))
    )
      return null;
    if (fresh.length === 1) return { goes: fresh[0] === first ? second : first, comes: fresh[0] ?? null };
    const [one, other] = span.names;
    const between = source.prims
      .slice(source.tokens[one?.at ?? 0]?.to ?? 0, source.tokens[other?.at ?? 0]?.from ?? 0)
      .map(({ text }) => text);
    if (between.some((text) => comesFirst.has(text))) return { goes: second, comes: first };
    if (hasAny(span, lacking) || between.some((text) => goesFirst.has(text))) return { goes: first, comes: second };
    if (between.includes('for'))
      return hasAny(span, exchanging) ? { goes: first, comes: second } : { goes: second, comes: first };
    return null;
  }
  if (ids.length !== 1 || first === undefined) return null;
  if (isNew) {
    // "I'm out of palm. Can I use lard instead?"
    const before = span.from > 1 ? spanAt(source, span.from - 2) : null;
    const [gone, ...others] = new Set(before?.names.map(({ id }) => id));
    const isLack = before !== null && (hasAny(before, lacking) || hasAny(before, asks)) && !isFigured(source, before);
    return isLack && gone !== undefined && others.length === 0 && weighed.has(gone)
      ? { goes: gone, comes: first }
      : null;
  }
  return hasAny(span, leaving) ? { goes: first, comes: null } : null;
}

const isFigured = ({ tokens }: Source, { from, to }: Around): boolean =>
  isAny(tokens, from, to, (token) => token.t === 'quantity');
