/**
 * A chart of the answer as a Vega-Lite specification. Everything a person may have typed goes in as data, titles or
 * labels, never as an expression. Sizes suit a phone: 420 px wide before the rasteriser doubles them.
 */
import type { TopLevelSpec } from 'vega-lite';
import type { Picture } from '../../answer/types.ts';

export const font = 'DejaVu Sans';
const width = 420;
/** Longest name beside lying bars, px. */
const nameLimit = 190;

/** Dark on light with its own ground, so that dark and light chats show the same. */
export const colours = {
  ink: '#1d1f22',
  faint: '#6b7076',
  grid: '#e3e1da',
  ground: '#fbfaf7',
  alarm: '#a8321e',
  /** Okabe & Ito's palette for every kind of sight, its darker half. */
  series: ['#0072b2', '#d55e00', '#007a5a', '#8f4a86', '#6b5b00'],
} as const;
const { ink, faint, grid, ground, alarm } = colours;

/** Words into lines of about `most` characters. */
export function wrapped(text: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

const axisTitle = ({ label, unit }: Picture['x']): string => (unit ? `${label} (${unit})` : label);

interface Row {
  readonly x: number | string;
  readonly y: number;
  readonly low: number;
  readonly high: number;
  readonly series: string;
  readonly order: number;
}

const rowsOf = ({ series }: Picture): readonly Row[] =>
  series.flatMap(({ name, points }, order) =>
    points.map(({ x, y, low = y, high = y }) => ({ x, y, low, high, series: name, order })),
  );

const config: TopLevelSpec['config'] = {
  font,
  background: ground,
  view: { stroke: null },
  title: { color: ink, fontSize: 16, fontWeight: 'bold', anchor: 'start', offset: 12, lineHeight: 20 },
  axis: {
    labelColor: ink,
    labelFontSize: 13,
    titleColor: ink,
    titleFontSize: 13,
    titleFontWeight: 'normal',
    titlePadding: 8,
    domainColor: faint,
    tickColor: faint,
    gridColor: grid,
    labelLimit: nameLimit,
    labelFlush: false,
  },
  legend: {
    labelColor: ink,
    labelFontSize: 13,
    labelLimit: 360,
    symbolOpacity: 1,
    symbolStrokeWidth: 3,
    symbolSize: 160,
    orient: 'top',
    direction: 'vertical',
    rowPadding: 2,
    title: null,
  },
};

const legendFor = ({ series, kind }: Picture): object | null =>
  series.length > 1 ? { symbolType: kind === 'curve' ? 'stroke' : 'square' } : null;

const colour = (picture: Picture): object => ({
  field: 'series',
  type: 'nominal',
  sort: null,
  scale: { domain: picture.series.map(({ name }) => name), range: colours.series },
  legend: legendFor(picture),
});

/** A line for each series, its band behind it, marks across. */
function curve(picture: Picture): object[] {
  const x = {
    field: 'x',
    type: 'quantitative',
    title: axisTitle(picture.x),
    axis: { tickCount: 6 },
    scale: { nice: false },
  };
  const y = { type: 'quantitative', scale: { zero: false, padding: 6 }, axis: { tickCount: 6 } };
  const title = axisTitle(picture.y);
  return [
    {
      mark: { type: 'area', opacity: 0.22 },
      encoding: { x, y: { ...y, field: 'low', title }, y2: { field: 'high' }, color: colour(picture) },
    },
    {
      mark: { type: 'line', strokeWidth: 3 },
      encoding: { x, y: { ...y, field: 'y', title }, color: colour(picture) },
    },
  ];
}

/** Lying bars, so that long names stay legible; a thin line spans each band. */
function bars(picture: Picture): object[] {
  const y = {
    field: 'x',
    type: 'nominal',
    sort: null,
    title: null,
    axis: { domain: false, ticks: false, grid: false },
  };
  const x = { type: 'quantitative', title: axisTitle(picture.y), axis: { tickCount: 5 } };
  const several = picture.series.length > 1;
  const offset = several ? { yOffset: { field: 'series', sort: null } } : {};
  return [
    {
      mark: { type: 'bar', cornerRadiusEnd: 2, opacity: 0.75 },
      encoding: { y, x: { ...x, field: 'y' }, color: colour(picture), ...offset },
    },
    {
      transform: [{ filter: 'datum.high > datum.low' }],
      mark: { type: 'rule', strokeWidth: 2, color: ink },
      encoding: { y, x: { ...x, field: 'low' }, x2: { field: 'high' }, ...offset },
    },
  ];
}

/** Which end of a horizontal mark has more air between it and the curves. */
function airierEnd({ series }: Picture, y: number): 'left' | 'right' {
  const gap = (index: number): number => {
    const ends = series.flatMap(({ points }) => {
      const point = points.at(index);
      return point ? [point.y, point.low ?? point.y, point.high ?? point.y] : [];
    });
    return Math.min(...ends.map((end) => Math.abs(end - y)));
  };
  return gap(0) >= gap(-1) ? 'left' : 'right';
}

/** Where on the axis of lying bars a figure stands, 0–1. */
function along({ series, marks }: Picture, y: number): number {
  const figures = [0, ...marks.map((mark) => mark.y)];
  for (const { points } of series)
    for (const point of points) figures.push(point.low ?? point.y, point.high ?? point.y);
  const low = Math.min(...figures);
  return (y - low) / (Math.max(...figures) - low || 1);
}

/** Dashed lines across with their words: along the line in a curve, above the plot in bars. */
function marks(picture: Picture): object[] {
  const lying = picture.kind === 'bars';
  const longest = Math.max(...rowsOf(picture).map(({ x }) => String(x).length));
  // Width of the names beside the bars and of the plot, px, as the chart library guesses text.
  const names = Math.min(nameLimit, 10.4 * longest);
  const plot = width - 40 - names;
  const words = { type: 'text', fontSize: 13, fontWeight: 'bold' };
  return picture.marks.flatMap(({ label, y }, i) => {
    const data = { values: [{ at: y, label }] };
    const position = { [lying ? 'x' : 'y']: { field: 'at', type: 'quantitative' } };
    const text = { field: 'label', type: 'nominal' };
    const part = along(picture, y);
    // A word that ran out of the chart would squeeze the plot, so it turns inwards and has its limit, px.
    const end = lying ? (part < 0.4 ? 'left' : 'right') : airierEnd(picture, y);
    const room = end === 'left' ? (1 - part) * plot : part * plot + names;
    const place = lying
      ? {
          align: end,
          baseline: 'bottom',
          limit: room,
          dy: -4 - 17 * (picture.marks.length - 1 - i),
        }
      : { align: end, baseline: 'bottom', limit: 300, dx: end === 'left' ? 6 : -2, dy: -4 };
    const across = lying ? { y: { value: 0 } } : { x: { value: end === 'left' ? 0 : 'width' } };
    return [
      { data, mark: { type: 'rule', strokeDash: [6, 4], strokeWidth: 2, color: alarm }, encoding: position },
      // A halo of the ground keeps the words legible where they cross a curve.
      {
        data,
        mark: { ...words, ...place, color: ground, stroke: ground, strokeWidth: 4, strokeJoin: 'round' },
        encoding: { ...position, ...across, text },
      },
      { data, mark: { ...words, ...place, color: alarm }, encoding: { ...position, ...across, text } },
    ];
  });
}

export function specOf(picture: Picture): TopLevelSpec {
  const rows = rowsOf(picture);
  const groups = new Set(rows.map(({ x }) => x)).size;
  const lying = picture.kind === 'bars';
  const title = wrapped(picture.title, 36);
  const several = picture.series.length > 1;
  const plot = lying ? Math.max(48, groups * (several ? 18 * picture.series.length + 10 : 30)) : 240;
  // Words of marks stand above lying bars, one line each; what surrounds the plot is reckoned in the chart's own px.
  const above = lying ? 17 * picture.marks.length : 0;
  const around = 28 + 20 * title.length + 14 + above + (several ? 12 + 20 * picture.series.length : 0) + 48;
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    width,
    height: plot + around,
    autosize: { type: 'fit', contains: 'padding' },
    padding: 14,
    title: { text: title, offset: 14 },
    data: { values: rows.map((row) => ({ ...row })) },
    layer: [...(lying ? bars(picture) : curve(picture)), ...marks(picture)],
    config,
  } as TopLevelSpec;
}
