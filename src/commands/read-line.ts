/** "I read: …": everything that was understood of a post, in one compact line. */
import type { Catalogue } from '../catalogue/types.ts';
import { eatenBy, gramsOf } from '../engine/alkali.ts';
import type { CheckFigures } from '../engine/check.ts';
import type { Recipe } from '../engine/recipe.ts';
import type { RecipeReading } from '../reading/reading.ts';
import { mass, number, percent, readMass, type Style } from '../units/print.ts';
import { alkaliAmounts, alkaliName, inSentence, listed, nameOf } from './phrases.ts';

/** Share of the fats cooked, without the decimal that would only be noise. */
const share = (grams: number, total: number, style: Style): string => {
  const percent = (grams / total) * 100;
  return `${number(percent, Math.abs(percent - Math.round(percent)) < 0.05 ? 0 : 1, style)} %`;
};

/** Of alkali that is still `toWeigh`, nothing but the purity was read. */
export function readLine(recipe: Recipe, reading: RecipeReading, style: Style, toWeigh = false): string {
  const total = recipe.fats.reduce((sum, { grams }) => sum + grams, 0);
  const own: Style = { ...style, massUnit: reading.ounces ? 'oz' : 'g' };
  const one = (name: string, grams: number): string => `${name} ${readMass(grams, own)}`;
  const isStock = recipe.alkali.length > 0 && reading.alkali.some(({ stock }) => stock);
  const fats = recipe.fats.map(({ fat, grams }) =>
    recipe.fats.length > 1
      ? `${one(inSentence(fat.name), grams)} (${share(grams, total, style)})`
      : one(inSentence(fat.name), grams),
  );
  const parts = [
    listed(fats),
    ...(toWeigh
      ? []
      : [alkaliAmounts(recipe.alkali, (grams) => readMass(grams, own)) + (isStock ? ' out of the solution' : '')]),
    ...purityRead(recipe, reading, style, toWeigh || recipe.alkali.length > 1),
    ...(recipe.waterGrams > 0 ? [one('water', recipe.waterGrams)] : []),
    ...recipe.liquids.map(({ liquid, grams }) => one(inSentence(liquid.name), grams)),
    ...recipe.acids.map(({ acid, grams }) => one(inSentence(acid.name), grams)),
  ].filter((part) => part !== '');
  const after = recipe.after.map(({ fat, grams }) => one(inSentence(fat.name), grams));
  const others = reading.others.map(({ name, grams }) => (grams === null ? name : one(name, grams)));
  return [
    `I read: ${parts.join('; ')}.`,
    ...(after.length > 0 ? [`After the cook: ${listed(after)}.`] : []),
    ...(others.length > 0 ? [`Takes no alkali: ${listed(others)}.`] : []),
  ].join(' ');
}

/** "sodium hydroxide (NaOH) of 97 % purity", where the post says so. */
function purityRead({ alkali }: Recipe, reading: RecipeReading, style: Style, named: boolean): string[] {
  const own = (id: string): boolean => reading.alkali.some((one) => one.id === id && one.purity && !one.stock);
  return alkali.flatMap(({ id, purity: { nominal } }) =>
    nominal < 1 && (reading.purity !== null || own(id))
      ? [named ? `${alkaliName[id]} of ${percent(nominal, style)} purity` : `${percent(nominal, style)} pure`]
      : [],
  );
}

/** What counts in the reckoning beside fats and alkali: the fat of milk, the alkali that acids eat. */
export function countedLine(recipe: Recipe, { milkFats }: CheckFigures, style: Style): string | null {
  const fat = milkFats.reduce((sum, { grams }) => sum + grams, 0);
  const milks = recipe.liquids.filter(({ liquid }) => liquid.fatShare > 0).map(({ liquid }) => inSentence(liquid.name));
  const acids = recipe.acids.map(({ acid }) => inSentence(acid.name));
  const parts = [
    ...(fat > 0 ? [`the fat of the ${listed(milks)} (about ${mass(fat, style)})`] : []),
    ...(acids.length > 0
      ? [
          `the alkali that ${listed(acids)} takes first (${mass(gramsOf('naoh', eatenBy(recipe.acids)), style, 0.1)} as ${alkaliName.naoh})`,
        ]
      : []),
  ];
  return parts.length > 0 ? `Counted too: ${listed(parts)}.` : null;
}

/** What stands fast while something else is asked. */
export function soFar(reading: RecipeReading, catalogue: Catalogue, style: Style): string {
  const one = (id: string, grams: number): string => `${nameOf(id, catalogue)} ${readMass(grams, style)}`;
  const parts = [
    ...reading.fats.map(({ id, grams }) => one(id, grams)),
    ...reading.after.map(({ id, grams }) => `${one(id, grams)} after the cook`),
    ...reading.alkali.map(({ id, grams }) =>
      alkaliAmounts([{ id, grams, purity: { nominal: 1, low: 1, high: 1 } }], (value) => readMass(value, style)),
    ),
    ...(reading.waterGrams === null ? [] : [one('water', reading.waterGrams)]),
    ...reading.liquids.map(({ id, grams }) => one(id, grams)),
    ...reading.acids.map(({ id, grams }) => one(id, grams)),
  ];
  return parts.length === 0 ? '' : `So far I have: ${parts.join(', ')}.`;
}
