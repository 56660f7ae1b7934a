import type { PieceOf } from './pieces.ts';

/** Latin letters, usual punctuation, arrows and signs of mathematics: one column each, and nothing else is asked of them. */
const plain = /^[ -~\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u202f\u2190-\u22ff]*$/;

/** Columns that a text takes in a monospaced font. */
export function columnsOf(text: string): number {
  if (plain.test(text)) return text.length;
  const wide =
    /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}\uff01-\uff60]/u;
  let columns = 0;
  for (const char of text) columns += /[\p{M}\p{Cf}]/u.test(char) ? 0 : wide.test(char) ? 2 : 1;
  return columns;
}

type Table = PieceOf<'table'>;

const header = ({ columns }: Table): readonly string[][] =>
  columns.some(({ title }) => title !== '') ? [columns.map(({ title }) => title)] : [];

/** A table aligned in monospaced columns, or nothing where that is wider than `limit` columns. */
export function grid(table: Table, limit: number): readonly string[] | undefined {
  const rows = [...header(table), ...table.rows];
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => Math.max(...rows.map((row) => columnsOf(row[i] ?? ''))));
  if (widths.reduce((sum, width) => sum + width, 2 * (count - 1)) > limit) return undefined;
  return rows.map((row) =>
    widths
      .map((width, i) => {
        const cell = row[i] ?? '';
        const fill = ' '.repeat(width - columnsOf(cell));
        return table.columns[i]?.align === 'right' ? fill + cell : cell + fill;
      })
      .join('  ')
      .trimEnd(),
  );
}

/** A table as one line a row, "name: a · b · c": what a narrow screen can show of a wide one. */
export function listed(table: Table): readonly { readonly name: string; readonly cells: string }[] {
  return [...header(table), ...table.rows].map(([name = '', ...cells]) => ({
    name,
    cells: cells.map((cell) => cell || '–').join(' · '),
  }));
}

/** "label: value", or the one of them there is. */
export const paired = (label: string, value: string): string => [label, value].filter((part) => part !== '').join(': ');
