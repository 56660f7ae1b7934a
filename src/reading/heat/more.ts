import type { Reader } from '../index.ts';
import { Claims } from './claims.ts';
import { coolOf } from './cool.ts';
import { celsiusOf, heatLine } from './line.ts';

/** A question about cooling with one more reading in it: "81 at 20 min", "it's 81 now" so many minutes later. */
export function withReading(reader: Reader, question: string, text: string, minutes: number): string | null {
  if (
    text.length > 80 ||
    /\?|\b(?:how|when|what|which|why|can|is it|make|change|no|not|instead|until|target)\b/i.test(text)
  )
    return null;
  const line = heatLine(reader, text);
  if (line.things.size > 0 || [...line.figures.values()].some(({ letter }) => !/[TNMC]/.test(letter))) return null;
  const before = coolOf(new Claims(heatLine(reader, question)));
  const tried = (added: string): string | null => {
    const whole = `${question}, ${added}`;
    const { readings } = coolOf(new Claims(heatLine(reader, whole)));
    return readings.length > Math.max(1, before.readings.length) ? whole : null;
  };
  if (/ [MC]\d+ /.test(line.text)) return tried(text.trim().replace(/[.!]+$/, ''));
  // A temperature alone is that of now. Where the clock is that of the day, nobody said what it shows.
  const [figure, ...more] = [...line.figures.values()];
  if (!figure || more.length > 0 || minutes < 1 || before.dayMinute !== null) return null;
  const last = before.readings.at(-1)?.minute ?? 0;
  const unit = figure.bare ? line.scale : '°C';
  const celsius = figure.bare ? figure.value : celsiusOf(line, figure);
  return tried(`${Number(celsius.toFixed(2))} ${unit} at ${Math.round(last + minutes)} min`);
}
