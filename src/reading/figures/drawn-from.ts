/** What goes into the pot of something that there is more of: "It gave 1.6 kg of tallow. From that I took 800 g." */

import { signal } from '../words/signal-words.ts';
import { givesAround, type Signals } from '../words/signals.ts';
import {
  isAny,
  isIngredient,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWeight,
  isWord,
  type Span,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedElsewhere } from '../words/weighed.ts';
import { inStore } from './in-store.ts';
import { weighedBeside } from './part-said.ts';

/** Tokens of a sentence that are looked at to either side. */
const reach = 40;

const getting =
  /^(?:gave(?: me)?|given|gives|got|get|rendered|rendering|render|yielded|became|turned|came|made|was|were|had|have|ive|received|obtained|bought|ended)$/;
const taking = /^(?:took|take|taken|used|use|weighed|put|poured|went|goes|melted|scooped|need)$/;
const going = /^(?:away|back|off|aside|gone|out|again|freezer|fridge|friend|neighbour|neighbor|test)$/;

const isSource = (tokens: readonly Token[], k: number): boolean =>
  /^(?:of|from)$/.test(wordAt(tokens, k)) && /^(?:that|this|it|them|these)$/.test(wordAt(tokens, k + 1));

/** Where the word stands in whose place the name is read: the pronoun behind the figure, or the word before it. */
function placeOf(tokens: readonly Token[], k: number, { from, to }: Span): number {
  if (isSource(tokens, k + 1) && !isIngredient(tokens[k + 3]))
    return isAny(tokens, from, to, (one) => taking.test(wordAt([one], 0))) ? k + 2 : -1;
  if (isIngredient(tokens[k + 1]) || isWord(tokens[k + 1], 'of')) return -1;
  let at = k - 1;
  let takes = taking.test(wordAt(tokens, k + 1));
  while (at > from && k - at <= 6 && tokens[at]?.t === 'word' && !isSource(tokens, at)) {
    takes ||= taking.test(wordAt(tokens, at));
    at--;
  }
  return takes && isSource(tokens, at) ? k - 1 : -1;
}

/** "For this soap" and no more of it: nothing says that it went elsewhere. */
export function goesIn(tokens: readonly Token[], k: number): boolean {
  const { to } = sentenceAt(tokens, k, reach);
  for (let at = k + 1; at < to; at++) {
    const word = wordAt(tokens, at);
    if (isWeight(tokens[at])) return true;
    if (going.test(word)) return false;
    if (word !== 'for') continue;
    const isSoap = (one: Token): boolean =>
      isPot(one) ||
      isRole(one, 'batch-word') ||
      isRole(one, 'bars') ||
      /^(?:soap|batch|recipe|loaf|it)$/.test(wordAt([one], 0));
    if (!isAny(tokens, at + 1, Math.min(to, at + 4), (one) => isSoap(one) || isWord(one, 'this'))) return false;
  }
  return true;
}

const isSame = (token: Token | undefined, { quantity: { value } }: Figure): boolean =>
  isWeight(token) && Math.abs(token.quantity.value - value) <= 1e-6 * value;

/** The last sentence before a token that names something; "(at 9 pm!!)" between is passed over. */
function toldBefore(tokens: readonly Token[], first: number): Span {
  let span = sentenceAt(tokens, first - 2, reach);
  for (let n = 0; n < mostPassed && span.from > 1; n++) {
    if (isAny(tokens, span.from, span.to, (one) => isIngredient(one) || isMeasured(one))) break;
    let end = span.from - 1;
    while (end > 0 && isStop(tokens[end])) end--;
    span = sentenceAt(tokens, end, reach);
  }
  return span;
}
const mostPassed = 3;

/** The fat of the sentence before, by the last weight of it, where it tells of that alone and how it was got. */
function wholeOf(tokens: readonly Token[], first: number, part: Figure): { fat: Token; figure: number } | null {
  const { from, to } = toldBefore(tokens, first);
  const names = tokens.slice(from, to).filter(isIngredient);
  const [fat] = names;
  if (fat?.meaning.kind !== 'fat') return null;
  // "after two rounds with salt water"
  const isWash = (one: Token): boolean => one.t === 'name' && /^(?:additive|water)$/.test(one.meaning.kind);
  if (names.some((one) => !isWash(one) && thingOf(one) !== thingOf(fat))) return null;
  if (!isAny(tokens, from, to, (one) => getting.test(spoken(one)))) return null;
  let figure = to - 1;
  while (figure >= from && !isMeasured(tokens[figure])) figure--;
  const whole = tokens[figure];
  const near = [figure + 1, figure + 2, figure + 3, figure + 4, figure - 1, figure - 2].find((at) =>
    isIngredient(tokens[at]),
  );
  if (!isMeasured(whole) || near === undefined) return null;
  if (whole.quantity.dim === part.quantity.dim && whole.quantity.value <= part.quantity.value) return null;
  // "… So, 900 g tallow, 100 g coconut": the list says what was taken once more
  const isListed = weighedBeside(tokens, fat).some((at) => at !== figure && isSame(tokens[at], part));
  return weighedElsewhere(tokens, near) && names.length === 1 && !isListed ? null : { fat, figure };
}

/** The tokens in which the fat stands at what was taken of it, and all that there was is in store. */
export function drawnFrom(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of signals.figures) {
    const part = tokens[k];
    if (!isWeight(part) || !givesAround(signals, k, signal.ofIt)) continue;
    const span = sentenceAt(tokens, k, reach);
    const place = placeOf(tokens, k, span);
    const stand = tokens[place];
    if (!stand || span.from < 2 || !goesIn(tokens, k)) continue;
    const found = wholeOf(tokens, span.from, part);
    if (!found) continue;
    const whole = (out ?? tokens)[found.figure];
    if (!isMeasured(whole)) continue;
    out ??= [...tokens];
    out[found.figure] = asAside(whole, inStore);
    // "3 kg of suet gave 2 kg of tallow"
    for (let at = found.figure - 1; at >= 0 && !isStop(tokens[at]); at--) {
      const more = out[at];
      if (isWeight(more) && more.quantity.value > whole.quantity.value) out[at] = asAside(more, inStore);
    }
    const joint = tokens[place - 1];
    if (place > k && joint) out[place - 1] = asFiller(joint);
    out[place] = { ...found.fat, from: stand.from, to: stand.to };
  }
  return out ?? tokens;
}

const being = /^(?:is|are|was|were|goes|go|went|left|remains?)$/;

/** "Four pounds are for soap". */
function saysForSoap(tokens: readonly Token[], k: number): boolean {
  let at = k + 1;
  while (at - k <= 2 && being.test(wordAt(tokens, at))) at++;
  if (!isWord(tokens[at], 'for')) return false;
  at++;
  while (/^(?:the|this|my|our|making)$/.test(wordAt(tokens, at))) at++;
  return isRole(tokens[at], 'batch-word') || /^(?:soap|batch|soaping)$/.test(wordAt(tokens, at));
}

/** "I had 5 lb of tallow, one went to my daughter, so four pounds are for soap": what is for the soap counts, in a sentence of one fat. */
export function forSoap(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const part = tokens[k];
    const named = isWord(tokens[k + 1], 'of') ? tokens[k + 2] : tokens[k + 1];
    if (!isWeight(part) || isIngredient(named) || !saysForSoap(tokens, k)) continue;
    const { from, to } = sentenceAt(tokens, k, reach);
    const fats = tokens.slice(from, k).filter(isIngredient);
    const at = tokens.findIndex((one, n) => n >= from && n < k && isIngredient(one));
    const [fat] = fats;
    if (fat?.meaning.kind !== 'fat' || fats.length > 1 || isAny(tokens, k + 1, to, isIngredient)) continue;
    const wholes: number[] = [];
    for (let n = from; n < k; n++) if (isWeight(tokens[n])) wholes.push(n);
    const whole = tokens[wholes[0] ?? -1];
    if (!isWeight(whole) || whole.quantity.value <= part.quantity.value || weighedElsewhere(tokens, at)) continue;
    out ??= [...tokens];
    for (const n of wholes) {
      const one = tokens[n];
      if (isWeight(one)) out[n] = asAside(one, inStore);
    }
    // the name stands beside its weight now
    out[at] = asFiller(fat);
    out[k + 1] = { ...fat, from: tokens[k + 1]?.from ?? fat.from, to: tokens[k + 1]?.to ?? fat.to };
  }
  return out ?? tokens;
}
