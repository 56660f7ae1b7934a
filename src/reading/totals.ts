import type { Roles } from './roles.ts';
import type { Assembly, Row } from './rows.ts';

export function crossTotals(
  assembly: Assembly,
  roles: Roles,
  sums: Readonly<Record<'fats' | 'after' | 'alkali' | 'water' | 'liquids' | 'others', number>>,
  rows: readonly Row[],
): void {
  const { fats, after, alkali, water, liquids, others } = sums;
  const wet = water + liquids;
  const near = (a: number, b: number): boolean => b > 0 && Math.abs(a - b) <= Math.max(0.02 * b, 1.01);
  const allFats = fats + after;
  const options = [
    fats,
    allFats,
    alkali + wet,
    alkali + water,
    allFats + alkali + wet,
    fats + alkali + wet,
    allFats + alkali + water,
    allFats + wet,
    allFats + alkali + wet + others,
    fats + alkali + wet + others,
    fats + others,
    allFats + others,
    fats + alkali,
    others,
    wet,
  ];
  if (roles.totalFats && allFats > 0) {
    const said = roles.totalFats.value;
    if (
      roles.totalFats.upTo === null &&
      ![fats, allFats, allFats + others].some((sum) => near(said, sum)) &&
      !near(said, allFats + alkali + wet)
    )
      assembly.doubts.push({ id: 'total-disagrees', said: roles.totalFats.text, sum: allFats });
  }
  let parts: readonly number[] | null = null;
  for (const total of roles.totals) {
    if (!total.strict || allFats === 0 || options.some((sum) => near(total.grams, sum))) continue;
    parts ??= sumsOf(rows);
    if (parts.some((sum) => near(total.grams, sum))) continue;
    assembly.doubts.push({ id: 'total-disagrees', said: total.quantity.text, sum: allFats + alkali + wet });
  }
}

/** Sums that a post may state: of two or more neighbouring rows, and of alkali and water. */
export function sumsOf(rows: readonly Row[]): number[] {
  const sums: number[] = [];
  const weighed = rows.filter((row) => row.grams !== null).slice(0, 40);
  for (let from = 0; from < weighed.length; from++) {
    let sum = weighed[from]?.grams ?? 0;
    for (let to = from + 1; to < weighed.length; to++) {
      sum += weighed[to]?.grams ?? 0;
      sums.push(sum);
    }
  }
  return sums;
}
