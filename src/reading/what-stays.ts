/**
 * Three figures of which two make the third, told of one thing: "weighed out 130 g of lye and tipped 20 g back, so 110 g
 * went in", "meant 500 g of olive, the bottle gave 430 g, and I made up the missing 70 g with sunflower", "8 g more lye
 * on top of the 112 g, so it has 120 g now". What comes of the sum counts.
 */
import { alike, type PutRight, written } from './put-right.ts';
import {
  endsDotted,
  isAny,
  isIngredient,
  isMark,
  isRole,
  isStop,
  massOf,
  spoken,
  wordAt,
  wordOrStop,
} from './token-is.ts';
import { asAside, asFiller, type Figure, type Token } from './tokens.ts';
import { thingOf } from './weighed.ts';

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
    if (isIngredient(token)) return token;
  }
  return null;
}

const awayBehind = /^(?:back|out|off|away|aside|again|short|over)$/;
const awayBefore = /^(?:spilled|spilt|lost|removed|returned|missing|surplus)$/;
const notIn = /^(?:of|it|that|them|went|is|was|had|i|we|put|too|much|the|my|straight|right)$/;
/** "Tipped 20 g back", "lost 20 g". */
function isAway(tokens: readonly Token[], k: number): boolean {
  if ([1, 2, 3].some((back) => awayBefore.test(wordAt(tokens, k - back)))) return true;
  let at = k + 1;
  while (at - k <= near && notIn.test(wordAt(tokens, at))) at++;
  return awayBehind.test(wordAt(tokens, at));
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
  /^(?:missing|made|make|making|topped|toped|filled|replaced|rest|difference|gap|shortfall|other|remaining)$/;
const from = /^(?:with|by|from|using|of|in|is|was|came|comes|went|i|we|made|up|filled|topped|the|some|my)$/;
/** The name of what fills the gap of figure `k`, which is told since figure `since`; -1 where nothing does. */
function fillerOf(tokens: readonly Token[], since: number, k: number): number {
  let at = k + 1;
  while (at - k <= 2 * near && from.test(wordAt(tokens, at))) at++;
  const told = isAny(tokens, since, at, (_, n) => filling.test(wordAt(tokens, n)));
  const name = tokens[at];
  return told && isIngredient(name) && name.meaning.kind === 'fat' && tokens[at + 1]?.t !== 'quantity' ? at : -1;
}

const adding = /^(?:more|another|extra|additional|added|add|top|topped|second|further|plus)$/;
const inAll = /^(?:now|altogether|together|in all|in total|total)\b/;
const making = /^(?:so|makes|making|has|have|had|now|total|altogether|that|its|gives|up)$/;

/** A weight that is none of several, and no range. */
const isPlain = (token: Token | undefined): token is Figure =>
  massOf(token) && token.quantity.dim !== 'volume' && token.quantity.upTo === null && !token.quantity.each;

const makes = (sum: Figure, a: Figure, b: Figure): boolean => {
  if (sum.quantity.dim !== 'mass') return false;
  const [one, two] = [alike(a.quantity, sum.quantity), alike(b.quantity, sum.quantity)];
  return (
    one.dim === sum.quantity.dim &&
    two.dim === sum.quantity.dim &&
    Math.abs(one.value + two.value - sum.quantity.value) <= 1e-4 * sum.quantity.value
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

/** What three figures in a row tell. */
function foundIn(tokens: readonly Token[], [first, second, third]: readonly [number, number, number]): Found | null {
  const three = [first, second, third];
  const figures = three.map((k) => tokens[k]);
  const [a, b, c] = figures;
  if (!isPlain(a) || !isPlain(b) || !isPlain(c)) return null;
  const largest = makes(a, b, c) ? first : makes(b, a, c) ? second : makes(c, a, b) ? third : -1;
  if (largest < 0) return null;
  const owners = three.map((k) => ownerOf(tokens, k));
  const sum = owners[three.indexOf(largest)] ?? (largest === first ? subjectOf(tokens, first) : null);
  const words = (is: RegExp): boolean => isAny(tokens, first - near, third, (_, k) => is.test(wordAt(tokens, k)));
  const same = (of: Name, k: number): boolean => {
    const owner = owners[three.indexOf(k)];
    return owner == null || thingOf(owner) === thingOf(of);
  };
  if (largest === third) {
    const of = owners[0] ?? owners[1];
    if (!of || !three.every((k) => same(of, k)) || !words(adding)) return null;
    const isMade = [1, 2, 3].some((back) => making.test(spoken(tokens[third - back])));
    if (
      !isMade &&
      !inAll.test(
        tokens
          .slice(third + 1, third + 3)
          .map(spoken)
          .join(' '),
      )
    )
      return null;
    return onlyOf(tokens, of, first, third)
      ? { of, counts: third, place: owners[0] ? first : second, fills: null }
      : null;
  }
  if (!sum) return null;
  const rest = three.filter((k) => k !== largest);
  const [one, two] = rest;
  if (one === undefined || two === undefined || !onlyOf(tokens, sum, first, third)) return null;
  for (const [figure, counts] of [
    [two, one],
    [one, two],
  ] as const) {
    const name = fillerOf(tokens, first, figure);
    const other = tokens[name];
    if (isIngredient(other) && thingOf(other) !== thingOf(sum) && same(sum, counts))
      return { of: sum, counts, place: largest, fills: { figure, name } };
  }
  if (!same(sum, one) || !same(sum, two)) return null;
  const [goes, stays] = isAway(tokens, one) && !isAway(tokens, two) ? [one, two] : [two, one];
  if (!isAway(tokens, goes) && !(isLeft(tokens, stays) && !isLeft(tokens, goes))) return null;
  return { of: sum, counts: stays, place: largest, fills: null };
}

/** Nothing else that may go in is spoken of between the figures. */
const onlyOf = (tokens: readonly Token[], of: Name, from: number, to: number): boolean =>
  !isAny(tokens, from, to, (one) => isRole(one, 'after') || (isFatOrLye(one) && thingOf(one) !== thingOf(of)));

const isFatOrLye = (token: Token | undefined): token is Name =>
  isIngredient(token) && (token.meaning.kind === 'fat' || token.meaning.kind === 'alkali');

/** In one breath: a few sentences of one line. */
function isTale(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from > longestTale) return false;
  let stops = 0;
  for (let k = from; k < to; k++) {
    const ends = isStop(tokens[k]) || endsDotted(tokens[k]);
    if (tokens[k]?.t === 'line' || (ends && ++stops > mostStops)) return false;
  }
  return true;
}

/** The tokens in which the thing weighs what counts, and what was made of it. */
export function whatStays(tokens: readonly Token[]): {
  readonly tokens: readonly Token[];
  readonly told: readonly PutRight[];
} {
  const told: PutRight[] = [];
  let out: Token[] | null = null;
  const figures: number[] = [];
  for (let k = 0; k < tokens.length; k++) if (isPlain(tokens[k])) figures.push(k);
  for (let n = 2; n < figures.length; n++) {
    const [first = 0, second = 0, third = 0] = figures.slice(n - 2, n + 1);
    const found = isTale(tokens, first, third) ? foundIn(tokens, [first, second, third]) : null;
    const [now, was] = [tokens[found?.counts ?? -1], tokens[found?.place ?? -1]];
    if (!found || !isFatOrLye(found.of) || !isPlain(now) || !isPlain(was)) continue;
    const { counts, place, fills, of } = found;
    out ??= [...tokens];
    for (const k of [first, second, third]) {
      const one = tokens[k];
      if (k !== place && k !== counts && k !== fills?.figure && isPlain(one))
        out[k] = asAside(one, 'a part of what was said');
    }
    for (let k = place + 1; joints.test(wordAt(tokens, k)); k++) out[k] = asFiller(tokens[k] as Token);
    out[counts] = wordOrStop(now);
    out[place] = { ...was, quantity: alike(now.quantity, was.quantity) };
    let rest = '';
    const [filled, name] = [tokens[fills?.figure ?? -1], tokens[fills?.name ?? -1]];
    if (fills && isPlain(filled) && isIngredient(name)) {
      for (let k = fills.figure + 1; k < fills.name; k++) out[k] = asFiller(tokens[k] as Token);
      rest = `, and ${written(filled.quantity)} of ${name.text} for what was missing`;
    }
    told.push({
      text: `I took ${written(now.quantity)} of ${of.text}, not ${written(was.quantity)}${rest}, as the post says.`,
      gone: [was.quantity],
      from: first,
      to: Math.max(third, fills?.name ?? 0) + 1,
      settles: true,
    });
    n += 2;
  }
  return { tokens: out ?? tokens, told };
}
