/**
 * How sure a superfat is: its 95 % interval, the chance of excess alkali, and what drives them.
 *
 * Inputs and their spread (all rectangular, JCGM 100:2008 4.3.7): the saponification value of each fat over its range,
 * shared between all lines of that fat, milk fat included, and independent between fats; the alkali's purity over its
 * range, shared between lines of one alkali and purity; each weighing over one scale step.
 *
 * Superfat below x means alkali − acids > (1 − x)·demand, and for a fixed x both sides are sums of independent
 * rectangular errors. So the distribution of the ratio is found without linearising it, and turned round by root
 * finding. Left out: products of two errors (an SV that is off times a weight that is off), of second order.
 */
import { acidMoles, alkaliMoles, type Fats, milkFats, molesPerGram } from './alkali.ts';
import type { Recipe } from './recipe.ts';
import { uniformSumBelow } from './uniform-sum.ts';

/** One independent rectangular error, as its full width in mol of alkali. */
export interface ErrorSource {
  readonly source: 'fat' | 'purity' | 'weighing';
  /** Id of the fat, the alkali, or of what is weighed. */
  readonly id: string;
  readonly side: 'alkali' | 'demand';
  readonly width: number;
}

/** Both sides of the balance (mol) at the middle of every range, with their errors. */
export interface Spread {
  readonly alkali: number;
  readonly demand: number;
  readonly errors: readonly ErrorSource[];
}

/** A reading cannot be off by more than itself: keeps a weight that the scale can hardly show from turning negative. */
const weighingWidth = (grams: number, step: number): number => Math.min(step, 2 * grams);

export function spreadOf(recipe: Recipe, fats: Fats): Spread {
  const { scaleStepGrams: step } = recipe;
  const errors: ErrorSource[] = [];
  const add = (side: ErrorSource['side'], source: ErrorSource['source'], id: string, width: number): void => {
    if (width > 0) errors.push({ side, source, id, width });
  };
  let demand = 0;
  const lotWidths = new Map<string, number>();
  const meet = (id: string, grams: number, low: number, high: number): void => {
    demand += grams * molesPerGram((low + high) / 2);
    lotWidths.set(id, (lotWidths.get(id) ?? 0) + grams * molesPerGram(high - low));
  };
  for (const { fat, grams } of recipe.fats) {
    const { low, high, nominal } = fat.saponification;
    meet(fat.id, grams, low, high);
    add('demand', 'weighing', fat.id, weighingWidth(grams, step) * molesPerGram(nominal));
  }
  for (const amount of recipe.liquids) {
    for (const { fat, grams } of milkFats([amount], fats)) {
      const { low, high, nominal } = fat.saponification;
      meet(fat.id, grams, low, high);
      const width = weighingWidth(amount.grams, step) * amount.liquid.fatShare * molesPerGram(nominal);
      add('demand', 'weighing', amount.liquid.id, width);
    }
  }
  for (const [id, width] of lotWidths) add('demand', 'fat', id, width);

  let alkali = 0;
  const purityWidths = new Map<string, { id: string; width: number }>();
  for (const { id, grams, purity } of recipe.alkali) {
    alkali += alkaliMoles(id, grams, (purity.low + purity.high) / 2);
    const key = `${id} ${purity.low} ${purity.high}`;
    const width = (purityWidths.get(key)?.width ?? 0) + alkaliMoles(id, grams, purity.high - purity.low);
    purityWidths.set(key, { id, width });
    add('alkali', 'weighing', id, alkaliMoles(id, weighingWidth(grams, step), purity.nominal));
  }
  for (const { id, width } of purityWidths.values()) add('alkali', 'purity', id, width);
  for (const { acid, grams } of recipe.acids) {
    alkali -= acidMoles(acid, grams);
    add('alkali', 'weighing', acid.id, acidMoles(acid, weighingWidth(grams, step)));
  }
  return { alkali, demand, errors };
}

/** The distribution of the superfat: the probability that it lies below x. */
function distributionOf({ alkali, demand, errors }: Spread): (x: number) => number {
  const widths = new Float64Array(errors.length);
  return (x) => {
    const y = 1 - x;
    errors.forEach(({ side, width }, i) => {
      widths[i] = side === 'demand' ? Math.abs(y) * width : width;
    });
    return uniformSumBelow(alkali - y * demand, widths);
  };
}

/** Superfat (share) at which its distribution, `below`, reaches p, `deviations` standard deviations from its middle if normal. */
function superfatAt(spread: Spread, below: (x: number) => number, p: number, deviations: number): number {
  const ratio = spread.alkali / spread.demand;
  let alkaliHalf = 0;
  let demandHalf = 0;
  let variance = 0;
  for (const { side, width } of spread.errors) {
    if (side === 'demand') demandHalf += width / 2;
    else alkaliHalf += width / 2;
    variance += (side === 'demand' ? ratio * width : width) ** 2 / 12;
  }
  const least = Math.max(spread.demand - demandHalf, spread.demand * 1e-3);
  const most = spread.demand + demandHalf;
  const up = spread.alkali + alkaliHalf;
  const down = spread.alkali - alkaliHalf;
  const from = 1 - (up > 0 ? up / least : up / most);
  const to = 1 - (down > 0 ? down / most : down / least);
  const sigma = Math.sqrt(variance) / spread.demand;
  return rootOf((x) => below(x) - p, from, to, 1 - ratio + deviations * sigma, 0.2 * sigma);
}

/** 95 %, two-sided, with equal tails; and the chance that the alkali exceeds the demand. Needs a demand above 0. */
export function superfatInterval(spread: Spread): {
  readonly low: number;
  readonly high: number;
  readonly chanceOfExcess: number;
} {
  const below = distributionOf(spread);
  return {
    low: superfatAt(spread, below, 0.025, -1.96),
    high: superfatAt(spread, below, 0.975, 1.96),
    chanceOfExcess: below(0),
  };
}

/**
 * Share of the superfat's variance that each source is to blame for, greatest first (first-order GUM, JCGM 100 5.1).
 * Sums to 1.
 */
export function uncertaintyBudget({ alkali, demand, errors }: Spread): readonly (ErrorSource & {
  readonly share: number;
})[] {
  const y = alkali / demand;
  const weigh = ({ side, width }: ErrorSource): number => (side === 'demand' ? y * width : width) ** 2;
  const total = errors.reduce((sum, error) => sum + weigh(error), 0);
  return errors
    .map((error) => ({ ...error, share: total > 0 ? weigh(error) / total : 0 }))
    .sort((a, b) => b.share - a.share);
}

/**
 * Root of a rising function between two bounds, to 10⁻⁷; a bound where the root lies outside. Illinois method, begun
 * within `reach` of a guess where that holds the root.
 */
function rootOf(rising: (x: number) => number, from: number, to: number, guess: number, reach: number): number {
  let a = guess - reach;
  let b = guess + reach;
  let fa = 0;
  let fb = 0;
  if (from < a && b < to) {
    fa = rising(a);
    fb = rising(b);
  }
  if (fa >= 0 || fb <= 0) {
    a = from;
    b = to;
    fa = rising(a);
    fb = rising(b);
    if (fa >= 0) return a;
    if (fb <= 0) return b;
    for (const x of [guess - reach, guess + reach]) {
      if (x <= a || x >= b) continue;
      const fx = rising(x);
      if (fx < 0) [a, fa] = [x, fx];
      else [b, fb] = [x, fx];
    }
  }
  let kept = 0;
  for (let step = 0; step < 60 && b - a > 1e-7; step++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = rising(x);
    if (Math.abs(fx) < 1e-9) return x;
    if (fx < 0) {
      a = x;
      fa = fx;
      if (kept === -1) fb /= 2;
      kept = -1;
    } else {
      b = x;
      fb = fx;
      if (kept === 1) fa /= 2;
      kept = 1;
    }
  }
  return (a + b) / 2;
}
