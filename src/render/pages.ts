import type { Answer, Fault } from '../answer/types.ts';
import { listed, paired } from './grid.ts';
import { html } from './html.ts';
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
import { plain } from './plain.ts';

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

/**
 * The parts of an answer, drawn in packs that each fit. Where the whole does not, the room of the caution and of the
 * pack's number is set aside first, every pack carries both, and what is too long is cut between rows or sentences.
 * Throws a `RangeError` where there is no room beside the caution: a pack without it must not be.
 */
function packs<T>(
  all: readonly Piece[],
  draw: (packed: readonly Piece[]) => T,
  fits: (drawn: T) => boolean,
): readonly T[] {
  const drawn = draw(all);
  if (fits(drawn)) return [drawn];
  const caution = all.filter(({ kind }) => kind === 'caution');
  const whole = (packed: readonly Piece[], number: string) => draw([...packed, ...caution, ...text(number)]);
  const fitsWhole = (packed: readonly Piece[]) => fits(whole(packed, '(999/999)'));

  const packed: Piece[][] = [];
  let open: Piece[] = [];
  const waiting = all.filter(({ kind }) => kind !== 'caution').reverse();
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (fitsWhole([...open, next])) open.push(next);
    else if (open.length > 0 && fitsWhole([next])) {
      packed.push(open);
      open = [next];
    } else waiting.push(...[...(split[next.kind] as (piece: Piece) => readonly Piece[])(next)].reverse());
  }
  if (open.length > 0) packed.push(open);
  return packed.map((part, i) => whole(part, `(${i + 1}/${packed.length})`));
}

export interface PageLimit extends Extent {
  /** The most that one page may measure. */
  readonly max: number;
  /** In what the platform counts; UTF-16 units where nothing is said. */
  readonly measure?: (drawn: string) => number;
}

/** The answer in pages of at most `max`, each with the whole caution; a `RangeError` where that leaves no room. */
export function pages(said: Answer | Fault, format: Format, limit: PageLimit): readonly string[] {
  const { max, measure = (drawn: string) => drawn.length } = limit;
  const draw = (packed: readonly Piece[]) => drawAll(format, packed);
  return packs(pieces(said, limit), draw, (drawn) => measure(drawn) <= max);
}

/** A page for platforms that send a text twice, plain and as HTML: both say the same. */
export interface TwofoldPage {
  readonly plain: string;
  readonly html: string;
}

/** `max` is of both together, in bytes of UTF-8. */
export function twofoldPages(said: Answer | Fault, limit: Omit<PageLimit, 'measure'>): readonly TwofoldPage[] {
  const draw = (packed: readonly Piece[]) => ({ plain: drawAll(plain, packed), html: drawAll(html, packed) });
  const size = (drawn: TwofoldPage) => Buffer.byteLength(drawn.plain) + Buffer.byteLength(drawn.html);
  return packs(pieces(said, limit), draw, (drawn) => size(drawn) <= limit.max);
}
