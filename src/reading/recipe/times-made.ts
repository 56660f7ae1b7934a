/** A recipe so many times as its post says that it was made, each of its rows by its own factor (`times-each`). */
import type { RecipeReading } from '../reading.ts';
import { usual } from '../taken-back/part-times.ts';
import type { TimesEach } from './times-each.ts';

const moreWater =
  /\b(?:doubled?|tripled?|twice|half|halved) (?:the )?(?:amount of )?water\b|\bwater (?:(?:i|we|was|is|got) )*(?:doubled|tripled|halved)\b/i;

/** What is not in the pot as it was told; null where something that counts was told nothing of. */
export function timedEach(
  reading: RecipeReading,
  told: TimesEach,
  nameOf: (fat: string) => string,
): RecipeReading | null {
  const { fats, after, alkali, liquids, acids, waterGrams, doubts } = reading;
  // what was changed or left out besides: nobody knows what it is times of
  const isChanged = reading.assumptions.some(({ id }) => id === 'corrected' || id === 'left-out');
  if (doubts.length > 0 || fats.length === 0 || isChanged) return null;
  const kinds = { fats: told.fats ?? told.whole, alkali: told.alkali ?? told.whole, water: told.water ?? told.whole };
  const ofFat = (id: string): number | null => told.each.get(id) ?? kinds.fats;
  const lines = [...fats, ...after];
  // "I made half of those oils. 84 g lye is what went in": weighed for what was made
  const isOwnLye = kinds.alkali === null && kinds.fats !== null && isFor(reading, ofFat);
  const isLeft =
    lines.some(({ id }) => ofFat(id) === null) ||
    (alkali.length > 0 && kinds.alkali === null && !isOwnLye) ||
    ((waterGrams !== null || liquids.length > 0) &&
      kinds.water === null &&
      told.whole === null &&
      told.fats === null) ||
    [...told.each.keys()].some((id) => !lines.some((line) => line.id === id)) ||
    (acids.length > 0 && told.whole === null);
  // "twice the water, because it was thick"
  const isWaterOnly =
    told.said.some((one) => moreWater.test(one)) &&
    told.each.size === 0 &&
    told.water !== null &&
    [told.whole, told.fats, told.alkali].every((one) => one === null);
  if (isLeft && !isWaterOnly) return null;
  const by = <T extends { readonly grams: number }>(line: T, factor: number): T => ({
    ...line,
    grams: line.grams * factor,
  });
  const [ofLye, ofWater] = [kinds.alkali ?? 1, kinds.water ?? kinds.alkali ?? 1];
  const others = told.whole ?? kinds.fats ?? 1;
  const isOne = new Set([...lines.map(({ id }) => ofFat(id)), ofLye, ofWater]).size === 1;
  const sized = isOne ? `all amounts times ${plain(others)}` : inWords(reading, ofFat, ofLye, ofWater, nameOf);
  return {
    ...reading,
    fats: fats.map((line) => by(line, ofFat(line.id) ?? 1)),
    after: after.map((line) => by(line, ofFat(line.id) ?? 1)),
    alkali: alkali.map((line) => by(line, ofLye)),
    liquids: liquids.map((line) => by(line, ofWater)),
    acids: acids.map((line) => by(line, others)),
    others: reading.others.map((one) => ({ ...one, grams: one.grams === null ? null : one.grams * others })),
    waterGrams: waterGrams === null ? null : waterGrams * ofWater,
    totalFats: isOne && reading.totalFats !== null ? reading.totalFats * others : null,
    assumptions: [...reading.assumptions, { id: 'number', text: `I took ${sized}, as the post says.` }],
    fates: [
      ...reading.fates,
      ...told.said.flatMap((one) =>
        (one.match(/\d+(?:[.,]\d+)?/g) ?? []).map((figure) => ({
          text: figure,
          fate: 'used' as const,
          why: 'times all amounts',
        })),
      ),
    ],
  };
}

/** "The fats times 2, the lye and the water as written". */
function inWords(
  { fats, after, alkali, liquids, waterGrams }: RecipeReading,
  ofFat: (id: string) => number | null,
  ofLye: number,
  ofWater: number,
  nameOf: (fat: string) => string,
): string {
  const ids = [...new Set([...fats, ...after].map(({ id }) => id))];
  const [first = 1, ...more] = new Set(ids.map((id) => ofFat(id) ?? 1));
  const parts: readonly (readonly [string, number])[] = [
    ...(more.length === 0
      ? [['the fats', first] as const]
      : ids.map((id) => [`the ${nameOf(id)}`, ofFat(id) ?? 1] as const)),
    ...(alkali.length > 0 ? [['the lye', ofLye] as const] : []),
    ...(waterGrams !== null || liquids.length > 0 ? [['the water', ofWater] as const] : []),
  ];
  const byFactor = Map.groupBy(parts, ([, factor]) => plain(factor));
  const and = new Intl.ListFormat('en-GB');
  const said = [...byFactor].map(([factor, of]) => {
    const names = and.format(of.map(([name]) => name));
    return factor === 1 ? `${names} as written` : `${names} times ${factor}`;
  });
  return said.join(', ');
}

/** It tells that some of the fats went in more or less than once. */
export const timesFats = ({ whole, fats, each }: TimesEach): boolean =>
  [whole, fats, ...each.values()].some((factor) => factor !== null && factor !== 1);

/** The alkali fits the fats as they were made, and not as they are written. */
function isFor({ fats, alkali }: RecipeReading, ofFat: (id: string) => number | null): boolean {
  const [one, ...more] = alkali;
  if (!one || more.length > 0) return false;
  const { least, most } = usual[one.id];
  const fits = (grams: number): boolean => one.grams >= least * grams && one.grams <= most * grams;
  const sum = (times: (id: string) => number): number =>
    fats.reduce((all, { id, grams }) => all + grams * times(id), 0);
  return fits(sum((id) => ofFat(id) ?? 1)) && !fits(sum(() => 1));
}

const plain = (factor: number): number => Number(factor.toPrecision(4));
