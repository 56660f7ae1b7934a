import { loadCatalogue } from '../../src/catalogue/load.ts';
import { makeReader, readRecipe } from '../../src/reading/index.ts';

const reader = makeReader(loadCatalogue());

/** What a post has in the pot, in whole grams by ids, and what it is asked about. */
export function potOf(text: string): {
  readonly grams: Readonly<Record<string, number>>;
  readonly doubts: readonly string[];
} {
  const { fats, alkali, waterGrams, doubts } = readRecipe(reader, text);
  const all = [...fats, ...alkali, { id: 'water', grams: waterGrams }];
  return {
    grams: Object.fromEntries(all.map(({ id, grams }) => [id, Math.round(grams ?? 0)])),
    doubts: doubts.map(({ id }) => id),
  };
}
