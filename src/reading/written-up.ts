/**
 * A recipe written up: its list, and notes around it that tell of moulds, bars, costs, of how it went and of earlier
 * versions. Where the whole is in doubt, each line and sentence is read by itself. What weighs ingredients makes the
 * list; what weighs them once more must agree with it; what is in doubt by itself is a note. The list is taken where
 * its alkali fits its fats and no note may bear on what went into the pot.
 */
import type { Catalogue } from '../catalogue/types.ts';
import { superfatOf } from './plausible.ts';
import type { RecipeReading } from './reading.ts';
import { besideTheRecipe, cut, longestTalk, sentences, stretchesOf, usualSuperfat } from './talk.ts';

/** More lines and sentences than that are no recipe's. */
const mostPieces = 120;
const sameWeight = 0.011;

interface Piece {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly reading: RecipeReading;
}

type Weights = ReadonlyMap<string, number>;

/** What a reading weighs, in grams, by what it is. */
function weightsOf({ fats, after, alkali, waterGrams, liquids, acids }: RecipeReading): Weights {
  const out = new Map<string, number>();
  const add = (key: string, grams: number): void => void out.set(key, (out.get(key) ?? 0) + grams);
  for (const { id, grams } of fats) add(id, grams);
  for (const { id, grams } of after) add(`after ${id}`, grams);
  for (const { id, grams } of alkali) add(id, grams);
  for (const { id, grams } of liquids) add(id, grams);
  for (const { id, grams } of acids) add(id, grams);
  if (waterGrams !== null) add('water', waterGrams);
  return out;
}

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= sameWeight * Math.max(a, b);

/** Words by which the recipe may have become another one. */
const changed =
  /\b(?:instead|in (?:its|their|the) place|replac\w*|swap\w*|substitut\w*|exchang\w*|changed|switched|traded|subbed|ran out|forgot\w*|left out|leave out|took out|take out|(?:spooned|poured|scooped|ladled|tipped) (?:\w+ )?(?:out|off|away)|without|except|skip\w*|omit\w*|added|adding|another|extra|additional|double[ds]?|doubling|half|halve[ds]?|triple[ds]?|tripling|scal(?:ed|ing)|twice|times|edit\w*|typo|oops|whoops|mistake|mis\w+|by accident|accidentally|correct(?:ed|ion)|should (?:be|say|read|have)|meant|means|actually|sorry|only had|not enough|too much|too little|spill?(?:ed|t)|short|topp?ed|plus|also|as well|besides|remaining|in total|altogether|wrong|misread|really|in fact|turns? out|real(?:ly|ised|ized)|not \d)\b/i;

/** What is told of another batch than this one. */
const otherBatch =
  /\b(?:last time|first (?:time|try|attempt|batch|one|version)|previous\w*|earlier (?:one|version|batch)|(?:v|ver|version|rev|revision|batch|no)\.? ?(?:\d+(?:\.\d+)*|[a-d])\b\.?|next time|some ?day)/i;

/** What a figure is of that is no ingredient. */
const ofElse =
  /\b(?:yields?|makes?|made|gives?|gave|bars?|pieces?|pcs|pucks?|slices?|slabs?|rounds?|blocks?|cubes?|tins?|tubs?|m(?:o)?u?lds?|moulds?|cavit\w+|jars?|bottles?|lo(?:af|aves)|box(?:es)?|cartons?|tubes?|pots?|pans?|cookers?|buckets?|each|apiece|cur(?:ed?|ing)|weeks?|days?|hours?|hrs?|mins?|minutes?|costs?|prices?|budget|sells?|sold|label\w*|batter|dilut\w*|clarity|parts?|ph|size|cm|mm|inch(?:es)?|degrees?|trace|cut)\b|[°€$£"″]/i;

const putting =
  /\b(?:put(?:s|ting)?|mix\w*|melt\w*|stir\w*|us(?:e|ed|es|ing)|thr[eo]w\w*|toss\w*|dump\w*|dissolv\w*|blend\w*|weigh(?:ed|ing)? (?:out|off|up)|(?:pour\w*|weigh\w*|goes|go|went|going) in(?!to (?:\w+ ){0,4}(?:m(?:o)?u?lds?|moulds?|tins?|slab|lo(?:af|aves)|box\w*|tubes?|cartons?))|took|had)\b/i;

/** Of two figures nobody says which. */
const choosing = /\b(?:or|either|between|somewhere|maybe|perhaps|about which|not sure|unsure|remember)\b/i;
const priced = /\b(?:costs?|prices?|budget|sells?|sold|m(?:o)?u?lds?|moulds?)\b|[€$£]/i;

const weight = /(\d+(?:[.,]\d+)?)\s?(kg|g|gr|grams?|gms?|oz|ounces?|lbs?|pounds?)\b/gi;
const perUnit: Readonly<Record<string, number>> = { k: 1000, g: 1, o: 28.349523, l: 453.59237, p: 453.59237 };

const gramsIn = (text: string): readonly number[] =>
  [...text.matchAll(weight)].map(
    ([, figure = '', unit = '']) => Number(figure.replace(',', '.')) * (perUnit[unit.charAt(0).toLowerCase()] ?? 1),
  );

/** What a note may say of the recipe as a whole, and is kept for. */
const ofRecipe =
  /\b(?:super-?fat\w*|sf|lye discount|pur(?:e|ity)|strength|solution|stock|after the cook|water (?:ratio|to lye)|lye concentration)\b/i;

interface List {
  readonly weights: Weights;
  readonly repeats: readonly Piece[];
  readonly notes: readonly Piece[];
}

/** Paragraphs, then their lines, then their sentences. */
const partings = [/\n[^\S\n]*\n\s*/g, /\n+/g, sentences];

/** The largest pieces of a post that read without a doubt, and what is in doubt however small it is cut. */
function piecesOf(post: string, read: (text: string) => RecipeReading): readonly Piece[] {
  const within = (from: number, to: number, depth: number): readonly Piece[] => {
    const text = post.slice(from, to);
    const reading = read(text);
    const parting = partings[depth];
    if (reading.doubts.length === 0 || !parting) return [{ from, to, text, reading }];
    return stretchesOf(text, parting).flatMap((part) => within(from + part.from, from + part.to, depth + 1));
  };
  return stretchesOf(post, partings[0] ?? sentences).flatMap((part) => within(part.from, part.to, 1));
}

/** The list, what says it once more, and the notes; null where something contradicts it. */
function partsOf(pieces: readonly Piece[], read: (text: string) => RecipeReading): List | null {
  const weights = new Map<string, number>();
  const repeats: Piece[] = [];
  const notes: Piece[] = [];
  let listed = '';
  for (const piece of pieces) {
    let { reading } = piece;
    // "castor 40" has its unit from the row above
    if (listed !== '' && reading.doubts.length > 0 && reading.doubts.every(({ id }) => id === 'no-unit')) {
      const together = read(`${listed}\n${piece.text}`);
      if (together.doubts.length === 0) reading = together;
    }
    const own = new Map([...weightsOf(reading)].filter(([key]) => reading === piece.reading || !weights.has(key)));
    if (reading.doubts.length > 0) notes.push(piece);
    else if (own.size === 0) continue;
    else if ([...own.keys()].every((key) => !weights.has(key))) {
      for (const [key, grams] of own) weights.set(key, grams);
      listed += `\n${piece.text}`;
    } else if ([...own].every(([key, grams]) => isSame(weights.get(key) ?? 0, grams))) repeats.push(piece);
    else if (otherBatch.test(piece.text)) notes.push(piece);
    else return null;
  }
  return { weights, repeats, notes };
}

/** The note may tell of something that went into the pot, or did not. */
function bears({ text, reading }: Piece, weights: Weights): boolean {
  if (changed.test(text) || ofRecipe.test(text)) return true;
  const sums = [...weights.values()];
  const all = sums.reduce((sum, grams) => sum + grams, 0);
  const own = weightsOf(reading);
  if (!otherBatch.test(text) && [...own].some(([key, grams]) => !isSame(weights.get(key) ?? 0, grams))) return true;
  const strange = gramsIn(text).filter((grams) => ![...sums, all].some((one) => isSame(one, grams)));
  if (strange.length > 0 && (putting.test(text) || !ofElse.test(text))) return true;
  return reading.doubts.some(
    (doubt) =>
      !(doubt.id === 'unplaced' || doubt.id === 'no-unit' || doubt.id === 'unknown-fat') ||
      (doubt.id === 'unplaced' && choosing.test(text)) ||
      (doubt.id === 'no-unit' && /\p{L}/u.test(doubt.said) && !priced.test(text)) ||
      (doubt.id === 'unknown-fat' && strange.length > 0),
  );
}

/** The recipe by its list; null where that is none, or a note may bear on it. */
export function writtenUp(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  catalogue: Catalogue,
): RecipeReading | null {
  if (post.length > longestTalk || first.doubts.some(({ id }) => id === 'corrected')) return null;
  const pieces = piecesOf(post, read);
  if (pieces.length > mostPieces) return null;
  const list = partsOf(pieces, read);
  if (!list || list.weights.size < 3) return null;
  const gone = [...list.notes, ...list.repeats].toSorted((a, b) => a.from - b.from);
  if (gone.length === 0 || list.notes.some((note) => bears(note, list.weights))) return null;
  const reading = read(cut(post, gone).text);
  const fat = superfatOf(reading, catalogue);
  if (reading.doubts.length > 0 || fat === null) return null;
  if (fat < usualSuperfat.least || fat > usualSuperfat.most) return null;
  const found = weightsOf(reading);
  if (found.size !== list.weights.size) return null;
  if ([...list.weights].some(([key, grams]) => !isSame(found.get(key) ?? 0, grams))) return null;
  return besideTheRecipe(
    reading,
    list.notes.map(({ text }) => text),
  );
}
