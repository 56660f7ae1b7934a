/** What the weights really taken make of a recipe, and what sets it right. Grams throughout. */
import type { Acid, AlkaliId, Fat, Liquid } from '../../catalogue/types.ts';
import { balanceOf, demandOf, type Fats, superfatOf } from '../alkali.ts';
import type { AlkaliAmount, FatAmount, Recipe } from '../recipe.ts';
import { roundDown } from '../scale-step.ts';
import { type Batch, gramsOfLine, type Line } from './batch.ts';

/** What of the catalogue a recipe needs. */
export interface Shelves {
  readonly fats: ReadonlyMap<string, Fat>;
  readonly liquids: ReadonlyMap<string, Liquid>;
  readonly acids: ReadonlyMap<string, Acid>;
}

/**
 * The recipe with every line at the weight that `grams` gives it; null where the catalogue no longer holds one of its
 * items.
 */
function recipeWith(batch: Batch, shelves: Shelves, grams: (line: Line) => number): Recipe | null {
  const fats: FatAmount[] = [];
  const after: FatAmount[] = [];
  const alkali: AlkaliAmount[] = [];
  const liquids: { liquid: Liquid; grams: number }[] = [];
  const acids: { acid: Acid; grams: number }[] = [];
  let waterGrams = 0;
  for (const line of batch.lines) {
    const amount = grams(line);
    const item = line.item ?? '';
    switch (line.role) {
      case 'fat':
      case 'after': {
        const fat = shelves.fats.get(item);
        if (!fat) return null;
        (line.role === 'fat' ? fats : after).push({ fat, grams: amount });
        break;
      }
      case 'alkali':
        alkali.push({
          id: item as AlkaliId,
          grams: amount,
          purity: line.purity ?? { nominal: 1, low: 1, high: 1 },
        });
        break;
      case 'water':
        waterGrams += amount;
        break;
      case 'liquid': {
        const liquid = shelves.liquids.get(item);
        if (!liquid) return null;
        liquids.push({ liquid, grams: amount });
        break;
      }
      case 'acid': {
        const acid = shelves.acids.get(item);
        if (!acid) return null;
        acids.push({
          acid: line.strength === undefined ? acid : { ...acid, strength: line.strength },
          grams: amount,
        });
        break;
      }
      case 'other':
        break;
    }
  }
  return { fats, after, alkali, waterGrams, liquids, acids, scaleStepGrams: batch.plan.scaleStepGrams };
}

/** As weighed so far; what is not weighed yet counts as planned. */
export const recipeAsTaken = (batch: Batch, shelves: Shelves): Recipe | null =>
  recipeWith(batch, shelves, (line) => gramsOfLine(batch, line));

/** Weighings that differ from the plan by less are the scale's own business, as a share of the plan. */
const WEIGHING_SLACK = 0.005;

export interface Deviation {
  readonly line: Line;
  /** Above 0: more than planned. */
  readonly grams: number;
}

/** Lines weighed otherwise than planned, by more than the scale's step and half a per cent; and those brought. */
export function deviationsOf(batch: Batch): readonly Deviation[] {
  const { plan, lines, taken } = batch;
  const planned = new Set(plan.lines.map(({ id }) => id));
  return lines.flatMap((line): readonly Deviation[] => {
    const own = taken.get(line.id);
    if (!own) return [];
    if (!planned.has(line.id)) return [{ line, grams: own.grams }];
    if (line.grams === null) return [];
    const grams = own.grams - line.grams;
    const slack = Math.max(plan.scaleStepGrams, WEIGHING_SLACK * line.grams);
    return Math.abs(grams) > slack * (1 + 1e-9) ? [{ line, grams }] : [];
  });
}

export interface Mend {
  /** Superfat (nominal) as taken. */
  readonly superfat: number;
  /** Alkali above 0 to take out again while it is dry, below 0 to add, by id; empty where it fits. */
  readonly alkali: readonly { readonly id: AlkaliId; readonly grams: number }[];
  /** More of each fat, in the recipe's own proportions, that brings the wanted superfat back; empty where none is needed. */
  readonly fats: readonly FatAmount[];
}

/** To the step, never less than needed. */
const roundUp = (grams: number, step: number): number => -roundDown(-grams, step);

/**
 * Fat to add: D' = (A − E) / (1 − s) for alkali A, what acids take E and the wanted superfat s, spread over the fats
 * as they are; the same balance as for a rescue, m = (A / (1 − s) − D) / (k · SV), for a blend of the recipe's own fats.
 */
export function mendOf(recipe: Recipe, fats: Fats, wanted: number): Mend {
  const balance = balanceOf(recipe, fats);
  const superfat = superfatOf(balance);
  const brought = balance.demand * (1 - wanted) + balance.eaten;
  const factor = balance.brought > 0 ? brought / balance.brought : 1;
  const step = recipe.scaleStepGrams;
  const alkali = recipe.alkali.flatMap(({ id, grams }) => {
    const over = grams * (1 - factor);
    // never more alkali than fits: what is taken out is rounded up, what is added down
    const rounded = over > 0 ? roundUp(over, step) : -roundDown(-over, step);
    return rounded === 0 ? [] : [{ id, grams: rounded }];
  });
  const cooked = demandOf(recipe.fats);
  // the fat of milk stays as it is
  const needed = (balance.brought - balance.eaten) / (1 - wanted) - (balance.demand - cooked);
  const more = cooked > 0 ? needed / cooked - 1 : 0;
  return {
    superfat,
    alkali,
    fats:
      more > 0
        ? recipe.fats
            .filter(({ grams }) => grams > 0)
            .map(({ fat, grams }) => ({ fat, grams: roundUp(grams * more, step) }))
        : [],
  };
}
