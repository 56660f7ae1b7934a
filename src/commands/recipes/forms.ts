/** Kept recipes as others can take them: JSON after `deploy/schema/recipes-1.schema.json`, CSV, and the plain text that `check` reads. */
import type { Catalogue, Named } from '../../catalogue/types.ts';
import type { Reader } from '../../reading/index.ts';
import { alkaliName, capital, nameOf } from '../phrases.ts';
import { plainName } from '../plain-name.ts';
import type { Amounts, SavedRecipe } from './saved.ts';

export const form = 'lyeward-recipes';

/** Of `deploy/schema/recipes-1.schema.json`. */
export const version = 1;

/** A recipe as it is given away: whom it was shared with stays here. */
export function given({
  shared: _shared,
  token: _token,
  savedAt,
  ...recipe
}: SavedRecipe): Readonly<Record<string, unknown>> {
  return { ...recipe, savedAt: new Date(savedAt).toISOString() };
}

export const toJson = (recipes: readonly SavedRecipe[]): string =>
  `${JSON.stringify({ form, version, recipes: recipes.map(given) })}\n`;

/** Columns of the CSV form; `share` is a purity, the strength of an acid, or a superfat. */
export const columns = ['recipe', 'part', 'id', 'name', 'grams', 'share'] as const;

export type Row = Readonly<Record<(typeof columns)[number], string>>;

/** Rows of one recipe, in the order of its text. */
function rowsOf(recipe: SavedRecipe, catalogue: Catalogue): readonly Row[] {
  const row = (part: string, id: string, grams: number | null, share: number | null = null): Row => ({
    recipe: recipe.name,
    part,
    id,
    name: id === '' ? '' : id === 'water' ? 'water' : nameOf(id, catalogue),
    grams: grams === null ? '' : String(grams),
    share: share === null ? '' : String(share),
  });
  return [
    ...recipe.fats.map(({ id, grams }) => row('fat', id, grams)),
    ...recipe.alkali.map(({ id, grams, purity }) => row('alkali', id, grams, purity.nominal)),
    ...(recipe.waterGrams > 0 ? [row('water', 'water', recipe.waterGrams)] : []),
    ...recipe.liquids.map(({ id, grams }) => row('liquid', id, grams)),
    ...recipe.acids.map(({ id, grams, strength }) => row('acid', id, grams, strength)),
    ...recipe.after.map(({ id, grams }) => row('after the cook', id, grams)),
    ...recipe.others.map(({ name, grams }) => ({ ...row('extra', '', grams), name })),
    ...(recipe.superfat === null ? [] : [row('superfat', '', null, recipe.superfat)]),
    row('scale step', '', recipe.scaleStepGrams),
  ];
}

export async function toCsv(recipes: readonly SavedRecipe[], catalogue: Catalogue): Promise<string> {
  const { default: papa } = await import('papaparse');
  const rows = recipes.flatMap((recipe) => rowsOf(recipe, catalogue));
  // a name that begins like a formula would be one in a spreadsheet
  return `${papa.unparse([...rows], { columns: [...columns], escapeFormulae: true })}\r\n`;
}

const gramsPerOunce = 28.349523125;

/** Digits that make the very same amount again; never three decimals, which may mean thousands. */
function digits(value: number, unit: number): string | null {
  for (const decimals of [0, 1, 2, 4]) {
    const text = (value / unit).toFixed(decimals);
    if (Math.abs(Number(text) * unit - value) <= 1e-9 * value) return text;
  }
  return null;
}

/** An amount as it was written, in ounces for those who weigh in them. */
function amount(grams: number, ounces: boolean): string {
  const inOunces = ounces ? digits(grams, gramsPerOunce) : null;
  if (inOunces !== null) return `${inOunces} oz`;
  return `${digits(grams, 1) ?? grams.toFixed(6)} g`;
}

const share = (value: number): string => `${Number((value * 100).toPrecision(12))} %`;

/** One ingredient a line; the name of the recipe stays out of it, lest its words be read as an ingredient. */
export function toText(recipe: Amounts, catalogue: Catalogue, reader: Reader): string {
  const line = (name: string, grams: number): string => `${capital(name)}: ${amount(grams, recipe.ounces)}`;
  const named = (id: string, shelf: 'fats' | 'liquids' | 'acids'): string => {
    const item: Named | undefined = catalogue[shelf].get(id);
    return item ? plainName(item, shelf, reader) : id;
  };
  const parts: readonly (readonly [string, readonly string[]])[] = [
    ['Fats', recipe.fats.map(({ id, grams }) => line(named(id, 'fats'), grams))],
    [
      'Lye',
      [
        ...recipe.alkali.map(
          ({ id, grams, purity: { nominal } }) => `${line(alkaliName[id], grams)}, ${share(nominal)} pure`,
        ),
        ...(recipe.waterGrams > 0 ? [line('water', recipe.waterGrams)] : []),
        ...recipe.liquids.map(({ id, grams }) => line(named(id, 'liquids'), grams)),
        ...recipe.acids.map(({ id, grams, strength }) =>
          strength === catalogue.acids.get(id)?.strength
            ? line(named(id, 'acids'), grams)
            : line(`${share(strength)} ${named(id, 'acids')}`, grams),
        ),
      ],
    ],
    ['After the cook', recipe.after.map(({ id, grams }) => line(named(id, 'fats'), grams))],
    [
      'Extras, they take no alkali',
      recipe.others.map(({ name, grams }) => (grams === null ? capital(name) : line(name, grams))),
    ],
    [
      '',
      [
        ...(recipe.superfat === null ? [] : [`Superfat: ${share(recipe.superfat)}`]),
        `Scale: ${digits(recipe.scaleStepGrams, 1) ?? recipe.scaleStepGrams} g`,
      ],
    ],
  ];
  return parts
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => [...(title === '' ? [] : [title]), ...lines].join('\n'))
    .join('\n\n');
}
