import { openSync, readFileSync, readSync } from 'node:fs';
import { join } from 'node:path';
import { assembleCatalogue, FILES, type RawCatalogue } from './assemble.ts';
import { type Read, unpackCatalogue } from './pack.ts';
import type { Catalogue } from './types.ts';

/** The file stays open: a build puts another in its place, and who has this one goes on reading it. */
function reader(path: string): Read {
  const file = openSync(path, 'r');
  return (from, length) => {
    const bytes = Buffer.allocUnsafe(length);
    if (readSync(file, bytes, 0, length, from) !== length) throw new Error(`${path} is cut short`);
    return bytes.toString('latin1');
  };
}

/** Takes the place of `loadCatalogue` in a bundle, where the product's own catalogue lies packed beside the code. */
export function loadCatalogue(dir?: string): Catalogue {
  if (dir === undefined) return unpackCatalogue(reader(join(import.meta.dirname, 'catalogue.txt')));
  const read = (name: string): unknown => JSON.parse(readFileSync(join(dir, `${name}.json`), 'utf8'));
  return assembleCatalogue(Object.fromEntries(FILES.map((name) => [name, read(name)])) as RawCatalogue);
}
