/** Instants in words, by the clock of the person who asks. */
import { type Moment, readMoment } from '../reading/moment.ts';
import { daysBetween, localOf, ownZone, weekdayOf } from '../units/zone.ts';
import type { Context, Refusal } from './define.ts';

export interface Clock {
  readonly zone: string;
  /** Where nobody set a zone: what was taken, as a sentence. */
  readonly taken: readonly string[];
}

/** The zone that is set, else that of the machine or, in a chat, the one the host has chosen. */
export const clockOf = ({ settings, zone }: Pick<Context, 'settings' | 'zone'>): Clock => ({
  zone: zone ?? ownZone(),
  // looked at only by who says it: a setting that was looked at is named in the answer
  get taken() {
    return zone === null || settings.timeZone !== undefined
      ? []
      : [`I took ${zone} as your time zone: set yours with for example "settings time zone Europe/Berlin".`];
  },
});

const two = (value: number): string => String(value).padStart(2, '0');

/** "14:05" */
export function timeOfDay(at: number, zone: string): string {
  const { hour, minute } = localOf(at, zone);
  return `${two(hour)}:${two(minute)}`;
}

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** "Thursday 24 December", with the year where it is not this one. */
export function dateWords(at: number, now: number, zone: string): string {
  const date = localOf(at, zone);
  const year = date.year === localOf(now, zone).year ? '' : ` ${date.year}`;
  return `${weekdays[weekdayOf(date)]} ${date.day} ${months[date.month - 1]}${year}`;
}

/** "2026-11-26" */
export function isoDate(at: number, zone: string): string {
  const { year, month, day } = localOf(at, zone);
  return `${year}-${two(month)}-${two(day)}`;
}

/** "today at 14:05", "tomorrow at 09:00", "on Thursday 24 December at 09:00". */
export function whenWords(at: number, now: number, zone: string): string {
  const days = daysBetween(localOf(now, zone), localOf(at, zone));
  const day =
    days === 0 ? 'today' : days === 1 ? 'tomorrow' : days === -1 ? 'yesterday' : `on ${dateWords(at, now, zone)}`;
  return `${day} at ${timeOfDay(at, zone)}`;
}

const one = (count: number, unit: string): string => `${count} ${unit}${count === 1 ? '' : 's'}`;

/** "25 minutes", "1 hour 10 minutes", "3 days": as long as somebody would say it. */
export function lengthWords(ms: number): string {
  const minutes = Math.round(Math.abs(ms) / 60_000);
  if (minutes < 1) return 'less than a minute';
  if (minutes < 90) return one(minutes, 'minute');
  const hours = Math.floor(minutes / 60);
  if (hours < 24) {
    const left = minutes % 60;
    return hours < 4 && left > 0
      ? `${one(hours, 'hour')} ${one(left, 'minute')}`
      : one(Math.round(minutes / 60), 'hour');
  }
  return one(Math.round(minutes / 1440), 'day');
}

/** What of a time was not said, as sentences. */
export const momentTaken = ({ taken, at }: Extract<Moment, { kind: 'at' }>, zone: string): readonly string[] =>
  taken.map((what) => {
    if (what === 'morning') return 'I took 9 o’clock in the morning: say another time of day if not.';
    return what === 'skipped'
      ? `I took ${timeOfDay(at, zone)}: the clocks skip the time you said that night.`
      : `I took the first ${timeOfDay(at, zone)}: the clocks show it twice that night.`;
  });

/** Why a time cannot be taken as it was said, with what can be answered. `text`: the request that asks it. */
export function momentRefusal(
  moment: Exclude<Moment, { kind: 'at' }>,
  text: string,
  now: number,
  zone: string,
): Refusal<'plain'> {
  const ask = (
    message: string,
    hint: string,
    candidates: readonly string[],
    complete?: (answer: string) => string | null,
  ): Refusal<'plain'> => ({
    code: 'unclear',
    message,
    hint,
    candidates,
    caution: [],
    ...(complete
      ? {
          complete: (answer: string) => {
            const put = complete(answer);
            return put === null ? null : { text: put, options: {} };
          },
        }
      : {}),
  });
  const isMoment = (answer: string): boolean => readMoment(answer, now, zone).kind !== 'none';
  const instead = (said: string) => (answer: string) =>
    isMoment(answer) ? `${text.replace(new RegExp(escaped(said), 'i'), ' ')} ${answer}` : null;
  switch (moment.kind) {
    case 'none':
      return ask(
        'When?',
        'Answer for example "in 15 min", "tomorrow at 9:00" or "on 2026-12-24".',
        ['in 15 min', 'in 1 hour', 'tomorrow at 9:00'],
        (answer) => (isMoment(answer) ? `${text} ${answer}` : null),
      );
    case 'unit':
      return ask(
        moment.unit === '' ? `In ${moment.count} what?` : `I know no time that is called ${moment.unit}.`,
        'Say it in minutes, hours, days, weeks or months.',
        ['minutes', 'hours', 'days'].map((unit) => `in ${moment.count} ${unit}`),
        (answer) =>
          /^\W*(?:min|hour|day|week|month)/i.test(answer)
            ? instead(moment.said)(`in ${moment.count} ${answer}`)
            : instead(moment.said)(answer),
      );
    case 'past': {
      const again = moment.next === null ? [] : [`tomorrow at ${timeOfDay(moment.next, zone)}`];
      return {
        ...ask(
          `"${moment.said}" has gone by: it is ${whenWords(now, now, zone).replace('today at ', '')} now${zone === 'UTC' ? ' (UTC)' : ''}.`,
          again.length > 0 ? 'Did you mean tomorrow?' : 'Say a time that is still to come.',
          again,
          instead(moment.said),
        ),
        code: again.length > 0 ? 'unclear' : 'impossible',
      };
    }
    case 'which-order':
      return ask(
        `Which day is "${moment.said}"?`,
        'Days and months are written in two orders.',
        moment.candidates.map((date) => `on ${date}`),
        instead(moment.said),
      );
    case 'no-date':
      return ask(
        `There is no such day as "${moment.said}".`,
        'Write it for example as 2026-12-24.',
        [],
        instead(moment.said),
      );
    case 'two':
      return ask(`"${moment.said[0]}" or "${moment.said[1]}"?`, 'I found two times: say one.', moment.said);
    case 'again':
      return ask(
        `I remind you once, not "${moment.said}".`,
        'Say the next time, for example "tomorrow at 9:00"; when it rings, say it again.',
        [],
      );
    case 'far':
      return ask(
        `"${moment.said}" is further off than I look after.`,
        'Say a time within ten years.',
        [],
        instead(moment.said),
      );
  }
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
