/** Goes through the notes of a post that one of several patterns may hear, and changes the list by the first that does. */
import type { PutRight } from '../taken-back/put-right.ts';
import { rawText } from '../text/scan.ts';
import { type Cut, type Sentence, sentencesOf } from '../text/sentences.ts';
import { isAny } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Heard } from './heard.ts';
import { type Tale, taleAt } from './tale.ts';

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What a pattern matched, and in which tokens. */
export interface Note {
  readonly tokens: Token[];
  readonly sentence: Sentence;
  readonly tale: Tale;
  readonly match: RegExpExecArray;
  readonly span: Span;
}

interface Hearing<Rule> {
  /** Words without one of which nothing is told. */
  readonly cues: ReadonlySet<string>;
  readonly isWorth: (sentence: Sentence) => boolean;
  readonly patterns: () => readonly (readonly [Rule, RegExp])[];
  /** Nobody has done it. */
  readonly isOpen: (tale: Tale, match: RegExpExecArray) => boolean;
  /** Changes the tokens; `unheard` where what is told cannot be reckoned with, null where the rule hears nothing. */
  readonly hear: (rule: Rule, note: Note) => PutRight | 'unheard' | null;
}

/** Notes of a post that are looked at: one with more of them tells no tale. */
const mostNotes = 40;

export function hearNotes<Rule>(cut: Cut, { cues, isWorth, patterns, isOpen, hear }: Hearing<Rule>): Heard {
  const tells = (token: Token): boolean => token.t === 'word' && cues.has(token.text);
  if (!cut.tokens.some(tells)) return { tokens: cut.tokens, told: [], unheard: null };
  const tokens = [...cut.tokens];
  const told: PutRight[] = [];
  let unheard: string | null = null;
  let count = 0;
  const sentences = sentencesOf(cut);
  sentences.forEach((sentence, k) => {
    const end = sentences[k + 1]?.to ?? sentence.to;
    if (!isWorth(sentence) || count > mostNotes || !isAny(tokens, sentence.from, end, tells)) return;
    const tale = taleAt(sentences, k);
    for (const [rule, pattern] of patterns()) {
      const match = pattern.exec(tale.text);
      if (!match || match.index >= tale.turn || isOpen(tale, match)) continue;
      count++;
      const span = { from: tale.tokenAt(match.index), to: tale.tokenAt(match.index + match[0].length - 1) + 1 };
      const heard = hear(rule, { tokens, sentence, tale, match, span });
      if (heard === null) continue;
      if (heard === 'unheard')
        unheard ??= rawText(cut.prims, tokens[span.from]?.from ?? 0, tokens[span.to - 1]?.to ?? 0);
      else told.push(heard);
      return;
    }
  });
  return { tokens: told.length > 0 ? tokens : cut.tokens, told, unheard };
}
