import { behind, singular } from '../../catalogue/names.ts';
import type { Prim } from '../text/scan.ts';
import { mayAnnounce } from './aside.ts';
import { cuesOf } from './cue-words.ts';
import type { Entry, Lexicon, Names, Trie } from './lexicon.ts';
import { isNumberWord } from './numbers.ts';
import { mayBeginAmount } from './quantities.ts';
import { ofWord, signal } from './signal-words.ts';
import { slipsOfLye } from './slip-of-lye.ts';
import type { Speller } from './spelling.ts';
import { type Plain, plainLines } from './words.ts';

export type Sort = 'filler' | 'joint' | 'everyday' | 'unknown';

/** What a word may be whatever stands beside it. */
export interface Word {
  readonly text: string;
  readonly singular: string;
  /** The names that begin with it or with its singular. */
  readonly names: Trie<Entry> | null;
  /** A numeral or an article. */
  readonly beginsAmount: boolean;
  /** It may make a date or a price of a figure that follows. */
  readonly announces: boolean;
  /** Everyday, or a numeral: never the slip of another word. */
  readonly plain: boolean;
  readonly isUnit: boolean;
  /** A slip of "lye", where a weight stands beside it. */
  readonly mayBeLye: boolean;
  /** Everyday, and part of no name, amount, date or price. */
  readonly talk: boolean;
  /** What rules look for it, a bit each (`signals.ts`). */
  readonly signals: number;
  /** What a sentence may say in which it stands, a bit each (`cue-words.ts`). */
  readonly cues: number;
  /** Long enough to be tried as the slip of another word, and in no name as it stands. */
  readonly strange: boolean;
  /** Null where only the vocabulary can tell, until somebody asks. */
  sort: Sort | null;
  /** What it may have been meant for, where it is strange; null until somebody asks. */
  meant: readonly string[] | null;
}

function wordOf(text: string, lexicon: Lexicon): Word {
  const known = behind(text, plainLines) as Plain | null;
  const plain = known !== null || isNumberWord(text);
  const heads = lexicon.names.has(text);
  const one = singular(text);
  const names = lexicon.names.from(text) ?? lexicon.names.from(one) ?? null;
  const beginsAmount = mayBeginAmount(text);
  const announces = mayAnnounce(text);
  const isUnit = lexicon.units.next?.has(text) === true;
  return {
    text,
    singular: one,
    names,
    beginsAmount,
    announces,
    plain,
    isUnit,
    mayBeLye: slipsOfLye.has(text),
    talk: plain && names === null && !beginsAmount && !announces,
    signals: ofWord(text) | (isUnit ? signal.unit : 0),
    cues: cuesOf(text),
    strange: text.length >= 4 && !heads && !plain && !inVocabulary(text, lexicon),
    sort: known === 'joint' || known === 'filler' ? known : isUnit ? 'filler' : plain ? 'everyday' : null,
    meant: null,
  };
}

function inVocabulary(text: string, lexicon: Lexicon): boolean {
  const { known } = lexicon.vocabulary();
  return known.has(text) || known.has(singular(text));
}

/** Words that are remembered for the posts to come, at the most. */
const mostKnown = 5000;
const wordsKnown = new WeakMap<Names, Map<string, Word>>();

/** The word at each prim, null where none stands. */
export function wordsOf(prims: readonly Prim[], lexicon: Lexicon): readonly (Word | null)[] {
  let memory = wordsKnown.get(lexicon.names);
  if (!memory) {
    memory = new Map();
    wordsKnown.set(lexicon.names, memory);
  }
  const words: (Word | null)[] = [];
  for (const { kind, text } of prims) {
    let word = kind === 'word' ? memory.get(text) : null;
    if (word === undefined) {
      word = wordOf(text, lexicon);
      if (memory.size < mostKnown) memory.set(text, word);
    }
    words.push(word);
  }
  return words;
}

export function sortOf(word: Word, lexicon: Lexicon): Sort {
  word.sort ??= askedSort(word.text, lexicon);
  return word.sort;
}

/** "Rasierseife", "scheerzeep": what is made. */
const isSoap = /.(?:seife|seifen|zeep|zepen)$/;

/** "For hardness". */
const isQuality = /.{3}ness$/;

function askedSort(text: string, lexicon: Lexicon): Sort {
  if (isSoap.test(text) || isQuality.test(text)) return 'everyday';
  if (lexicon.vocabulary().roleWords.has(text) && !lexicon.names.has(text)) return 'everyday';
  return !inVocabulary(text, lexicon) && lexicon.isEveryday(text) ? 'everyday' : 'unknown';
}

/** Names that a strange word may be a slip of, at the most. */
export const mostSpellings = 12;

/** First letters that one is heard for the other. */
const heardAlike: ReadonlySet<string> = new Set([
  'ck',
  'kc',
  'sz',
  'zs',
  'sc',
  'cs',
  'fp',
  'pf',
  'vw',
  'wv',
  'jy',
  'yj',
  'gj',
  'jg',
]);

/** People slip at the first letter least of all: "parrot" is no slip of "carrot", "kastor" and "acstor" are of "castor". */
const beginsAlike = (word: string, meant: string): boolean =>
  word[0] === meant[0] ||
  word[0] === meant[1] ||
  word[1] === meant[0] ||
  heardAlike.has(`${word[0] ?? ''}${meant[0] ?? ''}`);

/** What a strange word may have been meant for; nothing where it is everyday ("the theme is lemon") or like too many. */
export function meantFor(word: Word, lexicon: Lexicon, speller: Speller): readonly string[] {
  if (word.meant) return word.meant;
  const near = speller.nearest(word.text).filter((one) => beginsAlike(word.text, one));
  word.meant = near.length <= mostSpellings && !(near.length > 0 && isPlainEnglish(word.text, lexicon)) ? near : [];
  return word.meant;
}

/** An everyday word or its plural: "mornings" are no moringa. */
const isPlainEnglish = (text: string, lexicon: Lexicon): boolean =>
  lexicon.isEveryday(text) || (text.length > 5 && text.endsWith('s') && lexicon.isEveryday(text.slice(0, -1)));
