import type { Result } from '../../answer/types.ts';
import type { Batch, Stage } from '../../engine/batch/batch.ts';
import { readStep, type Step } from '../../reading/batch-step.ts';
import { temperature } from '../../units/print.ts';
import { untilClear } from '../cautions.ts';
import type { Context, Memory, Refusal, Said, Taken } from '../define.ts';
import { clockOf, whenWords } from '../when.ts';
import { append, findLot, type Held, isHere, lots, openBatches } from './keep.ts';
import { listed as listBatches } from './list.ts';
import { record } from './record.ts';
import { batchResult } from './result.ts';
import { cautionOf, countWords, guideOf, stageName, whereWords } from './stages.ts';
import { start } from './start.ts';
import { type Around, guideBlocks, type Told, takeStep } from './step.ts';
import { weighingList } from './weigh.ts';

type Ran = Result<Said<'caustic'>, Refusal<'caustic'>>;

/** Of one batch. */
const mostEvents = 2000;

const ask = (message: string, hint: string, candidates: readonly string[] = []): Ran => ({
  ok: false,
  fault: { code: 'unclear', message, hint, candidates, caution: untilClear },
});

const lotHead = /^\s*(?:lot\s+)?(\d{4}-\d{2}-\d{2}(?:-\d+)+)\b[\s:,]*/i;
const starting = /^\s*(?:start|begin|new|make)\b/i;
const insisting = /^\s*really\b[\s,:]*/i;

export async function run({ text, options }: Taken, context: Context, memory: Memory): Promise<Ran> {
  const lot = lotHead.exec(text)?.[1] ?? null;
  const behind = lot === null ? text : text.replace(lotHead, '');
  const really = insisting.test(behind);
  const said = really ? behind.replace(insisting, '') : behind;
  const open = await openBatches(memory.own);
  const around = (batch: Batch | null): Around => ({
    context,
    memory,
    clock: clockOf(context),
    style: styleOf(batch, context),
    really,
  });
  const step = starting.test(said)
    ? null
    : said.trim() === ''
      ? ({ do: 'status' } as const)
      : (readStep(said)?.step ?? null);
  if (step?.do === 'list') return listBatches(open, memory, around(null));
  if (step?.do === 'record') return recordOf(step, lot, open, memory, around);
  if (step === null || (said.trim() === '' && lot === null && open.length === 0)) {
    if (said.trim() === '' && context.last.recipe === null) return howToStart();
    if (said.trim() === '')
      return ask(
        'Shall I start a batch of your last recipe?',
        'Say "batch start", with a size if you like: "batch start 12 bars of 100 g".',
        ['batch start'],
      );
    return begin(said, options, open, context, memory, around);
  }
  const held = lot === null ? chosen(step, open, said, memory) : await findLot(lot, memory);
  if (held === null) return unknownLot(lot, open, memory);
  if ('ok' in held) return held;
  return perform(step, held, lot, memory, around);
}

/** In the unit in which this pot is measured. */
const styleOf = (batch: Batch | null, { style }: Context) => ({
  ...style,
  temperatureUnit: batch?.readings.at(-1)?.unit ?? style.temperatureUnit,
});

const howToStart = (): Ran =>
  ask(
    'No batch is open here.',
    'Start one from a recipe: "batch start 500 g lard, 66 g NaOH, 150 g water", or "batch start" with the name of a kept one.',
    ['batch list'],
  );

async function unknownLot(lot: string | null, open: readonly Held[], memory: Memory): Promise<Ran> {
  if (lot === null) return howToStart();
  const near = open.length > 0 ? open.map(({ batch }) => batch.lot) : (await lots(memory.own)).slice(-3);
  return ask(
    `I know no lot ${lot} of yours.`,
    near.length > 0 ? `There is ${near.join(', ')}.` : 'Say "batch list".',
    near.slice(0, 5).map((one) => `batch ${one}`),
  );
}

/** Stages at which nobody stands at the pot. */
const resting: ReadonlySet<Stage> = new Set(['cut', 'cure', 'done']);

/** The batch that is meant where no lot is said; a question where several may be. */
function chosen(step: Step, open: readonly Held[], said: string, memory: Memory): Held | null | Ran {
  const here = open.filter((held) => isHere(held, memory));
  const near = here.length > 0 ? here : open;
  const isLate = step.do === 'stage' && (step.stage === 'cure' || step.stage === 'done');
  const fits = near.filter(({ batch }) => resting.has(batch.stage) === isLate);
  const [one, ...others] = fits.length > 0 ? fits : near;
  if (!one) return null;
  if (others.length === 0) return one;
  return ask(
    'Which batch?',
    (fits.length > 0 ? fits : near).map(({ batch }) => whereWords(batch)).join('\n'),
    (fits.length > 0 ? fits : near).slice(0, 5).map(({ batch }) => `batch ${batch.lot} ${said.trim()}`.trim()),
  );
}

type AroundOf = (batch: Batch | null) => Around;

async function begin(
  said: string,
  options: Taken['options'],
  open: readonly Held[],
  context: Context,
  memory: Memory,
  aroundOf: AroundOf,
): Promise<Ran> {
  const begun = await start(said, options, open, context, memory);
  if (!begun.ok) return begun;
  const { held, taken, warnings } = begun.value;
  const around = aroundOf(held.batch);
  return told(
    held.batch,
    {
      lead: `Batch begun: lot ${held.batch.lot}.`,
      body: [],
      assumptions: taken,
      warnings: [...warnings, ...laterWords(memory)],
      guide: true,
    },
    around,
    true,
  );
}

/** Where nobody can be told anything later, or only elsewhere. */
function laterWords({ later }: Memory): readonly string[] {
  switch (later.can) {
    case 'here':
      return later.how === undefined ? [] : [later.how];
    case 'direct':
      return [`${later.why} I’ll write you a direct message when a time is up: let me write to you.`];
    case 'nowhere':
      return [`${later.why} No timer of mine can ring here: set one yourself.`];
  }
}

async function perform(step: Step, first: Held, lot: string | null, memory: Memory, aroundOf: AroundOf): Promise<Ran> {
  let held: Held | null = first;
  // what was changed meanwhile from elsewhere is looked at anew
  for (let tries = 0; held && tries < 3; tries += 1) {
    const { batch } = held;
    const around = aroundOf(batch);
    const elsewhere =
      lot === null && !isHere(first, memory) ? [`I took lot ${batch.lot}, which was spoken of elsewhere.`] : [];
    if (step.do === 'weights')
      return told(
        batch,
        {
          lead: `Lot ${batch.lot}: ${countWords(batch)}`,
          body: [weighingList(batch, around.style)],
          assumptions: elsewhere,
          guide: false,
        },
        around,
        false,
      );
    if (batch.end && step.do !== 'note' && step.do !== 'picture' && step.do !== 'undo' && step.do !== 'status')
      return ask(`Lot ${batch.lot} is closed.`, 'Say "undo" to open it again, or "batch record" for its record.', [
        `batch ${batch.lot} undo`,
        `batch record ${batch.lot}`,
      ]);
    if (step.do === 'undo') {
      const last = batch.events.findLast(({ also }) => !also);
      if (!last || batch.events.length < 2)
        return ask('Nothing to take back: it has only begun.', 'Say "batch give up" to close it.', ['batch give up']);
      const written = await append(held, [{ did: 'undo', at: memory.now }], memory);
      if (written) {
        const lead = `Taken back: ${happened(last, batch, around)}.`;
        return told(written.batch, { lead, body: [], assumptions: elsewhere, guide: true }, around, false);
      }
    } else {
      const taken = takeStep(step, held, around);
      if (!taken) return howToStart();
      if ('fault' in taken) return { ok: false, fault: taken.fault };
      if (held.events.length + taken.happened.length > mostEvents)
        return ask(`Lot ${batch.lot} has ${mostEvents} entries, as many as I keep.`, 'Close it: "batch end".', [
          'batch end',
        ]);
      const events = taken.happened.map((one, i) => ({
        ...one,
        at: memory.now,
        ...(i > 0 ? { also: true as const } : {}),
      }));
      const written = events.length === 0 ? held : await append(held, events, memory);
      if (written) {
        const say = taken.tell(written.batch);
        const ring =
          written.batch.timer && written.batch.timer !== batch.timer && memory.later.can !== 'here'
            ? laterWords(memory)
            : [];
        return told(
          written.batch,
          {
            ...say,
            assumptions: [...elsewhere, ...(say.assumptions ?? [])],
            warnings: [...(say.warnings ?? []), ...ring],
          },
          around,
          false,
        );
      }
    }
    held = await findLot(held.key, memory);
  }
  return ask('Somebody else changed this batch at the same moment.', 'Look at it and say it again.', ['batch status']);
}

/** An event in words, for who takes it back. */
function happened(event: Batch['events'][number], batch: Batch, { style }: Pick<Around, 'style'>): string {
  switch (event.did) {
    case 'take':
    case 'lot':
      return `the weight of ${batch.lines.find(({ id }) => id === event.line)?.name ?? event.line}`;
    case 'bring':
      return `${event.line.name}, added`;
    case 'take-rest':
      return 'the rest weighed as planned';
    case 'reach':
      return `the step to ${stageName[event.stage]}`;
    case 'read':
      return `the reading of ${temperature(event.celsius, style)}`;
    case 'wait':
      return 'the timer';
    case 'room':
      return 'the temperature of the room';
    case 'scent':
      return 'the scent';
    case 'process':
      return `${event.process} process`;
    case 'test':
      return event.zap ? 'the test that gave a zap' : 'the test without a zap';
    case 'note':
      return 'a note';
    case 'picture':
      return 'a picture';
    case 'end':
      return 'the end';
    case 'start':
    case 'undo':
      return 'nothing';
  }
}

function told(batch: Batch, say: Told, around: Around, isNew: boolean): Ran {
  const { memory, clock } = around;
  const isLead = say.lead === '';
  const { guide, blocks } = guideBlocks(batch, around, isLead);
  const goes = say.guide && batch.end === null;
  const timer = batch.timer && batch.timer.dueAt > memory.now && goes ? batch.timer : null;
  const style = around.style;
  return {
    ok: true,
    value: {
      title: `Lot ${batch.lot}`,
      lead: isLead ? guide.now : say.lead,
      body: [
        ...(isLead || isNew ? [{ kind: 'text', text: whereWords(batch) } as const] : []),
        ...(isNew || (isLead && batch.stage === 'weigh') ? [weighingList(batch, style)] : []),
        ...say.body,
        ...(goes ? blocks : []),
        ...(timer
          ? [{ kind: 'text', text: `I tell you ${whenWords(timer.dueAt, memory.now, clock.zone)}.` } as const]
          : []),
      ],
      details: [],
      assumptions: say.assumptions ?? [],
      warnings: say.warnings ?? [],
      caution: say.caution ?? (goes ? guide.caution : cautionOf[batch.stage]),
      actions: [
        ...(goes ? guide.actions : []),
        ...(batch.end ? [{ label: 'the record', request: `batch record ${batch.lot}` }] : []),
        ...(goes ? [{ label: 'first aid', request: 'safety' }] : []),
      ],
      result: { batch: batchResult(batch, memory.now, guide) },
    },
  };
}

async function recordOf(
  step: Extract<Step, { do: 'record' }>,
  head: string | null,
  open: readonly Held[],
  memory: Memory,
  aroundOf: AroundOf,
): Promise<Ran> {
  const wanted = head ?? step.lot;
  const here = open.filter((held) => isHere(held, memory));
  const latest = async (): Promise<Held | null> => {
    const [one] = here.length > 0 ? here : open;
    if (one) return one;
    const key = (await lots(memory.own)).at(-1);
    return key === undefined ? null : findLot(key, memory);
  };
  const held = wanted === '' ? await latest() : await findLot(wanted, memory);
  if (!held) return wanted === '' ? howToStart() : unknownLot(wanted, open, memory);
  const around = aroundOf(held.batch);
  const guide = guideOf(held.batch, memory.now, around.context, around.style);
  return record(held.batch, step.form, around, guide);
}
