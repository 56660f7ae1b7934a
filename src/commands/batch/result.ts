/** `result.batch`, after the published schema. */
import { type Batch, gramsOfLine } from '../../engine/batch/batch.ts';
import type { Guide } from './stages.ts';

const iso = (at: number): string => new Date(at).toISOString();

export function batchResult(batch: Batch, now: number, guide: Guide): Readonly<Record<string, unknown>> {
  const { lot, name, process, stage, timer, readings, end } = batch;
  return {
    lot,
    name,
    process,
    state: end ? (end.how === 'done' ? 'done' : end.how) : stage,
    next: end ? null : guide.now,
    timers: timer
      ? [{ id: timer.id, dueAt: iso(timer.dueAt), stage: timer.stage, about: timer.about, isOver: timer.dueAt <= now }]
      : [],
    readings: readings.map(({ at, celsius, stage: during }) => ({ at: iso(at), celsius, stage: during })),
    weights: batch.lines.map((line) => ({
      id: line.id,
      name: line.name,
      plannedGrams: line.grams,
      takenGrams: batch.taken.has(line.id) ? gramsOfLine(batch, line) : null,
      lot: batch.taken.get(line.id)?.lot ?? null,
    })),
    startedAt: iso(batch.startedAt),
    endedAt: end ? iso(end.at) : null,
  };
}
