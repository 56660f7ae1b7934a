import { jsonLines } from './json.ts';
import { underNames } from './named-columns.ts';
import { pattern } from './pattern.ts';
import { arrowColumns, commaRows, namedSums, pairedColumns, upright } from './sideways.ts';
import { unwrap } from './wrapped.ts';

/** Turns what looks like a table, a quote or a list into plain lines whose cells are parted by tabs. */
export interface LaidOut {
  readonly text: string;
  readonly quoted: boolean;
}

/** Cells of a comma-separated line, quotes removed; null where a quote stays open. */
export function csvCells(line: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let inQuotes = false;
  for (const char of line) {
    if (char === '"') inQuotes = !inQuotes;
    else if (char === separator && !inQuotes) {
      cells.push(cell.trim());
      cell = '';
    } else cell += char;
  }
  cells.push(cell.trim());
  return cells;
}

/** A line of short cells rather than a sentence or a figure with a decimal comma. */
function mayBeRow(line: string, separator: string): boolean {
  if (line.length > 300 || !line.includes(separator) || line.includes('\t')) return false;
  if (separator === ',' && ((line.includes(', ') && !line.includes('"')) || !/(?<!\d),|,(?!\d)/.test(line)))
    return false;
  return !/\.\s+[A-Z]/.test(line);
}

const none: ReadonlySet<number> = new Set();

/** Two or more neighbouring lines with one number of short cells each. */
function csvBlocks(lines: readonly string[], separator: string): ReadonlySet<number> {
  // commas also part figures (1,5) and clauses: ask for more of them
  const least = separator === ';' ? 2 : 3;
  if (lines.length < least) return none;
  const found = new Set<number>();
  for (let from = 0, to = 0; from < lines.length; from = to + 1) {
    to = from;
    while (mayBeRow(lines[to] ?? '', separator)) to++;
    if (to - from >= least) for (const k of blocksIn(lines.slice(from, to), separator, least)) found.add(from + k);
  }
  return found;
}

function blocksIn(lines: readonly string[], separator: string, least: number): Set<number> {
  const found = new Set<number>();
  const counts = lines.map((line) => csvCells(line, separator));
  const shaped = counts.map(
    (cells) => cells.length >= 2 && cells.length <= 9 && cells.every((cell) => cell.length <= 40),
  );
  let begin = 0;
  while (begin < lines.length) {
    if (!shaped[begin]) {
      begin++;
      continue;
    }
    let end = begin;
    const width = counts[begin]?.length ?? 0;
    while (end < lines.length && shaped[end] && counts[end]?.length === width) end++;
    const numeric = counts
      .slice(begin, end)
      .filter((cells) => cells.some((cell) => /\d/.test(cell)) && cells.some((cell) => /\p{L}{2}/u.test(cell))).length;
    if (end - begin >= least && numeric >= 2) for (let k = begin; k < end; k++) found.add(k);
    begin = Math.max(end, begin + 1);
  }
  return found;
}

/** "[21/01, 18:05] Jo: …": a line of a chat, and who wrote it. */
const chatLine = pattern(() => /^([ \t]*\[[^\]\n]*\d:\d\d[^\]\n]*\][ ]*)\p{L}[\p{L} .'’-]{0,24}:(?= )/u);
/** "12/05, 21:14 - Bea: …": the same as another program writes it. */
const chatStamp = pattern(
  () =>
    /^[ \t]*(\d{1,4}[./-]\d{1,2}(?:[./-]\d{2,4})?,? \d{1,2}:\d\d(?::\d\d)?(?: ?[ap]m)?) - \p{L}[\p{L} .'’-]{0,24}:(?= )/iu,
);

/** Lines of a table whose columns are parted by arrows, at the least. */
const leastArrows = 3;

const quoteMark = /^[ \t]*(?:>[ \t]?)+/;

export function layOut(input: string): LaidOut {
  const text = input.includes('{') ? jsonLines(input) : input;
  let quoted = false;
  const whole =
    text.includes('-\n') || text.includes('- \n') ? text.replace(/(?<=\p{Ll}{2})-[ ]?\n[ ]*(?=\p{Ll}{2})/gu, '') : text;
  const split = whole.split('\n');
  let lines = split;
  if (text.includes('>'))
    lines = lines.map((line) => {
      const plain = line.includes('>') ? line.replace(quoteMark, '') : line;
      if (plain !== line) quoted = true;
      return plain;
    });
  if (text.includes(' - ')) lines = lines.map((line) => line.replace(chatStamp(), '[$1]'));
  if (text.includes('[')) lines = lines.map((line) => line.replace(chatLine(), '$1'));
  if (lines.length > leastArrows && /•|[-=]>/.test(text)) lines = [...arrowColumns(lines)];
  if (lines.length > leastArrows && text.includes(' > '))
    lines = pairedColumns(lines).flatMap((line) => line.split('\n'));
  const rows = lines.length > 1 && text.includes(',') ? commaRows(lines) : lines;
  let celled = rows !== lines;
  if (lines.length > 1) lines = unwrap([...rows]);
  if (/```|~~~|[|_]|---|===/.test(text)) lines = lines.map(ruled).filter((line): line is string => line !== null);
  for (const separator of [';', ',']) {
    if (!text.includes(separator)) continue;
    const block = csvBlocks(lines, separator);
    for (const k of block) lines[k] = csvCells(lines[k] ?? '', separator).join('\t');
    celled ||= block.size > 0;
  }
  const laid = lines.some((line) => line.includes('\t')) ? namedSums(upright(underNames(lines))) : lines;
  let out = laid === split && !celled ? whole : laid.join('\n');
  if (out.includes('..') && /\.\.[ \t]*[lI]?\d/.test(out))
    out = out
      .replace(/(\p{L}|\)|\p{L}\d)\.?[ ]?\.{2,}[ \t]*(?=[lI]?\d)/gu, '$1: ')
      .replace(/%[ ]*\.{2,}[ \t]*(?=\d)/g, '% ');
  // the longest name of a list leaves room for one dot
  if (/ \.[ \t]/.test(out)) out = out.replace(/(\p{L}|\)) \.[ \t]+(?=\d[\d.,]*[ ]?\p{L}{0,6}[ ]*$)/gmu, '$1: ');
  if (out.includes('. . ')) out = out.replace(/(\p{L}|\p{L}\d|\))[ ]*(?:\.[ ]+){2,}\.?[ ]*(?=\d)/gu, '$1: ');
  if (out.includes('#')) out = out.replace(/^[ ]*#{1,6}[ ]+(?=\p{L})/gmu, '');
  if (/[*_`]/.test(out))
    out = out.replace(/\*\*|__|`/g, '').replace(/(^|[\s(])[*_](\S[^*_\n]{0,80}?\S|\S)[*_](?=[\s).,:;!?]|$)/gm, '$1$2');
  return { text: out, quoted };
}

/** A row of a Markdown table as cells; null for a code fence or the rule under a heading row. */
function ruled(line: string): string | null {
  if (!line.includes('|') && !/^\s*[`~:+=_-]/.test(line)) return line;
  const trimmed = line.trim();
  if (/^(```|~~~)/.test(trimmed)) return null;
  if (/^[\s|:+=_-]{3,}$/.test(trimmed) && /[-=_]/.test(trimmed))
    return trimmed.includes('|') || trimmed.includes('+') ? null : '';
  if (/^\|.*\|$/.test(trimmed) || trimmed.split('|').length > 2 || /\S\s\|\s\S/.test(trimmed))
    // "   | 100 % | 1200 g": bars that only part cells leave the first one empty
    return (/^\s+\|.*[^|\s]\s*$/.test(line) ? trimmed : trimmed.replace(/^\||\|$/g, '')).replace(
      /[ \t]*\|[ \t]*/g,
      '\t',
    );
  return line;
}
