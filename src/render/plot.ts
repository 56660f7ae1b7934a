import type { Picture } from '../answer/types.ts';
import { number } from '../units/print.ts';
import { columnsOf, paired } from './grid.ts';
import { inertLine } from './inert.ts';

const rowsOfCurve = 9;

interface Scale {
  readonly low: number;
  readonly high: number;
}

const scaleOf = (values: readonly number[]): Scale => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  // A line that never rises has a scale too.
  return low === high ? { low: low - 1, high: high + 1 } : { low, high };
};

const named = ({ label, unit }: Picture['x']): string => inertLine(unit === '' ? label : `${label}, ${unit}`);
const fill = (text: string, columns: number): string => text + ' '.repeat(Math.max(0, columns - columnsOf(text)));

/** Figures for an axis: as many decimals as the span needs to tell its ends apart. */
const label = (value: number, { low, high }: Scale): string =>
  number(value, Math.max(0, Math.min(3, Math.ceil(1 - Math.log10(high - low)))));

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

/** The series at `x`, between its two neighbours on a straight line; nothing outside its ends. */
function at(spots: readonly Spot[], x: number): Spot | undefined {
  const after = spots.findIndex((spot) => spot.x >= x);
  const right = spots[after];
  const left = spots[after - 1];
  if (!right || right.x === x || !left) return right?.x === x ? right : undefined;
  const part = (x - left.x) / (right.x - left.x);
  const between = (key: 'y' | 'low' | 'high') => left[key] + part * (right[key] - left[key]);
  return { x, y: between('y'), low: between('low'), high: between('high') };
}

/** Curves as letters of each series, `·` for the band, `-` for a mark across. */
function curve(picture: Picture, columns: number): readonly string[] {
  const all = picture.series.map(({ points }) =>
    points
      .flatMap(({ x, y, low = y, high = y }) => (typeof x === 'number' ? [{ x, y, low, high }] : []))
      .toSorted((a, b) => a.x - b.x),
  );
  const spots = all.flat();
  if (spots.length === 0) return [];
  const xs = scaleOf(spots.map(({ x }) => x));
  const ys = scaleOf([...spots.flatMap(({ low, high }) => [low, high]), ...picture.marks.map(({ y }) => y)]);
  const margin = Math.max(columnsOf(label(ys.low, ys)), columnsOf(label(ys.high, ys)));
  const width = Math.max(10, columns - margin - 2);
  const row = (y: number) => Math.round(((ys.high - y) / (ys.high - ys.low)) * (rowsOfCurve - 1));
  const cells = Array.from({ length: rowsOfCurve }, () => Array.from({ length: width }, () => ' '));
  const put = (y: number, column: number, sign: string) => {
    const line = cells[row(y)];
    if (line) line[column] = sign;
  };
  for (const { y } of picture.marks) for (let column = 0; column < width; column += 1) put(y, column, '-');
  for (let column = 0; column < width; column += 1) {
    const x = xs.low + (column / (width - 1)) * (xs.high - xs.low);
    const here = all.map((series) => at(series, x));
    for (const spot of here) {
      if (!spot) continue;
      for (let line = row(spot.high); line <= row(spot.low); line += 1) {
        const cell = cells[line];
        if (cell) cell[column] = '·';
      }
    }
    for (const [i, spot] of here.entries()) if (spot) put(spot.y, column, '*+o#'[i % 4] ?? '*');
  }
  const scale = new Map([
    [0, label(ys.high, ys)],
    [rowsOfCurve - 1, label(ys.low, ys)],
    ...picture.marks.map(({ y }): [number, string] => [row(y), label(y, ys)]),
  ]);
  const [first, last] = [label(xs.low, xs), label(xs.high, xs)];
  return [
    named(picture.y),
    ...cells.map((line, i) => `${(scale.get(i) ?? '').padStart(margin)} |${line.join('')}`.trimEnd()),
    `${' '.repeat(margin + 2)}${fill(first, width - columnsOf(last))}${last}`,
    `${' '.repeat(margin + 2)}${named(picture.x)}`,
    ...(picture.series.length > 1 ? picture.series.map(({ name }, i) => `${'*+o#'[i % 4]} ${inertLine(name)}`) : []),
    ...picture.marks.map(({ label: text }) => `- ${inertLine(text)}`),
  ];
}

/** A line a bar: name, `=` to its value, the value and its band. */
function bars(picture: Picture, columns: number): readonly string[] {
  const rows = picture.series.flatMap(({ name, points }) =>
    points.map(({ x, y, low = y, high = y }) => ({
      name: inertLine(picture.series.length > 1 ? `${x}, ${name}` : String(x)),
      y,
      band: low === high ? '' : ` (${number(low, 1)} to ${number(high, 1)})`,
    })),
  );
  const most = Math.max(0, ...rows.map(({ y }) => y)) || 1;
  const margin = Math.max(0, ...rows.map(({ name }) => columnsOf(name)));
  const tail = Math.max(0, ...rows.map(({ y, band }) => columnsOf(`${number(y, 1)}${band}`)));
  const width = Math.max(8, columns - margin - tail - 2);
  return [
    named(picture.y),
    ...rows.map(
      ({ name, y, band }) =>
        `${fill(name, margin)} ${'='.repeat(Math.round((Math.max(0, y) / most) * width))} ${number(y, 1)}${band}`,
    ),
    ...picture.marks.map(({ label: text, y }) => paired(inertLine(text), number(y, 1))),
  ];
}

/** A picture in letters, for a screen that shows nothing else. */
export const plot = (picture: Picture, columns: number): string =>
  [inertLine(picture.title), ...(picture.kind === 'curve' ? curve : bars)(picture, columns)].join('\n');
