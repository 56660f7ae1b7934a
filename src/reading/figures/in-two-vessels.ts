/** "Two tins of coconut, 180 g in the one and 140 g in the other, and both went in": a thing in two vessels, all of it used. */
import type { Signals } from '../words/signals.ts';
import { isAny, isIngredient, isMark, isWeight, type Span, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

/** Tokens of a sentence to each side of a figure, at the most. */
const reach = 40;
const wayToSecond = 9;

const beforeEach =
  /^(?:one|another|other|second|first)(?: (?:of|with|had|has|holding|at|held|was))?(?: (?:about|only|just))?$/;
const behindEach =
  /^in (?:the |my )?(?:one|first|other|second|old|older|new|newer|big|bigger|small|smaller|full|opened|left|right)\b/;

const wordsBehind = (tokens: readonly Token[], k: number): string =>
  tokens
    .slice(k + 1, k + 4)
    .map(spoken)
    .join(' ');
const wordsBefore = (tokens: readonly Token[], k: number): string =>
  tokens
    .slice(k - 2, k)
    .map(spoken)
    .join(' ')
    .trim();

/** "180 g in the one", "one of 180 g". */
const isEach = (tokens: readonly Token[], k: number): boolean =>
  behindEach.test(wordsBehind(tokens, k)) || beforeEach.test(wordsBefore(tokens, k));

/** "Both went in", "I used them both". */
const usesBoth = (tokens: readonly Token[], { from, to }: Span): boolean =>
  /\bboth (?:of (?:them|these) )?(?:went|go|are|were|melted|used|now|in)\b|\b(?:used|use|took|take|melted|put|poured|emptied|tipped|scraped) (?:them )?(?:in )?both\b/.test(
    tokens.slice(from, to).map(spoken).join(' '),
  );

/** The two weights are of the one thing that the sentence names before them, and of nothing behind. */
function isOfOne(tokens: readonly Token[], { from, to }: Span, first: number, second: number): boolean {
  const named = (one: Token): boolean => isIngredient(one);
  const before = tokens.slice(from, first).filter(named);
  return (
    before.length === 1 && !isAny(tokens, first, to, named) && !isAny(tokens, from, first, isWeight) && second < to
  );
}

/** The tokens in which such a thing weighs what both hold. */
export function inTwoVessels(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (let n = 1; n < figures.length; n++) {
    const [k = 0, next = 0] = figures.slice(n - 1, n + 1);
    const [first, second] = [tokens[k], tokens[next]];
    if (!isWeight(first) || !isWeight(second) || next - k > wayToSecond) continue;
    const span = sentenceAt(tokens, k, reach);
    if (!isEach(tokens, k) || !isEach(tokens, next) || !isOfOne(tokens, span, k, next) || !usesBoth(tokens, span))
      continue;
    out ??= [...tokens];
    const { quantity } = first;
    const text = `${quantity.text} + ${second.quantity.text}`;
    const value = quantity.value + second.quantity.value;
    out[k] = { ...first, quantity: { ...quantity, value, other: null, text } };
    out[next] = asAside(second, 'a part of what was said');
    for (let at = k - 1; at > span.from && !isIngredient(tokens[at]); at--)
      if (!isMark(tokens[at], ',')) out[at] = asFiller(tokens[at] as Token);
  }
  return out ?? tokens;
}
