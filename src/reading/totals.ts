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
    const { value, other, upTo } = roles.totalFats;
    const fit = [fats, allFats, allFats + others, allFats + alkali + wet];
    // "1.200 g of oils": one reading that agrees is enough
    if (upTo === null && ![value, other ?? value].some((said) => fit.some((sum) => near(said, sum))))
      assembly.doubts.push({ id: 'total-disagrees', said: roles.totalFats.text, sum: allFats });
  }
  let parts: readonly number[] | null = null;
  for (const total of roles.totals) {
    const { value, other } = total.quantity;
    const said = other === null ? [total.grams] : [total.grams, (total.grams * other) / value];
    const agrees = (sum: number): boolean => said.some((grams) => near(grams, sum));
    if (!total.strict || allFats === 0 || options.some(agrees)) continue;
    parts ??= sumsOf(rows);
    if (parts.some(agrees)) continue;
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
