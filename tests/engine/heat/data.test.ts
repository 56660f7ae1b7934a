import { expect, test } from 'vitest';
import scents from '../../../data/scents.json' with { type: 'json' };
import { heatDefects, loadHeat } from '../../../src/catalogue/heat.ts';
import { type RawHeat, readHeat } from '../../../src/catalogue/heat-files.ts';
import { agrees, deviation } from '../../outside/row.ts';
import { heat } from './validation.ts';

test('the shipped data have no defect', () => {
  expect(heatDefects(readHeat())).toEqual([]);
  expect(loadHeat().oils.size).toBe(70);
});

test('a spoilt datum is found', () => {
  const cases: readonly (readonly [(data: RawHeat) => void, RegExp])[] = [
    [(data) => Object.assign(data.naoh.molarMass, { source: 'nowhere' }), /naoh\.molarMass: no such source/],
    [(data) => Object.assign(data.water.heatOfFusion, { locator: '' }), /no locator/],
    [(data) => Object.assign(data.water.heatOfFusion, { fromMemory: undefined }), /fromMemory unsaid/],
    [(data) => Object.assign(data.koh.boundWater, { low: 50 }), /koh\.boundWater: range upside down/],
    [(data) => data.koh.solubility.points.reverse(), /koh\.solubility: does not rise/],
    [(data) => Object.assign(data.pots.pots[0] ?? {}, { material: 'cheese' }), /no cheese/],
    [(data) => data.allergens.entries[0]?.oils.push('no-oil' as never), /no oil no-oil/],
    [(data) => Object.assign(data.air.table, { points: [[300, Number.NaN]] }), /not a number/],
  ];
  for (const [spoil, defect] of cases) {
    const data = readHeat();
    spoil(data);
    expect(heatDefects(data).join('\n')).toMatch(defect);
  }
});

test('every oil stands in the catalogue of scents under the same id', () => {
  const known = new Set(scents.scents.map(({ id }) => id));
  expect([...loadHeat().oils.keys()].filter((id) => !known.has(id))).toEqual([]);
});

const groups = heat();
for (const { title, rows } of groups) {
  test.each(rows.map((row) => [row.check, row] as const))(`${title}: %s`, (_, row) => {
    expect(agrees(row), `${row.source}: off by ${deviation(row)} ${row.unit}`).toBe(true);
  });
}
