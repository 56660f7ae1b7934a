/** "Fat of goose 350 g", "oil of the sunflower", "butter of shea": a name told with its last word first. */
import { singular } from '../../catalogue/names.ts';
import type { Prim } from '../text/scan.ts';
import type { Entry, Lexicon, Trie } from './lexicon.ts';

/** The words that such a name begins with. */
const generic: ReadonlySet<string> = new Set(
  'oil butter fat grease tallow suet lard dripping drippings wax milk'.split(' '),
);
const kinds = /^(?:fat|unheld|ambiguous|scent|liquid)$/;
const joints: ReadonlySet<string> = new Set(['of', 'from']);

/** Words of what it is of, at the most: "rice bran", "sweet almond kernel". */
const mostWords = 3;

/** The longest such name from prim `i`; null where none is known. */
export function turnedRound(
  prims: readonly Prim[],
  i: number,
  { names }: Lexicon,
): { readonly entry: Entry; readonly end: number } | null {
  const last = prims[i]?.text ?? '';
  if (!generic.has(last) || !joints.has(prims[i + 1]?.text ?? '')) return null;
  const first = /^(?:the|a)$/.test(prims[i + 2]?.text ?? '') ? i + 3 : i + 2;
  let found: { readonly entry: Entry; readonly end: number } | null = null;
  let branch: Trie<Entry> | undefined;
  for (let k = first; k < first + mostWords; k++) {
    const prim = prims[k];
    if (prim?.kind !== 'word') break;
    const go = (word: string): Trie<Entry> | undefined => (k === first ? names.from(word) : branch?.next?.get(word));
    branch = go(prim.text)?.next ? go(prim.text) : go(singular(prim.text));
    const entry = branch?.next?.get(last)?.hit;
    if (entry && kinds.test(entry.meaning.kind)) found = { entry, end: k + 1 };
    if (!branch) break;
  }
  // "butter of cocoa butter" has its own name
  return found && !generic.has(prims[found.end]?.text ?? '') ? found : null;
}
