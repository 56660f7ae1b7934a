/** Everything but the fats, from its JSON to the catalogue's types. */
import { type Check, type Fields, optional } from './check.ts';
import { GRADES } from './choose.ts';
import type {
  Acid,
  Additive,
  Alkali,
  Ambiguous,
  BulkDensity,
  Caution,
  Liquid,
  Scent,
  Source,
  Unheld,
} from './types.ts';

export function readSource(raw: Fields, check: Check): Source {
  const id = check.text(raw, 'id', 'source');
  return {
    id,
    title: check.text(raw, 'title', id),
    url: check.textOrNull(raw, 'url', id),
    standing: check.oneOf(raw, 'standing', ['read', 'memory', 'practice'], id),
    grade: check.oneOf(raw, 'grade', GRADES, id),
  };
}

export function readAlkali(raw: Fields, check: Check): Alkali {
  const named = check.named(raw, 'alkali');
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
    ...optional('bulkDensity', readBulk(raw, named.id, check)),
  };
}

/** Who says so, and what is to be said of it. */
const readSaid = (raw: Fields, id: string, check: Check) => ({
  ...check.provenance(raw, id),
  ...optional('note', check.textOrNull(raw, 'note', id)),
});

export function readAcid(raw: Fields, check: Check): Acid {
  const named = check.named(raw, 'acid');
  return {
    ...named,
    molarMass: check.number(raw, 'molarMass', 20, 500, named.id),
    protons: check.number(raw, 'protons', 1, 4, named.id),
    strength: check.number(raw, 'strength', 0.001, 1, named.id),
    ...optional('bulkDensity', readBulk(raw, named.id, check)),
    ...readSaid(raw, named.id, check),
  };
}

export function readLiquid(raw: Fields, fats: ReadonlyMap<string, unknown>, check: Check): Liquid {
  const named = check.named(raw, 'liquid');
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
    ...readSaid(raw, named.id, check),
  };
}

export function readAdditive(raw: Fields, check: Check): Additive {
  const named = check.named(raw, 'additive');
  return { ...named, bulkDensity: readBulk(raw, named.id, check), note: check.textOrNull(raw, 'note', named.id) };
}

function readBulk(raw: Fields, where: string, check: Check): BulkDensity | null {
  if (raw['bulkDensity'] === undefined) return null;
  const bulk = check.fields(raw['bulkDensity'], where);
  const [low, high] = check.range(bulk['range'], 0.05, 5, `${where} bulkDensity`);
  if (low === null || high === null) check.fail(where, 'bulk density is one-sided');
  return { low: low ?? 0, high: high ?? 0, ...check.provenance(bulk, where) };
}

export function readScent(raw: Fields, check: Check): Scent {
  const named = check.named(raw, 'scent');
  return { ...named, botanical: check.textOrNull(raw, 'botanical', named.id) };
}

/** What is called so, and why it cannot be taken as it stands. */
function readDoubtful(raw: Fields, kind: string, check: Check) {
  const id = check.text(raw, 'id', kind);
  return { id, names: check.texts(raw, 'names', id), why: check.text(raw, 'why', id) };
}

export function readAmbiguous(raw: Fields, check: Check): Ambiguous {
  const doubtful = readDoubtful(raw, 'ambiguous', check);
  return { ...doubtful, candidates: check.texts(raw, 'candidates', doubtful.id) };
}

export function readUnheld(raw: Fields, check: Check): Unheld {
  const doubtful = readDoubtful(raw, 'unheld', check);
  const { id } = doubtful;
  return { ...doubtful, name: check.text(raw, 'name', id), nearest: check.texts(raw, 'nearest', id) };
}

export function readCaution(raw: Fields, check: Check): readonly [string, Caution] {
  const id = check.text(raw, 'id', 'caution');
  return [id, { short: check.text(raw, 'short', id), long: check.text(raw, 'long', id), ...check.provenance(raw, id) }];
}
