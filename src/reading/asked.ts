/**
 * What a question about lye asks for, seen before amounts are bound: "how much lye" takes no amount of its own, a lone
 * percentage behind the fats is the superfat wanted, and "KOH and NaOH 60:40" gives each its share.
 */
import type { Item } from './items.ts';
import { plainQuantity, type Quantity } from './quantities.ts';
import type { Assembly } from './rows.ts';
import type { Token } from './tokens.ts';

type Amount = Extract<Item, { kind: 'amount' }>;
type Thing = Extract<Item, { kind: 'thing' }>;

const isAmount = (item: Item | undefined): item is Amount => item?.kind === 'amount';
const isThing = (item: Item | undefined): item is Thing => item?.kind === 'thing';
const wordAt = (token: Token | undefined): string => (token?.t === 'word' || token?.t === 'sign' ? token.text : '');

const passed = /^(pure|dry|of|the|my|more|extra|total|grams?|g|oz|ounces|kg|lbs?|do|does|i|we|you|need|is|are)$/;
const hydroxide = /hydroxide|potash|caustic|^soda$|natron/;

const canBeAsked = ({ named: { meaning } }: Thing): boolean =>
  meaning.kind === 'alkali' || (meaning.kind === 'ambiguous' && hydroxide.test(meaning.id));

/** Behind "how much" or "how many grams of". */
function isAsked(tokens: readonly Token[], { from }: Thing): boolean {
  for (let k = from - 1; k >= 0 && from - k <= 4; k -= 1) {
    const word = wordAt(tokens[k]);
    if (/^(much|many|mcuh|mch)$/.test(word)) return true;
    if (!passed.test(word)) return false;
  }
  return false;
}

const isFat = (item: Item): boolean =>
  isThing(item) &&
  (item.named.meaning.kind === 'fat' ||
    item.named.meaning.kind === 'ambiguous' ||
    item.named.meaning.kind === 'unheld');

/** "Caustic soda ... 140 g of that soda", "soda 12 dag (NaOH)": the one that the post names in full, and no other. */
export function sodaMeant(items: readonly Item[]): readonly Item[] {
  const named = new Set(items.flatMap((item) => (isThing(item) ? [item.named.meaning.id] : [])));
  if (!named.has('naoh') || ['sodium-carbonate', 'baking-soda', 'koh'].some((id) => named.has(id))) return items;
  return items.map((item) =>
    isThing(item) && item.named.meaning.kind === 'ambiguous' && /^(soda|natron)$/.test(item.named.meaning.id)
      ? { ...item, named: { ...item.named, meaning: { kind: 'alkali' as const, id: 'naoh' as const } } }
      : item,
  );
}

/** The items as a question means them; those of a post that asks nothing stay as they are. */
export function askedApart(items: readonly Item[], tokens: readonly Token[]): Item[] {
  if (!items.some(isFat)) return splitApart(items, tokens);
  // where no alkali is named at all, the fats stand behind the word of a command that asks for it
  let asks = !items.some((item) => isThing(item) && (canBeAsked(item) || item.named.meaning.kind === 'stock'));
  const kinds = new Set<string>();
  for (const item of items) if (isThing(item) && item.named.meaning.kind === 'alkali') kinds.add(item.named.meaning.id);
  const marked = items.map((item, k): Item => {
    if (!isThing(item) || !canBeAsked(item)) return item;
    const { meaning } = item.named;
    if (kinds.size > 2 && isHeading(item, items[k + 1], items[k + 2]))
      return { ...item, named: { ...item.named, meaning: { kind: 'role', id: 'heading' } } };
    if (!isAsked(tokens, item)) {
      const behind = wordAt(tokens[item.to]);
      if ((behind === 'for' && item.from <= 1) || behind === '?') asks = true;
      return item;
    }
    asks = true;
    return meaning.kind === 'alkali'
      ? { ...item, named: { ...item.named, meaning: { ...meaning, asked: true } } }
      : item;
  });
  return splitApart(asks ? noSuperfat(superfatLast(marked, tokens), tokens) : marked, tokens);
}

/** "dual lye 60 % KOH, 40 % NaOH": the word for both is the heading of what follows. */
function isHeading({ named: { meaning }, to }: Thing, share: Item | undefined, kind: Item | undefined): boolean {
  return (
    meaning.id === 'unsaid' &&
    isAmount(share) &&
    share.quantity.dim === 'percent' &&
    share.from - to <= 1 &&
    isThing(kind) &&
    kind.named.meaning.kind === 'alkali' &&
    kind.named.meaning.id !== 'unsaid' &&
    kind.from - share.to <= 1
  );
}

/** Superfats that people want; beyond, a percentage is something else. */
const mostSuperfat = 0.25;

/** "how much lye for 500 g olive and 200 g coconut at 5 %": the one percentage, which nothing claims. */
function superfatLast(items: Item[], tokens: readonly Token[]): Item[] {
  const percents = items.filter((item): item is Amount => isAmount(item) && item.quantity.dim === 'percent');
  const [only] = percents;
  if (items.some(isSuperfat) || percents.length !== 1 || !only || only.quantity.value > mostSuperfat) return items;
  const at = items.indexOf(only);
  const next = items[at + 1];
  const before = wordAt(tokens[only.from - 1]);
  const alone = next === undefined || next.from > only.to + 1 || (isThing(next) && canBeAsked(next));
  const weighed = items.slice(0, at).some((item) => isAmount(item) && item !== only);
  if (!alone || !weighed || !/^(at|with|and|,|)$/.test(before)) return items;
  return [...items.slice(0, at + 1), superfat(only.to), ...items.slice(at + 1)];
}

const superfat = (at: number): Thing => ({
  kind: 'thing',
  named: { meaning: { kind: 'role', id: 'superfat' }, text: 'superfat', how: 'name', meant: 'superfat' },
  from: at,
  to: at,
});

const nought = (at: number): Amount => ({
  kind: 'amount',
  quantity: { ...plainQuantity, dim: 'percent', value: 0, inWords: true, text: '0 %' },
  same: null,
  from: at,
  to: at,
});

const isSuperfat = (item: Item | undefined): boolean =>
  isThing(item) && item.named.meaning.kind === 'role' && item.named.meaning.id === 'superfat';

/** "how much lye, no superfat", "with nothing left over": none is a figure, too. */
function noSuperfat(items: Item[], tokens: readonly Token[]): Item[] {
  const said = (k: number): string => {
    const token = tokens[k];
    return token?.t === 'name' ? token.text.toLowerCase() : wordAt(token);
  };
  const at = items.findIndex(isSuperfat);
  const role = items[at];
  if (!isThing(role)) {
    const left = tokens.findIndex((_, k) => said(k) === 'nothing' && said(k + 1) === 'left');
    return left < 0 ? items : [...items, superfat(tokens.length), nought(tokens.length)];
  }
  const behind = /^(of|at|is|:|=)$/.test(said(role.to)) ? said(role.to + 1) : said(role.to);
  if (!/^(no|without|zero|nil)$/.test(said(role.from - 1)) && !/^(nothing|none|nil)$/.test(behind)) return items;
  if ([items[at - 1], items[at + 1]].some((item) => isAmount(item) && item.quantity.dim === 'percent')) return items;
  return [...items.slice(0, at + 1), nought(role.to), ...items.slice(at + 1)];
}

/** Two alkalis named side by side with a ratio before or behind them: each gets its share. */
function splitApart(items: readonly Item[], tokens: readonly Token[]): Item[] {
  const out = [...items];
  for (let k = 0; k + 2 < out.length; k += 1) {
    const ratio = [out[k], out[k + 2]].find((item) => isAmount(item) && item.quantity.dim === 'ratio');
    const [first, second] = isAmount(out[k]) ? [out[k + 1], out[k + 2]] : [out[k], out[k + 1]];
    if (!isAmount(ratio) || !isThing(first) || !isThing(second) || ratio.quantity.second === null) continue;
    const [a, b] = [first.named.meaning, second.named.meaning];
    const fats = a.kind === 'fat' && b.kind === 'fat' && a.id !== b.id;
    const alkalis =
      a.kind === 'alkali' && b.kind === 'alkali' && a.id !== b.id && a.id !== 'unsaid' && b.id !== 'unsaid';
    if (!fats && !alkalis) continue;
    const between = tokens.slice(first.to, second.from).map(wordAt);
    const joined = between.length <= 2 && between.every((word) => /^(and|&|\+|\/|:|-|to|,|)$/.test(word));
    const near = tokens.slice(Math.min(ratio.to, second.to), Math.max(ratio.from, first.from)).length <= 5;
    const sum = ratio.quantity.value + ratio.quantity.second;
    if (!joined || !near || !(sum > 0)) continue;
    const [n, m] = ratio.quantity.numbers;
    const share = (value: number, number: number | undefined, { to }: Thing): Amount => ({
      kind: 'amount',
      quantity: { ...asPercent(ratio.quantity, value / sum), numbers: number === undefined ? [] : [number] },
      same: null,
      from: to,
      to,
    });
    out.splice(k, 3, first, share(ratio.quantity.value, n, first), second, share(ratio.quantity.second, m, second));
    return fats ? totalled(out) : out;
  }
  return out;
}

/** "50/50 olive and coconut, 1 kg": the one weight is that of both together. */
function totalled(items: Item[]): Item[] {
  const weights = items.filter((item) => isAmount(item) && item.quantity.dim === 'mass');
  const fats = items.filter((item) => isThing(item) && item.named.meaning.kind === 'fat');
  const said = items.some(
    (item) => isThing(item) && item.named.meaning.kind === 'role' && /^total/.test(item.named.meaning.id),
  );
  const [weight] = weights;
  if (weights.length !== 1 || !weight || fats.length !== 2 || said) return items;
  const total: Thing = {
    kind: 'thing',
    named: { meaning: { kind: 'role', id: 'total-fats' }, text: 'fats', how: 'name', meant: 'total fats' },
    from: weight.to,
    to: weight.to,
  };
  return items.flatMap((item) => (item === weight ? [item, total] : [item]));
}

const asPercent = (quantity: Quantity, value: number): Quantity => ({
  ...quantity,
  dim: 'percent',
  value,
  second: null,
  text: `${Math.round(value * 1000) / 10} %`,
});

/** "how much potash for 500 g lard": which of the two is asked. */
export function askedWhich(assembly: Assembly): void {
  const { items, tokens } = assembly.source;
  const things = items.filter(isThing);
  if (things.some(({ named }) => named.meaning.kind === 'alkali')) return;
  const asked = things.find(
    (thing) => thing.named.meaning.kind === 'ambiguous' && canBeAsked(thing) && isAsked(tokens, thing),
  );
  if (asked) assembly.doubts.push({ id: 'which-alkali', said: asked.named.text });
}
