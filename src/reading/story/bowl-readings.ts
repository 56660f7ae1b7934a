/**
 * "Empty bowl: 386 g. With the olive oil in: 886 g. Then coconut on top of that: 1086 g": what the scale shows as a bowl
 * fills up. Each fat weighs what its reading has more than the one before.
 */
import { packed } from '../columns/columns.ts';
import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import type { Cut } from '../text/sentences.ts';
import { endsDotted, isAny, isFat, isIngredient, isPot, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

/** Words between a vessel and its own weight, and from one reading to the next, at the most. */
const mostOfVessel = 6;
const mostOfStep = 12;
const leastSteps = 2;

const empty = /^(?:empty|itself|alone|bare|own)$/;
/** Something came to what was there. */
const adding = /\b(?:with|in|into|on top|after|plus|added|adding|then|went|goes|poured|next|and)\b|\+/;
/** It did so for certain. */
const onTop = /\b(?:with [^:=]*\bin|on top|after|plus|added|adding|went in)\b|\+/;
const tared = /\b(?:tare|tared|taring|zero|zeroed|reset|each|separate|separately|own)\b/;
/** Alkali to fats by weight, in soaps as they are meant. */
const [leastLye, mostLye] = [0.09, 0.27];

interface Step {
  readonly name: number;
  readonly figure: number;
  readonly words: string;
}

const wordsOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((token) => (token.t === 'sign' ? token.text : isFat(token) ? 'F' : spoken(token)))
    .join(' ');

/** The figure that the vessel at `k` weighs empty; -1 where none is told. */
function tareOf(tokens: readonly Token[], k: number): number {
  let isEmpty = isAny(tokens, k - 2, k, (one) => empty.test(spoken(one)));
  for (let at = k + 1; at - k <= mostOfVessel; at++) {
    const token = tokens[at];
    if (isPlain(token)) return isEmpty && (endsDotted(token) || !isIngredient(tokens[at + 1])) ? at : -1;
    if (!token || token.t === 'line' || isIngredient(token)) return -1;
    isEmpty ||= empty.test(spoken(token));
  }
  return -1;
}

/** The readings behind it, each of one fat; what stands behind the last is another thing. */
function stepsFrom(tokens: readonly Token[], tare: number): readonly Step[] {
  const steps: Step[] = [];
  let begin = tare + 1;
  let name = -1;
  for (let at = begin; at - begin <= mostOfStep && at < tokens.length; at++) {
    const token = tokens[at];
    if (isIngredient(token)) {
      if (!isFat(token) || name >= 0) break;
      name = at;
    } else if (token?.t === 'quantity') {
      const words = wordsOf(tokens, begin, at);
      if (!isPlain(token) || name < 0 || !adding.test(words) || tared.test(words)) break;
      steps.push({ name, figure: at, words });
      begin = at + 1;
      name = -1;
    }
  }
  return steps;
}

/** The tokens with what such readings leave of each fat. */
export function bowlReadings(cut: Cut): {
  readonly tokens: readonly Token[];
  readonly told: readonly PutRight[];
  readonly unheard: string | null;
} {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => empty.test(spoken(token)))) return none;
  for (let k = 0; k < tokens.length; k++) {
    if (!isPot(tokens[k])) continue;
    const tare = tareOf(tokens, k);
    const steps = tare < 0 ? [] : stepsFrom(tokens, tare);
    const last = steps.at(-1);
    if (!last || steps.length < leastSteps) continue;
    const weights = [tare, ...steps.map(({ figure }) => figure)].map((at) => weightAt(tokens, at, tare));
    const more = weights.slice(1).map((weight, n) => weight - (weights[n] ?? Number.NaN));
    // tared in between, or told as they are
    if (!more.every((weight) => weight > 0)) continue;
    const [lye, ...lyes] = rowsBefore(tokens, tokens.length).filter(({ at }) => {
      const token = tokens[at];
      return isIngredient(token) && token.meaning.kind === 'alkali';
    });
    const share = (all: readonly number[]): number =>
      weightAt(tokens, lye?.figure ?? -1, tare) / all.reduce((sum, one) => sum + one, 0);
    const fits = (all: readonly number[]): boolean => share(all) >= leastLye && share(all) <= mostLye;
    const isTold = steps.every(({ words }) => onTop.test(words));
    const isFit = lye !== undefined && lyes.length === 0 && fits(more) && !fits(weights.slice(1));
    if (!isTold && !isFit) {
      const begin = tokens[k];
      return { ...none, unheard: rawText(prims, begin?.from ?? 0, tokens[last.figure]?.to ?? 0) };
    }
    const out = [...tokens];
    const texts = steps.map(({ name, figure }, n) => {
      const [weight, fat] = [out[figure] as Figure, out[name]];
      const now = withValue(weight.quantity, more[n] ?? 0);
      out[figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
      return `${written(now)} of ${fat?.t === 'name' ? fat.text : ''}`;
    });
    out[tare] = asAside(out[tare] as Figure, packed);
    for (let at = k; at < last.figure; at++) {
      const token = out[at];
      if (token?.t === 'name' && token.meaning.kind === 'role') out[at] = asFiller(token);
    }
    const text = `I took ${texts.join(', ')}: each reading of the scale without the one before.`;
    return { tokens: out, told: [{ text, gone: [], from: k, to: last.figure + 1, settles: true }], unheard: null };
  }
  return none;
}
