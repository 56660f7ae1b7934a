/**
 * What went in by the difference of two weights: "the olive bottle was 915 g before and 265 g after", "the jug is 85 g,
 * with the lye in it 226 g", "a 500 g jar of coconut; 140 g is still in it, the rest went in". Where a third weight says
 * what that leaves, others hear it.
 */

import { type PutRight, withValue, written } from '../taken-back/put-right.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isPot,
  isStop,
  setApart,
  spoken,
  wordOrStop,
} from '../words/token-is.ts';
import { asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf } from '../words/weighed.ts';
import type { Heard } from './heard.ts';
import { leftInPack } from './left-in-pack.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, type Name, weightAt } from './tale.ts';

/** Words of which one stands in each sentence that tells of it. */
const cues: ReadonlySet<string> = new Set(
  'minus less except but remain stay stays stayed rest else kept held included first then later ended from before beforehand after afterwards full empty emptied alone itself with including includes incl plus and left still remaining remained remains over went now started'.split(
    ' ',
  ),
);

export const vessels =
  '(?:bottle|jar|tub|tin|can|canister|jug|bag|sack|packet|pack|box|carton|container|bucket|drum|pot|pan|saucepan|beaker|cup|bowl|dish|glass|mug|pitcher|pail|crock|flask|vessel|jerrycan|block|slab|brick)';
const aVessel = new RegExp(`\\b${vessels}\\b`);
const the = '(?:(?:the|my|its|a|an|that|this|same|full|empty|plastic|glass|steel|little|big|whole|opened|new|old) )*';

/** With what a vessel was weighed once, and once more when its content was poured: the words up to the name, around both figures and behind. */
const twice =
  /(?<head>[^@#?.;]{0,60})(?<x>@)(?<mid>[^@#?]{0,90})(?<a>#)(?:(?<m1>[^@#?]{0,70})(?<b>#))?(?<m2>[^@#?]{0,50})/dg;
const earlier =
  /\b(?:before(?:hand)?|full|filled|at first|first|to (?:begin|start) with|(?:at|in) the (?:start|beginning|outset)|when (?:i|we) (?:started|began|opened)|started|began|unopened|untouched|initially|originally|from)\b/;
const wasSo = /\b(?:was|were|weighed|had) (?=#)/;
const later =
  /\b(?:after(?:wards?)?|(?:when|once|as soon as) (?:i|we|id|i'd|wed) (?:had |was |were )?(?:done|finished|stopped|through|poured)|(?:i|we) (?:had )?finished|now|at the end|in the end|ended|then|later|(?:down )?to(?! (?:start|begin))|empty|emptied)\b|->|→/;
/** Words that are said of two goes as well. */
const weakly = /^(?:first|at first|from|then|later|(?:down )?to|was|were|weighed|had)$/;
const onScale = /\b(?:weigh\w*|scales?|display|show\w*)\b/;
const outOf = new RegExp(`\\b(?:from|out of) ${the}(?:@ )?${vessels}\\b`);
/** What becomes lighter by itself, or is not weighed but said to be so. */
const otherwise =
  /\b(?:if|next|usually|normally|would|should|refilled|topped|strain\w*|filter\w*|infus\w*|render\w*|boil\w*|simmer\w*|evaporat\w*|dried|drying|dry|cur(?:e|ed|ing)|froze|frozen|soaps?|bars?|loaf|batter|mou?lds?|supposed|says|cost\w*|price|paid|pounds?|month|week|year|o ?clock|minutes?|hours?|degrees?|temp\w*|read|cooked|cooking|cook|trace|another|more|extra|added|adding|twice|each)\b/;
/** "The first jar held 310 g, the second jar 290 g, both are in the pot". */
const twoOfThem =
  /\b(?:(?:the|my|a) (?:second|other|next|new)\b(?! (?:time|weighing|reading|go)\b)|both (?:are|were|went|got|in|of|jars?|tubs?|bottles?)\b)/;

const own = '(?:alone|itself|by itself|on its own|empty|bare|without (?:anything|lid))';
const alone = /\b(?:alone|itself|own|empty|bare|without|nothing)\b/;
/** What the vessel weighs: "the jug is", "empty it's", "85 g for the jug". */
const tare = `(?:\\b${vessels}(?: (?:by|on|its|own|alone|itself|empty|is|was|weighs|weighed|comes|came|to|at|about|says|reads|which|that|bare|shows|showed|in|grams|only|just|later|afterwards|with nothing in it|without(?: the)? @|[:=(,-]))* (?<t>#)|\\b${own}(?: (?:the|my|it|its|is|was|weighs|weighed|comes to|at|that|they|${vessels}|[:=(,-]))* (?<u>#)|(?<w>#) (?:with nothing(?: (?:in|on)(?: it)?)?|empty|alone|by itself|on its own)\\b|(?<v>#) (?:is |are |was |of (?:that|it|which) (?:is|was) |for |being )*(?:just |only )?(?:the |its |my )(?:(?:empty|bare|own) )?${vessels}\\b(?! of)(?! (?:and|with|plus) (?:the )?@))`;
const reading = '[^@#?.]{0,40}';
const joint = '(?:and|plus|with|incl|including|includes|in|[+])';
/** What it weighs with what is in it. */
const gross = [
  `\\b(?:with|plus|and) ${the}(?<p>@)(?: (?:in|inside|on|it|there|together|and all|the|${vessels}|weighed|weighs|now))*${reading}(?<q>#)`,
  `(?<r>#)${reading}\\b(?:with|including|incl|plus) ${the}(?<s>@)(?: in(?:side)?(?: it| there)?)?`,
  `(?<h>@) (?:(?:is|was|together|weighed|[(]) )*${joint} ${the}${vessels}${reading}(?<i>#)`,
  `(?<n>#) (?:of )?(?<o>@) (?:together )?${joint} ${the}${vessels}\\b`,
  `(?<j>@)[^@#?.]{0,12}(?<k>#)[^@#?.]{0,16}(?:\\b${joint} ${the}${vessels}\\b|\\b${vessels} (?:is |was )?(?:included|and all)\\b)`,
  `\\b${vessels} (?:full )?of ${the}(?<l>@)${reading}(?<m>#)`,
].join('|');
/** "176 g including the cup, which is 38 g". */
const ofIts = `(?<j>@)[^@#?.]{0,12}(?<k>#)[^@#?.]{0,16}(?:\\b${joint} ${the}${vessels}\\b)(?: (?:and|but|[,(–-]))* (?:which|it|that)(?: (?:itself|alone|s))* (?:is|was|weighs|weighed|comes to|has) (?:about )?(?<t>#)`;
/** "176 g minus the cup, 38 g". */
const minus = `(?<j>@)[^@#?.]{0,12}(?<k>#)(?: [,(])? (?:minus|less|take away|without|[-−–]) (?:of )?${the}(?:${vessels} (?:of |is |was |weighs |[,(:] )*(?<t>#)|(?<u>#) (?:of |for )?${the}${vessels})`;
const between = '[^@#?]{0,60}?';

const inThe = `(?:in|at the bottom of) (?:it|there|${the}${vessels})`;
const ofIt = `(?: of (?:it|that|them|this|${the}(?:@|&|solution|lye|mix|mixture|liquid|stuff)))?`;
const being = '(?: (?:is|was|are|were|s|has|have|that|which|just|only|exactly|about|it|,))*';
/** So much of it was not taken. */
const left = new RegExp(
  [
    `(?<a>#)${ofIt}${being} (?:still|left|leftover|remain(?:s|ed|ing)?|stay(?:s|ed)?|over|unused)\\b(?: (?:left|over|behind|now|still|standing|sitting|unused|${inThe}))*`,
    `(?:\\b(?:whats|what is|what was|whatever is|what (?:i|we) (?:still )?(?:have|had|got)|what)|@(?: (?:that|which|it|thats|is|was|i|we|have|had))+) (?:still )?(?:left|remain(?:s|ed|ing)?|over|stay(?:s|ed))\\b(?:(?: now| over| behind)* ${inThe})?(?: (?:now|is|was|are|were|weighs|weighed|comes to|just|exactly|about|:|,|-))+ (?<b>#)(?! (?:of )?@)`,
    `\\b(?:left|still|there is|theres|leaving) (?:(?:exactly|about|just|only|over|with|behind) )*(?<c>#)${ofIt} (?:still |left |over |standing )*${inThe}`,
    `\\b${vessels} (?:now (?:only |just |still )?(?:holds|has|contains)|(?:holds|has|contains) (?:now|still))(?: only| just)* (?<e>#)(?! (?:of )?(?!it\\b)@)`,
    `\\bweighed (?:the rest|the remainder|what(?:s| is| was|ever is)? (?:left|over|still (?:there|left)|remains|remained))(?: ${inThe})?(?: (?:and|it|its|thats|that|is|was|weighs|weighed|comes|came|to|at|now|just|exactly|still|:|,|=))+ (?<f>#)(?! (?:of )?@)`,
    `(?<d>#) of (?:it|that|which)${being} (?:for|(?:went|goes|go|gone|put) (?:to|into|in|towards)|into) (?:the|a|an|my|some) (?!(?:[a-z]+ )?(?:soap|pot|batch|recipe|loaf|mou?ld|swirl|one|@)(?: |$))[a-z]+\\b`,
  ].join('|'),
  'd',
);
/** "A 500 g jar of coconut except for 140 g", "all but 140 g of a jar". */
const allBut =
  /@[^@#?.]{0,40}\b(?:except(?: for)?|minus|less|apart from|all but|save for|bar) (?:the (?:last )?|about |some )*(?<a>#)(?! (?:of )?(?:the |a |my )*@)|\b(?:all|whole|everything)\b[^@?.]{0,30}@[^@#?.]{0,20}\bbut (?:for )?(?:the last |about )*(?<b>#)(?! (?:of )?@)/d;
/** It is still there, and nobody says that this is what was used. */
const stillThere =
  /\b(?:still|now|theres|there (?:is|are)|whats|what is|(?:is|are) (?:still )?left|stay(?:s|ed)|remain(?:s|ed)?)\b/;
const lost = /^(?:knocked|spil(?:led|t)|tipped|dropped|overturned|upset|kicked|slopped|leaked|weighed)$/;
const usedIt = /\b(?:was|were|only|just|had|used|took|went|if|so|enough|use|spare)\b/;
/** And the rest was. */
const rest =
  /\b(?:(?:all )?the (?:rest|remainder|difference|others?)|everything (?:else|missing|that is missing|thats missing)|all else|the missing (?:bit|part|grams)|what(?:s|ever is| is|evers)? (?:missing|gone)|what (?:came|went) out|all (?:the )?others?)\b(?<tail>(?: (?:of (?:it|that|them)|from (?:it|there|the [a-z]+)))?[^#@?.]{0,50})/;
const into = /\b(?:went|goes|go|gone|in|into|used|poured|melted|put|took|tipped|pot|soap|batch)\b/;
const away =
  /\b(?:fridge|freezer|cupboard|shelf|next|friend|kitchen|frying|candles?|balms?|lotion|saved|kept|back|neighbour|sister|mother|still|another|other (?:batch|pot|soap|half))\b/;

/** A third weight says what they leave. */
const third =
  /^[^@#?]{0,60}\b(?:so|makes|making|leaves|leaving|hence|thats|that is|means|net|therefore|difference|gives|which is|=)\b(?:(?!\b(?:also|plus)\b)[^@?#.]){0,40}#/;

const many = 4;

interface Found {
  readonly name: number;
  /** The greater weight stands in its row. */
  readonly listed?: true;
  /** It is said right behind: "minus 50 g". */
  readonly off?: true;
  /** A third weight says what they leave. */
  readonly told?: true;
  /** Of a pack: figures that say the same again, and what its row says already. */
  readonly stock?: readonly number[];
  readonly row?: number;
  /** Of two that were mixed, the figure of the other one. */
  readonly mixed?: number;
  /** Both weights, the greater one first. */
  readonly more: number;
  readonly less: number;
  /** Tokens in which it is said. */
  readonly from: number;
  readonly to: number;
}

/** Figures that are no plain weights are no figures here, nor names of what is none; "362 g." ends its sentence. */
function plainly(tokens: readonly Token[], story: Story): string {
  return story.text.replace(/([@#])( ?)/g, (_, sign: string, gap: string, place: number) => {
    const token = tokens[story.tokenAt(place)];
    if (sign === '@') return `${isIngredient(token) ? '@' : '&'}${gap}`;
    const isEnd = endsDotted(token) && story.endAt(place) === place + 2;
    return `${isPlain(token) || isFall(token) ? '#' : '…'}${isEnd ? '.' : gap}`;
  });
}

/** "From 915 g to 265 g". */
const isFall = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'mass' && token.quantity.upTo !== null;

type Groups = Record<string, readonly [number, number] | undefined>;

const placeIn = (groups: Groups, names: string): number | null => {
  for (const name of names) if (groups[name]) return groups[name][0];
  return null;
};

/** "The olive bottle weighed 915 g before and 265 g after". */
function weighedTwice(tokens: readonly Token[], story: Story, text: string): Found | null {
  if (!aVessel.test(text)) return null;
  let known: Found | null = null;
  for (const match of text.matchAll(twice)) {
    const { head = '', mid = '', m1 = '', m2 = '' } = match.groups ?? {};
    const groups = match.indices?.groups as Groups;
    if ((groups['x']?.[0] ?? 0) >= story.turn) return known;
    const name = story.tokenAt(groups['x']?.[0] ?? 0);
    const a = story.tokenAt(groups['a']?.[0] ?? 0);
    const b = groups['b'] ? story.tokenAt(groups['b'][0]) : -1;
    const words = `${head}@${mid}#${m1}#${m2.replace(/[.;].*/, '')}`;
    const [begins, ends] = [earlier.exec(words) ?? wasSo.exec(words), later.exec(words)];
    const [first, last] = [begins?.index ?? -1, ends?.index ?? -1];
    const isWeak =
      weakly.test(begins?.[0].trim() ?? '') && !(/^(?:was|weighed)/.test(begins?.[0] ?? '') && ends?.[0] === 'now');
    if (!onScale.test(words) && (isWeak || weakly.test(ends?.[0] ?? '') || outOf.test(words))) continue;
    // "(beef, rendered it myself)"
    const apart = `${head}${mid}${m1}`.replace(/\([^()]*\)/g, '');
    if (otherwise.test(apart) || twoOfThem.test(`${m1}#${m2}`)) continue;
    if (!aVessel.test(`${head}${mid}${m1}`)) continue;
    if (isFall(tokens[a]) && !isNamed(tokens, a) && /\b(?:went|fell|dropped|came|going) (?:down )?from $/.test(mid))
      return { name, more: a, less: a, from: name, to: a + 1 };
    if (b < 0 || first < 0 || last < 0 || isNamed(tokens, b)) continue;
    const [more, less] = first < last ? [a, b] : [b, a];
    if (!(weightAt(tokens, more, less) > weightAt(tokens, less, less))) continue;
    const found = { name, more, less, from: name, to: b + 1 };
    if (!third.test(text.slice(groups['b']?.[1] ?? 0))) return found;
    known ??= { ...found, told: true };
  }
  return known;
}

/** A name follows that the figure is of. */
const isNamed = (tokens: readonly Token[], k: number, name: number | null = null): boolean => {
  const at = spoken(tokens[k + 1]) === 'of' ? k + 2 : k + 1;
  return !endsDotted(tokens[k]) && isIngredient(tokens[at]) && (name === null || at === name);
};

/** More is weighed in the same vessel: "with the coconut, too, 1086 g". */
const fillsOn = new RegExp(
  `^[^?#@]{0,12}\\b(?:with|and|plus|after|once) (?:(?:adding|pouring|also) )*${the}@[^@#?.]{0,25}#|^[^?#@]{0,30}\\b(?:then|next|and then|after that)\\b[^@#?]{0,20}@[^@#?.]{0,16}\\b(?:on top|too|as well|added|in it|to it|in there|there)\\b[^@#?.]{0,20}#`,
);

let tared: readonly RegExp[] | null = null;
function taredWays(): readonly RegExp[] {
  tared ??= [`${tare}${between}(?:${gross})`, `(?:${gross})${between}${tare}`, ofIts, minus].map(
    (way) => new RegExp(way, 'd'),
  );
  return tared;
}

/** "The jug is 85 g, the display said 226 g with the lye in it". */
function emptyAndFull(tokens: readonly Token[], story: Story, text: string): Found | null {
  if (!aVessel.test(text) && !alone.test(text)) return null;
  let known: Found | null = null;
  for (const pattern of taredWays()) {
    const match = pattern.exec(text);
    if (!match || match.index >= story.turn) continue;
    const groups = match.indices?.groups as Groups;
    const [t, g, x] = [placeIn(groups, 'tuvw'), placeIn(groups, 'qriknm'), placeIn(groups, 'pshojl')];
    if (t === null || g === null || x === null || t === g) continue;
    const [less, more, name] = [t, g, x].map((place) => story.tokenAt(place)) as [number, number, number];
    const behind = text.slice(match.index + match[0].length);
    if (otherwise.test(match[0]) || twoOfThem.test(match[0]) || fillsOn.test(behind)) continue;
    if (
      isNamed(tokens, less) ||
      (isNamed(tokens, more) && !isNamed(tokens, more, name)) ||
      !(weightAt(tokens, more, less) > weightAt(tokens, less, less))
    )
      continue;
    const found = { name, more, less, from: Math.min(name, more, less), to: Math.max(name, more, less) + 1 };
    if (!third.test(behind)) return found;
    known ??= { ...found, told: true };
  }
  return known;
}

const longestWay = 12;

/** What is weighed last before token `end`, with nothing but a pack, its strength or a bracket around: the name and its figure. */
function wholeBefore(tokens: readonly Token[], from: number, end: number): { name: number; figure: number } | null {
  let name = end - 1;
  while (name >= from && !(isIngredient(tokens[name]) && figureNear(tokens, name, end) >= 0)) name--;
  return name < from ? null : { name, figure: figureNear(tokens, name, end) };
}

function figureNear(tokens: readonly Token[], name: number, end: number): number {
  let k = name - 1;
  while (name - k <= longestWay && isBeside(tokens[k])) k--;
  if (isPlain(tokens[k]) && !endsDotted(tokens[k])) return k;
  k = name + 1;
  while (
    k < end &&
    k - name <= farthestBeside &&
    (isBeside(tokens[k]) || /^[:,=(]$/.test((tokens[k] as { text?: string }).text ?? ''))
  )
    k++;
  if (k < end && isPlain(tokens[k]) && !isNamed(tokens, k)) return k;
  return packFor(tokens, name, end);
}

const farthestBeside = 6;

/**
 * "The coconut oil (didn't weigh it) was a brand new 1 kg tub", "the lye I forgot. The bag was new, 1 kg": the weight of
 * the pack that it was; -1 for none.
 */
function packFor(tokens: readonly Token[], name: number, end: number): number {
  let wasIt = false;
  let isPack = false;
  for (let k = name + 1; k < end && k - name <= farthestPack; k++) {
    const token = tokens[k];
    if (token?.t === 'quantity')
      return wasIt && isPlain(token) && (isPack || isPot(tokens[k + 1])) && !isNamed(tokens, isPack ? k : k + 1)
        ? k
        : -1;
    if (isIngredient(token) || token === undefined || token.t === 'line' || isMark(token, '?')) return -1;
    if (isPot(token)) isPack = true;
    else if (/^(?:was|is|its|from|held|out|came)$/.test(spoken(token))) wasIt = true;
    else if (
      wasIt &&
      !(isPack && isMark(token, ',')) &&
      !/^(?:of|in|as|a|an|my|the|brand|new|fresh|full|unopened|whole|sealed|single|one)$/.test(spoken(token))
    )
      wasIt = false;
  }
  return -1;
}
const farthestPack = 16;

const isBeside = (token: Token | undefined): boolean =>
  isPot(token) ||
  /^(?:of|the|my|a|an|fresh|brand|new|unopened|sealed|full|whole|melted|pure|and|is|was|had|has|weighed|holds|held|contains)$/.test(
    spoken(token),
  ) ||
  (token?.t === 'quantity' && token.quantity.dim === 'percent');

/** "A 500 g jar of coconut; what's left in it is 140 g, the rest is in the pot". */
function restOf(tokens: readonly Token[], story: Story, text: string): Found | null {
  const but = allBut.exec(text);
  const match = but ?? left.exec(text);
  const groups = match?.indices?.groups as Groups | undefined;
  const place = groups ? placeIn(groups, 'abcdef') : null;
  if (!match || place === null || otherwise.test(match[0])) return null;
  const less = story.tokenAt(place);
  const said = but ? less : story.tokenAt(match.index);
  const whole = wholeBefore(tokens, story.from, Math.min(said, less));
  if (
    !whole ||
    isNamed(tokens, less) ||
    isSaidOfOther(tokens, whole.name, Math.max(whole.name, whole.figure) + 1, less)
  )
    return null;
  const to = Math.max(less, story.tokenAt(match.index + match[0].length - 1)) + 1;
  if (!but && !isRestIn(text, match) && !isInPack(tokens, story, text, match, whole)) return null;
  const { name, figure: more } = whole;
  const mixed =
    but || (isIngredient(tokens[less + 2]) && !isStock(tokens[less + 2] as Token)) ? -1 : mixedWith(tokens, name, more);
  if (mixed >= 0) return { name, mixed, listed: true, more, less, from: Math.min(said, less), to };
  if (!(weightAt(tokens, more, less) > weightAt(tokens, less, less))) return null;
  const isBesideIt =
    Math.abs(more - name) <= 2 ||
    (packFor(tokens, name, tokens.length) !== more && !(more > name && isPot(tokens[more + 1])));
  return {
    name,
    ...(isBesideIt ? { listed: true } : {}),
    ...(but ? { off: true } : {}),
    more,
    less,
    from: but ? story.tokenAt(but.index) : Math.min(said, less),
    to,
  };
}

/** "The tub was new, 1000 g net, and there are 868 g in it now", told in clauses of any order. */
function ofPack(tokens: readonly Token[], story: Story, text: string): Found | null {
  const found = opened.test(text) ? null : leftInPack(tokens, story.from, story.to, () => isRestTold(text));
  if (!found) return null;
  const { name, more, less } = found;
  const isListed = Math.abs(more - name) <= 2;
  const [from, to] = [Math.min(more, less), Math.max(more, less) + 1];
  return { ...found, ...(isListed ? { listed: true } : {}), from, to };
}

const isRestTold = (text: string): boolean => {
  const tail = rest.exec(text)?.groups?.['tail'] ?? '';
  return into.test(tail) && !away.test(tail);
};

function isRestIn(text: string, match: RegExpExecArray): boolean {
  const behind = text.slice(match.index + match[0].length);
  const other = rest.exec(behind.slice(0, 160)) ?? rest.exec(text.slice(0, match.index));
  const tail = other?.groups?.['tail'] ?? '';
  return into.test(tail) && !away.test(tail);
}

/** "Opened a 500 g tub of lye, there are 352 g left in it": of what a pack holds. */
function isInPack(
  tokens: readonly Token[],
  { tokenAt }: Story,
  text: string,
  match: RegExpExecArray,
  { name, figure }: { readonly name: number; readonly figure: number },
): boolean {
  const said = text.slice(Math.max(0, match.index - 12), match.index) + match[0];
  const clause = text
    .slice(match.index + match[0].length)
    .replace(/[.;!].*/, '')
    .replace(/\b(?:nothing|none|not a (?:gram|grain|bead|drop))(?: of it)? (?:was|is|were|has been|went|got)\b/, '');
  const [from, to] = [Math.min(name, figure), tokenAt(match.index)];
  const isRestWeighed = match.groups?.['f'] !== undefined;
  return (
    (new RegExp(`\\b${inThe}`).test(match[0]) || isRestWeighed || match.groups?.['e'] !== undefined) &&
    (isRestWeighed || stillThere.test(said)) &&
    (isRestWeighed || !usedIt.test(match[0])) &&
    !usedIt.test(clause) &&
    !/\?/.test(clause.slice(0, 60)) &&
    !opened.test(text.slice(0, match.index) + clause) &&
    tokens.slice(Math.max(0, from - 2), Math.max(name, figure) + 2).some(isPot) &&
    !tokens.slice(from, to).some((one, k) => lost.test(spoken(one)) && !isOfRest(tokens, from + k)) &&
    weighedRows(tokens, name) === 1
  );
}

/** More was taken of it than for this pot. */
const opened =
  /\b(?:last (?:time|batch|week|month|one|soap)|already|(?:used|gone|out|open|opened) (?:some |of it )?before|previous|half empty|half full|other (?:batch|soap|loaf)|both (?:batches|soaps))\b/;

/** "Weighed what is left". */
const isOfRest = (tokens: readonly Token[], k: number): boolean =>
  spoken(tokens[k]) === 'weighed' && /^whats?$/.test(spoken(tokens[k + 1]));

/** How often a weight stands beside it. */
const weighedRows = (tokens: readonly Token[], name: number): number =>
  tokens.filter(
    (one, k) =>
      isIngredient(one) && thingOf(one) === thingOf(tokens[name] as Name) && figureNear(tokens, k, tokens.length) >= 0,
  ).length;

/** What is left is named, and is something else. */
function isSaidOfOther(tokens: readonly Token[], name: number, from: number, to: number): boolean {
  const whole = tokens[name] as Name;
  return isAny(
    tokens,
    from,
    to,
    (one) =>
      isIngredient(one) &&
      thingOf(one) !== thingOf(whole) &&
      !isStock(one) &&
      !(isStock(whole) && one.meaning.kind === 'alkali'),
  );
}

/** "Of the solution". */
const isStock = (token: Token): boolean => isIngredient(token) && token.meaning.kind === 'stock';

/** "200 g lye in 400 g water", of which something is left: the figure of the one beside the other. */
function mixedWith(tokens: readonly Token[], name: number, figure: number): number {
  const thing = tokens[name] as Name;
  const other = thing.meaning.kind === 'water' ? 'alkali' : thing.meaning.kind === 'alkali' ? 'water' : null;
  if (other === null) return -1;
  for (let k = Math.min(name, figure) - 1; k >= 0 && name - k <= longestWay; k--) {
    if (isStop(tokens[k]) || endsDotted(tokens[k])) return -1;
    const one = tokens[k];
    if (isIngredient(one)) return one.meaning.kind === other ? figureNear(tokens, k, name) : -1;
  }
  return -1;
}

/** "50 % lye solution (sodium hydroxide, by weight)": what stands in the bracket names what is in the solution. */
function ofItsSolution(tokens: readonly Token[], found: Found): Found {
  const open = tokens.findLastIndex((one, k) => k < found.name && one.t === 'sign' && one.text === '(');
  const stock = tokens[open - 1];
  const isIn = !tokens.slice(open, found.name).some((one) => one.t === 'sign' && one.text === ')');
  return open > 0 && isIn && stock && isStock(stock) && isKindOf(tokens[found.name], 'alkali')
    ? { ...found, name: open - 1, from: Math.min(found.from, open - 1) }
    : found;
}
const isKindOf = (token: Token | undefined, kind: string): boolean =>
  isIngredient(token) && token.meaning.kind === kind;

/** What is weighed has no other weight in the post. */
function isOnly(tokens: readonly Token[], { name, more, less, stock = [], row = -1 }: Found): boolean {
  const thing = thingOf(tokens[name] as Name);
  return tokens.every((one, k) => {
    if (k === name || !isIngredient(one) || thingOf(one) !== thing) return true;
    return ![k - 1, k - 2, k + 1, k + 2].some((at) => {
      if (at === more || at === less || at === row || stock.includes(at) || !isPlain(tokens[at])) return false;
      return at < k
        ? (at === k - 1 && !endsDotted(tokens[at])) || spoken(tokens[k - 1]) === 'of'
        : at === k + 1 || spoken(tokens[k + 1]) === 'is';
    });
  });
}

/** "Three 250 g blocks, minus 50 g": off one of them; how many there are, 1 where nobody says so. */
const countOf = (tokens: readonly Token[], k: number): number => {
  const before = tokens[k - 1];
  return before?.t === 'quantity' && before.quantity.dim === 'bare' ? before.quantity.value : 1;
};

/** The list with what such differences leave. */
export function byDifference(cut: Cut): Heard {
  const none = { tokens: cut.tokens, told: [] };
  if (!cut.tokens.some((token) => cues.has(spoken(token)))) return none;
  const sentences = sentencesOf(cut);
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  let since = 0;
  for (const [k, sentence] of sentences.entries()) {
    if (sentence.from < since || sentence.text.length === 0) continue;
    const first = foundAt(cut.tokens, sentences, k);
    if (first?.told) {
      out = withEither(out ?? cut.tokens, first) ?? out;
      continue;
    }
    const found = first && ofItsSolution(cut.tokens, first);
    if (!found || !isOnly(cut.tokens, found)) continue;
    if (countOf(cut.tokens, found.more) !== 1 && !(found.off && found.listed && isPot(cut.tokens[found.more + 1])))
      continue;
    // "50 % lye solution (sodium hydroxide)": what was weighed is the solution
    const name = cut.tokens[found.name];
    const isLye = isIngredient(name) && name.meaning.kind === 'alkali';
    if (!found.listed && isLye && (cut.tokens.some(isStock) || isKeptMixed(cut.tokens, sentences))) continue;
    out ??= [...cut.tokens];
    for (const at of found.stock ?? []) out[at] = setApart(out[at] as Figure, 'what it is reckoned from');
    told.push(found.row !== undefined && found.row >= 0 ? confirmedBy(out, found, found.row) : taken(out, found));
    since = found.to;
  }
  return { tokens: out ?? cut.tokens, told };
}

/** "My lye is ready mixed, 50 %". */
const isKeptMixed = (tokens: readonly Token[], sentences: readonly Sentence[]): boolean =>
  sentences.some(
    ({ text, from, to }) =>
      readyMixed.test(text) &&
      isAny(tokens, from, to, (one) => isIngredient(one) && one.meaning.kind === 'alkali') &&
      isAny(tokens, from, to, (one) => one.t === 'quantity' && /^(?:percent|ratio|parts)$/.test(one.quantity.dim)),
  );
const readyMixed = /\b(?:(?:ready|pre) ?-? ?(?:mixed|made|dissolved)|solution|dissolved|mixed|made up|stock)\b/;

function foundAt(tokens: readonly Token[], sentences: readonly Sentence[], k: number): Found | null {
  const story = joinedAt(sentences, k, many);
  const text = plainly(tokens, story);
  if (!text.includes('#')) return null;
  let known: Found | null = null;
  for (const way of [weighedTwice, emptyAndFull, restOf, ofPack]) {
    const found = way(tokens, story, text);
    if (found && !found.told) return found;
    known ??= found;
  }
  return known;
}

/** How far what is told may lie from what two weights leave, as a share of it. */
const near = 0.02;

/**
 * "The bowl with the lard was 870 g, the bowl alone 320 g, so 500 g lard": it may as well be the 550 g that the two leave, and
 * nobody knows which. Null where they agree, or the third weight is of something else.
 */
function withEither(tokens: readonly Token[], { name: at, more, less, to }: Found): Token[] | null {
  const told = tokens.findIndex((token, k) => k >= to && isPlain(token));
  const [name, weight] = [tokens[at], tokens[told]];
  const own = [tokens[told + 1], tokens[told + 2]].find((token) => isIngredient(token));
  if (!isPlain(weight) || told - to > farthestTold || !isIngredient(name)) return null;
  if (!isIngredient(own) || thingOf(own) !== thingOf(name)) return null;
  const left = weightAt(tokens, more, told) - weightAt(tokens, less, told);
  if (!(Math.abs(weight.quantity.value - left) > near * left)) return null;
  const out = [...tokens];
  const text = `${written(weight.quantity)} or ${withValue(weight.quantity, left).text}`;
  out[told] = { ...weight, quantity: { ...weight.quantity, upTo: left, text } };
  for (const k of [more, less]) out[k] = setApart(out[k] as Figure, 'what it is reckoned from');
  out[at] = asFiller(name);
  return out;
}
const farthestTold = 12;

/** Where the weight stands beside its name: in the place of a word, of a sign, or of one of the two weights. */
export function placeFor(tokens: readonly Token[], name: number, weights: readonly number[]): number {
  const [before, next] = [tokens[name - 1], tokens[name + 1]];
  const isFree = (token: Token | undefined): boolean =>
    token?.t === 'word' || (token?.t === 'name' && !isIngredient(token));
  if (weights.includes(name + 1) || isFree(next)) return name + 1;
  return isStop(next) && (isFree(before) || weights.includes(name - 1)) ? name - 1 : name + 1;
}

/** Puts the difference beside its name. */
function taken(out: Token[], { name, listed, mixed, more, less, from, to }: Found): PutRight {
  const [whole, part, thing] = [out[more] as Figure, out[less] as Figure, out[name] as Name];
  const isOne = more === less;
  const [before, pack] = [out[more - 1], out[more + 1]];
  const count = countOf(out, more);
  for (let k = from; k < to; k++) {
    const token = out[k];
    if (token && k !== name && (token.t === 'word' || token.t === 'name')) out[k] = asFiller(token);
  }
  // "no idea how much lye that was"
  for (const k of [name - 1, name - 2])
    if (/^(?:how|much|many)$/.test(spoken(out[k]))) out[k] = asFiller(out[k] as Token);
  const told = (text: string): PutRight => ({ text, gone: [], from, to, settles: true, reckons: Math.min(from, name) });
  if (mixed !== undefined) {
    const all = weightAt(out, more, more) + weightAt(out, mixed, more);
    const share = 1 - weightAt(out, less, more) / all;
    out[less] = setApart(part, 'what it is reckoned from');
    for (const at of [more, mixed]) {
      const { quantity, ...figure } = out[at] as Figure;
      const now = withValue(quantity, quantity.value * share);
      out[at] = {
        ...figure,
        quantity: { ...now, upTo: null, numbers: [...quantity.numbers, ...spareOf(part, at === more)] },
      };
    }
    return told(`I took all of what was mixed but ${written(part.quantity)}, which stayed out as the post says.`);
  }
  const value = isOne
    ? Math.abs(whole.quantity.value - (whole.quantity.upTo ?? 0))
    : count * weightAt(out, more, less) - weightAt(out, less, less);
  if (count !== 1)
    for (const [at, one] of [
      [more - 1, before],
      [more + 1, pack],
    ] as const)
      if (one) out[at] = asFiller(one);
  const now = {
    ...withValue(isOne ? { ...whole.quantity, upTo: null } : part.quantity, value),
    upTo: null,
    negative: false,
  };
  if (!isOne) out[less] = setApart(part, 'what it is reckoned from');
  const at = listed ? more : placeFor(out, name, [more, less]);
  const stand = out[at] ?? whole;
  if (at !== more) out[more] = wordOrStop(whole);
  const numbers = [...whole.quantity.numbers, ...spareOf(part, !isOne)];
  out[at] = { ...whole, from: stand.from, to: stand.to, quantity: { ...now, numbers } };
  const said = isOne
    ? whole.quantity.text
    : `${count === 1 ? '' : `${count} x `}${written(whole.quantity)} less ${written(part.quantity)}`;
  return told(`I took ${now.text} of ${thing.text}, which is ${said}, as the post says.`);
}

/** Its row says what the two leave. */
function confirmedBy(out: Token[], { name, more, less, from, to }: Found, row: number): PutRight {
  for (const k of [more, less]) out[k] = setApart(out[k] as Figure, 'what it is reckoned from');
  const text = `I took ${written((out[row] as Figure).quantity)} of ${(out[name] as Name).text}, as much as its pack lost.`;
  return { text, gone: [], from, to, settles: true };
}

/** Numbers of a figure of which only the full stop stays. */
const spareOf = (part: Figure, isIts: boolean): readonly number[] =>
  isIts && endsDotted(part) ? part.quantity.numbers : [];
