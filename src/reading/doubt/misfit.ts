/**
 * A sentence of talk that was read into a recipe which fits without it: "I still have 2 kg of palm in the cellar",
 * "Someday I want to try KOH". The alkali tells: with it the recipe could be none, without it it is one.
 */
import type { Catalogue } from '../../catalogue/types.ts';
import type { RecipeReading } from '../reading.ts';
import { superfatOf } from '../recipe/plausible.ts';
import { besideTheRecipe, cut, isTalk, longestTalk, mayBeIn, sentences, stretchesOf, usualSuperfat } from './talk.ts';

/** Superfat (a fraction) beyond which something else than a recipe may have been read. */
const odd = { least: -0.05, most: 0.25 };
/** Water and other liquids, as a share of the fats. */
const mostWet = 0.9;
const mostTried = 8;
/** Fats without which nothing says that the rest is whole. */
const leastFats = 2;

const sumOf = (list: readonly { readonly grams: number }[]): number => list.reduce((sum, { grams }) => sum + grams, 0);

function isOdd(reading: RecipeReading, catalogue: Catalogue): boolean {
  const fat = superfatOf(reading, catalogue);
  const wet = (reading.waterGrams ?? 0) + sumOf(reading.liquids);
  return fat !== null && (fat < odd.least || fat > odd.most || wet > mostWet * sumOf(reading.fats));
}

/** "The list says NaOH but it was KOH", "I have checked the bag: KOH flakes". */
const ofKind =
  /\b(?:says?|said|wrote|written|was|were|used|took|checked|bag|tub|label|it['’]?s|it is)\b[^.?!]{0,60}\b(?:koh|naoh|potassium|sodium)\b/i;

/** "I doubled the oils and the water, the lye stayed at 99 g". */
const ofSize =
  /\b(?:doubled|tripled|trebled|quadrupled|halved) (?:(?:up|all|both|the|my|our|of) )*(?:oils?|fats?|butters?|lye|naoh|koh|caustic|water)\b/i;

/** "EDIT: typo, the olive oil is 450 g, not 500", "it is 120 g of KOH in there": of the recipe, whatever it says. */
const putsRight = (told: string): boolean =>
  /\b(?:is|it's|there's|was) (?:\d.{0,24})?\bin (?:there|the pot)\b/i.test(told) ||
  ofSize.test(told) ||
  (ofKind.test(told) &&
    !/\b(?:some ?day|try|next|never|want|would|if|usually|place of|instead|shipped|sent|delivered)\b/i.test(told)) ||
  (/^\W*(?:edit(?:ed)?|correction|erratum|typo|oops|whoops)\b/i.test(told) && /\d/.test(told));

/** The recipe without the one sentence that makes it none; null where it is one, or no such sentence is there. */
export function withoutMisfit(
  post: string,
  first: RecipeReading,
  read: (post: string) => RecipeReading,
  catalogue: Catalogue,
): RecipeReading | null {
  if (first.fats.length < leastFats || post.length > longestTalk || !isOdd(first, catalogue)) return null;
  if (first.doubts.some(({ id }) => id !== 'implausible')) return null;
  const talk = stretchesOf(post, sentences).filter(({ from, to }) => {
    const text = post.slice(from, to);
    return /\d|\bkoh\b|potassium|potash/i.test(text) && isTalk(text) && !mayBeIn(text) && !putsRight(text);
  });
  for (const one of talk.slice(0, mostTried)) {
    const { text, gone } = cut(post, [one]);
    const rest = read(text);
    const fat = superfatOf(rest, catalogue);
    if (rest.doubts.length > 0 || rest.fats.length < leastFats || fat === null || isOdd(rest, catalogue)) continue;
    if (fat >= usualSuperfat.least && fat <= usualSuperfat.most) return besideTheRecipe(rest, gone);
  }
  return null;
}
