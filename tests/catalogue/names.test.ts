import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHeat } from '../../src/catalogue/heat-files.ts';
import { loadCatalogue } from '../../src/catalogue/load.ts';
import { behind, foldName, inOrder, named } from '../../src/catalogue/names.ts';

const catalogue = loadCatalogue();
const idOf = (name: string): string | undefined => named(catalogue, name)?.id;
const howOf = (name: string): string | undefined => named(catalogue, name)?.how;

describe('a folded name', () => {
  it.each([
    ['Huile d’Olive', 'huile dolive'],
    ['OLIVENÖL', 'olivenol'],
    ['Süßmandelöl', 'sussmandelol'],
    ['caprylic/capric  triglyceride', 'caprylic capric triglyceride'],
    ['burro di karité', 'burro di karite'],
    ['suif de bœuf', 'suif de boeuf'],
    ['bee\u0027s wax', 'bees wax'],
    ['76° coconut', '76 coconut'],
    ['coconut oil (76)', 'coconut oil 76'],
    ['cold-pressed', 'cold pressed'],
    ['', ''],
  ])('of "%s" is "%s"', (name, key) => {
    expect(foldName(name)).toBe(key);
    expect(foldName(key)).toBe(key);
  });
});

describe('everyday names', () => {
  // The plain kinds are agreed: olive means virgin, tallow means beef, coconut melts at 76 °F, sunflower is linoleic.
  it.each([
    ['olive', 'olive-oil-virgin'],
    ['Olive Oil', 'olive-oil-virgin'],
    ['EVOO', 'olive-oil-virgin'],
    ['OO', 'olive-oil-virgin'],
    ['huile d’olive', 'olive-oil-virgin'],
    ['Olivenöl', 'olive-oil-virgin'],
    ['olivenoel', 'olive-oil-virgin'],
    ['aceite de oliva', 'olive-oil-virgin'],
    ['pure olive oil', 'olive-oil-refined'],
    ['light olive oil', 'olive-oil-refined'],
    ['pomace', 'olive-pomace-oil'],
    ['coconut', 'coconut-oil'],
    ['coconut oil 76', 'coconut-oil'],
    ['76 degree coconut', 'coconut-oil'],
    ['aceite de coco', 'coconut-oil'],
    ['92 degree coconut', 'coconut-oil-hydrogenated'],
    ['fractionated coconut oil', 'mct-oil'],
    ['PKO', 'palm-kernel-oil'],
    ['palm k oil', 'palm-kernel-oil'],
    ['palm kernel', 'palm-kernel-oil'],
    ['palm', 'palm-oil'],
    ['RBD palm', 'palm-oil'],
    ['palm olein', 'palm-olein'],
    ['palm stearin', 'palm-stearin'],
    ['tallow', 'tallow-beef'],
    ['lamb fat', 'tallow-mutton'],
    ['lard', 'lard'],
    ['Schweineschmalz', 'lard'],
    ['sunflower', 'sunflower-oil'],
    ['high oleic sunflower', 'sunflower-oil-high-oleic'],
    ['HO sunflower', 'sunflower-oil-high-oleic'],
    ['Sonnenblumenöl', 'sunflower-oil'],
    ['safflower', 'safflower-oil'],
    ['high-oleic safflower oil', 'safflower-oil-high-oleic'],
    ['rapeseed', 'canola-oil'],
    ['colza', 'canola-oil'],
    ['soya', 'soybean-oil'],
    ['RBO', 'rice-bran-oil'],
    ['sweet almond', 'sweet-almond-oil'],
    ['almond oil', 'sweet-almond-oil'],
    ['tea seed oil', 'camellia-oil'],
    ['camelia oil', 'camellia-oil'],
    ['camelina oil', 'camelina-oil'],
    ['shea', 'shea-butter'],
    ['burro di karité', 'shea-butter'],
    ['cacao butter', 'cocoa-butter'],
    ['mango butter', 'mango-butter'],
    ['ghee', 'butterfat-ghee'],
    ['bees wax', 'beeswax'],
    ['lanolin', 'lanolin'],
    ['stearic', 'stearic-acid'],
    ['lye', 'naoh'],
    ['caustic soda', 'naoh'],
    ['NaOH', 'naoh'],
    ['sodium hydroxide', 'naoh'],
    ['KOH', 'koh'],
    ['caustic potash', 'koh'],
    ['potash lye', 'koh'],
    ['citric acid', 'citric-acid'],
    ['citric acid monohydrate', 'citric-acid-monohydrate'],
    ['lactic acid 80%', 'lactic-acid-80'],
    ['apple cider vinegar', 'vinegar'],
    ['bicarb', 'baking-soda'],
    ['goat’s milk', 'goat-milk'],
    ['coconut milk', 'coconut-milk'],
    ['goat milk powder', 'milk-powder'],
    ['stout', 'beer'],
    ['unsalted butter', 'dairy-butter'],
    ['rosewater', 'rose-water'],
    ['sodium lactate', 'sodium-lactate'],
    ['French green clay', 'clay'],
    ['kaolin', 'kaolin'],
    ['ROE', 'antioxidant'],
    ['washing soda', 'sodium-carbonate'],
    ['lavender EO', 'lavender'],
    ['tea tree oil', 'tea-tree'],
    ['carrot seed essential oil', 'carrot-seed'],
    ['fragrance', 'fragrance-oil'],
    ['FO', 'fragrance-oil'],
    ['essential oil', 'essential-oil'],
    ['emu oil', 'emu-oil'],
    ['soy wax', 'soy-wax'],
    ['kukui nut oil', 'kukui-nut-oil'],
    ['vegetable oil', 'any-vegetable-oil'],
    ['shortening', 'any-shortening'],
    ['butter', 'any-butter'],
    ['CO', 'coconut-oil'],
    ['PO', 'palm-oil'],
    ['hydroxide', 'any-hydroxide'],
    ['potash', 'any-potash'],
    ['soda', 'any-soda'],
  ])('"%s" is %s', (name, id) => {
    expect(idOf(name)).toBe(id);
  });

  it('tell a full name from one that is an assumption', () => {
    expect(howOf('extra virgin olive oil')).toBe('name');
    expect(howOf('olive oil')).toBe('plain');
    expect(howOf('evoo')).toBe('abbreviation');
    expect(howOf('lye')).toBe('plain');
    expect(howOf('sodium hydroxide')).toBe('name');
  });

  it('cover every item, by its own name or more', () => {
    const named = new Set([...catalogue.byFirstWord.values()].flat().map(({ id }) => id));
    for (const map of [catalogue.fats, catalogue.alkalis, catalogue.acids, catalogue.liquids, catalogue.additives])
      for (const id of map.keys()) expect(named, id).toContain(id);
    for (const fat of catalogue.fats.values()) expect(fat.names.length, fat.id).toBeGreaterThanOrEqual(4);
  });

  it('are written as typed, in lower case', () => {
    for (const one of [...catalogue.fats.values(), ...catalogue.liquids.values(), ...catalogue.unheld])
      for (const name of one.names) expect(name).toBe(name.toLowerCase().trim());
  });

  it('take no word that a sentence about soap is full of', () => {
    const everyday =
      `a the and or of to in on for with at by is it i my me so no not do go if can will all some more than this water
      ice grams ounces pounds total recipe soap bar mould pot temperature hear he she but the sale se te spread batch`.split(
        /\s+/,
      );
    expect(everyday.filter((word) => named(catalogue, word) !== undefined)).toEqual([]);
  });

  it('give every essential oil of the flash point table the same id', () => {
    const oils = readHeat().scents.oils.map(({ id }) => id);
    expect(oils.length).toBeGreaterThan(60);
    expect(oils.filter((id) => !catalogue.scents.has(id))).toEqual([]);
  });
});

describe('lines in the order of their keys', () => {
  const key = fc.string({ minLength: 1 }).filter((text) => !/[\t\n]/.test(text));

  it('are found as a map finds them, with what stands behind them and without', () => {
    fc.assert(
      fc.property(fc.dictionary(key, fc.option(key)), fc.array(key), (items, others) => {
        const pairs = Object.entries(items);
        const lines = inOrder(pairs.map(([one, value]) => (value === null ? [one] : [one, value])));
        const map = new Map(pairs.map(([one, value]) => [one, value ?? '']));
        for (const one of [...map.keys(), ...others, '']) expect(behind(one, lines)).toBe(map.get(one) ?? null);
      }),
    );
  });
});
