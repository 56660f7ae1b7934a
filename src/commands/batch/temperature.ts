/** A temperature as it was typed at the pot: in which unit, and when it was measured. */
import type { Result } from '../../answer/types.ts';
import type { Batch } from '../../engine/batch/batch.ts';
import type { Step } from '../../reading/batch-step.ts';
import { number, type Style, temperature } from '../../units/print.ts';
import { toCelsius } from '../../units/units.ts';
import { daysLater, instantOf, localOf } from '../../units/zone.ts';
import type { Refusal } from '../define.ts';
import { type Clock, lengthWords, timeOfDay } from '../when.ts';
import { cautionOf } from './stages.ts';

type Read = Extract<Step, { do: 'read' }>;
type Unit = '°C' | '°F';

const minute = 60_000;

/** No pot of soap and no lye solution that is still in its jug is outside of this, °C. */
const coldest = 0;
const hottest = 118;
/** While there is work at the pot nobody measures less than this to know how hot it is, °C. */
const coolest = 30;

export interface Measured {
  readonly celsius: number;
  readonly unit: Unit;
  /** As typed; null where it was taken. */
  readonly typed: Unit | null;
  readonly when: number;
}

const other = (unit: Unit): Unit => (unit === '°C' ? '°F' : '°C');

export function measured(
  read: Read,
  batch: Batch,
  now: number,
  clock: Clock,
  style: Style,
): Result<Measured, Refusal<'caustic'>> {
  const when = momentOf(read, batch, now, clock);
  if (typeof when !== 'number') return { ok: false, fault: when };
  const { value, unit: typed } = read;
  const last = batch.readings.findLast(({ at }) => at <= when);
  const unit = typed ?? last?.unit ?? style.temperatureUnit;
  const celsius = toCelsius(value, unit);
  const instead = toCelsius(value, other(unit));
  const canBe = (one: number): boolean => one >= coldest && one <= hottest;
  const figure = number(value, 1, style);
  const ask = (message: string): Result<Measured, Refusal<'caustic'>> => {
    const request = (one: Unit): string => `batch ${figure} ${one}${momentWords(read)}`;
    const units = [other(unit), unit].filter((one) => canBe(toCelsius(value, one)));
    return {
      ok: false,
      fault: {
        code: units.length > 0 ? 'unclear' : 'impossible',
        message,
        hint:
          units.length > 0
            ? 'I noted nothing yet: say it with its unit.'
            : 'I noted nothing: read the thermometer again.',
        candidates: units.map(request),
        caution: cautionOf[batch.stage],
      },
    };
  };
  if (!canBe(celsius))
    return ask(
      canBe(instead)
        ? `${figure} ${unit} can’t be in a pot of soap. Did you mean ${figure} ${other(unit)} (${shown(instead, other(unit))})?`
        : `${figure} ${unit} can’t be in a pot of soap.`,
    );
  if (typed === null && celsius < coolest && instead >= coolest && canBe(instead))
    return ask(`${figure} ${unit} would be cold (${shown(celsius, unit)}). Is it ${figure} ${other(unit)}?`);
  const near = last && when - last.at < 20 * minute;
  if (typed === null && near && Math.abs(celsius - last.celsius) > 25 && Math.abs(instead - last.celsius) < 12)
    return ask(
      `${figure} ${unit} is far from the ${temperature(last.celsius, { ...style, temperatureUnit: unit })} of ${timeOfDay(last.at, clock.zone)}. Is it ${figure} ${other(unit)}?`,
    );
  return { ok: true, value: { celsius, unit, typed, when } };
}

/** In the unit that it was not typed in. */
const shown = (celsius: number, typed: Unit): string =>
  typed === '°F' ? `${number(celsius, 0)} °C` : `${number(celsius * 1.8 + 32, 0)} °F`;

const two = (value: number): string => String(value).padStart(2, '0');

const momentWords = ({ clock, ago }: Read): string =>
  clock !== null ? ` at ${two(Math.floor(clock / 60))}:${two(clock % 60)}` : ago !== null ? ` ${ago} min ago` : '';

/** When it was measured: a time of day is the last such. */
function momentOf(read: Read, batch: Batch, now: number, { zone, taken }: Clock): number | Refusal<'caustic'> {
  const { clock, ago } = read;
  const fault = (message: string, hint: string): Refusal<'caustic'> => ({
    code: 'unclear',
    message,
    hint,
    candidates: [`batch ${number(read.value, 1)}${read.unit ? ` ${read.unit}` : ''} now`],
    caution: cautionOf[batch.stage],
  });
  if (clock === null) {
    const at = now - (ago ?? 0) * minute;
    return at < batch.startedAt - 2 * minute
      ? fault(`${ago} minutes ago this batch had not begun.`, 'When was it measured?')
      : at;
  }
  const time = { hour: Math.floor(clock / 60), minute: clock % 60 };
  const today = instantOf({ ...localOf(now, zone), ...time }, zone).at;
  const at = today <= now + 2 * minute ? today : instantOf({ ...daysLater(localOf(now, zone), -1), ...time }, zone).at;
  const said = `${two(time.hour)}:${two(time.minute)}`;
  const where = taken.length > 0 ? ` (${zone}: say "settings time zone" with yours if that is wrong)` : '';
  if (at >= batch.startedAt - 2 * minute) return Math.min(at, now);
  return today > now
    ? fault(`${said} is still to come: it is ${timeOfDay(now, zone)} now${where}.`, 'When was it measured?')
    : fault(
        `At ${said} this batch had not begun: it began at ${timeOfDay(batch.startedAt, zone)}, ${lengthWords(now - batch.startedAt)} ago${where}.`,
        'When was it measured?',
      );
}
