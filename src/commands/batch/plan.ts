/** From a recipe to what goes on the scale for one batch. */
import type { Catalogue } from '../../catalogue/types.ts';
import type { Line, Plan, Scent } from '../../engine/batch/batch.ts';
import { Claims } from '../../reading/heat/claims.ts';
import { heatLine } from '../../reading/heat/line.ts';
import { scentOf } from '../../reading/heat/scent.ts';
import type { Context } from '../define.ts';
import type { Kept } from '../kept.ts';
import { alkaliName, inSentence } from '../phrases.ts';

/** In the order in which they are weighed: fats first, alkali after the water, what takes no part at the end. */
export function planOf({ recipe, reading }: Kept, superfat: number): Plan {
  const lines: Line[] = [
    ...recipe.fats.map(({ fat, grams }) => line('fat', fat.id, inSentence(fat.name), grams)),
    ...(recipe.waterGrams > 0 ? [line('water', null, 'water', recipe.waterGrams)] : []),
    ...recipe.liquids.map(({ liquid, grams }) => line('liquid', liquid.id, inSentence(liquid.name), grams)),
    ...recipe.acids.map(({ acid, grams }) => ({
      ...line('acid', acid.id, inSentence(acid.name), grams),
      strength: acid.strength,
    })),
    ...recipe.alkali
      .filter(({ grams }) => grams > 0)
      .map(({ id, grams, purity }) => ({ ...line('alkali', id, alkaliName[id], grams), purity })),
    ...recipe.after.map(({ fat, grams }) => line('after', fat.id, `${inSentence(fat.name)}, after the cook`, grams)),
    ...reading.others.map(({ name, grams }) => line('other', null, inSentence(name), grams)),
  ];
  const seen = new Map<string, number>();
  return {
    lines: lines.map((one) => {
      const count = (seen.get(one.id) ?? 0) + 1;
      seen.set(one.id, count);
      return count === 1 ? one : { ...one, id: `${one.id}-${count}` };
    }),
    superfat,
    scaleStepGrams: recipe.scaleStepGrams,
  };
}

const line = (role: Line['role'], item: string | null, name: string, grams: number | null): Line => ({
  id: role === 'after' ? `after-${item}` : (item ?? name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')),
  role,
  item,
  name,
  grams,
});

/** The scent that a text names, with its parts; null without one. */
export function scentIn(text: string, context: Context): Scent | null {
  const { parts } = scentOf(new Claims(heatLine(context.reader(), text)));
  return parts.length === 0 ? null : { text: text.slice(0, 120), parts };
}

/** That of a recipe, among what takes no alkali. */
export function scentOfRecipe({ others }: Kept['reading'], context: Context): Scent | null {
  const named = others.filter(({ name }) => scentIn(name, context) !== null);
  if (named.length === 0) return null;
  const text = named.map(({ name, grams }) => `${grams === null ? '' : `${grams} g `}${name}`).join(', ');
  const found = scentIn(text, context);
  return found && { ...found, text: named.map(({ name }) => inSentence(name)).join(', ') };
}

/** What weights are reckoned with. */
export const shelvesOf = ({ fats, liquids, acids }: Catalogue) => ({ fats, liquids, acids });
