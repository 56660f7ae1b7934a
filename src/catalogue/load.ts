import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import acids from '../../data/acids.json' with { type: 'json' };
import additives from '../../data/additives.json' with { type: 'json' };
import alkalis from '../../data/alkalis.json' with { type: 'json' };
import ambiguous from '../../data/ambiguous.json' with { type: 'json' };
import cautions from '../../data/cautions.json' with { type: 'json' };
import fats from '../../data/fats.json' with { type: 'json' };
import liquids from '../../data/liquids.json' with { type: 'json' };
import qualifiers from '../../data/qualifiers.json' with { type: 'json' };
import scents from '../../data/scents.json' with { type: 'json' };
import sources from '../../data/sources.json' with { type: 'json' };
import unheld from '../../data/unheld.json' with { type: 'json' };
import { assembleCatalogue, FILES, type RawCatalogue } from './assemble.ts';
import type { Catalogue } from './types.ts';

/** The product's own data, unchecked. */
export const RAW: RawCatalogue = {
  sources,
  fats,
  alkalis,
  acids,
  liquids,
  additives,
  scents,
  ambiguous,
  unheld,
  qualifiers,
  cautions,
};

/**
 * The catalogue of the product, or of another folder that holds the same files. A bundle opens it checked and packed.
 * @throws CatalogueError with everything that is wrong in the data
 */
export function loadCatalogue(dir?: string): Catalogue {
  return assembleCatalogue(dir === undefined ? RAW : readRaw(dir));
}

function readRaw(dir: string): RawCatalogue {
  const read = (name: string): unknown => JSON.parse(readFileSync(join(dir, `${name}.json`), 'utf8'));
  return Object.fromEntries(FILES.map((name) => [name, read(name)])) as RawCatalogue;
}
