import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type air from '../../data/heat/air.json';
import type allergens from '../../data/heat/allergens.json';
import type cook from '../../data/heat/cook-stages.json';
import type fat from '../../data/heat/fat-properties.json';
import type water from '../../data/heat/ice-water.json';
import type koh from '../../data/heat/koh-solution.json';
import type naoh from '../../data/heat/naoh-solution.json';
import type pots from '../../data/heat/pots.json';
import type components from '../../data/heat/scent-components.json';
import type scents from '../../data/heat/scents-flash.json';
import type sources from '../../data/heat/sources.json';
import type materials from '../../data/heat/vessel-materials.json';

/** `data/heat/` as it lies there, unchecked. */
export interface RawHeat {
  readonly sources: typeof sources;
  readonly naoh: typeof naoh;
  readonly koh: typeof koh;
  readonly water: typeof water;
  readonly fat: typeof fat;
  readonly air: typeof air;
  readonly materials: typeof materials;
  readonly pots: typeof pots;
  readonly scents: typeof scents;
  readonly components: typeof components;
  readonly allergens: typeof allergens;
  readonly cook: typeof cook;
}

const files: Readonly<Record<keyof RawHeat, string>> = {
  sources: 'sources',
  naoh: 'naoh-solution',
  koh: 'koh-solution',
  water: 'ice-water',
  fat: 'fat-properties',
  air: 'air',
  materials: 'vessel-materials',
  pots: 'pots',
  scents: 'scents-flash',
  components: 'scent-components',
  allergens: 'allergens',
  cook: 'cook-stages',
};

/** Read when asked for, so that no other question pays for it. A bundle has it in one file, see `heat-packed.ts`. */
export function readHeat(): RawHeat {
  const folder = join(import.meta.dirname, '../../data/heat');
  const read = (name: string): unknown => JSON.parse(readFileSync(join(folder, `${name}.json`), 'utf8'));
  return Object.fromEntries(Object.entries(files).map(([part, name]) => [part, read(name)])) as unknown as RawHeat;
}
