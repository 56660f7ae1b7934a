/**
 * "The friend who taught me would use 50 g KOH + 22 g NaOH": both alkalis that somebody else takes, beside the writer's own,
 * which is weighed elsewhere. They are not in the pot.
 */

import { once } from '../once.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import type { Heard } from './heard.ts';
import { hush, lettered, rowsOfAlkali } from './tale.ts';

const who = `(?:she|he|they|(?:the |that |this |an? |her |his |my |our )?(?:book|booklet|tutorial|video|website|site|post|card|${relations.trim().replace(/ /g, '|')})s?)`;
const take = '(?:use|take|do|go with|say|recommend|suggest|want|put|have|has)s?(?: in)?';
const pattern = once(
  () =>
    new RegExp(
      `\\b${who}\\b(?: who [a-z]+ (?:me|us))? (?:(?:would|always|usually|normally|rather|just|says?|to) )*${take} (?:about )?(?<a># (?:of )?L ?(?:[+&,]|and|plus|with) ?# (?:of )?L)`,
      'd',
    ),
);
const open = /\b(?:so (?:i|we)|i did (?:that|so|the same)|like (?:she|he|they)|followed)\b/;

/** The tokens without the two. */
export function othersPair(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  for (const sentence of sentences) {
    if (sentence.figures < 2 || sentence.names < 2 || !/[@] ?(?:[+&,]|and|plus|with) ?#/.test(sentence.text)) continue;
    const text = lettered(tokens, sentence.text, (place) => sentence.tokenAt(place));
    const place = pattern().exec(text)?.indices?.groups?.['a'];
    if (!place || open.test(text)) continue;
    const [from, to] = [sentence.tokenAt(place[0]), sentence.tokenAt(place[1] - 1) + 1];
    const isOwn = rowsOfAlkali(tokens, tokens.length).some(({ figure }) => figure < from || figure >= to);
    if (!isOwn) continue;
    const out = [...tokens];
    hush(out, from, to, 'what others take');
    const said = 'I left out the two alkalis that somebody else takes, as the post says.';
    return { tokens: out, told: [{ text: said, gone: [], from, to, settles: true }] };
  }
  return none;
}
