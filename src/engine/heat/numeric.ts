/** Linear interpolation in a table of rising x; its end values outside. */
export function interpolate(points: readonly (readonly number[])[], x: number, column = 1): number {
  const last = points.length - 1;
  const at = (i: number, c: number): number => points[i]?.[c] ?? Number.NaN;
  if (!(x > at(0, 0))) return at(0, column);
  if (x >= at(last, 0)) return at(last, column);
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(middle, 0) <= x) low = middle;
    else high = middle;
  }
  const share = (x - at(low, 0)) / (at(high, 0) - at(low, 0));
  return at(low, column) + share * (at(high, column) - at(low, column));
}

/** Σ cᵢ xⁱ. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i -= 1) sum = sum * x + (coefficients[i] ?? 0);
  return sum;
}

/** The coefficients of a polynomial's integral, without constant. */
export const integrated = (coefficients: readonly number[]): readonly number[] => [
  0,
  ...coefficients.map((c, i) => c / (i + 1)),
];

/**
 * Where a continuous `f` passes zero between `low` and `high`: regula falsi with the Illinois rule, which keeps the
 * root bracketed. NaN where `f` has the same sign at both ends.
 */
export function root(f: (x: number) => number, low: number, high: number, tolerance = 1e-9): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) return Number.NaN;
  let side = 0;
  for (let i = 0; i < 200 && Math.abs(b - a) > tolerance; i += 1) {
    // Every fourth step halves the bracket, so that a bent function cannot stall it.
    const x = i % 4 === 3 ? (a + b) / 2 : (fa * b - fb * a) / (fa - fb);
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb > 0) {
      b = x;
      fb = fx;
      if (side === -1) fa /= 2;
      side = -1;
    } else {
      a = x;
      fa = fx;
      if (side === 1) fb /= 2;
      side = 1;
    }
  }
  return (a + b) / 2;
}

/** ∫ f from a to b by Simpson's rule on `panels` pairs of steps. */
export function simpson(f: (x: number) => number, a: number, b: number, panels: number): number {
  if (a === b) return 0;
  const step = (b - a) / (2 * panels);
  let sum = f(a) + f(b);
  for (let i = 1; i < 2 * panels; i += 1) sum += f(a + i * step) * (i % 2 === 1 ? 4 : 2);
  return (sum * step) / 3;
}
