import { checkRecipe } from '../engine/check.ts';
import { leastBatch, scaleRecipe } from '../engine/scaling.ts';
import { insteadOfWater } from '../engine/soap.ts';
import { readScaleRequest, readScaleWish, type ScaleWish } from '../reading/question/scale-target.ts';
import { beforeMixing, thinCaution } from './cautions.ts';
import { styleFor } from './check.ts';
import { type Context, defineCommand } from './define.ts';
import type { OptionTable, Values } from './options.ts';
import { recipeIn } from './recipe-in.ts';
import { recipeOptions } from './recipe-options.ts';
import { readingOf } from './recipe-reading.ts';
import { refused } from './refusals.ts';
import { lyeResult } from './result.ts';
import { cannot, targetOf, tooMuchAlkali, toWhat } from './scale-questions.ts';
import {
  factorStep,
  leadOf,
  leastLine,
  multipleLine,
  rowsOf,
  sharesOf,
  superfatLine,
  takenOf,
  wishTaken,
} from './scale-words.ts';
import { warningsOf } from './warnings.ts';
import { recipeWorking } from './working.ts';

const most = 100_000;
const options = {
  ...recipeOptions,
  fat: { kind: 'mass', about: 'the weight of the fats', example: 'fat=1kg', low: 1, high: most, inText: true },
  batch: { kind: 'mass', about: 'the weight of everything in the pot', example: 'batch=1.2kg', low: 1, high: most },
  factor: {
    kind: 'ratio',
    about: 'how many times the recipe',
    example: 'factor=1.5',
    low: 0.0001,
    high: 10_000,
    inText: true,
  },
  of: {
    kind: 'choice',
    about: 'what a weight is of',
    example: 'of=batch',
    choices: { fat: 'fat', fats: 'fat', oil: 'fat', oils: 'fat', batch: 'batch' },
  },
} as const satisfies OptionTable;

type ScaleOptions = Values<typeof options>;

export const scale = defineCommand({
  id: 'scale',
  summary: 'Another size: by weight, mould, bars, factor, or what you have.',
  risk: 'caustic',
  options,
  examples: [
    {
      say: 'scale to 1 kg of oils: 500 g olive oil, 200 g coconut oil, 98 g NaOH, 230 g water',
      about: 'by the weight of the fats',
    },
    { say: 'scale to a mould 24 x 8 x 6 cm: 500 g lard, 66 g NaOH, 150 g water', about: 'by the sides of the mould' },
    { say: 'scale to 12 bars of 100 g: 500 g lard, 66 g NaOH, 150 g water', about: 'by bars' },
    { say: 'scale factor=2 500 g lard, 66 g NaOH, 150 g water', about: 'twice the recipe' },
  ],
  // "Scale: 1 g", "scale reads 0.1 g" at the head of a post: what the person weighs on.
  isIngredient: (text, rest) =>
    text.includes('\n') && /^\s*[:=]?\s*(?:reads|shows|step|resolution|accura\w+|(?:\d?[.,])?\d ?g\b)/i.test(rest),
  run: ({ text, options: given }, context) => {
    const { catalogue } = context;
    const asked = readScaleRequest(context.reader(), text);
    const wish = wishOf(asked.wish, given) ?? ownMould(text, context);
    const { fat: _fat, batch: _batch, factor: _factor, of: _of, ...others } = given;
    const base = recipeIn(asked.recipe, others, 'scale to 1 kg of oils: 500 g lard, 66 g NaOH, 150 g water', context);
    if (!base.ok) return base;
    const style = styleFor(base.value.reading, given.unit, context);
    if (!wish) return { ok: false, fault: toWhat(text, given, context) };
    const target = targetOf(wish, { text, given }, style);
    if (!target.ok) return target;
    const superfat = given.superfat ?? asked.superfat ?? undefined;
    const { recipe: from, reading } = base.value;
    const checkedFrom = checkRecipe(from, catalogue.fats);
    if (!checkedFrom.ok) return { ok: false, fault: refused(checkedFrom.fault, catalogue) };
    const own = checkedFrom.value.superfat.nominal;
    if (superfat === undefined && own < -1e-9) return { ok: false, fault: tooMuchAlkali({ text, given }, context) };
    const scaled = scaleRecipe(from, catalogue.fats, target.value, superfat);
    if (!scaled.ok) return { ok: false, fault: cannot(scaled.fault.kind, refused(scaled.fault, catalogue)) };
    const { recipe, factor } = scaled.value;
    const checked = checkRecipe(recipe, catalogue.fats, scaled.value.superfat);
    if (!checked.ok) return { ok: false, fault: refused(checked.fault, catalogue) };
    const figures = checked.value;
    const scaledReading = { ...readingOf(recipe, reading, factor), superfat: scaled.value.superfat };
    const dry = recipe.waterGrams === 0 && insteadOfWater(recipe).length === 0;
    const fitness = leastBatch(recipe, catalogue.fats);
    return {
      ok: true,
      value: {
        title: 'The recipe at another size',
        lead: leadOf(scaled.value, wish, context, style),
        body: [
          { kind: 'facts', rows: rowsOf(recipe, scaledReading.others, style) },
          { kind: 'text', text: multipleLine(scaled.value, superfat !== undefined, style) },
          { kind: 'text', text: superfatLine(figures, style) },
          ...(fitness.ok && fitness.value.leastFactor < 1 ? [leastLine(recipe, fitness.value.batchGrams, style)] : []),
        ],
        details: sharesOf(figures, style),
        assumptions: [...(asked.recipe === '' ? [] : takenOf(base.value, style)), ...wishTaken(wish, recipe, style)],
        warnings: warningsOf(
          { recipe, purityAssumed: [], dry, waterAssumed: null },
          figures,
          { ...scaledReading, superfat: null },
          catalogue,
          style,
        ),
        caution: figures.verdict === 'thin-margin' || figures.verdict === 'excess-alkali' ? thinCaution : beforeMixing,
        actions: [
          { label: 'post it', request: 'summary' },
          { label: 'details', request: 'details' },
          { label: 'first aid', request: 'safety' },
        ],
        result: {
          ...lyeResult(recipe, figures),
          factor,
          leastBatchGrams: fitness.ok ? fitness.value.batchGrams : null,
        },
        kept: { reading: scaledReading, recipe, superfat: superfat ?? base.value.superfat },
        working: () => [...recipeWorking(recipe, figures, catalogue, style), factorStep(scaled.value, from, style)],
      },
    };
  },
});

/** "to my mould": the usual one of who asks. */
function ownMould(text: string, { reader, settings }: Context): ScaleWish | null {
  if (!/\bmou?lds?\b/i.test(text) || settings.mould === undefined) return null;
  return readScaleWish(reader(), `mould ${settings.mould}`);
}

function wishOf(read: ScaleWish | null, given: ScaleOptions): ScaleWish | null {
  if (given.fat !== undefined) return { kind: 'fat-weight', grams: given.fat };
  if (given.batch !== undefined) return { kind: 'batch-weight', grams: given.batch };
  if (given.factor !== undefined) return { kind: 'factor', value: given.factor };
  if (read?.kind === 'weight' && given.of)
    return { kind: given.of === 'fat' ? 'fat-weight' : 'batch-weight', grams: read.grams };
  return read;
}
