/** Two kept recipes side by side: what goes in, and what the bar is by its chemistry. */
import type { Result } from '../../answer/types.ts';
import { checkRecipe } from '../../engine/check.ts';
import { composeBlend } from '../../engine/composition.ts';
import { USUAL_SUPERFAT } from '../../engine/weigh.ts';
import { number, percent, readMass } from '../../units/print.ts';
import { beforeMixing } from '../cautions.ts';
import { styleFor } from '../check.ts';
import type { Context, Memory, Refusal, Said } from '../define.ts';
import type { Kept } from '../kept.ts';
import { alkaliName, capital, inSentence } from '../phrases.ts';
import { acidsPicture } from '../pictures.ts';
import { refused } from '../refusals.ts';
import { quoted } from './name.ts';
import type { Wish } from './request.ts';
import { keptFrom } from './saved.ts';
import { find, nameless, unknown } from './shelf.ts';
import { notHeld } from './show.ts';

type Ran = Result<Said<'caustic'>, Refusal<'caustic'>>;

export async function compare(
  { pair }: Extract<Wish, { do: 'compare' }>,
  context: Context,
  memory: Memory,
): Promise<Ran> {
  const [likeliest = ['', ''] as const] = pair;
  const ways = await Promise.all(pair.map(async ([a, b]) => [await find(a, memory), await find(b, memory)] as const));
  const both = ways.find(([a, b]) => a && b) ?? ways.find(([a, b]) => a || b) ?? [null, null];
  const at = Math.max(0, ways.indexOf(both));
  const [first, second] = pair[at] ?? likeliest;
  const [a, b] = both;
  if (second === '')
    return {
      ok: false,
      fault: {
        ...nameless,
        message: 'Which two recipes?',
        hint: 'Say it as in: recipe compare Everyday bar and Rich bar.',
      },
    };
  if (!a) return { ok: false, fault: await unknown(first, (name) => `recipe compare ${name} and ${second}`, memory) };
  if (!b) return { ok: false, fault: await unknown(second, (name) => `recipe compare ${first} and ${name}`, memory) };
  const columns: Column[] = [];
  for (const { saved } of [a, b]) {
    const restored = keptFrom(saved, context.catalogue);
    if (!restored.ok) return { ok: false, fault: notHeld(saved, restored.missing) };
    const { recipe, superfat } = restored.kept;
    const checked = checkRecipe(recipe, context.catalogue.fats, superfat ?? USUAL_SUPERFAT);
    if (!checked.ok) return { ok: false, fault: refused(checked.fault, context.catalogue) };
    columns.push({ name: saved.name, kept: restored.kept, figures: checked.value });
  }
  const groups = columns.map(({ name, kept }) => ({
    name,
    groups: composeBlend([...kept.recipe.fats, ...kept.recipe.after]).groups,
  }));
  const names = columns.map(({ name }) => name);
  return {
    ok: true,
    value: {
      title: 'Two recipes',
      lead: `${quoted(names[0] ?? '')} beside ${quoted(names[1] ?? '')}.`,
      body: [
        {
          kind: 'table',
          caption: 'Shares are of the fats',
          columns: [{ title: '', align: 'left' }, ...names.map((title) => ({ title, align: 'right' as const }))],
          rows: rowsOf(columns, context),
        },
        ...acidsPicture('Fatty acids of the two', groups),
      ],
      details: [],
      assumptions: [],
      warnings: [],
      caution: beforeMixing,
      actions: names.map((name) => ({ label: `show ${name}`, request: `recipe show ${name}` })),
      result: {
        compared: columns.map(({ name, kept: { recipe }, figures }) => ({
          name,
          fats: recipe.fats.map(({ fat, grams }) => ({ id: fat.id, grams })),
          superfat: figures.superfat.nominal,
          concentration: figures.lye.concentration,
        })),
      },
    },
  };
}

interface Column {
  readonly name: string;
  readonly kept: Kept;
  readonly figures: Extract<ReturnType<typeof checkRecipe>, { ok: true }>['value'];
}

function rowsOf(columns: readonly Column[], context: Context): readonly (readonly string[])[] {
  const row = (label: string, cell: (column: Column) => string): readonly string[] => [label, ...columns.map(cell)];
  const style = (column: Column) => styleFor(column.kept.reading, undefined, context);
  const fats = new Map(
    columns.flatMap(({ kept: { recipe } }) => [...recipe.fats, ...recipe.after].map(({ fat }) => [fat.id, fat])),
  );
  const alkalis = [...new Set(columns.flatMap(({ kept }) => kept.recipe.alkali.map(({ id }) => id)))];
  const gramsOf = (amounts: readonly { readonly grams: number }[]): number =>
    amounts.reduce((sum, { grams }) => sum + grams, 0);
  const weight = (column: Column, grams: number): string => (grams > 0 ? readMass(grams, style(column)) : '–');
  return [
    ...[...fats.values()].map((fat) =>
      row(capital(inSentence(fat.name)), (column) => {
        const { recipe } = column.kept;
        const all = [...recipe.fats, ...recipe.after];
        const grams = gramsOf(all.filter((one) => one.fat.id === fat.id));
        return grams > 0 ? percent(grams / gramsOf(all), style(column)) : '–';
      }),
    ),
    row('All fats', (column) => weight(column, gramsOf([...column.kept.recipe.fats, ...column.kept.recipe.after]))),
    ...alkalis.map((id) =>
      row(capital(alkaliName[id]), (column) =>
        weight(column, gramsOf(column.kept.recipe.alkali.filter((one) => one.id === id))),
      ),
    ),
    row('Water', (column) => weight(column, column.kept.recipe.waterGrams)),
    row('Superfat', (column) => percent(column.figures.superfat.nominal, style(column))),
    row('Lye solution', (column) => percent(column.figures.lye.concentration, style(column))),
    row('Iodine value', (column) => {
      const { iodineFromRanges, iodineFromAcids } = composeBlend([
        ...column.kept.recipe.fats,
        ...column.kept.recipe.after,
      ]);
      const iodine = iodineFromRanges ?? iodineFromAcids;
      return iodine ? number(iodine.nominal, 0, style(column)) : '–';
    }),
  ];
}
