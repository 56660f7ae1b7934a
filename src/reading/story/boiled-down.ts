/**
 * "Half a crate of stout. I simmered it until the fizz was gone, let it go cold, and weighed what was left: 255 g": so much
 * of the liquid, boiled down, however much it was before.
 */

import { once } from '../once.ts';
import { type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isIngredient, isPot, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { figureOf, thingOf } from '../words/weighed.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, type Name, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'simmered boiled cooked reduced simmer boiling simmering heated cooking boil cook'.split(' '),
);

const left =
  '(?:(?:weighed )?(?:what|whatever|all that)(?:s| is| was| were| had)? (?:(?:then|still|finally) )?(?:left|remained|remains|stayed)(?: (?:over|behind|of (?:it|that)|in (?:the|my) [a-z]+))?|that left(?: me)?(?: with)?|which left(?: me)?(?: with)?|leaving(?: me)?(?: with)?|(?:boiled|cooked|simmered|reduced|went) (?:it |that )?down to|until (?:only |just )?)';
const being = '(?: (?:was|were|is|weighed|weighs|came to|comes to|exactly|only|just|about|still|,|:|-|–|—))*';
const till = `(?:till|until|so that|and|then)(?: (?:there|it|they|i|we|only|just|about|was|were|is|had|that|then|exactly|all|finally|what|,))*`;
const remains =
  '(?: (?:of (?:it|that)|was|were|is|are|only|just|then|finally))* (?:left|remained|remaining|remains|stayed|over|in the end|at the end)\\b';
const plain = '(?! (?:of )?(?!it\\b|that\\b)@)';
const makePatterns = (): readonly (readonly ['left', RegExp])[] =>
  [
    `\\b(?:simmer|boil|cook|reduc|heat)(?:ed|ing)?\\b[^#?]{0,120}?\\b${left}${being} (?<w>#)${plain}`,
    // "boiled down 500 g of it till there was 280 g left", "500 g boiled down, 280 g left"
    `\\b(?:simmer|boil|cook|reduc|heat)(?:ed|ing)?\\b[^#?]{0,24}(?:#[^#?]{0,60}?)?(?:(?:, |\\b${till} )(?<w>#)${remains}|\\b(?:(?:down|reduced) to|until only|till only)${being} (?<v>#)${plain})`,
    // "was 400 g and after boiling only 250 g left", "had 400 g and at the end 260 g remained"
    `\\b(?:simmer|boil|cook|reduc|heat)(?:ed|ing)?\\b[^#?]{0,60}#[^#?]{0,40}\\bafter (?:(?:the|it|this) )?(?:simmer|boil|cook|reduc|heat)\\w*[^#?@]{0,24}(?<w>#)(?:${remains}|${plain})`,
    `\\b(?:simmer|boil|cook|reduc|heat)(?:ed|ing)?\\b[^#?]{0,60}#[^#?@]{0,50}?(?<w>#)${remains}(?! in (?:the|my) (?:fridge|freezer|cupboard)| for\\b)`,
    `\\breduced(?: (?:it|that|this|down|@|#|of|the|on the [a-z]+))* to${being} (?<w>#)${plain}`,
    `\\b(?:simmer|boil|cook)(?:ed|ing) (?:(?:it|that|@|of|the|my|flat|#) )*down\\b[^#?]{0,40}(?:#[^#?]{0,12})?(?:, |and )(?<w>#)${remains}`,
  ].map((source) => ['left', new RegExp(source, 'd')] as const);
const patterns = once(makePatterns);

/** Nobody has done it, or not in this batch. */
const open =
  /\b(?:if|would|could|should|might|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|she|he|they|soaps?|paste|half of|some of)\b/;

/** Tokens back to what it was made of, at the most. */
const reach = 60;

/** The one liquid that is named there, and weighed nowhere but as it was before it was boiled down. */
function liquidBefore(tokens: readonly Token[], from: number, end: number): Name | null {
  // "into the milk" behind, without a weight, is the same by a shorter name
  const all = tokens
    .filter((one, k) => isIngredient(one) && one.meaning.kind === 'liquid' && (k < end || figureOf(tokens, k) >= 0))
    .map((one) => one as Name);
  const ids = new Set(all.map(thingOf));
  if (ids.size !== 1) return null;
  const isWeighed = tokens.some((one, k) => {
    const figure = isIngredient(one) && ids.has(thingOf(one)) ? figureOf(tokens, k) : -1;
    return (
      isPlain(tokens[figure]) && figure !== end && !isAgain(tokens, figure, end) && !isBefore(tokens, figure, from, end)
    );
  });
  if (isWeighed) return null;
  for (let k = end - 1; k >= 0 && end - k < reach; k--) {
    const one = tokens[k];
    if (!isIngredient(one)) continue;
    return ids.has(thingOf(one)) ? one : null;
  }
  return null;
}

/** "Into the 250 g milk": told once more behind. */
const isAgain = (tokens: readonly Token[], figure: number, end: number): boolean =>
  figure > end && isSum(weightAt(tokens, end, end), weightAt(tokens, figure, end));

/** So much it was before, told in the same breath, and more. */
const isBefore = (tokens: readonly Token[], figure: number, from: number, end: number): boolean => {
  if (figure < from || figure >= end) return false;
  const was = weightAt(tokens, figure, end);
  return !(was <= weightAt(tokens, end, end));
};

function hear({ tokens, match, tale, sentence }: Note): PutRight | null {
  const place = (match.indices?.groups?.['w'] ?? match.indices?.groups?.['v'])?.[0];
  const figure = place === undefined ? -1 : tale.tokenAt(place);
  const weight = tokens[figure];
  const { from } = sentence;
  const liquid = liquidBefore(tokens, from, figure);
  const stand = tokens[figure - 1];
  if (!liquid || !isPlain(weight) || weight.quantity.dim !== 'mass' || !stand) return null;
  const begin = tale.tokenAt(match.index);
  const was = [...tokens];
  for (let k = from; k < figure - 1; k++) {
    const one = tokens[k];
    const isIts = isIngredient(one) && thingOf(one) === thingOf(liquid);
    const isFirst = one?.t === 'quantity' && (k >= begin || isOfNone(was, k, thingOf(liquid)));
    if (one && (isIts || (k >= begin && (isIngredient(one) || isPot(one))))) tokens[k] = asFiller(one);
    else if (isFirst) tokens[k] = asAside(one, 'before it was boiled down');
  }
  const behind = isIngredient(stand) || stand.t === 'quantity' ? null : stand;
  if (!behind) return null;
  tokens[figure - 1] = { ...liquid, from: behind.from, to: behind.to };
  const to = tale.tokenAt(match.index + match[0].length - 1) + 1;
  for (let k = figure + 1; k < to; k++) if (tokens[k]?.t === 'word') tokens[k] = asFiller(tokens[k] as Token);
  return {
    text: `I took ${written(weight.quantity)} of ${liquid.text}, which is what was left of it, as the post says.`,
    gone: [],
    from,
    to,
    settles: true,
  };
}

/** "Beer, 500 g", "started with 500 g": nothing else is named beside the figure. */
const isOfNone = (tokens: readonly Token[], k: number, id: string): boolean =>
  [k - 1, k + 1, spoken(tokens[k + 1]) === 'of' ? k + 2 : k].every((at) => {
    const one = tokens[at];
    return !isIngredient(one) || thingOf(one) === id;
  });

/** The tokens with the liquid before what was left of it. */
export const boiledDown = (cut: Cut): Heard =>
  hearNotes<'left'>(cut, {
    cues,
    isWorth: ({ figures }) => figures > 0,
    patterns,
    isOpen: ({ text }, match) => open.test(text.slice(0, match.index + match[0].length)),
    hear: (_, note) => hear(note),
  });
