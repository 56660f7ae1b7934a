/**
 * "All of mine went in, all of her palm, but only 120 g of the shea": so much of a row of the list went in, told in one
 * sentence with what else did.
 */

import { alike, type PutRight, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { seasons } from '../words/cue-words.ts';
import { isAny, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { isPlain, rowOf, weightAt } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(['only', 'just']);

const makePatterns = (): readonly RegExp[] => [
  /\b(?:only|just) (?:about |the |exactly )?(?<b>#) of (?:(?:the|my|our|her|his|their|that|those) )*(?<f>@)(?! #)/d,
  /(?<f>@) ?(?:[,–—(-] )?(?:and |but )?of (?:that|it|which|this|them) (?:(?:i|we|used|took|put in|put|have|had) )*(?:only|just) (?<b>#)(?! (?:of )?@)/d,
];
let made: readonly RegExp[] | null = null;

/** It is told of what is in the pot. */
const into =
  /\b(?:went|goes|gone|got|ended up|made it|landed|put|poured|tipped)(?: (?:all|straight|up|then|now))* in(?:to)?\b|\b(?:ended up|is|are|landed) in(?:to)? (?:the|my) (?:pot|soap|batch|kettle|mix)\b|\b(?:i|we) (?:only |just )?(?:used|took)\b/;
/** Nobody has done it, not in this batch, or it is of another moment. */
const open = new RegExp(
  `\\?|\\b(?:${seasons.replaceAll(' ', '|')}|ago|still|zaps?|think|guess|probably|melted|dissolved|if|should|would|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|usually|normally|always|never|at first|first|so far|yet|still to|later|after|then the|until|trace|cook|cooked|she used|he used|they used|recipe|card|book|planned|wanted to|meant to|going to|was to)\\b`,
);

/** The list with so much of it. */
export function onlySoMuch(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const out = [...tokens];
  const told: PutRight[] = [];
  for (const sentence of sentencesOf(cut)) {
    if (sentence.figures !== 1 || !isAny(tokens, sentence.from, sentence.to, (one) => cues.has(spoken(one)))) continue;
    if (!into.test(sentence.text) || open.test(sentence.text)) continue;
    made ??= makePatterns();
    const at = made.map((pattern) => pattern.exec(sentence.text)?.indices?.groups).find((one) => one !== undefined);
    if (!at) continue;
    const [f, b] = [sentence.tokenAt(at['f']?.[0] ?? 0), sentence.tokenAt(at['b']?.[0] ?? 0)];
    const row = rowOf(out, out[f], sentence.from);
    const back = row ? lessened(out, row, sentence, b) : null;
    if (back) told.push(back);
  }
  return told.length > 0 ? { tokens: out, told } : none;
}

function lessened(out: Token[], row: Weighed, { from, to }: Sentence, b: number): PutRight | null {
  const [was, now, name] = [out[row.figure], out[b], out[row.at]];
  if (!isPlain(was) || !isPlain(now) || name?.t !== 'name') return null;
  if (!(weightAt(out, b, row.figure) < weightAt(out, row.figure, row.figure))) return null;
  out[b] = asAside(now, 'said of what went in');
  for (let k = from; k < to; k++) {
    const one = out[k];
    if (one?.t === 'name' && (!isIngredient(one) || thingOf(one) === row.id)) out[k] = asFiller(one);
  }
  const quantity = { ...alike(now.quantity, was.quantity), numbers: was.quantity.numbers };
  out[row.figure] = { ...was, quantity };
  const text = `I took ${written(now.quantity)} of ${name.text}, not ${written(was.quantity)}, as no more went in.`;
  return { text, gone: [was.quantity], from, to, settles: true };
}
