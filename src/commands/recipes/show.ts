import type { Result } from '../../answer/types.ts';
import { number, type Style } from '../../units/print.ts';
import { untilClear } from '../cautions.ts';
import { calendarDay } from '../clock.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import type { Kept } from '../kept.ts';
import { nextSteps } from '../next-steps.ts';
import { inSentence, listed } from '../phrases.ts';
import { summary } from '../summary.ts';
import { quoted } from './name.ts';
import { type Changed, changedSince, keptFrom, type SavedRecipe } from './saved.ts';
import { find, unknown } from './shelf.ts';

export async function show(
  name: string,
  options: Taken['options'],
  context: Context,
  memory: Memory,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  const found = await find(name, memory);
  if (!found) return { ok: false, fault: await unknown(name, (one) => `recipe show ${one}`, memory) };
  const { saved, isRoom } = found;
  const restored = keptFrom(saved, context.catalogue);
  if (!restored.ok) return { ok: false, fault: notHeld(saved, restored.missing) };
  const { kept } = restored;
  const ran = summary.run({ text: '', options }, withLast(context, kept));
  // summary is caustic, so that what it says carries its caution
  if (!ran.ok) return { ok: false, fault: ran.fault as Refusal<'caustic'> };
  const { body, result, warnings, working, caution } = ran.value as Said<'caustic'>;
  const savedAt = new Date(saved.savedAt).toISOString();
  const steps = body.filter(({ kind }) => kind === 'steps');
  return {
    ok: true,
    value: {
      title: saved.name,
      lead: `${quoted(saved.name)}, ${isRoom ? 'shared in this room' : 'saved'} on ${calendarDay(saved.savedAt, context.zone)}${saved.checked.verdict === 'excess-alkali' ? ': too much alkali, not to be made as it is' : ''}.`,
      body: body.filter(({ kind }) => kind !== 'steps'),
      details: steps,
      assumptions: ran.value.assumptions,
      warnings: [...changedSince(saved, kept.recipe).map((one) => changedLine(one, context.style)), ...warnings],
      caution,
      actions: nextSteps,
      result: { ...result, recipe: { name: saved.name, savedAt, ...(result['recipe'] as object) } },
      kept,
      ...(working ? { working } : {}),
    },
  };
}

/** The recipe as if it had been the last one. */
const withLast = (context: Context, kept: Kept): Context =>
  Object.create(context, { last: { value: { recipe: kept, workings: [], said: null } } }) as Context;

function changedLine({ fat, was, is }: Changed, style: Style): string {
  const value = ({ nominal, low, high }: Changed['is']): string =>
    `${number(nominal, 1, style)} (${number(low, 1, style)} to ${number(high, 1, style)})`;
  return `The value of ${inSentence(fat.name)} has changed since this was saved: it was ${value(was)} mg KOH/g, now ${value(is)}. The figures here are today’s.`;
}

export const notHeld = ({ name }: SavedRecipe, missing: readonly string[]): Refusal<'caustic'> => ({
  code: 'refused',
  message: `${quoted(name)} holds ${listed(missing)}, which this version no longer has a value for.`,
  hint: 'Its amounts are kept: "recipe export" shows them.',
  candidates: [],
  caution: untilClear,
});
