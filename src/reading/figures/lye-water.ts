/** The water of the lye: what is taken of it for something else, and the heading "liquid for the lye". */

import { isAny, isMark, isMeasured, isRole, isWeight, isWord, sentenceAt, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { weighedBeside } from './part-said.ts';

type Name = Extract<Token, { t: 'name' }>;

const isOf = (token: Token | undefined, kind: string): token is Name =>
  token?.t === 'name' && token.meaning.kind === kind;
const isLiquid = (token: Token): boolean => isOf(token, 'liquid');

const which = /^(?:the|that|this|our|my|your|same|above|whole|recipe)$/;
/** It is less than was weighed, or something else comes in its place. */
const changing =
  /^(?:swap\w*|replac\w*|substitut\w*|sub(?:bed|bing)?|exchang\w*|instead|place|lieu|lost|less|left|leav\w*|evaporat\w*|spill\w*|spilt|boil\w*|without|not|minus|forgot\w*|held|hold\w*|only|just|used?|using|took|taken|poured|threw|discard\w*)$/;
/** "In 34 g of the water" may be water of its own; "take 34 g of the water", "34 g of the water below" is none. */
const pointing = /^(?:that|this|same|above|below|whole|recipe|total|takes?|keep|reserve|save)$/;
const longestSentence = 30;

/** "15 g of the water below", "30 g of the total water": where the water stands that the figure at `k` is a part of; -1. */
function wholeOf(tokens: readonly Token[], k: number): number {
  if (!isWord(tokens[k + 1], 'of')) return -1;
  let at = k + 2;
  while (at - k <= 4 && (which.test(spoken(tokens[at])) || isRole(tokens[at], 'total'))) at++;
  return at > k + 2 && isOf(tokens[at], 'water') ? at : -1;
}

/** The tokens without the parts of a water that the post weighs whole, elsewhere. */
export function partsOfWater(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const part = tokens[k];
    if (!isMeasured(part)) continue;
    const at = wholeOf(tokens, k);
    const water = tokens[at];
    if (water?.t !== 'name') continue;
    const { from, to } = sentenceAt(tokens, k, longestSentence);
    if (isAny(tokens, from, to, (one) => changing.test(spoken(one)) || isLiquid(one))) continue;
    const isPointed = isAny(tokens, k + 2, at + 2, (one) => pointing.test(spoken(one)) || isRole(one, 'total'));
    if (!isPointed && !pointing.test(spoken(tokens[k - 1]))) continue;
    const isWhole = weighedBeside(tokens, water).some(
      (other) => other !== k && wholeOf(tokens, other) < 0 && isMore(tokens[other], part),
    );
    if (!isWhole) continue;
    out ??= [...tokens];
    out[k] = asAside(part, 'a part of what was said');
    for (let of = k + 1; of <= at; of++) out[of] = asFiller(tokens[of] as Token);
    const place = tokens[at + 1];
    if (place && /^(?:below|above)$/.test(spoken(place))) out[at + 1] = asFiller(place);
  }
  return out ?? tokens;
}

const isMore = (token: Token | undefined, { quantity: { value } }: Figure): boolean =>
  isWeight(token) && token.quantity.value > value;

/** "Water: 31 % lye conc. = 361 g": the strength that this water makes with the one weight of alkali; set aside where it does. */
export function strengthToo(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const share = tokens[k];
    if (share?.t !== 'quantity' || share.quantity.dim !== 'percent' || !isRole(tokens[k + 1], 'concentration'))
      continue;
    const at = isMark(tokens[k + 2], '.') ? k + 3 : k + 2;
    const water = tokens[at + 1];
    const named = [k - 1, k - 2].some((near) => isOf(tokens[near], 'water'));
    if (!named || !isMark(tokens[at], '=') || !isWeight(water)) continue;
    const lyes = tokens.flatMap((one, n) => {
      const weight = isOf(one, 'alkali') ? [tokens[n + 1], tokens[n - 1]].find(isWeight) : undefined;
      return weight ? [weight.quantity.value] : [];
    });
    const [lye = 0] = lyes;
    const strength = lye / (lye + water.quantity.value);
    if (lyes.length !== 1 || Math.abs(strength - share.quantity.value) > rounding) continue;
    out ??= [...tokens];
    out[k] = asAside(share, 'the same as a strength');
    for (let of = k + 1; of <= at; of++) out[of] = asFiller(tokens[of] as Token);
  }
  return out ?? tokens;
}
/** A strength is told in whole percent. */
const rounding = 0.0055;

/** "Liquid for lye: 120 g water + 120 g buttermilk", "for the lye: 280 g water": it heads what the lye is dissolved in. */
export function headsLiquid(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 0; k < tokens.length; k++) {
    const [lye, figure, liquid] = [tokens[k], tokens[k + 2], tokens[k + 3]];
    if (!isOf(lye, 'alkali') || !isMark(tokens[k + 1], ':=') || !isMeasured(figure)) continue;
    if (!(isOf(liquid, 'water') || isOf(liquid, 'liquid') || isOf(liquid, 'ice'))) continue;
    const before = isWord(tokens[k - 1], 'the') ? k - 2 : k - 1;
    if (!isWord(tokens[before], 'for')) continue;
    out ??= [...tokens];
    out[k] = asFiller(lye);
  }
  return out ?? tokens;
}

/** "Alkali: 70 g KOH and 43 g NaOH": the word over the two of them is neither. */
export function headsAlkalis(tokens: readonly Token[]): readonly Token[] {
  const isKind = (token: Token | undefined): boolean => isOf(token, 'alkali') && token.meaning.id !== 'unsaid';
  let out: Token[] | null = null;
  for (let k = 0; k + 3 < tokens.length; k++) {
    const head = tokens[k];
    if (!isOf(head, 'alkali') || isKind(head) || !isMark(tokens[k + 1], ':=')) continue;
    const line = tokens.slice(k + 2, k + 2 + longestOfBoth);
    const end = line.findIndex((token) => token.t === 'line' || isMark(token, '.;'));
    const own = end < 0 ? line : line.slice(0, end);
    if (!isMeasured(own[0]) || !isKind(own[1]) || own.filter(isKind).length < 2) continue;
    out ??= [...tokens];
    out[k] = asFiller(head);
  }
  return out ?? tokens;
}
/** Tokens that hold both weights and what is said of them. */
const longestOfBoth = 20;
