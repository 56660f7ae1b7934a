/**
 * "First render gave 900 g of beef tallow, second render gave 825 g, and both went into the kettle": two lots of one fat,
 * each with its weight, that went in together.
 */

import { once } from '../once.ts';
import { alike, type PutRight, withValue, written } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { seasons } from '../words/cue-words.ts';
import { isFat } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsOf, toldIn, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set('both together combined all everything lot'.split(' '));

const both =
  '(?:both|the two|both of them|both lots|both (?:of )?these|all of (?:it|them)|it all|the lot|everything|these|they)';
const into =
  '(?:(?:(?:i|we|have|had|has|were|was|are|is|all|then|just|got|now|went|go|gone|put|poured|tipped|turned|emptied|melted|combined|mixed|used|in|together) )*(?:went|go|goes|gone|put|poured|tipped|turned|emptied|melted|combined|mixed|used|in|together)\\b)';
const and = '(?: (?:[,;.–—-]|and|then|plus|but))*';
const second = '(?:the |my |a )?(?:second|other|next|new|newer|latest|later|another)';
const deed = '(?:put|poured|tipped|turned|emptied|melted|combined|mixed|used)';
const vessels =
  '(?:bottles|jars|tins|cans|tubs|packs|packets|bags|blocks|jugs|buckets|boxes|lots|cartons|renders|pans|pots|bowls)';
const makePatterns = (): readonly (readonly ['lots', RegExp])[] =>
  [
    // "of olive we had two bottles, in the first 140 g and in the second 210 g, we turned both in the pan"
    `(?<f>@)[^#@?.]{0,40}(?:# (?:of them|${vessels})\\b[^#@?.]{0,24})?\\b(?:first|one|old|older|earlier)\\b[^#@?.]{0,36} (?<a>#)[^#@?.]{0,24}?${and} (?:in |from |of )*${second}\\b[^#@?.]{0,36}? (?<b>#)(?! (?:of )?@)[^#@?.]{0,24}?${and} (?:${both} ${into}|(?:(?:i|we|have|had|then|just) )*${deed} (?:in )?${both})`,
    `\\b(?:first|one|old|older|earlier)\\b[^#@?]{0,36} (?<a>#) (?:of )?(?:the |my )?(?<f>@)[^#@?]{0,24}?${and} ${second}\\b[^#@?]{0,36}? (?<b>#)(?: (?:of )?(?:the |my )?(?<g>@))?${and} (?:${both} ${into}|(?:i |we )?${deed} (?:in )?${both})`,
  ].map((source) => ['lots', new RegExp(source, 'd')] as const);
const patterns = once(makePatterns);

/** Nobody has done it, or not with both. */
const open =
  /\?|\b(?:if|should|would|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|never|not|half|part|some of|instead|only|batch|soap|loaf|pots? of soap|mou?lds?)\b/;
/** Told before it. */
const elsewhen = new RegExp(
  `\\b(?:${seasons.replaceAll(' ', '|')}|ago|once|previous|earlier|last (?:time|batch|week|month|year)|if|when)\\b[^.!]*$`,
);

function hear({ match, tale, tokens, span }: Note): PutRight | null {
  const at = toldIn(tale, match);
  const [a, b] = [at('a'), at('b')];
  const [name, again, one, other] = [tokens[at('f')], tokens[at('g')], tokens[a], tokens[b]];
  if (!isFat(name) || !isPlain(one) || !isPlain(other)) return null;
  if (again && !(isFat(again) && thingOf(again) === thingOf(name))) return null;
  const sum = weightAt(tokens, a, a) + weightAt(tokens, b, a);
  if (!(sum > 0)) return null;
  const listed = rowsOf(tokens, name, tokens.length).filter(({ figure }) => figure !== a && figure !== b);
  if (!listed.every(({ figure }) => isSum(weightAt(tokens, figure, a), sum))) return null;
  const numbers = [...one.quantity.numbers, ...other.quantity.numbers];
  tokens[b] = asAside(other, 'a part of what was said');
  // "two bottles", of which each is told
  for (let k = at('f') + 1; k < a; k++) {
    const token: Token | undefined = tokens[k];
    if (token?.t === 'quantity') tokens[k] = asAside(token, 'a part of what was said');
    else if (token && token.t !== 'line') tokens[k] = asFiller(token);
  }
  for (let k = a + 1; k < span.to; k++) {
    const token: Token | undefined = tokens[k];
    if (token?.t === 'name' && k !== at('f')) tokens[k] = asFiller(token);
  }
  const now = withValue(alike(one.quantity, other.quantity), sum);
  if (listed.length > 0) {
    tokens[a] = asAside(one, 'a part of what was said');
    tokens[at('f')] = asFiller(name);
  } else {
    tokens[a] = { ...one, quantity: { ...now, numbers } } as Figure;
    const beside = tokens[a - 1];
    if (at('f') < a - 1 && beside) {
      tokens[at('f')] = asFiller(name);
      tokens[a - 1] = { ...name, from: beside.from, to: beside.to };
    }
  }
  return {
    text: `I took ${written(one.quantity)} and ${written(other.quantity)} of ${name.text} together, ${written(now)}, as both went in.`,
    gone: [],
    from: span.from,
    to: span.to,
    settles: true,
  };
}

/** The list in which they count together. */
export const twoLots = (cut: Cut): Heard =>
  hearNotes<'lots'>(cut, {
    cues,
    isWorth: ({ figures, names }) => figures > 0 && names > 0,
    patterns,
    isOpen: ({ text }, match) => open.test(match[0]) || elsewhen.test(text.slice(0, match.index)),
    hear: (_, note) => hear(note),
  });
