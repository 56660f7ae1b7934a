/**
 * What a blend of fats is made of, from the fatty acids of each fat, and from there the second, independent route to
 * its saponification value.
 *
 * The typical compositions are midpoints of published ranges: good to about ±2 % for this route. Waxes and wax esters
 * are no triglycerides and have none; what share of the blend is covered is always given.
 */
import type { Fat } from '../catalogue/types.ts';
import {
  type FattyAcid,
  fattyAcid,
  freeAcidIodine,
  freeAcidSaponification,
  GLYCERYL_MOLAR_MASS,
  triglycerideIodine,
  triglycerideSaponification,
} from './chemistry.ts';
import type { FatAmount } from './recipe.ts';

/** How far a typical composition may be off in the second route, as a share of the saponification value. */
export const COMPOSITION_TOLERANCE = 0.02;

/** Fatty-acid groups by chemistry. `c4-c10` holds the C6 (and butterfat's C4) that comes with C8 and C10. */
export type AcidGroup =
  | 'c4-c10'
  | 'c12-c14'
  | 'c16-c18-saturated'
  | 'c20-up-saturated'
  | 'c18-1'
  | 'ricinoleic'
  | 'c18-2-c18-3'
  | 'other';

export const ACID_GROUPS: readonly AcidGroup[] = [
  'c4-c10',
  'c12-c14',
  'c16-c18-saturated',
  'c20-up-saturated',
  'c18-1',
  'ricinoleic',
  'c18-2-c18-3',
  'other',
];

export function acidGroup(acid: FattyAcid): AcidGroup {
  const { carbons, doubleBonds, hydroxyl } = acid;
  if (hydroxyl) return doubleBonds === 1 && carbons === 18 ? 'ricinoleic' : 'other';
  if (doubleBonds === 0) {
    if (carbons <= 11) return 'c4-c10';
    if (carbons <= 15) return 'c12-c14';
    return carbons <= 19 ? 'c16-c18-saturated' : 'c20-up-saturated';
  }
  if (carbons !== 18) return 'other';
  return doubleBonds === 1 ? 'c18-1' : 'c18-2-c18-3';
}

/** Ends of what a fat's unsaponifiable matter leaves open, and the middle taken. */
interface Band {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}

export interface FatComposition {
  /** Share by mass of each fatty acid among those with a plain formula; sums to 1. */
  readonly acids: readonly { readonly name: string; readonly acid: FattyAcid; readonly share: number }[];
  /** Mole mean, g/mol. */
  readonly meanMolarMass: number;
  /** Grams of fatty acid in one gram of the fat. */
  readonly acidShare: number;
  /** mg KOH/g, unsaponifiable matter taken off where it is known: the middle of its range, the ends as band. */
  readonly saponification: Band;
  /** g I₂/100 g, likewise. */
  readonly iodine: Band;
}

const known = new WeakMap<Fat, FatComposition | null>();

/** Composition of one fat; null for waxes and for fats whose fatty acids nobody has given. */
export function compositionOf(fat: Fat): FatComposition | null {
  let found = known.get(fat);
  if (found === undefined) {
    found = reckon(fat);
    known.set(fat, found);
  }
  return found;
}

function reckon(fat: Fat): FatComposition | null {
  if (!fat.acids || (fat.kind !== 'triglyceride' && fat.kind !== 'fatty-acid')) return null;
  const acids: { name: string; acid: FattyAcid; share: number }[] = [];
  let total = 0;
  for (const [name, share] of Object.entries(fat.acids.typical)) {
    const acid = fattyAcid(name);
    if (!acid || share <= 0) continue;
    acids.push({ name, acid, share });
    total += share;
  }
  if (total === 0) return null;
  let molesPerGram = 0;
  let iodine = 0;
  const free = fat.kind === 'fatty-acid';
  for (const one of acids) {
    one.share /= total;
    molesPerGram += one.share / one.acid.molarMass;
    iodine += one.share * (free ? freeAcidIodine(one.acid) : triglycerideIodine(one.acid));
  }
  const meanMolarMass = 1 / molesPerGram;
  const pure = free ? freeAcidSaponification(meanMolarMass) : triglycerideSaponification(meanMolarMass);
  const off = fat.unsaponifiable ?? { nominal: 0, low: 0, high: 0 };
  const left = 1 - off.nominal;
  const band = (value: number): Band => ({
    nominal: value * left,
    low: value * (1 - off.high),
    high: value * (1 - off.low),
  });
  const acidOfTriglyceride = (3 * meanMolarMass) / (3 * meanMolarMass + GLYCERYL_MOLAR_MASS);
  return {
    acids,
    meanMolarMass,
    acidShare: left * (free ? 1 : acidOfTriglyceride),
    saponification: band(pure),
    iodine: band(iodine),
  };
}

/** Iodine value (g I₂/100 g) of the fats for which one is known, with the share of the fat weight that these are. */
export interface BlendIodine extends Band {
  readonly covered: number;
}

export interface Composition {
  /** Share by mass of each fatty acid in the blend's fatty acids, greatest first; sums to 1 (or is empty). */
  readonly acids: readonly { readonly name: string; readonly share: number }[];
  readonly groups: Readonly<Record<AcidGroup, number>>;
  /** Mole mean of the fatty acids, g/mol; null when nothing is covered. */
  readonly meanMolarMass: number | null;
  /** Of the fats with a composition: AOCS Cd 1c-85. */
  readonly iodineFromAcids: BlendIodine | null;
  /** Of the fats with a published range. */
  readonly iodineFromRanges: BlendIodine | null;
  /** Greatest unsaponifiable share of the blend, from the fats where it is known, and the share these are. */
  readonly unsaponifiable: { readonly most: number; readonly covered: number };
  /** Share of the fat weight whose fatty acids are known. */
  readonly covered: number;
}

/** Composition of a blend. Weights in g, at least one above 0. */
export function composeBlend(fats: readonly FatAmount[]): Composition {
  const acids = new Map<string, number>();
  const groups = Object.fromEntries(ACID_GROUPS.map((group) => [group, 0])) as Record<AcidGroup, number>;
  let acidGrams = 0;
  let acidMoles = 0;
  const total = fats.reduce((sum, { grams }) => sum + grams, 0);
  for (const { fat, grams } of fats) {
    const composition = compositionOf(fat);
    if (!composition) continue;
    for (const { name, acid, share } of composition.acids) {
      const weight = grams * composition.acidShare * share;
      acids.set(name, (acids.get(name) ?? 0) + weight);
      groups[acidGroup(acid)] += weight;
      acidGrams += weight;
      acidMoles += weight / acid.molarMass;
    }
  }
  for (const group of ACID_GROUPS) groups[group] = acidGrams > 0 ? groups[group] / acidGrams : 0;
  const fromAcids = blendOf(fats, (fat) => compositionOf(fat)?.iodine ?? null);
  const unsaponifiable = blendOf(fats, (fat) => fat.unsaponifiable);
  return {
    acids: [...acids]
      .map(([name, weight]) => ({ name, share: acidGrams > 0 ? weight / acidGrams : 0 }))
      .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1)),
    groups,
    meanMolarMass: acidMoles > 0 ? acidGrams / acidMoles : null,
    iodineFromAcids: fromAcids,
    iodineFromRanges: blendOf(fats, (fat) => fat.iodine),
    unsaponifiable: unsaponifiable
      ? { most: unsaponifiable.high * unsaponifiable.covered, covered: unsaponifiable.covered }
      : { most: 0, covered: 0 },
    covered: total > 0 ? (fromAcids?.covered ?? 0) : 0,
  };
}

/** Mean, by weight, over the fats for which a figure is known. */
function blendOf(fats: readonly FatAmount[], figure: (fat: Fat) => Band | null): BlendIodine | null {
  let [total, grams, nominal, low, high] = [0, 0, 0, 0, 0];
  for (const amount of fats) {
    total += amount.grams;
    const band = figure(amount.fat);
    if (!band) continue;
    grams += amount.grams;
    nominal += amount.grams * band.nominal;
    low += amount.grams * band.low;
    high += amount.grams * band.high;
  }
  if (grams === 0) return null;
  return { nominal: nominal / grams, low: low / grams, high: high / grams, covered: grams / total };
}
