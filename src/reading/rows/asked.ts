/**
 * What a question about lye asks for, seen before amounts are bound: "how much lye" takes no amount of its own, a lone
 * percentage behind the fats is the superfat wanted, and "KOH and NaOH 60:40" gives each its share.
 */

import { isOfSuperfat, isSuperfat, noSuperfat, nothingLeft, nought, superfat } from '../recipe/no-superfat.ts';
import type { Assembly, Row } from '../recipe/rows.ts';
import type { Meaning } from '../words/lexicon.ts';
import { endsDotted, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { amountItem, type Item } from './items.ts';
import { type Amount, isAmount, isThing, type Thing } from './kinds.ts';
import { isRatio, shareOf } from './proportions.ts';

const wordAt = (token: Token | undefined): string => (token?.t === 'word' || token?.t === 'sign' ? token.text : '');

const asking: ReadonlySet<string> = new Set(['much', 'many', 'mcuh', 'mch']);
/** "What weight of lye". */
const measures: ReadonlySet<string> = new Set(['weight', 'amount', 'quantity', 'mass', 'dose']);
/** "Too much lye?" asks for no amount. */
const comparing: ReadonlySet<string> = new Set(['too', 'that', 'this', 'so', 'very', 'as', 'not', 'to']);
const passed: ReadonlySet<string> = new Set(
  'pure dry of the my more extra total gram grams g oz ounces kg lb lbs do does i we you need is are'.split(' '),
);
const hydroxide = /hydroxide|potash|caustic|^soda$|natron/;

const canBeAsked = ({ named: { meaning } }: Thing): boolean =>
  meaning.kind === 'alkali' || (meaning.kind === 'ambiguous' && hydroxide.test(meaning.id));

const isAlkali = (item: Item): item is Thing => isThing(item) && item.named.meaning.kind === 'alkali';

/** Behind "how much" or "how many grams of". */
function isAsked(tokens: readonly Token[], { from }: Thing): boolean {
  for (let k = from - 1; k >= 0 && from - k <= 4; k -= 1) {
    const word = wordAt(tokens[k]);
    if (asking.has(word)) return !comparing.has(wordAt(tokens[k - 1]));
    if (measures.has(spoken(tokens[k])) && /^(?:what|which)$/.test(wordAt(tokens[k - 1]))) return true;
    if (k === from - 1 && (word === 'what' || word === 'which')) return true;
    if (!passed.has(word)) return false;
  }
  return false;
}

/**
 * "NaOH 198 g ... does 198 g of hydroxide fit?", "166 g of sodium hydroxide ... next time 170 g of the hydroxide": the
 * only alkali of the post, where its amount is said again, or the one that was spoken of.
 */
export function hydroxideMeant(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  if (!items.some((item) => isThing(item) && item.named.meaning.id === 'hydroxide')) return items;
  const alkalis = items.filter(isAlkali);
  const [first] = alkalis;
  if (!first || new Set(alkalis.map(({ named }) => named.meaning.id)).size > 1) return items;
  const weighs = (amount: Item | undefined): number => (isAmount(amount) ? amount.quantity.value : Number.NaN);
  const isAgain = (value: number): boolean => items.filter((one) => weighs(one) === value).length > 1;
  const isTheOne = ({ from }: Thing): boolean =>
    first.named.meaning.id !== 'unsaid' && first.to < from && /^(?:the|that|this)$/.test(wordAt(tokens[from - 1]));
  return items.map((item, k) =>
    isThing(item) && item.named.meaning.id === 'hydroxide' && (isAgain(weighs(items[k - 1])) || isTheOne(item))
      ? { ...item, named: { ...item.named, meaning: first.named.meaning } }
      : item,
  );
}

/** "Caustic soda ... 140 g of that soda", "soda 12 dag (NaOH)": the one that the post names in full, and no other. */
export function sodaMeant(items: readonly Item[]): readonly Item[] {
  if (!items.some((item) => isThing(item) && isSoda(item))) return items;
  let named = false;
  for (const item of items) {
    if (!isThing(item)) continue;
    if (otherSodas.has(item.named.meaning.id)) return items;
    named ||= item.named.meaning.id === 'naoh';
  }
  if (!named) return items;
  return items.map((item) =>
    isThing(item) && isSoda(item)
      ? { ...item, named: { ...item.named, meaning: { kind: 'alkali' as const, id: 'naoh' as const } } }
      : item,
  );
}

const otherSodas: ReadonlySet<string> = new Set(['sodium-carbonate', 'baking-soda', 'koh']);

/** Any but "soda" that the lye may be called by. */
const isOtherSoda = (item: Item): boolean =>
  isThing(item) && item.named.meaning.id !== 'soda' && (otherSodas.has(item.named.meaning.id) || canBeAsked(item));

const isSoda = ({ named: { meaning } }: Thing): boolean =>
  meaning.kind === 'ambiguous' && (meaning.id === 'soda' || meaning.id === 'natron');

/** The items as a question means them; those of a post that asks nothing stay as they are. */
export function askedApart(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  let [fats, lyes, stocks, ratios, zeros, superfats] = [0, 0, 0, 0, 0, 0];
  for (const item of items) {
    if (item.kind === 'amount') {
      if (item.quantity.dim === 'ratio') ratios++;
      else if (item.quantity.value === 0) zeros++;
      continue;
    }
    const { kind } = item.named.meaning;
    if (kind === 'fat' || kind === 'ambiguous' || kind === 'unheld') fats++;
    if (canBeAsked(item)) lyes++;
    else if (kind === 'stock') stocks++;
    else if (isOfSuperfat(item)) superfats++;
  }
  if (fats === 0) return ratios > 0 ? splitApart(items, tokens) : items;
  // where no alkali is named at all, the fats stand behind the word of a command that asks for it
  let asks = lyes === 0 && stocks === 0;
  const isMixed = lyes > 2 && new Set(items.filter(isAlkali).map(({ named }) => named.meaning.id)).size > 2;
  let marked: Item[] | null = null;
  const mark = (k: number, item: Thing, meaning: Meaning): void => {
    marked ??= [...items];
    marked[k] = { ...item, named: { ...item.named, meaning } };
  };
  for (let k = 0; lyes > 0 && k < items.length; k++) {
    const item = items[k];
    if (!isThing(item) || !canBeAsked(item)) continue;
    const { meaning } = item.named;
    if (isMixed && isHeading(item, items[k + 1], items[k + 2])) mark(k, item, { kind: 'role', id: 'heading' });
    else if (isAsked(tokens, item)) {
      asks = true;
      if (meaning.kind === 'alkali') mark(k, item, { ...meaning, asked: true });
    } else {
      const behind = wordAt(tokens[item.to]);
      if ((behind === 'for' && (item.from <= 1 || tokens[item.from - 1]?.t === 'line')) || behind === '?') asks = true;
      // "I took 300 g. Lye?", "water 200 g, lye?"
      const [before, next] = [tokens[item.from - 1], tokens[item.to + 1]];
      const isLast = wordAt(before) === ',' && (next === undefined || next.t === 'line');
      if (behind === '?' && meaning.kind === 'alkali' && (isStop(before) || endsDotted(before) || isLast))
        mark(k, item, { ...meaning, asked: true });
    }
  }
  const told = marked ?? items;
  const weighed = asks || lyes !== 1 ? told : lyeBehind(told, tokens);
  const meant = zeros > 0 ? zeroOfLye(weighed, tokens) : weighed;
  const wished = superfats > 0 ? noSuperfat(meant, tokens) : meant;
  const wanted = asks ? nothingLeft(superfatLast(wished, tokens), tokens) : wished;
  return ratios > 0 ? splitApart(wanted, tokens) : wanted;
}

/** "Is it too much lye? 136 g in 320 g milk": for the one alkali, the weight right behind the question, before no name. */
function lyeBehind(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((item, k) => {
    const [weight, next] = [items[k + 1], items[k + 2]];
    if (!isThing(item) || !canBeAsked(item) || !isAmount(weight) || weight.quantity.dim !== 'mass') return false;
    if (weight.from !== item.to + 1 || wordAt(tokens[item.to]) !== '?') return false;
    return next === undefined || isAmount(next) || /^(?:in|into|with|,|\.|\?|for)$/.test(wordAt(tokens[weight.to]));
  });
  if (at < 0) return items;
  const [lye, weight] = [items[at], items[at + 1]];
  if (!isThing(lye) || !weight) return items;
  return [...items.slice(0, at), { ...lye, from: weight.from, to: weight.from }, ...items.slice(at + 1)];
}

/** "Figure the lye at zero", "do the lye for 0 %": without superfat. */
function zeroOfLye(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const at = items.findIndex((item, k) => {
    const lye = items[k - 1];
    if (!isAmount(item) || item.quantity.value !== 0 || !/^(bare|percent)$/.test(item.quantity.dim)) return false;
    if (!isThing(lye) || lye.named.meaning.kind !== 'alkali' || item.from - lye.to > 3) return false;
    return tokens.slice(lye.to, item.from).some((token) => /^(at|for|with|to|on)$/.test(wordAt(token)));
  });
  if (at < 0) return items;
  const zero = items[at];
  if (!isAmount(zero) || items.some(isSuperfat)) return items;
  return [
    ...items.slice(0, at),
    superfat(zero.from),
    { ...nought(zero.from), quantity: { ...zero.quantity, dim: 'percent' } },
    ...items.slice(at + 1),
  ];
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
function superfatLast(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  // "rose geranium at 2 % was plenty", "sugar 3 %" are no superfat
  const isOfAdditive = ({ from }: Item): boolean => isAdditive(tokens[from - 2]) || isAdditive(tokens[from - 1]);
  const percents = items.filter(
    (item): item is Amount => isAmount(item) && item.quantity.dim === 'percent' && !isOfAdditive(item),
  );
  const [only] = percents;
  if (items.some(isSuperfat) || percents.length !== 1 || !only || only.quantity.value > mostSuperfat) return items;
  const at = items.indexOf(only);
  const next = items[at + 1];
  const before = wordAt(tokens[only.from - 1]);
  const stop = tokens[only.to];
  const ends = stop?.t === 'line' || (stop?.t === 'sign' && /^[.!?;]$/.test(stop.text));
  const alone = next === undefined || ends || next.from > only.to + 1 || (isThing(next) && canBeAsked(next));
  const weighed = items.slice(0, at).some((item) => isAmount(item) && item !== only);
  // "what lye do these need at 5 %: olive 400 g"
  const leads = !weighed && stop?.t === 'sign' && stop.text === ':' && /^(at|with|for)$/.test(before);
  // "what lye do I need for 5 %?"
  const isFor = before === 'for' && (ends || stop === undefined);
  if (!leads && (!alone || !weighed || !(isFor || /^(at|with|and|,|)$/.test(before)))) return items;
  return [...items.slice(0, at + 1), superfat(only.to), ...items.slice(at + 1)];
}

const isAdditive = (token: Token | undefined): boolean =>
  token?.t === 'name' && (token.meaning.kind === 'scent' || token.meaning.kind === 'additive');

/** Two alkalis named side by side with a ratio before or behind them: each gets its share. */
function splitApart(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  for (let k = 0; k + 2 < items.length; k += 1) {
    const ratio = isRatio(items[k]) ? items[k] : items[k + 2];
    const [first, second] = isAmount(items[k]) ? [items[k + 1], items[k + 2]] : [items[k], items[k + 1]];
    if (!isRatio(ratio) || !isThing(first) || !isThing(second) || ratio.quantity.second === null) continue;
    const [a, b] = [first.named.meaning, second.named.meaning];
    if (a.kind !== 'alkali' || b.kind !== 'alkali' || a.id === b.id || a.id === 'unsaid' || b.id === 'unsaid') continue;
    const between = tokens.slice(first.to, second.from).map(wordAt);
    const joined = between.length <= 2 && between.every((word) => /^(and|&|\+|\/|:|-|to|,|)$/.test(word));
    const near = tokens.slice(Math.min(ratio.to, second.to), Math.max(ratio.from, first.from)).length <= 5;
    const sum = ratio.quantity.value + ratio.quantity.second;
    if (!joined || !near || !(sum > 0)) continue;
    const [n, m] = ratio.quantity.numbers;
    const share = (value: number, number: number | undefined, { to }: Thing): Amount =>
      amountItem(shareOf(ratio.quantity, value / sum, number), to, to);
    return items.toSpliced(
      k,
      3,
      first,
      share(ratio.quantity.value, n, first),
      second,
      share(ratio.quantity.second, m, second),
    );
  }
  return items;
}

const liquid = /(?<!\b(?:no|not|not a|not for|than|of my|my other) )\bliquid (?:\w+ )?soap\b/i;

/** "Which lye for a liquid soap, 300 g olive": bars are of sodium soap, a liquid one is not. */
export function lyeOfLiquid(assembly: Assembly): void {
  const { items, text } = assembly.source;
  const alkalis = items.filter((item) => isThing(item) && item.named.meaning.kind === 'alkali') as Thing[];
  if (alkalis.some(({ named }) => named.meaning.id !== 'unsaid') || !liquid.test(text) || !assembly.asksForAlkali())
    return;
  const why = 'Liquid soap takes potassium hydroxide (KOH); sodium hydroxide (NaOH) makes a hard bar.';
  assembly.doubts.push({ id: 'which-alkali', said: alkalis[0]?.named.text ?? 'lye', why });
}

/** "how much potash for 500 g lard", "potash for 1 kg olive": which of the two is asked; of sodas one alone makes soap. */
export function askedWhich(assembly: Assembly, rows: readonly Row[]): void {
  const { items } = assembly.source;
  // "the soda: 143 g" may be known by now
  if (rows.some(({ named }) => named.meaning.kind === 'alkali')) return;
  if (items.some((item) => isThing(item) && item.named.meaning.kind === 'alkali')) return;
  const asked = items.find((item) => isThing(item) && item.named.meaning.kind === 'ambiguous' && canBeAsked(item));
  if (!isThing(asked)) return;
  const isWeighed = rows.some(({ named }) => named.meaning.id === 'soda');
  if (asked.named.meaning.id === 'soda' && !isWeighed && !items.some(isOtherSoda))
    assembly.assume('lye', `I took "${asked.named.text}" as caustic soda (sodium hydroxide): no other makes soap.`);
  else assembly.doubts.push({ id: 'which-alkali', said: asked.named.text });
}
