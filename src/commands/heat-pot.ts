/** What cools and what it stands in, from what was said; the rest is taken and told. */
import type { HeatData } from '../catalogue/heat-types.ts';
import { partsOf as alkaliParts } from '../engine/heat/peak.ts';
import {
  type Contents,
  fatContents,
  type Lid,
  type PotInput,
  soapContents,
  solutionContents,
} from '../engine/heat/pot.ts';
import { Claims } from '../reading/heat/claims.ts';
import type { CoolReading } from '../reading/heat/cool.ts';
import { heatLine } from '../reading/heat/line.ts';
import { type PotReading, potOf } from '../reading/heat/pot.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { massBoth, number, type Style } from '../units/print.ts';
import type { Context } from './define.ts';
import { alkaliAndWater } from './heat-solution.ts';

/** Taken where nobody says, g. */
const USUAL_BATCH = 1500;
const USUAL_LYE = 500;

export interface Filled {
  readonly contents: Contents;
  /** The weight was said. */
  readonly said: boolean;
  /** What was taken, as it stands after "I took". */
  readonly taken: readonly string[];
}

interface Filling {
  readonly said: CoolReading;
  readonly recipe: RecipeReading;
  readonly targetC: number;
  readonly data: HeatData;
  readonly context: Context;
  readonly style: Style;
}

/** Everything that a recipe puts into the pot, g. */
export function batchOf(recipe: RecipeReading): number {
  const all = [...recipe.fats, ...recipe.after, ...recipe.alkali, ...recipe.liquids, ...recipe.acids];
  return all.reduce((sum, { grams }) => sum + grams, recipe.waterGrams ?? 0);
}

export function contentsOf({ said, recipe, targetC, data, context, style }: Filling): Filled {
  const middle = ((said.nowC ?? said.readings[0]?.temperatureC ?? targetC) + targetC) / 2;
  if (said.of === 'lye' && recipe.fats.length === 0) {
    const solution = alkaliAndWater(recipe, () => null, context, style);
    if (solution) {
      const parts = alkaliParts(solution.alkali, solution.waterGrams);
      const own = parts.naoh + parts.koh + parts.water;
      const grams = recipe.alkali.length > 0 ? own : (said.grams ?? own);
      const scaled = {
        naoh: (parts.naoh * grams) / own,
        koh: (parts.koh * grams) / own,
        water: (parts.water * grams) / own,
      };
      return { contents: solutionContents(data, scaled, middle), said: true, taken: [] };
    }
    const grams = said.grams ?? USUAL_LYE;
    const usual = { naoh: 0.33 * grams, koh: 0, water: 0.67 * grams };
    return {
      contents: solutionContents(data, usual, middle),
      said: said.grams !== null,
      taken: [`${massBoth(grams, style)} of a 33 % lye solution`],
    };
  }
  const batch = batchOf(recipe);
  const own = batch > 0 && recipe.fats.length > 0 ? batch : said.grams;
  // The readings speak for the pot: no need of the recipe before.
  const before = own === null && said.of !== 'fats' && said.readings.length === 0 ? lastBatch(context) : null;
  const grams = own ?? before ?? USUAL_BATCH;
  const what = said.of === 'fats' ? 'melted fat' : 'soap';
  return {
    contents: said.of === 'fats' ? fatContents(data, grams, middle) : soapContents(data, grams),
    said: own !== null,
    taken: own === null ? [`${massBoth(grams, style)} of ${what}`] : [],
  };
}

/** What the recipe before puts into the pot, g; null without one. */
export function lastBatch({ last }: Context): number | null {
  const recipe = last.recipe?.recipe;
  if (!recipe) return null;
  const all = [...recipe.fats, ...recipe.after, ...recipe.alkali, ...recipe.liquids, ...recipe.acids];
  return all.reduce((sum, { grams }) => sum + grams, recipe.waterGrams);
}

/** A pot in the words of a setting: "6 l slow cooker", "8 L, lid off". */
export function readPot(words: string, context: Context): PotReading {
  const { pots, materials } = context.heat();
  const said = /\b(?:pot|cooker|pan|jug|bucket|bowl)\b/i.test(words) ? words : `${words} pot`;
  return potOf(new Claims(heatLine(context.reader(), said)), pots, materials.values());
}

/** The pot that a text names, else the usual one of who asks; how its lid is, the text says first. */
export function orOwnPot(spoken: PotReading, context: Context): PotReading {
  const words = spoken.described || spoken.litres !== null ? undefined : context.settings.pot;
  if (words === undefined) return spoken;
  const own = readPot(words, context);
  return { ...own, lid: spoken.lid ?? own.lid, insulation: spoken.insulation ?? own.insulation };
}

export function potFor(
  pot: PotReading,
  of: CoolReading['of'],
  grams: number,
  data: HeatData,
): { readonly pot: PotInput; readonly taken: readonly string[] } {
  const kindId = pot.kind ?? (of === 'lye' ? 'jug' : 'slow-cooker');
  const kind = data.pots.pots.find(({ id }) => id === kindId);
  const cooker = kindId === 'slow-cooker' || kindId === 'steel-pot' || kindId === 'enamel-pot';
  const lid: Lid = pot.lid ?? (cooker && of !== 'lye' && of !== 'fats' ? 'on' : 'off');
  // A usual slow cooker that the batch would not fit is taken a size larger.
  const litres = pot.litres ?? (kind?.litres && grams > 900 * kind.litres ? (2 * grams) / 1000 : undefined);
  const size = litres ?? kind?.litres;
  const parts = [
    ...(!pot.described || (pot.litres === null && size)
      ? [`a ${kind?.name ?? kindId}${size && !kind?.filled ? ` of ${number(size, 1)} L` : ''}`]
      : []),
    ...(pot.lid === null && !kind?.filled ? [`the lid ${lid}`] : []),
  ];
  return {
    pot: { kind: kindId, ...(litres === undefined ? {} : { litres }), lid, insulation: pot.insulation ?? 'none' },
    taken: parts,
  };
}
