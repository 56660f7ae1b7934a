/** What a person answered to a doubt about their post, as changes to what was read of it. */
import type { Item } from './items.ts';
import type { RecipeReading } from './reading.ts';
import type { Token } from './tokens.ts';

export interface Settled {
  readonly items: (items: readonly Item[], tokens: readonly Token[]) => readonly Item[];
  /** Id of the unit of figures without one; null where nobody said. */
  readonly unit: string | null;
  /** The second of two ways to read the post is meant. */
  readonly rival: boolean;
  readonly reading: (reading: RecipeReading) => RecipeReading;
}
