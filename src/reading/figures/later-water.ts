/** Water that is none of the lye's: what a test or a sample takes, and what thins the finished paste. */
import { signal } from '../words/signal-words.ts';
import { callsFor, gives, givesAt, type Signals } from '../words/signals.ts';
import { isMark } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';

const endsSentence = (token: Token | undefined): boolean =>
  token === undefined || token.t === 'line' || (token.t === 'sign' && /^[.;!?]$/.test(token.text));

/** "Clear test: 1 tsp paste in 1 cup hot water", "dilute with 1.5 kg water". */
const speaksOfIt = (token: Token): boolean => gives(token, signal.thinning) || callsFor(token, signal.thinning);

/** "Dilute 1 + 2.5": paste to water. */
const isPartOf = (tokens: readonly Token[], k: number): boolean =>
  isBare(tokens[k]) && [k - 1, k + 1].some((at) => isMark(tokens[at], '+') && isBare(tokens[2 * at - k]));
const isBare = (token: Token | undefined): token is Figure => token?.t === 'quantity' && token.quantity.dim === 'bare';

const isRow = (token: Token): boolean =>
  token.t === 'name' && ['fat', 'alkali', 'stock', 'ambiguous', 'unheld'].includes(token.meaning.kind);

const isMeasure = (token: Token): token is Figure =>
  token.t === 'quantity' && (token.quantity.dim === 'mass' || token.quantity.dim === 'volume');

/** "Water for the paste 270 g": that is the lye's. */
const isForPaste = (sentence: readonly Token[]): boolean =>
  sentence.some((token, k) => {
    const [before, article] = [sentence[k - 2], sentence[k - 1]];
    const isFor = [before, article].some((word) => word?.t === 'word' && word.text === 'for');
    return token.t === 'word' && token.text === 'paste' && isFor;
  });

/** The tokens with the measures of sentences that test or thin the soap, and name no fat and no alkali, set aside. */
export function laterWater(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  const measures = tokens.filter(isMeasure).map(({ quantity }) => quantity.text);
  // "150 g. Dilute …", where not all units of the post have their dot
  const dotted = measures.some((text) => !text.endsWith('.'));
  const ends = (k: number): boolean => {
    const before = tokens[k - 1];
    return endsSentence(tokens[k]) || (dotted && before?.t === 'quantity' && before.quantity.text.endsWith('.'));
  };
  for (let k = 0; k < tokens.length; k++) {
    const word = tokens[k];
    if (!givesAt(signals, k, signal.thinning) || !word || !speaksOfIt(word)) continue;
    let [from, to] = [k, k + 1];
    while (from > 0 && !ends(from)) from--;
    while (!ends(to)) to++;
    k = to - 1;
    const sentence = tokens.slice(from, to);
    if (sentence.some(isRow) || isForPaste(sentence)) continue;
    for (let at = from; at < to; at++) {
      const token = tokens[at];
      if (token?.t !== 'quantity' || !(isMeasure(token) || isPartOf(tokens, at))) continue;
      out ??= [...tokens];
      out[at] = asAside(token, 'for a test or a dilution');
    }
  }
  return out ?? tokens;
}
