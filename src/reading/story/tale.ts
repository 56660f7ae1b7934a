/** What a note below a list tells in one or two sentences, and the row of the list that it speaks of. */
import { alike } from '../taken-back/put-right.ts';
import type { Sentence } from '../text/sentences.ts';
import { isIngredient, isMark, isRole, massOf, setApart } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';
import { figureOf, thingOf, type Weighed } from '../words/weighed.ts';

export type Name = Extract<Token, { t: 'name' }>;

/** A sentence of a note and the one behind it, as one text. */
export interface Tale {
  readonly text: string;
  /** Where the second sentence begins. */
  readonly turn: number;
  readonly tokenAt: (place: number) => number;
}

/** The sentence at `k` and the next one; as plain words in which names and figures are placeholders. */
export function taleAt(sentences: readonly Sentence[], k: number): Tale {
  const [first, next] = [sentences[k], sentences[k + 1]];
  const head = first?.text ?? '';
  return {
    text: head + (next?.text ?? ''),
    turn: head.length,
    tokenAt: (place) => (place < head.length || !next ? first?.tokenAt(place) : next.tokenAt(place - head.length)) ?? 0,
  };
}

/** The tokens at the groups of a match by their names. */
export type Told = (group: string) => number;

/** Where the groups of a match stand; -1 for one that is not there. */
export const toldIn =
  (tale: Tale, match: RegExpExecArray | RegExpMatchArray): Told =>
  (group) => {
    const place = match.indices?.groups?.[group]?.[0];
    return place === undefined ? -1 : tale.tokenAt(place);
  };

/** A weight that is none of several, and no range. */
export const isPlain = (token: Token | undefined): token is Figure =>
  massOf(token) &&
  token.quantity.dim !== 'volume' &&
  token.quantity.upTo === null &&
  !token.quantity.each &&
  !isFraction(token);

/** "Three quarters" of something. */
const isFraction = ({ quantity }: Figure): boolean =>
  quantity.dim === 'bare' && quantity.inWords === true && quantity.value > 0 && quantity.value < 1;

/** One thing by two names; an alkali whose kind is not said may be either. */
function isSameThing(a: Name, b: Name): boolean {
  if (thingOf(a) !== thingOf(b)) return false;
  const kinds = [a, b].map(({ meaning }) => (meaning.kind === 'alkali' ? meaning.id : ''));
  return kinds[0] === kinds[1] || kinds.some((kind) => kind !== 'naoh' && kind !== 'koh');
}

const weighable = /^(?:fat|alkali|liquid|water)$/;

/** What a list has in brackets between a name and its weight, at the most. */
const mostBracketed = 5;

/** The weight of what is named at `k`, as lists have it, too: "olive - 500 g", "olive (500 g)", "olive (infused) 500 g"; -1 where it has none. */
function listedAt(tokens: readonly Token[], k: number): number {
  const beside = figureOf(tokens, k);
  if (beside >= 0) return beside;
  let at = k + 1;
  if (isMark(tokens[at], '(')) {
    if (massOf(tokens[at + 1]) && isMark(tokens[at + 2], ')')) return at + 1;
    while (at - k <= mostBracketed && isWordOrName(tokens[at + 1])) at++;
    at = isMark(tokens[at + 1], ')') ? at + 2 : k + 1;
  }
  while (isMark(tokens[at], '-–—.')) at++;
  if (at > k + 1 && massOf(tokens[at])) return at;
  // "lard, 20 oz" alone in its line
  return isMark(tokens[k + 1], ',') && massOf(tokens[k + 2]) && isLineEnd(tokens[k + 3]) ? k + 2 : -1;
}

const isLineEnd = (token: Token | undefined): boolean => token === undefined || token.t === 'line';
const isWordOrName = (token: Token | undefined): boolean => token?.t === 'word' || token?.t === 'name';

/** What is weighed before token `end`. */
export function rowsBefore(tokens: readonly Token[], end: number): readonly Weighed[] {
  const rows: Weighed[] = [];
  for (let at = 0; at < end; at++) {
    const token = tokens[at];
    if (!isIngredient(token) || !weighable.test(token.meaning.kind)) continue;
    const figure = listedAt(tokens, at);
    if (isPlain(tokens[figure]) && figure < end) rows.push({ at, figure, id: thingOf(token) });
  }
  return rows;
}

/** Words and signs between a name and its weight in a row of the list: "lye on plan: 135 g", "lye: scale said 135". */
const mostBetween = 4;

/** Weighed alkali whose row has a word or two more than a name. */
export function rowsOfAlkali(tokens: readonly Token[], end: number): readonly Weighed[] {
  const rows: Weighed[] = [];
  for (let at = 0; at < end; at++) {
    const name = tokens[at];
    if (!isIngredient(name) || name.meaning.kind !== 'alkali') continue;
    let figure = at + 1;
    while (
      figure - at <= mostBetween &&
      (tokens[figure]?.t === 'word' || isMark(tokens[figure], ':=') || isRole(tokens[figure], 'scale'))
    )
      figure++;
    if (figure < end && isPlain(tokens[figure])) rows.push({ at, figure, id: thingOf(name) });
  }
  return rows;
}

/** What is weighed of it before token `end`. */
export function rowsOf(tokens: readonly Token[], name: Token | undefined, end: number): readonly Weighed[] {
  return isIngredient(name) ? rowsAmong(rowsBefore(tokens, end), tokens, name) : [];
}

/** Those of some rows in which it is weighed. */
export const rowsAmong = (rows: readonly Weighed[], tokens: readonly Token[], name: Name): readonly Weighed[] =>
  rows.filter(({ at }) => isSameThing(tokens[at] as Name, name));

/** The one row in which it is weighed before token `end`; null where none or several are. */
export function rowOf(tokens: readonly Token[], name: Token | undefined, end: number): Weighed | null {
  const [row, ...more] = rowsOf(tokens, name, end);
  return row && more.length === 0 ? row : null;
}

/** What a figure weighs, in the unit of another one; NaN where it is no plain weight. */
export function weightAt(tokens: readonly Token[], k: number, like: number): number {
  const [one, other] = [tokens[k], tokens[like]];
  if (!isPlain(one) || !isPlain(other)) return Number.NaN;
  const quantity = alike(one.quantity, other.quantity);
  return quantity.dim === other.quantity.dim ? quantity.value : Number.NaN;
}

const step = 1e-3;
export const isSum = (whole: number, ...parts: readonly number[]): boolean =>
  Math.abs(parts.reduce((sum, one) => sum + one, -whole)) <= step * whole;

/** Sets the figures between two tokens aside and makes the names there say nothing, but for some. */
export function hush(
  out: Token[],
  from: number,
  to: number,
  reason: string,
  but: (k: number) => boolean = () => false,
): void {
  for (let k = from; k < to; k++) {
    const token = out[k];
    if (!token || but(k)) continue;
    if (token.t === 'quantity') out[k] = asAside(token, reason);
    else if (token.t === 'name' && token.meaning.kind !== 'role') out[k] = asFiller(token);
  }
}

/** A text in which `F` is a fat, `L` the alkali, `@` another thing that may go in, `&` a name of none and `#` a plain weight. */
export const lettered = (tokens: readonly Token[], text: string, tokenAt: (place: number) => number): string =>
  text.replace(/[@#]/g, (sign, place: number) => {
    const token = tokens[tokenAt(place)];
    if (sign === '#') return isPlain(token) ? '#' : '…';
    if (!isIngredient(token)) return '&';
    const { kind } = token.meaning;
    return kind === 'fat' ? 'F' : kind === 'alkali' ? 'L' : '@';
  });

/** Sets a figure apart; where it ends its sentence its numbers are counted with those of the figure at `keeper`. */
export function apart(out: Token[], k: number, reason: string, keeper: number): void {
  const [figure, kept] = [out[k], out[keeper]];
  if (figure?.t !== 'quantity') return;
  out[k] = setApart(figure, reason);
  if (out[k]?.t === 'aside' || kept?.t !== 'quantity') return;
  const numbers = [...kept.quantity.numbers, ...figure.quantity.numbers];
  out[keeper] = { ...kept, quantity: { ...kept.quantity, numbers } };
}
