import type { AlkaliId } from '../catalogue/types.ts';

/** Something in the post that cannot be known; one of them becomes the question back. */
export type Doubt =
  | { readonly id: 'unknown-fat'; readonly said: string; readonly candidates: readonly string[] }
  | { readonly id: 'unheld-fat'; readonly said: string; readonly candidates: readonly string[] }
  | {
      readonly id: 'ambiguous-name';
      readonly said: string;
      readonly candidates: readonly string[];
      readonly why: string;
    }
  | { readonly id: 'which-alkali'; readonly said: string; readonly why?: string }
  | { readonly id: 'no-unit'; readonly said: string; readonly units: readonly string[] }
  | { readonly id: 'range'; readonly said: string; readonly of: string }
  | { readonly id: 'zero' | 'negative'; readonly said: string; readonly of: string }
  | { readonly id: 'alkali-volume'; readonly said: string }
  | { readonly id: 'alkali-percent'; readonly said: string; readonly of: string }
  | { readonly id: 'stock-strength'; readonly said: string }
  | { readonly id: 'shares-sum'; readonly sum: number }
  | { readonly id: 'shares-total' }
  | { readonly id: 'no-amount'; readonly said: string; readonly of: string }
  | { readonly id: 'two-amounts'; readonly of: string; readonly said: readonly string[] }
  /** `parts`: from how many an answer can choose; 0 where the post gives no way to part them. */
  | { readonly id: 'two-recipes'; readonly parts: number }
  | { readonly id: 'disordered' }
  | { readonly id: 'decimal'; readonly said: string; readonly readings: readonly [number, number] }
  | { readonly id: 'units-disagree'; readonly said: string; readonly also: string; readonly of: string }
  | { readonly id: 'shares-disagree'; readonly of: string; readonly said: number; readonly weighed: number }
  | { readonly id: 'total-disagrees'; readonly said: string; readonly sum: number }
  | { readonly id: 'unplaced'; readonly said: string }
  | { readonly id: 'two-readings'; readonly said: string; readonly first: string; readonly second: string }
  | { readonly id: 'implausible'; readonly alkaliGrams: number; readonly fatGrams: number }
  | { readonly id: 'purity-odd' | 'strength-odd'; readonly said: string }
  | { readonly id: 'superfat-odd'; readonly said: string; readonly value: number }
  /** `adding`: the weights may be those of a scale that was not set to zero in between. */
  | { readonly id: 'corrected'; readonly said: string; readonly adding?: true };

/** Something taken although it was not said; `undo` is what the person answers if it is wrong. */
export interface Assumption {
  readonly id:
    | 'lye'
    | 'plain-name'
    | 'abbreviation'
    | 'spelling'
    | 'decoration'
    | 'unit'
    | 'volume'
    | 'number'
    | 'additive'
    | 'summed'
    | 'repeated'
    | 'shares'
    | 'after'
    | 'left-out'
    | 'water'
    | 'purity'
    | 'corrected';
  readonly text: string;
  /** What was typed, and what it was taken for, where the sentence is of these two alone. */
  readonly said?: string;
  readonly as?: string;
}

export interface ReadAmount {
  readonly id: string;
  readonly grams: number;
  readonly said: string;
}

export interface Purity {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
}

/** What a post says of one batch, in grams. */
export interface RecipeReading {
  readonly fats: readonly ReadAmount[];
  readonly after: readonly ReadAmount[];
  readonly alkali: readonly {
    readonly id: AlkaliId;
    readonly grams: number;
    readonly purity: Purity | null;
    readonly stock: boolean;
  }[];
  /** Alkalis that are spoken of, with or without an amount. */
  readonly alkaliNamed: readonly AlkaliId[];
  readonly waterGrams: number | null;
  readonly liquids: readonly ReadAmount[];
  readonly acids: readonly (ReadAmount & { readonly strength: number | null })[];
  /** Additives and scents: named, weighed, no part of the reckoning. */
  readonly others: readonly { readonly name: string; readonly grams: number | null; readonly said: string }[];
  readonly superfat: number | null;
  readonly concentration: number | null;
  /** Water to alkali by mass. */
  readonly ratio: number | null;
  readonly waterShare: number | null;
  /** Purity said apart from any amount ("KOH is 90 %"). */
  readonly purity: Purity | null;
  readonly alkaliSplit: readonly [number, number] | null;
  readonly totalFats: number | null;
  readonly scaleStep: number | null;
  readonly ounces: boolean;
  readonly swapAsked: SwapAsked | null;
  readonly assumptions: readonly Assumption[];
  readonly doubts: readonly Doubt[];
  readonly fates: readonly Fate[];
}

/** A fat (id) of the recipe that the post asks to do without, or to put another one in the place of. */
export interface SwapAsked {
  readonly goes: string;
  /** Null for nothing in its place. */
  readonly comes: string | null;
}

/** What became of a figure of the post. */
export interface Fate {
  readonly text: string;
  readonly fate: 'used' | 'aside' | 'unclear';
  readonly why: string;
}
