/**
 * "When I was carrying the bowl with coconut, part went on the floor. I put the bowl again on the scale: 735 g left, and this
 * went to the pot": of a fat that was lost in part so much as was weighed afterwards.
 */
import { type Cut, sentencesOf } from '../text/sentences.ts';
import type { Heard } from './heard.ts';
import { lessOfRow, withLess } from './less-of-row.ts';
import { mentionsAt } from './mentions.ts';

const lost =
  /\b(?:spil\w*|fell|fallen|dropped|knocked|tipped over|toppled|slopped|lost|went (?:on|over|onto|down)|ran (?:over|down|out)|floor|overturned|upset|leaked|dog|cat)\b/;
const left =
  /\b(?:left|again|anew|new|remain\w*|still (?:there|in)|scales?|weighed|reweighed|afterwards?|after that|what was|in the pot|to the pot|into the pot|is in|went in)\b/;
const open =
  /\?|\b(?:if|should|would|could|may|might|maybe|perhaps|next|last (?:time|batch)|usually|normally|always|topped|top up|refill\w*|replac\w*|made (?:it |that )?(?:up|good)|added|fresh|more|until|till|swept (?:it )?back|scooped (?:it )?back|put (?:it |that )?back in|about|around|roughly|nearly|almost|mou?ld|batter|soap)\b/;
const most = 3;

/** The list with what was left. */
export function lessAfterLoss(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  if (!sentences.some(({ text }) => lost.test(text))) return none;
  for (const [k, sentence] of sentences.entries()) {
    if (!lost.test(sentence.text)) continue;
    for (let count = 1; count <= most; count++) {
      const story = mentionsAt(tokens, sentences, k, count);
      if (open.test(story.text) || !left.test(story.text)) continue;
      const found = lessOfRow(tokens, story, least);
      if (found?.said.length === 1)
        return withLess(tokens, found, story.to, 'as so much was left when it was weighed again');
    }
  }
  return none;
}
/** Of what there was before. */
const least = 0.5;
