/** What a pack, a vessel, a mould or a scale takes, which is no amount: "the 3 L tin", "the pot holds 3.5 litres". */
import {
  endsDotted,
  isAny,
  isEach,
  isIngredient,
  isMark,
  isMeasured,
  isPot,
  isRole,
  isStop,
  isWord,
  sentenceAt,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';

/** "the 3 L tin", "a 5 kg bucket": a pack, unless it is "a 500 g tub of". */
export function isPack(tokens: readonly Token[], k: number, token: Figure): boolean {
  const next = tokens[k + 1];
  const beyond = tokens[k + 2];
  return (
    isPot(next) &&
    isMeasured(token) &&
    // "66 g. Pot on low"
    !(token.quantity.text.endsWith('.') && /^\p{Lu}/u.test(next.text)) &&
    // "NaOH 66 g, the tin is lined" without its comma
    !(/^(is|are|was|were|stands|looks)$/.test(wordAt(tokens, k + 2)) && isIngredient(tokens[k - 1])) &&
    token.quantity.times === null &&
    !/ of$/.test(next.meant) &&
    !(beyond?.t === 'word' && beyond.text === 'of')
  );
}

/** What is stirred in, and holds nothing that was bought. */
const mixing = /^(?:pot|pan|pail|bucket|bowl|jug|beaker|kettle|pitcher|saucepan|stockpot|vessel|container)s?$/;

/** "A 3 quart Tefal saucepan", "1 L Duran flask": where the vessel stands, behind words that no list holds. */
export function vesselAt(tokens: readonly Token[], k: number, { quantity }: Figure): number | null {
  if (quantity.dim !== 'volume') return null;
  let at = k + 1;
  while (at - k <= 2 && tokens[at]?.t === 'word' && !mixed.test(wordAt(tokens, at))) at++;
  if (at === k + 1 || !isAny(tokens, k + 1, at, (one) => one.t === 'word' && one.sort === 'unknown')) return null;
  const token = tokens[at];
  const isVessel = isPot(token) ? mixing.test(token.meant) : mixed.test(wordAt(tokens, at));
  return isVessel && !isWord(tokens[at + 1], 'of') && !isIngredient(tokens[at + 1]) ? at : null;
}

const mixed = /^(?:flask|cylinder|beaker|tumbler|basin)s?$/;

/** "A bucket of 12 litres", "a pan of 3 l": what it takes, where nothing follows that would be in it. */
export function isSizeOf(tokens: readonly Token[], k: number, { quantity }: Figure): boolean {
  const [pot, next] = [tokens[k - 2], tokens[k + 1]];
  return (
    quantity.dim === 'volume' &&
    isWord(tokens[k - 1], 'of') &&
    isPot(pot) &&
    /^(?:bucket|pot|pan|pail|bowl|jug|beaker|kettle|pitcher|saucepan|stockpot|crock ?pot|slow cooker)s?$/.test(
      pot.meant,
    ) &&
    !isIngredient(next) &&
    !isWord(next, 'of') &&
    // "water, a jug of 1 litre"
    !isAny(tokens, k - 5, k - 2, isIngredient)
  );
}

/** "6 round tins of 130 ml", "poured in 8 cups of 120 ml": so many vessels and what one takes, where nothing is in them. */
export function isManyOf(tokens: readonly Token[], k: number, { quantity: { dim } }: Figure): boolean {
  const next = tokens[k + 1];
  if (dim !== 'volume' || !isWord(tokens[k - 1], 'of') || isIngredient(next) || isWord(next, 'of')) return false;
  let at = k - 2;
  if (!isPot(tokens[at]) && !isRole(tokens[at], 'mould') && !/^(?:cups|glasses|cavities)$/.test(spoken(tokens[at])))
    return false;
  at--;
  while (k - at <= 4 && tokens[at]?.t !== 'quantity' && !isStop(tokens[at]) && !isIngredient(tokens[at])) at--;
  const [count, before] = [tokens[at], tokens[at - 1]];
  const isCount = count?.t === 'quantity' && count.quantity.dim === 'bare' && Number.isInteger(count.quantity.value);
  return isCount && (isStop(before) || before === undefined || /^(?:in|into|fills?|filled|made)$/.test(spoken(before)));
}

/** "They take 300 ml each", "the pot holds 3.5 litres": what a vessel takes, where no name follows. */
export function isHeld(tokens: readonly Token[], k: number, token: Figure): boolean {
  const [verb, next] = [tokens[k - 1], tokens[k + 1]];
  const subject = tokens[k - 2];
  if (!isMeasured(token) || verb?.t !== 'word' || next?.t === 'name' || (next?.t === 'word' && next.text === 'of'))
    return false;
  if (isFilled(tokens, k)) return true;
  // "the tub of lye holds 1 kg"
  if (token.quantity.dim !== 'volume') return /^(?:holds|contains)$/.test(verb.text) && !isIngredient(tokens[k + 2]);
  const takes =
    /^takes?$/.test(verb.text) && subject?.t === 'word' && /^(?:they|it|each|that|which)$/.test(subject.text);
  return takes || /^(?:holds?|fits?)$/.test(verb.text);
}

/** "The loaf tin takes 1.1 kg finished", "my mould holds 900 g)": a mould, and nothing behind that would be in it. */
function isFilled(tokens: readonly Token[], k: number): boolean {
  const [subject, loaf] = [tokens[k - 2], tokens[k - 3]];
  const isMould = isRole(subject, 'mould') || (isPot(subject) && isRole(loaf, 'mould'));
  const next = tokens[k + 1];
  return (
    isMould && /^(?:takes|holds|fits)$/.test(wordAt(tokens, k - 1)) && (isMark(next, '),;') || isWord(next, 'finished'))
  );
}

/** "A ring from a cup", "I stirred it in a glass": a vessel, where nothing follows that would be in it. */
export function isVessel(tokens: readonly Token[], k: number, { quantity: { dim, text } }: Figure): boolean {
  const [before, next] = [tokens[k - 1], tokens[k + 1]];
  if (dim !== 'volume' || !/^(?:a|an|one)\s/i.test(text) || before?.t !== 'word') return false;
  // "a very long post, get a cup. We had …"
  const isEnd = endsDotted(tokens[k]) || isStop(next);
  if (isEnd && /^(?:get|grab|bring|fetch)$/.test(before.text) && !isAny(tokens, k - 6, k, isIngredient)) return true;
  if (!/^(from|in|into|off|under|by|with)$/.test(before.text)) return false;
  return next?.t !== 'name' && !(next?.t === 'word' && /^(of|for|in|each)$/.test(next.text));
}

/** "Put the bowl on the scale, 310 g empty": what a vessel weighs that holds nothing yet. */
export const isEmptyPot = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k + 1], 'empty') &&
  (isStop(tokens[k + 2]) || isMark(tokens[k + 2], ',)')) &&
  isAny(tokens, k - 7, k, isPot) &&
  !isAny(tokens, k - 7, k, isIngredient);

/** Tokens from a figure back to the mould that it is of, at the most. */
export const mouldNear = 5;

/** "9 holes, 140 ml each": what a vessel takes. */
export const isHoleSize = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean =>
  quantity.dim === 'volume' &&
  (quantity.each || [tokens[k + 1], tokens[k - 1]].some(isEach)) &&
  isAny(tokens, k - 4, k, (one) => isRole(one, 'mould'));

/** "9 little half spheres (80 ml each)": a bracket about what is no ingredient. */
export const isHollow = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean =>
  quantity.dim === 'volume' &&
  (quantity.each || isEach(tokens[k + 1])) &&
  isMark(tokens[k - 1], '(') &&
  isMark(tokens[isEach(tokens[k + 1]) ? k + 2 : k + 1], ')') &&
  tokens[k - 2]?.t === 'word' &&
  !isAny(tokens, k - 6, k - 1, isIngredient);

/** "I've a mould for 1.5 kg": what it takes, where nothing is named behind it. */
export const isMouldFor = (tokens: readonly Token[], k: number): boolean =>
  isWord(tokens[k - 1], 'for') &&
  isRole(tokens[k - 2], 'mould') &&
  !isIngredient(tokens[k + 1]) &&
  !isRole(tokens[k + 1], 'total-fats') &&
  !isWord(tokens[k + 1], 'of');

/** "One loaf (just under 1000 g)": what it weighs, or holds. */
export function isLoaf(tokens: readonly Token[], k: number, token: Figure): boolean {
  // "my kilo mould (1000 g of oils)"
  if (!isMeasured(token) || isRole(tokens[k + 1], 'total-fats')) return false;
  let at = k - 1;
  while (k - at <= 3 && tokens[at]?.t === 'word') at--;
  const mould = tokens[at - 1];
  return isMark(tokens[at], '(') && isRole(mould, 'mould');
}

/** Weights from here on, in g, are what a scale takes, and no step of it. */
const leastTaken = 100;

/** "A 5 kg scale", "a scale that goes up to 250 g": what it takes. */
export const isScale = (tokens: readonly Token[], k: number, { quantity }: Figure): boolean => {
  const next = tokens[k + 1];
  const upTo =
    isWord(tokens[k - 1], 'to') &&
    /^(up|goes|weighs|only)$/.test(wordAt(tokens, k - 2)) &&
    isAny(tokens, k - 8, k, (one) => isRole(one, 'scale'));
  if (upTo && quantity.dim === 'mass' && !isIngredient(next)) return true;
  if (quantity.dim === 'mass' && isOfScaleAlone(tokens, k)) return true;
  if (!isRole(next, 'scale')) return false;
  // "water 210 g. Scale is ..."
  const isOwned = quantity.text.endsWith('.') || isIngredient(tokens[k - 1]) || isIngredient(tokens[k - 2]);
  return !isOwned && quantity.dim === 'mass' && quantity.value >= leastTaken;
};

/** "New scale, 0.1 g, 3 kg max.": a sentence of nothing but what a scale can do. */
function isOfScaleAlone(tokens: readonly Token[], k: number): boolean {
  const { from, to } = sentenceAt(tokens, k, longestOfScale);
  return (
    isAny(tokens, from, to, (one) => isRole(one, 'scale')) &&
    isAny(tokens, from, to, (one) =>
      /^(?:max|maximum|capacity|precision|accurate|resolution|steps?|calibrated)$/.test(spoken(one)),
    ) &&
    !isAny(tokens, from, to, (one) => isIngredient(one) && one.meaning.kind !== 'unknown')
  );
}
const longestOfScale = 16;

/** "5 kg x 1 g", "3 kg / 0.1 g": how much a scale takes, and its step; where the sign between them stands. */
export function rangeOfScale(tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): number | null {
  const [sign, step] = [tokens[k + 1], tokens[k + 2]];
  if (dim !== 'mass' || step?.t !== 'quantity' || step.quantity.dim !== 'mass' || isIngredient(tokens[k + 3]))
    return null;
  const isTimes = isWord(sign, 'x') || isMark(sign, '×*') || (sign?.t === 'name' && sign.text.toLowerCase() === 'x');
  const isBySlash = isMark(sign, '/') && isAny(tokens, Math.max(0, k - 6), k, (one) => isRole(one, 'scale'));
  return (isTimes || isBySlash) && value >= leastRange * step.quantity.value ? k + 1 : null;
}
/** Steps that a scale can tell apart, at the least. */
const leastRange = 200;

/** "The scale does grams to 0.1". */
export const isScaleStep = (tokens: readonly Token[], k: number, { quantity: { dim, value } }: Figure): boolean =>
  dim === 'bare' && value < 1 && wordAt(tokens, k - 1) === 'to' && isUnitWord(tokens[k - 2]);

const isUnitWord = (token: Token | undefined): boolean =>
  token?.t === 'word' && /^(g|grams?|oz|ounces?)$/.test(token.text);

/** "Coconut (jar said 450 g, 200 g went in)": what a pack says that it holds, where the same sentence tells what went in. */
export function isLabelled(tokens: readonly Token[], k: number): boolean {
  const label = tokens[k - 2];
  if (!/^(?:said|says)$/.test(wordAt(tokens, k - 1)) || !(isPot(label) || spoken(label) === 'label')) return false;
  let at = k + 1;
  while (at - k <= 4 && (isMark(tokens[at], ',;') || /^(?:but|and|only|just|about|of|which)$/.test(wordAt(tokens, at))))
    at++;
  return (
    isMeasured(tokens[at]) &&
    /^(?:went|goes)$/.test(wordAt(tokens, at + 1)) &&
    /^in(?:to)?$/.test(wordAt(tokens, at + 2))
  );
}

/** "Lye for the whole bucket 425 g": the weight is that of what is for it. */
export function forVessel(tokens: readonly Token[]): readonly Token[] {
  let out: Token[] | null = null;
  for (let k = 3; k < tokens.length; k++) {
    const [pot, of] = [tokens[k], tokens[k + 1]];
    if (!pot || !(isPot(pot) || isRole(pot, 'mould'))) continue;
    if (!isMeasured(isMark(of, ':=–-') ? tokens[k + 2] : of)) continue;
    let at = k - 1;
    while (k - at <= 2 && /^(?:the|my|this|our|a|one|each|whole|entire|full|big|small)$/.test(wordAt(tokens, at))) at--;
    if (at === k - 1 || !isWord(tokens[at], 'for') || !isIngredient(tokens[at - 1])) continue;
    out ??= [...tokens];
    out[k] = asFiller(pot);
  }
  return out ?? tokens;
}
