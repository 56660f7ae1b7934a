/** The answer about cooling, in words. */
import type { Block } from '../answer/types.ts';
import type { HeatData } from '../catalogue/heat-types.ts';
import type { Catalogue } from '../catalogue/types.ts';
import type { Cooling, CurvePoint } from '../engine/heat/cooling.ts';
import type { ScentFlash } from '../engine/heat/flash-point.ts';
import type { CoolReading } from '../reading/heat/cool.ts';
import { number, type Style, temperature } from '../units/print.ts';
import { fluidLine } from './heat-scent.ts';
import { minutesOf, roughly, timeRange, warmthRange } from './heat-words.ts';
import { coolingPicture } from './pictures.ts';

export interface Cooled {
  readonly said: CoolReading;
  readonly targetC: number;
  readonly roomC: number;
  readonly scent: ScentFlash | null;
  readonly scentName: string;
  readonly cooling: Cooling;
  /** With the lid off instead, where one was on: minutes. */
  readonly uncovered: number | null;
  readonly data: HeatData;
  readonly catalogue: Catalogue;
  readonly style: Style;
}

export function leadOf({ said, cooling, targetC, scent, style }: Cooled): string {
  const { minutesLeft, minutes, notes } = cooling;
  const goal = temperature(targetC, style);
  const where = scent ? `At ${goal} or below,` : `At ${goal}`;
  if (notes.includes('already-there'))
    return scent
      ? `${said.asksWhether ? 'Yes' : 'Now'}: it is cool enough, ${goal} or below.`
      : `It is there: ${goal} or less already.`;
  if (said.readings.length > 0) {
    const spread = minutesLeft.high - minutesLeft.low;
    const clock =
      said.dayMinute === null
        ? `minute ${number(minutes.nominal, 0, style)} of your clock`
        : `about ${timeOfDay(said.dayMinute + minutes.nominal, said.halfDays)}`;
    return `${where} in about ${minutesOf(minutesLeft.nominal, spread, minutesLeft.high)} after the last reading (${timeRange(minutesLeft.low, minutesLeft.high)}), at ${clock}.`;
  }
  const not = scent && said.asksWhether ? 'Not yet: ' : '';
  if (not)
    return `${not}${where.charAt(0).toLowerCase()}${where.slice(1)} probably in ${timeRange(minutes.low, minutes.high)}.`;
  return `${where} probably in ${timeRange(minutes.low, minutes.high)}.`;
}

/** "14:42", or "2:42 pm" for those who write so. */
function timeOfDay(minute: number, halfDays: boolean): string {
  const whole = Math.round(minute) % 1440;
  const hour = Math.floor(whole / 60);
  const shown = halfDays ? hour % 12 || 12 : hour;
  return `${shown}:${String(whole % 60).padStart(2, '0')}${halfDays ? (hour < 12 ? ' am' : ' pm') : ''}`;
}

const line = (text: string): Block => ({ kind: 'text', text });

export function bodyOf({
  said,
  cooling,
  scent,
  scentName,
  targetC,
  uncovered,
  data,
  catalogue,
  style,
}: Cooled): Block[] {
  const texts: string[] = [];
  const { lookAtMinute, minutes, notes, minutesLeft } = cooling;
  if (scent) {
    texts.push(
      `${scentName} can flash from ${temperature(scent.flashPointC, style)}; ${temperature(targetC, style)} leaves a margin. Heat and flames off first.`,
    );
    const fluid = fluidLine(scent, data, catalogue, style);
    if (fluid) texts.push(fluid);
  }
  if (lookAtMinute !== null) {
    const last = said.readings.at(-1)?.minute ?? 0;
    const wait = minutesOf(Math.max(1, lookAtMinute - last), 60);
    const measure = notes.includes('stir-before-reading') ? 'stir, measure' : 'measure';
    texts.push(
      said.readings.length > 0
        ? `In ${wait} ${measure} again and tell me what it shows: the range shrinks with every reading.`
        : `In ${wait} ${measure} and tell me what it shows: I can then say it to a few minutes.`,
    );
  }
  if (uncovered !== null && uncovered < 0.9 * minutes.nominal)
    texts.push(`With the lid off about ${minutesOf(uncovered, 60)}.`);
  if (minutesLeft.high > 0 && notes.includes('close-to-room'))
    texts.push('That is close to the temperature of the room: the last degrees take long.');
  return [...texts.map(line), ...coolingPicture(cooling.curve, targetC, said.readings, style)];
}

/** Rows of the table: about eight, evenly spaced in time. */
function rowsOf(curve: readonly CurvePoint[], style: Style): string[][] {
  const every = Math.max(1, Math.round((curve.length - 1) / 8));
  return curve
    .filter((_, i) => i % every === 0 || i === curve.length - 1)
    .map(({ minute, temperatureC, lowC, highC }) => [
      number(minute, 0, style),
      temperature(temperatureC, style),
      warmthRange(lowC, highC, style),
    ]);
}

export function detailsOf({ cooling, said, data, style, roomC }: Cooled): Block[] {
  const by =
    said.readings.length > 1
      ? 'One constant rate (Newton’s law of cooling), fitted to your readings by least squares; a law that slows down later widens the far end.'
      : 'Heat lost by natural convection, radiation and evaporation from the pot as described; every uncertain figure widens the range.';
  return [
    {
      kind: 'table',
      caption: `Temperature over the minutes, room ${temperature(roomC, style)}`,
      columns: [
        { title: 'Minute', align: 'right' },
        { title: 'About', align: 'right' },
        { title: 'Range', align: 'right' },
      ],
      rows: rowsOf(cooling.curve, style),
    },
    line(by),
    ...(said.readings.length > 1
      ? []
      : [
          line(
            `Sources: ${[data.air.table.source, data.water.evaporation.source, data.fat.soapPaste.heatCapacity.source]
              .map((id) => data.sources.get(id)?.title ?? id)
              .join('; ')}.`,
          ),
        ]),
  ];
}

export function warningsOf({ said, scent, data, cooling, style }: Cooled, left: readonly string[]): string[] {
  const { notes } = cooling;
  const hottest = Math.max(said.nowC ?? 0, ...said.readings.map(({ temperatureC }) => temperatureC));
  const ceiling = data.cook.ceilingC.value;
  return [
    ...(hottest > ceiling && (said.of === 'soap' || scent)
      ? [
          `${temperature(hottest, style)} is above the ceiling of about ${roughly(ceiling, style)}: soap scorches and can climb out.`,
        ]
      : []),
    ...(scent && said.of === 'lye' ? ['Scent goes into the soap, never into lye.'] : []),
    ...(notes.includes('outside-range')
      ? ['So small a pot lies outside the range of the formulas: the range is wider.']
      : []),
    ...(left.length > 0 ? [`I did not use ${left.join(', ')}.`] : []),
  ];
}

export function resultOf({ cooling, targetC, scent }: Cooled): Readonly<Record<string, unknown>> {
  const { minutes, minutesLeft, curve, lookAtMinute } = cooling;
  return {
    minutes,
    minutesLeft: minutesLeft.nominal,
    minutesLeftRange: { low: minutesLeft.low, high: minutesLeft.high },
    lookAtMinute,
    targetC,
    curve: curve.map(({ minute, temperatureC, lowC, highC }) => ({ minute, temperatureC, lowC, highC })),
    ...(scent ? { flashPointC: scent.flashPointC, addBelowC: scent.addBelowC, pourable: scent.pourable } : {}),
  };
}
