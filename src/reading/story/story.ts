/** What a post tells over a few sentences of the rows of its list: `F` is a fat of one row, `N` a fat of none, `L` the alkali. */
import type { Sentence } from '../text/sentences.ts';
import { isFat, isIngredient, isMark, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Weighed } from '../words/weighed.ts';
import { isSum, rowsAmong, rowsBefore, rowsOf, weightAt } from './tale.ts';

export interface Story {
  readonly text: string;
  /** Where the second sentence begins. */
  readonly turn: number;
  readonly from: number;
  readonly to: number;
  readonly tokenAt: (place: number) => number;
  /** Where the sentence at a place ends. */
  readonly endAt: (place: number) => number;
}

/** The one row of a fat, wherever its list stands; null where none or several are. */
export function onlyRow(tokens: readonly Token[], name: Token | undefined): Weighed | null {
  const [row, ...others] = rowsOf(tokens, name, tokens.length);
  return row && areAlike(tokens, [row, ...others]) ? row : null;
}

/** They are one row, or say the same weight again. */
const areAlike = (tokens: readonly Token[], rows: readonly Weighed[]): boolean =>
  rows.every(({ figure }) =>
    rows.every((other) => isSum(weightAt(tokens, figure, figure), weightAt(tokens, other.figure, figure))),
  );

/** A weight right beside a name is of its row, "shea (75 g)" and "75 g of shea", too; "lard got its 180 g" is none. */
function isRow(tokens: readonly Token[], k: number, { at, figure }: Weighed): boolean {
  const between = tokens[(figure + k) / 2];
  const apart = Math.abs(figure - k);
  return at !== k || apart === 1 || (apart === 2 && (isMark(between, '(') || (figure < k && spoken(between) === 'of')));
}

function letterOf(tokens: readonly Token[], k: number, all: () => readonly Weighed[]): string {
  const token = tokens[k];
  if (!isIngredient(token)) return 'X';
  const { kind } = token.meaning;
  if (kind === 'alkali' || kind === 'stock') return 'L';
  if (!isFat(token) && kind !== 'unheld') return 'X';
  const rows = rowsAmong(all(), tokens, token).filter((row) => isRow(tokens, k, row));
  return rows.length === 0 ? 'N' : areAlike(tokens, rows) ? 'F' : 'X';
}

/** So many sentences from the one at `k` on, one text in which names and figures are placeholders. */
export function joinedAt(sentences: readonly Sentence[], k: number, count: number): Story {
  const told = sentences.slice(k, k + count);
  const begins: number[] = [];
  let text = '';
  for (const sentence of told) {
    begins.push(text.length);
    text += sentence.text;
  }
  const tokenAt = (place: number): number => {
    const n = begins.findLastIndex((begin) => begin <= place);
    return told[n]?.tokenAt(place - (begins[n] ?? 0)) ?? 0;
  };
  const endAt = (place: number): number => begins.find((begin) => begin > place) ?? text.length;
  const [from, to] = [told[0]?.from ?? 0, told.at(-1)?.to ?? 0];
  return { text, turn: begins[1] ?? text.length, from, to, tokenAt, endAt };
}

/** The same, with letters in the place of names. */
export function storyAt(tokens: readonly Token[], sentences: readonly Sentence[], k: number, count: number): Story {
  const story = joinedAt(sentences, k, count);
  let rows: readonly Weighed[] | null = null;
  const all = (): readonly Weighed[] => {
    rows ??= rowsBefore(tokens, tokens.length);
    return rows;
  };
  return {
    ...story,
    text: story.text.replace(/@/g, (_, place: number) => letterOf(tokens, story.tokenAt(place), all)),
  };
}
