/**
 * The signs by which a note beside a list is weighed: its words, and a letter for each name and figure that says what
 * it is to the list; of every two side by side, and of every two letters near each other, which stands first.
 */
import type { RecipeReading } from '../reading.ts';
import type { Cut } from '../text/sentences.ts';
import type { Meaning } from '../words/lexicon.ts';
import type { Quantity } from '../words/quantities.ts';
import type { Token } from '../words/tokens.ts';

/** What a list weighs, in grams, by what it is. */
export type Weights = ReadonlyMap<string, number>;

/** What a reading weighs. */
export function weightsOf({ fats, after, alkali, waterGrams, liquids, acids }: RecipeReading): Weights {
  const out = new Map<string, number>();
  const add = (key: string, grams: number): void => void out.set(key, (out.get(key) ?? 0) + grams);
  for (const { id, grams } of fats) add(id, grams);
  for (const { id, grams } of after) add(`after ${id}`, grams);
  for (const { id, grams } of alkali) add(id, grams);
  for (const { id, grams } of liquids) add(id, grams);
  for (const { id, grams } of acids) add(id, grams);
  if (waterGrams !== null) add('water', waterGrams);
  return out;
}

/** How many signs apart two letters may stand. */
const reach = 6;
/** How many tokens apart a figure and what it weighs may stand. */
const near = 4;
/** Two weights of one thing, as kitchens round them. */
const rounding = 0.011;
const gramsOfOunce = 28.349523;
/** Tokens of a sentence; what goes on is cut. */
const longest = 40;

const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= rounding * Math.max(a, b);

/** The listed weight of a thing by its name, or by the first word of it ("olive" where the list has pomace). */
function listedOf(id: string, list: Weights): number | undefined {
  const own = list.get(id) ?? list.get(`after ${id}`);
  if (own !== undefined) return own;
  const head = `${id.split('-', 1)[0]}-`;
  for (const [key, grams] of list) if (key.startsWith(head)) return grams;
  return undefined;
}

interface Named {
  readonly letter: string;
  /** What the list weighs of it. */
  readonly grams: number | undefined;
}

function named(meaning: Meaning, list: Weights): Named {
  const { kind, id } = meaning;
  const lye = list.get('naoh') ?? list.get('koh');
  const fat = (grams: number | undefined, other: string): Named => ({
    letter: grams === undefined ? other : 'F',
    grams,
  });
  switch (kind) {
    case 'fat':
      return fat(listedOf(id, list), 'N');
    case 'ambiguous':
      return fat(
        meaning.candidates.map((one) => listedOf(one, list)).find((one) => one !== undefined),
        'B',
      );
    case 'alkali':
      return { letter: 'A', grams: list.get(id) ?? lye };
    case 'stock':
      return { letter: 'K', grams: lye };
    case 'water':
      return { letter: 'W', grams: list.get('water') };
    case 'liquid':
      return { letter: list.has(id) ? 'M' : 'L', grams: list.get(id) };
    default:
      return { letter: letters[kind], grams: undefined };
  }
}
const letters = { ice: 'I', acid: 'C', additive: 'X', scent: 'S', unheld: 'U', unknown: 'U', role: 'U' } as const;

/** A weight to that of the thing it stands by; where it stands by none, to the others of the list and their sum. */
function weightSign(grams: number, of: number | undefined, list: Weights): string {
  if (of !== undefined) return isSame(grams, of) ? '=' : grams < of ? '<' : '>';
  let fats = 0;
  for (const [key, one] of list) {
    if (isSame(one, grams)) return 'l';
    if (key !== 'naoh' && key !== 'koh' && key !== 'water') fats += one;
  }
  return isSame(fats, grams) ? 'T' : 'w';
}

const measures: Readonly<Record<string, string>> = { volume: 'v', percent: '%', temperature: 'd', ratio: 'r' };

function figureSign({ dim, value }: Quantity, of: number | undefined, list: Weights): string {
  if (dim === 'mass') return weightSign(value, of, list);
  if (dim !== 'bare') return measures[dim] ?? 't';
  const found = [value, value * gramsOfOunce].map((grams) => weightSign(grams, of, list));
  return found.includes('=') ? 'e' : found.some((sign) => sign === 'l' || sign === 'T') ? 'b' : '0';
}

const stemOf = (word: string): string => (word.length > 5 ? word.replace(/(?:ing|ed|es|s|ly)$/, '') : word);

/** One sign a token, two of a role by two words: a letter, or a mark or the stem of a word behind a space. */
function signsAt({ tokens, prims }: Cut, from: number, to: number, list: Weights): readonly string[] {
  const things = new Map<number, Named>();
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (token?.t === 'name' && token.meaning.kind !== 'role') things.set(k, named(token.meaning, list));
  }
  const weighed = (k: number): number | undefined => {
    for (let d = 1; d <= near; d++) {
      const grams = things.get(k + d)?.grams ?? things.get(k - d)?.grams;
      if (grams !== undefined) return grams;
    }
    return undefined;
  };
  const signs: string[] = [];
  for (let k = from; k < to; k++) {
    const token = tokens[k];
    if (token?.t === 'quantity') signs.push(figureSign(token.quantity, weighed(k), list));
    else if (token?.t === 'aside') signs.push('t');
    else if (token?.t === 'word') signs.push(` ${stemOf(prims[token.from]?.text ?? token.text)}`);
    else if (token?.t === 'sign' && /^[?:=+×*→]$/.test(token.text)) signs.push(` ${token.text}`);
    else if (token?.t === 'name') {
      const thing = things.get(k);
      if (thing) signs.push(thing.letter);
      else for (const word of token.text.toLowerCase().split(' ')) signs.push(` ${stemOf(word)}`);
    }
  }
  return signs;
}

const isLetter = (sign: string): boolean => sign.length === 1;
const things = /[FNAKWIMLB]/;
const amounts = /[=<>lTwevb0%]/;

function together(signs: readonly string[]): ReadonlySet<string> {
  const out = new Set<string>(['any', `^${signs[0]}`]);
  signs.forEach((sign, k) => {
    out.add(sign);
    if (k > 0) out.add(`${signs[k - 1]}~${sign}`);
    if (!isLetter(sign)) return;
    for (let before = Math.max(0, k - reach); before < k; before++) {
      const other = signs[before] ?? '';
      if (isLetter(other)) out.add(other + sign);
    }
  });
  const all = signs.filter(isLetter).join('');
  if (!things.test(all)) out.add('no name');
  if (!amounts.test(all)) out.add('no figure');
  if (signs.length < 6) out.add('short');
  if (signs.length > 20) out.add('long');
  return out;
}

const ends = (token: Token): boolean => token.t === 'line' || (token.t === 'sign' && /^[.!?;]$/.test(token.text));

/** The signs of each sentence that has words; a row of a list has none, or as good as none. */
export function signsOf(cut: Cut, list: Weights): readonly ReadonlySet<string>[] {
  const sentences: ReadonlySet<string>[] = [];
  const { tokens } = cut;
  let from = 0;
  let words = 0;
  tokens.forEach((token, k) => {
    if (token.t === 'word') words++;
    if (!ends(token) && k + 1 < tokens.length && k - from < longest) return;
    if (words > 0) sentences.push(together(signsAt(cut, from, k + 1, list)));
    from = k + 1;
    words = 0;
  });
  return sentences;
}
