/**
 * How much scent, as a share of the fat and of the finished bar, and the allergens it brings to the label.
 *
 * Makers count per cent of the fat, limits count per cent of the product. The bar: fat + alkali + scent, with the water
 * that a cured bar keeps (8–15 %, common practice); nothing is taken off for scent lost in the heat.
 */
import type { HeatData } from '../../catalogue/heat-types.ts';
import { type Band, done, fail, firstBad, type Outcome } from './outcome.ts';

export interface LoadInput {
  readonly fatGrams: number;
  /** Pure alkali, g; default 13 % of the fat (sodium hydroxide, usual fats, common practice). */
  readonly alkaliGrams?: number;
  /** Share of the fat; default 3 %. */
  readonly load?: number;
  /** Instead of `load`. */
  readonly scentGrams?: number;
  /** Parts of the scent by weight; null for a fragrance without composition. */
  readonly parts: readonly { readonly oil: string | null; readonly grams: number }[];
}

export interface Declared {
  readonly inci: string;
  /** Share of the bar. */
  readonly share: { readonly low: number; readonly high: number };
  /** Above the threshold even at its low end. */
  readonly certain: boolean;
  /** The constituents or oils that bring it. */
  readonly from: readonly string[];
  readonly fromMemory: boolean;
}

export interface ScentLoad {
  readonly grams: number;
  readonly shareOfFat: number;
  readonly shareOfBar: Band;
  readonly barGrams: number;
  readonly parts: readonly { readonly oil: string | null; readonly grams: number }[];
  /** More than 3 % of the fat: usual only where the supplier's certificate allows it. */
  readonly aboveUsual: boolean;
  /** More than about 6 % of the fat. */
  readonly aboveCeiling: boolean;
  /** To declare on a rinse-off product, most first. */
  readonly declare: readonly Declared[];
  /** Parts whose composition is not on record: ask the supplier. */
  readonly unknownComposition: readonly (string | null)[];
}

/** Usual sodium hydroxide for ordinary fats, share of the fat (common practice). */
const USUAL_ALKALI = 0.13;

export function scentLoad(data: HeatData, input: LoadInput): Outcome<ScentLoad> {
  const { fatGrams, alkaliGrams = USUAL_ALKALI * fatGrams, parts } = input;
  const { usual, ceiling, high: usualHigh } = data.cook.scentLoad;
  const bad = firstBad([
    ['fat', fatGrams, 1e-3, 1e7],
    ['alkali', alkaliGrams, 0, 1e7],
    ['load', input.load ?? usual, 0, 1],
    ['scent', input.scentGrams ?? 1, 0, 1e7],
    ...parts.map(({ oil, grams }): [string, number, number, number] => [oil ?? 'scent', grams, 0, 1e7]),
  ]);
  if (bad) return fail(bad);
  const sum = parts.reduce((total, part) => total + part.grams, 0);
  if (sum <= 0) return fail({ kind: 'no-scent' });
  for (const { oil } of parts)
    if (oil !== null && !data.oils.has(oil)) return fail({ kind: 'unknown', figure: 'scent', id: oil });
  const grams = input.scentGrams ?? (input.load ?? usual) * fatGrams;
  const dry = fatGrams + alkaliGrams + grams;
  const { low, nominal, high } = data.cook.cureWaterShare;
  const ofBar = (water: number): number => (grams / dry) * (1 - water);
  const shareOfBar = { low: ofBar(high), nominal: ofBar(nominal), high: ofBar(low) };
  const shareOfFat = grams / fatGrams;
  const shares = parts.map(({ oil, grams: part }) => ({ oil, share: part / sum }));
  return done({
    grams,
    shareOfFat,
    shareOfBar,
    barGrams: dry / (1 - nominal),
    parts: shares.map(({ oil, share }) => ({ oil, grams: share * grams })),
    aboveUsual: shareOfFat > usualHigh + 1e-9,
    aboveCeiling: shareOfFat > ceiling + 1e-9,
    declare: declared(data, shares, shareOfBar),
    unknownComposition: shares
      .filter(({ oil, share }) => share > 0 && !data.oils.get(oil ?? '')?.composition)
      .map(({ oil }) => oil),
  });
}

/** The entries of the allergen list that pass 0.01 % of the bar at the high end. */
function declared(
  data: HeatData,
  scent: readonly { readonly oil: string | null; readonly share: number }[],
  bar: Band,
): readonly Declared[] {
  const threshold = data.allergenThresholds.rinseOff.value;
  const found: Declared[] = [];
  for (const entry of data.allergens) {
    let low = 0;
    let high = 0;
    let { fromMemory } = entry;
    const from = new Set<string>();
    for (const { oil, share } of scent) {
      if (oil === null || share <= 0) continue;
      if (entry.oils.includes(oil)) {
        low += share;
        high += share;
        from.add(oil);
      }
      const composition = data.oils.get(oil)?.composition;
      for (const member of composition ? entry.members : []) {
        const [least = 0, most = 0] = composition?.parts[member] ?? [];
        if (most <= 0) continue;
        low += share * least;
        high += share * most;
        fromMemory ||= composition?.fromMemory ?? false;
        from.add(member);
      }
    }
    const share = { low: low * bar.low, high: Math.min(1, high) * bar.high };
    if (share.high <= threshold) continue;
    found.push({ inci: entry.inci, share, certain: share.low > threshold, from: [...from], fromMemory });
  }
  return found.sort((a, b) => b.share.high - a.share.high);
}
