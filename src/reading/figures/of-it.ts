/** A part of an amount that the post says, too: "100 g of it", "of which I put in 450 g", "that includes 12.5 g". */
import type { Quantity } from '../words/quantities.ts';
import { signal } from '../words/signal-words.ts';
import { gives } from '../words/signals.ts';
import {
  isAny,
  isKnown,
  isMark,
  isMeasured,
  isRole,
  isStop,
  isWeight,
  isWord,
  massOf,
  wordAt,
} from '../words/token-is.ts';
import type { Figure, Token } from '../words/tokens.ts';

/** What stands for a thing that was named before. */
export const pronoun = /^(that|this|these|it|which|them)$/;

/** "300 g of it". */
export function ofIt(tokens: readonly Token[], k: number, token: Figure): boolean {
  const [next, beyond, name] = [tokens[k + 1], tokens[k + 2], tokens[k + 3]];
  return (
    next?.t === 'word' &&
    next.text === 'of' &&
    beyond?.t === 'word' &&
    /^(it|that|them|those|which|this)$/.test(beyond.text) &&
    // "100 g of that NaOH": of a thing by its name
    (name?.t !== 'name' || (name.meaning.kind === 'role' && name.meaning.id !== 'solution')) &&
    // "116 g of which 6 g …": the whole itself
    !(beyond.text === 'which' && name?.t === 'quantity') &&
    isMeasured(token)
  );
}

/** The amount said in the same sentence before token `k`, of which "100 g of it" is a part; null where none was. */
export function spokenOf(tokens: readonly Token[], k: number, part: Quantity, solution: boolean): number | null {
  for (let at = k - 1; at >= 0 && k - at <= 14; at--) {
    const token = tokens[at];
    // "coconut 200 g, 292 g of it": of the solution that the post works with
    if (solution && token?.t === 'sign' && token.text === ',') return null;
    if (token?.t === 'line' || (token?.t === 'sign' && token.text === '.')) return null;
    if (at === k - 2 && isNameAlone(tokens, at)) return null;
    // a part is no more than the whole; "zero scent" is none
    if (massOf(token) && token.quantity.value > 0)
      return token.quantity.dim === part.dim && token.quantity.value < part.value ? null : at;
  }
  return null;
}

/**
 * "The label says NaOH 97 %. 500 g olive, 500 g lard, 138 g of it": behind an alkali of which only the purity was told, and
 * none is weighed, it may be that.
 */
export function mayBeLye(tokens: readonly Token[], k: number): boolean {
  const part = tokens[k];
  const isAlkali = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind === 'alkali';
  const beside = (at: number, is: (token: Token | undefined) => boolean): boolean =>
    is(tokens[at - 1]) ||
    is(tokens[at + 1]) ||
    (!isStop(tokens[at - 1]) && is(tokens[at - 2])) ||
    (!isStop(tokens[at + 1]) && is(tokens[at + 2]));
  const isShare = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'percent';
  if (!massOf(part) || !isAny(tokens, 0, k, (token, at) => isAlkali(token) && beside(at, isShare))) return false;
  if (tokens.some((token, at) => isAlkali(token) && beside(at, massOf))) return false;
  const fats = tokens.reduce(
    (sum, one, at) => (at !== k && massOf(one) && isFatBeside(tokens, at) ? sum + one.quantity.value : sum),
    0,
  );
  return part.quantity.value > leastLye * fats && part.quantity.value < mostLye * fats;
}

const isFatBeside = (tokens: readonly Token[], at: number): boolean =>
  [at - 1, at + 1, at + 2].some((n) => {
    const one = tokens[n];
    return one?.t === 'name' && one.meaning.kind === 'fat';
  });
/** Alkali that a fat takes, of its weight: from sodium hydroxide for the heaviest fats to potassium hydroxide for coconut oil. */
const leastLye = 0.09;
const mostLye = 0.24;

/** "1 lb coconut, then the lye, 7 oz of it": a name with no figure before it, and a comma. */
function isNameAlone(tokens: readonly Token[], at: number): boolean {
  if (!isKnown(tokens[at]) || !isMark(tokens[at + 1], ',')) return false;
  return !massOf(tokens[at - 1]) && !(isWord(tokens[at - 1], 'of') && massOf(tokens[at - 2]));
}

/** One ingredient is named with the first of two amounts, and no other before the second. */
export const onlyNameBetween = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(Math.max(0, from - 1), to).filter((token) => token.t === 'name' && token.meaning.kind !== 'role')
    .length === 1;

/** "a 5 litre can of olive oil and used 1 kg": what goes in, of a pack that was said before. */
export const isTaken = (tokens: readonly Token[], k: number): boolean =>
  tokens
    .slice(Math.max(0, k - 3), k)
    .some((one) => one.t === 'word' && /^(only|using|used|use|just|took|take|need|weighed|want)$/.test(one.text));

/** "250 g of that instead of the 150", "rather than". */
export const isInstead = (tokens: readonly Token[], k: number): boolean =>
  /^(?:instead of|rather than)$/.test(`${wordAt(tokens, k)} ${wordAt(tokens, k + 1)}`);

/** "400 g of it went in". */
export function isPutIn(tokens: readonly Token[], k: number): boolean {
  let at = wordAt(tokens, k + 1) === 'of' && pronoun.test(wordAt(tokens, k + 2)) ? k + 3 : k + 1;
  while (/^(?:had|has|have|really|actually|only|just)$/.test(wordAt(tokens, at))) at++;
  return /^(?:went|goes|gone)$/.test(wordAt(tokens, at)) && /^in(?:to)?$/.test(wordAt(tokens, at + 1));
}

/** "I have 1.1 kg of tallow, of which I want to put 450 g in": where the amount stands that this is a part of. */
export function ofWhich(tokens: readonly Token[], k: number, token: Figure): number | null {
  if (token.quantity.dim !== 'mass') return null;
  let [at, takes] = [k - 1, false];
  const isTarget = (one: Token | undefined): boolean => isRole(one, 'target');
  while (k - at <= 8 && (tokens[at]?.t === 'word' || isTarget(tokens[at])) && !isWord(tokens[at], 'which')) {
    takes ||= /^(put|use|used|using|take|took|taking|want|goes|go|went|need|weighed)$/.test(wordAt(tokens, at));
    at--;
  }
  if (!takes || !isWord(tokens[at], 'which') || !isWord(tokens[at - 1], 'of')) return null;
  for (let whole = at - 2; whole >= 0 && at - whole <= 8 && !isStop(tokens[whole]); whole--) {
    const one = tokens[whole];
    if (isWeight(one)) return one.quantity.value > token.quantity.value ? whole : null;
  }
  return null;
}

/** "156 g (that includes 12.5 g extra for the acid)": a part of an amount, and of nothing by its name. */
export function isIncluded(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (!isMeasured(token)) return false;
  const first = Math.max(0, k - 3);
  let at = k - 1;
  for (; at >= first; at--) {
    const one = tokens[at];
    if (one?.t !== 'word' && one?.t !== 'sign') return false;
    if (gives(one, signal.including)) break;
    if (at > first && isWord(one, 'which') && isWord(tokens[at - 1], 'of')) break;
  }
  if (at < first) return false;
  for (let next = k + 1; next < tokens.length && next - k <= 3; next++) {
    const one = tokens[next];
    if (isKnown(one)) return false;
    if (one?.t !== 'word' || one.sort !== 'filler') return true;
  }
  return true;
}

const including = /^(including|includes|included|incl|thereof)$/;

/** "Water 300 g, of that I want to take 100 g as ice", "100 g of it ice", "including 100 g ice": a part of the water. */
export function isIceOf(tokens: readonly Token[], k: number, token: Figure): boolean {
  if (token.quantity.dim !== 'mass') return false;
  let at = k + 1;
  const ofIt = wordAt(tokens, at) === 'of' && pronoun.test(wordAt(tokens, at + 1));
  while (at - k <= 4 && tokens[at]?.t === 'word') at++;
  const ice = tokens[at];
  if (ice?.t !== 'name' || ice.meaning.kind !== 'ice') return false;
  for (let back = k - 1; !ofIt && back > 0 && k - back <= 7; back--) {
    if (tokens[back]?.t === 'quantity' || isStop(tokens[back])) return false;
    const word = wordAt(tokens, back);
    if (including.test(word) || (pronoun.test(word) && wordAt(tokens, back - 1) === 'of')) return true;
  }
  return ofIt;
}
