import type { Catalogue } from '../catalogue/types.ts';
import { cutOf, type InWords, type Reader } from './cut.ts';
import type { Settled } from './post.ts';
import type { RecipeReading } from './reading.ts';
import { assemble } from './recipe/assemble.ts';
import { bind } from './rows/bind.ts';
import { itemsOf } from './rows/items.ts';
import { areRowsAlone } from './rows-alone.ts';
import { readPost } from './worded.ts';
import { makeLexicon } from './words/lexicon.ts';
import { makeSpeller } from './words/spelling.ts';

export type { Reader } from './cut.ts';
export type { Doubt, RecipeReading } from './reading.ts';

/** Longest post that is read, in characters. */
export const longestPost = 100_000;

export function makeReader(catalogue: Catalogue): Reader {
  const lexicon = makeLexicon(catalogue);
  return { lexicon, speller: makeSpeller(() => lexicon.vocabulary().spelt), catalogue };
}

/** The reader of somebody whose cups, or whose bare degrees, are of a kind that they have said once for all. */
export const readerFor = (
  { lexicon, ...reader }: Reader,
  cup: 'us' | 'metric' | 'imperial' | undefined,
  warmth: '°C' | '°F' | undefined,
): Reader => ({
  ...reader,
  lexicon: cup === undefined || cup === 'us' ? lexicon : { ...lexicon, cup: `cup-${cup}` },
  ...(warmth === undefined ? {} : { warmth }),
});

/**
 * What a post says of one batch, with what was assumed and what stays unclear; time linear in its length. `settled`:
 * what its writer answered to doubts about it.
 */
export function readRecipe(reader: Reader, input: string, settled: Settled | null = null): RecipeReading {
  if (settled) return readPost(reader, input, settled);
  const words = cutOf(reader, input);
  return areRowsAlone(words) ? readRows(reader, words) : readPost(reader, input, null, words);
}

/** What rows say with nothing beside them. */
function readRows({ lexicon, catalogue }: Reader, words: InWords): RecipeReading {
  const items = itemsOf(words.tokens, lexicon);
  return assemble({
    ...words,
    catalogue,
    lexicon,
    items,
    dropped: new Set(),
    bound: bind(items, words.tokens, null),
    units: { sections: [], global: new Set() },
    several: { isNumbered: false, choices: () => 0 },
    back: [],
    unheard: null,
  });
}
