import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { assembleCatalogue, FILES, type RawCatalogue } from './assemble.ts';
import type { Catalogue } from './types.ts';

/** Where a bundle keeps all of `data/` in one file. */
const PACKED = 'data.json';

/** The catalogue of `dir`, or of the product itself: packed beside a bundle, else the folder `data`. */
export function loadCatalogue(dir: string = findData()): Catalogue {
  return assembleCatalogue(readRaw(dir));
}

/** The parsed files, unchecked: what a build packs into one file. */
export function readRaw(dir: string = findData()): RawCatalogue {
  const packed = join(dir, PACKED);
  if (existsSync(packed)) return readJson(packed) as RawCatalogue;
  return Object.fromEntries(FILES.map((name) => [name, readJson(join(dir, `${name}.json`))])) as RawCatalogue;
}

function readJson(path: string): unknown {
  return JSON.parse(readFileSync(path, 'utf8'));
}

function findData(): string {
  const here = dirname(fileURLToPath(import.meta.url));
  if (existsSync(join(here, PACKED))) return here;
  // From dist/ and from src/catalogue/.
  const dir = [join(here, '../data'), join(here, '../../data')].find((path) => existsSync(join(path, 'fats.json')));
  if (dir === undefined) throw new Error('The folder data is missing: it belongs beside dist.');
  return dir;
}
