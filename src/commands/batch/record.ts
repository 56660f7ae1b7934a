/** The record of a batch, after the idea of ISO 22716: what went in, when, how warm, what differed, how it was tested. */
import type { Block, Result } from '../../answer/types.ts';
import { type Batch, gramsOfLine, reachedAt, toldByNext } from '../../engine/batch/batch.ts';
import { deviationsOf } from '../../engine/batch/weights.ts';
import { massBoth, percent, percentRange, type Style, temperature } from '../../units/print.ts';
import type { Refusal, Said } from '../define.ts';
import { capital } from '../phrases.ts';
import { isoDate, timeOfDay } from '../when.ts';
import { csvOf } from './record-csv.ts';
import { htmlOf } from './record-html.ts';
import { cureLooks } from './reminders.ts';
import { batchResult } from './result.ts';
import type { Sheet } from './sheet.ts';
import { cautionOf, type Guide, stageName } from './stages.ts';
import type { Around } from './step.ts';
import { judged } from './weigh.ts';

function sheetOf(batch: Batch, { clock: { zone }, style, context }: Around): Sheet {
  const step = batch.plan.scaleStepGrams;
  const day = (at: number): string => isoDate(at, zone);
  const when = (at: number): string => `${day(at)} ${timeOfDay(at, zone)}`;
  const shown = (grams: number): string => massBoth(grams, style, step);
  const found = judged(batch, context);
  const { nominal, low, high } = found?.figures.superfat ?? { nominal: 0, low: 0, high: 0 };
  const cured = reachedAt(batch, 'done');
  const looks = cureLooks(batch);
  const test = batch.tests.at(-1);
  return {
    title: `Batch record, lot ${batch.lot}`,
    facts: [
      ...(batch.name === '' ? [] : [{ label: 'Recipe', value: batch.name }]),
      { label: 'Process', value: `${batch.process} process` },
      { label: 'Begun', value: when(batch.startedAt) },
      ...(batch.end
        ? [
            {
              label: batch.end.how === 'done' ? 'Closed' : capital(batch.end.how.replace('-', ' ')),
              value: when(batch.end.at),
            },
          ]
        : [{ label: 'Now', value: stageName[batch.stage] }]),
      ...(found
        ? [
            {
              label: 'Superfat as weighed',
              value: `${percent(nominal, style)} (${low < 0 ? `−${percent(-low, style)} to ${percent(high, style)}` : percentRange(low, high, style)}), planned ${percent(batch.plan.superfat, style)}`,
            },
          ]
        : []),
      {
        label: 'Test for free lye',
        value: test ? `${test.zap ? 'zap' : 'no zap'}, ${when(test.at)}` : 'none noted',
      },
      ...(batch.scent ? [{ label: 'Scent', value: batch.scent.text }] : []),
      ...(cured !== null
        ? [{ label: 'Cured', value: day(cured) }]
        : looks.length > 0
          ? [{ label: 'Cured about', value: looks.map(day).join(' to ') }]
          : []),
      { label: 'Times in', value: zone },
    ],
    weights: batch.lines.map((line) => {
      const own = batch.taken.get(line.id);
      const inPlan = batch.plan.lines.some(({ id }) => id === line.id);
      return {
        name: line.name,
        planned: inPlan && line.grams !== null ? shown(line.grams) : '–',
        taken: own ? `${shown(gramsOfLine(batch, line))}${own.weighed ? '' : ' (as planned)'}` : 'not weighed',
        plannedGrams: inPlan ? line.grams : null,
        takenGrams: own ? own.grams : null,
        lot: own?.lot ?? '',
      };
    }),
    times: batch.reached.map(({ stage, at }) => ({ at, when: when(at), what: capital(stageName[stage]) })),
    temperatures: batch.readings.map(({ at, celsius, stage }) => ({
      at,
      when: when(at),
      shown: temperature(celsius, style),
      celsius,
      stage: stageName[stage],
    })),
    deviations: deviationWords(batch, context.heat().cook.ceilingC.value, shown, style),
    notes: [
      ...batch.notes.map(({ at, text }) => ({ at, when: when(at), text })),
      ...batch.pictures.map(({ at, reference }) => ({ at, when: when(at), text: `Picture: ${reference}` })),
    ].sort((a, b) => a.at - b.at),
  };
}

function deviationWords(
  batch: Batch,
  ceilingC: number,
  shown: (grams: number) => string,
  style: Style,
): readonly string[] {
  const planned = new Set(batch.plan.lines.map(({ id }) => id));
  const passed = batch.stages.slice(0, batch.stages.indexOf(batch.stage));
  const skipped = passed.filter((stage) => !toldByNext.has(stage) && !batch.reached.some((one) => one.stage === stage));
  const hot = batch.readings.filter(
    ({ celsius, stage }) => celsius > ceilingC && ['separation', 'applesauce', 'gel', 'test'].includes(stage),
  );
  const zaps = batch.tests.filter(({ zap }) => zap).length;
  return [
    ...deviationsOf(batch).map(({ line, grams }) =>
      planned.has(line.id)
        ? `${capital(line.name)}: ${shown(Math.abs(grams))} ${grams > 0 ? 'more' : 'less'} than planned`
        : `${capital(line.name)}: ${shown(grams)} added`,
    ),
    ...(skipped.length > 0
      ? [`Passed over without a word: ${skipped.map((stage) => stageName[stage]).join('; ')}`]
      : []),
    ...hot.map(
      ({ celsius }) => `${temperature(celsius, style)} in the cook, above about ${temperature(ceilingC, style)}`,
    ),
    ...(zaps > 0 ? [`Tested with a zap ${zaps === 1 ? 'once' : `${zaps} times`}`] : []),
    ...(batch.end?.how === 'done' && !batch.tests.some(({ zap }) => !zap)
      ? ['Closed without a test for free lye']
      : []),
  ];
}

/** "olive oil: 450 g (planned 445 g), lot A7" */
const weightLine = ({ name, planned, taken, lot }: Sheet['weights'][number]): string =>
  `${name}: ${taken}${planned === '–' || taken.startsWith(planned) ? '' : ` (planned ${planned})`}${lot === '' ? '' : `, lot ${lot}`}`;

const table = (caption: string, titles: readonly string[], rows: readonly (readonly string[])[]): readonly Block[] =>
  rows.length === 0
    ? []
    : [
        {
          kind: 'table',
          caption,
          columns: titles.map((title, i) => ({ title, align: i === 0 ? 'left' : 'right' }) as const),
          rows,
        },
      ];

const list = (title: string, items: readonly string[]): readonly Block[] =>
  items.length === 0 ? [] : [{ kind: 'list', title, items }];

export async function record(
  batch: Batch,
  form: 'text' | 'html' | 'csv',
  around: Around,
  guide: Guide,
): Promise<Result<Said<'caustic'>, Refusal<'caustic'>>> {
  const sheet = sheetOf(batch, around);
  const name = `batch-${batch.lot}.${form}`;
  const blocks: readonly Block[] =
    form === 'html'
      ? [{ kind: 'file', name, type: 'text/html', text: htmlOf(sheet), about: 'to print' }]
      : form === 'csv'
        ? [{ kind: 'file', name, type: 'text/csv', text: await csvOf(batch.lot, sheet), about: 'for a spreadsheet' }]
        : [
            { kind: 'facts', rows: sheet.facts },
            ...list('Weights', sheet.weights.map(weightLine)),
            ...table(
              'Times',
              ['', ''],
              sheet.times.map(({ what, when }) => [what, when]),
            ),
            ...table(
              'Temperatures',
              ['', '', ''],
              sheet.temperatures.map(({ when, shown, stage }) => [when, shown, stage]),
            ),
            ...list('Deviations', sheet.deviations),
            ...list(
              'Notes',
              sheet.notes.map(({ when, text }) => `${when}: ${text}`),
            ),
          ];
  const others = (['text', 'html', 'csv'] as const).filter((one) => one !== form);
  return {
    ok: true,
    value: {
      title: sheet.title,
      lead: `${sheet.title}.`,
      body: blocks,
      details: [],
      assumptions: [],
      warnings: [],
      caution: cautionOf[batch.stage],
      actions: others.map((one) => ({
        label: one === 'text' ? 'as text' : one === 'html' ? 'to print' : 'for a spreadsheet',
        request: `batch record ${one === 'text' ? '' : `${one} `}${batch.lot}`,
      })),
      result: { batch: batchResult(batch, around.memory.now, guide) },
    },
  };
}
