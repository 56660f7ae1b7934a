/**
 * What a fat was washed with: "used frying oil, washed with brine, filtered: 300 g" has no brine in it. And what hair is
 * rinsed with: "vinegar rinse after washing, 1 tbsp to a litre".
 */
import { vinegars } from '../words/cue-words.ts';
import { isAny, isFat, isIngredient, isMeasured, isPot, isStop, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';

const washing = /^(?:washed|rinsed|cleaned|cleansed|salted)$/;
const washes = /^(?:water|liquid|additive|acid|ice)$/;
const joint = /^(?:with|in|through|using|some|a|the|hot|warm|cold|boiling|plain|clean|strong|and|bit|little|of)$/;
/** Tokens of such a row ahead, and from "washed" to what it is done with. */
const longestRow = 24;
const longestWay = 6;

const rinsing = /^(?:rinse|rinses|rinsing)$/;
const sour = /^(?:citric-acid|lemon)/;
const thinning = /^(?:water|acid|liquid|additive)$/;

/** So much of something sour to so much water, and no vessel that is rinsed into the pot. */
function isOfHair(sentence: readonly Token[]): boolean {
  const names = sentence.filter(isIngredient).map(({ meaning }) => meaning);
  return (
    names.some(({ id }) => vinegars.has(id) || sour.test(id)) &&
    names.every(({ kind }) => thinning.test(kind)) &&
    sentence.some((one) => isMeasured(one) && one.quantity.dim === 'volume') &&
    !sentence.some(isPot)
  );
}

/** The tokens in which that is no name; one that has a weight right before it goes in, or is asked about. */
export function washedWith(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  let end = 0;
  for (let k = 0; k < tokens.length; k++) {
    if (k < end || !rinsing.test(spoken(tokens[k]))) continue;
    const { from, to } = sentenceAt(tokens, k, longestRow);
    end = to;
    if (!isOfHair(tokens.slice(from, to))) continue;
    out ??= [...tokens];
    for (let at = from; at < to; at++) {
      const token = tokens[at];
      if (isMeasured(token)) out[at] = asAside(token, 'of a rinse');
      else if (isIngredient(token)) out[at] = asFiller(token, 'only');
    }
  }
  for (let k = 0; k < tokens.length; k++) {
    if (!washing.test(spoken(tokens[k])) || !isAny(tokens, sentenceAt(tokens, k, longestRow).from, k, isFat)) continue;
    for (let at = k + 1; at - k <= longestWay && !isStop(tokens[at]); at++) {
      const token = tokens[at];
      if (token?.t === 'name' && washes.test(token.meaning.kind)) {
        out ??= [...tokens];
        out[at] = asFiller(token);
      } else if (!joint.test(spoken(token))) break;
    }
  }
  return out ?? tokens;
}
