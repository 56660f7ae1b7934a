/** A scaled recipe in words. */
import type { Block } from '../answer/types.ts';
import type { CheckFigures } from '../engine/check.ts';
import { batterVolume } from '../engine/mould.ts';
import type { Recipe } from '../engine/recipe.ts';
import type { Scaled } from '../engine/scaling.ts';
import { batchGramsOf } from '../engine/soap.ts';
import type { ScaleWish } from '../reading/question/scale-target.ts';
import { mass, massAtMost, massBoth, number, percent, percentRange, readMass, type Style } from '../units/print.ts';
import { assumptionsOf } from './assumptions.ts';
import type { Context } from './define.ts';
import type { Kept, Step } from './kept.ts';
import { alkaliName, capital, inSentence, listed, nameOf } from './phrases.ts';
import { pureLine } from './recipe.ts';

const times = (factor: number, style: Style): string =>
  `${number(factor, factor < 0.1 ? 4 : factor < 1 ? 3 : 2, style)} times the recipe`;

export function leadOf(
  { recipe, factor, scarcest }: Scaled,
  wish: ScaleWish,
  { catalogue }: Context,
  style: Style,
): string {
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

export function rowsOf(recipe: Recipe, others: Kept['reading']['others'], style: Style): Rows {
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
export function multipleLine({ multiple, recipe }: Scaled, newSuperfat: boolean, style: Style): string {
  const step = recipe.scaleStepGrams;
  const plain = listed(multiple.map(({ grams }) => mass(grams, style, Math.min(0.1, step))));
  return newSuperfat
    ? `The alkali is reckoned for the superfat you want; a plain multiple would be ${plain}.`
    : `The alkali is reckoned anew and rounded down to your scale; a plain multiple would be ${plain}.`;
}

export const superfatLine = ({ superfat }: CheckFigures, style: Style): string =>
  `Superfat ${percent(superfat.nominal, style)}; fats differ from lot to lot, so expect ${
    superfat.low < 0
      ? `between ${percent(-superfat.low, style)} too much alkali and ${percent(superfat.high, style)} fat left over`
      : percentRange(superfat.low, superfat.high, style)
  }.`;

export const leastLine = (recipe: Recipe, grams: number, style: Style): Block => ({
  kind: 'text',
  text: `The least batch that a scale showing ${mass(recipe.scaleStepGrams, { ...style, massUnit: 'g' })} weighs well: about ${massBoth(Math.ceil(grams / 10) * 10, style)} in the pot.`,
});

export function sharesOf({ fats }: CheckFigures, style: Style): Block[] {
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
export function takenOf({ reading, recipe }: Kept, style: Style): string[] {
  const unsaid = recipe.alkali.filter(
    ({ id }) => id === 'koh' && !reading.purity && reading.alkali.every(({ purity }) => purity === null),
  );
  return [...assumptionsOf(reading, true), ...unsaid.map(({ id, purity }) => `${pureLine(id, purity, style)}.`)];
}

/** What was taken of the size. */
export function wishTaken(wish: ScaleWish, recipe: Recipe, style: Style): string[] {
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

export function factorStep({ factor, recipe }: Scaled, from: Recipe, style: Style): Step {
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
