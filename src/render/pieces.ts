import type { Action, Answer, Block, BlockKind, Fault } from '../answer/types.ts';
import { inert, inertLine } from './inert.ts';

type Of<K extends BlockKind> = Extract<Block, { kind: K }>;

/** One of the lines that stand round the blocks of an answer. */
export type LineKind = 'lead' | 'assumption' | 'warning' | 'caution';

/** What a format draws: every kind of block, and the parts of an answer that are no blocks. Strings are inert. */
export type Piece =
  | Exclude<Block, Of<'steps'>>
  | (Of<'steps'> & { readonly from: number })
  | { [K in LineKind]: { readonly kind: K; readonly text: string } }[LineKind]
  | { readonly kind: 'actions'; readonly actions: readonly Action[] };

export type PieceKind = Piece['kind'];
export type PieceOf<K extends PieceKind> = Extract<Piece, { kind: K }>;

/** How a platform writes an answer. A kind of piece that is forgotten does not compile. */
export interface Format {
  readonly draw: { readonly [K in PieceKind]: (piece: PieceOf<K>) => string };
  /** What stands between two neighbours. */
  readonly gap: (before: Piece, after: Piece) => string;
}

const cleaned: { readonly [K in BlockKind]: (block: Of<K>) => Piece } = {
  text: ({ text }) => ({ kind: 'text', text: inert(text).trim() }),
  facts: ({ rows }) => ({
    kind: 'facts',
    rows: rows.map(({ label, value }) => ({ label: inertLine(label), value: inertLine(value) })),
  }),
  table: ({ caption, columns, rows }) => ({
    kind: 'table',
    caption: inertLine(caption),
    columns: columns.map(({ title, align }) => ({ title: inertLine(title), align })),
    rows: rows.map((row) => row.map(inertLine)),
  }),
  steps: ({ steps }) => ({ kind: 'steps', from: 1, steps: steps.map(inertLine) }),
  list: ({ title, items }) => ({ kind: 'list', title: inertLine(title), items: items.map(inertLine) }),
  picture: ({ picture, alt }) => ({ kind: 'picture', picture, alt: inertLine(alt) }),
  file: ({ about, ...file }) => ({ ...file, about: inertLine(about) }),
};

const clean = (block: Block): Piece => (cleaned[block.kind] as (block: Block) => Piece)(block);

const lines = (kind: LineKind, texts: readonly string[]): Piece[] =>
  texts.map((text) => ({ kind, text: inert(text).trim() }));

const offered = (actions: readonly Action[]): Piece[] =>
  actions.length === 0
    ? []
    : [
        {
          kind: 'actions',
          actions: actions.map(({ label, request }) => ({ label: inertLine(label), request: inertLine(request) })),
        },
      ];

export interface Extent {
  readonly details: boolean;
  /** Those that are left to say where others stand on buttons; else all there are. */
  readonly offers?: readonly Action[];
}

/** What a person can do next with one word; an answer to what is asked back is a step like any other. */
export const offersOf = (said: Answer | Fault): readonly Action[] =>
  'lead' in said ? said.actions : said.candidates.map((candidate) => ({ label: candidate, request: candidate }));

/**
 * The parts of an answer or a fault in the order in which every platform shows them: what to know, what was taken,
 * the caution close to its figures, then what else there is. `title` is for places that have a slot for one.
 */
export function pieces(said: Answer | Fault, { details, offers = offersOf(said) }: Extent): readonly Piece[] {
  if (!('lead' in said)) {
    return [
      ...lines('lead', [said.message]),
      ...(said.hint.trim() === '' ? [] : [clean({ kind: 'text', text: said.hint })]),
      ...lines('caution', said.caution),
      ...offered(offers),
    ];
  }
  return [
    ...lines('lead', [said.lead]),
    ...said.body.map(clean),
    ...lines('assumption', said.assumptions),
    ...lines('warning', said.warnings),
    ...lines('caution', said.caution),
    ...(details ? said.details.map(clean) : []),
    ...offered(details ? offers.filter(({ request }) => request !== 'details') : offers),
  ];
}

/** One piece in a format. The cast joins a kind with its own function, which TypeScript cannot follow in a union. */
const draw = (format: Format, piece: Piece): string => (format.draw[piece.kind] as (piece: Piece) => string)(piece);

/** All pieces; one that draws nothing leaves no gap. */
export function drawAll(format: Format, all: readonly Piece[]): string {
  let text = '';
  let before: Piece | undefined;
  for (const piece of all) {
    const drawn = draw(format, piece);
    if (drawn === '') continue;
    text += before ? format.gap(before, piece) + drawn : drawn;
    before = piece;
  }
  return text;
}
