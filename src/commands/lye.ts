import type { NonEmpty } from '../answer/types.ts';
import type { AlkaliId, Catalogue } from '../catalogue/types.ts';
import type { AlkaliPart, SplitBy } from '../engine/alkali.ts';
import { type CheckFigures, checkRecipe, superfatAtPurity } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';
import { insteadOfWater, waterBrought } from '../engine/soap.ts';
import { concentrationOf, USUAL_WATER, WATER_LIMITS, type WaterRule } from '../engine/water.ts';
import { toWeigh, USUAL_SUPERFAT } from '../engine/weigh.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { wantsOwnLye } from '../reading/recipe/asks.ts';
import { mass, massAtMost, massBoth, percent, percentRange, type Style } from '../units/print.ts';
import { assumptionsOf, inOneLine } from './assumptions.ts';
import { beforeMixing, thinCaution, untilClear } from './cautions.ts';
import { styleFor } from './check.ts';
import { type Context, defineCommand, type Refusal } from './define.ts';
import { detailsOf } from './details.ts';
import { elsewhere } from './everyday.ts';
import { localLines } from './local.ts';
import { nextSteps } from './next-steps.ts';
import type { OptionTable, Values } from './options.ts';
import { alkaliAmounts, alkaliName, chance, inSentence, listed } from './phrases.ts';
import { mostPressing, superfatRefusal, whichRecipe } from './questions.ts';
import { countedLine, readLine } from './read-line.ts';
import { partsOf, pureLine, purityOf, USUAL_STEP } from './recipe.ts';
import { recipeOptions } from './recipe-options.ts';
import { refused } from './refusals.ts';
import { lyeResult } from './result.ts';
import { swapLine, swapStep } from './swap-line.ts';
import { isUndissolved, waterLine } from './verdict-words.ts';
import { warningsOf } from './warnings.ts';
import { recipeWorking } from './working.ts';

const options = {
  ...recipeOptions,
  alkali: {
    kind: 'choice',
    about: 'the alkali to weigh',
    example: 'alkali=KOH',
    choices: { naoh: 'naoh', koh: 'koh', both: 'both' },
  },
  koh: {
    kind: 'share',
    about: 'the share of the work that potassium hydroxide (KOH) does beside sodium hydroxide (NaOH)',
    example: 'koh=60%',
    low: 0,
    high: 1,
  },
  by: {
    kind: 'choice',
    about: 'what the share of the KOH is of: the fats’ demand, or the weight of the alkalis',
    example: 'by=weight',
    choices: { demand: 'demand', weight: 'weight' },
  },
  concentration: {
    kind: 'share',
    about: 'the share of alkali in the lye solution',
    example: 'concentration=33%',
    low: 0.01,
    high: 0.5,
    inText: true,
  },
  ratio: {
    kind: 'ratio',
    about: 'grams of water to one gram of alkali',
    example: 'ratio=2',
    low: 1,
    high: 20,
    inText: true,
  },
  water: {
    kind: 'mass-or-share',
    about: 'the water, by weight or as a share of the fats',
    example: 'water=38%',
    inText: true,
  },
} as const satisfies OptionTable;

type LyeOptions = Values<typeof options>;

export const lye = defineCommand({
  id: 'lye',
  summary: 'How much alkali and water for these fats? List the fats.',
  risk: 'caustic',
  options,
  examples: [
    { say: 'lye 500 g olive oil, 200 g coconut oil', about: 'sodium hydroxide for a bar' },
    { say: 'lye: 1 kg lard, superfat 8 %', about: 'another superfat' },
    { say: 'lye alkali=KOH purity=90% ratio=3 700 g sunflower oil, 300 g coconut oil', about: 'soft soap' },
    { say: 'lye koh=60% step=0.1g 400 g tallow, 300 g stearic acid, 300 g coconut oil', about: 'both alkalis' },
  ],
  isIngredient: (text, rest, { read }) => {
    if (
      /^\s*[:=|–-]?\s*(?:\(|(?:water|solution|soln|sol|liquid|liquor|crystal|flake|bead|pearl|pellet|granule|is|was|at|ok|right|heavy)\b(?!\s*=)|(?:purity|strength|weight|amount|bought|used|comes|came|has|had|says|went|goes|seems)\b(?!\s*[=:]))/i.test(
        rest,
      )
    ) {
      return true;
    }
    if (!/^\s*[:=|–-]?\s*[\d.,½¼¾⅓⅔]/.test(rest)) return false;
    // "lye 102 g, olive 450 g": without its first word an amount is left that nothing takes
    const whole = read(text);
    // "lye 75 g water 150 g coconut 150 g and olive": nobody can tell whose the first one is
    if (whole.doubts.some((one) => one.id === 'unplaced' && rest.trimStart().startsWith(one.said))) return true;
    const part = read(rest);
    const isWeighed =
      whole.alkali.length > 0 || whole.doubts.some((one) => one.id === 'no-unit' && /^lye/i.test(one.said));
    // "lye 75 g water 150 g coconut 150 g, the rest olive": how much olive is the question
    const isUnfinished = whole.doubts.every(({ id }) => id === 'no-amount');
    return isWeighed && (isUnfinished || whole.doubts.length <= part.doubts.length);
  },
  // A whole recipe after the word: the amount is there, and wants judging.
  instead: (text, context) => {
    const whole = context.read(text);
    const { fats, alkali, doubts } = whole;
    if (wantsOwnLye(text, whole)) return null;
    // "lye for 500 g oil, 5 %": the fat has no name yet, and 5 % is no strength
    if (doubts.some(({ id }) => id === 'ambiguous-name')) return null;
    const other = elsewhere('lye')(text, context);
    // "lye for equal parts coconut, olive, palm, 900 g": a list of fats is nothing to convert
    if (other === 'convert' && (fats.length > 1 || doubts.some(({ id }) => /^(?:shares|no-amount)/.test(id))))
      return null;
    return other ?? (alkali.length > 0 ? 'check' : null);
  },
  run: ({ text, options: given }, context) => {
    const { catalogue, read, settings } = context;
    const reading = read(text);
    if (text.trim() === '') return { ok: false, fault: whichRecipe('lye 500 g olive oil, 200 g coconut oil') };
    const question =
      superfatRefusal(given.superfat, context.style) ?? mostPressing(reading, context) ?? splitQuestion(reading, given);
    if (question) return { ok: false, fault: question };
    const style = styleFor(reading, given.unit, context);
    const step = given.step ?? reading.scaleStep ?? settings.step ?? USUAL_STEP;
    const parts = partsOf(reading, catalogue, step);
    const { alkali, by, taken: takenAlkali } = alkaliFor(reading, given, text, catalogue, style);
    const { rule, taken: takenWater } = waterRule(reading, given, context, style);
    const superfat = given.superfat ?? reading.superfat;
    const left = superfat ?? settings.superfat ?? USUAL_SUPERFAT;
    const weighed = toWeigh({ ...parts, superfat: left, alkali, splitBy: by, water: rule }, catalogue.fats);
    if (!weighed.ok) return { ok: false, fault: refused(weighed.fault, catalogue) };
    const recipe = takenWater.length > 0 ? withoutNeedlessWater(weighed.value.recipe) : weighed.value.recipe;
    const checked = checkRecipe(recipe, catalogue.fats, left);
    if (!checked.ok) return { ok: false, fault: refused(checked.fault, catalogue) };
    const figures = checked.value;
    const dry = recipe.waterGrams === 0 && insteadOfWater(recipe).length === 0;
    // What the person wrote of superfat or water was followed, so that nothing of it can contradict the amounts.
    const followed = { ...reading, superfat: null, concentration: null, ratio: null };
    return {
      ok: true,
      value: {
        title: 'Alkali and water to weigh',
        lead: leadOf(recipe, figures, style),
        body: bodyOf(recipe, figures, reading, catalogue, style).map((line) => ({ kind: 'text' as const, text: line })),
        details: () => detailsOf(recipe, figures, reading, catalogue, style),
        assumptions: inOneLine([
          ...localLines([...recipe.fats, ...recipe.after], catalogue),
          ...assumptionsOf(reading, false),
          ...(superfat === null && settings.superfat === undefined
            ? [`I took ${percent(USUAL_SUPERFAT, style)} superfat.`]
            : []),
          ...takenAlkali.map((line) => line + otherPurities(line, recipe, catalogue, style)),
          ...(dry || recipe.waterGrams > 0 ? takenWater : [milkLine(recipe)]),
          ...(given.step === undefined && reading.scaleStep === null && settings.step === undefined
            ? [`I took a scale that shows ${mass(step, { ...style, massUnit: 'g' })}.`]
            : []),
        ]),
        warnings: warningsOf(
          { recipe, purityAssumed: [], dry, waterAssumed: null },
          figures,
          followed,
          catalogue,
          style,
        ),
        caution: cautionOf(figures),
        actions: [
          ...swapStep(reading, catalogue),
          { label: 'details', request: 'details' },
          ...nextSteps,
          { label: 'first aid', request: 'safety' },
        ],
        result: lyeResult(recipe, figures),
        kept: { reading, recipe, superfat },
        working: () => recipeWorking(recipe, figures, catalogue, style),
      },
    };
  },
});

/** Milk that brings as much water as the solution needs, or more. */
/** Where nobody asks for water and the milk alone makes a lye of usual strength, it is meant for all of the water. */
function withoutNeedlessWater(recipe: Recipe): Recipe {
  if (insteadOfWater(recipe).length === 0) return recipe;
  const alkali = recipe.alkali.reduce((sum, { grams }) => sum + grams, 0);
  const isEnough = concentrationOf(waterBrought(recipe) / alkali) <= WATER_LIMITS.strong;
  return isEnough ? { ...recipe, waterGrams: 0 } : recipe;
}

const milkLine = (recipe: Recipe): string =>
  `I took no water beside the ${listed(insteadOfWater(recipe).map(({ name }) => inSentence(name)))}: it brings enough.`;

function cautionOf({ verdict }: CheckFigures): NonEmpty<string> {
  return verdict === 'thin-margin' || verdict === 'excess-alkali' ? thinCaution : beforeMixing;
}

/** Both alkalis named and no word on how they share the work. */
function splitQuestion(reading: RecipeReading, given: LyeOptions): Refusal<'caustic'> | null {
  const both = new Set(reading.alkaliNamed).size > 1 || given.alkali === 'both';
  if (!both || given.koh !== undefined || reading.alkaliSplit || (given.alkali && given.alkali !== 'both')) return null;
  return {
    code: 'unclear',
    message: 'How shall sodium hydroxide (NaOH) and potassium hydroxide (KOH) share the work?',
    hint: 'Say the share of the KOH, for example koh=60%. For one of them alone say NaOH or KOH.',
    candidates: ['NaOH', 'KOH'],
    caution: untilClear,
  };
}

interface ForAlkali {
  readonly alkali: readonly AlkaliPart[];
  readonly by: SplitBy;
  readonly taken: readonly string[];
}

/** Said of a split of two alkalis. */
const byWeight = /\bby weight\b|\bof the weight\b/i;

function alkaliFor(
  reading: RecipeReading,
  given: LyeOptions,
  text: string,
  catalogue: Catalogue,
  style: Style,
): ForAlkali {
  const taken: string[] = [];
  const by = given.by ?? (byWeight.test(text) ? 'weight' : 'demand');
  const kohShare = given.koh ?? (reading.alkaliSplit ? reading.alkaliSplit[1] : null);
  const named = new Set(reading.alkaliNamed);
  let shares: readonly { readonly id: AlkaliId; readonly share: number }[];
  if (given.alkali === 'naoh' || given.alkali === 'koh') shares = [{ id: given.alkali, share: 1 }];
  else if (kohShare !== null) {
    shares = [
      { id: 'naoh' as const, share: 1 - kohShare },
      { id: 'koh' as const, share: kohShare },
    ].filter(({ share }) => share > 0);
    if (by === 'demand' && !given.by && shares.length > 1)
      taken.push('I took the shares of the alkalis as shares of the work they do; for weight say by=weight');
  } else if (named.size === 1) shares = [...named].map((id) => ({ id, share: 1 }));
  else shares = [{ id: 'naoh', share: 1 }];
  const apart =
    given.purity === undefined ? reading.purity : { nominal: given.purity, low: given.purity, high: given.purity };
  if (shares.length === 1 && named.size !== 1 && !given.alkali && kohShare === null)
    taken.push(`I took ${alkaliName.naoh}${apart === null && isPure(catalogue) ? ', pure' : ''}`);
  const alkali = shares.map(({ id, share }) => {
    const written = reading.alkali.find((one) => one.id === id)?.purity ?? null;
    const { purity, assumed } = purityOf(id, written, apart, shares.length > 1, catalogue);
    if (assumed && !taken.some((one) => one.endsWith(', pure'))) taken.push(pureLine(id, purity, style));
    return { id, share, purity };
  });
  return { alkali, by, taken: taken.map((line) => `${line}.`) };
}

const isPure = ({ alkalis }: Catalogue): boolean => alkalis.get('naoh')?.purity.usual === 1;

/** After a taken purity of potassium hydroxide: what the other usual ones would do. */
function otherPurities(line: string, recipe: Recipe, catalogue: Catalogue, style: Style): string {
  if (!line.includes(alkaliName.koh) || !line.includes('pure')) return '';
  const at = (purity: number): string => percent(superfatAtPurity(recipe, catalogue.fats, 'koh', purity), style);
  return ` With this amount, 85 % would leave ${at(0.85)}, 100 % ${at(1)}: look at the label.`;
}

function waterRule(
  reading: RecipeReading,
  given: LyeOptions,
  { settings }: Context,
  style: Style,
): { readonly rule: WaterRule; readonly taken: readonly string[] } {
  const rule = ((): WaterRule | null => {
    if (given.water) {
      return 'grams' in given.water
        ? { kind: 'grams', value: given.water.grams }
        : { kind: 'share-of-fat', value: given.water.share };
    }
    if (given.concentration !== undefined) return { kind: 'concentration', value: given.concentration };
    if (given.ratio !== undefined) return { kind: 'ratio', value: given.ratio };
    if (reading.concentration !== null) return { kind: 'concentration', value: reading.concentration };
    if (reading.ratio !== null) return { kind: 'ratio', value: reading.ratio };
    if (reading.waterShare !== null) return { kind: 'share-of-fat', value: reading.waterShare };
    return reading.waterGrams === null ? null : { kind: 'grams', value: reading.waterGrams };
  })();
  if (rule) return { rule, taken: [] };
  if (settings.water) return { rule: settings.water, taken: [] };
  return { rule: USUAL_WATER, taken: [`I took a ${percent(USUAL_WATER.value, style)} lye solution.`] };
}

function leadOf(recipe: Recipe, { superfat, verdict, lye }: CheckFigures, style: Style): string {
  const step = recipe.scaleStepGrams;
  const weigh = [
    ...recipe.alkali.map(({ id, grams }) => `${massAtMost(grams, style, step)} ${alkaliName[id]}`),
    ...(recipe.waterGrams > 0 ? [`${massBoth(recipe.waterGrams, style, step)} water`] : []),
  ];
  const left = `to leave about ${percent(superfat.nominal, style)} of the fat over (superfat)`;
  if (isUndissolved(lye)) return `Weigh ${listed(weigh)}, ${left}; but this is too little water to dissolve it.`;
  return verdict === 'thin-margin'
    ? `Weigh ${listed(weigh)}, ${left}; but excess alkali is ${chance(superfat.chanceOfExcess)}.`
    : `Weigh ${listed(weigh)}, ${left}.`;
}

function bodyOf(
  recipe: Recipe,
  figures: CheckFigures,
  reading: RecipeReading,
  catalogue: Catalogue,
  style: Style,
): string[] {
  const { superfat, needed } = figures;
  const step = recipe.scaleStepGrams;
  const range =
    superfat.low < 0
      ? `between ${percent(-superfat.low, style)} too much alkali and ${percent(superfat.high, style)} fat left over`
      : `${percentRange(superfat.low, superfat.high, style)} left over`;
  const zero = alkaliAmounts(needed.atZero, (grams) => mass(grams, style, step));
  return [
    `Fats differ from lot to lot: expect ${range}.${needed.asked > 0 ? ` With ${zero} nothing would be left over.` : ''}`,
    ...(recipe.after.length > 0
      ? [`With the fat added after the cook: ${percent(superfat.withAfter, style)} left over in the bar.`]
      : []),
    waterLine(figures, style),
    readLine({ ...recipe, waterGrams: reading.waterGrams ?? 0 }, reading, style, true),
    ...[countedLine(recipe, figures, style), swapLine(recipe, figures, reading, catalogue, style)].filter(
      (line) => line !== null,
    ),
    ...(figures.verdict === 'thin-margin' && needed.asked < USUAL_SUPERFAT
      ? ['For skin keep a margin: 5 % superfat is usual.']
      : []),
  ];
}
