/**
 * "There sits the bowl of shea, untouched, so I let it be", "the castor is still standing there, so no castor in the
 * soap", "forgot the shea (75 g), found it at light trace and stirred it in": a fat that was forgotten, and what became of
 * it. Also one that was only thought to be lacking.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { onlyRow, type Story, storyAt } from './story.ts';
import type { Name } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'theres untouched found see saw noticed spotted discovered stayed sits sat stood stands standing still forgot forgotten thought believed feared panicked convinced sure worried'.split(
    ' ',
  ),
);

const the =
  '(?:(?:the|my|that|full|whole|little|small|bowl|cup|jar|jug|dish|pot|pan|bottle|glass|mug|tin|of|with|all|#|,|:) )*';
const place = '(?:in|on|by|next to|beside|behind|under|at) (?:the|my|its) (?:[a-z]+ ){0,3}';
const stood = '(?:standing|sitting|stood|sat|untouched|full|unmelted|waiting|there\\b)';
const forgotten = new RegExp(
  [
    `\\b(?:found|find|saw|see|noticed|spotted|discovered) ${the}F\\b[^#?]{0,30}\\b(?:still|standing|sitting|untouched|${place})`,
    `\\b(?:(?:there|where) (?:${place})?(?:sits|sat|stood|stands|was|is)|theres) ${the}F\\b`,
    `\\b${the}F (?:was|is|sat|stood) (?:(?:still|all|just|sitting|standing|there|left) )*(?:${place}|untouched)`,
    `\\b(?:nearly|almost) (?:forgot|forgotten) (?:about )?${the}F\\b`,
    `\\b(?:forgot|overlooked|missed) (?:all )?(?:about )?${the}F\\b`,
    `\\bF (?:# )?(?:(?:has|had|was|got|been|is|simply|just|completely|nearly) )*(?:forgotten|overlooked)\\b`,
    `\\b${the}F (?:# )?(?:(?:that|meant|intended|planned|kept|weighed out|put aside|set aside|was|for|after|at|the|cook|end|trace|to go in|superfat) )*(?:(?:is|was|were|stands|sits|sat|stood) )?(?:, )?still (?:all )?(?:${stood}|${place})`,
    `\\bF (?:[:,–-] )?(?:i |we )?found (?:it|that)\\b[^#?]{0,30}\\b(?:still|standing|sitting|untouched|${place})`,
    `\\b${the}F stayed ${place}`,
    // "there were meant to be 50 g almond oil going in, but I've just found the cup with it still on the counter"
    `\\b(?:meant|supposed|planned|intended|wanted|should)\\b[^.?#]{0,20}(?:# )?${the}F\\b[^.?#]{0,40}\\b(?:but|only|then|now)\\b[^.?#]{0,30}\\b(?:found|find|saw|see|noticed|spotted|discovered) (?:the |my |its )?(?:[a-z]+ ){0,2}(?:with |of )?(?:it|that|them)\\b[^#?.]{0,20}\\b(?:still|standing|sitting|untouched|${place})`,
    `\\b${the}F (?:# )?(?:(?:that|i|we|meant|wanted|intended|planned|to|put|in|go|was|supposed|for|after|at|the|cook|end|trace) )*(?:stands|sits|stood|sat) (?:still )?(?:${place}|there)`,
  ].join('|'),
);
const deed = '(?:put|stirred|poured|tipped|mixed|blended|threw|worked|whisked|dumped|got)';
/** It went in after all. */
const entered = new RegExp(
  [
    `\\b${deed} (?:${the}F|it|that|them) (?:(?:straight|right|quickly|all|then|gently|back) )*in(?:to)?\\b`,
    `\\b(?:added|(?:stirred|poured|put|tipped|mixed|blended|whisked) in) (?:all )?(?:${the}F|it|that)(?= (?:[,.;!]|and|then|at|before|after)|$| $)`,
    '\\bin (?:it|F) went\\b',
    '\\b(?:it|that) (?:(?:then|just|still|simply|all) )*went (?:straight |right )?in\\b',
    `\\bF went in (?:after all|then|too|at last|as well)\\b`,
  ].join('|'),
);
/** It did not. */
const stayed =
  /\b(?:let (?:it|them|that) (?:be|go)|left (?:it|them|that) (?:at that|out|be|there|alone|as it (?:is|was))|left (?:it|them|that)(?= [.,;!]|$| $)|too late\b|(?:the |my )?(?:soap(?:['’]?s)?|batter|batch|loaf|lot|its|it is|all) (?:is |was |already |now |long |since )*in (?:the|its) (?:mou?lds?|block|box|loaf)\b|nothing (?:i|we) could do|stayed out|stays out|never (?:ever |actually )?(?:went|made it|got) in(?:to)?|none of it (?:is|was|went|got) in|(?:its|it is|it was|thats|that is|so its) not in (?:it|the|this|there)|went without|could not be helped|couldnt be helped|(?:so |with )(?:theres |there is |it has |its )?no F (?:at all )?in (?:it|there|this|that|the|my)\b(?! (?:house|kitchen|cupboard|shop))|(?:has|have|with|got) (?:no F|none of (?:it|that)) in (?:it|there)\b|none of (?:it|that) in (?:it|there|the)\b|(?:is|was|its|it is|are|stays) (?:now )?(?:a |an )?(?:(?:soap|batch|loaf|one) )?(?:now )?without (?:the |any )?(?:F|it)\b(?! #))/;
/** "So what's in the mould is 560 g olive, 240 g coconut": it is not among that. */
const theRest =
  /\b(?:so|then|thus|means|meaning|which) (?:[a-z]+ ){0,2}?(?:what ?(?:is|s|went|got|ended up)? ?(?:actually |really |now )?(?:in(?:to)?|inside) (?:the|my) (?:mou?ld|pot|soap|pan|bowl)|the (?:mou?ld|pot|soap|pan|bowl|batch) (?:only |just )?(?:has|holds|contains|is)) ?(?:is|are|was|only|just|[:,] ?)*(?=[#FX])/;
/** The writer says of it that it does no harm. */
const noHarm = /\bno harm done(?: ,)?(?: i (?:think|hope|suppose|guess))?/g;

/** Only a part of it, or nobody is sure. */
const partly =
  /#|\b(?:not (?:quite )?(?:all|everything|the whole)|some|half|part|most|rest|third|quarter|drizzled|brushed|spread|think|maybe|perhaps|not sure|unsure|suppose|probably|guess|should|could|a bit|little(?! (?:glass|bowl|cup|jar|dish|pot|tin|jug|bottle|beaker|pan))|bits|would|drip|dripped|trickled|otherwise|if|tried|couldnt|didnt|next time|last time|once|usually|remains)\b|\bN\b/;

/** Something was done with it, though. */
const handled =
  /\b(?:poured|stirred|tipped|mixed|scooped|spooned|drip|dripped|trickled|drizzled|added|used|put|blended|brushed|spread|melted) (?:it |that |the F |F )?(?:in|on|over|into|it|that|them|what)\b/;

const feared = new RegExp(
  `\\b(?:thought|believed|feared|panicked|convinced|sure|worried|moment)\\b[^?#]{0,40}\\b(?:out of|no|had no|without|short of) (?:more )?${the}F\\b`,
);
const there = /\b(?:found|rang|brought|arrived|turned up|delivered|came|new|another|behind|there was|had one|had a)\b/;
const asPlanned =
  /\b(?:as (?:planned|written|listed|above|it (?:is|stands)|always|intended)|nothing (?:changed|has changed|was changed)|no changes?|(?:in|at) full|to the letter)\b/;
const notAll =
  /#|\b(?:only|just (?:half|enough for)|half|part|not (?:the )?(?:full|quite|all|enough)|wasnt|less|instead|most|a bit|little|rest|otherwise|apart from|except|but for|nearly|almost)\b|\bN\b/;

const most = 5;

interface Fate {
  readonly way: 'out' | 'in' | 'there' | 'late';
  readonly name: Token | undefined;
  readonly from: number;
  readonly to: number;
}

/** What became of it; null where nobody tells for certain. */
function fateIn(tokens: readonly Token[], story: Story): Fate | null {
  const { text, turn, tokenAt } = story;
  const fear = feared.exec(text);
  if (fear && fear.index < turn) {
    const planned = asPlanned.exec(text.slice(fear.index));
    const tale = planned ? text.slice(fear.index, fear.index + planned.index + planned[0].length) : '';
    const last = tokenAt(fear.index + fear[0].length - 1);
    if (!planned || !there.test(tale) || notAll.test(tale.replace(planned[0], ''))) return null;
    return { way: 'there', name: tokens[last], from: tokenAt(fear.index), to: last + 1 };
  }
  const found = forgotten.exec(text);
  if (!found || found.index >= turn || elsewhen.test(text.slice(0, found.index))) return null;
  const name = tokens[tokenAt(found.index + found[0].lastIndexOf('F'))];
  const since = found.index + found[0].length;
  const [isIn, isOut] = [entered.exec(text), stayed.exec(text)];
  const rest = isIn || isOut ? null : theRest.exec(text);
  const fate = isIn ?? isOut ?? rest;
  if (!fate || (isIn && isOut) || fate.index < found.index) return null;
  const end = fate.index;
  // what stands in the sentences up to there and in the one that says so
  const stop = rest ? rest[0].length : text.slice(end).search(/[.!?;] /);
  const tale = text
    .slice(since, stop < 0 ? text.length : Math.max(since, end + stop))
    .replace(weight, '')
    .replace(noHarm, '');
  if (partly.test((found[0].replace(/#/g, '') + tale).replace(stayed, '')) || (!isIn && handled.test(tale)))
    return null;
  // of something else, or it is listed with what is in
  const spoken = isIn ? [] : [...text.slice(end, end + fate[0].length).matchAll(/F/g)];
  if (spoken.some(({ index }) => !isOf(tokens[tokenAt(end + index)], name))) return null;
  if (rest && isAny(tokens, tokenAt(end), tokenAt(story.endAt(end) - 1), (one) => isOf(one, name))) return null;
  return {
    way: isIn ? (cooked.test(text) ? 'late' : 'in') : 'out',
    name,
    from: tokenAt(found.index),
    to: tokenAt(end + fate[0].length - 1) + 1,
  };
}

/** Of another pot than this one. */
const elsewhen = /\b(?:last (?!night|evening|minute)|next |once|previous|usually|earlier|years? ago|another)/;

/** Its weight in brackets behind its name. */
const weight = /^ ?\( # \)/;
/** Stirred in when the lye was used up: not for the lye to take. */
const cooked =
  /\b(?:(?<!\b(?:no|not|without) )cook(?:ed)?|after (?:the )?(?:gel|cook\w*)|hot process|crock ?pot|slow cooker)\b/;

const isOf = (one: Token | undefined, name: Token | undefined): boolean =>
  isIngredient(one) && isIngredient(name) && thingOf(one) === thingOf(name);

const mention = /\b(?:forgot|forgotten|overlooked)\b/;

/** The list without what stayed out of the pot; and what went in after all is told as listed. */
export function leftStanding(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [], unheard: null };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const sentences = sentencesOf(cut);
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const story = storyAt(out, sentences, k, most);
    const fate = fateIn(out, story);
    const row = fate ? onlyRow(out, fate.name) : null;
    if (!fate || !row) continue;
    const name = out[row.at] as Name;
    const weight = out[row.figure] as Figure;
    if (fate.way === 'late')
      return { ...none, unheard: rawText(cut.prims, out[fate.from]?.from ?? 0, out[fate.to - 1]?.to ?? 0) };
    const text =
      fate.way === 'out'
        ? `I left out the ${name.text}, which stayed out of the pot, as the post says.`
        : `I took ${weight.quantity.text} of ${name.text} as listed, as it went in after all.`;
    if (fate.way === 'out') {
      for (let at = fate.from; at < story.to; at++) {
        const again = out[at];
        if (isIngredient(again) && thingOf(again) === row.id) out[at] = asFiller(again);
      }
      out[row.figure] = asAside(weight, 'forgotten, as the post says');
      out[row.at] = asFiller(name);
    }
    told.push({
      text,
      gone: fate.way === 'out' ? [weight.quantity] : [],
      from: fate.from,
      to: fate.to,
      settles: true,
    });
    // "so the castor got forgotten", before it is told how
    for (const other of sentences) {
      if (other.figures > 0 || !mention.test(other.text) || (other.from < fate.to && other.to > fate.from)) continue;
      for (let at = other.from; at < other.to; at++) {
        const again = out[at];
        if (again?.t === 'name' && isOf(again, name)) out[at] = asFiller(again);
      }
    }
  }
  return told.length > 0 ? { tokens: out, told, unheard: null } : none;
}
