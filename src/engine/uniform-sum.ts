/**
 * The distribution of a sum of independent, zero-mean rectangular errors.
 *
 * With one to three fats such a sum is far from normal, so the widest few rectangles are taken exactly and the rest,
 * which hardly shape it, as one normal error of the same variance. The distribution of k rectangles plus a normal is a
 * signed sum of the k-th iterated integral of the normal distribution over the 2^k corners of their box.
 */

/** Rectangles taken exactly; 2^k corners are summed, and beyond four the normal remainder is as good. */
const EXACT = 4;
/** A rectangle narrower than this share of the whole standard deviation goes into the normal remainder. */
const NARROW = 0.1;
/** Least remainder, as a share of the standard deviation: keeps the corners' arguments finite, widens by 5·10⁻⁹. */
const LEAST = 1e-4;

/** Density of the standard normal distribution. */
const density = (x: number): number => 0.3989422804014327 * Math.exp(-x * x * 0.5);

/** Standard normal distribution to 7.5·10⁻⁸. Source: Abramowitz & Stegun, 26.2.17. */
function normal(x: number, densityAtX: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const tail =
    densityAtX * t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return x > 0 ? 1 - tail : tail;
}

/** k-th iterated integral of the normal distribution: J₋₁ = φ, J₀ = Φ, k·J_k = x·J_{k−1} + J_{k−2}. */
function iterated(x: number, k: number): number {
  let before = density(x);
  let value = normal(x, before);
  for (let order = 1; order <= k; order++) {
    const next = (x * value + before) / order;
    before = value;
    value = next;
  }
  return value;
}

/**
 * Probability that the sum of independent rectangular errors of these full widths is at most z. Same unit for both.
 * Widths need no order; zeros are ignored. Error against the exact distribution: see the validation report.
 */
export function uniformSumBelow(z: number, widths: readonly number[]): number {
  const widest: number[] = [];
  let variance = 0;
  let reach = 0;
  for (const width of widths) {
    variance += (width * width) / 12;
    reach += width / 2;
  }
  // Nothing lies beyond the reach, and far beyond it the corners would cancel to noise.
  if (z >= reach) return 1;
  if (z <= -reach) return 0;
  const narrow = NARROW * Math.sqrt(variance);
  let rest = 0;
  for (const width of widths) {
    let other = width;
    if (width > narrow) {
      // Insert among the widest, and let the one that falls out go to the remainder.
      let at = widest.push(width) - 1;
      for (; at > 0 && (widest[at - 1] ?? 0) < width; at--) widest[at] = widest[at - 1] ?? 0;
      widest[at] = width;
      other = widest.length > EXACT ? (widest.pop() ?? 0) : 0;
    }
    rest += (other * other) / 12;
  }
  const sigma = Math.max(Math.sqrt(rest), LEAST * Math.sqrt(variance));
  const k = widest.length;
  let scale = 1;
  for (const width of widest) scale *= sigma / width;
  let sum = 0;
  for (let corner = 0; corner < 1 << k; corner++) {
    let at = z;
    let sign = 1;
    for (let i = 0; i < k; i++) {
      const half = (widest[i] ?? 0) / 2;
      if (corner & (1 << i)) at += half;
      else {
        at -= half;
        sign = -sign;
      }
    }
    sum += sign * iterated(at / sigma, k);
  }
  return Math.min(1, Math.max(0, sum * scale));
}
