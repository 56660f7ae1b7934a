import { unit } from '../units/units.ts';
import { withUnit } from './columns.ts';
import type { Lexicon } from './lexicon.ts';
import type { Token } from './tokens.ts';

/**
 * Figures whose neighbours say that they are no amount, found before amounts look for their names: the size of what a
 * price was paid for, years, the weight of one bar, the second of two words for one thing.
 */
const light = (token: Token | undefined): boolean =>
  token?.t === 'word' &&
  (token.sort === 'filler' || /^(for|cost|costs|me|was|paid|at|only|now|about|per|a)$/.test(token.text));
const priced = (token: Token | undefined): boolean => token?.t === 'aside' && token.reason === 'a price';
const massOf = (token: Token | undefined): token is Extract<Token, { t: 'quantity' }> =>
  token?.t === 'quantity' &&
  (token.quantity.dim === 'mass' || token.quantity.dim === 'volume' || token.quantity.dim === 'bare');

function reach(tokens: readonly Token[], from: number, step: -1 | 1): number | null {
  let said = false;
  for (let k = from + step; k >= 0 && k < tokens.length && Math.abs(k - from) <= 4; k += step) {
    const token = tokens[k];
    if (massOf(token)) return said ? k : null;
    if (!light(token)) return null;
    if (token?.t === 'word' && /^(for|cost|costs|at|per|paid)$/.test(token.text)) said = true;
  }
  return null;
}

/** `1 lb of lye costs me $5.49`: back over the verb and the name to the figure. */
function costOf(tokens: readonly Token[], price: number): number | null {
  let k = price - 1;
  let verb = false;
  while (k >= 0 && price - k <= 4 && light(tokens[k])) {
    const token = tokens[k];
    if (token?.t === 'word' && /^costs?$/.test(token.text)) verb = true;
    k--;
  }
  const priceWord = tokens[k];
  if (priceWord?.t === 'name' && priceWord.meaning.kind === 'role' && priceWord.meaning.id === 'price') {
    verb = true;
    k--;
  }
  if (!verb) return null;
  if (tokens[k]?.t === 'name') k--;
  while (k >= 0 && tokens[k]?.t === 'word' && /^(of|the|my)$/.test((tokens[k] as { text: string }).text)) k--;
  return massOf(tokens[k]) ? k : null;
}

/** Whether an amount was said in the same sentence before token `k`, so that "100 g of it" is a part of that. */
function spokenOf(tokens: readonly Token[], k: number): boolean {
  for (let at = k - 1; at >= 0 && k - at <= 14; at--) {
    const token = tokens[at];
    if (token?.t === 'line' || (token?.t === 'sign' && token.text === '.')) return false;
    if (massOf(token)) return true;
  }
  return false;
}

export const packed = 'the size of a vessel or a pack';

export function setAside(tokens: readonly Token[]): Token[] {
  const out = [...tokens];
  const aside = (k: number, reason: string): void => {
    const token = out[k];
    if (token?.t === 'quantity')
      out[k] = { t: 'aside', reason, numbers: token.quantity.numbers, from: token.from, to: token.to };
  };
  const weighed = tokens.some((token) => token.t === 'quantity' && token.quantity.dim === 'mass');
  let bars = -1;
  tokens.forEach((token, k) => {
    if (priced(token))
      for (const found of [reach(tokens, k, -1), reach(tokens, k, 1), costOf(tokens, k)])
        if (found !== null) aside(found, 'the size of what was bought');
    if (
      token.t === 'quantity' &&
      token.quantity.dim === 'bare' &&
      weighed &&
      Number.isInteger(token.quantity.value) &&
      token.quantity.value >= 1900 &&
      token.quantity.value < 2100
    )
      aside(k, 'a year');
    // "the 3 L tin", "a 5 kg bucket": a pack, unless it is "a 500 g tub of"
    const next = tokens[k + 1];
    const beyond = tokens[k + 2];
    if (
      massOf(token) &&
      token.quantity.dim !== 'bare' &&
      next?.t === 'name' &&
      next.meaning.kind === 'role' &&
      next.meaning.id === 'pot' &&
      !/ of$/.test(next.meant) &&
      !(beyond?.t === 'word' && beyond.text === 'of') &&
      token.quantity.times === null
    )
      aside(k, packed);
    if (
      massOf(token) &&
      token.quantity.dim !== 'bare' &&
      next?.t === 'word' &&
      next.text === 'of' &&
      beyond?.t === 'word' &&
      /^(it|that|them|those|which|this)$/.test(beyond.text) &&
      !tokens
        .slice(Math.max(0, k - 3), k)
        .some((one) => one.t === 'word' && /^(only|using|used|use|just|took|take)$/.test(one.text)) &&
      spokenOf(tokens, k)
    )
      aside(k, 'a part of what was said');
    if (token.t === 'line' || (token.t === 'sign' && token.text === '.')) bars = -1;
    if (token.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'bars') bars = k;
    if (bars >= 0 && k - bars <= 12 && token.t === 'quantity' && token.quantity.dim === 'mass') {
      const each =
        token.quantity.each ||
        tokens
          .slice(bars, k)
          .some((one) => one.t === 'name' && one.meaning.kind === 'role' && one.meaning.id === 'each') ||
        tokens
          .slice(Math.max(0, k - 2), k)
          .some((one) => (one.t === 'word' || one.t === 'sign') && /^(at|@|of)$/.test(one.text) && k - bars <= 3);
      if (each) {
        aside(k, 'the weight of one bar');
        bars = -1;
      }
    }
  });
  return out;
}

/** `10 % of 800 g`: the weight that shares are of. */
export function shareBase(tokens: readonly Token[]): Token[] {
  return tokens.map((token, k) => {
    const before = tokens[k - 1];
    const after = tokens[k + 1];
    const shares =
      before?.t === 'quantity' &&
      before.quantity.dim === 'percent' &&
      after?.t === 'quantity' &&
      after.quantity.dim === 'mass';
    return token.t === 'word' && token.text === 'of' && shares
      ? {
          t: 'name',
          meaning: { kind: 'role', id: 'total-fats' },
          text: 'of',
          how: 'name',
          meant: 'of fats',
          from: token.from,
          to: token.to,
        }
      : token;
  });
}

/** `"g": 250`, `grams = 250`: the unit stands before its figure. */
export function unitsBefore(tokens: readonly Token[], lexicon: Lexicon): Token[] {
  return tokens.map((token, k) => {
    if (token.t !== 'quantity' || token.quantity.dim !== 'bare') return token;
    let at = k - 1;
    let pointed = false;
    for (let sign = tokens[at]; sign?.t === 'sign' && /^["':=]$/.test(sign.text); sign = tokens[--at])
      pointed ||= /[:=]/.test(sign.text);
    const word = tokens[at];
    const hit = pointed && word?.t === 'word' ? lexicon.units.next?.get(word.text)?.hit : null;
    return hit && unit(hit).dimension === 'mass' ? { ...token, quantity: withUnit(token.quantity, hit) } : token;
  });
}

/** `equal amounts of olive, coconut and lard` as one part each. */
export function equalParts(tokens: readonly Token[]): Token[] {
  return tokens.map((token) =>
    token.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'equal'
      ? {
          t: 'quantity',
          from: token.from,
          to: token.to,
          quantity: {
            dim: 'parts',
            value: 1,
            other: null,
            upTo: null,
            second: null,
            unit: null,
            negative: false,
            each: true,
            times: null,
            inWords: true,
            text: token.text,
            numbers: [],
          },
        }
      : token,
  );
}
