/** Pictures of answers: what is drawn, as data; how it is drawn is the renderer's business. */
import type { Block, Picture } from '../answer/types.ts';
import { ACID_GROUPS, type AcidGroup } from '../engine/composition.ts';
import type { CurvePoint } from '../engine/heat/cooling.ts';
import type { Band } from '../engine/heat/outcome.ts';
import { number, percent, percentRange, type Style, temperature } from '../units/print.ts';

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
        marks: [{ label: `target ${temperature(targetC, style)}`, y: degrees(targetC, style) }],
      },
      `cooling curve from ${temperature(first.temperatureC, style)}, over ${number(last.minute, 0, style)} minutes, down to ${temperature(targetC, style)}`,
    ),
  ];
}

/** The peak of a lye solution against the share of its water that is ice. */
export function icePicture(
  peaks: readonly { readonly iceShare: number; readonly peakC: Band }[],
  boilsAtC: number,
  limitC: number | null,
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
        marks: [
          { label: `boils at ${temperature(boilsAtC, style)}`, y: degrees(boilsAtC, style) },
          ...(limitC === null ? [] : [{ label: `limit ${temperature(limitC, style)}`, y: degrees(limitC, style) }]),
        ],
      },
      `peak from ${temperature(first.peakC.nominal, style)} without ice to ${temperature(last.peakC.nominal, style)} with all of the water as ice`,
    ),
  ];
}

/** Short enough to stand whole beside a bar. */
const groupNames: Readonly<Record<AcidGroup, string>> = {
  'c4-c10': 'to C10, saturated',
  'c12-c14': 'lauric, myristic',
  'c16-c18-saturated': 'palmitic, stearic',
  'c20-up-saturated': 'C20 up, saturated',
  'c18-1': 'oleic',
  ricinoleic: 'ricinoleic',
  'c18-2-c18-3': 'polyunsaturated',
  other: 'other',
};

/** What a fat or a blend is made of, the greatest group first; several side by side. */
export function acidsPicture(
  title: string,
  blends: readonly { readonly name: string; readonly groups: Readonly<Record<AcidGroup, number>> }[],
): readonly Block[] {
  const most = (group: AcidGroup): number => Math.max(...blends.map(({ groups }) => groups[group]));
  const shown = ACID_GROUPS.filter((group) => most(group) >= 0.005).sort((a, b) => most(b) - most(a));
  const [first] = shown;
  if (first === undefined) return [];
  return [
    picture(
      {
        title,
        x: { label: 'fatty acids', unit: '' },
        y: { label: 'share of the fatty acids', unit: '%' },
        kind: 'bars',
        series: blends.map(({ name, groups }) => ({
          name,
          points: shown.map((group) => ({ x: groupNames[group], y: groups[group] * 100 })),
        })),
        marks: [],
      },
      `${title.charAt(0).toLowerCase()}${title.slice(1)}, mostly ${groupNames[first]} (${number(most(first) * 100, 0)} %)`,
    ),
  ];
}

/** The superfat with its interval, against no fat left and against what was asked for. */
export function superfatPicture(
  superfat: { readonly nominal: number; readonly low: number; readonly high: number },
  asked: number,
  style: Style,
): readonly Block[] {
  const { nominal, low, high } = superfat;
  return [
    picture(
      {
        title: 'Fat left over (superfat)',
        x: { label: '', unit: '' },
        y: { label: 'of the fat; below 0 alkali is left over', unit: '%' },
        kind: 'bars',
        series: [
          { name: 'superfat', points: [{ x: 'this recipe', y: nominal * 100, low: low * 100, high: high * 100 }] },
        ],
        marks: [
          { label: '0 %: nothing left over', y: 0 },
          ...(asked > 0 ? [{ label: `${percent(asked, style)} to compare`, y: asked * 100 }] : []),
        ],
      },
      `superfat ${percent(nominal, style)}, from ${percentRange(low, high, style)}`,
    ),
  ];
}
