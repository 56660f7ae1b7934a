/** A superfat thought of aloud: "I had decided on 5 % superfat, then on 10, and have come back down to 8". */
import { isMark, isStop, type Span, sentenceAt, wordAt } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';

/** Tokens of a sentence that are looked at to either side. */
const reach = 40;
const before = /^(?:on|to|at|for)$/;
const behind = /^(?:because|as|since|and|but|now|then|again|instead|after|for)$/;
/** More than this is no superfat, in per cent. */
const most = 25;

/** The bare figures behind a superfat (`at`) that its sentence moves on to. */
export function movedTo(tokens: readonly Token[], at: Span): readonly string[] {
  const { to } = sentenceAt(tokens, at.from, reach);
  const found = new Set<string>();
  for (let k = at.to; k < to; k++) {
    const token = tokens[k];
    if (token?.t !== 'quantity' || token.quantity.dim !== 'bare' || !before.test(wordAt(tokens, k - 1))) continue;
    const next = tokens[k + 1];
    const ends = isStop(next) || isMark(next, ',)') || behind.test(wordAt(tokens, k + 1));
    const { value, text } = token.quantity;
    if (ends && value > 0 && value <= most) found.add(text);
  }
  return [...found];
}
