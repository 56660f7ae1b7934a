/**
 * A part of a fat that is kept for something else than this pot: "I kept 50 g of the coconut for my hair". Nobody knows
 * whether what the list weighs of it is with that part or without.
 */
import { uses } from '../words/cue-words.ts';
import type { Signals } from '../words/signals.ts';
import { isAny, isFat, isMark, isRole, isWeight, type Span, sentenceAt, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { eitherOf, weighedBeside } from './part-said.ts';

/** Tokens of a sentence to each side of a figure, at the most. */
const reach = 24;
const owning = /^(?:the|my|our|this|that|his|her)$/;
const pronoun = /^(?:it|that|them|which|those)$/;
const keeping = /^(?:kept|keep|keeping|held|holding|saved|saving|reserved|put|set|gave|give|took|went|go|goes|is|are)$/;
/** Kept out of the pot, whatever for. */
const surely = /^(?:kept|keep|keeping|saved|saving|reserved)$/;
const purposes: ReadonlySet<string> = new Set(uses.purposes.split(' '));
/** Till after the cook, as a rule. */
const keptBack = /^(?:kept|held|keep|hold|put|set|reserved|saved)(?: (?:back|aside|by))?$/;
/** "I ladled 650 g of it into the pot the rest went back": from there on the other part is spoken of. */
const others = /^(?:rest|remainder|remaining|leftover)$/;
const pots = /^(?:pot|batch|recipe|soap|mix|lye|trace|superfat)$/;

/** The fat of which the figure at `k` is a part: "50 g of the coconut", "of the coconut I kept 50 g", "50 g of it". */
function wholeAt(tokens: readonly Token[], k: number, { from }: Span): number {
  if (wordAt(tokens, k + 1) === 'of') {
    if (owning.test(wordAt(tokens, k + 2)) && isFat(tokens[k + 3])) return k + 3;
    return pronoun.test(wordAt(tokens, k + 2)) ? fatBefore(tokens, k) : -1;
  }
  for (let at = k - 1; at > from && k - at <= 8; at--) {
    if (tokens[at]?.t === 'quantity') return -1;
    if (wordAt(tokens, at - 1) !== 'of') continue;
    if (wordAt(tokens, at) === 'which') return fatBefore(tokens, at);
    if (owning.test(wordAt(tokens, at)) && isFat(tokens[at + 1])) return at + 1;
  }
  return -1;
}

function fatBefore(tokens: readonly Token[], k: number): number {
  for (let at = k - 1; at >= 0 && k - at <= reach; at--) {
    const token = tokens[at];
    if (token?.t === 'name' && token.meaning.kind !== 'role') return isFat(token) ? at : -1;
  }
  return -1;
}

/** The words say that it stays out of the pot, and not only till the end of the cook. */
function isKept(tokens: readonly Token[], k: number, { from, to }: Span): boolean {
  let [first, last] = [k, k];
  while (first > from && !isMark(tokens[first - 1], '(,')) first--;
  while (last < to && !isMark(tokens[last], '),') && !(last > k && others.test(spoken(tokens[last])))) last++;
  const isLater = isAny(tokens, from, to, (one) => isRole(one, 'after') && !keptBack.test(spoken(one)));
  const words = tokens.slice(first, last).flatMap((one) => spoken(one).split(' '));
  const goal = words.findLastIndex((word) => /^(?:for|in|into|on|to)$/.test(word));
  const aims = goal < 0 ? [] : words.slice(goal + 1, goal + 5);
  if (isLater || aims.some((word) => pots.test(word))) return false;
  return (
    (words.some((word) => keeping.test(word)) || isMark(tokens[first - 1], '(')) &&
    (aims.some((word) => purposes.has(word)) || (goal >= 0 && words.some((word) => surely.test(word))))
  );
}

/** "Coconut 50 g," in a list: no word stands beside it. */
const isInList = (tokens: readonly Token[], k: number): boolean =>
  wordAt(tokens, k + 1) !== 'of' && wordAt(tokens, k - 1) === '' && wordAt(tokens, k - 2) === '';

/** The tokens in which such a fat may weigh as much as is listed, or less by what was kept. */
export function keptFor(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of figures) {
    const part = tokens[k];
    if (!isWeight(part) || isInList(tokens, k)) continue;
    const span = sentenceAt(tokens, k, reach);
    const name = wholeAt(tokens, k, span);
    const fat = tokens[name];
    if (!isFat(fat) || !isKept(tokens, k, span)) continue;
    const wholes = weighedBeside(tokens, fat).filter((at) => at !== k);
    const [place = -1] = wholes;
    const whole = tokens[place];
    // where two weights are said, other rules hear which counts
    if (wholes.length !== 1 || !isWeight(whole) || whole.quantity.value <= part.quantity.value) continue;
    out ??= [...tokens];
    out[k] = asAside(part, 'for something else');
    for (let at = span.from; at < span.to; at++) {
      const word = tokens[at];
      if (word && isRole(word, 'after')) out[at] = asFiller(word);
    }
    out[place] = eitherOf(whole, whole.quantity.value - part.quantity.value);
    if (name !== place - 1 && name !== place + 1 && name !== place + 2) out[name] = asFiller(fat);
  }
  return out ?? tokens;
}
