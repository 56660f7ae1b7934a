import type { Block, Result } from '../../answer/types.ts';
import { untilClear, wayToAid } from '../cautions.ts';
import type { Context, Memory, Refusal, Said } from '../define.ts';
import { given, toCsv, toJson, toText } from './forms.ts';
import { keyOf, quoted } from './name.ts';
import type { Form, Wish } from './request.ts';
import type { SavedRecipe } from './saved.ts';
import { all, find, savedIn, unknown } from './shelf.ts';

/** Longest file that can be handed back in one message, characters. */
const longestFile = 90_000;

export async function exported(
  { name, form }: Extract<Wish, { do: 'export' }>,
  context: Context,
  memory: Memory,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  if (name === null && !memory.isPrivate) return { ok: false, fault: readByOthers };
  const found = name === null ? null : await find(name, memory);
  if (name !== null && !found)
    return { ok: false, fault: await unknown(name, (one) => `recipe export ${one}`, memory) };
  const recipes = found ? [found.saved] : await Array.fromAsync(all(memory.own), savedIn);
  if (recipes.length === 0)
    return {
      ok: false,
      fault: {
        ...readByOthers,
        code: 'unclear',
        message: 'I keep no recipe of yours yet.',
        hint: 'Say "recipe save NAME" after one was checked.',
      },
    };
  const [only] = recipes.length === 1 ? recipes : [];
  const text = only && (form === null || form === 'text') ? toText(only, context.catalogue, context.reader()) : null;
  return {
    ok: true,
    value: {
      title: 'Export',
      lead: only
        ? `${quoted(only.name)}, to keep or to give away.`
        : `Your ${recipes.length} recipes, to keep or to give away.`,
      body: [
        ...(text === null ? [] : text.split('\n\n').map((part): Block => ({ kind: 'text', text: part }))),
        ...(await filesOf(recipes, form, context)),
      ],
      details: [],
      assumptions: [],
      warnings: [],
      caution: [wayToAid],
      actions: [],
      result: {
        recipes: recipes.map(given),
        ...(text === null ? {} : { text }),
        ...(form === 'csv' ? { csv: await toCsv(recipes, context.catalogue) } : {}),
      },
    },
  };
}

/** As many files as a message takes back: one, unless there is very much. */
async function filesOf(
  recipes: readonly SavedRecipe[],
  form: Form | null,
  context: Context,
): Promise<readonly Block[]> {
  const stem = recipes.length === 1 ? fileName(recipes[0]?.name ?? '') : 'recipes';
  const files: Block[] = [];
  const add = (parts: readonly string[], ending: string, type: string, about: string): void => {
    for (const [k, text] of parts.entries())
      files.push({ kind: 'file', name: `${stem}${parts.length > 1 ? `-${k + 1}` : ''}.${ending}`, type, text, about });
  };
  const chunks = inChunks(recipes);
  if (form === null || form === 'json')
    add(chunks.map(toJson), 'json', 'application/json', 'all of it; "recipe import" and the text bring it back');
  if (form === null || form === 'csv')
    add(
      await Promise.all(chunks.map((chunk) => toCsv(chunk, context.catalogue))),
      'csv',
      'text/csv',
      'for a spreadsheet; "recipe import" reads it, too',
    );
  if (form === 'text' && recipes.length > 1)
    add(
      [recipes.map((one) => `${one.name}\n\n${toText(one, context.catalogue, context.reader())}`).join('\n\n\n')],
      'txt',
      'text/plain',
      'each as "check" reads it',
    );
  return files;
}

function inChunks(recipes: readonly SavedRecipe[]): readonly (readonly SavedRecipe[])[] {
  const chunks: SavedRecipe[][] = [[]];
  let length = 0;
  for (const recipe of recipes) {
    const own = JSON.stringify(given(recipe)).length;
    if (length + own > longestFile && length > 0) {
      chunks.push([]);
      length = 0;
    }
    chunks.at(-1)?.push(recipe);
    length += own;
  }
  return chunks;
}

/** Letters, figures and hyphens. */
const fileName = (name: string): string =>
  keyOf(name)
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40) || 'recipe';

const readByOthers: Refusal<'caustic'> = {
  code: 'refused',
  message: 'Your recipes are yours alone, and others read this room.',
  hint: 'Ask me in a direct message, and I give you all of them.',
  candidates: [],
  caution: untilClear,
};
