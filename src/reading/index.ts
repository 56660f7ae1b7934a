import type { Catalogue } from '../catalogue/types.ts';
import { assemble } from './assemble.ts';
import { bind, settledOn } from './bind.ts';
import { itemize, type Reader } from './itemize.ts';
import { makeLexicon } from './lexicon.ts';
import type { RecipeReading } from './reading.ts';
import type { Settled } from './settle.ts';
import { makeSpeller } from './spelling.ts';

export type { Reader } from './itemize.ts';
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
  const { items: written, units, ...cut } = itemize(reader, input);
  const items = settled ? settled.items(written, cut.tokens) : written;
  const bound = bind(items, cut.tokens);
  const reading = assemble({
    ...cut,
    catalogue: reader.catalogue,
    lexicon: reader.lexicon,
    items,
    bound: settled?.rival && bound.rival ? settledOn(bound.rival) : bound,
    units: settled?.unit ? { sections: [], global: new Set([settled.unit]) } : units,
  });
  return settled ? settled.reading(reading) : reading;
}
