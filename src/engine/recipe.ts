import type { Acid, AlkaliId, Fat, Liquid } from '../catalogue/types.ts';

/** A share 0–1 that may be known only as a range. */
export interface Share {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}

export interface FatAmount {
  readonly fat: Fat;
  readonly grams: number;
}

/** Grams as weighed; alkali out of a stock solution counts as pure alkali. */
export interface AlkaliAmount {
  readonly id: AlkaliId;
  readonly grams: number;
  readonly purity: Share;
}

export interface AcidAmount {
  readonly acid: Acid;
  readonly grams: number;
}

export interface LiquidAmount {
  readonly liquid: Liquid;
  readonly grams: number;
}

/** One batch, in grams as weighed. */
export interface Recipe {
  /** Cooked with the alkali. */
  readonly fats: readonly FatAmount[];
  /** Added after the cook: superfat of known kind. */
  readonly after: readonly FatAmount[];
  readonly alkali: readonly AlkaliAmount[];
  /** Liquid water, ice and a stock solution's water. */
  readonly waterGrams: number;
  readonly liquids: readonly LiquidAmount[];
  readonly acids: readonly AcidAmount[];
  /** Readability of the scale. */
  readonly scaleStepGrams: number;
}

export type Verdict = 'excess-alkali' | 'thin-margin' | 'usual' | 'fat-rich' | 'alkali-short';
