/**
 * Tables with two columns of weights, of which one is meant: "single | double", "printed g | mine g". The one that the
 * post says it weighed or wants to know about is taken, the figures of the other are set aside.
 */

import { isYear } from '../figures/counts.ts';
import type { PutRight } from '../taken-back/put-right.ts';
import type { Prim } from '../text/scan.ts';
import type { Lexicon } from '../words/lexicon.ts';
import { isMark, spoken, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { hasTab, isTab, type Line, linesOf, unitWord } from './columns.ts';

interface Column {
  /** Its place in the row. */
  readonly at: number;
  readonly head: readonly string[];
  /** Tokens of its figures, by row. */
  readonly cells: ReadonlyMap<number, number>;
}

const isWeight = (token: Token | undefined): boolean =>
  token?.t === 'quantity' && /^(?:bare|mass|volume)$/.test(token.quantity.dim);

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
  const near =
    own.length > 2
      ? `|\\b${verbs}\\b(?: \\S+){0,4} ${own}\\b|\\b${own}(?:d|ed)? ${nouns}\\b|\\b(?:ok|okay|right|alright|fine|good|safe|correct|enough|lye) for ${own}\\b`
      : '';
  const mine = /^(?:mine|my|me)$/.test(own) ? `|\\bmine\\b|\\bmy ${nouns}\\b` : '';
  const made = own === 'made' ? '|\\bas made\\b' : '';
  // "is the 2024 lye right?", "check the x3"
  const figured = /\d/.test(own) ? `|\\bthe ${own}\\b|\\b${verbs}\\b(?: \\S+){0,4} ${own}\\b` : '';
  return new RegExp(`\\b${kinds} ${own}\\b${near}${mine}${made}${figured}`);
}

const refused = /\b(?:ignore|not|never|instead of|rather than|forget|skip|don'?t)\b/;
/** What one clause of a sentence says of a column, where another clause names another one. */
const clauses = / (?:[,;–—-]|while|whereas|but|and) /;
const chosen =
  /\b(?:only|making|make|made|weighed|used|use|poured|mine|what i|what we|counts?|mean|meant|check|judge|now|today|tonight|current|real|actual)\b/;
const shown =
  /\b(?:(?:from|in|of) (?:the|her|his|my|our) (?:[a-z]+ )?(?:book|card|recipe|site|page)|printed|planned|there to|only there|just there|there for|to show|shows|showing|comparison|compare|history|reference|came from|come from|for interest|old|older|previous|last (?:time|batch|month|year|week)|was|were)\b/;
const places: readonly (readonly [RegExp, (count: number) => number])[] = [
  [/\bleftmost\b/, () => 0],
  [/\brightmost\b/, (count) => count - 1],
  [/\b(?:left|first|1st)(?: hand)?\s+(?:column|one|numbers?|figures?|side|amounts?|col|list)\b/, () => 0],
  [/\b(?:right(?: hand)?|last)\s+(?:column|one|numbers?|figures?|side|amounts?|col|list)\b/, (count) => count - 1],
  [/\b(?:second|2nd)\s+(?:column|one|numbers?|figures?|amounts?|col|list)\b/, () => 1],
  [/\b(?:third|3rd)\s+(?:column|one|numbers?|figures?|amounts?|col|list)\b/, () => 2],
];
/** A column that tells how far two others lie apart. */
const differences = /^(?:diff|difference|differences|deviation|dev|delta|off)$/;

/** What was weighed in fact, and what was only to be. */
const done =
  /^(?:actual|actually|weighed|measured|used|real|really|reality|poured|mine|today|did|scales?|got|made|pot)$/;
const planned =
  /^(?:plan|planned|printed|recipe|target|original|book|card|sheet|paper|calculated|theory|theirs|should|wanted|intended|old)$/;

/** `x3`, `2024`, and the number of a section in front of a head: no amount of the row. */
function isOfHead(tokens: readonly Token[], k: number, from: number): boolean {
  const token = tokens[k];
  if (token?.t !== 'quantity' || token.quantity.dim !== 'bare') return false;
  return k === from || isTimes(tokens[k - 1]) || isYear(token);
}
const isTimes = (token: Token | undefined): boolean => token?.t === 'word' && /^[x×]$/.test(token.text);

interface Head {
  words: string[];
  unit: string | null;
}

/** The cells of a row of heads; none where an amount stands in it. */
function headsIn(tokens: readonly Token[], prims: readonly Prim[], lexicon: Lexicon, { from, to }: Line): Head[] {
  const heads: Head[] = [{ words: [], unit: null }];
  let begin = from;
  for (let k = from; k <= to; k++) {
    const token = tokens[k];
    const last = heads.at(-1);
    if (!token || !last || k === to || isTab(token)) {
      if (last) last.unit = unitWord(tokens, lexicon, { from: begin, to: k });
      begin = k + 1;
      if (k < to) heads.push({ words: [], unit: null });
    } else if (token.t === 'quantity') {
      if (!isOfHead(tokens, k, from)) return [];
      if (isTimes(tokens[k - 1])) last.words.push(`${last.words.pop()}${token.quantity.text}`);
      else if (k > from || isYear(token)) last.words.push(token.quantity.text);
    } else if (token.t === 'aside') last.words.push(...prims.slice(token.from, token.to).map(({ text }) => text));
    else if (token.t === 'word' || token.t === 'name' || token.t === 'sign')
      last.words.push(...token.text.toLowerCase().split(' '));
  }
  return heads;
}

/** Cells of a line, and its weights by their cells. */
function rowIn(
  tokens: readonly Token[],
  { from, to }: Line,
): { readonly width: number; readonly weights: Map<number, number> } {
  const weights = new Map<number, number>();
  let cell = 0;
  for (let k = from; k < to; k++) {
    if (isTab(tokens[k])) cell++;
    else if (isWeight(tokens[k])) weights.set(cell, k);
  }
  return { width: cell + 1, weights };
}

/** "3 LYE": the head of the next section of a sheet, beneath which the columns go on. */
const isSection = (tokens: readonly Token[], { from, to }: Line): boolean =>
  to - from <= longestSection &&
  !tokens.slice(from, to).some((token, k) => isTab(token) || (k > 0 && token.t === 'quantity'));
const longestSection = 3;

interface Table {
  readonly columns: readonly Column[];
  /** Tokens of the figures, by row, that tell how far two columns lie apart. */
  readonly apart: ReadonlyMap<number, number> | null;
  /** The line behind it. */
  readonly end: number;
}

/** Columns of weights under this head. */
function columnsUnder(tokens: readonly Token[], prims: readonly Prim[], at: number, lexicon: Lexicon): Table | null {
  const lines = linesOf(tokens);
  const [head, under] = [lines[at], lines[at + 1]];
  if (!head || !under || under.to === under.from) return null;
  const { width } = rowIn(tokens, under);
  if (width < 3) return null;
  const heads = headsIn(tokens, prims, lexicon, head);
  // no head stands over the names
  if (heads.length === width - 1) heads.unshift({ words: [], unit: null });
  if (heads.length < 3) return null;
  const cells = heads.map(() => new Map<number, number>());
  let end = at + 1;
  let isFurther = false;
  for (let line = lines[end]; line && line.to > line.from; line = lines[++end]) {
    const row = rowIn(tokens, line);
    if (row.width === 1) {
      const next = lines[end + 1];
      if (!isSection(tokens, line) || !next || rowIn(tokens, next).width !== width) break;
      isFurther = true;
    } else if (!isFurther || row.width === width) for (const [cell, k] of row.weights) cells[cell]?.set(end, k);
  }
  const apart = heads.findIndex(({ words }) => words.some((word) => differences.test(word)));
  const columns = heads.flatMap(({ words, unit }, k) => {
    const own = cells[k] ?? new Map<number, number>();
    const weighs = own.size >= 2 && k !== apart && !words.some((word) => others.test(word));
    return weighs
      ? [{ at: k, head: words.filter((word) => !idle.test(word) && /\w/.test(word)), unit, cells: own }]
      : [];
  });
  const [first] = columns;
  const isShared = (word: string): boolean => columns.every(({ head: words }) => words.includes(word));
  // grams beside ounces are one amount said twice
  if (columns.length < 2 || !first || columns.some(({ unit }) => unit !== first.unit)) return null;
  return {
    columns: columns.map((column) => ({ ...column, head: column.head.filter((word) => !isShared(word)) })),
    apart: cells[apart] ?? null,
    end,
  };
}

/** Votes of a sentence that names several columns: for one of them where the clause says "only", or others are only shown. */
function byClause(
  sentence: string,
  namedIn: (text: string) => ReadonlySet<number>,
): readonly (readonly [number, number])[] {
  const votes: (readonly [number, number])[] = [];
  let surely = false;
  for (const clause of sentence.split(clauses)) {
    const [one, ...more] = namedIn(clause);
    if (one === undefined || more.length > 0) continue;
    const isOut = refused.test(clause) || shown.test(clause);
    surely ||= isOut || /\bonly\b/.test(clause);
    if (isOut || chosen.test(clause)) votes.push([one, isOut ? -1 : 1]);
  }
  return surely ? votes : [];
}

/** Which of the columns the words around the table mean; null where they do not tell. */
function meantBy(columns: readonly Column[], around: readonly string[]): number | null {
  const votes = columns.map(() => 0);
  const heads = columns.map(({ head }) => head.map(speaksOf));
  const namedIn = (text: string): ReadonlySet<number> => {
    const named = new Set<number>();
    heads.forEach((patterns, k) => {
      if (patterns.some((pattern) => pattern.test(text))) named.add(k);
    });
    for (const [pattern, place] of places) if (pattern.test(text)) named.add(place(columns.length));
    return named;
  };
  for (const sentence of around) {
    const named = namedIn(sentence);
    const [only] = named;
    if (named.size === 1 && only !== undefined) {
      votes[only] = (votes[only] ?? 0) + (refused.test(sentence) ? -1 : 1);
      continue;
    }
    // "left number = the recipe as printed, right number = mine"
    if (named.size > 1) for (const [k, vote] of byClause(sentence, namedIn)) votes[k] = (votes[k] ?? 0) + vote;
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
      .filter((text) => text !== '"')
      .concat('.');
  });
  return told
    .join(' ')
    .replace(/\bx (?=\d)/g, 'x')
    .split(/ [.!?;] /);
}

const agrees = 'a difference that agrees';
const weightAt = (tokens: readonly Token[], k: number | undefined): number => {
  const token = tokens[k ?? -1];
  return token?.t === 'quantity' ? token.quantity.value : Number.NaN;
};

/** How far the weight of a row that is meant lies from each of the others, as it is written. */
function differencesOf(tokens: readonly Token[], column: Column, { columns }: Table, row: number): readonly number[] {
  const own = tokens[column.cells.get(row) ?? -1];
  const factor = own?.t === 'quantity' ? (own.quantity.unit?.factor ?? 1) : 1;
  return columns.flatMap(({ cells }) => {
    const value = weightAt(tokens, cells.get(row)) - weightAt(tokens, column.cells.get(row));
    return Number.isNaN(value) || cells === column.cells ? [] : [Math.abs(value) / factor];
  });
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6 * Math.max(1, a);

/** Every figure of the column of differences is the difference of its row. */
const isCoherent = (tokens: readonly Token[], column: Column, table: Table): boolean =>
  [...(table.apart ?? [])].every(([row, k]) => {
    const said = tokens[k];
    const value = said?.t === 'quantity' ? said.quantity.value / (said.quantity.unit?.factor ?? 1) : Number.NaN;
    return differencesOf(tokens, column, table, row).some((one) => isNear(one, value));
  });

const idOf = (token: Token | undefined): string => (token?.t === 'name' ? token.meaning.id : '');
const isNamed = (token: Token | undefined): boolean => token?.t === 'name' && token.meaning.kind !== 'role';

/** Differences that a post speaks of, at the most: keeps a hostile post's cost bounded. */
const mostApart = 12;

/** "Rapeseed over by 4 g", as its row has it. */
function saidApart(tokens: readonly Token[], column: Column, table: Table, from: number): readonly number[] {
  const lines = linesOf(tokens);
  const found: number[] = [];
  for (let k = from, tried = 0; k < tokens.length && tried < mostApart; k++) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.dim !== 'mass' || wordAt(tokens, k - 1) !== 'by') continue;
    const name = tokens[k - 3];
    if (!/^(?:over|under|out|short|off)$/.test(spoken(tokens[k - 2])) || name?.t !== 'name') continue;
    tried++;
    const { value, unit } = token.quantity;
    const isOwn = (row: number): boolean =>
      tokens
        .slice(lines[row]?.from, lines[row]?.to)
        .some((one) => one.t === 'name' && one.meaning.id === name.meaning.id) &&
      differencesOf(tokens, column, table, row).some((one) => isNear(one, value / (unit?.factor ?? 1)));
    if ([...column.cells.keys()].some(isOwn)) found.push(k);
  }
  return found;
}

/** The name of a row in whose place its cell has another, or none: "almond | 100 g | none -> 100 g rice bran". */
function replacedIn(tokens: readonly Token[], { at: column }: Column, { from, to }: Line): number {
  const name = tokens.slice(from, to).findIndex((token) => isNamed(token));
  let cell = 0;
  for (let k = from; k < to; k++) {
    if (isTab(tokens[k])) cell++;
    if (cell !== column) continue;
    let end = k + 1;
    while (end < to && !isTab(tokens[end])) end++;
    const own = tokens.slice(isTab(tokens[k]) ? k + 1 : k, end);
    const isOther = own.some(isNamed) && own.some(isWeight) && !own.some((token) => spoken(token) === 'or');
    const isNone =
      own.length > 0 &&
      own.every((token) =>
        /^(?:none|nil|no|left|out|-)$/.test(spoken(token) || (token.t === 'sign' ? token.text : '')),
      );
    return name >= 0 && from + name < k && (isOther || isNone) ? from + name : -1;
  }
  return -1;
}

/** "Lard | - | 150 g (for the missing palm)": names of other rows in a bracket that tells why there is so much of this one. */
function reasonsIn(tokens: readonly Token[], { from, to }: Line, isOther: (name: Token) => boolean): readonly number[] {
  const found: number[] = [];
  for (let k = from; k < to; k++) {
    if (!isMark(tokens[k], '([') || !standing.test(spoken(tokens[k + 1]))) continue;
    for (k++; k < to && !isMark(tokens[k], ')]'); k++) {
      const token = tokens[k];
      if (token?.t === 'quantity') return [];
      if (token && isNamed(token) && isOther(token)) found.push(k);
    }
  }
  return found;
}
const standing = /^(?:for|instead|replaces|replacing|covers|covering|as|because|since|no|lacking)$/;

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
    const table = columnsUnder(tokens, prims, at, lexicon);
    if (!table) continue;
    const { columns, end } = table;
    around ??= sentencesAround(tokens, prims);
    const taken = meantBy(columns, around);
    const column = taken === null ? undefined : columns[taken];
    if (!column || !isCoherent(tokens, column, table)) continue;
    const made: Token[] = out ?? [...tokens];
    out = made;
    const aside = (k: number, why: string): void => {
      const token = made[k];
      if (token?.t === 'quantity') made[k] = asAside(token, why);
    };
    for (const other of columns)
      if (other !== column) for (const k of other.cells.values()) aside(k, 'of another column');
    for (const k of table.apart?.values() ?? []) aside(k, agrees);
    for (const line of lines.slice(at + 1, end)) {
      const own = tokens[tokens.findIndex((token, k) => k >= line.from && k < line.to && isNamed(token))];
      const isOther = (name: Token): boolean =>
        idOf(name) !== idOf(own) && lines.slice(at + 1, end).some(({ from }) => idOf(tokens[from]) === idOf(name));
      for (const k of reasonsIn(tokens, line, isOther)) made[k] = asFiller(tokens[k] as Token);
    }
    for (const line of lines.slice(at, end)) {
      // the number of a section
      if (rowIn(tokens, line).width === 1 || line === lines[at])
        aside(line.from, 'a number that only counts or names something');
      const replaced = line === lines[at] ? -1 : replacedIn(made, column, line);
      const token = tokens[replaced];
      if (token) made[replaced] = asFiller(token);
    }
    for (const k of saidApart(tokens, column, table, lines[end]?.from ?? tokens.length)) {
      aside(k, agrees);
      const name = made[k - 3];
      if (name) made[k - 3] = asFiller(name);
    }
    const from = lines[at]?.from ?? 0;
    const name = column.head.length > 0 ? `"${column.head.join(' ')}"` : `${(taken ?? 0) + 1}`;
    told.push({ text: `I took column ${name} of the table, as the post says.`, gone: [], from, to: from });
    at = end - 1;
  }
  return { tokens: out ?? tokens, told };
}
