/** Names for a text that somebody may paste back: each is one that the reader takes for the very same thing. */
import type { Named } from '../catalogue/types.ts';
import { type Reader, readRecipe } from '../reading/index.ts';
import { capital, inSentence } from './phrases.ts';

type Shelf = 'fats' | 'liquids' | 'acids';

const known = new WeakMap<Named, string>();

export function plainName(item: Named, shelf: Shelf, reader: Reader): string {
  let name = known.get(item);
  if (name === undefined) {
    const full = inSentence(item.name);
    const bare = item.names.filter((one) => !/\d/.test(one));
    const candidates = /\d/.test(full) ? [...bare, full, ...item.names] : [full, ...bare, ...item.names];
    name = candidates.find((one) => readsBack(one, item.id, shelf, reader)) ?? inSentence(item.name);
    known.set(item, name);
  }
  return name;
}

/** Alone on a line, as the summary writes it. */
function readsBack(name: string, id: string, shelf: Shelf, reader: Reader): boolean {
  const reading = readRecipe(
    reader,
    `Olive oil: 500 g\n${capital(name)}: 123 g (4.34 oz)\nSodium hydroxide (NaOH): 70 g`,
  );
  const found = reading[shelf].some(
    (one) => one.id === id && Math.abs(one.grams - (id === 'olive-oil-virgin' ? 623 : 123)) < 0.5,
  );
  return found && reading.doubts.every(({ id: doubt }) => doubt === 'implausible');
}
