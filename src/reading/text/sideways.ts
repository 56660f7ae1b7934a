/** Tables on their side, laid as a row for each name, and the sums under a table that nobody names. */

import { pattern } from './pattern.ts';

/** The head of a row of figures: nothing, "weight", a unit, or both. */
const head =
  /^[\s([]*(?:in )?(?:(?:weight|amount|mass|quantity|qty|how much|share|menge|gewicht)s?)?[\s,:([]*(g|gr|gms?|grams?|gramm|kg|kilos?|oz|ounces?|lbs?|pounds?|%|percent)?[\s)\]:.]*$/i;
const figure = pattern(() => /^[-–]?\d[\d.,/\s]*(?:%|\p{L}{1,6}\.?)?$/u);
/** What is weighed in a recipe: two of a row tell that it is one of names. */
const ingredient =
  /\b(?:naoh|koh|lye|soda|hydroxide|water|oil|butter|lard|tallow|coconut|olive|palm|shea|castor|sunflower|canola|rapeseed|cocoa|soy)\b/i;

interface Row {
  readonly cells: readonly string[];
  readonly at: number;
}

const isFigures = ({ cells }: Row): boolean => {
  const rest = figure().test(cells[0] ?? '') ? cells : cells.slice(1);
  return rest.length > 1 && rest.every((cell) => figure().test(cell) || /^[-–]?$/.test(cell));
};

const isNames = ({ cells }: Row): boolean =>
  cells.slice(1).every((cell) => /\p{L}/u.test(cell)) && cells.filter((cell) => ingredient.test(cell)).length > 1;

/** The rows of one table, from line `from` on: blank lines may stand between them. */
function tableAt(lines: readonly string[], from: number): Row[] {
  const rows: Row[] = [];
  for (let at = from; at < lines.length; at++) {
    const line = lines[at] ?? '';
    if (line.trim() === '' && rows.length > 0 && lines[at + 1]?.includes('\t')) continue;
    if (!line.includes('\t')) break;
    rows.push({
      cells: line
        .replace(/\t\s*$/, '')
        .split('\t')
        .map((cell) => cell.trim()),
      at,
    });
  }
  return rows;
}

function uprightRows(names: Row, figures: readonly Row[]): readonly string[] | null {
  const heads = figures.map(({ cells }) => (figure().test(cells[0] ?? '') ? null : head.exec(cells[0] ?? '')));
  const from = figure().test(figures[0]?.cells[0] ?? '') ? 0 : 1;
  if (from === 1 && heads.includes(null)) return null;
  const units = heads.map((found) => found?.[1] ?? '');
  // two rows of one unit are two recipes
  if (new Set(units).size < units.length) return null;
  return names.cells.slice(from).map((name, k) => {
    const values = figures.map(({ cells }, row) => {
      const value = cells[from + k] ?? '';
      return /\d$/.test(value) && units[row] ? `${value} ${units[row]}` : value;
    });
    return [name, ...values].join('\t');
  });
}

/** Cells of a row, at the least, and rows of figures beside the one of names, at the most. */
const leastCells = 3;
const mostRows = 2;

/** `•` is what an arrow of one sign has become. */
const arrow = /•|[-=]{1,3}>/;
const arrowCells = (line: string): readonly string[] => line.split(arrow).map((cell) => cell.trim());
/** Lines between the heads and the rows, at the most. */
const mostBetween = 4;

/** "spring • summer" over "olive 500 g • 450 g": columns that are parted by arrows, as those of their heads are. */
export function arrowColumns(lines: readonly string[]): readonly string[] {
  const cells = lines.map(arrowCells);
  const counts = cells.map((row) => row.filter((cell) => cell !== '').length);
  let out: string[] | null = null;
  for (let at = 0; at < lines.length; at++) {
    const width = counts[at] ?? 0;
    if (width < 2 || /\d\s*(?:k?g|oz|lb)\b/.test(lines[at] ?? '')) continue;
    // what its writer says of the columns may stand between them and their heads
    let from = at + 1;
    while (from - at <= mostBetween && (counts[from] ?? 0) < 2 && from < lines.length) from++;
    let to = from;
    while (counts[to] === width && /^\p{L}[^\t]*?(?: {2}|\t)/u.test(cells[to]?.[0] ?? '')) to++;
    if (to - from < leastCells) continue;
    const rows = cells
      .slice(from, to)
      .map(([first = '', ...rest]) => [first.replace(/\s{2,}/, '\t'), ...rest].join('\t'));
    out ??= [...lines];
    out.splice(at, to - at, ...lines.slice(at + 1, from), `\t${cells[at]?.join('\t')}`, ...rows);
    at = to - 1;
  }
  return out ?? lines;
}

/** "So, single > double:" over "olive 250 g > 500 g": two columns with a sign between them. */
export function pairedColumns(lines: readonly string[]): readonly string[] {
  const pairedHeads = /^(.*?(?:^|[,;:.!]\s*))(\p{L}[\p{L} ]{0,20}) > (\p{L}[\p{L} ]{0,20}?)\s*:?\s*$/u;
  const pairedRow = /^\s*(\p{L}[^\d>]*?)[\s:]+(\d[\d.,]* ?\p{L}{0,6}) > (\d[\d.,]* ?\p{L}{0,6})\s*$/u;
  let out: string[] | null = null;
  for (let at = 0; at < lines.length; at++) {
    const heads = pairedHeads.exec(lines[at] ?? '');
    if (!heads) continue;
    let to = at + 1;
    while (pairedRow.test(lines[to] ?? '')) to++;
    if (to - at - 1 < leastCells) continue;
    out ??= [...lines];
    for (let row = at + 1; row < to; row++) out[row] = (lines[row] ?? '').replace(pairedRow, '$1\t$2\t$3');
    out[at] = `${heads[1] === '' ? '' : `${heads[1]}\n`}\t${heads[2]}\t${heads[3]}`;
  }
  return out ?? lines;
}

const nameCell = pattern(() => /^\p{L}[\p{L} .'()-]*$/u);

/** "olive oil,coconut oil,NaOH" over "700,250,139": a line of names over one of as many figures, both parted by commas. */
export function commaRows(lines: readonly string[]): readonly string[] {
  let out: string[] | null = null;
  for (let k = 0; k + 1 < lines.length; k++) {
    const [names, figures] = [lines[k] ?? '', lines[k + 1] ?? ''];
    if (!/^\s*\d/.test(figures) || !names.includes(',')) continue;
    const [heads, cells] = [names, figures].map((line) => line.split(/[,;]/).map((cell) => cell.trim())) as [
      string[],
      string[],
    ];
    if (heads.length < leastCells || heads.length !== cells.length) continue;
    if (!heads.every((cell) => nameCell().test(cell)) || !cells.every((cell) => figure().test(cell))) continue;
    out ??= [...lines];
    [out[k], out[k + 1]] = [heads.join('\t'), cells.join('\t')];
  }
  return out ?? lines;
}

/** "Mould" over "loaf B": columns of a row of names under which no figure stands, in no way of what goes in. */
function notesOf(rows: readonly Row[]): readonly number[] {
  const [names, ...others] = rows;
  if (!names || names.cells.filter((cell) => ingredient.test(cell)).length < 2) return [];
  if (
    others.length === 0 ||
    others.length > mostRows ||
    others.some(({ cells }) => cells.length !== names.cells.length)
  )
    return [];
  return names.cells.flatMap((name, k) =>
    k > 0 && !ingredient.test(name) && others.every(({ cells }) => !/^[-–]?\d/.test(cells[k] ?? '')) ? [k] : [],
  );
}

/** The lines with such tables upright; the very same where there is none. */
export function upright(lines: readonly string[]): readonly string[] {
  let out: string[] | null = null;
  for (let from = 0; from < lines.length; from++) {
    if (!lines[from]?.includes('\t')) continue;
    const whole = tableAt(lines, from);
    const last = whole.at(-1)?.at ?? from;
    const notes = notesOf(whole);
    const rows = whole.map(({ cells, at }) => ({ cells: cells.filter((_, k) => !notes.includes(k)), at }));
    const [head, ...under] = whole;
    const told = under.flatMap(({ cells }) => notes.map((k) => `${head?.cells[k] ?? ''}: ${cells[k] ?? ''}`));
    const names = rows.filter(isNames);
    const figures = rows.filter(isFigures);
    const [only] = names;
    const isOne = only && names.length === 1 && figures.length > 0 && figures.length <= mostRows;
    // empty cells at the end of a row are not seen
    const isWhole = (width: number): boolean => width >= leastCells && rows.every(({ cells }) => cells.length <= width);
    if (isOne && rows.length === figures.length + 1 && isWhole(only.cells.length)) {
      const made = uprightRows(only, figures);
      out ??= [...lines];
      if (made) for (let at = from; at <= last; at++) out[at] = at === from ? [...made, ...told].join('\n') : '';
    }
    from = last;
  }
  return out ?? lines;
}

const numberIn = (cell: string): number => Number(cell.replace(',', '.').replace(/[^\d.].*$/, '') || Number.NaN);

/** How far a sum may lie from what it is of: kitchen rounding. */
const sumWithin = 0.011;

/** The lines with a name for each row of sums that has none: `Tallow;55 %;660`, …, `;100 %;1200`. */
export function namedSums(lines: readonly string[]): readonly string[] {
  let out: string[] | null = null;
  for (const [at, line] of lines.entries()) {
    if (!line.startsWith('\t')) continue;
    const cells = line.split('\t').map((cell) => cell.trim());
    const sums = cells.map(() => 0);
    for (let up = at - 1; up >= 0; up--) {
      const above = (lines[up] ?? '').split('\t').map((cell) => cell.trim());
      if (above.length !== cells.length || !/\p{L}/u.test(above[0] ?? '') || !/\d/.test(lines[up] ?? '')) break;
      for (const [k, cell] of above.entries()) sums[k] = (sums[k] ?? 0) + (numberIn(cell) || 0);
    }
    const agrees = (cell: string, k: number): boolean =>
      cell === '' || (figure().test(cell) && Math.abs(numberIn(cell) - (sums[k] ?? 0)) <= sumWithin * numberIn(cell));
    if (!cells.some((cell) => cell !== '') || !cells.every(agrees)) continue;
    out ??= [...lines];
    out[at] = `Total${line}`;
  }
  return out ?? lines;
}
