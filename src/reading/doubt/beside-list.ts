/** Whether what is written beside a list may tell of something that went into the pot, or did not. */
import type { Weights } from './note-signs.ts';
import { isSame, type List, ofRecipe, type Piece } from './pieces.ts';

/** Whether words bear on a list, by what was learned (`bearing.ts`). */
export type Judge = (text: string, list: Weights, isDry: boolean) => boolean;

export const weight = /(\d+(?:[.,]\d+)?)\s?(kg|g|gr|grams?|gms?|oz|ounces?|lbs?|pounds?)\b/i;
/** Told of another batch, of somebody else, of no batch yet, or as a rule. */
const elsewhere =
  /\b(?:comparison(?! (?:to|with)\b)|last|next|(?:first|second|third) (?:time|try|attempt|go|batch|version|one)|earlier|previous(?:ly)?|original(?:ly)?|history|origin|years?|once(?! (?:the|it|its|all|everything|i|we|that|this|my|\d)\b)|used to|old(?:er)?|(?:versions?|v\d\S*) (?:had|was|used|took|called)|batch(?:es)?|trial|some ?day|(?:would|could)(?! i\b)|maybe|might|she|he|they|her|his|hers|their|sister|mother|aunt|friend|neighbour|per|maximum|at most)\b/i;

/** Of two figures nobody says which. */
const choosing =
  /\b(?:or(?! (?:so|two|three|more)\b)|either|between|somewhere|maybe|perhaps|about which|not sure|unsure|remember)\b/i;
/** A bare figure beside a name is a price, a count, a part of what is mixed, or how warm it is. */
const priced =
  /\b(?:costs?|prices?|budget|sells?|sold|mou?lds?|dilut\w*|parts?)\b|[€$£]|\b(?:at|to|below|around) (?:about )?\d{2,3}(?! ?\p{L})/iu;
const sentenceEnd = /(?<=[.!?;…])\s+|\n+/;

/** What a weight is of that is no ingredient's. */
const ofElse =
  /\b(?:yields?|makes?|made|gives?|gave|bars?|pieces?|pcs|pucks?|slices?|slabs?|rounds?|blocks?|cubes?|tins?|tubs?|mou?lds?|cavit\w+|jars?|bottles?|lo(?:af|aves)|box(?:es)?|cartons?|tubes?|pots?|pans?|cookers?|buckets?|each|apiece|cur(?:ed?|ing)|costs?|prices?|budget|sells?|sold|label\w*|batter|dilut\w*|cut)\b|[€$£]/i;

/** "My sister puts 20 g more in hers. I did too.", "so I took 150 g": what is told of others is of this pot, too. */
const likewise =
  /^\W*(?:and |but |so )?(?:i|we) (?:did|do|have|will|am|copied|followed|went)(?:n['’]?t)?\b[^.!?]{0,24}\W*$|\b(?:likewise|me too)\b|\bso (?:i|we) (?:do|did|took|take|use|used|put|added|add|went|made|have|had|will|am|copied|followed)\b/i;
export const isLikewise = (text: string): boolean => text.split(sentenceEnd).some((one) => likewise.test(one));

/** What came of it. */
const ofSoap = /\b(?:bars?|pieces?|slices?|mou?lds?|cavit\w+|each|apiece|yields?|label\w*)\b/i;

/** How a pot looks, and when something goes in that the alkali leaves alone. */
const ofCook = /\b(?:cook(?:ed)?|jelly|mash\w*|translucent|zap\w*|tongue|porridge|custard|apple ?sauce)\b/i;

/** Fewer words are a row rather than a note. */
const fewestWords = 4;

/** "1. 145 into 300", where the list has so much water and other lye. */
function isAtOdds(text: string, weights: Weights): boolean {
  const lye = weights.get('naoh') ?? weights.get('koh');
  const water = weights.get('water');
  if (lye === undefined || water === undefined) return false;
  return [...text.matchAll(intoEachOther)].some(
    ([, a, b]) => isSame(Number(a), lye) !== isSame(Number(b), water) && Number(a) < Number(b),
  );
}
const intoEachOther = /(?<![\d.,:])(\d{2,4}) ?g? (?:in|into) (?:the )?(\d{2,4})\b(?![.,:]\d)/g;

/** "I've swapped the two fats: lard 620, olive 330." */
const turnedRound =
  /\b(?:wrong way (?:a?round|about)|other way (?:a?round|about)|vice versa|(?:swapped|switched|mixed up|muddled|transposed|reversed) (?:the|those|these|my|both|two)\b)/i;

export function mayBear({ text, reading, from, ...own }: Piece, { weights, last, isDry }: List, judge: Judge): boolean {
  if (isAtOdds(text, weights) || turnedRound.test(text)) return true;
  if (ofRecipe.test(text) || (from < last && ofCook.test(text))) return true;
  const differing = [...own.weights].filter(([key, grams]) => !isSame(weights.get(key) ?? 0, grams));
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
  return isUnclear || judge(text, weights, isDry);
}
