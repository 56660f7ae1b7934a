/**
 * "I'd swap half the olive for lard", and "nah, keeping it as is": what somebody proposes in a chat, and the next sentence
 * turns down. The recipe stays as it was.
 */

import { isAmount } from '../rows/kinds.ts';
import type { Sentence } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Post } from './withdrawn.ts';

/** By whom it is said. */
const who = '^(?:[\\p{L}@]+ (?:: |- )|[-•] )?';
const no = '(?:nah|nope|no|naw|na)';
const polite = '(?:thanks|thx|ta|cheers|way|chance|need|hun|mate|but|,|\\.|!|…)';
const i = '(?:i think |i |im |i am |ill |i will |id rather |id |its )*';
const stays =
  '(?:(?:keep(?:ing)?|leav(?:e|ing)) (?:it|mine|this|that|the|as|@|#)|(?:stick(?:ing)?|stay(?:ing)?) (?:with|to|at|as)|(?:happy|fine|good|like|best)(?= (?:$|[-,.!…]|(?:as|with|how|it|mine|this|that|thanks)\\b))|leaving it|as (?:it )?is)(?= |$)';
const refusals = [
  `${who}${no} (?:${polite} )*$`,
  `${who}${no} (?:${polite} )*${i}(?:# |@ |is |are )*${stays}`,
  `${who}${i}(?:keeping|sticking|leaving|staying|happy) (?:it|mine|this|that|with|to) `,
];
/** All but the last say no. */
const withNo = refusals.slice(0, -1);

/** "No castor here", "can't afford babassu", of what was proposed. */
const lacks =
  "(?:no|(?:i |ive |we )*(?:dont|don't|do not|cant|can't|cannot|havent|haven't|wont|won't|hate|never)(?: [\\p{L}']+){0,3}) (?:any )?@";

const change =
  '(?:swap|replace|sub|substitute|switch|exchange|trade|change|use|try|add|take|drop|skip|leave|lose|go|do|put|cut|have)\\b';
const proposals = [
  `${who}(?:just |or |ok |hm+ |tbh |, )*${change}`,
  `\\b(?:i ?'?d|i would|could|should|would|might|maybe|perhaps|why not|how about|what about|lets) (?:just |rather |always |probably |personally |could |can |should |also |not )*(?:${change}|@|#)`,
];
let made: {
  readonly refusal: RegExp;
  readonly no: RegExp;
  readonly stay: RegExp;
  readonly lack: RegExp;
  readonly proposal: RegExp;
} | null = null;
const of = (list: readonly string[]): RegExp => new RegExp(list.join('|'), 'u');

/** Figures of a proposal, at the most: more of them are a recipe. */
const mostFigures = 1;

/** Sentences that propose what the next one turns down. */
export function turnedDownIn(sentences: readonly Sentence[], tokens: readonly Token[]): readonly Sentence[] {
  return sentences.filter((sentence, k) => {
    const next = sentences[k + 1];
    if (!next?.retells || next.figures > 1 || next.names > 1 || sentence.figures > mostFigures) return false;
    if (sentence.names + sentence.figures === 0) return false;
    made ??= {
      refusal: of(refusals),
      no: of(withNo),
      stay: of(withNo.slice(1)),
      lack: of([`${who}${lacks}`]),
      proposal: of(proposals),
    };
    if (!made.proposal.test(sentence.text)) return false;
    if (made.lack.test(next.text)) return lastNameIn(sentence, tokens) === lastNameIn(next, tokens);
    return (next.figures > 0 ? made.stay : sentence.figures > 0 ? made.no : made.refusal).test(next.text);
  });
}

function lastNameIn({ from, to }: Sentence, tokens: readonly Token[]): string | null {
  const last = tokens.slice(from, to).findLast(isIngredient);
  return last ? thingOf(last) : null;
}

/** Nothing of what was turned down goes in. */
export function turnDown(post: Post, { from, to }: Sentence): void {
  const own = post.items.filter((item) => item.from >= from && item.from < to);
  for (const item of own) post.gone.add(item);
  post.said = post.said.filter(({ amount, thing }) => !own.includes(amount) && !own.includes(thing));
  post.back.push({
    text: 'I left out what somebody proposes and the post turns down.',
    gone: own.filter(isAmount).map(({ quantity }) => quantity),
    from,
    to,
  });
}
