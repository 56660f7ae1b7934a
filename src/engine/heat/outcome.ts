/** A figure with the band it may lie in: `low ≤ nominal ≤ high`. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** What the heat engine will not answer, with the figures that explain it and the nearest that would work. */
export type HeatFault =
  | { readonly kind: 'not-finite'; readonly figure: string; readonly value: number }
  | {
      readonly kind: 'out-of-range';
      readonly figure: string;
      readonly value: number;
      readonly range: readonly [number, number];
    }
  | { readonly kind: 'no-alkali' }
  | { readonly kind: 'no-water' }
  | { readonly kind: 'no-fat' }
  /** More alkali than the water holds at 20 °C. */
  | {
      readonly kind: 'not-dissolved';
      readonly concentration: number;
      readonly mostAlkaliGrams: number;
      readonly leastWaterGrams: number;
    }
  /** The nominal peak reaches the boil. `null`: not to be had that way. */
  | {
      readonly kind: 'would-boil';
      readonly peakC: Band;
      readonly boilsAtC: number;
      /** Of the water, to be given as ice so that even the high end stays below the boil. */
      readonly iceGrams: number | null;
      /** Water in all, without ice, that does the same. */
      readonly waterGrams: number | null;
    }
  /** Even with all of the water as ice the solution passes the limit. */
  | {
      readonly kind: 'limit-too-low';
      readonly limitC: number;
      readonly coldestC: number;
      /** Water and ice in all, half of it ice, that keep the limit. */
      readonly waterGrams: number | null;
    }
  | { readonly kind: 'target-not-above-room'; readonly targetC: number; readonly roomC: number }
  | { readonly kind: 'pot-too-small'; readonly litres: number; readonly contentsLitres: number }
  | { readonly kind: 'unknown'; readonly figure: string; readonly id: string }
  | {
      readonly kind: 'reading-not-above-room';
      readonly minute: number;
      readonly temperatureC: number;
      readonly roomC: number;
    }
  | { readonly kind: 'readings-rise'; readonly fromC: number; readonly toC: number; readonly minute: number }
  | { readonly kind: 'readings-disagree'; readonly scatterK: number }
  | { readonly kind: 'too-few-readings'; readonly count: number }
  | { readonly kind: 'too-little-fall'; readonly fallK: number; readonly minutes: number }
  /** What one part would have to be brought to cannot be. */
  | {
      readonly kind: 'blend-out-of-reach';
      readonly part: 'fats' | 'solution';
      readonly neededC: number;
      readonly range: readonly [number, number];
    }
  | { readonly kind: 'no-scent' };

export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: HeatFault };

export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });
export const fail = (fault: HeatFault): { readonly ok: false; readonly fault: HeatFault } => ({ ok: false, fault });

/** The first figure that is not a number, or lies outside what it may be. */
export function firstBad(
  figures: readonly (readonly [figure: string, value: number, low: number, high: number])[],
): HeatFault | null {
  for (const [figure, value, low, high] of figures) {
    if (!Number.isFinite(value)) return { kind: 'not-finite', figure, value };
    if (value < low || value > high) return { kind: 'out-of-range', figure, value, range: [low, high] };
  }
  return null;
}

/** Pure alkali and water, g: a solution's make-up as plain numbers. */
export interface Parts {
  readonly naoh: number;
  readonly koh: number;
  readonly water: number;
}
