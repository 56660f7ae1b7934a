/** Sodium hydroxide weighed where potassium hydroxide was meant, or the other way round: ×1.4 in grams. */
import type { AlkaliId } from '../catalogue/types.ts';
import { alkaliMoles, type Balance } from './alkali.ts';
import type { Recipe } from './recipe.ts';
import { THRESHOLDS } from './verdict.ts';

/** What a recipe would be if its one alkali were the other kind. */
export interface MixUp {
  readonly meant: AlkaliId;
  readonly purity: number;
  readonly superfat: number;
}

/** Purities at which each alkali is usually sold (common practice), likeliest first. */
const USUAL_PURITIES: Readonly<Record<AlkaliId, readonly number[]>> = { naoh: [1, 0.98], koh: [0.9, 1, 0.85] };

/** Null unless the superfat is far out (below 0 or above 20 %) and would be ordinary with the other alkali. */
export function suspectMixUp({ alkali }: Recipe, { demand, eaten }: Balance, superfat: number): MixUp | null {
  if (superfat >= 0 && superfat <= THRESHOLDS.rich) return null;
  const ids = new Set(alkali.filter(({ grams }) => grams > 0).map(({ id }) => id));
  const [given] = ids;
  if (ids.size !== 1 || !given) return null;
  const meant = given === 'naoh' ? 'koh' : 'naoh';
  const grams = alkali.reduce((sum, one) => sum + one.grams, 0);
  for (const purity of USUAL_PURITIES[meant]) {
    const other = 1 - (alkaliMoles(meant, grams, purity) - eaten) / demand;
    if (other >= 0 && other <= THRESHOLDS.usual) return { meant, purity, superfat: other };
  }
  return null;
}
