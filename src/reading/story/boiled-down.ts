/**
 * "Half a crate of stout. I simmered it until the fizz was gone, let it go cold, and weighed what was left: 255 g": so much
 * of the liquid, boiled down, however much it was before.
 */

import { once } from '../once.ts';
import { type PutRight, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isIngredient, isPot } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { figureOf, thingOf } from '../words/weighed.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { isPlain, type Name } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('simmered boiled cooked reduced simmer boiling simmering heated'.split(' '));

const left =
  '(?:(?:weighed )?(?:what|whatever|all that)(?:s| is| was| were| had)? (?:(?:then|still|finally) )?(?:left|remained|remains|stayed)(?: (?:over|behind|of (?:it|that)|in (?:the|my) [a-z]+))?|that left(?: me)?(?: with)?|which left(?: me)?(?: with)?|leaving(?: me)?(?: with)?|(?:boiled|cooked|simmered|reduced|went) (?:it |that )?down to|until (?:only |just )?)';
const being = '(?: (?:was|were|is|weighed|weighs|came to|comes to|exactly|only|just|about|still|,|:|-|–|—))*';
const makePatterns = (): readonly (readonly ['left', RegExp])[] => [
  [
    'left',
    new RegExp(
      `\\b(?:simmer|boil|cook|reduc|heat)(?:ed|ing)?\\b[^#?]{0,120}?\\b${left}${being} (?<w>#)(?! (?:of )?(?!it\\b|that\\b)@)`,
      'd',
    ),
  ],
];
const patterns = once(makePatterns);

/** Nobody has done it, or not in this batch. */
const open =
  /\b(?:if|would|could|should|might|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|she|he|they|soaps?|paste|half of|some of)\b/;

/** Tokens back to what it was made of, at the most. */
const reach = 60;

/** The one liquid that is named there, and weighed nowhere. */
function liquidBefore(tokens: readonly Token[], end: number): Name | null {
  const all = tokens.filter((one) => isIngredient(one) && one.meaning.kind === 'liquid').map((one) => one as Name);
  const ids = new Set(all.map(thingOf));
  if (ids.size !== 1) return null;
  const isWeighed = tokens.some(
    (one, k) => isIngredient(one) && ids.has(thingOf(one)) && isPlain(tokens[figureOf(tokens, k)]),
  );
  if (isWeighed) return null;
  for (let k = end - 1; k >= 0 && end - k < reach; k--) {
    const one = tokens[k];
    if (!isIngredient(one)) continue;
    return ids.has(thingOf(one)) ? one : null;
  }
  return null;
}

function hear({ tokens, match, tale, span }: Note): PutRight | null {
  const place = match.indices?.groups?.['w']?.[0];
  const figure = place === undefined ? -1 : tale.tokenAt(place);
  const weight = tokens[figure];
  const liquid = liquidBefore(tokens, figure);
  const stand = tokens[figure - 1];
  if (!liquid || !isPlain(weight) || weight.quantity.dim !== 'mass' || !stand) return null;
  for (let k = span.from; k < figure - 1; k++) {
    const one = tokens[k];
    if (one && (isIngredient(one) || isPot(one))) tokens[k] = asFiller(one);
    else if (one?.t === 'quantity') tokens[k] = asAside(one, 'before it was boiled down');
  }
  tokens[figure - 1] = { ...liquid, from: stand.from, to: stand.to };
  return {
    text: `I took ${written(weight.quantity)} of ${liquid.text}, which is what was left of it, as the post says.`,
    gone: [],
    from: span.from,
    to: span.to,
    settles: true,
  };
}

/** The tokens with the liquid before what was left of it. */
export const boiledDown = (cut: Cut): Heard =>
  hearNotes<'left'>(cut, {
    cues,
    isWorth: ({ figures }) => figures > 0,
    patterns,
    isOpen: ({ text }, match) => open.test(text.slice(0, match.index + match[0].length)),
    hear: (_, note) => hear(note),
  });
