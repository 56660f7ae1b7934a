/** Times of the day with a full stop: `7.00 melt, 7.15 lye in, 7.25 trace`. */
import type { Signals } from '../words/signals.ts';
import { isFat, isMark, isStop, wordAt } from '../words/token-is.ts';
import { asAside, type Token } from '../words/tokens.ts';

const clock = /^(\d{1,2})\.([0-5]\d)\.?$/;

/** Times of one plan, at the least, and tokens from one to the next, at the most. */
const leastTimes = 3;
const farthest = 12;
const farthestOpening = 90;

/** Minutes since midnight; null where it is no time of a day. */
function minutesAt(token: Token | undefined): number | null {
  if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') return null;
  const [, hour, minute] = clock.exec(token.quantity.text) ?? [];
  return hour === undefined || Number(hour) > 23 ? null : 60 * Number(hour) + Number(minute);
}

const day = /^(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?$/;

/** It opens its sentence, as the times of a diary do. */
const opens = (tokens: readonly Token[], k: number): boolean =>
  isStop(tokens[k - 1]) || day.test(wordAt(tokens, k - 1));

/**
 * The tokens with such times set aside: several in a row, each later than the one before, few of them beside a fat.
 * Where they open their sentences, other figures may stand between them; behind the day of a week one is enough.
 */
export function timetables(tokens: readonly Token[], { figures }: Signals): readonly Token[] {
  let out: Token[] | null = null;
  let run: number[] = [];
  const close = (): void => {
    const beside = run.filter(
      (k) => isFat(tokens[k + 1]) || isFat(tokens[k - 1]) || (isFat(tokens[k - 2]) && !isMark(tokens[k - 1], ',;')),
    );
    const least = run.every((k) => day.test(wordAt(tokens, k - 1))) ? 1 : leastTimes;
    if (run.length >= least && 2 * beside.length < run.length)
      for (const k of run) {
        const token = tokens[k];
        if (token?.t !== 'quantity') continue;
        out ??= [...tokens];
        out[k] = asAside(token, 'a time of the day');
      }
    run = [];
  };
  for (const k of figures) {
    const at = minutesAt(tokens[k]);
    const last = run.at(-1);
    if (at === null) {
      if (tokens[k]?.t === 'quantity' && !(last !== undefined && opens(tokens, last))) close();
      continue;
    }
    const most = last !== undefined && opens(tokens, last) && opens(tokens, k) ? farthestOpening : farthest;
    if (last !== undefined && (k - last > most || at <= (minutesAt(tokens[last]) ?? at))) close();
    run.push(k);
  }
  close();
  return out ?? tokens;
}
