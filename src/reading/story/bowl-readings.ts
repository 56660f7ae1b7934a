/**
 * "Empty bowl: 386 g. With the olive oil in: 886 g. Then coconut on top of that: 1086 g": what the scale shows as a bowl
 * fills up. Each fat weighs what its reading has more than the one before; "the same jug, empty it's 215 g: jug + olive oil
 * 815 g, jug + coconut (wiped) 465 g", more than the vessel.
 */

import { packed } from '../columns/columns.ts';
import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { endsDotted, isAny, isFat, isIngredient, isPot, isStop, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowsBefore, weightAt } from './tale.ts';

/** Words between a vessel and its own weight, and from one reading to the next, at the most. */
const mostOfVessel = 6;
const mostOfStep = 12;
const leastSteps = 2;
/** Up to the first fat, where somebody tells that the scale was never set to zero. */
const mostOfTale = 30;
/** "I never pressed tare", "I don't zero my scale, I just keep adding"; zero is a figure. */
const untared =
  /\b(?:never|didnt|dont|did not|do not|without|forgot(?:ten)?|not once) (?:to )?(?:ever )?(?:press(?:ed|ing)? |hit |set )?(?:the |my )?(?:tare|tared|taring|zeroed|zeroing|reset|#)(?! (?:it|the [a-z]+) (?:for|with) )|\b(?:keep|kept) adding\b|\b(?:lost|has no|have no|had no|with no|without a|broken|dead) (?:(?:its|their|the|working) )*tare\b|\btare (?:button )?(?:is |was |has |s )*(?:broken|dead|gone|stuck|bust|given up|packed in)\b|\breadings? with the [a-z]+ on\b/;

const empty = /^(?:empty|itself|alone|bare|own)$/;
/** Something came to what was there. */
const adding = /\b(?:with|in|into|on top|after|plus|added|adding|then|went|goes|poured|next|and|until|till|to)\b|\+/;
/** It did so for certain. */
const onTop =
  /\b(?:with [^:=]*\bin|on top|after|plus|added|adding|went in|(?:until|till) (?:it|that|the (?:scales?|display|pan|bowl|pot)) (?:now )?(?:showed|shows|read|reads|said|says|stood at|was at|got to|came to|reached))\b|\+/;
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
    // "weighs 412 g empty"
    if (isPlain(token) && !endsDotted(token) && empty.test(spoken(tokens[at + 1]))) return at;
    if (isPlain(token)) return isEmpty && (endsDotted(token) || !isIngredient(tokens[at + 1])) ? at : -1;
    if (!token || token.t === 'line' || isIngredient(token)) return -1;
    isEmpty ||= empty.test(spoken(token));
  }
  return -1;
}

/** The readings behind it, each of one fat; what stands behind the last is another thing. */
function stepsFrom(tokens: readonly Token[], tare: number, isUntared: boolean): readonly Step[] {
  const steps: Step[] = [];
  let begin = tare + 1;
  let name = -1;
  const reach = (): number => (isUntared && steps.length === 0 ? mostOfTale : mostOfStep);
  for (let at = begin; at - begin <= reach() && at < tokens.length; at++) {
    const token = tokens[at];
    if (isIngredient(token)) {
      if (!isFat(token) || name >= 0) break;
      name = at;
    } else if (token?.t === 'quantity') {
      const words = wordsOf(tokens, begin, at);
      if (!isPlain(token) || name < 0 || !adding.test(words) || (!isUntared && tared.test(words))) break;
      steps.push({ name, figure: at, words });
      begin = at + 1;
      name = -1;
    }
  }
  return steps;
}

/** "Bowl plus coconut 612 g, bowl plus coconut plus olive 1162 g, bowl by itself 362 g": the readings ahead of the empty one. */
function stepsBefore(tokens: readonly Token[], tare: number): readonly Step[] {
  const steps: Step[] = [];
  const start = tokens.findLastIndex((token, at) => at < tare - 1 && (token.t === 'line' || isStop(token))) + 1;
  let begin = tokens.findIndex((token, at) => at >= start && isPot(token));
  let names: number[] = [];
  for (let at = begin; begin >= 0 && at < tare; at++) {
    const token = tokens[at];
    if (isFat(token)) names.push(at);
    if (token?.t !== 'quantity') continue;
    const words = wordsOf(tokens, begin, at);
    const known = steps.at(-1);
    const isBoth =
      names.length === 2 && known !== undefined && thingAt(tokens, names[0]) === thingAt(tokens, known.name);
    const name = names.length === 1 || isBoth ? names.at(-1) : undefined;
    if (!isPlain(token) || name === undefined || !withIt.test(words)) return [];
    steps.push({ name, figure: at, words: isBoth ? `${words} on top` : words });
    [begin, names] = [at + 1, []];
  }
  return steps;
}
const withIt = /\b(?:with|plus|and|on top|after|then|in)\b|[+&]/;
const thingAt = (tokens: readonly Token[], k: number | undefined): string => {
  const token = tokens[k ?? -1];
  return isIngredient(token) ? thingOf(token) : '';
};

/** The name right before its weight. */
function placeBeside(out: Token[], name: number, figure: number): void {
  const [own, place] = [out[name], out[figure - 1]];
  if (!own || !place || name >= figure - 1) return;
  for (let at = name; at < figure - 1; at++) out[at] = asFiller(out[at] as Token);
  out[figure - 1] = { ...own, from: place.from, to: place.to };
}

const emptied = /\b(?:wiped|emptied|rinsed|cleaned|washed|each|every time|in between|between)\b/;
/** Tokens from the vessel to the reading with one fat in it, at the most. */
const longestReading = 18;

/** The figure of an empty vessel: "empty it's 215 g"; -1 for none, or several. */
function emptyAt(tokens: readonly Token[], sentences: readonly Sentence[]): number {
  const all = sentences.flatMap((sentence) => {
    const found =
      /\b(?:empty|alone|bare|by itself|on its own)\b[^@#]{0,24}(#)|\b(?:jug|bowl|pot|cup|beaker|jar|container)\b[^@#]{0,16}(#) (?:empty|alone|bare)\b/d.exec(
        sentence.text,
      );
    const place = found?.indices?.[1]?.[0] ?? found?.indices?.[2]?.[0];
    const at = place === undefined ? -1 : sentence.tokenAt(place);
    return isPlain(tokens[at]) && !isAny(tokens, sentence.from, at, isIngredient) ? [at] : [];
  });
  return all.length === 1 ? (all[0] ?? -1) : -1;
}

/** Each fat weighed by itself in one vessel that is on the scale with it. */
function eachWithVessel(
  { tokens }: Cut,
  sentences: readonly Sentence[],
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } | null {
  const same = sentences.find(({ text }) =>
    /\bsame (?:[a-z]+ )?(?:jug|bowl|pot|cup|beaker|jar|container|vessel)\b/.test(text),
  );
  const tare = same ? emptyAt(tokens, sentences) : -1;
  if (!same || tare < 0) return null;
  const steps: Step[] = [];
  for (let k = tare + 1; k < tokens.length; k++) {
    const joint = tokens[k + 1];
    const isWith = (joint?.t === 'sign' && /^[+&]$/.test(joint.text)) || /^(?:with|and|plus)$/.test(spoken(joint));
    const name = /^(?:the|my)$/.test(spoken(tokens[k + 2])) ? k + 3 : k + 2;
    if (!isPot(tokens[k]) || !isWith || !isFat(tokens[name])) continue;
    let figure = name + 1;
    while (
      figure - k <= longestReading &&
      tokens[figure] &&
      tokens[figure]?.t !== 'quantity' &&
      tokens[figure]?.t !== 'line'
    )
      figure++;
    if (!isPlain(tokens[figure])) continue;
    steps.push({ name, figure, words: '' });
    k = figure;
  }
  const last = steps.at(-1);
  if (!last || steps.length < leastSteps) return null;
  const readings = steps.map(({ figure }) => weightAt(tokens, figure, tare));
  const empties = weightAt(tokens, tare, tare);
  const isApart =
    sentences.some(({ text, from }) => from <= last.figure && emptied.test(text)) ||
    readings.some((one, n) => n > 0 && one < (readings[n - 1] ?? 0));
  if (!isApart || !readings.every((one) => one > empties)) return null;
  const out = [...tokens];
  const texts = steps.map(({ name, figure }, n) => {
    const [weight, fat] = [out[figure] as Figure, out[name]];
    const now = withValue(weight.quantity, (readings[n] ?? 0) - empties);
    out[figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
    placeBeside(out, name, figure);
    return `${written(now)} of ${fat?.t === 'name' ? fat.text : ''}`;
  });
  out[tare] = asAside(out[tare] as Figure, packed);
  for (let at = same.from; at < last.figure; at++) {
    const token = out[at];
    if (token?.t === 'name' && token.meaning.kind === 'role') out[at] = asFiller(token);
  }
  const text = `I took ${texts.join(', ')}: each reading of the scale without the vessel.`;
  return { tokens: out, told: [{ text, gone: [], from: same.from, to: last.figure + 1, settles: true }] };
}

/** The tokens with what such readings leave of each fat. */
export function bowlReadings(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (!tokens.some((token) => empty.test(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const each = eachWithVessel(cut, sentences);
  if (each) return { ...none, ...each };
  const isUntared = sentences.some(({ text }) => untared.test(text));
  for (let k = 0; k < tokens.length; k++) {
    if (!isPot(tokens[k])) continue;
    const tare = tareOf(tokens, k);
    const behind = tare < 0 ? [] : stepsFrom(tokens, tare, isUntared);
    const steps = tare < 0 || behind.length >= leastSteps ? behind : stepsBefore(tokens, tare);
    const last = steps.at(-1);
    if (!last || steps.length < leastSteps) continue;
    const end = Math.max(last.figure, tare);
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
    // "bowl with coconut 612 g, bowl with olive 912 g": each by itself, maybe
    const isEither = behind !== steps && fits(weights.slice(1).map((one) => one - (weights[0] ?? 0)));
    const isTold = isUntared || steps.slice(behind === steps ? 0 : 1).every(({ words }) => onTop.test(words));
    const isFit = lye !== undefined && lyes.length === 0 && fits(more) && !fits(weights.slice(1)) && !isEither;
    if (!isTold && !isFit) {
      const begin = tokens[k];
      return { ...none, unheard: rawText(prims, begin?.from ?? 0, tokens[end]?.to ?? 0) };
    }
    const out = [...tokens];
    const texts = steps.map(({ name, figure }, n) => {
      const [weight, fat] = [out[figure] as Figure, out[name]];
      const now = withValue(weight.quantity, more[n] ?? 0);
      out[figure] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
      placeBeside(out, name, figure);
      return `${written(now)} of ${fat?.t === 'name' ? fat.text : ''}`;
    });
    out[tare] = asAside(out[tare] as Figure, packed);
    for (let at = Math.min(k, ...steps.map(({ name }) => name)); at < end; at++) {
      const token = out[at];
      if (token?.t === 'name' && token.meaning.kind === 'role') out[at] = asFiller(token);
    }
    const text = `I took ${texts.join(', ')}: each reading of the scale without the one before.`;
    return {
      tokens: out,
      told: [{ text, gone: [], from: Math.min(k, steps[0]?.name ?? k), to: end + 1, settles: true }],
      unheard: null,
    };
  }
  return none;
}
