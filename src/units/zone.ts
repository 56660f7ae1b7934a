/**
 * Local time of an IANA zone, after the tables that the platform has (ECMA-402, Intl.DateTimeFormat). Instants are
 * milliseconds since 1970 (UTC).
 */

/** The Gregorian calendar, months 1 to 12. */
export interface Local {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-u-ca-gregory-nu-latn', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formats.set(zone, made);
  return made;
}

/** The zone of the process. */
export const ownZone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';

function fieldsOf(at: number, zone: string): Local & { readonly second: number } {
  const parts = Object.fromEntries(
    formatOf(zone)
      .formatToParts(at)
      .map(({ type, value }) => [type, Number(value)]),
  );
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = parts;
  return { year, month, day, hour, minute, second };
}

export function localOf(at: number, zone: string): Local {
  const { second: _, ...local } = fieldsOf(at, zone);
  return local;
}

const asUtc = ({ year, month, day, hour, minute }: Local): number => Date.UTC(year, month - 1, day, hour, minute);

/** How far the zone is ahead of UTC at an instant, ms. */
function offsetAt(at: number, zone: string): number {
  const fields = fieldsOf(at, zone);
  return asUtc(fields) + 1000 * fields.second - Math.floor(at / 1000) * 1000;
}

const day = 86_400_000;

export interface Placed {
  readonly at: number;
  /** The clocks skip this time of day; `at` is as long after the skip as it would have been. */
  readonly skipped: boolean;
  /** The clocks show it twice; `at` is the first. */
  readonly twice: boolean;
}

/** The instant at which clocks of the zone show this; days and months beyond their end go on into the next. */
export function instantOf(local: Local, zone: string): Placed {
  const guess = asUtc(local);
  const before = offsetAt(guess - day, zone);
  const after = offsetAt(guess + day, zone);
  const fits = [...new Set([guess - before, guess - after])]
    .filter((at) => offsetAt(at, zone) === guess - at)
    .sort((a, b) => a - b);
  const [at = guess - before] = fits;
  return { at, skipped: fits.length === 0, twice: fits.length > 1 };
}

/** The same time of day, so many days later. */
export const daysLater = (local: Local, days: number): Local => {
  const date = new Date(Date.UTC(local.year, local.month - 1, local.day + days));
  return { ...local, year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
};

/** 0 is Sunday. */
export const weekdayOf = ({ year, month, day: date }: Local): number =>
  new Date(Date.UTC(year, month - 1, date)).getUTCDay();

/** Days from one date to another. */
export const daysBetween = (from: Local, to: Local): number =>
  Math.round((Date.UTC(to.year, to.month - 1, to.day) - Date.UTC(from.year, from.month - 1, from.day)) / day);
