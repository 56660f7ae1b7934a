import type { Catalogue, NamedHit, NameHit } from './types.ts';

/** Most names need nothing done: words of plain letters and digits, one space apart. */
const PLAIN = /^[a-z0-9]+(?: [a-z0-9]+)*$/;
/** Letters that decompose into no base letter plus mark. */
const LIGATURES: Readonly<Record<string, string>> = { ß: 'ss', œ: 'oe', æ: 'ae', ø: 'o', ł: 'l', ı: 'i' };

/**
 * The key a name is looked up by: lower case, without accents and apostrophes, anything else that is neither letter
 * nor digit as one space ("Huile d’Olive" → "huile dolive", "caprylic/capric" → "caprylic capric").
 */
export function foldName(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f'’‘ʼ`´]/g, '')
    .replace(/[ßœæøłı]/g, (letter) => LIGATURES[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Each run of digits a word of its own, as a text is scanned: "c12" → "c 12". */
export const spaced = (key: string): string =>
  /\d/.test(key) ? key.replace(/(\d+)/g, ' $1 ').replace(/ +/g, ' ').trim() : key;

/** A plural's singular, near enough for comparing names. */
export function singular(word: string): string {
  if (word.length > 3 && word.endsWith('s') && !word.endsWith('ss') && !word.endsWith('us')) return word.slice(0, -1);
  return word;
}

/** The words of a name that tell it from others, in alphabetical order: "oil of olive, virgin" is "olive virgin". */
export const wordsInOrder = (words: readonly string[]): string =>
  words
    .filter((word) => word !== 'oil' && word !== 'of' && word !== 'the')
    .map(singular)
    .sort()
    .join(' ');

/** What a name stands for, however it is written; undefined where nothing held is called so. */
export function named(catalogue: Pick<Catalogue, 'byFirstWord'>, text: string): NamedHit | undefined {
  const name = spaced(foldName(text));
  return catalogue.byFirstWord.get(firstWord(name))?.find((hit) => hit.name === name);
}

export function firstWord(name: string): string {
  const space = name.indexOf(' ');
  return space < 0 ? name : name.slice(0, space);
}

/** The numerals among words. */
export const numeralsAmong = (words: Iterable<string>): readonly string[] =>
  [...words].filter((word) => /^\d/.test(word));

/** The maps by which names are found, from all names under their keys; the maps in the order of their own keys. */
export function arrangeNames(
  byName: ReadonlyMap<string, NameHit>,
): Pick<Catalogue, 'byFirstWord' | 'byWords' | 'nameWords' | 'numerals'> {
  const byFirstWord = new Map<string, NamedHit[]>();
  const byWords = new Map<string, NamedHit>();
  const known = new Set<string>();
  const spelt = new Set<string>();
  for (const [key, { kind, id, how }] of byName) {
    const name = spaced(key);
    const hit: NamedHit = { name, kind, id, how };
    const first = firstWord(name);
    const list = byFirstWord.get(first);
    if (list) list.push(hit);
    else byFirstWord.set(first, [hit]);
    const words = name.split(' ');
    const ordered = wordsInOrder(words);
    if ((kind === 'fat' || kind === 'unheld') && ordered !== '' && !byWords.has(ordered)) byWords.set(ordered, hit);
    for (const word of words) {
      known.add(word);
      if (how !== 'abbreviation' && kind !== 'scent' && word.length >= 4) spelt.add(word);
    }
  }
  const ordered = <T>(map: ReadonlyMap<string, T>): Map<string, T> =>
    new Map([...map].sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    byFirstWord: ordered(byFirstWord),
    byWords: ordered(byWords),
    nameWords: { known: [...known].join(' '), spelt: [...spelt].join(' ') },
    numerals: numeralsAmong(byFirstWord.keys()),
  };
}

/**
 * Lines `key` or `key<TAB>what it stands for`, in the order of their keys: nothing need be made of them before a key is
 * looked up.
 */
export const inOrder = (lines: Iterable<readonly [key: string, ...rest: string[]]>): string =>
  [...lines]
    .sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
    .map((line) => line.join('\t'))
    .join('\n');

/** What stands behind a key in such lines, "" where it stands alone; found by halving. Null where it is not there. */
export function behind(key: string, lines: string): string | null {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const from = lines.lastIndexOf('\n', middle - 1) + 1;
    const end = lines.indexOf('\n', from);
    const to = end < 0 ? lines.length : end;
    const line = lines.slice(from, to);
    const tab = line.indexOf('\t');
    const here = tab < 0 ? line : line.slice(0, tab);
    if (here === key) return tab < 0 ? '' : line.slice(tab + 1);
    if (here < key) low = to + 1;
    else high = from;
  }
  return null;
}
