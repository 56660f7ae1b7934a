/** Raw fat, and what was left of it: "rendered 2 kg of suet, which gave 1.2 kg tallow". */
import { isFat, massOf, sentenceAt, spoken } from './token-is.ts';
import { asAside, asFiller, type Figure, type Token } from './tokens.ts';

const rendering = /^render(?:ed|ing|s)?$/;
const longest = 40;
/** Of raw animal fat rendering leaves so much, at the least. */
const leastLeft = 0.4;

/** The fat beside a weight: "2 kg of raw suet", "tallow 640 g"; -1 where none is. */
function fatBeside(tokens: readonly Token[], k: number): number {
  for (let at = k + 1; at <= k + mostWords; at++) {
    if (isFat(tokens[at])) return at;
    if (tokens[at]?.t !== 'word') break;
  }
  return isFat(tokens[k - 1]) ? k - 1 : -1;
}
const mostWords = 4;

/** The tokens without the weight of what was rendered, where what came of it is weighed in the same sentence. */
export function rendered(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    if (tokens[k]?.t !== 'word' || !rendering.test(spoken(tokens[k]))) continue;
    const { from, to } = sentenceAt(tokens, k, longest);
    const weights: { readonly at: number; readonly token: Figure; readonly fat: number }[] = [];
    for (let at = from; at < to; at++) {
      const token = tokens[at];
      const fat = massOf(token) ? fatBeside(tokens, at) : -1;
      if (massOf(token) && fat >= 0) weights.push({ at, token, fat });
    }
    const [raw, left, more] = weights;
    if (!raw || !left || more || left.token.quantity.value >= raw.token.quantity.value) continue;
    const [before, after] = [tokens[raw.fat], tokens[left.fat]];
    const isOne =
      isFat(before) &&
      isFat(after) &&
      before.meaning.id === after.meaning.id &&
      raw.token.quantity.dim === left.token.quantity.dim;
    if (!isOne || left.token.quantity.value < leastLeft * raw.token.quantity.value) continue;
    out ??= [...tokens];
    out[raw.at] = asAside(raw.token, 'before it was rendered');
    out[raw.fat] = asFiller(before);
  }
  return out ?? tokens;
}
