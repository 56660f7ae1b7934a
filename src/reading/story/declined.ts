/**
 * "Colleague wants it with 60 g coconut and 90 g castor instead, but no, I keep it as it is", "my sister would rather have
 * shea in it. I'm sticking with mine": what somebody would have otherwise, and the writer turns down. The list stays.
 */

import { once } from '../once.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import type { Cut } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { hearNotes, type Note } from './hear-notes.ts';
import type { Heard } from './heard.ts';
import { hush, isPlain, rowsBefore } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'keep keeping kept stick sticking stuck stay staying stayed leave leaving left'.split(' '),
);

const wants =
  '(?:wants?|wanted|says?|said|suggest(?:s|ed)?|recommend(?:s|ed)?|advise[sd]?|propose[sd]?|thinks?|thought (?:of|about)|considered|reckons?|insists?|swears by|prefers?|preferred|told me|tells me|would (?:have|use|take|like|love|prefer|do|rather)|d rather)';
const it =
  '(?:it|this|that|mine|ours|them|all|everything|things|the (?:recipe|handout|list|card|sheet|batch|soap|pot|amounts?|figures|numbers|original|old one))';
const stays = `(?:keep|keeping|kept|leave|leaving|left) ${it}(?! (?:out|in|off|for|at|to|over|on|until|till|overnight|standing|alone with)\\b)|(?:stick|sticking|stuck|stay|staying|stayed|keep|keeping|kept) (?:with|to|by|at) (?:${it}|my|what|how)`;
const makePatterns = (): readonly (readonly ['declined', RegExp])[] => [
  [
    'declined',
    new RegExp(
      `\\b${wants} (?<offer>[^?]{0,200}?)(?:[-,;.–—!(] |\\b(?:but|though|yet|however) )(?:(?:no|nope|nah|but|though|still|however|sorry|thanks|well|[-,.!–—]) )*(?:(?:i|we|im|ive|were|weve|ill|well)(?: (?:am|have|had|will|would|m|ve|rather|just|still|simply|then))* |(?<=\\bbut ))(?:${stays})\\b(?<rest>[^#?]*?)(?=[.;!)] |$|…)`,
      'd',
    ),
  ],
];
const patterns = once(makePatterns);

/** The writer took some of it, or asks. */
const took =
  /\?|\b(?:i|we)(?: (?:have|had|then|just|also|only|did))* (?:did|done|took|used|put|made|swapped|added|went|changed|gave|listened)\b|\b(?:half|except|apart from|only the|other than|otherwise|shall|should i|if)\b/;

function hear({ match, tokens, sentence, span }: Note): PutRight | null {
  const { offer = '', rest = '' } = match.groups ?? {};
  if (!/[#@]/.test(offer) || rest.includes('@') || took.test(`${offer} ${rest}`)) return null;
  const own = rowsBefore(tokens, tokens.length).filter(({ at }) => at < span.from || at >= span.to);
  const hasOwn = (is: (k: number) => boolean): boolean => own.some(({ at }) => is(at));
  const isLye = (k: number): boolean => isIngredient(tokens[k]) && tokens[k].meaning.kind === 'alkali';
  if (!hasOwn((k) => isFat(tokens[k])) || !hasOwn(isLye)) return null;
  const gone = tokens.slice(span.from, span.to).flatMap((token) => (isPlain(token) ? [token.quantity] : []));
  hush(tokens, span.from, span.to, 'turned down');
  return {
    text: 'I left out what somebody would have otherwise, as the post turns it down.',
    gone,
    from: sentence.from,
    to: Math.max(sentence.to, span.to),
    settles: true,
  };
}

export const declined = (cut: Cut): Heard =>
  hearNotes<'declined'>(cut, {
    cues,
    isWorth: ({ figures, names }) => figures + names > 0,
    patterns,
    isOpen: () => false,
    hear: (_, note) => hear(note),
  });
