import type { Block, Result } from '../answer/types.ts';
import { type CheckFigures, checkRecipe } from '../engine/check.ts';
import { batterVolume, mouldVolume } from '../engine/mould.ts';
import type { Recipe } from '../engine/recipe.ts';
import { leastBatch, type Scaled, type ScaleTarget, scaleRecipe } from '../engine/scaling.ts';
import { batchGramsOf } from '../engine/soap.ts';
import { readScaleRequest, readScaleWish, type ScaleWish, weightOf } from '../reading/scale-target.ts';
import { mass, massAtMost, massBoth, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import { assumptionsOf } from './assumptions.ts';
import { beforeMixing, thinCaution, untilClear } from './cautions.ts';
import { check, styleFor } from './check.ts';
import { type Context, defineCommand, type Refusal, type Taken } from './define.ts';
import type { Kept, Step } from './kept.ts';
import { lye } from './lye.ts';
import type { OptionTable, Values } from './options.ts';
import { alkaliName, capital, inSentence, listed, nameOf } from './phrases.ts';
import { whichRecipe } from './questions.ts';
import { pureLine } from './recipe.ts';
import { recipeOptions } from './recipe-options.ts';
import { readingOf } from './recipe-reading.ts';
import { refused } from './refusals.ts';
import { lyeResult } from './result.ts';
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
type Refused = Refusal<'caustic'>;

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
    const wish = wishOf(asked.wish, given);
    const base = baseOf(asked.recipe, given, context);
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
    const scaledReading = readingOf(recipe, reading, factor);
    const dry = recipe.waterGrams === 0 && recipe.liquids.length === 0;
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

/** The recipe in the text, reckoned as its own command would, or the last one. */
function baseOf(text: string, given: ScaleOptions, context: Context): Result<Kept, Refused> {
  if (text === '') {
    const last = context.last.recipe;
    if (!last) return { ok: false, fault: whichRecipe('scale to 1 kg of oils: 500 g lard, 66 g NaOH, 150 g water') };
    return {
      ok: true,
      value: given.step === undefined ? last : { ...last, recipe: { ...last.recipe, scaleStepGrams: given.step } },
    };
  }
  const judge = context.read(text).alkali.length > 0 ? check : lye;
  const { fat: _fat, batch: _batch, factor: _factor, of: _of, ...own } = given;
  const ran = judge.run({ text, options: own }, context);
  if (!ran.ok) return { ok: false, fault: ran.fault as Refused };
  if (!ran.value.kept) throw new Error(`${judge.id} kept no recipe`);
  return { ok: true, value: ran.value.kept };
}

function wishOf(read: ScaleWish | null, given: ScaleOptions): ScaleWish | null {
  if (given.fat !== undefined) return { kind: 'fat-weight', grams: given.fat };
  if (given.batch !== undefined) return { kind: 'batch-weight', grams: given.batch };
  if (given.factor !== undefined) return { kind: 'factor', value: given.factor };
  if (read?.kind === 'weight' && given.of)
    return { kind: given.of === 'fat' ? 'fat-weight' : 'batch-weight', grams: read.grams };
  return read;
}

interface Asked {
  readonly text: string;
  readonly given: ScaleOptions;
}

const unclear = (
  message: string,
  hint: string,
  candidates: readonly string[],
  complete: (answer: string) => Taken | null,
): Refused => ({
  code: 'unclear',
  message,
  hint,
  candidates,
  caution: untilClear,
  complete,
});

function toWhat(text: string, given: ScaleOptions, context: Context): Refused {
  return unclear(
    'To what size?',
    'Say for example "1 kg of oils", "a batch of 1.2 kg", "a mould 24 x 8 x 6 cm", "12 bars of 100 g", "double", or what you have: "300 g coconut".',
    [],
    (answer) => (readScaleWish(context.reader(), answer) ? { text: `${answer}\n${text}`, options: given } : null),
  );
}

function tooMuchAlkali({ text, given }: Asked, { style }: Context): Refused {
  return {
    code: 'refused',
    message:
      'This recipe has too much alkali, and at another size it would burn skin just the same. I won’t multiply it.',
    hint: 'Say the superfat you want, for example "5 %": I then scale the fats and reckon the alkali for that.',
    candidates: [percent(0.05, style)],
    caution: untilClear,
    complete: (answer) => {
      const share = /^\D*(\d+(?:[.,]\d+)?)\s*%?\D*$/.exec(answer);
      const superfat = share ? Number((share[1] ?? '').replace(',', '.')) / 100 : Number.NaN;
      return superfat >= 0 && superfat < 0.5 ? { text, options: { ...given, superfat } } : null;
    },
  };
}

/** What the engine is to aim at, or the question that is left. */
function targetOf(wish: ScaleWish, { text, given }: Asked, style: Style): Result<ScaleTarget, Refused> {
  const instead = (said: string, answer: string): Taken => ({ text: text.replace(said, answer), options: given });
  switch (wish.kind) {
    case 'weight':
      return {
        ok: false,
        fault: unclear(
          `${wish.said} of what: the fats, or the whole batch in the pot?`,
          'Answer "oils" or "batch".',
          ['oils', 'batch'],
          (answer) => {
            const of = weightOf(answer);
            return of === null ? null : { text, options: { ...given, of } };
          },
        ),
      };
    case 'bars-of-what':
      return {
        ok: false,
        fault: unclear(
          `How heavy shall each of the ${wish.count} bars be?`,
          'Answer for example "100 g".',
          ['100 g', '4 oz'],
          (answer) =>
            /^\D*\d+(?:[.,]\d+)?\s*(g|gr|grams?|oz|ounces?)\b\D*$/i.test(answer)
              ? {
                  text: text.replace(/\bbars?\b|\bpieces\b|\bcakes\b|\bsoaps\b/i, (bars) => `${bars} of ${answer}`),
                  options: given,
                }
              : null,
        ),
      };
    case 'sides-of-what':
      return {
        ok: false,
        fault: unclear(
          `Is the mould ${wish.said} in centimetres or inches?`,
          'Answer "cm" or "inches".',
          ['cm', 'inches'],
          (answer) => {
            const unit = /\b(cm|centim\w*)\b/i.test(answer)
              ? 'cm'
              : /\b(in|inch(es)?)\b|"/i.test(answer)
                ? 'inches'
                : null;
            return unit === null ? null : instead(wish.said, `${wish.said} ${unit}`);
          },
        ),
      };
    case 'range':
      return {
        ok: false,
        fault: unclear(`${wish.said}: which figure shall I take?`, 'Answer with one weight.', [], (answer) =>
          /^\D*\d+(?:[.,]\d+)?\s*\p{L}+\W*$/u.test(answer) ? instead(wish.said, answer.trim()) : null,
        ),
      };
    case 'sides': {
      const volume = mouldVolume(wish.mould);
      if (volume.ok) return { ok: true, value: { kind: 'mould', millilitres: volume.value } };
      return {
        ok: false,
        fault: {
          code: 'impossible',
          message: `A mould of ${wish.said} can’t be.`,
          hint: `Each side must lie between 1 mm and 10 m; this one has ${number(volume.fault.value, 2, style)} cm.`,
          candidates: [],
          caution: untilClear,
        },
      };
    }
    default:
      return { ok: true, value: wish };
  }
}

/** What the recipe does not hold can't decide its size. */
function cannot(kind: string, fault: Refused): Refused {
  if (kind !== 'nothing-to-scale') return fault;
  return {
    ...fault,
    code: 'unclear',
    message: 'That ingredient is not in the recipe.',
    hint: 'Name one that is, with what you have of it.',
  };
}

const times = (factor: number, style: Style): string =>
  `${number(factor, factor < 0.1 ? 4 : factor < 1 ? 3 : 2, style)} times the recipe`;

function leadOf({ recipe, factor, scarcest }: Scaled, wish: ScaleWish, { catalogue }: Context, style: Style): string {
  const step = recipe.scaleStepGrams;
  const alkali = recipe.alkali.map(({ id, grams }) => `${massAtMost(grams, style, step)} ${alkaliName[id]}`);
  const water = recipe.waterGrams > 0 ? [`${massBoth(recipe.waterGrams, style, step)} water`] : [];
  const what =
    wish.kind === 'at-hand' && scarcest
      ? `With your ${nameOf(scarcest, catalogue)}: ${times(factor, style)}`
      : capital(times(factor, style));
  return `${what}. Weigh ${listed([...alkali, ...water])} for ${readMass(fatGramsOf(recipe), style)} fat.`;
}

const fatGramsOf = ({ fats }: Recipe): number => fats.reduce((sum, { grams }) => sum + grams, 0);

type Rows = Extract<Block, { kind: 'facts' }>['rows'];

function rowsOf(recipe: Recipe, others: Kept['reading']['others'], style: Style): Rows {
  const step = recipe.scaleStepGrams;
  const show = (grams: number): string => massBoth(grams, style, step);
  return [
    ...recipe.fats.map(({ fat, grams }) => ({ label: capital(inSentence(fat.name)), value: show(grams) })),
    ...recipe.alkali.map(({ id, grams }) => ({
      label: capital(alkaliName[id]),
      value: massAtMost(grams, style, step),
    })),
    ...(recipe.waterGrams > 0 ? [{ label: 'Water', value: show(recipe.waterGrams) }] : []),
    ...recipe.liquids.map(({ liquid, grams }) => ({ label: capital(inSentence(liquid.name)), value: show(grams) })),
    ...recipe.acids.map(({ acid, grams }) => ({ label: capital(inSentence(acid.name)), value: show(grams) })),
    ...recipe.after.map(({ fat, grams }) => ({
      label: `${capital(inSentence(fat.name))}, after the cook`,
      value: show(grams),
    })),
    ...others.flatMap(({ name, grams }) => (grams === null ? [] : [{ label: capital(name), value: show(grams) }])),
    { label: 'All together', value: show(batchGramsOf(recipe)) },
  ];
}

/** What a plain multiple would have said, beside what was reckoned. */
function multipleLine({ multiple, recipe }: Scaled, newSuperfat: boolean, style: Style): string {
  const step = recipe.scaleStepGrams;
  const plain = listed(multiple.map(({ grams }) => mass(grams, style, Math.min(0.1, step))));
  return newSuperfat
    ? `The alkali is reckoned for the superfat you want; a plain multiple would be ${plain}.`
    : `The alkali is reckoned anew and rounded down to your scale; a plain multiple would be ${plain}.`;
}

const superfatLine = ({ superfat }: CheckFigures, style: Style): string =>
  `Superfat ${percent(superfat.nominal, style)}; fats differ from lot to lot, so expect ${
    superfat.low < 0
      ? `between ${percent(-superfat.low, style)} too much alkali and ${percent(superfat.high, style)} fat left over`
      : percentRange(superfat.low, superfat.high, style)
  }.`;

const leastLine = (recipe: Recipe, grams: number, style: Style): Block => ({
  kind: 'text',
  text: `The least batch that a scale showing ${mass(recipe.scaleStepGrams, { ...style, massUnit: 'g' })} weighs well: about ${massBoth(Math.ceil(grams / 10) * 10, style)} in the pot.`,
});

function sharesOf({ fats }: CheckFigures, style: Style): Block[] {
  return [
    {
      kind: 'table',
      caption: 'Fats: weight and share',
      columns: [
        { title: 'Fat', align: 'left' },
        { title: 'Weight', align: 'right' },
        { title: 'Share', align: 'right' },
      ],
      rows: fats.map(({ fat, grams, share }) => [
        capital(inSentence(fat.name)),
        readMass(grams, style),
        percent(share, style),
      ]),
    },
  ];
}

/** What was taken while reading a recipe that came with the request. */
function takenOf({ reading, recipe }: Kept, style: Style): string[] {
  const unsaid = recipe.alkali.filter(
    ({ id }) => id === 'koh' && !reading.purity && reading.alkali.every(({ purity }) => purity === null),
  );
  return [...assumptionsOf(reading, true), ...unsaid.map(({ id, purity }) => `${pureLine(id, purity, style)}.`)];
}

/** What was taken of the size. */
function wishTaken(wish: ScaleWish, recipe: Recipe, style: Style): string[] {
  switch (wish.kind) {
    case 'sides':
    case 'mould': {
      const volume = batterVolume(recipe);
      return [
        `I took the mould as filled to the brim: ${number(volume, 0, style)} mL, at ${number(batchGramsOf(recipe) / volume, 2, style)} g/mL.`,
      ];
    }
    case 'bars':
      return wish.state === 'poured'
        ? [
            `I took ${readMass(wish.grams, style)} as what each bar weighs when poured; it loses water as it cures. If you mean cured bars, say "cured".`,
          ]
        : [];
    case 'fat-weight':
      return recipe.after.length > 0 ? ['I took it as the fat cooked, without what goes in after the cook.'] : [];
    default:
      return [];
  }
}

function factorStep({ factor, recipe }: Scaled, from: Recipe, style: Style): Step {
  const [before, after] = [fatGramsOf(from), fatGramsOf(recipe)];
  return {
    name: 'factor of the size',
    asked: ['factor', 'times', 'scale', 'size', 'scaled'],
    formula: 'wanted size ÷ size of the recipe',
    inputs: [
      { name: 'fats before', value: before, unit: 'g' },
      { name: 'fats now', value: after, unit: 'g' },
    ],
    value: factor,
    unit: '1',
    shown: `${number(factor, 4, style)}: ${readMass(before, style)} of fat become ${readMass(after, style)}`,
    source: 'proportion; each fat is then rounded to the scale’s step',
  };
}
