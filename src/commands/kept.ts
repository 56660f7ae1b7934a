/** What one turn leaves for the next: the recipe of an answer and the working of its figures. */
import type { Recipe } from '../engine/recipe.ts';
import type { RecipeReading } from '../reading/reading.ts';

export interface Kept {
  /** What the person wrote, as a correction will change it. */
  readonly reading: RecipeReading;
  /** In amounts to weigh. */
  readonly recipe: Recipe;
  /** Superfat asked for, as a share; null where nobody asked. */
  readonly superfat: number | null;
}

/** One step of a reckoning. Numbers are unrounded; `shown` is the step as a person reads it. */
export interface Step {
  /** What it finds, as it stands in a sentence: "superfat". */
  readonly name: string;
  /** Words that ask for it beside those of its name. */
  readonly asked: readonly string[];
  /** Names of the steps it builds on. */
  readonly from?: readonly string[];
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly value: number; readonly unit: string }[];
  readonly value: number;
  readonly unit: string;
  /** "1 − 98 ÷ 104.7 = 6.4 %" */
  readonly shown: string;
  /** With its locator, and whether it is from memory. */
  readonly source: string;
  /** Where the formula holds. */
  readonly range?: string;
  /** How sure the figure is and what drives that. */
  readonly sure?: string;
}

/** How the figures of one answer were found. */
export interface Working {
  /** When it was given, ms since 1970; null for one that was only made to be explained. */
  readonly at: number | null;
  readonly steps: readonly Step[];
  /** That of the answer: whoever explains it gives it again. */
  readonly caution: readonly string[];
}

export interface Last {
  /** The last recipe; null without one. */
  readonly recipe: Kept | null;
  /** How figures were found: of the last answer that had any, and of the last recipe. The newest first. */
  readonly workings: readonly Working[];
  /** The last request, for a report; null without one. */
  readonly said: {
    readonly id: string;
    readonly command: string;
    readonly text: string;
    /** Milliseconds since 1970. */
    readonly at: number;
    readonly kept: Kept | null;
  } | null;
}
