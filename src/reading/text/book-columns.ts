/** A sheet kept for the books: its columns of batch numbers, prices and INCI names say nothing of what is in the pot. */
import { csvCells } from './layout.ts';

/** What was left out, and why it is none of the recipe. */
export interface Aside {
  readonly text: string;
  readonly why: string;
}

const ofBatches = 'a column of batch numbers';
const kinds: readonly (readonly [RegExp, string])[] = [
  [/^(?:batch|lot|charge)(?: ?(?:no\.?|nr\.?|#|number))?$/i, ofBatches],
  [
    /^(?:eur|usd|gbp|chf|[€$£])(?: ?\/ ?\p{L}+)?$|^(?:unit |total |supplier )?(?:price|cost|value)s?\b/iu,
    'a column of prices',
  ],
  [/^inci(?: names?)?$/i, 'a column of INCI names'],
];
const named = /^(?:oils?|fats?|names?|ingredients?|materials?|desc(?:ription)?|items?|products?|articles?)$/i;
const weighed = /^(?:g|gr|grams?|kg|oz|amounts?|qty|quantity|weights?|wt)\b/i;
const mayHead = /\b(?:inci|batch|lot|charge)\b/i;

const leastRows = 3;

interface Column {
  readonly at: number;
  readonly why: string;
  readonly cells: string[];
}

/** What of a sheet is for the books alone. */
const columnsOf = (head: readonly string[], rows: readonly (readonly string[])[]): readonly Column[] =>
  head.flatMap((title, at) => {
    const why = kinds.find(([pattern]) => pattern.test(title))?.[1];
    return why ? [{ at, why, cells: rows.map((row) => row[at] ?? '') }] : [];
  });

/** The rows are of several batches, and more than one is of one of them. */
function isMixed({ why, cells }: Column): boolean {
  const numbers = cells.filter((cell) => /\d/.test(cell));
  const batches = new Set(numbers).size;
  return why === ofBatches && batches > 1 && batches < numbers.length;
}

/** The post without such columns; `told`: what stood in them. */
export function withoutBooks(post: string): {
  readonly text: string;
  readonly told: readonly Aside[];
  readonly mixed: boolean;
} {
  const nothing = { text: post, told: [], mixed: false };
  if (!mayHead.test(post)) return nothing;
  const lines = post.split('\n');
  const separator = post.includes('\t') ? '\t' : post.includes(';') ? ';' : ',';
  const cellsOf = (line: string): readonly string[] => csvCells(line, separator);
  const first = lines.findIndex((line) => {
    const cells = mayHead.test(line) ? cellsOf(line) : [];
    return cells.some((cell) => named.test(cell)) && cells.some((cell) => weighed.test(cell));
  });
  const head = cellsOf(lines[first] ?? '');
  const rows: (readonly string[])[] = [];
  for (let k = first + 1; first >= 0 && cellsOf(lines[k] ?? '').length === head.length; k++)
    rows.push(cellsOf(lines[k] ?? ''));
  if (rows.length < leastRows) return nothing;
  const columns = columnsOf(head, rows);
  if (columns.some(isMixed)) return { ...nothing, mixed: true };
  if (columns.length === 0) return nothing;
  // "TOTAL" may stand in the first column, whatever that is
  const isKept = (cell: string, at: number): boolean =>
    !columns.some((column) => column.at === at) || (at === 0 && /^[^\d\n]+$/.test(cell) && cell !== head[0]);
  const kept = [head, ...rows].map((cells) => cells.filter(isKept).join('\t'));
  return {
    text: lines.toSpliced(first, kept.length, ...kept).join('\n'),
    told: columns
      .filter(({ cells }) => cells.some((cell) => /\d/.test(cell)))
      .map(({ at, cells, why }) => ({ text: [head[at], ...cells].join(' '), why })),
    mixed: false,
  };
}
