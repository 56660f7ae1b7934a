/**
 * A recipe written up: its list, and notes around it that tell of moulds, bars, costs, of how it went and of earlier
 * versions. Where the whole is in doubt, each line and sentence is read by itself. What weighs ingredients makes the
 * list; what weighs them once more must agree with it; what is in doubt by itself is a note. The list is taken where
 * its alkali fits its fats and no note may bear on what went into the pot.
 */
import type { Catalogue } from '../../catalogue/types.ts';
import type { Doubt, RecipeReading } from '../reading.ts';
import { demandOf, superfatOf } from '../recipe/plausible.ts';
import { gramsOf } from '../text/weights.ts';
import { isLikewise, type Judge, mayBear, weight } from './beside-list.ts';
import { weightsOf } from './note-signs.ts';
import { isLoose, isSame, type List, listOf, type Piece, piecesOf } from './pieces.ts';
import {
  besideTheRecipe,
  cut,
  longestTalk,
  mentions,
  mostRounds,
  shortened,
  tellsOfAlkali,
  usualSuperfat,
} from './talk.ts';

/** Of a post with more doubts than that, the list is in doubt. */
const mostDoubts = 6;

const gramsIn = (text: string): readonly number[] =>
  [...text.matchAll(new RegExp(weight, 'gi'))].map(([, figure = '', unit = '']) => gramsOf(figure, unit));

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
  judge: Judge,
): RecipeReading | null {
  if (post.length > longestTalk || first.doubts.length > mostDoubts || first.doubts.some(isOfRecipe)) return null;
  const list = listOf(piecesOf(post, read));
  if (!list || [...list.notes, ...list.rest].some(({ text }) => isLikewise(text))) return null;
  if (list.notes.some((note) => mayBear(note, list, judge))) return null;
  for (const { gone, reading } of waysOf(post, list, read, first.doubts, catalogue, judge))
    if (reading.doubts.length === 0 && isWhole(reading, list, gone, catalogue))
      return byItsList(reading, gone, list.repeats);
  return null;
}

interface Way {
  readonly gone: readonly Piece[];
  readonly reading: RecipeReading;
}

/** The post without its notes, and without more and more of what is no list; the less is left out the better. */
function* waysOf(
  post: string,
  list: List,
  read: (post: string) => RecipeReading,
  doubts: readonly Doubt[],
  catalogue: Catalogue,
  judge: Judge,
): Generator<Way> {
  const without = (gone: readonly Piece[]): Way => {
    const { text } = cut(
      post,
      gone.toSorted((a, b) => a.from - b.from),
    );
    return { gone, reading: gone.length > 0 ? read(text) : { ...read(text), doubts } };
  };
  let way = without(list.notes);
  yield way;
  if (list.repeats.length > 0) {
    way = without([...list.notes, ...list.repeats]);
    yield way;
  }
  // what is in doubt only beside the rest may be left out of it: the pieces that the doubts are about, then all
  const isLeft = (doubt: Doubt): boolean => isLoose(doubt) || isListed(doubt, list, catalogue);
  if (!doubts.every(isLeft)) return;
  const bears = (piece: Piece): boolean => mayBear(piece, list, judge);
  for (let round = 0; round < mostRounds; round++) {
    const { gone, reading } = way;
    const about = list.rest.filter((piece) => !gone.includes(piece) && isAbout(piece, reading.doubts));
    if (about.length === 0 || about.some(bears)) break;
    way = without([...gone, ...about]);
    yield way;
  }
  if (!list.rest.some(bears)) yield without([...list.notes, ...list.repeats, ...list.rest]);
}

/** One of the doubts is about a word or a figure of it. */
const isAbout = ({ text }: Piece, doubts: readonly Doubt[]): boolean =>
  doubts.some((doubt) => isLoose(doubt) && 'said' in doubt && mentions(text, String(doubt.said)));

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
