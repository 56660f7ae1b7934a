/** Figures in one row and names in another: `40/30/20/10 olive/coconut/palm/castor`, `olive coconut lard 50-30-20`. */

import type { Quantity } from '../words/quantities.ts';
import { isMark, onlyBetween, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { type Item, thingItem } from './items.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

const isShare = (item: Item | undefined): item is Amount =>
  item?.kind === 'amount' &&
  (item.quantity.dim === 'bare' || item.quantity.dim === 'percent' || item.quantity.dim === 'mass');
/** Figures of shares or weights, as the first one is. */
const likeOf = (first: Item | undefined) => (item: Item) =>
  isShare(item) && isShare(first) && (item.quantity.dim === 'mass') === (first.quantity.dim === 'mass');
const isFat = (item: Item | undefined): item is Thing => item?.kind === 'thing' && item.named.meaning.kind === 'fat';

/** "The olive and the palm are 480 g and 240 g respectively". */
const isRespective = (tokens: readonly Token[], { to }: Item): boolean =>
  wordAt(tokens, isMark(tokens[to], ',') ? to + 1 : to) === 'respectively';
const being: ReadonlySet<string> = new Set(['are', 'were', 'weigh', 'weighed', ':', '=']);

const joining: ReadonlySet<string> = new Set(['\t', ...'/ : - , & + ( and of in order the respectively'.split(' ')]);

/** Fats of one recipe, at the most: keeps a hostile post's cost bounded. */
const mostFats = 12;

/** How many items from `at` on are of one sort and stand tight. */
function runOf(items: readonly Item[], tokens: readonly Token[], at: number, of: (item: Item) => boolean): number {
  let length = 0;
  for (let k = at; k < items.length && length <= mostFats; k++) {
    const item = items[k];
    if (!item || !of(item)) break;
    const before = k > at ? items[k - 1] : undefined;
    if (before && !onlyBetween(tokens, before.to, item.from, joining)) break;
    length++;
  }
  return length;
}

const shareOf = ({ quantity: { dim, value } }: Amount): number =>
  dim === 'percent' ? value : dim === 'bare' ? value / 100 : Number.NaN;

/** "500/300/200 olive/coconut/palm": a stroke between each two. */
const isSlashed = (row: readonly Item[], tokens: readonly Token[]): boolean =>
  row.every((item, k) => {
    const [before, joint] = [row[k - 1], tokens[item.from - 1]];
    return !before || (joint?.t === 'sign' && joint.text === '/' && item.from - before.to === 1);
  });

/**
 * Figures of three or more fats that make a hundred, or stand parted by strokes as the fats do, given to the fats in
 * their order; otherwise the items as they are.
 */
export function pairParallel(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let at = 0; at + 3 < items.length; at++) {
    // most rows are of a name and its figure in turn
    if (items[at]?.kind !== items[at + 1]?.kind) continue;
    const sharesFirst = isShare(items[at]);
    const length = runOf(items, tokens, at, sharesFirst ? likeOf(items[at]) : isFat);
    if (length < 2) continue;
    const [last, next] = [items[at + length - 1], items[at + length]];
    if (!last || !next) continue;
    if (runOf(items, tokens, at + length, sharesFirst ? isFat : likeOf(next)) !== length) continue;
    const end = items[at + 2 * length - 1];
    const respective = !sharesFirst && end !== undefined && isRespective(tokens, end);
    if (
      !onlyBetween(tokens, last.to, next.from, joining) &&
      !(respective && onlyBetween(tokens, last.to, next.from, being))
    )
      continue;
    const row = items.slice(at, at + length);
    const other = items.slice(at + length, at + 2 * length);
    const shares = (sharesFirst ? row : other) as readonly Amount[];
    const fats = (sharesFirst ? other : row) as readonly Thing[];
    const sum = shares.reduce((all, share) => all + shareOf(share), 0);
    const whole = length > 2 && Math.abs(sum - 1) <= 0.0051;
    // "lard / tallow 300 g / 200 g": of two, only weights
    if (length === 2 && !shares.every(isWeight)) continue;
    if (!whole && !respective && !(isSlashed(row, tokens) && isSlashed(other, tokens))) continue;
    const pairs = fats.flatMap((fat, k): Item[] => {
      const share = shares[k];
      const quantity = share && (whole ? asPercent(share) : share.quantity);
      return share && quantity ? [fat, { ...share, quantity, from: fat.to, to: fat.to }] : [fat];
    });
    return [...items.slice(0, at), ...pairs, ...items.slice(at + 2 * length)];
  }
  return items;
}

function asPercent(share: Amount): Quantity {
  const { quantity } = share;
  return quantity.dim === 'percent' ? quantity : { ...quantity, dim: 'percent', value: quantity.value / 100 };
}

const isWeight = (item: Item | undefined): item is Amount => item?.kind === 'amount' && item.quantity.dim === 'mass';
const isPercent = (item: Item | undefined): item is Amount =>
  item?.kind === 'amount' && item.quantity.dim === 'percent';
const isTotal = (item: Item | undefined): boolean =>
  item?.kind === 'thing' && item.named.meaning.kind === 'role' && /^total/.test(item.named.meaning.id);

/** Items `from` to the end returned are fats with their shares, one share a fat, which make the whole. */
export function sharedRun(items: readonly Item[], from: number): number | null {
  const sharesFirst = isPercent(items[from]);
  let sum = 0;
  let end = from;
  while (
    sharesFirst ? isPercent(items[end]) && isFat(items[end + 1]) : isFat(items[end]) && isPercent(items[end + 1])
  ) {
    const share = items[sharesFirst ? end : end + 1];
    sum += isPercent(share) ? share.quantity.value : 0;
    end += 2;
  }
  return end - from >= 4 && Math.abs(sum - 1) < 0.0101 ? end : null;
}

/**
 * A weight that no name claims, right behind shares that make the whole ("85 % tallow 15 % coconut, 32 oz.") or in
 * front of them ("1 kg of 40 % olive …", "1000 g = olive 600 + coconut 400"), is that of all the fats.
 */
export function totalOfShares(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const shared = items.some(isPercent);
  const weight = items.find(
    (item, k) =>
      isWeight(item) &&
      ((shared && (standsAfterShares(items, tokens, k) || isOfOil(items, k))) || standsBefore(items, tokens, k)),
  );
  if (!weight) return items;
  if (items.some((item, k) => isTotal(item) && ((k > 0 && isWeight(items[k - 1])) || isWeight(items[k + 1]))))
    return items;
  const total = thingItem(
    { meaning: { kind: 'role', id: 'total-fats' }, text: 'fats', how: 'name', meant: 'total fats' },
    weight.to,
    weight.to,
  );
  return items.flatMap((item) => (item === weight ? [{ ...item, total: true }, total] : [item]));
}

const isEach = (item: Item): boolean => item.kind === 'thing' && item.named.meaning.id === 'each';
/** Nobody makes soap of less fat, in grams; "20 g oil" is of a scent. */
const leastFat = 100;

/** "100 % coconut, 20 % superfat, 600 g oil": the weight of oil by no name beside shares of fats that make the whole. */
function isOfOil(items: readonly Item[], at: number): boolean {
  const [weight, oil, next] = [items[at], items[at + 1], items[at + 2]];
  if (!isWeight(weight) || weight.quantity.value < leastFat || oil?.kind !== 'thing' || oil.from !== weight.to)
    return false;
  if (!/^(?:oil|fat)$/.test(oil.named.meant) || (next?.from === oil.to && (isFat(next) || isEach(next)))) return false;
  // each beside its fat on the same side: "coconut, 20 % superfat" is none
  const side = items.findIndex(isPercent) < items.findIndex(isFat) ? 1 : -1;
  const shares = items.filter((item, k): item is Amount => isPercent(item) && isFat(items[k + side]));
  return Math.abs(shares.reduce((sum, { quantity }) => sum + quantity.value, 0) - 1) < 0.0101;
}

function standsAfterShares(items: readonly Item[], tokens: readonly Token[], at: number): boolean {
  const [weight, next] = [items[at], items[at + 1]];
  if (!isWeight(weight)) return false;
  let from = at - 1;
  while (from >= 0 && (isPercent(items[from]) || isFat(items[from]))) from--;
  if (from === at - 1 || sharedRun(items, from + 1) !== at) return false;
  const parted = tokens
    .slice(weight.to, next?.from ?? tokens.length)
    .some((token) => token.t === 'line' || (token.t === 'sign' && /^[,;.?!)]$/.test(token.text)));
  return next === undefined || parted || weight.quantity.text.endsWith('.');
}

function standsBefore(items: readonly Item[], tokens: readonly Token[], at: number): boolean {
  const [weight, next] = [items[at], items[at + 1]];
  if (!isWeight(weight) || !next) return false;
  const first = weight.to < next.from ? tokens[weight.to] : undefined;
  if (first?.t === 'word' && first.text === 'of') return sharedRun(items, at + 1) !== null;
  // "450 g = 16 oz": the same again; "500 g = olive" alone: a name
  return (
    first?.t === 'sign' &&
    first.text === '=' &&
    next.from === weight.to + 1 &&
    isFat(next) &&
    isSummed(items, tokens, at + 1)
  );
}

/** `olive 600 + coconut 400`: a name with its figure, and another behind a plus. */
function isSummed(items: readonly Item[], tokens: readonly Token[], at: number): boolean {
  const [name, figure, second] = [items[at], items[at + 1], items[at + 2]];
  if (!isFat(name) || figure?.kind !== 'amount' || !second) return false;
  const between = tokens.slice(figure.to, second.from);
  return between.length === 1 && between[0]?.t === 'sign' && /^[+,&]$/.test(between[0].text);
}
