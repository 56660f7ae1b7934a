/** Fats in a proportion: `olive : coconut : lard = 3 : 1 : 1`, `50/50 olive and coconut`. */

import type { Quantity } from '../words/quantities.ts';
import { isMark, onlyBetween, type Span } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { amountItem, type Item, thingItem } from './items.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
export const isRatio = (item: Item | undefined): item is Amount =>
  isAmount(item) && item.quantity.dim === 'ratio' && item.quantity.second !== null;
const isFat = (item: Item | undefined): item is Thing => item?.kind === 'thing' && item.named.meaning.kind === 'fat';
/** Water, alkali, or the ratio of the two. */
const isLye = (item: Item | undefined): boolean =>
  item?.kind === 'thing' &&
  (/^(?:water|alkali|stock)$/.test(item.named.meaning.kind) ||
    (/^ratio/.test(item.named.meaning.id) && /\b(?:water|lye)\b/.test(item.named.meant)));

/** Fats of one proportion, at the most: keeps a hostile post's cost bounded. */
const mostFats = 12;
/** Tokens between the fats and their figures, at the most. */
const farthest = 5;

/** Items of one row, from where to where. */
type Rows = Span;

const isFiller = (token: Token): boolean => token.t === 'word' && token.sort === 'filler';

interface Part {
  readonly value: number;
  readonly number: number | undefined;
}

const partsOf = ({ quantity: { value, second, numbers } }: Amount): readonly Part[] =>
  second === null
    ? [{ value, number: numbers[0] }]
    : [
        { value, number: numbers[0] },
        { value: second, number: numbers[1] },
      ];

/** Whether a colon, or the stroke that parts the figures of the ratio, is all that stands between two figures. */
const runsOn = (tokens: readonly Token[], before: Item, after: Item): boolean =>
  after.from === before.to + 1 && isMark(tokens[before.to], ':/-');

/** The ratio at item `at`, with the figures that go on behind it: `3 : 1` and `: 1`. */
function chainAt(items: readonly Item[], tokens: readonly Token[], at: number): { parts: Part[]; end: number } {
  const parts: Part[] = [];
  let end = at;
  for (; end - at < mostFats; end++) {
    const [before, item] = [items[end - 1], items[end]];
    if (!isAmount(item) || !/^(?:ratio|bare)$/.test(item.quantity.dim)) break;
    if (end > at && before && !runsOn(tokens, before, item)) break;
    parts.push(...partsOf(item));
  }
  return { parts, end };
}

/** What joins two names of a list. */
const joining: ReadonlySet<string> = new Set('/ : - , & + and to'.split(' '));

/** The fats in a row with the one at item `at`, on its far side: from where to where. */
function fatsFrom(items: readonly Item[], tokens: readonly Token[], at: number, step: -1 | 1): number {
  let last = at;
  for (; Math.abs(last - at) < mostFats; last += step) {
    const [item, next] = [items[last], items[last + step]];
    if (!item || !next || !isFat(next)) break;
    if (
      !(step > 0 ? onlyBetween(tokens, item.to, next.from, joining) : onlyBetween(tokens, next.to, item.from, joining))
    )
      break;
  }
  return last;
}

/** A figure stands right beside the fat, on that side: it is weighed by itself, and of no proportion. */
function isWeighed(items: readonly Item[], at: number, step: -1 | 1): boolean {
  const [fat, amount] = [items[at], items[at + step]];
  return isAmount(amount) && fat !== undefined && (step > 0 ? amount.from === fat.to : fat.from === amount.to);
}

/** The fats beside the figures, nearest first, which are as many as these where the post is clear. */
function fatsBeside(
  items: readonly Item[],
  tokens: readonly Token[],
  figures: Rows,
  count: number,
  step: -1 | 1,
): Rows | null {
  const near = step < 0 ? figures.from - 1 : figures.to;
  const [fat, figure] = [items[near], items[step < 0 ? figures.from : figures.to - 1]];
  if (!isFat(fat) || !figure) return null;
  const [from, to] = step < 0 ? [fat.to, figure.from] : [figure.to, fat.from];
  if (to - from > farthest || tokens.slice(from, to).some((one) => one.t === 'quantity' || isMark(one, '.;!?')))
    return null;
  let last = fatsFrom(items, tokens, near, step);
  while (Math.abs(last - near) + 1 > count && isWeighed(items, last, step)) last -= step;
  return step < 0 ? { from: last, to: near + 1 } : { from: near, to: last + 1 };
}

/** A ratio of water to alkali, with fats beside it that have nothing to do with it. */
const isOfLye = (items: readonly Item[], tokens: readonly Token[], { from, to }: Rows): boolean =>
  [
    [items[from - 1], items[from]],
    [items[to - 1], items[to]],
  ].some(([a, b]) => a && b && (isLye(a) || isLye(b)) && tokens.slice(a.to, b.from).every(isFiller));

/** Two or more fats stand beside the ratio at item `at`, which are not as many as its figures. */
export function isUnpaired(items: readonly Item[], tokens: readonly Token[], at: number): boolean {
  const { parts, end } = chainAt(items, tokens, at);
  const figures = { from: at, to: end };
  if (isOfLye(items, tokens, figures)) return false;
  return [-1 as const, 1 as const].some((step) => {
    const fats = fatsBeside(items, tokens, figures, parts.length, step);
    return fats !== null && fats.to - fats.from > 1;
  });
}

/** Each fat with its share of the proportion; figures that are not as many as the fats stay as they are. */
export function proportions(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let at = 0; at < items.length; at++) {
    if (!isRatio(items[at])) continue;
    const { parts, end } = chainAt(items, tokens, at);
    const figures = { from: at, to: end };
    const sum = parts.reduce((all, { value }) => all + value, 0);
    if (!(sum > 0) || isOfLye(items, tokens, figures)) continue;
    const beside = [-1 as const, 1 as const].map((step) => fatsBeside(items, tokens, figures, parts.length, step));
    const fats = beside.find((one) => one && one.to - one.from === parts.length);
    const of = items[at] as Amount;
    if (!fats) continue;
    const shared = items.slice(fats.from, fats.to).flatMap((fat, k): Item[] => {
      const { value, number } = parts[k] as Part;
      return [fat, amountItem(shareOf(of.quantity, value / sum, number), fat.to, fat.to)];
    });
    const [first, last] = [Math.min(fats.from, at), Math.max(fats.to, end)];
    return totalled(items.toSpliced(first, last - first, ...shared), parts.length);
  }
  return items;
}

export const shareOf = (quantity: Quantity, value: number, number: number | undefined): Quantity => ({
  ...quantity,
  dim: 'percent',
  value,
  second: null,
  text: `${Math.round(value * 1000) / 10} %`,
  numbers: number === undefined ? [] : [number],
});

/** "50/50 olive and coconut, 1 kg": the one weight is that of all together. */
function totalled(items: readonly Item[], count: number): readonly Item[] {
  const weights = items.filter((item) => isAmount(item) && item.quantity.dim === 'mass');
  const said = items.some(
    (item) => item.kind === 'thing' && item.named.meaning.kind === 'role' && /^total/.test(item.named.meaning.id),
  );
  const [weight] = weights;
  if (weights.length !== 1 || !weight || items.filter(isFat).length !== count || said) return items;
  const meaning = { kind: 'role', id: 'total-fats' } as const;
  const total = thingItem({ meaning, text: 'fats', how: 'name', meant: 'total fats' }, weight.to, weight.to);
  return items.flatMap((item) => (item === weight ? [item, total] : [item]));
}
