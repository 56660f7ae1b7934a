import { loadCatalogue } from '../../../src/catalogue/load.ts';
import type { Chosen, Fat } from '../../../src/catalogue/types.ts';
import { COMPOSITION_TOLERANCE, compositionOf } from '../../../src/engine/composition.ts';
import type { Group, Row } from '../row.ts';

const TRUSTED = ['standard', 'pharmacopoeia', 'regulation'];

function rowOf(
  fat: Fat,
  figure: 'saponification' | 'iodine',
  chosen: Chosen | null,
  titleOf: (id: string) => string,
): Row[] {
  const read = chosen?.entries[chosen.taken];
  // where another source was read that states the same, the standard itself is compared with
  const taken = chosen?.entries.find(
    (entry) => entry.low === read?.low && entry.high === read?.high && TRUSTED.includes(entry.grade),
  );
  const ours = compositionOf(fat)?.[figure].nominal;
  if (!chosen || !read || !taken || ours === undefined) return [];
  const seen = taken === read ? '' : `; read in ${titleOf(read.source)}`;
  return [
    {
      check: `${fat.name}: ${figure} value from its fatty acids`,
      source: `${titleOf(taken.source)}${taken.fromMemory ? ` (quoted from memory${seen})` : ''}`,
      unit: figure === 'saponification' ? 'mg KOH/g' : 'g I₂/100 g',
      expected: [chosen.low, chosen.high],
      ours,
      tolerance: COMPOSITION_TOLERANCE * ours,
    },
  ];
}

export function standards(): Group {
  const { fats, sources } = loadCatalogue();
  const titleOf = (id: string): string => sources.get(id)?.title ?? id;
  return {
    title: 'Ranges of Codex and the pharmacopoeias',
    about:
      'The second route (AOCS Cd 3a-94, Cd 1c-85, unsaponifiable matter taken off) must give what the standard allows. Typical compositions are midpoints of ranges: 2 % is allowed beside the range.',
    rows: [...fats.values()].flatMap((fat) => [
      ...rowOf(fat, 'saponification', fat.saponification, titleOf),
      ...rowOf(fat, 'iodine', fat.iodine, titleOf),
    ]),
  };
}
