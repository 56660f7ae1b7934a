/**
 * The alkali of the list is the other one by its name alone: "line 4 says NaOH out of habit, it's KOH, the weight is
 * right", "sorry, I wrote NaOH, I used KOH". What was weighed stays.
 */

import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isAny, isIngredient } from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { storyAt } from './story.ts';
import { isPlain, type Name, rowsBefore } from './tale.ts';

/** Words of which one stands where it is told. */
const cues: ReadonlySet<string> = new Set(
  'says said wrote written wrong habit typed listed list name called'.split(' '),
);

const called =
  '(?:\\b(?:says?|said|wrote|written|typed|listed|called|put|reads|have|has)\\b[^#?]{0,16}L\\b|L (?:(?:line|above|there|in the list|on the card) )*(?:is|was) (?:wrong|a (?:slip|typo|mistake|habit))\\b)';
const really = '(?:(?:in fact|really|actually|of course|all|the|and|that is|just|in truth) )*';
const other =
  '(?:\\b(?:its|it is|it was|was|is|were|used|use|took|weighed|have|had|bag|tub|jar|bottle|label|box|tin)\\b[^#?LK]{0,48}K\\b)';
let told: RegExp | null = null;
/** It is not so, or of another batch, or the weight may be another, too. */
const open =
  /\?|\b(?:if|would|could|should|maybe|perhaps|not sure|unsure|think|or|next time|last time|usually|instead|swapped|replaced|converted|more|less|mix|mixed|both|half|part|some|also|as well|too)\b/;

const most = 4;

/** The list with the alkali that it was. */
export function otherAlkali(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const tells = (token: Token): boolean => token.t === 'word' && cues.has(token.text);
  if (!tokens.some(tells)) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || !isAny(tokens, sentence.from, sentence.to, tells)) continue;
    const rows = rowsBefore(tokens, sentence.from).filter(({ at }) => isAlkali(tokens[at]));
    const [row, ...more] = rows;
    if (!row || more.length > 0) continue;
    const own = tokens[row.at] as Name;
    const story = storyAt(tokens, sentences, k, most);
    const text = story.text.replace(/L/g, (_, place: number) =>
      isOther(tokens[story.tokenAt(place)], own) ? 'K' : 'L',
    );
    told ??= new RegExp(`${called}[^?]{0,160}?${really}${other}`);
    const found = told.exec(text);
    if (!found || found.index >= story.turn) continue;
    const [from, to] = [story.tokenAt(found.index), story.tokenAt(found.index + found[0].length - 1) + 1];
    const name = tokens[to - 1];
    const end = story.endAt(found.index + found[0].length - 1);
    if (open.test(text.slice(0, end)) || !isIngredient(name) || isAny(tokens, from, story.to, isPlain)) continue;
    const out = [...tokens];
    for (let at = from; at < to - 1; at++) {
      const again = out[at];
      if (isIngredient(again) && isAlkali(again)) out[at] = asFiller(again);
    }
    out[row.at] = { ...own, meaning: name.meaning, text: name.text, how: name.how, meant: name.meant };
    const said = `I took the ${own.text} of the list as ${name.text}, as the post says.`;
    return { tokens: out, told: [{ text: said, gone: [], from, to: story.tokenAt(end - 1) + 1, settles: true }] };
  }
  return none;
}

const isAlkali = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'alkali';

/** Each of the two by its own name, and not the same. */
const isOther = (token: Token | undefined, { meaning }: Name): boolean =>
  isIngredient(token) &&
  token.meaning.kind === 'alkali' &&
  token.meaning.id !== 'unsaid' &&
  meaning.id !== 'unsaid' &&
  token.meaning.id !== meaning.id;
