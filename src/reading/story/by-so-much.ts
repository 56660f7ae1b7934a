/**
 * "Her recipe has 800 g olive … I took 50 g off the olive", "I cut the coconut by 50 g", "with 30 g more castor": a row of a
 * recipe that is somebody's, or was a plan, is so much less or more in this pot. Of a list that may be the pot's own
 * nobody knows whether it has the change already: that is left to be asked.
 */

import { type PutRight, reweighed, withValue } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isFat, isIngredient, spoken } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { storyAt } from './story.ts';
import { isPlain, type Name, rowOf, weightAt } from './tale.ts';

const cues: ReadonlySet<string> = new Set(
  'put brought went reduced cut lowered dropped trimmed decreased took knocked shaved lopped less fewer increased raised upped bumped boosted added more extra'.split(
    ' ',
  ),
);
const the = '(?:(?:of|the|my|its|her|his) )*';
const only = '(?:(?:back|down|up|only|just|by|a|whole|exactly) )*';
const less = [
  `\\b(?:reduced|cut|lowered|dropped|trimmed|decreased) ${only}${the}(?<f>[FX]) ${only}by ${only}(?<n>#)`,
  `\\b(?:took|knocked|shaved|lopped|cut|dropped|trimmed) ${only}(?<n>#) (?:off|from|out of) ${the}(?<f>[FX])\\b(?! (?:bottle|jar|tub|bag|tin|block|can))`,
  `\\b(?:put|used|took|went with|with|but|only) (?:in )?${only}(?<n>#) (?:less|fewer) ${the}(?<f>[FX])`,
];
const more = [
  `\\b(?:increased|raised|upped|bumped|boosted) ${only}${the}(?<f>[FX]) ${only}by ${only}(?<n>#)`,
  `\\badded (?:another |an extra )?(?<n>#) (?:more |extra )?(?:on)?to ${the}(?<f>[FX])`,
  `\\b(?:put|used|took|added|with|but) (?:in )?(?:an extra (?<m>#)|(?<n>#) (?:more|extra)) ${the}(?<f>[FX])`,
];
const now = [
  `\\b(?:put|brought|took|raised|upped|increased|bumped|reduced|cut|lowered|dropped|went) ${the}(?<f>[FX]) ${only}(?:up|down|back)? ?to ${only}(?<n>#)`,
];
/** "… and put it on the shea". */
const onto = new RegExp(
  `^ ?,? ?(?:and|then|but) (?:i |we |then |have )*(?:put|added|gave|moved|stuck|piled) (?:it|them|that|those|the same|as much) (?:more )?(?:on|onto|to|into|on top of|in) ${the}(?<g>F)`,
  'd',
);
const patternsOf = (patterns: readonly string[]): readonly RegExp[] => patterns.map((one) => new RegExp(one, 'd'));
let made: {
  readonly less: readonly RegExp[];
  readonly more: readonly RegExp[];
  readonly now: readonly RegExp[];
} | null = null;

/** The list is what somebody wrote, or was to be. */
const ofOthers =
  /\b(?:recipe|card|calls for|wants|says|said|plan|planned|original|originally|book|page|sheet|usual|usually|normal|normally|always|standard|meant|supposed|hers|his|he|she)\b/;
/** What heads a list of somebody's. */
const aCard = /\b(?:recipe|card|plan|original|book|page|sheet)\b/;
const open =
  /\?|\b(?:if|would|should|could|might|may|maybe|perhaps|next|last (?:time|batch|week|month|year)|already|than|instead|place|ran out|run out|short|missing|replac\w+|swap\w*|lieu|make up|made up|fill\w*|compared|ago|never|nearly|almost|not|didnt|want|thinking|because it)\b/;

/** The list with such rows as they are in this pot. */
export function bySoMuch(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  if (!tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  const out = [...tokens];
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0 || sentence.figures === 0 || open.test(sentence.text)) continue;
    const story = storyAt(tokens, sentences, k, 1);
    made ??= { less: patternsOf(less), more: patternsOf(more), now: patternsOf(now) };
    for (const [patterns, sign] of [
      [made.less, -1],
      [made.more, 1],
      [made.now, 0],
    ] as const) {
      const found = patterns.map((pattern) => pattern.exec(story.text)).find((match) => match !== null);
      const groups = found?.indices?.groups;
      const [named, said] = [groups?.['f']?.[0], (groups?.['n'] ?? groups?.['m'])?.[0]];
      if (!found || named === undefined || said === undefined) continue;
      const [name, figure] = [tokens[story.tokenAt(named)], story.tokenAt(said)];
      const row = isFat(name) || isWater(name) ? rowOf(tokens, name, sentence.from) : null;
      const difference = row ? weightAt(tokens, figure, row.figure) : Number.NaN;
      const weight = row ? out[row.figure] : undefined;
      if (!row || !isPlain(weight) || !isPlain(tokens[figure]) || !(difference > 0)) continue;
      const value = sign === 0 ? difference : weight.quantity.value + sign * difference;
      const before = sentences.filter(({ from, to }) => to <= sentence.from && row.at >= from && row.at < to);
      if (value <= 0 || !isOfOthers(before[0]?.text, sentences[0]?.text)) continue;
      out[row.figure] = reweighed(weight, value);
      out[figure] = asAside(tokens[figure] as Figure, 'a part of what was said');
      const first = story.tokenAt(found.index);
      let last = story.tokenAt(found.index + found[0].length - 1);
      const behind = found.index + found[0].length;
      const moved = sign < 0 ? onto.exec(story.text.slice(behind)) : null;
      if (moved) {
        last = story.tokenAt(behind + (moved.indices?.groups?.['g']?.[0] ?? 0));
        const other = rowOf(tokens, tokens[last], sentence.from);
        const gets = other ? out[other.figure] : undefined;
        if (!other || !isPlain(gets)) return none;
        const sum = gets.quantity.value + weightAt(tokens, figure, other.figure);
        out[other.figure] = reweighed(gets, sum);
        out[last] = asFiller(tokens[last] as Name);
      }
      for (let at = first; at <= last; at++) {
        const again = out[at];
        if (isIngredient(again) && thingOf(again) === row.id) out[at] = asFiller(again as Name);
      }
      const was =
        sign === 0
          ? `not ${weight.quantity.text}`
          : `${(tokens[figure] as Figure).quantity.text} ${sign < 0 ? 'less' : 'more'} than listed`;
      const text = `I took ${withValue(weight.quantity, value).text} of ${(name as Name).text}, ${was}, as the post says.`;
      told.push({ text, gone: [], from: first, to: last + 1, settles: true });
    }
  }
  return told.length > 0 ? { tokens: out, told } : none;
}

const isWater = (token: Token | undefined): boolean => isIngredient(token) && token.meaning.kind === 'water';

const isOfOthers = (list = '', heading = ''): boolean => ofOthers.test(list) || aCard.test(heading);
