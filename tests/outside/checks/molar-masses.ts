import { MF } from 'mf-parser';
import { loadCatalogue } from '../../../src/catalogue/load.ts';
import {
  ALKALI_MOLAR_MASS,
  fattyAcid,
  GLYCEROL_MOLAR_MASS,
  IODINE_MOLAR_MASS,
  WATER_MOLAR_MASS,
} from '../../../src/engine/chemistry.ts';
import type { Group, Row } from '../row.ts';

const SOURCE = 'npm package mf-parser (its own table of elements and parser of formulas)';

const massOf = (formula: string): number => new MF(formula).getInfo().mass;

/** Formulas of the catalogue's acids, written out here so that a wrong mass in the data shows. */
const ACID_FORMULAS: Readonly<Record<string, string>> = {
  'citric-acid': 'C6H8O7',
  'citric-acid-monohydrate': 'C6H10O8',
  'lactic-acid': 'C3H6O3',
  'acetic-acid': 'C2H4O2',
  'tartaric-acid': 'C4H6O6',
  'cream-of-tartar': 'C4H5KO6',
  'ascorbic-acid': 'C6H8O6',
  'malic-acid': 'C4H6O5',
  'glycolic-acid': 'C2H4O3',
  'salicylic-acid': 'C7H6O3',
  'sorbic-acid': 'C6H8O2',
  'boric-acid': 'H3BO3',
  borax: 'Na2B4O17H20',
  gluconolactone: 'C6H10O6',
  'disodium-edta': 'C10H18N2Na2O10',
  'baking-soda': 'NaHCO3',
};

const row = (check: string, formula: string, ours: number): Row => ({
  check: `${check} ${formula}`,
  source: SOURCE,
  unit: 'g/mol',
  expected: massOf(formula),
  ours,
  tolerance: 0.01,
});

export function molarMasses(): Group {
  const { acids, alkalis } = loadCatalogue();
  const fattyAcids = [
    'C4:0',
    'C8:0',
    'C12:0',
    'C16:1',
    'C18:0',
    'C18:1',
    'C18:2',
    'C18:3',
    'C22:1',
    'C18:1-OH',
    'C18:0-OH',
  ];
  const formulaOf = (name: string): string => {
    const [carbons, doubleBonds] = (name.match(/\d+/g) ?? []).map(Number);
    return `C${carbons}H${2 * ((carbons ?? 0) - (doubleBonds ?? 0))}O${name.endsWith('OH') ? 3 : 2}`;
  };
  return {
    title: 'Molar masses',
    about:
      'Against an independent chemistry package. It carries more digits of the atomic weights than the abridged table used here.',
    rows: [
      row('sodium hydroxide', 'NaOH', ALKALI_MOLAR_MASS.naoh),
      row('potassium hydroxide', 'KOH', ALKALI_MOLAR_MASS.koh),
      row('glycerol', 'C3H8O3', GLYCEROL_MOLAR_MASS),
      row('water', 'H2O', WATER_MOLAR_MASS),
      row('iodine', 'I2', IODINE_MOLAR_MASS),
      ...[...alkalis.values()].map(({ name, formula, molarMass }) => row(`${name}, in the data`, formula, molarMass)),
      ...fattyAcids.map((name) => row(name, formulaOf(name), fattyAcid(name)?.molarMass ?? Number.NaN)),
      ...Object.entries(ACID_FORMULAS).map(([id, formula]) => row(id, formula, acids.get(id)?.molarMass ?? Number.NaN)),
    ],
  };
}
