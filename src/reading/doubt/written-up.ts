/**
 * A recipe written up: its list, and notes around it that tell of moulds, bars, costs, of how it went and of earlier
 * versions. Where the whole is in doubt, each line and sentence is read by itself. What weighs ingredients makes the
 * list; what weighs them once more must agree with it; what is in doubt by itself is a note. The list is taken where
 * its alkali fits its fats and no note may bear on what went into the pot.
 */
import type { Catalogue } from '../../catalogue/types.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { demandOf, superfatOf } from '../recipe/plausible.ts';
import { type Weights, weightsOf } from './note-signs.ts';
import { besideTheRecipe, cut, longestTalk, shortened, stretchesOf, tellsOfAlkali, usualSuperfat } from './talk.ts';

/** More lines and sentences than that are no recipe's. */
const mostPieces = 120;
/** Of a post with more doubts than that, the list is in doubt. */
const mostDoubts = 6;
const sameWeight = 0.011;

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly reading: RecipeReading;
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= sameWeight * Math.max(a, b);

const weight = /(\d+(?:[.,]\d+)?)\s?(kg|g|gr|grams?|gms?|oz|ounces?|lbs?|pounds?)\b/i;
const perUnit: Readonly<Record<string, number>> = { k: 1000, g: 1, o: 28.349523, l: 453.59237, p: 453.59237 };

const gramsIn = (text: string): readonly number[] =>
  [...text.matchAll(new RegExp(weight, 'gi'))].map(
    ([, figure = '', unit = '']) => Number(figure.replace(',', '.')) * (perUnit[unit.charAt(0).toLowerCase()] ?? 1),
  );

/** What a note may say of the recipe as a whole, and is kept for. */
const ofRecipe =
  /\b(?:super-?fat\w*|sf|lye discount|pur(?:e|ity)|strength|solution|stock|after the cook|water (?:ratio|to lye)|lye concentration)\b/i;

/** Paragraphs, then their lines, then their sentences; a bracket is of its row. */
const partings: readonly RegExp[] = [/\n[^\S\n]*\n\s*/g, /\n+/g, /(?<=[.!?;…])\s+/g];

/** The largest pieces of a post that read without a doubt, and what is in doubt however small it is cut; as they are asked for. */
function* piecesOf(post: string, read: (text: string) => RecipeReading): Generator<Piece> {
  const unit = unitOfAll.exec(post)?.slice(1).find(Boolean);
  const readIn = (text: string): RecipeReading => {
    const reading = read(text);
    return unit && reading.doubts.some(({ id }) => id === 'no-unit') ? read(`${text}\n(all in ${unit})`) : reading;
  };
  function* within(from: number, to: number, depth: number): Generator<Piece> {
    const text = post.slice(from, to);
    const reading = readIn(text);
    const parting = partings[depth];
    if (reading.doubts.length === 0 || !parting) yield { from, to, text, reading };
    else for (const part of stretchesOf(text, parting)) yield* within(from + part.from, from + part.to, depth + 1);
  }
  for (const part of stretchesOf(post, partings[0] ?? /\n/g)) yield* within(part.from, part.to, 1);
}

/** "All grams", "(g)": the unit of every line. */
const unitOfAll =
  /\b(?:all|everything|amounts?|weights?)\b(?: \w+){0,2} (g|grams?|oz|ounces)\b|[([](g|grams?|oz|ounces)(?: (?:all|each|of|them|everything|by weight|weight|wt))*[)\]]/i;

/** What a figure or a word is that no ingredient takes; anything else may need the rest of the post to be known. */
const isLoose = (doubt: Doubt): boolean =>
  doubt.id === 'unplaced' || doubt.id === 'unknown-fat' || (doubt.id === 'no-unit' && /\p{L}/u.test(doubt.said));

interface List {
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

/** The list, what says it once more, and the notes; null where something contradicts it. */
function partsOf(pieces: Iterable<Piece>): List | null {
  let left = mostPieces;
  const weights = new Map<string, number>();
  let [last, isDry] = [0, true];
  const repeats: Piece[] = [];
  const notes: Piece[] = [];
  const rest: Piece[] = [];
  for (const piece of pieces) {
    if (left-- === 0) return null;
    const { reading, text } = piece;
    const own = weightsOf(reading);
    if (reading.doubts.length > 0) {
      if (reading.doubts.every(isLoose)) notes.push(piece);
      else if (!reading.doubts.every((doubt) => isLoose(doubt) || needsMore.has(doubt.id))) return null;
    } else if (own.size === 0) {
      if (reading.others.length === 0 && !ofRecipe.test(text) && !unitOfAll.test(text)) rest.push(piece);
    } else if ([...own.keys()].every((key) => !weights.has(key))) {
      for (const [key, grams] of own) weights.set(key, grams);
      last = piece.from;
      isDry &&= reading.waterGrams === null && reading.liquids.length === 0;
    } else if ([...own].every(([key, grams]) => isSame(weights.get(key) ?? 0, grams))) repeats.push(piece);
    else notes.push(piece);
  }
  return { weights, isDry, last, repeats, notes, rest };
}

/** Told of another batch, of somebody else, of no batch yet, or as a rule. */
const elsewhere =
  /\b(?:last|next|(?:first|second|third) (?:time|try|attempt|go|batch|version|one)|earlier|previous(?:ly)?|original(?:ly)?|history|origin|years?|once|used to|old(?:er)?|(?:versions?|v\d\S*) (?:had|was|used|took|called)|batch(?:es)?|trial|some ?day|(?:would|could)(?! i\b)|maybe|might|she|he|they|her|his|hers|their|sister|mother|aunt|friend|neighbour|per|maximum|at most)\b/i;

/** Of two figures nobody says which. */
const choosing = /\b(?:or|either|between|somewhere|maybe|perhaps|about which|not sure|unsure|remember)\b/i;
/** A bare figure beside a name is a price, a count, or a part of what is mixed. */
const priced = /\b(?:costs?|prices?|budget|sells?|sold|mou?lds?|dilut\w*|parts?)\b|[€$£]/i;
const sentenceEnd = /(?<=[.!?;…])\s+|\n+/;

/** What a weight is of that is no ingredient's. */
const ofElse =
  /\b(?:yields?|makes?|made|gives?|gave|bars?|pieces?|pcs|pucks?|slices?|slabs?|rounds?|blocks?|cubes?|tins?|tubs?|mou?lds?|cavit\w+|jars?|bottles?|lo(?:af|aves)|box(?:es)?|cartons?|tubes?|pots?|pans?|cookers?|buckets?|each|apiece|cur(?:ed?|ing)|costs?|prices?|budget|sells?|sold|label\w*|batter|dilut\w*|cut)\b|[€$£]/i;

/** "My sister puts 20 g more in hers. I did too.", "so I took 150 g": what is told of others is of this pot, too. */
const likewise =
  /^\W*(?:and |but |so )?(?:i|we) (?:did|do|have|will|am|copied|followed|went)(?:n['’]?t)?\b[^.!?]{0,24}\W*$|\b(?:likewise|me too|so (?:i|we))\b/i;
const isLikewise = (text: string): boolean => text.split(sentenceEnd).some((one) => likewise.test(one));

/** What came of it. */
const ofSoap = /\b(?:bars?|pieces?|slices?|mou?lds?|cavit\w+|each|apiece|yields?|label\w*)\b/i;

/** How a pot looks, and when something goes in that the alkali leaves alone. */
const ofCook = /\b(?:cook(?:ed)?|jelly|mash\w*|translucent|zap\w*|tongue|porridge|custard|apple ?sauce)\b/i;

/** Fewer words are a row rather than a note. */
const fewestWords = 4;

/** The note may tell of something that went into the pot, or did not. */
function mayBear({ text, reading, from }: Piece, { weights, last, isDry }: List, bears: Bears): boolean {
  if (ofRecipe.test(text) || (from < last && ofCook.test(text))) return true;
  const differing = [...weightsOf(reading)].filter(([key, grams]) => !isSame(weights.get(key) ?? 0, grams));
  const isElsewhere =
    differing.length < 2 &&
    text.split(sentenceEnd).every((one) => !/\d/.test(one) || ofSoap.test(one) || elsewhere.test(one));
  if (differing.length > 0 && !isElsewhere) return true;
  const isRow = (text.match(/\p{L}{2,}/gu) ?? []).length < fewestWords && !ofSoap.test(text);
  // "Beer soap, 250 g." may be so much beer, and a bare figure may be a sum
  if (isRow && (weight.test(text) || !/\p{L}{2}/u.test(text))) return true;
  const isUnclear = reading.doubts.some(
    ({ id }) =>
      (id === 'unplaced' &&
        (isRow || choosing.test(text) || (weight.test(text) && !ofElse.test(text) && !elsewhere.test(text)))) ||
      (id === 'no-unit' && isRow && !priced.test(text)),
  );
  return isUnclear || bears(text, weights, isDry);
}

/** Whether what is written beside a list bears on it. */
type Bears = (text: string, list: Weights, isDry: boolean) => boolean;

/** What the post says of its own list or lists, and no note tells. */
const isOfRecipe = (doubt: Doubt): boolean =>
  doubt.id === 'corrected' || (doubt.id === 'two-recipes' && doubt.parts > 0);

/** A fat without an amount, and a total that is none, where the list weighs it. */
const isListed = (doubt: Doubt, { weights }: List, catalogue: Catalogue): boolean =>
  (doubt.id === 'no-amount' && [...weights.keys()].some((id) => catalogue.fats.get(id)?.name === doubt.of)) ||
  (doubt.id === 'total-disagrees' && [...weights.values()].some((grams) => String(grams) === doubt.said));

/** The recipe by its list; null where that is none, or a note may bear on it. */
export function writtenUp(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  catalogue: Catalogue,
  bears: Bears,
): RecipeReading | null {
  if (post.length > longestTalk || first.doubts.length > mostDoubts || first.doubts.some(isOfRecipe)) return null;
  const list = partsOf(piecesOf(post, read));
  if (!list || [...list.notes, ...list.rest].some(({ text }) => isLikewise(text))) return null;
  if (list.notes.some((note) => mayBear(note, list, bears))) return null;
  const ways = [list.notes, [...list.notes, ...list.repeats]];
  // what is in doubt only beside the rest may be left out with all that is no list
  if (
    first.doubts.every((doubt) => isLoose(doubt) || isListed(doubt, list, catalogue)) &&
    !list.rest.some((piece) => mayBear(piece, list, bears))
  )
    ways.push([...list.notes, ...list.repeats, ...list.rest]);
  for (const gone of ways) {
    if (gone.length === 0) continue;
    const reading = read(
      cut(
        post,
        gone.toSorted((a, b) => a.from - b.from),
      ).text,
    );
    if (reading.doubts.length === 0 && isWhole(reading, list, gone, catalogue))
      return byItsList(reading, gone, list.repeats);
  }
  return null;
}

const mostShown = 3;

/** The reading, and what was left out: the figures all of it, the words as far as a phone has room for them. */
function byItsList(reading: RecipeReading, gone: readonly Piece[], repeats: readonly Piece[]): RecipeReading {
  const told = gone.filter(
    (piece) => (/\d/.test(piece.text) || piece.reading.doubts.length > 0) && !repeats.includes(piece),
  );
  const { fates } = besideTheRecipe(
    reading,
    gone.map(({ text }) => text),
  );
  const shown = told.slice(0, mostShown).map(({ text }) => `“${shortened(text)}”`);
  const more = told.length - shown.length;
  const which = shown.length > 0 ? `: ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}` : '';
  const text = `I took the list, and left out what is written around it${which}.`;
  return { ...reading, assumptions: [...reading.assumptions, { id: 'left-out', text }], fates };
}

/** It holds the list, and its alkali fits; where it has none, no weight of the notes may be that of the alkali. */
function isWhole(reading: RecipeReading, list: List, gone: readonly Piece[], catalogue: Catalogue): boolean {
  const fat = superfatOf(reading, catalogue);
  const found = weightsOf(reading);
  if (found.size < 3 || [...list.weights].some(([key, grams]) => !isSame(found.get(key) ?? 0, grams))) return false;
  if (
    tellsOfAlkali(
      reading,
      gone.map(({ text }) => text),
      catalogue,
    )
  )
    return false;
  if (fat !== null) return fat >= usualSuperfat.least && fat <= usualSuperfat.most;
  const demand = demandOf(reading.fats, catalogue);
  return gone.every(({ text }) => gramsIn(text).every((grams) => grams < demand / 2 || grams > 2 * demand));
}
