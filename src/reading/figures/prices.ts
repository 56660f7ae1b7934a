/** Prices beside weights: `800 g at 8.40 = 6.72`, `500 g @ 7.90/kg = 3.95`, `1 l bottle 7.99 €, used 540 g`. */

import { linesOf, packed } from '../columns/columns.ts';
import { rate } from '../words/aside.ts';
import { signal } from '../words/signal-words.ts';
import { gives, givesAt, type Signals } from '../words/signals.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWeight,
  isWord,
  wordAt,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

const isBare = (token: Token | undefined): token is Figure => token?.t === 'quantity' && token.quantity.dim === 'bare';
const isSign = (token: Token | undefined, text: string): boolean => token?.t === 'sign' && token.text === text;
export const isPrice = (token: Token | undefined): boolean =>
  token?.t === 'aside' && (token.reason === 'a price' || token.reason === rate);
const isTimes = (token: Token | undefined): boolean =>
  (token?.t === 'sign' && /^[@×*]$/.test(token.text)) || (token?.t === 'word' && /^(at|x)$/.test(token.text));

/** Lines that reckon so before a bare `= 4.38` at the end of another is taken for money too. */
const leastReckoned = 2;

/** Bare figures that are multiplied and make another, and what an equals sign gives in a line with a price. */
export function priceLines(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  const put = (k: number, token: Figure): void => {
    out ??= [...tokens];
    out[k] = asAside(token, 'a price');
  };
  let reckoned = 0;
  const loose: number[] = [];
  for (const { from, to } of linesOf(tokens)) {
    let priced = false;
    for (let k = from; k < to; k++) {
      const token = tokens[k];
      priced ||= isPrice(token);
      if (!isBare(token)) continue;
      const makes = isTimes(tokens[k - 1]) && isSign(tokens[k + 1], '=') && isBare(tokens[k + 2]) && k + 2 < to;
      if (makes) {
        put(k, token);
        priced = true;
      } else if (isSign(tokens[k - 1], '=')) {
        if (priced) {
          put(k, token);
          reckoned++;
        } else if (k + 1 === to) loose.push(k);
      }
    }
  }
  if (reckoned >= leastReckoned)
    for (const k of loose) {
      const token = tokens[k];
      if (isBare(token)) put(k, token);
    }
  return out ?? tokens;
}

/** "Cost: coconut 2,40 + lye 1,10.", "Budget per batch: fats 7.10, paper 0.80 = 9.40": money beside every name. */
export function costLines(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    if (!isMark(tokens[k], ':')) continue;
    let from = k;
    while (from > 0 && k - from <= longestHead && !endsRow(tokens[from - 1])) from--;
    if (!isAny(tokens, from, k, (one) => isRole(one, 'price') || isWord(one, 'budget'))) continue;
    let to = k + 1;
    while (!endsRow(tokens[to]) && !endsDotted(tokens[to - 1])) to++;
    const figures = tokens.slice(k, to).filter(({ t }) => t === 'quantity');
    if (figures.length === 0 || !figures.every((one) => isBare(one) && cents.test(one.quantity.text))) continue;
    out ??= [...tokens];
    for (let at = k + 1; at < to; at++) {
      const token = tokens[at];
      if (isBare(token)) out[at] = asAside(token, 'a price');
      else if (token?.t === 'name') out[at] = asFiller(token);
    }
  }
  return out ?? tokens;
}
const longestHead = 6;

const buying = /^(?:got|get|bought|buy|found|paid|offer|reduced|sold)$/;
const mostWords = 6;
const cents = /^\d+[.,]\d\d\.?$/;

/** "I got the coconut for 4.99". */
const isPaid = (tokens: readonly Token[], k: number, price: Figure): boolean =>
  cents.test(price.quantity.text) &&
  wordAt(tokens, k - 1) === 'for' &&
  !isIngredient(tokens[k + 1]) &&
  isAny(tokens, k - mostWords, k, (one) => one.t === 'word' && buying.test(one.text));

/** "The shea alone was 7.50 for 500 g": cents, and what was paid for. */
export function centsFor(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const price = tokens[k];
    if (!isBare(price)) continue;
    const [before, word, size] = [tokens[k - 1], tokens[k + 1], tokens[k + 2]];
    if (isPaid(tokens, k, price)) {
      out ??= [...tokens];
      out[k] = asAside(price, 'a price');
      continue;
    }
    if (!isMeasured(size) || !/^\d+[.,]\d\d$/.test(price.quantity.text)) continue;
    if (word?.t !== 'word' || word.text !== 'for' || before?.t === 'name') continue;
    out ??= [...tokens];
    out[k] = asAside(price, 'a price');
    out[k + 2] = asAside(size, 'the size of what was bought');
  }
  return out ?? tokens;
}

/** "It cost me eleven pounds fifty": money, not a weight. */
export function poundsPaid(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.unit?.id !== 'lb') continue;
    const whole = pricedBy(tokens, k);
    if (whole > k) {
      out ??= [...tokens];
      out[k] = asAside(token, rate);
      const by = tokens[whole];
      if (by?.t === 'quantity') out[whole] = asAside(by, rate);
      continue;
    }
    let at = k - 1;
    for (let one = tokens[at]; one?.t === 'word' && paidTo.test(one.text) && k - at <= 3; one = tokens[--at]);
    const verb = tokens[at];
    const next = tokens[k + 1];
    if (!(verb?.t === 'name' && verb.meaning.kind === 'role' && verb.meaning.id === 'price')) continue;
    out ??= [...tokens];
    out[k] = asAside(token, 'a price');
    if (isBare(next) && next.quantity.value < 100) out[k + 1] = asAside(next, 'a price');
  }
  return out ?? tokens;
}

/** "21 pounds the kilo", "9 pounds for 500 g": where what is paid for stands; that token where nothing is. */
function pricedBy(tokens: readonly Token[], k: number): number {
  const word = wordAt(tokens, k + 1);
  const at = /^(?:a|the|per|each|every|for)$/.test(word) ? k + 2 : k + 1;
  const by = wordAt(tokens, at) === 'the' ? tokens[at + 1] : tokens[at];
  if (by?.t === 'word') return /^(?:kilo|kg|kilogram)$/.test(by.text) && !isIngredient(tokens[at + 1]) ? at : k;
  if (by?.t !== 'quantity' || !/^(?:kg|g)$/.test(by.quantity.unit?.id ?? '')) return k;
  const own = tokens[k];
  // "2.2 pounds the kilo"
  const isSame = own?.t === 'quantity' && Math.abs(own.quantity.value / by.quantity.value - 1) < 0.25;
  const isOfThing = isIngredient(tokens[at + 1]) || (wordAt(tokens, at + 1) === 'of' && !isStop(tokens[at + 2]));
  // "9 pounds 500 g lard"
  const isBy = word !== '' || /^(?:a|half) |hundred/.test(by.quantity.text);
  return isBy && !isSame && !isOfThing ? at : k;
}

const paidTo = /^(?:me|us|him|her|them|you|about|around|only|just|nearly|almost|over|of|is|was)$/;

/** A price, or a word of prices, stands anywhere in the post. */
export const speaksOfMoney = (tokens: readonly Token[]): boolean =>
  tokens.some((token) => isPrice(token) || isRole(token, 'price'));

const isUse = (token: Token | undefined): boolean => gives(token, signal.using);
const endsRow = (token: Token | undefined): boolean =>
  token === undefined || token.t === 'line' || (token.t === 'sign' && rowEnds.has(token.text));
const rowEnds: ReadonlySet<string> = new Set([';', '.', '?', '!']);
const tellsPack = (token: Token): boolean => isPrice(token) || isPot(token);

/**
 * Rows of one ingredient that tell its pack or price and then what was used of it: the pack is set aside, and what was
 * used stands beside the name.
 */
export function usedOfPacks(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let priced = 0;
  for (let use = 0; use < tokens.length; use++) {
    if (!givesAt(signals, use, signal.using) || !isUse(tokens[use])) continue;
    let [from, to] = [use, use];
    while (from > 0 && !endsRow(tokens[from - 1])) from--;
    while (!endsRow(tokens[to])) to++;
    use = to;
    const row = tokens.slice(from, to);
    const taken = usedIn(row);
    if (!taken) continue;
    out ??= [...tokens];
    // "olive oil, light, 3 litre tin": the kind is the name's
    let size = taken.name;
    while (!(isMeasured(row[size]) || isBare(row[size]) || isPot(row[size])) && size < taken.at) size++;
    if (size === taken.at) size = taken.name;
    for (let k = 0; k < row.length; k++) {
      const token = row[k];
      if (!token || k === taken.at || isOfAlkali(token)) continue;
      if (isMeasured(token) || isBare(token)) out[from + k] = asAside(token, packed);
      else if ((k > size && k < taken.at && token.t !== 'aside') || (k > taken.at && isWord(token, 'it')))
        out[from + k] = asFiller(token, 'only');
    }
    if (row.some(isCents)) priced++;
  }
  return out && priced >= leastPriced ? pricesOfRest(out) : (out ?? tokens);
}

/** "KOH is 90 % pure and I weighed 230 g of it". */
const isOfAlkali = (token: Token): boolean =>
  isRole(token, 'purity') || (token.t === 'quantity' && token.quantity.dim === 'percent');

/** Rows with a price and what was used, at the least, that tell what such a figure is in the rows without the latter. */
const leastPriced = 2;

const isCents = (token: Token): boolean => isBare(token) && /^\d+[.,]\d\d$/.test(token.quantity.text);

/** "Lye, 1 kg tub ... 4.10, takes ???": the price, and the pack behind the name, of what is asked for. */
function pricesOfRest(tokens: Token[]): readonly Token[] {
  for (const [k, token] of tokens.entries())
    if (token.t === 'quantity' && isCents(token)) tokens[k] = asAside(token, 'a price');
  return tokens;
}

/** Where the only name of a row stands, and the one weight in it that was used. */
function usedIn(row: readonly Token[]): { readonly name: number; readonly at: number } | null {
  const name = row.findIndex(isIngredient);
  if (name < 0 || row.filter(isIngredient).length !== 1) return null;
  const used = row.flatMap((token, k) => {
    if (!isMeasured(token) || token.quantity.upTo !== null) return [];
    let at = k - 1;
    while (row[at]?.t === 'word' && !isUse(row[at]) && k - at <= 3) at--;
    // "340 g of it used"
    const isBehind = isWord(row[k + 1], 'of') && isWord(row[k + 2], 'it') && isUse(row[k + 3]);
    return isUse(row[at]) || isBehind ? [k] : [];
  });
  const [at] = used;
  if (at === undefined || used.length > 1 || at < name) return null;
  const measured = row.filter(isMeasured).length;
  return measured === 1 || row.some(tellsPack) || isWeighedOut(row, at) ? { name, at } : null;
}

/** "Water, 5 l (use 370 g)": a volume, and in a bracket the weight that was taken of it. */
const isWeighedOut = (row: readonly Token[], at: number): boolean =>
  isWeight(row[at]) &&
  isMark(row[at + 1], ')') &&
  [1, 2, 3].some((back) => isMark(row[at - back], '(')) &&
  row.some((token) => isMeasured(token) && token.quantity.dim === 'volume');
