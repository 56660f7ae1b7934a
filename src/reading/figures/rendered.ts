/** "Rendered 1.3 kg suet, got 1 kg clean tallow": of the two weights the one that came of it goes into the pot. */
import { isFat, isIngredient, isMark, isWeight, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

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

/** "3 kg of suet from the butcher, two salt washes, ended up with 2 kg of tallow": the later weight of the same fat. */
function endedUp(tokens: readonly Token[], k: number, name: number, to: number): number {
  const raw = tokens[name];
  for (let at = name + 1; at < to; at++) {
    const pure = isWeight(tokens[at])
      ? [at + 1, at + 2, at + 3, at + 4].find((of) => isIngredient(tokens[of]))
      : undefined;
    const fat = tokens[pure ?? -1];
    if (!isFat(raw) || !isFat(fat) || fat.meaning.id !== raw.meaning.id) continue;
    const words = tokens
      .slice(Math.max(k, at - 4), at)
      .map(spoken)
      .join(' ');
    return /\b(?:end(?:ed)? up with|left with|came out|out came|turned into|got me)\b/.test(words) ? at : -1;
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
    const ended = name < 0 ? -1 : endedUp(tokens, k, name, to);
    const came = ended >= 0 ? ended : cameOf(tokens, k, to);
    // "I started with 900 g of raw suet, after rendering I was left with 640 g"
    if (ended < 0 && !tokens.slice(from, came).some((one) => one.t === 'word' && rendering.has(one.text))) return;
    const pure = tokens[came];
    if (name < 0 || !isWeight(pure) || pure.quantity.value >= token.quantity.value) return;
    out ??= [...tokens];
    out[k] = asAside(token, renderedOf);
    out[name] = asFiller(tokens[name] as Token);
  });
  return out ?? tokens;
}
