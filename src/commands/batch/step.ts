/** One step of a batch: what happened, and what is said of it. */
import type { Block } from '../../answer/types.ts';
import {
  type Batch,
  fold,
  type Happening,
  openLines,
  type Stage,
  stageAfter,
  toldByNext,
} from '../../engine/batch/batch.ts';
import type { Step } from '../../reading/batch-step.ts';
import { readMoment } from '../../reading/moment.ts';
import { number, percent, type Style, temperature } from '../../units/print.ts';
import { toCelsius } from '../../units/units.ts';
import { excessCaution } from '../cautions.ts';
import type { Context, Memory, Refusal, Said } from '../define.ts';
import { roughly } from '../heat-words.ts';
import { capital, inSentence, listed } from '../phrases.ts';
import { type Clock, lengthWords, momentRefusal, momentTaken, timeOfDay, whenWords } from '../when.ts';
import { coolingReadings, forecastOf, forecastTaken } from './cooling.ts';
import { coolingLine } from './cooling-words.ts';
import type { Held } from './keep.ts';
import { scentIn } from './plan.ts';
import { cautionOf, guideOf, stageName } from './stages.ts';
import { measured } from './temperature.ts';
import { afterWeighing, judged, linesNamed, toGrams } from './weigh.ts';

export interface Around {
  readonly context: Context;
  readonly memory: Memory;
  readonly clock: Clock;
  readonly style: Style;
  /** The person insists. */
  readonly really: boolean;
}

export interface Told {
  readonly lead: string;
  readonly body: readonly Block[];
  readonly assumptions?: readonly string[];
  readonly warnings?: readonly string[];
  readonly caution?: Said<'caustic'>['caution'] | null;
  /** What comes next is said anew. */
  readonly guide: boolean;
}

export type Taken =
  | { readonly happened: readonly Happening[]; readonly tell: (batch: Batch) => Told }
  | { readonly fault: Refusal<'caustic'> };

const minute = 60_000;
const day = 1440 * minute;

const line = (text: string): Block => ({ kind: 'text', text });

const fault = (
  { stage }: Batch,
  message: string,
  hint: string,
  candidates: readonly string[] = [],
  code: Refusal<'caustic'>['code'] = 'unclear',
): Taken => ({ fault: { code, message, hint, candidates, caution: cautionOf[stage] } });

/** Added in "not yet", min. */
const usualMore = 5;
/** More cooking after a zap, min (common practice). */
const afterZap = 10;
const longestNote = 1000;

/** The pot is on the heat. */
const cooking: ReadonlySet<Stage> = new Set(['separation', 'applesauce', 'gel', 'test']);

type Run<K extends Step['do']> = (step: Extract<Step, { do: K }>, held: Held, around: Around) => Taken;

/** When to look, where a stage has a time; `now` in ms. */
function lookAt(stage: Stage, now: number, context: Context): number | null {
  const timed = context.heat().cook.stages.find(({ id }) => id === stage);
  if (timed) return now + timed.minutes.low * minute;
  return stage === 'cut' ? now + day : null;
}

const arrive = (stage: Stage, { memory, context }: Around): Happening => ({
  did: 'reach',
  stage,
  look: lookAt(stage, memory.now, context),
});

/** A batch that has come to its end. */
const ended: Happening = { did: 'end', how: 'done' };

const reached =
  (lead: string, extra: Partial<Told> = {}) =>
  (): Told => ({ lead, body: [], guide: true, ...extra });

/** To a stage further on, past what nobody said; or why not. */
function goTo(stage: Stage, held: Held, around: Around): Taken {
  const { batch } = held;
  const { really, context, memory, style } = around;
  const at = batch.stages.indexOf(batch.stage);
  const to = batch.stages.indexOf(stage);
  const open = openLines(batch).filter(({ grams, role }) => grams !== null && role !== 'after' && role !== 'other');
  if (to <= at && !really)
    return fault(
      batch,
      to === at
        ? `Lot ${batch.lot} is there already: ${stageName[stage]}.`
        : `Lot ${batch.lot} is past that: ${stageName[batch.stage]}.`,
      'Say "undo" where the last step was a slip, or "really" with it to go back.',
      to === at ? ['batch status'] : ['batch undo'],
    );
  if (batch.stage === 'weigh' && open.length > 0)
    return fault(
      batch,
      `Not weighed yet: ${listed(open.map(({ name }) => name))}.`,
      'Say what the scale showed, or "all weighed" where it was as planned.',
      ['batch all weighed'],
    );
  const found = at < batch.stages.indexOf('separation') || batch.stage === 'weigh' ? judged(batch, context) : null;
  if (found?.figures.verdict === 'excess-alkali' && to > at)
    return {
      fault: {
        code: 'refused',
        message: 'Not like this: as weighed it has too much alkali, and the soap would burn skin.',
        hint: 'Mend the weights first: say "batch weights" for the list.',
        candidates: ['batch weights'],
        caution: excessCaution,
      },
    };
  const skipped = batch.stages.slice(at + 1, to).filter((one) => !toldByNext.has(one));
  const untested =
    batch.process === 'hot' && skipped.includes('test') && !batch.tests.some(({ zap }) => !zap)
      ? ['It was not tested for free lye: test it before anybody touches it with bare hands.']
      : [];
  if (stage === 'scent' && batch.process === 'hot' && !really) {
    const cooling = forecastOf(batch, memory.now, context, style);
    if (cooling?.goal.what === 'scent' && !cooling.isThere && cooling.left.low > 1)
      return fault(
        batch,
        'By my reckoning it is too hot for the scent still.',
        `${coolingLine(cooling, style)} Measure it, or say "batch really next".`,
        ['batch really next'],
      );
  }
  const isEnd = stage === 'done';
  return {
    happened: [arrive(stage, around), ...(isEnd ? [ended] : [])],
    tell: () => ({
      lead: isEnd ? `Lot ${batch.lot} is done.` : '',
      body: skipped.length > 0 && !isEnd ? [line(`Passed over: ${listed(skipped.map((one) => stageName[one]))}.`)] : [],
      warnings: untested,
      guide: true,
    }),
  };
}

const steps: { readonly [K in Step['do']]?: Run<K> } = {
  status: (_, { batch }) => ({ happened: [], tell: () => ({ lead: '', body: [], guide: batch.end === null }) }),

  next: (_, held, around) => {
    const { batch } = held;
    if (batch.stage === 'test')
      return fault(batch, 'Zap or no zap?', 'Test it first, then say which.', ['batch no zap', 'batch zap']);
    const next = stageAfter(batch);
    return next
      ? goTo(next, held, around)
      : fault(batch, `Lot ${batch.lot} is done.`, 'Say "batch record" for its record.', ['batch record']);
  },

  stage: ({ stage }, held, around) => {
    const { batch } = held;
    if (batch.process === 'cold' && (stage === 'separation' || stage === 'cool')) {
      const next = stageAfter({ ...batch, stage: 'mix' });
      return next
        ? goTo(next, held, around)
        : fault(batch, 'That belongs to hot process.', 'Say "batch status" for where it is.');
    }
    if (!batch.stages.includes(stage))
      return fault(
        batch,
        `${capital(stageName[stage])} is no stage of ${batch.process} process.`,
        'Say "batch hot process" or "batch cold process" to change that.',
        [`batch ${batch.process === 'hot' ? 'cold' : 'hot'} process`],
      );
    const tested = batch.tests.some(({ zap }) => !zap);
    if (stage === 'cool' && !tested && batch.stages.indexOf(batch.stage) <= batch.stages.indexOf('test'))
      return batch.stage === 'test'
        ? fault(batch, 'Zap or no zap?', 'Test it first, then say which.', ['batch no zap', 'batch zap'])
        : goTo('test', held, around);
    if (stage === 'done' && batch.process === 'cold' && !tested) return goTo('test', held, around);
    return goTo(stage, held, around);
  },

  test: ({ zap }, held, around) => {
    const { batch } = held;
    const { memory } = around;
    const cooked = batch.process === 'hot' ? 'separation' : 'cut';
    if (batch.stages.indexOf(batch.stage) < batch.stages.indexOf(cooked))
      return fault(
        batch,
        `There is no soap to test yet: lot ${batch.lot} is at ${stageName[batch.stage]}.`,
        'Say "batch status" for what comes next.',
        ['batch status'],
      );
    const test: Happening = { did: 'test', zap };
    if (!zap) {
      const onward = batch.stages.indexOf(batch.stage) <= batch.stages.indexOf('test');
      const next = onward ? stageAfter({ ...batch, stage: 'test' }) : null;
      if (next === 'done')
        return {
          happened: [test, arrive('done', around), ended],
          tell: reached(`No zap, noted. Lot ${batch.lot} is done.`),
        };
      return {
        happened: [test, ...(next ? [arrive(next, around)] : [])],
        tell: reached('No zap, noted.', { warnings: ['Test it once more when it is cold: it has to stay so.'] }),
      };
    }
    const found = judged(batch, around.context);
    const before = batch.tests.filter((one) => one.zap).length;
    const figures = found?.figures;
    const weights = figures
      ? `By its weights ${percent(figures.superfat.nominal, around.style)} of the fat should be left over, ${figures.superfat.low < 0 ? 'and some excess alkali is possible' : 'so it should have none in the end'}.`
      : '';
    if (batch.process === 'cold' || batch.stages.indexOf(batch.stage) > batch.stages.indexOf('cool'))
      return {
        happened: [test],
        tell: reached('It has free lye: nobody touches it with bare skin.', {
          body: [
            line(weights),
            line(
              'Let it rest some weeks and test again, or say "check" with what was weighed and mend it by cooking it anew with more fat.',
            ),
          ],
          caution: excessCaution,
          guide: false,
        }),
      };
    return {
      happened: [test, { did: 'wait', look: memory.now + afterZap * minute, text: null }],
      tell: reached(`Not done: cook it ${afterZap} minutes more, lid on, then test again. I tell you when.`, {
        body:
          before > 0
            ? [
                line(
                  `${weights} If it zaps again, it may have too much alkali: fat to add comes from the weights (say "batch weights").`,
                ),
              ]
            : [],
        guide: false,
      }),
    };
  },

  rest: (_, held) => {
    const open = openLines(held.batch);
    if (open.length === 0) return fault(held.batch, 'All is weighed already.', 'Say "next".', ['batch next']);
    const unknown = open.filter(({ grams }) => grams === null);
    return {
      happened: [{ did: 'take-rest' }],
      tell: reached(
        `Noted as planned: ${listed(open.filter(({ grams }) => grams !== null).map(({ name }) => name))}.`,
        {
          body: unknown.length > 0 ? [line(`No weight known: ${listed(unknown.map(({ name }) => name))}.`)] : [],
        },
      ),
    };
  },

  take: (step, held, around) => take(step, held, around),

  more: ({ minutes }, { batch }, { memory, clock }) => {
    const added = minutes ?? usualMore;
    if (added < 1 || added > 600) return fault(batch, `${added} minutes?`, 'Say 1 to 600 minutes.');
    // a timer that still runs gets longer
    const look = Math.max(memory.now, batch.timer?.dueAt ?? 0) + added * minute;
    return {
      happened: [{ did: 'wait', look, text: null }],
      tell: () => ({
        lead: `${number(added, 0)} minutes more: I tell you at ${timeOfDay(look, clock.zone)}.`,
        body: [],
        assumptions: minutes === null ? [`I took ${usualMore} minutes.`] : [],
        guide: false,
      }),
    };
  },

  timer: ({ text }, { batch }, { memory, clock }) => {
    const moment = readMoment(text, memory.now, clock.zone);
    if (moment.kind !== 'at') {
      const { complete: _, ...rest } = momentRefusal(moment, text, memory.now, clock.zone);
      return {
        fault: {
          ...rest,
          candidates: rest.candidates.map((one) => `batch timer ${one}`),
          caution: cautionOf[batch.stage],
        },
      };
    }
    const what = moment.rest.replace(/^\W*(?:for|to|of)\b/i, '').trim();
    return {
      happened: [{ did: 'wait', look: moment.at, text: what === '' ? null : what.slice(0, 200) }],
      tell: () => ({
        lead: `I tell you ${whenWords(moment.at, memory.now, clock.zone)}${what === '' ? '' : `: ${what}`}.`,
        body: [line(`That is in ${lengthWords(moment.at - memory.now)}.`)],
        assumptions: momentTaken(moment, clock.zone),
        guide: false,
      }),
    };
  },

  stop: (_, { batch }) =>
    batch.timer
      ? {
          happened: [{ did: 'wait', look: null, text: null }],
          tell: () => ({ lead: 'The timer is off.', body: [], guide: false }),
        }
      : fault(batch, 'No timer runs.', 'Say for example "5 more" or "batch timer 20 min".'),

  read: (step, held, around) => {
    const { batch, events } = held;
    // while there is nothing warm yet, a figure alone is what the scale shows
    if (batch.stage === 'weigh' && step.unit === null && step.clock === null && step.ago === null)
      return take(
        { do: 'take', said: '', amount: { value: step.value, unit: null }, lot: null, more: false },
        held,
        around,
      );
    const { memory, clock, context } = around;
    const found = measured(step, batch, memory.now, clock, around.style);
    if (!found.ok) return { fault: found.fault };
    const { celsius, unit, typed, when } = found.value;
    const style = { ...around.style, temperatureUnit: unit };
    const reading = { did: 'read', celsius, when, unit, look: null } as const;
    const after = fold([...events, { ...reading, at: memory.now }]) ?? batch;
    const cooling = forecastOf(after, memory.now, context, style);
    const later = batch.readings.find(({ at }) => at > when);
    const before = coolingReadings(batch).findLast(({ at }) => at <= when);
    const { ceilingC } = context.heat().cook;
    const isCooked = cooking.has(batch.stage);
    const cools = cooling !== null;
    const isFirst = coolingReadings(after).length === 1;
    const taken = cooling ? forecastTaken(after, cooling, context, style) : [];
    const rises = cools && before && celsius > before.celsius + 2;
    return {
      happened: [{ ...reading, look: cooling?.look ?? null }],
      tell: () => ({
        lead: `${temperature(celsius, style)} at ${timeOfDay(when, clock.zone)}, noted.`,
        body: [
          ...(later
            ? [
                line(
                  `It stands before the ${temperature(later.celsius, style)} of ${timeOfDay(later.at, clock.zone)} in the log.`,
                ),
              ]
            : []),
          ...(cooling ? [line(coolingLine(cooling, style))] : []),
          ...(cooling?.look
            ? [line(`I tell you at ${timeOfDay(cooling.look, clock.zone)} to measure again: stir first.`)]
            : []),
          ...(isCooked && !cools && celsius <= ceilingC.value
            ? [line(`Below the ceiling of about ${roughly(ceilingC.value, style)}.`)]
            : []),
        ],
        assumptions: [
          ...(typed === null && batch.readings.length === 0 ? [`I took it as ${unit}.`] : []),
          ...(isFirst && taken.length > 0 ? [`I took ${listed(taken)}.`] : []),
        ],
        warnings: [
          ...(isCooked && celsius > ceilingC.value
            ? [
                `That is above about ${roughly(ceilingC.value, style)}: it can scorch and climb out. Heat down, stir, stay with it.`,
              ]
            : []),
          ...(rises
            ? [`It rose from ${temperature(before.celsius, style)}: is the heat off? I reckon from here on.`]
            : []),
        ],
        guide: false,
      }),
    };
  },

  room: ({ value, unit }, { batch }, { style }) => {
    const celsius = toCelsius(value, unit ?? (value > 45 ? '°F' : style.temperatureUnit));
    if (celsius < -20 || celsius > 45)
      return fault(batch, 'No room is that warm or cold.', 'Say for example "batch room 18 °C".');
    return {
      happened: [{ did: 'room', celsius }],
      tell: () => ({ lead: `The room is at ${temperature(celsius, style)}, noted.`, body: [], guide: false }),
    };
  },

  scent: ({ text }, { batch }, { context }) => {
    const scent = scentIn(text, context);
    if (!scent) return fault(batch, 'I find no scent in that.', 'Say for example "batch scent lavender 20 g".');
    return {
      happened: [{ did: 'scent', scent }],
      tell: () => ({
        lead: `Scent noted: ${scent.text}.`,
        body: [],
        guide: batch.stage === 'cool' || batch.stage === 'scent',
      }),
    };
  },

  process: ({ process }, { batch }) => {
    if (process === batch.process)
      return fault(batch, `It is ${process} process already.`, 'Say "batch status" for where it is.');
    if (batch.stages.indexOf(batch.stage) > batch.stages.indexOf('mix'))
      return fault(batch, 'It is too far on to change that.', 'Write it as a note: "note: …".');
    return {
      happened: [{ did: 'process', process }],
      tell: () => ({ lead: `${capital(process)} process, noted.`, body: [], guide: true }),
    };
  },

  note: ({ text }, { batch }) =>
    text.length > longestNote
      ? fault(batch, `A note holds up to ${longestNote} characters; this has ${text.length}.`, 'Say it in two.')
      : { happened: [{ did: 'note', text }], tell: () => ({ lead: 'Noted.', body: [], guide: false }) },

  picture: ({ text }, { batch }) =>
    text.length > longestNote
      ? fault(batch, 'That is too long for where a picture is.', 'Say its name or its address.')
      : {
          happened: [{ did: 'picture', reference: text }],
          tell: () => ({
            lead: 'Noted where the picture is.',
            body: [line('I keep no pictures, only where they are.')],
            guide: false,
          }),
        },

  end: ({ how }, { batch }, { really }) => {
    if (!really && how === 'done' && batch.stage !== 'cure' && batch.stage !== 'done')
      return fault(batch, `End lot ${batch.lot} here, at ${stageName[batch.stage]}?`, 'What became of it?', [
        'batch really end',
        'batch give up',
        'batch threw it away',
      ]);
    return {
      happened: [{ did: 'end', how }],
      tell: () => ({
        lead: `Lot ${batch.lot} is closed${how === 'done' ? '' : how === 'discarded' ? ' as thrown away' : ' as given up'}. Its record stays.`,
        body: [],
        guide: false,
      }),
    };
  },
};

function take(step: Extract<Step, { do: 'take' }>, { batch, events, ...rest }: Held, around: Around): Taken {
  const { context, style, memory, really } = around;
  const { said, lot, amount } = step;
  const named = linesNamed(said, batch, context);
  const taken: string[] = [];
  let unit = amount?.unit ?? null;
  if (amount && unit === null) {
    unit = style.massUnit;
    taken.push(`I took ${number(amount.value, 3, style)} as ${unit === 'g' ? 'grams' : 'ounces'}.`);
  }
  const grams = amount && unit ? toGrams(amount.value, unit) : null;
  if (amount && grams === null)
    return fault(
      batch,
      `${number(amount.value, 3, style)} ${unit ?? ''} is a volume: weigh it.`,
      'Say what the scale shows, for example "took 143 g lye".',
    );
  const asWords = (name: string): string =>
    `batch took ${amount ? `${number(amount.value, 3)} ${unit ?? ''} ` : ''}${name}${lot === null ? '' : ` lot ${lot}`}`;
  if (said === '' && grams !== null) {
    const fits = openLines(batch).filter((one) => one.grams !== null && Math.abs(grams - one.grams) <= 0.1 * one.grams);
    const [only] = fits;
    const [next] = openLines(batch);
    // what was just asked for, to two per cent, and nothing else is near
    if (only?.grams && only === next && fits.length === 1 && Math.abs(grams - only.grams) <= 0.02 * only.grams)
      return take({ ...step, said: only.name }, { batch, events, ...rest }, around);
    const candidates = (fits.length > 0 ? fits : openLines(batch)).slice(0, 6).map(({ name }) => asWords(name));
    return fault(
      batch,
      `${number(amount?.value ?? 0, 3, style)} ${unit ?? ''} of what?`,
      only ? `${capital(only.name)} comes nearest.` : 'Say it with its name.',
      candidates,
    );
  }
  const [one, ...others] = named;
  if (!one) return bring(step, grams, batch, around);
  if (others.length > 0)
    return fault(
      batch,
      `Which one: ${listed(
        named.map(({ name }) => name),
        'or',
      )}?`,
      'Say it with its whole name.',
      named.slice(0, 6).map(({ name }) => asWords(name)),
    );
  if (grams === null) {
    if (lot !== null)
      return {
        happened: [{ did: 'lot', line: one.id, lot }],
        tell: () => ({
          lead: `${capital(one.name)} is of lot ${lot}, noted.`,
          body: [],
          guide: batch.stage === 'weigh',
        }),
      };
    if (one.grams === null) return fault(batch, `How much ${one.name}?`, 'Say what the scale shows.');
  }
  const before = batch.taken.get(one.id)?.grams ?? 0;
  const total = grams === null ? (one.grams ?? 0) : step.more ? before + grams : grams;
  if (
    one.grams !== null &&
    grams !== null &&
    !really &&
    (total > 2 * one.grams || total < 0.5 * one.grams) &&
    total !== 0
  )
    return fault(
      batch,
      `${number(total, 2, style)} g ${one.name}, where ${number(one.grams, 2, style)} g were planned?`,
      'I noted nothing yet. Say it again if it was a slip, or with "really" if it is so.',
      [`batch really took ${number(total, 3)} g ${one.name}`, `batch took ${number(one.grams, 3)} g ${one.name}`],
    );
  const happening: Happening = { did: 'take', line: one.id, grams: total, lot };
  const after = fold([...events, { ...happening, at: memory.now }]) ?? batch;
  const words = afterWeighing(after, one, context, style);
  return {
    happened: [happening],
    tell: () => ({
      ...words,
      assumptions: [...taken, ...(grams === null ? ['I took it as weighed as planned.'] : [])],
      guide: batch.stage === 'weigh' && words.caution === null,
    }),
  };
}

/** Something that is not in the plan: fat that is added is reckoned with, all else is only noted. */
function bring(step: Extract<Step, { do: 'take' }>, grams: number | null, batch: Batch, around: Around): Taken {
  const { context, style } = around;
  const { said, lot } = step;
  const names = listed(batch.lines.map(({ name }) => name));
  if (grams === null || !(step.more || around.really))
    return fault(
      batch,
      `"${said}" is not on the list of lot ${batch.lot}.`,
      `On it: ${names}. Something new goes in with "added", for example "added 20 g olive oil".`,
      openLines(batch)
        .slice(0, 5)
        .map(({ name }) => `batch took ${grams === null ? '' : `${number(grams, 3)} g `}${name}`),
    );
  const { fats } = context.read(`${number(grams, 3)} g ${said}`);
  const [fat, ...more] = fats.map(({ id }) => context.catalogue.fats.get(id)).filter((one) => one !== undefined);
  const isAfter = batch.process === 'hot' && batch.stages.indexOf(batch.stage) >= batch.stages.indexOf('cool');
  const known = fat && more.length === 0 ? fat : null;
  const id = `${known?.id ?? said.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')}-added-${batch.lines.length}`;
  const line_ = {
    id,
    role: known ? (isAfter ? 'after' : 'fat') : 'other',
    item: known?.id ?? null,
    name: known ? inSentence(known.name) : said.slice(0, 80),
    grams,
  } as const;
  const happening: Happening = { did: 'bring', line: line_, lot };
  return {
    happened: [happening],
    tell: (after) => {
      const words = afterWeighing(after, line_, context, style);
      return {
        ...words,
        lead: `Noted as added: ${number(grams, 2, style)} g ${line_.name}${lot ? `, lot ${lot}` : ''}.`,
        assumptions: known ? [] : [`I took ${line_.name} as something that takes no alkali.`],
        guide: false,
      };
    },
  };
}

/** What a step comes to; null where this file knows no such step. */
export function takeStep(step: Step, held: Held, around: Around): Taken | null {
  const run = steps[step.do] as ((step: Step, held: Held, around: Around) => Taken) | undefined;
  return run ? run(step, held, around) : null;
}

/** What comes next, as blocks. */
export function guideBlocks(batch: Batch, { memory, context, style }: Around, isLead: boolean) {
  const guide = guideOf(batch, memory.now, context, style);
  return { guide, blocks: [...(isLead ? [] : [line(guide.now)]), ...guide.more.map(line)] };
}
