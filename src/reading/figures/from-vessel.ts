/** What was taken of what a vessel holds: "the 3 litre tin of olive … 900 g from the tin". */

import type { Signals } from '../words/signals.ts';
import { isFat, isIngredient, isMeasured, isPot, isWeight, isWord, wordAt } from '../words/token-is.ts';
import { asAside, asFiller, type Token } from '../words/tokens.ts';
import { goesIn } from './drawn-from.ts';
import { inStore } from './in-store.ts';

/** "The tin of olive": the fat that a vessel holds, by the vessel's name; null where another one may be meant, or counts whole. */
function heldBy(tokens: readonly Token[], vessel: string): { readonly fat: Token; readonly pot: number } | null {
  let found: { fat: Token; pot: number } | null = null;
  for (const [pot, one] of tokens.entries()) {
    if (!isPot(one) || !isWord(tokens[pot + 1], 'of')) continue;
    const fat = tokens[isWord(tokens[pot + 2], 'the') ? pot + 3 : pot + 2];
    const isIt = one.text.toLowerCase() === vessel;
    if (!isIt && !isMeasured(tokens[pot - 1])) continue;
    if (!isIt || found || !isFat(fat)) return null;
    found = { fat, pot };
  }
  return found;
}

/** Where the vessel stands behind "900 g from the tin", "900 g out of my tin"; -1 where none does. */
function vesselBehind(tokens: readonly Token[], k: number): number {
  let at = wordAt(tokens, k + 1) === 'out' ? k + 2 : k + 1;
  if (!/^(?:from|of)$/.test(wordAt(tokens, at))) return -1;
  at++;
  if (!/^(?:the|that|my|our)$/.test(wordAt(tokens, at)) || isWord(tokens[at + 2], 'of')) return -1;
  return isPot(tokens[at + 1]) && !isIngredient(tokens[at + 2]) ? at + 1 : -1;
}

/** The tokens in which what was taken from a vessel is of the fat that it holds, and all that it holds is in store. */
export function fromVessel(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of signals.figures) {
    const [part, at] = [tokens[k], vesselBehind(tokens, k)];
    const vessel = tokens[at];
    if (!isWeight(part) || !isPot(vessel)) continue;
    const held = heldBy(tokens, vessel.text.toLowerCase());
    if (!held || held.pot > k || !goesIn(tokens, at)) continue;
    out ??= [...tokens];
    for (let word = k + 1; word < at; word++) out[word] = asFiller(tokens[word] as Token);
    out[at] = { ...held.fat, from: vessel.from, to: vessel.to };
    const size = tokens[held.pot - 1];
    if (isMeasured(size)) out[held.pot - 1] = asAside(size, inStore);
  }
  return out ?? tokens;
}
