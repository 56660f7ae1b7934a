/** The one fat of a soap that is made of nothing else: "100 % coconut laundry bar, 900 g", "100% lard soap 2 lb". */
import { isFat, isMark, isRole, isStop, isWeight, isWord, type Span, sentenceAt } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';

/** Tokens of a sentence that are looked at to either side. */
const reach = 20;

const isAll = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.dim === 'percent' && token.quantity.value === 1;

/** "Bar", "soap", "batch of": what is made of the fat. */
const isMade = (token: Token | undefined): boolean => isRole(token, 'bars') || isRole(token, 'batch-word');

/** All of it is this fat: "100 % coconut", "coconut 100 %", "coconut (100 %)". */
function isWhole(tokens: readonly Token[], fat: number): boolean {
  const behind = isMark(tokens[fat + 1], '(:=') ? fat + 2 : fat + 1;
  return isAll(tokens[isWord(tokens[fat - 1], 'of') ? fat - 2 : fat - 1]) || isAll(tokens[behind]);
}

/** No other fat is named in the post, and the sentence weighs one thing: the fat, whatever is made of it. */
const isAlone = (tokens: readonly Token[], { from, to }: Span): boolean =>
  tokens.filter(isFat).length === 1 && tokens.slice(from, to).filter(isWeight).length === 1;

/** The tokens in which the soap that is made of one fat is weighed as that fat. */
export function wholly(tokens: readonly Token[]): readonly Token[] {
  const fat = tokens.findIndex((token, k) => isFat(token) && isWhole(tokens, k));
  if (fat < 0) return tokens;
  const span = sentenceAt(tokens, fat, reach);
  if (!isAlone(tokens, span)) return tokens;
  return tokens.map((token, k) =>
    k > fat && k < span.to && !isStop(token) && isMade(token) ? asFiller(token) : token,
  );
}
