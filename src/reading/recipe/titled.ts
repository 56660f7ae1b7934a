/** A heading that weighs the whole and names a fat: "1 kg coconut dream", above a list that comes to 1 kg. */

import { isMark, spoken } from '../words/token-is.ts';
import type { Token } from '../words/tokens.ts';
import { demandOf } from './plausible.ts';
import { type Assembly, label, type Row, sameAmount } from './rows.ts';

/** Of a weight that says a sum. */
const rounding = 0.011;
/** Superfat (a fraction) of a recipe that somebody wants to make. */
const usual = { least: -0.05, most: 0.2 };

const isFat = ({ named, grams, after }: Row): boolean => named.meaning.kind === 'fat' && grams !== null && !after;
const isSame = (one: Row, other: Row): boolean =>
  one.named.meaning.id === other.named.meaning.id && sameAmount(one, other);
const sumOf = (rows: readonly Row[]): number => rows.reduce((sum, { grams }) => sum + (grams ?? 0), 0);

/** Words of a name of its own, before the list begins: "dream", "bar no. 3"; no sentence. */
function isHeading(tokens: readonly Token[], { token }: Row, next: number): boolean {
  let ends = false;
  let words = 0;
  let from = token;
  while (from > 0 && tokens[from - 1]?.t !== 'line') from--;
  if (isMark(tokens[from + 1], ':') && /^(?:title|name|recipe)$/.test(spoken(tokens[from]))) return true;
  for (let k = from; k < next && !ends; k++) {
    const one = tokens[k];
    if (isMark(one, '.;!?')) return false;
    if (one?.t === 'line') ends = one.text === 'blank';
    else if (isMark(one, ':')) ends = k > token + 1;
    // "Tallow & hemp, 1 kg"
    else if (one?.t === 'word' ? one.sort !== 'filler' : one?.t === 'name' && k !== token) words++;
  }
  return ends && words > 0 && words <= mostWords;
}
const mostWords = 3;

/** The rows without such a heading; a question where it does not come to what is listed, once it may be `asked`. */
export function withoutTitle(assembly: Assembly, rows: readonly Row[], asked: boolean): readonly Row[] {
  const fats = rows.filter(isFat);
  const [first, second] = fats;
  if (fats.length < leastRows || !first?.amount || !second || rows.some(({ token }) => token < first.token))
    return rows;
  const { tokens, catalogue } = assembly.source;
  const next = Math.min(...rows.filter((row) => row !== first).map(({ token }) => token));
  if (!isHeading(tokens, first, next)) return rows;
  const rest = fats.slice(1);
  const isAgain = rest.some(({ named }) => named.meaning.id === first.named.meaning.id);
  const [grams, listed] = [first.grams ?? 0, sumOf(rest)];
  // said again in the list
  if (rest.some((row) => isSame(row, first))) return rows;
  // a weight that is told once more below its list
  const once = sumOf(rest.filter((row, k) => !rest.slice(0, k).some((before) => isSame(before, row))));
  const isSum = [listed, once].some((sum) => Math.abs(grams - sum) <= rounding * sum);
  if (!isSum && isAgain && asked) {
    const of = label(assembly, first.named.meaning);
    const said = fats.filter(({ named }) => named.meaning.id === first.named.meaning.id).map((row) => row.said);
    assembly.doubts.push({ id: 'two-amounts', of, said });
    return rows.filter((row) => row !== first);
  }
  if (!isSum || !(isAgain || fitsWithout())) return rows;
  assembly.assume('left-out', `I took "${first.said}" of the heading as the weight of all the fats.`);
  assembly.fate(first.amount, 'aside', 'a total that agrees');
  if (first.same) assembly.fate(first.same, 'aside', 'a total that agrees');
  return rows.filter((row) => row !== first);

  /** The lye is for what is listed, and not for as much again. */
  function fitsWithout(): boolean {
    const lye = rows.find(({ named, grams: weighs }) => named.meaning.kind === 'alkali' && weighs !== null);
    if (!lye) return false;
    const id = lye.named.meaning.id === 'koh' ? 'koh' : 'naoh';
    const amounts = rest.map(({ named, grams: weighs, said }) => ({ id: named.meaning.id, grams: weighs ?? 0, said }));
    const superfat = 1 - (lye.grams ?? 0) / demandOf(amounts, catalogue, id);
    return superfat >= usual.least && superfat <= usual.most;
  }
}
const leastRows = 3;
