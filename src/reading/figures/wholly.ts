/**
 * The one fat of a soap that is made of nothing else: "100 % coconut laundry bar, 900 g", "100% lard soap 2 lb". Its
 * hundred per cent are no superfat where that has a figure: "a 100% coconut bar with 20 sf, I have 454 g".
 */
import { isAny, isFat, isMark, isRole, isStop, isWeight, isWord, type Span, sentenceAt } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

/** Tokens of a sentence that are looked at to either side. */
const reach = 20;

const isAll = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'percent' && token.quantity.value === 1;

/** "Bar", "soap", "batch of": what is made of the fat. */
const isMade = (token: Token | undefined): boolean => isRole(token, 'bars') || isRole(token, 'batch-word');

/** Where it says that all is this fat: "100 % coconut", "coconut 100 %", "coconut (100 %)"; undefined where it does not. */
function wholeAt(tokens: readonly Token[], fat: number): number | undefined {
  const before = isWord(tokens[fat - 1], 'of') ? fat - 2 : fat - 1;
  const behind = isMark(tokens[fat + 1], '(:=') ? fat + 2 : fat + 1;
  return [before, behind].find((k) => isAll(tokens[k]));
}

/** No other fat is named in the post, and the sentence weighs one thing: the fat, whatever is made of it. */
const isAlone = (tokens: readonly Token[], { from, to }: Span): boolean =>
  tokens.filter(isFat).length === 1 && tokens.slice(from, to).filter(isWeight).length === 1;

/** The post names one fat, as often as it may. */
const namesOne = (tokens: readonly Token[]): boolean =>
  new Set(tokens.flatMap((token) => (isFat(token) ? [token.meaning.id] : []))).size === 1;

const isBare = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'bare';

/** The superfat has a figure of its own, "20 sf", "superfat of 20", and the fats have no total that there would be shares of. */
const tellsSuperfat = (tokens: readonly Token[], { from, to }: Span): boolean =>
  isAny(
    tokens,
    from,
    to,
    (token, k) =>
      isRole(token, 'superfat') &&
      (isBare(tokens[k - 1]) || isBare(tokens[isWord(tokens[k + 1], 'of') ? k + 2 : k + 1])),
  ) && !tokens.some((token) => isRole(token, 'total-fats'));

/** The tokens in which the soap that is made of one fat is weighed as that fat. */
export function wholly(tokens: readonly Token[]): readonly Token[] {
  const fat = tokens.findIndex((token, k) => isFat(token) && wholeAt(tokens, k) !== undefined);
  if (fat < 0) return tokens;
  const span = sentenceAt(tokens, fat, reach);
  const at = wholeAt(tokens, fat) ?? -1;
  const all = tokens[at];
  const isSaid = isAll(all) && tellsSuperfat(tokens, span) && namesOne(tokens);
  const out = isSaid ? tokens.with(at, asAside(all, 'all of the fats')) : tokens;
  if (!isAlone(tokens, span)) return out;
  return out.map((token, k) => (k > fat && k < span.to && !isStop(token) && isMade(token) ? asFiller(token) : token));
}
