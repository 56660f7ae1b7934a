import { unit } from '../../units/units.ts';
import type { Prim } from '../text/scan.ts';
import { keptLast } from '../words/kept.ts';
import type { Lexicon } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import { signal } from '../words/signal-words.ts';
import type { Signals } from '../words/signals.ts';
import { wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Figure, type Token } from '../words/tokens.ts';

/** What the heading of a table column or a section says about the bare figures under it. */
type Column =
  | { readonly unit: string }
  | 'percent'
  /** `whole`: whatever stands in the cell, not its bare figures alone. */
  | { readonly aside: string; readonly whole?: true }
  | 'amount'
  | null;

const percentHeads = /^(%|percent|percentage|pct|prozent|anteil|share|part|pourcentage|porcentaje|percentuale|rate)$/;
const counted = 'a number that only counts or names something';
const asideHeads: readonly (readonly [RegExp, string])[] = [
  [/^(price|cost|costs|preis|prix|precio|prezzo|eur|usd|gbp|£|\$|€|paid)$/, 'a price'],
  [/^(date|datum|fecha|data|bought|expiry|expires|exp|bb)$/, 'a date'],
  [/^(no|nr|pos|row|line|step|id|sku|lot|charge|batch|lote|lotto|supplier|item no|lieferant|code|ref|#)$/, counted],
  [/^(sap|sv|vz|iodine|iv|naoh factor|koh factor|factor|sap value)$/, 'a value out of a chart'],
  [/^(temp|temperature|melt)$/, 'a temperature'],
];

/** What is in the cupboard, where another column tells what goes in. */
const packHeads = /^(pack|packs|package|packaging|have|stock|available|bought|tub|container)$/;
const useHeads = /^(need|needed|use|used|required|recipe|weighed|weight|amount|qty|quantity)$/;

export interface Line {
  readonly from: number;
  readonly to: number;
}

export const linesOf = keptLast((tokens: readonly Token[]): readonly Line[] => {
  const lines: Line[] = [];
  let from = 0;
  for (let k = 0; k < tokens.length; k++) {
    if (tokens[k]?.t !== 'line') continue;
    lines.push({ from, to: k });
    from = k + 1;
  }
  lines.push({ from, to: tokens.length });
  return lines;
});

export const isTab = (token: Token | undefined): boolean => token?.t === 'sign' && token.text === '\t';

/** The post has a table, maybe. */
export function hasTab(tokens: readonly Token[]): boolean {
  for (const token of tokens) if (isTab(token)) return true;
  return false;
}

function cellsIn(tokens: readonly Token[], { from, to }: Line): number {
  let cells = 1;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (isTab(token)) cells++;
    else if (token?.t === 'quantity') cells += tabsIn(token);
  }
  return cells;
}

/** `500 | g`: a figure and its unit, each in its cell. */
const tabsIn = ({ quantity: { text } }: Figure): number => (text.includes('\t') ? text.split('\t').length - 1 : 0);

/**
 * Cells of a line that holds no amount, as a row of headings does: one alone where it has no tab, none with an amount.
 * "Share of the 900 g oils" is the heading of a column, too.
 */
function headCells(tokens: readonly Token[], line: Line): number {
  for (let k = line.from; k < line.to; k++)
    if (tokens[k]?.t === 'quantity' && ![k - 2, k - 1, k + 1].some((at) => isTotalFats(tokens[at]))) return 0;
  return cellsIn(tokens, line);
}

const isTotalFats = (token: Token | undefined): boolean =>
  token?.t === 'name' && token.meaning.kind === 'role' && token.meaning.id === 'total-fats';

function wordOf(token: Token): string | null {
  if (token.t === 'word' || token.t === 'sign') return token.text;
  return token.t === 'name' ? token.text.toLowerCase() : null;
}

/** The mass or volume unit that stands in these tokens without a figure, if any. */
export function unitWord(
  tokens: readonly Token[],
  lexicon: Lexicon,
  { from, to }: Line = { from: 0, to: tokens.length },
): string | null {
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    // a unit's name is a filler where no figure stands before it
    const hit = token?.t === 'word' && token.sort === 'filler' ? lexicon.units.next?.get(token.text)?.hit : null;
    const before = tokens[k - 1];
    // "how many ml is that"
    if (before?.t === 'word' && before.text === 'many') continue;
    if (hit && (unit(hit).dimension === 'mass' || unit(hit).dimension === 'volume')) return hit;
  }
  return null;
}

function columnsOf(cells: readonly (readonly Token[])[], lexicon: Lexicon): Column[] {
  const headWords = cells.map((cell) => cell.map(wordOf).filter((word): word is string => word !== null));
  const tellsUse = headWords.map(
    (words, k) => words.some((word) => useHeads.test(word)) || unitWord(cells[k] ?? [], lexicon) !== null,
  );
  return cells.map((cell, k): Column => {
    const words = headWords[k] ?? [];
    const found = unitWord(cell, lexicon);
    // "Batch B (g)" holds amounts
    for (const [pattern, reason] of asideHeads)
      if (words.some((word) => pattern.test(word)) && !(found && reason === counted))
        return reason === counted ? { aside: reason, whole: true } : { aside: reason };
    if (words.some((word) => packHeads.test(word)) && tellsUse.some((tells, at) => tells && at !== k))
      return { aside: packed, whole: true };
    if (words.some((word) => percentHeads.test(word))) return 'percent';
    if (found) return { unit: found };
    return words.length > 0 ? 'amount' : null;
  });
}

function cellsOf(tokens: readonly Token[], line: Line): Token[][] {
  const cells: Token[][] = [[]];
  for (let k = line.from; k < line.to; k++) {
    const token = tokens[k];
    if (!token) continue;
    if (isTab(token)) {
      cells.push([]);
    } else cells.at(-1)?.push(token);
  }
  return cells;
}

/** `quantity` as the heading over it has it. */
function under(column: Column, quantity: Quantity, wiped: boolean): Quantity | { aside: string } {
  // "Batch A" over weights
  const counts = column !== null && typeof column === 'object' && 'aside' in column && column.aside === counted;
  if (counts && quantity.dim === 'mass') return quantity;
  if (wiped && column !== null && typeof column === 'object' && 'aside' in column && column.whole) return column;
  if (column === null || column === 'amount' || quantity.dim !== 'bare') return quantity;
  if (column === 'percent')
    return {
      ...quantity,
      dim: 'percent',
      value: quantity.value / 100,
      other: quantity.other === null ? null : quantity.other / 100,
      upTo: quantity.upTo === null ? null : quantity.upTo / 100,
    };
  if ('aside' in column) return { aside: column.aside };
  return withUnit(quantity, column.unit);
}

/** Why the size of a pack is no amount. */
export const packed = 'the size of a vessel or a pack';

export function withUnit(quantity: Quantity, id: string): Quantity {
  const found = unit(id);
  const scale = (value: number | null): number | null => (value === null ? null : value * found.factor);
  return {
    ...quantity,
    dim: found.dimension as Quantity['dim'],
    value: quantity.value * found.factor,
    other: scale(quantity.other),
    upTo: scale(quantity.upTo),
    unit: found,
  };
}

/** Smaller units that count on from a larger one: `lb | oz` with `1 | 4` is a pound and four ounces. */
const countsOn: Readonly<Record<string, { readonly unit: string; readonly below: number }>> = {
  lb: { unit: 'oz', below: 16 },
  kg: { unit: 'g', below: 1000 },
};

/** Two neighbouring columns that hold one amount in two units: neither is the whole amount said again. */
function joinUnits(out: Token[], grid: readonly number[][], column: Column, next: Column, at: number): void {
  const unitOf = (one: Column): string => (one !== null && typeof one === 'object' && 'unit' in one ? one.unit : '');
  const smaller = countsOn[unitOf(column)];
  if (!smaller || smaller.unit !== unitOf(next)) return;
  const pairs = grid.flatMap((cells) => {
    const [a, b] = [out[cells[at] ?? -1], out[cells[at + 1] ?? -1]];
    return a?.t === 'quantity' && b?.t === 'quantity'
      ? [{ cell: cells[at] ?? -1, behind: cells[at + 1] ?? -1, a, b }]
      : [];
  });
  const factor = unit(smaller.unit).factor;
  const counting = pairs.every(
    ({ a, b }) =>
      Number.isInteger(a.quantity.value / unit(unitOf(column)).factor) && b.quantity.value < smaller.below * factor,
  );
  if (!counting) return;
  for (const { cell, behind, a, b } of pairs) {
    const quantity = {
      ...a.quantity,
      value: a.quantity.value + b.quantity.value,
      text: `${a.quantity.text} ${unitOf(column)} ${b.quantity.text} ${smaller.unit}`,
      numbers: [...a.quantity.numbers, ...b.quantity.numbers],
    };
    out[cell] = { ...a, quantity };
    out[behind] = { t: 'sign', from: b.from, to: b.to, text: '\t', sort: null };
  }
}

/** A cell of a line: where it stands in its line, in characters, and the figures in it. */
interface Cell {
  readonly begin: number;
  readonly end: number;
  readonly figures: readonly number[];
}

/** The cells of lines whose columns are parted by spaces alone; null where tabs or strokes part them. */
function spacedCells(tokens: readonly Token[], prims: readonly Prim[], { from, to }: Line): readonly Cell[] | null {
  const before = prims[(tokens[from]?.from ?? 0) - 1];
  const start = before ? before.at + before.raw.length : 0;
  const cells: { begin: number; end: number; figures: number[] }[] = [];
  let open: (typeof cells)[number] | null = null;
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    const [first, last] = [prims[token?.from ?? -1], prims[(token?.to ?? 0) - 1]];
    if (!token || !first || !last) continue;
    if (isTab(token)) {
      if (first.raw.includes('\t')) return null;
      open = null;
      continue;
    }
    if (!open || (token.t === 'quantity' && open.figures.length > 0)) {
      open = { begin: first.at - start, end: 0, figures: [] };
      cells.push(open);
    }
    open.end = last.at + last.raw.length - start;
    if (token.t === 'quantity') open.figures.push(k);
  }
  return cells;
}

/** How far two cells stand apart, in characters; negative where they overlap. */
const apart = (a: Cell, b: Cell): number => Math.max(a.begin, b.begin) - Math.min(a.end, b.end);

/** Which column each figure of a row stands in, by what it stands under. */
function columnsUnder(heads: readonly Cell[], row: readonly Cell[]): ReadonlyMap<number, number> {
  const nearest = row.map((cell) =>
    heads.reduce((best, head, k) => (apart(head, cell) < apart(heads[best] ?? head, cell) ? k : best), 0),
  );
  const found = new Map<number, number>();
  row.forEach((cell, k) => {
    const column = nearest[k] ?? 0;
    const head = heads[column];
    const rival = row.some(
      (other, n) =>
        n !== k && other.figures.length > 0 && nearest[n] === column && head && apart(head, other) < apart(head, cell),
    );
    if (!rival) for (const figure of cell.figures) found.set(figure, column);
  });
  return found;
}

const isWhole = (column: Column | undefined): boolean =>
  column !== null && typeof column === 'object' && 'whole' in column;

const isIngredient = (token: Token): boolean => token.t === 'name' && token.meaning.kind !== 'role';

/** Named, by a name that is known or another. */
const isCalled = (token: Token): boolean => isIngredient(token) || (token.t === 'word' && token.sort === 'unknown');

/** "Temp lye | 42": what a row is called that holds no weight, whatever it stands under. */
function isOfWarmth(tokens: readonly Token[], { from, to }: Line): boolean {
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (!token || isTab(token) || token.t === 'quantity') return false;
    if (token.t === 'name' && /^(?:temps?|temperatures?)$/i.test(token.text)) return true;
  }
  return false;
}

const isFilled = (cell: readonly Token[]): boolean => cell.length > 0;

/** Tables whose first row names its columns: gives their bare figures the unit, share or reason of the column. */
export function applyColumns(tokens: readonly Token[], lexicon: Lexicon, prims: readonly Prim[]): readonly Token[] {
  if (!hasTab(tokens)) return tokens;
  const out = [...tokens];
  const lines = linesOf(tokens);
  for (let k = 0; k < lines.length; k++) {
    const head = lines[k];
    if (!head || headCells(tokens, head) < 2) continue;
    const titles = cellsOf(tokens, head);
    const columns = columnsOf(titles, lexicon);
    if (!columns.some((column) => column !== null && column !== 'amount')) continue;
    const heads = spacedCells(tokens, prims, head);
    const places = titles.flatMap((cell, at) => (isFilled(cell) ? [at] : []));
    const anyWhole = columns.some(isWhole);
    const grid: number[][] = [];
    for (let row = k + 1; row < lines.length; row++) {
      const line = lines[row];
      if (!line || cellsIn(tokens, line) === 1) break;
      const isEven = cellsIn(tokens, line) === titles.length;
      const own = heads && !isEven ? spacedCells(tokens, prims, line) : null;
      const placed = heads && own ? columnsUnder(heads, own) : null;
      // "K-119" under "lot" names nothing, where the row names its ingredient elsewhere
      const wiped =
        isEven && anyWhole && cellsOf(tokens, line).some((one, at) => !isWhole(columns[at]) && one.some(isCalled));
      const warm = isOfWarmth(tokens, line);
      let cell = 0;
      const cells: number[] = [];
      for (let at = line.from; at < line.to; at++) {
        const token = tokens[at];
        if (!token) continue;
        if (isTab(token)) {
          cell++;
          continue;
        }
        if (wiped && isWhole(columns[cell]) && (token.t === 'word' || token.t === 'name' || token.t === 'sign'))
          out[at] = asFiller(token, 'only');
        if (token.t !== 'quantity') continue;
        const column = placed ? (places[placed.get(at) ?? -1] ?? -1) : cell;
        const of = columns[column] ?? null;
        const isWarmth = warm && token.quantity.dim === 'bare' && of !== null && typeof of === 'object' && 'unit' in of;
        const changed = isWarmth ? { aside: 'a temperature' } : under(of, token.quantity, wiped);
        if ('aside' in changed) out[at] = asAside(token, changed.aside);
        else {
          out[at] = changed === token.quantity ? token : { ...token, quantity: changed };
          if (column >= 0) cells[column] = at;
        }
        cell += tabsIn(token);
      }
      grid.push(cells);
    }
    columns.forEach((column, at) => {
      joinUnits(out, grid, column, columns[at + 1] ?? null, at);
    });
  }
  return out;
}

export interface HeadUnits {
  /** Token index → unit id that a heading gives to bare figures from there on. */
  readonly sections: readonly { readonly from: number; readonly unit: string }[];
  /** Said of the whole post: "all weights in grams". */
  readonly global: ReadonlySet<string>;
}

/** "I own no scale for grams, everything here is ounces unless it says pounds": the unit of all the rest. */
/** The unit that a word is, by its id. */
export const unitAt = (token: Token | undefined, lexicon: Lexicon): string | null =>
  token?.t === 'word' ? (lexicon.units.next?.get(token.text)?.hit ?? null) : null;

export const isEither = (token: Token | undefined): boolean =>
  (token?.t === 'word' && token.text === 'or') || (token?.t === 'sign' && token.text === '/');

function unitOfAll(line: readonly Token[], lexicon: Lexicon): string | null {
  const all = line.findIndex(
    (token) =>
      (token.t === 'word' || token.t === 'name') &&
      /^(everything|all|weights|amounts|figures|numbers)$/i.test(token.text),
  );
  for (let k = all + 1; all >= 0 && k - all <= 5; k++) {
    const token = line[k];
    const hit = token?.t === 'word' ? lexicon.units.next?.get(token.text)?.hit : null;
    // "amounts in g or oz?"
    if (hit)
      return unit(hit).dimension === 'mass' && !(isEither(line[k + 1]) && unitAt(line[k + 2], lexicon)) ? hit : null;
    if (token?.t === 'word' ? /^(not|but|no|or)$/.test(token.text) : token?.t !== 'name') return null;
  }
  return null;
}

const noUnits: ReadonlySet<string> = new Set();

/** Units that stand without a figure: in a heading of their own line, or said of the whole post. */
export function headUnits(tokens: readonly Token[], lexicon: Lexicon, { all, at: signs }: Signals): HeadUnits {
  if ((all & signal.unit) === 0) return { sections: [], global: noUnits };
  const sections: { from: number; unit: string }[] = [];
  const global = new Set<string>();
  const mayHead = ({ from, to }: Line): boolean => {
    for (let k = from; k < to; k++) if (((signs[k] ?? 0) & signal.unit) !== 0) return true;
    return false;
  };
  for (const line of linesOf(tokens)) {
    const found = mayHead(line) ? unitWord(tokens, lexicon, line) : null;
    if (!found) continue;
    const part = tokens.slice(line.from, line.to);
    const amounts = part.filter(
      (token) => token.t === 'quantity' && (token.quantity.dim === 'bare' || token.quantity.dim === 'mass'),
    ).length;
    // "grams   ounces" heads two columns, not a section
    const several = part.flatMap((token) => {
      const hit = token.t === 'word' ? lexicon.units.next?.get(token.text)?.hit : null;
      return hit && /^(?:mass|volume)$/.test(unit(hit).dimension) ? [hit] : [];
    });
    if (new Set(several).size > 1) {
      const all = unitOfAll(part, lexicon);
      if (all) global.add(all);
      continue;
    }
    const at = part.findIndex((token) => token.t === 'word' && lexicon.units.next?.get(token.text)?.hit === found);
    const before = part[at - 1];
    // "200 g to the kilo", "which makes the kilo"
    if (
      /^(?:kilo|kg|pound|ounce|stone|pint|quart|gallon|litre|liter)$/.test(wordAt(part, at)) &&
      /^(?:the|a|half|whole|full|every|each|per)$/.test(wordAt(part, at - 1))
    )
      continue;
    const marked =
      (before?.t === 'word' && /^(in|all|weights|weight|everything|amounts|both|by|measured)$/.test(before.text)) ||
      (before?.t === 'sign' && /^[([:_]$/.test(before.text)) ||
      (before?.t === 'name' && /^(in|weight|weights|amount|amounts|menge|gewicht)$/i.test(before.text));
    // "with the cup on the scale": a vessel
    if (/^cups?$/.test(wordAt(part, at)) && !marked && part.length > 2) continue;
    if (amounts === 0 && part.length <= 8 && (marked || part.length <= 2))
      sections.push({ from: line.from, unit: found });
    global.add(found);
  }
  return { sections, global };
}
