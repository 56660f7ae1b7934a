import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { assembleCatalogue, FILES, type RawCatalogue } from './assemble.ts';
import { unpackCatalogue } from './pack.ts';
import type { Catalogue } from './types.ts';

/** Takes the place of `loadCatalogue` in a bundle, where the product's own catalogue lies packed beside the code. */
export function loadCatalogue(dir?: string): Catalogue {
  if (dir === undefined) return unpackCatalogue(readFileSync(join(import.meta.dirname, 'catalogue.txt'), 'latin1'));
  const read = (name: string): unknown => JSON.parse(readFileSync(join(dir, `${name}.json`), 'utf8'));
  return assembleCatalogue(Object.fromEntries(FILES.map((name) => [name, read(name)])) as RawCatalogue);
}
