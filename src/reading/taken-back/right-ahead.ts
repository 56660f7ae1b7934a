/**
 * A figure that is put right before the list in which it stands: "oops, last figure should say 64 not 46. Olive 500 g,
 * …, NaOH 46 g", "read 64 for 46", "the first one is 500".
 */

import type { Item } from '../rows/items.ts';
import { cue } from '../words/cue-words.ts';
import type { Quantity } from '../words/quantities.ts';
import { type Signals, saysAround } from '../words/signals.ts';
import { isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { alike, type PutRight, written } from './put-right.ts';

type Amount = Extract<Item, { kind: 'amount' }>;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const weighs = ({ dim }: Quantity): boolean => dim === 'mass' || dim === 'bare';

/** Between two figures of which the first counts, or the second. */
const firstCounts = /^(?:, |and |, and )?(?:not|instead of|rather than)(?: the| a)?$/;
const shouldBe =
  '(?:should|must|ought to|was meant to|is meant to|is supposed to|was supposed to) (?:be|read|say|have been|have said)|(?:is |was )?(?:a )?typo for|is really|is actually|really means|means';
const secondCounts = new RegExp(
  `^(?:(?:below|there|above|in it|in the list|of lye|, )+ )*(?:${shouldBe}|(?:, )?but (?:its|it is|it should be|i meant|that should be|that is|thats)|(?:, )?i (?:mean|meant)(?: to say)?)$`,
);
/** "Read 64 for 46", "where I say 46 read 64". */
const readFor = /^(?:for|instead of|where (?:i|it) (?:say|says|said|wrote|put|have)|in place of|rather than)$/;
const reading = /\b(?:read|say|make it|put|use|take)(?: it as)?$/;
const whereItSays =
  /\b(?:where|when|if) (?:i|it|you)(?: now)? (?:say|says|said|wrote|write|typed|see|read|have|has|put)$/;
const readBehind =
  /^(?:, )?(?:please |pls |you should |kindly )?(?:read|take|use|put|its|it is|make it|make that|i mean|i meant|that is|thats|it should be|that should be)$/;

const most = 8;

/** The words between two tokens, with the signs; null where a figure or an ingredient stands there. */
function wordsIn(tokens: readonly Token[], from: number, to: number): string | null {
  if (to - from > most) return null;
  const words: string[] = [];
  for (const token of tokens.slice(from, to)) {
    const word = token.t === 'sign' ? token.text : spoken(token);
    if (word === '' || /[.!?;]/.test(word)) return null;
    words.push(word);
  }
  return words.join(' ');
}

/** The words of its sentence before a token. */
function wordsBefore(tokens: readonly Token[], k: number): string {
  let from = k;
  while (from > 0 && k - from < most * 2 && !isStop(tokens[from - 1]) && tokens[from - 1]?.t !== 'quantity') from--;
  return tokens
    .slice(from, k)
    .map((token) => (token.t === 'sign' ? token.text : spoken(token)))
    .join(' ');
}

type Thing = Extract<Item, { kind: 'thing' }>;

interface Correction {
  readonly right: Amount;
  readonly wrong: Amount | null;
  /** Of the figures behind: the first, the last, … */
  readonly place: number | null;
  /** "160 coconut not 260": what stands between them. */
  readonly of?: Thing;
}

const places: Readonly<Record<string, number>> = {
  first: 0,
  second: 1,
  third: 2,
  fourth: 3,
  fifth: 4,
  last: -1,
  final: -1,
};
const ordinal = new RegExp(
  `\\b(?<place>${Object.keys(places).join('|')}) (?:figure|number|amount|weight|value|one|entry|line|row)s? (?:(?:in|on|of) (?:the|my|this) (?:list|recipe|post) )?(?:${shouldBe}|is wrong (?:, )?(?:it should be|its|it is)|is|= ?)(?: to)?$`,
);
/** Something is put right. */
const puttingRight =
  /\b(?:oops|whoops|woops|sorry|typo|correction|edit|erratum|should|wrong|mistake|mistyped|meant|supposed)\b/;

/** "The 46 below": a place, and to the reader what a temperature stays under. */
const isBelow = (item: Item | undefined): boolean =>
  item?.kind === 'thing' && item.named.meaning.kind === 'role' && /^(?:below|above|under)$/i.test(item.named.text);

/** What a sentence puts right whose figure is item `k`. */
function correctionAt(items: readonly Item[], k: number, tokens: readonly Token[]): Correction | null {
  const item = items[k];
  if (!isAmount(item) || !weighs(item.quantity)) return null;
  const next = items[isBelow(items[k + 1]) ? k + 2 : k + 1];
  const before = wordsBefore(tokens, item.from);
  const last = items[k + 2];
  if (
    next?.kind === 'thing' &&
    isAmount(last) &&
    weighs(last.quantity) &&
    last.from > next.to &&
    next.from >= item.to
  ) {
    const isNamed = !/^(?:role|unknown)$/.test(next.named.meaning.kind);
    const isBeside = /^(?:of|the|my|)*$/.test(wordsIn(tokens, item.to, next.from) ?? '?');
    if (isNamed && isBeside && firstCounts.test(wordsIn(tokens, next.to, last.from) ?? ''))
      return { right: item, wrong: last, place: null, of: next };
  }
  if (isAmount(next) && weighs(next.quantity) && next.from > item.to) {
    const between = wordsIn(tokens, item.to, next.from);
    if (between === null || between === '') return placed(item, before);
    if (firstCounts.test(between) || (readFor.test(between) && reading.test(before)))
      return { right: item, wrong: next, place: null };
    if (secondCounts.test(between) || (whereItSays.test(before) && readBehind.test(between)))
      return { right: next, wrong: item, place: null };
  }
  return placed(item, before);
}

function placed(right: Amount, before: string): Correction | null {
  const found = ordinal.exec(before);
  const place = places[found?.groups?.['place'] ?? ''];
  return place === undefined || !puttingRight.test(before) ? null : { right, wrong: null, place };
}

const isEqual = (a: Quantity, b: Quantity): boolean => Math.abs(alike(a, b).value - b.value) <= 1e-6 * b.value;

/** A figure meant for another differs from it by so many times, at the most; a digit more or less is ten. */
const mostTimes = 11;

/** What the correction names in its own sentence; null where it names nothing. */
const namedIn = (items: readonly Item[], k: number, tokens: readonly Token[]): Thing | null => {
  const before = items[k - 1];
  const at = items[k]?.from ?? 0;
  if (before?.kind !== 'thing' || /^(?:role|unknown)$/.test(before.named.meaning.kind)) return null;
  return tokens.slice(before.to, at).some(isStop) ? null : before;
};

/** The thing beside an amount is the one that is named. */
const isOf = (items: readonly Item[], k: number, { named: { meaning } }: Thing): boolean =>
  [items[k - 1], items[k + 1]].some(
    (one) =>
      one?.kind === 'thing' &&
      one.named.meaning.kind === meaning.kind &&
      (meaning.kind === 'alkali' || one.named.meaning.id === meaning.id),
  );

/** Which of the items behind it puts right; -1 where nobody knows, null where none of them. */
function meantBy(
  { right, wrong, place }: Correction,
  items: readonly Item[],
  from: number,
  name: Thing | null,
): number | null {
  const behind: number[] = [];
  for (let k = from; k < items.length; k++) {
    const one = items[k];
    if (isAmount(one) && one.quantity.dim === 'mass') behind.push(k);
  }
  const of = (k: number): Quantity => (items[k] as Amount).quantity;
  if (place !== null) {
    const k = behind.at(place);
    if (k === undefined || behind.length < leastListed) return null;
    const times = alike(right.quantity, of(k)).value / of(k).value;
    return times < mostTimes && times > 1 / mostTimes ? k : -1;
  }
  if (!wrong) return null;
  const found = behind.filter((k) => isEqual(wrong.quantity, of(k)) && (!name || isOf(items, k, name)));
  return found.length > 1 ? -1 : (found[0] ?? null);
}
/** Figures behind the correction that make a list, at the least. */
const leastListed = 3;

export interface RightAhead {
  readonly items: readonly Item[];
  readonly back: readonly PutRight[];
  /** Words that put something right, and nobody knows what. */
  readonly unheard: string | null;
}

/** The items with what is put right before it stands there. */
export function rightAhead(items: readonly Item[], tokens: readonly Token[], signals: Signals): RightAhead {
  const back: PutRight[] = [];
  let unheard: string | null = null;
  let out: (Item | null)[] | null = null;
  for (let k = 0; k < items.length - leastListed; k++) {
    const item = items[k];
    const found = item && saysAround(signals, item.from, cue.ahead) ? correctionAt(items, k, tokens) : null;
    if (!found) continue;
    const { right, wrong } = found;
    const own = wrong ? (found.of || isBelow(items[k + 1]) ? 3 : 2) : 1;
    const at = meantBy(found, items, k + own, found.of ?? namedIn(items, k, tokens));
    if (at === null) continue;
    const gone = items[at];
    if (!isAmount(gone)) {
      unheard = written(right.quantity);
      continue;
    }
    out ??= [...items];
    for (let n = k; n < k + own; n++) out[n] = null;
    const heading = items[k - 1];
    if (heading?.kind === 'thing' && heading.named.meaning.kind === 'role') out[k - 1] = null;
    out[at] = { ...gone, quantity: alike(right.quantity, gone.quantity), same: null };
    back.push({
      text: `I took ${written(right.quantity)}, not ${written(gone.quantity)}, as the post corrects itself.`,
      gone: [gone.quantity, ...(wrong ? [wrong.quantity] : [])],
      from: right.from,
      to: Math.max(right.to, wrong?.to ?? 0),
    });
  }
  return { items: out?.filter((item) => item !== null) ?? items, back, unheard };
}
