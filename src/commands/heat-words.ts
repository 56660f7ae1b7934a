/** Turns of phrase that the answers about heat share. */
import type { Band } from '../engine/heat/outcome.ts';
import type { HeatLine } from '../reading/heat/line.ts';
import { number, type Style, temperature } from '../units/print.ts';

/** °F for those who wrote in °F. */
export const warmthStyle = (line: HeatLine, style: Style): Style =>
  line.scaleTaken ? style : { ...style, temperatureUnit: line.scale };

/** "I took the temperatures as °C." where no unit was written and one was needed. */
export const scaleTaken = (line: HeatLine): readonly string[] =>
  line.scaleTaken && [...line.figures.values()].some(({ letter }) => letter === 'T' || letter === 'N')
    ? [`I took the temperatures as ${line.scale}.`]
    : [];

/** A figure of common practice, in °F to the nearest 5: "about 200 °F". */
export const roughly = (celsius: number, style: Style): string =>
  style.temperatureUnit === '°F'
    ? `${number(5 * Math.round((celsius * 1.8 + 32) / 5), 0, style)} °F`
    : temperature(celsius, style);

/** The same of both ends. */
export const roughRange = (low: number, high: number, style: Style): string =>
  `${roughly(low, style).replace(/ °[CF]$/, '')} to ${roughly(high, style)}`;

/** A difference of temperature: no offset. */
export const kelvin = (k: number, style: Style): string =>
  style.temperatureUnit === '°F' ? `${number(k * 1.8, 0, style)} °F` : `${number(k, 0, style)} °C`;

/** "104 to 111 °C", or one figure where both ends read the same. */
export function warmthRange(low: number, high: number, style: Style): string {
  const [from, to] = [temperature(low, style), temperature(high, style)];
  return from === to ? to : `${from.replace(/ °[CF]$/, '')} to ${to}`;
}

/** "at 90 °C nobody can stir it" is read by beginners: about, then the spread. */
export const about = ({ low, nominal, high }: Band, style: Style): string => {
  const range = warmthRange(low, high, style);
  const middle = temperature(nominal, style);
  return range === middle ? `about ${middle}` : `about ${middle} (${range})`;
};

const hours = (minutes: number): string => {
  const [h, min] = [Math.floor(minutes / 60), minutes % 60];
  if (h === 0) return `${min} min`;
  return min === 0 ? `${h} h` : `${h} h ${min} min`;
};

/** A time in steps that its own size, or its spread, is worth. */
function stepOf(minutes: number, spread: number): number {
  if (spread < 20 && minutes < 120) return 1;
  if (minutes < 120) return 5;
  return minutes < 360 ? 10 : 30;
}

const inSteps = (minutes: number, step: number): number =>
  Math.max(step === 1 ? 1 : step, Math.round(minutes / step) * step);

/** "35 to 60 minutes", "1 h 10 min to 2 h". */
export function timeRange(low: number, high: number): string {
  const step = stepOf(high, high - low);
  const [from, to] = [inSteps(low, step), inSteps(high, step)];
  if (to >= 120) return from === to ? hours(to) : `${hours(from)} to ${hours(to)}`;
  return from === to ? `${to} minute${to === 1 ? '' : 's'}` : `${from} to ${to} minutes`;
}

/** "42 minutes"; beside a longer end in its way to say it. */
export const minutesOf = (minutes: number, spread = 0, end = minutes): string => {
  const value = inSteps(minutes, stepOf(minutes, spread));
  return Math.max(value, end) >= 120 ? hours(value) : `${value} minute${value === 1 ? '' : 's'}`;
};
