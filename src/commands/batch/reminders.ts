/** What somebody is to be told of a batch, and when: the difference between what was set and what is to be set. */
import { type Batch, reachedAt } from '../../engine/batch/batch.ts';
import type { Change, NewReminder } from '../../store/port.ts';
import type { Memory } from '../define.ts';
import { type About, asData } from '../remind/bell.ts';

const day = 86_400_000;

/** A batch of which nobody says anything is asked about after this, ms. */
const asksAfter = 7 * day;

/** Days after the cut at which bars can be looked at: hot process about a week, cold process 4 to 6 weeks (common practice). */
export const cureDays: Readonly<Record<Batch['process'], readonly number[]>> = { hot: [7], cold: [28, 42] };

/** When each look at the cure is due; empty before it began. */
export function cureLooks(batch: Batch): readonly number[] {
  const since = reachedAt(batch, 'cure');
  return since === null ? [] : cureDays[batch.process].map((days) => since + days * day);
}

interface Due {
  readonly id: string;
  readonly dueAt: number;
  readonly about: About;
}

/** The next look at the cure after `step` looks. */
export function cureDue(batch: Batch, step: number): Due | null {
  const dueAt = batch.stage === 'cure' ? cureLooks(batch)[step] : undefined;
  return dueAt === undefined
    ? null
    : {
        id: `${batch.uid}/cure-${dueAt.toString(36)}`,
        dueAt,
        about: { kind: 'cure', text: `lot ${batch.lot}: how is the cure?`, step },
      };
}

/** The question what became of it; `from`: when anything was last heard or asked. */
export function askDue(batch: Batch, from: number): Due {
  const dueAt = Math.max(from, ...(batch.stage === 'cure' ? cureLooks(batch) : [])) + asksAfter;
  return {
    id: `${batch.uid}/ask-${dueAt.toString(36)}`,
    dueAt,
    about: { kind: 'ask', text: `lot ${batch.lot}: what became of it?` },
  };
}

const timerText = ({ lot, timer }: Batch): string =>
  timer?.about === 'own'
    ? `lot ${lot}: ${timer.text}`
    : `lot ${lot}: ${timer?.about === 'measure' ? 'measure the pot' : 'look at the pot'}`;

function duesOf(batch: Batch | null, now: number): readonly Due[] {
  if (!batch || batch.end) return [];
  const { timer, uid } = batch;
  const looks = cureLooks(batch);
  const next = looks.findIndex((at) => at > now);
  const cure = next < 0 ? null : cureDue(batch, next);
  return [
    ...(timer
      ? [
          {
            id: `${uid}/${timer.id}`,
            dueAt: timer.dueAt,
            about: { kind: 'timer', text: timerText(batch), timer: timer.id } as const,
          },
        ]
      : []),
    ...(cure ? [cure] : []),
    askDue(batch, batch.touchedAt),
  ];
}

/** As the store keeps it, to be told at `where`. */
export const asReminder = (
  { id, dueAt, about }: Due,
  batch: string,
  where: Pick<NewReminder, 'platform' | 'place' | 'person' | 'address'>,
): NewReminder => {
  const { platform, place, person, address } = where;
  return { id, dueAt, platform, place, person, address, about: asData(about), batch };
};

export function changesOf(before: Batch | null, after: Batch, key: string, memory: Memory): readonly Change[] {
  const { now, later, who, place, address } = memory;
  const old = new Set(duesOf(before, now).map(({ id }) => id));
  const wanted = duesOf(after, now);
  const where = { ...who, place, address: later.can === 'direct' ? later.address : address };
  const kept = new Set(wanted.map(({ id }) => id));
  return [
    ...[...old].filter((id) => !kept.has(id)).map((id): Change => ({ do: 'cancel', id })),
    ...(later.can === 'nowhere'
      ? []
      : wanted
          .filter(({ id, dueAt }) => !old.has(id) && dueAt > now)
          .map((due): Change => ({ do: 'remind', reminder: asReminder(due, key, where) }))),
  ];
}
