/**
 * When somebody wants something: "in 15 min", "in 3 days", "tomorrow at 9:00", "at 12:40", "on 2026-12-24",
 * "Friday 8 pm". Minutes and hours pass by the clock on the wall whatever a zone does; days, weeks and months keep the
 * time of day.
 */

import { daysLater, instantOf, type Local, localOf, type Placed, weekdayOf } from '../units/zone.ts';
import { small } from './words/numbers.ts';

/** Something taken that was not said: the hour of a date without one, or which of two days. */
type Taken = 'morning' | 'skipped' | 'twice';

export type Moment =
  | {
      readonly kind: 'at';
      readonly at: number;
      /** The text without the words that say when. */
      readonly rest: string;
      readonly taken: readonly Taken[];
    }
  | { readonly kind: 'none' }
  /** `at` has gone by; `next` is the next time of day that it can mean, where it is one. */
  | { readonly kind: 'past'; readonly said: string; readonly at: number; readonly next: number | null }
  /** No unit of time that is known: "in 5 parsecs". */
  | { readonly kind: 'unit'; readonly said: string; readonly count: string; readonly unit: string }
  | { readonly kind: 'which-order'; readonly said: string; readonly candidates: readonly [string, string] }
  | { readonly kind: 'no-date'; readonly said: string }
  | { readonly kind: 'two'; readonly said: readonly [string, string] }
  | { readonly kind: 'again'; readonly said: string }
  | { readonly kind: 'far'; readonly said: string };

/** Taken for a date without a time of day. */
const usualHour = 9;

/** Nobody means so much later, days. */
const farthest = 3660;

const minute = 60_000;

const counts: Readonly<Record<string, number>> = {
  ...small,
  a: 1,
  an: 1,
  'forty-five': 45,
  half: 0.5,
  'half a': 0.5,
  'half an': 0.5,
  'a quarter of an': 0.25,
  'three quarters of an': 0.75,
  'a couple of': 2,
};
const count = `(?:\\d+(?:[.,]\\d+)?|${Object.keys(counts)
  .sort((a, b) => b.length - a.length)
  .join('|')})`;
const numberOf = (text: string): number => counts[text] ?? Number(text.replace(',', '.'));

/** Of one length by the clock on the wall (ms), or so many days or months of the calendar. */
const units: readonly (readonly [
  RegExp,
  { readonly ms?: number; readonly days?: number; readonly months?: number },
])[] = [
  [/^(?:s|secs?|seconds?)$/, { ms: 1000 }],
  [/^(?:m|mins?|minutes?)$/, { ms: minute }],
  [/^(?:h|hrs?|hours?)$/, { ms: 60 * minute }],
  [/^(?:d|days?)$/, { days: 1 }],
  [/^(?:w|wks?|weeks?|fortnights?)$/, { days: 7 }],
  [/^(?:mon|mths?|months?)$/, { months: 1 }],
  [/^(?:y|yrs?|years?)$/, { months: 12 }],
];
const unitOf = (word: string) => units.find(([pattern]) => pattern.test(word))?.[1];

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const monthName =
  '(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
const weekdays = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const weekdayName = '(?:mon|tues?|wed(?:nes)?|thur?s?|fri|sat(?:ur)?|sun)(?:day)?';

interface Found {
  readonly from: number;
  readonly end: number;
  readonly said: string;
}
interface Span extends Found {
  readonly ms: number;
  readonly days: number;
  readonly months: number;
  readonly unknown: { readonly count: string; readonly unit: string } | null;
}
interface Day extends Found {
  readonly date: Local | null;
  /** A weekday, or a date without its year, that has gone by means the next. */
  readonly order: readonly [Local, Local] | null;
}
interface Hour extends Found {
  readonly hour: number;
  readonly minute: number;
  /** Neither "am" nor two digits say which half of the day. */
  readonly vague: boolean;
}

const found = (match: RegExpExecArray): Found => ({
  from: match.index,
  end: match.index + match[0].length,
  said: match[0].trim(),
});

/** A measure of something else stands behind: "at 90 °C", "in 3 g". */
const measured = '(?!\\s*(?:°|º|%|deg|degrees|celsius|fahrenheit|[cfg]\\b|kg\\b|oz\\b|lbs?\\b|ml\\b))';

/** "in 1 h 30 min", "in half an hour"; without "in" where `bare`. */
function spanIn(text: string, bare: boolean): Span | null {
  const one = `(${count})\\s*-?\\s*([a-z]+)`;
  const lead = bare ? '(?:^|(?<=\\s))(?:for |after )?' : '(?<![\\w.])(?:in|within|after)(?: another| about)? ';
  let unknown: Span | null = null;
  for (const match of text.matchAll(new RegExp(`${lead}${one}(?![\\w])`, 'g'))) {
    const [whole, first = '', unit = ''] = match;
    const span = { ms: 0, days: 0, months: 0 };
    const add = (value: string, name: string): boolean => {
      const known = unitOf(name);
      if (!known) return false;
      const times = numberOf(value) * (name.startsWith('fortnight') ? 2 : 1);
      span.ms += times * (known.ms ?? 0);
      span.days += times * (known.days ?? 0);
      span.months += times * (known.months ?? 0);
      return true;
    };
    const from = match.index;
    if (!add(first, unit)) {
      if (!bare && !unknown && !/^(?:the|my|this|that|each)$/.test(unit)) {
        unknown = { ...span, from, end: from + whole.length, said: whole.trim(), unknown: { count: first, unit } };
      }
      continue;
    }
    let end = from + whole.length;
    for (;;) {
      const more = new RegExp(`^(?:\\s*,)?(?:\\s+and)?\\s*${one}(?![\\w])`).exec(text.slice(end));
      if (!more || !add(more[1] ?? '', more[2] ?? '')) break;
      end += more[0].length;
    }
    // "in an hour and a half"
    const half = /^ and a half\b/.exec(text.slice(end));
    if (half) {
      add('half', unit);
      end += half[0].length;
    }
    return { ...span, from, end, said: text.slice(from, end).trim(), unknown: null };
  }
  const bareFigure = unknown || bare ? null : /(?<![\w.])in (\d+)(?=\s*(?:[:,;]|$))/.exec(text);
  if (bareFigure) {
    const none = { ms: 0, days: 0, months: 0 };
    return { ...none, ...found(bareFigure), unknown: { count: bareFigure[1] ?? '', unit: '' } };
  }
  return unknown;
}

const isDate = ({ year, month, day }: Local): boolean => {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
};

/** A date without its year: the next such. */
function yearly(today: Local, month: number, day: number, said: string | undefined): Local {
  const year = said === undefined ? today.year : said.length === 2 ? 2000 + Number(said) : Number(said);
  const date = { ...today, year, month, day };
  const isOver = said === undefined && (month < today.month || (month === today.month && day < today.day));
  return isOver ? { ...date, year: year + 1 } : date;
}

function dayIn(text: string, today: Local): Day | null {
  const at = (match: RegExpExecArray, date: Local, order: Day['order'] = null): Day => ({
    ...found(match),
    date: isDate(date) ? date : null,
    order,
  });
  const on = '(?<![\\w.])(?:(?:on|by|until|till) )?(?:the )?';
  const iso = new RegExp(`${on}(\\d{4})-(\\d{1,2})-(\\d{1,2})(?![\\w-])`).exec(text);
  if (iso) return at(iso, { ...today, year: Number(iso[1]), month: Number(iso[2]), day: Number(iso[3]) });
  const named =
    new RegExp(`${on}(\\d{1,2})(?:st|nd|rd|th|\\.)? (?:of )?(${monthName})\\b\\.?(?:,? (\\d{4}))?`).exec(text) ??
    new RegExp(`${on}(?<m>${monthName})\\.? (?<d>\\d{1,2})(?:st|nd|rd|th)?(?![\\d:])(?:,? (?<y>\\d{4}))?`).exec(text);
  if (named) {
    const { m = named[2], d = named[1], y = named.groups ? named.groups['y'] : named[3] } = named.groups ?? {};
    return at(named, yearly(today, months.indexOf((m ?? '').slice(0, 3)) + 1, Number(d), y));
  }
  const points = new RegExp(`${on}(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4}|\\d{2})?(?![\\w.])`).exec(text);
  if (points) return at(points, yearly(today, Number(points[2]), Number(points[1]), points[3]));
  const strokes = new RegExp(`${on}(\\d{1,2})/(\\d{1,2})(?:/(\\d{4}|\\d{2}))?(?![\\w/])`).exec(text);
  if (strokes) {
    const [a, b] = [Number(strokes[1]), Number(strokes[2])];
    const dayFirst = yearly(today, b, a, strokes[3]);
    const monthFirst = yearly(today, a, b, strokes[3]);
    if (a <= 12 && b <= 12 && a !== b) return at(strokes, dayFirst, [dayFirst, monthFirst]);
    return at(strokes, a > 12 ? dayFirst : monthFirst);
  }
  const relative = /\b(the day after tomorrow|day after tomorrow|tomorrow|today|tonight|yesterday)\b/.exec(text);
  if (relative) {
    const word = relative[1] ?? '';
    const days = word.includes('after') ? 2 : word === 'tomorrow' ? 1 : word === 'yesterday' ? -1 : 0;
    return at(relative, daysLater(today, days));
  }
  const weekday = new RegExp(`(?<![\\w.])(?:on |by )?(?:(next|this|coming) )?(${weekdayName})\\b`).exec(text);
  if (weekday && (weekday[0].includes('day') || /^(?:on|next|this)/.test(weekday[0]))) {
    const wanted = weekdays.indexOf((weekday[2] ?? '').slice(0, 3));
    return at(weekday, daysLater(today, (wanted - weekdayOf(today) + 7) % 7 || 7));
  }
  return /\bnext week\b/.test(text) ? at(/\bnext week\b/.exec(text) as RegExpExecArray, daysLater(today, 7)) : null;
}

function hourIn(text: string, evening: boolean): Hour | null {
  const parts =
    new RegExp(
      `(?<![\\w.,:/-])(?:(?:at|by|around|about|@) ?)?(\\d{1,2})[:.h](\\d\\d)(?::\\d\\d)?(?!\\d|[.,]\\d)(?: ?([ap])\\.?m\\b\\.?)?(?! ?%)${measured}`,
    ).exec(text) ??
    /(?<![\w.,:/-])(?:(?:at|by|around|about|@) ?)?(\d{1,2})()(?: ?([ap])\.?m\b\.?| ?(?:o'?clock|uhr)\b)/.exec(text) ??
    new RegExp(`(?<![\\w.,:/-])(?:at|@) ?(\\d{1,2})()()(?![\\w:/-]|[.,]\\d)${measured}`).exec(text);
  if (parts) {
    const [, said = '', minutes = '', half = ''] = parts;
    const vague = half === '' && minutes === '' && said.length === 1;
    let hour = Number(said);
    if (half === 'p' && hour < 12) hour += 12;
    if (half === 'a' && hour === 12) hour = 0;
    if (hour <= 23 && Number(minutes || 0) <= 59) {
      if (evening && half === '' && hour >= 5 && hour < 12) hour += 12;
      return { ...found(parts), hour, minute: Number(minutes || 0), vague };
    }
  }
  const words: readonly (readonly [RegExp, number])[] = [
    [/\b(?:at )?(?:noon|midday)\b/, 12],
    [/\b(?:at )?midnight\b/, 24],
    [/\bin the (?:early )?morning\b|\bmorning\b/, 9],
    [/\bin the afternoon\b|\bafternoon\b/, 15],
    [/\bin the evening\b|\bevening\b|\btonight\b/, 19],
  ];
  for (const [pattern, hour] of words) {
    const match = pattern.exec(text);
    if (match) return { ...found(match), hour, minute: 0, vague: false };
  }
  return null;
}

const placedOf = (placed: Placed): readonly Taken[] => [
  ...(placed.skipped ? (['skipped'] as const) : []),
  ...(placed.twice ? (['twice'] as const) : []),
];

/** The text without a piece of it, tidied. */
function without(text: string, pieces: readonly Found[]): string {
  let rest = text;
  for (const { from, end } of [...pieces].sort((a, b) => b.from - a.from))
    rest = `${rest.slice(0, from)} ${rest.slice(end)}`;
  return rest
    .replace(/\s+/g, ' ')
    .replace(/ ([,.;:!?])/g, '$1')
    .trim();
}

/** `now`: ms since 1970; `zone`: an IANA name. Bare spans ("15 min") count where nothing else says when. */
export function readMoment(text: string, now: number, zone: string): Moment {
  const low = text.toLowerCase().replace(/[’‘]/g, "'");
  // Folding the case of some letters changes the length of a text: such a text says when in plain letters.
  const source = low.length === text.length ? text : low;
  const again =
    /\b(?:every|each) (?:other )?(?:\d+ )?(?:day|week|month|hour|minute|morning|evening|mon|tue|wed|thu|fri|sat|sun)\w*|\b(?:daily|weekly|hourly)\b/.exec(
      low,
    );
  if (again) return { kind: 'again', said: again[0] };
  const today = localOf(now, zone);
  const ago = new RegExp(`(${count})\\s*([a-z]+) ago\\b`).exec(low);
  if (ago && unitOf(ago[2] ?? '')) return { kind: 'past', said: ago[0], at: now, next: null };

  const day = dayIn(low, today);
  const blank = day ? low.slice(0, day.from) + ' '.repeat(day.end - day.from) + low.slice(day.end) : low;
  const evening = day?.said.includes('tonight') ?? false;
  const hour = hourIn(blank, evening) ?? (evening && day ? { ...day, hour: 19, minute: 0, vague: false } : null);
  const span = spanIn(low, false) ?? (day || hour ? null : spanIn(low, true));

  if (span?.unknown && !day && !hour) return { kind: 'unit', said: span.said, ...span.unknown };
  if (span && !span.unknown) {
    const calendar = span.days + span.months > 0;
    // "in 3 days at 9:00" is one time; "in 15 min" beside "at 12:40" are two.
    if (day || (hour && (!calendar || span.ms > 0)))
      return { kind: 'two', said: [span.said, (day ?? hour)?.said ?? ''] };
    return ofSpan(span, hour, { source, now, today, zone });
  }
  if (day?.order) {
    const iso = (date: Local): string =>
      `${date.year}-${String(date.month).padStart(2, '0')}-${String(date.day).padStart(2, '0')}`;
    return { kind: 'which-order', said: day.said, candidates: [iso(day.order[0]), iso(day.order[1])] };
  }
  if (day && !day.date) return { kind: 'no-date', said: day.said };
  if (!day && !hour) return { kind: 'none' };
  const date = day?.date ?? today;
  const time = hour ?? { hour: usualHour, minute: 0 };
  const placed = instantOf({ ...date, hour: time.hour, minute: time.minute }, zone);
  const pieces = [...(day ? [day] : []), ...(hour && hour.from !== day?.from ? [hour] : [])];
  const said = pieces
    .map((piece) => piece.said)
    .join(' ')
    .replace(/\s+/g, ' ');
  if (placed.at <= now) {
    const later = instantOf(daysLater({ ...date, hour: time.hour, minute: time.minute }, 1), zone).at;
    return { kind: 'past', said, at: placed.at, next: day ? null : later };
  }
  if (placed.at - now > farthest * 86_400_000) return { kind: 'far', said };
  return {
    kind: 'at',
    at: placed.at,
    rest: without(source, pieces),
    taken: [...(hour ? [] : (['morning'] as const)), ...placedOf(placed)],
  };
}

interface Around {
  readonly source: string;
  readonly now: number;
  readonly today: Local;
  readonly zone: string;
}

function ofSpan(span: Span, hour: Hour | null, { source, now, today, zone }: Around): Moment {
  const { ms, days, months: monthsLater, said } = span;
  const whole = Number.isInteger(days) && Number.isInteger(monthsLater);
  if (days + 31 * monthsLater > farthest || ms > farthest * 86_400_000) return { kind: 'far', said };
  const pieces = [span, ...(hour ? [hour] : [])];
  const rest = without(source, pieces);
  if (days + monthsLater === 0 || !whole) {
    const at = now + ms + days * 86_400_000 + monthsLater * 30 * 86_400_000;
    return at <= now ? { kind: 'past', said, at, next: null } : { kind: 'at', at, rest, taken: [] };
  }
  const first = { ...today, day: 1, month: today.month + monthsLater };
  const lastDay = new Date(Date.UTC(first.year, first.month, 0)).getUTCDate();
  const month = daysLater({ ...first, day: Math.min(today.day, lastDay) }, days);
  const placed = instantOf({ ...month, ...(hour ? { hour: hour.hour, minute: hour.minute } : {}) }, zone);
  return { kind: 'at', at: placed.at + ms, rest, taken: placedOf(placed) };
}
