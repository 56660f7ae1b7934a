/** Whether a word is one of everyday talk that names no ingredient, by a dictionary that is read when first asked. */
import { readEveryday } from './everyday-file.ts';
import { behind } from './names.ts';

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

function holds(word: string): boolean {
  words ??= readEveryday();
  return behind(word, words) !== null;
}

export const isEveryday = (word: string): boolean => holds(word) || stemsOf(word).some(holds);
