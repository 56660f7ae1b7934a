import { loadCatalogue } from '../../../src/catalogue/load.ts';
import { batterVolume, lyeDensity } from '../../../src/engine/mould.ts';
import { toWeigh } from '../../../src/engine/weigh.ts';
import { exactly } from '../../engine/fixtures.ts';
import type { Group, Row } from '../row.ts';

/** g/mL at 40 °C from the correlation of Olsson, Jernqvist & Aly 1997, by share of NaOH. */
const OLSSON: Readonly<Record<string, number>> = { 0.1: 1.099, 0.2: 1.2074, 0.3: 1.314, 0.4: 1.4158, 0.5: 1.5094 };

/** The same for potassium hydroxide, by the equation that ours transcribes: no second measurement at 40 °C is at hand. */
const LALIBERTE: Readonly<Record<string, number>> = { 0.1: 1.0826, 0.3: 1.2781, 0.5: 1.4998 };

const GRAMS_PER_OUNCE = 28.349523125;
const ML_PER_CUBIC_INCH = 16.387064;

export function batter(): Group {
  const { fats } = loadCatalogue();
  const densities = Object.entries(OLSSON).map(([share, expected]): Row => {
    return {
      check: `Density of ${Number(share) * 100} % sodium hydroxide at 40 °C`,
      source: 'Olsson, Jernqvist & Aly 1997, Int. J. Thermophys. 18(3):779; ours is Laliberté 2009',
      unit: 'g/mL',
      expected,
      ours: lyeDensity('naoh', Number(share)),
      tolerance: 0.006,
    };
  });
  const potassium = Object.entries(LALIBERTE).map(([share, expected]): Row => {
    return {
      check: `Density of ${Number(share) * 100} % potassium hydroxide at 40 °C`,
      source: 'Laliberté 2009 as tabled by others: the same equation, checks transcription only',
      unit: 'g/mL',
      expected,
      ours: lyeDensity('koh', Number(share)),
      tolerance: 0.0005,
    };
  });
  const amounts = { 'olive-oil-virgin': 600, 'coconut-oil': 300, 'castor-oil': 100 };
  const lines = Object.entries(amounts).map(([id, grams]) => {
    const fat = fats.get(id);
    if (!fat) throw new Error(id);
    return { fat, grams };
  });
  const alkali = [{ id: 'naoh', purity: exactly(1), share: 1 }] as const;
  const made = toWeigh({ fats: lines, after: [], liquids: [], acids: [], alkali, scaleStepGrams: 1 }, fats);
  if (!made.ok) throw new Error(made.fault.kind);
  const ounces = 1000 / GRAMS_PER_OUNCE;
  return {
    title: 'Batter in the mould',
    about: 'Solution density against a second correlation of other measurements, and a rule of thumb of the trade.',
    rows: [
      ...densities,
      ...potassium,
      {
        check: 'Ounces of fat for each cubic inch of mould, 1 kg of fats, 33 % lye',
        source: 'common practice: fats in ounces are about 0.40 of the volume in cubic inches',
        unit: 'oz/in³',
        expected: 0.4,
        ours: ounces / (batterVolume(made.value.recipe) / ML_PER_CUBIC_INCH),
        tolerance: 0.02,
      },
    ],
  };
}
