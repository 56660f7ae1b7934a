/** "Rendered 1.3 kg suet, got 1 kg clean tallow": of the two weights the one that came of it goes into the pot. */
import { isFat, isIngredient, isMark, isWeight, sentenceAt, spoken } from './token-is.ts';
import { asAside, asFiller, type Token } from './tokens.ts';

export const renderedOf = 'what it was rendered from';

const rendering: ReadonlySet<string> = new Set('rendered rendering render clarified rendred'.split(' '));
const giving = /^(?:got|gave|gives|giving|yielded|yielding|obtained|made|left|with|into|to)(?: me| us)?$/;
const besides: ReadonlySet<string> = new Set(
  'and i we it which that me about around of only raw fresh clean after was were had have straining strained filtering filtered cleaning'.split(
    ' ',
  ),
);
/** Tokens of such a sentence to each side, and of a fat to what came of it. */
const longestLook = 24;
const longestWay = 12;

/** The figure that came of the fat weighed at `k`; -1 where the sentence names none. */
function cameOf(tokens: readonly Token[], k: number, to: number): number {
  let given = false;
  for (let at = k + 1; at < to && at - k <= longestWay; at++) {
    const token = tokens[at];
    if (isWeight(token)) return given ? at : -1;
    if (isIngredient(token) && at - k <= 3) continue;
    if (giving.test(spoken(token))) given = true;
    else if (!isMark(token, ',-') && !besides.has(spoken(token)) && !rendering.has(spoken(token))) return -1;
  }
  return -1;
}

/** The tokens with the raw weights set aside. */
export function rendered(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some((token) => token.t === 'word' && rendering.has(token.text))) return tokens;
  let out: Token[] | null = null;
  tokens.forEach((token, k) => {
    if (!isWeight(token)) return;
    const { from, to } = sentenceAt(tokens, k, longestLook);
    const name = [k + 1, k + 2, k + 3].find((at) => isFat(tokens[at])) ?? -1;
    const came = cameOf(tokens, k, to);
    // "I started with 900 g of raw suet, after rendering I was left with 640 g"
    if (!tokens.slice(from, came).some((one) => one.t === 'word' && rendering.has(one.text))) return;
    const pure = tokens[came];
    if (name < 0 || !isWeight(pure) || pure.quantity.value >= token.quantity.value) return;
    out ??= [...tokens];
    out[k] = asAside(token, renderedOf);
    out[name] = asFiller(tokens[name] as Token);
  });
  return out ?? tokens;
}
