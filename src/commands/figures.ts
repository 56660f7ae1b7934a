/** One figure as an answer: its text for people, its value for programs. */
import { number, percent, type Style } from '../units/print.ts';
import { type Unit, unit } from '../units/units.ts';

/** `result` of every answer that is one figure: unrounded, in the unit asked for. */
export const figureResult = (value: number, of: string): Readonly<Record<string, unknown>> => ({ value, unit: of });

const plural: Readonly<Record<string, string>> = {
  cup: 'US cups',
  'cup-metric': 'metric cups',
  'cup-imperial': 'imperial cups',
};

/** Decimals that leave this many significant digits, whole numbers kept whole. */
function decimalsFor(value: number, digits: number): number {
  const size = Math.abs(value);
  if (!(size > 0)) return 0;
  return Math.min(8, Math.max(0, digits - 1 - Math.floor(Math.log10(size))));
}

export const symbolOf = ({ id, symbol }: Unit, value: number): string =>
  Math.abs(value) === 1 ? symbol : (plural[id] ?? symbol);

/** "26.46 oz"; temperatures to a tenth. */
export function inUnit(value: number, of: Unit, style: Style, digits = 4): string {
  const decimals = of.dimension === 'temperature' ? 1 : decimalsFor(value, digits);
  return `${number(value, decimals, style)} ${symbolOf(of, value)}`;
}

/** Both ends of a range with the decimals of its middle: "158 to 165". */
export function span(low: number, high: number, style: Style, digits = 3): string {
  const decimals = decimalsFor((low + high) / 2, digits);
  return `${number(low, decimals, style)} to ${number(high, decimals, style)}`;
}

/** Grams in the person's unit: to the gram from 100 g on, to a tenth below; ounces and pounds finer. */
export function weight(grams: number, of: Unit, style: Style, round: 'near' | 'down' = 'near'): string {
  const value = grams / of.factor;
  const step =
    of.id === 'g'
      ? grams >= (round === 'down' ? 1000 : 99.95)
        ? 1
        : grams >= 0.995
          ? 0.1
          : 0.01
      : of.id === 'mL'
        ? 1
        : 0.01;
  const decimals = step === 1 ? 0 : step === 0.1 ? 1 : of.id === 'kg' || of.id === 'lb' ? 3 : 2;
  const scale = 10 ** decimals;
  const shown = round === 'down' ? Math.floor(value * scale + 1e-9) / scale : value;
  return `${number(shown, decimals, style)} ${symbolOf(of, shown)}`;
}

export const gram = unit('g');

/** The unit of an answer about something weighed in `own`: grams for all metric ones, ounces and pounds as they are. */
export const answerUnit = (own: Unit | null | undefined): Unit => (own?.id === 'oz' || own?.id === 'lb' ? own : gram);

/** "33 %", with a decimal only where it says something. */
export const share = (value: number, style: Style): string =>
  percent(value, style, Math.abs(value * 100 - Math.round(value * 100)) < 0.05 ? 0 : 1);
