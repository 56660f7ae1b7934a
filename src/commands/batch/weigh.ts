/** A weight that was really taken: of which line, and what it makes of the batch. */
import type { Block } from '../../answer/types.ts';
import { type Batch, gramsOfLine, isDissolved, isMixed, type Line } from '../../engine/batch/batch.ts';
import { deviationsOf, mendOf, recipeAsTaken } from '../../engine/batch/weights.ts';
import { type CheckFigures, checkRecipe } from '../../engine/check.ts';
import type { Recipe } from '../../engine/recipe.ts';
import { mass, massBoth, number, percent, percentRange, type Style } from '../../units/print.ts';
import { excessCaution, thinCaution } from '../cautions.ts';
import type { Context, Said } from '../define.ts';
import { alkaliName, capital, chance, inSentence, listed } from '../phrases.ts';
import { shelvesOf } from './plan.ts';

const plainWords = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '' && !/^(?:oil|oils|the|of|a|after|cook|virgin|extra)$/.test(word));

const kinds: readonly (readonly [RegExp, Line['role']])[] = [
  [
    /^(?:lye|alkali|caustic(?: soda| potash)?|hydroxide|(?:sodium|potassium) hydroxide|naoh|koh|flakes?|beads|pearls)$/i,
    'alkali',
  ],
  [/^(?:distilled |deionised |cold |ice )?(?:water|ice)$/i, 'water'],
  [/^(?:scent|fragrance|eo|essential oil|perfume)$/i, 'other'],
  [/^(?:oils?|fats?|butters?)$/i, 'fat'],
];

/** Lines that a name may mean; those not weighed yet stand first. */
export function linesNamed(said: string, batch: Batch, context: Context): readonly Line[] {
  const { lines, taken } = batch;
  const sorted = (found: readonly Line[]): readonly Line[] => {
    const open = found.filter(({ id }) => !taken.has(id));
    return open.length > 0 ? open : found;
  };
  const name = said.trim();
  if (name === '') return [];
  for (const [pattern, role] of kinds) {
    if (!pattern.test(name)) continue;
    const own = lines.filter((line) => line.role === role);
    const special = /koh|potassium|potash/i.test(name) ? 'koh' : /naoh|sodium|soda/i.test(name) ? 'naoh' : null;
    return sorted(special === null ? own : own.filter(({ item }) => item === special));
  }
  const words = plainWords(name);
  const fits = lines.filter((line) => {
    const own = plainWords(line.name);
    return words.length > 0 && words.every((word) => own.some((one) => one.startsWith(word) || word.startsWith(one)));
  });
  if (fits.length > 0) {
    // "olive" of "olive oil" and "olive pomace oil" is the one with nothing else in it
    const exact = fits.filter((line) => plainWords(line.name).length === words.length);
    return sorted(exact.length > 0 ? exact : fits);
  }
  const { fats, alkali, liquids, acids } = context.read(`10 g ${name}`);
  const ids = new Set([...fats, ...alkali, ...liquids, ...acids].map(({ id }) => id as string));
  return sorted(lines.filter(({ item }) => item !== null && ids.has(item)));
}

const gramsIn: Readonly<Record<string, number>> = {
  g: 1,
  gr: 1,
  gm: 1,
  gram: 1,
  grams: 1,
  kg: 1000,
  kilo: 1000,
  kilos: 1000,
  oz: 28.349523125,
  ounce: 28.349523125,
  ounces: 28.349523125,
  lb: 453.59237,
  lbs: 453.59237,
  pound: 453.59237,
  pounds: 453.59237,
};

/** Grams of a weight; null for a volume. `unit`: as written, or the person's own. */
export const toGrams = (value: number, unit: string): number | null => {
  const factor = gramsIn[unit];
  return factor === undefined ? null : value * factor;
};

export interface Weighed {
  readonly lead: string;
  readonly body: readonly Block[];
  readonly warnings: readonly string[];
  readonly caution: Said<'caustic'>['caution'] | null;
}

/** How far the superfat may move before it is worth a word, as a share. */
const worthSaying = 0.005;

const solutionWords = {
  'will-not-dissolve': ': that does not dissolve, so add the missing water',
  'below-floor': ': too little water to dissolve it surely, so add the rest',
  strong: ': strong, but it dissolves',
  usual: ': that is usual',
  weak: ': weak, so that trace and cook take longer',
} as const;

const line = (text: string): Block => ({ kind: 'text', text });

interface Judged {
  readonly recipe: Recipe;
  readonly figures: CheckFigures;
}

export function judged(batch: Batch, context: Context): Judged | null {
  const recipe = recipeAsTaken(batch, shelvesOf(context.catalogue));
  if (!recipe) return null;
  const checked = checkRecipe(recipe, context.catalogue.fats, Math.min(0.99, Math.max(0, batch.plan.superfat)));
  return checked.ok ? { recipe, figures: checked.value } : null;
}

/** What a line weighed otherwise than planned does, and what sets it right. */
export function afterWeighing(batch: Batch, one: Line, context: Context, style: Style): Weighed {
  const step = batch.plan.scaleStepGrams;
  const own = batch.taken.get(one.id);
  const grams = own?.grams ?? 0;
  const shown = (value: number): string => massBoth(value, style, step);
  const lot = own?.lot ? `, lot ${own.lot}` : '';
  const noted = `${capital(one.name)}: ${shown(grams)}${lot}.`;
  const deviation = deviationsOf(batch).find((two) => two.line.id === one.id);
  if (!deviation) return { lead: noted, body: [], warnings: [], caution: null };
  const isNew = !batch.plan.lines.some(({ id }) => id === one.id);
  const off = isNew
    ? `${shown(grams)} ${one.name} were not in the plan.`
    : `You took ${shown(Math.abs(deviation.grams))} ${deviation.grams > 0 ? 'more' : 'less'} ${one.name} than planned: ${shown(grams)}, not ${shown(one.grams ?? 0)}.`;
  if (one.role === 'other' || one.role === 'after')
    return { lead: noted, body: [line(off)], warnings: [], caution: null };
  const found = judged(batch, context);
  if (!found)
    return {
      lead: off,
      body: [line('I can’t reckon what that makes: my tables no longer hold one of its ingredients.')],
      warnings: [],
      caution: thinCaution,
    };
  const { figures, recipe } = found;
  if (
    one.role === 'water' ||
    (one.role === 'liquid' && Math.abs(figures.superfat.nominal - batch.plan.superfat) < worthSaying)
  ) {
    const { concentration, dissolving } = figures.lye;
    return {
      lead: off,
      body: [
        line(
          `The lye solution becomes ${percent(concentration, style)}${solutionWords[dissolving]}. The alkali itself is as planned.`,
        ),
      ],
      warnings: [],
      caution: null,
    };
  }
  const wanted = Math.min(0.99, Math.max(0, batch.plan.superfat));
  const mend = mendOf(recipe, context.catalogue.fats, wanted);
  const shift = figures.superfat.nominal - batch.plan.superfat;
  const bad = figures.verdict === 'excess-alkali';
  const tight = figures.verdict === 'thin-margin' && shift < 0;
  const superfat = percent(figures.superfat.nominal, style);
  const range =
    figures.superfat.low < 0
      ? `between ${percent(-figures.superfat.low, style)} too much alkali and ${percent(figures.superfat.high, style)}`
      : percentRange(figures.superfat.low, figures.superfat.high, style);
  const effect = bad
    ? `These fats can’t take up so much alkali: about ${mass(freeGrams(recipe, figures), style, step)} would stay free, and the soap ${figures.superfat.nominal < -0.01 ? 'would' : 'could'} burn skin.`
    : `That leaves ${superfat} of the fat (superfat), not ${percent(batch.plan.superfat, style)}: ${range} by the lot of the fats${tight ? `; too much alkali is ${chance(figures.superfat.chanceOfExcess)}` : ''}.`;
  if (!bad && !tight && Math.abs(shift) < worthSaying)
    return {
      lead: noted,
      body: [line(`${off} It makes no difference worth mending: ${superfat} of the fat stays.`)],
      warnings: [],
      caution: null,
    };
  const ways =
    shift < 0
      ? lessAlkali(batch, one, deviation.grams, mend, style)
      : moreAlkali(batch, one, deviation.grams, mend, style);
  return {
    lead: off,
    body: [line(effect), ...ways.map(line)],
    warnings: bad ? [isMixed(batch) ? 'As it is, this batch must not be used.' : 'As it is, don’t mix it.'] : [],
    caution: bad ? excessCaution : tight ? thinCaution : null,
  };
}

/** Alkali, as weighed, beyond what fats and acids take. */
const freeGrams = (recipe: Recipe, { needed }: CheckFigures): number =>
  recipe.alkali.reduce((sum, { grams }) => sum + grams, 0) - needed.atZero.reduce((sum, { grams }) => sum + grams, 0);

type Mend = ReturnType<typeof mendOf>;

const alkaliWords = (mend: Mend, shown: (grams: number) => string): string =>
  listed(mend.alkali.map(({ id, grams }) => `${shown(Math.abs(grams))} ${alkaliName[id]}`));

/** Too much alkali for the fats there are. */
function lessAlkali(batch: Batch, one: Line, off: number, mend: Mend, style: Style): readonly string[] {
  const step = batch.plan.scaleStepGrams;
  const shown = (grams: number): string => massBoth(grams, style, step);
  const target = percent(batch.plan.superfat, style);
  const fats = listed(mend.fats.map(({ fat, grams }) => `${shown(grams)} ${inSentence(fat.name)}`));
  const total = mend.fats.reduce((sum, { grams }) => sum + grams, 0);
  const addFat = `${mend.fats.length > 1 ? `${shown(total)} of fat, in the recipe’s proportions: ` : ''}${fats}`;
  const back = `which brings back ${target}. Say "added …" for each`;
  if (isMixed(batch))
    return [
      `It can be mended: add ${addFat}, melted, and cook it on until it gives no zap; ${back}.`,
      'Else throw it away as your waste service says. Nobody uses it before it has passed a test.',
    ];
  if (one.role === 'fat' && off < 0)
    return [
      `Weigh the missing ${shown(-off)} ${one.name} and say "added ${number(-off, 3, style)} g ${one.name}".`,
      ...(isDissolved(batch) ? [] : [`Or take ${alkaliWords(mend, shown)} less: it has to be dry still.`]),
    ];
  return isDissolved(batch)
    ? [`It is dissolved, so it can’t come out. Weigh more fat instead: ${addFat}; ${back}.`]
    : [
        `Is it still dry? Take ${alkaliWords(mend, shown)} out again, and say "took …" with what the scale shows then.`,
        `Or weigh more fat: ${addFat}; ${back}.`,
      ];
}

/** More fat stays than planned. */
function moreAlkali(batch: Batch, one: Line, off: number, mend: Mend, style: Style): readonly string[] {
  const step = batch.plan.scaleStepGrams;
  const shown = (grams: number): string => massBoth(grams, style, step);
  if (isMixed(batch))
    return [
      'It does no harm to skin, but the bar is softer and turns rancid sooner. More lye now only dissolved and weighed, and cooked again.',
    ];
  if (one.role === 'alkali' && off < 0)
    return [
      `Weigh ${shown(-off)} more and say "added ${number(-off, 3, style)} g ${one.item === 'koh' ? 'KOH' : 'NaOH'}"; or leave it: the bar is milder, softer, and keeps less long.`,
    ];
  if (off > 0 && one.role === 'fat')
    return [
      `Take ${shown(off)} out again if you can, or leave it: the bar is softer and keeps less long.`,
      ...(mend.alkali.length > 0
        ? [`Or ${alkaliWords(mend, shown)} more brings back ${percent(batch.plan.superfat, style)}.`]
        : []),
    ];
  return mend.alkali.length > 0
    ? [`${capital(alkaliWords(mend, shown))} more brings back ${percent(batch.plan.superfat, style)}.`]
    : [];
}

/** "☑ olive oil 450 g, lot A7" */
export function weighingList(batch: Batch, style: Style): Block {
  const step = batch.plan.scaleStepGrams;
  return {
    kind: 'list',
    title: '',
    items: batch.lines.map((one) => {
      const own = batch.taken.get(one.id);
      const planned = one.grams === null ? '' : ` ${massBoth(one.grams, style, step)}`;
      if (!own) return `☐ ${one.name}${planned}`;
      const weight = massBoth(gramsOfLine(batch, one), style, step);
      const plan =
        one.grams !== null && Math.abs(own.grams - one.grams) > step / 2
          ? ` (planned ${massBoth(one.grams, style, step)})`
          : '';
      return `☑ ${one.name} ${weight}${plan}${own.lot ? `, lot ${own.lot}` : ''}`;
    }),
  };
}
