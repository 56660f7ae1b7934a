/** What is left of a pack or stands in the cupboard: "the last 2 lb", "200 g of the 1 kg I bought". */

import { signal } from '../words/signal-words.ts';
import { gives, type Signals } from '../words/signals.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWord,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';
import { ofIt, pronoun } from './of-it.ts';

/** "500 g in the jar". */
const isInJar = (tokens: readonly Token[], at: number): boolean => {
  const pot = tokens[at];
  if (!isPot(pot) || !/^(jar|tub|tin|bag|bottle|bucket)$/.test(pot.meant)) return false;
  const article = tokens[at - 1];
  return isWord(tokens[at - 2], 'in') && (isWord(article, 'the') || isWord(article, 'my'));
};

/** "2 kg more sunflower in the cupboard and a fresh 500 g jar of coconut": a sentence about what is in store. */
function isStored(tokens: readonly Token[], k: number, { at: signs }: Signals): boolean {
  let [from, to] = [k, k];
  while (k - from < 20 && !isStop(tokens[from - 1]) && !endsDotted(tokens[from - 1])) from--;
  while (to - k < 20 && !isStop(tokens[to]) && !(to > k && endsDotted(tokens[to - 1]))) to++;
  // "150 g milk from the freezer" is what goes in
  const isTaken = (at: number): boolean => [1, 2, 3].some((back) => /^(from|out)$/.test(wordAt(tokens, at - back)));
  for (let at = Math.max(0, from); at < to; at++) {
    const tells = ((signs[at] ?? 0) & signal.store) !== 0 && gives(tokens[at], signal.store) && !isTaken(at);
    if (tells || isInJar(tokens, at)) return true;
  }
  return false;
}

/** "Another 100 g of tallow he had found in the fridge, and threw it in": it goes in. */
function isThrownIn(tokens: readonly Token[], k: number): boolean {
  let to = k + 1;
  while (to - k < 24 && !isStop(tokens[to])) to++;
  return (
    /^(?:another|extra|further|additional)$/.test(wordAt(tokens, k - 1)) &&
    isAny(tokens, k, to, (one, at) => isWord(one, 'in') && /^(?:it|that|them|straight)$/.test(wordAt(tokens, at - 1)))
  );
}

/** "200 g of the 1 kg I bought", "200 g (I have 800 g in the freezer)": of what an amount was taken. */
export function isTakenFrom(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isMeasured(token)) return false;
  const owns = (one: Token | undefined): boolean => one?.t === 'word' && /^(bought|have|had|got|own)$/.test(one.text);
  let at = k - 1;
  while (k - at <= 4 && tokens[at]?.t === 'word') at--;
  const opens = isMark(tokens[at], '(');
  const part = opens ? tokens[at - 1] : tokens[at];
  if (part?.t !== 'quantity' || part.quantity.dim !== token.quantity.dim) return false;
  if (part.quantity.value > token.quantity.value) return false;
  const words = tokens.slice(at + 1, k);
  const ofThe = words.some((one, n) => (isWord(one, 'of') || isWord(one, 'from')) && isWord(words[n + 1], 'the'));
  // "300 g out of my 500 g tub of coconut"
  const ofPack =
    isPot(tokens[k + 1]) &&
    words.some((one, n) => /^(?:of|from)$/.test(spoken(one)) && /^(?:the|my|our|an?|that)$/.test(spoken(words[n + 1])));
  return (opens && words.some(owns)) || ofPack || (ofThe && [1, 2, 3].some((n) => owns(tokens[k + n])));
}

/** `palm kernel (last 2 lb)`, `2 lb of lard left`: in the cupboard, where the thing is weighed again. */
export function isStock(tokens: readonly Token[], k: number, token: Figure, stored: Signals | null): boolean {
  if (!isMeasured(token) || isThrownIn(tokens, k)) return false;
  if (ofIt(tokens, k, token) && isLeftOver(tokens, k)) return true;
  const before = tokens[k - 1];
  const after = tokens[k + 1];
  // "another 30 g of olive after the cook" goes in
  const last =
    before?.t === 'word' && lastWords.has(before.text) && !isAny(tokens, k, k + 8, (one) => isRole(one, 'after'));
  const left = after?.t === 'word' && (leftWords.has(after.text) || isLeftOver(tokens, k));
  if (!last && !left && !(stored && isStored(tokens, k, stored))) return false;
  const behind = [k + 1, k + 2, k + 3].find((at) => isIngredient(tokens[at]));
  const alkali = behind === undefined ? undefined : tokens[behind];
  if (left && alkali?.t === 'name' && alkali.meaning.kind === 'alkali') return true;
  const nameAt = [k - 1, k - 2, k - 3].find((at) => isIngredient(tokens[at]) && !isParted(tokens, at, k)) ?? behind;
  return nameAt !== undefined && weighedElsewhere(tokens, nameAt);
}

/** "2 litres of olive left over", "2 litres of it left". */
const isLeftOver = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k + 1], 'of') &&
  (isIngredient(tokens[k + 2]) || pronoun.test(wordAt(tokens, k + 2))) &&
  (isWord(tokens[k + 3], 'left') || isWord(tokens[k + 3], 'leftover'));

/** A comma stands between two tokens. */
const isParted = (tokens: readonly Token[], from: number, to: number): boolean =>
  isAny(tokens, from, to, (one) => isMark(one, ',;'));

const lastWords: ReadonlySet<string> = new Set(['last', 'remaining', 'spare']);

const leftWords: ReadonlySet<string> = new Set(['left', 'remaining', 'spare']);
