/** Whether a word is one of everyday talk that names no ingredient, by a dictionary that is read when first asked. */
import { readEveryday } from './everyday-file.ts';

/** What a word may be an inflection of, by the usual endings of English. */
export function stemsOf(word: string): readonly string[] {
  const out: string[] = [];
  const off = (ending: string, ...instead: readonly string[]): void => {
    if (!word.endsWith(ending) || word.length - ending.length < 3) return;
    const stem = word.slice(0, -ending.length);
    for (const more of instead) out.push(stem + more);
    // "pinned", "fitting"
    if (/^(?:ed|ing|er|est)$/.test(ending) && stem.at(-1) === stem.at(-2)) out.push(stem.slice(0, -1));
  };
  off('s', '');
  off("'s", '');
  off('es', '');
  off('ies', 'y');
  off('ed', '', 'e');
  off('ied', 'y');
  off('ing', '', 'e');
  off('ly', '', 'le');
  off('ily', 'y');
  return out;
}

let words: string | null = null;

/** Found by halving: the words stand in order, one a line. */
function holds(word: string): boolean {
  words ??= readEveryday();
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const from = words.lastIndexOf('\n', middle - 1) + 1;
    const end = words.indexOf('\n', from);
    const to = end < 0 ? words.length : end;
    const here = words.slice(from, to);
    if (here === word) return true;
    if (here < word) low = to + 1;
    else high = from;
  }
  return false;
}

export const isEveryday = (word: string): boolean => holds(word) || stemsOf(word).some(holds);
