import type { Block } from '../answer/types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import { type CheckFigures, checkRecipe, superfatAtPurity } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';
import { USUAL_SUPERFAT } from '../engine/weigh.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { mass, percent, type Style } from '../units/print.ts';
import { assumptionsOf, inOneLine, saysLye } from './assumptions.ts';
import { beforeMixing, excessCaution, thinCaution } from './cautions.ts';
import { type Context, defineCommand } from './define.ts';
import { detailsOf } from './details.ts';
import { localLines } from './local.ts';
import { nextSteps } from './next-steps.ts';
import { mostPressing, superfatRefusal, whichRecipe } from './questions.ts';
import { countedLine, readLine } from './read-line.ts';
import { pureLine, recipeOf, USUAL_STEP, type Weighed } from './recipe.ts';
import { recipeOptions } from './recipe-options.ts';
import { refused } from './refusals.ts';
import { lyeResult } from './result.ts';
import { swapLine, swapStep } from './swap-line.ts';
import { afterLine, leadOf, mixUpLine, needLine, nextLine, spreadLine, waterLine } from './verdict-words.ts';
import { warningsOf } from './warnings.ts';
import { recipeWorking } from './working.ts';

export const check = defineCommand({
  id: 'check',
  summary: 'Is the lye of a recipe right? Paste the recipe.',
  risk: 'caustic',
  options: recipeOptions,
  examples: [
    {
      say: 'check 450 g olive oil, 225 g coconut oil, 75 g castor oil, 102 g NaOH, 230 g water',
      about: 'a recipe in one line',
    },
    { say: 'check: 500 g lard, 100 g NaOH, 150 g water', about: 'far too much alkali' },
    { say: 'check superfat=8 step=0.1g 300 g tallow, 100 g coconut oil, 54 g NaOH, 110 g water', about: 'options' },
  ],
  instead: (text, { read }) => {
    const { alkali, doubts, fats } = read(text);
    return alkali.length === 0 && fats.length > 0 && doubts.length === 0 ? 'lye' : null;
  },
  run: ({ text, options }, context) => {
    const { catalogue, read, settings } = context;
    const reading = read(text);
    if (text.trim() === '') return { ok: false, fault: whichRecipe('check 500 g lard, 66 g NaOH, 150 g water') };
    const question = superfatRefusal(options.superfat, context.style) ?? mostPressing(reading, context);
    if (question) return { ok: false, fault: question };
    const style = styleFor(reading, options.unit, context);
    const step = options.step ?? reading.scaleStep ?? settings.step ?? USUAL_STEP;
    const weighed = recipeOf(reading, catalogue, { step, purity: options.purity ?? null }, style);
    const said = options.superfat ?? reading.superfat;
    const checked = checkRecipe(weighed.recipe, catalogue.fats, said ?? settings.superfat ?? USUAL_SUPERFAT);
    if (!checked.ok) return { ok: false, fault: refused(checked.fault, catalogue) };
    const figures = checked.value;
    return {
      ok: true,
      value: {
        title: 'Is the lye right?',
        lead: leadOf(weighed.recipe, figures, said === null && settings.superfat === undefined, style),
        body: bodyOf(weighed, figures, reading, catalogue, style),
        details: () => detailsOf(weighed.recipe, figures, reading, catalogue, style),
        assumptions: inOneLine([
          ...localLines([...weighed.recipe.fats, ...weighed.recipe.after], catalogue),
          ...assumptionsOf(reading, isTakenPure(weighed)),
          ...takenOf(weighed, figures, reading, { superfat: said, step: options.step }, context, style),
        ]),
        warnings: warningsOf(weighed, figures, reading, catalogue, style),
        caution: cautionOf(figures),
        actions: [
          ...swapStep(reading, catalogue),
          { label: 'details', request: 'details' },
          // what must not be mixed needs no next step of mixing
          ...(figures.verdict === 'excess-alkali' ? [] : nextSteps),
          { label: 'first aid', request: 'safety' },
        ],
        result: lyeResult(weighed.recipe, figures),
        kept: { reading, recipe: weighed.recipe, superfat: said },
        working: () => recipeWorking(weighed.recipe, figures, catalogue, style),
      },
    };
  },
});

/** Ounces for those who wrote in ounces, or who ask for them. */
export const styleFor = (reading: RecipeReading, unit: 'g' | 'oz' | undefined, { style }: Context): Style => ({
  ...style,
  massUnit: unit ?? (reading.ounces ? 'oz' : style.massUnit),
});

const line = (text: string): Block => ({ kind: 'text', text });

function bodyOf(
  { recipe, dry }: Weighed,
  figures: CheckFigures,
  reading: RecipeReading,
  catalogue: Catalogue,
  style: Style,
): Block[] {
  const texts = [
    needLine(recipe, figures, style),
    spreadLine(recipe, figures, style),
    afterLine(recipe, figures, style),
    // "fine to dissolve" has no place under what must not be mixed
    dry || (figures.verdict === 'excess-alkali' && figures.lye.dissolving === 'usual')
      ? null
      : waterLine(figures, style),
    readLine(recipe, reading, style),
    countedLine(recipe, figures, style),
    mixUpLine(figures, style),
    nextLine(recipe, figures, dry, style),
    swapLine(recipe, figures, reading, catalogue, style),
  ];
  return texts.filter((text) => text !== null).map(line);
}

/** Sodium hydroxide whose purity nobody said, here or once for all. */
const isTakenPure = ({ recipe, purityAssumed }: Weighed): boolean =>
  purityAssumed.includes('naoh') && recipe.alkali.every(({ id, purity }) => id !== 'naoh' || purity.nominal === 1);

/** Defaults in use, each said. */
function takenOf(
  weighed: Weighed,
  figures: CheckFigures,
  reading: RecipeReading,
  given: { readonly superfat: number | null; readonly step: number | undefined },
  { catalogue, settings }: Context,
  style: Style,
): string[] {
  const { recipe, purityAssumed, waterAssumed } = weighed;
  const lines: string[] = [];
  for (const id of new Set(purityAssumed)) {
    const purity = recipe.alkali.find((one) => one.id === id)?.purity;
    if (!purity || (id === 'naoh' && isTakenPure(weighed) && reading.assumptions.some(saysLye))) continue;
    lines.push(`${pureLine(id, purity, style)}${id === 'koh' ? otherPurities(recipe, catalogue, style) : ''}.`);
  }
  if (waterAssumed) lines.push(waterAssumed);
  if (given.superfat === null && settings.superfat === undefined)
    lines.push(`I took ${percent(figures.needed.asked, style)} as the superfat to compare with.`);
  if (given.step === undefined && reading.scaleStep === null && settings.step === undefined)
    lines.push(`I took a scale that shows ${mass(recipe.scaleStepGrams, { ...style, massUnit: 'g' })}.`);
  return lines;
}

/** What the other purities that potassium hydroxide is sold at would do to the superfat. */
function otherPurities(recipe: Recipe, catalogue: Catalogue, style: Style): string {
  const at = (purity: number): string => percent(superfatAtPurity(recipe, catalogue.fats, 'koh', purity), style);
  return `: at 85 % the superfat would be ${at(0.85)}, at 100 % ${at(1)}. The label says which`;
}

function cautionOf({ verdict }: CheckFigures) {
  if (verdict === 'excess-alkali') return excessCaution;
  return verdict === 'thin-margin' ? thinCaution : beforeMixing;
}
