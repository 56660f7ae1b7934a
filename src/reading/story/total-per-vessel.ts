/**
 * All the fats of one mould by their weight, and their shares: "two loaf moulds, 500 g of fats in each: 50 % lard, 30 % olive,
 * 20 % coconut … how much lye in total". Where all of them together are told of, or the lye is so much, it is so many times
 * that; where the whole is said, too ("350 g oil each, 1050 g in all"), that one counts.
 */

import { usual } from '../taken-back/part-times.ts';
import { withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isRole, isWeight, massOf, spoken } from '../words/token-is.ts';
import { asAside, type Figure, type Token } from '../words/tokens.ts';
import { weighedAt } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { countsIn, distributes, lyeOf, makesMany, ofPeople, open, single, together } from './per-vessel.ts';
import { isSum } from './tale.ts';

const besides = 3;
const leastShares = 2;

const isOfFats = (token: Token): boolean =>
  isRole(token, 'total-fats') || (isRole(token, 'heading') && ofFats.test(spoken(token)));
const ofFats = /^(?:oils?|fats?)$/;

/** The weight of all fats in a sentence: "500 g of fats", "oils: 500 g"; -1 for none. */
function totalIn(tokens: readonly Token[], { from, to }: Sentence): number {
  for (let k = from; k < to; k++)
    if (isWeight(tokens[k]) && isAny(tokens, Math.max(from, k - besides), Math.min(to, k + besides + 1), isOfFats))
      return k;
  return -1;
}

const isShareOfFat = (tokens: readonly Token[], k: number): boolean => {
  const token = tokens[k];
  return (
    token?.t === 'quantity' &&
    token.quantity.dim === 'percent' &&
    isAny(tokens, k - besides, k + besides, (one) => isFat(one))
  );
};

/** A fat by its weight, and not by its share. */
const isWeighedFat = (tokens: readonly Token[], k: number): boolean =>
  isFat(tokens[k]) && weighedAt(tokens, k) && ![k - 1, k + 1, k - 2].some((at) => isShareOfFat(tokens, at));

const fits = (share: number): boolean => share >= usual.naoh.least && share <= usual.naoh.most;

/** The list with the weight of the fats in all of them. */
export function totalPerVessel(cut: Cut): Heard {
  const { tokens, prims } = cut;
  const none = { tokens, told: [], unheard: null };
  if (tokens.filter((_, k) => isShareOfFat(tokens, k)).length < leastShares) return none;
  const sentences = sentencesOf(cut);
  if (sentences.some(({ text }) => open.test(text) || ofPeople.test(text))) return none;
  const one = sentences.find(
    (sentence) => distributes.some((pattern) => pattern.test(sentence.text)) && totalIn(tokens, sentence) >= 0,
  );
  if (!one || tokens.some((_, k) => isWeighedFat(tokens, k))) return none;
  const at = totalIn(tokens, one);
  const weight = tokens[at] as Figure;
  const found = distributes.map((pattern) => pattern.exec(one.text)).find((match) => match !== null);
  const noun = Object.values(found?.groups ?? {}).find((name) => name !== undefined) ?? '';
  const many = [...countsIn(cut, sentences, noun)];
  const [[factor, places] = [0, []]] = many;
  if (factor < leastShares) return none;
  const out = [...tokens];
  for (const place of places) {
    const token = out[place];
    if (token?.t === 'quantity') out[place] = asAside(token, 'of how many it is');
  }
  const all = weight.quantity.value * factor;
  const whole = tokens.findIndex((token, k) => k !== at && massOf(token) && isSum(all, token.quantity.value));
  if (whole >= 0) {
    out[at] = asAside(weight, 'what one of them takes');
    for (let k = whole + 1; k < out.length; k++) {
      const again = out[k];
      if (massOf(again) && isSum(all, again.quantity.value)) out[k] = asAside(again, 'said before');
    }
    return { ...none, tokens: out };
  }
  const [lye] = [tokens[lyeOf(cut)?.figure ?? -1]].filter(isWeight);
  const share = lye?.quantity.value ?? 0;
  const asks = sentences.filter(({ text }) => text.includes('?'));
  const isOfOne = asks.some(({ text }) => (single.test(text) || perOne.test(text)) && !together.test(text));
  const others = sentences.filter((sentence) => sentence !== one);
  const isOfAll =
    others.some(({ text }) => together.test(text) && !single.test(text)) ||
    onePot.test(one.text) ||
    sentences.some(({ text }) => onePot.test(text) || (!lye && makesMany.test(text)));
  if (many.length > 1 || (lye ? fits(share / weight.quantity.value) === fits(share / all) : isOfOne === isOfAll)) {
    const [first, last] = [tokens[one.from], tokens[one.to - 1]];
    return { ...none, unheard: rawText(prims, first?.from ?? 0, last?.to ?? 0).trim() };
  }
  if (lye ? fits(share / weight.quantity.value) : isOfOne) return { ...none, tokens: out };
  const now = withValue(weight.quantity, all);
  out[at] = { ...weight, quantity: { ...now, numbers: weight.quantity.numbers } };
  const text = `I took ${written(now)} of fats: ${factor} times ${written(weight.quantity)}, as the post says.`;
  return { tokens: out, told: [{ text, gone: [], from: one.from, to: one.to, settles: true }], unheard: null };
}

const perOne = /\bper (?:mou?ld|loaf|bar|tin|tray|batch|pot|box|block|slab)\b/;
const onePot = /\b(?:in )?(?:one|a single|the same) (?:big |large )?(?:pot|go|batch|pan|kettle)\b/;
