import { CatalogueError, Check, type Fields, optional } from './check.ts';
import { GRADES } from './choose.ts';
import { readFat, readNamed } from './fats.ts';
import { foldName } from './names.ts';
import type {
  Acid,
  Additive,
  Alkali,
  AlkaliId,
  Ambiguous,
  Catalogue,
  Caution,
  ItemKind,
  Liquid,
  Named,
  NameHit,
  Scent,
  Source,
  Unheld,
} from './types.ts';

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

/** Each file's parsed JSON under its name; also the shape of the one file that a bundle carries. */
export type RawCatalogue = Readonly<Record<(typeof FILES)[number], unknown>>;

/**
 * Builds and checks the catalogue from parsed files: shapes, bounds, low ≤ high, every source listed, fatty acids
 * summing to 100 %, unique ids, no name claimed by two items.
 * @throws CatalogueError with all problems found
 */
export function assembleCatalogue(raw: RawCatalogue): Catalogue {
  const check = new Check();
  const items = (file: (typeof FILES)[number]): readonly Fields[] =>
    check.list(check.fields(raw[file], file)[file], file).map((item) => check.fields(item, file));

  check.sources = keyed(
    items('sources').map((item) => readSource(item, check)),
    check,
  );
  const fats = keyed(
    items('fats').map((item) => readFat(item, check)),
    check,
  );
  const catalogue: Omit<Catalogue, 'byName'> = {
    version: check.text(check.fields(raw.fats, 'fats'), 'version', 'fats'),
    sources: check.sources,
    fats,
    alkalis: keyed(
      items('alkalis').map((item) => readAlkali(item, check)),
      check,
    ) as ReadonlyMap<AlkaliId, Alkali>,
    acids: keyed(
      items('acids').map((item) => readAcid(item, check)),
      check,
    ),
    liquids: keyed(
      items('liquids').map((item) => readLiquid(item, fats, check)),
      check,
    ),
    additives: keyed(
      items('additives').map((item) => readAdditive(item, check)),
      check,
    ),
    scents: keyed(
      items('scents').map((item) => readScent(item, check)),
      check,
    ),
    ambiguous: items('ambiguous').map((item) => readAmbiguous(item, check)),
    unheld: items('unheld').map((item) => readUnheld(item, check)),
    cautions: new Map(items('cautions').map((item) => readCaution(item, check))),
    qualifiers: check.texts(check.fields(raw.qualifiers, 'qualifiers'), 'qualifiers', 'qualifiers'),
  };
  const byName = indexNames(catalogue, check);
  if (check.problems.length > 0) throw new CatalogueError(check.problems);
  return { ...catalogue, byName };
}

function keyed<T extends { readonly id: string }>(list: readonly T[], check: Check): ReadonlyMap<string, T> {
  const map = new Map<string, T>();
  for (const item of list) {
    if (map.has(item.id)) check.fail(item.id, 'is listed twice');
    map.set(item.id, item);
  }
  return map;
}

function readSource(raw: Fields, check: Check): Source {
  const id = check.text(raw, 'id', 'source');
  return {
    id,
    title: check.text(raw, 'title', id),
    url: check.textOrNull(raw, 'url', id),
    standing: check.oneOf(raw, 'standing', ['read', 'memory', 'practice'], id),
    grade: check.oneOf(raw, 'grade', GRADES, id),
  };
}

function readAlkali(raw: Fields, check: Check): Alkali {
  const named = readNamed(raw, 'alkali', check);
  const purity = check.fields(raw['purity'], `${named.id} purity`);
  const { source, locator } = check.provenance(purity, `${named.id} purity`);
  const share = (key: string): number => check.number(purity, key, 0, 1, `${named.id} purity`);
  const [low, usual, high] = [share('low'), share('usual'), share('high')];
  if (!(low <= usual && usual <= high)) check.fail(named.id, 'purity is not low ≤ usual ≤ high');
  return {
    ...named,
    id: check.oneOf(raw, 'id', ['naoh', 'koh'], 'alkali'),
    formula: check.text(raw, 'formula', named.id),
    molarMass: check.number(raw, 'molarMass', 20, 200, named.id),
    purity: { usual, low, high, source, locator },
  };
}

function readAcid(raw: Fields, check: Check): Acid {
  const named = readNamed(raw, 'acid', check);
  return {
    ...named,
    molarMass: check.number(raw, 'molarMass', 20, 500, named.id),
    protons: check.number(raw, 'protons', 1, 4, named.id),
    strength: check.number(raw, 'strength', 0.001, 1, named.id),
    ...check.provenance(raw, named.id),
    ...optional('note', check.textOrNull(raw, 'note', named.id)),
  };
}

function readLiquid(raw: Fields, fats: ReadonlyMap<string, unknown>, check: Check): Liquid {
  const named = readNamed(raw, 'liquid', check);
  const share = (key: string): number => check.number(raw, key, 0, 100, named.id) / 100;
  const [waterShare, fatShare] = [share('water'), share('fat')];
  if (waterShare + fatShare > 1) check.fail(named.id, 'water and fat make more than 100 %');
  const fat = check.textOrNull(raw, 'countsAs', named.id);
  if (fat !== null && !fats.has(fat)) check.fail(named.id, `fat ${fat} is not held`);
  return {
    ...named,
    waterShare,
    fatShare,
    fat,
    density: check.numberOrNull(raw, 'density', 0.7, 1.6, named.id),
    sugars: raw['sugars'] === true,
    ...check.provenance(raw, named.id),
    ...optional('note', check.textOrNull(raw, 'note', named.id)),
  };
}

function readAdditive(raw: Fields, check: Check): Additive {
  const named = readNamed(raw, 'additive', check);
  const bulk = raw['bulkDensity'] === undefined ? null : check.fields(raw['bulkDensity'], named.id);
  const [low, high] = bulk ? check.range(bulk['range'], 0.05, 5, named.id) : [null, null];
  return {
    ...named,
    bulkDensity: bulk && low !== null && high !== null ? { low, high, ...check.provenance(bulk, named.id) } : null,
    note: check.textOrNull(raw, 'note', named.id),
  };
}

function readScent(raw: Fields, check: Check): Scent {
  const named = readNamed(raw, 'scent', check);
  return { ...named, botanical: check.textOrNull(raw, 'botanical', named.id) };
}

function readAmbiguous(raw: Fields, check: Check): Ambiguous {
  const id = check.text(raw, 'id', 'ambiguous');
  return {
    id,
    names: check.texts(raw, 'names', id),
    candidates: check.texts(raw, 'candidates', id),
    why: check.text(raw, 'why', id),
  };
}

function readUnheld(raw: Fields, check: Check): Unheld {
  const id = check.text(raw, 'id', 'unheld');
  return {
    id,
    name: check.text(raw, 'name', id),
    names: check.texts(raw, 'names', id),
    nearest: check.texts(raw, 'nearest', id),
    why: check.text(raw, 'why', id),
  };
}

function readCaution(raw: Fields, check: Check): readonly [string, Caution] {
  const id = check.text(raw, 'id', 'caution');
  return [id, { short: check.text(raw, 'short', id), long: check.text(raw, 'long', id), ...check.provenance(raw, id) }];
}

function indexNames(catalogue: Omit<Catalogue, 'byName'>, check: Check): ReadonlyMap<string, NameHit> {
  const byName = new Map<string, NameHit>();
  const ids = new Map<string, ItemKind>();
  const add = (kind: ItemKind, item: Omit<Named, 'name'>): void => {
    if (ids.has(item.id)) check.fail(item.id, `is the id of two items`);
    ids.set(item.id, kind);
    const hits = {
      name: { kind, id: item.id, how: 'name' },
      plain: { kind, id: item.id, how: 'plain' },
      abbreviation: { kind, id: item.id, how: 'abbreviation' },
    } as const;
    const plain = item.plain?.length ?? 0;
    const letters = item.names.length - (item.abbreviations?.length ?? 0);
    item.names.forEach((name, index) => {
      const key = foldName(name);
      const known = byName.get(key);
      if (known && known.id !== item.id) check.fail(item.id, `the name "${name}" also belongs to ${known.id}`);
      if (key === '') check.fail(item.id, `the name "${name}" is empty`);
      if (!known) byName.set(key, index < plain ? hits.plain : index < letters ? hits.name : hits.abbreviation);
    });
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
