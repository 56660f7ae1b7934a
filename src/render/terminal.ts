import type { Answer, Fault } from '../answer/types.ts';
import { columnsOf } from './grid.ts';
import { drawAll, type Extent, type Format, type PieceKind, type PieceOf, pieces } from './pieces.ts';
import { plain } from './plain.ts';
import { plot } from './plot.ts';

/** Select Graphic Rendition (ECMA-48, 8.3.117): what is set, and what sets it back. */
const styles: Partial<Record<PieceKind, readonly [number, number]>> = {
  lead: [1, 22],
  warning: [35, 39],
  caution: [31, 39],
  actions: [2, 22],
};

/** Columns in which a curve still looks like one. */
const widestPlot = 64;

/** Lines broken at spaces to fit the columns; a longer word stays whole, and so do a figure and its unit. */
export function wrap(text: string, columns: number): string {
  const out: string[] = [];
  for (const line of text.split('\n')) {
    if (columnsOf(line) <= columns) {
      out.push(line);
      continue;
    }
    let now: string[] = [];
    let taken = -1;
    for (const word of line.split(/(?<!\d) /)) {
      const more = 1 + columnsOf(word);
      if (now.length > 0 && taken + more > columns) {
        out.push(now.join(' '));
        now = [];
        taken = -1;
      }
      now.push(word);
      taken += more;
    }
    out.push(now.join(' '));
  }
  return out.join('\n');
}

/** Plain text for a terminal: wrapped between words, pictures in letters, and colour where that is wanted. */
function terminal(columns: number, colour: boolean): Format {
  const dress =
    <K extends PieceKind>(kind: K) =>
    (piece: PieceOf<K>): string => {
      const drawn = (plain.draw[kind] as (piece: PieceOf<K>) => string)(piece);
      const wrapped = wrap(drawn, columns);
      const style = styles[kind];
      return colour && style ? `\x1b[${style[0]}m${wrapped}\x1b[${style[1]}m` : wrapped;
    };
  return {
    gap: plain.gap,
    draw: {
      lead: dress('lead'),
      text: dress('text'),
      facts: dress('facts'),
      table: dress('table'),
      steps: dress('steps'),
      list: dress('list'),
      picture: (piece) => `${plot(piece.picture, Math.min(columns, widestPlot))}\n${dress('picture')(piece)}`,
      file: dress('file'),
      assumption: dress('assumption'),
      warning: dress('warning'),
      caution: dress('caution'),
      actions: dress('actions'),
    },
  };
}

export const renderTerminal = (
  said: Answer | Fault,
  { columns, colour, details }: Extent & { readonly columns: number; readonly colour: boolean },
): string => drawAll(terminal(columns, colour), pieces(said, { details }));
