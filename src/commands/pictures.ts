/** Pictures of answers: what is drawn, as data; how it is drawn is the renderer's business. */
import type { Block, Picture } from '../answer/types.ts';
import type { CurvePoint } from '../engine/heat/cooling.ts';
import type { Band } from '../engine/heat/outcome.ts';
import { number, type Style, temperature } from '../units/print.ts';

const degrees = (celsius: number, { temperatureUnit }: Style): number =>
  temperatureUnit === '°F' ? celsius * 1.8 + 32 : celsius;

const picture = (drawn: Picture, alt: string): Block => ({ kind: 'picture', picture: drawn, alt });

/** A pot's temperature over the minutes, with its band, and the target across. */
export function coolingPicture(
  curve: readonly CurvePoint[],
  targetC: number,
  readings: readonly { readonly minute: number; readonly temperatureC: number }[],
  style: Style,
): readonly Block[] {
  const first = curve.at(0);
  const last = curve.at(-1);
  if (!first || !last || curve.length < 2) return [];
  const unit = style.temperatureUnit;
  const series = [
    {
      name: 'expected, with its range',
      points: curve.map(({ minute, temperatureC, lowC, highC }) => ({
        x: minute,
        y: degrees(temperatureC, style),
        low: degrees(lowC, style),
        high: degrees(highC, style),
      })),
    },
    ...(readings.length > 0
      ? [
          {
            name: 'your readings',
            points: readings.map(({ minute, temperatureC }) => ({ x: minute, y: degrees(temperatureC, style) })),
          },
        ]
      : []),
  ];
  return [
    picture(
      {
        title: `Cooling to ${temperature(targetC, style)}`,
        x: { label: 'time', unit: 'min' },
        y: { label: 'temperature', unit },
        kind: 'curve',
        series,
        marks: [{ label: `${temperature(targetC, style)}`, y: degrees(targetC, style) }],
      },
      `cooling curve from ${temperature(first.temperatureC, style)}, over ${number(last.minute, 0, style)} minutes, down to ${temperature(targetC, style)}`,
    ),
  ];
}

/** The peak of a lye solution against the share of its water that is ice. */
export function icePicture(
  peaks: readonly { readonly iceShare: number; readonly peakC: Band }[],
  boilsAtC: number,
  style: Style,
): readonly Block[] {
  const first = peaks.at(0);
  const last = peaks.at(-1);
  if (!first || !last || peaks.some(({ peakC }) => !Number.isFinite(peakC.nominal))) return [];
  return [
    picture(
      {
        title: 'Hottest point of the lye solution',
        x: { label: 'part of the water that is ice', unit: '%' },
        y: { label: 'temperature', unit: style.temperatureUnit },
        kind: 'curve',
        series: [
          {
            name: 'peak',
            points: peaks.map(({ iceShare, peakC }) => ({
              x: iceShare * 100,
              y: degrees(peakC.nominal, style),
              low: degrees(peakC.low, style),
              high: degrees(peakC.high, style),
            })),
          },
        ],
        marks: [{ label: `boils at ${temperature(boilsAtC, style)}`, y: degrees(boilsAtC, style) }],
      },
      `peak from ${temperature(first.peakC.nominal, style)} without ice to ${temperature(last.peakC.nominal, style)} with all of the water as ice`,
    ),
  ];
}
