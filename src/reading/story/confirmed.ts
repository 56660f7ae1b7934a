/**
 * Somebody doubts a figure of the list, and what is answered settles it: "350 palm? Yesterday you had 400" – "you're right,
 * 400 g it is", "200 coconut? Wasn't it 250?" – "no, 200 g". The figure that is confirmed counts.
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { figureOf, thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, isSum, rowsBefore, weightAt } from './tale.ts';

/** Another figure is remembered. */
const doubts =
  /\b(?:(?:you|we|i|he|she|they) (?:had|have|said|wrote|told (?:me|us)|took|agreed(?: on)?|wanted|meant|remember(?:ed)?|thought|planned|decided(?: on)?)|(?:wasnt|isnt|wasn't|werent|was|is) (?:it|that|this)(?: not)?|(?:didnt|did|dont|havent|hadnt) (?:we|you|i|they)(?: all)? (?:say|agree(?: on)?|said|have|had|want|write|take|decide(?: on)?|agreed(?: on)?)|thought (?:it|that) (?:was|is)|(?:it|that) (?:was|should be|said)|shouldnt (?:it|that) be|not)(?: (?:it|that|this|was|were|is|be|of|on|the|about|only|at|to|had|say|said|yesterday|before|last|time|on|phone|earlier)){0,4} (?<new>#)/d;
/** It is answered with the figure that counts. */
const yes =
  '(?:youre right|you are right|(?:he|she|they)(?:s|re| is| are) right|thats right|that is right|right|true|yes|yep|yeah|yup|indeed|correct|sorry|exactly|no|nope|nah|of course|my (?:mistake|fault|bad)|oops|oh|damn|ah|fine|ok|okay|agreed|sure|i meant|i mistyped|typo)';
const answers: readonly RegExp[] = [
  new RegExp(
    `^(?:[•–—,.!-] ?|(?:oh|ah|and|so|well|but|oops|yes|no|ok|fine) )*\\b${yes}\\b[^#?@]{0,40}?(?<said>#)`,
    'd',
  ),
  new RegExp(
    `^(?:[•–—,.!-] ?|(?:oh|ah|and|so|well|but|its|it is|make it) )*(?<said>#) (?:(?:it|that) (?:is|was)|is right|[,;–-] ?${yes})`,
    'd',
  ),
];
const open = /\b(?:maybe|perhaps|i think|not sure|dont know|either|probably|depends|could be|might)\b/;
/** What it costs, and what others make. */
const elsewise = /\b(?:cost|costs|price|paid|pay|bars?|degrees|minutes|hours|my own|mine|my recipe)\b/;
const since = 3;
/** Sentences from the doubt to its answer, at the most. */
const reach = 3;

interface Doubt {
  readonly row: Weighed;
  /** The sentence in which it begins. */
  readonly from: number;
  readonly now: number;
}

/** The row that a sentence, or the one before it, doubts with another figure. */
function doubtIn(tokens: readonly Token[], sentences: readonly Sentence[], k: number): Doubt | null {
  const sentence = sentences[k];
  if (!sentence || sentence.figures === 0 || elsewise.test(sentence.text)) return null;
  const place = doubts.exec(sentence.text)?.indices?.groups?.['new']?.[0];
  if (place === undefined) return null;
  const now = sentence.tokenAt(place);
  if (!isPlain(tokens[now])) return null;
  const before = sentences[k - 1];
  for (const one of [sentence, before]) {
    if (!one || (one !== sentence && !/\?/.test(one.text))) continue;
    const names = tokens.slice(one.from, one.to).filter(isIngredient);
    const ids = new Set(names.map(thingOf));
    const [id] = ids;
    if (ids.size > 1) return null;
    if (id === undefined) continue;
    const rows = rowsBefore(tokens, one.from).filter((row) => row.id === id);
    const [row, ...more] = rows;
    if (!row || more.length > 0) return null;
    const [was, is] = [weightAt(tokens, row.figure, row.figure), weightAt(tokens, now, row.figure)];
    if (!(is > was / 3 && is < was * 3) || isSum(was, is)) return null;
    // what the doubter says of another thing
    const own = names.find((name) => figureOf(tokens, tokens.indexOf(name)) === now);
    return own && thingOf(own) !== id ? null : { row, from: one.from, now };
  }
  return null;
}

/** The figure that an answer gives; -1 for none. */
function answeredIn(sentence: Sentence): number {
  if (open.test(sentence.text) || sentence.text.includes('?')) return -1;
  for (const pattern of answers) {
    const place = pattern.exec(sentence.text)?.indices?.groups?.['said']?.[0];
    if (place !== undefined) return sentence.tokenAt(place);
  }
  return -1;
}

/** The list with the figures that were doubted and settled. */
export function confirmed(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [], unheard: null };
  const sentences = sentencesOf(cut);
  if (!sentences.some(({ text, figures }) => figures > 0 && doubts.test(text))) return none;
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  let unheard: string | null = null;
  sentences.forEach((_, k) => {
    const doubt = doubtIn(out, sentences, k);
    if (!doubt) return;
    const { row, from, now } = doubt;
    for (let n = k + 1; n <= k + reach && n < sentences.length; n++) {
      const answer = sentences[n] as Sentence;
      const said = answeredIn(answer);
      if (said < 0) {
        if (answer.figures > 0) return;
        continue;
      }
      const weigh = (at: number): number => weightAt(out, at, row.figure);
      const isNow = isSum(weigh(now), weigh(said));
      if (!isNow && !isSum(weigh(row.figure), weigh(said))) {
        unheard ??= rawText(cut.prims, out[from]?.from ?? 0, out[answer.to - 1]?.to ?? 0).trim();
        return;
      }
      const [was, figure] = [out[row.figure] as Figure, out[now] as Figure];
      const values = [weigh(row.figure), weigh(now)];
      const end = sentences[Math.min(n + since, sentences.length) - 1]?.to ?? answer.to;
      for (let at = from; at < end; at++) {
        const token = out[at] as Token;
        const isOwn = at < answer.to;
        const isNamed = [at - 1, at + 1, at + 2].some(
          (near) => isIngredient(out[near]) && thingOf(out[near]) !== row.id,
        );
        if (isPlain(token) && !isNamed && (isOwn || values.some((value) => isSum(value, weigh(at)))))
          out[at] = asAside(token, 'said before');
        else if (isOwn && isIngredient(token) && thingOf(token) === row.id) out[at] = asFiller(token);
      }
      const name = out[row.at];
      const stays = isNow
        ? { ...withValue(was.quantity, values[1] ?? 0), numbers: was.quantity.numbers }
        : was.quantity;
      out[row.figure] = { ...was, quantity: stays };
      const text = name?.t === 'name' ? name.text : '';
      const not = isNow ? was.quantity : figure.quantity;
      told.push({
        text: `I took ${written(stays)} of ${text}, not ${written(not)}, as the post says once it was doubted.`,
        gone: [not],
        from,
        to: answer.to,
        settles: true,
      });
      return;
    }
  });
  return told.length > 0 || unheard ? { tokens: told.length > 0 ? out : cut.tokens, told, unheard } : none;
}
