/**
 * A recipe written up: its list, and notes around it that tell of moulds, bars, costs, of how it went and of earlier
 * versions. Where the whole is in doubt, each line and sentence is read by itself. What weighs ingredients makes the
 * list; what weighs them once more must agree with it; what is in doubt by itself is a note. The list is taken where
 * its alkali fits its fats and no note may bear on what went into the pot.
 */
import type { Catalogue } from '../../catalogue/types.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { demandOf, superfatOf } from '../recipe/plausible.ts';
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
  /\b(?:instead|in (?:its|their|the) place|replac\w*|swap\w*|substitut\w*|exchang\w*|changed|switched|traded|subbed|ran out|forgot\w*|left out|leave out|took out|take out|(?:spooned|poured|scooped|ladled|tipped) (?:\w+ )?(?:out|off|away)|without|except|skip\w*|omit\w*|added|adding|another|extra|additional|double[ds]?(?! boilers?\b)|doubling|half|halve[ds]?|triple[ds]?|tripling|scal(?:ed|ing)|twice|(?<!\d\+? ?)times|times (?:as|the|this|that|of|it)|edit\w*|typo|oops|whoops|mistake|mis\w+|by accident|accidentally|correct(?:ed|ion)|should (?:be|say|read|have)|meant|means|actually|sorry|only had|not enough|too much|too little|spill?(?:ed|t)|short|topp?ed|plus|also|as well|besides|remaining|in total|altogether|wrong|misread|really|in fact|turns? out|real(?:ly|ised|ized)|not \d)\b/i;

/** What is told of another batch than this one. */
const otherBatch =
  /\b(?:last time|(?:first|second|third) (?:try|attempt|version|go)|previous(?:ly)?|earlier (?:one|version|batch)|next time|some ?day)\b/i;

/** What a figure is of that is no ingredient. */
const ofElse =
  /\b(?:yields?|makes?|made|gives?|gave|bars?|pieces?|pcs|pucks?|slices?|slabs?|rounds?|blocks?|cubes?|tins?|tubs?|mou?lds?|cavit\w+|jars?|bottles?|lo(?:af|aves)|box(?:es)?|cartons?|tubes?|pots?|pans?|cookers?|buckets?|each|apiece|cur(?:ed?|ing)|weeks?|wks?|days?|hours?|hrs?|mins?|minutes?|costs?|prices?|budget|sells?|sold|label\w*|batter|dilut\w*|clarity|parts?|ph|size|cm|mm|inch(?:es)?|degrees?|trace|cut)\b|[°€$£"″]/i;

const putting =
  /\b(?:put(?:s|ting)?|mix\w*|melt\w*|stir\w*|us(?:e|ed|es|ing)|thr[eo]w\w*|toss\w*|dump\w*|dissolv\w*|blend\w*|weigh(?:ed|ing)? (?:out|off|up)|(?:pour\w*|weigh\w*|goes|go|went|going) in(?!to (?:\w+ ){0,4}(?:mou?lds?|tins?|slab|lo(?:af|aves)|box\w*|tubes?|cartons?))|took|had)\b/i;

/** Of two figures nobody says which. */
const choosing = /\b(?:or|either|between|somewhere|maybe|perhaps|about which|not sure|unsure|remember)\b/i;
/** A bare figure beside a name is a price, a count, or a part of what is mixed. */
const priced = /\b(?:costs?|prices?|budget|sells?|sold|mou?lds?|dilut\w*|parts?)\b|[€$£]/i;

const weight = /(\d+(?:[.,]\d+)?)\s?(kg|g|gr|grams?|gms?|oz|ounces?|lbs?|pounds?)\b/i;
/** Weights in words, which are not compared. */
const wordedWeight =
  /\b(?:hundred|[a-z]+ty|ten|eleven|twelve|[a-z]+teen)\b[\w ]{0,12} (?:kg|g|grams?|oz|ounces?|pounds?)\b/i;
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
function* piecesOf(
  post: string,
  { assumptions }: RecipeReading,
  read: (text: string) => RecipeReading,
): Generator<Piece> {
  const unit =
    unitOfAll.exec(post)?.slice(1).find(Boolean) ??
    assumptions.map(({ text }) => asTheRest.exec(text)?.[1]).find((one) => one !== undefined);
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

/** What a row without a unit was taken in. */
const asTheRest = /\bin (g|oz), as the rest/;

/** "All grams", "(g)": the unit of every line. */
const unitOfAll =
  /\b(?:all|everything|amounts?|weights?)\b(?: \w+){0,2} (g|grams?|oz|ounces)\b|[([](g|grams?|oz|ounces)(?: (?:all|each|of|them|everything|by weight|weight|wt))*[)\]]/i;

/** What a figure or a word is that no ingredient takes; anything else may need the rest of the post to be known. */
const isLoose = (doubt: Doubt): boolean =>
  doubt.id === 'unplaced' || doubt.id === 'unknown-fat' || (doubt.id === 'no-unit' && /\p{L}/u.test(doubt.said));

interface List {
  readonly weights: Weights;
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
    } else if ([...own.keys()].every((key) => !weights.has(key)))
      for (const [key, grams] of own) weights.set(key, grams);
    else if ([...own].every(([key, grams]) => isSame(weights.get(key) ?? 0, grams))) repeats.push(piece);
    else if (otherBatch.test(text)) notes.push(piece);
    else return null;
  }
  return { weights, repeats, notes, rest };
}

/** A piece cut into its sentences, which are in no doubt either. */
const sentencesIn = ({ from, text, reading }: Piece): readonly Piece[] =>
  stretchesOf(text, /\n+|(?<=[.!?;…])\s+/g).map((part) => ({
    from: from + part.from,
    to: from + part.to,
    text: text.slice(part.from, part.to),
    reading,
  }));

/** The note may tell of something that went into the pot, or did not. */
function bears({ text, reading }: Piece, { weights }: List): boolean {
  if (changed.test(text) || ofRecipe.test(text)) return true;
  const isOther = otherBatch.test(text);
  if (!isOther && [...weightsOf(reading)].some(([key, grams]) => !isSame(weights.get(key) ?? 0, grams))) return true;
  if (wordedWeight.test(text)) return true;
  const weighs = !isOther && weight.test(text);
  if (weighs && (putting.test(text) || !ofElse.test(text))) return true;
  return reading.doubts.some(
    (doubt) =>
      (doubt.id === 'unplaced' && choosing.test(text)) ||
      (doubt.id === 'no-unit' && !priced.test(text)) ||
      (doubt.id === 'unknown-fat' && weighs),
  );
}

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
): RecipeReading | null {
  if (post.length > longestTalk || first.doubts.length > mostDoubts || first.doubts.some(isOfRecipe)) return null;
  const list = partsOf(piecesOf(post, first, read));
  if (!list || list.notes.some((note) => bears(note, list))) return null;
  const ways = [list.notes, [...list.notes, ...list.repeats]];
  // what is in doubt only beside the rest may be left out with all that is no list; what may bear on the pot stays
  if (first.doubts.every((doubt) => isLoose(doubt) || isListed(doubt, list, catalogue))) {
    const silent = list.rest.flatMap((piece) => sentencesIn(piece)).filter((piece) => !bears(piece, list));
    ways.push([...list.notes, ...list.repeats, ...silent]);
  }
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
  if (
    found.size < (fat === null ? 2 : 3) ||
    [...list.weights].some(([key, grams]) => !isSame(found.get(key) ?? 0, grams))
  )
    return false;
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
