/** Readings of a pot: "92 °C at 0 min, 86 at 10 min", "10 min: 86", "14:05 92", "92 ten minutes ago, 86 now". */
import type { Claims } from './claims.ts';
import type { Figure } from './line.ts';

export interface Reading {
  readonly minute: number;
  readonly temperatureC: number;
}

export interface Readings {
  readonly readings: readonly Reading[];
  /** The thermometer's step as its figures show it, K. */
  readonly stepK: number;
  /** Minutes of the day at the first reading, where times of day were given. */
  readonly dayMinute: number | null;
  /** They were given with "am" or "pm". */
  readonly halfDays: boolean;
}

const temperature = '(?<t>[TN]\\d+)(?: (?:c|f|degrees?|deg))?';
const moment =
  '(?:(?:the|about|around|minute|min|t|time|=) )*(?<m>[MC]\\d+|N\\d+|now|start|beginning|first)(?: (?<rel>ago|later|more|after that|afterwards|on|minutes?|mins?|in))?';

/** A temperature, then its moment; and the other way round. */
const orders = [
  `(?<= )${temperature} (?:(?:at|after|@|by|\\(|-|=|:|on|when|just|right) )*${moment}(?= )`,
  `(?<= )${moment} (?:(?:it|its|is|was|at|temp|temperature|reads|reading|read|showed|the|pot|soap|lye|then|had|to|dropped|fell|cooled|went|down|and|that|be|been|:|=|-|,|\\t|\\)) )*${temperature}(?= )`,
] as const;

interface Pair {
  readonly from: number;
  readonly t: string;
  readonly m: string;
  readonly rel: string;
}

/** A bare figure is a moment only where "at" or "after" says so, and never beside one that has a unit of its own. */
function pairsIn(text: string, order: string): readonly Pair[] {
  const pairs: Pair[] = [];
  for (const match of text.matchAll(new RegExp(order, 'g'))) {
    const { t = '', m = '', rel = '' } = match.groups ?? {};
    if (
      m.startsWith('N') &&
      !/^(?:minutes?|mins?|in)$/.test(rel) &&
      !/(?: (?:at|after|@|minute|min|time) N|t = N)/.test(match[0])
    )
      continue;
    // "until the pot is at 60, it is at 88": 60 is where it shall go
    if (m.startsWith('N') && / (?:until|till|til) [^,.?]*$/.test(text.slice(0, match.index + 1))) continue;
    pairs.push({ from: match.index, t, m, rel });
  }
  return pairs;
}

/** 0.1 K, 0.5 K or 1 K, from the digits of the figures. */
function stepOf(figures: readonly Figure[]): number {
  const fine = figures.filter(({ decimals }) => decimals > 0);
  if (fine.length === 0) return 1;
  return fine.every(({ text }) => /[.,]5(?!\d)/.test(text)) ? 0.5 : 0.1;
}

/** The last temperature before the first that has a moment: where it all began, if it is no goal. */
function leadIn(text: string): string | null {
  const free = [...text.matchAll(/ ([TN]\d+)(?= )/g)].filter(({ index }) => !goal.test(text.slice(0, index + 1)));
  return free.at(-1)?.[1] ?? null;
}

const goal =
  / (?:to|until|till|til|target|goal|below|under|reach|reaches|hit|hits|when|be) (?:at |to |is |it |its |: )*$/;

/** Minutes of the day go on after midnight. */
const onward = (minute: number, before: number): number => (minute < before ? minute + 1440 : minute);

export function readingsOf(claims: Claims): Readings {
  const none = { readings: [], stepK: 1, dayMinute: null, halfDays: false };
  const named = (
    figures: readonly (Figure | null)[],
    minutes: readonly number[],
    dayMinute: number | null = null,
  ): Readings => {
    const found = figures.flatMap((figure, i) =>
      figure ? [{ minute: minutes[i] ?? 0, temperatureC: claims.celsius(figure), figure }] : [],
    );
    return {
      readings: found.map(({ minute, temperatureC }) => ({ minute, temperatureC })),
      dayMinute,
      halfDays:
        dayMinute !== null &&
        [...claims.line.figures.values()].some(({ letter, text }) => letter === 'C' && /[ap]m/i.test(text)),
      stepK: stepOf(found.map(({ figure }) => figure)) * (claims.line.scale === '°F' ? 1 / 1.8 : 1),
    };
  };

  // "fell from 92 to 86 in 10 min"
  const fall =
    / ([TN]\d+) (?:down )?(?:to|•|- >|>) ([TN]\d+) (?:in|over|within|after) (?:the )?(?:last |first |past |about )*(M\d+) /.exec(
      claims.text,
    );
  if (fall) {
    const [hot, cold, minutes] = fall.slice(1).map((name) => claims.claim(name));
    return named([hot ?? null, cold ?? null], [0, minutes?.value ?? 0]);
  }
  // "it takes 10 minutes to go from 90 to 85"
  const takes =
    / (M\d+) (?:(?:to|for|it|the|pot|soap) )*(?:go|get|cool|drop|fall|come) (?:down )?from ([TN]\d+) (?:down )?to ([TN]\d+) /.exec(
      claims.text,
    );
  if (takes) {
    const [minutes, hot, cold] = takes.slice(1).map((name) => claims.claim(name));
    return named([hot ?? null, cold ?? null], [0, minutes?.value ?? 0]);
  }
  // "92, 86, 81 every 10 minutes"
  const every = / (?:every|each) (M\d+) /.exec(claims.text);
  if (every?.[1]) {
    const step = claims.claim(every[1])?.value ?? 0;
    const run = /(?:[TN]\d+ (?:, |and |then |; |- )*){2,}/.exec(claims.text)?.[0] ?? '';
    const names = run.match(/[TN]\d+/g) ?? [];
    return named(
      names.map((name) => claims.claim(name)),
      names.map((_, i) => i * step),
    );
  }

  const [first, second] = orders.map((order) => pairsIn(claims.text, order)) as [readonly Pair[], readonly Pair[]];
  const backwards = (pairs: readonly Pair[]): boolean => pairs.some(({ rel }) => rel === 'ago');
  // "Half an hour ago 90, 75 now": which way round the sentence runs is told by "ago".
  const chosen =
    (backwards(first) || second.length <= first.length) && !(backwards(second) && !backwards(first)) ? first : second;
  const ago = backwards(chosen);
  // "Now" is a moment where the others lie before it; else it says nothing of when that was.
  const pairs = chosen.filter(({ m }) => ago || m !== 'now');
  const [head] = pairs;
  if (!head) return none;
  const lead = leadIn(claims.text.slice(0, head.from + 1));
  let minute = 0;
  const minutes: number[] = [];
  const figures: (Figure | null)[] = [];
  for (const { t, m, rel } of pairs) {
    const said = /^[A-Z]\d/.test(m) ? claims.claim(m) : null;
    if (said?.letter === 'C') minute = onward(said.value, minute);
    else if (said)
      minute = rel === 'ago' ? -said.value : /^(?:later|more|after|on)/.test(rel) ? minute + said.value : said.value;
    else minute = 0;
    minutes.push(minute);
    figures.push(claims.claim(t));
  }
  // "it was 92, after 10 minutes 86"
  if (lead && minutes.every((one) => one > 0) && !head.m.startsWith('C')) {
    figures.unshift(claims.claim(lead));
    minutes.unshift(0);
  } else if (ago && !minutes.includes(0)) {
    const now = / ([TN]\d+) (?:c |f |degrees? )?(?:right |just )?now /.exec(claims.text)?.[1] ?? lead;
    if (now) {
      figures.push(claims.claim(now));
      minutes.push(0);
    }
  }
  // Clocks and "ago" count from the first reading.
  const start = ago || head.m.startsWith('C') ? Math.min(...minutes) : 0;
  return named(
    figures,
    minutes.map((one) => one - start),
    head.m.startsWith('C') ? start : null,
  );
}
