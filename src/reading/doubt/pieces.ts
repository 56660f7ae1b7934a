/** A post cut into the largest pieces that read without a doubt, and the list that they make. */
import type { Doubt, RecipeReading } from '../reading.ts';
import { ofHouse } from '../recipe/water.ts';
import { type Weights, weightsOf } from './note-signs.ts';
import { stretchesOf } from './talk.ts';

/** More lines and sentences than that are no recipe's. */
const mostPieces = 120;
const sameWeight = 0.011;

export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly reading: RecipeReading;
  readonly weights: Weights;
}

export interface List {
  readonly weights: Weights;
  /** It has neither water nor another liquid. */
  readonly isDry: boolean;
  /** Where the last of what makes the list begins. */
  readonly last: number;
  readonly repeats: readonly Piece[];
  readonly notes: readonly Piece[];
  /** What weighs nothing, and says nothing of the recipe as a whole. */
  readonly rest: readonly Piece[];
}

export const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= sameWeight * Math.max(a, b);

/** What a note may say of the recipe as a whole, and is kept for. */
export const ofRecipe =
  /\b(?:super-?fat\w*|sf|lye discount|pur(?:e|ity)|strength|solution|stock|after the cook|water (?:ratio|to lye)|lye concentration)\b/i;

/** The text with a unit for its bare figures. */
export const inUnit = (text: string, unit: string): string => `${text}\n(all in ${unit})`;

/** Paragraphs, then their lines, then their sentences; a bracket is of its row. */
const partings: readonly RegExp[] = [/\n[^\S\n]*\n\s*/g, /\n+/g, /(?<=[.!?;…])\s+/g];

/** The largest pieces of a post that read without a doubt, and what is in doubt however small it is cut; as they are asked for. */
export function* piecesOf(post: string, read: (text: string) => RecipeReading): Generator<Piece> {
  const unit = unitOfAll.exec(post)?.slice(1).find(Boolean);
  const readIn = (text: string): RecipeReading => {
    const reading = read(text);
    return unit && reading.doubts.some(({ id }) => id === 'no-unit') ? read(inUnit(text, unit)) : reading;
  };
  function* within(from: number, to: number, depth: number): Generator<Piece> {
    const text = post.slice(from, to);
    const reading = readIn(text);
    const parting = partings[depth];
    if (reading.doubts.length === 0 || !parting) yield { from, to, text, reading, weights: weightsOf(reading) };
    else for (const part of stretchesOf(text, parting)) yield* within(from + part.from, from + part.to, depth + 1);
  }
  for (const part of stretchesOf(post, partings[0] ?? /\n/g)) yield* within(part.from, part.to, 1);
}

/** "All grams", "(g)": the unit of every line. */
const unitOfAll =
  /\b(?:all|everything|amounts?|weights?)\b(?: \w+){0,2} (g|grams?|oz|ounces)\b|[([](g|grams?|oz|ounces)(?: (?:all|each|of|them|everything|by weight|weight|wt))*[)\]]/i;

/** What a figure or a word is that no ingredient takes; anything else may need the rest of the post to be known. */
export const isLoose = (doubt: Doubt): boolean =>
  doubt.id === 'unplaced' || doubt.id === 'unknown-fat' || (doubt.id === 'no-unit' && /\p{L}/u.test(doubt.said));

/** What the rest of the post may answer. */
const needsMore: ReadonlySet<Doubt['id']> = new Set<Doubt['id']>([
  'shares-total',
  'shares-sum',
  'no-amount',
  'no-unit',
  'which-alkali',
  'ambiguous-name',
  'implausible',
]);

const besides = /\b(?:another|a (?:second|further)|(?:further|additional|extra)) \d/i;

/** The list, what says it once more, and the notes; null where something contradicts it. */
export function listOf(pieces: Iterable<Piece>): List | null {
  let left = mostPieces;
  const weights = new Map<string, number>();
  let [last, isDry] = [0, true];
  const repeats: Piece[] = [];
  const notes: Piece[] = [];
  const rest: Piece[] = [];
  for (const piece of pieces) {
    if (left-- === 0) return null;
    const { reading, text, weights: own } = piece;
    if (reading.doubts.length > 0) {
      if (reading.doubts.every(isLoose)) notes.push(piece);
      else if (!reading.doubts.every((doubt) => isLoose(doubt) || needsMore.has(doubt.id))) return null;
    } else if (own.size === 0) {
      if (reading.others.length === 0 && !ofRecipe.test(text) && !unitOfAll.test(text)) rest.push(piece);
    } else if ([...own.keys()].every((key) => !weights.has(key))) {
      for (const [key, grams] of own) weights.set(key, grams);
      last = piece.from;
      isDry &&= reading.waterGrams === null && reading.liquids.length === 0;
    } else if ([...own].every(([key, grams]) => isSame(weights.get(key) ?? 0, grams))) {
      // "then another 250 g water went in"
      if (besides.test(text) && !ofHouse.test(text)) return null;
      repeats.push(piece);
    } else notes.push(piece);
  }
  return { weights, isDry, last, repeats, notes, rest };
}
