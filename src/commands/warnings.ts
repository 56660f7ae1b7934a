/** What a person should mind beside the verdict. */
import type { Catalogue } from '../catalogue/types.ts';
import type { CheckFigures } from '../engine/check.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { mass, number, percent, type Style } from '../units/print.ts';
import { inSentence, listed, nameOf } from './phrases.ts';
import { usualWater, type Weighed } from './recipe.ts';
import { hopeless } from './verdict-words.ts';

/** A stated concentration is told when it is off by more than this (share); people round a third to 33 %. */
const CONCENTRATION_SLACK = 0.011;
/** The same for water to alkali, as a part of the ratio. */
const RATIO_SLACK = 0.051;

export function warningsOf(
  { recipe, dry }: Weighed,
  figures: CheckFigures,
  reading: RecipeReading,
  catalogue: Catalogue,
  style: Style,
): string[] {
  const grams: Style = { ...style, massUnit: 'g' };
  const alkali = recipe.alkali.reduce((sum, one) => sum + one.grams, 0);
  const { lye, scale, fromMemory, secondRoute } = figures;
  const out: string[] = [];

  if (dry) {
    out.push(`No water is named. A usual 33 % solution takes about ${mass(usualWater(alkali), style)} of it.`);
  } else if (lye.dissolving === 'will-not-dissolve' || lye.dissolving === 'below-floor') {
    out.push(
      `Too little water to dissolve the alkali: use at least ${mass(alkali, style)}, better ${mass(usualWater(alkali), style)}.`,
    );
  }
  out.push(...contradictions(figures, reading, dry, style));
  if (scale.tooCoarse && scale.leastFactor <= hopeless) {
    out.push(
      `A scale that shows ${mass(recipe.scaleStepGrams, grams)} is coarse for this batch: half a step moves the superfat by ${number(scale.shift * 100, 1, style)} points. Use a finer one, or at least ${number(scale.leastFactor, 1, style)} times the batch.`,
    );
  }
  if (recipe.liquids.some(({ liquid }) => liquid.sugars)) {
    const sweet = recipe.liquids.filter(({ liquid }) => liquid.sugars).map(({ liquid }) => inSentence(liquid.name));
    out.push(`The sugar of the ${listed(sweet)} heats up and browns in lye: use it frozen, add slowly, window open.`);
  }
  if (fromMemory.length > 0) {
    out.push(
      `From memory, not yet read in a source: the saponification value of ${listed(fromMemory.map((id) => nameOf(id, catalogue)))}.`,
    );
  }
  if (secondRoute && !secondRoute.agrees) {
    out.push(
      `A second reckoning from fatty acids gives ${percent(secondRoute.superfat.nominal, style)}: the two disagree, so ask the supplier for the saponification value.`,
    );
  }
  return out;
}

/** What the post says of itself against what its amounts give: told, never averaged. */
function contradictions({ superfat, lye }: CheckFigures, reading: RecipeReading, dry: boolean, style: Style): string[] {
  const out: string[] = [];
  const { superfat: said, concentration, ratio } = reading;
  if (said !== null) {
    const meets = (said >= superfat.low && said <= superfat.high) || Math.abs(said - superfat.withAfter) < 0.01;
    if (!meets)
      out.push(`You wrote ${percent(said, style)} superfat; these amounts give ${percent(superfat.nominal, style)}.`);
  }
  if (dry) return out;
  // of a solution that was mixed before, the post says how strong it is by itself
  const isStock = reading.alkali.some(({ stock }) => stock);
  if (concentration !== null && !isStock && Math.abs(concentration - lye.concentration) > CONCENTRATION_SLACK) {
    out.push(
      `You wrote a ${percent(concentration, style)} solution; these amounts give ${percent(lye.concentration, style)}.`,
    );
  }
  if (ratio !== null && Math.abs(ratio / lye.ratio - 1) > RATIO_SLACK) {
    out.push(
      `You wrote ${number(ratio, 2, style)} g water to 1 g alkali; these amounts give ${number(lye.ratio, 2, style)} g.`,
    );
  }
  return out;
}
