/**
 * "Twice as much water as lye, so 210 g", "coconut a third of the olive, that's 200 g": a weight that is reckoned from
 * another one, and told. It is of what is reckoned, and never of what it is reckoned from.
 */
import type { Quantity } from '../words/quantities.ts';
import { endsDotted, isIngredient, isMark, isWeight, spoken, wordOrStop } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedAt } from '../words/weighed.ts';

type Name = Extract<Token, { t: 'name' }>;

const factors: Readonly<Record<string, number>> = {
  half: 1 / 2,
  third: 1 / 3,
  quarter: 1 / 4,
  as: 1,
  same: 1,
  equal: 1,
};
const linking = /^(?:times|as|much|of|the|my|a|an|amount|weight|quantity|half|again|heavy|to|with)$/;
const mostLinks = 7;
const kinds = /^(?:fat|alkali|stock|water|ice|liquid)$/;
const isStuff = (token: Token | undefined): token is Name => isIngredient(token) && kinds.test(token.meaning.kind);

/** How many times as much, by the word or figure that begins such a phrase; null where none does. */
function factorAt(token: Token | undefined): number | null {
  if (token?.t === 'word') return factors[token.text] ?? null;
  if (token?.t === 'name') return token.meaning.id === 'equal' ? 1 : null;
  if (token?.t !== 'quantity') return null;
  const { dim, value, inWords } = token.quantity;
  return dim === 'ratio' || (dim === 'bare' && (inWords || value < 1)) ? value : null;
}

/** "Of the oils". */
const isAllFats = (token: Token | undefined): token is Name =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'total-fats';

/** Words and signs before the weight that comes of it. */
const leading =
  /^(?:so|thats|that|is|ie|makes|made|which|was|came|comes|to|equals|meaning|about|roughly|exactly|just)$/;

interface Reckoned {
  /** What weighs so much, what it is reckoned from, and the weight. */
  readonly owner: number;
  readonly base: number;
  readonly weight: number;
}

/** A weight that follows from token `from` on; `surely`: it is said to be what comes of it. */
function weightBehind(tokens: readonly Token[], from: number): { weight: number; surely: boolean } | null {
  if (!isMark(tokens[from], ',(=-–—:') && !leading.test(spoken(tokens[from]))) return null;
  let surely = !isMark(tokens[from], ',-–—:');
  let k = isMark(tokens[from], ',(=-–—:') ? from + 1 : from;
  for (; leading.test(spoken(tokens[k])) || isMark(tokens[k], '='); k++) surely = true;
  return isWeight(tokens[k]) ? { weight: k, surely } : null;
}

/** The thing before the phrase, with nothing but "is" between: "water is twice the lye". */
function ownerBefore(tokens: readonly Token[], head: number): number {
  let k = head - 1;
  while (
    /^(?:a|an|is|was|at|about|exactly|just|one|to|be|weighs)$/.test(spoken(tokens[k])) ||
    isMark(tokens[k], ':=\t')
  )
    k--;
  // the figure that begins the phrase is no weight
  const since = Math.max(0, k - longestBefore);
  return isStuff(tokens[k]) && !weighedAt(tokens.slice(since, head), k - since) ? k : -1;
}

/** Tokens before a name in which its weight may stand. */
const longestBefore = 6;

/** The phrase that begins at `head`, with its weight. */
function reckonedAt(tokens: readonly Token[], head: number, factor: number): Reckoned | null {
  const names: number[] = [];
  let k = head + 1;
  for (; k - head <= mostLinks && names.length < 2; k++) {
    if (isStuff(tokens[k]) || isAllFats(tokens[k])) names.push(k);
    else if (!linking.test(spoken(tokens[k]))) break;
  }
  const [first, second] = names;
  if (first === undefined) return null;
  // "as much water as lye"; "twice the lye in water"; "water twice the lye"
  const isPair = second !== undefined && /\bas$/.test(spokenBetween(tokens, first + 1, second));
  const inOwner = second === undefined && spoken(tokens[k]) === 'in' && isStuff(tokens[k + 1]) ? k + 1 : -1;
  if (second !== undefined && !isPair) return null;
  const base = second ?? first;
  const owner = isPair ? first : inOwner >= 0 ? inOwner : ownerBefore(tokens, head);
  const found = owner < 0 ? null : weightBehind(tokens, Math.max(owner, base) + 1);
  const [of, from] = [tokens[owner], tokens[base]];
  if (!found || !isStuff(of) || !(isStuff(from) || isAllFats(from)) || thingOf(of) === thingOf(from)) return null;
  const next = [1, 2].map((step) => tokens[found.weight + step]).find((token) => isStuff(token));
  const isTheirs =
    !endsDotted(tokens[found.weight]) &&
    (isStuff(tokens[found.weight + 1]) || spoken(tokens[found.weight + 1]) === 'of');
  if (isTheirs && isStuff(next) && thingOf(next) !== thingOf(of)) return null;
  const said = (tokens[found.weight] as Figure).quantity;
  const whole = baseOf(tokens, base);
  if (!found.surely && !(whole !== null && isNear(said.value, factor * whole))) return null;
  return { owner, base, weight: found.weight };
}

const spokenBetween = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(spoken)
    .join(' ')
    .replace(/ ?(?:the|my)$/, '');

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(1, 0.02 * b);

/** The weight of what it is reckoned from, where it stands elsewhere; null where it stands nowhere, or twice. */
function baseOf(tokens: readonly Token[], base: number): number | null {
  const name = tokens[base] as Name;
  if (isAllFats(name)) return allFats(tokens);
  const weights = new Set<number>();
  tokens.forEach((token, k) => {
    if (k === base || token.t !== 'name' || thingOf(token) !== thingOf(name)) return;
    const beside = [k - 1, k + 1, spoken(tokens[k - 1]) === 'of' ? k - 2 : k - 1, k + 2].map((at) => tokens[at]);
    const weight = beside.find(isWeight);
    if (weight) weights.add(weight.quantity.value);
  });
  const [only] = weights;
  return weights.size === 1 ? (only ?? null) : null;
}

/** What the fats before and behind weigh, each where it is first weighed; null where none is. */
function allFats(tokens: readonly Token[]): number | null {
  const weights = new Map<string, number>();
  tokens.forEach((token, k) => {
    if (token.t !== 'name' || token.meaning.kind !== 'fat' || weights.has(thingOf(token))) return;
    const weight = [tokens[k + 1], tokens[k - 1], tokens[k + 2], tokens[k - 2]].find(isWeight);
    if (weight) weights.set(thingOf(token), weight.quantity.value);
  });
  return weights.size > 0 ? [...weights.values()].reduce((sum, one) => sum + one, 0) : null;
}

/** The weights that are reckoned from others, beside what they are of. */
export function reckoned(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let head = 0; head < tokens.length; head++) {
    const factor = factorAt(tokens[head]);
    const found = factor === null ? null : reckonedAt(out ?? tokens, head, factor);
    const figure = found ? tokens[found.weight] : undefined;
    if (factor === null || !found || !isWeight(figure)) continue;
    const begins = tokens[head] as Token;
    const whole = baseOf(tokens, found.base);
    const { quantity } = figure;
    const isSo = whole === null || isNear(quantity.value, factor * whole);
    const rival = isSo
      ? {}
      : { upTo: factor * (whole ?? 0), text: `${quantity.text} or ${Number((factor * (whole ?? 0)).toFixed(1))} g` };
    const numbers = begins.t === 'quantity' ? [...quantity.numbers, ...begins.quantity.numbers] : quantity.numbers;
    const reckonedOne: Quantity = { ...quantity, ...rival, numbers };
    out ??= [...tokens];
    for (let k = head + 1; k < found.weight; k++) {
      const token = tokens[k];
      if (token && k !== found.owner && token.t !== 'line' && token.t !== 'sign') out[k] = asFiller(token);
    }
    out[head] = { t: 'quantity', from: begins.from, to: begins.to, quantity: reckonedOne };
    out[found.weight] = wordOrStop(figure);
    // "so 200 g coconut": named once more
    for (const at of [found.weight + 1, found.weight + 2]) {
      const again = tokens[at];
      if (
        isStuff(again) &&
        thingOf(again) === thingOf(tokens[found.owner] as Name) &&
        (at === found.weight + 1 || spoken(tokens[at - 1]) === 'of')
      )
        out[at] = asFiller(again);
    }
    head = found.weight;
  }
  return out ?? tokens;
}
