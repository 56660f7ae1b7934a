/** A soap that is called after what is in it, where its weight can be no soap's: "beer soap, 250 g. Olive 700 g, …". */

import type { Quantity } from '../words/quantities.ts';
import { isIngredient } from '../words/token-is.ts';
import type { Roles } from './roles.ts';
import type { Assembly } from './rows.ts';

/** A batch to its fats, at the least; a fat that is called but not listed may be one of them, unless it weighs as much. */
const least = 0.75;
const asMuch = 0.03;
/** Alkali to its fats. */
const lye = { least: 0.1, most: 0.25 };

/** Asks of what the weight is beside the name of such a soap, where nothing else of that name is in the post. */
export function calledAfter(assembly: Assembly, { batches }: Roles, fats: number): void {
  const { tokens } = assembly.source;
  for (const { quantity, at } of batches) {
    const own = tokens[at];
    if (fats === 0) continue;
    // "128 g for my recipe, he says 142 g": no batch, but what may be its lye
    if (!isIngredient(own)) {
      const share = quantity.value / fats;
      if (share > lye.least && share < lye.most && !isSaidAgain(quantity, assembly))
        assembly.doubts.push({ id: 'unplaced', said: quantity.text });
      continue;
    }
    const { kind, id } = own.meaning;
    if (kind !== 'fat' && kind !== 'liquid') continue;
    if (tokens.some((one, k) => k !== at && isIngredient(one) && one.meaning.id === id)) continue;
    const isBatch = kind === 'fat' ? Math.abs(quantity.value / fats - 1) <= asMuch : quantity.value >= least * fats;
    if (!isBatch) assembly.doubts.push({ id: 'unplaced', said: quantity.text });
  }
}

const isSaidAgain = (quantity: Quantity, { source: { items } }: Assembly): boolean =>
  items.filter((one) => one.kind === 'amount' && one.quantity.value === quantity.value).length > 1;
