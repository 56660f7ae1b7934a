/**
 * What was spilt before it went in, and weighed again: "I'd weighed 141 g of lye and caught the cup with my sleeve. What
 * was still in it: 134 g. I did not top it up". What is left counts, unless it was made good.
 */

import { alike, written } from '../taken-back/put-right.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isStop,
  isWeight,
  massOf,
  spoken,
  wordAt,
  wordOrStop,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { type Story, storyAt } from './story.ts';
import { isPlain, isSum, rowsAmong, rowsBefore, weightAt } from './tale.ts';

/** Words of which one stands in each note that does so. */
const cues: ReadonlySet<string> = new Set(
  'spill spilt spilled spilling knocked toppled overturned slopped dropped sleeve elbow counter worktop floor table sink stove hob'.split(
    ' ',
  ),
);

const ground = '(?:counter|worktop|floor|table|sink|stove|hob|bench|drain|ground|carpet|rug)';
const makePatterns = () => ({
  spill: new RegExp(
    `\\b(?:spil(?:led|t|ling)|(?:swept|wiped|mopped|cleaned) (?:up )?the spill|knocked|toppled|overturned|slopped|dropped (?:the|it|some|a bit)|tipped (?:it |the [a-z]+ )?over)\\b|\\bwith (?:my|a|the) (?:sleeve|elbow|hand|arm)\\b|\\b(?:sleeve|elbow|hand|arm) (?:caught|hit|knocked|swept)\\b|\\b(?:some|part|bit|few|lot|half|grains|beads|flakes|pearls|it|L|F) [^#.?!]{0,30}\\b(?:over|on|onto|across|down|in|into) (?:the|my|our) ${ground}\\b`,
  ),
  left: [
    '\\bwhat (?:was|is|had|has)?(?: still| then)? ?(?:left|remained|remains|stayed|in (?:it|there|the [a-z]+))\\b[^#@?FNX]{0,60}#',
    '\\b(?:rest|remainder|remains)\\b(?: of (?:it|that|(?:the )?[FL]))?[^#@?FNLX]{0,48}#',
    '(?:\\bre ?-? ?weighed|\\bweighed (?:(?:it|that|them|what was left|everything|the [a-z]+|once|L|F) )*(?:again|afresh|anew)|\\bback on(?:to)? the scales?)\\b[^#@?FNX]{0,48}#',
    '\\b(?:left|leaving|leaves) (?:me |us )?(?:with )?(?:only |just |about )*#',
    '# (?:(?:of|it|the|that|L|F|was|were|is) )*(?:left|remained|remaining|still (?:there|in (?:it|there|the [a-z]+)))\\b',
  ].map((pattern) => new RegExp(pattern)),
});
let made: ReturnType<typeof makePatterns> | null = null;

/** It was not topped up. */
const asItWas =
  /\b(?:did not|didnt|not|never|without|havent) (?:top|topp|refill|replac|add|make|made|put|weigh)\w*\b[^.;!?]*/gi;
/** "Swept it up and binned that": none of it came back. */
const thrownAway =
  /\b(?:swept|wiped|mopped|cleaned) (?:(?:it|that|those|them|these|all|up) )*away\b|\b(?:swept|scooped|wiped|collected) (?:(?:it|that|them|all|up|the [a-z]+) )*(?:[,;] )?(?:and |then )*(?:(?:i|we) )?(?:binned|threw|thrown|chucked|tossed|dumped|rinsed)\b/g;
const goodAgain =
  /\b(?:(?<!\bon )top(?:ped|ping)?|refill\w*|replac\w*|made (?:it |that )?(?:up|good)|added|fresh|new|over again|back up|until|till|solution|swept|scooped|collected)\b/;
const open =
  /\?|\b(?:if|would|might|may|maybe|perhaps|next|last (?:time|batch|year|month|week)|once|usually|normally|about|around|roughly|nearly|almost)\b/;
/** No more than this was spilt. */
const leastLeft = 0.5;
/** Sentences that tell it, and those behind in which it is said again, at the most. */
const mostTold = 6;
const mostBehind = 2;

/** The list with what was left of what was spilt. */
export function spiltOf(cut: Cut): Heard {
  const { tokens } = cut;
  const none = { tokens, told: [] };
  const tells = (token: Token): boolean => cues.has(spoken(token));
  if (!tokens.some(tells)) return none;
  const sentences = sentencesOf(cut);
  for (const [k, sentence] of sentences.entries()) {
    if (!isAny(tokens, sentence.from, sentence.to, tells)) continue;
    made ??= makePatterns();
    const story = storyAt(tokens, sentences, k, mostTold);
    const [spill] = made.spill.exec(story.text.slice(0, story.turn)) ?? [];
    if (spill === undefined) continue;
    const less = weighedIn(story, made.left, story.text.indexOf(spill));
    const row = less < 0 ? null : spiltRow(tokens, story, less);
    if (!row) continue;
    const last = sentences.findIndex(({ to }) => to > less);
    const told = sentences.slice(k, last + 1 + mostBehind);
    const text = told.map((one) => one.text).join('');
    const said = sentences
      .slice(k, last + 1)
      .map((one) => one.text)
      .join('');
    if (open.test(said) || goodAgain.test(text.replace(asItWas, ' ').replace(thrownAway, ' '))) continue;
    const [was, now, name] = [tokens[row.figure], tokens[less], tokens[row.at]];
    if (!massOf(was) || !massOf(now) || name?.t !== 'name') continue;
    const out = [...tokens];
    const end = told.at(-1)?.to ?? sentence.to;
    let to = sentences[last]?.to ?? sentence.to;
    for (let at = sentence.from; at < end; at++) {
      if (at === row.figure || !isSaidAgain(tokens, at, less, row)) continue;
      out[at] = at === less ? wordOrStop(now) : asAside(tokens[at] as Figure, 'said before');
      for (const beside of [at + 1, at + 2]) {
        const one = tokens[beside];
        if (isIngredient(one) && beside !== row.at && thingOf(one) === row.id) out[beside] = asFiller(one);
      }
      to = Math.max(to, sentences.find((one) => one.to > at)?.to ?? to);
    }
    out[row.figure] = { ...was, quantity: { ...alike(now.quantity, was.quantity), upTo: null } };
    const note = `I took ${written(now.quantity)} of ${name.text}, not ${written(was.quantity)}, as the post says that the rest was spilt.`;
    return { tokens: out, told: [{ text: note, gone: [was.quantity], from: sentence.from, to, settles: true }] };
  }
  return none;
}

const lands = /^(?:on|over|onto|across|down|against|behind|under)$/;
const whose = /^(?:the|my|our|his|her|their|a|this|poor|whole|new|old|all)$/;
const longestFall = 12;

/** "Spilled half of my water on the cat": whatever it fell on goes into no soap. */
export function spiltOn({ tokens }: Cut): readonly Token[] {
  let out: Token[] | null = null;
  for (const [k, token] of tokens.entries()) {
    if (!cues.has(spoken(token))) continue;
    for (let at = k + 1; at < k + longestFall && !isStop(tokens[at]); at++) {
      if (!lands.test(wordAt(tokens, at)) || !whose.test(wordAt(tokens, at + 1))) continue;
      let place = at + 1;
      while (whose.test(wordAt(tokens, place))) place++;
      const thing = tokens[place];
      if (thing?.t !== 'word' || thing.sort === 'everyday' || thing.sort === 'filler') continue;
      out ??= [...tokens];
      out[place] = { ...thing, sort: 'everyday' };
    }
  }
  return out ?? tokens;
}

/** It was never weighed out. */
const stored = /\b(?:bag|tub|tin|bottle|pack|packet|box|bucket|store|cupboard|shelf)\b/;

/** Where the weight of what was left stands, told behind the spill; -1 where none does. */
function weighedIn(story: Story, patterns: readonly RegExp[], since: number): number {
  for (const pattern of patterns) {
    const found = pattern.exec(story.text.slice(since));
    if (found && !stored.test(found[0])) return story.tokenAt(since + found.index + found[0].indexOf('#'));
  }
  return -1;
}

/** The figure of what was left, or the same once more: "all 134 went in", "those 134 g of lye". */
function isSaidAgain(tokens: readonly Token[], at: number, less: number, row: Weighed): boolean {
  if (at === less) return true;
  if (at < less || !isSum(weightAt(tokens, less, less), weightAt(tokens, at, less))) return false;
  const next = wordAt(tokens, at + 1) === 'of' ? tokens[at + 2] : tokens[at + 1];
  return endsDotted(tokens[at]) || !isIngredient(next) || thingOf(next) === row.id;
}

/** What was spilt: what the story names, or what was weighed last before. */
function spiltRow(tokens: readonly Token[], story: Story, less: number): Weighed | null {
  if (!isPlain(tokens[less]) || !isWeight(tokens[less])) return null;
  const behind = /^(?:of|the)$/.test(wordAt(tokens, less + 1)) ? less + 3 : less + 2;
  const named = tokens.slice(story.from, endsDotted(tokens[less]) ? less : behind).filter(isIngredient);
  const ids = new Set(named.map(thingOf));
  if (ids.size > 1) return null;
  const [name] = named;
  const all = rowsBefore(tokens, less);
  const rows = (name ? rowsAmong(all, tokens, name) : all.slice(-1)).filter(({ figure }) => figure !== less);
  const [row, ...more] = rows;
  const one = tokens[row?.at ?? -1];
  if (!row || more.length > 0 || !isIngredient(one) || !/^(?:fat|alkali)$/.test(one.meaning.kind)) return null;
  const share = weightAt(tokens, less, row.figure) / weightAt(tokens, row.figure, row.figure);
  for (let at = Math.max(story.from, row.figure + 1); at < less; at++) if (isPlain(tokens[at])) return null;
  return share >= leastLeft && share < 1 ? row : null;
}
