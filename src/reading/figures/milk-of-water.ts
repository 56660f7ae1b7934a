/**
 * "280 g water, half of it goat milk", "water 280 g, of which 80 g is beer": a liquid that is a part of the water said
 * right before. The rest of it is water.
 */
import { withValue } from '../taken-back/put-right.ts';
import {
  endsDotted,
  isAny,
  isEach,
  isIngredient,
  isMark,
  isWeight,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

const fractions: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };
const between =
  /^(?:of|it|that|this|which|the|as|is|was|were|being|in|a|made|up|total|water|liquid|replaced|swapped|by|with|for)$/;
/** Tokens from the weight of the water to the part, and from the part to what it is of. */
const longestWay = 8;

const isLiquid = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'liquid';
const isWater = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'water';

/** The weight of the water that stands right before token `k` in its sentence; -1 where none does. */
function waterBefore(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0 && k - at <= longestWay; at--) {
    const token = tokens[at];
    if (isWeight(token)) {
      if (endsDotted(token)) return -1;
      const isOf = spoken(tokens[at + 1]) === 'of';
      return isWater(tokens[at + 1]) || (isOf && isWater(tokens[at + 2])) || isWater(tokens[at - 1]) ? at : -1;
    }
    if (!isWater(token) && !isMark(token, ',(;:–—-') && !between.test(wordAt(tokens, at))) return -1;
  }
  return -1;
}

/** The liquid that the part at `k` is of; -1 where it is of something else. */
function liquidBehind(tokens: readonly Token[], k: number): number {
  let isSaid = false;
  for (let at = k + 1; at < tokens.length && at - k <= longestWay; at++) {
    if (isLiquid(tokens[at])) return (isSaid || at === k + 1) && !isWished(tokens, at) ? at : -1;
    if (!between.test(wordAt(tokens, at))) return -1;
    isSaid ||= /^(?:it|that|this|which|as|is|was|were|being|replaced|swapped)$/.test(wordAt(tokens, at));
  }
  return -1;
}

/** "A third milk would be nice next time". */
const isWished = (tokens: readonly Token[], k: number): boolean =>
  isAny(tokens, k + 1, sentenceAt(tokens, k, longestWay).to, (_, at) =>
    /^(?:would|could|might|next)$/.test(wordAt(tokens, at)),
  );

/** The tokens with such a part in grams, and the water without it. */
export function milkOfWater(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  if (!tokens.some(isLiquid)) return tokens;
  for (let k = 1; k < tokens.length; k++) {
    const part = tokens[k];
    const share = part?.t === 'word' ? fractions[part.text] : undefined;
    if (!part || (share === undefined && !isWeight(part))) continue;
    const liquid = liquidBehind(tokens, k);
    const at = liquid < 0 ? -1 : waterBefore(tokens, k);
    const water = (out ?? tokens)[at];
    if (!isWeight(water)) continue;
    const isOfIt = [k - 1, k + 1].some((one) => /^(?:which|of|that)$/.test(wordAt(tokens, one)));
    const whole = water.quantity.value;
    const value = isWeight(part) ? part.quantity.value : whole * (share ?? 0);
    // "280 g water, 80 g goat milk" are two
    if ((isWeight(part) && !isOfIt) || value >= whole) continue;
    out ??= [...tokens];
    out[at] = { ...water, quantity: { ...withValue(water.quantity, whole - value), numbers: water.quantity.numbers } };
    const figure: Figure = isWeight(part)
      ? part
      : {
          t: 'quantity',
          from: part.from,
          to: part.to,
          quantity: { ...withValue(water.quantity, value), inWords: true },
        };
    out[k] = figure;
    for (let n = k + 1; n < liquid; n++) out[n] = asFiller(tokens[n] as Token);
    for (let n = at + 1; n < k; n++)
      if (wordAt(tokens, n) === 'which' || wordAt(tokens, n) === 'of') out[n] = asFiller(tokens[n] as Token);
  }
  return out ?? tokens;
}

const joints =
  /^(?:and|exactly|about|just|of|the|in|all|total|together|altogether|liquid|liquids|to|a|this|time|today|now|is|was|makes?)$/;

/** The weight that stands beside the two, with nothing else between; -1 where none does. */
function wholeBeside(tokens: readonly Token[], from: number, to: number): number {
  const isBetween = (at: number): boolean => joints.test(spoken(tokens[at])) || isMark(tokens[at], ',:=(–—-');
  let at = to;
  while (at - to <= 4 && isBetween(at)) at++;
  if (isWeight(tokens[at]) && !isIngredient(tokens[at + 1])) return at;
  at = from - 1;
  while (from - at <= 4 && isBetween(at)) at--;
  return isWeight(tokens[at]) && !isIngredient(tokens[at - 1]) ? at : -1;
}

/** "Half", "two thirds", "70 %"; null where it is no part. */
function partAt(token: Token | undefined): number | null {
  if (token?.t === 'word') return fractions[token.text] ?? null;
  if (token?.t !== 'quantity') return null;
  const { dim, value, inWords } = token.quantity;
  return (dim === 'percent' || (dim === 'bare' && inWords)) && value > 0 && value < 1 ? value : null;
}

const isWhole = (one: number, other: number): boolean => Math.abs(one + other - 1) < 0.011;

/** "50/50 water and milk" */
const isEven = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.dim === 'ratio' && token.quantity.second === token.quantity.value;

interface Parts {
  /** Where the two have room for their weights, and what share each has. */
  readonly at: readonly [number, number];
  readonly shares: readonly [number, number];
  readonly end: number;
}

/** The parts of water and of a liquid that begin at `k`. */
function partsAt(tokens: readonly Token[], k: number): Parts | null {
  const ofIt = (at: number): number =>
    wordAt(tokens, at) === 'of' && /^(?:it|that)$/.test(wordAt(tokens, at + 1)) ? at + 2 : at;
  const first = tokens[k];
  const name = ofIt(k + 1);
  const one = tokens[name];
  const even = isEven(first);
  const share = even ? 0.5 : partAt(first);
  if (share === null || !(isWater(one) || isLiquid(one))) return null;
  let second = name + 1;
  while (isMark(tokens[second], ',+&/') || /^(?:and|a)$/.test(wordAt(tokens, second))) second++;
  const rest = even ? 0.5 : partAt(tokens[second]);
  if (rest === null || !isWhole(share, rest) || (even && second === name + 1)) return null;
  let at = even ? second : ofIt(second + 1);
  if (/^(?:flat|frozen|fresh|cold|plain|warm|full|whole)$/.test(wordAt(tokens, at))) at++;
  const other = tokens[at];
  if (!(isWater(other) || isLiquid(other)) || isWater(one) === isWater(other)) return null;
  return { at: [k, even ? second - 1 : second], shares: [share, rest], end: at + 1 };
}

/** "280 g liquid, half water half goat milk", "280 g of 50/50 water and beer": so much of each. */
export function halfAndHalf(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isLiquid)) return tokens;
  let out: Token[] | null = null;
  for (let k = 0; k + 3 < tokens.length; k++) {
    const found = partsAt(tokens, k);
    const at = found ? wholeBeside(tokens, k, found.end) : -1;
    const whole = tokens[at];
    // "half beer, half water, 150 g each" tells the parts
    if (!found || !isWeight(whole) || isEach(tokens[at + 1])) continue;
    out ??= [...tokens];
    for (const [n, half] of found.at.entries()) {
      const token = tokens[half] as Token;
      const part = withValue(whole.quantity, whole.quantity.value * (found.shares[n] ?? 0));
      const numbers = token.t === 'quantity' ? token.quantity.numbers : [];
      out[half] = { t: 'quantity', from: token.from, to: token.to, quantity: { ...part, inWords: true, numbers } };
    }
    out[at] = asAside(whole, 'a total that agrees');
    if (at < k && spoken(tokens[at + 1]) !== '') out[at + 1] = asFiller(tokens[at + 1] as Token);
  }
  return out ?? tokens;
}
