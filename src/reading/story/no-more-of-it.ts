/**
 * "When I emptied the coconut jar it only gave me 180 g, so I carried on with that", "coconut was only 180 g in the jar, no
 * more": a fat of the list of which there was less. Nothing is told to have come for the rest.
 */
import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { batchBefore, seasons } from '../words/cue-words.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, mentionsAt, rowsIn } from './mentions.ts';
import { isPlain, isSum, type Name } from './tale.ts';

const less =
  /\b(?:only|just|no more|not more|nothing more|all (?:that|there|i|we)|thats all|that was all|empty|emptied|ran out|run out|finished|ended|short|gave|left)\b/;
const limited =
  /\b(?:only|just|no more|not more|nothing more|all (?:that (?:was|i)|there was|i had|we had)|thats all|that was all)\b/;
const open = new RegExp(
  `\\?|\\b(?:if|should|would|could|can|may|might|maybe|perhaps|next|last (?:time|batch)|usually|normally|always|she|he|they|her|his|sister|friend|about|around|roughly|rest|missing|remain\\w*|filled|fill|topped|complet\\w*|made (?:it )?up|instead|replac\\w*|swap\\w*|more (?:of )?[NF]|another|added|add|bought|buy|cost\\w*|price|trace|after|afterwards|later|until|till|planned|wanted|first|of (?:it|that) (?:is|was)|kept|keep|stuck|spil\\w*|lost|pot (?:weighs|weighed)|bowl|tare|scale|each|half)\\b|\\b(?:in|last|this|since) (?:${seasons.replaceAll(' ', '|')})\\b|${batchBefore}`,
);

/** The list with what there was of it. */
export function noMoreOfIt(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  const rows = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || sentence.figures === 0 || !less.test(sentence.text)) continue;
    const story = mentionsAt(tokens, sentences, k, 1);
    if (!areOne(tokens, story.listed) || story.others.length > 0 || /[LX…]/.test(story.text)) continue;
    // "only 120 g of the shea is unrefined"
    if (
      !limited.test(story.text) ||
      open.test(story.text) ||
      /# of (?:the |my )?F (?:is|are|was|were)\b/.test(story.text)
    )
      continue;
    const next = sentences[k + 1] ? mentionsAt(tokens, sentences, k + 1, 1).text : '';
    if (/N|\b(?:rest|missing|filled|topped|made up|instead|difference)\b/.test(next)) continue;
    const name = tokens[story.listed[0] ?? -1] as Name;
    const begin = Math.max(story.from, story.since);
    const [row, ...more] = rows.filter(({ id, at }) => id === thingOf(name) && (at < begin || at >= story.to));
    const was = tokens[row?.figure ?? -1];
    if (!row || more.length > 0 || !isPlain(was)) continue;
    // a list that is told once more, as it was made, has its own row for it
    if (rows.some((one) => one.id !== row.id && rows.some((other) => other !== one && other.id === one.id))) continue;
    const figures: number[] = [];
    for (let at = begin; at < story.to; at++) if (isPlain(tokens[at])) figures.push(at);
    const like = (at: number): number => alike((tokens[at] as Figure).quantity, was.quantity).value;
    const said = figures.filter((at) => !isSum(was.quantity.value, like(at)));
    const [first] = said;
    if (first === undefined || said.some((at) => !isSum(like(first), like(at)))) continue;
    const now = alike((tokens[first] as Figure).quantity, was.quantity);
    if (now.dim !== was.quantity.dim || !(now.value < was.quantity.value && now.value > least * was.quantity.value))
      continue;
    const out = [...tokens];
    out[row.figure] = { ...was, quantity: { ...now, numbers: was.quantity.numbers } };
    for (let at = begin; at < story.to; at++) {
      const token = out[at];
      if (token?.t === 'quantity') out[at] = asAside(token, 'said before');
      else if (token?.t === 'name') out[at] = asFiller(token);
    }
    const of = tokens[row.at] as Name;
    const text = `I took ${written(now)} of ${of.text}, not ${written(was.quantity)}, as the post says that there was no more.`;
    return { tokens: out, told: [{ text, gone: [was.quantity], from: begin, to: story.to, settles: true }] };
  }
  return none;
}
const least = 0.3;
