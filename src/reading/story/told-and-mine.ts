/**
 * "The card said 116 g lye and I misread it and weighed 161 g", "my sister swears by 150 g of lye and the lady downstairs
 * says 120. I put in 138": what others say of the alkali, and what its writer took, which is not named again.
 */

import { alike, isLikely, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { relations } from '../words/cue-words.ts';
import { isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { joinedAt } from './story.ts';
import { isPlain, rowsAmong, rowsBefore } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'said says swears swore had has called calls wants wanted told asks'.split(' '),
);
const who = `(?:card|recipe|book|sheet|page|label|note|list|leaflet|handout|neighbou?r|friend|colleague|lady|man|woman|guy|girl|teacher|${relations.replaceAll(' ', '|')})`;
const says = '(?:said|says|swears by|swore by|had|has|called for|calls for|wants|wanted|told me|asks for)';
const makePattern = () =>
  new RegExp(
    `\\b${who} (?:[a-z]+ ){0,3}?${says} (?:about |only |just |me )?(?<o>#) (?:of )?(?<l>@)(?<between>[^@?]{0,110}?)\\b(?:i|we|ive|weve)(?: [a-z]+){0,5}? (?:weighed|put in|took|used|tipped in|poured in|measured|went with)(?: (?:in|out|off|only|just|in fact|exactly))* (?<m>#)(?! (?:of |for )?(?:the |my |cold )*@)`,
    'd',
  );
let made: RegExp | null = null;
/** Another one's figure: "the lady downstairs says 120". */
const theirs = new RegExp(`\\b${says} (?:about |only |just )?#`, 'g');
/** Nobody has done it, or it was another time. */
const open =
  /\b(?:if|would|should|could|might|maybe|perhaps|next|last (?:time|year|month|week|batch)|usually|normally|always|nearly|almost|not|never|didnt|instead|half|more|less|extra|solution)\b/;
const many = 3;

/** The list with the alkali that its writer took. */
export function toldAndMine(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token).toLowerCase()))) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.figures === 0 || sentence.names === 0) continue;
    const story = joinedAt(sentences, k, many);
    made ??= makePattern();
    const found = made.exec(story.text);
    const at = found?.indices?.groups;
    if (!found || !at?.['o'] || !at['l'] || !at['m'] || !at['between'] || found.index >= story.turn) continue;
    const between = found.groups?.['between'] ?? '';
    if (/#/.test(between.replace(theirs, '')) || open.test(found[0])) continue;
    const [o, l, m] = [at['o'], at['l'], at['m']].map(([place]) => story.tokenAt(place)) as [number, number, number];
    const [other, name, mine, mark] = [tokens[o], tokens[l], tokens[m], tokens[m - 1]];
    if (!isIngredient(name) || name.meaning.kind !== 'alkali' || !mark) continue;
    if (!isPlain(other) || !isPlain(mine) || !isLikely(mine.quantity, other.quantity)) continue;
    const rows = rowsAmong(rowsBefore(tokens, tokens.length), tokens, name);
    if (rows.some(({ figure }) => figure !== o)) continue;
    const out = [...tokens];
    for (let n = o; n < m; n++) {
      const token = out[n];
      if (token?.t === 'quantity') out[n] = asAside(token, 'what others say');
      else if (token?.t === 'name') out[n] = asFiller(token);
    }
    out[m - 1] = { ...name, from: mark.from, to: mark.to };
    out[m] = { ...mine, quantity: alike(mine.quantity, other.quantity) } as Figure;
    const text = `I took ${written((out[m] as Figure).quantity)} of ${name.text}, as the post says, not ${written(other.quantity)}.`;
    return { tokens: out, told: [{ text, gone: [other.quantity], from: o, to: m + 1, settles: true }] };
  }
  return none;
}
