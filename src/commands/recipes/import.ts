import type { Result } from '../../answer/types.ts';
import type { Change } from '../../store/port.ts';
import { untilClear, wayToAid } from '../cautions.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { listed } from '../phrases.ts';
import { keyOf, longestName, quoted } from './name.ts';
import { tooMany } from './quota.ts';
import { isForm, readForm } from './read-forms.ts';
import { named, type Wish } from './request.ts';
import { save } from './save.ts';
import { badName, meanwhile } from './shelf.ts';

type Ran = Result<Said<'caustic'>, Refusal<'caustic'>>;

/** All of the recipes in a text, or none: JSON and CSV as they were exported, else one recipe in words. */
export async function imported(
  { text }: Extract<Wish, { do: 'import' }>,
  options: Taken['options'],
  whole: string,
  context: Context,
  memory: Memory,
): Promise<Ran> {
  if (text.trim() === '')
    return no(
      'unclear',
      'What shall I take in?',
      'Put the text of the file behind the word: recipe import {"form": …}; or "recipe import NAME:" and the recipe.',
    );
  if (!isForm(text)) return save({ do: 'save', ...named(text) }, options, whole, context, memory);
  const read = await readForm(text, context.catalogue, memory.now);
  if (!read.ok)
    return no(
      'unclear',
      `I can’t take this in: in ${read.where}, ${read.why}.`,
      'Nothing was kept. Mend that place, or export it again.',
    );
  const { recipes } = read;
  if (recipes.length === 0) return no('unclear', 'There is no recipe in this.', 'Nothing was kept.');
  const bad = recipes.map(({ name }) => badName(name)).find((one) => one !== null);
  if (bad) return { ok: false, fault: bad };
  const keys = new Map<string, string>();
  for (const { name } of recipes) {
    if (keys.has(keyOf(name)))
      return no(
        'unclear',
        `Two recipes in this are called ${quoted(name)}.`,
        'Give one of them another name. Nothing was kept.',
      );
    keys.set(keyOf(name), name);
  }
  const before = await Promise.all(recipes.map(({ name }) => memory.own.get('recipe', keyOf(name))));
  const taken = recipes.filter((_, k) => before[k]).map(({ name }) => name);
  const { confirm } = options;
  if (taken.length > 0 && confirm !== 'yes' && confirm !== 'both')
    return {
      ok: false,
      fault: {
        code: 'unclear',
        message: `You have ${listed(taken.slice(0, 5).map(quoted))}${taken.length > 5 ? ` and ${taken.length - 5} more of these` : ''} already. Replace ${taken.length > 1 ? 'them' : 'it'}?`,
        hint: 'Answer "replace", or "keep both". Nothing was kept so far.',
        candidates: ['replace', 'keep both'],
        caution: [wayToAid],
        complete: (answer) => {
          const confirmed = /\bboth\b/i.test(answer) ? 'both' : /^\W*(?:yes|replace)\b/i.test(answer) ? 'yes' : null;
          return confirmed && { text: whole, options: { ...options, confirm: confirmed } };
        },
      },
    };
  const full = await tooMany('recipes', memory, recipes.length - (confirm === 'both' ? 0 : taken.length));
  if (full) return { ok: false, fault: full };
  const changes: Change[] = [];
  for (const [k, recipe] of recipes.entries()) {
    const there = before[k];
    const name = there && confirm === 'both' ? await freeName(recipe.name, memory, keys) : recipe.name;
    changes.push({
      do: 'put',
      kind: 'recipe',
      key: keyOf(name),
      data: { ...recipe, name },
      expects: name === recipe.name ? (there?.version ?? 0) : 0,
    });
  }
  const written = await memory.own.commit(changes);
  if (!written.ok) return { ok: false, fault: meanwhile(recipes[0]?.name ?? '') };
  const heavy = recipes.filter(({ checked }) => checked.verdict === 'excess-alkali').map(({ name }) => quoted(name));
  return {
    ok: true,
    value: {
      title: 'Taken in',
      lead: `${recipes.length === 1 ? `${quoted(recipes[0]?.name ?? '')} is` : `${recipes.length} recipes are`} kept, reckoned anew with today’s values.`,
      body:
        recipes.length > 1
          ? [
              {
                kind: 'list',
                title: 'Kept',
                items: changes.slice(0, 20).map((one) => (one.do === 'put' ? String(one.data['name']) : '')),
              },
            ]
          : [],
      details: [],
      assumptions: [],
      warnings: heavy.length > 0 ? [`Too much alkali, not to be made as written: ${listed(heavy)}.`] : [],
      caution: [wayToAid],
      actions: [{ label: 'my recipes', request: 'recipe list' }],
      result: { imported: changes.map((one) => (one.do === 'put' ? String(one.data['name']) : '')), saved: true },
    },
  };
}

/** "Soap 2" where there is a "Soap". */
async function freeName(name: string, { own }: Memory, keys: Map<string, string>): Promise<string> {
  for (let k = 2; ; k += 1) {
    const next = `${name.slice(0, longestName - 5)} ${k}`;
    if (keys.has(keyOf(next)) || (await own.get('recipe', keyOf(next)))) continue;
    keys.set(keyOf(next), next);
    return next;
  }
}

const no = (code: Refusal['code'], message: string, hint: string): Ran => ({
  ok: false,
  fault: { code, message, hint, candidates: [], caution: untilClear },
});
