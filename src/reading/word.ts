import { singular } from '../catalogue/names.ts';
import { mayAnnounce } from './aside.ts';
import type { Lexicon } from './lexicon.ts';
import { isNumberWord } from './numbers.ts';
import { mayBeginAmount } from './quantities.ts';
import type { Prim } from './scan.ts';
import { plainWords } from './words.ts';

export type Sort = 'filler' | 'joint' | 'everyday' | 'unknown';

/** What a word may be whatever stands beside it. */
export interface Word {
  readonly text: string;
  /** A name may begin with it or with its singular. */
  readonly beginsName: boolean;
  /** A numeral or an article. */
  readonly beginsAmount: boolean;
  /** It may make a date or a price of a figure that follows. */
  readonly announces: boolean;
  /** Everyday, or a numeral: never the slip of another word. */
  readonly plain: boolean;
  /** Long enough to be tried as the slip of another word, and in no name as it stands. */
  readonly strange: boolean;
  /** Null where only the vocabulary can tell, which is not made before somebody asks. */
  readonly sort: Sort | null;
}

function wordOf(text: string, lexicon: Lexicon): Word {
  const known = plainWords.get(text);
  const plain = known !== undefined || isNumberWord(text);
  const heads = lexicon.names.has(text);
  return {
    text,
    beginsName: heads || lexicon.names.has(singular(text)),
    beginsAmount: mayBeginAmount(text),
    announces: mayAnnounce(text),
    plain,
    strange: text.length >= 4 && !heads && !plain && !inVocabulary(text, lexicon),
    sort:
      known === 'joint' || known === 'filler'
        ? known
        : lexicon.units.next?.has(text)
          ? 'filler'
          : plain
            ? 'everyday'
            : null,
  };
}

function inVocabulary(text: string, lexicon: Lexicon): boolean {
  const { known } = lexicon.vocabulary();
  return known.has(text) || known.has(singular(text));
}

/** Words that are remembered for the posts to come, at the most. */
const mostKnown = 5000;
const wordsKnown = new WeakMap<Lexicon, Map<string, Word>>();

/** The word at each prim, null where none stands. */
export function wordsOf(prims: readonly Prim[], lexicon: Lexicon): readonly (Word | null)[] {
  const memory = wordsKnown.get(lexicon) ?? new Map<string, Word>();
  wordsKnown.set(lexicon, memory);
  return prims.map(({ kind, text }) => {
    if (kind !== 'word') return null;
    let word = memory.get(text);
    if (!word) {
      word = wordOf(text, lexicon);
      if (memory.size < mostKnown) memory.set(text, word);
    }
    return word;
  });
}

export function sortOf({ text, sort }: Word, lexicon: Lexicon): Sort {
  if (sort) return sort;
  if (lexicon.vocabulary().roleWords.has(text) && !lexicon.names.has(text)) return 'everyday';
  return !inVocabulary(text, lexicon) && lexicon.isEveryday(text) ? 'everyday' : 'unknown';
}
