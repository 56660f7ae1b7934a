/**
 * "There sits the bowl of shea, untouched, so I let it be", "found the castor on the shelf, tipped it all back and put the
 * castor in": a fat that was forgotten, and what became of it. Also one that was only thought to be lacking.
 */
import type { PutRight } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import { onlyRow, type Story, storyAt } from './story.ts';
import type { Name } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'found saw noticed spotted discovered stayed sits sat stood stands standing still forgot forgotten thought believed feared panicked convinced sure worried'.split(
    ' ',
  ),
);

const the = '(?:(?:the|my|that|full|whole|little|bowl|cup|jar|jug|dish|pot|pan|bottle|glass|mug|tin|of) )*';
const place = '(?:in|on|by|next to|beside|behind|under|at) (?:the|my|its) (?:[a-z]+ ){0,3}';
const forgotten = new RegExp(
  [
    `\\b(?:found|find|saw|see|noticed|spotted|discovered) ${the}F\\b[^#?]{0,30}\\b(?:still|standing|sitting|untouched|${place})`,
    `\\b(?:there|where) (?:sits|sat|stood|stands|was|is) ${the}F\\b`,
    `\\b${the}F (?:was|is|sat|stood) (?:(?:still|all|just|sitting|standing|there|left) )*(?:${place}|untouched)`,
    `\\b(?:nearly|almost) (?:forgot|forgotten) (?:about )?${the}F\\b`,
    `\\bforgot (?:about )?${the}F\\b`,
    `\\bF (?:[:,–-] )?(?:i |we )?found (?:it|that)\\b[^#?]{0,30}\\b(?:still|standing|sitting|untouched|${place})`,
    `\\b${the}F stayed ${place}`,
  ].join('|'),
);
const deed = '(?:put|stirred|poured|tipped|mixed|blended|threw|worked|whisked|dumped|got)';
/** It went in after all. */
const entered = new RegExp(
  [
    `\\b${deed} (?:${the}F|it|that|them) (?:(?:straight|right|quickly|all|then|gently|back) )*in(?:to)?\\b`,
    `\\b(?:added|(?:stirred|poured|put|tipped|mixed|blended|whisked) in) (?:all )?(?:${the}F|it|that)(?= (?:[,.;!]|and|then|at|before|after)|$| $)`,
    '\\bin (?:it|F) went\\b',
    `\\bF went in (?:after all|then|too|at last|as well)\\b`,
  ].join('|'),
);
/** It did not. */
const stayed =
  /\b(?:let (?:it|them|that) (?:be|go)|left (?:it|them|that) (?:at that|out|be|there|alone|as it (?:is|was))|left (?:it|them|that)(?= [.,;!]|$| $)|too late\b|nothing (?:i|we) could do|stayed out|stays out|never (?:ever |actually )?(?:went|made it|got) in(?:to)?|none of it (?:is|was|went|got) in|(?:its|it is|it was|thats|that is|so its) not in (?:it|the|this|there)|went without|could not be helped|couldnt be helped)/;
/** Only a part of it, or nobody is sure. */
const partly =
  /#|\b(?:some|half|part|most|rest|third|quarter|drizzled|brushed|spread|think|maybe|perhaps|not sure|unsure|suppose|probably|guess|should|could|a bit|little(?! (?:glass|bowl|cup|jar|dish|pot|tin|jug|bottle|beaker|pan))|bits|would|drip|dripped|trickled|otherwise|if|tried|couldnt|didnt|next time|last time|once|usually|remains)\b|\bN\b/;

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
  readonly way: 'out' | 'in' | 'there';
  readonly name: Token | undefined;
  readonly from: number;
  readonly to: number;
}

/** What became of it; null where nobody tells for certain. */
function fateIn(tokens: readonly Token[], { text, turn, tokenAt }: Story): Fate | null {
  const fear = feared.exec(text);
  if (fear && fear.index < turn) {
    const planned = asPlanned.exec(text.slice(fear.index));
    const tale = planned ? text.slice(fear.index, fear.index + planned.index + planned[0].length) : '';
    const last = tokenAt(fear.index + fear[0].length - 1);
    if (!planned || !there.test(tale) || notAll.test(tale.replace(planned[0], ''))) return null;
    return { way: 'there', name: tokens[last], from: tokenAt(fear.index), to: last + 1 };
  }
  const found = forgotten.exec(text);
  if (!found || found.index >= turn) return null;
  const name = tokens[tokenAt(found.index + found[0].lastIndexOf('F'))];
  const [isIn, isOut] = [entered.exec(text), stayed.exec(text)];
  if ((isIn === null) === (isOut === null)) return null;
  const end = (isIn ?? isOut)?.index ?? 0;
  // what stands in the sentences up to there and in the one that says so
  const stop = text.slice(end).search(/[.!?;] /);
  const tale = text.slice(found.index, stop < 0 ? text.length : end + stop);
  if (end < found.index || partly.test(tale.replace(stayed, '')) || (isOut && handled.test(tale))) return null;
  return { way: isIn ? 'in' : 'out', name, from: tokenAt(found.index), to: tokenAt(end) + 1 };
}

/** The list without what stayed out of the pot; and what went in after all is told as listed. */
export function leftStanding(cut: Cut): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  const none = { tokens: cut.tokens, told: [] };
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
  }
  return told.length > 0 ? { tokens: out, told } : none;
}
