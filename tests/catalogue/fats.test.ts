import { describe, expect, it } from 'vitest';
import {
  conflicts,
  fromMemory,
  held,
  listMissing,
  memoryOnly,
  widened,
  withoutProfile,
} from '../../src/catalogue/lists.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import type { Fat } from '../../src/catalogue/types.ts';

const catalogue = loadCatalogue();
const fat = (id: string): Fat => {
  const found = catalogue.fats.get(id);
  if (!found) throw new Error(`no fat ${id}`);
  return found;
};
const ids = (fats: readonly Fat[]): readonly string[] => fats.map(({ id }) => id).sort();

/** Ids that answers, tests and other people's notes rely on; none may vanish. */
const PROMISED = `coconut-oil coconut-oil-hydrogenated mct-oil palm-kernel-oil babassu-oil palm-oil palm-oil-high-oleic
palm-olein palm-stearin olive-oil-virgin olive-oil-refined olive-pomace-oil castor-oil castor-oil-hydrogenated
sunflower-oil sunflower-oil-mid-oleic sunflower-oil-high-oleic safflower-oil safflower-oil-high-oleic soybean-oil
canola-oil rapeseed-oil-high-erucic rice-bran-oil sweet-almond-oil apricot-kernel-oil avocado-oil grapeseed-oil
hazelnut-oil macadamia-oil walnut-oil peanut-oil sesame-oil corn-oil cottonseed-oil linseed-oil hemp-seed-oil
pumpkin-seed-oil camelina-oil camellia-oil jojoba-oil meadowfoam-oil wheat-germ-oil evening-primrose-oil borage-oil
neem-oil tamanu-oil argan-oil baobab-oil moringa-oil marula-oil shea-butter cocoa-butter mango-butter kokum-butter
sal-butter illipe-butter lard tallow-beef tallow-mutton goose-fat duck-fat butterfat-ghee lanolin beeswax
candelilla-wax carnauba-wax stearic-acid palmitic-acid lauric-acid myristic-acid oleic-acid coconut-fatty-acids`.split(
  /\s+/,
);

describe('the fats held', () => {
  it('are at least the 72 promised', () => {
    expect(new Set(PROMISED).size).toBe(72);
    expect(PROMISED.filter((id) => !catalogue.fats.has(id))).toEqual([]);
  });

  it('carry a source, a locator, a grade and honest marks on every datum', () => {
    for (const { fat, quantity, chosen } of held(catalogue)) {
      for (const datum of chosen.entries) {
        const source = catalogue.sources.get(datum.source);
        const where = `${fat.id} ${quantity} ${datum.source}`;
        expect(source, where).toBeDefined();
        expect(datum.locator, where).not.toBe('');
        expect(datum.fromMemory, where).toBe(source?.standing === 'memory');
        if (datum.fromMemory && source?.grade !== 'standard') expect(datum.grade, where).toBe('memory');
      }
      expect(chosen.low).toBeLessThanOrEqual(chosen.nominal);
      expect(chosen.nominal).toBeLessThanOrEqual(chosen.high);
      expect(chosen.why).toMatch(/^Taken from .+\.$/);
    }
  });

  it('have profiles that make a whole, each acid within what its source states', () => {
    for (const { id, acids } of catalogue.fats.values()) {
      if (!acids) continue;
      const total = Object.values(acids.typical).reduce((sum, share) => sum + share, 0);
      expect(total, id).toBeCloseTo(1, 12);
      expect(acids.locator, id).not.toBe('');
      expect(catalogue.sources.get(acids.source), id).toBeDefined();
      for (const [acid, share] of Object.entries(acids.typical)) {
        const [low, high] = acids.ranges[acid] ?? [0, 1];
        // Scaling to 100 % may carry a share over a figure that the source gives without a range.
        expect(share, `${id} ${acid}`).toBeGreaterThanOrEqual(low * 0.9 - 0.003);
        expect(share, `${id} ${acid}`).toBeLessThanOrEqual(high * 1.1 + 0.003);
      }
    }
  });

  it('name their Latin plant or animal, except single acids', () => {
    for (const one of catalogue.fats.values()) {
      if (one.kind !== 'fatty-acid') expect(one.latin, one.id).toMatch(/^[A-Z][a-z]+ /);
      expect(one.inci.name, one.id).toMatch(/^[A-Z]/);
    }
  });
});

describe('the saponification range in use', () => {
  // Each figure as the document states it; the document named beside it.
  it.each([
    ['olive-oil-virgin', 184, 196, 'Codex CXS 33, olive oil'],
    ['olive-pomace-oil', 182, 193, 'Codex CXS 33, olive-pomace oil'],
    ['coconut-oil', 248, 265, 'Codex CXS 210, coconut oil'],
    ['palm-oil', 190, 209, 'Codex CXS 210, palm oil'],
    ['palm-kernel-oil', 230, 254, 'Codex CXS 210, palm kernel oil'],
    ['babassu-oil', 245, 256, 'Codex CXS 210, babassu oil'],
    ['sunflower-oil', 187, 194, 'Codex CXS 210 as amended in 2022, sunflowerseed oil'],
    ['sunflower-oil-high-oleic', 182, 194, 'Codex CXS 210, sunflowerseed oil, high oleic'],
    ['soybean-oil', 189, 195, 'Codex CXS 210, soya bean oil'],
    ['canola-oil', 182, 193, 'Codex CXS 210, rapeseed oil, low erucic'],
    ['rapeseed-oil-high-erucic', 168, 181, 'Codex CXS 210, rapeseed oil'],
    ['rice-bran-oil', 180, 199, 'Codex CXS 210, rice bran oil'],
    ['sesame-oil', 186, 195, 'Codex CXS 210, sesameseed oil'],
    ['grapeseed-oil', 188, 194, 'Codex CXS 210, grapeseed oil'],
    ['peanut-oil', 187, 196, 'Codex CXS 210, arachis oil'],
    ['castor-oil', 176, 187, 'British Pharmacopoeia 1993, castor oil'],
    ['lard', 192, 203, 'Codex CXS 211, lard; Canada B.09.013'],
    ['tallow-beef', 190, 202, 'Codex CXS 211, edible tallow'],
    ['shea-butter', 160, 195, 'Codex CXS 325R, unrefined shea butter'],
    ['stearic-acid', 194, 212, 'Ph. Eur. / USP-NF, stearic acid'],
  ])('of %s is %d to %d (%4$s)', (id, low, high) => {
    const { saponification } = fat(id);
    expect([saponification.low, saponification.high]).toEqual([low, high]);
    expect(saponification.nominal).toBe((low + high) / 2);
  });

  it('of a pure acid holds the figure of theory, 56 105 / M', () => {
    expect(fat('lauric-acid').saponification.nominal).toBeCloseTo(56105 / 200.322, 1);
    expect(fat('palmitic-acid').saponification.nominal).toBeCloseTo(56105 / 256.43, 1);
  });

  it('of moringa spans measurements that contradict each other, and says so', () => {
    const { low, high, why } = fat('moringa-oil').saponification;
    expect([low, high]).toEqual([167, 191.2]);
    expect(why).toContain('Widened over other published figures');
  });

  it('of jojoba spans what the handbooks hold round one typical figure', () => {
    expect(fat('jojoba-oil').saponification).toMatchObject({ low: 88, high: 98, nominal: 92.2 });
  });
});

describe('other quantities', () => {
  it('turns a relative density into g/mL with the density of water (CIPM 1981: 0.9982 g/mL at 20 °C)', () => {
    const { density } = fat('soybean-oil');
    expect(density?.low).toBeCloseTo(0.919 * 0.9982, 4);
    expect(density?.high).toBeCloseTo(0.925 * 0.9982, 4);
  });

  it('takes the density of a solid fat where it is melted', () => {
    for (const one of catalogue.fats.values()) {
      const taken = one.density?.entries[one.density.taken];
      if (one.density && one.melting && one.melting.high > 25 && one.density.entries.length > 1) {
        const warmest = Math.max(...one.density.entries.map(({ celsius }) => celsius ?? 20));
        expect(taken?.celsius, one.id).toBeGreaterThanOrEqual(Math.min(one.melting.high, warmest));
      }
    }
    expect(fat('shea-butter').density).toMatchObject({ low: 0.89, high: 0.93 });
  });

  it('keeps a one-sided limit where no source gives a range', () => {
    expect(fat('palm-stearin')).toMatchObject({ iodine: null, limits: [{ quantity: 'iodine', low: null, high: 48 }] });
    expect(fat('palm-olein').limits?.every(({ quantity, high }) => quantity === 'melting' && high === 24)).toBe(true);
    expect(fat('coconut-oil').limits).toBeUndefined();
  });
});

describe('what can be listed', () => {
  it('names the fats whose saponification value nobody has read', () => {
    expect(ids(memoryOnly(catalogue))).toEqual(
      `avocado-oil borage-oil camelina-oil camellia-oil candelilla-wax coconut-fatty-acids coconut-oil-hydrogenated
      duck-fat goose-fat grapeseed-oil hazelnut-oil illipe-butter macadamia-oil meadowfoam-oil neem-oil palm-stearin
      sunflower-oil-mid-oleic wheat-germ-oil`.split(/\s+/),
    );
    const remembered = fromMemory(catalogue, 'saponification').map(({ fat }) => fat.id);
    expect(remembered).toContain('tallow-beef');
    expect(remembered).not.toContain('olive-oil-virgin');
    expect(remembered).not.toContain('lard');
  });

  it('names the waxes as without profile', () => {
    expect(ids(withoutProfile(catalogue))).toEqual(['beeswax', 'candelilla-wax', 'carnauba-wax', 'lanolin']);
  });

  it('names what is missing', () => {
    expect(ids(listMissing(catalogue, 'saponification'))).toEqual([]);
    expect(ids(listMissing(catalogue, 'iodine'))).toEqual([
      'beeswax',
      'candelilla-wax',
      'carnauba-wax',
      'palm-stearin',
    ]);
    expect(ids(listMissing(catalogue, 'density'))).toContain('goose-fat');
  });

  it('names conflicts and what was widened for them', () => {
    const found = conflicts(catalogue).map(({ fat, quantity }) => `${fat.id} ${quantity}`);
    expect(found).toContain('moringa-oil saponification');
    expect(found).not.toContain('coconut-oil saponification');
    expect(widened(catalogue).map(({ fat }) => fat.id)).toContain('moringa-oil');
    expect(widened(catalogue).map(({ fat }) => fat.id)).not.toContain('lard');
  });
});
