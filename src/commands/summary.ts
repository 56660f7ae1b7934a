import type { Block } from '../answer/types.ts';
import type { AlkaliId, Named } from '../catalogue/types.ts';
import { type CheckFigures, checkRecipe } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';
import { batchGramsOf, insteadOfWater } from '../engine/soap.ts';
import { USUAL_SUPERFAT } from '../engine/weigh.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { number, percent, percentRange, type Style } from '../units/print.ts';
import { beforeMixing, excessCaution, thinCaution } from './cautions.ts';
import { styleFor } from './check.ts';
import { defineCommand } from './define.ts';
import type { Kept } from './kept.ts';
import { alkaliName, capital, inSentence, listed } from './phrases.ts';
import { plainName } from './plain-name.ts';
import { pureLine } from './recipe.ts';
import { recipeIn } from './recipe-in.ts';
import { recipeOptions } from './recipe-options.ts';
import { refused } from './refusals.ts';
import { lyeResult } from './result.ts';
import { warningsOf } from './warnings.ts';
import { recipeWorking } from './working.ts';

export const summary = defineCommand({
  id: 'summary',
  summary: 'The recipe written out, to post for others.',
  risk: 'caustic',
  options: recipeOptions,
  examples: [
    {
      say: 'summary 500 g olive oil, 200 g coconut oil, 98 g NaOH, 230 g water',
      about: 'a recipe in one line, written out',
    },
  ],
  run: ({ text, options }, context) => {
    const { catalogue } = context;
    const base = recipeIn(text, options, 'summary 500 g lard, 66 g NaOH, 150 g water', context);
    if (!base.ok) return base;
    const { recipe, reading, superfat } = base.value;
    const checked = checkRecipe(recipe, catalogue.fats, superfat ?? context.settings.superfat ?? USUAL_SUPERFAT);
    if (!checked.ok) return { ok: false, fault: refused(checked.fault, catalogue) };
    const figures = checked.value;
    const style = styleFor(reading, options.unit, context);
    const name: NameOf = (item, shelf) => plainName(item, shelf, context.reader());
    const bad = figures.verdict === 'excess-alkali';
    const dry = recipe.waterGrams === 0 && insteadOfWater(recipe).length === 0;
    return {
      ok: true,
      value: {
        title: 'Recipe',
        lead: bad ? 'Not to be made: this recipe has too much alkali.' : titleOf(recipe, name),
        body: bodyOf(recipe, reading, figures, name, style),
        details: [],
        assumptions: takenOf(base.value, style),
        warnings: warningsOf(
          { recipe, purityAssumed: [], dry, waterAssumed: null },
          figures,
          { ...reading, superfat: null, concentration: null, ratio: null },
          catalogue,
          style,
        ).map((text) =>
          recipe.liquids.reduce(
            (said, { liquid }) => said.replaceAll(inSentence(liquid.name), name(liquid, 'liquids')),
            text,
          ),
        ),
        caution: bad ? excessCaution : figures.verdict === 'thin-margin' ? thinCaution : beforeMixing,
        actions: [],
        result: lyeResult(recipe, figures),
        working: () => recipeWorking(recipe, figures, catalogue, style),
      },
    };
  },
});

type NameOf = (item: Named, shelf: 'fats' | 'liquids' | 'acids') => string;

/** Names alone: a figure beside them would be read as theirs. */
function titleOf({ fats }: Recipe, name: NameOf): string {
  const names = [...fats].sort((a, b) => b.grams - a.grams).map(({ fat }) => name(fat, 'fats'));
  return `Soap of ${listed(names.length > 4 ? [...names.slice(0, 3), 'more'] : names)}.`;
}

const gramsPerOunce = 28.349523125;

/** A weight in grams and in ounces, the person's own unit first; small ounces keep three digits. */
function both(grams: number, { scaleStepGrams: step }: Recipe, style: Style): string {
  const places = Math.max(1, Math.ceil(-Math.log10(step) - 1e-9)) + (grams < 10 ? 1 : 0);
  const ounces = grams / gramsPerOunce;
  const g = `${number(grams, places, style)} g`;
  const oz = `${number(ounces, ounces < 0.1 ? 4 : ounces < 1 ? 3 : 2, style)} oz`;
  return style.massUnit === 'oz' ? `${oz} (${g})` : `${g} (${oz})`;
}

function bodyOf(recipe: Recipe, reading: RecipeReading, figures: CheckFigures, name: NameOf, style: Style): Block[] {
  const all = [...recipe.fats, ...recipe.after].reduce((sum, { grams }) => sum + grams, 0);
  const weight = (grams: number): string => both(grams, recipe, style);
  const line = (what: string, grams: number): string => `${capital(what)}: ${weight(grams)}`;
  const fat = ({ fat: one, grams }: Recipe['fats'][number]): string =>
    `${line(name(one, 'fats'), grams)}, ${percent(grams / all, style)}`;
  // of potassium hydroxide "pure" alone would be read as the usual 90 %
  const pure = (id: AlkaliId, nominal: number): string =>
    id === 'naoh' && nominal === 1 ? 'pure' : `${percent(nominal, style)} pure`;
  const lists: [string, string[]][] = [
    ['Fats', recipe.fats.map(fat)],
    [
      'Lye',
      [
        ...recipe.alkali
          .filter(({ grams }) => grams > 0)
          .map(({ id, grams, purity }) => `${line(alkaliName[id], grams)}, ${pure(id, purity.nominal)}`),
        ...(recipe.waterGrams > 0 ? [line('water', recipe.waterGrams)] : []),
        ...recipe.liquids.map(({ liquid, grams }) => line(name(liquid, 'liquids'), grams)),
        ...recipe.acids.map(({ acid, grams }) => line(name(acid, 'acids'), grams)),
      ],
    ],
    ['After the cook', recipe.after.map(fat)],
    [
      'Extras, they take no alkali',
      reading.others.map((one) => (one.grams === null ? capital(one.name) : line(one.name, one.grams))),
    ],
  ];
  return [
    ...lists.filter(([, items]) => items.length > 0).map(([title, items]): Block => ({ kind: 'list', title, items })),
    { kind: 'text', text: `All together in the pot: ${weight(batchGramsOf(recipe))}.` },
    { kind: 'text', text: superfatLine(figures, recipe, style) },
    ...(figures.verdict === 'excess-alkali' ? [] : [{ kind: 'steps' as const, steps: stepsOf(recipe) }]),
  ];
}

function superfatLine({ superfat }: CheckFigures, recipe: Recipe, style: Style): string {
  const range =
    superfat.low < 0
      ? `between ${percent(-superfat.low, style)} too much alkali and ${percent(superfat.high, style)}`
      : percentRange(superfat.low, superfat.high, style);
  const after =
    recipe.after.length > 0 ? ` With the fat added after the cook: ${percent(superfat.withAfter, style)}.` : '';
  return `Superfat: ${percent(superfat.nominal, style)}. Fats differ from lot to lot: expect ${range}.${after}`;
}

/** Temperatures and times of the handbooks' usual practice: ranges, not clocks. */
function stepsOf(recipe: Recipe): string[] {
  const hot = recipe.after.length > 0 || recipe.alkali.some(({ id, grams }) => id === 'koh' && grams > 0);
  const milk = recipe.liquids.length > 0;
  return [
    'Goggles, gloves, long sleeves. Weigh everything.',
    `Stir the alkali into the ${milk ? 'cold or frozen liquid, little by little' : 'water, never the other way'}. Let it cool to 38 to 55 °C (100 to 130 °F).`,
    'Melt the fats, bring them to about the same, pour the solution in, blend until it thickens (trace).',
    ...(hot
      ? [
          `Cook with the lid on, at or below 93 °C (200 °F), until it is translucent and a cooled bit gives no zap.${recipe.after.length > 0 ? ' Only then stir in the rest.' : ''}`,
        ]
      : ['Pour into the mould, cover, unmould when firm.']),
    hot ? 'Scent last, heat off. Let it rest a week or more.' : 'Cut, and let it cure 4 to 6 weeks.',
  ];
}

/** What was taken on the way; names are written out whole above. */
function takenOf({ reading, recipe }: Kept, style: Style): string[] {
  const assumed = recipe.alkali.filter(
    ({ id, grams }) => grams > 0 && !(reading.alkali.find((one) => one.id === id)?.purity ?? reading.purity),
  );
  return [
    ...reading.assumptions
      .filter(({ id }) => id === 'volume' || id === 'shares' || id === 'summed')
      .map(({ text }) => text),
    ...assumed.map(({ id, purity }) => `${pureLine(id, purity, style)}.`),
  ];
}
