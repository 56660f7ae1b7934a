/** Loads and checks `data/heat/`, at the first question that needs it. */
import { type RawHeat, readHeat } from './heat-files.ts';
import type { HeatData, ScentComponent, ScentOil, VesselMaterial } from './heat-types.ts';
import type { Source } from './types.ts';

const byId = <T extends { readonly id: string }>(rows: readonly T[]): ReadonlyMap<string, T> =>
  new Map(rows.map((row) => [row.id, row]));

/**
 * What is wrong with the data, one line each: a datum without source, locator or an honest `fromMemory`, a source that
 * nobody lists, a range that is upside down, a table that does not rise, a reference to nothing, a name used twice.
 */
export function heatDefects(data: RawHeat): readonly string[] {
  const defects: string[] = [];
  const known = new Set(data.sources.sources.map((source) => source.id));
  const visit = (node: unknown, path: string): void => {
    if (typeof node === 'number' && !Number.isFinite(node)) defects.push(`${path}: not a number`);
    if (Array.isArray(node)) {
      for (const [index, item] of node.entries()) visit(item, `${path}[${index}]`);
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const record = node as Record<string, unknown>;
    const figures = ['value', 'low', 'high', 'nominal', 'points'].some((key) => key in record);
    if (figures || 'source' in record) {
      if (typeof record['source'] !== 'string' || !known.has(record['source'])) defects.push(`${path}: no such source`);
      if (typeof record['locator'] !== 'string' || !record['locator']) defects.push(`${path}: no locator`);
      if (typeof record['fromMemory'] !== 'boolean') defects.push(`${path}: fromMemory unsaid`);
    }
    const { low, nominal, high } = record as { low?: number; nominal?: number; high?: number };
    if (low !== undefined && high !== undefined && (low > high || (nominal ?? low) < low || (nominal ?? high) > high))
      defects.push(`${path}: range upside down`);
    for (const [key, child] of Object.entries(record)) visit(child, `${path}.${key}`);
  };
  for (const [name, part] of Object.entries(data)) if (name !== 'sources') visit(part, name);

  const rising = (path: string, points: readonly (readonly number[])[]): void => {
    for (let i = 1; i < points.length; i += 1) {
      if ((points[i]?.[0] ?? 0) <= (points[i - 1]?.[0] ?? 0)) defects.push(`${path}: does not rise at ${i}`);
    }
  };
  rising('naoh.crystallises', data.naoh.crystallises.points);
  rising('naoh.solubility', data.naoh.solubility.points);
  rising('koh.heatOfSolution', data.koh.heatOfSolution.points);
  rising('koh.crystallises', data.koh.crystallises.points);
  rising('koh.solubility', data.koh.solubility.points);
  rising('water.heatCapacity', data.water.heatCapacity.points);
  rising('water.vapourPressure', data.water.vapourPressure.points);
  rising('air.table', data.air.table.points);

  const material = new Set(data.materials.materials.map((entry) => entry.id));
  for (const pot of data.pots.pots) if (!material.has(pot.material)) defects.push(`pot ${pot.id}: no ${pot.material}`);
  const oils = new Set(data.scents.oils.map((oil) => oil.id));
  const components = new Set(data.components.components.map((component) => component.id));
  for (const oil of data.scents.oils)
    if ('vapour' in oil && !components.has(oil.vapour)) defects.push(`oil ${oil.id}: no component ${oil.vapour}`);
  for (const entry of data.allergens.entries)
    for (const oil of entry.oils) if (!oils.has(oil)) defects.push(`allergen ${entry.inci}: no oil ${oil}`);
  for (const rows of [data.pots.pots, data.materials.materials]) {
    const taken = new Map<string, string>();
    for (const { id, names } of rows) {
      for (const name of names) {
        if (taken.has(name)) defects.push(`${name}: both ${taken.get(name)} and ${id}`);
        taken.set(name, id);
      }
    }
  }
  return defects;
}

let loaded: HeatData | undefined;

/** Checked once in a process; a defect is a bug in the data, not a user's error. */
export function loadHeat(): HeatData {
  if (loaded) return loaded;
  const raw = readHeat();
  const defects = heatDefects(raw);
  if (defects.length > 0) throw new Error(`data/heat: ${defects.join('; ')}`);
  const { sources, naoh, koh, water, fat, air, materials, pots, scents, components, allergens, cook } = raw;
  loaded = {
    sources: byId(sources.sources as readonly Source[]),
    naoh: naoh as unknown as HeatData['naoh'],
    koh: koh as unknown as HeatData['koh'],
    water: water as unknown as HeatData['water'],
    fat: fat as HeatData['fat'],
    air: air as HeatData['air'],
    materials: byId(materials.materials as readonly VesselMaterial[]),
    pots: pots as unknown as HeatData['pots'],
    oils: byId(scents.oils as unknown as readonly ScentOil[]),
    components: byId(components.components as readonly ScentComponent[]),
    allergens: allergens.entries as unknown as HeatData['allergens'],
    allergenThresholds: allergens.thresholds,
    cook: cook as unknown as HeatData['cook'],
  };
  return loaded;
}
