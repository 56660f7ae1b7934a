/** Fats and recipes built from plain numbers, for tests that need no catalogue. */
import type { Acid, Chosen, Fat, FatKind, Liquid } from '../../src/catalogue/types.ts';
import type { AlkaliAmount, Recipe, Share } from '../../src/engine/recipe.ts';

export const exactly = (value: number): Share => ({ nominal: value, low: value, high: value });

const chosen = (low: number, high: number, fromMemory = false): Chosen => ({
  low,
  high,
  nominal: (low + high) / 2,
  taken: 0,
  why: 'the test says so',
  entries: [],
  fromMemory,
});

interface FatNumbers {
  readonly sv: readonly [number, number];
  readonly kind?: FatKind;
  readonly acids?: Readonly<Record<string, number>>;
  readonly unsaponifiable?: number;
  readonly iodine?: readonly [number, number];
  readonly density?: number;
  readonly fromMemory?: boolean;
}

export function fat(id: string, numbers: FatNumbers): Fat {
  const { sv, kind = 'triglyceride', acids, unsaponifiable, iodine, density, fromMemory = false } = numbers;
  return {
    id,
    name: id,
    names: [id],
    latin: null,
    kind,
    inci: { name: id, sodiumSoap: null, potassiumSoap: null },
    saponification: chosen(sv[0], sv[1], fromMemory),
    iodine: iodine ? chosen(iodine[0], iodine[1]) : null,
    unsaponifiable: unsaponifiable === undefined ? null : chosen(0, unsaponifiable),
    density: density === undefined ? null : chosen(density, density),
    melting: null,
    acids: acids ? { typical: acids, ranges: {}, source: 'test', locator: 'test', fromMemory: false } : null,
    note: null,
  };
}

export const olive = fat('olive', { sv: [184, 196], acids: { 'C16:0': 0.14, 'C18:1': 0.74, 'C18:2': 0.12 } });
export const coconut = fat('coconut', { sv: [248, 265], acids: { 'C12:0': 0.6, 'C14:0': 0.2, 'C16:0': 0.2 } });
export const castor = fat('castor', { sv: [176, 187], acids: { 'C18:1-OH': 0.9, 'C18:1': 0.1 } });
export const shea = fat('shea', { sv: [160, 195], acids: { 'C18:0': 0.45, 'C18:1': 0.55 }, unsaponifiable: 0.19 });
export const lard = fat('lard', { sv: [192, 203], fromMemory: true });
export const butterfat = fat('butterfat', { sv: [218, 235] });
export const stearic = fat('stearic', { sv: [194, 212], kind: 'fatty-acid', acids: { 'C16:0': 0.5, 'C18:0': 0.5 } });
export const beeswax = fat('beeswax', { sv: [87, 104], kind: 'wax' });
const allFats = [olive, coconut, castor, shea, lard, butterfat, stearic, beeswax];
export const fats: ReadonlyMap<string, Fat> = new Map(allFats.map((one) => [one.id, one]));

export const citric: Acid = {
  id: 'citric-anhydrous',
  name: 'citric acid',
  names: [],
  molarMass: 192.12,
  protons: 3,
  strength: 1,
  source: 'test',
  locator: 'test',
};

export const milk: Liquid = {
  id: 'milk',
  name: 'milk',
  names: [],
  waterShare: 0.87,
  fatShare: 0.04,
  fat: 'butterfat',
  density: 1.03,
  sugars: true,
  source: 'test',
  locator: 'test',
  fromMemory: false,
};

export const naoh = (grams: number, purity: Share = exactly(1)): AlkaliAmount => ({ id: 'naoh', grams, purity });
export const koh = (grams: number, purity: Share = exactly(0.9)): AlkaliAmount => ({ id: 'koh', grams, purity });

/** The Sunday class's bar, with what a test changes. */
export const recipe = (changes: Partial<Recipe> = {}): Recipe => ({
  fats: [
    { fat: olive, grams: 450 },
    { fat: coconut, grams: 225 },
    { fat: castor, grams: 75 },
  ],
  after: [],
  alkali: [naoh(102)],
  waterGrams: 230,
  liquids: [],
  acids: [],
  scaleStepGrams: 1,
  ...changes,
});

/** A seeded generator, uniform on [0, 1): Doty-Humphrey's small fast counter (sfc32), which passes PractRand. */
export function seeded(seed: number): () => number {
  let [a, b, c, counter] = [seed | 0, seed ^ 0x9e3779b9, 0x243f6a88, 1];
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 4294967296;
  };
  for (let warm = 0; warm < 15; warm++) next();
  return next;
}
