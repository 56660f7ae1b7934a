import type { Catalogue } from '../catalogue/types.ts';
import { clean } from './text/clean.ts';
import { layOut } from './text/layout.ts';
import { wholeWords } from './text/letters.ts';
import { type Prim, scan } from './text/scan.ts';
import { withoutSpeakers } from './text/speakers.ts';
import type { Lexicon } from './words/lexicon.ts';
import type { Speller } from './words/spelling.ts';
import { type Token, tokenize } from './words/tokens.ts';
import type { Word } from './words/word.ts';

export interface Reader {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
  readonly catalogue: Catalogue;
  /** Of temperatures without a unit, where somebody has said so once for all. */
  readonly warmth?: '°C' | '°F';
}

/** A text in plain characters, and the tokens in it. */
export interface Scanned {
  readonly text: string;
  readonly disordered: boolean;
  readonly struck: readonly string[];
  /** Words or figures among them were mixed up, and have been made whole. */
  readonly mended: boolean;
  readonly prims: readonly Prim[];
  readonly tokens: readonly Token[];
}

/** A text as words, names and figures. */
export interface InWords extends Scanned {
  /** As it came. */
  readonly input: string;
  readonly words: readonly (Word | null)[];
}

/** A text cut into words, names and figures, before any rule has looked at it. */
export function cutOf({ lexicon, speller }: Reader, input: string): InWords {
  const { text: plain, disordered, struck } = clean(input);
  const { text } = layOut(withoutSpeakers(plain, lexicon));
  const scanned = scan(text);
  const prims = wholeWords(scanned, lexicon);
  const mended = prims !== scanned;
  return { input, text, disordered, struck, mended, prims, ...tokenize(prims, lexicon, speller) };
}
