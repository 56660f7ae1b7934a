/** What a reminder is about, as the store keeps it, and as it is shown in a list. */
import type { Data, Reminder } from '../../store/port.ts';
import type { Clock } from '../when.ts';
import { lengthWords, whenWords } from '../when.ts';

/** `remind`: somebody's own words; the others belong to a batch and are worded when they ring. */
export type About =
  | { readonly kind: 'remind'; readonly text: string; readonly number: number }
  /** `timer`: its id in the batch. */
  | { readonly kind: 'timer'; readonly text: string; readonly timer: string }
  | { readonly kind: 'cure'; readonly text: string; readonly step: number }
  | { readonly kind: 'ask'; readonly text: string };

const kinds = new Set<unknown>(['remind', 'timer', 'cure', 'ask']);

/** As data for the store. */
export const asData = (about: About): Data => ({ ...about });

export function aboutOf({ about }: Pick<Reminder, 'about'>): About {
  const text = typeof about['text'] === 'string' ? about['text'] : 'something';
  return kinds.has(about['kind']) ? ({ ...about, text } as unknown as About) : { kind: 'remind', text, number: 0 };
}

/** Later than this it is said that it is late, ms. */
export const lateAfter = 60_000;

/** "2. tomorrow at 09:00: turn the bars" */
export function listLine(reminder: Reminder, now: number, { zone }: Clock): string {
  const about = aboutOf(reminder);
  const number = about.kind === 'remind' ? `${about.number}: ` : '';
  const late = now > reminder.dueAt + lateAfter ? `, ${lengthWords(now - reminder.dueAt)} late` : '';
  return `${number}${about.text} (${whenWords(reminder.dueAt, now, zone)}${late})`;
}

/** Of the answer's `result`, after the published schema. */
export const remindersResult = (all: readonly Reminder[], now: number) =>
  all.map((reminder) => ({
    id: reminder.id,
    dueAt: new Date(reminder.dueAt).toISOString(),
    text: aboutOf(reminder).text,
    late: now > reminder.dueAt + lateAfter,
    lot: reminder.batch,
  }));
