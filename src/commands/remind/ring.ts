/** What is said when a reminder is due, and what follows from it. */
import type { Block, NonEmpty } from '../../answer/types.ts';
import { type Batch, stageAfter } from '../../engine/batch/batch.ts';
import type { Change, Claimed } from '../../store/port.ts';
import { temperature } from '../../units/print.ts';
import { forecastOf } from '../batch/cooling.ts';
import { coolingLine } from '../batch/cooling-words.ts';
import { batchIn } from '../batch/keep.ts';
import { askDue, asReminder, cureDue } from '../batch/reminders.ts';
import { batchResult } from '../batch/result.ts';
import { cautionOf, guideOf, stageName, whereWords } from '../batch/stages.ts';
import type { Context, Said } from '../define.ts';
import { clockOf, dateWords, lengthWords, whenWords } from '../when.ts';
import { type About, aboutOf, lateAfter } from './bell.ts';

export interface Rung {
  readonly command: 'batch' | 'remind';
  readonly said: Said;
  /** Written together with its being told. */
  readonly follows: readonly Change[];
}

/** Another minute on a timer of the pot, min. */
const more = 5;

const line = (text: string): Block => ({ kind: 'text', text });

/** Null where it no longer holds: the batch went on, was closed or is gone. */
export async function ringing(claimed: Claimed, now: number, context: Context): Promise<Rung | null> {
  const clock = clockOf(context);
  const about = aboutOf(claimed);
  const late =
    now > claimed.dueAt + lateAfter
      ? `This is ${lengthWords(now - claimed.dueAt)} late: it was for ${whenWords(claimed.dueAt, now, clock.zone)}.`
      : null;
  if (about.kind === 'remind') return { command: 'remind', said: reminded(about, late, claimed, now), follows: [] };
  const document = claimed.batch === null ? null : await claimed.own.get('batch', claimed.batch);
  const batch = document && batchIn(document);
  if (!batch || batch.end) return null;
  const style = { ...context.style, temperatureUnit: batch.readings.at(-1)?.unit ?? context.style.temperatureUnit };
  const guide = guideOf(batch, now, context, style);
  const words = wordsFor(about, batch, claimed, now, { ...context, style });
  if (!words) return null;
  const { lead, body, actions, follows, caution } = words;
  return {
    command: 'batch',
    said: {
      title: `Lot ${batch.lot}`,
      lead,
      body: [...body, line(whereWords(batch)), ...(late === null ? [] : [line(late)])],
      details: [],
      assumptions: [],
      warnings: [],
      caution: caution ?? guide.caution,
      actions: actions ?? guide.actions,
      result: { batch: batchResult(batch, now, guide) },
    },
    follows: follows ?? [],
  };
}

function reminded(about: Extract<About, { kind: 'remind' }>, late: string | null, claimed: Claimed, now: number): Said {
  return {
    title: 'Reminder',
    lead: `Reminder: ${about.text}.`.replace(/([.!?])\.$/, '$1'),
    body: late === null ? [] : [line(late)],
    details: [],
    assumptions: [],
    warnings: [],
    caution: [],
    actions: [{ label: 'again in 10 minutes', request: `remind in 10 min: ${about.text}` }],
    result: {
      reminders: [
        {
          id: claimed.id,
          dueAt: new Date(claimed.dueAt).toISOString(),
          text: about.text,
          late: now > claimed.dueAt + lateAfter,
          lot: claimed.batch,
        },
      ],
    },
  };
}

interface Words {
  readonly lead: string;
  readonly body: readonly Block[];
  readonly caution?: NonEmpty<string>;
  readonly actions?: Said['actions'];
  readonly follows?: readonly Change[];
}

function wordsFor(
  about: Exclude<About, { kind: 'remind' }>,
  batch: Batch,
  claimed: Claimed,
  now: number,
  context: Context,
): Words | null {
  const clock = clockOf(context);
  const key = claimed.batch ?? batch.lot;
  switch (about.kind) {
    case 'timer': {
      const { timer } = batch;
      // it was put off, or the batch has gone on
      if (timer?.id !== about.timer) return null;
      if (timer.about === 'own') return { lead: `${timer.text}.`.replace(/([.!?])\.$/, '$1'), body: [] };
      if (timer.about === 'measure') return measuring(batch, now, context);
      return looking(batch, context);
    }
    case 'cure': {
      if (batch.stage !== 'cure') return null;
      const next = cureDue(batch, about.step + 1);
      const since = batch.reached.findLast(({ stage }) => stage === 'cure')?.at ?? now;
      return {
        lead: `The bars of lot ${batch.lot} have cured for ${lengthWords(now - since)}.`,
        body: [
          line(
            next
              ? `Turn them and look: hard, dry, no spots? They are ready from now on; ${batch.process} process gains until ${dateWords(next.dueAt, now, clock.zone)}.`
              : 'Turn them and look: hard, dry, no spots?',
          ),
          line(
            batch.process === 'cold'
              ? 'When you take them as cured, say "cured", and we test one.'
              : 'When you take them as cured, say "cured"; its record is then complete.',
          ),
        ],
        actions: [
          { label: 'cured', request: `batch ${batch.lot} cured` },
          { label: 'a week more', request: `batch ${batch.lot} timer in 7 days look at the cure` },
        ],
        follows: next ? [{ do: 'remind', reminder: asReminder(next, key, claimed) }] : [],
      };
    }
    case 'ask': {
      const next = askDue(batch, now);
      return {
        lead: `What became of lot ${batch.lot}? It stands at ${stageName[batch.stage]}, and I heard nothing of it for ${lengthWords(now - batch.touchedAt)}.`,
        body: [line('It stays open until you close it; I ask again in a week.')],
        actions: [
          { label: 'it goes on', request: `batch ${batch.lot}` },
          { label: 'it is finished', request: `batch ${batch.lot} really end` },
          { label: 'gave up', request: `batch ${batch.lot} give up` },
          { label: 'threw it away', request: `batch ${batch.lot} threw it away` },
        ],
        follows: [{ do: 'remind', reminder: asReminder(next, key, claimed) }],
      };
    }
  }
}

/** A stage of the cook, or what stands and sets. */
function looking(batch: Batch, context: Context): Words {
  const stage = context.heat().cook.stages.find(({ id }) => id === batch.stage);
  const onward = stageAfter(batch);
  if (batch.stage === 'cut')
    return {
      lead: `Lot ${batch.lot}: is the soap firm and cold? Then turn it out and cut it, gloves on.`,
      body: [line('When it is cut, say "cut". Not firm yet: "batch timer 12 hours".')],
    };
  if (batch.stage === 'test') return { lead: 'Test it again: cool a bit, then say "zap" or "no zap".', body: [] };
  if (!stage) return { lead: `Lot ${batch.lot}: the time is up.`, body: [] };
  return {
    lead: `Look at the pot now (${stage.name}).`,
    body: [
      line(`What you wait for: ${stage.see}`),
      line(`There? Say "next"${onward === 'test' ? ' and we test it' : ''}. Not yet: "${more} more".`),
    ],
    caution: cautionOf[batch.stage],
  };
}

function measuring(batch: Batch, now: number, context: Context): Words {
  const { style } = context;
  const forecast = forecastOf(batch, now, context, style);
  const last = batch.readings.at(-1);
  return {
    lead: forecast
      ? `Now about ${temperature(forecast.now.nominal, style)}: time to measure. Stir first.`
      : 'Time to measure the pot. Stir first.',
    body: [
      ...(forecast ? [line(coolingLine(forecast, style).replace(/^Now [^.]*\. /, ''))] : []),
      ...(last ? [line('Tell me what it shows, for example "66 now".')] : []),
    ],
    actions: [{ label: 'where the batch is', request: `batch ${batch.lot}` }],
  };
}
