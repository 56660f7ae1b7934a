/** The beginning of a batch: from a kept recipe, a pasted one or the last one, at a wished size. */
import type { Result } from '../../answer/types.ts';
import type { BatchEvent, Process } from '../../engine/batch/batch.ts';
import { checkRecipe } from '../../engine/check.ts';
import { USUAL_SUPERFAT } from '../../engine/weigh.ts';
import { readScaleRequest } from '../../reading/question/scale-target.ts';
import { percent } from '../../units/print.ts';
import { excessCaution, untilClear } from '../cautions.ts';
import { styleFor } from '../check.ts';
import type { Context, Memory, Refusal, Taken } from '../define.ts';
import type { Kept } from '../kept.ts';
import { recipeIn } from '../recipe-in.ts';
import { keyOf, nameIn } from '../recipes/name.ts';
import { keptFrom } from '../recipes/saved.ts';
import { find, unknown } from '../recipes/shelf.ts';
import { refused } from '../refusals.ts';
import { scale } from '../scale.ts';
import { clockOf, isoDate } from '../when.ts';
import { append, type Held, lots, newLot } from './keep.ts';
import { planOf, scentOfRecipe } from './plan.ts';

type No = { readonly ok: false; readonly fault: Refusal<'caustic'> };

const example = 'batch start 500 g lard, 66 g NaOH, 150 g water';

export interface Started {
  readonly held: Held;
  readonly taken: readonly string[];
  readonly warnings: readonly string[];
}

/** The words of a start, without those that only say that it is one. */
const bare = (text: string): string =>
  text
    .replace(/^\s*(?:(?:start|begin|new|make|a|an|another|batch)\b[\s:]*)+/i, '')
    .replace(/^(?:of|from|with|for)\b\s*/i, '')
    .replace(/^(?:the|my|this|that|it|last)\b\s*(?:last\b\s*)?(?:recipe\b)?[\s:]*/i, '')
    .trim();

/** Only what is said of a size is one: "20 g lavender" at the end of a recipe is none. */
const speaksOfSize =
  /\b(?:scale|resize|double|halve|triple|twice|factor|mou?ld|bars?)\b|\b(?:to|for|into|make|of) (?:a |about |my )?\d|\btimes\b/i;

interface Base {
  readonly kept: Kept;
  readonly name: string;
  /** What is left of the text behind the recipe: perhaps a size. */
  readonly rest: string;
}

async function baseOf(
  text: string,
  options: Taken['options'],
  context: Context,
  memory: Memory,
): Promise<{ readonly ok: true; readonly value: Base } | No> {
  const { fats, alkali, after } = context.read(text);
  const isRecipe = fats.length + after.length > 0 && (alkali.length > 0 || fats.length > 0) && /\d/.test(text);
  if (!isRecipe && text !== '') {
    const named = await byName(text, memory);
    if (named) {
      const restored = keptFrom(named.saved, context.catalogue);
      if (!restored.ok)
        return no({
          code: 'refused',
          message: `I can’t start "${named.saved.name}": my tables no longer hold ${restored.missing.join(', ')}.`,
          hint: 'Change the recipe first, and save it again.',
          candidates: [],
        });
      return { ok: true, value: { kept: restored.kept, name: named.saved.name, rest: named.rest } };
    }
    const isSize = speaksOfSize.test(text) && readScaleRequest(context.reader(), text).wish !== null;
    if (!isSize) {
      const fault = await unknown(nameIn(text), (name) => `batch start ${name}`, memory);
      return { ok: false, fault };
    }
  }
  const sized = isRecipe && speaksOfSize.test(text);
  const asked = sized ? readScaleRequest(context.reader(), text) : { recipe: text };
  const base = recipeIn(isRecipe ? asked.recipe || text : '', options, example, context);
  if (!base.ok) return base;
  return { ok: true, value: { kept: base.value, name: '', rest: isRecipe && !sized ? '' : text } };
}

/** The longest head of the text that is the name of a kept recipe. */
async function byName(text: string, memory: Memory) {
  const words = text.split(/\s+/);
  for (let count = Math.min(words.length, 20); count > 0; count -= 1) {
    const head = words.slice(0, count).join(' ');
    const name = nameIn(head).replace(/[,:;]+$/, '');
    if (keyOf(name) === '' || name.length > 100) continue;
    const found = await find(name, memory);
    if (found)
      return {
        saved: found.saved,
        rest: words
          .slice(count)
          .join(' ')
          .replace(/^[,:;\s]+/, ''),
      };
  }
  return null;
}

const no = (fault: Omit<Refusal<'caustic'>, 'caution'>): No => ({
  ok: false,
  fault: { ...fault, caution: untilClear },
});

/** "cold process", "CP": said of the batch, and no part of its recipe. */
function processIn(text: string): { readonly process: Process | null; readonly text: string } {
  const found = /\b(?:as |by )?(?:(hot|cold)[- ]?process(?:ed)?|(hp|cp))\b/i.exec(text);
  if (!found) return { process: null, text };
  const word = (found[1] ?? found[2] ?? '').toLowerCase();
  return {
    process: word === 'hot' || word === 'hp' ? 'hot' : 'cold',
    text: `${text.slice(0, found.index)} ${text.slice(found.index + found[0].length)}`,
  };
}

export async function start(
  said: string,
  options: Taken['options'],
  open: readonly Held[],
  context: Context,
  memory: Memory,
): Promise<Result<Started, Refusal<'caustic'>>> {
  const { process: wanted, text: rest } = processIn(said);
  const text = bare(rest);
  const base = await baseOf(text, options, context, memory);
  if (!base.ok) return base;
  let { kept } = base.value;
  const wish = base.value.rest === '' ? null : readScaleRequest(context.reader(), base.value.rest).wish;
  if (wish) {
    const own = Object.create(context, { last: { value: { recipe: kept, workings: [], said: null } } }) as Context;
    const scaled = scale.run(
      { text: base.value.name === '' ? base.value.rest : `scale ${base.value.rest}`, options: {} },
      own,
    );
    if (!scaled.ok) return { ok: false, fault: { ...scaled.fault, caution: untilClear } };
    if (scaled.value.kept) kept = scaled.value.kept;
  }
  const { recipe } = kept;
  const checked = checkRecipe(recipe, context.catalogue.fats, kept.superfat ?? USUAL_SUPERFAT);
  if (!checked.ok) return { ok: false, fault: refused(checked.fault, context.catalogue) };
  const { verdict, superfat, scale: fitness } = checked.value;
  if (verdict === 'excess-alkali')
    return {
      ok: false,
      fault: {
        code: 'refused',
        message: 'I start no batch of this recipe: it has too much alkali and would burn skin.',
        hint: 'Say "check" for what is wrong with it, and mend it first.',
        candidates: ['check'],
        caution: excessCaution,
      },
    };
  const { own, quota } = memory;
  if (quota && (await lots(own)).length >= quota.batches)
    return no({
      code: 'refused',
      message: `I keep ${quota.batches} batches of one person, and you have as many.`,
      hint: 'Delete old ones first: say "privacy".',
      candidates: [],
    });
  const style = styleFor(kept.reading, undefined, context);
  const isHot = recipe.after.length > 0 || recipe.alkali.some(({ id, grams }) => id === 'koh' && grams > 0);
  const process = wanted ?? 'hot';
  const clock = clockOf(context);
  const scent = scentOfRecipe(kept.reading, context);
  const plan = planOf(kept, superfat.nominal);
  let held: Held | null = null;
  // two at the same moment: the second takes the next number
  for (let tries = 0; held === null && tries < 5; tries += 1) {
    const lot = await newLot(own, isoDate(memory.now, clock.zone));
    const event: BatchEvent = {
      at: memory.now,
      did: 'start',
      uid: memory.newId(),
      lot,
      name: base.value.name,
      process,
      plan,
      scent,
    };
    held = await append(null, [event], memory);
  }
  if (!held)
    return no({
      code: 'refused',
      message: 'Another batch was begun at the same moment.',
      hint: 'Say it again.',
      candidates: [],
    });
  const busy = open.filter(({ batch }) => batch.stage !== 'cure' && batch.stage !== 'cut');
  return {
    ok: true,
    value: {
      held,
      taken: [
        ...(wanted === null && !isHot ? ['I took it as hot process: say "batch cold process" if not.'] : []),
        ...(recipe.scaleStepGrams === 1 && kept.reading.scaleStep === null ? ['I took a scale that shows 1 g.'] : []),
        ...clock.taken,
      ],
      warnings: [
        ...(verdict === 'thin-margin'
          ? [`Only about ${percent(superfat.nominal, style)} of the fat is left over: weigh with care.`]
          : []),
        ...(verdict === 'alkali-short' ? [`Much fat stays: ${percent(superfat.nominal, style)}.`] : []),
        ...(fitness.tooCoarse ? ['The scale is coarse for so small a batch: say "check" for what that does.'] : []),
        ...busy.map(({ batch }) => `Lot ${batch.lot} is still open: begin with its number where you mean it.`),
      ],
    },
  };
}
