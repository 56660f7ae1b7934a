/**
 * What stands in a post that rules look for, gathered once: a rule that needs one of these things has nothing to do in
 * a post that has none of them.
 */
import { cue, vinegars } from './cue-words.ts';
import type { Quantity } from './quantities.ts';
import { listed, signal } from './signal-words.ts';
import { isStop } from './token-is.ts';
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

/** A row of bit sets, one a token. */
type Bits = readonly number[];

/** What stands in a post, a bit for each signal: anywhere in it, and at each of its tokens. */
export interface Signals {
  readonly all: number;
  readonly at: Bits;
  /** What the sentence or line gives that each token stands in, and what its words may say (`cue-words.ts`). */
  readonly around: Bits;
  readonly cues: Bits;
  /** Where figures and prices stand; some may have been taken for something else since. */
  readonly figures: readonly number[];
}

/** Something that gives the signal stood at token `k` when they were gathered. */
export const givesAt = ({ at }: Signals, k: number, bit: number): boolean => ((at[k] ?? 0) & bit) !== 0;

/** Something that gives the signal stands in the same sentence and line as token `k`. */
export const givesAround = ({ around }: Signals, k: number, bit: number): boolean => ((around[k] ?? 0) & bit) !== 0;

/** A word by which it may say so stands in the same sentence and line as token `k`. */
export const saysAround = ({ cues }: Signals, k: number, bit: number): boolean => ((cues[k] ?? 0) & bit) !== 0;

/** Something that gives it stands at most so many tokens from token `k`. */
export function givesNear({ at }: Signals, k: number, bit: number, most: number): boolean {
  for (let near = Math.max(0, k - most); near <= k + most && near < at.length; near++)
    if (((at[near] ?? 0) & bit) !== 0) return true;
  return false;
}

/** `words`: at their prims. */
export function signalsOf(tokens: readonly Token[], words: readonly (Word | null)[]): Signals {
  const at: number[] = [];
  const around: number[] = [];
  const cues: number[] = [];
  const figures: number[] = [];
  let [all, given, said] = [0, 0, 0];
  for (let k = 0; k < tokens.length; k++) {
    const token = tokens[k];
    if (!token) break;
    const found = signalsAt(token, words[token.from] ?? null);
    at.push(found);
    given |= found;
    said |= cuesAt(token, words);
    if (token.t === 'quantity' || (token.t === 'aside' && token.reason === 'a price')) figures.push(k);
    if (!isStop(token) && k < tokens.length - 1) continue;
    while (around.length <= k) {
      around.push(given);
      cues.push(said);
    }
    all |= given;
    given = said = 0;
  }
  return { all, at, around, cues, figures };
}

/** What the words of a token may say. */
function cuesAt(token: Token, words: readonly (Word | null)[]): number {
  if (token.t !== 'word' && token.t !== 'name') return 0;
  let found = words[token.from]?.cues ?? 0;
  if (token.t === 'word') return found;
  for (let k = token.from + 1; k < token.to; k++) found |= words[k]?.cues ?? 0;
  if (token.meaning.kind === 'role') return token.meaning.id === 'pot' ? found | cue.pot : found;
  return vinegars.has(token.meaning.id) ? found | cue.otherUse : found;
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
