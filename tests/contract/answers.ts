// Arbitrary answers and faults: every kind of block, and strings that try to be more than text.
import * as fc from 'fast-check';
import type { Answer, Block, BlockKind, Fault, Picture } from '../../src/index.ts';

const hostile = fc.constantFrom(
  '@everyone',
  '@here',
  '<@123456789012345678>',
  '<@&42>',
  '<#77>',
  '</check:1>',
  '<:soap:88>',
  '<t:1700000000:R>',
  '@room',
  '@ada:example.org',
  '[certificate](https://example.org/1)',
  '[a](<https://example.org/2>)',
  '<https://example.org/3>',
  'https://example.org/a_b*c_d?x=1',
  'https://example.org/sv-210',
  '**b**',
  '__u__',
  '~~s~~',
  '||x||',
  '`c`',
  '```\ncode 7\n```',
  '``',
  '# 1 heading',
  '-# 2 small',
  '> quoted 3',
  '>>> quoted 4',
  '- 5',
  '1. 450 g',
  '2) 225 g',
  '\\',
  '\\*6\\*',
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(2)>',
  '<a href="javascript:3">x</a>',
  '</td></table><h1>4</h1>',
  '&lt;b&gt;5',
  '&#x41;',
  '"\'>',
  '\u202e054 g\u202c',
  '\u2066450 g\u2069',
  'زيت الزيتون 450 g',
  'שמן 97 g',
  '\x1b[31m66 g\x1b[0m',
  '\x1b]0;title\x07',
  '\r\n8 g\u2028 9 g',
  '\u200b',
  '\ud800',
  '👩‍🔬 1½',
  '油 500 g',
  '12\u202f345 g',
  '¯\\_(ツ)_/¯ 3',
  '*',
  '_',
  '|',
  '→ 1 · 2',
);

const string = fc
  .array(
    fc.oneof(
      { weight: 3, arbitrary: fc.constantFrom('olive oil', '450 g', '60 %', '8.8', 'sodium hydroxide (NaOH)', '0.5') },
      { weight: 3, arbitrary: hostile },
      { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 12 }) },
    ),
    { minLength: 0, maxLength: 5 },
  )
  .map((parts) => parts.join(' '));

const said = string.map((text) => `Say 1 ${text}`);
const few = <T>(arbitrary: fc.Arbitrary<T>, most = 4) => fc.array(arbitrary, { maxLength: most });

/** What the data files hold: printed characters on one line. */
export const dataLine = fc
  .tuple(
    fc.constantFrom('Goggles, gloves, long sleeves', 'Lye into water, never the other way', 'Hot: 93 °C at most'),
    fc.stringMatching(/^[ -~°–’…]{0,40}$/),
  )
  .map(([first, rest]) => `${first}. ${rest}`.replace(/ +/g, ' ').trim());

const value = fc.oneof(fc.integer({ min: -50, max: 200 }), fc.double({ min: -1e6, max: 1e6, noNaN: true }));

const picture: fc.Arbitrary<Picture> = fc.record({
  title: string,
  x: fc.record({ label: string, unit: fc.constantFrom('min', '') }),
  y: fc.record({ label: string, unit: fc.constantFrom('°C', '%', '') }),
  kind: fc.constantFrom('curve', 'bars'),
  series: few(
    fc.record({
      name: string,
      points: few(
        fc.tuple(fc.oneof(value, string), value, fc.boolean()).map(([x, y, band]) => ({
          x,
          y,
          ...(band ? { low: y - 1, high: y + 2 } : {}),
        })),
        6,
      ),
    }),
    3,
  ),
  marks: few(fc.record({ label: string, y: value }), 2),
});

const blocks: { readonly [K in BlockKind]: fc.Arbitrary<Extract<Block, { kind: K }>> } = {
  text: fc.record({ kind: fc.constant('text'), text: string }),
  facts: fc.record({ kind: fc.constant('facts'), rows: few(fc.record({ label: string, value: string })) }),
  table: fc.record({
    kind: fc.constant('table'),
    caption: string,
    columns: few(fc.record({ title: string, align: fc.constantFrom('left', 'right') })),
    rows: few(few(string)),
  }),
  steps: fc.record({ kind: fc.constant('steps'), steps: few(string) }),
  list: fc.record({ kind: fc.constant('list'), title: string, items: few(string) }),
  picture: fc.record({ kind: fc.constant('picture'), picture, alt: string }),
  file: fc.record({
    kind: fc.constant('file'),
    name: fc.stringMatching(/^[a-z0-9][a-z0-9.-]{0,20}$/),
    type: fc.constantFrom('text/csv', 'text/html'),
    text: string,
    about: string,
  }),
};

const block: fc.Arbitrary<Block> = fc.oneof(...Object.values(blocks));

export const answer: fc.Arbitrary<Answer> = fc.record({
  command: fc.constant('check'),
  title: string,
  lead: said,
  body: few(block),
  details: few(block),
  assumptions: few(said),
  warnings: few(said),
  caution: few(fc.oneof(dataLine, said), 3),
  actions: few(fc.record({ label: said, request: said })),
  result: fc.constant({ verdict: 'usual' }),
});

export const fault: fc.Arbitrary<Fault> = fc.record({
  code: fc.constantFrom('unclear', 'impossible', 'refused', 'too-long', 'unknown', 'failed'),
  message: said,
  hint: string,
  candidates: few(said),
  caution: few(dataLine, 2),
});

type Strings = { readonly [K in BlockKind]: (block: Extract<Block, { kind: K }>) => readonly string[] };
const inBlock: Strings = {
  text: ({ text }) => [text],
  facts: ({ rows }) => rows.flatMap(({ label, value }) => [label, value]),
  table: ({ caption, columns, rows }) => [caption, ...columns.map(({ title }) => title), ...rows.flat()],
  steps: ({ steps }) => steps,
  list: ({ title, items }) => [title, ...items],
  picture: ({ alt }) => [alt],
  file: ({ name, about }) => [name, about],
};

/** Every string that a rendering must show. */
export function stringsOf(all: Answer | Fault, details: boolean): readonly string[] {
  if (!('lead' in all)) return [all.message, all.hint, ...all.candidates, ...all.caution];
  const of = (block: Block) => (inBlock[block.kind] as (block: Block) => readonly string[])(block);
  return [
    all.lead,
    ...all.body.flatMap(of),
    ...(details ? all.details.flatMap(of) : []),
    ...all.assumptions,
    ...all.warnings,
    ...all.caution,
    ...all.actions.map(({ request }) => request),
  ];
}

/** Without its spaces and what cannot be seen. */
export const seen = (text: string): string => text.toWellFormed().replace(/[\p{Cc}\p{Cf}\p{Z}]/gu, '');

/**
 * Whether pages, as `seen`, show a text. A cut between pages may part it, between words or, where a word is longer than
 * a page, inside one: each cut once, so that no word is in more pieces than there are pages.
 */
export const shows = (pages: string, text: string, count: number): boolean =>
  pages.includes(seen(text)) || text.split(/\s+/).every((word) => piecesOf(pages, seen(word)) <= count);

/** In how many pieces a word stands there, each as long as can be; without end where some of it stands nowhere. */
function piecesOf(pages: string, word: string): number {
  let count = 0;
  for (let rest = word; rest !== ''; count += 1) {
    let [found, missed] = [0, rest.length + 1];
    while (missed - found > 1) {
      const middle = (found + missed) >> 1;
      if (pages.includes(rest.slice(0, middle))) found = middle;
      else missed = middle;
    }
    if (found === 0) return Number.POSITIVE_INFINITY;
    rest = rest.slice(found);
  }
  return count;
}
