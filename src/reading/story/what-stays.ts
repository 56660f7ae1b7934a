/**
 * Three figures of which two make the third, told of one thing: "weighed out 130 g of lye and tipped 20 g back, so 110 g
 * went in", "meant 500 g of olive, the bottle gave 430 g, and I made up the missing 70 g with sunflower", "8 g more lye
 * on top of the 112 g, so it has 120 g now". What comes of the sum counts.
 */

import { alike, type PutRight, reweighed, written } from '../taken-back/put-right.ts';
import {
  endsDotted,
  isAny,
  isFat,
  isIngredient,
  isMark,
  isPot,
  isRole,
  isStop,
  massOf,
  spoken,
  wordAt,
  wordOrStop,
} from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { thingOf, weighedElsewhere, weighedIn } from '../words/weighed.ts';
import type { Heard } from './heard.ts';

type Name = Extract<Token, { t: 'name' }>;

/** Tokens from the first of the three to the last, and sentences that end between them, at the most. */
const longestTale = 45;
const mostStops = 2;

const near = 4;

const joints = /^(?:of|the|my|some|more|extra|a|bit)$/;
const weighed = /^(?:is|was|at|were|are|about|just|only|had|has|been)$/;

/** The thing that a figure stands beside: "500 g of the olive", "more lye", "olive: 500 g"; null where none does. */
function ownerOf(tokens: readonly Token[], k: number): Name | null {
  let at = k + 1;
  while (at - k <= near && joints.test(wordAt(tokens, at))) at++;
  const behind = tokens[at];
  if (isIngredient(behind) && !endsDotted(tokens[k])) return behind;
  at = k - 1;
  while (k - at <= near && (weighed.test(wordAt(tokens, at)) || isMark(tokens[at], ':='))) at--;
  const before = tokens[at];
  return isIngredient(before) ? before : null;
}

/** "The castor was to be 80 g": what the sentence named before, where no figure stands between. */
function subjectOf(tokens: readonly Token[], k: number): Name | null {
  for (let at = k - 1; at >= 0 && k - at <= 2 * near && !isStop(tokens[at]); at--) {
    const token = tokens[at];
    if (token?.t === 'quantity') return null;
    // "8 oz coconut. I think the coconut was less, the tub was 14 oz"
    if (isIngredient(token)) return weighedElsewhere(tokens, at) ? null : token;
  }
  return null;
}

const awayBehind =
  /^(?:(?:of|it|that|them|kept|ended|went|is|was|had|i|we|put|too|much|the|my|straight|right|up|on) )*(?:back|out|off|away|aside|again|short|over|down|on the floor)\b/;
const awayBefore = /^(?:spilled|spilt|lost|removed|returned|missing|surplus)$/;
/** "Tipped 20 g back", "lost 20 g", "50 g of the olive ended up on the floor". */
function isAway(tokens: readonly Token[], k: number): boolean {
  // "strained it and got 540 g back"
  if (/^(?:got|gave)$/.test(wordAt(tokens, k - 1))) return false;
  if ([1, 2, 3].some((back) => awayBefore.test(wordAt(tokens, k - back)))) return true;
  const words = tokens.slice(k + 1, k + 2 + 2 * near).map((one) => (isIngredient(one) ? 'it' : spoken(one)));
  const end = words.indexOf('');
  return awayBehind.test(words.slice(0, end < 0 ? words.length : end).join(' '));
}

const staysBefore = /^(?:so|leaving|leaves|left|only|really|actually|gave|held|had|yielded|contained|got|just|me)$/;
const staysBehind = /\b(?:(?:went|gone|going|goes) in(?:to)?\b|it was\b|(?:was |were |is )?left\b|was dissolved\b)/;
/** "So 110 g went in". */
const isLeft = (tokens: readonly Token[], k: number): boolean =>
  [1, 2].some((back) => staysBefore.test(wordAt(tokens, k - back))) ||
  staysBehind.test(
    tokens
      .slice(k + 1, k + 1 + near)
      .map(spoken)
      .join(' '),
  );

const filling =
  /\b(?:missing|shortfall|gap|difference|(?:made|make|making|filled|topp?ed) (?:(?:it|that|this) )?up|filled|replac(?:ed?|ing)|(?:make|fill|top) up)\b/;
const between =
  /^(?:with|by|from|using|of|in|as|is|was|will|be|ill|well|came|come|comes|went|goes|i|we|am|im|making|made|make|up|filling|filled|fill|topped|top|replaced|replace|replacing|the|some|my|more|extra)$/;
/** The name of what fills the gap of figure `k`, which is told from figure `since` on; -1 where nothing does. */
function fillerOf(tokens: readonly Token[], since: number, k: number): number {
  let at = k + 1;
  while (at - k <= 2 * near && between.test(wordAt(tokens, at))) at++;
  const told = filling.test(tokens.slice(since, at).map(spoken).join(' '));
  if (told && isFat(tokens[at]) && tokens[at + 1]?.t !== 'quantity') return at;
  // "olive made up the missing 50 g"
  at = k - 1;
  while (k - at <= 2 * near && spoken(tokens[at]) !== '') at--;
  const isFiller = filling.test(
    tokens
      .slice(at + 1, k)
      .map(spoken)
      .join(' '),
  );
  return isFiller && isFat(tokens[at]) && tokens[at - 1]?.t !== 'quantity' ? at : -1;
}

const adding = /^(?:more|another|extra|additional|added|add|top|topped|second|further|plus)$/;
const inAll = /^(?:now|altogether|together|in all|in total|total)\b/;
const making = /^(?:so|makes|making|has|have|had|now|total|altogether|that|its|gives|up)$/;

/** A weight that is none of several, and no range. */
const isPlain = (token: Token | undefined): token is Figure =>
  massOf(token) && token.quantity.dim !== 'volume' && token.quantity.upTo === null && !token.quantity.each;

const isBare = ({ quantity }: Figure): boolean => quantity.dim === 'bare';

const makes = (sum: Figure, a: Figure, b: Figure): boolean => {
  if (sum.quantity.dim !== 'mass' && ![sum, a, b].every(isBare)) return false;
  const [one, two] = [alike(a.quantity, sum.quantity), alike(b.quantity, sum.quantity)];
  return (
    one.dim === sum.quantity.dim &&
    two.dim === sum.quantity.dim &&
    Math.abs(one.value + two.value - sum.quantity.value) <= sumStep * sum.quantity.value
  );
};

interface Found {
  /** The thing that the three figures are of. */
  readonly of: Name;
  /** The figure that counts, and where its thing stands. */
  readonly counts: number;
  readonly place: number;
  /** What fills the gap, and how much of it. */
  readonly fills: { readonly figure: number; readonly name: number } | null;
}

type Three = readonly [number, number, number];

/** What three figures tell, of which the last two follow each other. */
function foundIn(tokens: readonly Token[], three: Three): Found | null {
  const [first, second, third] = three;
  const [a, b, c] = [tokens[first], tokens[second], tokens[third]];
  if (!isPlain(a) || !isPlain(b) || !isPlain(c)) return null;
  if (makes(c, a, b)) return isBare(c) ? null : added(tokens, three);
  const [whole, parts]: readonly [number, readonly [number, number]] = makes(a, b, c)
    ? [first, [second, third]]
    : [second, [first, third]];
  if (whole === second && !makes(b, a, c)) return null;
  const found = takenOff(tokens, whole, parts);
  // three figures without a unit may be of anything, unless something fills up
  return found && (found.fills || !isBare(a)) ? found : null;
}

const isOfThis = (tokens: readonly Token[], of: Name, k: number): boolean => {
  const owner = ownerOf(tokens, k);
  return owner === null || isSameThing(owner, of);
};

/** "8 g more lye, on top of the 112 g, so it has 120 g now". */
function added(tokens: readonly Token[], three: Three): Found | null {
  const [first, second, third] = three;
  const own = ownerOf(tokens, first);
  const of = own ?? ownerOf(tokens, second);
  if (!of || !three.every((k) => isOfThis(tokens, of, k)) || !isOnly(tokens, of, first, third)) return null;
  if (!isAny(tokens, first - near, third, (one) => adding.test(spoken(one)) || isMark(one, '+'))) return null;
  const behind = `${spoken(tokens[third + 1])} ${spoken(tokens[third + 2])}`;
  const isMade =
    inAll.test(behind) ||
    isMark(tokens[third - 1], '=') ||
    [1, 2, 3].some((back) => making.test(spoken(tokens[third - back])));
  return isMade ? { of, counts: third, place: own ? first : second, fills: null } : null;
}

/** Of the figure at `whole`, one of two goes and the other stays. */
function takenOff(tokens: readonly Token[], whole: number, [one, two]: readonly [number, number]): Found | null {
  const of = ownerOf(tokens, whole) ?? (whole < one ? subjectOf(tokens, whole) : null);
  if (!of) return null;
  const from = Math.min(whole, one);
  const pairs = [
    { goes: two, stays: one },
    { goes: one, stays: two },
  ];
  for (const { goes, stays } of pairs) {
    const name = fillerOf(tokens, goes === one ? from : one, goes);
    const other = tokens[name];
    if (isFat(other) && !isSameThing(other, of) && isOfThis(tokens, of, stays) && isOnly(tokens, of, from, two, name))
      return { of, counts: stays, place: whole, fills: { figure: goes, name } };
  }
  if (!isOfThis(tokens, of, one) || !isOfThis(tokens, of, two) || !isOnly(tokens, of, from, two)) return null;
  const away = pairs.filter(({ goes, stays }) => isAway(tokens, goes) && !isAway(tokens, stays));
  // "a new 500 g tub, 138 g of it. 362 g left": what is left of a pack is not in the pot
  const left = isPot(tokens[whole + 1])
    ? []
    : pairs.filter(({ goes, stays }) => isLeft(tokens, stays) && !isLeft(tokens, goes));
  const [found] = away.length > 0 ? away : left;
  return found ? { of, counts: found.stays, place: whole, fills: null } : null;
}

/** It goes in after the cook; "kept back for the next batch" does not. */
const isLater = (tokens: readonly Token[], k: number): boolean =>
  isRole(tokens[k], 'after') && ![1, 2, 3].some((on) => /^(?:next|another)/.test(spoken(tokens[k + on])));

/** Between the figures nothing else is spoken of that may go in, but for token `but` and what has its own figure. */
const isOnly = (tokens: readonly Token[], of: Name, first: number, last: number, but = -1): boolean =>
  !isAny(
    tokens,
    first,
    last,
    (one, k) =>
      isLater(tokens, k) || (k !== but && isFatOrLye(one) && !isSameThing(one, of) && !isWeighedHere(tokens, k)),
  );

const isWeighedHere = (tokens: readonly Token[], k: number): boolean =>
  [k - 2, k - 1, k + 1, k + 2].some((at) => isPlain(tokens[at]) && ownerOf(tokens, at) === tokens[k]);

const isFatOrLye = (token: Token | undefined): token is Name =>
  isIngredient(token) && (token.meaning.kind === 'fat' || token.meaning.kind === 'alkali');

/** In one breath: a few sentences of one line. */
function isTale(tokens: readonly Token[], from: number, to: number): boolean {
  let stops = 0;
  for (let k = from; k < to; k++) {
    const ends = isStop(tokens[k]) || endsDotted(tokens[k]);
    if (tokens[k]?.t === 'line' || (ends && ++stops > mostStops)) return false;
  }
  const words = tokens.slice(from, to).map(spoken).join(' ');
  return !/\b(?:last|previous) (?:time|batch|week|month|year)\b|[^a-z]if (?:there|i|we|the|it)\b/.test(words);
}

/** Figures of other things between the first of the three and the second, at the most. */
const mostOthers = 5;

/** What the figure at `n` and the one before tell with the nearest one that makes a sum with them. */
function toldAt(
  tokens: readonly Token[],
  figures: readonly number[],
  n: number,
): { readonly found: Found; readonly three: Three } | null {
  const [second = 0, third = 0] = figures.slice(n - 1, n + 1);
  for (let at = n - 2; at >= 0 && n - at <= mostOthers + 2; at--) {
    const first = figures[at] ?? 0;
    if (third - first > longestTale) return null;
    const three: Three = [first, second, third];
    if (!isSum(tokens, three) || !isTale(tokens, first, third)) continue;
    const owner = at < n - 2 ? ownerOf(tokens, first) : null;
    const of = at < n - 2 ? (ownerOf(tokens, second) ?? ownerOf(tokens, third)) : null;
    const isNear = at === n - 2 || (owner && of && isSameThing(owner, of));
    const found = isNear ? foundIn(tokens, three) : null;
    if (found) return { found, three };
  }
  return null;
}

/** One of the three is what the others make; nothing but figures is looked at. */
function isSum(tokens: readonly Token[], three: Three): boolean {
  const [a = 0, b = 0, c = 0] = three.map((k) => {
    const token = tokens[k];
    return token?.t === 'quantity' ? token.quantity.value : Number.NaN;
  });
  const most = Math.max(a, b, c);
  return Math.abs(a + b + c - 2 * most) <= sumStep * most;
}
const sumStep = 1e-4;

const isSameThing = (a: Name, b: Name): boolean => thingOf(a) === thingOf(b);

/** The tokens in which the thing weighs what counts, and what was made of it. */
export function whatStays(tokens: readonly Token[]): Heard {
  const told: PutRight[] = [];
  let out: Token[] | null = null;
  const figures: number[] = [];
  for (let k = 0; k < tokens.length; k++) if (isPlain(tokens[k])) figures.push(k);
  for (let n = 2; n < figures.length; n++) {
    const tale = toldAt(tokens, figures, n);
    if (!tale || !isFatOrLye(tale.found.of)) continue;
    const { three } = tale;
    const { counts, place, fills, of } = tale.found;
    const [now, was] = [tokens[counts], tokens[place]];
    if (!isPlain(now) || !isPlain(was)) continue;
    out ??= [...tokens];
    for (const k of three) {
      const one = tokens[k];
      if (k !== place && k !== counts && k !== fills?.figure && isPlain(one))
        out[k] = asAside(one, 'a part of what was said');
    }
    for (let k = place + 1; joints.test(wordAt(tokens, k)); k++) out[k] = asFiller(tokens[k] as Token);
    // "300 g kept back for the next batch"
    for (let k = three[0]; k <= three[2] + near; k++)
      if (isRole(tokens[k], 'after') && !isLater(tokens, k)) out[k] = asFiller(tokens[k] as Token);
    out[counts] = wordOrStop(now);
    out[place] = { ...was, quantity: alike(now.quantity, was.quantity) };
    let rest = '';
    const [filled, name] = [tokens[fills?.figure ?? -1], tokens[fills?.name ?? -1]];
    if (fills && isPlain(filled) && isIngredient(name)) {
      for (let k = Math.min(fills.figure, fills.name) + 1; k < Math.max(fills.figure, fills.name); k++)
        out[k] = asFiller(tokens[k] as Token);
      rest = `, and ${written(filled.quantity)} of ${name.text} for what was missing`;
      const [row, ...more] = weighedIn(tokens, 0, three[0], /^fat$/).filter(({ id }) => id === thingOf(name));
      const own = tokens[row?.figure ?? -1];
      // "600 g of olive", which fills up, too
      if (row && isPlain(own) && more.length === 0) {
        const value = own.quantity.value + alike(filled.quantity, own.quantity).value;
        out[row.figure] = reweighed(own, value);
        out[fills.figure] = asAside(filled, 'a part of what was said');
        out[fills.name] = asFiller(name);
        rest = `, and ${written(filled.quantity)} more of ${name.text} for what was missing`;
      }
    }
    const before = now.quantity.value > was.quantity.value ? ' in all' : `, not ${written(was.quantity)}`;
    told.push({
      text: `I took ${written(now.quantity)} of ${of.text}${before}${rest}, as the post says.`,
      gone: [was.quantity],
      from: three[0],
      to: Math.max(three[2], fills?.name ?? 0) + 1,
      settles: true,
    });
    n += 2;
  }
  return { tokens: out ?? tokens, told };
}
