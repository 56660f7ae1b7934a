/**
 * What was bought or is in store, told before what of it went in: "Coconut: 500 g tub, 3.90. Olive: 1 kg can, 8.50. Lye: 1 kg.
 * Out of those I took 280 g coconut, 620 g olive and 127 g lye".
 */
import type { Aside } from './book-columns.ts';

/** Of several: of one thing, other rules hear it. */
const these = '(?:these|those|them|all (?:this|that|these|those)|it all|the lot)';
const using = "(?:took|take|used?|weighed|weigh|need(?:ed)?|put|went|goes?|melted|made|want(?:ed)?|(?:am|['’]m) using)";
const taken = new RegExp(
  `^\\W*(?:and |so |now |then )*(?:out of|from|of) ${these}\\b[^.!?\\n]{0,40}\\b${using}\\b|^\\W*(?:and |so |now |then )*(?:i |we |ive |i['’]ve )?(?:then |only |just )*${using} (?:out of|from|of) ${these}\\b`,
  'i',
);
const mayHold = new RegExp(`\\b(?:out of|from|of) ${these}\\b`, 'i');
const weight = /\d+(?:[.,]\d+)? ?(?:kilos?|kg|grams?|gr|g|oz|ounces?|lbs?|pounds?|litres?|liters?|l|ml)\b/gi;
const open = /\?|\b(?:if|should|could|would|next|per|each)\b/i;
/** How strong something is, or a day. */
const besides = /%|\bper ?cent\b|\d(?:st|nd|rd|th)\b/i;
const least = 2;
const leastName = 3;

const countOf = (text: string): number => (text.match(weight) ?? []).length;
const wordsIn = (text: string): ReadonlySet<string> =>
  new Set((text.toLowerCase().match(/\p{L}+/gu) ?? []).filter((word) => word.length >= leastName && !idle.has(word)));
const idle: ReadonlySet<string> = new Set(
  'the and out those these them this that took take used use from have has had got bought with for all kilo kilos gram grams pound pounds ounces tub can jar bag tin oil oils fat fats butter one two three'.split(
    ' ',
  ),
);

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Sentences and lines. */
function stretchesOf(post: string): readonly Stretch[] {
  const ends = [...post.matchAll(/\n+|(?<=[.!?;])\s+(?=\p{L}|\d)/gu)].map(
    ({ index, 0: gap }) => [index, index + gap.length] as const,
  );
  const starts = [0, ...ends.map(([, to]) => to)];
  return starts.map((from, k) => ({ from, to: ends[k]?.[0] ?? post.length }));
}

/** The post without what stands in store, where all that is in store is told again as far as it was taken. */
export function withoutStock(post: string): { readonly text: string; readonly told: readonly Aside[] } {
  const nothing = { text: post, told: [] };
  if (!mayHold.test(post)) return nothing;
  const all = stretchesOf(post);
  const textOf = ({ from, to }: Stretch): string => post.slice(from, to);
  const at = all.findIndex((one) => taken.test(textOf(one)));
  const own = all[at];
  if (!own || open.test(textOf(own)) || (countOf(textOf(own)) < least && !textOf(own).trimEnd().endsWith(':')))
    return nothing;
  const stock = all.slice(0, at).filter((one) => countOf(textOf(one)) > 0);
  // "out of those went in:", over a list
  const made = post.slice(own.from);
  const weights = stock.reduce((sum, one) => sum + countOf(textOf(one)), 0);
  if (
    weights < least ||
    countOf(made) < weights ||
    stock.some((one) => open.test(textOf(one)) || besides.test(textOf(one)))
  )
    return nothing;
  const again = wordsIn(made);
  const shared = stock.flatMap((one) => [...wordsIn(textOf(one))].filter((word) => again.has(word)));
  if (new Set(shared).size < weights) return nothing;
  const text = all.reduceRight(
    (rest, one) => (stock.includes(one) ? rest.slice(0, one.from) + rest.slice(one.to) : rest),
    post,
  );
  return { text, told: stock.map((one) => ({ text: textOf(one), why: 'what was bought or is in store' })) };
}
