/** What stands ready in a vessel, with its own weight behind that: "water is waiting in another bowl, 280 g". */

import { cue } from '../words/cue-words.ts';
import { type Signals, saysAround } from '../words/signals.ts';
import {
  endsDotted,
  isIngredient,
  isMark,
  isPot,
  isStop,
  isWeight,
  isWord,
  spoken,
  wordAt,
} from '../words/token-is.ts';
import { asFiller, type Token } from '../words/tokens.ts';
import { weighedElsewhere } from '../words/weighed.ts';

/** In what is sold in a pack, the figure may be the size of the pack. */
const vessel =
  /^(?:jug|bowl|pot|pan|saucepan|stock ?pot|beaker|cup|bucket|pail|pitcher|mug|glass|container|vessel|kettle|double boiler)$/;
const being = /^(?:and|is|are|was|were|its|thats|theres|about|exactly|just|only|all)$/;
const things = /^(?:fat|alkali|water|liquid)$/;
/** It says what the vessel holds or weighs, or tells of no pot that there is. */
const otherwise =
  /^(?:comes?|came|sold|if|would|should|could|fits?|takes?|holds?|goes|empty|tared?|zeroed|weigh(?:s|ed)?|scales?|left|rest|spilt|spilled|without|no|not|forgot|next|last|yesterday|usually)$/;
const ofVessel = /^(?:of|empty|alone|itself|with|including|incl|together|gross|tare|max|maximum|big|size|heavy|bare)$/;
const farthest = 12;

/** The vessel before the figure at `k`, "in another bowl, 280 g"; -1 for none. */
function vesselBefore(tokens: readonly Token[], k: number): number {
  let at = k - 1;
  while (k - at <= 4 && (isMark(tokens[at], ',:(=–-') || being.test(wordAt(tokens, at)))) at--;
  const pot = tokens[at];
  return at < k - 1 && isPot(pot) && vessel.test(pot.meant) ? at : -1;
}

/** What stands in the vessel at `pot`, in the same clause and without a weight of its own; -1 for none. */
function contentOf(tokens: readonly Token[], pot: number): number {
  let isIn = false;
  for (let at = pot - 1; pot - at <= farthest; at--) {
    const token = tokens[at];
    if (token === undefined || isStop(token) || token.t === 'quantity') return -1;
    if (isIngredient(token))
      return isIn && things.test(token.meaning.kind) && !weighedElsewhere(tokens, at) && !isNamedMore(tokens, at)
        ? at
        : -1;
    if (otherwise.test(spoken(token)) || isPot(token)) return -1;
    isIn ||= isWord(token, 'in') || isWord(token, 'inside');
  }
  return -1;
}

/** "Olive and coconut are in the bowl, 700 g": the two together. */
const isNamedMore = (tokens: readonly Token[], at: number): boolean =>
  /^(?:and|or|plus|with|without)$/.test(wordAt(tokens, at - 1)) || isMark(tokens[at - 1], '+&/,');

/** Nothing behind the figure says that it is of the vessel, or of what else. */
function isOwn(tokens: readonly Token[], k: number): boolean {
  if (endsDotted(tokens[k])) return true;
  const next = isMark(tokens[k + 1], ')') ? k + 2 : k + 1;
  if (isIngredient(tokens[next]) || ofVessel.test(spoken(tokens[next])) || otherwise.test(spoken(tokens[next])))
    return false;
  for (let at = k + 1; at - k <= farthest && !isStop(tokens[at]); at++)
    if (/^(?:empty|tared?|full|before|after|left)$/.test(spoken(tokens[at]))) return false;
  return true;
}

/** The tokens in which such a weight stands beside what is in the vessel. */
export function standsIn(tokens: readonly Token[], signals: Signals): readonly Token[] {
  let out: Token[] | null = null;
  for (const k of signals.figures) {
    if (!isWeight(tokens[k]) || !saysAround(signals, k, cue.pot)) continue;
    const pot = vesselBefore(tokens, k);
    const at = pot < 0 ? -1 : contentOf(tokens, pot);
    const [name, place] = [tokens[at], tokens[pot]];
    if (!name || !place || !isOwn(tokens, k)) continue;
    out ??= [...tokens];
    out[at] = asFiller(name);
    out[pot] = { ...name, from: place.from, to: place.to };
  }
  return out ?? tokens;
}
