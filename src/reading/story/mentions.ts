/**
 * A story in which each name says whether the list has it: `F` a fat that has a row outside of the story, `N` one that has
 * none, `L` the alkali, `X` whatever else is weighed, `x` any other name; `#` a weight, `=` "1:1", `…` any other figure. Where
 * the story goes on from a list in the same sentence, that list is left out.
 */
import type { Sentence } from '../text/sentences.ts';
import { endsDotted, isFat, isIngredient } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { thingOf, type Weighed } from '../words/weighed.ts';
import { joinedAt, type Story } from './story.ts';
import { isPlain, type Name, rowsBefore } from './tale.ts';

export interface Mentions extends Story {
  /** Where fats are named that the list has. */
  readonly listed: readonly number[];
  /** Where fats are named that it has not. */
  readonly others: readonly number[];
  /** From where on the story tells of the list. */
  readonly since: number;
}

/** Rows of a list that a sentence goes on from: "…, lye 112 g. as palm was not there, lard is taken". */
const leastListed = 3;

/** "1:1". */
const isEven = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && token.quantity.dim === 'ratio' && token.quantity.value === (token.quantity.second ?? 1);

const isLye = (token: Token | undefined): boolean =>
  isIngredient(token) && (token.meaning.kind === 'alkali' || token.meaning.kind === 'stock');

interface Known {
  readonly rows: readonly Weighed[];
  readonly mentions: Map<number, Mentions>;
}
/** By the words of a post as one rule left them: several rules ask one after the other. */
const known = new WeakMap<readonly Token[], Known>();

function knownOf(tokens: readonly Token[]): Known {
  const before = known.get(tokens);
  if (before) return before;
  const now = { rows: rowsBefore(tokens, tokens.length), mentions: new Map<number, Mentions>() };
  known.set(tokens, now);
  return now;
}

/** What is weighed in a post; its words must not change. */
export const rowsIn = (tokens: readonly Token[]): readonly Weighed[] => knownOf(tokens).rows;

/** The story of so many sentences from the one at `k` on. */
export function mentionsAt(
  tokens: readonly Token[],
  sentences: readonly Sentence[],
  k: number,
  count: number,
): Mentions {
  const { rows, mentions } = knownOf(tokens);
  const key = k * mostTold + count;
  const before = mentions.get(key);
  if (before) return before;
  const now = mentionsOf(tokens, rows, sentences, k, count);
  mentions.set(key, now);
  return now;
}
const mostTold = 8;

function mentionsOf(
  tokens: readonly Token[],
  rows: readonly Weighed[],
  sentences: readonly Sentence[],
  k: number,
  count: number,
): Mentions {
  const story = joinedAt(sentences, k, count);
  const listed: number[] = [];
  const others: number[] = [];
  const inside = rows.filter(({ at }) => at >= story.from && at < story.to);
  const isRow = (at: number): boolean => inside.some((row) => row.at === at);
  const first = [...story.text.matchAll(/@/g)]
    .map(({ index }) => story.tokenAt(index))
    .find((at) => isFat(tokens[at]) && !isRow(at));
  const since =
    inside.length < leastListed || first === undefined
      ? 0
      : Math.max(0, ...inside.filter(({ at }) => at < first).map(({ at, figure }) => Math.max(at, figure) + 1));
  const text = story.text.replace(/[@#]/g, (sign, place: number) => {
    const at = story.tokenAt(place);
    const token = tokens[at];
    if (at < since) return ' ';
    if (sign === '#') return isPlain(token) ? '#' : isEven(token) ? '=' : '…';
    if (!isIngredient(token)) return 'x';
    if (!isFat(token)) return isLye(token) ? 'L' : 'X';
    const own = rows.filter(({ id }) => id === thingOf(token));
    const isListed = own.some(({ figure }) => figure < Math.max(since, story.from) || figure >= story.to);
    (isListed ? listed : others).push(at);
    return isListed ? 'F' : 'N';
  });
  return { ...story, text: withStops(tokens, story, text), listed, others, since };
}

/** "…, 120 g. lye?": the full stop in the figure ends a clause. */
function withStops(tokens: readonly Token[], { tokenAt }: Story, text: string): string {
  return text.replace(/# /g, (_, place: number) => (endsDotted(tokens[tokenAt(place)]) ? '#.' : '# '));
}

/** They name one thing. */
export const areOne = (tokens: readonly Token[], list: readonly number[]): boolean =>
  list.length > 0 && list.every((at) => thingOf(tokens[at] as Name) === thingOf(tokens[list[0] ?? 0] as Name));
