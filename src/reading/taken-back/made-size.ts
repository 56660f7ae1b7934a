/** "Everything times two, the small batch was …": a whole recipe that is told smaller or larger than it is made. */

import type { Item } from '../rows/items.ts';
import { type Amount, isAmount } from '../rows/kinds.ts';
import type { Sentence } from '../text/sentences.ts';
import { cue, relations, seasons } from '../words/cue-words.ts';
import { multiples } from '../words/multiples.ts';
import { isAny } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { weighedIn } from '../words/weighed.ts';

export interface Times {
  readonly factor: number;
  /** Its own figure, which is of no ingredient. */
  readonly figure: Amount | null;
  /** The figures are said to be of the batch as it was. */
  readonly isPlain: boolean;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const all =
  '(?:everything|all|it all|all of it|the (?:whole )?lot|(?:all )?(?:the )?(?:amounts|figures|weights|numbers))';
const times = new RegExp(
  `(?<!\\b(?:scaled|weighed|checked|counted) )\\b${all} (?:is |are |gets |get |just |taken |goes |times it |to be |will be |multiplied )*(?:(?:times|x|[*]|(?<=multiplied )by) (?<figure>#)(?! ?@)|(?<word>doubled|tripled|trebled|halved|quadrupled)\\b)`,
  'd',
);
const usual = '(?:usual|normal|regular|standard|ordinary|basic|small|trial|test)';
/** "I doubled my usual", "a double batch of our normal recipe", "twice my usual amount". */
const size = new RegExp(
  `\\b(?:i|we)(?:ve)? (?:have |had |just |simply )*(?<word>doubled|tripled|trebled|halved|quadrupled) (?:my|our|the) (?:${usual} )?(?:one|recipe|batch|amounts?|loaf|(?<=${usual} ))(?= ?(?:$|[.,;!?)]|(?:for|this|today|and|but|so|because|which)\\b))|\\b(?<of>double|triple|half|twice) (?:an? )?(?:(?:batch|recipe|amount|size) )?(?:of )?(?:my|our|the) ${usual}\\b(?! (?:[a-z]+ )?(?:of )?@| superfat)`,
  'd',
);
/** "The usual is …", "Standard batch:", "normally I make …", and the list. */
const asUsual =
  /\b(?:usual|usually|normal|normally|regular|standard|ordinary|basic|single|original(?:ly)?)\b(?:[^#]{0,80}#|[^#]{0,80}: $)/;
const leastRows = 2;
/** "All I did not double is the coconut". */
const apart = /\b(?:not|didnt|never|except|apart from|besides)\b/;
const multiple = /\b(?:doubl|tripl|trebl|halv|quadrupl)|(?<=\b(?:not|didnt) )#/;

/** Of what was before it was made larger. */
const asItWas =
  /\b(?:was|were|tester|test batch|trial|single|original|originally|normal|usual|one batch|small (?:one|batch)|base|recipe (?:is|says|has)|for one)\b[^#]*#/;
const most = 20;
/** A post says it once or twice. */
const mostTries = 3;

/** The list is told as it usually is, and once. */
function isUsual(sentences: readonly Sentence[], tokens: readonly Token[], but: string): boolean {
  const fats = weighedIn(tokens, 0, tokens.length, /^fat$/).map(({ id }) => id);
  if (new Set(fats).size < fats.length) return false;
  return sentences.some(({ text, names, figures }) => {
    const rest = text.replace(but, '');
    const found = asUsual.exec(rest) ?? (rest === text ? null : /^[^#]*\bwhich (?:is|was|has) /.exec(rest));
    return found !== null && (Math.min(names, figures) >= leastRows || /(?:: |\bwhich (?:is|was) )$/.test(found[0]));
  });
}

/** "Only the lye I took whole", "all of the lye". */
const wholly =
  /@ (?:(?:i|we|was|went|in|got|took|put|is|stayed|left|it) )*(?:whole|in full|full|undivided|as (?:it was|written|before))\b|\b(?:all|the (?:full|whole|entire))(?: #)?(?: of)?(?: the| my)? @(?! (?:too|as well|and)\b)/;
/** "In June I did everything times two", "last year", "my sister": of another pot perhaps. */
const elsewhen = new RegExp(
  `\\b(?:(?:in|last|this|since|back in|around) (?:the )?(?:${seasons.replaceAll(' ', '|')}|year)|(?:months?|years?) ago|(?:my|our) (?:${relations.replaceAll(' ', '|')})|she|he|they)\\b`,
);
/** What is asked about is the one that is listed. */
const thisOne = /\b(?:this (?:one|time|batch|loaf|pot)|mine|todays)\b/;

/** Something that counts in the pot was not made so many times. */
const isApart = (sentences: readonly Sentence[], tokens: readonly Token[]): boolean =>
  sentences.some(
    ({ text, from, to }) =>
      apart.test(text) &&
      multiple.test(text) &&
      isAny(
        tokens,
        from,
        to,
        (one) => one.t === 'name' && /^(?:fat|alkali|stock|water|liquid)$/.test(one.meaning.kind),
      ),
  );

/** By what a post says that its figures are multiplied; null where it says nothing of it. */
export function timesIn(
  sentences: readonly Sentence[],
  items: readonly Item[],
  tokens: readonly Token[],
): Times | null {
  let tries = 0;
  for (const [k, sentence] of sentences.entries()) {
    if (!sentence.retells || (sentence.cues & cue.all) === 0) continue;
    const { text, from, to } = sentence;
    const ofUsual = size.exec(text);
    if (ofUsual && ++tries > mostTries) return null;
    const found = ofUsual ?? times.exec(text);
    if (!found || /\?|\b(?:if|could|would|can|might|wish|should|next)\b/.test(text)) continue;
    const at = found.indices?.groups?.['figure']?.[0];
    const place = at === undefined ? -1 : sentence.tokenAt(at);
    const token = tokens[place];
    const said = token?.t === 'quantity' && token.quantity.dim === 'bare' ? token.quantity : null;
    const figure = items.find((one): one is Amount => isAmount(one) && one.from === place) ?? null;
    const factor = multiples[found.groups?.['word'] ?? found.groups?.['of'] ?? ''] ?? said?.value ?? 0;
    if (factor <= 0 || factor > most) continue;
    const isElse = elsewhen.test(text);
    if (isElse && sentences.some((one, n) => n !== k && thisOne.test(one.text))) continue;
    const isPartly = isElse || isApart(sentences, tokens);
    if (ofUsual && !isPartly && !isUsual(sentences, tokens, found[0])) continue;
    const isPlain = ofUsual
      ? !isPartly
      : !isElse &&
        !wholly.test(text) &&
        sentences.some((one, n) => asItWas.test(n === k ? one.text.replace(found[0], '') : one.text));
    return { factor, figure, isPlain, text: found[0].replace('#', said?.text ?? ''), from, to };
  }
  return null;
}
