/**
 * "Not a scrap of palm left. Lard took its place, gram for gram", "no castor, so avocado oil stood in, the same 2 oz", "I
 * won't buy palm any more, so the same weight of lard went in": a fat that was not there, or is not wanted, and another
 * one in its place with its whole weight.
 */

import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, sentencesOf } from '../text/sentences.ts';
import { isIngredient } from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { onlyRow, type Story, storyAt } from './story.ts';
import { hush, isSum, type Name, weightAt } from './tale.ts';

/** Words of which one stands where something takes a place. */
const cues: ReadonlySet<string> = new Set('place stead spot in over instead so got same equal much'.split(' '));

const the = '(?:(?:the|my|any|more|a|single|of|left|good|pure) )*';
const vessel = '(?:bottle|jar|tub|tin|bag|box|can|block|packet|pack|bucket|shelf)';
/** That none of `F` was there. */
export const lacks = [
  `\\b(?:no|without|out of|hadnt|didnt have|dont have|had no|never had|(?:couldnt|could not|cant) (?:find|get)) ${the}(?:[a-z]+ of ${the})?F\\b`,
  `\\bnot (?:a|an|any|one)(?: single)? [a-z]+ of ${the}F\\b`,
  `\\bF (?:${vessel} )?(?:[a-z]+ ){0,3}(?:nowhere|gone|rancid|empty|used up|finished|missing|off|mou?ldy|sold out|not to be (?:found|had)|run out|ran out)\\b`,
  `\\bF [^#?F]{0,50}\\b(?:couldnt|could not|cant) find (?:it|any|the [a-z ]{0,14}thing)\\b|\\bF [^#?F]{0,40}\\b${vessel} (?:was|is|stood|proved) (?:all )?empty\\b`,
  `\\b(?:instead|in (?:the )?place) of ${the}F\\b`,
  // "I won't buy palm any more"
  `\\b(?:i|we) (?:really |simply |just )*(?:dont|do not|wont|will not|cant|can not|cannot|couldnt|never) (?:use|buy|eat|touch|like|want|stand|keep|get|have|find|do)(?: (?:to )?(?:using|buying|use|buy|cooking with|soaping with))? ${the}F\\b`,
  // "palm isn't for me"
  `\\bF (?:isnt|is not|wasnt|aint) (?:really |quite )?(?:for me|my thing|my favourite|to be had)\\b`,
  // "lard is out of the question now"
  `\\bF (?:is|was) (?:now )?(?:out of the question|off the (?:menu|table)|not an option|no longer (?:possible|allowed|wanted)|banned|forbidden)\\b`,
].join('|');

const it = '(?:it|that|them|the F|F)';
/** That `N` is there in its place. */
const takes = [
  `\\bN (?:[a-z]+ ){0,2}(?:took|takes|came|comes|went|goes|put|fills|filled|got|gets|stepped|used) (?:over |into |in |up )*(?:its|that|the|their) (?:place|stead|spot|slot|part|share)\\b(?: of ${it})?`,
  `\\bN (?:stood|stands|stepped|filled|fills|jumped|came|went|hopped|subbed) in\\b(?: for ${it})?(?: with)?`,
  `\\bN (?:took over|got|took|gets|takes)(?= (?:up )?(?:its|that|the full|the whole|all its|the same|exactly the) )`,
  `\\b(?:so|and|then) N it (?:was|is|had to be)\\b`,
  `\\b(?:used|took|put in|put|went with|went for|theres|there is|there was|its|grabbed) (?:in )?(?:the |some |my )?N (?:instead|in its place|in its stead|in for it|in it|for it)\\b`,
].join('|');
/** "So the same weight of lard went in", "so I put in just as much lard". */
const asMuch = `(?:\\b(?:so|and|but|then|therefore) |, )(?:(?:i|we|have|had|ve|then|just|simply|instead|there|is|now|today|this time) )*(?:(?:used|took|put in|put|added|melted|weighed in|weighed|went with) (?:in )?)?(?:exactly )?(?:(?:the |an )?(?:same|equal) (?:weight|amount|quantity|kilo|pound|half kilo) (?:of|in)|the same in|(?:just )?as much) (?:the |some )?N\\b(?: (?:also |now |has |have )*(?:went|goes|gone|is|was|got|came) in(?:to it|stead)?\\b| instead| in its place)?`;
const unit = '(?:gram|g|weight|ounce|oz|like|one|#|pound)';
const whole = `(?:${unit} (?:for|by|to|:) ${unit}|(?:the |exactly |of )*same (?:weight|amount|quantity)\\b|(?:the |its |all |with |exactly |same |full |whole |a |of )*#(?: of (?:it|that)\\b)?)`;
const exchanged = new RegExp(
  `(?:${lacks})[^?]{0,90}?(?<came>${takes}) ?(?:(?:,|;|:|-|–|—|\\(|and|in|at|by|with|of|\\.) )*(?<whole>${whole})`,
  'd',
);
const exchangedFor = new RegExp(
  `(?:${lacks})[^?]{0,60}?(?:${asMuch})(?= (?:$|[-,.;:!)…]|and\\b|but\\b|this time\\b|so\\b))`,
  'd',
);

/** A part of it, two things, or nobody has done it. */
const open =
  /\?|\b(?:half|third|quarter|part|some of|most|partly|bit of|rest|or|maybe|perhaps|if|could|would|might|should|next|last time|last year|usually|normally|always|she|he|they|her|his|hers|theirs|about|around|roughly|nearly|almost|not quite|except|but only)\b|\bN (?:and|or|with|plus|,) (?:the |some )?[NF]\b|\bF (?:and|or|plus) (?:the )?F\b/;

/** Behind it: not of the whole. */
const partly =
  /\b(?:half|third|quarter|part|some of|most|only|plus|except|rest|more|less|or so|apart from|at least|minus|bar)\b|#/;

interface Exchange {
  readonly row: { readonly at: number; readonly figure: number };
  readonly comes: Name;
  readonly from: number;
  readonly to: number;
}

/** `unheard`: another weight of it came than went. */
function exchangeIn(tokens: readonly Token[], story: Story): Exchange | 'unheard' | null {
  const match = exchanged.exec(story.text) ?? exchangedFor.exec(story.text);
  if (!match || match.index >= story.turn) return null;
  const end = match.index + match[0].length;
  const rest = story.text.slice(end, story.endAt(end - 1));
  if (open.test(match[0]) || open.test(story.text.slice(0, match.index))) return null;
  if (rest.includes('?') || partly.test(rest) || /^ ?(?:or|and) [NF#]/.test(rest)) return null;
  const places = [...match[0].matchAll(/[FN]/g)].map(({ 0: letter, index }) => ({
    letter,
    token: tokens[story.tokenAt(match.index + index)],
  }));
  const rows = new Set(
    places.filter(({ letter }) => letter === 'F').map(({ token }) => onlyRow(tokens, token)?.at ?? -1),
  );
  const [came, ...more] = places.filter(({ letter }) => letter === 'N');
  const row = onlyRow(tokens, places.find(({ letter }) => letter === 'F')?.token);
  if (!row || rows.size !== 1 || !isIngredient(came?.token) || more.length > 0) return null;
  const figures: number[] = [];
  for (let at = match.index; at < end; at++) if (story.text[at] === '#') figures.push(story.tokenAt(at));
  const weight = weightAt(tokens, row.figure, row.figure);
  const isOne = (k: number): boolean => {
    const one = tokens[k];
    if (one?.t !== 'quantity') return false;
    const { dim, value, second } = one.quantity;
    return (dim === 'bare' && value === 1 && figures.length > 1) || (dim === 'ratio' && value === (second ?? 1));
  };
  if (!figures.every((k) => isOne(k) || isSum(weight, weightAt(tokens, k, row.figure)))) return 'unheard';
  return {
    row,
    comes: came.token,
    from: story.tokenAt(match.index),
    to: story.tokenAt(end - 1) + 1,
  };
}

/** The list with what came in the place of what was not there. */
export function inExchange(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [], unheard: null };
  if (!cut.tokens.some((token) => token.t === 'word' && cues.has(token.text))) return none;
  const sentences = sentencesOf(cut);
  const out = [...cut.tokens];
  const told: PutRight[] = [];
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.names === 0) continue;
    const story = storyAt(out, sentences, k, 2);
    if (!story.text.includes('N') || !story.text.includes('F')) continue;
    const found = exchangeIn(out, story);
    if (found === 'unheard')
      return { ...none, unheard: rawText(cut.prims, out[story.from]?.from ?? 0, out[story.to - 1]?.to ?? 0) };
    if (!found) continue;
    const { row, comes, from, to } = found;
    const goes = out[row.at] as Name;
    const { quantity } = out[row.figure] as Figure;
    hush(out, from, to, 'said before');
    // "the same amount"
    for (let at = from; at < to; at++) {
      const role = out[at];
      if (role?.t === 'name') out[at] = asFiller(role);
    }
    out[row.at] = { ...comes, from: goes.from, to: goes.to };
    told.push({
      text: `I took ${quantity.text} of ${comes.text} in the place of ${goes.text}, as the post says.`,
      gone: [],
      from,
      to,
      settles: true,
    });
  }
  return told.length > 0 ? { tokens: out, told, unheard: null } : none;
}
