/**
 * What stands in a post that rules look for, gathered once: a rule that needs one of these things has nothing to do in
 * a post that has none of them.
 */
import type { Quantity } from './quantities.ts';
import { listed, signal } from './signal-words.ts';
import type { Token } from './tokens.ts';
import type { Word } from './word.ts';

const roles: ReadonlyMap<string, number> = new Map([
  ['price', signal.price],
  ['equal', signal.equal],
  ['bars', signal.bars],
  ['mould', signal.mould],
  ['temperature', signal.temperature],
  ['number', signal.turning],
]);
/** Names that are told apart by how they are called; none is a fat. */
const called: ReadonlyMap<string, number> = new Map([
  ['crock pot', signal.cooking],
  ['slow cooker', signal.cooking],
  ['apple sauce', signal.cooking],
  ['petroleum jelly', signal.cooking | signal.cooked],
  ['test', signal.thinning],
  ['dilution', signal.thinning],
]);

/** A word is one of those that give the signal. */
export const gives = (token: Token | undefined, bit: number): boolean =>
  token?.t === 'word' && (listed(token.text) & bit) !== 0;

/** A role gives the signal by what it is called. */
export const callsFor = (token: Token, bit: number): boolean =>
  token.t === 'name' && token.meaning.kind === 'role' && ((called.get(token.meant) ?? 0) & bit) !== 0;

/** What stands in a post, a bit for each signal: anywhere in it, and at each of its tokens. */
export interface Signals {
  readonly all: number;
  readonly at: readonly number[];
  /** Where figures and prices stand; some may have been taken for something else since. */
  readonly figures: readonly number[];
}

/** Something that gives the signal stood at token `k` when they were gathered. */
export const givesAt = ({ at }: Signals, k: number, bit: number): boolean => ((at[k] ?? 0) & bit) !== 0;

/** Something that gives it stands at most so many tokens from token `k`. */
export function givesNear({ at }: Signals, k: number, bit: number, most: number): boolean {
  for (let near = Math.max(0, k - most); near <= k + most && near < at.length; near++)
    if (((at[near] ?? 0) & bit) !== 0) return true;
  return false;
}

/** `words`: at their prims. */
export function signalsOf(tokens: readonly Token[], words: readonly (Word | null)[]): Signals {
  const at: number[] = [];
  const figures: number[] = [];
  let all = 0;
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    const found = token ? signalsAt(token, words[token.from] ?? null) : 0;
    at.push(found);
    if (token?.t === 'quantity' || (token?.t === 'aside' && token.reason === 'a price')) figures.push(k);
    all |= found;
  }
  return { all, at, figures };
}

/** `first`: the word that a word or a name begins with. */
function signalsAt(token: Token, first: Word | null): number {
  if (token.t === 'word') return first?.text === token.text ? first.signals : listed(token.text);
  if (token.t === 'sign') return token.text === '=' ? signal.equals : 0;
  if (token.t === 'quantity') return ofFigure(token.quantity);
  if (token.t === 'aside') return token.reason === 'a price' ? signal.price : 0;
  if (token.t !== 'name') return 0;
  const { kind } = token.meaning;
  if (kind === 'fat' && token.to > token.from + 1) return 0;
  const found = token.to > token.from + 1 ? called.get(token.text.toLowerCase()) : first?.signals;
  if (kind === 'stock') return (found ?? 0) | signal.stock;
  if (token.meaning.kind !== 'role') return found ?? 0;
  return (found ?? 0) | (roles.get(token.meaning.id) ?? 0) | (called.get(token.meant) ?? 0);
}

function ofFigure({ dim, value, negative }: Quantity): number {
  let found: number = negative ? signal.negative : 0;
  if (dim === 'bare') found |= (value < 1 ? signal.part : 0) | (Number.isInteger(value) ? 0 : signal.price);
  else if (dim === 'percent') found |= signal.percent;
  else if (dim === 'ratio') found |= signal.ratio;
  else if (dim === 'temperature') found |= signal.temperature;
  return found;
}
