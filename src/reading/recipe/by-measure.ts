/** Lye by the spoon or the cup: "four level tablespoons of lye", "for lye I took 5 good spoonfuls", "lye by the mug". */

import { rawText } from '../text/scan.ts';
import { isIngredient, isMark, isStop, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import type { Assembly, Row } from './rows.ts';

const spoons =
  /^(?:(?:tea|table|dessert|soup|coffee)?spoons?(?:fuls?)?|tb?sps?|tbs|tbl|scoops?|capfuls?|thimbles?(?:fuls?)?)$/;
const vessels =
  /^(?:(?:tea|egg|coffee)?cups?(?:fuls?)?|mugs?(?:fuls?)?|beakers?|ladles?(?:fuls?)?|glass(?:es|fuls?)?|handfuls?|fistfuls?)$/;
const heaped =
  /^(?:level|leveled|levelled|heaped|heaping|rounded|scant|flat|good|big|small|large|full|generous|about|of|the|my|a|an)$/;
/** What dry alkali is called by its grain. */
const grains =
  /^(?:micro)?(?:beads?|pearls?|prills?|flakes?|granules?|crystals?|pellets?|grains?|powder|stuff|it|that)$/;
/** Words between the lye and its measure. */
const linking =
  /^(?:is|was|were|its|by|in|i|we|it|took|take|used|use|put|did|had|the|a|an|about|around|roughly|just|only|half|of|and|measured|came|to)$/;
const mostLinks = 10;

const isSpoon = (token: Token | undefined): boolean => spoons.test(spoken(token));
const isCup = (token: Token | undefined): boolean => vessels.test(spoken(token));
const isVolume = (token: Token | undefined): boolean => token?.t === 'quantity' && token.quantity.dim === 'volume';
const isCount = (token: Token | undefined): boolean =>
  token?.t === 'quantity' ? token.quantity.dim === 'bare' : /^(?:few|some|several|half)$/.test(spoken(token));

/** Where the measure begins that ends before token `at`; -1 where none does. */
function measureBefore(tokens: readonly Token[], at: number): number {
  let k = at - 1;
  while (at - k <= 4 && heaped.test(spoken(tokens[k]))) k--;
  if (isVolume(tokens[k])) return k;
  if (!isSpoon(tokens[k]) && !isCup(tokens[k])) return -1;
  let from = k;
  while (k - from <= 4 && heaped.test(spoken(tokens[from - 1]))) from--;
  if (isCount(tokens[from - 1])) from--;
  return /^(?:many|much|no|not|without|which|per)$/.test(spoken(tokens[from - 1])) ? -1 : from;
}

/** Behind the measure that stands behind token `from`, counted and of nothing else; -1 where none does. */
function measureBehind(tokens: readonly Token[], from: number): number {
  let counted = false;
  for (let k = from; k - from <= mostLinks && !isStop(tokens[k]); k++) {
    const [token, next] = [tokens[k], tokens[k + 1]];
    if (isVolume(token) || ((isSpoon(token) || isCup(token)) && counted)) {
      const isOf = spoken(next) === 'of';
      const at = isOf && spoken(tokens[k + 2]) === 'the' ? k + 3 : k + 2;
      if (isOf && grains.test(spoken(tokens[at]))) return at + 1;
      return isOf || isIngredient(next) ? -1 : k + 1;
    }
    const word = spoken(token);
    if (isCount(token) || (word === 'the' && spoken(tokens[k - 1]) === 'by')) counted = true;
    else if (!isMark(token, ':,-=(') && !linking.test(word) && !heaped.test(word)) return -1;
  }
  return -1;
}

/** No weight of the alkali is said, and a measure of it is. */
export function alkaliByMeasure(assembly: Assembly, rows: readonly Row[]): void {
  const { items, tokens, prims } = assembly.source;
  const isSaid = ({ named: { meaning }, amount }: Row): boolean =>
    /^(?:alkali|stock)$/.test(meaning.kind) && amount?.dim === 'mass';
  if (rows.some(isSaid) || assembly.doubts.some(({ id }) => id === 'alkali-volume')) return;
  for (const item of items) {
    if (item.kind !== 'thing' || item.named.meaning.kind !== 'alkali') continue;
    const before = measureBefore(tokens, item.from);
    const [from, to] = before >= 0 ? [before, item.to] : [item.from, measureBehind(tokens, item.to)];
    const [first, last] = [tokens[from], tokens[to - 1]];
    if (to < 0 || !first || !last) continue;
    assembly.doubts.push({ id: 'alkali-volume', said: rawText(prims, first.from, last.to) });
    return;
  }
}
