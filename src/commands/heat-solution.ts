/** The lye solution of a text: from the amounts of a recipe reading and what `reading/heat-solution.ts` found beside. */
import type { SolutionInput } from '../engine/heat/peak.ts';
import { airPressure } from '../engine/heat/properties.ts';
import type { AlkaliAmount, Recipe, Share } from '../engine/recipe.ts';
import { waterGramsOf } from '../engine/soap.ts';
import { ratioOf } from '../engine/water.ts';
import type { PotReading } from '../reading/heat/pot.ts';
import type { SolutionReading } from '../reading/heat/solution.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { mass, number, percent, type Style } from '../units/print.ts';
import type { Context } from './define.ts';
import { alkaliName, listed } from './phrases.ts';
import { pureLine, purityOf, usualStrength } from './recipe.ts';

export interface Solution {
  readonly input: SolutionInput;
  readonly taken: readonly string[];
  /** Alkali that is in solution already and brings no heat of its own. */
  readonly stock: boolean;
}

const exactly = (nominal: number): Share => ({ nominal, low: nominal, high: nominal });

/** Where only the strength is known: the peak is the same for any amount of it, g. */
const anyAlkali = 100;

/** `last`: the recipe before, where this text has no alkali of its own. Alkali and all of the water of a post; the usual solution where no water is named. Null without any alkali. */
export function alkaliAndWater(
  reading: RecipeReading,
  last: () => Recipe | null,
  { catalogue, settings }: Context,
  style: Style,
): {
  readonly alkali: readonly AlkaliAmount[];
  readonly waterGrams: number;
  readonly stock: boolean;
  readonly taken: readonly string[];
} | null {
  const taken: string[] = [];
  const mixed = new Set(reading.alkali.map(({ id }) => id)).size > 1;
  let stock = reading.alkali.length > 0;
  const alkali = reading.alkali.map(({ id, grams, purity: said, stock: dissolved }): AlkaliAmount => {
    if (dissolved) return { id, grams, purity: exactly(1) };
    stock = false;
    const { purity, assumed } = purityOf(id, said, reading.purity, mixed, catalogue);
    if (assumed) {
      const line = `${pureLine(id, purity, style)}.`;
      const spoken = id === 'naoh' && reading.assumptions.some((one) => one.id === 'lye');
      taken.push(spoken ? line.replace('the sodium hydroxide (NaOH) as', '"lye" as sodium hydroxide (NaOH),') : line);
    }
    return { id, grams, purity };
  });
  const liquids = reading.liquids.reduce(
    (sum, { id, grams }) => sum + grams * (catalogue.liquids.get(id)?.waterShare ?? 0),
    0,
  );
  if (alkali.length === 0) {
    const share = reading.concentration ?? (reading.ratio === null ? null : 1 / (1 + reading.ratio));
    if (share !== null) {
      const id = reading.alkaliNamed[0] ?? 'naoh';
      const { purity } = purityOf(id, null, reading.purity, false, catalogue);
      const pure = purity.nominal === 1 ? 'pure' : `${percent(purity.nominal, style)} pure`;
      taken.push(`I took ${mass(anyAlkali, style)} ${alkaliName[id]}, ${pure}: only the strength matters.`);
      const waterGrams = (anyAlkali * purity.nominal) / share - anyAlkali;
      return { alkali: [{ id, grams: anyAlkali, purity }], waterGrams, stock: false, taken };
    }
    const before = reading.fats.length > 0 ? null : last();
    if (!before) return null;
    return { alkali: before.alkali, waterGrams: waterGramsOf(before), stock: false, taken };
  }
  const total = alkali.reduce((sum, { grams }) => sum + grams, 0);
  let waterGrams = (reading.waterGrams ?? 0) + liquids;
  if (waterGrams === 0) {
    waterGrams = total * (reading.ratio ?? ratioOf(reading.concentration ?? usualStrength(settings)));
    taken.push(
      `I took ${mass(waterGrams, style)} water, for a ${percent(total / (total + waterGrams), style, 0)} solution.`,
    );
  }
  return { alkali, waterGrams, stock, taken };
}

/** Usual temperature of everything that goes in, °C. */
const USUAL_C = 25;
const BOILING_C = 100;
const FREEZER_C = -18;

/** What was not said is taken and told; ice takes the place of water, so that the total stays. */
export function solutionInput(
  found: NonNullable<ReturnType<typeof alkaliAndWater>>,
  said: SolutionReading,
  pot: PotReading,
  { settings }: Context,
  style: Style,
): Solution {
  const { alkali, stock } = found;
  const taken = [...found.taken];
  const total = found.waterGrams;
  const iceGrams = Math.min(total, said.iceGrams ?? (said.iceShare ?? 0) * total);
  const waterC = said.waterC ?? (said.boilingWater ? BOILING_C : null);
  const iceC = said.iceC ?? (said.freezer && iceGrams > 0 ? FREEZER_C : null);
  const unsaid = [
    ...(said.alkaliC === null ? ['alkali'] : []),
    ...(waterC === null && iceGrams < total ? ['water'] : []),
  ];
  const usualC = unsaid.length > 0 ? (settings.room ?? USUAL_C) : USUAL_C;
  const degrees = (celsius: number): string =>
    style.temperatureUnit === '°F' ? `${Math.round(celsius * 1.8 + 32)} °F` : `${number(celsius, 1, style)} °C`;
  if (unsaid.length > 0) {
    const ice = (iceGrams > 0 || said.limitC !== null) && iceC === null ? `, the ice at ${degrees(0)}` : '';
    taken.push(`I took the ${listed(unsaid)} at ${degrees(usualC)}${ice}.`);
  }
  if (said.iceC === null && iceC !== null) taken.push(`I took the ice at ${degrees(FREEZER_C)}, as from a freezer.`);
  return {
    stock,
    taken,
    input: {
      alkali,
      waterGrams: total - iceGrams,
      iceGrams,
      alkaliC: said.alkaliC ?? usualC,
      waterC: waterC ?? usualC,
      iceC: iceC ?? 0,
      ...(said.roomC === null ? {} : { roomC: said.roomC }),
      ...(said.altitudeM === null ? {} : { pressureKpa: airPressure(said.altitudeM) }),
      ...(pot.grams !== null && pot.material !== null ? { vessel: { material: pot.material, grams: pot.grams } } : {}),
    },
  };
}
