/** "Water was 1 cup plus another half cup", "1 cup plus 2 tablespoons of water": a liquid by two measures, which count together. */
import { written } from '../taken-back/put-right.ts';
import { endsDotted, isIngredient, isMark, isWord, spoken } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';

const joint = /^(?:plus|and|then|another|further|extra|more|a|also)$/;
const being = /^(?:was|is|were|are|of|about|just|exactly|the|in|it|took|used|total)$/;
const mostBetween = 4;

const isVolume = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'volume' && token.quantity.upTo === null && !token.quantity.each;

const isLiquid = (token: Token | undefined): boolean =>
  isIngredient(token) && /^(?:water|liquid)$/.test(token.meaning.kind);

/** Where the second measure stands that is added to the one at `k`; -1 for none. */
function addedTo(tokens: readonly Token[], k: number): number {
  let at = k + 1;
  while (at - k <= mostBetween && (joint.test(spoken(tokens[at])) || isMark(tokens[at], '+'))) at++;
  return at > k + 1 && isVolume(tokens[at]) && !endsDotted(tokens[k]) ? at : -1;
}

/** The liquid stands right ahead of them, or right behind. */
function isOfLiquid(tokens: readonly Token[], first: number, second: number): boolean {
  let before = first - 1;
  while (first - before <= mostBetween && (being.test(spoken(tokens[before])) || isMark(tokens[before], ':=-–')))
    before--;
  const behind = isWord(tokens[second + 1], 'of') ? second + 2 : second + 1;
  if (isLiquid(tokens[behind]) && !endsDotted(tokens[second])) return true;
  return isLiquid(tokens[before]) && !isIngredient(tokens[behind]);
}

export function measuresSum(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const first = tokens[k];
    const at = isVolume(first) ? addedTo(tokens, k) : -1;
    const second = tokens[at];
    if (!isVolume(first) || !isVolume(second) || !isOfLiquid(tokens, k, at)) continue;
    out ??= [...tokens];
    const { quantity } = first;
    const value = quantity.value + second.quantity.value;
    const text = `${written(quantity)} and ${written(second.quantity)}`;
    const sum = { ...first, quantity: { ...quantity, value, other: null, text } };
    // the name stands beside it, wherever that is
    const isBehind = isLiquid(tokens[isWord(tokens[at + 1], 'of') ? at + 2 : at + 1]);
    out[isBehind ? at : k] = isBehind
      ? {
          ...sum,
          from: second.from,
          to: second.to,
          quantity: { ...sum.quantity, numbers: [...quantity.numbers, ...second.quantity.numbers] },
        }
      : sum;
    out[isBehind ? k : at] = asAside(isBehind ? first : second, 'a part of what was said');
    k = at;
  }
  return out ?? tokens;
}
