/** Recipes out of JSON or CSV that somebody hands back, checked before anything is believed of them. */
import type { AlkaliId, Catalogue } from '../../catalogue/types.ts';
import { checkRecipe } from '../../engine/check.ts';
import { USUAL_SUPERFAT } from '../../engine/weigh.ts';
import { columns, form, type Row, version } from './forms.ts';
import { nameIn } from './name.ts';
import { keptFrom, type SavedRecipe, savedFrom } from './saved.ts';

export type ReadForm =
  | { readonly ok: true; readonly recipes: readonly SavedRecipe[] }
  /** `where`: of what in the text it is true. */
  | { readonly ok: false; readonly where: string; readonly why: string };

class Wrong extends Error {
  readonly where: string;
  constructor(where: string, why: string) {
    super(why);
    this.where = where;
  }
}

/** More ingredients than this are no recipe. */
const mostLines = 200;
const most = 1e7;

export async function readForm(text: string, catalogue: Catalogue, at: number): Promise<ReadForm> {
  try {
    const raw = /^\s*[[{]/.test(text) ? fromJson(text) : await fromCsv(text);
    return { ok: true, recipes: raw.map((one, k) => recipeOf(one, `recipe ${k + 1}`, catalogue, at)) };
  } catch (error) {
    if (!(error instanceof Wrong)) throw error;
    return { ok: false, where: error.where, why: error.message };
  }
}

/** Whether a text is one of the forms rather than a recipe in words. */
export const isForm = (text: string): boolean =>
  /^\s*\{/.test(text) || /^\s*"?recipe"?\s*[,;\t]\s*"?part"?\s*[,;\t]/i.test(text);

function fromJson(text: string): readonly unknown[] {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    throw new Wrong('the text', 'it is no JSON: a part may be missing');
  }
  const { form: said, version: of, recipes } = fields(parsed, 'the text');
  if (said !== form || !Array.isArray(recipes))
    throw new Wrong('the text', `it is JSON, but not of the form "${form}"`);
  if (typeof of !== 'number' || of > version)
    throw new Wrong('the text', `it is of version ${JSON.stringify(of)} of the form; I know up to ${version}`);
  return recipes;
}

async function fromCsv(text: string): Promise<readonly unknown[]> {
  const { default: papa } = await import('papaparse');
  const { data, meta } = papa.parse<Row>(text.trim(), { header: true, skipEmptyLines: true });
  const missing = columns.filter((column) => !(meta.fields ?? []).includes(column));
  if (missing.length > 0) throw new Wrong('the first line', `the column "${missing[0]}" is missing`);
  const recipes = new Map<string, Record<string, unknown>>();
  for (const [k, row] of data.entries()) {
    const where = `line ${k + 2}`;
    // the sign that keeps a spreadsheet from reckoning
    const plain = (cell: string | undefined): string => (cell ?? '').replace(/^'(?=[=+\-@\t\r])/, '');
    const name = plain(row.recipe);
    const recipe = recipes.get(name) ?? {
      name,
      fats: [],
      after: [],
      alkali: [],
      waterGrams: 0,
      liquids: [],
      acids: [],
      others: [],
      superfat: null,
      scaleStepGrams: 1,
      ounces: false,
    };
    recipes.set(name, recipe);
    const figure = (cell: string | undefined): number | null =>
      cell === undefined || cell === '' ? null : Number(cell);
    const [grams, share] = [figure(row.grams), figure(row.share)];
    const add = (part: string, item: object): void => void (recipe[part] as object[]).push(item);
    const purity = { nominal: share, low: share, high: share };
    switch (row.part) {
      case 'fat':
        add('fats', { id: row.id, grams });
        break;
      case 'after the cook':
        add('after', { id: row.id, grams });
        break;
      case 'alkali':
        add('alkali', { id: row.id, grams, purity, assumed: false });
        break;
      case 'water':
        recipe['waterGrams'] = grams;
        break;
      case 'liquid':
        add('liquids', { id: row.id, grams });
        break;
      case 'acid':
        add('acids', { id: row.id, grams, strength: share });
        break;
      case 'extra':
        add('others', { name: plain(row.name), grams });
        break;
      case 'superfat':
        recipe['superfat'] = share;
        break;
      case 'scale step':
        recipe['scaleStepGrams'] = grams;
        break;
      default:
        throw new Wrong(where, `"${row.part}" is no part of a recipe`);
    }
  }
  return [...recipes.values()];
}

function fields(value: unknown, where: string): Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Wrong(where, 'it is not a recipe');
  return value as Record<string, unknown>;
}

function figure(value: unknown, where: string, low: number, high: number): number {
  if (typeof value !== 'number' || !(value >= low && value <= high))
    throw new Wrong(where, `${JSON.stringify(value) ?? 'nothing'} is no figure from ${low} to ${high}`);
  return value;
}

function list<T>(
  value: unknown,
  where: string,
  one: (item: Readonly<Record<string, unknown>>, where: string) => T,
): readonly T[] {
  if (!Array.isArray(value) || value.length > mostLines) throw new Wrong(where, 'it is no list of ingredients');
  return value.map((item, k) => one(fields(item, `${where} ${k + 1}`), `${where} ${k + 1}`));
}

const words = (value: unknown, where: string): string => {
  const text = typeof value === 'string' ? nameIn(value) : '';
  if (text === '' || text.length > 200) throw new Wrong(where, 'its name is missing, or longer than 200 characters');
  return text;
};

/** Everything is looked at, and the figures are reckoned anew: what a file says of them is no evidence. */
function recipeOf(raw: unknown, at: string, catalogue: Catalogue, now: number): SavedRecipe {
  const one = fields(raw, at);
  const name = words(one['name'], at);
  const where = (part: string): string => `"${name}", ${part}`;
  const of = (shelf: ReadonlyMap<string, unknown>) => (item: Readonly<Record<string, unknown>>, place: string) => {
    const id = item['id'];
    if (typeof id !== 'string' || !shelf.has(id)) throw new Wrong(place, `I know no ${JSON.stringify(id)}`);
    return { id, grams: figure(item['grams'], place, 0, most) };
  };
  const superfat = one['superfat'] ?? null;
  const read: Omit<SavedRecipe, 'checked'> = {
    name,
    fats: list(one['fats'], where('fats'), of(catalogue.fats)),
    after: list(one['after'], where('after the cook'), of(catalogue.fats)),
    alkali: list(one['alkali'], where('alkali'), (item, place) => {
      const purity = fields(item['purity'], place);
      const part = (key: string): number => figure(purity[key], `${place}, purity`, 0.01, 1);
      const { id, grams } = of(catalogue.alkalis as ReadonlyMap<string, unknown>)(item, place);
      return {
        id: id as AlkaliId,
        grams,
        purity: { nominal: part('nominal'), low: part('low'), high: part('high') },
        assumed: item['assumed'] === true,
      };
    }),
    waterGrams: figure(one['waterGrams'], where('water'), 0, most),
    liquids: list(one['liquids'], where('liquids'), of(catalogue.liquids)),
    acids: list(one['acids'], where('acids'), (item, place) => ({
      ...of(catalogue.acids)(item, place),
      strength: figure(item['strength'], place, 0, 1),
    })),
    others: list(one['others'], where('extras'), (item, place) => ({
      name: words(item['name'], place),
      grams: item['grams'] === null || item['grams'] === undefined ? null : figure(item['grams'], place, 0, most),
    })),
    superfat: superfat === null ? null : figure(superfat, where('superfat'), 0, 0.99),
    scaleStepGrams: figure(one['scaleStepGrams'], where('scale step'), 0.001, 100),
    ounces: one['ounces'] === true,
    savedAt: now,
  };
  const restored = keptFrom(read, catalogue);
  if (!restored.ok) throw new Wrong(where('ingredients'), `I know no ${restored.missing.join(', ')}`);
  const checked = checkRecipe(restored.kept.recipe, catalogue.fats, read.superfat ?? USUAL_SUPERFAT);
  if (!checked.ok) throw new Wrong(where(checked.fault.figure), 'it can’t be reckoned');
  return { ...savedFrom(name, restored.kept, checked.value, catalogue, now), alkali: read.alkali };
}
