/**
 * Tables with two columns of weights, of which one is meant: "single | double", "printed g | mine g". The one that the
 * post says it weighed or wants to know about is taken, the figures of the other are set aside.
 */
import { hasTab, headCells, isTab, linesOf, unitWord } from './columns.ts';
import type { Lexicon } from './lexicon.ts';
import type { PutRight } from './put-right.ts';
import type { Prim } from './scan.ts';
import { asAside, type Token } from './tokens.ts';

interface Column {
  readonly head: readonly string[];
  /** Tokens of its figures, by row. */
  readonly cells: ReadonlyMap<number, number>;
}

const isWeight = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && (token.quantity.dim === 'bare' || token.quantity.dim === 'mass');

/** Heads of columns that hold no second weight. */
const others =
  /^(?:%|percent|pct|share|part|parts|price|cost|eur|usd|gbp|date|no|nr|step|lot|sap|temp|factor|\$|£|€|#)$/;
/** Words of a head that do not tell it from another. */
const idle = /^(?:the|in|of|g|gr|grams?|gms?|kg|oz|ounces?|lbs?|pounds?|ml|weight|weights|amount|amounts|column|col)$/;

/** What was done with a column, or is asked of it; and what a column is called behind its name. */
const verbs =
  '(?:check|judge|look at|go by|going by|pour(?:ed)?|weigh(?:ed)?|us(?:e|ed|ing)|made|make|making|took|take|want|need|mean|meant|follow(?:ed)?|about|ignore|not|forget|skip)';
const nouns = '(?:column|col|one|version|numbers?|figures?|amounts?|batch|size|recipe|list|side)';
const kinds = '(?:recipe|column|batch|version|option)';

/** The words of a sentence speak of the column under this head. */
function speaksOf(word: string): RegExp {
  const own = word.replace(/\W/g, '');
  const near = own.length > 2 ? `|\\b${verbs}\\b(?: \\S+){0,4} ${own}\\b|\\b${own} ${nouns}\\b` : '';
  const mine = /^(?:mine|my|me)$/.test(own) ? `|\\bmine\\b|\\bmy ${nouns}\\b` : '';
  return new RegExp(`\\b${kinds} ${own}\\b${near}${mine}`);
}

const refused = /\b(?:ignore|not|never|instead of|rather than|forget|skip|don'?t)\b/;
const places: readonly (readonly [RegExp, (count: number) => number])[] = [
  [/\b(?:left|first|1st)(?: hand)?\s+(?:column|one|numbers?|figures?|side|amounts?|col|list)\b/, () => 0],
  [/\b(?:right(?: hand)?|last)\s+(?:column|one|numbers?|figures?|side|amounts?|col|list)\b/, (count) => count - 1],
  [/\b(?:second|2nd)\s+(?:column|one|numbers?|figures?|amounts?|col|list)\b/, () => 1],
  [/\b(?:third|3rd)\s+(?:column|one|numbers?|figures?|amounts?|col|list)\b/, () => 2],
];
/** What was weighed in fact, and what was only to be. */
const done = /^(?:actual|actually|weighed|used|real|really|poured|mine|today|did|scales?)$/;
const planned = /^(?:plan|planned|printed|recipe|target|original|book|calculated|theory|theirs|should|wanted|old)$/;

/** Columns of weights under this head, and the line behind the table. */
function columnsUnder(
  tokens: readonly Token[],
  at: number,
  lexicon: Lexicon,
): { readonly columns: readonly Column[]; readonly end: number } | null {
  const lines = linesOf(tokens);
  const head = lines[at];
  if (!head || headCells(tokens, head) < 3) return null;
  const heads: { words: string[]; unit: string | null }[] = [{ words: [], unit: null }];
  let from = head.from;
  for (let k = head.from; k <= head.to; k++) {
    const token = tokens[k];
    const last = heads.at(-1);
    if (!token || !last) break;
    if (k === head.to || isTab(token)) {
      last.unit = unitWord(tokens, lexicon, { from, to: k });
      from = k + 1;
      if (k < head.to) heads.push({ words: [], unit: null });
    } else if (token.t === 'word' || token.t === 'name' || token.t === 'sign')
      last.words.push(token.text.toLowerCase());
  }
  const cells = heads.map(() => new Map<number, number>());
  let end = at + 1;
  for (let line = lines[end]; line && line.to > line.from; line = lines[++end]) {
    let cell = 0;
    for (let k = line.from; k < line.to; k++) {
      if (isTab(tokens[k])) cell++;
      else if (isWeight(tokens[k])) cells[cell]?.set(end, k);
    }
    if (cell === 0) break;
  }
  const columns = heads.flatMap(({ words, unit }, k) => {
    const own = cells[k] ?? new Map<number, number>();
    const weighs = own.size >= 2 && !words.some((word) => others.test(word));
    return weighs ? [{ head: words.filter((word) => !idle.test(word) && /\w/.test(word)), unit, cells: own }] : [];
  });
  const [first] = columns;
  const isShared = (word: string): boolean => columns.every(({ head: words }) => words.includes(word));
  // grams beside ounces are one amount said twice
  if (columns.length < 2 || !first || columns.some(({ unit }) => unit !== first.unit)) return null;
  return {
    columns: columns.map((column) => ({ ...column, head: column.head.filter((word) => !isShared(word)) })),
    end,
  };
}

/** Which of the columns the words around the table mean; null where they do not tell. */
function meantBy(columns: readonly Column[], around: readonly string[]): number | null {
  const votes = columns.map(() => 0);
  const heads = columns.map(({ head }) => head.map(speaksOf));
  for (const sentence of around) {
    const named = new Set<number>();
    heads.forEach((patterns, k) => {
      if (patterns.some((pattern) => pattern.test(sentence))) named.add(k);
    });
    for (const [pattern, place] of places) if (pattern.test(sentence)) named.add(place(columns.length));
    const [only] = named;
    // "left number = the recipe as printed, right number = mine"
    if (named.size !== 1 || only === undefined) continue;
    votes[only] = (votes[only] ?? 0) + (refused.test(sentence) ? -1 : 1);
  }
  const favoured = votes.flatMap((count, k) => (count > 0 ? [k] : []));
  if (favoured.length === 1) return favoured[0] ?? null;
  if (favoured.length > 1) return null;
  const left = votes.flatMap((count, k) => (count === 0 ? [k] : []));
  if (left.length === 1) return left[0] ?? null;
  const did = columns.flatMap(({ head }, k) => (head.some((word) => done.test(word)) ? [k] : []));
  const [only] = did;
  const rest = columns.every(({ head }, k) => k === only || head.some((word) => planned.test(word)));
  return did.length === 1 && only !== undefined && rest ? only : null;
}

/** The post's sentences outside of its tables, in lower case. */
function sentencesAround(tokens: readonly Token[], prims: readonly Prim[]): readonly string[] {
  const told = linesOf(tokens).flatMap(({ from, to }) => {
    const line = tokens.slice(from, to);
    if (line.some(isTab)) return [];
    const [first, last] = [line[0], line.at(-1)];
    if (!first || !last) return [];
    return prims
      .slice(first.from, last.to)
      .map(({ text }) => text)
      .concat('.');
  });
  return told.join(' ').split(/ [.!?;] /);
}

/** The tokens with the figures of all columns but the one that is meant set aside, and what the answer says of it. */
export function oneOfTwins(
  tokens: readonly Token[],
  prims: readonly Prim[],
  lexicon: Lexicon,
): { readonly tokens: readonly Token[]; readonly told: readonly PutRight[] } {
  if (!hasTab(tokens)) return { tokens, told: [] };
  let out: Token[] | null = null;
  const told: PutRight[] = [];
  let around: readonly string[] | null = null;
  const lines = linesOf(tokens);
  for (let at = 0; at < lines.length; at++) {
    const found = columnsUnder(tokens, at, lexicon);
    if (!found) continue;
    const { columns, end } = found;
    around ??= sentencesAround(tokens, prims);
    const taken = meantBy(columns, around);
    const column = taken === null ? undefined : columns[taken];
    if (!column) continue;
    out ??= [...tokens];
    for (const other of columns) {
      if (other === column) continue;
      for (const k of other.cells.values()) {
        const token = out[k];
        if (token?.t === 'quantity') out[k] = asAside(token, 'of another column');
      }
    }
    const from = lines[at]?.from ?? 0;
    const name = column.head.length > 0 ? `"${column.head.join(' ')}"` : `${(taken ?? 0) + 1}`;
    told.push({ text: `I took column ${name} of the table, as the post says.`, gone: [], from, to: from });
    at = end - 1;
  }
  return { tokens: out ?? tokens, told };
}
