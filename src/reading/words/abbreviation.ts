/** Names that somebody cut short as nobody else does: `olv`, `cast`, `snflwr`. */
import type { Lexicon, Meaning, Names } from './lexicon.ts';

const least = 3;
const most = 6;

/** Letters that a beginning lacks, at the least: one fewer may be a slip of another word. */
const leastCut = 2;

/** Its first letter and the consonants behind it, none of them doubled: `olv` of olive, `tlw` of tallow. */
const consonants = (word: string): string =>
  (word[0] ?? '') +
  word
    .slice(1)
    .replace(/[aeiouy]/g, '')
    .replace(/(.)\1+/g, '$1');

/** By its beginning, or by all its consonants. */
function isShortFor(word: string, whole: string): boolean {
  if (whole.startsWith(word)) return whole.length >= word.length + leastCut;
  return whole.length > word.length && !/[aeiouy]/.test(word.slice(1)) && consonants(whole) === consonants(word);
}

/** What goes by a weight that matters, and must be sure. */
const mattering = /^(fat|water|alkali)$/;
const idle = /^(scent|additive)$/;

const memory = new WeakMap<Names, Map<string, string | null>>();
/** Words that are remembered, at the most. */
const mostKnown = 1000;

/** The word that is a name by itself and that `word` is short for; null where there is none, or several things. */
export function shortFor(word: string, lexicon: Lexicon): string | null {
  if (word.length < least || word.length > most || !/^[a-z]+$/.test(word)) return null;
  let known = memory.get(lexicon.names);
  if (!known) {
    known = new Map();
    memory.set(lexicon.names, known);
  }
  let found = known.get(word);
  if (found === undefined) {
    found = search(word, lexicon);
    if (known.size < mostKnown) known.set(word, found);
  }
  return found;
}

const lettersKnown = new WeakMap<Names, Map<string, string[]>>();

/** The words that names are made of, by their first letter. */
function wordsWith(letter: string, lexicon: Lexicon): readonly string[] {
  let known = lettersKnown.get(lexicon.names);
  if (!known) {
    known = new Map();
    for (const word of lexicon.vocabulary().known) {
      const list = known.get(word[0] ?? '');
      if (list) list.push(word);
      else known.set(word[0] ?? '', [word]);
    }
    lettersKnown.set(lexicon.names, known);
  }
  return known.get(letter) ?? [];
}

function search(word: string, lexicon: Lexicon): string | null {
  const found: { readonly whole: string; readonly meaning: Meaning }[] = [];
  for (const whole of wordsWith(word[0] ?? '', lexicon)) {
    if (!isShortFor(word, whole)) continue;
    const meaning = lexicon.names.from(whole)?.hit?.meaning;
    if (meaning) found.push({ whole, meaning });
  }
  // "cast": castor rather than castorwax
  const apart = found.filter(({ whole }) => !found.some((one) => one.whole !== whole && whole.startsWith(one.whole)));
  const [first, ...others] = apart;
  if (!first) return null;
  const { kind, id } = first.meaning;
  const sure = mattering.test(kind) && others.every(({ meaning }) => meaning.kind === kind && meaning.id === id);
  return sure || apart.every(({ meaning }) => idle.test(meaning.kind)) ? first.whole : null;
}
