/** Shares in words: `10 % of 800 g`, `half coconut, half lard`, `equal amounts of`. */
import { fractionOf } from '../words/numbers.ts';
import { plainQuantity, type Quantity } from '../words/quantities.ts';
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import { isAny, isEach, isFat, isMark, isWeight, isWord, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { thingOf, weighedThings } from '../words/weighed.ts';

/** `10 % of 800 g`: the weight that shares are of. */
export function shareBase(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const at of figures) {
    const before = tokens[at];
    const isShare = before?.t === 'quantity' && before.quantity.dim === 'percent';
    if (!isShare && !(isWord(tokens[at - 1], 'of') && isHeaded(tokens, at - 2))) continue;
    const k = isShare ? at + 1 : at - 1;
    const [token, after] = [tokens[k], tokens[k + 1]];
    if (token?.t !== 'word' || token.text !== 'of' || !isWeight(after)) continue;
    out ??= [...tokens];
    const meaning = { kind: 'role', id: 'total-fats' } as const;
    out[k] = { t: 'name', from: token.from, to: token.to, text: 'of', meaning, how: 'name', meant: 'of fats' };
  }
  return out ?? tokens;
}

/** "%", "%  (of 850 g)", "shares of 850 g": what stands before it heads a row of shares. */
function isHeaded(tokens: readonly Token[], k: number): boolean {
  let at = k;
  while (isMark(tokens[at], '(\t')) at--;
  return isMark(tokens[at], '%') || /^(?:shares?|percents?|percentages?)$/.test(spoken(tokens[at]));
}

/** The part of the whole that stands at token `k` in words; null where none does. */
function partAt(tokens: readonly Token[], k: number): number | null {
  const token = tokens[k];
  if (token?.t === 'word') return fractionOf(token.text) ?? null;
  if (token?.t !== 'quantity' || !token.quantity.inWords || token.quantity.dim !== 'bare') return null;
  return token.quantity.value < 1 ? token.quantity.value : null;
}

/** "Coconut is a quarter", "castor the last eighth", "half coconut": where the part of a fat stands, by a step from it. */
function partBeside(tokens: readonly Token[], name: number, step: 1 | -1): number | null {
  // "half of it tallow"
  const between =
    step < 0
      ? /^(of|the|is|it|them|that|those|these|which|was|are|should|be)$/
      : /^(is|are|a|an|one|the|last|remaining|final|other|makes|gets|about)$/;
  for (let at = name + step; Math.abs(at - name) <= 4; at += step) {
    const token = tokens[at];
    if (partAt(tokens, at) !== null) return at;
    const passes = token?.t === 'word' ? between.test(token.text) : token?.t === 'sign' && /^[:=-]$/.test(token.text);
    if (!passes || (step < 0 && token?.t === 'sign')) return null;
  }
  return null;
}

/** `half coconut, half lard`, `olive one third, lard two thirds`: shares where they make the whole. */
export function fractionShares(tokens: readonly Token[]): readonly Token[] {
  for (const step of [-1, 1] as const) {
    const found = new Map<number, number>();
    tokens.forEach((token, k) => {
      if (token.t !== 'name' || token.meaning.kind !== 'fat') return;
      const at = partBeside(tokens, k, step);
      if (at !== null) found.set(at, partAt(tokens, at) ?? 0);
    });
    const sum = [...found.values()].reduce((all, value) => all + value, 0);
    const isWhole = found.size > 1 && Math.abs(sum - 1) <= 0.0101;
    // "500 g olive and half of that coconut": a share of something, and nobody knows of what
    const isOpen = step < 0 && [...found.keys()].some((at) => isOfThat(tokens, at));
    if (!isWhole && !isOpen && !(sum > 0 && sum < 0.99 && saysRest(tokens))) continue;
    return tokens.map((token, k) => {
      const value = found.get(k);
      if (value === undefined || (token.t !== 'quantity' && token.t !== 'word')) return token;
      const { text, numbers } = token.t === 'quantity' ? token.quantity : { text: token.text, numbers: [] };
      const quantity: Quantity = { ...inWords, dim: 'percent', value, text, numbers };
      return { t: 'quantity', from: token.from, to: token.to, quantity };
    });
  }
  return tokens;
}

/** "A third each of coconut, palm and olive", "olive and lard, half each": as many fats as make the whole, a part each. */
export function fractionsEach(tokens: readonly Token[]): readonly Token[] {
  for (const [k, token] of tokens.entries()) {
    const part = partAt(tokens, k);
    const isJoined = token.t === 'quantity' && token.quantity.each;
    if (part === null || !(isJoined || isEach(tokens[k + 1])) || (token.t !== 'word' && token.t !== 'quantity'))
      continue;
    const next = isJoined ? k + 1 : k + 2;
    const behind = fatsFrom(tokens, isWord(tokens[next], 'of') ? next + 1 : next, 1);
    const before = fatsFrom(tokens, /^(?:a|an|one)$/.test(spoken(tokens[k - 1])) ? k - 2 : k - 1, -1);
    if (![behind, before].some((count) => count > 1 && Math.abs(count * part - 1) < 0.011)) continue;
    const { text, numbers } = token.t === 'quantity' ? token.quantity : { text: token.text, numbers: [] };
    const quantity: Quantity = { ...inWords, dim: 'parts', value: 1, each: true, text: `${text} each`, numbers };
    return tokens.map((one, at) => {
      if (at === k) return { t: 'quantity', from: one.from, to: one.to, quantity };
      return at === k + 1 && !isJoined ? asFiller(one) : one;
    });
  }
  return tokens;
}

/** How many fats stand there in a row, with nothing but commas and "and" between them. */
function fatsFrom(tokens: readonly Token[], from: number, step: 1 | -1): number {
  let count = 0;
  for (let k = from; ; k += step) {
    if (isFat(tokens[k])) count++;
    else if (!isMark(tokens[k], ',&+:') && !/^(?:and|the|plus)$/.test(spoken(tokens[k]))) return count;
  }
}

/** "Half of that coconut": a fat that is weighed nowhere. */
function isOfThat(tokens: readonly Token[], at: number): boolean {
  const fat = tokens[at + 3];
  const isSaid = isWord(tokens[at + 1], 'of') && /^(?:it|that|them|those)$/.test(spoken(tokens[at + 2]));
  return isSaid && isFat(fat) && !weighedThings(tokens).has(thingOf(fat));
}

/** "A quarter coconut, the rest olive, 1 kg of oils". */
const saysRest = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token, k) =>
      /^(?:the )?(?:rest|remainder)$/.test(spoken(token)) &&
      [tokens[k + 1], tokens[k + 2]].some((one) => one?.t === 'name' && one.meaning.kind === 'fat'),
  );

/** What every amount in words has in common. */
const inWords = { ...plainQuantity, inWords: true } as const;

/** One fat, with none listed behind it, in a post that weighs others. */
function isAlone(tokens: readonly Token[], k: number): boolean {
  const [fat, behind, next] = [tokens[k], tokens[k + 1], tokens[k + 2]];
  if (fat?.t !== 'name' || fat.meaning.kind !== 'fat' || behind?.t === 'name') return false;
  const joins = behind?.t === 'sign' ? behind.text === ',' : behind?.t === 'word' && behind.text === 'and';
  if (joins && next?.t === 'name') return false;
  return tokens.filter((one) => one.t === 'quantity' && one.quantity.dim === 'mass').length >= leastWeights;
}

/** Weights of a recipe, at the least. */
const leastWeights = 3;

/** `Five parts olive to three of coconut to two of palm`: what stands behind the "to" are parts, too. */
export function partsOn(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let isOn = false;
  for (const k of figures) {
    const token = tokens[k];
    if (token?.t !== 'quantity') continue;
    const { dim } = token.quantity;
    const isOfFat = isFat(tokens[k + 1]) || (isWord(tokens[k + 1], 'of') && isFat(tokens[k + 2]));
    if (isOn && dim === 'bare' && isOfFat && isWord(tokens[k - 1], 'to') && isFat(tokens[k - 2])) {
      out ??= [...tokens];
      out[k] = { ...token, quantity: { ...token.quantity, dim: 'parts' } };
    } else isOn = dim === 'parts' && isOfFat;
  }
  return out ?? tokens;
}

/** `equal amounts of olive, coconut and lard` as one part each. */
export function equalParts(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!givesAt(signals, k, signal.equal)) continue;
    if (token?.t !== 'name' || token.meaning.kind !== 'role' || token.meaning.id !== 'equal') continue;
    const next = tokens[k + 1];
    // "equal parts olive, coconut and lard, 300 g each"
    if (
      isAny(
        tokens,
        k + 1,
        k + 16,
        (one, at) =>
          one.t === 'quantity' && one.quantity.dim === 'mass' && (one.quantity.each || isEach(tokens[at + 1])),
      )
    ) {
      out ??= [...tokens];
      out[k] = asFiller(token);
      continue;
    }
    // "so I took the same amount of lard"
    if (/^(?:the )?same /i.test(token.text) && isAlone(tokens, k + 1)) {
      out ??= [...tokens];
      out[k] = asFiller(token);
      continue;
    }
    // "for the same amount of oils" speaks of a sum
    if (next?.t === 'name' && next.meaning.id === 'total-fats') continue;
    out ??= [...tokens];
    out[k] = {
      t: 'quantity',
      from: token.from,
      to: token.to,
      quantity: { ...inWords, dim: 'parts', value: 1, each: true, text: token.text, numbers: [] },
    };
  }
  return out ?? tokens;
}
