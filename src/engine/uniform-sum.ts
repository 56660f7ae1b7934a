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

/**
 * k-th iterated integral of the normal distribution: J₋₁ = φ, J₀ = Φ, k·J_k = x·J_{k−1} + J_{k−2}; k at most `EXACT`.
 * Written out, since an answer asks for it some hundred times.
 */
function iterated(x: number, k: number): number {
  const phi = density(x);
  const j0 = normal(x, phi);
  if (k === 0) return j0;
  const j1 = x * j0 + phi;
  if (k === 1) return j1;
  const j2 = (x * j1 + j0) / 2;
  if (k === 2) return j2;
  const j3 = (x * j2 + j1) / 3;
  return k === 3 ? j3 : (x * j3 + j2) / 4;
}

/** Room for the widest rectangles and one more, and for the corners of their box: no two sums are worked at at once. */
const widest = new Float64Array(EXACT + 1);
const corners = new Float64Array(1 << EXACT);

/**
 * Probability that the sum of independent rectangular errors of these full widths is at most z. Same unit for both.
 * Widths need no order; zeros are ignored. Error against the exact distribution: see the validation report.
 */
export function uniformSumBelow(z: number, widths: ArrayLike<number>): number {
  let variance = 0;
  let reach = 0;
  for (let i = 0; i < widths.length; i++) {
    const width = widths[i] ?? 0;
    variance += (width * width) / 12;
    reach += width / 2;
  }
  // Nothing lies beyond the reach, and far beyond it the corners would cancel to noise.
  if (z >= reach) return 1;
  if (z <= -reach) return 0;
  const narrow = NARROW * Math.sqrt(variance);
  let k = 0;
  let rest = 0;
  for (let i = 0; i < widths.length; i++) {
    const width = widths[i] ?? 0;
    let other = width;
    if (width > narrow) {
      // Insert among the widest, and let the one that falls out go to the remainder.
      let at = k;
      for (; at > 0 && (widest[at - 1] ?? 0) < width; at--) widest[at] = widest[at - 1] ?? 0;
      widest[at] = width;
      other = k < EXACT ? 0 : (widest[EXACT] ?? 0);
      k = Math.min(EXACT, k + 1);
    }
    rest += (other * other) / 12;
  }
  const sigma = Math.max(Math.sqrt(rest), LEAST * Math.sqrt(variance));
  let scale = 1;
  corners[0] = z;
  for (let i = 0; i < k; i++) {
    const width = widest[i] ?? 0;
    scale *= sigma / width;
    for (let corner = 0; corner < 1 << i; corner++) {
      const at = corners[corner] ?? 0;
      corners[corner | (1 << i)] = at + width / 2;
      corners[corner] = at - width / 2;
    }
  }
  let sum = 0;
  for (let corner = 0; corner < 1 << k; corner++) {
    const at = iterated((corners[corner] ?? 0) / sigma, k);
    sum += isEven(k, corner) ? at : -at;
  }
  return Math.min(1, Math.max(0, sum * scale));
}

/** Whether an even number of the k sides is taken at its low end; the 16 bits tell it of the high ends. */
const isEven = (k: number, corner: number): boolean => ((0x6996 >> corner) & 1) === (k & 1);
