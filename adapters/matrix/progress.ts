/** How far each room was read: up to the last event before which all are dealt with. */
import type { Records } from './records.ts';

export interface Progress {
  /** An event is to be dealt with; in the order of the room. Call what comes back when it is. */
  readonly begin: (room: string, event: string) => () => void;
  readonly last: (room: string) => string | null;
  readonly close: () => void;
}

interface Step {
  readonly event: string;
  isDone: boolean;
}

/** Milliseconds after which it is written: each write waits for the disk, and what is answered is known anyway. */
const writing = 3000;

export function createProgress(records: Records): Progress {
  const steps = new Map<string, Step[]>();
  const marks = new Map<string, string>();
  let timer: NodeJS.Timeout | undefined;

  const write = (): void => {
    clearTimeout(timer);
    timer = undefined;
    records.setMarks(marks);
    marks.clear();
  };
  return {
    begin: (room, event) => {
      const all = steps.get(room) ?? [];
      steps.set(room, all);
      const step: Step = { event, isDone: false };
      all.push(step);
      return () => {
        step.isDone = true;
        const open = all.findIndex(({ isDone }) => !isDone);
        const [last] = all.splice(0, open < 0 ? all.length : open).slice(-1);
        if (!last) return;
        marks.set(room, last.event);
        timer ??= setTimeout(write, writing);
      };
    },
    last: (room) => marks.get(room) ?? records.mark(room),
    close: write,
  };
}
