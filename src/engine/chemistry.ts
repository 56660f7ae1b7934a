/**
 * Molar masses and the stoichiometry that everything else rests on.
 *
 * Atomic weights: IUPAC CIAAW abridged standard atomic weights (quoted from memory, checked in the tests against an
 * independent package). Molar masses in g/mol.
 */
import type { AlkaliId } from '../catalogue/types.ts';

const C = 12.011;
const H = 1.008;
const O = 15.999;

/** NaOH 39.997 and KOH 56.105 g/mol: sums of the atomic weights to three decimals. */
export const ALKALI_MOLAR_MASS: Readonly<Record<AlkaliId, number>> = { naoh: 39.997, koh: 56.105 };
/** C₃H₈O₃. */
export const GLYCEROL_MOLAR_MASS = 92.094;
/** H₂O. */
export const WATER_MOLAR_MASS = 18.015;
/** I₂. */
export const IODINE_MOLAR_MASS = 253.809;
/** Glycerol less three waters: what a triglyceride is made of beside its three fatty acids. */
export const GLYCERYL_MOLAR_MASS = GLYCEROL_MOLAR_MASS - 3 * WATER_MOLAR_MASS;

export interface FattyAcid {
  readonly carbons: number;
  readonly doubleBonds: number;
  readonly hydroxyl: boolean;
  readonly molarMass: number;
}

/**
 * A fatty acid from its shorthand: `C18:1`, `C18:3-gamma`, `C18:1-OH` (ricinoleic).
 * Null for what has no plain formula (cyclopropenoids, "other").
 */
export function fattyAcid(shorthand: string): FattyAcid | null {
  const parts = /^C(\d{1,2}):(\d)(-OH)?(?:-[a-z0-9]+)?$/i.exec(shorthand);
  if (!parts) return null;
  const carbons = Number(parts[1]);
  const doubleBonds = Number(parts[2]);
  const hydroxyl = parts[3] !== undefined;
  const molarMass = carbons * C + 2 * (carbons - doubleBonds) * H + (hydroxyl ? 3 : 2) * O;
  return { carbons, doubleBonds, hydroxyl, molarMass };
}

/**
 * Saponification value (mg KOH/g) of a triglyceride whose fatty acids have the mole-mean molar mass M̄ (g/mol):
 * 3·56.105·1000 / (3·M̄ + 38.049). Source: AOCS Cd 3a-94, re-derived from the atomic weights.
 */
export const triglycerideSaponification = (meanMolarMass: number): number =>
  (3 * ALKALI_MOLAR_MASS.koh * 1000) / (3 * meanMolarMass + GLYCERYL_MOLAR_MASS);

/** Saponification (acid) value (mg KOH/g) of a free fatty acid: one alkali each. */
export const freeAcidSaponification = (meanMolarMass: number): number => (ALKALI_MOLAR_MASS.koh * 1000) / meanMolarMass;

/**
 * Iodine value (g I₂/100 g) of the pure triglyceride of one fatty acid: 100·3·n·253.809 / (3·M + 38.049).
 * Source: AOCS Cd 1c-85 (its coefficients are these figures over 100).
 */
export const triglycerideIodine = (acid: FattyAcid): number =>
  (100 * 3 * acid.doubleBonds * IODINE_MOLAR_MASS) / (3 * acid.molarMass + GLYCERYL_MOLAR_MASS);

/** Iodine value (g I₂/100 g) of a free fatty acid: 100·n·253.809 / M (AOCS Cd 1c-85). */
export const freeAcidIodine = (acid: FattyAcid): number =>
  (100 * acid.doubleBonds * IODINE_MOLAR_MASS) / acid.molarMass;
