/** Recipes in running text that a clause calls by a word of what stands ahead of them, or by their size. */
import { noun } from './whose.ts';

/** What stands ahead of the figures of a recipe in running text, and these. */
export interface Headed {
  /** "jo", "trial loaf", "2kg", without what all of them are called. */
  readonly names: readonly string[];
  readonly figures: readonly number[];
}

const opening =
  /^\W*(?:(?:and|but|so|then|while|whereas|ok|now|with|for|is|of) +)*(?:(?:my|our|the|an?|her|his|their|this|that|im|i['’]?m|making|doing) +)*/i;
const verb =
  /(?:^|\s)(?:is|are|was|were|has|had|have|makes?|made|does|did|do|uses?|used|takes?|took|says?|said|puts?|i|we|she|he|it)(?!\p{L})|[:=,(]/iu;
const common =
  /^(?:recipe|batch|soap|version|bar|loaf|one|list|lot|pot|mix|mine|hers?|his|ours|theirs|own|i|we|it|its|he|she|they|and|of|for|with|in|at|the|my|lye|oils?|fats?|water|just|also|always|usually|last|this|time|g|both|two|all|old|new|first|second|up|tho|though|times?|weeks?|months?|years?|days?|hours?|minutes?|kg|oz|lbs?)$/;

const stemOf = (word: string): string => word.toLowerCase().replace(/['’]?s$/, '');

export function namesIn(head: string): readonly string[] {
  const said = head.replace(opening, '');
  const end = said.search(verb);
  const words = (end < 0 ? said : said.slice(0, end)).match(/[\p{L}'’]+/gu) ?? [];
  const sizes = [...head.matchAll(/(?<![\d.,])(\d+(?:[.,]\d+)?) ?(kg|g|oz|lbs?)(?!\p{L})/giu)].map(
    ([, figure, unit]) => `${figure}${unit?.toLowerCase()}`,
  );
  const counted = (head.match(counts) ?? []).map((one) => one.toLowerCase());
  return [...counted, ...words.slice(0, mostWords).map(stemOf), ...sizes].filter(
    (word) => word.length > 1 && !common.test(word),
  );
}
const mostWords = 4;
/** "Attempt two". */
const counts = /(?<!\p{L})\p{L}{3,} (?:one|two|three|four|\d)(?![\p{L}\d.,%]| ?(?:g|kg|oz|lbs?)(?!\p{L}))/giu;

const ofKind = new RegExp(`^ ${noun}`, 'iu');

/** Each word of this clause that is a name of one of them, with its place. */
export function echoesIn(
  clause: string,
  all: readonly Headed[],
): readonly { readonly part: number; readonly from: number; readonly to: number }[] {
  const found: { part: number; from: number; to: number }[] = [];
  const words = /(?<=\b(?:the|my|that|this|for) )\d[\d.,]* ?(?:kg|g|oz|lbs?)(?!\p{L})|\p{L}+(?:['’]s)?/giu;
  for (const { 0: word, index } of [...clause.matchAll(counts), ...clause.matchAll(words)]) {
    if (found.some(({ from, to }) => from <= index && index < to)) continue;
    const said = /^\d/.test(word)
      ? word.replace(' ', '').toLowerCase()
      : word.includes(' ')
        ? word.toLowerCase()
        : stemOf(word);
    const of = all.flatMap(({ names }, k) => (names.includes(said) ? [k] : []));
    const [part] = of;
    const kind = ofKind.exec(clause.slice(index + word.length))?.[0].length ?? 0;
    if (part !== undefined && of.length === 1) found.push({ part, from: index, to: index + word.length + kind });
  }
  return found;
}

const unitsOf: Readonly<Record<string, number>> = { k: 1000, g: 1, o: 28.35, l: 453.6, p: 453.6 };

/** The figures of a list, in grams where some have a unit; none where some of several units have no unit. */
export function weightsIn(list: string): readonly number[] {
  const found = [...list.matchAll(/(\d+(?:[.,]\d+)?) ?(?:(kg|kilo|g|oz|ounce|lb|pound)s?(?!\p{L}))?/giu)];
  const units = new Set(found.map(([, , unit]) => unit?.[0]?.toLowerCase() ?? 'g'));
  if (units.size > 1 && found.some(([, , unit]) => unit === undefined)) return [];
  return found.map(
    ([, figure = '', unit]) => Number(figure.replace(',', '.')) * (unitsOf[unit?.[0]?.toLowerCase() ?? 'g'] ?? 0),
  );
}

const sumOf = ({ figures }: Headed): number => figures.reduce((all, one) => all + one, 0);

/** It has the figures of another one, all so many times. */
export function isMultiple(one: Headed, of: Headed): boolean {
  const ratios = of.figures.slice(0, one.figures.length).map((figure, k) => (one.figures[k] ?? 0) / figure);
  const [first = 1] = ratios;
  return (
    ratios.length >= leastAlike &&
    Math.abs(first - 1) > rounding &&
    ratios.every((ratio) => Math.abs(ratio / first - 1) < rounding)
  );
}
const leastAlike = 2;
const rounding = 0.03;

/** So much more or less is another size. */
const otherSize = 1.25;

/** The largest, or the smallest. */
export function ofSize(isLarge: boolean, all: readonly Headed[]): number | null {
  const sums = all.map(sumOf).toSorted((a, b) => (isLarge ? b - a : a - b));
  const [first = 0, next = 0] = sums;
  if (first <= 0 || next <= 0 || Math.max(first / next, next / first) < otherSize) return null;
  return all.findIndex((one) => sumOf(one) === first);
}
