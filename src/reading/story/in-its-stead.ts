/**
 * "There was no palm left in the cupboard: 300 g tallow instead", "opened the cupboard and no palm left. Put in 150 g lard in
 * its place": a fat of the list that is not there, and another one with a weight of its own.
 */
import { once } from '../once.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isFat, isIngredient } from '../words/token-is.ts';
import { asAside, asFiller, type Figure } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { lacks } from './in-exchange.ts';
import { onlyRow, storyAt } from './story.ts';

const marker = '(?:instead(?! of)|in (?:its|that|the|their) (?:place|stead)(?! of)|in place of (?:it|that)|for it\\b)';
const pattern = once(
  () =>
    new RegExp(
      `(?:${lacks})(?<mid>[^?#]{0,90}?)(?<n>#) (?:of )?(?:the |some |my )*(?<in>[FNX]) (?:(?:went|goes|is|was|came|got|put|used|taken|in) )*${marker}`,
      'd',
    ),
);
const open =
  /\?|\b(?:half|third|quarter|part|some of|most|partly|bit of|rest of|or|maybe|perhaps|if|could|would|might|should|next|last time|last year|usually|normally|always|she|he|they|her|his|hers|theirs|about|around|roughly|nearly|almost|only had)\b/;

/** The list without what was not there. */
export function inItsStead(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const story = storyAt(tokens, sentences, k, 2);
    if (!/\b(?:instead|place|stead|for it)\b/.test(story.text) || !story.text.includes('F')) continue;
    const found = pattern().exec(story.text);
    const groups = found?.indices?.groups;
    if (!found || !groups?.['n'] || !groups['in'] || found.index >= story.turn) continue;
    const end = story.text.slice(found.index + found[0].length, found.index + found[0].length + 24);
    if (open.test(found[0]) || open.test(story.text.slice(0, found.index)) || /^ ?(?:and|plus) #/.test(end)) continue;
    const places = [...found[0].matchAll(/F/g)].map(({ index }) => story.tokenAt(found.index + index));
    const comes = story.tokenAt(groups['in'][0]);
    const gone = [...new Set(places.filter((at) => at !== comes))];
    const [out] = gone;
    const [name, other] = [tokens[out ?? -1], tokens[comes]];
    const row = out === undefined || gone.length > 1 ? null : onlyRow(tokens, name);
    const isBoth = isIngredient(name) && isIngredient(other) && thingOf(name) === thingOf(other);
    if (!row || out === undefined || row.at === out || !isIngredient(other) || isBoth) continue;
    const [was, of] = [tokens[row.figure] as Figure, tokens[row.at]];
    if (!isIngredient(of) || isAny(tokens, out + 1, comes, isFat)) continue;
    const now = [...tokens];
    now[row.figure] = asAside(was, 'taken out');
    now[row.at] = asFiller(of);
    now[out] = asFiller(name as typeof of);
    const text = `I left out ${of.text}: the post says that ${other.text} came in its place.`;
    const to = story.tokenAt(found.index + found[0].length - 1) + 1;
    return { tokens: now, told: [{ text, gone: [was.quantity], from: story.tokenAt(found.index), to, settles: true }] };
  }
  return none;
}
