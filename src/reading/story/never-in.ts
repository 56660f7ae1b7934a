/**
 * "I had 50 g castor ready but did not put it", "castor 50 g was planned but it is not in", "no castor in the end, although I
 * had 50 g standing there": a fat with its weight that never went in, heard by a plan or a stock and a denial in any order.
 */
import { written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { rowsIn } from './mentions.ts';
import { isPlain, type Name } from './tale.ts';

const no = '(?:did ?nt|didnt|did not|havent|hadnt|hasnt|have not|had not|has not|never|not|wont|will not|isnt|wasnt)';
const it = '(?:it|that|this|them|any)';
/** It did not go in. */
const denied = new RegExp(
  [
    `\\b${no} (?:(?!any\\b)[a-z]+ ){0,2}(?:put|add|added|use|used|go|went|gone|take|taken|come|arrived?|make|made|want|get)(?: ${it})?(?: (?:in|into|to|after|at|the|all|inside|there|it|end|pot|soap|mix|post|mail|today))*(?=$| ?[,.;!)–—-]| (?:because|as|since|so|and|yet|after all|in the end)\\b)`,
    `\\b(?:is|was|are|were) not (?:in|inside|there|part of it)\\b|\\b(?:isnt|wasnt) in\\b`,
    `\\bleft (?:it|that|them|@) out\\b|\\bleft out\\b|\\bforgot(?:ten)?(?: (?:it|that|them|about it|to))?(?=$| ?[,.;!)])|\\bskipped (?:it|that)\\b|\\bwithout(?: it| that)?(?=$| ?[,.;!)])`,
    '\\bsaid no\\b|\\bdecided (?:against|not)\\b|\\bchanged my mind\\b|\\b(?:still|found|stayed|stood|stands|sits|sat|remained) (?:[a-z]+ ){0,3}(?:on|in|behind) the (?:[a-z]+ )?(?:counter|table|bottle|jar|tub|cupboard|fridge|shelf|scale|bowl|cup|bag|shop)\\b',
    '^(?:[-,.] )?(?:but |and |so )?no @(?: (?:at all|in the end|this time|today|in it|in there|for me|though))*(?= ?[,.;:!()–—-])',
  ].join('|'),
);
/** It was planned, or stood ready. */
const planned =
  /\b(?:wanted|want|planned|plan|thought (?:of|about)|thinking of|meant|supposed|intended|would ?ve|would have|id have|wouldve|going to|had|have|got|ready|bought|standing|stood|there (?:is|are|was|were)|theres|wish)\b/;
/** Nobody needs to have planned it. */
const surely = /\b(?:forgot|forgotten|stayed|stays|left (?:it )?out|not in|isnt in|wasnt in)\b/;
/** It went in all the same, or not all of it, or nobody is sure. */
const open =
  /\?|\b(?:if|leave (?:it )?out|leaving out|leave out|about to|nearly|almost|out of|first|before|ever|until|till|usually|normally|always|next|last (?:time|batch)|half|part|whole|rest|most|some of|only|maybe|perhaps|should|could|more|another|less|instead|replac\w*|swap\w*|so i (?:took|used|put)|(?:then|later|afterwards|finally|after all|so|and) (?:[a-z]+ ){0,4}(?:put|added|stirred|poured|melted|mixed|blended|threw|tipped|went in|goes in) (?:it|that|them|in)|in it went|in they went|sister|she|he|they|her|his|all of it|enough|trace|taste|smell|fragrance|scent)\b/;

/** The list without what never went in. */
export function neverIn(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const all = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    // "forgot the castor (50 g)"
    const bracket = sentence.figures === 0 ? sentences[k + 1] : undefined;
    const isBracketed = bracket !== undefined && /^\( # \) ?$/.test(bracket.text);
    if (sentence.names === 0 || (sentence.figures !== 1 && !isBracketed)) continue;
    const last = isBracketed ? bracket.to : sentence.to;
    const named = placesOf(tokens, sentence.from, last, isIngredient);
    const [first] = named;
    const name = tokens[first ?? -1];
    if (!isFat(name) || named.some((at) => thingOf(tokens[at] as Name) !== thingOf(name))) continue;
    const next = sentences[isBracketed ? k + 2 : k + 1];
    const isNear = next && next.names === 0 && next.figures === 0 && next.paragraph === sentence.paragraph;
    const behind = isNear && /\b(?:it|its|that|them)\b/.test(next.text) && !next.text.includes('?') ? next.text : '';
    const isIn = denied.test(sentence.text);
    if (!isIn && !(behind && denied.test(behind))) continue;
    const text = sentence.text + (isBracketed ? (next?.text ?? '') : isIn ? '' : behind);
    if (!(planned.test(text) || surely.test(text)) || open.test(text.replace(/\bi (?:wanted|planned|thought)\b/g, '')))
      continue;
    const own = all.filter(({ id }) => id === thingOf(name));
    if (own.some(({ figure }) => figure < sentence.from || figure >= last)) continue;
    if (!all.some(({ at }) => isFat(tokens[at]) && (at < sentence.from || at >= sentence.to))) continue;
    const [at] = placesOf(tokens, sentence.from, last, isPlain);
    const figure = tokens[at ?? -1];
    if (at === undefined || !isPlain(figure)) continue;
    const out = [...tokens];
    out[at] = asAside(figure as Figure, 'never went in');
    for (const one of named) out[one] = asFiller(tokens[one] as Name);
    const to = isIn ? last : (next?.to ?? last);
    const told = `I left out ${written(figure.quantity)} of ${name.text}: the post says that it did not go in.`;
    return { tokens: out, told: [{ text: told, gone: [figure.quantity], from: sentence.from, to, settles: true }] };
  }
  return none;
}

function placesOf(
  tokens: readonly Token[],
  from: number,
  to: number,
  is: (token: Token | undefined) => boolean,
): readonly number[] {
  const places: number[] = [];
  for (let k = from; k < to; k++) if (is(tokens[k])) places.push(k);
  return places;
}
