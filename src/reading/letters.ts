/** Digits that text recognition puts for letters: `0live 0il`, `Coc0nut`, `Na0H`, `ta11ow`. */
import { singular } from '../catalogue/names.ts';
import type { Lexicon, Names } from './lexicon.ts';
import type { Prim } from './scan.ts';

/** What each of these digits is taken for; the second reading is tried where the first makes no word. */
const letterOf: readonly Readonly<Record<string, string>>[] = [
  { 0: 'o', 1: 'l', 5: 's' },
  { 0: 'o', 1: 'i', 5: 's' },
];

const alike = /^[015]{1,2}$/;
/** Pieces of a word that digits stand in, at the most. */
const mostPieces = 9;

/** Behind the pieces of a word that begins with prim `i`: letters and such digits, tight. */
function endOfPieces(prims: readonly Prim[], i: number): number {
  let end = i;
  while (end < prims.length && end - i < mostPieces) {
    const prim = prims[end];
    if (
      !prim ||
      (end > i && !prim.glued) ||
      !(prim.kind === 'word' || (prim.kind === 'number' && alike.test(prim.text)))
    )
      break;
    end++;
  }
  return prims[end]?.glued && prims[end]?.kind === 'number' ? i : end;
}

/** Words that are remembered for the posts to come, at the most. */
const mostKnown = 1000;
const known = new WeakMap<Names, Map<string, boolean>>();

function isKnown(word: string, lexicon: Lexicon): boolean {
  let memory = known.get(lexicon.names);
  if (!memory) {
    memory = new Map();
    known.set(lexicon.names, memory);
  }
  let found = memory.get(word);
  if (found === undefined) {
    found = [word, singular(word)].some((one) => lexicon.names.has(one) || lexicon.vocabulary().known.has(one));
    if (memory.size < mostKnown) memory.set(word, found);
  }
  return found;
}

const isUnit = ({ text }: Prim, lexicon: Lexicon): boolean => lexicon.units.next?.has(text) === true;

function wordAt(prims: readonly Prim[], i: number, end: number, lexicon: Lexicon): Prim | null {
  const [first, second] = [prims[i], prims[i + 1]];
  // "1 lb" without its space, "0oz"
  if (
    !first ||
    !second ||
    (first.kind === 'number' && (first.text.length > 1 || (end === i + 2 && isUnit(second, lexicon))))
  )
    return null;
  const pieces = prims.slice(i, end);
  const typed = pieces.map(({ text }) => text).join('');
  // "olive0": a word that needs no more letters
  if (pieces.at(-1)?.kind === 'number' && isKnown(typed.replace(/\d+$/, ''), lexicon)) return null;
  if (typed.length < 3) return null;
  for (const letter of letterOf) {
    const text = typed.replace(/[015]/g, (digit) => letter[digit] ?? digit);
    if (isKnown(text, lexicon))
      return { kind: 'word', text, raw: pieces.map(({ raw }) => raw).join(''), glued: first.glued, at: first.at };
  }
  return null;
}

/** `H20`, written with a nought. */
function waterAt(prims: readonly Prim[], i: number): Prim | null {
  const [h, nought] = [prims[i], prims[i + 1]];
  if (h?.text !== 'h' || nought?.text !== '20' || prims[i + 2]?.glued) return null;
  return { kind: 'word', text: 'water', raw: `${h.raw}${nought.raw}`, glued: false, at: h.at };
}

/** The prims with such words whole; the very same where there is none. */
export function wholeWords(prims: readonly Prim[], lexicon: Lexicon): readonly Prim[] {
  let out: Prim[] | null = null;
  let i = 0;
  while (i < prims.length) {
    const prim = prims[i];
    const next = prims[i + 1];
    const mixed = next?.glued && prim && !prim.glued && prim.kind !== next.kind;
    const water = mixed ? waterAt(prims, i) : null;
    const end = water ? i + 2 : mixed && (alike.test(prim.text) || alike.test(next.text)) ? endOfPieces(prims, i) : i;
    const word = water ?? (end > i + 1 ? wordAt(prims, i, end, lexicon) : null);
    if (word) out ??= prims.slice(0, i);
    if (word) out?.push(word);
    else if (out && prim) out.push(prim);
    i = word ? end : i + 1;
  }
  return out ?? prims;
}

export const hasDigits = ({ kind, text, raw }: Prim): boolean => kind === 'word' && raw !== text && /\d/.test(raw);

/** Digits within a word that was made whole. */
export const digitsIn = (prim: Prim): readonly string[] => (hasDigits(prim) ? (prim.raw.match(/\d+/g) ?? []) : none);

const none: readonly string[] = [];
