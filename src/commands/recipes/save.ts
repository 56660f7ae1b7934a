import type { Result } from '../../answer/types.ts';
import { checkRecipe } from '../../engine/check.ts';
import { USUAL_SUPERFAT } from '../../engine/weigh.ts';
import { percent } from '../../units/print.ts';
import { beforeMixing, excessCaution, thinCaution, untilClear, wayToAid } from '../cautions.ts';
import { styleFor } from '../check.ts';
import { calendarDay } from '../clock.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { readLine } from '../read-line.ts';
import { recipeIn } from '../recipe-in.ts';
import { refused } from '../refusals.ts';
import { lyeResult } from '../result.ts';
import { keyOf, nameIn, quoted } from './name.ts';
import { tooMany } from './quota.ts';
import type { Wish } from './request.ts';
import { savedFrom } from './saved.ts';
import { agrees, badName, meanwhile, nameless, savedIn } from './shelf.ts';

const example = 'recipe save Everyday bar: 500 g lard, 66 g NaOH, 150 g water';

export async function save(
  { name: said, text }: Extract<Wish, { do: 'save' }>,
  options: Taken['options'],
  whole: string,
  context: Context,
  memory: Memory,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  const name = typeof options['name'] === 'string' ? nameIn(options['name']) : said;
  if (name === '') return { ok: false, fault: unnamed(whole, options) };
  if (text === null && isRecipe(name, context)) return { ok: false, fault: whereItEnds };
  const wrong = badName(name);
  if (wrong) return { ok: false, fault: wrong };
  const { confirm, name: _name, ...given } = options;
  const base = recipeIn(text ?? '', given, example, context);
  if (!base.ok) return base;
  const kept = base.value;
  const checked = checkRecipe(kept.recipe, context.catalogue.fats, kept.superfat ?? USUAL_SUPERFAT);
  if (!checked.ok) return { ok: false, fault: refused(checked.fault, context.catalogue) };
  const figures = checked.value;
  const before = await memory.own.get('recipe', keyOf(name));
  if (before && confirm !== 'yes')
    return { ok: false, fault: taken(savedIn(before).name, savedIn(before).savedAt, whole, options, context) };
  const full = before ? null : await tooMany('recipes', memory);
  if (full) return { ok: false, fault: full };
  const saved = savedFrom(name, kept, figures, context.catalogue, memory.now);
  const written = await memory.own.commit([
    {
      do: 'put',
      kind: 'recipe',
      key: keyOf(name),
      // copies in rooms stay under the hand of whoever shared them
      data: { ...saved, ...(before ? { shared: savedIn(before).shared ?? [] } : {}) },
      expects: before?.version ?? 0,
    },
  ]);
  if (!written.ok) return { ok: false, fault: meanwhile(name) };
  const style = styleFor(kept.reading, undefined, context);
  const tooMuch = figures.verdict === 'excess-alkali';
  return {
    ok: true,
    value: {
      title: 'Saved',
      lead: `${before ? 'Replaced' : 'Saved as'} ${quoted(name)}${tooMuch ? ', though it has too much alkali: it is not to be made as it is' : ''}.`,
      body: [
        { kind: 'text', text: readLine(kept.recipe, kept.reading, style).replace(/^I read:/, 'It is:') },
        { kind: 'text', text: `Superfat: about ${percent(figures.superfat.nominal, style)}.` },
      ],
      details: [],
      assumptions: [],
      warnings: [],
      caution: tooMuch ? excessCaution : figures.verdict === 'thin-margin' ? thinCaution : beforeMixing,
      actions: [
        { label: `show ${name}`, request: `recipe show ${name}` },
        { label: 'my recipes', request: 'recipe list' },
      ],
      result: { name, saved: true, ...lyeResult(kept.recipe, figures) },
      kept,
    },
  };
}

/** The words of a recipe where only a name should stand. */
function isRecipe(name: string, { read }: Context): boolean {
  if (!/\d/.test(name)) return false;
  const { fats, alkali } = read(name);
  return fats.length > 1 || (fats.length > 0 && alkali.length > 0);
}

const whereItEnds: Refusal<'caustic'> = {
  code: 'unclear',
  message: 'Where does the name end and the recipe begin?',
  hint: `Put a colon between them: ${example}`,
  candidates: [],
  caution: untilClear,
};

const unnamed = (text: string, options: Taken['options']): Refusal<'caustic'> => ({
  ...nameless,
  message: 'Under which name shall I keep it?',
  hint: 'Answer with a name.',
  complete: (answer) => (/\n/.test(answer) ? null : { text, options: { ...options, name: answer } }),
});

const taken = (
  name: string,
  savedAt: number,
  text: string,
  options: Taken['options'],
  { zone }: Context,
): Refusal<'caustic'> => ({
  code: 'unclear',
  message: `You have a recipe ${quoted(name)} already, saved on ${calendarDay(savedAt, zone)}. Replace it?`,
  hint: 'Answer "replace" (or write confirm=yes with the request), or save it under another name.',
  candidates: ['replace'],
  caution: [wayToAid],
  complete: (answer) =>
    agrees(answer, 'replace|overwrite') ? { text, options: { ...options, confirm: 'yes' } } : null,
});
