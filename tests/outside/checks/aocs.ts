import {
  type FattyAcid,
  fattyAcid,
  freeAcidIodine,
  triglycerideIodine,
  triglycerideSaponification,
} from '../../../src/engine/chemistry.ts';
import type { Group, Row } from '../row.ts';

/** AOCS Cd 1c-85: coefficients as published, in triglycerides and in free fatty acids. */
const IODINE: Readonly<Record<string, readonly [number, number]>> = {
  'C16:1': [0.95, 0.9976],
  'C18:1': [0.86, 0.8986],
  'C18:2': [1.732, 1.81],
  'C18:3': [2.616, 2.735],
  'C20:1': [0.785, 0.8175],
  'C22:1': [0.723, 0.7497],
};

const acidOf = (name: string): FattyAcid => {
  const acid = fattyAcid(name);
  if (!acid) throw new Error(name);
  return acid;
};

export function aocs(): Group {
  const iodine = Object.entries(IODINE).flatMap(([name, [triglyceride, free]]): Row[] => [
    {
      check: `Iodine coefficient of ${name}, triglyceride`,
      source: 'AOCS Cd 1c-85 (coefficient quoted from memory)',
      unit: '1',
      expected: triglyceride,
      ours: triglycerideIodine(acidOf(name)) / 100,
      tolerance: 0.0015,
    },
    {
      check: `Iodine coefficient of ${name}, free acid`,
      source: 'AOCS Cd 1c-85 (coefficient quoted from memory)',
      unit: '1',
      expected: free,
      ours: freeAcidIodine(acidOf(name)) / 100,
      tolerance: 0.0015,
    },
  ]);
  const saponification = ['C8:0', 'C12:0', 'C16:0', 'C18:0', 'C18:1', 'C18:2', 'C22:1', 'C18:1-OH'].map((name): Row => {
    const mass = acidOf(name).molarMass;
    return {
      check: `Saponification value of the triglyceride of ${name}`,
      source: 'AOCS Cd 3a-94 as published: 3·56.1·1000 / (3·M + 92.09 − 3·18)',
      unit: 'mg KOH/g',
      expected: (3 * 56.1 * 1000) / (3 * mass + 92.09 - 3 * 18),
      ours: triglycerideSaponification(mass),
      tolerance: 0.1,
    };
  });
  return {
    title: 'Formulas of the AOCS',
    about: 'The engine derives these from atomic weights; the method prints them rounded.',
    rows: [...iodine, ...saponification],
  };
}
