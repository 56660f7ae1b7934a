/** "m = 850 g", "m(NaOH) = 120 g": the sign for a mass, as formulas have it. */
import { isMark, isWeight, spoken } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

const isSign = (token: Token | undefined): boolean => token?.t === 'word' && /^m$/i.test(spoken(token));
/** Tokens of what stands in its brackets, at the most. */
const most = 3;

export function massSign(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isSign)) return tokens;
  const out = [...tokens];
  const drop = (k: number): void => {
    const token = out[k];
    if (token) out[k] = { t: 'word', from: token.from, to: token.to, text: 'of', sort: 'filler' };
  };
  tokens.forEach((token, k) => {
    if (!isSign(token)) return;
    if (isMark(tokens[k + 1], '=') && isWeight(tokens[k + 2])) {
      out[k] = asFiller(token as Extract<Token, { t: 'word' }>);
      drop(k + 1);
      if (isMark(tokens[k - 1], ',')) drop(k - 1);
    }
    if (!isMark(tokens[k + 1], '(')) return;
    let end = k + 2;
    while (end - k <= most + 1 && !isMark(tokens[end], ')')) end++;
    if (!isMark(tokens[end], ')') || !isMark(tokens[end + 1], '=') || !isWeight(tokens[end + 2])) return;
    for (const at of [k, k + 1, end]) drop(at);
  });
  return out;
}
