/**
 * A batch as the list of what happened in it. The list alone is kept; what the batch is now is folded from it, so that
 * a step can be taken back and a record can be written of every batch. Instants are milliseconds since 1970.
 */
import type { Share } from '../recipe.ts';

export type Process = 'hot' | 'cold';

/** Hot process is cooked and tested before the mould; cold process is tested after the cure (common practice). */
const stagesOf = {
  hot: [
    'weigh',
    'lye',
    'mix',
    'separation',
    'applesauce',
    'gel',
    'test',
    'cool',
    'scent',
    'mould',
    'cut',
    'cure',
    'done',
  ],
  cold: ['weigh', 'lye', 'mix', 'scent', 'mould', 'cut', 'cure', 'test', 'done'],
} as const satisfies Record<Process, readonly string[]>;

export type Stage = (typeof stagesOf)[Process][number];

export type Role = 'fat' | 'after' | 'alkali' | 'water' | 'liquid' | 'acid' | 'other';

/** One thing to weigh. */
export interface Line {
  /** Unique in its batch. */
  readonly id: string;
  readonly role: Role;
  /** In the catalogue; null for what takes no part in the reckoning. */
  readonly item: string | null;
  readonly name: string;
  /** As planned, g; null where only its name is known. */
  readonly grams: number | null;
  readonly purity?: Share;
  /** Of an acid, 0–1. */
  readonly strength?: number;
}

export interface Plan {
  readonly lines: readonly Line[];
  /** Superfat (nominal) of the recipe as planned. */
  readonly superfat: number;
  /** Readability of the scale, g. */
  readonly scaleStepGrams: number;
}

/** A scent as it was named: parts that sum to 1, with a flash point (°C) where its data sheet gave one. */
export interface Scent {
  readonly text: string;
  readonly parts: readonly {
    readonly id: string;
    readonly text: string;
    readonly share: number;
    readonly flashC: number | null;
  }[];
}

export type Happening =
  | {
      readonly did: 'start';
      readonly uid: string;
      readonly lot: string;
      readonly name: string;
      readonly process: Process;
      readonly plan: Plan;
      readonly scent: Scent | null;
    }
  /** In all, g; a second one takes the place of the first. */
  | { readonly did: 'take'; readonly line: string; readonly grams: number; readonly lot: string | null }
  | { readonly did: 'lot'; readonly line: string; readonly lot: string }
  /** Something that the plan had not, such as fat against too much alkali. */
  | { readonly did: 'bring'; readonly line: Line; readonly lot: string | null }
  /** All that was not weighed yet, as planned. */
  | { readonly did: 'take-rest' }
  /** `look`: when to look, where the stage has a time. */
  | { readonly did: 'reach'; readonly stage: Stage; readonly look: number | null }
  /** °C, measured at `when`, as typed in `unit`. `look`: when to measure again. */
  | {
      readonly did: 'read';
      readonly celsius: number;
      readonly when: number;
      readonly unit: '°C' | '°F' | null;
      readonly look: number | null;
    }
  /** null: no longer. */
  | { readonly did: 'wait'; readonly look: number | null; readonly text: string | null }
  | { readonly did: 'room'; readonly celsius: number }
  | { readonly did: 'scent'; readonly scent: Scent }
  | { readonly did: 'process'; readonly process: Process }
  | { readonly did: 'test'; readonly zap: boolean }
  | { readonly did: 'note'; readonly text: string }
  | { readonly did: 'picture'; readonly reference: string }
  | { readonly did: 'end'; readonly how: 'done' | 'given-up' | 'discarded' }
  /** Takes back the last thing before it that still stands. */
  | { readonly did: 'undo' };

/** `also`: it goes with the one before, and is taken back with it. */
export type BatchEvent = Happening & { readonly at: number; readonly also?: true };

export interface Taken {
  readonly grams: number;
  readonly lot: string | null;
  readonly at: number;
  /** False where it was ticked off as planned, without a weight. */
  readonly weighed: boolean;
}

export interface Timer {
  /** Unique in its batch. */
  readonly id: string;
  readonly dueAt: number;
  readonly stage: Stage;
  /** `look`: how far the stage is; `measure`: the pot cools; `own`: in somebody's words. */
  readonly about: 'look' | 'measure' | 'own';
  readonly text: string | null;
}

export interface TemperatureReading {
  /** When it was measured. */
  readonly at: number;
  readonly celsius: number;
  readonly unit: '°C' | '°F' | null;
  readonly stage: Stage;
}

export interface Batch {
  readonly uid: string;
  readonly lot: string;
  readonly name: string;
  readonly process: Process;
  readonly plan: Plan;
  /** Those of the plan and those brought. */
  readonly lines: readonly Line[];
  readonly taken: ReadonlyMap<string, Taken>;
  readonly stages: readonly Stage[];
  readonly stage: Stage;
  readonly reached: readonly { readonly stage: Stage; readonly at: number }[];
  readonly readings: readonly TemperatureReading[];
  /** The one that runs; null without. */
  readonly timer: Timer | null;
  readonly roomC: number | null;
  readonly scent: Scent | null;
  readonly tests: readonly { readonly zap: boolean; readonly at: number }[];
  readonly notes: readonly { readonly text: string; readonly at: number }[];
  readonly pictures: readonly { readonly reference: string; readonly at: number }[];
  readonly startedAt: number;
  /** When something was last said of it. */
  readonly touchedAt: number;
  readonly end: { readonly how: 'done' | 'given-up' | 'discarded'; readonly at: number } | null;
  /** What still stands, the first first. */
  readonly events: readonly BatchEvent[];
}

/** Without what was taken back. The start stands for good. */
function standing(events: readonly BatchEvent[]): BatchEvent[] {
  const kept: BatchEvent[] = [];
  for (const event of events) {
    if (event.did !== 'undo') kept.push(event);
    else {
      while (kept.length > 2 && kept.at(-1)?.also) kept.pop();
      if (kept.length > 1) kept.pop();
    }
  }
  return kept;
}

function stagesFor(process: Process, scent: Scent | null): readonly Stage[] {
  return stagesOf[process].filter((stage) => stage !== 'scent' || scent !== null);
}

/** What a batch is after all this; null without a start. */
export function fold(events: readonly BatchEvent[]): Batch | null {
  const kept = standing(events);
  const [start, ...rest] = kept;
  if (start?.did !== 'start') return null;
  const { uid, lot, name, plan } = start;
  const taken = new Map<string, Taken>();
  const lines: Line[] = [...plan.lines];
  const reached: { stage: Stage; at: number }[] = [{ stage: 'weigh', at: start.at }];
  const readings: TemperatureReading[] = [];
  const tests: { zap: boolean; at: number }[] = [];
  const notes: { text: string; at: number }[] = [];
  const pictures: { reference: string; at: number }[] = [];
  let { process, scent } = start;
  let stage: Stage = 'weigh';
  let timer: Timer | null = null;
  let roomC: number | null = null;
  let end: Batch['end'] = null;
  for (const [index, event] of rest.entries()) {
    const { at } = event;
    const timed = (dueAt: number | null, about: Timer['about'], text: string | null = null): Timer | null =>
      dueAt === null ? null : { id: `${index + 1}-${dueAt.toString(36)}`, dueAt, stage, about, text };
    switch (event.did) {
      case 'take':
        taken.set(event.line, {
          grams: event.grams,
          lot: event.lot ?? taken.get(event.line)?.lot ?? null,
          at,
          weighed: true,
        });
        break;
      case 'lot': {
        const before = taken.get(event.line);
        const grams = before?.grams ?? lines.find(({ id }) => id === event.line)?.grams ?? 0;
        taken.set(event.line, { grams, lot: event.lot, at: before?.at ?? at, weighed: before?.weighed ?? false });
        break;
      }
      case 'bring':
        lines.push(event.line);
        taken.set(event.line.id, { grams: event.line.grams ?? 0, lot: event.lot, at, weighed: true });
        break;
      case 'take-rest':
        for (const { id, grams } of lines)
          if (!taken.has(id) && grams !== null) taken.set(id, { grams, lot: null, at, weighed: false });
        break;
      case 'reach':
        stage = event.stage;
        reached.push({ stage, at });
        timer = timed(event.look, 'look');
        break;
      case 'read':
        readings.push({ at: event.when, celsius: event.celsius, unit: event.unit, stage });
        // a reading of the cook leaves the stage's own timer running
        if (event.look !== null || timer?.about === 'measure') timer = timed(event.look, 'measure');
        break;
      case 'wait':
        timer = timed(event.look, event.text === null ? (timer?.about ?? 'look') : 'own', event.text);
        break;
      case 'room':
        roomC = event.celsius;
        break;
      case 'scent':
        scent = event.scent;
        break;
      case 'process':
        process = event.process;
        break;
      case 'test':
        tests.push({ zap: event.zap, at });
        break;
      case 'note':
        notes.push({ text: event.text, at });
        break;
      case 'picture':
        pictures.push({ reference: event.reference, at });
        break;
      case 'end':
        end = { how: event.how, at };
        timer = null;
        break;
    }
  }
  return {
    uid,
    lot,
    name,
    process,
    plan,
    lines,
    taken,
    stages: stagesFor(process, scent),
    stage,
    reached,
    readings: readings.sort((a, b) => a.at - b.at),
    timer,
    roomC,
    scent,
    tests,
    notes,
    pictures,
    startedAt: start.at,
    touchedAt: events.at(-1)?.at ?? start.at,
    end,
    events: kept,
  };
}

/** The stage after this one; null at the last. */
export function stageAfter({ stages, stage, process }: Batch): Stage | null {
  const all = stagesOf[process] as readonly Stage[];
  const at = all.indexOf(stage);
  return stages.find((one) => all.indexOf(one) > at) ?? null;
}

/** Stages that the next one tells of: who says "in the mould" has filled it. */
export const toldByNext: ReadonlySet<Stage> = new Set(['lye', 'mix', 'scent', 'mould', 'cut']);

/** When it came to this stage for the last time; null where it did not. */
export const reachedAt = ({ reached }: Batch, stage: Stage): number | null =>
  reached.findLast((one) => one.stage === stage)?.at ?? null;

/** Weighed already, g, or as planned. */
export const gramsOfLine = ({ taken }: Batch, { id, grams }: Line): number => taken.get(id)?.grams ?? grams ?? 0;

export const openLines = ({ lines, taken }: Batch): readonly Line[] => lines.filter(({ id }) => !taken.has(id));

/** True from the moment that alkali and fat may have met. */
export const isMixed = ({ stage, process }: Batch): boolean =>
  (stagesOf[process] as readonly Stage[]).indexOf(stage) > (stagesOf[process] as readonly Stage[]).indexOf('mix');

/** True from the moment that the alkali may be in water. */
export const isDissolved = ({ stage }: Batch): boolean => stage !== 'weigh' && stage !== 'lye';
