/**
 * A host's own values: one JSON file that adds fats or overrides figures from a supplier's certificate, without code.
 *
 *     { "fats": [
 *       { "id": "olive-oil-virgin", "saponification": 189.6, "source": "Certificate of lot 26-014" },
 *       { "id": "emu-oil", "name": "Emu oil", "names": ["emu oil", "emu"], "saponification": [190, 200],
 *         "density": 0.915, "source": "Data sheet of the supplier, 2026" } ] }
 *
 * A figure is a number, or `[low, high]`; it replaces the range in use, since a certificate speaks of the very lot.
 * Saponification in mg KOH/g, iodine in g/100 g, density in g/mL, melting in °C, unsaponifiable matter and fatty acids
 * in per cent, as labels and certificates give them. Every answer that rests on such a figure names it.
 */
import { readFileSync } from 'node:fs';
import { CatalogueError, Check, type Fields } from './check.ts';
import { arrangeNames, foldName, spaced } from './names.ts';
import type { Catalogue, Chosen, Datum, Fat, FatKind, FattyAcidProfile, NameHit, Source } from './types.ts';

/** What may be set, with its bounds in the file's unit, and what that is in the catalogue's. */
const quantities = {
  saponification: { least: 20, most: 600, scale: 1 },
  iodine: { least: 0, most: 250, scale: 1 },
  density: { least: 0.8, most: 1.05, scale: 1 },
  melting: { least: -60, most: 120, scale: 1 },
  unsaponifiable: { least: 0, most: 100, scale: 0.01 },
} as const;
type Quantity = keyof typeof quantities;
const keys = Object.keys(quantities) as readonly Quantity[];
const kinds: readonly FatKind[] = ['triglyceride', 'wax-ester', 'wax', 'fatty-acid'];
const known: ReadonlySet<string> = new Set([
  'id',
  'name',
  'names',
  'kind',
  'inci',
  'latin',
  'source',
  'at',
  'note',
  'acids',
  ...keys,
]);

/**
 * The catalogue with the values of a host's file.
 * @throws CatalogueError with everything that is wrong in the file; a system error where it cannot be read
 */
export function withLocalFile(catalogue: Catalogue, path: string): Catalogue {
  let raw: unknown;
  const text = readFileSync(path, 'utf8');
  try {
    raw = JSON.parse(text);
  } catch (error) {
    throw new CatalogueError([`${path}: is no JSON: ${error instanceof Error ? error.message : String(error)}`]);
  }
  return withLocal(catalogue, raw);
}

/** @throws CatalogueError with everything that is wrong */
export function withLocal(catalogue: Catalogue, raw: unknown): Catalogue {
  const check = new Check();
  const sources = new Map(catalogue.sources);
  const fats = new Map(catalogue.fats);
  const byName = namesOf(catalogue);
  const seen = new Set<string>();
  for (const item of check.list(check.fields(raw, 'file')['fats'], 'fats')) {
    const fields = check.fields(item, 'fat');
    const id = check.text(fields, 'id', 'fat');
    if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) check.fail(id, 'an id holds small letters, digits and hyphens');
    if (seen.has(id)) check.fail(id, 'is listed twice');
    seen.add(id);
    for (const key of Object.keys(fields)) if (!known.has(key)) check.fail(id, `"${key}" is nothing that can be set`);
    const source: Source = {
      id: `local-${id}`,
      title: check.text(fields, 'source', id),
      url: null,
      standing: 'read',
      grade: 'secondary',
      local: true,
    };
    sources.set(source.id, source);
    const old = catalogue.fats.get(id);
    const fat = old ? { ...old, ...set(fields, old, source, check) } : added(fields, id, source, check);
    fats.set(id, fat);
    addNames(fat, old ? check.texts(fields, 'names', id) : fat.names, byName, check);
  }
  if (check.problems.length > 0) throw new CatalogueError(check.problems);
  const unheld = catalogue.unheld.filter(({ id }) => !seen.has(id));
  return { ...catalogue, version: `${catalogue.version}+local`, sources, fats, unheld, ...arrangeNames(byName) };
}

/** The figures that the file sets, in front of those that were held. */
function set(
  fields: Fields,
  old: Fat | null,
  source: Source,
  check: Check,
): Partial<Record<Quantity, Chosen>> & { acids?: FattyAcidProfile } {
  const id = source.id.replace(/^local-/, '');
  const locator = check.textOrNull(fields, 'at', id) ?? 'as the host gives it';
  const out: Partial<Record<Quantity, Chosen>> = {};
  for (const key of keys) {
    const given = fields[key];
    if (given === undefined) continue;
    const { least, most, scale } = quantities[key];
    const range = typeof given === 'number' ? [given, given] : given;
    const [low, high] = check.range(range, least, most, `${id} ${key}`);
    if (low === null || high === null) {
      check.fail(`${id} ${key}`, 'needs both ends');
      continue;
    }
    const datum: Datum = {
      low: low * scale,
      high: high * scale,
      source: source.id,
      locator,
      grade: source.grade,
      fromMemory: false,
    };
    out[key] = {
      low: low * scale,
      high: high * scale,
      nominal: ((low + high) / 2) * scale,
      taken: 0,
      why: `Set by this host: ${source.title}.`,
      entries: [datum, ...(old?.[key]?.entries ?? [])],
      fromMemory: false,
    };
  }
  const acids = acidsOf(fields, id, source, locator, check);
  return acids ? { ...out, acids } : out;
}

function acidsOf(fields: Fields, id: string, source: Source, locator: string, check: Check): FattyAcidProfile | null {
  if (fields['acids'] === undefined) return null;
  const percents = check.fields(fields['acids'], `${id} acids`);
  const names = Object.keys(percents);
  const total = names.reduce((sum, name) => sum + check.number(percents, name, 0, 100, `${id} acids`), 0);
  // certificates leave out traces
  if (!(total > 90 && total <= 101)) check.fail(`${id} acids`, `make ${total} %, not about 100`);
  const typical = Object.fromEntries(names.map((name) => [name, Number(percents[name]) / total]));
  return { typical, ranges: {}, source: source.id, locator, fromMemory: false };
}

function added(fields: Fields, id: string, source: Source, check: Check): Fat {
  const figures = set(fields, null, source, check);
  const { saponification = null } = figures;
  if (!saponification) check.fail(id, 'is new and needs a saponification value');
  const names = check.texts(fields, 'names', id);
  if (names.length === 0) check.fail(id, 'is new and needs names');
  const name = check.text(fields, 'name', id);
  return {
    id,
    name,
    names,
    latin: check.textOrNull(fields, 'latin', id),
    kind: fields['kind'] === undefined ? 'triglyceride' : check.oneOf(fields, 'kind', kinds, id),
    inci: { name: check.textOrNull(fields, 'inci', id) ?? name, sodiumSoap: null, potassiumSoap: null },
    saponification: saponification ?? nothing,
    iodine: figures.iodine ?? null,
    unsaponifiable: figures.unsaponifiable ?? null,
    density: figures.density ?? null,
    melting: figures.melting ?? null,
    acids: figures.acids ?? null,
    note: check.textOrNull(fields, 'note', id),
  };
}

const nothing: Chosen = { low: 0, high: 0, nominal: 0, taken: 0, why: '', entries: [], fromMemory: false };

/** Every name held, under its key. */
const namesOf = ({ byFirstWord }: Catalogue): Map<string, NameHit> =>
  new Map([...byFirstWord.values()].flat().map(({ name, kind, id, how }) => [name, { kind, id, how }]));

/** A name may be taken from a fat that no value was held for, and from nothing else. */
function addNames({ id }: Fat, names: readonly string[], byName: Map<string, NameHit>, check: Check): void {
  for (const name of names) {
    const key = typeof name === 'string' ? spaced(foldName(name)) : '';
    const owner = byName.get(key);
    if (key === '') check.fail(id, `${JSON.stringify(name)} is no name`);
    else if (owner && owner.id !== id && owner.kind !== 'unheld')
      check.fail(id, `the name "${name}" belongs to ${owner.id}`);
    else byName.set(key, { kind: 'fat', id, how: 'name' });
  }
  for (const [key, hit] of byName)
    if (hit.kind === 'unheld' && hit.id === id) byName.set(key, { kind: 'fat', id, how: 'name' });
}
