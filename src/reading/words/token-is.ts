/** What a token is, and what stands around one: the questions that several rules ask. */
import { asAside, asFiller, type Figure, type Token } from './tokens.ts';

/** A word that says what a figure is for, by its id. */
export const isRole = (token: Token | undefined, id: string): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === id;

/** Something that may go in, known by its name. */
export const isIngredient = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  token?.t === 'name' && token.meaning.kind !== 'role' && token.meaning.kind !== 'unknown';

/** The name of a fat. */
export const isFat = (token: Token | undefined): token is Extract<Token, { t: 'name' }> =>
  token?.t === 'name' && token.meaning.kind === 'fat';

/** A name that stands for one thing, or for one that no list holds. */
export const isKnown = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind !== 'role' && token.meaning.kind !== 'ambiguous';

export const isEach = (token: Token | undefined): boolean => isRole(token, 'each');

export const isPot = (token: Token | undefined): token is Extract<Token, { t: 'name' }> => isRole(token, 'pot');

/** A figure that may be a weight: with a unit of one or of a volume, or without any. */
export const massOf = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' &&
  (token.quantity.dim === 'mass' || token.quantity.dim === 'volume' || token.quantity.dim === 'bare');

/** A weight or a volume, by its unit. */
export const isMeasured = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && (token.quantity.dim === 'mass' || token.quantity.dim === 'volume');

export const isWeight = (token: Token | undefined): token is Figure =>
  token?.t === 'quantity' && token.quantity.dim === 'mass';

/** One of these signs. */
export const isMark = (token: Token | undefined, marks: string): boolean =>
  token?.t === 'sign' && marks.includes(token.text);

const isThing = (token: Token | undefined): boolean =>
  isIngredient(token) && token.meaning.kind !== 'ambiguous' && token.meaning.kind !== 'ice';

/** `450 g olive oil`, `olive oil 450 g,` in a list: no word stands beside the figure at `k` that makes it anything else. */
export function isInRow(tokens: readonly Token[], k: number): boolean {
  const [before, next] = [tokens[k - 1], tokens[k + 1]];
  return isThing(next)
    ? before === undefined || before.t === 'line' || (before.t === 'sign' && before.text !== '=')
    : isThing(before) && (next === undefined || next.t === 'line' || isMark(next, ','));
}

export const isWord = (token: Token | undefined, text: string): boolean => token?.t === 'word' && token.text === text;

/** The plain word at `k`; empty where another kind of token stands there. */
export const wordAt = (tokens: readonly Token[], k: number): string => {
  const token = tokens[k];
  return token?.t === 'word' ? token.text : '';
};

/** A word that may stand between a figure and what it belongs to. */
export const light = (token: Token | undefined): boolean =>
  token?.t === 'word' && (token.sort === 'filler' || lightWords.has(token.text));

const lightWords: ReadonlySet<string> = new Set('for of cost costs me was paid at only now about per a'.split(' '));

const stops: ReadonlySet<string> = new Set(['.', ';', '!', '?']);

/** The end of a sentence, a line or the post. */
export const isStop = (token: Token | undefined): boolean =>
  token === undefined || token.t === 'line' || (token.t === 'sign' && stops.has(token.text));

/** A word, or the name of a role, as it is spoken; empty where another kind of token stands. */
export const spoken = (token: Token | undefined): string => {
  if (token?.t === 'word') return token.text;
  return token?.t === 'name' && token.meaning.kind === 'role' ? token.text.toLowerCase() : '';
};

/** A line's end, a sign, a figure, something that may go in, or nothing at all. */
export const isUnspoken = (token: Token | undefined): boolean =>
  token?.t !== 'word' && !(token?.t === 'name' && token.meaning.kind === 'role');

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** `3 kg.` holds its full stop. */
export const endsDotted = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.text.endsWith('.');

/** What stays of a figure that counts elsewhere: its full stop, or a word that says nothing. */
export const wordOrStop = (token: Token): Token =>
  endsDotted(token) ? { t: 'sign', from: token.from, to: token.to, text: '.', sort: null } : asFiller(token);

/** A figure that counts for nothing by itself; one that ends its sentence leaves its full stop there. */
export const setApart = (figure: Figure, reason: string): Token =>
  endsDotted(figure) ? wordOrStop(figure) : asAside(figure, reason);

/** The sentence around token `k`, at most so many tokens to each side. */
export function sentenceAt(tokens: readonly Token[], k: number, most: number): Span {
  let [from, to] = [k, k + 1];
  while (from > 0 && k - from < most && !isStop(tokens[from - 1]) && !endsDotted(tokens[from - 1])) from--;
  while (!isStop(tokens[to]) && to - k < most && !endsDotted(tokens[to - 1])) to++;
  return { from, to };
}

/** Any of the tokens from `from` to before `to` is so. */
export function isAny(
  tokens: readonly Token[],
  from: number,
  to: number,
  is: (token: Token, at: number) => boolean,
): boolean {
  for (let k = Math.max(0, from); k < to; k++) {
    const token = tokens[k];
    if (token && is(token, k)) return true;
  }
  return false;
}

/** Two signs or words at the most, and none but these, stand between two places. */
export function onlyBetween(tokens: readonly Token[], from: number, to: number, these: ReadonlySet<string>): boolean {
  if (to - from > 2) return false;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if ((token?.t !== 'sign' && token?.t !== 'word') || !these.has(token.text)) return false;
  }
  return true;
}
