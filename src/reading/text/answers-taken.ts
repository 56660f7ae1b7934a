/**
 * "> Rosi: 700 g olive and 300 g coconut, 143 g NaOH" and ">> Ute: I do 139 g with that", above "I took Rosi's oils and
 * Ute's 139 g": the fats of one answer, and the lye of another or of its writer.
 */
import type { Aside } from './book-columns.ts';

const unit = '(?:g|gr|grams?|oz|ounces?)';
const weight = `\\d+(?:[.,]\\d+)? ?${unit}\\b`;
const alkali = '(?:NaOH|KOH|lye|caustic(?: soda)?|sodium hydroxide|potassium hydroxide)';
/** Who answers, in a line that is quoted. */
const labelled = /^[ \t]*>[ \t>]*(\p{Lu}[\p{L}-]{1,14}):[ \t]+(\S[^\n]*)/gmu;
const statement = new RegExp(
  `[,;]?[ \\t]*(?:\\b(?:and|you|want|need|with|then|use|take|plus|i|do|would|go for|i'd)[ \\t]+)*(?:(${weight})[ \\t]+(?:of[ \\t]+)?(${alkali})\\b|\\b(${alkali})[ \\t]*[:=–-]?[ \\t]*(${weight}))`,
  'i',
);
const did = '\\b(?:took|used|went with|go with|going with|chose|copied|followed|kept|did|made it with)\\b';

/** The post with that lye alone; as it was where nobody takes any. */
export function withAnswersTaken(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const none = { text: post, told: [] };
  if (!/^[ \t]*>/m.test(post) || !/['’]s (?:oils?|fats?)\b/.test(post)) return none;
  const lines = new Map([...post.matchAll(labelled)].map((found) => [found[1] ?? '', found] as const));
  if (lines.size === 0) return none;
  const names = [...lines.keys()].join('|');
  const taken = new RegExp(
    `${did}[^.?!\\n]{0,12}?\\b(?<a>${names})['’]s (?:oils?|fats?)(?<way>[^.?!\\n\\d]{0,50}?)[ ,]+(?:and|but|with|plus)[ ]+(?:(?<b>${names})['’]s )?(?:(?<w>${weight})(?:(?: of)? (?:the )?(?<c>${alkali}))?|(?<d>lye(?: amount| figure)?))(?![\\p{L}\\d])`,
    'iu',
  ).exec(post);
  const { a = '', b, w, c, d, way = '' } = taken?.groups ?? {};
  const [first, second] = [lines.get(a), lines.get(b ?? '')];
  const said = first ? statement.exec(first[2] ?? '') : null;
  if (!taken || !first || !said || (b === undefined && c === undefined) || (d !== undefined && b === undefined))
    return none;
  const told = second ? (second[2]?.match(new RegExp(weight, 'gi')) ?? []) : [];
  const [only, ...more] = told;
  // nobody knows which of them is the lye
  if (b !== undefined && b !== a && (only === undefined || more.length > 0 || (w && figureOf(only) !== figureOf(w))))
    return none;
  const lye = w ?? only;
  if (lye === undefined || b === a) return none;
  const own = (first[2] ?? '').replace(said[0], '');
  const kind = c ?? said[2] ?? said[3] ?? 'lye';
  const text = post
    .replace(taken[0], `took the oils${way} and ${lye} ${kind}`)
    .replace(first[0], `> ${own}`)
    .replace(second?.[0] ?? '', second ? '>' : '');
  const why = 'what somebody else says';
  return { text, told: [{ text: said[0], why }, ...(second ? [{ text: second[2] ?? '', why }] : [])] };
}

const figureOf = (said: string): number => Number.parseFloat(said.replace(',', '.'));
