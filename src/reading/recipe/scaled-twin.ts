/**
 * A recipe told twice, the second time in another size: "200 g olive, 80 g coconut. Doubled: 400 g olive, 160 g
 * coconut". The one that was made of it counts.
 */

import type { Token } from '../words/tokens.ts';
import { type Assembly, type Row, roundTo } from './rows.ts';

const sized =
  /\b(?:halv\w+|half|doubl\w+|twice|tripl\w+|trebl\w+|quadrupl\w+|times|scal(?:e|ed|ing)|multipl\w+|single|quarter|third)\b|(?<!\w)[x×] ?\d|\d ?[x×](?!\w)/i;
const undecided = /\b(?:both|either|which (?:one|of|is|recipe|batch|size)|compar\w*)\b/i;
/** "I made the double", "is the single one right?" */
const pointing =
  /\b(?:made|make|making|did|do|used?|using|for|check|about|is|are|want|mean|take|took) (?:only |just |then )?(?:the|my) (?<size>single|small(?:er)?|big(?:ger)?|large|larger|doubled?|half|halved|full|whole|original|first|second|tripled?|trebled|test|last|new|old)\b(?! (?:lye|oils?|water|fats?|amounts?))/gi;
const smaller = /^(?:single|small|half|halved|test)/;
const larger = /^(?:big|large|double|triple|treble)/;

const labelled =
  /(?:^|[.;,!?:] |\b(?:the|my|a) )(?:single|double|triple|small(?:er)?|big(?:ger)?|large|larger|little|mini|half|full) (?:one |size |batch |loaf |version |recipe )?(?:is|are|was|were|has|had|=|:)?\W*$/;

/** Amounts of the two sizes differ by kitchen rounding, at the most. */
const rounding = 0.025;
const leastApart = 0.05;

/** The rows of the size that counts, where all are told twice in one ratio; null where they are not. */
export function withoutTwin(assembly: Assembly, rows: readonly Row[]): readonly Row[] | null {
  const pairs = pairsOf(rows);
  if (pairs === null || pairs.length < 2) return null;
  const { text, tokens } = assembly.source;
  if (!sized.test(text) || undecided.test(text)) return null;
  const factor = ratioOf(pairs);
  if (factor === null) return null;
  const place = meantOf(text, tokens, pairs, factor);
  if (place === null) return null;
  const gone = new Set(pairs.map((pair) => pair[1 - place]));
  const { said } = pairs[0]?.[place] ?? {};
  const many = roundTo(place === 1 ? factor : 1 / factor, 3);
  assembly.assume(
    'left-out',
    `The post has one recipe in two sizes: I took the one with ${said} of ${pairs[0]?.[0].named.text}, ${many} times the other.`,
  );
  for (const row of gone) {
    if (row?.amount) assembly.fate(row.amount, 'aside', 'of another size');
    if (row?.same) assembly.fate(row.same, 'aside', 'of another size');
  }
  return rows.filter((row) => !gone.has(row));
}

type Pair = readonly [Row, Row];

/** All that is weighed twice; null where a fat is not. */
function pairsOf(rows: readonly Row[]): readonly Pair[] | null {
  const byKey = new Map<string, Row[]>();
  for (const row of rows) {
    const { kind, id } = row.named.meaning;
    if (row.grams === null || !/^(?:fat|alkali|water|liquid)$/.test(kind)) continue;
    const key = kind === 'alkali' ? kind : `${kind} ${id}`;
    const list = byKey.get(key);
    if (list) list.push(row);
    else byKey.set(key, [row]);
  }
  const pairs: Pair[] = [];
  for (const [key, [first, second, more]] of byKey) {
    if (first && second && !more) pairs.push([first, second]);
    else if (more || key.startsWith('fat')) return null;
  }
  // one size stands whole before the other
  const last = Math.max(...pairs.map(([{ token }]) => token));
  return pairs.every(([, { token }]) => token > last) ? pairs : null;
}

/** The second to the first, by the fats; the alkali may have been miscounted. */
function ratioOf(pairs: readonly Pair[]): number | null {
  const fats = pairs.filter(([{ named }]) => named.meaning.kind === 'fat');
  const ratios = (fats.length > 1 ? fats : pairs).map(([a, b]) => (b.grams ?? 0) / (a.grams ?? 1));
  const [first] = ratios;
  if (first === undefined || first <= 0 || Math.abs(first - 1) < leastApart) return null;
  return ratios.every((one) => Math.abs(one / first - 1) < rounding) ? first : null;
}

/** Which of the two counts: the second, unless the post points at the other; null where both are but named by size. */
function meantOf(text: string, tokens: readonly Token[], pairs: readonly Pair[], factor: number): 0 | 1 | null {
  const heads = [0, 1].map((k) => {
    const from = Math.min(...pairs.map((pair) => pair[k]?.token ?? 0));
    return tokens
      .slice(Math.max(0, from - 8), from)
      .map((one) => ('text' in one ? one.text.toLowerCase() : ''))
      .join(' ');
  });
  const size = [...text.matchAll(pointing)].at(-1)?.groups?.['size']?.toLowerCase();
  // "single is …, double is …": neither was made of the other
  if (size === undefined) return heads.every((head) => labelled.test(head)) ? null : 1;
  const isIn = heads.map((head) => head.includes(size));
  if (isIn[0] !== isIn[1]) return isIn[0] ? 0 : 1;
  if (/^(?:first|original|full|whole|old)$/.test(size)) return 0;
  if (smaller.test(size)) return factor < 1 ? 1 : 0;
  return larger.test(size) && factor < 1 ? 0 : 1;
}
