/**
 * "When I was carrying the bowl with coconut, part went on the floor. I put the bowl again on the scale: 735 g left, and this
 * went to the pot": of a fat that was lost in part so much as was weighed afterwards.
 */
import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { areOne, mentionsAt, rowsIn } from './mentions.ts';
import { isPlain, isSum, type Name } from './tale.ts';

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
  const rows = rowsIn(tokens);
  for (const [k, sentence] of sentences.entries()) {
    if (!lost.test(sentence.text)) continue;
    for (let count = 1; count <= most; count++) {
      const story = mentionsAt(tokens, sentences, k, count);
      if (!areOne(tokens, story.listed) || story.others.length > 0 || /[LX…=]/.test(story.text)) continue;
      if (open.test(story.text) || !left.test(story.text)) continue;
      const begin = Math.max(story.from, story.since);
      const name = tokens[story.listed[0] ?? -1] as Name;
      const [row, ...more] = rows.filter(({ id, at }) => id === thingOf(name) && (at < begin || at >= story.to));
      const was = tokens[row?.figure ?? -1];
      if (!row || more.length > 0 || !isPlain(was)) continue;
      const figures: number[] = [];
      for (let at = begin; at < story.to; at++) if (isPlain(tokens[at])) figures.push(at);
      const like = (at: number): number => alike((tokens[at] as Figure).quantity, was.quantity).value;
      const said = figures.filter((at) => !isSum(was.quantity.value, like(at)));
      const [first] = said;
      if (first === undefined || said.length !== 1) continue;
      const now = alike((tokens[first] as Figure).quantity, was.quantity);
      const isLess = now.value < was.quantity.value && now.value > least * was.quantity.value;
      if (now.dim !== was.quantity.dim || !isLess) continue;
      const out = [...tokens];
      out[row.figure] = { ...was, quantity: { ...now, numbers: was.quantity.numbers } };
      for (let at = begin; at < story.to; at++) {
        const token = out[at];
        if (token?.t === 'quantity') out[at] = asAside(token, 'said before');
        else if (token?.t === 'name') out[at] = asFiller(token);
      }
      const of = tokens[row.at] as Name;
      const text = `I took ${written(now)} of ${of.text}, not ${written(was.quantity)}, as so much was left when it was weighed again.`;
      return { tokens: out, told: [{ text, gone: [was.quantity], from: begin, to: story.to, settles: true }] };
    }
  }
  return none;
}
/** Of what there was before. */
const least = 0.5;
