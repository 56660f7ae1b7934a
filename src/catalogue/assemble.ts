import { CatalogueError, Check, type Fields } from './check.ts';
import { isEveryday } from './everyday.ts';
import { readFat } from './fats.ts';
import {
  readAcid,
  readAdditive,
  readAlkali,
  readAmbiguous,
  readCaution,
  readLiquid,
  readScent,
  readSource,
  readUnheld,
} from './items.ts';
import { arrangeNames, foldName } from './names.ts';
import type { Alkali, AlkaliId, Catalogue, ItemKind, Named, NameHit } from './types.ts';

/** The files of `data/` that make the catalogue. */
export const FILES = [
  'sources',
  'fats',
  'alkalis',
  'acids',
  'liquids',
  'additives',
  'scents',
  'ambiguous',
  'unheld',
  'qualifiers',
  'cautions',
] as const;

/** Each file's parsed JSON under its name. */
export type RawCatalogue = Readonly<Record<(typeof FILES)[number], unknown>>;

/**
 * Builds and checks the catalogue from parsed files: shapes, bounds, low ≤ high, every source listed, fatty acids
 * summing to 100 %, unique ids, no name claimed by two items.
 * @throws CatalogueError with all problems found
 */
export function assembleCatalogue(raw: RawCatalogue): Catalogue {
  const check = new Check();
  const read = <T>(file: (typeof FILES)[number], one: (item: Fields, check: Check) => T): readonly T[] =>
    check.list(check.fields(raw[file], file)[file], file).map((item) => one(check.fields(item, file), check));
  const keyed = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> => {
    const map = new Map<string, T>();
    for (const item of list) {
      if (map.has(item.id)) check.fail(item.id, 'is listed twice');
      map.set(item.id, item);
    }
    return map;
  };

  check.sources = keyed(read('sources', readSource));
  const inciSource = check.text(check.fields(raw.fats, 'fats'), 'inciSource', 'fats');
  if (!check.sources.has(inciSource)) check.fail('fats', `source ${inciSource} is not listed`);
  const fats = keyed(read('fats', (item) => readFat(item, inciSource, check)));
  const catalogue: Held = {
    version: check.text(check.fields(raw.fats, 'fats'), 'version', 'fats'),
    sources: check.sources,
    fats,
    alkalis: keyed(read('alkalis', readAlkali)) as ReadonlyMap<AlkaliId, Alkali>,
    acids: keyed(read('acids', readAcid)),
    liquids: keyed(read('liquids', (item) => readLiquid(item, fats, check))),
    additives: keyed(read('additives', readAdditive)),
    scents: keyed(read('scents', readScent)),
    ambiguous: read('ambiguous', readAmbiguous),
    unheld: read('unheld', readUnheld),
    cautions: new Map(read('cautions', readCaution)),
    qualifiers: check.texts(check.fields(raw.qualifiers, 'qualifiers'), 'qualifiers', 'qualifiers'),
  };
  const byName = indexNames(catalogue, check);
  if (check.problems.length > 0) throw new CatalogueError(check.problems);
  return { ...catalogue, ...arrangeNames(byName), isEveryday };
}

/** The catalogue but for the ways to find a name. */
type Held = Omit<Catalogue, 'byFirstWord' | 'byWords' | 'nameWords' | 'numerals' | 'isEveryday'>;

function indexNames(catalogue: Held, check: Check): ReadonlyMap<string, NameHit> {
  const byName = new Map<string, NameHit>();
  const ids = new Map<string, ItemKind>();
  const add = (kind: ItemKind, item: Omit<Named, 'name'>): void => {
    const { id, names } = item;
    if (ids.has(id)) check.fail(id, 'is the id of two items');
    ids.set(id, kind);
    const plain = item.plain?.length ?? 0;
    const letters = names.length - (item.abbreviations?.length ?? 0);
    let hit: NameHit | undefined;
    for (let index = 0; index < names.length; index += 1) {
      const name: unknown = names[index];
      if (typeof name !== 'string') {
        check.fail(id, `${JSON.stringify(name)} is no name`);
        continue;
      }
      const how = index < plain ? 'plain' : index < letters ? 'name' : 'abbreviation';
      if (hit?.how !== how) hit = { kind, id, how };
      const key = foldName(name);
      const known = byName.get(key);
      if (known === undefined) byName.set(key, hit);
      else if (known.id !== id) check.fail(id, `the name "${name}" also belongs to ${known.id}`);
      if (key === '') check.fail(id, `the name "${name}" is empty`);
    }
  };
  for (const item of catalogue.fats.values()) add('fat', item);
  for (const item of catalogue.alkalis.values()) add('alkali', item);
  for (const item of catalogue.acids.values()) add('acid', item);
  for (const item of catalogue.liquids.values()) add('liquid', item);
  for (const item of catalogue.additives.values()) add('additive', item);
  for (const item of catalogue.scents.values()) add('scent', item);
  for (const item of catalogue.ambiguous) add('ambiguous', item);
  for (const item of catalogue.unheld) add('unheld', item);
  for (const item of catalogue.ambiguous) {
    for (const id of item.candidates) if (!ids.has(id)) check.fail(item.id, `candidate ${id} is not held`);
  }
  for (const item of catalogue.unheld) {
    for (const id of item.nearest) if (!catalogue.fats.has(id)) check.fail(item.id, `relative ${id} is not a fat held`);
  }
  return byName;
}
