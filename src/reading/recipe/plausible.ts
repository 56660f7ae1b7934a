import type { AlkaliId, Catalogue } from '../../catalogue/types.ts';
import type { ReadAmount, RecipeReading } from '../reading.ts';
import type { Roles } from './roles.ts';
import { type Assembly, type Row, roundTo } from './rows.ts';
import { isStatementOf } from './totals.ts';

const factor = 39.997 / 56.105;

/** Grams of pure alkali that the fats need. */
export function demandOf(fats: readonly ReadAmount[], catalogue: Catalogue, id: AlkaliId = 'naoh'): number {
  const share = (id === 'naoh' ? factor : 1) / 1000;
  return fats.reduce(
    (sum, one) => sum + one.grams * (catalogue.fats.get(one.id)?.saponification.nominal ?? 0) * share,
    0,
  );
}

/** Fats of the smallest batch that people make, in g. */
const leastBatch = 50;

/** `1.000 g`: told with an assumption where only one reading fits the alkali, asked where both or none do. */
export function decimals(
  assembly: Assembly,
  rows: readonly Row[],
  catalogue: Catalogue,
  alkaliGrams: number,
  roles: Roles,
): void {
  const odd = rows.filter(
    (row) =>
      row.amount?.other !== null &&
      row.amount?.other !== undefined &&
      !['additive', 'scent'].includes(row.named.meaning.kind),
  );
  if (odd.length === 0) return;
  const [first] = odd;
  if (!first?.amount || first.amount.other === null) return;
  const demand = (swap: boolean): number =>
    rows
      .filter((row) => row.named.meaning.kind === 'fat')
      .reduce((sum, row) => {
        const grams = row.grams ?? 0;
        const own =
          row.amount?.other != null && row.amount.value > 0 ? (grams * row.amount.other) / row.amount.value : grams;
        return (
          sum +
          ((swap ? own : grams) * (catalogue.fats.get(row.named.meaning.id)?.saponification.nominal ?? 0) * factor) /
            1000
        );
      }, 0);
  const alkali = (swap: boolean): number => {
    const row = odd.find((one) => one.named.meaning.kind === 'alkali');
    return swap && row?.amount?.other != null && row.amount.value > 0
      ? (alkaliGrams * row.amount.other) / row.amount.value
      : alkaliGrams;
  };
  const fitting = (swap: boolean): boolean =>
    alkali(swap) > 0 && alkali(swap) / demand(swap) > 0.6 && alkali(swap) / demand(swap) < 1.6;
  const allAlike =
    odd.length > 1 &&
    odd.some((row) => row.named.meaning.kind === 'alkali') &&
    odd.some((row) => row.named.meaning.kind === 'fat');
  const grouped = first.amount.value > first.amount.other;
  if (fitting(false) && !(allAlike && fitting(true))) {
    if (!(grouped && first.amount.text.includes(',')))
      assembly.assume('number', `I took "${first.amount.text}" as ${roundTo(first.amount.value, 3)} g.`);
    return;
  }
  if (alkaliGrams === 0 && grouped && isTotalled(assembly, rows, roles)) return;
  const natural = first.amount.text.includes(',') && grouped;
  const fatGrams = rows.reduce((sum, { named, amount, grams }) => {
    const less = amount?.other != null && amount.value > 0 ? Math.min(1, amount.other / amount.value) : 1;
    return named.meaning.kind === 'fat' ? sum + (grams ?? 0) * less : sum;
  }, 0);
  // "12,000 g" is no twelve grams where that makes a batch of twenty
  if (natural && fitting(false) && fatGrams < leastBatch) return;
  if (alkaliGrams === 0 && (natural || /kg|lb/.test(first.amount.unit?.id ?? ''))) return;
  assembly.doubts.push({ id: 'decimal', said: first.amount.text, readings: [first.amount.value, first.amount.other] });
}

/** Why such a total is no amount of anything. */
const agreed = 'a total that agrees';

/** "1 000 g", "500 g" and a total of 1 500 g: the fats as they were read make a weight of the post, and read otherwise none. */
function isTotalled(assembly: Assembly, rows: readonly Row[], roles: Roles): boolean {
  const { items, bound, tokens, prims } = assembly.source;
  const stated = [roles.totalFats, ...roles.totals.map(({ quantity }) => quantity)];
  for (const k of bound.best.orphans) {
    const item = items[k];
    if (item?.kind === 'amount' && item.quantity.dim === 'mass') stated.push(item.quantity);
  }
  const fats = rows.filter(({ named, grams }) => named.meaning.kind === 'fat' && grams !== null);
  const sum = fats.reduce((all, { grams }) => all + (grams ?? 0), 0);
  const otherwise = fats.reduce(
    (all, { amount, grams }) =>
      all + (grams ?? 0) * (amount?.other != null && amount.value > 0 ? amount.other / amount.value : 1),
    0,
  );
  // a total that was set aside, in the unit of the fats
  const factor = fats.find(({ amount }) => amount?.unit)?.amount?.unit?.factor ?? 1;
  const aside = tokens.flatMap((token) =>
    token.t === 'aside' && token.reason === agreed
      ? [factor * Number(token.numbers.map((k) => prims[k]?.text ?? '').join(''))]
      : [],
  );
  const isSaid = (grams: number): boolean =>
    stated.some((one) => one && [one.value, one.other ?? one.value].some((said) => isStatementOf(said, grams))) ||
    aside.some((said) => isStatementOf(said, grams));
  return fats.length > 1 && isSaid(sum) && !isSaid(otherwise);
}

/** Nominal superfat of a reading, as a fraction; null without fat or alkali. KOH of no stated purity counts as 90 %. */
export function superfatOf({ fats, alkali }: RecipeReading, catalogue: Catalogue): number | null {
  if (fats.length === 0 || alkali.length === 0) return null;
  const pure = alkali.reduce(
    (sum, { id, grams, purity }) =>
      sum + grams * (purity?.nominal ?? (id === 'koh' ? 0.9 : 1)) * (id === 'koh' ? factor : 1),
    0,
  );
  return 1 - pure / demandOf(fats, catalogue);
}

/** What a gram of anything else in the pot takes of sodium hydroxide, in g, at the most: citric acid. */
const mostTaken = 0.63;

/**
 * Alkali of a third to three times the demand may be wrong, but is meant; beyond that something was misread. `beside`:
 * grams of acids and of liquids, which take alkali as well.
 */
export function plausible(
  assembly: Assembly,
  fats: readonly ReadAmount[],
  alkali: RecipeReading['alkali'],
  beside: number,
  catalogue: Catalogue,
): void {
  if (fats.length === 0 || alkali.length === 0 || assembly.doubts.length > 0) return;
  const pure = alkali.reduce((sum, one) => sum + one.grams * (one.id === 'koh' ? factor : 1), 0);
  const demand = demandOf(fats, catalogue);
  if (pure < 0.3 * demand || pure > 3 * (demand + mostTaken * beside))
    assembly.doubts.push({
      id: 'implausible',
      alkaliGrams: alkali.reduce((sum, one) => sum + one.grams, 0),
      fatGrams: fats.reduce((sum, one) => sum + one.grams, 0),
    });
}
