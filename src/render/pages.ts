import type { Answer, Fault } from '../answer/types.ts';
import { listed, paired } from './grid.ts';
import {
  drawAll,
  type Extent,
  type Format,
  type LineKind,
  type Piece,
  type PieceKind,
  type PieceOf,
  pieces,
} from './pieces.ts';

const text = (content: string): Piece[] => [{ kind: 'text', text: content }];

/** Where a text may be cut, the best first: lines, sentences, words; not between a figure and its unit. */
const cuts = [/\n+/g, /(?<=[.!?;]) +/g, /(?<!\d) +/g];

/** A text in two, cut near its middle between lines, sentences or words, inside a word only if it has but one. */
function halves(whole: string): readonly [string, string] {
  for (const cut of cuts) {
    let best: { at: number; end: number; far: number } | undefined;
    for (const { 0: found, index } of whole.matchAll(cut)) {
      const far = Math.abs(index - whole.length / 2);
      if (index > 0 && index + found.length < whole.length && far < (best?.far ?? whole.length / 3)) {
        best = { at: index, end: index + found.length, far };
      }
    }
    if (best) return [whole.slice(0, best.at), whole.slice(best.end)];
  }
  const space = whole.trim().search(/ /);
  if (space > 0) return [whole.trim().slice(0, space), whole.trim().slice(space + 1)];
  const points = [...whole];
  if (points.length < 2) throw new RangeError('pages: the limit leaves no room beside the caution');
  const middle = points.length >> 1;
  return [points.slice(0, middle).join(''), points.slice(middle).join('')];
}

const halve = <T>(all: readonly T[]): readonly [readonly T[], readonly T[]] => {
  const middle = Math.ceil(all.length / 2);
  return [all.slice(0, middle), all.slice(middle)];
};

const cutLine = (piece: PieceOf<LineKind | 'text'>): readonly Piece[] =>
  halves(piece.text).map((part) => ({ ...piece, text: part }));

/** Each kind in two of its kind, or as text that can be cut further. */
const split: { readonly [K in PieceKind]: (piece: PieceOf<K>) => readonly Piece[] } = {
  lead: cutLine,
  text: cutLine,
  assumption: cutLine,
  warning: (piece) => {
    const [first, rest] = halves(piece.text);
    return [{ ...piece, text: first }, ...text(rest)];
  },
  caution: cutLine,
  facts: ({ kind, rows }) =>
    rows.length > 1
      ? halve(rows).map((part) => ({ kind, rows: part }))
      : text(rows.map(({ label, value }) => paired(label, value)).join('\n')),
  table: (table) =>
    table.rows.length > 1
      ? halve(table.rows).map((rows) => ({ ...table, rows }))
      : text([table.caption, ...listed(table).map(({ name, cells }) => paired(name, cells))].join('\n').trim()),
  steps: ({ kind, steps, from }) => {
    if (steps.length < 2) return text(steps.map((step) => `${from}. ${step}`).join('\n'));
    const [first, rest] = halve(steps);
    return [
      { kind, steps: first, from },
      { kind, steps: rest, from: from + first.length },
    ];
  },
  list: ({ kind, title, items }) =>
    items.length > 1
      ? halve(items).map((part) => ({ kind, title, items: part }))
      : text([title, ...items].join('\n').trim()),
  picture: ({ alt }) => text(paired('Picture', alt)),
  file: ({ name, about }) => text(paired(`File ${name}`, about)),
  actions: ({ kind, actions }) =>
    actions.length > 1
      ? halve(actions).map((part) => ({ kind, actions: part }))
      : text(actions.map(({ label, request }) => paired(label, request)).join('\n')),
};

export interface PageLimit extends Extent {
  /** The most that one page may measure. */
  readonly max: number;
  /** In what the platform counts; UTF-16 units where nothing is said. */
  readonly measure?: (drawn: string) => number;
}

/**
 * The answer in pages of at most `max`. What fits on one page is one page; else the room of the caution and of the
 * page's number is set aside first, every page carries both, and what is too long is cut between rows or sentences.
 * Throws a `RangeError` where `max` leaves no room beside the caution: a page without it must not be.
 */
export function pages(said: Answer | Fault, format: Format, limit: PageLimit): readonly string[] {
  const { max, measure = (drawn: string) => drawn.length } = limit;
  const all = pieces(said, limit);
  const whole = drawAll(format, all);
  if (measure(whole) <= max) return [whole];

  const caution = all.filter(({ kind }) => kind === 'caution');
  const page = (packed: readonly Piece[], number: string) => drawAll(format, [...packed, ...caution, ...text(number)]);
  const fits = (packed: readonly Piece[]) => measure(page(packed, '(999/999)')) <= max;

  const packed: Piece[][] = [];
  let open: Piece[] = [];
  const waiting = all.filter(({ kind }) => kind !== 'caution').reverse();
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (fits([...open, next])) open.push(next);
    else if (open.length > 0 && fits([next])) {
      packed.push(open);
      open = [next];
    } else waiting.push(...[...(split[next.kind] as (piece: Piece) => readonly Piece[])(next)].reverse());
  }
  if (open.length > 0) packed.push(open);
  return packed.map((part, i) => page(part, `(${i + 1}/${packed.length})`));
}
