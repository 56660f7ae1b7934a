/**
 * So much of what a pack holds: "a 1 kg jar of coconut, half of that went in", "half a jar of coconut (the jar is 1 kg)",
 * "a 500 g block of cocoa butter, cut a fifth off it".
 */
import { signal } from '../words/signal-words.ts';
import { givesAt, type Signals } from '../words/signals.ts';
import { isIngredient, isMark, isMeasured, isPot, isRole, isStop, isWord, spoken, wordAt } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const shares: Readonly<Record<string, number>> = { half: 1 / 2, third: 1 / 3, quarter: 1 / 4 };

/** The fraction that a word or a figure says; null where it says none. */
function shareOf(token: Token | undefined): number | null {
  if (token?.t === 'word') return shares[token.text] ?? null;
  if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') return null;
  const { value } = token.quantity;
  return value > 0 && value < 1 ? value : null;
}

/** What may be a place in a row as well: "a fifth", but not "my fifth". */
const rarer: Readonly<Record<string, number>> = { fifth: 1 / 5, sixth: 1 / 6, eighth: 1 / 8, tenth: 1 / 10 };

/** The fraction that is said at `k`; null where none is. */
export const shareAt = (tokens: readonly Token[], k: number): number | null =>
  shareOf(tokens[k]) ?? (/^(?:an?|one)$/.test(wordAt(tokens, k - 1)) ? (rarer[wordAt(tokens, k)] ?? null) : null);

const cutting =
  /^(?:cut|took|take|taken|sliced|broke|snapped|chopped|hacked|sawed|sawn|shaved|carved|scooped|spooned|dug|scraped|ladled|poured|tipped|weighed|used|melted|lopped|split|chipped|prised)$/;
const mostCutting = 4;

/** "Cut a fifth off", "took about a third out of": what is taken of it, and not of its price. */
function cutsOff(tokens: readonly Token[], k: number): boolean {
  for (let at = k - 1; at >= k - mostCutting && spoken(tokens[at]) !== ''; at--)
    if (cutting.test(spoken(tokens[at]))) return true;
  return false;
}

/** Behind the words of a part that lead to the whole: "of", "off", "out of", "from". */
export function behindOf(tokens: readonly Token[], k: number, at: number): number {
  if (isWord(tokens[at], 'of')) return at + 1;
  if (!/^(?:off|out|from)$/.test(spoken(tokens[at])) || !cutsOff(tokens, k)) return at;
  return isWord(tokens[at + 1], 'of') ? at + 2 : at + 1;
}

/** Tokens between the pack and what is taken of it, at the most. */
const longestWay = 14;

const taking = /^(?:used|use|took|take|put|poured|melted|threw|added|with|only|about|just|in|and|but|,)$/;
const going = /^(?:went|goes|is|was|got|ended|used)$/;

/** "Half of it", "half that", "half the jar", "I used half.": where the words of it end; -1 where it is of something else. */
function endsAt(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  const said = tokens[k];
  const isOf = said?.t === 'quantity' && /\b(?:of|an?)$/.test(said.quantity.text);
  at = behindOf(tokens, k, at);
  if (/^(?:it|that|this|them)$/.test(wordAt(tokens, at))) return at + 1;
  if (/^(?:the|that|this|my|a)$/.test(wordAt(tokens, at)) && isPot(tokens[at + 1]) && !isIngredient(tokens[at + 2]))
    return at + 2;
  if (isOf || at > k + 1) return -1;
  const before = /^an?$/.test(wordAt(tokens, k - 1)) ? wordAt(tokens, k - 2) : wordAt(tokens, k - 1);
  const isEnd = isStop(tokens[at]) || isMark(tokens[at], ',)') || isWord(tokens[at], 'and');
  return going.test(wordAt(tokens, at)) || (isEnd && taking.test(before)) ? at : -1;
}

/** "A 1 kg jar", "the jar holds 1 kg", "the jar is 1 kg": the size of a pack. */
function isSize(tokens: readonly Token[], k: number): boolean {
  if (!isMeasured(tokens[k])) return false;
  if (isPot(tokens[k + 1])) return true;
  let at = k - 1;
  while (
    k - at <= 4 &&
    /^(?:holds|held|is|was|has|of|says|weighs|weighed|about|around|a|contains)$/.test(wordAt(tokens, at))
  )
    at--;
  return at < k - 1 && isPot(tokens[at]);
}

/** The size of the pack that was named last before token `k`, with no other figure since. */
function packBefore(tokens: readonly Token[], k: number): number {
  let stops = 0;
  for (let at = k - 1; at >= 0 && k - at <= longestWay; at--) {
    const token = tokens[at];
    if (isStop(token) && ++stops > 1) return -1;
    if (token?.t === 'quantity' && token.quantity.dim !== 'time') return isSize(tokens, at) ? at : -1;
  }
  return -1;
}

/** "Half a jar of coconut (the jar is 1 kg)": the size told behind it. */
function packBehind(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  while (at - k <= 2 && /^(?:of|a|the|my)$/.test(wordAt(tokens, at))) at++;
  if (!isPot(tokens[at])) return -1;
  const from = at;
  while (at - from <= longestWay) {
    const token = tokens[++at];
    if (token === undefined || token.t === 'line') return -1;
    if (token.t === 'quantity') return isSize(tokens, at) && !isPot(tokens[at + 1]) ? at : -1;
  }
  return -1;
}

const using = /^(?:using|used|use|take|took|taking|put|melted|need)$/;

/** "Using the whole of it", "all of it.", "the whole of it goes in": where the words of it begin; -1 where they say nothing of a pack. */
function wholeFrom(tokens: readonly Token[], k: number): number {
  if (!/^(?:whole|all)$/.test(wordAt(tokens, k)) || !isWord(tokens[k + 1], 'of')) return -1;
  if (!/^(?:it|that|this|them)$/.test(wordAt(tokens, k + 2))) return -1;
  const from = isWord(tokens[k - 1], 'the') ? k - 1 : k;
  const goes = /^(?:goes|went|is|going)$/.test(wordAt(tokens, k + 3)) && isWord(tokens[k + 4], 'in');
  const ends = isStop(tokens[k + 3]) || isMark(tokens[k + 3], ',)');
  return goes || (ends && (using.test(wordAt(tokens, from - 1)) || isMark(tokens[from - 1], ',(-–'))) ? from : -1;
}

/** "The lard is one 500 g packet, using the whole of it": the tokens in which the size of such a pack is the weight of it. */
export function wholePacks(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 1; k < tokens.length; k++) {
    const from = wholeFrom(tokens, k);
    const size = from < 0 ? -1 : packBefore(tokens, from);
    if (size < 0) continue;
    out ??= [...tokens];
    for (let at = size - 3; at < k + 3; at++) {
      const token = tokens[at];
      const isOne = at === size - 1 && token?.t === 'quantity' && token.quantity.value === 1;
      if (token && (isPot(token) || isOne || at >= from)) out[at] = asFiller(token);
    }
  }
  return out ?? tokens;
}

/** The tokens with so much of a pack as what was taken of it. */
export function partsOfPacks(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const fill = (from: number, to: number): void => {
    out ??= [...tokens];
    for (let at = from; at < to; at++) {
      const token = tokens[at];
      if (
        token &&
        (token.t === 'word' || isPot(token) || isRole(token, 'price') || (token.t === 'quantity' && at === from))
      )
        out[at] = asFiller(token);
    }
  };
  for (let k = 1; k < tokens.length; k++) {
    const share = givesAt(signals, k, signal.part) ? shareAt(tokens, k) : null;
    if (share === null) continue;
    const end = endsAt(tokens, k);
    const size = end < 0 ? packBehind(tokens, k) : packBefore(tokens, k);
    const whole = tokens[size];
    const said = tokens[k];
    if (whole?.t !== 'quantity' || !said) continue;
    const { quantity } = whole;
    const numbers = said.t === 'quantity' ? [...said.quantity.numbers, ...quantity.numbers] : quantity.numbers;
    fill(k, end < 0 ? k + 1 : end);
    for (const at of [size - 3, size - 2, size - 1, size + 1]) if (isPot(tokens[at])) fill(at, at + 1);
    out ??= [...tokens];
    out[size] = { ...whole, quantity: { ...quantity, value: quantity.value * share, other: null, numbers } };
  }
  return out ?? tokens;
}
