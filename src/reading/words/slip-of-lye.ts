/** "Lie 135 g", "122 g of laye", "then the lie one hundred and six grams": lye is too short to be found by its spelling, and beside a weight nothing else is meant. */

import type { Prim } from '../text/scan.ts';
import type { Lexicon } from './lexicon.ts';
import { unitAt } from './measure.ts';
import { isNumberWord } from './numbers.ts';

export const slipsOfLye: ReadonlySet<string> = new Set(
  'lie lies ley lyr kye lay ly lyee laye lei leye lyie liy lyw lhe'.split(' '),
);

const alkalis = /^(?:lye|naoh|koh|caustic|hydroxide|potash|soda|alkali|lauge)$/;
const isSign = (prim: Prim | undefined, signs: string): boolean => prim?.kind === 'sign' && signs.includes(prim.text);

/** Before the row, and behind it. */
const isEdge = (prim: Prim | undefined): boolean =>
  prim === undefined ||
  prim.kind === 'line' ||
  isSign(prim, ',;.?!|+&•*-–)\t') ||
  /^(?:and|plus|with|in|into|to)$/.test(prim.text);

/** "Autocorrect, it means lye", "should be lye", "* lye": the slip set right, which weighs nothing itself. */
const isSetRight = (prims: readonly Prim[], k: number): boolean =>
  /^(?:means?|meant|be|say|to|as|for|\*|=)$/.test(prims[k - 1]?.text ?? '') &&
  !prims.slice(k + 1, k + 4).some(({ kind }) => kind === 'number');

/** The word at `k` stands with a weight in a row of its own, and no alkali is named by its right name elsewhere. */
export function isSlipOfLye(prims: readonly Prim[], k: number, lexicon: Lexicon): boolean {
  if (!isWeighedBehind(prims, k, lexicon) && !isWeighedBefore(prims, k, lexicon)) return false;
  return !prims.some(({ kind, text }, at) => kind === 'word' && alkalis.test(text) && !isSetRight(prims, at));
}

const isSpoken = (prim: Prim | undefined): boolean => prim?.kind === 'word' && isNumberWord(prim.text);

/** Where the numeral that begins at `at` ends, in figures or in words; `at` where none does. */
function numeralEnd(prims: readonly Prim[], at: number): number {
  if (prims[at]?.kind === 'number') return at + 1;
  let end = at;
  while (isSpoken(prims[end]) || (end > at && prims[end]?.text === 'and' && isSpoken(prims[end + 1]))) end++;
  return end;
}

function isWeighedBehind(prims: readonly Prim[], k: number, lexicon: Lexicon): boolean {
  let before = k - 1;
  while (k - before <= 3 && /^(?:the|my|our|then|of)$/.test(prims[before]?.text ?? '')) before--;
  if (!isEdge(prims[before])) return false;
  let at = k + 1;
  while (isSign(prims[at], ':=-–\t') || (at === k + 1 && /^(?:is|was)$/.test(prims[at]?.text ?? ''))) at++;
  const end = numeralEnd(prims, at);
  if (end === at) return false;
  const unit = unitAt(prims, end, lexicon);
  // "122 g." holds its full stop
  return unit?.unit.dimension === 'mass' && (isEdge(prims[unit.end]) || prims[unit.end - 1]?.text === '.');
}

function isWeighedBefore(prims: readonly Prim[], k: number, lexicon: Lexicon): boolean {
  if (!isEdge(prims[k + 1])) return false;
  let at = k - 1;
  if (prims[at]?.text === 'of') at--;
  const end = at + 1;
  while (at > 0 && end - at <= 2 && prims[at]?.kind !== 'number') at--;
  if (prims[at]?.kind !== 'number') return false;
  const unit = unitAt(prims, at + 1, lexicon);
  return unit?.unit.dimension === 'mass' && unit.end === end;
}
