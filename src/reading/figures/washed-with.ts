/** What a fat was washed with: "used frying oil, washed with brine, filtered: 300 g" has no brine in it. */
import { isAny, isFat, isStop, sentenceAt, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const washing = /^(?:washed|rinsed|cleaned|cleansed|salted)$/;
const washes = /^(?:water|liquid|additive|acid|ice)$/;
const joint = /^(?:with|in|through|using|some|a|the|hot|warm|cold|boiling|plain|clean|strong|and|bit|little|of)$/;
/** Tokens of such a row ahead, and from "washed" to what it is done with. */
const longestRow = 24;
const longestWay = 6;

/** The tokens in which that is no name; one that has a weight right before it goes in, or is asked about. */
export function washedWith(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
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
