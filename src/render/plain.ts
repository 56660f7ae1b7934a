import type { Answer, Fault } from '../answer/types.ts';
import { grid, listed, paired } from './grid.ts';
import { drawAll, type Extent, type Format, type Piece, type PieceKind, pieces } from './pieces.ts';

/** A phone held upright shows about this many monospaced columns. */
const narrow = 44;

/** What stands apart from its neighbours by an empty line. */
const apart: ReadonlySet<PieceKind> = new Set(['table', 'steps', 'list', 'picture']);

/** One line end, or two around what stands apart and at the border between cautions and the rest. */
export const gap = (before: Piece, after: Piece): string =>
  apart.has(before.kind) || apart.has(after.kind) || (before.kind === 'caution') !== (after.kind === 'caution')
    ? '\n\n'
    : '\n';

const lines = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n');

/** Plain text: the console, the `text` of JSON, the fallback of every chat. */
export const plain: Format = {
  gap,
  draw: {
    lead: ({ text }) => text,
    text: ({ text }) => text,
    facts: ({ rows }) => lines(rows.map(({ label, value }) => paired(label, value))),
    table: (table) =>
      lines([table.caption, ...(grid(table, narrow) ?? listed(table).map(({ name, cells }) => paired(name, cells)))]),
    steps: ({ steps, from }) => lines(steps.map((step, i) => `${from + i}. ${step}`)),
    list: ({ title, items }) => lines([title, ...items.map((item) => `- ${item}`)]),
    picture: ({ alt }) => paired('Picture', alt),
    file: ({ name, about }) => paired(`File ${name}`, about),
    assumption: ({ text }) => text,
    warning: ({ text }) => paired('Mind', text),
    caution: ({ text }) => text,
    actions: ({ actions }) => `→ ${actions.map(({ label, request }) => offer(label, request)).join(' · ')}`,
  },
};

/** A next step as the words to type, after what it is for where those differ. */
const offer = (label: string, request: string): string =>
  label.toLowerCase() === request.toLowerCase() ? request : `${label} (${request})`;

export const renderPlain = (said: Answer | Fault, extent: Extent): string => drawAll(plain, pieces(said, extent));
