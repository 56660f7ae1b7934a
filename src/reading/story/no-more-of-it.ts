/**
 * "When I emptied the coconut jar it only gave me 180 g, so I carried on with that", "coconut was only 180 g in the jar, no
 * more": a fat of the list of which there was less. Nothing is told to have come for the rest.
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { batchBefore, seasons } from '../words/cue-words.ts';
import type { Heard } from './heard.ts';
import { lessOfRow, withLess } from './less-of-row.ts';
import { mentionsAt, rowsIn } from './mentions.ts';

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
    // "only 120 g of the shea is unrefined"
    if (
      !limited.test(story.text) ||
      open.test(story.text) ||
      /# of (?:the |my )?F (?:is|are|was|were)\b/.test(story.text)
    )
      continue;
    const next = sentences[k + 1] ? mentionsAt(tokens, sentences, k + 1, 1).text : '';
    if (/N|\b(?:rest|missing|filled|topped|made up|instead|difference)\b/.test(next)) continue;
    const found = lessOfRow(tokens, story, least);
    if (!found) continue;
    // a list that is told once more, as it was made, has its own row for it
    const isTwice = (id: string): boolean => id !== found.row.id && rows.filter((row) => row.id === id).length > 1;
    if (rows.some(({ id }) => isTwice(id))) continue;
    return withLess(tokens, found, story.to, 'as the post says that there was no more');
  }
  return none;
}
const least = 0.3;
